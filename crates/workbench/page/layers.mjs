// The layers on the desk: which are shown, which is written in, and two of them held against each other.

import { dialog, make, picture } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

/** @typedef {{name: string, about: string, bowings: number, shown: boolean, written: boolean}} Layer */

/** @returns {Promise<{name: string, text: string} | null>} */
function chosenFile() {
  return new Promise((resolve) => {
    const input = make("input", { type: "file", accept: ".json,application/json" });
    input.addEventListener("change", async () => {
      const file = input.files?.[0];
      resolve(file ? { name: file.name.replace(/(\.bowings)?\.json$/, ""), text: await file.text() } : null);
    });
    input.addEventListener("cancel", () => resolve(null));
    input.click();
  });
}

/** A name that no layer on the desk has. @param {string} name */
function free(name) {
  const taken = new Set(piece.score.layers.map((/** @type {Layer} */ one) => one.name));
  for (let number = 2, now = name; ; number += 1) {
    if (!taken.has(now)) return now;
    now = `${name} ${number}`;
  }
}

/** Lays a layer from a file on the desk; several at once are several acts. */
export async function fromFile() {
  const file = await chosenFile();
  if (file) await piece.act({ act: "layer", name: free(file.name), text: file.text }, word("didLayer"));
}

/** @param {Layer} layer */
function row(layer) {
  const shown = make("input", { type: "checkbox", "aria-label": `${layer.name}: ${word("layerShown")}`,
    onchange: () => piece.act({ act: "show", name: layer.name, shown: shown.checked }, `${layer.name}: ${word(shown.checked ? "layerShown" : "layerHidden")}`) });
  shown.checked = layer.shown;
  const written = make("input", { type: "radio", name: "written", "aria-label": `${layer.name}: ${word("layerWritten")}`,
    onchange: () => piece.act({ act: "choose", name: layer.name }, `${layer.name}: ${word("layerWritten")}`) });
  written.checked = layer.written;
  const only = piece.score.layers.length === 1;
  return make("tr", {},
    make("th", { scope: "row" }, layer.name, layer.about ? make("span", { class: "note", text: ` ${layer.about}` }) : null),
    make("td", { text: String(layer.bowings) }),
    make("td", {}, shown), make("td", {}, written),
    make("td", { class: "asks" },
      layer.written ? null : make("button", { type: "button", class: "quiet", title: word("layerTakeUpHelp"), text: word("layerTakeUp"),
        onclick: () => piece.act({ act: "take-up", name: layer.name }, `${layer.name}: ${word("didCopied")}`) }),
      only ? null : make("button", { type: "button", class: "quiet", text: word("layerTakeAway"),
        onclick: () => piece.act({ act: "take-away", name: layer.name }, `${layer.name}: ${word("didClosed")}`) })));
}

/** A new one, empty. */
function begin() {
  const name = make("input", { "aria-label": word("layerName"), value: free(word("layerNewName")) });
  const done = async () => {
    if (await piece.act({ act: "layer", name: name.value }, word("didLayer"))) box.close();
  };
  const box = dialog(word("layerNew"), word("close"), make("label", {}, word("layerName"), name),
    make("div", { class: "asks" }, make("button", { type: "button", text: word("keep"), onclick: done })));
  name.addEventListener("keydown", (/** @type {KeyboardEvent} */ event) => { if (event.key === "Enter") done(); });
  name.select();
}

/** The music of a passage under a layer, drawn when it comes into view. @param {any} passage @param {number} layer @param {string} name */
function under(passage, layer, name) {
  const figure = make("figure", { "data-waiting": true }, make("figcaption", { text: name }));
  const seen = new IntersectionObserver(async (entries) => {
    if (!entries.some((entry) => entry.isIntersecting)) return;
    seen.disconnect();
    try {
      const { line, first, last } = passage;
      figure.append(picture(await ask("layers/picture", { layer, line, first, last }), `${passage.name}: ${name}`));
    } catch (problem) {
      figure.append(make("p", { class: "note", text: problem instanceof Error ? problem.message : word("gone") }));
    } finally {
      figure.removeAttribute("data-waiting");
    }
  });
  seen.observe(figure);
  return figure;
}

/** @param {any} passage @param {[number, number]} numbers @param {[string, string]} names */
function passageOf(passage, numbers, names) {
  const where = piece.barsSaid(passage.first, passage.last);
  const rows = passage.differences.map((/** @type {any} */ one) => make("tr", {}, make("th", { scope: "row", text: one.place }),
    make("td", { text: one.one ?? word("silentThere") }), make("td", { text: one.other ?? word("silentThere") })));
  return make("article", { class: "passage" },
    make("h3", { text: `${passage.name}, ${where}` }),
    passage.line === null ? null : make("div", { class: "pair" }, under(passage, numbers[0], names[0]), under(passage, numbers[1], names[1])),
    make("table", { lang: "en" }, make("thead", {}, make("tr", {}, make("td"), make("th", { scope: "col", text: names[0] }), make("th", { scope: "col", text: names[1] }))),
      make("tbody", {}, ...rows)));
}

/** Two layers side by side. */
export function compare() {
  /** @type {Layer[]} */
  const layers = piece.score.layers;
  if (layers.length < 2) return piece.notice(word("layerOnlyOne"));
  const choice = (/** @type {number} */ now, /** @type {string} */ name) => {
    const select = make("select", { "aria-label": word(name) },
      ...layers.map((layer, index) => make("option", { value: index, text: layer.name, selected: index === now })));
    select.addEventListener("change", () => show());
    return select;
  };
  const writing = layers.findIndex((layer) => layer.written);
  const one = choice(writing, "layerOne");
  const other = choice(writing === layers.length - 1 ? 0 : layers.length - 1, "layerOther");
  const list = make("div", { "aria-live": "polite" });
  const box = dialog(word("layersCompare"), word("close"), make("div", { class: "asks" }, one, other), list);
  box.classList.add("wide");
  const show = async () => {
    const numbers = /** @type {[number, number]} */ ([Number(one.value), Number(other.value)]);
    try {
      const found = await ask("layers/differences", { one: numbers[0], other: numbers[1] });
      const names = /** @type {[string, string]} */ (numbers.map((number) => layers[number].name));
      list.replaceChildren(...(found.length ? found.map((/** @type {any} */ passage) => passageOf(passage, numbers, names)) : [make("p", { text: word("same") })]));
    } catch (problem) {
      piece.fail(problem);
    }
  };
  show();
}

/** @param {HTMLElement} margin */
export function start(margin) {
  const summary = make("summary", {}, make("h2", { id: "layers-title" }));
  const box = make("div");
  const details = make("details", { id: "layers", "aria-labelledby": "layers-title" }, summary, box);
  margin.append(details);
  let many = 0;
  const show = () => {
    /** @type {Layer[]} */
    const layers = piece.score?.layers ?? [];
    // Whoever lays a second one on the desk wants to see which is which.
    if (layers.length > Math.max(1, many)) details.open = true;
    many = layers.length;
    const written = layers.find((layer) => layer.written);
    const title = /** @type {HTMLElement} */ (summary.firstElementChild);
    title.textContent = written && layers.length > 1 ? `${word("layers")}: ${written.name}` : word("layers");
    const had = /** @type {HTMLElement | null} */ (document.activeElement)?.getAttribute("aria-label");
    const heads = ["layerBowings", "layerShown", "layerWritten"].map((name) => make("th", { scope: "col", text: word(name) }));
    box.replaceChildren(
      make("div", { class: "scroll" }, make("table", { class: "layers" }, make("thead", {}, make("tr", {}, make("td"), ...heads, make("td"))),
        make("tbody", {}, ...[...layers].reverse().map(row)))),
      make("div", { class: "asks" },
        make("button", { type: "button", text: word("layerNew"), onclick: begin }),
        make("button", { type: "button", text: word("layerFromFile"), onclick: fromFile }),
        make("button", { type: "button", text: word("layersCompare"), disabled: layers.length < 2, onclick: compare })));
    if (had) /** @type {HTMLElement | null} */ ([...box.querySelectorAll("[aria-label]")].find((one) => one.getAttribute("aria-label") === had))?.focus();
  };
  for (const event of ["opened", "moved", "language"]) piece.addEventListener(event, show);
}

/** Opens the list and goes there. */
export function open() {
  const details = /** @type {HTMLDetailsElement} */ (document.getElementById("layers"));
  details.open = true;
  details.scrollIntoView({ block: "nearest" });
  details.querySelector("summary")?.focus();
}
