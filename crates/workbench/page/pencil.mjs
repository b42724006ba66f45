// Bowings as they are typed, with what is wrong in them told while one types; and bowings from and to files.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask, me, send } from "./server.mjs";
import { word } from "./words.mjs";

/** The shorthand. */
export async function show() {
  const text = make("textarea", { "aria-label": word("pencil"), spellcheck: "false", autocapitalize: "off" });
  const told = make("pre", { "aria-live": "polite" });
  const enter = make("button", { type: "button", disabled: true, text: word("enter") });
  const now = make("pre");
  const box = dialog(word("pencil"), word("close"), make("p", { class: "note", text: word("pencilHelp") }), text, told,
    make("div", { class: "asks" }, enter), make("h3", { text: word("layerNow") }), now);
  text.focus();
  let waiting = 0;
  text.addEventListener("input", () => {
    clearTimeout(waiting);
    waiting = window.setTimeout(async () => {
      try {
        const said = await send("shorthand", { text: text.value });
        told.className = said.sound ? "" : "wrong";
        told.textContent = said.complaints.length ? said.complaints.join("\n\n") : `${said.decisions} ${word("decisions")}, ${word("textSound")}`;
        enter.disabled = !said.sound || !said.decisions;
      } catch (problem) {
        piece.fail(problem);
      }
    }, 120);
  });
  const done = async () => {
    if (enter.disabled) return;
    if (await piece.act({ act: "enter", text: text.value })) box.close();
  };
  enter.addEventListener("click", done);
  text.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) done();
  });
  now.textContent = (await ask("layer/shorthand")).text;
}

/** @returns {Promise<{name: string, text: string} | null>} */
function chosenFile() {
  return new Promise((resolve) => {
    const input = make("input", { type: "file", accept: ".json,application/json" });
    input.addEventListener("change", async () => {
      const file = input.files?.[0];
      resolve(file ? { name: file.name, text: await file.text() } : null);
    });
    input.addEventListener("cancel", () => resolve(null));
    input.click();
  });
}

/** Holds a layer against the one at hand, side by side. */
async function compare() {
  const file = await chosenFile();
  if (!file) return;
  try {
    const found = await send("layer/compare", { text: file.text });
    const rows = found.map((/** @type {any} */ one) => make("tr", {}, make("th", { scope: "row", text: one.place }),
      make("td", { text: one.here ?? word("silentThere") }), make("td", { text: one.there ?? word("silentThere") })));
    dialog(file.name, word("close"), found.length
      ? make("table", {}, make("thead", {}, make("tr", {}, make("td"), make("th", { scope: "col", text: word("here") }), make("th", { scope: "col", text: word("there") }))), make("tbody", {}, ...rows))
      : make("p", { text: word("same") }));
  } catch (problem) {
    piece.fail(problem);
  }
}

async function takeUp() {
  const file = await chosenFile();
  if (file) await piece.act({ act: "layer", name: file.name, text: file.text });
}

/** Files: what leaves, what comes in. */
export function files() {
  const leaves = [["score", "keepScore"], ["layer", "keepLayer"], ["pdf", "keepPdf"], ["aside", "keepAside"]].map(([what, name]) =>
    make("button", { type: "button", "data-keep": what, text: word(name), onclick: async () => {
      try {
        const { file } = await send(`keep/${what}`, { by: me });
        piece.notice(`${word("keptAs")} ${file}`);
      } catch (problem) {
        piece.fail(problem);
      }
    } }));
  dialog(word("files"), word("close"), make("div", { class: "filelist" }, ...leaves,
    make("button", { type: "button", text: word("takeLayer"), onclick: takeUp }),
    make("button", { type: "button", text: word("compareLayer"), onclick: compare })));
}
