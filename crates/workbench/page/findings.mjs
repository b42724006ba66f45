// What the review says, beside the music: with its numbers, its reasons and what could be done.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask } from "./server.mjs";
import { language, word } from "./words.mjs";

const WEIGHTS = ["A", "B", "C", "D"];
const shown = new Set(WEIGHTS);

/** A severity: a disc, and its word for those who do not see it. @param {string} severity */
const sign = (severity) => make("span", { class: `weight ${severity}`, role: "img", "aria-label": word(`severity${severity}`), title: word(`severity${severity}`) });

/** @param {any} found */
function setAside(found) {
  const reason = make("input", { required: true, style: "width: 100%", "aria-label": word("asideReason") });
  const box = dialog(word("asideReason"), word("close"), make("form", { method: "dialog" },
    make("p", { text: found.finding.sentence }), reason,
    make("div", { class: "asks" }, make("button", { text: word("keep") }),
      make("button", { type: "button", class: "quiet", text: word("cancel"), onclick: () => box.close() }))));
  box.querySelector("form")?.addEventListener("submit", async () => {
    const { place, rule, reasons } = found.finding;
    // All that is said of the place is set aside with it.
    for (const one of [rule, ...reasons.map((/** @type {any} */ other) => other.rule)]) {
      await piece.act({
        act: "aside", rule: one, part: found.part === null ? undefined : place.section,
        movement: piece.score.movements.indexOf(piece.movementOf(found.bar)) + 1 || undefined, bar: place.bar, beat: place.beat,
        reason: reason.value,
      });
    }
    piece.did(word("didAside"));
  });
  reason.focus();
}

/** @param {string} rule */
async function explain(rule) {
  const text = await ask(`rules/${rule}`, { language: language() });
  dialog(text.title, word("close"), make("div", { lang: text.language },
    ...text.finds.split("\n\n").map((/** @type {string} */ one) => make("p", { text: one })),
    ...text.why.split("\n\n").map((/** @type {string} */ one) => make("p", { text: one }))),
    make("p", { class: "note", text: word("caution") }));
}

/** @param {any} found @param {number} index */
function one(found, index) {
  const { finding } = found;
  const also = finding.count > 1 ? ` (${finding.count})` : "";
  const body = make("article", { class: "finding", id: `finding-${index}`, tabindex: "-1" },
    make("button", { type: "button", class: "place", onclick: () => piece.goTo(found.bar, found.part) },
      make("span", { class: "where" }, sign(finding.severity),
        `${piece.barSaid(found.bar)}, ${word("beat")} ${found.beat}, ${finding.place.section}${also}`),
      make("span", { text: finding.sentence })));
  const more = make("div", { class: "more" });
  finding.reasons.forEach((/** @type {any} */ reason) => {
    more.append(make("div", { class: "proposal" },
      make("span", {}, sign(reason.severity), " ", make("span", { text: reason.sentence })),
      make("button", { type: "button", class: "quiet", onclick: () => explain(reason.rule), text: word("why") })));
  });
  finding.proposals.forEach((/** @type {any} */ proposal, /** @type {number} */ number) => {
    more.append(make("div", { class: "proposal" },
      make("span", { text: `→ ${proposal.sentence} (${found.grades[number]})` }),
      found.writable[number]
        ? make("button", { type: "button", onclick: () => piece.change(index, number), text: word("write") })
        : null));
  });
  more.append(make("div", { class: "asks" },
    make("button", { type: "button", class: "quiet", onclick: () => explain(finding.rule), text: word("why") }),
    make("button", { type: "button", class: "quiet", onclick: () => setAside(found), text: word("asideButton") })));
  body.append(more);
  return body;
}

/** @param {HTMLElement} margin */
export function start(margin) {
  const list = make("div");
  const count = make("p", { class: "note" });
  const weights = make("div", { class: "weights", role: "group" });
  const title = make("h2", { id: "findings-title" });
  margin.append(make("section", { id: "findings", "aria-labelledby": "findings-title" }, title, count, weights, list));
  const show = () => {
    title.textContent = word("inView");
    const all = piece.findings?.findings ?? [];
    const aside = piece.findings?.aside ?? 0;
    const counted = all.length === 0 ? word("noFindings") : all.length === 1 ? word("oneFinding") : `${all.length} ${word("findings")}`;
    count.textContent = counted + (aside ? `, ${aside} ${word("setAside")}` : "");
    weights.setAttribute("aria-label", word("severity"));
    weights.replaceChildren(...WEIGHTS.map((weight) => {
      const many = all.filter((/** @type {any} */ found) => found.finding.severity === weight).length;
      const box = make("input", { type: "checkbox", onchange: () => { box.checked ? shown.add(weight) : shown.delete(weight); show(); } });
      box.checked = shown.has(weight);
      return make("label", {}, box, sign(weight), ` ${word(`severity${weight}`)} (${many})`);
    }));
    list.replaceChildren(...all.map((/** @type {any} */ found, /** @type {number} */ index) => ({ found, index }))
      .filter((/** @type {any} */ { found }) => shown.has(found.finding.severity))
      .map((/** @type {any} */ { found, index }) => one(found, index)));
  };
  let waiting = 0;
  const again = () => {
    clearTimeout(waiting);
    waiting = window.setTimeout(() => piece.review(), 250);
  };
  piece.addEventListener("opened", () => piece.review());
  piece.addEventListener("moved", again);
  piece.addEventListener("reviewed", show);
  piece.addEventListener("language", show);
  piece.addEventListener("finding", (event) => {
    const found = document.getElementById(`finding-${/** @type {CustomEvent} */ (event).detail.index}`);
    found?.scrollIntoView({ block: "nearest" });
  });
}
