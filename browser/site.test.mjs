// The page without a server, as a person uses it: a score is opened, bows are asked for, the tab is killed, the network is gone; a
// browser keeps nothing, is full, is old; a worker breaks off. No request leaves the folder.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { barriers, demo, launch } from "./pages.mjs";
import { closeAll, offered, packaged } from "./site.mjs";
import { keysToPictures, longQuartet, middle, readFileSync } from "./workbench.mjs";

let browser;
let host;
before(async () => {
  browser = await launch();
  host = await offered();
});
after(async () => {
  await browser?.close();
  closeAll();
});

/** Opens the page; complaints of its own and every request of it and its workers are written down. */
async function opened(path = "", options = {}, prepare = async () => {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  await prepare(context);
  return tab(context, path);
}

async function tab(context, path = "") {
  const page = await context.newPage();
  const [complaints, requests] = [[], []];
  page.on("console", (message) => { if (["error", "warning"].includes(message.type())) complaints.push(message.text()); });
  page.on("pageerror", (error) => complaints.push(String(error)));
  context.on("request", (request) => requests.push(request.url()));
  await page.goto(`${host.address}${path}`);
  return { context, page, complaints, requests };
}

/** Waits for the first music; milliseconds from the address to it. */
const drawn = async (page) => Math.round(await (await page.waitForFunction(() => document.querySelector("arcata-system")?.shadowRoot?.querySelector("svg") && performance.now())).jsonValue());

/** Waits until the page has taken in what was asked for. */
const version = (page, wanted) => page.evaluate(async (wanted) => {
  const { piece } = await import("./page/piece.mjs");
  const until = performance.now() + 20_000;
  while (piece.version < wanted) {
    if (performance.now() > until) throw new Error(`the page stays at ${piece.version}, ${wanted} was asked for`);
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}, wanted);

/** What the page knows of the score. */
const score = (page) => page.evaluate(async () => {
  const { ask } = await import("./page/server.mjs");
  return ask("score");
});

async function askForBow(page, key = "d") {
  await page.focus("#music");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press(key);
}

const notices = (page, text) => page.waitForFunction((text) => document.body.textContent.includes(text), text);

test("a demo is opened, bows are asked for, and nothing is asked of any other place", async (context) => {
  const { page, complaints, requests, context: own } = await opened();
  await page.waitForSelector("#start [data-demo]");
  assert.deepEqual(await barriers(page), []);
  const started = await page.evaluate(() => performance.now());
  await page.click('[data-demo="ferry-bell-quartet"]');
  const first = (await drawn(page)) - Math.round(started);
  context.diagnostic(`from the choice to the first music, the files being there: ${first} ms (at most 2000 wanted)`);
  assert.ok(first <= 6000, `${first} ms`);
  assert.deepEqual(await barriers(page), []);
  await askForBow(page);
  await version(page, 1);
  await page.waitForFunction(() => document.querySelectorAll("#findings li, #findings article, #findings .card").length > 0).catch(() => {});
  assert.equal((await score(page)).bowings, 1);
  // The page may not reach anywhere else, nor may its workers.
  const away = "http://127.0.0.1:9/away";
  assert.equal(await page.evaluate((away) => fetch(away).then(() => "reached", () => "refused"), away), "refused");
  assert.ok(page.workers().length >= 1, "there are workers");
  for (const worker of page.workers()) {
    const ways = await worker.evaluate(() => ["fetch", "XMLHttpRequest", "WebSocket", "EventSource", "importScripts"].filter((way) => self[way] !== undefined));
    assert.deepEqual(ways, [], worker.url());
  }
  const left = requests.filter((url) => !url.startsWith(host.address) && !url.startsWith("blob:") && !url.startsWith("data:") && url !== away);
  assert.deepEqual(left, []);
  const own_complaints = complaints.filter((text) => !text.includes(away) && !text.includes("Content Security Policy") && !text.includes("content security policy"));
  assert.deepEqual(own_complaints, []);
  await own.close();
});

test("files of one's own are opened by choosing and by dropping, packages too; what is none is told", async () => {
  const { page, context } = await opened();
  const study = readFileSync(demo("lantern-study.musicxml"));
  await page.waitForSelector("#start");
  await page.setInputFiles("#start input[type=file]", { name: "letter.musicxml", mimeType: "text/xml", buffer: Buffer.from("Dear player,") });
  await notices(page, "letter.musicxml: ");
  await page.setInputFiles("#start input[type=file]", { name: "study.mxl", mimeType: "application/vnd.recordare.musicxml", buffer: await packaged(study) });
  await drawn(page);
  assert.equal((await score(page)).file, "study.mxl");
  // What is saved is a package again, under the name that the file had.
  await page.focus("#music");
  await page.keyboard.press("s");
  const saved = async (what) => {
    const [download] = await Promise.all([page.waitForEvent("download"), page.click(`dialog [data-keep="${what}"]`)]);
    return [download.suggestedFilename(), readFileSync(await download.path())];
  };
  const [name, bytes] = await saved("score");
  assert.deepEqual([name, bytes.subarray(0, 2).toString()], ["study-bowed.mxl", "PK"]);
  const [layer, text] = await saved("layer");
  assert.equal(layer, "study.bowings.json");
  assert.equal(JSON.parse(text.toString()).format, "arcata-layer");
  const [review, html] = await saved("review");
  assert.equal(review, "study-review.html");
  assert.match(html.toString(), /^<!doctype html>/i);
  assert.ok(html.toString().includes('data-about=""'), "the notes that a finding is about are drawn");
  const [picture, svg] = await saved("picture");
  assert.match(picture, /^study-bars-.*\.svg$/);
  assert.match(svg.toString(), /^<svg /);
  await page.keyboard.press("Escape");
  // Another one is dropped onto the page.
  await page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], "dropped.musicxml"));
    document.getElementById("music").dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
  }, study.toString("utf8"));
  await page.waitForFunction(() => document.querySelector("#head")?.textContent.includes("dropped.musicxml"));
  await drawn(page);
  await context.close();
});

test("a killed tab loses nothing, two tabs do not share a score, and without a network it goes on", async () => {
  const { page, context } = await opened("?demo=lantern-study");
  await drawn(page);
  for (const number of [1, 2, 3]) {
    await askForBow(page, number % 2 ? "u" : "d");
    await version(page, number);
  }
  const before = await page.evaluate(async () => (await import("./page/server.mjs")).ask("layer/shorthand"));
  const address = page.url();
  const other = await context.newPage();
  await other.goto(address);
  await notices(other, "open in another tab");
  await other.close();
  // Chromium ends the tab's process; what closes a tab that has ended never answers.
  await Promise.all([page.waitForEvent("crash"), page.goto("chrome://crash").catch(() => {})]);
  const again = await context.newPage();
  await again.goto(address);
  await drawn(again);
  const now = await score(again);
  assert.deepEqual([now.undo, now.lost], [3, []]);
  assert.deepEqual(await again.evaluate(async () => (await import("./page/server.mjs")).ask("layer/shorthand")), before);
  // The service worker has all files by now.
  await again.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  closeAll();
  try {
    await again.reload();
    await drawn(again);
    await again.focus("#music");
    await again.keyboard.press("Control+z");
    await version(again, 1);
    assert.equal((await score(again)).undo, 2);
  } finally {
    host = await offered();
  }
});

test("what is kept is listed, and goes when it is told to", async () => {
  const { page, context } = await opened("?demo=lantern-study");
  await drawn(page);
  await page.focus("#music");
  await page.keyboard.press("s");
  await page.click('dialog [data-name="another"]');
  await page.waitForSelector("#start [data-work]");
  assert.equal(await page.locator("#start [data-work]").count(), 1);
  await page.click("#start [data-work]");
  await drawn(page);
  await page.focus("#music");
  await page.keyboard.press("s");
  await page.click('dialog [data-name="forget"]');
  await page.click('dialog [data-name="sure"]');
  await page.waitForSelector("#start");
  assert.equal(await page.locator("#start [data-work]").count(), 0);
  await context.close();
});

test("bowings are carried over to a newer version of a score, and the older one stays", async () => {
  const study = readFileSync(demo("lantern-study.musicxml"), "utf8");
  // One bar more before the first: what was in bar 1 is in bar 2.
  const newer = study.replace(/<measure number="1"[\s\S]*?<\/measure>/, (bar) => bar + bar.replace('number="1"', 'number="1a"').replace(/<attributes>[\s\S]*?<\/attributes>/, ""));
  assert.notEqual(newer, study);
  const { page, context } = await opened();
  const choose = (text) => page.setInputFiles("#start input[type=file]", { name: "study.musicxml", mimeType: "text/xml", buffer: Buffer.from(text) });
  const drop = (text) => page.evaluate((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], "study.musicxml"));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
  }, text);
  await page.waitForSelector("#start");
  await choose(study);
  await drawn(page);
  await askForBow(page, "u");
  await version(page, 1);
  const [bars, address] = [(await score(page)).bars.length, page.url()];
  // The page that shows the score asks what the file is; what is closed unanswered does nothing.
  await drop(newer);
  await page.waitForSelector('dialog [data-name="carry"]');
  await page.keyboard.press("Escape");
  await page.waitForSelector("dialog", { state: "detached" });
  assert.equal(page.url(), address);
  await drop(newer);
  await page.click('dialog [data-name="carry"]');
  await notices(page, "1 bowing is kept as it was");
  await drawn(page);
  const now = await score(page);
  assert.deepEqual([now.bars.length, now.bowings, now.lost], [bars + 1, 1, []]);
  assert.notEqual(page.url(), address);
  // The older one is there as it was.
  await page.goto("about:blank");
  await page.goto(address);
  await drawn(page);
  const older = await score(page);
  assert.deepEqual([older.bars.length, older.bowings, older.undo], [bars, 1, 1]);
  await context.close();
});

/** A script of the folder, changed on its way. */
const changed = (file, change) => async (context) => {
  await context.route(`**/page/${file}`, async (route) => {
    const answer = await route.fetch();
    await route.fulfill({ response: answer, body: change(await answer.text()) });
  });
};

test("a browser that keeps nothing is told of, and works", async () => {
  const { page, context } = await opened("?demo=lantern-study", { serviceWorkers: "block" },
    changed("store.mjs", (text) => text.replace("await navigator.storage.getDirectory()", "await Promise.reject(new DOMException('no', 'SecurityError'))")));
  await drawn(page);
  await notices(page, "lets the page keep nothing");
  await askForBow(page);
  await version(page, 1);
  await context.close();
});

test("a full browser refuses the act, says so, and keeps what was done before", async () => {
  const { page, context } = await opened("?demo=lantern-study", { serviceWorkers: "block", locale: "it-IT" },
    changed("store.mjs", (text) => text.replace("if (journal.write(text, { at })", "if (at > 150 || journal.write(text, { at })")));
  await drawn(page);
  await askForBow(page);
  await version(page, 1);
  await askForBow(page, "u");
  await notices(page, "Il browser non ha più spazio");
  assert.equal((await score(page)).version, 1);
  await context.close();
});

test("a worker that breaks off is started again and takes up what was kept", async () => {
  const { page, context } = await opened("?demo=lantern-study", { serviceWorkers: "block" },
    changed("module.mjs", (text) => text.replace("async ask({ by, path, query, languages, body }, engrave) {", "async ask({ by, path, query, languages, body }, engrave) { if (path === 'redo') throw new WebAssembly.RuntimeError('unreachable');")));
  await drawn(page);
  await askForBow(page);
  await version(page, 1);
  await page.keyboard.press("Control+Shift+Z");
  await notices(page, "was started again");
  await page.waitForFunction(async () => (await (await import("./page/server.mjs")).ask("score")).undo === 1);
  await context.close();
});

test("a browser that is too old gets a sentence, in its language", async () => {
  const { page, context } = await opened("", { locale: "de-DE" }, (own) => own.addInitScript(() => { delete WebAssembly.compileStreaming; }));
  await notices(page, "Dieser Browser ist zu alt");
  await context.close();
});

test("a quartet of 400 bars: from the key to the picture, and memory", async (context) => {
  const { page, context: own } = await opened();
  await page.waitForSelector("#start");
  const started = await page.evaluate(() => performance.now());
  await page.setInputFiles("#start input[type=file]", { name: "long.musicxml", mimeType: "text/xml", buffer: Buffer.from(longQuartet(400)) });
  const first = (await drawn(page)) - Math.round(started);
  const times = await keysToPictures(page, { count: 40, settles: 3000, between: 150 });
  const [half, most] = middle(times);
  const memory = await page.evaluate(async () => (await import("./page/transport.mjs")).memory());
  context.diagnostic(`quartet of 400 bars: first music after ${first} ms; from the key to the picture ${half.toFixed(0)} ms at the median, 95 of 100 within ${most.toFixed(0)} ms (80 and 200 wanted); the module holds ${(memory / 1e6).toFixed(0)} MB`);
  // Other programs on the machine make it slower: these only notice when something has become slow.
  assert.ok(half <= 400, `${half} ms`);
  assert.ok(memory <= 600e6, `${memory} bytes`);
  await own.close();
});
