// How the page reaches the desk: here over the loopback server. In a folder without a server another file of this name stands in
// its place (`crates/web/page/transport.mjs`), and nothing else of the page is different.

/** What is around the desk. A folder: files are written beside the score. */
export const host = { folder: true };

/**
 * @typedef {{by: "get" | "post", path: string, query: string, languages: string, body?: string, signal?: AbortSignal}} Asked
 * @param {Asked} asked
 * @returns {Promise<{ok: boolean, status: number, text: string}>}
 */
export async function request({ by, path, query, languages, body, signal }) {
  const answer = await fetch(`/api/${path}${query ? `?${query}` : ""}`, by === "get"
    ? { headers: { "accept-language": languages } }
    : { method: "POST", headers: { "content-type": "application/json", "accept-language": languages }, body, signal });
  return { ok: answer.ok, status: answer.status, text: await answer.text() };
}

/**
 * A file that leaves; nothing where the host writes it into a folder.
 * @param {string} _path @param {string} _query @param {string} _languages
 * @returns {Promise<{name: string, kind: string, bytes: Uint8Array}>}
 */
export async function file(_path, _query, _languages) {
  throw new Error("files are written beside the score");
}

/** What else is said among the files. @returns {Node[]} */
export const beside = () => [];

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
