// The workbench under test: the program is started, asked, killed and started again.

import { spawn } from "node:child_process";
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { demo, program } from "./pages.mjs";

process.setMaxListeners(500);

/** A score of the demo, or a text, in a folder of its own. */
export function desk(name, text) {
  const folder = mkdtempSync(join(tmpdir(), "arcata-workbench-"));
  process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
  const score = join(folder, `${name}.musicxml`);
  if (text === undefined) copyFileSync(demo(`${name}.musicxml`), score);
  return { folder, score, file: (ending) => join(folder, `${name}${ending}`) };
}

const running = new Set();

/** Ends what a test that failed has left running; without it the tests would not end. */
export async function endAll() {
  await Promise.all([...running].map((bench) => bench.kill("SIGKILL")));
}

/** Starts the program, with a score or without; `address` opens the page. What it remembers goes to a folder of the test's. */
export async function start(score, state) {
  // The engraver lays its fonts out in a folder for temporary files, which a killed program cannot take away; a disk on which
  // thousands of files have come and gone is slow to give new ones.
  const scratch = mkdtempSync(join(existsSync("/dev/shm") ? "/dev/shm" : tmpdir(), "arcata-"));
  process.on("exit", () => rmSync(scratch, { recursive: true, force: true }));
  const child = spawn(program(), ["open", ...(score ? [score] : []), "--no-browser"], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, TMPDIR: scratch, XDG_STATE_HOME: state ?? scratch },
  });
  let said = "";
  child.stderr.on("data", (text) => { said += text; });
  const address = await new Promise((resolve, reject) => {
    let out = "";
    child.stdout.on("data", (text) => {
      out += text;
      if (out.includes("\n")) resolve(out.trim());
    });
    child.on("exit", (code) => reject(new Error(`the workbench ended with ${code}: ${said}`)));
  });
  const { port, searchParams } = new URL(address);
  const key = searchParams.get("key");
  const ended = new Promise((resolve) => child.on("exit", resolve));
  const bench = {
    child,
    address,
    /** Asks the server as the page does. */
    ask: (path, body) => new Promise((resolve, reject) => {
      const sent = body === undefined ? undefined : JSON.stringify(body);
      const asked = request({
        host: "127.0.0.1", port, path: `/api/${path}`, method: sent === undefined ? "GET" : "POST",
        headers: {
          cookie: `arcata-${port}=${key}`,
          ...(sent === undefined ? {} : { origin: `http://127.0.0.1:${port}`, "content-type": "application/json", "content-length": Buffer.byteLength(sent) }),
        },
      }, (answer) => {
        let text = "";
        answer.setEncoding("utf8");
        answer.on("data", (piece) => { text += piece; });
        answer.on("end", () => resolve({ status: answer.statusCode, text, json: () => JSON.parse(text) }));
        answer.on("error", reject);
      });
      asked.on("error", reject);
      asked.end(sent);
    }),
    /** Memory in use, bytes. */
    memory: () => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, "utf8"))?.[1] ?? 0) * 1024,
    kill: async (signal = "SIGTERM") => {
      child.kill(signal);
      const code = await ended;
      running.delete(bench);
      rmSync(scratch, { recursive: true, force: true });
      return code;
    },
  };
  running.add(bench);
  return bench;
}

/** A quartet of so many bars: the demo quartet over and over, bars numbered on. */
export function longQuartet(bars) {
  const text = readFileSync(demo("ferry-bell-quartet.musicxml"), "utf8");
  return text.replace(/(<part id="[^"]*">)([\s\S]*?)(<\/part>)/g, (_, head, music, tail) => {
    const once = music.match(/<measure [\s\S]*?<\/measure>/g);
    const all = Array.from({ length: bars }, (_, bar) => once[bar % once.length].replace(/number="[^"]*"/, `number="${bar + 1}"`));
    return `${head}\n${all.join("\n")}\n${tail}`;
  });
}

/** The middle value, and the one that 95 of 100 do not pass. */
export function middle(values) {
  const sorted = [...values].sort((one, other) => one - other);
  return [sorted[Math.floor(sorted.length / 2)], sorted[Math.floor(sorted.length * 0.95)]];
}

export { basename, existsSync, readFileSync };

/**
 * Asks for so many bows one after another, each the other way round, and hands back how long each took until it was drawn, ms. The page settles
 * first.
 */
export const keysToPictures = (page, { count, settles, between }) => page.evaluate(async ({ count, settles, between }) => {
  const { piece } = await import(new URL("page/piece.mjs", document.baseURI).href);
  const music = document.getElementById("music");
  const waited = (time) => new Promise((resolve) => setTimeout(resolve, time));
  await piece.goTo(200);
  await waited(settles);
  const times = [];
  for (let number = 0; number < count; number += 1) {
    await piece.step(1);
    const { line, stroke } = piece.chosen;
    const bar = (await piece.strokes(line))[stroke].bar;
    const system = [...music.querySelectorAll("arcata-system")].find((one) => bar >= one.first && bar <= one.last);
    await system.draw();
    const now = (await piece.strokes(line))[stroke].bow;
    const lane = () => system.shadowRoot.querySelector(`.lane[data-line="${line}"]`);
    const old = lane();
    const pressed = performance.now();
    music.dispatchEvent(new KeyboardEvent("keydown", { key: now === "down" ? "u" : "d", bubbles: true }));
    await new Promise((resolve) => {
      const look = () => (lane() !== old || performance.now() - pressed > 3000 ? resolve() : requestAnimationFrame(look));
      look();
    });
    times.push(performance.now() - pressed);
    await waited(between);
  }
  return times;
}, { count, settles, between });

/** xorshift: the same numbers on every run. */
export function random(seed) {
  let state = seed;
  return (end) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return Math.abs(state) % end;
  };
}
