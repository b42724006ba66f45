// What is shown while no score is open: those opened last, the folders of this machine, the demos.

import { make } from "./elements.mjs";
import { language, NAMES, speak, word } from "./words.mjs";

/**
 * @typedef {{path: string, name: string, folder: string}} Offered
 * @typedef {{last: Offered[], demos: string[], folder: string, remembers: boolean}} Offer
 * @typedef {{folder: string, parent: string | null, folders: Offered[], scores: Offered[], more: boolean}} Folder
 */

/** What the demos are. @type {Record<string, string>} */
const DEMOS = { "lantern-study": "siteDemoStudy", "ferry-bell-quartet": "siteDemoQuartet", "slipway-strings": "siteDemoOrchestra" };

/** @type {Offer} */
let offer;
/** @type {Folder | null} */
let folder = null;
let trouble = "";
/** What is being opened now. */
let opening = "";

/** @param {string} path @param {any} [body] what is sent; without it something is only asked */
async function ask(path, body) {
  const answer = await fetch(`/entrance/${path}`, body === undefined ? {} : { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) });
  const text = await answer.text();
  if (answer.ok) return text === "" ? null : JSON.parse(text);
  let why = text;
  try {
    why = JSON.parse(text).why ?? text;
  } catch {
    // The guard answers in plain words.
  }
  throw new Error(why);
}

/** Does something and shows the page anew, with what went wrong. @param {() => Promise<any>} job */
async function doing(job) {
  trouble = "";
  try {
    await job();
  } catch (problem) {
    trouble = problem instanceof Error ? problem.message : String(problem);
  }
  opening = "";
  show();
}

/** @param {string} path */
const look = (path) => doing(async () => { folder = await ask(`folder?at=${encodeURIComponent(path)}`); });

/** @param {{score: string} | {demo: string}} choice @param {string} name */
async function open(choice, name) {
  opening = name;
  show();
  try {
    const { address } = await ask("open", choice);
    if (address) location.assign(address);
    else location.reload();
  } catch (problem) {
    opening = "";
    trouble = problem instanceof Error ? problem.message : String(problem);
    show();
  }
}

/** @param {Offered} one @param {boolean} where whether its folder is said, too */
const score = (one, where) => make("li", {},
  make("button", { type: "button", "data-score": one.path, text: one.name, onclick: () => open({ score: one.path }, one.name) }),
  where ? make("span", { class: "note", text: ` ${one.folder}` }) : null);

/** The folder that is looked at. */
function shelf() {
  const path = make("input", { type: "text", value: folder?.folder ?? offer.folder, spellcheck: "false", autocomplete: "off", "data-name": "folder" });
  const form = make("form", { class: "asks" }, make("label", { class: "wide" }, make("span", { text: word("startFolder") }), path), make("button", { type: "submit", text: word("startShow") }));
  form.addEventListener("submit", (/** @type {SubmitEvent} */ event) => { event.preventDefault(); void look(path.value); });
  const parent = folder?.parent;
  const empty = folder && !folder.folders.length && !folder.scores.length;
  return [
    make("h2", { text: word("startHere") }),
    form,
    make("ul", { class: "works shelf" },
      parent ? make("li", {}, make("button", { type: "button", class: "quiet", "data-name": "up", text: `↑ ${word("startUp")}`, onclick: () => look(parent) })) : null,
      ...(folder?.scores ?? []).map((one) => score(one, false)),
      ...(folder?.folders ?? []).map((one) => make("li", {}, make("button", { type: "button", class: "quiet", "data-folder": one.path, text: `${one.name}/`, onclick: () => look(one.path) })))),
    empty || (folder && !folder.scores.length) ? make("p", { class: "note", text: word("startNone") }) : null,
    folder?.more ? make("p", { class: "note", text: word("startMore") }) : null,
  ];
}

function show() {
  const select = make("select", { "data-name": "language", onchange: () => { speak(select.value); show(); } },
    ...Object.entries(NAMES).map(([code, name]) => make("option", { value: code, text: name, selected: code === language() })));
  const section = make("section", { id: "start", "aria-labelledby": "start-title", "aria-busy": opening ? "true" : "false" },
    make("div", { class: "box-head" }, make("h1", { id: "start-title", text: "Arcata" }), make("label", {}, make("span", { text: word("language") }), select)),
    make("p", { text: word("startIntroduction") }),
    trouble ? make("p", { class: "trouble", role: "alert", text: trouble }) : null,
    opening ? make("p", { role: "status", text: `${word("siteOpening")} ${opening}` }) : null,
    ...(offer.last.length ? [
      make("h2", { text: word("startLast") }),
      make("ul", { class: "works" }, ...offer.last.map((one) => score(one, true))),
      make("button", { type: "button", class: "quiet", "data-name": "forget", text: word("startForget"), onclick: () => doing(async () => { await ask("forget", {}); offer.last = []; }) }),
    ] : []),
    ...shelf(),
    ...(offer.remembers ? [
      make("h2", { text: word("siteDemos") }),
      make("div", { class: "asks" }, ...offer.demos.map((name) =>
        make("button", { type: "button", "data-demo": name, text: word(DEMOS[name] ?? name), onclick: () => open({ demo: name }, word(DEMOS[name] ?? name)) }))),
    ] : []),
    make("hr"),
    make("p", { class: "note", text: word("caution") }));
  document.getElementById("start")?.remove();
  document.body.prepend(section);
  document.documentElement.lang = language();
}

// The program ends with its last page where it was started from a desktop: this one is there.
new EventSource("/entrance/here");
offer = await ask("offer");
await look(offer.folder);
