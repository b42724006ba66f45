// What is shown while no score is open: a file to choose or to drop, the demos, what was worked on before.

import { dialog, make } from "./elements.mjs";
import { language, LANGUAGES, NAMES, speak, word } from "./words.mjs";

/** The demo scores in the folder, by the names of their files, and what they are. */
const DEMOS = [
  ["lantern-study", "siteDemoStudy"],
  ["ferry-bell-quartet", "siteDemoQuartet"],
  ["slipway-strings", "siteDemoOrchestra"],
];

/**
 * @typedef {{works: import("./store.mjs").Work[], lasts: boolean, trouble: string, open: (work: string) => any, takeFile: (file: File) => any,
 *   takeDemo: (name: string) => any, remove: (work: string) => any, clear: () => any}} Offer
 * @param {Offer} offer
 */
export function shownStart(offer) {
  hideStart();
  document.body.classList.add("closed");
  const input = make("input", { type: "file", accept: ".musicxml,.mxl,.xml,application/vnd.recordare.musicxml+xml,application/vnd.recordare.musicxml", class: "unseen", tabindex: "-1", "aria-hidden": "true" });
  input.addEventListener("change", () => { if (input.files?.[0]) busy(offer.takeFile(input.files[0])); });
  const choose = make("button", { type: "button", class: "large", "data-name": "choose", text: word("siteChoose"), onclick: () => input.click() });
  const select = make("select", { "data-name": "language", onchange: () => { speak(select.value); shownStart(offer); } },
    ...Object.entries(NAMES).map(([code, name]) => make("option", { value: code, text: name, selected: code === language() })));
  const size = (/** @type {number} */ bytes) => `${Math.max(1, Math.round(bytes / 1000))} KB`;
  const when = (/** @type {number} */ time) => (time ? new Date(time).toLocaleString(language()) : "");
  const section = make("section", { id: "start", "aria-labelledby": "start-title" },
    make("div", { class: "box-head" }, make("h1", { id: "start-title", text: "Arcata" }), make("label", {}, make("span", { text: word("language") }), select)),
    make("p", { text: word("siteIntroduction") }),
    offer.trouble ? make("p", { class: "trouble", role: "alert", text: offer.trouble }) : null,
    make("div", { class: "drop" }, choose, input, make("p", { text: word("siteDrop") })),
    make("h2", { text: word("siteDemos") }),
    make("div", { class: "asks" }, ...DEMOS.map(([name, key]) =>
      make("button", { type: "button", "data-demo": name, text: word(key), onclick: () => busy(offer.takeDemo(name)) }))),
    offer.works.length ? make("h2", { text: word("siteKept") }) : null,
    offer.works.length ? make("ul", { class: "works" }, ...offer.works.map(({ work, name, size: bytes, when: time }) => make("li", {},
      make("button", { type: "button", "data-work": work, text: name, onclick: () => busy(offer.open(work)) }),
      make("span", { class: "note", text: ` ${size(bytes)} ${when(time)} ` }),
      make("button", { type: "button", class: "quiet", "aria-label": `${word("siteForget")}: ${name}`, text: word("siteForget"), onclick: () => sure(`${word("siteForget")}: ${name}`, () => offer.remove(work)) })))) : null,
    offer.works.length ? make("button", { type: "button", class: "quiet", text: word("siteForgetAll"), onclick: () => sure(word("siteForgetAll"), () => offer.clear()) }) : null,
    make("hr"),
    make("p", { class: "note", text: word(offer.lasts ? "siteWhere" : "siteUnkept") }),
    make("p", { class: "note", text: word("siteCannot") }),
    make("p", { class: "note", text: word("caution") }),
    make("p", { class: "note" }, make("a", { href: "NOTICE.txt", text: word("siteNotice") })));
  document.body.prepend(section);
  choose.focus();
}

/** Asks before work goes for good. @param {string} what @param {() => any} job */
export function sure(what, job) {
  const box = dialog(what, word("close"),
    make("p", { text: word("siteForgetSure") }),
    make("div", { class: "asks" },
      make("button", { type: "button", "data-name": "sure", text: what, onclick: () => { box.close(); void job(); } }),
      make("button", { type: "button", text: word("cancel"), onclick: () => box.close() })));
}

/** @param {any} job */
function busy(job) {
  document.getElementById("start")?.setAttribute("aria-busy", "true");
  const line = document.getElementById("start-busy") ?? make("p", { id: "start-busy", role: "status" });
  line.textContent = word("siteOpening");
  document.querySelector("#start .drop")?.append(line);
  void job;
}

export function hideBusy() {
  document.getElementById("start")?.removeAttribute("aria-busy");
  document.getElementById("start-busy")?.remove();
}

export function hideStart() {
  document.getElementById("start")?.remove();
  document.body.classList.remove("closed");
}

if (!(language() in LANGUAGES)) speak("en");
