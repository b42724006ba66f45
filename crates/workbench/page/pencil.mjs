// Bowings as they are typed, with what is wrong in them told while one types.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask, send } from "./server.mjs";
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
        told.textContent = said.complaints.length ? said.complaints.join("\n\n") : `${said.decisions} ${word("layerBowings")}, ${word("textSound")}`;
        enter.disabled = !said.sound || !said.decisions;
      } catch (problem) {
        piece.fail(problem);
      }
    }, 120);
  });
  const done = async () => {
    if (enter.disabled) return;
    if (await piece.act({ act: "enter", text: text.value }, word("didEntered"))) box.close();
  };
  enter.addEventListener("click", done);
  text.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) done();
  });
  now.textContent = (await ask("layer/shorthand")).text;
}
