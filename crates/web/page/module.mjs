// The desk's WebAssembly module as JavaScript calls it: requests in, answers out. Used by the page's worker, and by tests.

/**
 * @typedef {{key: string, options: string, musicxml: string, seconds: number}} Order
 * @typedef {{status: number, kind: string, file: string | null, bytes: Uint8Array}} Answer
 * @typedef {{by: "get" | "post", path: string, query: string, languages: string, body: string}} Asked
 * @typedef {{append: (text: Uint8Array) => void, cut: (after: number) => void, keepBroken: () => number}} Keeper
 */

/** An answer waits for drawings so many times; the room between staves is tried out in fewer. */
const MOST_ROUNDS = 24;

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** @param {(string | Uint8Array)[]} pieces */
function packed(pieces) {
  const bytes = pieces.map((piece) => (typeof piece === "string" ? encoder.encode(piece) : piece));
  const all = new Uint8Array(bytes.reduce((sum, piece) => sum + 4 + piece.length, 0));
  const view = new DataView(all.buffer);
  let at = 0;
  for (const piece of bytes) {
    view.setUint32(at, piece.length, true);
    all.set(piece, at + 4);
    at += 4 + piece.length;
  }
  return all;
}

/** @param {Uint8Array} all */
function unpacked(all) {
  const view = new DataView(all.buffer, all.byteOffset, all.byteLength);
  const pieces = [];
  for (let at = 0; at < all.length;) {
    const length = view.getUint32(at, true);
    pieces.push(all.slice(at + 4, at + 4 + length));
    at += 4 + length;
  }
  return pieces;
}

export class DeskModule {
  /** @type {any} */ #own;

  /**
   * @param {WebAssembly.Module} module
   * @param {Keeper} keeper its functions throw where something cannot be kept
   */
  static async of(module, keeper) {
    const desk = new DeskModule();
    /** @param {() => void} job */
    const tried = (job) => {
      try {
        job();
        return 0;
      } catch {
        return 1;
      }
    };
    const page = {
      /** @param {number} place @param {number} length */
      append: (place, length) => tried(() => keeper.append(desk.#bytes(place, length))),
      /** @param {number} after */
      cut: (after) => tried(() => keeper.cut(after)),
      keep_broken: () => {
        try {
          return keeper.keepBroken();
        } catch {
          return 0;
        }
      },
      /** @param {number} place @param {number} length */
      broke_off: (place, length) => console.error(decoder.decode(desk.#bytes(place, length))),
    };
    // What a package under the module might ask of a browser (randomness, to encrypt) it never needs here.
    /** @type {Record<string, Record<string, any>>} */
    const imports = { page };
    for (const { module: from, name } of WebAssembly.Module.imports(module)) {
      (imports[from] ??= {})[name] ??= () => { throw new Error(`${from} ${name}`); };
    }
    const instance = await WebAssembly.instantiate(module, imports);
    desk.#own = instance.exports;
    return desk;
  }

  /** A copy of what lies in the module's memory. @param {number} place @param {number} length */
  #bytes(place, length) {
    return new Uint8Array(this.#own.memory.buffer, place, length).slice();
  }

  /** @param {(string | Uint8Array)[]} pieces @returns {[number, number]} */
  #written(pieces) {
    const all = packed(pieces);
    const place = this.#own.room(all.length);
    new Uint8Array(this.#own.memory.buffer, place, all.length).set(all);
    return [place, all.length];
  }

  #said() {
    return this.#bytes(this.#own.said(), this.#own.said_length());
  }

  /** Bytes of memory that the module holds. */
  memory() {
    return this.#own.memory.buffer.byteLength;
  }

  /**
   * Opens a score; what is wrong with it in words, or nothing.
   * @param {{name: string, score: Uint8Array, journal: Uint8Array, style: string}} opened
   */
  open({ name, score, journal, style }) {
    this.#own.open(...this.#written([name, score, journal, style]));
    return decoder.decode(this.#said());
  }

  /**
   * Carries what is open over to a newer version of the score; what became of it, as the server's event, or nothing where it is the
   * same file.
   * @param {Uint8Array} score
   * @returns {{event: string, why?: string, done?: {told: string[]}} | null}
   */
  carry(score) {
    this.#own.carry(...this.#written([score]));
    return JSON.parse(decoder.decode(this.#said()));
  }

  /**
   * Answers a request; what has to be drawn for it is asked of `engrave`.
   * @param {Asked} asked
   * @param {(order: Order, round: number) => Promise<string | null> | string | null} engrave told, too, how often the answer has waited before
   * @returns {Promise<Answer>}
   */
  async ask({ by, path, query, languages, body }, engrave) {
    const number = this.#own.begin(...this.#written([by, path, query, languages, body]));
    for (let round = 0; ; round += 1) {
      const what = this.#own.finish(number, round < MOST_ROUNDS ? 0 : 1);
      const said = this.#said();
      if (what === 2) throw new Error("no score is open");
      if (what === 0) {
        const [head, bytes] = unpacked(said);
        return { ...JSON.parse(decoder.decode(head)), bytes: bytes ?? new Uint8Array() };
      }
      const orders = /** @type {Order[]} */ (JSON.parse(decoder.decode(said)));
      await Promise.all(orders.map(async (order) => {
        const drawing = await engrave(order, round);
        this.#own.hand_in(...this.#written(drawing === null ? [order.key] : [order.key, drawing]));
      }));
    }
  }
}
