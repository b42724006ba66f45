//! Passages of real works in the notation of fixtures: eight bars of common time of up to four bowed parts, as far as
//! the notation needs no tuplets, grace notes or chords.

use std::ops::Range;

use crate::values::part_of_whole;
use arcata_score::{Instrument, Length, Note, NoteKind, Part, Pitch, Score, TieEnd};
use arcata_testkit::Random;

/// Bars of a passage.
pub(super) const BARS: usize = 8;

/// A passage that faults can be planted in.
#[derive(Clone)]
pub(super) struct PlantPassage {
    /// Quarters a minute; none where no tempo shall be written.
    pub(super) tempo: Option<u32>,
    pub(super) parts: Vec<PassageLine>,
    /// First and last bar of a repeated stretch.
    pub(super) repeat: Option<(usize, usize)>,
}

/// One part of it.
#[derive(Clone)]
pub(super) struct PassageLine {
    pub(super) instrument: Instrument,
    pub(super) name: String,
    /// Each bar as fixture text.
    pub(super) bars: Vec<String>,
    /// What stands before the first note.
    pub(super) dynamic: &'static str,
}

impl PlantPassage {
    /// The passage as a fixture.
    pub(super) fn text(&self) -> String {
        let mut text = String::from("unchecked  broken-slurs  broken-ties\n");
        if let Some(tempo) = self.tempo {
            text.push_str(&format!("quarter={tempo}\n"));
        }
        for (index, line) in self.parts.iter().enumerate() {
            text.push_str(&format!("{}: {} ", line.name, line.dynamic));
            for (number, bar) in line.bars.iter().enumerate() {
                let (from, to) = self.repeat.filter(|_| index == 0).unwrap_or((usize::MAX, usize::MAX));
                if number == from {
                    text.push_str("|: ");
                }
                text.push_str(bar);
                text.push_str(match number {
                    _ if number == to => " :| ",
                    _ if number + 1 == line.bars.len() => " |||",
                    _ => " | ",
                });
            }
            text.push('\n');
        }
        text
    }

    /// The parts of one instrument, or of any.
    pub(super) fn parts_of(&self, instrument: Option<Instrument>) -> Vec<usize> {
        let fits = |part: &usize| instrument.is_none_or(|wanted| self.parts[*part].instrument == wanted);
        (0..self.parts.len()).filter(fits).collect()
    }
}

/// All passages of a score, one after the other.
pub(super) fn passages(score: &Score) -> Vec<PlantPassage> {
    let bowed: Vec<&Part> = score.parts.iter().filter(|part| part.instrument.is_bowed()).take(4).collect();
    let starts = (0..score.bars.len().saturating_sub(BARS)).step_by(BARS);
    starts.filter_map(|start| passage(score, &bowed, start..start + BARS)).collect()
}

/// The first stretch of a score that is so many bars long.
pub(super) fn stretch(score: &Score, bars: usize) -> Option<PlantPassage> {
    let bowed: Vec<&Part> = score.parts.iter().filter(|part| part.instrument.is_bowed()).take(4).collect();
    let mut starts = 0..score.bars.len().saturating_sub(bars);
    starts.find_map(|start| passage(score, &bowed, start..start + bars))
}

fn passage(score: &Score, parts: &[&Part], range: Range<usize>) -> Option<PlantPassage> {
    let common = range.clone().all(|bar| score.bars[bar].length == Length::WHOLE);
    let mut counts = [0_usize; 4];
    let lines: Option<Vec<PassageLine>> = parts
        .iter()
        .map(|part| {
            let (at, name) = match part.instrument {
                Instrument::Violin => (0, "violin"),
                Instrument::Viola => (1, "viola"),
                Instrument::Cello => (2, "cello"),
                Instrument::Bass => (3, "double bass"),
                Instrument::OtherBowed | Instrument::NotBowed => return None,
            };
            counts[at] += 1;
            let bars: Option<Vec<String>> = range.clone().map(|number| bar(part, number)).collect();
            Some(PassageLine {
                instrument: part.instrument,
                name: format!("{name} {}", counts[at]),
                bars: bars?,
                dynamic: "mf",
            })
        })
        .collect();
    let lines = lines.filter(|_| common)?;
    let sounding = lines
        .iter()
        .all(|line| line.bars.iter().any(|bar| bar.contains(|letter| ('A'..='G').contains(&letter))));
    (lines.len() >= 2 && sounding).then_some(PlantPassage { tempo: Some(96), parts: lines, repeat: None })
}

/// A bar of one voice of plain notes; `None` for any other.
fn bar(part: &Part, number: usize) -> Option<String> {
    let number = u32::try_from(number).ok()?;
    let first = part.notes.partition_point(|note| note.bar < number);
    let notes: Vec<&Note> = part.notes[first..].iter().take_while(|note| note.bar == number).collect();
    let voice = notes.first()?.voice;
    let mut filled = Length::ZERO;
    let mut tokens = Vec::new();
    for note in &notes {
        let plain = note.kind == NoteKind::Ordinary
            && note.voice == voice
            && note.tremolo.is_none()
            && note.ornament.is_none()
            && note.staff == 1;
        if !plain {
            return None;
        }
        filled += note.length;
        let tie =
            if matches!(note.tie.to_after, TieEnd::Joined(_)) && filled < Length::WHOLE { "_" } else { "" };
        tokens.push((note.onset, format!("{} {}{tie}", value(note.length)?, pitch(note.pitch)?)));
    }
    if filled != Length::WHOLE {
        return None;
    }
    // Slurs that lie in the bar, as long as none is inside another.
    let mut open: Vec<(usize, usize)> = Vec::new();
    for slur in &part.slurs {
        let (start, end) = (part.note(slur.start), part.note(slur.end));
        let at = |note: &Note| tokens.iter().position(|(onset, _)| *onset == note.onset);
        if start.bar == number
            && end.bar == number
            && let (Some(from), Some(to)) = (at(start), at(end))
        {
            let free = open.iter().all(|(one, other)| to <= *one || from >= *other);
            if free && from < to {
                open.push((from, to));
            }
        }
    }
    let text: Vec<String> = tokens
        .iter()
        .enumerate()
        .map(|(at, (_, token))| {
            let begins = if open.iter().any(|(from, _)| *from == at) { "(" } else { "" };
            let ends = if open.iter().any(|(_, to)| *to == at) { ")" } else { "" };
            format!("{begins}{token}{ends}")
        })
        .collect();
    Some(text.join(" "))
}

fn pitch(pitch: Pitch) -> Option<String> {
    let Some(cents) = pitch.cents() else { return pitch.is_rest().then(|| "rest".to_owned()) };
    if cents % 100 != 0 {
        return None;
    }
    const NAMES: [&str; 12] = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];
    let semitones = cents / 100;
    let name = NAMES[usize::try_from(semitones.rem_euclid(12)).ok()?];
    Some(format!("{name}{}", semitones.div_euclid(12) - 1))
}

/// A value that can be written without a tie.
fn value(length: Length) -> Option<String> {
    let (above, below) = (length.numerator(), length.denominator());
    (matches!(above, 1 | 3 | 7) && below <= 32).then(|| format!("{above}/{below}"))
}

/// Notes of a scale on an instrument, from a place drawn by chance where it lies well.
pub(super) struct Scale {
    root: i32,
}

impl Scale {
    pub(super) fn on(instrument: Instrument, random: &mut Random) -> Self {
        let octave = match instrument {
            Instrument::Violin => 5,
            Instrument::Viola | Instrument::OtherBowed | Instrument::NotBowed => 4,
            Instrument::Cello => 3,
            Instrument::Bass => 2,
        };
        Self { root: octave * 7 + i32::try_from(random.below(4)).unwrap_or(0) }
    }

    fn note(&self, step: i32) -> String {
        const NAMES: [&str; 7] = ["C", "D", "E", "F", "G", "A", "B"];
        let at = self.root + step;
        format!("{}{}", NAMES[usize::try_from(at.rem_euclid(7)).unwrap_or(0)], at.div_euclid(7))
    }

    /// A figure with its steps put on notes: `(0/4 2/8) r/4` becomes `(1/4 C5 1/8 E5) 1/4 rest`; chords are `<0+2>/4`, and
    /// what has no step in it stays.
    pub(super) fn figure(&self, figure: &str) -> String {
        let words = figure.split(' ').map(|word| {
            let steps = word.rfind([':', '(']).map_or(0, |at| at + 1);
            let (front, rest) = word.split_at(steps);
            let Some((step, behind)) = rest.split_once('/') else { return word.to_owned() };
            let note = match step.trim_matches(['<', '>']) {
                "r" => "rest".to_owned(),
                steps => {
                    let notes: Option<Vec<String>> =
                        steps.split('+').map(|step| Some(self.note(step.parse().ok()?))).collect();
                    let Some(notes) = notes else { return word.to_owned() };
                    notes.join("+")
                }
            };
            let marks = behind.trim_start_matches(|c: char| c.is_ascii_digit() || c == '.');
            let value = part_of_whole(&behind[..behind.len() - marks.len()]);
            // The number of a slur and a value are two things.
            let front = front.replace(':', " ");
            format!("{front}{value} {note}{marks}")
        });
        words.collect::<Vec<_>>().join(" ")
    }
}
