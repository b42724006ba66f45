// The piece as the page knows it: what the server has told, what is chosen, and who wants to hear of it.

import { ask, me, send, Refused } from "./server.mjs";
import { word } from "./words.mjs";

/** How a hook is written, what is asked for then, and the word for it. */
export const HOOKS = [["marks", "hook", "hook_marks"], ["dots", "hook-dots", "hook_dots"], ["dashes", "hook-dashes", "hook_dashes"]];

/**
 * @typedef {{line: number, stroke: number}} Chosen
 * @typedef {{stroke: number, bar: number, beat: string, bow: string, link: string, start: number, end: number,
 *   milliseconds: number, asked: boolean, sign: "marks" | "dots" | "dashes" | null, printed: string | null, slurred: boolean, sure: number | null}} Stroke
 * @typedef {{places: Chosen[], players: Chosen[], all: Chosen[]}} Alike
 */

class Piece extends EventTarget {
  /** @type {any} */ score = null;
  /** @type {any} */ findings = null;
  /** @type {Chosen | null} */ chosen = null;
  /** @type {Set<number>} parts that are shown; all where it is empty */ parts = new Set();
  /** @type {Map<number, Promise<Stroke[]>>} */ #strokes = new Map();
  version = 0;
  /** Which strokes the next wish is for, besides the chosen one. @type {"here" | "places" | "players" | "all"} */ goes = "here";
  /** Who plays as the chosen stroke does. @type {Alike | null} */ alike = null;
  /** Whether strokes for which two ways are nearly equal are hollow. */ sure = false;
  /** What the music shows, for the server to draw with its answer. @type {() => any} */ shown = () => undefined;

  async open() {
    this.score = await ask("score");
    this.version = this.score.version;
    this.#strokes.clear();
    this.#tell("opened");
  }

  /** Tells who listens. @param {string} name @param {any} [detail] */
  #tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { detail }));
  }

  /** The strokes of a line. @param {number} line @returns {Promise<Stroke[]>} */
  strokes(line) {
    let strokes = this.#strokes.get(line);
    if (!strokes) {
      strokes = ask("strokes", { line });
      this.#strokes.set(line, strokes);
    }
    return strokes;
  }

  /** Asks for the strokes that have moved, and puts them in their places. @param {{line: number, first: number, last: number}} moved */
  #renew({ line, first, last }) {
    const known = this.#strokes.get(line);
    if (!known) return;
    this.#strokes.set(line, Promise.all([known, ask("strokes", { line, first, last })]).then(([all, some]) => {
      for (const one of some) all[one.stroke] = one;
      return all;
    }));
  }

  /** Lines that are shown, by index. */
  lines() {
    return this.score.lines.map((/** @type {any} */ _, /** @type {number} */ index) => index)
      .filter((/** @type {number} */ index) => this.parts.size === 0 || this.parts.has(this.score.lines[index].part));
  }

  /** @param {Chosen | null} chosen */
  async choose(chosen) {
    this.chosen = chosen;
    this.goes = "here";
    this.alike = null;
    this.#tell("chosen");
    if (chosen) this.say(await this.inWords(chosen));
  }

  /** The wishes that there are for the chosen stroke: it alone, and with those who play as it does. */
  async reaches() {
    const chosen = this.chosen;
    if (!chosen) return [];
    this.alike ??= await ask("alike", chosen);
    if (this.chosen !== chosen || !this.alike) return [];
    const { places, players, all } = this.alike;
    return /** @type {["here" | "places" | "players" | "all", number][]} */ ([
      ["here", 1], ["places", places.length], ["players", players.length],
      ["all", places.length > 1 && players.length > 1 ? all.length : 0],
    ]).filter(([name, count]) => name === "here" || count > 1);
  }

  /** Goes from one reach of the wishes to the next. */
  async widen() {
    if (!this.chosen) return this.say(word("noStroke"));
    const all = await this.reaches();
    if (all.length < 2) return this.say(word("nobodyElse"));
    this.reach(all[(all.findIndex(([name]) => name === this.goes) + 1) % all.length][0]);
  }

  /** @param {"here" | "places" | "players" | "all"} goes */
  reach(goes) {
    this.goes = goes;
    this.#tell("reach");
  }

  /** Shows, or hides, where the plan is not sure. */
  showSure() {
    this.sure = !this.sure;
    this.#tell("parts");
    this.say(word(this.sure ? "sureShown" : "sureHidden"));
  }

  /** The movement that holds a bar; none in a file of one. @param {number} bar */
  movementOf(bar) {
    return this.score.movements.find((/** @type {{first: number, last: number}} */ one) => bar >= one.first && bar <= one.last) ?? null;
  }

  /** A bar as people say it. @param {number} bar */
  barSaid(bar) {
    const movement = this.movementOf(bar);
    return `${movement ? `${movement.number}, ` : ""}${word("bar")} ${this.score.bars_said[bar]}`;
  }

  /** Some bars as people say them. @param {number} first @param {number} last */
  barsSaid(first, last) {
    if (first === last) return this.barSaid(first);
    const movement = this.movementOf(first);
    return `${movement ? `${movement.number}, ` : ""}${word("bars")} ${this.score.bars_said[first]} ${word("to")} ${this.score.bars_said[last]}`;
  }

  /** Goes so many movements on or back. @param {number} by */
  async movement(by) {
    const all = this.score.movements;
    if (!all.length) return this.say(word("oneMovement"));
    const bar = this.chosen ? (await this.strokes(this.chosen.line))[this.chosen.stroke].bar : 0;
    const next = all[Math.min(all.length - 1, Math.max(0, all.indexOf(this.movementOf(bar)) + by))];
    await this.goTo(next.first);
  }

  /** A stroke in words. @param {Chosen} chosen */
  async inWords({ line, stroke }) {
    const strokes = await this.strokes(line);
    const one = strokes[stroke];
    if (!one) return "";
    const tenths = (/** @type {number} */ place) => Math.round(place / 10);
    const how = word(one.link === "hook" ? "hook" : one.link === "retake" ? "retake" : one.link);
    const sure = one.sure !== null && `${one.sure} ${word("ofHundred")}`;
    const extra = [one.asked && word("asked"), one.printed && word("printed"), sure].filter(Boolean).join(", ");
    // Names of lines hold commas and numerals: a colon parts the movement from them.
    const movement = this.movementOf(one.bar);
    const place = `${movement ? `${movement.number}: ` : ""}${this.score.lines[line].name}, ${word("bar")} ${this.score.bars_said[one.bar]}`;
    return `${place}, ${word("beat")} ${one.beat}: ` +
      `${word(one.bow)}, ${how}, ${word("from")} ${tenths(one.start)} ${word("to")} ${tenths(one.end)} ${word("ofBow")}` +
      (extra ? ` (${extra})` : "");
  }

  /** Goes on or back so many strokes. @param {number} by */
  async step(by) {
    const lines = this.lines();
    if (!lines.length) return;
    if (!this.chosen) return this.choose({ line: lines[0], stroke: 0 });
    const { line, stroke } = this.chosen;
    const strokes = await this.strokes(line);
    const next = Math.min(strokes.length - 1, Math.max(0, stroke + by));
    if (next !== stroke) return this.choose({ line, stroke: next });
    // The end of a movement: the same player goes on in the next.
    const own = this.score.lines[line];
    const beyond = lines.find((/** @type {number} */ other) => {
      const one = this.score.lines[other];
      return one.part === own.part && one.name === own.name && one.movement === own.movement + Math.sign(by);
    });
    if (beyond !== undefined) await this.choose({ line: beyond, stroke: by > 0 ? 0 : (await this.strokes(beyond)).length - 1 });
  }

  /** Goes to the line above or below, to the stroke that begins nearest. @param {number} by */
  async across(by) {
    if (!this.chosen) return this.step(0);
    const movement = this.score.lines[this.chosen.line].movement;
    const lines = this.lines().filter((/** @type {number} */ line) => this.score.lines[line].movement === movement);
    const at = lines.indexOf(this.chosen.line);
    const line = lines[Math.min(lines.length - 1, Math.max(0, at + by))];
    if (line === this.chosen.line) return;
    const here = (await this.strokes(this.chosen.line))[this.chosen.stroke];
    const strokes = await this.strokes(line);
    let nearest = strokes.findIndex((one) => one.bar >= here.bar);
    if (nearest < 0) nearest = strokes.length - 1;
    await this.choose({ line, stroke: nearest });
  }

  /** Chooses the first stroke of a bar, or the one at a beat as it is said. @param {number} bar @param {number | null} [part] @param {string | null} [beat] */
  async goTo(bar, part = null, beat = null) {
    this.#tell("go", { bar });
    const found = this.movementOf(bar);
    const movement = found ? this.score.movements.indexOf(found) : 0;
    const here = this.lines().filter((/** @type {number} */ line) => this.score.lines[line].movement === movement);
    const line = here.find((/** @type {number} */ one) => part === null || this.score.lines[one].part === part) ?? here[0];
    if (line === undefined) return;
    const strokes = await this.strokes(line);
    const there = strokes.findIndex((one) => one.bar === bar && one.beat === beat);
    const stroke = there >= 0 ? there : strokes.findIndex((one) => one.bar >= bar);
    if (stroke >= 0) await this.choose({ line, stroke });
  }

  /** Asks for bows. @param {number} line @param {{stroke: number, ask: string}[]} asks @param {string} [goes] */
  async bow(line, asks, goes = "here") {
    return this.#act("bow", { line, asks, goes, shown: this.shown() });
  }

  /** What was asked for at a stroke, as it is said. @param {string} what @param {Chosen} chosen */
  async #askedFor(what, { line, stroke }) {
    const one = (await this.strokes(line))[stroke];
    if (!one) return "";
    const asked = HOOKS.some(([, ask]) => ask === what) ? "hook" : what;
    return `${this.score.lines[line].name}, ${this.barSaid(one.bar)}, ${word("beat")} ${one.beat}: ${word(asked)}`;
  }

  /** Asks for the bow of the stroke that is chosen. @param {string} what */
  async bowHere(what) {
    if (!this.chosen) return this.say(word("noStroke"));
    const goes = this.goes;
    const chosen = this.chosen;
    if (await this.bow(chosen.line, [{ stroke: chosen.stroke, ask: what }], goes)) this.did(await this.#askedFor(what, chosen));
  }

  /** Asks for a hook; where one is asked for already, for the next way to write it. */
  async hookHere() {
    const chosen = this.chosen;
    const sign = chosen && (await this.strokes(chosen.line))[chosen.stroke]?.sign;
    const next = sign ? HOOKS[(HOOKS.findIndex(([of]) => of === sign) + 1) % HOOKS.length] : HOOKS[0];
    await this.bowHere(next[1]);
    if (sign && this.chosen === chosen) this.did(word(next[2]));
  }

  /** Does an act, and says what was done and what has moved. @param {any} act @param {string} [what] */
  async act(act, what = "") {
    const done = await this.#act("acts", { act });
    if (done) this.did(what);
    return done;
  }

  /** Which bars turned with the last act, and how many strokes. @type {{turned: number, bars: number[], elsewhere: number}} */
  moved = { turned: 0, bars: [], elsewhere: 0 };

  /** What the last act has moved, in words; nothing where every bow stayed. */
  #movedSaid() {
    const { turned, bars, elsewhere } = this.moved;
    if (!turned && !elsewhere) return "";
    // Of which movement is said once for a row of bars.
    const shown = bars.slice(0, 8);
    const labels = this.score.movements.length || shown.length < 2
      ? shown.map((bar, index, all) => index && this.movementOf(bar) === this.movementOf(all[index - 1]) ? this.score.bars[bar] : this.barSaid(bar))
      : [`${word("bars")} ${this.score.bars[shown[0]]}`, ...shown.slice(1).map((bar) => this.score.bars[bar])];
    const where = turned ? ` (${labels.join(", ")}${bars.length > shown.length ? ", …" : ""})` : "";
    const told = [turned && `${turned} ${word("turned")}${where}`, elsewhere && `${elsewhere} ${word("elsewhere")}`];
    return told.filter(Boolean).join(", ");
  }

  /** Says what was done, and what has moved by it, beside the chosen stroke and to those who do not see the page. @param {string} what */
  did(what) {
    const text = [what, this.#movedSaid()].filter(Boolean).join(". ");
    if (!text) return;
    this.say(text);
    this.#tell("did", { text });
  }

  /** Takes a change of slurs into the layer that is being edited. @param {any[]} edits */
  async slurs(edits) {
    if (await this.#act("slurs/layer", { edits })) this.did(word("didSlurs"));
  }

  /** @param {number} finding @param {number} proposal */
  async change(finding, proposal) {
    const one = this.findings.findings[finding];
    if (this.findings.version !== this.version) {
      // Something was done since the list was made: the finding may have another number, or be gone.
      await this.review();
      finding = this.findings.findings.findIndex((/** @type {any} */ other) => other.bar === one.bar && other.finding.rule === one.finding.rule && other.finding.sentence === one.finding.sentence);
      if (finding < 0) return this.notice(word("late"));
    }
    if (await this.#act("proposal", { finding, proposal })) this.did(`${one.finding.proposals[proposal].sentence} ${word("changed")}`);
  }

  /** @param {"phrase" | "bow"} is */
  async slurHere(is) {
    if (this.chosen && await this.#act("slur", { ...this.chosen, is })) this.did(`${word(is === "phrase" ? "phrase" : "isBow")}. ${word("slurTold")}`);
  }

  /**
   * Asks for a page or a line of a part to begin with a bar; where that is asked for already, takes it back.
   * @param {number} part @param {number} bar @param {"page" | "line"} begins
   */
  async breakAt(part, bar, begins) {
    const now = this.score.breaks.find((/** @type {{part: number, bar: number}} */ one) => one.part === part && one.bar === bar);
    const wanted = now?.begins === begins ? null : begins;
    const name = this.score.sections.find((/** @type {{part: number}} */ one) => one.part === part)?.name ?? "";
    const what = wanted === null ? "didNoBreak" : wanted === "page" ? "didPage" : "didLine";
    if (await this.#act("break", { part, bar, begins: wanted })) this.did(`${name}, ${this.barSaid(bar)}: ${word(what)}`);
  }

  /** The same at the chosen stroke. @param {"page" | "line"} begins */
  async breakHere(begins) {
    const chosen = this.chosen;
    if (!chosen) return this.say(word("noStroke"));
    const bar = (await this.strokes(chosen.line))[chosen.stroke]?.bar;
    if (bar !== undefined) await this.breakAt(this.score.lines[chosen.line].part, bar, begins);
  }

  async undo() {
    const had = this.score.undo;
    if (await this.#step("undo")) this.did(word(had ? "undone" : "nothingToUndo"));
  }

  async redo() {
    const had = this.score.redo;
    if (await this.#step("redo")) this.did(word(had ? "redone" : "nothingToRedo"));
  }

  /** Acts go one after another: each is done on what the one before has left. @type {Promise<any>} */
  #before = Promise.resolve();

  /** @param {() => Promise<boolean>} act @returns {Promise<boolean>} */
  #inTurn(act) {
    const done = this.#before.then(act, act);
    this.#before = done.catch(() => false);
    return done;
  }

  /** @param {string} path */
  #step(path) {
    return this.#inTurn(() => this.#stepNow(path));
  }

  /** @param {string} path @param {any} body */
  #act(path, body) {
    return this.#inTurn(() => this.#actNow(path, body));
  }

  /** @param {string} path */
  async #stepNow(path) {
    this.#looking.abort();
    this.#looking = new AbortController();
    try {
      await this.took(await send(path, { by: me, shown: this.shown() }));
      return true;
    } catch (problem) {
      this.fail(problem);
      return false;
    }
  }

  /** Ends what is only looked at: it was for the piece as it is, which an act makes another. */
  #looking = new AbortController();

  /** A picture of some bars as they would be. @param {any} body */
  async look(body) {
    const version = this.version;
    await this.#before;
    if (version !== this.version) throw new Refused(409, word("late"));
    return send("look", { ...body, version: this.version }, this.#looking.signal);
  }

  /** @param {string} path @param {any} body */
  async #actNow(path, body) {
    this.#looking.abort();
    this.#looking = new AbortController();
    try {
      await this.took(await send(path, { ...body, version: this.version, by: me }));
      return true;
    } catch (problem) {
      if (problem instanceof Refused && problem.status === 409) {
        await this.open();
        this.notice(word("late"));
      } else {
        this.fail(problem);
      }
      return false;
    }
  }

  /** Takes in what an act has done, here or in another tab. @param {any} done */
  async took(done) {
    if (done.version < this.version) return;
    const skipped = done.version > this.version + 1;
    this.version = done.version;
    Object.assign(this.score, { undo: done.undo, redo: done.redo, bowings: done.bowings, layers: done.layers, breaks: done.breaks, version: done.version });
    this.moved = { turned: done.turned, bars: done.turned_bars, elsewhere: done.elsewhere };
    for (const told of done.told) this.notice(told);
    if (done.everything || skipped) {
      await this.open();
      return;
    }
    for (const moved of done.moved) this.#renew(moved);
    this.#tell("moved", { moved: done.moved, drawn: done.drawn });
    if (this.chosen) this.#tell("chosen");
  }

  async review() {
    try {
      const findings = await ask("findings");
      if (findings.version !== this.version) return;
      this.findings = findings;
      this.#tell("reviewed");
    } catch (problem) {
      this.fail(problem);
    }
  }

  /** What the server says, in the language that is now spoken. */
  async reworded() {
    try {
      const { assumptions } = await ask("score");
      Object.assign(this.score, { assumptions });
    } catch (problem) {
      this.fail(problem);
    }
    await this.review();
  }

  /** Goes to the finding after or before what is chosen. @param {1 | -1} by */
  async finding(by) {
    const all = this.findings?.findings ?? [];
    if (!all.length) return this.say(word("noFindings"));
    const here = this.chosen ? (await this.strokes(this.chosen.line))[this.chosen.stroke]?.bar ?? 0 : -1;
    const order = by > 0 ? all : [...all].reverse();
    const next = order.find((/** @type {any} */ one) => (by > 0 ? one.bar > here : one.bar < here)) ?? order[0];
    await this.goTo(next.bar, next.part);
    this.#tell("finding", { index: all.indexOf(next) });
    this.say(next.finding.sentence);
  }

  /** Says something to those who do not see the page. @param {string} text */
  say(text) {
    const told = document.getElementById("told");
    if (told) told.textContent = text;
  }

  /** Shows something for some seconds. @param {string} text */
  notice(text) {
    const notices = document.getElementById("notices");
    if (!notices) return;
    const line = document.createElement("p");
    line.textContent = text;
    notices.append(line);
    setTimeout(() => line.remove(), 4000 + 60 * text.length);
  }

  /** @param {unknown} problem */
  fail(problem) {
    this.notice(problem instanceof Refused ? problem.message : word("gone"));
  }
}

export const piece = new Piece();
