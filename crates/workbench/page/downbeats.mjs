// Who begins a stroke on which downbeat, as a table.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

/** @type {Record<string, string>} */
const SAID = { down: "⊓", up: "∨", "goes on": "—", rests: "" };
/** @type {Record<string, string>} */
const NAMES = { down: "down", up: "up", "goes on": "goesOn", rests: "rests" };

export async function show() {
  const table = await ask("downbeats");
  const head = make("tr", {}, make("th", { scope: "col", text: word("bar") }),
    ...table.lines.map((/** @type {string} */ name) => make("th", { scope: "col", text: name })), make("th", { scope: "col" }));
  const rows = table.bars.map((/** @type {any} */ bar, /** @type {number} */ index) => make("tr", { class: bar.unspoken ? "nobody" : null },
    make("th", { scope: "row" }, make("button", { type: "button", class: "quiet", text: bar.bar, onclick: () => { box.close(); piece.goTo(index); } })),
    ...bar.lines.map((/** @type {string} */ speaks) => make("td", { title: word(NAMES[speaks]), "aria-label": word(NAMES[speaks]), text: SAID[speaks] })),
    make("td", { text: bar.unspoken ? word("nobody") : "" })));
  const box = dialog(word("downbeatsTitle"), word("close"), make("table", {}, make("thead", {}, head), make("tbody", {}, ...rows)));
}
