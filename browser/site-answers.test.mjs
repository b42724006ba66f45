// One desk behind the server and in the module: the same script of 200 acts is given to both, and every answer is compared byte by
// byte. The engraving library is compiled by two compilers, and its curves can differ by one of its units (a staff is 720 high):
// where a picture is not the same byte by byte, every number in it must be within one unit, and those pictures are counted.

import assert from "node:assert/strict";
import { after, test } from "node:test";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { desk, endAll, readFileSync, start } from "./workbench.mjs";
import { dice, site } from "./site.mjs";

after(endAll);

/** Acts in the script. */
const ACTS = 200;

const own = (path) => import(pathToFileURL(join(site(), path)).href);
const { DeskModule } = await own("page/module.mjs");
const { toolkit } = await own("page/engraving.mjs");
const engrave = await toolkit((await own("verovio/verovio-module.mjs")).default);
const module = await WebAssembly.compile(readFileSync(join(site(), "arcata.wasm")));

/** A module with a score on it, asked as the server is. */
async function inModule(name, score) {
  const journal = [];
  const keeper = { append: (text) => journal.push(Buffer.from(text)), cut() {}, keepBroken: () => 1 };
  const opened = await DeskModule.of(module, keeper);
  const style = readFileSync(join(site(), "fonts.css"), "utf8");
  assert.equal(opened.open({ name: `${name}.musicxml`, score: new Uint8Array(readFileSync(score)), journal: new Uint8Array(), style }), "");
  const ask = async (path, body) => {
    const [address, query = ""] = path.split("?");
    const { status, bytes } = await opened.ask({ by: body ? "post" : "get", path: address, query, languages: "", body: body ? JSON.stringify(body) : "" }, engrave);
    return { status, text: Buffer.from(bytes).toString("utf8") };
  };
  return { ask, journal: () => Buffer.concat(journal).toString("utf8") };
}

const NUMBER = /-?\d+(?:\.\d+)?/g;

/** Whether two pictures say the same, each number within one unit of the library. */
function withinOne(one, other) {
  if (one.replace(NUMBER, "#") !== other.replace(NUMBER, "#")) return false;
  const [these, those] = [one.match(NUMBER), other.match(NUMBER)];
  return these.every((number, index) => Math.abs(number - those[index]) <= 1);
}

for (const name of ["ferry-bell-quartet", "lantern-study"]) {
  test(`${name}: ${ACTS} acts are answered alike by the server and by the module`, async (context) => {
    const { score, file } = desk(name);
    const bench = await start(score);
    const web = await inModule(name, score);
    const draw = dice(name.length);
    let [compared, curves, refused] = [0, 0, 0];
    /** Asks both. */
    const both = async (path, body) => {
      const [there, here] = await Promise.all([bench.ask(path, body), web.ask(path, body)]);
      const what = `${path} ${body ? JSON.stringify(body) : ""}`;
      assert.equal(here.status, there.status, `${what}: ${here.text} / ${there.text}`);
      compared += 1;
      if (there.status !== 200) refused += 1;
      if (here.text !== there.text) {
        assert.ok(/"svg"|<svg|"lanes"/.test(there.text) && withinOne(here.text, there.text), `${what} is answered otherwise`);
        curves += 1;
      }
      return there.status === 200 && /^[[{]/.test(there.text) ? JSON.parse(there.text) : null;
    };
    const first = await both("score");
    let version = first.version;
    const systems = await both("systems?width=190");
    const shown = { parts: [], width: 190, systems };
    const strokes = first.lines.map((line) => line.strokes);
    const pick = (list) => list[draw(list.length)];
    const stroke = () => {
      const line = draw(strokes.length);
      return { line, stroke: draw(strokes[line]) };
    };
    const part = () => pick(first.sections).name;
    const acts = [
      () => {
        const at = stroke();
        return ["bow", { line: at.line, asks: [{ stroke: at.stroke, ask: pick(["down", "up", "hook", "hook-dots", "retake", "free"]) }], goes: pick(["here", "here", "places", "players", "all"]), shown }];
      },
      () => ["undo", { by: "a test", shown }],
      () => ["redo", { by: "a test", shown }],
      () => ["acts", { act: { act: "enter", text: `${part()} ${1 + draw(first.bars.length)}/1 ${pick(["down", "up", "as it comes", "sideways"])}` } }],
      () => ["slur", { ...stroke(), is: pick(["phrase", "bow", "nothing"]) }],
      () => ["acts", { act: pick([{ act: "tempo", quarters: 60 + draw(60) }, { act: "louder", steps: draw(5) - 2 }, { act: "player", profile: pick(["professional", "amateur", "student", "nobody"]) }, { act: "style", style: pick(["concert", "dance", "early"]) }]) }],
      () => ["acts", { act: pick([{ act: "layer", name: `layer ${draw(4)}` }, { act: "show", name: `layer ${draw(4)}`, shown: draw(2) === 0 }, { act: "choose", name: `layer ${draw(4)}` }, { act: "take-up", name: "bowings" }, { act: "take-away", name: `layer ${draw(4)}` }]) }],
      () => ["acts", { act: { act: "aside", rule: pick(["slur-outlasts-bow", "no-such-rule"]), bar: "1", beat: "1", reason: "as it should be" } }],
      () => ["proposal", { finding: draw(6), proposal: draw(3) }],
      // What cannot be read is refused in the same words, too.
      () => pick([["acts", { act: { act: "fly" } }], ["bow", { line: 0 }], ["nowhere", {}], ["undo", { by: "a test", more: 1 }]]),
    ];
    const weights = [0, 0, 0, 0, 0, 0, 0, 1, 2, 3, 3, 4, 5, 6, 7, 8, 9];
    for (let count = 0; count < ACTS; count += 1) {
      const [path, body] = acts[pick(weights)]();
      if (path === "proposal") await both("findings");
      const done = await both(path, ["undo", "redo", "nowhere"].includes(path) ? body : { ...body, version });
      version = done?.version ?? version;
      const at = stroke();
      await both(pick([`strokes?line=${at.line}`, "score", `alike?line=${at.line}&stroke=${at.stroke}`, "layer/shorthand", "downbeats", `strokes?line=${at.line}&first=2&last=5`]));
      if (count % 10 === 0) {
        const one = pick(systems);
        await both(`system?width=190&first=${one.first}&last=${one.last}`);
        await both(`ways?line=${at.line}&first=${one.first}&last=${one.first + 2}`);
        await both(`slurs?line=${at.line}&stroke=${at.stroke}`);
        await both(pick(["findings", "sound", "export/layer", "export/score", "export/aside", "layers/differences?one=0&other=1", "layers/picture?layer=0&line=0&first=0&last=2", "export/review", `place?text=bar%20${1 + draw(30)}`, "rules/slur-outlasts-bow?language=fr", `export/picture?width=190&first=${one.first}&last=${one.last}`]));
      }
    }
    assert.equal(web.journal(), readFileSync(file(".acts.jsonl"), "utf8"), "the journals are the same, byte by byte");
    assert.ok(refused > 5 && refused < compared / 3, `${refused} of ${compared} were refused`);
    context.diagnostic(`${compared} answers compared, ${refused} of them refusals; ${curves} pictures differ by a unit of a curve`);
    assert.ok(curves * 20 < compared, `${curves} pictures differ`);
    await bench.kill();
  });
}

test("the library's version is the one that the notice names", () => {
  const { version } = JSON.parse(readFileSync(join(createRequire(import.meta.url).resolve("verovio"), "..", "..", "package.json"), "utf8"));
  assert.ok(readFileSync(join(site(), "NOTICE.txt"), "utf8").includes(`version ${version},`), version);
});
