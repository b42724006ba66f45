//! The change sheet as data.

use std::collections::{BTreeMap, BTreeSet};

use arcata_layer::{Addresses, Difference, Entry, Layer, Mark, Place, Question, Spot, State, compare};
use arcata_review::words::beat_text;
use arcata_score::beats::beat_in_bar;
use arcata_score::{BowDirection, ChordRole, Meter, NoteId, NoteKind, Score};

use super::changes::{self, OnPaper};
use super::settings::CopyingSettings;

/// What a change sheet is made from.
#[derive(Debug)]
pub struct SheetInput<'a> {
    /// The score, clean: without either layer on it.
    pub addresses: &'a Addresses<'a>,
    /// What stands in the parts now; `None` for parts as they were printed.
    pub before: Option<&'a Layer>,
    /// What shall stand in them.
    pub after: &'a Layer,
    /// Stands by part; one where a part is not named.
    pub stands: BTreeMap<usize, u32>,
    /// What the estimate rests on.
    pub settings: CopyingSettings,
    /// Down- and up-bows that are not to be written, because they come anyway.
    pub spared: BTreeSet<(usize, NoteId)>,
    /// What an earlier step could not carry over or spread, besides what this score has no note for.
    pub not_carried: Vec<NotCarried>,
}

/// A change sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetView {
    /// Title of the work.
    pub work: String,
    /// Composer.
    pub composer: Option<String>,
    /// What the parts hold now.
    pub before: Option<Side>,
    /// What they shall hold.
    pub after: Side,
    /// A page each: sections with something to write, in score order.
    pub sections: Vec<SectionSheet>,
    /// The librarian's page.
    pub librarian: LibrarianView,
}

/// A layer as a heading names it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Side {
    /// Its title.
    pub title: String,
    /// Owner, ensemble and date, as far as they are known.
    pub about: String,
}

/// One section's page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SectionSheet {
    /// The section.
    pub name: String,
    /// Stands that need the marks.
    pub stands: u32,
    /// Marks to write into one part.
    pub to_write: u32,
    /// Marks to take off one part.
    pub to_take_off: u32,
    /// Bars with changes, in order.
    pub bars: Vec<BarChanges>,
}

/// What changes in a bar.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BarChanges {
    /// The bar as printed.
    pub bar: String,
    /// A rehearsal mark at its start.
    pub rehearsal: Option<String>,
    /// The changes, in order.
    pub changes: Vec<ChangeView>,
}

/// How a section's page is read.
pub(super) const KEY: &str = "Bars in bold, then the beat.";

impl BarChanges {
    /// The changes with their beats, each beat said once.
    pub(super) fn with_beats(&self) -> impl Iterator<Item = (&ChangeView, &str)> {
        self.changes.iter().enumerate().map(|(index, change)| {
            let before = index.checked_sub(1).map(|before| self.changes[before].beat.as_str());
            (change, if before == Some(change.beat.as_str()) { "" } else { change.beat.as_str() })
        })
    }
}

/// One change at one note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ChangeView {
    /// The beat as it is said.
    pub beat: String,
    /// The sign to write, where there is one.
    pub sign: Option<SheetSign>,
    /// What to write, or what to take off.
    pub words: String,
    /// What stood there, where something else is written now.
    pub was: Option<String>,
    /// Which note, where several begin there.
    pub which: Option<String>,
    /// Signs to write.
    pub write: u32,
    /// Signs to take off.
    pub take_off: u32,
}

/// A sign of the trade.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SheetSign {
    /// Down-bow.
    Down,
    /// Up-bow.
    Up,
}

/// The librarian's page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LibrarianView {
    /// Copying, section by section; sections without changes too.
    pub sections: Vec<SectionCopying>,
    /// Marks in all parts on all stands.
    pub marks: u64,
    /// Seconds for all of it.
    pub seconds: u64,
    /// Marks of the layer that are not written because they come anyway.
    pub spared: u32,
    /// What could not be brought into the parts, and why.
    pub not_carried: Vec<NotCarried>,
    /// What the estimate rests on, with reason, source and status.
    pub settings: CopyingSettings,
}

/// The copying of one section.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SectionCopying {
    /// The section.
    pub name: String,
    /// Stands.
    pub stands: u32,
    /// Marks to write into one part.
    pub to_write: u32,
    /// Marks to take off one part.
    pub to_take_off: u32,
    /// Marks on all stands.
    pub marks: u64,
    /// Seconds for all stands.
    pub seconds: u64,
}

/// A decision that is in no part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotCarried {
    /// Where it was meant.
    pub place: String,
    /// What it is.
    pub mark: String,
    /// Why it is in no part.
    pub why: String,
}

impl SheetView {
    /// Compares, counts and lays out by section and bar.
    #[must_use]
    pub fn new(input: &SheetInput<'_>) -> Self {
        let score = input.addresses.score();
        let mut maker = Maker { input, score, spared: 0, sections: BTreeMap::new(), not_carried: Vec::new() };
        maker.compare();
        let sections: Vec<SectionSheet> = maker.sections.into_values().collect();
        let librarian = librarian(input, &sections, maker.spared, maker.not_carried);
        Self {
            work: score
                .title
                .clone()
                .or_else(|| input.after.score.title.clone())
                .unwrap_or_else(|| "Untitled".into()),
            composer: score.composer.clone(),
            before: input.before.map(side),
            after: side(input.after),
            sections,
            librarian,
        }
    }

    /// What the parts hold now, in words.
    #[must_use]
    pub fn before_words(&self) -> String {
        self.before.as_ref().map_or_else(|| "the parts as printed".to_owned(), Side::words)
    }
}

impl Side {
    /// Title and what is known of it.
    #[must_use]
    pub fn words(&self) -> String {
        if self.about.is_empty() { self.title.clone() } else { format!("{} ({})", self.title, self.about) }
    }
}

fn side(layer: &Layer) -> Side {
    let known = [&layer.owner, &layer.ensemble, &layer.date];
    let known: Vec<&str> =
        known.into_iter().map(|text| text.trim()).filter(|text| !text.is_empty()).collect();
    let title = if layer.title.trim().is_empty() { "untitled layer" } else { layer.title.trim() };
    Side { title: title.to_owned(), about: known.join(", ") }
}

fn librarian(
    input: &SheetInput<'_>,
    sheets: &[SectionSheet],
    spared: u32,
    not_carried: Vec<NotCarried>,
) -> LibrarianView {
    let score = input.addresses.score();
    let each = u64::try_from(input.settings.seconds_a_mark.value).unwrap_or(0);
    let sections: Vec<SectionCopying> = (0..score.parts.len())
        .filter_map(|part| {
            let name = &input.addresses.part_keys()[part];
            let sheet = sheets.iter().find(|sheet| sheet.name == *name);
            if sheet.is_none() && !score.parts[part].instrument.is_bowed() {
                return None;
            }
            let (to_write, to_take_off) = sheet.map_or((0, 0), |sheet| (sheet.to_write, sheet.to_take_off));
            let stands = input.stands.get(&part).copied().unwrap_or(1);
            let marks = (u64::from(to_write) + u64::from(to_take_off)) * u64::from(stands);
            let seconds = marks * each;
            Some(SectionCopying { name: name.clone(), stands, to_write, to_take_off, marks, seconds })
        })
        .collect();
    LibrarianView {
        marks: sections.iter().map(|section| section.marks).sum(),
        seconds: sections.iter().map(|section| section.seconds).sum(),
        sections,
        spared,
        not_carried,
        settings: input.settings.clone(),
    }
}

struct Maker<'a> {
    input: &'a SheetInput<'a>,
    score: &'a Score,
    spared: u32,
    sections: BTreeMap<usize, SectionSheet>,
    not_carried: Vec<NotCarried>,
}

impl Maker<'_> {
    fn compare(&mut self) {
        let after = self.input.after;
        for entry in &after.entries {
            if let Err(why) = self.input.addresses.find(&entry.place) {
                self.leave(entry, why.to_string());
            } else if entry.state == State::LeftOut {
                let why = "left out when the layer was applied, because it contradicts the score or another \
                           entry; arcata layer check says which";
                self.leave(entry, why.into());
            }
        }
        for orphan in &after.orphans {
            self.leave(orphan, "it found no note when the layer was carried over to this score".into());
        }
        let nothing = Layer::default();
        for difference in compare(self.input.before.unwrap_or(&nothing), after) {
            self.change(&difference);
        }
        for conflict in &self.input.after.conflicts {
            let said = |entries: &[Entry]| -> String {
                let words: Vec<String> = entries.iter().map(|entry| entry.mark.words()).collect();
                if words.is_empty() { "nothing".into() } else { words.join(", ") }
            };
            self.not_carried.push(NotCarried {
                place: conflict.place.to_string(),
                mark: said(&conflict.first),
                why: format!(
                    "not decided: {} wants {}, {} wants {}",
                    conflict.first_owner,
                    said(&conflict.first),
                    conflict.second_owner,
                    said(&conflict.second)
                ),
            });
        }
        self.not_carried.extend(self.input.not_carried.iter().cloned());
    }

    fn leave(&mut self, entry: &Entry, why: String) {
        let (place, mark) = (entry.place.to_string(), entry.mark.words());
        self.not_carried.push(NotCarried { place, mark, why });
    }

    fn change(&mut self, difference: &Difference) {
        let Difference { place, question, before, after } = difference;
        let Ok(found) = self.input.addresses.find(place) else { return };
        if let [_, second, ..] = after.as_slice() {
            // Which of them is meant only a person can say.
            let others: Vec<String> = after.iter().map(|entry| entry.mark.words()).collect();
            return self.leave(second, format!("the layer says several things here: {}", others.join(", ")));
        }
        let (before, after) = (before.first(), after.first());
        if after.is_some_and(|after| after.state == State::LeftOut) {
            return;
        }
        let printed = self.score.parts[found.part].note(found.note).bow_mark.map(|mark| mark.direction);
        let is_spared = after.filter(|after| {
            matches!(after.mark, Mark::Down | Mark::Up)
                && self.input.spared.contains(&(found.part, found.note))
        });
        let (was, now) = match (question, is_spared) {
            // What stands there already is left: taking it off would be work for nothing.
            (Question::Bow, Some(entry))
                if changes::bow(before, printed) != OnPaper::Mark(entry.mark.clone()) =>
            {
                self.spared += 1;
                (changes::bow(before, printed), changes::spared(&entry.mark, printed))
            }
            (Question::Bow, _) => (changes::bow(before, printed), changes::bow(after, printed)),
            (Question::Slur(_), _) => (changes::slur(before, after), changes::slur(after, before)),
            _ => (changes::other(before), changes::other(after)),
        };
        if was == now {
            return;
        }
        let change = self.described(found.part, found.note, place, &was, &now, question);
        self.add(found.part, found.note, change);
    }

    fn described(
        &self,
        part: usize,
        note: NoteId,
        place: &Place,
        was: &OnPaper,
        now: &OnPaper,
        question: &Question,
    ) -> ChangeView {
        let written = self.score.parts[part].note(note);
        let say = |paper: &OnPaper| self.words(part, written.bar, paper, question);
        let sign = match now {
            OnPaper::Mark(mark) => sign(mark),
            _ => None,
        };
        let (words, was_words) = match (was.is_nothing(), now.is_nothing()) {
            (_, true) => (format!("take off: {}", say(was)), None),
            (true, false) => (say(now), None),
            (false, false) => (say(now), Some(say(was))),
        };
        ChangeView {
            beat: self.beat(part, written.bar, &place.spot),
            sign,
            words,
            was: was_words,
            which: self.which(part, note, &place.spot),
            write: u32::from(!now.is_nothing()),
            take_off: u32::from(!was.is_nothing()),
        }
    }

    fn words(&self, part: usize, bar: u32, paper: &OnPaper, question: &Question) -> String {
        let to = |spot: &Spot| {
            let place = Place { part: self.input.addresses.part_keys()[part].clone(), spot: spot.clone() };
            let found = self.input.addresses.find(&place);
            let there = found.map_or(bar, |found| self.score.parts[part].note(found.note).bar);
            let beat = self.beat(part, there, spot);
            if there == bar { format!("beat {beat}") } else { format!("bar {}, beat {beat}", spot.bar) }
        };
        match (paper, question) {
            (OnPaper::Nothing, _) => "nothing".to_owned(),
            (OnPaper::PrintedSlur, Question::Slur(end)) => format!("the printed slur to {}", to(end)),
            (OnPaper::PrintedSlur, _) => "the printed slur".to_owned(),
            (OnPaper::Mark(Mark::SlurAdded { to: end }), _) => format!("slur to {}", to(end)),
            (OnPaper::Mark(Mark::SlurMoved { to: end, new_from, new_to }), _) => {
                let from = new_from.as_ref().map_or(String::new(), |spot| format!("from {} ", to(spot)));
                format!("slur {from}to {}", to(new_to.as_ref().unwrap_or(end)))
            }
            (OnPaper::Mark(mark), _) => mark.words(),
        }
    }

    fn beat(&self, part: usize, bar: u32, spot: &Spot) -> String {
        let meter = self.score.parts[part].meter_at(bar).cloned().unwrap_or_else(Meter::common);
        beat_text(beat_in_bar(&meter, spot.offset))
    }

    /// Says which of several notes is meant, where it is not the first.
    fn which(&self, part: usize, note: NoteId, spot: &Spot) -> Option<String> {
        let notes = &self.score.parts[part];
        if let Some(grace) = spot.grace {
            return Some(format!("grace note {grace}"));
        }
        let here = self.input.addresses.at(part, notes.note(note).bar, spot.offset);
        let mains = here.iter().filter(|id| {
            let other = notes.note(**id);
            other.kind == NoteKind::Ordinary && other.chord == ChordRole::Main && !other.pitch.is_rest()
        });
        let first = mains.min_by_key(|id| (notes.note(**id).voice, **id));
        (first != Some(&note)).then(|| match spot.pitch {
            Some(pitch) => format!("on {pitch}"),
            None => format!("voice {}", spot.voice),
        })
    }

    fn add(&mut self, part: usize, note: NoteId, change: ChangeView) {
        let stands = self.input.stands.get(&part).copied().unwrap_or(1);
        let name = self.input.addresses.part_keys()[part].clone();
        let section = self.sections.entry(part).or_insert_with(|| SectionSheet {
            name,
            stands,
            to_write: 0,
            to_take_off: 0,
            bars: Vec::new(),
        });
        section.to_write += change.write;
        section.to_take_off += change.take_off;
        let bar = &self.score.bars[self.score.parts[part].note(note).bar as usize];
        match section.bars.last_mut() {
            Some(last) if last.bar == bar.label => last.changes.push(change),
            _ => section.bars.push(BarChanges {
                bar: bar.label.clone(),
                rehearsal: bar.rehearsal.clone(),
                changes: vec![change],
            }),
        }
    }
}

fn sign(mark: &Mark) -> Option<SheetSign> {
    let of = |bow: BowDirection| match bow {
        BowDirection::Down => SheetSign::Down,
        BowDirection::Up => SheetSign::Up,
    };
    match mark {
        Mark::Down => Some(SheetSign::Down),
        Mark::Up => Some(SheetSign::Up),
        Mark::Hook { bow } | Mark::Retake { bow } => bow.map(of),
        _ => None,
    }
}

/// "35 min", "2 h 5 min"; whole minutes, rounded up.
#[must_use]
pub(super) fn time_words(seconds: u64) -> String {
    let minutes = seconds.div_ceil(60);
    match (minutes / 60, minutes % 60) {
        (0, minutes) => format!("{minutes} min"),
        (hours, 0) => format!("{hours} h"),
        (hours, minutes) => format!("{hours} h {minutes} min"),
    }
}

/// "1 mark", "3 marks".
pub(super) fn counted(count: u64, one: &str) -> String {
    if count == 1 { format!("1 {one}") } else { format!("{count} {one}s") }
}
