// The scripts of the workbench carry types in their comments (JSDoc); the TypeScript compiler checks them.

import assert from "node:assert/strict";
import { execFileSync } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";
import { test } from "node:test";
import { demo } from "./pages.mjs";

test("the scripts of the page are sound", () => {
  const compiler = createRequire(import.meta.url).resolve("typescript/bin/tsc");
  const page = join(demo(".."), "crates", "workbench", "page", "tsconfig.json");
  try {
    execFileSync(process.execPath, [compiler, "-p", page], { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  } catch (problem) {
    assert.fail(problem.stdout);
  }
});
