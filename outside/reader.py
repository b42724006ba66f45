"""What music21 reads out of MusicXML files, for comparison with another reader.

    python reader.py OUT.json [--list FILE] [--processes N]

Without `--list`: every MusicXML file of music21's corpus that has a bowed-string
part, and music21's own element tests for MusicXML. With `--list`: the files that
FILE names, one a line.

`OUT.json` gets an array with one object a file; beside it the folder `OUT.notes`
gets one text file a score. README.md describes both.
"""

import argparse
import ast
import io
import json
import logging
import re
import sys
import warnings
from fractions import Fraction
from multiprocessing import Pool
from pathlib import Path
from xml.etree import ElementTree

import music21
from music21 import articulations, converter, harmony, note, spanner, stream
from music21.common import opFrac

from compressed import score_bytes

HOME = Path(music21.__file__).resolve().parent
SUFFIXES = (".xml", ".musicxml", ".mxl")

# A part is bowed when its name, or the name of one of its instruments, holds one of
# these words, or its instrument-sound says so. A bare "Bass" is a singer in this
# corpus, and MIDI programs do not count: an oboe there carries 55 (strings).
BOWED_WORDS = re.compile(
    r"violin|violon|viola|cello|contrabass|contrabbass|double ?bass|\bviol\b|fiddle", re.IGNORECASE)
BOWED_SOUNDS = ("strings.violin", "strings.viola", "strings.cello", "strings.contrabass", "strings.viol",
                "strings.fiddle")

# music21 lists chord symbols among the notes; nothing sounds there.
SILENT = (harmony.Harmony,)


def bowed_parts(path):
    """Names of the bowed-string parts of a file, by its part list alone."""
    names = []
    for _, part in ElementTree.iterparse(io.BytesIO(score_bytes(path))):
        if part.tag == "part-list":
            break
        if part.tag != "score-part":
            continue
        said = [part.findtext("part-name") or ""]
        said += [name.text or "" for name in part.iter("instrument-name")]
        sounds = [sound.text or "" for sound in part.iter("instrument-sound")]
        if any(map(BOWED_WORDS.search, said)) or any(sound.startswith(BOWED_SOUNDS) for sound in sounds):
            names.append(part.get("id"))
    return names


def corpus_files():
    found = (path for path in (HOME / "corpus").rglob("*") if path.suffix in SUFFIXES)
    return [path for path in sorted(found) if bowed_parts(path)]


def element_tests(target):
    """The element tests that lie in files, and those that lie as text in a module.

    The latter are written into `target` so that another reader can open them.
    The module is read, not run: only its top-level strings that hold a score count.
    """
    folder = HOME / "musicxml"
    paths = [path for path in sorted(folder.rglob("*")) if path.suffix in SUFFIXES]
    for module in ("testPrimitive.py", "testFiles.py"):
        tree = ast.parse((folder / module).read_text(encoding="utf-8-sig"))
        for statement in tree.body:
            if not isinstance(statement, ast.Assign) or not isinstance(statement.value, ast.Constant):
                continue
            text = statement.value.value
            if isinstance(text, str) and "<score-partwise" in text:
                path = target / f"{module.removesuffix('.py')}-{statement.targets[0].id}.musicxml"
                encoding = re.match(r"""\s*<\?xml[^>]*encoding=["']([^"']+)""", text)
                path.write_bytes(text.lstrip().encode(encoding[1] if encoding else "utf-8"))
                paths.append(path)
    return paths


def fraction(value):
    """An exact fraction of a quarter note, as `3` or `1/3`."""
    return str(Fraction(opFrac(value)).limit_denominator(1 << 16))


class PartReading:
    """The notes, slurs and marks of one part, with places as (bar ordinal, offset in the bar)."""

    def __init__(self, ids):
        self.ids = ids
        self.places, self.lines = {}, []
        self.notes = self.grace = self.up = self.down = 0
        self.slur_lines = []

    def read_staff(self, part, staff):
        for ordinal, measure in enumerate(part.getElementsByClass(stream.Measure), 1):
            start = part.elementOffset(measure)
            for element in measure.recurse().notes:
                if not isinstance(element, SILENT):
                    self.read_note(element, ordinal, start, element.getOffsetInHierarchy(measure), staff)

    def read_note(self, element, ordinal, start, offset, staff):
        self.places[id(element)] = (ordinal, offset)
        grace = element.duration.isGrace
        heads = element.notes if hasattr(element, "notes") else [element]
        # What is not printed nobody plays.
        heads = [head for head in heads if not (is_hidden(element) or is_hidden(head))]
        if not heads:
            return
        length = fraction(0 if grace else element.quarterLength)
        for head in heads:
            pitch = written_pitch(head)
            self.lines.append((ordinal, Fraction(fraction(offset)), not grace, pitch,
                               f"{'grace' if grace else 'note'} {ordinal} {fraction(offset)} "
                               f"{fraction(start + offset)} {length} {pitch} {staff}"))
        self.grace += len(heads) if grace else 0
        self.notes += 0 if grace else len(heads)
        for mark in {id(a): a for member in [element, *heads] for a in member.articulations}.values():
            for kind, name in ((articulations.UpBow, "up"), (articulations.DownBow, "down")):
                if isinstance(mark, kind):
                    setattr(self, name, getattr(self, name) + 1)
                    self.lines.append((ordinal, Fraction(fraction(offset)), 2, name,
                                       f"mark {ordinal} {fraction(offset)} {name}"))

    def add_slur(self, slur):
        """Adds the slur if it begins in this part."""
        ends = [self.places.get(id(end)) for end in (slur.getFirst(), slur.getLast())]
        if ends[0] is None:
            return False
        shown = [f"{place[0]} {fraction(place[1])}" if place else "- -" for place in ends]
        self.slur_lines.append((ends[0][0], Fraction(fraction(ends[0][1])), f"slur {shown[0]} {shown[1]}"))
        return True

    def text(self):
        lines = [line[-1] for line in sorted(self.lines)] + [line[-1] for line in sorted(self.slur_lines)]
        return "".join(f"{line}\n" for line in [f"part {self.ids}", *lines])


def is_hidden(element):
    """Whether it is not printed."""
    return element.hasStyleInformation and bool(element.style.hideObjectOnPrint)


def written_pitch(head):
    """Written pitch as step, alter and octave: `F#5` is `F 1 5`; `- - -` where there is none."""
    if not isinstance(head, note.Note):
        return "- - -"
    alter = head.pitch.alter
    shown = int(alter) if alter == int(alter) else alter
    return f"{head.pitch.step} {shown} {head.pitch.octave}"


def part_identity(part):
    """The id of the part in the file, and the staff that music21 split off it (1 when unsplit)."""
    found = re.match(r"(.*)-Staff(\d+)$", str(part.id))
    if found:
        return found[1], int(found[2])
    # music21 renames a part after its instrument; the id stays as the first of its groups.
    return (part.groups[0] if part.groups else str(part.id)), 1


def read_score(path):
    score = converter.parse(path, forceSource=True)
    scores = list(score.scores) if isinstance(score, stream.Opus) else [score]
    readings = {}
    for part in (part for one in scores for part in one.parts):
        name, staff = part_identity(part)
        readings.setdefault(name, PartReading(name)).read_staff(part, staff)
    slurs = unplaced = 0
    for slur in (slur for one in scores for slur in one.recurse().getElementsByClass(spanner.Slur)):
        slurs += 1
        unplaced += not any(reading.add_slur(slur) for reading in readings.values())
    return readings, slurs, unplaced


def read_file(job):
    path, group, notes_file = job
    warnings.simplefilter("ignore")
    logging.disable(logging.CRITICAL)
    entry = {"path": str(path), "group": group}
    try:
        readings, slurs, unplaced = read_score(path)
    except Exception as problem:  # music21 raises whatever its parser meets; the table says what
        return entry | {"error": f"{type(problem).__name__}: {' '.join(str(problem).split())}"}
    Path(notes_file).write_text("".join(reading.text() for reading in readings.values()), encoding="utf-8")
    bowed = set(bowed_parts(path))
    parts = [{"id": reading.ids, "bowed": reading.ids in bowed, "notes": reading.notes, "grace": reading.grace,
              "slurs": len(reading.slur_lines), "up": reading.up, "down": reading.down}
             for reading in readings.values()]
    totals = {key: sum(part[key] for part in parts) for key in ("notes", "grace", "up", "down")}
    return entry | {"notes_file": str(notes_file), **totals, "slurs": slurs, "slurs_without_a_note": unplaced,
                    "parts": parts}


def jobs(chosen, notes_folder):
    if chosen.list:
        listed = Path(chosen.list).read_text(encoding="utf-8").split("\n")
        groups = [("given", Path(line).resolve()) for line in listed if line]
    else:
        groups = [("corpus", path) for path in corpus_files()]
        groups += [("element test", path) for path in element_tests(notes_folder)]
    return [(path, group, notes_folder / f"{number:04}.txt") for number, (group, path) in enumerate(groups, 1)]


def main():
    options = argparse.ArgumentParser(description="Read MusicXML files with music21.")
    options.add_argument("out", metavar="OUT.json")
    options.add_argument("--list", metavar="FILE", help="file with one path a line")
    options.add_argument("--processes", type=int, default=1, metavar="N", help="files read side by side")
    chosen = options.parse_args()
    out = Path(chosen.out).resolve()
    notes_folder = out.with_suffix(".notes")
    notes_folder.mkdir(parents=True, exist_ok=True)
    work = jobs(chosen, notes_folder)
    with Pool(chosen.processes) as pool:
        entries = pool.map(read_file, work, chunksize=1)
    text = ",\n".join(json.dumps(entry) for entry in entries)
    out.write_text(f"[\n{text}\n]\n", encoding="utf-8")
    read = [entry for entry in entries if "error" not in entry]
    sums = ", ".join(f"{sum(entry[key] for entry in read)} {key}" for key in ("notes", "grace", "slurs", "up", "down"))
    print(f"{len(entries)} files, {len(entries) - len(read)} that music21 can not read: {sums}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
