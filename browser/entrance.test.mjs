// The workbench opened without a score: what is offered, what is remembered, and a second start with the same score.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { launch, program } from "./pages.mjs";
import { desk, endAll, start } from "./workbench.mjs";

let browser;
const state = mkdtempSync(join(tmpdir(), "arcata-state-"));
before(async () => { browser = await launch(); });
after(async () => {
  await browser?.close();
  await endAll();
  rmSync(state, { recursive: true, force: true });
});

async function page(address) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: "en" });
  const page = await context.newPage();
  const complaints = [];
  page.on("console", (message) => { if (message.type() === "error") complaints.push(message.text()); });
  page.on("pageerror", (problem) => complaints.push(String(problem)));
  await page.goto(address);
  return { page, complaints };
}

const music = (page) => page.waitForSelector("#music svg path", { state: "attached" });

test("a score is found in the folders of the machine, opened in the same place, and offered the next time", async () => {
  const { folder, score } = desk("lantern-study");
  mkdirSync(join(folder, "Quartets"));
  writeFileSync(join(folder, "Quartets", "broken.musicxml"), "no music at all");
  writeFileSync(join(folder, ".hidden.musicxml"), "");
  writeFileSync(join(folder, "letter.txt"), "");
  const bench = await start(undefined, state);
  const first = await page(bench.address);
  const { page: at } = first;
  await at.waitForSelector("#start");
  await at.fill('[data-name="folder"]', folder);
  await at.press('[data-name="folder"]', "Enter");
  await at.waitForSelector(`[data-score="${score}"]`);
  assert.equal(await at.locator("#start .shelf [data-score]").count(), 1, "what is hidden or no score is not shown");
  await at.click(`[data-folder="${join(folder, "Quartets")}"]`);
  await at.click(`[data-score="${join(folder, "Quartets", "broken.musicxml")}"]`);
  await at.waitForSelector("#start .trouble");
  assert.match(await at.textContent("#start .trouble"), /broken\.musicxml/);
  await at.click('[data-name="up"]');
  await at.click(`[data-score="${score}"]`);
  await music(at);
  assert.deepEqual(first.complaints.filter((text) => !text.includes("422") && !text.includes("409") && !text.includes("400")), []);
  await bench.kill();

  const again = await start(undefined, state);
  const second = await page(again.address);
  await second.page.click(`#start .works:not(.shelf) [data-score="${score}"]`);
  await music(second.page);
  await again.kill();
  const third = await start(undefined, state);
  const last = await page(third.address);
  await last.page.click('[data-name="forget"]');
  await last.page.waitForFunction(() => !document.querySelector('[data-name="forget"]'));
  await third.kill();
});

test("a demo is put into a folder of one's own, where the work on it stays", async () => {
  const bench = await start(undefined, state);
  const { page: at } = await page(bench.address);
  await at.click('[data-demo="lantern-study"]');
  await music(at);
  assert.ok(existsSync(join(state, "arcata", "demo", "lantern-study.musicxml")));
  await bench.kill();
});

test("a second start with the same score brings up the first", async () => {
  const { folder, score } = desk("lantern-study");
  const bench = await start(score, state);
  // By another way to the same file.
  const other = join(folder, ".", "lantern-study.musicxml");
  const address = execFileSync(program(), ["open", other, "--no-browser"], { encoding: "utf8", env: { ...process.env, XDG_STATE_HOME: state }, timeout: 20_000, stdio: ["ignore", "pipe", "ignore"] }).trim();
  assert.equal(new URL(address).port, new URL(bench.address).port);
  const { page: at } = await page(address);
  await music(at);
  // The address was good for one time.
  const { page: late } = await page(address);
  assert.equal(await late.locator("#music").count(), 0);
  await bench.kill();
  assert.deepEqual(readdirSync(join(state, "arcata", "running")), [], "a run that ends takes its note away");
});

test("what a killed run left behind stands in nobody's way", async () => {
  const { score } = desk("lantern-study");
  const bench = await start(score, state);
  await bench.kill("SIGKILL");
  assert.equal(readdirSync(join(state, "arcata", "running")).length, 2);
  const next = await start(score, state);
  assert.notEqual(new URL(next.address).port, "");
  const { page: at } = await page(next.address);
  await music(at);
  await next.kill();
});
