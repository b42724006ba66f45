//! From layers to a change sheet: what is compared, counted and laid out.

use std::collections::BTreeMap;

use arcata_languages::{Argument, SaidPlace, Saying, Wording};
use arcata_layer::{
    Address, Addresses, Entry, EntryState, HookSign, Layer, LayerDifference, LeftOut, Mark, NotReached,
    Question, Spot, compare,
};
use arcata_score::beats::beat_in_bar;
use arcata_score::places::beat_said;
use arcata_score::{BowDirection, ChordRole, Meter, NoteId, NoteKind, Score};

use super::changes::{self, OnPaper};
use super::view::{
    BarChanges, ChangeView, LayerHeading, LibrarianView, NotCarried, NotSpreadView, SectionCopying,
    SectionSheet, SheetInput, SheetSign, SheetView,
};
use super::words;

impl SheetView {
    /// Compares, counts and lays out by section and bar.
    #[must_use]
    pub fn new(input: &SheetInput<'_>) -> Self {
        let score = input.addresses.score();
        let mut maker = SheetMaker {
            input,
            score,
            spared: 0,
            sections: BTreeMap::new(),
            not_carried: Vec::new(),
            doubtful: Vec::new(),
        };
        maker.compare();
        let SheetMaker { sections, spared, not_carried, doubtful, .. } = maker;
        let sections: Vec<SectionSheet> = sections.into_values().collect();
        let librarian = LibrarianView {
            spared,
            not_carried,
            doubtful,
            not_spread: not_spread(&input.after.not_reached, &input.wording),
            ..librarian(input, &sections)
        };
        Self {
            work: score
                .title
                .clone()
                .or_else(|| input.after.score.title.clone())
                .unwrap_or_else(|| input.wording.word("sheet-untitled")),
            composer: score.composer.clone(),
            before: input.before.map(|layer| side(layer, &input.wording)),
            after: side(input.after, &input.wording),
            sections,
            librarian,
            wording: input.wording.clone(),
        }
    }

    /// Lists on the librarian's page what could not be put onto the score, such as a hook whose direction nothing
    /// says; what is listed there already stays as it is.
    pub fn leave_out(&mut self, left_out: &[LeftOut], addresses: &Addresses<'_>) {
        for LeftOut { entry, why } in left_out {
            let line = left(addresses, entry, self.wording.say(why), &self.wording);
            let listed = &mut self.librarian.not_carried;
            if !listed.iter().any(|known| (&known.place, &known.mark) == (&line.place, &line.mark)) {
                listed.push(line);
            }
        }
    }
}

fn side(layer: &Layer, wording: &Wording) -> LayerHeading {
    let known = [&layer.owner, &layer.ensemble, &layer.date];
    let known: Vec<&str> =
        known.into_iter().map(|text| text.trim()).filter(|text| !text.is_empty()).collect();
    let title = layer.title.trim();
    let title = if title.is_empty() { wording.word("sheet-untitled-layer") } else { title.to_owned() };
    LayerHeading { title, about: known.join(", ") }
}

/// What was not spread, by parts and reason, the bars put together.
fn not_spread(left: &[NotReached], wording: &Wording) -> Vec<NotSpreadView> {
    let mut found: Vec<(NotSpreadView, Vec<(u32, String)>)> = Vec::new();
    for left in left {
        let why = wording.say(&left.saying());
        let same = |known: &&mut (NotSpreadView, Vec<(u32, String)>)| {
            (&known.0.from, &known.0.part, &known.0.why) == (&left.from, &left.part, &why)
        };
        let bar = (left.bar_ordinal, left.bar.clone());
        if let Some((known, bars)) = found.iter_mut().find(same) {
            known.marks = known.marks.saturating_add(left.marks);
            bars.push(bar);
        } else {
            let (from, part) = (left.from.clone(), left.part.clone());
            found
                .push((NotSpreadView { from, part, bars: String::new(), marks: left.marks, why }, vec![bar]));
        }
    }
    found.into_iter().map(|(left, bars)| NotSpreadView { bars: stretches(bars), ..left }).collect()
}

/// "3, 5-9, 12": bars that follow each other put together.
fn stretches(mut bars: Vec<(u32, String)>) -> String {
    bars.sort();
    bars.dedup();
    let runs = bars.chunk_by(|one, other| one.0.checked_add(1) == Some(other.0));
    let words = runs.map(|run| match run {
        [only] => only.1.clone(),
        [first, .., last] => format!("{}-{}", first.1, last.1),
        [] => String::new(),
    });
    words.collect::<Vec<_>>().join(", ")
}

fn librarian(input: &SheetInput<'_>, sheets: &[SectionSheet]) -> LibrarianView {
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
        spared: 0,
        not_carried: Vec::new(),
        doubtful: Vec::new(),
        not_spread: Vec::new(),
        settings: input.settings.clone(),
    }
}

fn left(addresses: &Addresses<'_>, entry: &Entry, why: String, wording: &Wording) -> NotCarried {
    let mark = mark_said(addresses, entry, wording);
    NotCarried { place: words::address(addresses, &entry.place, wording), mark, why }
}

/// A mark with the ends of its slurs by bar and beat.
fn mark_said(addresses: &Addresses<'_>, entry: &Entry, wording: &Wording) -> String {
    let part = addresses.part(&entry.place.part);
    wording.say(&entry.mark.saying(|spot| words::spot(addresses, part, spot, wording)))
}

struct SheetMaker<'a> {
    input: &'a SheetInput<'a>,
    score: &'a Score,
    spared: u32,
    sections: BTreeMap<usize, SectionSheet>,
    not_carried: Vec<NotCarried>,
    doubtful: Vec<NotCarried>,
}

impl SheetMaker<'_> {
    fn compare(&mut self) {
        let after = self.input.after;
        for entry in &after.entries {
            if let Err(why) = self.input.addresses.find(&entry.place) {
                self.leave(entry, self.input.wording.say(&why.saying()));
            } else if entry.state == EntryState::LeftOut {
                self.leave(entry, self.input.wording.word("sheet-contradicts"));
            } else if let Some(doubt) = &entry.doubt {
                self.doubtful.push(left(self.input.addresses, entry, doubt.clone(), &self.input.wording));
            }
        }
        for orphan in &after.orphans {
            let why = self.input.wording.word("sheet-found-no-note");
            let why = orphan.doubt.as_ref().map_or_else(|| why.clone(), |reason| format!("{why}: {reason}"));
            self.leave(orphan, why);
        }
        // What was not applied never came into the parts: it is to be written now, and not to be taken off.
        let mut before = self.input.before.cloned().unwrap_or_default();
        before.entries.retain(|entry| entry.state != EntryState::LeftOut);
        for difference in compare(&before, after) {
            self.change(&difference);
        }
        let (addresses, wording) = (self.input.addresses, &self.input.wording);
        for conflict in &self.input.after.conflicts {
            let said = |entries: &[Entry]| -> String {
                let words = entries.iter().map(|entry| mark_said(addresses, entry, wording));
                let words: Vec<String> = words.collect();
                if words.is_empty() { wording.word("sheet-nothing") } else { words.join(", ") }
            };
            self.not_carried.push(NotCarried {
                place: words::address(addresses, &conflict.place, wording),
                mark: said(&conflict.first),
                why: wording.say(
                    &Saying::new("sheet-not-settled")
                        .quoting("first", &conflict.first_owner)
                        .quoting("wants", said(&conflict.first))
                        .quoting("second", &conflict.second_owner)
                        .quoting("other", said(&conflict.second)),
                ),
            });
        }
    }

    fn leave(&mut self, entry: &Entry, why: String) {
        self.not_carried.push(left(self.input.addresses, entry, why, &self.input.wording));
    }

    fn change(&mut self, difference: &LayerDifference) {
        let LayerDifference { place, question, before, after } = difference;
        let Ok(found) = self.input.addresses.find(place) else { return };
        if let [_, second, ..] = after.as_slice() {
            // Which of them is meant only a person can say.
            let (addresses, wording) = (self.input.addresses, &self.input.wording);
            let others: Vec<String> =
                after.iter().map(|entry| mark_said(addresses, entry, wording)).collect();
            let several = Saying::new("sheet-several").quoting("marks", others.join(", "));
            return self.leave(second, wording.say(&several));
        }
        let (before, after) = (before.first(), after.first());
        if after.is_some_and(|after| after.state == EntryState::LeftOut) {
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
        place: &Address,
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
            (_, true) => {
                (self.input.wording.say(&Saying::new("sheet-take-off").quoting("mark", say(was))), None)
            }
            (true, false) => (say(now), None),
            (false, false) => (say(now), Some(say(was))),
        };
        ChangeView {
            note,
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
            let place = Address { part: self.input.addresses.part_keys()[part].clone(), spot: spot.clone() };
            let found = self.input.addresses.find(&place);
            let there = found.map_or(bar, |found| self.score.parts[part].note(found.note).bar);
            let meter = self.score.parts[part].meter_at(there).cloned().unwrap_or_else(Meter::common);
            let beat = beat_in_bar(&meter, spot.offset);
            match there == bar {
                true => Argument::Beat(beat),
                false => SaidPlace::bar(&spot.bar).on_beat(beat).into(),
            }
        };
        self.input.wording.say(&match (paper, question) {
            (OnPaper::Nothing, _) => Saying::new("sheet-nothing"),
            (OnPaper::PrintedSlur, Question::Slur(end)) => Saying::new("printed-slur-to").with("to", to(end)),
            (OnPaper::PrintedSlur, _) => Saying::new("printed-slur"),
            (OnPaper::Mark(Mark::SlurMoved { to: end, new_from, new_to }), _) => {
                let until = to(new_to.as_ref().unwrap_or(end));
                match new_from {
                    None => Saying::new("mark-slur").with("to", until),
                    Some(from) => Saying::new("slur-from-to").with("from", to(from)).with("to", until),
                }
            }
            (OnPaper::Mark(mark), _) => mark.saying(to),
        })
    }

    fn beat(&self, part: usize, bar: u32, spot: &Spot) -> String {
        let meter = self.score.parts[part].meter_at(bar).cloned().unwrap_or_else(Meter::common);
        beat_said(beat_in_bar(&meter, spot.offset))
    }

    /// Says which of several notes is meant, where it is not the first.
    fn which(&self, part: usize, note: NoteId, spot: &Spot) -> Option<String> {
        let notes = &self.score.parts[part];
        if let Some(grace) = spot.grace {
            let said = Saying::new("which-grace").with("number", i64::from(grace));
            return Some(self.input.wording.say(&said));
        }
        let here = self.input.addresses.at(part, notes.note(note).bar, spot.offset);
        let mains = here.iter().filter(|id| {
            let other = notes.note(**id);
            other.kind == NoteKind::Ordinary && other.chord == ChordRole::Main && !other.pitch.is_rest()
        });
        let first = mains.min_by_key(|id| (notes.note(**id).voice, **id));
        (first != Some(&note)).then(|| {
            self.input.wording.say(&match spot.pitch {
                Some(pitch) => Saying::new("which-pitch").quoting("pitch", pitch.to_string()),
                None => Saying::new("which-voice").quoting("voice", &spot.voice),
            })
        })
    }

    fn add(&mut self, part: usize, note: NoteId, change: ChangeView) {
        let stands = self.input.stands.get(&part).copied().unwrap_or(1);
        let name = self.input.addresses.part_keys()[part].clone();
        let section = self.sections.entry(part).or_insert_with(|| SectionSheet {
            part,
            name,
            stands,
            to_write: 0,
            to_take_off: 0,
            bars: Vec::new(),
        });
        section.to_write += change.write;
        section.to_take_off += change.take_off;
        let index = self.score.parts[part].note(note).bar;
        let bar = &self.score.bars[index as usize];
        let movement = self.score.movement_of(index);
        let before = section.bars.last().map(|last| self.score.movement_of(last.index));
        let heading = self
            .score
            .movements
            .get(movement)
            .filter(|_| self.score.movements.len() > 1 && before != Some(movement));
        match section.bars.last_mut() {
            Some(last) if last.index == index => last.changes.push(change),
            _ => section.bars.push(BarChanges {
                index,
                bar: bar.label.clone(),
                movement: heading.map(|movement| movement.name().to_owned()),
                rehearsal: bar.rehearsal.clone(),
                changes: vec![change],
                music: None,
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
        // No bow mark stands on a note that a slur hooks to the one before.
        Mark::Hook { bow, sign: HookSign::Marks } | Mark::Retake { bow } => bow.map(of),
        _ => None,
    }
}
