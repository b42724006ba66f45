// The pages of a part on the workbench: seen as they are printed, with the time to turn; a page and a line asked for by key, taken
// back, kept through a new version of the score, and made by `arcata parts`.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { after, before, test } from "node:test";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { barriers, launch, open, program } from "./pages.mjs";
import { desk, endAll, existsSync, longQuartet, readFileSync, start } from "./workbench.mjs";

let browser;
before(async () => { browser = await launch(); });
after(async () => {
  await browser?.close();
  await endAll();
});

/** Pages are there when the status says how many. */
const made = (page) => page.waitForFunction(() => !document.querySelector(".sheets[aria-busy]") && document.querySelectorAll(".sheet").length > 0, undefined, { timeout: 120_000 });

/** What a bar is on: page and height of its line. @param {number} first bar index */
const place = (page, first) => page.evaluate(async (first) => {
  const box = document.querySelector(`.bar[aria-label*=" ${first + 1}"]`);
  const sheets = [...document.querySelectorAll(".sheet")];
  return { page: sheets.indexOf(box.closest(".sheet")), top: box.style.top };
}, first);

test("pages are seen as they are printed; a page and a line begin where somebody asks for it, and stay", async () => {
  const { score, folder, file } = desk("long", "");
  writeFileSync(score, longQuartet(150));
  const bench = await start(score);
  const { page, complaints } = await open(browser, bench.address);
  await page.waitForFunction(() => document.querySelector("arcata-system")?.shadowRoot?.querySelector("svg"));
  await page.focus("#music");
  await page.keyboard.press("g");
  await made(page);
  const shown = await page.locator(".sheet").count();
  assert.ok(shown > 1, `${shown} pages`);
  // Every page but the last says what its player has at its end, in seconds where it is turned.
  const ends = await page.locator(".sheet figcaption").allTextContents();
  assert.ok(ends.slice(0, -1).every((text) => /page \d+a? ends before/.test(text)), ends.join(" | "));
  assert.ok(ends.some((text) => / s of rest/.test(text)), ends.join(" | "));
  // Every bar is on the pages, once.
  const bars = await page.evaluate(() => import("/page/server.mjs").then(({ ask }) => ask("pages", { part: 0 })).then((pages) => pages.bars.map(({ first, last }) => [first, last])));
  assert.deepEqual(bars.flatMap(([first, last]) => Array.from({ length: last - first + 1 }, (_, more) => first + more)), Array.from({ length: 150 }, (_, bar) => bar));
  assert.deepEqual(await barriers(page), []);
  // To bar 14, and a new page there; then a new line at bar 17.
  await page.keyboard.press("Home");
  for (let step = 0; step < 13; step += 1) await page.keyboard.press("ArrowRight");
  assert.equal(await page.locator(".bar[aria-pressed=true]").getAttribute("aria-label"), "bar 14");
  await page.keyboard.press("x");
  await page.waitForFunction(() => document.querySelector('.bar[data-asked="page"]'), undefined, { timeout: 120_000 });
  await made(page);
  const [before, there] = [await place(page, 12), await place(page, 13)];
  assert.equal(there.page, before.page + 1);
  for (let step = 0; step < 3; step += 1) await page.keyboard.press("ArrowRight");
  await page.keyboard.press("X");
  await page.waitForFunction(() => document.querySelector('.bar[data-asked="line"]'), undefined, { timeout: 120_000 });
  await made(page);
  assert.notEqual((await place(page, 15)).top, (await place(page, 16)).top);
  const kept = () => JSON.parse(readFileSync(file(".breaks.json"), "utf8")).breaks.map(({ part, bar, begins }) => [part, bar, begins]);
  assert.deepEqual(kept(), [["Violin I", "14", "page"], ["Violin I", "17", "line"]]);
  // Undone and done again: the file says the same as the page.
  await page.keyboard.press("Control+z");
  await page.waitForFunction(() => !document.querySelector('.bar[data-asked="line"]'), undefined, { timeout: 120_000 });
  assert.deepEqual(kept(), [["Violin I", "14", "page"]]);
  await page.keyboard.press("Control+y");
  await page.waitForFunction(() => document.querySelector('.bar[data-asked="line"]'), undefined, { timeout: 120_000 });
  // The same key takes back what it asked for.
  await made(page);
  await page.keyboard.press("X");
  await page.waitForFunction(() => !document.querySelector('.bar[data-asked="line"]'), undefined, { timeout: 120_000 });
  assert.deepEqual(kept(), [["Violin I", "14", "page"]]);
  // Another program puts a bar in near the beginning: the page begins with the same music.
  const divisions = Number(/<divisions>(\d+)/.exec(readFileSync(score, "utf8"))[1]);
  const longer = readFileSync(score, "utf8").replace(/(<part id="[^"]*">\s*)([\s\S]*?)(<\/part>)/g, (_, head, music, tail) => {
    const [first, ...others] = music.match(/<measure [\s\S]*?<\/measure>/g);
    const rest = `<measure number="2"><note><rest measure="yes"/><duration>${4 * divisions}</duration></note></measure>`;
    return [head, first, rest, ...others.map((bar, index) => bar.replace(/number="[^"]*"/, `number="${index + 3}"`)), tail].join("\n");
  });
  writeFileSync(score, longer);
  await page.waitForFunction(() => document.querySelector('.bar[data-asked="page"]')?.getAttribute("aria-label").includes("bar 15"), undefined, { timeout: 120_000 });
  await page.waitForFunction(() => [...document.querySelectorAll("#notices p")].some((one) => one.textContent.includes("a new page asked for at bar 14 begins at bar 15 now")), undefined, { timeout: 120_000 });
  assert.equal(JSON.parse(readFileSync(file(".breaks.json"), "utf8")).breaks[0].bar_ordinal, 15);
  await page.keyboard.press("Escape");
  assert.equal(await page.locator("dialog").count(), 0);
  assert.deepEqual(complaints, []);
  await page.context().close();
  assert.equal(await bench.kill(), 0);
  // The command makes the very page, and says who asked for it.
  const out = join(folder, "parts");
  let said;
  try {
    said = execFileSync(program(), ["parts", score, "--out", out, "--part", "Violin I"], { encoding: "utf8" });
  } catch (problem) {
    // 1: a turn is too quick.
    assert.equal(problem.status, 1, problem.stderr);
    said = problem.stdout;
  }
  assert.match(said, /1 page or line begins where long\.breaks\.json asks for it/);
  const part = readFileSync(join(out, "01-Violin-I.musicxml"), "utf8");
  const opened = part.match(/<measure number="15"[^>]*>\s*<print[^>]*>/)?.[0] ?? "";
  assert.match(opened, /new-page="yes"/);
  assert.ok(existsSync(file(".acts.jsonl")));
});
