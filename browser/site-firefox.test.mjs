// The page without a server in Firefox, the other engine that people have: a score is opened, a bow is asked for, the browser is
// killed, the network goes away. Driven by the W3C's protocol for it (WebDriver BiDi), which Firefox has built in.

import assert from "node:assert/strict";
import { after, afterEach, before, test } from "node:test";
import { rmSync, writeFileSync, mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import puppeteer from "puppeteer-core";
import { closeAll, offered } from "./site.mjs";
import { keysToPictures, longQuartet, middle } from "./workbench.mjs";

const folder = mkdtempSync(join(tmpdir(), "arcata-firefox-"));
let host;
/** One at a time: a Firefox that was killed opens with windows of its own next time, and what lies behind them is not drawn. */
let firefox;

/** Opens Firefox with a profile of that name, new ones empty. */
const launch = async (profile) => {
  firefox = await puppeteer.launch({
    browser: "firefox",
    executablePath: process.env.ARCATA_FIREFOX ?? "/usr/bin/firefox-esr",
    headless: true,
    defaultViewport: null,
    userDataDir: join(folder, profile),
    args: ["--width=1280", "--height=900"],
    protocolTimeout: 240_000,
  });
};

before(async () => {
  host = await offered();
});
afterEach(async () => {
  await firefox?.close();
  firefox = undefined;
});
after(() => {
  closeAll();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** Opens the page; its complaints and its requests are written down. */
async function tab(path = "") {
  const page = await firefox.newPage();
  // A tab behind another one is not drawn.
  await page.bringToFront();
  const [complaints, requests] = [[], []];
  page.on("console", (message) => { if (["error", "warn"].includes(message.type())) complaints.push(message.text()); });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => requests.push(request.url()));
  await page.goto(`${host.address}${path}`);
  return { page, complaints, requests };
}

/** Waits until the page answers with something; its policy forbids the driver's own way of waiting. */
async function until(page, what, ...given) {
  for (const end = Date.now() + 60_000; Date.now() < end;) {
    const found = await page.evaluate(what, ...given);
    if (found) return found;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`never: ${what}`);
}

/** Waits for the first music; milliseconds from the address to it. */
const drawn = (page) => until(page, () => document.querySelector("arcata-system")?.shadowRoot?.querySelector("svg") && Math.round(performance.now()));

const ask = (page, path) => page.evaluate(async (path) => (await import("./page/server.mjs")).ask(path), path);

/** Asks for a bow on the next stroke, and waits until the page has taken in so many acts. */
async function askForBow(page, key, acts) {
  await page.focus("#music");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press(key);
  await until(page, async (acts) => (await (await import("./page/server.mjs")).ask("score")).undo === acts, acts);
}

test("a demo is opened in Firefox, a bow is asked for, and nothing is asked of any other place", async (context) => {
  await launch("first");
  const { page, complaints, requests } = await tab();
  await until(page, () => document.querySelector("#start [data-demo]") !== null);
  const started = await page.evaluate(() => performance.now());
  await page.click('[data-demo="ferry-bell-quartet"]');
  const first = (await drawn(page)) - Math.round(started);
  context.diagnostic(`Firefox, from the choice to the first music, the files being there: ${first} ms (at most 2000 wanted)`);
  assert.ok(first <= 8000, `${first} ms`);
  await askForBow(page, "d", 1);
  const away = "http://127.0.0.1:9/away";
  assert.equal(await page.evaluate((away) => fetch(away).then(() => "reached", () => "refused"), away), "refused");
  const left = requests.filter((url) => !url.startsWith(host.address) && !url.startsWith("blob:") && !url.startsWith("data:") && url !== away);
  assert.deepEqual(left, []);
  assert.deepEqual(complaints.filter((text) => !text.includes(away) && !text.includes("Content-Security-Policy")), []);
});

test("Firefox is killed and loses nothing; without a network it goes on", async () => {
  await launch("killed");
  const { page } = await tab("?demo=lantern-study");
  await drawn(page);
  await askForBow(page, "u", 1);
  await askForBow(page, "d", 2);
  const before = await ask(page, "layer/shorthand");
  const address = page.url();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const ended = new Promise((resolve) => firefox.process().once("exit", resolve));
  firefox.process().kill("SIGKILL");
  await ended;
  await launch("killed");
  const again = await firefox.newPage();
  await again.goto(address);
  await drawn(again);
  const now = await ask(again, "score");
  assert.deepEqual([now.undo, now.lost], [2, []]);
  assert.deepEqual(await ask(again, "layer/shorthand"), before);
  closeAll();
  try {
    await again.reload();
    await drawn(again);
    await again.focus("#music");
    await again.keyboard.down("Control");
    await again.keyboard.press("z");
    await again.keyboard.up("Control");
    await until(again, async () => (await (await import("./page/server.mjs")).ask("score")).undo === 1);
  } finally {
    host = await offered();
  }
});

test("Firefox: a quartet of 400 bars, from the key to the picture", async (context) => {
  await launch("long");
  const { page } = await tab();
  const file = join(folder, "long.musicxml");
  writeFileSync(file, longQuartet(400));
  await until(page, () => document.querySelector("#start input[type=file]") !== null);
  const started = await page.evaluate(() => performance.now());
  await (await page.$("#start input[type=file]")).uploadFile(file);
  const first = (await drawn(page)) - Math.round(started);
  const [half, most] = middle(await keysToPictures(page, { count: 40, settles: 3000, between: 150 }));
  const memory = await page.evaluate(async () => (await import("./page/transport.mjs")).memory());
  context.diagnostic(`Firefox, quartet of 400 bars: first music after ${first} ms; from the key to the picture ${half.toFixed(0)} ms at the median, 95 of 100 within ${most.toFixed(0)} ms (80 and 200 wanted); the module holds ${(memory / 1e6).toFixed(0)} MB`);
  // Other programs on the machine make it slower: these only notice when something has become slow.
  assert.ok(half <= 600, `${half} ms`);
});
