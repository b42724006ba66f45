//! Cues: what a player hears before they come in after a long rest, in small notes above the rest that they count.
//!
//! A cue is taken from one line of another part: of the lines that sound through the last bars of the rest and move, the
//! highest, for that is the one that is heard (common practice). It is written for the reader: in their clef and
//! transposition, by whole octaves where it would lie far outside the staff. It is a cue in the file, too (`<cue/>`,
//! MusicXML 4.0), so that nobody takes it for the player's notes.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use arcata_score::{ChordRole, ClefSign, Length, Note, NoteKind, Part, Pitch, Score};
use arcata_xml::{Document, Element, Tag, escape};

use super::part::{Child, PartCopy};
use super::rests::is_silent;

/// Of a line's bars so many hundredths must sound, that it can be followed (rule of thumb).
const SOUNDING: i64 = 60;
/// Notes that begin in a cue at least: one long note says nothing (rule of thumb).
const ATTACKS: usize = 3;
/// From the middle line to the second ledger line, steps of the scale (by definition).
const FAR: i64 = 8;
/// Divisions of a quarter note at most: what fits in 15 bits, as standard MIDI files have it (a limit).
const FINEST: i64 = 1 << 15;
/// The voice of cues in the file: players' parts have fewer (a limit).
const VOICE: &str = "9";

/// What became of the long rests of a part.
#[derive(Clone, Debug, Default)]
pub(super) struct PartCues {
    /// First and last bar of each cue.
    pub(super) made: Vec<(u32, u32)>,
    /// Long rests without one: nobody plays a line that can be shown.
    pub(super) missing: Vec<(u32, u32)>,
}

/// How a house wants its cues.
#[derive(Clone, Copy, Debug)]
pub(super) struct CueWishes {
    /// Rests of so many bars want one.
    pub(super) after: i64,
    /// It has so many bars.
    pub(super) bars: i64,
}

/// Where cues come from and whom they are for.
#[derive(Clone, Copy, Debug)]
pub(super) struct CueMaker<'a> {
    pub(super) document: &'a Document,
    pub(super) score: &'a Score,
    /// The reader's part (index).
    pub(super) part: usize,
}

/// One voice of another part in the bars before an entry: its notes and rests, of chords the first.
#[derive(Debug)]
struct HeardLine<'a> {
    part: &'a Part,
    notes: Vec<&'a Note>,
    /// Of each, the highest note at its onset.
    top: Vec<Pitch>,
    /// Sum and count of what sounds, cents.
    height: i64,
    attacks: usize,
}

impl CueMaker<'_> {
    /// Puts cues into the copy of the reader's part.
    pub(super) fn enter(&self, copy: &mut PartCopy, wishes: CueWishes) -> PartCues {
        let mut cues = PartCues::default();
        let bars = u32::try_from(wishes.bars.max(1)).unwrap_or(1);
        for (first, last) in self.long_rests(copy, wishes.after) {
            let from = last.saturating_sub(bars - 1).max(first);
            match self.cue(copy, (from, last)) {
                Some(written) => {
                    written.into_iter().for_each(|(bar, cue)| put(copy, bar, cue));
                    cues.made.push((from, last));
                }
                None => cues.missing.push((first, last)),
            }
        }
        cues
    }

    fn reader(&self) -> &Part {
        &self.score.parts[self.part]
    }

    /// Rests of so many bars and more, that the reader ends by coming in.
    fn long_rests(&self, copy: &PartCopy, after: i64) -> Vec<(u32, u32)> {
        let reader = self.reader();
        let mut found = Vec::new();
        if reader.staves > 1 {
            return found;
        }
        let mut first: Option<u32> = None;
        for (number, bar) in (0_u32..).zip(&copy.bars) {
            let begins = self.score.movements.iter().any(|movement| *movement.bars.start() == number);
            first = first.filter(|_| !begins);
            if is_silent(self.score, reader, number) && bar.is_plain() {
                first.get_or_insert(number);
            } else if let Some(first) = first.take() {
                let enters = reader
                    .notes
                    .iter()
                    .any(|note| note.bar == number && note.kind != NoteKind::Cue && !note.pitch.is_rest());
                if enters && i64::from(number - first) >= after {
                    found.push((first, number - 1));
                }
            }
        }
        found
    }

    /// The children of each bar of the best cue.
    fn cue(&self, copy: &PartCopy, bars: (u32, u32)) -> Option<Vec<(u32, Vec<Child>)>> {
        let mut lines = self.lines(bars);
        // The highest first; of equal ones the upper part's.
        lines.sort_by_key(|line| std::cmp::Reverse((line.attacks >= ATTACKS, line.mean())));
        lines.iter().find_map(|line| self.written(copy, line, bars))
    }

    /// The lines of other parts that sound through the bars.
    fn lines(&self, (from, last): (u32, u32)) -> Vec<HeardLine<'_>> {
        let (start, end) = match (self.score.bars.get(from as usize), self.score.bars.get(last as usize)) {
            (Some(first), Some(last)) => (first.start, last.start + last.length),
            _ => return Vec::new(),
        };
        let mut lines = Vec::new();
        // By whole octaves only: other transpositions would want the reader's spelling of every note.
        let others = self.score.parts.iter().enumerate();
        let others = others.filter(|(index, part)| *index != self.part && part.transpose_cents % 1200 == 0);
        for (_, part) in others {
            let first = part.notes.partition_point(|note| note.bar < from);
            let here: Vec<&Note> = part.notes[first..].iter().take_while(|note| note.bar <= last).collect();
            let voices: BTreeSet<u16> = here.iter().map(|note| note.voice).collect();
            for voice in voices {
                let all = || here.iter().copied().filter(|note| note.voice == voice && note.on_page);
                let main = |note: &&Note| note.chord == ChordRole::Main && note.kind == NoteKind::Ordinary;
                let notes: Vec<&Note> = all().filter(main).collect();
                let top: Vec<Pitch> = notes
                    .iter()
                    .map(|note| {
                        let chord =
                            all().filter(|other| other.onset == note.onset && other.kind == note.kind);
                        chord.map(|note| note.pitch).max_by_key(|pitch| pitch.cents()).unwrap_or(note.pitch)
                    })
                    .collect();
                let sounds = notes.iter().zip(&top).filter(|(_, pitch)| pitch.cents().is_some());
                let share = sounds.clone().fold(Length::ZERO, |sum, (note, _)| sum + note.length);
                let enough = share.scaled(100, 1) >= (end - start).scaled(SOUNDING, 1);
                let is_last = |note: &&Note| note.bar == last && !note.pitch.is_rest();
                let plain = !top.contains(&Pitch::Unpitched)
                    && notes.windows(2).all(|pair| pair[0].onset + pair[0].length <= pair[1].onset);
                if enough && plain && notes.iter().any(is_last) {
                    let attacks = sounds.clone().count();
                    let height = sounds.filter_map(|(_, pitch)| pitch.cents()).map(i64::from).sum();
                    lines.push(HeardLine { part, notes, top, height, attacks });
                }
            }
        }
        lines
    }

    /// The line as small notes for the reader; none where its rhythm has no place among their divisions.
    fn written(
        &self,
        copy: &PartCopy,
        line: &HeardLine<'_>,
        (from, last): (u32, u32),
    ) -> Option<Vec<(u32, Vec<Child>)>> {
        let reader = self.reader();
        let middle = middle_of(reader, from);
        let octaves = line.octaves(reader, middle);
        let notations = line.notations(self.document);
        let mut bars = Vec::new();
        for bar in from..=last {
            let own = copy.bars.get(bar as usize)?.divisions;
            let divisions = line.divisions(bar, own)?;
            let units = |length: Length| {
                let scaled = length.scaled(divisions.checked_mul(4)?, 1);
                (scaled.denominator() == 1).then(|| scaled.numerator())
            };
            let fifths =
                reader.keys.iter().rev().find(|(begins, _)| *begins <= bar).map_or(0, |(_, key)| *key);
            let mut altered: BTreeMap<(i64, u8), i64> = BTreeMap::new();
            let start = self.score.bars.get(bar as usize)?.start;
            let mut at = start;
            let mut music = String::new();
            for (index, note) in line.notes.iter().enumerate().filter(|(_, note)| note.bar == bar) {
                let gap = units(note.onset - at)?;
                if gap > 0 {
                    let _ = write!(music, "<forward><duration>{gap}</duration></forward>");
                }
                let duration = units(note.length)?;
                at = note.onset + note.length;
                let Some(written) =
                    self.note(note, line.top[index], duration, (octaves, middle), &notations[index])
                else {
                    let _ = write!(music, "<forward><duration>{duration}</duration></forward>");
                    continue;
                };
                let accidental = accidental(line.top[index], octaves, fifths, &mut altered)
                    .filter(|_| !notations[index].contains(r#"<tied type="stop""#));
                music.push_str(&written.replace(ACCIDENTAL, accidental.unwrap_or_default()));
            }
            // The cue comes first, so that the engraver puts the reader's rest under it.
            let back = units(at - start)?;
            let mut source = String::new();
            if back > 0 {
                let says =
                    |divisions: i64| format!("<attributes><divisions>{divisions}</divisions></attributes>");
                let (finer, again) =
                    if divisions == own { <_>::default() } else { (says(divisions), says(own)) };
                source = format!("{finer}{music}<backup><duration>{back}</duration></backup>{again}");
            }
            let mut children = Vec::new();
            if bar == from {
                children.push(named(line.part, octaves - of_transposition(line.part, reader)));
            }
            children.push(Child { tag: Tag::NOTE, source, engraved: None, node: None, at: Length::ZERO });
            bars.push((bar, children));
        }
        Some(bars)
    }

    /// A note or rest of the cue; none where the source writes no value (a rest over a whole bar).
    fn note(
        &self,
        note: &Note,
        pitch: Pitch,
        duration: i64,
        (octaves, middle): (i64, i64),
        notations: &str,
    ) -> Option<String> {
        let element = self.document.element(note.node)?;
        let named = |name: &'static str| element.children().filter(move |child| child.name() == name);
        let value = named("type").next()?.text().trim().to_owned();
        let sounds = match pitch {
            Pitch::Pitched { step, alter, octave } => format!(
                "<pitch><step>{}</step>{}<octave>{}</octave></pitch>",
                STEPS.get(usize::from(step))?,
                if alter == 0 {
                    String::new()
                } else {
                    format!("<alter>{}</alter>", f64::from(alter) / 100.0)
                },
                i64::from(octave) + octaves
            ),
            // On the middle line, where the reader's own rest is not.
            _ => format!(
                "<rest><display-step>{}</display-step><display-octave>{}</display-octave></rest>",
                STEPS.get(usize::try_from(middle.rem_euclid(7)).ok()?)?,
                middle.div_euclid(7)
            ),
        };
        let mut out = format!(
            r#"<note><cue/>{sounds}<duration>{duration}</duration><voice>{VOICE}</voice><type size="cue">{value}</type>"#
        );
        named("dot").for_each(|_| out.push_str("<dot/>"));
        out.push_str(ACCIDENTAL);
        named("time-modification").for_each(|child| out.push_str(child.source()));
        named("beam").for_each(|child| out.push_str(child.source()));
        if !notations.is_empty() {
            let _ = write!(out, "<notations>{notations}</notations>");
        }
        out.push_str("</note>");
        Some(out)
    }
}

/// The letters of the scale.
const STEPS: [&str; 7] = ["C", "D", "E", "F", "G", "A", "B"];

/// Where a note's accidental goes, until it is known.
const ACCIDENTAL: &str = "<accidental/>";

impl HeardLine<'_> {
    fn mean(&self) -> i64 {
        let sounding = i64::try_from(self.attacks).unwrap_or(1).max(1);
        self.height / sounding + i64::from(self.part.transpose_cents)
    }

    /// Divisions of a quarter note, a multiple of the reader's own, in which all its lengths in a bar are whole numbers;
    /// none where that is out of all measure.
    fn divisions(&self, bar: u32, own: i64) -> Option<i64> {
        let notes = self.notes.iter().filter(|note| note.bar == bar);
        let lengths = notes.flat_map(|note| [note.length, note.onset.since_start()]);
        let mut divisions = own.max(1);
        for length in lengths {
            let left = length.scaled(divisions.checked_mul(4)?, 1).denominator();
            divisions = divisions.checked_mul(left).filter(|finer| *finer <= FINEST)?;
        }
        Some(divisions)
    }

    /// By how many octaves it is written higher for the reader than in its own part.
    fn octaves(&self, reader: &Part, middle: i64) -> i64 {
        let natural = of_transposition(self.part, reader);
        let places = || {
            self.top.iter().filter_map(|pitch| match pitch {
                Pitch::Pitched { step, octave, .. } => Some(i64::from(*step) + 7 * i64::from(*octave)),
                _ => None,
            })
        };
        let outside = |octaves: i64| {
            places().map(|place| ((place + 7 * octaves - middle).abs() - FAR).max(0)).sum::<i64>()
        };
        (-4..=4_i64)
            .map(|more| natural + more)
            .min_by_key(|octaves| (outside(*octaves), (octaves - natural).abs()))
            .unwrap_or(natural)
    }

    /// What stands with each note: tuplets, articulations, and of ties and slurs those with both ends in the cue.
    fn notations(&self, document: &Document) -> Vec<String> {
        let inner = |note: &Note| {
            let element = document.element(note.node).into_iter().flat_map(Element::children);
            let notations = element.filter(|child| child.name() == "notations");
            notations.flat_map(Element::children).collect::<Vec<_>>()
        };
        let all: Vec<Vec<Element<'_>>> = self.notes.iter().map(|note| inner(note)).collect();
        let is = |at: Option<&Vec<Element<'_>>>, what: &str, kind: &str| {
            at.is_some_and(|inner| {
                inner.iter().any(|element| {
                    element.name() == what && element.attribute("type").as_deref() == Some(kind)
                })
            })
        };
        let mut written: Vec<String> = Vec::new();
        let mut open: BTreeMap<String, usize> = BTreeMap::new();
        let mut slurs: Vec<(usize, usize)> = Vec::new();
        for (index, inner) in all.iter().enumerate() {
            let mut out = String::new();
            let before = index.checked_sub(1).and_then(|before| all.get(before));
            if is(Some(inner), "tied", "stop") && is(before, "tied", "start") {
                out.push_str(r#"<tied type="stop"/>"#);
            }
            if is(Some(inner), "tied", "start") && is(all.get(index + 1), "tied", "stop") {
                out.push_str(r#"<tied type="start"/>"#);
            }
            for kind in ["stop", "start"] {
                for slur in inner.iter().filter(|element| element.name() == "slur") {
                    let number = slur.attribute("number").map_or_else(String::new, |text| text.into_owned());
                    match (kind, slur.attribute("type").as_deref()) {
                        ("stop", Some("stop")) => {
                            slurs.extend(open.remove(&number).map(|start| (start, index)))
                        }
                        ("start", Some("start")) => {
                            open.insert(number, index);
                        }
                        _ => {}
                    }
                }
            }
            let plain = inner.iter().filter(|element| ["tuplet", "articulations"].contains(&element.name()));
            plain.for_each(|element| out.push_str(element.source()));
            written.push(out);
        }
        for (start, stop) in slurs {
            written[start].push_str(r#"<slur type="start" number="6"/>"#);
            written[stop].insert_str(0, r#"<slur type="stop" number="6"/>"#);
        }
        written
    }
}

/// Octaves that a part's notes are written higher for a reader, to sound alike.
fn of_transposition(part: &Part, reader: &Part) -> i64 {
    i64::from(part.transpose_cents - reader.transpose_cents).div_euclid(1200)
}

/// The middle line of the reader's staff in a bar, steps of the scale above C0.
fn middle_of(reader: &Part, bar: u32) -> i64 {
    let clef = reader.clefs.iter().rev().find(|clef| clef.bar <= bar && clef.staff <= 1);
    let Some(clef) = clef else { return 7 * 4 + 6 };
    let (on_line, usual) = match clef.sign {
        ClefSign::F => (7 * 3 + 3, 4),
        ClefSign::C => (7 * 4, 3),
        ClefSign::G | ClefSign::Other => (7 * 4 + 4, 2),
    };
    let line = if clef.line == 0 { usual } else { i64::from(clef.line) };
    on_line + 2 * (3 - line) + 7 * i64::from(clef.octaves)
}

/// The accidental that a note needs in its bar.
fn accidental(
    pitch: Pitch,
    octaves: i64,
    fifths: i8,
    altered: &mut BTreeMap<(i64, u8), i64>,
) -> Option<&'static str> {
    // F C G D A E B (by definition).
    const SHARPS: [u8; 7] = [3, 0, 4, 1, 5, 2, 6];
    let Pitch::Pitched { step, alter, octave } = pitch else { return None };
    let count = usize::from(fifths.unsigned_abs()).min(7);
    let key = match fifths {
        1.. if SHARPS[..count].contains(&step) => 100,
        ..=-1 if SHARPS[7 - count..].contains(&step) => -100,
        _ => 0,
    };
    let place = (i64::from(octave) + octaves, step);
    let holds = altered.get(&place).copied().unwrap_or(key);
    altered.insert(place, i64::from(alter));
    if holds == i64::from(alter) {
        return None;
    }
    match alter {
        0 => Some("<accidental>natural</accidental>"),
        100 => Some("<accidental>sharp</accidental>"),
        -100 => Some("<accidental>flat</accidental>"),
        200 => Some("<accidental>double-sharp</accidental>"),
        -200 => Some("<accidental>flat-flat</accidental>"),
        _ => None,
    }
}

/// Who plays, and where it sounds if it is written elsewhere (`moved`: octaves higher than it sounds).
fn named(part: &Part, moved: i64) -> Child {
    let sounds = match moved {
        0 => "",
        1 => " 8vb",
        -1 => " 8va",
        2.. => " 15mb",
        _ => " 15ma",
    };
    let name = part.name.split_whitespace().collect::<Vec<_>>().join(" ");
    let name = if name.is_empty() { part.id.clone() } else { name };
    let source = format!(
        r#"<direction placement="above"><direction-type><words font-style="italic">{}{sounds}</words></direction-type></direction>"#,
        escape(&name)
    );
    // A name that says something to players ("Solo") is for the eye only.
    let is_word = !arcata_score::words::meanings(&name).is_empty();
    let engraved = is_word.then(|| source.clone());
    let source = if is_word { String::new() } else { source };
    Child { tag: Tag::DIRECTION, source, engraved, node: None, at: Length::ZERO }
}

/// Puts what belongs to a cue into a bar: the name and the notes in front of the reader's rest.
fn put(copy: &mut PartCopy, bar: u32, cue: Vec<Child>) {
    let Some(bar) = copy.bars.get_mut(bar as usize) else { return };
    bar.is_cued = true;
    let at = bar.leading();
    bar.children.splice(at..at, cue);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pitch(step: u8, alter: i16) -> Pitch {
        Pitch::Pitched { step, alter, octave: 4 }
    }

    #[test]
    fn accidentals_are_those_of_the_readers_key_and_hold_through_the_bar() {
        let mut altered = BTreeMap::new();
        let mut sign = |step, alter, fifths| accidental(pitch(step, alter), 0, fifths, &mut altered);
        // In D major (two sharps): F sharp, F natural, F natural again, F sharp.
        assert_eq!(sign(3, 100, 2), None);
        assert_eq!(sign(3, 0, 2), Some("<accidental>natural</accidental>"));
        assert_eq!(sign(3, 0, 2), None);
        assert_eq!(sign(3, 100, 2), Some("<accidental>sharp</accidental>"));
        // In E flat major: B flat needs none, D flat does.
        assert_eq!(sign(6, -100, -3), None);
        assert_eq!(sign(1, -100, -3), Some("<accidental>flat</accidental>"));
    }
}
