// The program is killed 200 times at random moments (the seed is fixed): what it confirmed is there when it comes back. Then an
// hour of editing in a row: memory stays flat.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { desk, endAll, random, start } from "./workbench.mjs";

after(endAll);

const KILLS = 200;
const ASKS = ["down", "up", "hook", "retake"];

test(`killed ${KILLS} times, nothing that was confirmed is lost`, async () => {
  const { score } = desk("lantern-study");
  const pick = random(20261127);
  let confirmed = 0;
  // A kill falls within so many ms, which are more where acts take longer: two are confirmed for each kill in the middle, on a fast
  // machine and on a slow one.
  let within = 25;
  for (let kill = 0; kill < KILLS; kill += 1) {
    const bench = await start(score);
    const now = (await bench.ask("score")).json();
    assert.ok(now.undo === confirmed || now.undo === confirmed + 1, `after kill ${kill}: ${now.undo} acts, ${confirmed} were confirmed`);
    assert.deepEqual(now.lost, []);
    confirmed = now.undo;
    let { version } = now;
    let alive = true;
    const acting = (async () => {
      while (alive) {
        try {
          const done = await bench.ask("bow", { line: 0, asks: [{ stroke: 1 + pick(40), ask: ASKS[pick(4)] }], version, by: "" });
          if (done.status !== 200) continue;
          version = done.json().version;
          confirmed += 1;
        } catch {
          return;
        }
      }
    })();
    await new Promise((resolve) => setTimeout(resolve, pick(within)));
    await bench.kill("SIGKILL");
    alive = false;
    await acting;
    within = confirmed < 2 * kill + 2 ? Math.min(Math.ceil(within * 1.2), 2000) : Math.max(Math.floor(within * 0.95), 25);
  }
  console.log(`${KILLS} kills, ${confirmed} acts confirmed, none lost`);
  assert.ok(confirmed > KILLS, `${confirmed} acts are too few to show anything`);
});

test("an hour of editing leaves memory flat", async () => {
  const { score } = desk("ferry-bell-quartet");
  const bench = await start(score);
  const pick = random(7);
  let version = 0;
  const act = async () => {
    const done = (await bench.ask("bow", { line: pick(4), asks: [{ stroke: 1 + pick(30), ask: ASKS[pick(4)] }], version, by: "" }));
    if (done.status === 200) version = done.json().version;
    await bench.ask(`system?width=190&first=${pick(8) * 4}&last=${pick(8) * 4 + 3}`);
    if (pick(4) === 0) {
      await bench.ask("findings");
      version = (await bench.ask("undo", { by: "" })).json().version;
    }
  };
  // A leader asks for something every four seconds or so.
  const ACTS = 900;
  for (let number = 0; number < ACTS / 3; number += 1) await act();
  const early = bench.memory();
  for (let number = 0; number < ACTS * 2 / 3; number += 1) await act();
  const late = bench.memory();
  const megabytes = (bytes) => (bytes / 1048576).toFixed(1);
  console.log(`memory after ${ACTS / 3} acts ${megabytes(early)} MB, after ${ACTS} acts ${megabytes(late)} MB`);
  assert.ok(late < early * 1.15 + 4 * 1048576, "it grows");
  await bench.kill();
});
