// A sketch of how the strokes join: two saw-toothed voices a line, the swell of each stroke, a breath at each change of bow.

import { dialog, make } from "./elements.mjs";
import { piece } from "./piece.mjs";
import { hear } from "./score.mjs";
import { ask } from "./server.mjs";
import { word } from "./words.mjs";

/** @type {AudioContext | null} */ let audio = null;
/** @type {any} */ let sheet = null;
/** @type {{stop: () => void} | null} */ let playing = null;
/** Lines that are silent, and lines that are heard alone where there are any. */
const silent = new Set();
const alone = new Set();
const isHeard = (/** @type {number} */ line) => !silent.has(line) && (!alone.size || alone.has(line));
let again = false;
/** The last bar that is played, index; to the end where there is none. @type {number | null} */ let lastBar = null;
/** How fast it is played, a share of the tempo: the plan stays as it is. */
let pace = 1;
/** How far ahead notes are handed to the audio, seconds, and how often. */
const AHEAD = 1.2;
const EVERY = 300;

/** Loudness in hundredths of a dynamic step to a share of full loudness: a step is about 6 dB. @param {number} loud */
const gain = (loud) => Math.min(0.9, 0.16 * 10 ** ((loud - 500) / 100 * 5 / 20));

/**
 * One stroke: its notes, its swell from begin to end, softer at the tip, with the join before it.
 * @param {AudioContext} audio @param {AudioNode} out @param {any} stroke @param {any[]} notes @param {number} from seconds of the audio at the sheet's zero
 * @param {number} share of full loudness
 * @param {number} second how many milliseconds of the sheet a second holds
 */
function bow(audio, out, stroke, notes, from, share, second) {
  const begin = from + stroke.at / second;
  const end = begin + stroke.lasts / second;
  // The hand evens out most of the bow's own swell; some of it is heard.
  const weight = (/** @type {number} */ place) => 1 - 0.18 * place / 1000;
  const loud = audio.createGain();
  const dark = audio.createBiquadFilter();
  dark.type = "lowpass";
  dark.frequency.value = 1500 + 9 * stroke.loud;
  // A retake leaves a gap and bites, a hook stops, a change only breathes.
  const attack = stroke.link === "change" ? 0.035 : 0.018;
  const close = stroke.link === "retake" || stroke.link === "hook" ? 0.05 : 0.03;
  const level = (/** @type {number} */ loudness, /** @type {number} */ place) => gain(loudness) * weight(place) * share;
  loud.gain.setValueAtTime(0, begin);
  loud.gain.linearRampToValueAtTime(level(stroke.loud, stroke.start) * (stroke.link === "retake" ? 1.15 : 1), begin + attack);
  loud.gain.linearRampToValueAtTime(Math.max(0.0001, level(stroke.then, stroke.end)), Math.max(begin + attack + 0.005, end - close));
  loud.gain.linearRampToValueAtTime(0, Math.max(begin + attack + 0.01, end));
  dark.connect(loud).connect(out);
  for (const note of notes) {
    const pitch = 440 * 2 ** ((note.cents - 6900) / 1200);
    const starts = from + note.at / second;
    const stops = Math.min(end + 0.02, starts + note.lasts / second + 0.01);
    for (const [detune, level] of [[-4, 0.5], [5, 0.35]]) {
      const tone = audio.createOscillator();
      const own = audio.createGain();
      own.gain.value = level / Math.sqrt(Math.max(1, notes.length / 4));
      tone.type = "sawtooth";
      tone.frequency.value = pitch;
      tone.detune.value = detune;
      tone.connect(own).connect(dark);
      tone.start(Math.max(audio.currentTime, starts));
      tone.stop(Math.max(audio.currentTime + 0.01, stops));
    }
  }
}

/** Strokes with their notes, in order of time. @param {number} from milliseconds @param {number} until milliseconds */
function queue(from, until) {
  /** @type {{line: number, index: number, stroke: any, notes: any[]}[]} */
  const all = [];
  for (const line of sheet.lines) {
    const notes = new Map();
    for (const note of line.notes) {
      if (!notes.has(note.stroke)) notes.set(note.stroke, []);
      notes.get(note.stroke).push(note);
    }
    line.strokes.forEach((/** @type {any} */ stroke, /** @type {number} */ index) => {
      if (stroke.at >= from - 20 && stroke.at < until) all.push({ line: line.line, index, stroke, notes: notes.get(index) ?? [] });
    });
  }
  return all.sort((one, other) => one.stroke.at - other.stroke.at);
}

/** Plays from a bar. @param {number} bar */
export async function play(bar) {
  stop();
  if (!sheet || sheet.version !== piece.version) sheet = await ask("sound");
  audio ??= new AudioContext();
  await audio.resume();
  const context = audio;
  const out = context.createGain();
  const room = context.createDynamicsCompressor();
  out.gain.value = 0.8;
  out.connect(room).connect(context.destination);
  const zero = sheet.bars[bar] ?? 0;
  const end = sheet.bars[lastBar !== null && lastBar >= bar ? lastBar + 1 : sheet.bars.length - 1];
  const second = 1000 * pace;
  const from = context.currentTime + 0.15 - zero / second;
  const all = queue(zero, end);
  const shown = new Set(piece.lines());
  let next = 0;
  const feed = () => {
    const until = (context.currentTime - from + AHEAD) * second;
    while (next < all.length && all[next].stroke.at < until) {
      const { line, stroke, notes } = all[next++];
      if (isHeard(line) && shown.has(line)) bow(context, out, stroke, notes, from, 1 / Math.sqrt(shown.size), second);
    }
  };
  feed();
  const feeding = setInterval(feed, EVERY);
  let frame = 0;
  const follow = () => {
    const now = (context.currentTime - from) * second;
    if (now > end) {
      stop();
      if (again) play(bar);
      return;
    }
    const bows = new Map();
    for (const line of sheet.lines) {
      const at = line.strokes.findIndex((/** @type {any} */ stroke) => stroke.at <= now && now < stroke.at + stroke.lasts);
      if (at >= 0) bows.set(line.line, { stroke: at, share: (now - line.strokes[at].at) / line.strokes[at].lasts });
    }
    const here = Math.max(0, sheet.bars.findIndex((/** @type {number} */ begin) => begin > now) - 1);
    hear(here, bows);
    frame = requestAnimationFrame(follow);
  };
  frame = requestAnimationFrame(follow);
  playing = {
    stop: () => {
      clearInterval(feeding);
      cancelAnimationFrame(frame);
      out.gain.setTargetAtTime(0, context.currentTime, 0.02);
      setTimeout(() => out.disconnect(), 300);
      hear(0, new Map());
    },
  };
  piece.dispatchEvent(new CustomEvent("playing"));
}

export function stop() {
  playing?.stop();
  playing = null;
  piece.dispatchEvent(new CustomEvent("playing"));
}

export const isPlaying = () => playing !== null;

/** Plays from the chosen stroke's bar, or stops. */
export async function toggle() {
  if (playing) return stop();
  const chosen = piece.chosen;
  const bar = chosen ? (await piece.strokes(chosen.line))[chosen.stroke].bar : 0;
  await play(bar);
}

/** The last bar of a place as it is typed: of the movement that is chosen, unless it names one. @param {string} text */
async function lastBarOf(text) {
  if (text.trim() === "") return null;
  const movement = piece.chosen ? piece.score.lines[piece.chosen.line].movement : undefined;
  return (await ask("place", { text, movement })).last;
}

/** Which lines are heard, how fast, how far, and whether it begins again at the end. */
export function settings() {
  const box = (/** @type {Set<number>} */ set, /** @type {number} */ line, /** @type {string} */ name) => {
    const input = make("input", { type: "checkbox", "aria-label": `${piece.score.lines[line].name}: ${word(name)}`,
      onchange: () => { input.checked ? set.add(line) : set.delete(line); } });
    input.checked = set.has(line);
    return make("td", {}, input);
  };
  const movement = piece.chosen ? piece.score.lines[piece.chosen.line].movement : 0;
  const here = piece.score.lines.map((/** @type {any} */ line, /** @type {number} */ index) => ({ line, index })).filter((/** @type {any} */ { line }) => line.movement === movement);
  const rows = here.map((/** @type {any} */ { line, index }) =>
    make("tr", {}, make("th", { scope: "row", text: line.name }), box(silent, index, "silent"), box(alone, index, "alone")));
  const loop = make("input", { type: "checkbox", onchange: () => { again = loop.checked; } });
  loop.checked = again;
  const told = make("output", { text: `${Math.round(pace * 100)} %` });
  const speed = make("input", { type: "range", min: "40", max: "140", step: "5", value: String(pace * 100), oninput: () => {
    pace = Number(speed.value) / 100;
    told.textContent = `${speed.value} %`;
  } });
  const until = make("input", { style: "width: 5rem", value: lastBar === null ? "" : piece.score.bars[lastBar], onchange: async () => {
    try {
      lastBar = await lastBarOf(until.value);
      until.value = lastBar === null ? "" : piece.score.bars[lastBar];
    } catch (problem) {
      piece.fail(problem);
    }
  } });
  dialog(word("hearing"), word("close"), make("p", { class: "note", text: word("hearingHelp") }),
    make("table", {}, make("thead", {}, make("tr", {}, make("td"), make("th", { scope: "col", text: word("silent") }), make("th", { scope: "col", text: word("alone") }))), make("tbody", {}, ...rows)),
    make("div", { class: "filelist" }, make("label", {}, word("pace"), speed, told), make("label", {}, word("untilBar"), until), make("label", {}, loop, word("loop"))),
    make("div", { class: "asks" }, make("button", { type: "button", text: word(playing ? "stop" : "play"), onclick: (/** @type {Event} */ event) => {
      toggle();
      /** @type {HTMLDialogElement | null} */ (/** @type {HTMLElement} */ (event.target).closest("dialog"))?.close();
    } })));
}
