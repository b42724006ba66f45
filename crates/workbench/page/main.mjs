// The page put together.

import * as downbeats from "./downbeats.mjs";
import { dialog, make } from "./elements.mjs";
import * as files from "./files.mjs";
import * as findings from "./findings.mjs";
import * as keys from "./keys.mjs";
import * as layers from "./layers.mjs";
import * as overview from "./overview.mjs";
import * as pages from "./pages.mjs";
import * as pencil from "./pencil.mjs";
import { piece } from "./piece.mjs";
import * as score from "./score.mjs";
import { listen, me } from "./server.mjs";
import * as sound from "./sound.mjs";
import * as strokes from "./strokes.mjs";
import * as ways from "./ways.mjs";
import { language, LANGUAGES, NAMES, speak, word } from "./words.mjs";

const head = /** @type {HTMLElement} */ (document.getElementById("head"));
const margin = /** @type {HTMLElement} */ (document.getElementById("margin"));

/** @param {string} name @param {string} key @param {() => any} run @param {Record<string, any>} [more] */
function button(name, key, run, more = {}) {
  return make("button", { type: "button", "data-name": name, "aria-keyshortcuts": key || null, title: key ? `${word(name)} (${key})` : word(name), onclick: run, text: word(name), ...more });
}

/** @param {string} name @param {Record<string, string>} options @param {string} now @param {(value: string) => any} chosen */
function choice(name, options, now, chosen) {
  const select = make("select", { "data-name": name, onchange: () => chosen(select.value) },
    ...Object.entries(options).map(([value, text]) => make("option", { value, text, selected: value === now })));
  return make("label", {}, make("span", { text: word(name) }), select);
}

function tempo() {
  const input = make("input", { type: "number", min: "10", max: "400", value: piece.score.tempo ?? piece.score.opening, style: "width: 5rem", "data-name": "tempo" });
  input.addEventListener("change", () => {
    const quarters = Number(input.value);
    piece.act(input.value === "" ? { act: "tempo" } : { act: "tempo", quarters }, `${word("tempo")}: ${input.value || word("asWritten")}`);
  });
  return make("label", {}, make("span", { text: word("tempo") }), input);
}

/** The dynamics read as written, or so many steps louder or softer. */
function louder() {
  /** @type {Record<string, string>} */
  const options = { "-3": "−3", "-2": "−2", "-1": "−1", 0: word("asWritten"), 1: "+1", 2: "+2", 3: "+3" };
  const ordered = [-3, -2, -1, 0, 1, 2, 3].map((steps) => make("option", { value: steps, text: options[steps], selected: steps === piece.score.louder }));
  const select = make("select", { "data-name": "louder", title: word("louderHelp"), onchange: () => piece.act({ act: "louder", steps: Number(select.value) }, `${word("louder")}: ${options[select.value]}`) }, ...ordered);
  return make("label", {}, make("span", { text: word("louder") }), select);
}

/** The movements, to go to one; nothing in a file of one. */
function movements() {
  /** @type {{name: string, first: number}[]} */
  const all = piece.score.movements;
  if (!all.length) return null;
  const here = piece.chosen ? piece.score.lines[piece.chosen.line].movement : 0;
  return choice("movement", Object.fromEntries(all.map((one, index) => [String(index), one.name])), String(here), (index) => piece.goTo(all[Number(index)].first));
}

/** Which sections are shown. */
function sections() {
  /** @type {{part: number, name: string}[]} */
  const all = piece.score.sections;
  const boxes = all.map((one) => {
    const box = make("input", { type: "checkbox", value: one.part });
    box.checked = !piece.parts.size || piece.parts.has(one.part);
    box.addEventListener("change", () => {
      const chosen = boxes.filter((other) => other.checked).map((other) => Number(other.value));
      // None is all: an empty page helps nobody.
      piece.parts = new Set(chosen.length === all.length ? [] : chosen);
      piece.dispatchEvent(new CustomEvent("parts"));
      showHead();
    });
    return box;
  });
  dialog(word("sections"), word("close"), make("div", { class: "filelist" }, ...all.map((one, index) => make("label", {}, boxes[index], one.name))));
}

/** @param {number} count */
const bowingsSaid = (count) => count === 0 ? word("noBowings") : count === 1 ? word("oneBowing") : `${count} ${word("bowings")}`;

function showHead() {
  if (!piece.score) return;
  const facts = [piece.score.file, `${piece.score.bars.length} ${word("bars")}`, bowingsSaid(piece.score.bowings), ...piece.score.assumptions];
  const piecewise = make("div", { class: "piece" }, make("h1", { id: "title", text: piece.score.title }), make("p", { text: facts.join(" · ") }));
  const acts = make("div", { class: "group" },
    button("undo", "Control+Z", () => piece.undo(), { disabled: piece.score.undo === 0 }),
    button("redo", "Control+Shift+Z", () => piece.redo(), { disabled: piece.score.redo === 0 }),
    button(sound.isPlaying() ? "stop" : "play", "Space", () => sound.toggle()),
    button("pencil", "t", () => pencil.show()),
    button("downbeats", "b", () => downbeats.show()),
    button("layers", "y", () => layers.open()),
    button("partPages", "g", () => pages.show()),
    button("files", "s", () => files.show()),
    button("doWhat", "Control+K", () => keys.find()),
    button("keys", "?", () => keys.page()));
  const settings = make("div", { class: "group" },
    movements(),
    piece.score.sections.length > 1 ? button("sections", "v", sections, { text: piece.parts.size ? `${word("sections")}: ${piece.parts.size}` : word("sections") }) : null,
    tempo(),
    louder(),
    choice("player", { professional: word("professional"), amateur: word("amateur"), student: word("student") }, piece.score.player,
      (profile) => piece.act({ act: "player", profile }, `${word("player")}: ${word(profile)}`)),
    choice("style", { concert: word("concert"), dance: word("dance"), early: word("early") }, piece.score.style,
      (style) => piece.act({ act: "style", style }, `${word("style")}: ${word(style)}`)),
    choice("language", NAMES, language(), (code) => {
      speak(code);
      say();
      piece.dispatchEvent(new CustomEvent("language"));
      void piece.reworded();
      showHead();
    }));
  const focused = /** @type {HTMLElement | null} */ (document.activeElement)?.dataset?.name;
  head.replaceChildren(piecewise, acts, settings);
  if (focused) /** @type {HTMLElement | null} */ (head.querySelector(`[data-name="${focused}"]:not(:disabled)`))?.focus();
}

/** What stands in the page's own text, in the language chosen. */
function say() {
  for (const element of document.querySelectorAll("[data-words]")) element.textContent = word(/** @type {HTMLElement} */ (element).dataset.words ?? "");
}

say();
score.start();
overview.start(/** @type {HTMLElement} */ (document.getElementById("overview")));
strokes.start(margin);
const other = ways.start(margin);
layers.start(margin);
findings.start(margin);
pages.start();

keys.start([
  { key: "ArrowRight", name: "nextStroke", run: () => piece.step(1) },
  { key: "ArrowLeft", name: "previousStroke", run: () => piece.step(-1) },
  { key: "ArrowDown", name: "lineBelow", run: () => piece.across(1) },
  { key: "ArrowUp", name: "lineAbove", run: () => piece.across(-1) },
  { key: "d", name: "askDown", run: () => piece.bowHere("down") },
  { key: "u", name: "askUp", run: () => piece.bowHere("up") },
  { key: "h", name: "askHook", run: () => piece.hookHere() },
  { key: "r", name: "askRetake", run: () => piece.bowHere("retake") },
  { key: "Backspace Delete", name: "askFree", run: () => piece.bowHere("free") },
  { key: "a", name: "widen", run: () => piece.widen() },
  { key: "o", name: "showSure", run: () => piece.showSure() },
  { key: "w", name: "ways", run: other.ways },
  { key: "e", name: "slurs", run: other.slurs },
  { key: "n", name: "next", run: () => piece.finding(1) },
  { key: "N", name: "previous", run: () => piece.finding(-1) },
  { key: "m", name: "nextMovement", run: () => piece.movement(1) },
  { key: "M", name: "previousMovement", run: () => piece.movement(-1) },
  { key: "p", name: "phrase", run: () => piece.slurHere("phrase") },
  { key: "", name: "isBow", run: () => piece.slurHere("bow") },
  { key: "Ctrl+z", name: "undo", run: () => piece.undo() },
  { key: "Ctrl+Shift+z Ctrl+y", name: "redo", run: () => piece.redo() },
  { key: "Space", name: "play", run: () => sound.toggle() },
  { key: "l", name: "hearing", run: () => sound.settings() },
  { key: "t", name: "pencil", run: () => pencil.show() },
  { key: "b", name: "downbeats", run: () => downbeats.show() },
  { key: "y", name: "layers", run: () => layers.open() },
  { key: "", name: "layerFromFile", run: () => layers.fromFile() },
  { key: "c", name: "layersCompare", run: () => layers.compare() },
  { key: "g", name: "partPages", run: () => pages.show() },
  { key: "x", name: "breakPageHere", run: () => piece.breakHere("page") },
  { key: "X", name: "breakLineHere", run: () => piece.breakHere("line") },
  { key: "s", name: "files", run: () => files.show() },
  { key: "v", name: "sections", run: () => sections() },
  { key: "+ =", name: "larger", run: () => score.resize(1.15) },
  { key: "-", name: "smaller", run: () => score.resize(1 / 1.15) },
  { key: "?", name: "keys", run: () => keys.page() },
  { key: "Ctrl+k", name: "doWhat", run: () => keys.find() },
]);

for (const event of ["opened", "moved", "playing"]) piece.addEventListener(event, showHead);
let movementShown = -1;
piece.addEventListener("chosen", () => {
  const movement = piece.chosen ? piece.score.lines[piece.chosen.line].movement : 0;
  if (movement !== movementShown) showHead();
  movementShown = movement;
});
piece.addEventListener("opened", () => {
  document.title = `${piece.score.title} · Arcata`;
  if (piece.score.lost.length) piece.notice(`${word("lost")} ${piece.score.lost.join("; ")}`);
}, { once: true });

listen((happened) => {
  if (happened.event === "unreadable") piece.notice(`${word("fileUnreadable")} ${happened.why}`);
  else if (happened.by !== me) {
    if (happened.by === "the file") piece.notice(word("fileChanged"));
    piece.took(happened.done).catch((problem) => piece.fail(problem));
  }
}, () => piece.open().catch((problem) => piece.fail(problem)));

if (!(language() in LANGUAGES)) speak("en");
piece.open().then(() => piece.choose(null)).catch((problem) => piece.fail(problem));
