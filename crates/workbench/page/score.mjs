// The music by systems, each drawn as it comes into view and again when its bows change.

import { picture } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { ask, Refused } from "./server.mjs";
import { remembered, word } from "./words.mjs";

const music = /** @type {HTMLElement} */ (document.getElementById("music"));
/** Pixels of a millimetre at the usual size. */
const PIXELS = 96 / 25.4;
/** How tall a system is until it has been drawn, pixels. */
const GUESS = 190;
let size = Number(remembered(() => localStorage.getItem("arcata-size")) ?? "1") || 1;

const STYLE = new CSSStyleSheet();
STYLE.replaceSync(`
  :host { cursor: pointer; }
  svg { display: block; width: 100%; height: auto; overflow: visible; }
  .ground { fill: #4f6a80; opacity: .2; }
  .asked-for { fill: none; stroke: #4f6a80; stroke-width: .45; }
  .asked-sign { fill: none; stroke: currentColor; stroke-width: .38; }
  .heard { stroke: #4f6a80; stroke-width: .5; }
`);

/** A line of music. */
class System extends HTMLElement {
  first = 0;
  last = 0;
  #drawn = -1;
  #asking = -1;

  connectedCallback() {
    if (!this.shadowRoot) {
      this.attachShadow({ mode: "open" }).adoptedStyleSheets = [STYLE];
      this.addEventListener("click", (event) => this.#clicked(event));
    }
  }

  get isDrawn() {
    return this.#drawn >= 0;
  }

  /** Draws the system if the picture is not the newest. @param {boolean} anew */
  async draw(anew = false) {
    const version = piece.version;
    if ((!anew && this.#drawn >= 0) || this.#asking === version) return;
    this.#asking = version;
    try {
      const drawn = await ask("system", { ...look(), first: this.first, last: this.last });
      if (drawn.version < this.#drawn) return;
      this.#drawn = drawn.version;
      if (this.#swapLanes(drawn)) {
        await this.#ring();
        await this.mark();
        return;
      }
      const told = piece.barsSaid(this.first, this.last);
      const svg = picture(drawn, told);
      this.shadowRoot?.replaceChildren(svg);
      this.style.height = "";
      this.removeAttribute("data-waiting");
      await this.mark();
      await this.#ring();
    } catch (problem) {
      piece.fail(problem);
      if (this.#drawn < 0 && problem instanceof Refused) {
        // Where the music would stand it says why it does not.
        const said = document.createElement("p");
        said.textContent = problem.message;
        said.style.padding = "0 1rem";
        this.shadowRoot?.replaceChildren(said);
      }
    } finally {
      if (this.#asking === version) this.#asking = -1;
    }
  }

  /** Takes lanes that came with an answer; says whether they fit. @param {any} lanes */
  take(lanes) {
    if (!this.#swapLanes({ ...lanes, svg: lanes.lanes.join("") })) return false;
    this.#drawn = piece.version;
    this.mark();
    this.#ring();
    return true;
  }

  /**
   * Where the music is the same, only the lanes are put in: the eye stays where it is, and it is quicker.
   * @param {{svg: string, width: number, height: number}} drawn
   */
  #swapLanes(drawn) {
    const now = this.shadowRoot?.querySelector("svg");
    if (!now || now.getAttribute("viewBox") !== `0 0 ${drawn.width} ${drawn.height}`) return false;
    const next = picture(drawn, "");
    const lanes = [...now.querySelectorAll(".lane[data-line]")];
    const news = [...next.querySelectorAll(".lane[data-line]")];
    if (lanes.length !== news.length) return false;
    lanes.forEach((lane, index) => {
      lane.replaceWith(news[index]);
    });
    return true;
  }

  /** @param {number} line @param {number} stroke @returns {SVGGElement | null} */
  stroke(line, stroke) {
    return this.shadowRoot?.querySelector(`.lane[data-line="${line}"] [data-stroke="${stroke}"]`) ?? null;
  }

  /** Lays a ground under the stroke that is chosen. */
  async mark() {
    this.shadowRoot?.querySelector(".ground")?.remove();
    const chosen = piece.chosen;
    const group = chosen && this.stroke(chosen.line, chosen.stroke);
    if (!group) return;
    const lane = /** @type {SVGGElement} */ (group.closest(".lane"));
    const [x1, x2] = (group.dataset.x ?? "0 0").split(" ").map(Number);
    const frog = Number(lane.dataset.frog);
    const tip = Number(lane.dataset.tip);
    const ground = document.createElementNS("http://www.w3.org/2000/svg", "rect");
    ground.setAttribute("class", "ground");
    ground.setAttribute("x", String(Math.min(x1, x2) - 0.8));
    ground.setAttribute("y", String(frog - 3.4));
    ground.setAttribute("width", String(Math.abs(x2 - x1) + 1.6));
    ground.setAttribute("height", String(tip - frog + 4.2));
    ground.setAttribute("rx", "0.8");
    lane.prepend(ground);
  }

  /** Rings the strokes that somebody has asked for. */
  async #ring() {
    for (const lane of this.shadowRoot?.querySelectorAll(".lane[data-line]") ?? []) {
      const line = Number(/** @type {SVGGElement} */ (lane).dataset.line);
      for (const one of await piece.strokes(line)) {
        if (!one.asked || one.bar > this.last) continue;
        const group = this.stroke(line, one.stroke);
        if (!group) continue;
        const [x] = (group.dataset.x ?? "0").split(" ").map(Number);
        const frog = Number(/** @type {SVGGElement} */ (lane).dataset.frog);
        const ring = document.createElementNS("http://www.w3.org/2000/svg", "circle");
        ring.setAttribute("class", "asked-for");
        ring.setAttribute("cx", String(x));
        ring.setAttribute("cy", String(frog - 1.6));
        ring.setAttribute("r", "1.9");
        const sign = document.createElementNS("http://www.w3.org/2000/svg", "path");
        sign.setAttribute("class", "asked-sign");
        // A bow drawn down opens downwards, a bow pushed up points down.
        const y = frog - 1.6;
        sign.setAttribute("d", one.bow === "down" ? `M${x - 0.8} ${y + 1}v-1.8h1.6v1.8` : `M${x - 0.75} ${y - 1}l.75 1.9l.75-1.9`);
        group.append(ring, sign);
      }
    }
  }

  /** @param {MouseEvent} event */
  #clicked(event) {
    const near = this.#nearest(event.clientX, event.clientY);
    if (near) piece.choose(near);
    music.focus({ preventScroll: true });
  }

  /** The stroke under a point, or in the lane nearest below it. @param {number} x @param {number} y */
  #nearest(x, y) {
    let best = null;
    let least = Infinity;
    for (const group of this.shadowRoot?.querySelectorAll("[data-stroke]") ?? []) {
      const lane = /** @type {SVGGElement} */ (group.closest(".lane"));
      const box = group.getBoundingClientRect();
      const room = lane.getBoundingClientRect();
      const across = x < box.left ? box.left - x : x > box.right ? x - box.right : 0;
      // What is clicked on the staff means the lane below it.
      const down = y < room.top ? (room.top - y) * 0.9 : y > room.bottom ? (y - room.bottom) * 3 : 0;
      const far = across + down * 4;
      if (far < least) {
        least = far;
        best = { line: Number(lane.dataset.line), stroke: Number(/** @type {SVGGElement} */ (group).dataset.stroke) };
      }
    }
    return best;
  }

  /** Where the bow is on each lane at some moments of the strokes. @param {Map<number, {stroke: number, share: number}>} bows */
  hear(bows) {
    for (const old of this.shadowRoot?.querySelectorAll(".heard") ?? []) old.remove();
    for (const [line, { stroke, share }] of bows) {
      const group = this.stroke(line, stroke);
      if (!group) continue;
      const lane = /** @type {SVGGElement} */ (group.closest(".lane"));
      const [x1, x2] = (group.dataset.x ?? "0 0").split(" ").map(Number);
      const x = String(x1 + (x2 - x1) * share);
      const now = document.createElementNS("http://www.w3.org/2000/svg", "line");
      now.setAttribute("class", "heard");
      now.setAttribute("x1", x);
      now.setAttribute("x2", x);
      now.setAttribute("y1", lane.dataset.frog ?? "0");
      now.setAttribute("y2", lane.dataset.tip ?? "0");
      lane.append(now);
    }
  }
}

customElements.define("arcata-system", System);

/** How wide the music is drawn, millimetres: steps of ten, so that a nudge of the window draws nothing anew. */
function width() {
  const room = music.clientWidth - 2 * parseFloat(getComputedStyle(music).paddingLeft);
  return Math.min(420, Math.max(70, Math.floor(room / (PIXELS * size) / 10) * 10));
}

/** What is shown, and how wide. */
export function look() {
  return { parts: [...piece.parts].join(",") || undefined, width: width(), sure: piece.sure || undefined };
}

/** Draws what is in view or soon will be. */
const watcher = new IntersectionObserver((seen) => {
  for (const { target, isIntersecting } of seen) if (isIntersecting) /** @type {System} */ (target).draw();
}, { root: music, rootMargin: "60% 0px" });

/** @returns {System[]} */
const systems = () => /** @type {System[]} */ ([...music.querySelectorAll("arcata-system")]);

let laidOut = "";

/** Lays the systems out; the place that was read stays in view. */
async function layOut() {
  const asked = JSON.stringify(look());
  const kept = inView();
  const list = await ask("systems", look());
  if (asked !== JSON.stringify(look())) return;
  laidOut = asked;
  watcher.disconnect();
  const made = list.map((/** @type {{first: number, last: number}} */ { first, last }) => {
    const system = /** @type {System} */ (document.createElement("arcata-system"));
    system.first = first;
    system.last = last;
    system.dataset.first = String(first);
    system.dataset.waiting = "";
    const players = new Set(piece.lines().map((/** @type {number} */ line) => piece.score.lines[line].name)).size;
    system.style.height = `${GUESS * Math.max(1, players)}px`;
    return system;
  });
  music.replaceChildren(...made);
  for (const system of made) watcher.observe(system);
  if (kept !== null) showBar(kept, "auto");
}

/** The first bar of the first system in view. */
export function inView() {
  const top = music.getBoundingClientRect().top;
  return systems().find((system) => system.getBoundingClientRect().bottom > top + 20)?.first ?? null;
}

/** The line of music with the chosen stroke, else the first in view. */
export function systemHere() {
  const list = systems();
  const chosen = list.find((system) => system.shadowRoot?.querySelector(".ground")) ?? list.find((system) => system.first === inView());
  return chosen ? { first: chosen.first, last: chosen.last } : null;
}

/** The systems in view, and those that touch them. */
function near() {
  const room = music.getBoundingClientRect();
  return systems().filter((system) => {
    const box = system.getBoundingClientRect();
    return system.isDrawn && box.bottom > room.top - 200 && box.top < room.bottom + 200;
  });
}

/** First and last bar in view. */
export function barsInView() {
  const room = music.getBoundingClientRect();
  const seen = systems().filter((system) => {
    const box = system.getBoundingClientRect();
    return box.bottom > room.top && box.top < room.bottom;
  });
  return seen.length ? [seen[0].first, seen[seen.length - 1].last] : [0, 0];
}

/** @param {number} bar @param {ScrollBehavior} [how] */
export function showBar(bar, how = "smooth") {
  const system = systems().find((one) => bar <= one.last);
  const calm = matchMedia("(prefers-reduced-motion: reduce)").matches;
  system?.scrollIntoView({ block: "nearest", behavior: calm ? "auto" : how });
}

/** @param {number} by */
export function resize(by) {
  size = Math.min(2.2, Math.max(0.5, size * by));
  remembered(() => localStorage.setItem("arcata-size", String(size)));
  layOut();
}

/** Shows where the bows are while it plays. @param {number} bar @param {Map<number, {stroke: number, share: number}>} bows */
export function hear(bar, bows) {
  for (const system of systems()) {
    const here = bar >= system.first && bar <= system.last;
    if (here || system.shadowRoot?.querySelector(".heard")) system.hear(here ? bows : new Map());
  }
}

const done = /** @type {HTMLElement} */ (document.getElementById("done"));
let doneUntil = 0;

/** Says what was done above the chosen stroke, where it is in view; else at the top of the music. @param {string} text */
function showDone(text) {
  const chosen = piece.chosen;
  const group = chosen && systems().map((system) => system.stroke(chosen.line, chosen.stroke)).find(Boolean);
  const room = music.getBoundingClientRect();
  const box = group?.closest(".lane")?.getBoundingClientRect();
  const seen = box && box.bottom > room.top && box.top < room.bottom;
  done.textContent = text;
  done.hidden = false;
  const left = seen && group ? group.getBoundingClientRect().left : room.left + 16;
  const top = seen ? box.bottom + 4 : room.top + 8;
  done.style.left = `${Math.max(room.left, Math.min(left, room.right - done.offsetWidth - 8))}px`;
  done.style.top = `${Math.max(room.top, Math.min(top, room.bottom - done.offsetHeight - 8))}px`;
  clearTimeout(doneUntil);
  doneUntil = window.setTimeout(() => { done.hidden = true; }, 3000 + 60 * text.length);
}

export function start() {
  music.setAttribute("aria-label", word("music"));
  piece.addEventListener("opened", () => layOut().catch((problem) => piece.fail(problem)));
  piece.addEventListener("parts", () => layOut().catch((problem) => piece.fail(problem)));
  piece.shown = () => ({
    parts: [...piece.parts], width: width(), sure: piece.sure,
    systems: near().map(({ first, last }) => ({ first, last })),
  });
  piece.addEventListener("moved", (event) => {
    const { moved, drawn } = /** @type {CustomEvent} */ (event).detail;
    for (const system of systems()) {
      const lanes = drawn.find((/** @type {any} */ one) => one.first === system.first);
      if (lanes && system.take(lanes)) continue;
      const touched = moved.some((/** @type {any} */ one) => one.first <= system.last && one.last >= system.first);
      if (touched && system.isDrawn) system.draw(true);
    }
  });
  // Frog and tip have their names in each language.
  piece.addEventListener("language", () => {
    for (const system of systems()) if (system.isDrawn) system.draw(true);
  });
  piece.addEventListener("chosen", async () => {
    const chosen = piece.chosen;
    const bar = chosen && (await piece.strokes(chosen.line))[chosen.stroke]?.bar;
    for (const system of systems()) system.mark();
    if (bar !== null && bar !== undefined) showBar(bar);
  });
  piece.addEventListener("did", (event) => showDone(/** @type {CustomEvent} */ (event).detail.text));
  piece.addEventListener("go", (event) => showBar(/** @type {CustomEvent} */ (event).detail.bar));
  let waiting = 0;
  new ResizeObserver(() => {
    clearTimeout(waiting);
    waiting = window.setTimeout(() => {
      if (piece.score && laidOut && JSON.stringify(look()) !== laidOut) layOut();
    }, 150);
  }).observe(music);
}

