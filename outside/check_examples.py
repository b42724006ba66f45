"""Checks worked_examples.json: spelling, lengths of the bars, number of the strokes.

    python check_examples.py [FILE]

prints a line a fault and a line of counts, and exits with 1 when there is a
fault. README.md describes the notation.
"""

import json
import re
import sys
from collections import Counter
from fractions import Fraction
from pathlib import Path

FIELDS = {"id", "source", "status", "instrument", "pace", "metre", "quarter_bpm", "music", "strokes"}
OPTIONAL = {"confidence", "note"}
SOUND = re.compile(r"(>?)([rct]?)(1|2|4|8|16|32)(\.*)('?)")
DYNAMICS = {"p", "f", "ff", "<"}


def length(match):
    """Length of a note or rest as a fraction of a whole note."""
    value = Fraction(1, int(match[3]))
    value *= 2 - Fraction(1, 2 ** len(match[4]))
    return value * Fraction(2, 3) if match[2] == "t" else value


def walk(music):
    """Yields the faults of one line of music, then its bars and strokes as ("done", bars, strokes)."""
    bars, strokes, slur = [Fraction(0)], 0, 0
    for token in music.split(" "):
        if token == "|":
            bars.append(Fraction(0))
        elif token == "(":
            if slur:
                yield "a slur inside a slur"
            slur = 1
        elif token == ")":
            if slur < 3:
                yield "a slur over fewer than two notes"
            slur = 0
        elif match := SOUND.fullmatch(token):
            bars[-1] += length(match)
            if match[2] == "r":
                if slur or match[1] or match[5]:
                    yield f"a rest that is slurred, accented or dotted: {token}"
                continue
            strokes += slur in (0, 1)
            slur += slur > 0
        elif token not in DYNAMICS:
            yield f"an unknown sign {token!r}"
    if slur:
        yield "a slur that is not closed"
    yield "done", bars, strokes


def faults(example):
    missing = FIELDS - example.keys()
    if missing or example.keys() - FIELDS - OPTIONAL:
        return [f"fields missing or unknown: {sorted(missing or example.keys() - FIELDS - OPTIONAL)}"]
    *found, (_, bars, strokes) = walk(example["music"])
    beats, unit = map(int, example["metre"].split("/"))
    full = Fraction(beats, unit)
    for number, bar in enumerate(bars, 1):
        edge = number in (1, len(bars))
        if bar != full and not (edge and 0 < bar < full):
            found.append(f"bar {number} lasts {bar} instead of {full}")
    if strokes != len(example["strokes"]):
        found.append(f"{strokes} strokes, but {len(example['strokes'])} directions")
    if not re.fullmatch(r"[DUdu.]+", example["strokes"]) or not re.search("[DU]", example["strokes"]):
        found.append("directions other than D U d u . or none claimed")
    if example["status"] not in ("printed", "stated", "from memory"):
        found.append(f"unknown status {example['status']!r}")
    if (example["status"] == "from memory") != ("confidence" in example):
        found.append("a confidence belongs to what is from memory, and only there")
    return found


def main():
    path = Path(sys.argv[1]) if len(sys.argv) > 1 else Path(__file__).with_name("worked_examples.json")
    examples = json.loads(path.read_text(encoding="utf-8"))
    count = 0
    for example in examples:
        for fault in faults(example):
            print(f"{example.get('id')}: {fault}")
            count += 1
    for name, often in Counter(example["id"] for example in examples).items():
        if often > 1:
            print(f"{name}: stands {often} times")
            count += 1
    statuses = Counter(example["status"] for example in examples)
    claimed = sum(sum(map(str.isupper, example["strokes"])) for example in examples)
    strokes = sum(len(example["strokes"]) for example in examples)
    told = ", ".join(f"{number} {status}" for status, number in sorted(statuses.items()))
    print(f"{len(examples)} examples ({told}), {strokes} strokes, {claimed} of them claimed; {count} faults")
    return 1 if count else 0


if __name__ == "__main__":
    sys.exit(main())
