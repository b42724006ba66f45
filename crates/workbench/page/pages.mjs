// The pages of a part as they would be printed, with what its player has at the end of each; here somebody says where pages and
// lines are to begin.

import { dialog, make, picture } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

/**
 * @typedef {{page: number, first: number, last: number, left: number, right: number, top: number, bottom: number, asked: "line" | "page" | null}} PageBar
 * @typedef {{name: string | null, side: "left" | "right" | "fold", picture: {svg: string, width: number, height: number},
 *   end: {kind: string, free: number, needed: number, said: string} | null}} PartPage
 * @typedef {{version: number, part: number, pages: PartPage[], bars: PageBar[], told: string[]}} PartPages
 */

/** @type {HTMLDialogElement | null} */
let box = null;
let part = 0;
/** The bar that is chosen, index. */
let bar = 0;
/** @type {PartPages | null} */
let made = null;
/** What was asked for last: an answer to something before it is not shown. */
let asked = 0;

const sheets = make("div", { class: "sheets", role: "application", tabindex: "0" });
const status = make("p", { class: "note", role: "status" });
const told = make("ul", { class: "note" });
/** Which bar is chosen, in words. */
const here = make("output", { class: "here" });

const STYLE = new CSSStyleSheet();
STYLE.replaceSync("svg { display: block; width: 100%; height: auto; }");

/** The index of the chosen bar among those on the pages. */
const chosen = () => (made?.bars ?? []).findIndex((one) => bar >= one.first && bar <= one.last);

/** @param {PageBar} one */
const asks = (one) => one.asked === "page" ? word("didPage") : one.asked === "line" ? word("didLine") : "";

/** @param {PageBar} one @param {number} index @param {PartPage} page */
function overlay(one, index, page) {
  const across = (/** @type {number} */ length) => `${length / page.picture.width * 100}%`;
  const down = (/** @type {number} */ length) => `${length / page.picture.height * 100}%`;
  // A staff is low: what is pressed may stand a little over or under it.
  const more = 3;
  const style = `left: ${across(one.left)}; width: ${across(one.right - one.left)}; top: ${down(one.top - more)}; height: ${down(one.bottom - one.top + 2 * more)}`;
  return make("div", {
    class: "bar", role: "button", tabindex: "-1", "aria-pressed": "false", id: `page-bar-${index}`, style, "data-asked": one.asked, "aria-label": [piece.barsSaid(one.first, one.last), asks(one)].filter(Boolean).join(": "),
    onclick: () => choose(index),
  }, one.asked ? make("span", { text: word(one.asked === "page" ? "signPage" : "signLine") }) : null);
}

/** @param {PartPage} page @param {number} number */
function sheet(page, number) {
  const name = page.name === null ? word("front") : `${word("page")} ${page.name}`;
  const paper = make("div", { class: "paper" });
  const drawn = make("div");
  drawn.attachShadow({ mode: "open" }).adoptedStyleSheets = [STYLE];
  drawn.shadowRoot.append(picture(page.picture, name));
  paper.append(drawn, ...(made?.bars ?? []).map((one, index) => one.page === number ? overlay(one, index, page) : null).filter((one) => one !== null));
  const rushed = page.end?.kind === "rushed";
  return make("figure", { class: `sheet ${page.side}${rushed ? " rushed" : ""}`, role: "group", "aria-label": name }, paper,
    make("figcaption", {}, make("span", { class: rushed ? "wrong" : null, text: page.end ? page.end.said : name })));
}

/** @param {number} index among the bars on the pages */
function choose(index) {
  const one = made?.bars[index];
  if (!one) return;
  bar = one.first;
  mark();
}

/** Goes so many bars on or back: through a long rest bar by bar. @param {number} by */
function step(by) {
  bar = Math.min((piece.score?.bars.length ?? 1) - 1, Math.max(0, bar + by));
  mark();
}

function mark() {
  for (const old of sheets.querySelectorAll("[aria-pressed=true]")) old.setAttribute("aria-pressed", "false");
  const at = chosen();
  here.textContent = made ? piece.barSaid(bar) : "";
  const one = sheets.querySelector(`#page-bar-${at}`);
  sheets.setAttribute("aria-activedescendant", one ? one.id : "");
  one?.setAttribute("aria-pressed", "true");
  one?.scrollIntoView({ block: "nearest", inline: "nearest" });
}

function draw() {
  if (!made) return;
  sheets.replaceChildren(...made.pages.map(sheet));
  told.replaceChildren(...made.told.map((text) => make("li", { text })));
  mark();
}

/** Has the pages made; what is there stays until they come. */
async function renew() {
  if (!box) return;
  asked += 1;
  const mine = asked;
  status.textContent = word("pagesMaking");
  sheets.setAttribute("aria-busy", "true");
  try {
    const pages = await ask("pages", { part });
    if (mine !== asked || !box) return;
    made = pages;
    const rushed = pages.pages.filter((/** @type {PartPage} */ page) => page.end?.kind === "rushed").length;
    const count = pages.pages.length;
    status.textContent = `${count} ${word(count === 1 ? "pageCounted" : "pagesCounted")}; ${rushed ? `${rushed} ${word(rushed === 1 ? "turnQuick" : "turnsQuick")}` : word("noTurnQuick")}`;
    draw();
  } catch (problem) {
    if (mine !== asked || !box) return;
    status.textContent = problem instanceof Error ? problem.message : word("gone");
  } finally {
    if (mine === asked) sheets.removeAttribute("aria-busy");
  }
}

/** Asks for a page or a line to begin with the chosen bar; where that is asked for already, takes it back. @param {"page" | "line"} begins */
async function toggle(begins) {
  if (made) await piece.breakAt(part, bar, begins);
}

/** The bar of the line above or below that stands nearest. @param {1 | -1} by */
function across(by) {
  const bars = made?.bars ?? [];
  const at = bars[chosen()];
  if (!at) return choose(0);
  const order = bars.map((one, index) => ({ one, index }));
  const beyond = (by > 0 ? order : order.reverse()).filter(({ one }) => by > 0 ? one.first > at.first : one.first < at.first);
  const line = beyond.find(({ one }) => one.page !== at.page || one.top !== at.top)?.one;
  if (!line) return;
  const there = beyond.filter(({ one }) => one.page === line.page && one.top === line.top);
  const far = (/** @type {PageBar} */ one) => Math.abs(one.left - at.left);
  choose(there.reduce((best, other) => far(other.one) < far(best.one) ? other : best).index);
}

/** @param {KeyboardEvent} event */
function pressed(event) {
  if (/** @type {HTMLElement} */ (event.target).closest("select")) return;
  const ctrl = event.ctrlKey || event.metaKey;
  const last = (made?.bars.length ?? 1) - 1;
  /** @type {Record<string, () => any>} */
  const keys = ctrl ? { z: () => piece.undo(), Z: () => piece.redo(), y: () => piece.redo() } : {
    ArrowRight: () => step(1), ArrowLeft: () => step(-1),
    ArrowDown: () => across(1), ArrowUp: () => across(-1), Home: () => choose(0), End: () => choose(last),
    x: () => toggle("page"), X: () => toggle("line"),
  };
  const run = keys[event.key];
  if (!run) return;
  event.preventDefault();
  event.stopPropagation();
  Promise.resolve(run()).catch((problem) => piece.fail(problem));
}

/** Opens the pages of the part with the chosen stroke. */
export async function show() {
  const sections = /** @type {{part: number, name: string}[]} */ (piece.score.sections);
  const stroke = piece.chosen;
  part = stroke ? piece.score.lines[stroke.line].part : sections.find((one) => !piece.parts.size || piece.parts.has(one.part))?.part ?? 0;
  bar = stroke ? (await piece.strokes(stroke.line))[stroke.stroke]?.bar ?? 0 : 0;
  made = null;
  sheets.replaceChildren();
  told.replaceChildren();
  sheets.setAttribute("aria-label", word("partPages"));
  const select = make("select", { onchange: () => {
    part = Number(select.value);
    made = null;
    sheets.replaceChildren();
    void renew();
  } }, ...sections.map((one) => make("option", { value: one.part, text: one.name, selected: one.part === part })));
  const button = (/** @type {string} */ name, /** @type {string} */ key, /** @type {() => any} */ run) =>
    make("button", { type: "button", title: `${word(name)} (${key})`, "aria-keyshortcuts": key, text: word(name), onclick: run });
  box = dialog(word("partPages"), word("close"),
    make("p", { class: "note", text: word("pagesHelp") }),
    make("div", { class: "above" },
      make("div", { class: "asks" },
        sections.length > 1 ? make("label", {}, make("span", { text: word("part") }), select) : null,
        button("breakPage", "x", () => toggle("page")), button("breakLine", "X", () => toggle("line")),
        button("undo", "Control+Z", () => piece.undo()), here),
      status),
    told, sheets);
  box.classList.add("pages");
  box.addEventListener("keydown", pressed);
  box.addEventListener("close", () => { box = null; });
  sheets.focus();
  await renew();
}

export function start() {
  for (const event of ["moved", "opened", "language"]) piece.addEventListener(event, () => { void renew(); });
}
