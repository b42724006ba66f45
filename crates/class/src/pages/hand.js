"use strict";
// A class gone through by keyboard. Every act is a line of a journal in the browser; the file is made of the journal.
const given = JSON.parse(document.getElementById("given").textContent);
const word = (key) => given.words[key];
const main = document.getElementById("main");
const kept = document.getElementById("kept");
document.getElementById("keys").textContent = word("hand-keys");

/** What the file holds for a hand-in. */
const empty = () => ({ struck: [], taken: [], said: {}, ticked: [], note: "", marks: "" });

/** The acts since the file was made, oldest first: [pseudonym, what, which, value]. */
let journal = [];
try {
  journal = JSON.parse(localStorage.getItem(given.keep) || "[]");
} catch {
  journal = [];
}
let at = 0;
let line = 0;

function keep() {
  try {
    localStorage.setItem(given.keep, JSON.stringify(journal));
    kept.textContent = word("hand-kept").replace("#", String(journal.length));
  } catch {
    kept.textContent = word("hand-save");
  }
}

/** The hand after all acts. */
function hand() {
  const made = structuredClone(given.hand);
  for (const [who, what, which, value] of journal) {
    const touch = (made.hand_ins[who] = { ...empty(), ...made.hand_ins[who] });
    const put = (list, on) => {
      const rest = list.filter((one) => one !== which);
      return on ? [...rest, which].sort() : rest;
    };
    if (what === "show") {
      const proposed = passage(who, which)?.proposed;
      touch.struck = put(touch.struck, !value && proposed);
      touch.taken = put(touch.taken, value && !proposed);
    } else if (what === "said") {
      if (value) touch.said[which] = value;
      else delete touch.said[which];
      if (value && !made.phrases.includes(value)) made.phrases.push(value);
    } else if (what === "tick") {
      touch.ticked = put(touch.ticked, value).sort((one, other) => one - other);
    } else {
      touch[what] = value;
    }
  }
  return made;
}

function passage(who, id) {
  const handIn = given.hand_ins.find((one) => one.pseudonym === who);
  return handIn?.passages.find((one) => one.id === id);
}

function act(what, which, value) {
  journal.push([given.hand_ins[at].pseudonym, what, which, value]);
  keep();
  draw();
}

function element(name, text, attributes = {}) {
  const made = document.createElement(name);
  if (text) made.textContent = text;
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
}

function isShown(touch, one) {
  return one.proposed ? !touch.struck.includes(one.id) : touch.taken.includes(one.id);
}

function draw() {
  const made = hand();
  const handIn = given.hand_ins[at];
  main.replaceChildren();
  if (!handIn) return;
  const touch = { ...empty(), ...made.hand_ins[handIn.pseudonym] };
  const head = element("h2");
  head.append(element("a", handIn.name, { href: handIn.sheet, target: "sheet" }));
  head.append(` ${word("hand-of").replace("#", String(at + 1)).replace("#", String(given.hand_ins.length))}`);
  main.append(head);
  const list = element("ol");
  handIn.passages.forEach((one, index) => {
    const item = element("li", "", index === line ? { "aria-current": "true" } : {});
    const state = isShown(touch, one) ? word("hand-shown") : word("hand-not-shown");
    const button = element("button", `${state} · ${one.place}: ${one.title}`, { type: "button" });
    button.addEventListener("click", () => {
      line = index;
      act("show", one.id, !isShown(touch, one));
    });
    if (index === line) button.style.outline = "2px solid currentColor";
    item.append(button, element("p", one.sentence, { lang: "en" }));
    if (touch.said[one.id]) item.append(element("p", touch.said[one.id], { class: "who" }));
    list.append(item);
  });
  main.append(list);
  const criteria = element("ul");
  given.criteria.forEach((text, index) => {
    criteria.append(element("li", `${index + 1} ${touch.ticked.includes(index) ? "☑" : "☐"} ${text}`));
  });
  main.append(criteria);
  for (const what of ["note", "marks"]) {
    if (touch[what]) main.append(element("p", `${word(`hand-${what}`)}: ${touch[what]}`));
  }
}

/** Asks for a line of text; phrases that were written before are offered. */
function ask(label, before, done) {
  const form = element("form");
  const input = element("input", "", { type: "text", list: "phrases", "aria-label": label, size: "70" });
  const phrases = element("datalist", "", { id: "phrases" });
  hand().phrases.forEach((phrase) => phrases.append(element("option", phrase)));
  input.value = before;
  form.append(element("p", label), input, phrases);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    done(input.value.trim());
  });
  input.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key === "Escape") draw();
  });
  main.append(form);
  input.focus();
}

function save() {
  const blob = new Blob([JSON.stringify(hand(), null, 2) + "\n"], { type: "application/json" });
  const link = element("a", "", { href: URL.createObjectURL(blob), download: "class-hand.json" });
  link.click();
  kept.textContent = word("hand-save");
}

document.addEventListener("keydown", (event) => {
  const handIn = given.hand_ins[at];
  if (!handIn || event.ctrlKey || event.metaKey || event.altKey) return;
  const touch = { ...empty(), ...hand().hand_ins[handIn.pseudonym] };
  const one = handIn.passages[line];
  const go = (to) => {
    at = Math.max(0, Math.min(given.hand_ins.length - 1, to));
    line = 0;
    draw();
  };
  const digit = Number(event.key);
  const keys = {
    j: () => go(at + 1),
    k: () => go(at - 1),
    ArrowDown: () => { line = Math.min(line + 1, Math.max(0, handIn.passages.length - 1)); draw(); },
    ArrowUp: () => { line = Math.max(0, line - 1); draw(); },
    x: () => { if (one) act("show", one.id, !isShown(touch, one)); },
    s: () => { if (one) ask(word("hand-sentence"), touch.said[one.id] || "", (text) => act("said", one.id, text)); },
    n: () => ask(word("hand-note"), touch.note, (text) => act("note", "", text)),
    m: () => ask(word("hand-marks"), touch.marks, (text) => act("marks", "", text)),
    u: () => { journal.pop(); keep(); draw(); },
    o: () => window.open(handIn.sheet, "sheet"),
    w: save,
  };
  const done = digit >= 1 && digit <= given.criteria.length
    ? () => act("tick", digit - 1, !touch.ticked.includes(digit - 1))
    : keys[event.key];
  if (done) {
    event.preventDefault();
    done();
  }
});

keep();
draw();
