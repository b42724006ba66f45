"use strict";
// A class gone through by keyboard. Every act is a line of a journal: in this browser, or in a file beside the task where the
// program serves the page. The file for --hand is made of the journal.
const given = JSON.parse(document.getElementById("given").textContent);
const word = (key) => given.words[key];
const main = document.getElementById("main");
const kept = document.getElementById("kept");
document.getElementById("keys").textContent = word("hand-keys");

/** What the file holds for a hand-in. */
const empty = () => ({ struck: [], taken: [], said: {}, ticked: [], note: "", marks: "" });

/** The acts, oldest first: whose sheet, how it is after the act, the sentence that was written. */
let acts = [];
let at = 0;
let line = 0;

/** "5 acts, 2 of them": each # is a number. */
const counted = (text, ...numbers) => numbers.reduce((said, number) => said.replace("#", String(number)), text);

/** A journal in this browser, one for each folder of pages. */
function inBrowser() {
  const name = `${given.keep} ${location.pathname}`;
  let saved = 0;
  let works = true;
  const tell = () => {
    kept.textContent = works ? counted(word("hand-kept"), acts.length, acts.length - saved) : word("hand-not-kept");
  };
  const keep = () => {
    try {
      localStorage.setItem(name, JSON.stringify({ acts, saved }));
      works = true;
    } catch {
      works = false;
    }
    tell();
  };
  addEventListener("beforeunload", (event) => {
    if (!works && acts.length > saved) event.preventDefault();
  });
  const read = () => {
    try {
      const found = JSON.parse(localStorage.getItem(name) || "{}");
      acts = found.acts || [];
      saved = found.saved || 0;
    } catch {
      acts = [];
      saved = 0;
    }
  };
  // What is done in another tab is done here too: else the tab that acts last would put the other's acts away.
  addEventListener("storage", (event) => {
    if (event.key !== name) return;
    read();
    tell();
    if (!main.querySelector("form")) draw();
  });
  return {
    async load() {
      read();
      // What the sheets were made with need not be done again, and must not undo what came later from elsewhere.
      const last = new Map(acts.slice(0, saved).map((one) => [one.hand_in, one.touch]));
      const same = ([who, touch]) => JSON.stringify(touch) === JSON.stringify({ ...empty(), ...given.hand.hand_ins[who] });
      if ([...last].every(same)) {
        acts = acts.slice(saved);
        if (saved) {
          saved = 0;
          keep();
        }
      }
      tell();
    },
    done: keep,
    undone() {
      saved = Math.min(saved, acts.length);
      keep();
    },
    saved() {
      saved = acts.length;
      keep();
    },
  };
}

/** A journal in a file, kept by the program that serves this page. */
function served() {
  let waiting = [];
  let sending = Promise.resolve();
  const tell = () => {
    kept.textContent = waiting.length ? word("hand-lost") : counted(word("hand-beside"), acts.length);
  };
  const send = (act) => {
    waiting.push(act);
    sending = sending.then(async () => {
      while (waiting.length) {
        try {
          const answer = await fetch("/journal", { method: "POST", body: JSON.stringify(waiting[0]) });
          if (!answer.ok) break;
          waiting.shift();
        } catch {
          break;
        }
      }
      tell();
    });
  };
  addEventListener("beforeunload", (event) => {
    if (waiting.length) event.preventDefault();
  });
  return {
    async load() {
      const text = await (await fetch("/journal")).text();
      for (const one of text.split("\n").filter(Boolean).map((text) => JSON.parse(text))) {
        if (one.undo) acts.pop();
        else if (one.hand_in) acts.push(one);
      }
      tell();
    },
    done: () => send(acts.at(-1)),
    undone: () => send({ undo: true }),
    saved: tell,
  };
}

const store = given.served ? served() : inBrowser();

/** The hand after all acts. */
function hand() {
  const made = structuredClone(given.hand);
  for (const { hand_in, touch, phrase } of acts) {
    made.hand_ins[hand_in] = touch;
    if (phrase && !made.phrases.includes(phrase)) made.phrases.push(phrase);
  }
  return made;
}

const touchOf = (handIn) => ({ ...empty(), ...structuredClone(hand().hand_ins[handIn.pseudonym]) });

const put = (list, which, on) => {
  const rest = list.filter((one) => one !== which);
  return on ? [...rest, which].sort((one, other) => (one < other ? -1 : 1)) : rest;
};

/** Does something to the sheet that is open; `change` gets how it is and makes it what it is to be. */
function act(change, phrase) {
  const handIn = given.hand_ins[at];
  const touch = touchOf(handIn);
  change(touch);
  acts.push({ hand_in: handIn.pseudonym, touch, ...(phrase ? { phrase } : {}) });
  store.done();
  draw();
}

function show(one) {
  const shown = isShown(touchOf(given.hand_ins[at]), one);
  act((touch) => {
    touch.struck = put(touch.struck, one.id, shown && one.proposed);
    touch.taken = put(touch.taken, one.id, !shown && !one.proposed);
  });
}

function say(one, text) {
  act((touch) => {
    const rest = Object.entries(touch.said).filter(([id]) => id !== one.id);
    const all = text ? [...rest, [one.id, text]] : rest;
    touch.said = Object.fromEntries(all.sort(([id], [other]) => (id < other ? -1 : 1)));
  }, text);
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
  const handIn = given.hand_ins[at];
  main.replaceChildren();
  if (!handIn) return;
  const touch = touchOf(handIn);
  const head = element("h2");
  head.append(element("a", handIn.name, { href: handIn.sheet, target: "sheet" }));
  head.append(` ${counted(word("hand-of"), at + 1, given.hand_ins.length)}`);
  main.append(head);
  const list = element("ol", "", { class: "hand" });
  handIn.passages.forEach((one, index) => {
    const item = element("li", "", index === line ? { "aria-current": "true" } : {});
    const shown = isShown(touch, one);
    const state = shown ? word("hand-shown") : word("hand-not-shown");
    const button = element("button", `${state} · ${one.place}: ${one.title}`, {
      type: "button", "aria-pressed": String(shown),
    });
    button.addEventListener("click", () => {
      line = index;
      show(one);
    });
    item.append(button, element("p", one.sentence, { lang: "en" }));
    if (touch.said[one.id]) item.append(element("p", touch.said[one.id], { class: "who" }));
    list.append(item);
  });
  main.append(list);
  if (given.criteria.length) {
    const criteria = element("ul", "", { class: "hand" });
    given.criteria.forEach((text, index) => {
      criteria.append(element("li", `${index + 1} ${touch.ticked.includes(index) ? "☑" : "☐"} ${text}`));
    });
    main.append(criteria);
  }
  for (const what of ["note", "marks"]) {
    if (touch[what]) main.append(element("p", `${word(`hand-${what}`)}: ${touch[what]}`));
  }
  main.querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
}

/** Asks for a line of text; sentences that were written before are offered. */
function ask(label, before, done) {
  const form = element("form");
  const input = element("input", "", { type: "text", list: "phrases", "aria-label": label, size: "70" });
  const phrases = element("datalist", "", { id: "phrases" });
  hand().phrases.forEach((phrase) => phrases.append(element("option", phrase, { value: phrase })));
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
  store.saved();
  kept.textContent = `${word("hand-save")} · ${kept.textContent}`;
}

document.addEventListener("keydown", (event) => {
  const handIn = given.hand_ins[at];
  if (!handIn || event.ctrlKey || event.metaKey || event.altKey) return;
  const touch = touchOf(handIn);
  const one = handIn.passages[line];
  const go = (to) => {
    at = Math.max(0, Math.min(given.hand_ins.length - 1, to));
    line = 0;
    draw();
  };
  const digit = Number(event.key) - 1;
  const keys = {
    j: () => go(at + 1),
    k: () => go(at - 1),
    ArrowDown: () => { line = Math.min(line + 1, Math.max(0, handIn.passages.length - 1)); draw(); },
    ArrowUp: () => { line = Math.max(0, line - 1); draw(); },
    x: () => { if (one) show(one); },
    s: () => { if (one) ask(word("hand-sentence"), touch.said[one.id] || "", (text) => say(one, text)); },
    n: () => ask(word("hand-note"), touch.note, (text) => act((touch) => { touch.note = text; }, text)),
    m: () => ask(word("hand-marks"), touch.marks, (text) => act((touch) => { touch.marks = text; })),
    u: () => { if (acts.pop()) { store.undone(); draw(); } },
    o: () => window.open(handIn.sheet, "sheet"),
    w: save,
  };
  const tick = (touch) => {
    const rest = touch.ticked.filter((one) => one !== digit);
    touch.ticked = touch.ticked.includes(digit) ? rest : [...rest, digit].sort((one, other) => one - other);
  };
  const done = digit >= 0 && digit < given.criteria.length ? () => act(tick) : keys[event.key];
  if (done) {
    event.preventDefault();
    done();
  }
});

store.load().then(draw);
