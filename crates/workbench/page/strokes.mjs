// What the chosen stroke does, and what can be asked of it.

import { make } from "./elements.mjs";
import { HOOKS, piece } from "./piece.mjs";
import { word } from "./words.mjs";

/** What can be asked: key, sign, words. */
export const ASKS = [
  ["down", "d", "⊓", "askDown"], ["up", "u", "∨", "askUp"], ["hook", "h", "⌢", "askHook"], ["retake", "r", "⊓⊓", "askRetake"],
  ["free", "⌫", "·", "askFree"],
];

/** @param {HTMLElement} card */
async function show(card) {
  const chosen = piece.chosen;
  const title = make("h2", { text: word("stroke"), id: "stroke-title" });
  if (!chosen) {
    card.replaceChildren(title, make("p", { class: "note", text: word("noStroke") }));
    return;
  }
  const strokes = await piece.strokes(chosen.line);
  const one = strokes[chosen.stroke];
  if (!one || piece.chosen !== chosen) return;
  const asks = make("div", { class: "asks", role: "group", "aria-labelledby": "stroke-title" });
  for (const [what, key, sign, name] of ASKS) {
    const now = what === "free" ? !one.asked : one.asked && (what === one.bow || what === one.link);
    asks.append(make("button", {
      type: "button", "data-ask": what, "aria-keyshortcuts": key === "⌫" ? "Backspace" : key, "aria-pressed": String(now),
      disabled: what === "free" && !one.asked, onclick: () => piece.bowHere(what),
    }, make("span", { class: "sign", "aria-hidden": "true", text: sign }), word(name), " ", make("kbd", { text: key })));
  }
  card.replaceChildren(title, make("p", { text: await piece.inWords(chosen) }), asks);
  if (one.sign) {
    card.append(make("fieldset", { class: "choice", id: "hook-written" }, make("legend", {}, word("writtenAs"), " ", make("kbd", { text: "h" })),
      ...HOOKS.map(([sign, ask, name]) => make("label", {}, make("input", {
        type: "radio", name: "hook-written", value: sign, checked: sign === one.sign, onchange: () => piece.bowHere(ask),
      }), word(name)))));
  }
  const reaches = await piece.reaches();
  if (piece.chosen !== chosen) return;
  if (reaches.length > 1) {
    card.append(make("fieldset", { class: "choice reach" }, make("legend", {}, word("goesFor"), " ", make("kbd", { text: "a" })),
      ...reaches.map(([name, count]) => make("label", {}, make("input", {
        type: "radio", name: "reach", value: name, checked: name === piece.goes, onchange: () => piece.reach(name),
      }), word(`reach_${name}`).replace("#", String(count))))));
  }
  if (one.slurred) {
    card.append(make("div", { class: "asks" },
      make("button", { type: "button", "aria-keyshortcuts": "p", onclick: () => piece.slurHere("phrase") }, word("phrase"), " ", make("kbd", { text: "p" })),
      make("button", { type: "button", class: "quiet", onclick: () => piece.slurHere("bow"), text: word("isBow") })));
  }
}

/** @param {HTMLElement} margin */
export function start(margin) {
  const card = make("section", { class: "card", "aria-labelledby": "stroke-title", id: "stroke" });
  margin.append(card);
  const again = () => show(card).catch((problem) => piece.fail(problem));
  piece.addEventListener("chosen", again);
  piece.addEventListener("opened", again);
  piece.addEventListener("language", again);
  piece.addEventListener("reach", () => {
    for (const radio of card.querySelectorAll("input[name=reach]")) radio.checked = radio.value === piece.goes;
    piece.say(word(`reach_${piece.goes}`).replace("#", String(piece.goes === "here" ? 1 : piece.alike?.[piece.goes].length)));
  });
}
