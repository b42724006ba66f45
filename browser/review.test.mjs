// The review as a page, opened from disk as a person opens it. Barriers are what axe-core
// (https://github.com/dequelabs/axe-core, rules after WCAG) calls serious or critical.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { mkdirSync, copyFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { arcata, barriers, demo, folder, launch, open } from "./pages.mjs";

const SCORES = ["lantern-study", "slipway-strings", "ferry-bell-quartet", "tide-table-exercise"];
const file = (name) => join(folder, `${name}-review.html`);

let browser;
before(async () => {
  for (const name of SCORES) arcata("review", demo(`${name}.musicxml`), "--format", "html");
  browser = await launch();
});
after(() => browser?.close());

for (const name of SCORES) {
  test(`${name}: opens without a complaint and asks for nothing but itself`, async () => {
    const { page, complaints, requests, address } = await open(browser, file(name));
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    await page.waitForTimeout(100);
    assert.deepEqual(complaints, []);
    assert.deepEqual(requests.filter((url) => url !== address && !url.startsWith("data:font/")), []);
    assert.ok((await page.title()).includes("what the bows do"));
    await page.context().close();
  });

  for (const colorScheme of ["light", "dark"]) {
    test(`${name}: no barrier in ${colorScheme}`, async () => {
      const { page } = await open(browser, file(name), { colorScheme, bypassCSP: true });
      assert.deepEqual(await barriers(page), []);
      await page.context().close();
    });
  }

  test(`${name}: the tab key reaches every finding`, async () => {
    const { page } = await open(browser, file(name));
    const wanted = await page.$$eval("article[data-finding]", (all) => all.map((one) => one.dataset.finding));
    const reached = new Set();
    for (let step = 0; step < 20 + wanted.length * 4; step += 1) {
      await page.keyboard.press("Tab");
      const number = await page.evaluate(() => document.activeElement?.closest("article")?.dataset.finding);
      if (number) {
        reached.add(number);
        const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
        assert.notEqual(outline, "none", "what has the focus shows it");
      }
    }
    assert.deepEqual(wanted.filter((number) => !reached.has(number)), []);
    await page.context().close();
  });

  test(`${name}: every picture says in words what it shows, and no music leaves it`, async () => {
    const { page } = await open(browser, file(name));
    // Articles out of view are not laid out: for this look they are.
    await page.addStyleTag({ content: "article{content-visibility:visible!important}" });
    const pictures = await page.$$eval("svg.music-and-bow", (all) => all.map((one) => {
      const frame = one.getBoundingClientRect();
      const inside = one.querySelector("g").getBoundingClientRect();
      const notes = [...one.querySelectorAll(".note,.rest")].map((note) => note.getBoundingClientRect());
      return {
        text: one.getAttribute("aria-label") ?? "",
        role: one.getAttribute("role"),
        over: Math.max(frame.left - inside.left, inside.right - frame.right, 0),
        wide: frame.width,
        notes: notes.length,
        lanes: one.querySelectorAll(".lane").length,
        // Of a rule's page: some examples are plucked, or played by winds.
        example: one.closest("details.rule") !== null,
      };
    }));
    assert.ok(pictures.length > 0 || name === "tide-table-exercise");
    for (const picture of pictures) {
      assert.equal(picture.role, "img");
      assert.match(picture.text, /^Bars .+(down-bow|up-bow|No stroke begins in them)/);
      assert.ok(picture.over < picture.wide * 0.02, `${picture.over} of ${picture.wide}`);
      assert.ok(picture.notes > 0 && (picture.lanes > 0 || picture.example));
    }
    await page.context().close();
  });

  test(`${name}: on paper and on a phone nothing is cut off`, async () => {
    // A4 without margins of 14 mm, at 96 dots an inch; a small phone.
    for (const [width, media] of [[688, "print"], [360, "screen"]]) {
      const { page } = await open(browser, file(name), { viewport: { width, height: 800 } });
      await page.emulateMedia({ media });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(wide <= width, `${wide} dots on ${width} in ${media}`);
      const cut = await page.$$eval("svg.music-and-bow", (all, width) =>
        all.map((one) => one.getBoundingClientRect()).filter((box) => box.right > width || box.left < 0).length, width);
      assert.equal(cut, 0);
      await page.context().close();
    }
  });
}

test("the choice hides and shows findings and their places in the strip", async () => {
  const { page } = await open(browser, file("lantern-study"));
  const count = () => page.$$eval("article[data-finding]:not([hidden])", (all) => all.length);
  const spots = () => page.$$eval(".spot:not([hidden])", (all) => all.length);
  const all = await count();
  assert.ok(all > 3);
  assert.equal(await spots(), all);
  assert.equal(await page.textContent("#shown"), `${all} of ${all} shown.`);
  for (const group of ["weight", "section", "rule"]) {
    const box = page.locator(`input[name=${group}]`).first();
    const value = await box.getAttribute("value");
    const gone = await page.$$eval(
      "article[data-finding]", (found, [group, value]) => found.filter((one) => one.dataset[group] === value).length,
      [group, value]);
    assert.ok(gone > 0);
    await box.uncheck();
    assert.equal(await count(), all - gone);
    assert.equal(await spots(), all - gone);
    assert.equal(await page.textContent("#shown"), `${all - gone} of ${all} shown.`);
    await page.click("#all");
    assert.equal(await count(), all);
  }
  await page.context().close();
});

test("a finding leads to its rule's page, which opens", async () => {
  const { page } = await open(browser, file("lantern-study"));
  const link = page.locator("article .rule a").first();
  const target = (await link.getAttribute("href")).slice(1);
  await link.click();
  await page.waitForFunction((id) => document.getElementById(id).open, target);
  assert.match(await page.textContent(`#${target}`), /Why it matters/);
  await page.context().close();
});

test("proposals stand beside what they change", async () => {
  const { page } = await open(browser, file("lantern-study"));
  const pairs = await page.$$eval("article .ways", (all) => all.map((one) => one.querySelectorAll("svg.music-and-bow").length));
  assert.ok(pairs.some((count) => count >= 2), `${pairs}`);
  await page.context().close();
});

test("a folder of scores gets a page that leads to a page a score", async () => {
  const scores = join(folder, "class");
  mkdirSync(scores);
  for (const name of SCORES) copyFileSync(demo(`${name}.musicxml`), join(scores, `${name}.musicxml`));
  writeFileSync(join(scores, "broken.musicxml"), "<score-partwise><part>");
  arcata("review", scores, "--format", "html", "--out", join(folder, "pages"));
  const { page, complaints } = await open(browser, join(folder, "pages", "index.html"), { bypassCSP: true });
  assert.deepEqual(await barriers(page), []);
  assert.match(await page.textContent("tbody"), /line 1/);
  assert.equal(await page.locator("tbody a").count(), SCORES.length);
  await page.locator("tbody a").first().click();
  await page.waitForSelector("h1");
  assert.ok((await page.locator("article").count()) > 0);
  assert.deepEqual(complaints, []);
  await page.context().close();
});
