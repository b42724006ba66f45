// What leaves the desk: files beside the score, or saved through the browser; pages to print, and the score itself.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { look, systemHere } from "./score.mjs";
import { me, save, send } from "./server.mjs";
import { beside, host } from "./transport.mjs";
import { word } from "./words.mjs";

/** Writes something beside the score, or saves it where there is no folder. @param {string} what @param {Record<string, any>} [query] */
async function keep(what, query = {}) {
  if (!host.folder) {
    await save(what, query).catch((problem) => piece.fail(problem));
    return;
  }
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

/** Tenths of a second that printing waits for music that is still being drawn: a rule of thumb. */
const PATIENCE = 300;

/** Prints the page; the browser makes PDF of it. */
async function print() {
  for (const box of document.querySelectorAll("dialog")) box.close();
  // On the screen music is drawn where it comes into sight; on paper all of it is in sight.
  const systems = /** @type {any[]} */ ([...document.querySelectorAll("arcata-system")]);
  await Promise.all(systems.map((system) => system.draw()));
  // What was being drawn already comes a little later.
  for (let tries = 0; tries < PATIENCE && systems.some((system) => !system.isDrawn); tries += 1) await new Promise((resolve) => setTimeout(resolve, 100));
  window.print();
}

/** In a browser without a folder: what it can save, and what it keeps. */
function showSaved() {
  const here = systemHere();
  dialog(word("files"), word("close"),
    make("h3", { text: word("siteSave") }),
    make("div", { class: "filelist" },
      button("score", "keepScore", () => keep("score")),
      button("layer", "keepLayer", () => keep("layer")),
      here ? button("picture", "keepPicture", () => keep("picture", { ...look(), ...here })) : null,
      button("review", "keepReview", () => keep("review")),
      piece.score.breaks.length ? button("breaks", "keepBreaks", () => keep("breaks")) : null,
      button("aside", "keepAside", () => keep("aside"))),
    make("h3", { text: word("filesPrint") }),
    make("div", { class: "filelist" }, button("print", "sitePrint", print)),
    ...beside());
}

export function show() {
  if (!host.folder) return showSaved();
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
      button("review", "keepReview", () => keep("review")),
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
