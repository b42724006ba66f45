// Keys, and a box to find whatever can be done by its name.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { Refused, ask } from "./server.mjs";
import { word } from "./words.mjs";

/**
 * @typedef {{key: string, name: string, run: () => any}} Command
 */

/** @type {Command[]} */
let commands = [];

/** @param {KeyboardEvent} event */
const pressed = (event) => {
  const parts = [];
  if (event.ctrlKey || event.metaKey) parts.push("Ctrl");
  if (event.altKey) parts.push("Alt");
  if (event.shiftKey && event.key.length > 1) parts.push("Shift");
  parts.push(event.key === " " ? "Space" : event.key.length === 1 && (event.ctrlKey || event.metaKey) ? event.key.toLowerCase() : event.key);
  if ((event.ctrlKey || event.metaKey) && event.shiftKey && event.key.length === 1) parts.splice(parts.length - 1, 0, "Shift");
  return parts.join("+");
};

/** Shows all keys. */
export function page() {
  const rows = commands.filter((one) => one.key).map((one) => make("tr", {}, make("th", { scope: "row" }, ...one.key.split(" ").flatMap((key) => [make("kbd", { text: key }), " "])), make("td", { text: word(one.name) })));
  dialog(word("keys"), word("close"), make("table", {}, make("tbody", {}, ...rows)), make("p", { class: "note", text: word("caution") }));
}

/** Finds a command by its name, or a place as it is typed: "12", "II, bar 12, beat 3½". */
export function find() {
  const list = make("ul", { class: "choices", role: "listbox", id: "choices", "aria-label": word("doWhat") });
  const input = make("input", { style: "width: 100%", role: "combobox", "aria-expanded": "true", "aria-controls": "choices", "aria-label": word("doWhat"), placeholder: word("doWhat") });
  const box = dialog(word("doWhat"), word("close"), input, list);
  let at = 0;
  const fitting = () => commands.filter((one) => word(one.name).toLowerCase().includes(input.value.trim().toLowerCase()));
  const run = (/** @type {Command} */ one) => {
    box.close();
    one.run();
  };
  const goTo = async () => {
    try {
      const place = await ask("place", { text: input.value, movement: piece.chosen ? piece.score.lines[piece.chosen.line].movement : undefined });
      box.close();
      await piece.goTo(place.first, place.part, place.beat);
    } catch (problem) {
      if (!(problem instanceof Refused)) return piece.fail(problem);
      list.replaceChildren(make("li", { role: "alert", text: problem.message }));
    }
  };
  const nothing = () => /\p{Nd}/u.test(input.value)
    ? make("li", { role: "option", id: "choice-0", "aria-selected": "true", onclick: goTo }, make("span", { text: `${word("goTo")} ${input.value.trim()}` }))
    : make("li", { text: word("nothingFits") });
  const show = () => {
    const found = fitting();
    at = Math.min(at, Math.max(0, found.length - 1));
    list.replaceChildren(...(found.length ? found.map((one, index) => make("li", {
      role: "option", id: `choice-${index}`, "aria-selected": String(index === at), onclick: () => run(one),
    }, make("span", { text: word(one.name) }), make("span", {}, ...one.key.split(" ").filter(Boolean).map((key) => make("kbd", { text: key })))))
      : [nothing()]));
    input.setAttribute("aria-activedescendant", list.querySelector("[role=option]") ? `choice-${at}` : "");
    list.querySelector("[aria-selected=true]")?.scrollIntoView({ block: "nearest" });
  };
  input.addEventListener("input", () => { at = 0; show(); });
  input.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => {
    const found = fitting();
    if (event.key === "ArrowDown") at = (at + 1) % Math.max(1, found.length);
    else if (event.key === "ArrowUp") at = (at + found.length - 1) % Math.max(1, found.length);
    else if (event.key === "Enter" && found[at]) run(found[at]);
    else if (event.key === "Enter") {
      event.preventDefault();
      return goTo();
    }
    else return;
    event.preventDefault();
    show();
  });
  show();
  input.focus();
}

/** @param {Command[]} all */
export function start(all) {
  commands = all;
  document.addEventListener("keydown", (event) => {
    const target = /** @type {HTMLElement} */ (event.target);
    const typing = target.closest("input, textarea, select, dialog");
    const said = pressed(event);
    if (typing && !said.startsWith("Ctrl+k")) return;
    // Space and Enter press the button that has the focus.
    if (target.closest("button, a, canvas") && (said === "Space" || said === "Enter")) return;
    const one = commands.find((command) => command.key.split(" ").includes(said));
    if (!one) return;
    event.preventDefault();
    Promise.resolve(one.run()).catch((problem) => piece.fail(problem));
  });
}
