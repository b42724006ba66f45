// What the page asks of the desk, and what it is told.

import { file, request } from "./transport.mjs";
import { language } from "./words.mjs";

export { listen } from "./transport.mjs";

/** This page's own name among several tabs. */
export const me = Math.random().toString(36).slice(2);

/** An answer that was no. */
export class Refused extends Error {
  /** @param {number} status @param {string} why */
  constructor(status, why) {
    super(why);
    this.status = status;
  }
}

/** @param {{ok: boolean, status: number, text: string}} answer */
function read({ ok, status, text }) {
  if (ok) return text === "" ? null : JSON.parse(text);
  let why = text;
  try {
    why = JSON.parse(text).why ?? text;
  } catch {
    // The guard answers in plain words.
  }
  throw new Refused(status, why);
}

/** What stands behind the question mark. @param {Record<string, any>} query */
function searched(query) {
  const search = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) if (value !== undefined && value !== null) search.set(name, value);
  return String(search);
}

/**
 * @param {string} path below /api/
 * @param {Record<string, any>} [query]
 */
export async function ask(path, query = {}) {
  return read(await request({ by: "get", path, query: searched(query), languages: language() }));
}

/**
 * @param {string} path below /api/, with what stands behind a question mark
 * @param {Record<string, any>} body
 * @param {AbortSignal} [signal] gives it up
 */
export async function send(path, body = {}, signal = undefined) {
  const [address, query = ""] = path.split("?");
  return read(await request({ by: "post", path: address, query, languages: language(), body: JSON.stringify(body), signal }));
}

/** Saves a file through the browser. @param {string} what @param {Record<string, any>} [query] */
export async function save(what, query = {}) {
  const { name, kind, bytes } = await file(`export/${what}`, searched(query), language());
  const address = URL.createObjectURL(new Blob([/** @type {any} */ (bytes)], { type: kind }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
