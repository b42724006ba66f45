// The page put together.

import * as downbeats from "./downbeats.mjs";
import { make } from "./elements.mjs";
import * as findings from "./findings.mjs";
import * as keys from "./keys.mjs";
import * as overview from "./overview.mjs";
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
    piece.act(input.value === "" ? { act: "tempo" } : { act: "tempo", quarters });
  });
  return make("label", {}, make("span", { text: word("tempo") }), input);
}

function sections() {
  const named = Object.fromEntries(piece.score.sections.map((/** @type {any} */ one) => [String(one.part), one.name]));
  const now = [...piece.parts].join(",");
  return choice("sections", { "": word("all"), ...named }, now, (value) => {
    piece.parts = new Set(value === "" ? [] : [Number(value)]);
    piece.dispatchEvent(new CustomEvent("parts"));
  });
}

function showHead() {
  if (!piece.score) return;
  const facts = [piece.score.file, `${piece.score.bars.length} ${word("bars")}`, `${piece.score.bowings} ${word("bowings")}`, ...piece.score.assumptions];
  const piecewise = make("div", { class: "piece" }, make("h1", { id: "title", text: piece.score.title }), make("p", { text: facts.join(" · ") }));
  const acts = make("div", { class: "group" },
    button("undo", "Control+Z", () => piece.undo(), { disabled: piece.score.undo === 0 }),
    button("redo", "Control+Shift+Z", () => piece.redo(), { disabled: piece.score.redo === 0 }),
    button(sound.isPlaying() ? "stop" : "play", "Space", () => sound.toggle()),
    button("pencil", "t", () => pencil.show()),
    button("downbeats", "b", () => downbeats.show()),
    button("files", "s", () => pencil.files()),
    button("doWhat", "Control+K", () => keys.find()),
    button("keys", "?", () => keys.page()));
  const settings = make("div", { class: "group" },
    piece.score.sections.length > 1 ? sections() : null,
    tempo(),
    choice("player", { professional: word("professional"), amateur: word("amateur"), student: word("student") }, piece.score.player,
      (profile) => piece.act({ act: "player", profile })),
    choice("language", NAMES, language(), (code) => {
      speak(code);
      say();
      piece.dispatchEvent(new CustomEvent("language"));
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
findings.start(margin);

keys.start([
  { key: "ArrowRight", name: "nextStroke", run: () => piece.step(1) },
  { key: "ArrowLeft", name: "previousStroke", run: () => piece.step(-1) },
  { key: "ArrowDown", name: "lineBelow", run: () => piece.across(1) },
  { key: "ArrowUp", name: "lineAbove", run: () => piece.across(-1) },
  { key: "d", name: "askDown", run: () => piece.bowHere("down") },
  { key: "u", name: "askUp", run: () => piece.bowHere("up") },
  { key: "h", name: "askHook", run: () => piece.bowHere("hook") },
  { key: "r", name: "askRetake", run: () => piece.bowHere("retake") },
  { key: "Backspace Delete", name: "askFree", run: () => piece.bowHere("free") },
  { key: "w", name: "ways", run: other.ways },
  { key: "e", name: "slurs", run: other.slurs },
  { key: "n", name: "next", run: () => piece.finding(1) },
  { key: "N", name: "previous", run: () => piece.finding(-1) },
  { key: "p", name: "phrase", run: () => piece.slurHere("phrase") },
  { key: "", name: "isBow", run: () => piece.slurHere("bow") },
  { key: "Ctrl+z", name: "undo", run: () => piece.undo() },
  { key: "Ctrl+Shift+z Ctrl+y", name: "redo", run: () => piece.redo() },
  { key: "Space", name: "play", run: () => sound.toggle() },
  { key: "l", name: "hearing", run: () => sound.settings() },
  { key: "t", name: "pencil", run: () => pencil.show() },
  { key: "b", name: "downbeats", run: () => downbeats.show() },
  { key: "s", name: "files", run: () => pencil.files() },
  { key: "+ =", name: "larger", run: () => score.resize(1.15) },
  { key: "-", name: "smaller", run: () => score.resize(1 / 1.15) },
  { key: "?", name: "keys", run: () => keys.page() },
  { key: "Ctrl+k", name: "doWhat", run: () => keys.find() },
]);

for (const event of ["opened", "moved", "playing"]) piece.addEventListener(event, showHead);
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
