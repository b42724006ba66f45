// The scripts of the workbench carry types in their comments (JSDoc); the TypeScript compiler checks them, as they stand in the
// workbench and as they stand in the folder without a server.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { demo, folder } from "./pages.mjs";
import { site } from "./site.mjs";

const compiler = createRequire(import.meta.url).resolve("typescript/bin/tsc");
const settings = join(demo(".."), "crates", "workbench", "page", "tsconfig.json");

function sound(file) {
  try {
    execFileSync(process.execPath, [compiler, "-p", file], { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (problem) {
    // The engraving library's module is its makers' own.
    const ours = problem.stdout.split("\n").filter((line) => /error TS/.test(line) && !line.includes("verovio-module"));
    assert.deepEqual(ours, []);
  }
}

test("the scripts of the page are sound", () => sound(settings));

test("the scripts of the folder are sound", () => {
  const own = JSON.parse(readFileSync(settings, "utf8"));
  own.include = [join(site(), "page", "*.mjs")];
  const file = join(folder, "tsconfig.json");
  writeFileSync(file, JSON.stringify(own));
  sound(file);
});
