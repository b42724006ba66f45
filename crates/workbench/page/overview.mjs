// The whole piece at a glance: a column a bar, a row a line, and where one is.

import { make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { barsInView, showBar } from "./score.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

const ROW = 10;
/** @type {any} */ let table = null;
/** @type {HTMLCanvasElement} */ let canvas;

/** @param {string} name */
const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

function draw() {
  if (!table || !piece.score) return;
  const scale = window.devicePixelRatio || 1;
  const wide = canvas.clientWidth;
  const rows = Math.min(table.lines.length, 12);
  const high = rows * ROW + 12;
  canvas.width = Math.round(wide * scale);
  canvas.height = Math.round(high * scale);
  canvas.style.height = `${high}px`;
  const pen = canvas.getContext("2d");
  if (!pen) return;
  pen.scale(scale, scale);
  const bars = table.bars.length;
  const column = wide / bars;
  const [first, last] = barsInView();
  pen.fillStyle = colour("--wash");
  pen.fillRect(first * column, 0, Math.max(3, (last - first + 1) * column), high);
  pen.fillStyle = colour("--blue");
  const gap = column > 4 ? 1 : 0;
  for (let bar = 0; bar < bars; bar++) {
    for (let row = 0; row < rows; row++) {
      const speaks = table.bars[bar].lines[row];
      const tall = speaks === "down" ? ROW - 3 : speaks === "up" ? ROW / 2 - 1 : speaks === "goes on" ? 1 : 0;
      if (tall) pen.fillRect(bar * column, (row + 1) * ROW - 1 - tall, Math.max(0.7, column - gap), tall);
    }
  }
  // The graver a finding, the taller it stands.
  const tallness = { A: 8, B: 6, C: 4, D: 2 };
  pen.fillStyle = colour("--soft");
  for (const found of piece.findings?.findings ?? []) {
    const tall = tallness[/** @type {"A"} */ (found.finding.severity)];
    pen.fillRect(found.bar * column, high - 1 - tall, Math.max(2.5, column - gap), tall);
  }
  // Where movements begin.
  pen.fillStyle = colour("--ink");
  for (const movement of piece.score.movements.slice(1)) pen.fillRect(movement.first * column - 0.5, 0, 1, high);
  // Bars that turned with the last act.
  pen.fillStyle = colour("--focus");
  for (const bar of piece.moved.bars) pen.fillRect(bar * column, 0, Math.max(1.5, column - gap), 2.5);
  pen.strokeStyle = colour("--focus");
  pen.lineWidth = 2;
  pen.strokeRect(first * column + 1, 1, Math.max(3, (last - first + 1) * column) - 2, high - 2);
  canvas.setAttribute("aria-valuenow", String(first + 1));
  canvas.setAttribute("aria-valuetext", piece.barSaid(first));
}

async function read() {
  table = await ask("downbeats");
  canvas.setAttribute("aria-valuemax", String(table.bars.length));
  draw();
}

/** @param {HTMLElement} place */
export function start(place) {
  canvas = make("canvas", { tabindex: "0", role: "slider", "aria-orientation": "horizontal", "aria-valuemin": "1", "aria-valuenow": "1" });
  const help = make("span");
  const title = make("span", { id: "overview-title" });
  place.append(canvas, make("div", { class: "facts" }, title, help));
  const label = () => {
    canvas.setAttribute("aria-label", word("overview"));
    title.textContent = word("overview");
    help.textContent = word("overviewHelp");
    draw();
  };
  label();
  const at = (/** @type {PointerEvent} */ event) => {
    const box = canvas.getBoundingClientRect();
    const bars = table?.bars.length ?? 1;
    return Math.min(bars - 1, Math.max(0, Math.floor((event.clientX - box.left) / box.width * bars)));
  };
  let held = false;
  canvas.addEventListener("pointerdown", (event) => {
    held = true;
    canvas.setPointerCapture(event.pointerId);
    showBar(at(event), "auto");
  });
  canvas.addEventListener("pointermove", (event) => { if (held) showBar(at(event), "auto"); });
  canvas.addEventListener("pointerup", () => { held = false; });
  canvas.addEventListener("keydown", (event) => {
    const [first, last] = barsInView();
    /** @type {Record<string, number>} */
    const steps = { ArrowRight: last + 1, ArrowDown: last + 1, PageDown: last + 1, ArrowLeft: first - 1, ArrowUp: first - 1, PageUp: first - 1, Home: 0, End: (table?.bars.length ?? 1) - 1 };
    if (!(event.key in steps)) return;
    event.preventDefault();
    event.stopPropagation();
    showBar(Math.max(0, steps[event.key]), "auto");
  });
  document.getElementById("music")?.addEventListener("scroll", () => requestAnimationFrame(draw), { passive: true });
  new ResizeObserver(draw).observe(canvas);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", draw);
  const again = () => read().catch((problem) => piece.fail(problem));
  let waiting = 0;
  piece.addEventListener("opened", again);
  // The music comes first.
  piece.addEventListener("moved", () => {
    clearTimeout(waiting);
    waiting = window.setTimeout(again, 200);
  });
  piece.addEventListener("reviewed", draw);
  piece.addEventListener("language", label);
}
