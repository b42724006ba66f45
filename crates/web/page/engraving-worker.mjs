// The engraving library in a worker of its own.

import createVerovioModule from "../verovio/verovio-module.mjs";
import { toolkit } from "./engraving.mjs";

/** @type {any} this is a worker */
const worker = self;
const ready = toolkit(createVerovioModule);
for (const way of ["fetch", "XMLHttpRequest", "WebSocket", "WebSocketStream", "EventSource", "WebTransport", "importScripts"]) {
  Object.defineProperty(worker, way, { value: undefined, configurable: false, writable: false });
}
ready.then(() => worker.postMessage({ ready: true }));

worker.addEventListener("message", async (/** @type {MessageEvent} */ { data }) => {
  try {
    worker.postMessage({ drawing: (await ready)(data) });
  } catch {
    // The library's C++ ends over an assertion: whoever asked takes another worker.
    worker.postMessage({ drawing: null, broken: true });
  }
});
