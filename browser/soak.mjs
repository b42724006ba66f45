// A scripted afternoon at the workbench: three tabs act at once, reload, the score changes on the disk, the program is killed and
// comes back; then many requests at once, slow and oversized bodies. Prints its figures, `figure NAME VALUE`; `cargo xtask trust soak`
// keeps them. Nothing here passes or fails, but for a lost act.

import { connect } from "node:net";
import { readFileSync, renameSync, writeFileSync } from "node:fs";
import { desk, random, start } from "./workbench.mjs";

const [ACTS, TABS, RELOADS, CHANGES, KILLS, PARALLEL, SLOW] = [20_000, 3, 200, 20, 20, 200, 20];
const ASKS = ["down", "up", "hook", "retake"];

const pick = random(20261201);
const figure = (name, value) => console.log(`figure ${name} ${value}`);
const waited = (time) => new Promise((resolve) => setTimeout(resolve, time));

const { score } = desk("tide-table-exercise");
let bench = await start(score);
let [confirmed, acts, reloads, changes, kills, lost, growth, early] = [0, 0, 0, 0, 0, 0, 0, 0];
const state = async () => (await bench.ask("score")).json();
let { version } = await state();

/** What a tab does next: mostly it asks for a bow, sometimes it undoes, does again or loads everything anew. */
async function act(tab) {
  if (pick(Math.floor(ACTS / RELOADS)) === 0) {
    await Promise.all(["score", "systems", "findings", "strokes?line=0&first=0&last=9"].map((path) => bench.ask(path)));
    reloads += 1;
  }
  const what = pick(10);
  if (what < 8) {
    const body = { line: 0, asks: [{ stroke: 1 + pick(30), ask: ASKS[pick(4)] }], version, by: `tab ${tab}` };
    const done = await bench.ask("bow", body);
    if (done.status === 200) {
      version = done.json().version;
      acts += 1;
    } else if (done.status === 409) ({ version } = await state());
  } else {
    const done = await bench.ask(what === 8 ? "undo" : "redo", { by: `tab ${tab}` });
    if (done.status === 200) {
      version = done.json().version;
      acts += 1;
    }
  }
}

/** The score on the disk gets another title, as if another program had saved it. */
async function change() {
  const text = readFileSync(score, "utf8");
  const next = text.includes("<!-- saved")
    ? text.replace(/<!-- saved \d+ -->/, `<!-- saved ${changes} -->`)
    : text.replace("</score-partwise>", `<!-- saved ${changes} --></score-partwise>`);
  writeFileSync(`${score}.new`, next);
  renameSync(`${score}.new`, score);
  changes += 1;
  // The watcher takes it in.
  await waited(300);
  ({ version } = await state());
}

/** Killed while nothing is under way: what counts now counts when it is back. */
async function killed() {
  const before = (await state()).undo;
  await bench.kill("SIGKILL");
  bench = await start(score);
  kills += 1;
  const now = await state();
  lost += Math.max(0, before - now.undo);
  version = now.version;
  early = 0;
}

const ROUNDS = KILLS;
for (let round = 0; round < ROUNDS; round += 1) {
  const until = Math.floor(ACTS * (round + 1) / ROUNDS);
  const from = acts;
  const tabs = Array.from({ length: TABS }, (_, tab) => (async () => {
    while (acts < until) {
      await act(tab);
      if (early === 0 && acts - from > (until - from) / 4) early = bench.memory();
    }
  })());
  await Promise.all(tabs);
  growth = Math.max(growth, (bench.memory() / early - 1) * 100);
  confirmed = (await state()).undo;
  await change();
  while (changes < Math.ceil(CHANGES * (round + 1) / ROUNDS)) await change();
  await killed();
  console.log(`round ${round + 1}: ${acts} acts, ${confirmed} to undo, ${(bench.memory() / 1048576).toFixed(0)} MB, ${lost} lost`);
}
while (reloads < RELOADS) {
  await Promise.all(["score", "systems", "findings"].map((path) => bench.ask(path)));
  reloads += 1;
}
figure("soak-acts", acts);
figure("soak-tabs", TABS);
figure("soak-reloads", reloads);
figure("soak-changes", changes);
figure("soak-kills", kills);
figure("soak-lost", lost);
figure("soak-memory", growth.toFixed(1));

// Many at once.
const paths = ["score", "systems", "findings", "strokes?line=0&first=0&last=9", "ways?line=0&first=0&last=3"];
const answers = await Promise.all(Array.from({ length: PARALLEL }, (_, number) => bench.ask(paths[number % paths.length])));
figure("soak-parallel", answers.filter((answer) => answer.status === 200).length);

/** A body that never comes to its end, or is far too large; whether the server ended it while others were answered. */
function strained(large) {
  const { port, searchParams } = new URL(bench.address);
  const length = large ? 1 << 30 : 1000;
  return new Promise((resolve) => {
    const socket = connect(Number(port), "127.0.0.1", () => {
      socket.write(`POST /api/bow HTTP/1.1\r\nHost: 127.0.0.1:${port}\r\nOrigin: http://127.0.0.1:${port}\r\nCookie: arcata-${port}=${searchParams.get("key")}\r\nContent-Type: application/json\r\nContent-Length: ${length}\r\n\r\n{`);
      if (large) {
        const pour = () => { while (!socket.destroyed && socket.write(" ".repeat(65536))); };
        socket.on("drain", pour);
        pour();
      }
    });
    let said = "";
    const late = setTimeout(() => { socket.destroy(); resolve(false); }, 90_000);
    const done = () => { clearTimeout(late); socket.destroy(); resolve(/^HTTP\/1.1 4/.test(said) || said === ""); };
    socket.on("data", (text) => { said += text; done(); });
    socket.on("error", done);
    socket.on("close", done);
  });
}
const strains = Array.from({ length: SLOW }, (_, number) => strained(number % 2 === 0));
const meanwhile = await bench.ask("score");
const ended = await Promise.all(strains);
const refused = meanwhile.status === 200 ? ended.filter(Boolean).length : 0;
console.log(`${ended.filter((_, number) => number % 2 === 0).filter(Boolean).length} oversized, ${ended.filter((_, number) => number % 2 === 1).filter(Boolean).length} slow ones ended by the server`);
figure("soak-slow", refused);
await bench.kill();
if (lost > 0) process.exit(1);
