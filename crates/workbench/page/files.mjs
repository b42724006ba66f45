// What leaves the desk: files beside the score, pages to print, and the score itself.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { look, systemHere } from "./score.mjs";
import { me, send } from "./server.mjs";
import { word } from "./words.mjs";

/** Writes something beside the score. @param {string} what @param {Record<string, any>} [query] */
async function keep(what, query = {}) {
  const search = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) if (value !== undefined) search.set(name, String(value));
  try {
    const kept = await send(`keep/${what}${search.size ? `?${search}` : ""}`, { by: me });
    piece.notice(`${word("keptAs")} ${kept.file}${kept.files > 1 ? ` (${kept.files} ${word("files")})` : ""}`);
    if (kept.told.length) dialog(kept.file, word("close"), make("ul", { lang: "en" }, ...kept.told.map((/** @type {string} */ text) => make("li", { text }))));
  } catch (problem) {
    piece.fail(problem);
  }
}

/** Writes the changes into the score itself. */
async function write() {
  try {
    const { done, kept } = await send("write", { by: me });
    await piece.took(done);
    piece.notice(`${word("scoreWritten")} ${kept}`);
  } catch (problem) {
    piece.fail(problem);
  }
}

/** @param {string} what @param {string} name @param {() => any} run */
const button = (what, name, run) => make("button", { type: "button", "data-keep": what, text: word(name), onclick: run });

/** A page of its own, to be printed from there. @param {string} what @param {string} text */
const page = (what, text) => make("a", { href: `/api/export/${what}`, target: "_blank", rel: "noopener", text });

export function show() {
  const here = systemHere();
  const parts = piece.score.sections.map((/** @type {any} */ one) => page(`parts?part=${one.part}`, one.name));
  dialog(word("files"), word("close"),
    make("h3", { text: word("filesBeside") }),
    make("div", { class: "filelist" },
      button("score", "keepScore", () => keep("score")),
      button("layer", "keepLayer", () => keep("layer")),
      button("parts", "keepParts", () => keep("parts")),
      button("sheet", "keepSheet", () => keep("sheet")),
      button("pdf", "keepPdf", () => keep("pdf")),
      here ? button("picture", "keepPicture", () => keep("picture", { ...look(), ...here })) : null,
      button("aside", "keepAside", () => keep("aside"))),
    make("h3", { text: word("filesPrint") }),
    make("p", { class: "links" }, page("sheet", word("sheet")), page("pdf", word("keepPdf")), ...parts),
    make("h3", { text: word("filesScore") }),
    make("p", { class: "note", text: word("scoreWriteHelp") }),
    make("div", { class: "asks" }, make("button", { type: "button", disabled: !piece.score.changed, text: word("scoreWrite"), onclick: (/** @type {Event} */ event) => {
      /** @type {HTMLElement} */ (event.target).closest("dialog")?.close();
      write();
    } })));
}
