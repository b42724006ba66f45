"""Reads one tune of ABC notation into bars of notes.

Reads what printed fiddle tunes use (ABC standard 2.1, sections 3 and 4): notes,
rests, chords, grace notes, broken rhythm, tuplets, slurs, ties, staccato dots,
bow marks (`u` up-bow, `v` down-bow), fingerings, repeats, endings and changes of
key, metre and unit length. What it does not understand it counts in
`Tune.passed_over` and leaves out; it never guesses.
"""

import re
from collections import Counter
from dataclasses import dataclass, field
from fractions import Fraction

FIELD = re.compile(r"([A-Za-z]):(?![|:])(.*)")
BODY_FIELDS = "KLMQPRNZSTHWwIO"
LENGTH = r"(\d*)(/*)(\d*)"
LENGTH_AT = re.compile(LENGTH)
NOTE = re.compile(r"(\^\^|\^|__|_|=)?([A-Ga-gzZx])([,']*)" + LENGTH)
INLINE = re.compile(r"\[([A-Z]):([^\]]*)\]")
BAR = re.compile(r"\[\|\]|:*\|*\[\|?:*|:*\|+[\]:|]*|::+")
ENDING = re.compile(r"\s*\[?([1-9])(?![\d/])")
TUPLET = re.compile(r"\((\d)(?::(\d)?)?(?::(\d)?)?")
FINGERING = re.compile(r"[\^_<>@]?([0-4])$")
DYNAMICS = re.compile(r"[\^_]?(pp|p|mp|mf|f|ff|fz|sf)$")
ALTERS = {"^^": 2, "^": 1, "=": 0, "_": -1, "__": -2, None: None}
MAJOR_FIFTHS = {"C": 0, "G": 1, "D": 2, "A": 3, "E": 4, "B": 5, "F#": 6, "F": -1, "Bb": -2, "Eb": -3, "Ab": -4}
MODE_SHIFT = {"": 0, "maj": 0, "ion": 0, "m": -3, "min": -3, "aeo": -3, "dor": -2, "phr": -4, "lyd": 1, "mix": -1,
              "loc": -5}
SHARPS = "FCGDAEB"
TUPLET_TIME = {2: 3, 3: 2, 4: 3, 6: 2, 8: 3}
ORNAMENTS = {"T": "trill-mark", "~": "turn", "M": "mordent"}


@dataclass
class Pitch:
    step: str
    octave: int
    alter: int
    printed: str | None = None


@dataclass
class Note:
    """One note, chord or rest; lengths are fractions of a quarter note."""

    pitches: list
    written: Fraction
    grace: bool = False
    tuplet: tuple | None = None
    tuplet_ends: set = field(default_factory=set)
    slur_starts: list = field(default_factory=list)
    slur_stops: list = field(default_factory=list)
    tied: bool = False
    bow: list = field(default_factory=list)
    staccato: bool = False
    accent: bool = False
    fermata: bool = False
    ornament: str | None = None
    fingering: str | None = None
    dynamics: str | None = None
    words: str | None = None

    @property
    def rest(self):
        return not self.pitches

    @property
    def sounding(self):
        """How long the note really lasts."""
        if self.grace:
            return Fraction(0)
        if self.tuplet is None:
            return self.written
        actual, normal = self.tuplet
        return self.written * normal / actual


@dataclass
class Bar:
    """The notes between two bar lines, with what stands at its two ends."""

    notes: list = field(default_factory=list)
    repeat_starts: bool = False
    repeat_stops: bool = False
    closes_section: bool = False
    ending: str | None = None
    fifths: int | None = None
    metre: str | None = None

    @property
    def length(self):
        return sum((note.sounding for note in self.notes), Fraction(0))


@dataclass
class Tune:
    fields: dict
    fifths: int
    metre: str
    bars: list
    passed_over: Counter


def metre_length(metre):
    """Length of a full bar in quarter notes."""
    beats, _, unit = {"C": "4/4", "C|": "2/2"}.get(metre, metre).partition("/")
    return Fraction(int(beats) * 4, int(unit))


def key_fifths(text):
    """Sharps (positive) or flats (negative) of a key as ABC writes it, `K:` left out."""
    found = re.match(r"([A-G][#b]?)\s*([A-Za-z]*)", text.strip())
    if found is None:
        raise ValueError(f"unreadable key {text!r}")
    tonic, mode = found.groups()
    mode = "m" if mode == "m" else "" if mode == "M" else mode.lower()[:3]
    return MAJOR_FIFTHS[tonic] + MODE_SHIFT[mode]


def key_alters(fifths):
    if fifths >= 0:
        return {step: 1 for step in SHARPS[:fifths]}
    return {step: -1 for step in SHARPS[fifths:]}


def length_factor(digits, slashes, divisor):
    factor = Fraction(int(digits or 1))
    if slashes:
        factor /= int(divisor) if divisor else 2 ** len(slashes)
    return factor


def undo_mail_escapes(text):
    """A few of the files went through a mail program that wrote `=3D` for `=` and broke lines with `=`."""
    text = re.sub(r"=[ ]*\r?\n", "", text.replace("=20", " "))
    return text.replace("=3D", "=")


def read_tune(text):
    """Reads the text of one ABC file that holds one tune."""
    fields, body = {}, []
    if re.search(r"=3D|=20$", text, re.MULTILINE):
        text = undo_mail_escapes(text)
    for line in text.splitlines():
        line = re.sub(r"(?<!\\)%.*", "", line).rstrip()
        header = FIELD.match(line)
        if header and not ("K" in fields and header[1] not in BODY_FIELDS):
            letter, value = header[1], header[2].strip()
            if "K" not in fields:
                fields.setdefault(letter, value)
            elif letter in "KLM":
                body.append(f"[{letter}:{value}]")
        elif "K" in fields and line:
            body.append(line.rstrip("\\"))
    return Reader(fields).read("\n".join(body))


class Reader:
    """Walks through the body of a tune, symbol by symbol."""

    def __init__(self, fields):
        self.fields = fields
        self.fifths = key_fifths(fields["K"])
        self.metre = fields["M"]
        self.tune = Tune(fields, self.fifths, self.metre, [], Counter())
        short = metre_length(self.metre) < 3
        self.unit = Fraction(fields.get("L", "1/16" if short else "1/8")) * 4
        self.accidentals = {}
        self.bar = Bar()
        self.fresh_note()
        self.last = None
        self.broken = None
        self.tuplet = None
        self.tuplet_left = 0
        self.open_slurs = []
        self.in_grace = False

    def fresh_note(self):
        """What has been read in front of the next note."""
        self.pending = Note([], Fraction(0))
        self.pending_starts = 0

    def read(self, text):
        self.text, self.at = text, 0
        while self.at < len(text):
            self.symbol()
        self.finish_bar()
        for note in self.open_slurs:
            self.tune.passed_over["slur never closed"] += 1
            note.slur_starts.pop()
        return self.tune

    def symbol(self):
        text, at = self.text, self.at
        character = text[at]
        if character in '"!':
            self.annotation(character)
        elif match := INLINE.match(text, at):
            self.at = match.end()
            self.change(match[1], match[2].strip())
        elif (match := BAR.match(text, at)) and any(c in "|:" for c in match[0]):
            self.bar_line(match)
        elif character == "[" and (match := ENDING.match(text, at)):
            self.at = match.end()
            self.bar.ending = match[1]
        elif character == "[":
            self.chord()
        elif match := NOTE.match(text, at):
            self.at = match.end()
            self.single(match)
        elif match := TUPLET.match(text, at):
            self.at = match.end()
            self.start_tuplet(match)
        else:
            self.at += 1
            self.mark(character)

    def mark(self, character):
        pending = self.pending
        if character == "(":
            self.pending_starts += 1
        elif character == ")":
            self.close_slur()
        elif character == "-":
            self.tie()
        elif character in "uv":
            pending.bow.append("up" if character == "u" else "down")
        elif character == ".":
            pending.staccato = True
        elif character == "H":
            pending.fermata = True
        elif character in ORNAMENTS:
            pending.ornament = ORNAMENTS[character]
        elif character in "<>":
            self.broken = (self.broken or "") + character
        elif character == "{":
            self.in_grace, self.held = True, self.pending
            self.pending = Note([], Fraction(0))
        elif character == "}" and self.in_grace:
            self.in_grace, self.pending = False, self.held
        elif not character.isspace() and character not in "yS\\":
            self.tune.passed_over[f"sign {character}"] += 1

    def annotation(self, quote):
        stop = self.text.find(quote, self.at + 1)
        if stop < 0 or "\n" in self.text[self.at:stop]:
            self.at += 1
            self.tune.passed_over[f"sign {quote}"] += 1
            return
        words = self.text[self.at + 1:stop].strip()
        self.at = stop + 1
        pending = self.pending
        if found := FINGERING.match(words):
            pending.fingering = found[1]
        elif found := DYNAMICS.match(words):
            pending.dynamics = found[1]
        elif words.strip("^_. ").lower() == "segue":
            pending.words = "segue"
        elif words.lstrip("^_") == ">":
            pending.accent = True
        elif words.lstrip("^_") == "tr":
            pending.ornament = "trill-mark"
        else:
            self.tune.passed_over["words"] += 1

    def change(self, letter, value):
        if letter == "K":
            self.fifths = self.bar.fifths = key_fifths(value)
        elif letter == "M":
            self.metre = self.bar.metre = value
        elif letter == "L":
            self.unit = Fraction(value) * 4

    def start_tuplet(self, match):
        actual = int(match[1])
        compound = self.metre in ("6/8", "9/8", "12/8")
        normal = int(match[2] or TUPLET_TIME.get(actual, 3 if compound else 2))
        if actual == normal or actual < 2:
            self.tune.passed_over["tuplet of one"] += 1
            return
        self.tuplet, self.tuplet_left = (actual, normal), int(match[3] or actual)
        self.tuplet_first = True

    def single(self, match):
        sign, letter, octave_marks, *length = match.groups()
        written = self.unit * length_factor(*length)
        if letter == "Z":
            written = metre_length(self.metre) * int(length[0] or 1)
        pitches = [] if letter in "zZx" else [self.pitch(sign, letter, octave_marks)]
        self.add(pitches, written)

    def chord(self):
        stop = self.text.find("]", self.at)
        inside = self.text[self.at + 1:stop] if stop > 0 else ""
        match = LENGTH_AT.match(self.text, stop + 1)
        notes = list(NOTE.finditer(re.sub(r'"[^"]*"|!.!', "", inside)))
        if not notes or len(inside) > 60:
            self.tune.passed_over["sign ["] += 1
            self.at += 1
            return
        self.at = match.end()
        for sign in re.sub(r'"[^"]*"|!.!', "", inside):
            if sign in "uv":
                self.pending.bow.append("up" if sign == "u" else "down")
            elif sign == ".":
                self.pending.staccato = True
        written = self.unit * length_factor(*notes[0].groups()[3:]) * length_factor(*match.groups())
        self.add([self.pitch(*note.groups()[:3]) for note in notes if note[2] not in "zZx"], written)

    def pitch(self, sign, letter, octave_marks):
        octave = (5 if letter.islower() else 4) + octave_marks.count("'") - octave_marks.count(",")
        step = letter.upper()
        if sign is not None:
            self.accidentals[step, octave] = ALTERS[sign]
        elif self.last is not None and self.last.tied:
            for before in self.last.pitches:
                if (before.step, before.octave) == (step, octave):
                    return Pitch(step, octave, before.alter)
        alter = self.accidentals.get((step, octave), key_alters(self.fifths).get(step, 0))
        return Pitch(step, octave, alter, sign)

    def add(self, pitches, written):
        note, starts = self.pending, self.pending_starts
        note.pitches, note.written, note.grace = pitches, written, self.in_grace
        if note.rest and note.bow:
            self.tune.passed_over["bow mark on a rest"] += len(note.bow)
            note.bow = []
        if not note.grace:
            self.time(note)
        for _ in range(starts):
            note.slur_starts.append(None)
            self.open_slurs.append(note)
        self.bar.notes.append(note)
        self.last = note
        self.fresh_note()

    def time(self, note):
        if self.tuplet_left:
            note.tuplet = self.tuplet
            if self.tuplet_first:
                note.tuplet_ends.add("start")
                self.tuplet_first = False
            self.tuplet_left -= 1
            if not self.tuplet_left:
                note.tuplet_ends.add("stop")
        if self.broken:
            previous = next((n for n in reversed(self.bar.notes) if not n.grace), None)
            short = Fraction(1, 2 ** len(self.broken))
            if previous is not None:
                long_first = self.broken[0] == ">"
                previous.written *= 2 - short if long_first else short
                note.written *= short if long_first else 2 - short
            else:
                self.tune.passed_over["broken rhythm at a bar line"] += 1
            self.broken = None

    def tie(self):
        if self.last is not None and not self.last.rest:
            self.last.tied = True

    def close_slur(self):
        """Closes the innermost slur; one that began on this very note yields to an outer one."""
        if self.last is None or not self.open_slurs:
            self.tune.passed_over["slur never opened"] += 1
            return
        index = len(self.open_slurs) - 1
        while index > 0 and self.open_slurs[index] is self.last:
            index -= 1
        first = self.open_slurs.pop(index)
        first.slur_starts.remove(None)
        if first is self.last:
            self.tune.passed_over["slur over one note"] += 1
            return
        first.slur_starts.append(self.last)
        self.last.slur_stops.append(first)

    def bar_line(self, match):
        self.at = match.end()
        line = match[0]
        trailing_bracket = line.endswith("[") and "|" in line or line.endswith(":[")
        if trailing_bracket:
            self.at -= 1
            line = line[:-1]
        self.finish_bar(line)
        if found := ENDING.match(self.text, self.at):
            if "\n" not in found[0] or "[" in found[0]:
                self.at = found.end()
                self.bar.ending = found[1]

    def finish_bar(self, line=""):
        bar = self.bar
        if self.broken:
            self.tune.passed_over["broken rhythm at a bar line"] += 1
            self.broken = None
        stops = line.startswith(":")
        starts = line.endswith(":") and (len(line) > 1)
        closes = stops or starts or any(sign in line for sign in ("||", "|]", "[|"))
        if bar.notes:
            bar.repeat_stops, bar.closes_section = stops, closes
            self.tune.bars.append(bar)
            self.bar = Bar()
        elif self.tune.bars:
            before = self.tune.bars[-1]
            before.repeat_stops |= stops
            before.closes_section |= closes
        self.bar.repeat_starts |= starts
        self.accidentals = {}
