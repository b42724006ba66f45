"""Turns Ryan's Mammoth Collection (Boston, 1883) into MusicXML files.

    python ryan.py OUT_DIR

reads every tune of the collection in the installed package music21 and writes
`OUT_DIR/STEM.musicxml` for each `STEM.abc`, and `OUT_DIR/index.json`, which says
what each file holds. Titles are left out on purpose: tunes go by file name.
README.md describes the index.
"""

import importlib.util
import json
import re
import sys
from pathlib import Path

from abc_tune import metre_length, read_tune
from musicxml_writer import write_score

# Beats a minute by the kind of tune: common practice among fiddlers, from memory.
# The collection prints a tempo over five tunes only; those keep it. A beat is a
# half note in C and C|, a dotted quarter in compound time, else a quarter note.
BEATS_A_MINUTE = {
    "reel": 108,
    "hornpipe": 84,
    "clog": 72,
    "jig": 112,
    "slip jig": 112,
    "slide": 120,
    "strathspey": 60,
    "fling": 66,
    "walk around": 96,
}
DEFAULT_QUARTERS_A_MINUTE = 110
BEAT_QUARTERS = {"C": 2, "C|": 2, "4/4": 2, "2/4": 1, "6/8": 1.5, "9/8": 1.5, "12/8": 1.5}
KIND_WORDS = (
    ("slip jig", r"slip ?jig"),
    ("walk around", r"walk ?around"),
    ("strathspey", "strathspey"),
    ("hornpipe", "hornpipe"),
    ("fling", "fling"),
    ("clog", "clog"),
    ("slide", "slide"),
    ("reel", "reel"),
    ("jig", "jig"),
)


def collection():
    """The folder of the collection in the installed package music21."""
    package = importlib.util.find_spec("music21")
    if package is None:
        raise FileNotFoundError("the package music21 is not installed; run pip install -r requirements.txt")
    folder = Path(package.origin).parent / "corpus" / "ryansMammoth"
    if not folder.is_dir():
        raise FileNotFoundError("the installed music21 does not hold corpus/ryansMammoth")
    return folder


def kind_of(tune, stem):
    """The kind of tune by the field R of the file, or by the last words of its name."""
    spaced_name = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", stem)
    for place in (tune.fields.get("R", ""), spaced_name):
        for kind, words in KIND_WORDS:
            if re.search(words, place.lower()):
                return kind
    return "other"


def quarters_a_minute(tune, kind):
    if printed := re.match(r"1/4\s*=\s*(\d+)$", tune.fields.get("Q", "")):
        return int(printed[1])
    if kind not in BEATS_A_MINUTE:
        return DEFAULT_QUARTERS_A_MINUTE
    quarters = BEATS_A_MINUTE[kind] * BEAT_QUARTERS[tune.metre]
    return int(quarters)


def content(tune):
    """What makes two files the same tune: bars of pitches, lengths, slurs and marks."""
    return tuple(
        tuple((note.sounding, note.grace, len(note.slur_starts), len(note.slur_stops), tuple(note.bow),
               tuple((pitch.step, pitch.octave, pitch.alter) for pitch in note.pitches)) for note in bar.notes)
        for bar in tune.bars)


def describe(tune, stem, kind, tempo, written):
    notes = [note for bar in tune.bars for note in bar.notes if not note.rest]
    return {
        "file": f"{stem}.musicxml",
        "kind": kind,
        "metre": tune.metre,
        "bar_quarters": str(metre_length(tune.metre)),
        "quarter_bpm": tempo,
        "bars": len(tune.bars),
        "notes": written.notes,
        "pitches": written.pitches,
        "grace_notes": sum(note.grace for note in notes),
        "slurs": sum(len(note.slur_starts) for note in notes),
        "staccato_dots": sum(note.staccato for note in notes),
        "up": sum(note.bow.count("up") for note in notes),
        "down": sum(note.bow.count("down") for note in notes),
        "marks": written.marks,
        "grace_marks": written.grace_marks,
        "passed_over": dict(sorted(tune.passed_over.items())),
    }


def main():
    if len(sys.argv) != 2:
        print("usage: ryan.py OUT_DIR", file=sys.stderr)
        return 2
    target = Path(sys.argv[1])
    target.mkdir(parents=True, exist_ok=True)
    index, seen = [], {}
    for path in sorted(collection().glob("*.abc")):
        tune = read_tune(path.read_bytes().decode("utf-8", errors="replace"))
        kind = kind_of(tune, path.stem)
        tempo = quarters_a_minute(tune, kind)
        written = write_score(tune, tempo)
        (target / f"{path.stem}.musicxml").write_bytes(written.document)
        entry = describe(tune, path.stem, kind, tempo, written)
        entry["same_as"] = seen.setdefault(content(tune), entry["file"])
        if entry["same_as"] == entry["file"]:
            entry["same_as"] = None
        index.append(entry)
    text = ",\n".join(json.dumps(entry) for entry in index)
    (target / "index.json").write_text(f"[\n{text}\n]\n", encoding="utf-8")
    print(f"{len(index)} tunes, {sum(e['notes'] for e in index)} notes, {sum(e['slurs'] for e in index)} slurs, "
          f"{sum(e['up'] for e in index)} up-bow and {sum(e['down'] for e in index)} down-bow marks")
    return 0


if __name__ == "__main__":
    sys.exit(main())
