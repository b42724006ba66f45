// The service worker: once loaded, the folder's files come from the browser's own cache, without a network. What is not a file of
// the folder it asks of nobody.
"use strict";

/** Made by `cargo xtask site`: the sum of all files, and their names. */
const SUM = "/*SUM*/";
const FILES = /*FILES*/[];

const NAME = `arcata-${SUM}`;
const POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; connect-src 'self'";

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(NAME).then((cache) => cache.addAll(FILES.map((file) => new Request(file, { cache: "no-cache" })))));
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    for (const name of await caches.keys()) if (name.startsWith("arcata-") && name !== NAME) await caches.delete(name);
    await self.clients.claim();
  })());
});

/** The scripts of workers carry the page's policy: what a worker may ask is said with its script. */
function underPolicy(answer) {
  const headers = new Headers(answer.headers);
  headers.set("content-security-policy", POLICY);
  return new Response(answer.body, { status: answer.status, statusText: answer.statusText, headers });
}

self.addEventListener("fetch", (event) => {
  const address = new URL(event.request.url);
  const scope = new URL(self.registration.scope);
  if (address.origin !== scope.origin || !address.pathname.startsWith(scope.pathname)) {
    event.respondWith(Response.error());
    return;
  }
  event.respondWith((async () => {
    const cache = await caches.open(NAME);
    const known = await cache.match(event.request, { ignoreSearch: true }) ?? await fetch(event.request);
    return address.pathname.endsWith("-worker.mjs") ? underPolicy(known) : known;
  })());
});
