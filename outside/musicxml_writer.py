"""Writes a tune read from ABC as a MusicXML 4.0 score for one violin."""

from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from math import lcm

from abc_tune import metre_length

TYPES = ((8, "breve"), (4, "whole"), (2, "half"), (1, "quarter"), (Fraction(1, 2), "eighth"),
         (Fraction(1, 4), "16th"), (Fraction(1, 8), "32nd"), (Fraction(1, 16), "64th"),
         (Fraction(1, 32), "128th"), (Fraction(1, 64), "256th"))
DOTTED = sorted(((length * (2 - Fraction(1, 2 ** dots)), name, dots) for length, name in TYPES for dots in range(4)),
                key=lambda value: (-value[0], value[2]))
ACCIDENTALS = {"^^": "double-sharp", "^": "sharp", "=": "natural", "_": "flat", "__": "flat-flat"}
TIME_SYMBOLS = {"C": (4, 4, "common"), "C|": (2, 2, "cut")}
HEADER = """<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
  <part-list>
    <score-part id="P1">
      <part-name>Violin</part-name>
      <score-instrument id="P1-I1">
        <instrument-name>Violin</instrument-name>
        <instrument-sound>strings.violin</instrument-sound>
      </score-instrument>
    </score-part>
  </part-list>
  <part id="P1">
"""


@dataclass
class Written:
    """The document, and its bow marks as [bar, note, "up" or "down"], both counted from 1.

    A bar is a `measure` element; a note is a `note` element of that bar that is
    no rest, no grace note and no further note of a chord; `notes` counts them and
    `pitches` counts the further notes of chords too. A mark that stands on a
    grace note is listed apart, with the note that the grace note leads to (0 when
    it leads to none in its bar).
    """

    document: bytes
    notes: int
    pitches: int
    marks: list
    grace_marks: list


@cache
def split_length(length):
    """Parts a length into values that one note can be written as, longest first."""
    values, left = [], length
    while left > 0:
        found = next((value for value in DOTTED if value[0] <= left), None)
        if found is None:
            raise ValueError(f"a length of {length} quarter notes can not be written down")
        values.append(found)
        left -= found[0]
    return tuple(values)


def write_score(tune, quarters_a_minute):
    return ScoreWriter(tune, quarters_a_minute).write()


class ScoreWriter:
    def __init__(self, tune, quarters_a_minute):
        self.tune = tune
        self.tempo = quarters_a_minute
        notes = [note for bar in tune.bars for note in bar.notes]
        self.divisions = lcm(*(value.denominator for note in notes for value in self.pieces(note)))
        self.tie_targets(notes)
        self.out = [HEADER]
        self.notes = self.pitches = 0
        self.marks, self.grace_marks = [], []
        self.slur_numbers = {}

    @staticmethod
    def pieces(note):
        """The lengths that the note sounds, one for each note it is written as."""
        if note.grace:
            return []
        scale = note.sounding / note.written
        return [value[0] * scale for value in split_length(note.written)]

    def tie_targets(self, notes):
        self.tied_pitches, self.tied_from = {}, {}
        sounding = [note for note in notes if not note.grace]
        for note, following in zip(sounding, sounding[1:]):
            if note.tied:
                names = {(p.step, p.octave, p.alter) for p in following.pitches}
                shared = {(p.step, p.octave, p.alter) for p in note.pitches} & names
                self.tied_pitches[id(note)] = shared
                self.tied_from[id(following)] = shared

    def line(self, depth, text):
        self.out.append("  " * depth + text + "\n")

    def write(self):
        number, inserted = 0, 0
        full = metre_length(self.tune.metre)
        ending = None
        for index, bar in enumerate(self.tune.bars):
            full = metre_length(bar.metre) if bar.metre else full
            opens = index == 0 or self.tune.bars[index - 1].closes_section
            if opens and bar.length < full:
                inserted += index > 0
                self.line(2, f'<measure number="{f"X{inserted}" if index else 0}" implicit="yes">')
            else:
                number += 1
                self.line(2, f'<measure number="{number}">')
            ending = self.bar(index, bar, ending)
            self.line(2, "</measure>")
        self.out.append("  </part>\n</score-partwise>\n")
        document = "".join(self.out).encode("utf-8")
        return Written(document, self.notes, self.pitches, self.marks, self.grace_marks)

    def bar(self, index, bar, ending):
        self.left_line(bar)
        self.attributes(index, bar)
        if index == 0:
            self.tempo_direction()
        ordinal = 0
        for note in bar.notes:
            ordinal = self.note(note, index + 1, ordinal)
        return self.right_line(index, bar, bar.ending or ending)

    def left_line(self, bar):
        if bar.ending is None and not bar.repeat_starts:
            return
        self.line(3, '<barline location="left">')
        if bar.repeat_starts:
            self.line(4, "<bar-style>heavy-light</bar-style>")
        if bar.ending:
            self.line(4, f'<ending number="{bar.ending}" type="start"/>')
        if bar.repeat_starts:
            self.line(4, '<repeat direction="forward"/>')
        self.line(3, "</barline>")

    def right_line(self, index, bar, ending):
        """Writes the bar line at the end; returns the ending still open after it."""
        bars = self.tune.bars
        last = index == len(bars) - 1
        next_ending = not last and bars[index + 1].ending is not None
        closes = ending if ending and (bar.closes_section or last or next_ending) else None
        style = "light-heavy" if last or bar.repeat_stops else "light-light" if bar.closes_section else None
        if not (closes or style):
            return ending
        self.line(3, '<barline location="right">')
        if style:
            self.line(4, f"<bar-style>{style}</bar-style>")
        if closes:
            kind = "stop" if bar.repeat_stops else "discontinue"
            self.line(4, f'<ending number="{closes}" type="{kind}"/>')
        if bar.repeat_stops:
            self.line(4, '<repeat direction="backward"/>')
        self.line(3, "</barline>")
        return None if closes else ending

    def attributes(self, index, bar):
        fifths = self.tune.fifths if index == 0 else bar.fifths
        metre = self.tune.metre if index == 0 else bar.metre
        if fifths is None and metre is None:
            return
        self.line(3, "<attributes>")
        if index == 0:
            self.line(4, f"<divisions>{self.divisions}</divisions>")
        if fifths is not None:
            self.line(4, f"<key><fifths>{fifths}</fifths></key>")
        if metre is not None:
            beats, unit, symbol = TIME_SYMBOLS.get(metre) or (*metre.split("/"), None)
            drawn = f' symbol="{symbol}"' if symbol else ""
            self.line(4, f"<time{drawn}><beats>{beats}</beats><beat-type>{unit}</beat-type></time>")
        if index == 0:
            self.line(4, "<clef><sign>G</sign><line>2</line></clef>")
        self.line(3, "</attributes>")

    def tempo_direction(self):
        self.line(3, '<direction placement="above">')
        self.line(4, "<direction-type><metronome><beat-unit>quarter</beat-unit>"
                     f"<per-minute>{self.tempo}</per-minute></metronome></direction-type>")
        self.line(4, f'<sound tempo="{self.tempo}"/>')
        self.line(3, "</direction>")

    def note(self, note, bar_ordinal, ordinal):
        """Writes one note, chord or rest and returns the ordinal of the last note of the bar so far."""
        if note.dynamics:
            self.line(3, f"<direction><direction-type><dynamics><{note.dynamics}/></dynamics></direction-type>"
                         "</direction>")
        if note.words:
            self.line(3, f"<direction><direction-type><words>{note.words}</words></direction-type></direction>")
        if note.grace:
            self.grace(note)
            self.grace_marks += [[bar_ordinal, ordinal + 1, mark] for mark in note.bow]
            return ordinal
        values, lengths = split_length(note.written), self.pieces(note)
        if not note.rest:
            self.marks += [[bar_ordinal, ordinal + 1, mark] for mark in note.bow]
        for index, (value, length) in enumerate(zip(values, lengths)):
            place = (index == 0, index == len(values) - 1)
            if note.rest:
                self.rest(value, length, note, place)
            for pitch in note.pitches:
                self.head(note, pitch, value, length, place)
        if note.rest:
            return ordinal
        self.notes += len(values)
        self.pitches += len(values) * len(note.pitches)
        return ordinal + len(values)

    def rest(self, value, length, note, place):
        self.line(3, "<note>")
        self.line(4, "<rest/>")
        self.line(4, f"<duration>{length * self.divisions}</duration>")
        self.value(value, note)
        self.notations(self.tuplet_marks(note, place))
        self.line(3, "</note>")

    def value(self, value, note):
        self.line(4, f"<type>{value[1]}</type>")
        for _ in range(value[2]):
            self.line(4, "<dot/>")
        if note.tuplet:
            self.line(4, f"<time-modification><actual-notes>{note.tuplet[0]}</actual-notes>"
                         f"<normal-notes>{note.tuplet[1]}</normal-notes></time-modification>")

    def pitch(self, pitch):
        alter = f"<alter>{pitch.alter}</alter>" if pitch.alter else ""
        self.line(4, f"<pitch><step>{pitch.step}</step>{alter}<octave>{pitch.octave}</octave></pitch>")

    def grace(self, note):
        value = next((v for v in split_length(note.written)), DOTTED[0])
        for index, pitch in enumerate(note.pitches):
            self.line(3, "<note>")
            self.line(4, "<grace/>")
            if index:
                self.line(4, "<chord/>")
            self.pitch(pitch)
            self.line(4, f"<type>{value[1]}</type>")
            if pitch.printed is not None:
                self.line(4, f"<accidental>{ACCIDENTALS[pitch.printed]}</accidental>")
            if index == 0:
                self.notations([*self.slur_stops(note), *self.slur_starts(note), *self.signs(note)])
            self.line(3, "</note>")

    def head(self, note, pitch, value, length, place):
        first, last = place
        main = pitch is note.pitches[0]
        name = (pitch.step, pitch.octave, pitch.alter)
        ties = []
        if not first or name in self.tied_from.get(id(note), ()):
            ties.append("stop")
        if not last or name in self.tied_pitches.get(id(note), ()):
            ties.append("start")
        self.line(3, "<note>")
        if not main:
            self.line(4, "<chord/>")
        self.pitch(pitch)
        self.line(4, f"<duration>{length * self.divisions}</duration>")
        for tie in ties:
            self.line(4, f'<tie type="{tie}"/>')
        self.value(value, note)
        self.accidental_in_order(pitch, first, note)
        marks = [f'<tied type="{tie}"/>' for tie in ties]
        if main:
            marks += self.slur_stops(note) if last else []
            marks += self.slur_starts(note) if first else []
            marks += self.tuplet_marks(note, place)
            marks += self.signs(note) if first else []
        self.notations(marks)
        self.line(3, "</note>")

    def accidental_in_order(self, pitch, first, note):
        """The schema wants the accidental between the dots and the time modification."""
        if pitch.printed is None or not first:
            return
        at = len(self.out) - (1 if note.tuplet else 0)
        self.out.insert(at, f"        <accidental>{ACCIDENTALS[pitch.printed]}</accidental>\n")

    def notations(self, marks):
        if marks:
            self.line(4, f"<notations>{''.join(marks)}</notations>")

    def slur_stops(self, note):
        marks = []
        for first in note.slur_stops:
            number = self.slur_numbers.pop((id(first), id(note)), None)
            if number is not None:
                marks.append(f'<slur number="{number}" type="stop"/>')
        return marks

    def slur_starts(self, note):
        marks = []
        for target in note.slur_starts:
            number = next(n for n in range(1, 17) if n not in self.slur_numbers.values())
            self.slur_numbers[id(note), id(target)] = number
            marks.append(f'<slur number="{number}" type="start"/>')
        return marks

    @staticmethod
    def tuplet_marks(note, place):
        first, last = place
        marks = []
        if "start" in note.tuplet_ends and first:
            marks.append('<tuplet type="start"/>')
        if "stop" in note.tuplet_ends and last:
            marks.append('<tuplet type="stop"/>')
        return marks

    @staticmethod
    def signs(note):
        marks = []
        if note.ornament:
            marks.append(f"<ornaments><{note.ornament}/></ornaments>")
        technical = [f"<{mark}-bow/>" for mark in note.bow]
        if note.fingering:
            technical.append(f"<fingering>{note.fingering}</fingering>")
        if technical:
            marks.append(f"<technical>{''.join(technical)}</technical>")
        articulations = ["<accent/>"] * note.accent + ["<staccato/>"] * note.staccato
        if articulations:
            marks.append(f"<articulations>{''.join(articulations)}</articulations>")
        if note.fermata:
            marks.append("<fermata/>")
        return marks
