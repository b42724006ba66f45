// The worker behind the page: the desk's module, what is kept in the browser's storage, and the engravers.
// It asks nothing of any network: what it needs comes with its own folder before the first score is opened.

import { DeskModule } from "./module.mjs";
import { Store, joined } from "./store.mjs";

/** @type {any} this is a worker */
const worker = self;

/** So many engravers work at most: each takes some 60 MB. */
const MOST_ENGRAVERS = 2;

/** What it needs of its folder, asked for before the way out is shut. */
const files = {
  // Not every server of files knows what kind of file a module is.
  module: fetch(new URL("../arcata.wasm", import.meta.url)).then((answer) =>
    WebAssembly.compileStreaming(answer.clone()).catch(async () => WebAssembly.compile(await answer.arrayBuffer()))),
  style: fetch(new URL("../fonts.css", import.meta.url)).then((answer) => answer.text()),
};
for (const way of ["fetch", "XMLHttpRequest", "WebSocket", "WebSocketStream", "EventSource", "WebTransport", "importScripts"]) {
  Object.defineProperty(worker, way, { value: undefined, configurable: false, writable: false });
}

/** The engraving library in workers of its own: it can break off, and the desk goes on meanwhile. */
class Engravers {
  /** @type {{worker: Worker, busy: any}[]} */ #all = [];
  /** @type {{order: any, done: (drawing: string | null) => void}[]} */ #waiting = [];

  #another() {
    const one = { worker: new Worker(new URL("./engraving-worker.mjs", import.meta.url), { type: "module" }), busy: /** @type {any} */ (null) };
    one.worker.addEventListener("message", ({ data }) => {
      if (data.ready) return;
      this.#end(one, data.broken, data.drawing);
    });
    one.worker.addEventListener("error", () => this.#end(one, true, null));
    this.#all.push(one);
    return one;
  }

  /** @param {any} one @param {boolean} broken @param {string | null} drawing */
  #end(one, broken, drawing) {
    const { busy } = one;
    one.busy = null;
    if (broken) {
      one.worker.terminate();
      this.#all = this.#all.filter((other) => other !== one);
    }
    if (busy) {
      clearTimeout(busy.timer);
      busy.done(drawing);
    }
    this.#next();
  }

  #next() {
    if (!this.#waiting.length) return;
    const most = Math.max(1, Math.min(MOST_ENGRAVERS, (navigator.hardwareConcurrency ?? 2) - 1));
    const one = this.#all.find((other) => !other.busy) ?? (this.#all.length < most ? this.#another() : null);
    const next = one && this.#waiting.shift();
    if (!one || !next) return;
    const timer = setTimeout(() => this.#end(one, true, null), next.order.seconds * 1000);
    one.busy = { ...next, timer };
    one.worker.postMessage(next.order);
    this.#next();
  }

  /** Has one lay out its fonts while the score is read. */
  prepare() {
    if (!this.#all.length) this.#another();
  }

  /**
   * What has waited once goes first: the page shows a whole picture sooner than several halves.
   * @param {any} order @param {number} round @returns {Promise<string | null>} nothing where it cannot be engraved
   */
  engrave(order, round) {
    return new Promise((done) => {
      if (round > 0) this.#waiting.unshift({ order, done });
      else this.#waiting.push({ order, done });
      this.#next();
    });
  }
}

const engravers = new Engravers();
engravers.prepare();
const store = new Store();
/** @type {DeskModule | null} */
let desk = null;
/** What lies on it. @type {import("./store.mjs").Kept | null} */
let held = null;
/** Its work, as the store calls it. @type {string | null} */
let heldWork = null;

/** What is wrong, by a key of the page's dictionary where there is one. */
class Wrong extends Error {
  /** @param {string | null} key @param {string} why */
  constructor(key, why) {
    super(why);
    this.key = key;
  }
}

/** @type {Record<string, (data: any) => any>} */
const jobs = {
  works: () => store.works(),

  /** @param {{name: string, bytes: ArrayBuffer}} file */
  put: ({ name, bytes }) => store.put(name, new Uint8Array(bytes)),

  /** @param {{work: string}} named */
  remove: ({ work }) => store.remove(work),

  async clear() {
    // What is open cannot be removed.
    held?.close();
    [desk, held] = [null, null];
    await store.clear();
  },

  /** @param {{work: string}} named */
  async open({ work }) {
    held?.close();
    [desk, held] = [null, null];
    const kept = await store.open(work);
    if (!kept) throw new Wrong("siteElsewhere", "the score is open in another tab");
    try {
      const module = await DeskModule.of(await files.module, kept.keeper);
      const why = module.open({ name: kept.name, score: kept.score, journal: kept.journal, style: await files.style });
      if (why) throw new Wrong(null, why);
      [desk, held, heldWork] = [module, kept, work];
    } finally {
      await kept.opened();
      if (held !== kept) kept.close();
    }
    return { name: kept.name, lasts: store.lasts };
  },

  /** The last work on a score of this name, of which this may be a newer version. @param {{name: string, bytes: ArrayBuffer}} file */
  older: ({ name, bytes }) => store.older(name, new Uint8Array(bytes)),

  /**
   * Carries the bowings of a work over to a newer version of its score, as a work of its own: the older one stays as it is.
   * @param {{from: string, name: string, bytes: ArrayBuffer}} wanted
   */
  async carry({ from, name, bytes }) {
    const score = new Uint8Array(bytes);
    const open = held && heldWork === from;
    const kept = open ? held : await store.open(from);
    if (!kept) throw new Wrong("siteElsewhere", "the score is open in another tab");
    let [journal, was] = [kept.now(), kept.score];
    if (!open) {
      await kept.opened();
      kept.close();
    }
    // In a module of its own, whose steps go nowhere else.
    const keeper = {
      append: (/** @type {Uint8Array} */ text) => { journal = joined(journal, text); },
      cut: (/** @type {number} */ after) => { journal = journal.slice(0, after); },
      keepBroken: () => { journal = new Uint8Array(); return 1; },
    };
    const module = await DeskModule.of(await files.module, keeper);
    const why = module.open({ name: kept.name, score: was, journal, style: await files.style });
    if (why) throw new Wrong(null, why);
    const happened = module.carry(score);
    if (happened?.event === "unreadable") throw new Wrong(null, happened.why ?? "");
    return { work: await store.put(name, score, happened ? journal : undefined), told: happened?.done?.told ?? [] };
  },

  /** @param {import("./module.mjs").Asked} asked */
  async ask(asked) {
    if (!desk) throw new Wrong(null, "no score is open");
    const answer = await desk.ask(asked, (order, round) => engravers.engrave(order, round));
    if (store.isFull) {
      store.isFull = false;
      throw new Wrong("siteFull", "the browser has no room left");
    }
    return answer;
  },

  memory: () => desk?.memory() ?? 0,
};

worker.addEventListener("message", async (/** @type {MessageEvent} */ { data }) => {
  const { id, job } = data;
  try {
    const done = await jobs[job](data);
    const bytes = done?.bytes instanceof Uint8Array ? [done.bytes.buffer] : [];
    worker.postMessage({ id, done }, bytes);
  } catch (problem) {
    const wrong = /** @type {any} */ (problem);
    // A module that breaks off is not whole any more: the page starts another worker, which takes up what was kept.
    const broken = wrong instanceof WebAssembly.RuntimeError || wrong instanceof RangeError;
    const key = wrong instanceof Wrong ? wrong.key : wrong?.name === "QuotaExceededError" ? "siteFull" : null;
    worker.postMessage({ id, failed: { key, why: String(wrong?.message ?? wrong), broken } });
  }
});
