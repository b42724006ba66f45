// The browser and the program under test. ARCATA_PROGRAM names the program, ARCATA_BROWSER the browser.

import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { createRequire } from "node:module";
import { chromium } from "playwright-core";

const root = process.env.ARCATA_CHECKOUT ?? fileURLToPath(new URL("..", import.meta.url));
export const demo = (name) => join(root, "demo", name);

/** A folder that goes when the tests have ended. */
export const folder = mkdtempSync(join(tmpdir(), "arcata-pages-"));
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));

/** Runs the program; exit code 1 means that something was found. */
export function arcata(...args) {
  try {
    return execFileSync(program(), args, { cwd: folder, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (problem) {
    if (problem.status !== 1) throw problem;
    return problem.stdout;
  }
}

export function program() {
  const named = process.env.ARCATA_PROGRAM;
  if (!named) throw new Error("ARCATA_PROGRAM does not name the program to test");
  return named;
}

/** Switched off is what a browser asks of the network on its own account. */
const QUIET = [
  "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
  "--disable-component-update", "--disable-sync",
];

export const launch = () =>
  chromium.launch({ executablePath: process.env.ARCATA_BROWSER ?? "/usr/bin/chromium", args: QUIET });

/** Opens a file and writes down what it complains of and what it asks for. */
export async function open(browser, file, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const complaints = [];
  const requests = [];
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => requests.push(request.url()));
  const address = /^https?:/.test(file) ? file : pathToFileURL(file).href;
  await page.goto(address);
  return { page, complaints, requests, address };
}

const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** What axe-core finds serious or critical, each with the first place where it is. */
export async function barriers(page) {
  // The page's own policy forbids other scripts: the checker comes in beside it.
  const source = (await import("node:fs")).readFileSync(axe, "utf8");
  await page.evaluate(source);
  const result = await page.evaluate(() => window.axe.run(document, { resultTypes: ["violations"] }));
  return result.violations
    .filter((violation) => ["serious", "critical"].includes(violation.impact))
    .map((violation) => `${violation.id}: ${violation.help} (${violation.nodes[0]?.html.slice(0, 160)})`);
}
