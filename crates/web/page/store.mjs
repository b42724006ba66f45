// What is kept in the browser's own storage (the origin private file system): a folder a score, with the score as it was opened
// and its journal, which is on the disk before an act is confirmed. Where a browser keeps nothing, it lies in memory.

/**
 * @typedef {{work: string, name: string, size: number, when: number}} Work
 * @typedef {{name: string, score: Uint8Array, journal: Uint8Array, keeper: import("./module.mjs").Keeper, now: () => Uint8Array, opened: () => Promise<void>, close: () => void}} Kept
 */

const FOLDER = "arcata";
const SCORE = "score";
const NAME = "name.txt";
const JOURNAL = "acts.jsonl";

/** A name for a score by its bytes: the same file again is the same work. @param {string} name @param {Uint8Array} bytes */
async function workOf(name, bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", /** @type {any} */ (bytes)));
  const short = [...digest.slice(0, 8)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${name.replace(/[^\p{L}\p{N}.-]/gu, "_").slice(0, 80)}-${short}`;
}

/** Opens a file for writing at once. @param {any} folder @param {string} name */
async function handle(folder, name) {
  const file = await folder.getFileHandle(name, { create: true });
  return file.createSyncAccessHandle();
}

/** All of a file. @param {any} access */
function all(access) {
  const bytes = new Uint8Array(access.getSize());
  access.read(bytes, { at: 0 });
  return bytes;
}

/** Two texts as one. @param {Uint8Array} one @param {Uint8Array} other */
export function joined(one, other) {
  const both = new Uint8Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
}

/** Writes a file whole. @param {any} folder @param {string} name @param {Uint8Array} bytes */
async function write(folder, name, bytes) {
  const access = await handle(folder, name);
  try {
    access.truncate(0);
    if (access.write(bytes, { at: 0 }) !== bytes.length) throw new DOMException("no room", "QuotaExceededError");
    access.flush();
  } finally {
    access.close();
  }
}

export class Store {
  /** Whether it stays when the tab is closed. */ lasts = true;
  /** Whether a step could not be kept; whoever tells of it takes it back. */ isFull = false;
  /** @type {Map<string, {name: string, score: Uint8Array, journal: Uint8Array}>} */ #memory = new Map();
  /** @type {Promise<any>} the folder; nothing where the browser keeps nothing */ #folder = this.#find();

  async #find() {
    try {
      const root = await navigator.storage.getDirectory();
      const folder = await root.getDirectoryHandle(FOLDER, { create: true });
      // Some browsers give a folder and refuse files: a private window.
      await write(folder, "trial", new Uint8Array([1]));
      await folder.removeEntry("trial");
      return folder;
    } catch {
      this.lasts = false;
      return null;
    }
  }

  /** What there is, the last first. @returns {Promise<{lasts: boolean, works: Work[]}>} */
  async works() {
    const folder = await this.#folder;
    const works = [...this.#memory].map(([work, one]) => ({ work, name: one.name, size: one.score.length, when: 0 }));
    if (folder) {
      for await (const [work, one] of folder.entries()) {
        if (one.kind !== "directory") continue;
        try {
          const name = await (await (await one.getFileHandle(NAME)).getFile()).text();
          const score = await (await one.getFileHandle(SCORE)).getFile();
          const acts = await one.getFileHandle(JOURNAL).then((/** @type {any} */ file) => file.getFile()).catch(() => score);
          works.push({ work, name, size: score.size, when: acts.lastModified });
        } catch (problem) {
          // Half a folder: the tab was closed while it was made. One with a journal, or that cannot be read now, stays.
          const isHalf = /** @type {any} */ (problem)?.name === "NotFoundError"
            && await one.getFileHandle(JOURNAL).then(() => false, (/** @type {any} */ why) => why?.name === "NotFoundError");
          if (isHalf) await folder.removeEntry(work, { recursive: true }).catch(() => {});
        }
      }
    }
    return { lasts: this.lasts, works: works.sort((one, other) => other.when - one.when) };
  }

  /** The last work on a score of this name with other bytes, if there is one. @param {string} name @param {Uint8Array} bytes */
  async older(name, bytes) {
    const work = await workOf(name, bytes);
    const { works } = await this.works();
    if (works.some((one) => one.work === work)) return null;
    return works.find((one) => one.name === name)?.work ?? null;
  }

  /**
   * Puts a score there; what was done on the same bytes before stays.
   * @param {string} name @param {Uint8Array} bytes
   * @param {Uint8Array} [journal] what was carried over to it: it is put beside what was done on the same bytes before
   */
  async put(name, bytes, journal) {
    const folder = await this.#folder;
    if (!folder) {
      const work = `${name}-${this.#memory.size}`;
      this.#memory.set(work, { name, score: bytes, journal: journal ?? new Uint8Array() });
      return work;
    }
    let work = await workOf(name, bytes);
    const isThere = async () => {
      const own = await folder.getDirectoryHandle(work).catch(() => null);
      return Boolean(await own?.getFileHandle(NAME).catch(() => null));
    };
    if (!journal && await isThere()) return work;
    for (let number = 2; journal && await isThere(); number += 1) work = `${await workOf(name, bytes)}-${number}`;
    const own = await folder.getDirectoryHandle(work, { create: true });
    try {
      await write(own, SCORE, bytes);
      if (journal) await write(own, JOURNAL, journal);
      // The name last: a folder without one holds no work.
      await write(own, NAME, new TextEncoder().encode(name));
    } catch (problem) {
      await folder.removeEntry(work, { recursive: true }).catch(() => {});
      throw problem;
    }
    return work;
  }

  /** Opens one; nothing where another tab has it. @param {string} work @returns {Promise<Kept | null>} */
  async open(work) {
    const known = this.#memory.get(work);
    if (known) {
      const keeper = {
        append: (/** @type {Uint8Array} */ text) => { known.journal = joined(known.journal, text); },
        cut: (/** @type {number} */ after) => { known.journal = known.journal.slice(0, after); },
        keepBroken: () => 1,
      };
      return { ...known, keeper, now: () => known.journal, async opened() {}, close() {} };
    }
    const folder = await (await this.#folder).getDirectoryHandle(work);
    let journal;
    try {
      journal = await handle(folder, JOURNAL);
    } catch (problem) {
      if (/** @type {any} */ (problem)?.name === "NoModificationAllowedError") return null;
      throw problem;
    }
    // A second copy of a broken journal is made at once, while the module waits: its file is opened before.
    let number = 1;
    while (await folder.getFileHandle(`acts-${number}.jsonl`).then(() => true, () => false)) number += 1;
    const name = await (await (await folder.getFileHandle(NAME)).getFile()).text();
    const score = new Uint8Array(await (await (await folder.getFileHandle(SCORE)).getFile()).arrayBuffer());
    const before = all(journal);
    const spare = before.length ? await handle(folder, `acts-${number}.jsonl`) : null;
    let used = false;
    const keeper = {
      append: (/** @type {Uint8Array} */ text) => {
        const at = journal.getSize();
        try {
          if (journal.write(text, { at }) !== text.length) throw new DOMException("no room", "QuotaExceededError");
          journal.flush();
        } catch (problem) {
          // Half a line would be taken for a torn one only as long as nothing follows it.
          journal.truncate(at);
          this.isFull = true;
          throw problem;
        }
      },
      /** @param {number} after */
      cut(after) {
        journal.truncate(after);
        journal.flush();
      },
      keepBroken() {
        if (!spare) return 0;
        if (spare.write(before, { at: 0 }) !== before.length) throw new DOMException("no room", "QuotaExceededError");
        spare.flush();
        used = true;
        journal.truncate(0);
        return number;
      },
    };
    /** Once the score is open: what was not needed goes again. */
    const opened = async () => {
      spare?.close();
      if (spare && !used) await folder.removeEntry(`acts-${number}.jsonl`).catch(() => {});
    };
    return { name, score, journal: before, keeper, now: () => all(journal), opened, close: () => journal.close() };
  }

  /** @param {string} work */
  async remove(work) {
    this.#memory.delete(work);
    await (await this.#folder)?.removeEntry(work, { recursive: true });
  }

  /** Removes everything. */
  async clear() {
    this.#memory.clear();
    const folder = await this.#folder;
    if (!folder) return;
    for await (const [name] of folder.entries()) await folder.removeEntry(name, { recursive: true });
  }
}
