// Other ways to bow the bars from the chosen stroke on, each as a small picture with what it gains and costs.

import { make, picture } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

/** Bars that are looked at. */
const BARS = 3;

/** What is better and what is worse, each with its share of the penalty. @param {any} way */
function weighed(way) {
  const item = (/** @type {string} */ which) => (/** @type {string} */ text) => make("li", {}, `${word(which)}: `, make("span", { text }));
  const list = [...way.gains.map(item("better")), ...way.losses.map(item("worse"))];
  return list.length ? make("ul", {}, ...list) : null;
}

/** What a penalty is measured by. */
const yardstick = () => make("p", { class: "note yardstick", text: word("yardstick").replace("#", piece.score.yardstick) });

/** @param {any} way @param {number} line */
function one(way, line) {
  return make("article", { class: "way" },
    make("h3", { text: way.name }),
    way.picture && picture(way.picture, way.name),
    way.asks.length
      ? make("p", { class: "note", text: word("penaltyMore").replace("#", way.penalty) })
      : make("p", { class: "note", text: word("planNow") }),
    weighed(way),
    way.asks.length
      ? make("button", { type: "button", class: "take", onclick: async () => { if (await piece.bow(line, way.asks)) piece.did(way.name); }, text: word("takeWay") })
      : null);
}

let wanted = 0;

/** Shows the ways from the chosen stroke. @param {HTMLElement} box */
async function show(box) {
  const chosen = piece.chosen;
  if (!chosen) return piece.say(word("noStroke"));
  const number = ++wanted;
  const bar = (await piece.strokes(chosen.line))[chosen.stroke].bar;
  box.setAttribute("aria-busy", "true");
  try {
    const ways = await ask("ways", { line: chosen.line, first: bar, last: Math.min(bar + BARS, piece.score.bars.length - 1) });
    if (number !== wanted) return;
    box.replaceChildren(...(ways.length > 1 ? [yardstick(), ...ways.map((/** @type {any} */ way) => one(way, chosen.line))] : [make("p", { class: "note", text: word("noWays") })]));
    piece.say(`${ways.length} ${word("ways")}`);
  } catch (problem) {
    piece.fail(problem);
  } finally {
    box.removeAttribute("aria-busy");
  }
}

/** A change of the slurs. @param {any} offer @param {{line: number, first: number, last: number}} where */
function slur(offer, where) {
  const music = make("div", { class: "music", "data-waiting": true });
  const seen = new IntersectionObserver(async (entries) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    seen.disconnect();
    try {
      music.append(picture(await piece.look({ edits: offer.edits, ...where }), offer.sentence));
    } catch {
      // The sentence says it, too.
    }
    music.removeAttribute("data-waiting");
  });
  seen.observe(music);
  return make("article", { class: "way" },
    make("h3", { text: offer.sentence }),
    make("p", { class: "note", text: word(offer.more > 0 ? "slursMore" : "slursLess").replace("#", offer.penalty) }),
    music,
    weighed(offer),
    make("div", { class: "asks" },
      make("button", { type: "button", class: "layered", text: word("intoLayer"), onclick: () => piece.slurs(offer.edits) }),
      make("button", { type: "button", class: "rewrite", text: word("write"), onclick: () => piece.act({ act: "change", sentence: offer.sentence, edits: offer.edits }, `${offer.sentence} ${word("changed")}`) })));
}

/** Shows what could be changed in the slurs around the chosen stroke. @param {HTMLElement} box */
async function showSlurs(box) {
  const chosen = piece.chosen;
  if (!chosen) return piece.say(word("noStroke"));
  const number = ++wanted;
  box.setAttribute("aria-busy", "true");
  try {
    const offers = await ask("slurs", chosen);
    if (number !== wanted) return;
    box.replaceChildren(...(offers.length ? [yardstick(), ...offers.map((/** @type {any} */ offer) => slur(offer, { line: chosen.line, first: offer.first, last: offer.last }))] : [make("p", { class: "note", text: word("noSlurs") })]));
    piece.say(`${offers.length} ${word("slurs")}`);
  } catch (problem) {
    piece.fail(problem);
  } finally {
    box.removeAttribute("aria-busy");
  }
}

/** @param {HTMLElement} margin @returns {{ways: () => any, slurs: () => any}} shows them */
export function start(margin) {
  const box = make("div");
  const button = make("button", { type: "button", "aria-keyshortcuts": "w" });
  const slurs = make("button", { type: "button", "aria-keyshortcuts": "e" });
  const section = make("section", { id: "ways", "aria-labelledby": "ways-title" }, make("h2", { id: "ways-title" }),
    make("div", { class: "asks" }, button, slurs), box);
  margin.append(section);
  const label = () => {
    section.querySelector("h2").textContent = word("ways");
    button.replaceChildren(word("waysFor"), " ", make("kbd", { text: "w" }));
    slurs.replaceChildren(word("slurs"), " ", make("kbd", { text: "e" }));
  };
  const open = { ways: () => show(box), slurs: () => showSlurs(box) };
  button.addEventListener("click", open.ways);
  slurs.addEventListener("click", open.slurs);
  piece.addEventListener("language", label);
  piece.addEventListener("moved", () => box.replaceChildren());
  piece.addEventListener("opened", () => box.replaceChildren());
  label();
  return open;
}
