// The pages of a class: the sheets on paper, and the page on which the teacher goes through the class by keyboard.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { spawn } from "node:child_process";
import { cpSync, existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { arcata, barriers, demo, folder, launch, open, program } from "./pages.mjs";

const home = join(folder, "class");
const pages = join(home, "pages");
const task = join(home, "task.toml");
const run = (...more) =>
  arcata("class", join(home, "hand-ins"), "--task", task, "--out", pages, "--students", join(home, "students.txt"), ...more);

let browser;
before(async () => {
  cpSync(demo("class"), home, { recursive: true });
  run();
  browser = await launch();
});
after(() => browser?.close());

const sheets = () => readdirSync(join(pages, "sheets")).filter((name) => name.endsWith(".html"));
const records = () => readdirSync(join(pages, "records")).map((name) => JSON.parse(readFileSync(join(pages, "records", name))));

for (const name of ["index.html", "class-to-show.html", "hand.html", "a sheet"]) {
  for (const colorScheme of ["light", "dark"]) {
    test(`${name}: no barrier in ${colorScheme}, no complaint, nothing is fetched`, async () => {
      const file = name === "a sheet" ? join("sheets", sheets()[0]) : name;
      const { page, complaints, requests, address } = await open(browser, join(pages, file), { colorScheme, bypassCSP: true });
      assert.deepEqual(await barriers(page), []);
      assert.deepEqual(complaints, []);
      assert.deepEqual(requests.filter((url) => url !== address && !url.startsWith("data:font/")), []);
      await page.context().close();
    });
  }
}

/** What is cut off on the printed page: text that does not show, boxes that reach over the page or over each other. */
const lost = () => {
  const end = document.documentElement.clientHeight;
  const all = [...document.querySelectorAll("main, section, article, .pair, figure, dl, footer, header, ul")];
  const seen = all.filter((one) => one.getClientRects().length);
  const said = [];
  for (const one of seen) {
    if (one.scrollHeight > one.clientHeight + 2) said.push(`${one.tagName} loses ${one.scrollHeight - one.clientHeight}`);
    if (one.getBoundingClientRect().bottom > end + 1) said.push(`${one.tagName} reaches over the page`);
  }
  for (const picture of document.querySelectorAll("svg.music")) {
    const { height } = picture.getBoundingClientRect();
    if (picture.getClientRects().length && height < 24) said.push(`a picture is ${height} high`);
  }
  return said;
};

for (const [paper, width, height] of [["a4", 210, 297], ["letter", 215.9, 279.4]]) {
  test(`every sheet is one page of ${paper}, and nothing on it is cut off`, async () => {
    writeFileSync(task, readFileSync(task, "utf8").replace(/^\[sheet\]\n(paper = .*\n)?/m, `[sheet]\npaper = "${paper}"\n`));
    run();
    assert.equal(sheets().length, 11);
    const pixels = (millimetres) => Math.floor((millimetres / 25.4) * 96);
    for (const name of sheets()) {
      const { page } = await open(browser, join(pages, "sheets", name), {
        viewport: { width: pixels(width - 28), height: pixels(height - 22) },
      });
      await page.emulateMedia({ media: "print" });
      assert.deepEqual(await page.evaluate(lost), [], name);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      assert.equal(pdf.toString("latin1").match(/\/Type\s*\/Page\b/g).length, 1, name);
      await page.context().close();
    }
  });
}

test("the class is gone through by keyboard, and nothing is lost when the page is closed", async () => {
  const context = await browser.newContext({ acceptDownloads: true });
  const page = await context.newPage();
  const address = `file://${join(pages, "hand.html")}`;
  await page.goto(address);
  const first = await page.textContent("h2 a");
  await page.keyboard.press("j");
  assert.notEqual(await page.textContent("h2 a"), first, "the next hand-in");
  await page.keyboard.press("k");
  assert.equal(await page.textContent("h2 a"), first, "and back");
  // To a hand-in with passages of both kinds.
  const states = () => page.$$eval("ol.hand button", (all) => all.map((one) => one.getAttribute("aria-pressed")));
  for (let step = 0; step < 11 && !((await states()).includes("true") && (await states()).includes("false")); step += 1) {
    await page.keyboard.press("j");
  }
  const who = await page.textContent("h2 a");
  const before = await states();
  const struck = before.indexOf("true");
  const taken = before.indexOf("false");
  const goTo = async (line) => {
    for (let up = 0; up < before.length; up += 1) await page.keyboard.press("ArrowUp");
    for (let down = 0; down < line; down += 1) await page.keyboard.press("ArrowDown");
  };
  await goTo(struck);
  await page.keyboard.press("x");
  await goTo(taken);
  await page.keyboard.press("x");
  const now = await states();
  assert.equal(now[struck], "false", "struck");
  assert.equal(now[taken], "true", "another passage in its place");
  await page.keyboard.press("s");
  await page.keyboard.type("Sing it first, j and x are letters here.");
  await page.keyboard.press("Enter");
  await page.keyboard.press("1");
  await page.keyboard.press("n");
  await page.keyboard.type("A brave page.");
  await page.keyboard.press("Enter");
  await page.keyboard.press("m");
  await page.keyboard.type("seen");
  await page.keyboard.press("Enter");
  await page.keyboard.press("m");
  await page.keyboard.press("Escape");
  assert.match(await page.textContent("#kept"), /^6 acts kept in this browser, 6 of them in no saved file/);
  await page.keyboard.press("2");
  await page.keyboard.press("u");
  assert.match(await page.textContent("#kept"), /^6 acts/);
  // The tab is closed and opened again.
  await page.close();
  const again = await context.newPage();
  await again.goto(address);
  // On a busy machine the browser may take a moment to hand on what the closed tab wrote.
  await again.waitForFunction(() => document.getElementById("kept").textContent.startsWith("6 acts kept in this browser"));
  while ((await again.textContent("h2 a")) !== who) await again.keyboard.press("j");
  assert.ok((await again.textContent("main")).includes("A brave page."));
  // The sentence is offered again, at another hand-in.
  await again.keyboard.press("j");
  await again.keyboard.press("s");
  const offered = await again.$$eval("#phrases option", (all) => all.map((one) => one.value));
  assert.deepEqual(offered, ["Sing it first, j and x are letters here.", "A brave page."]);
  await again.keyboard.press("Escape");
  const [download] = await Promise.all([again.waitForEvent("download"), again.keyboard.press("w")]);
  assert.equal(download.suggestedFilename(), "class-hand.json");
  const saved = join(home, "class-hand.json");
  await download.saveAs(saved);
  assert.match(await again.textContent("#kept"), /6 acts kept in this browser, 0 of them in no saved file/);
  // The sheets are made from it, and the page knows that it was done.
  const told = run("--hand", saved);
  assert.match(told, /11 were as they had been/);
  const record = records().find((one) => one.pseudonym === who);
  assert.equal(record.touch.note, "A brave page.");
  assert.deepEqual(record.touch.ticked, [0]);
  const sheet = sheets().map((name) => readFileSync(join(pages, "sheets", name), "utf8")).find((text) => text.includes("A brave page."));
  assert.ok(sheet.includes("Sing it first") && sheet.includes("seen"));
  await again.reload();
  assert.match(await again.textContent("#kept"), /^0 acts kept in this browser/);
  while ((await again.textContent("h2 a")) !== who) await again.keyboard.press("j");
  assert.ok((await again.textContent("main")).includes("A brave page."));
  assert.deepEqual(await again.$$eval("ol.hand button", (all) => all.map((one) => one.getAttribute("aria-pressed"))), now);
  await context.close();
  rmSync(saved);
});

test("two tabs of one class do not put away each other's acts", async () => {
  const context = await browser.newContext();
  const address = `file://${join(pages, "hand.html")}`;
  const [one, other] = [await context.newPage(), await context.newPage()];
  for (const page of [one, other]) await page.goto(address);
  const acts = (page, count) =>
    page.waitForFunction((count) => document.getElementById("kept").textContent.startsWith(`${count} acts`), count);
  await one.keyboard.press("1");
  await acts(other, 1);
  await other.keyboard.press("j");
  await other.keyboard.press("1");
  await acts(one, 2);
  await one.reload();
  await acts(one, 2);
  await context.close();
});

test("a browser that keeps nothing says so", async () => {
  const context = await browser.newContext();
  await context.addInitScript(() => {
    Object.defineProperty(window, "localStorage", { get: () => { throw new Error("not allowed"); } });
  });
  const page = await context.newPage();
  await page.goto(`file://${join(pages, "hand.html")}`);
  await page.keyboard.press("1");
  assert.match(await page.textContent("#kept"), /keeps nothing/);
  await context.close();
});

/** Starts the program with the page of the hand, and says where it is. */
async function goThrough() {
  const child = spawn(program(), [
    "class", join(home, "hand-ins"), "--task", task, "--out", pages, "--go-through", "--no-browser",
  ], { stdio: ["ignore", "pipe", "pipe"] });
  const address = await new Promise((resolve, reject) => {
    let said = "";
    child.stdout.on("data", (text) => {
      said += text;
      const found = said.match(/^http:\S+$/m);
      if (found) resolve(found[0]);
    });
    child.on("exit", (code) => reject(new Error(`ended with ${code}: ${said}`)));
  });
  return { address, child, kill: () => new Promise((resolve) => { child.on("exit", resolve); child.kill("SIGKILL"); }) };
}

test("served by the program, every act is in a file beside the task before it is confirmed", async () => {
  const journal = join(home, "task.hand.jsonl");
  assert.ok(!existsSync(journal));
  let served = await goThrough();
  const context = await browser.newContext();
  const page = await context.newPage();
  const complaints = [];
  page.on("console", (message) => { if (message.type() === "error") complaints.push(message.text()); });
  page.on("pageerror", (error) => complaints.push(String(error)));
  await page.goto(served.address);
  const who = await page.textContent("h2 a");
  await page.keyboard.press("1");
  await page.keyboard.press("n");
  await page.keyboard.type("From the desk.");
  await page.keyboard.press("Enter");
  await page.waitForFunction(() => document.getElementById("kept").textContent.startsWith("2 acts"));
  assert.equal(readFileSync(journal, "utf8").trim().split("\n").length, 3);
  // A sheet at a click, and nothing else of the disk.
  const statuses = await page.evaluate(async () => Promise.all(
    [document.querySelector("h2 a").getAttribute("href"), "/sheets/..%2Frecords%2Fx.json", "/class-key.toml"]
      .map(async (path) => (await fetch(path)).status)));
  assert.deepEqual(statuses, [200, 404, 404]);
  assert.equal((await fetch(served.address.replace(/\?.*/, ""))).status, 401, "nobody without the key");
  assert.deepEqual(complaints.filter((one) => !one.includes("404")), []);
  // The program is killed: what was confirmed is there, what comes now is told.
  await served.kill();
  await page.keyboard.press("2");
  await page.waitForFunction(() => document.getElementById("kept").textContent.includes("has been stopped"));
  await context.close();
  served = await goThrough();
  const second = await browser.newContext();
  const again = await second.newPage();
  await again.goto(served.address);
  await again.waitForFunction(() => document.getElementById("kept").textContent.startsWith("2 acts"));
  assert.ok((await again.textContent("main")).includes("From the desk."));
  assert.equal(records().find((one) => one.pseudonym === who).touch.note, "From the desk.", "the second run made the sheet from it");
  await again.keyboard.press("u");
  await again.waitForFunction(() => document.getElementById("kept").textContent.startsWith("1 acts"));
  assert.ok(!(await again.textContent("main")).includes("From the desk."));
  await served.kill();
  await second.close();
  run();
  assert.equal(records().find((one) => one.pseudonym === who).touch.note, "");
  assert.deepEqual(records().find((one) => one.pseudonym === who).touch.ticked, [0]);
});
