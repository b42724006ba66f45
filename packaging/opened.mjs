// Opens a workbench's address in Chromium and waits for music with the bow under it: node opened.mjs ADDRESS

import { chromium } from "playwright-core";

const browser = await chromium.launch({ executablePath: process.env.ARCATA_BROWSER, args: ["--no-sandbox", "--disable-gpu", "--disable-background-networking"] });
try {
  const page = await browser.newPage();
  const wrong = [];
  page.on("pageerror", (problem) => wrong.push(String(problem)));
  await page.goto(process.argv[2]);
  await page.waitForSelector("#music svg path", { state: "attached", timeout: 60_000 });
  const title = await page.textContent("#title");
  if (!title) wrong.push("the page has no title");
  if (wrong.length) throw new Error(wrong.join("\n"));
} finally {
  await browser.close();
}
