// How the page reaches the desk where there is no server: a worker of the page holds it, and what is done is kept in the browser's
// own storage. This file stands in the place of the workbench's file of the same name.

import { dialog, make } from "./elements.mjs";
import { hideBusy, hideStart, shownStart, sure } from "./start.mjs";
import { word } from "./words.mjs";

/** What is around the desk: no folder. */
export const host = { folder: false };

/** @type {Worker} */
let worker = begun();
let next = 0;
/** @type {Map<number, {done: (value: any) => void, failed: (problem: any) => void}>} */
const waiting = new Map();
/** @type {() => void} */
let lookAgain = () => {};

/** Something that went wrong, with a sentence for people. */
class Trouble extends Error {
  /** @param {string | null} key @param {string} why */
  constructor(key, why) {
    super(key ? word(key) : why);
  }
}

/** A worker with nothing on its desk. */
function begun() {
  const one = new Worker(new URL("./desk-worker.mjs", import.meta.url), { type: "module" });
  one.addEventListener("message", ({ data: { id, done, failed } }) => {
    const asked = waiting.get(id);
    waiting.delete(id);
    if (!failed) return asked?.done(done);
    asked?.failed(new Trouble(failed.key, failed.why));
    if (failed.broken) restart();
  });
  one.addEventListener("error", (event) => {
    event.preventDefault();
    restart();
  });
  return one;
}

/** @param {string} job @param {Record<string, any>} [data] @param {Transferable[]} [moved] @returns {Promise<any>} */
function asked(job, data = {}, moved = []) {
  const id = next;
  next += 1;
  return new Promise((done, failed) => {
    waiting.set(id, { done, failed });
    worker.postMessage({ id, job, ...data }, moved);
  });
}

/** What is open, in the address: a tab that is brought back opens it again. */
const named = () => decodeURIComponent(location.hash.slice(1));
/** Whether the browser keeps it when the tab is closed. */
let lasts = true;
/** @type {(value: unknown) => void} */
let opened = () => {};
const isOpen = new Promise((resolve) => { opened = resolve; });
let restarts = 0;

/** Takes another worker, which takes up what was kept. */
async function restart() {
  worker.terminate();
  for (const { failed } of waiting.values()) failed(new Trouble("siteBroke", "the worker has stopped"));
  waiting.clear();
  restarts += 1;
  if (restarts > 3) return tell(word("siteTooLarge"));
  worker = begun();
  if (!named()) return;
  try {
    await asked("open", { work: named() });
    tell(word("siteBroke"));
    lookAgain();
  } catch (problem) {
    tell(/** @type {Error} */ (problem).message);
  }
}

/** @param {string} text */
function tell(text) {
  const line = make("p", { text });
  document.getElementById("notices")?.append(line);
  setTimeout(() => line.remove(), 8000 + 60 * text.length);
}

/** Opens what is kept. @param {string} work */
async function open(work) {
  try {
    ({ lasts } = await asked("open", { work }));
    history.replaceState(null, "", `${location.pathname}#${encodeURIComponent(work)}`);
    hideStart();
    opened(null);
    if (!lasts) tell(word("siteUnkept"));
    const told = sessionStorage.getItem(CARRIED);
    sessionStorage.removeItem(CARRIED);
    if (told) sayCarried(JSON.parse(told));
  } catch (problem) {
    await offer(/** @type {Error} */ (problem).message);
  }
}

/** So large a file no browser holds with its plan, bytes. */
const LARGEST = 256 << 20;

/** Takes a file in and opens it. @param {string} name @param {ArrayBuffer} bytes */
async function take(name, bytes) {
  if (bytes.byteLength > LARGEST) return offer(word("siteTooLarge"));
  try {
    const older = await asked("older", { name, bytes });
    const wanted = older ? await chosen(name) : "apart";
    if (wanted === "nothing") return hideBusy();
    if (older && wanted === "carry") return await carry(older, name, bytes);
    const anew = named() !== "" && lasts;
    const work = await asked("put", { name, bytes }, [bytes]);
    if (anew) {
      // A page that showed another score begins afresh.
      location.hash = encodeURIComponent(work);
      return location.reload();
    }
    await open(work);
    lookAgain();
    // Kept for as long as its user wants: browsers may clear what nobody has asked them to keep.
    navigator.storage?.persist?.().catch(() => {});
  } catch (problem) {
    await offer(/** @type {Error} */ (problem).message);
  }
}

/**
 * Carries the bowings over to a newer version of a score, and opens it.
 * @param {string} older @param {string} name @param {ArrayBuffer} bytes
 */
async function carry(older, name, bytes) {
  const { work, told } = await asked("carry", { from: older, name, bytes });
  if (named() && lasts) {
    // A page that showed another score begins afresh, and says it then.
    sessionStorage.setItem(CARRIED, JSON.stringify(told));
    location.hash = encodeURIComponent(work);
    return location.reload();
  }
  await open(work);
  lookAgain();
  sayCarried(told);
}

/** Where a page leaves what was carried over for the one that comes after it. */
const CARRIED = "arcata-carried";

/** @param {string[]} told */
const sayCarried = (told) => dialog(word("siteCarried"), word("close"), make("p", { text: word("siteCarriedNote") }),
  make("ul", { lang: "en" }, ...told.map((text) => make("li", { text }))));

/** Whether a file of a known name is a newer version of that score. @param {string} name @returns {Promise<"carry" | "apart" | "nothing">} */
const chosen = (name) => new Promise((done) => {
  /** @type {"carry" | "apart" | "nothing"} */
  let choice = "nothing";
  const choose = (/** @type {"carry" | "apart"} */ what) => () => { choice = what; box.close(); };
  const box = dialog(name, word("close"),
    make("p", { text: word("siteNewer") }),
    make("div", { class: "asks" },
      make("button", { type: "button", "data-name": "carry", text: word("siteCarry"), onclick: choose("carry") }),
      make("button", { type: "button", "data-name": "apart", text: word("siteApart"), onclick: choose("apart") })));
  box.addEventListener("close", () => done(choice));
});

/** @param {File} file */
const takeFile = async (file) => take(file.name, await file.arrayBuffer());

/** @param {string} name of a demo */
async function takeDemo(name) {
  const answer = await fetch(new URL(`../demo/${name}.musicxml`, import.meta.url));
  if (answer.ok) await take(`${name}.musicxml`, await answer.arrayBuffer());
}

/** Offers what there is to open. @param {string} [trouble] */
async function offer(trouble = "") {
  const { works, lasts: kept } = await asked("works");
  lasts = kept;
  shownStart({
    works, lasts, trouble, open, takeFile, takeDemo,
    remove: async (/** @type {string} */ work) => { await asked("remove", { work }); await offer(); },
    clear: async () => { await asked("clear"); await offer(); },
  });
}

document.addEventListener("dragover", (event) => event.preventDefault());
document.addEventListener("drop", (event) => {
  event.preventDefault();
  const file = event.dataTransfer?.files[0];
  if (file) void takeFile(file);
});

const demo = new URLSearchParams(location.search).get("demo");
if (named()) void open(named());
else if (demo && /^[a-z-]+$/.test(demo)) void takeDemo(demo);
else void offer();
if ("serviceWorker" in navigator) navigator.serviceWorker.register(new URL("../offline.js", import.meta.url)).catch(() => {});

const decoder = new TextDecoder();

/**
 * @typedef {{by: "get" | "post", path: string, query: string, languages: string, body?: string, signal?: AbortSignal}} Asked
 * @param {Asked} request
 * @returns {Promise<{ok: boolean, status: number, text: string}>}
 */
export async function request({ by, path, query, languages, body = "", signal }) {
  await isOpen;
  let answer;
  try {
    answer = await asked("ask", { by, path, query, languages, body });
  } catch (problem) {
    return { ok: false, status: 500, text: JSON.stringify({ why: /** @type {Error} */ (problem).message }) };
  }
  signal?.throwIfAborted();
  const { status, bytes } = answer;
  return { ok: status < 400, status, text: decoder.decode(bytes) };
}

/**
 * A file that leaves.
 * @param {string} path @param {string} query @param {string} languages
 * @returns {Promise<{name: string, kind: string, bytes: Uint8Array}>}
 */
export async function file(path, query, languages) {
  const { status, kind, file: name, bytes } = await asked("ask", { by: "get", path, query, languages, body: "" });
  if (status >= 400) throw new Trouble(null, JSON.parse(decoder.decode(bytes)).why);
  return { name, kind, bytes };
}

/** What else is said among the files: where the work is kept, and how to open another score. @returns {Node[]} */
export const beside = () => [
  make("h3", { text: word("siteHere") }),
  make("p", { class: "note", text: word(lasts ? "siteWhere" : "siteUnkept") }),
  make("p", { class: "note", text: word("siteCannot") }),
  make("div", { class: "asks" },
    make("button", { type: "button", "data-name": "another", text: word("siteAnother"), onclick: () => {
      history.replaceState(null, "", location.pathname);
      if (lasts) return location.reload();
      for (const box of document.querySelectorAll("dialog")) box.close();
      void offer();
    } }),
    make("button", { type: "button", "data-name": "forget", text: word("siteForgetAll"), onclick: () => sure(word("siteForgetAll"), async () => {
      await asked("clear").catch(() => {});
      history.replaceState(null, "", location.pathname);
      location.reload();
    }) })),
];

/**
 * What happens elsewhere: nothing, a score is open in one tab; after a worker was lost the page looks again.
 * @param {(event: any) => void} _heard
 * @param {() => void} missed
 */
export function listen(_heard, missed) {
  lookAgain = missed;
}

/** For those who look after the page: what the module holds, bytes. */
export const memory = () => asked("memory");
