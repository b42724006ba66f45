// What the page asks of its server, and what the server tells it.

import { language } from "./words.mjs";

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

/** @param {Response} answer */
async function read(answer) {
  const text = await answer.text();
  if (answer.ok) return text === "" ? null : JSON.parse(text);
  let why = text;
  try {
    why = JSON.parse(text).why ?? text;
  } catch {
    // The guard answers in plain words.
  }
  throw new Refused(answer.status, why);
}

/**
 * @param {string} path below /api/
 * @param {Record<string, any>} [query]
 */
export async function ask(path, query = {}) {
  const search = new URLSearchParams();
  for (const [name, value] of Object.entries(query)) if (value !== undefined && value !== null) search.set(name, value);
  const tail = search.size ? `?${search}` : "";
  return read(await fetch(`/api/${path}${tail}`, { headers: { "accept-language": language() } }));
}

/**
 * @param {string} path below /api/
 * @param {Record<string, any>} body
 * @param {AbortSignal} [signal] gives it up
 */
export async function send(path, body = {}, signal = undefined) {
  const answer = await fetch(`/api/${path}`, {
    method: "POST",
    headers: { "content-type": "application/json", "accept-language": language() },
    body: JSON.stringify(body),
    signal,
  });
  return read(answer);
}

/**
 * Listens to what happens in other tabs and to the file.
 * @param {(event: any) => void} heard
 * @param {() => void} missed the connection was lost or too slow: look again
 */
export function listen(heard, missed) {
  const events = new EventSource("/api/events");
  let lost = false;
  events.addEventListener("message", (event) => heard(JSON.parse(event.data)));
  events.addEventListener("missed", missed);
  events.addEventListener("open", () => {
    if (lost) missed();
    lost = false;
  });
  events.addEventListener("error", () => { lost = true; });
}
