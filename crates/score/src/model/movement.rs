//! Movements: stretches of bars that begin afresh.

use std::ops::{Range, RangeInclusive};

use crate::beats::beat_in_bar;
use crate::places;
use crate::words::from_roman;
use crate::{
    ClefChange, Dynamic, DynamicKind, Length, Meter, Moment, Note, NoteId, Part, Place, Score, TieEnd,
};

/// A movement of the file. The bow, dynamics, states, tempo and repeats begin afresh with it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Movement {
    /// Its bars, by index.
    pub bars: RangeInclusive<u32>,
    /// Its number as people say it: the Roman one of the heading, else that of its place in the file.
    pub number: String,
    /// The heading as printed (`"III. Notturno"`), when there is one.
    pub heading: Option<String>,
}

impl Movement {
    /// The number as a Roman numeral, as it is typed at the head of a line.
    #[must_use]
    pub fn numeral(&self) -> String {
        places::numeral(&self.number)
    }

    /// The heading as printed, else the number.
    #[must_use]
    pub fn name(&self) -> &str {
        self.heading.as_deref().unwrap_or(&self.number)
    }
}

/// Where a movement begins in the lists of the whole score: what is said of the movement alone is said of the whole
/// score by adding these.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Beginning {
    /// Index of its first bar.
    pub bar: u32,
    /// When it begins.
    pub time: Length,
    /// For each part, the index of its first note.
    pub notes: Vec<u32>,
    /// For each part, the index of its first slur.
    pub slurs: Vec<usize>,
}

impl Beginning {
    /// A moment of the movement in the whole score.
    #[must_use]
    pub fn moment(&self, moment: Moment) -> Moment {
        moment + self.time
    }

    /// A moment of the whole score in the movement.
    #[must_use]
    pub fn moment_alone(&self, moment: Moment) -> Moment {
        moment - self.time
    }

    /// A note of the movement in the whole score.
    #[must_use]
    pub fn note(&self, part: usize, note: NoteId) -> NoteId {
        NoteId(note.0 + self.notes.get(part).copied().unwrap_or(0))
    }

    /// A note of the whole score in the movement; its first one for a note before it.
    #[must_use]
    pub fn note_alone(&self, part: usize, note: NoteId) -> NoteId {
        NoteId(note.0.saturating_sub(self.notes.get(part).copied().unwrap_or(0)))
    }
}

impl Score {
    /// The index of the movement that holds a bar.
    #[must_use]
    pub fn movement_of(&self, bar: u32) -> usize {
        self.movements.partition_point(|movement| *movement.bars.start() <= bar).saturating_sub(1)
    }

    /// The number of the movement that holds a bar, where the file has several; else nothing, for nobody says it then.
    #[must_use]
    pub fn movement_said(&self, bar: u32) -> Option<&str> {
        if self.movements.len() < 2 {
            return None;
        }
        self.movements.get(self.movement_of(bar)).map(|movement| movement.number.as_str())
    }

    /// The movement that somebody names: by its number (`"II"`, in small letters too), by its place in the file (`"2"`),
    /// or by its heading or the beginning of it, where one alone is called so without the number, too.
    ///
    /// ```
    /// # use arcata_score::{Movement, Score};
    /// let named = |number: &str, heading: &str| Movement {
    ///     bars: 0..=0,
    ///     number: number.to_owned(),
    ///     heading: Some(heading.to_owned()),
    /// };
    /// let movements = vec![named("I", "I. Prelude"), named("III", "III. Air")];
    /// let score = Score { movements, ..Score::default() };
    /// assert_eq!(["iii", "2", "III. Air", "air", "II"].map(|name| score.movement_named(name)), [Some(1), Some(1), Some(1), Some(1), None]);
    /// ```
    #[must_use]
    pub fn movement_named(&self, asked: &str) -> Option<usize> {
        let asked = asked.trim().trim_end_matches('.').to_lowercase();
        if asked.is_empty() {
            return None;
        }
        let found = |test: &dyn Fn(&Movement) -> bool| self.movements.iter().position(test);
        let place = || asked.parse::<usize>().ok().and_then(|place| place.checked_sub(1));
        // A movement headed "2. Menuet" may be called II.
        let plain = from_roman(&asked.to_uppercase()).map(|number| number.to_string());
        found(&|movement| movement.number.to_lowercase() == asked)
            .or_else(|| found(&|movement| plain.as_ref() == Some(&movement.number)))
            .or_else(|| place().filter(|place| *place < self.movements.len()))
            .or_else(|| {
                found(&|movement| {
                    // "II" is no beginning of "III. Air".
                    let heading = movement.heading.as_ref().map(|heading| heading.to_lowercase());
                    let rest = heading.as_ref().and_then(|heading| heading.strip_prefix(asked.as_str()));
                    rest.is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
                })
            })
            .or_else(|| self.movement_headed(&asked))
    }

    /// The one movement whose heading begins so behind its number: "romanze" for "II. Romanze".
    fn movement_headed(&self, asked: &str) -> Option<usize> {
        let is_so = |movement: &Movement| {
            let heading = movement.heading.as_deref().unwrap_or_default().to_lowercase();
            let (first, name) =
                heading.split_once(|letter: char| !letter.is_alphanumeric()).unwrap_or_default();
            let is_number = from_roman(&first.to_uppercase()).is_some() || first.parse::<u32>().is_ok();
            let name = name.trim_start_matches(|letter: char| !letter.is_alphanumeric());
            is_number && name.strip_prefix(asked).is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
        };
        let mut named = (0..).zip(&self.movements).filter(|(_, movement)| is_so(movement));
        let (found, _) = named.next()?;
        named.next().is_none().then_some(found)
    }

    /// The last printed number of each movement, in a sentence: `"the last one is 84"`, `"the last ones are 260 (I), 96
    /// (II)"`.
    #[must_use]
    pub fn last_bars_said(&self) -> String {
        let last = |movement: &Movement| {
            let numbered = |bar: &u32| self.bar_label(*bar).parse::<u32>().is_ok();
            let last = movement.bars.clone().rev().find(numbered).unwrap_or(*movement.bars.end());
            self.bar_label(last).to_owned()
        };
        match self.movements.as_slice() {
            [] => "it has no bars".to_owned(),
            [one] => format!("the last one is {}", last(one)),
            several => {
                let each = several.iter().map(|one| format!("{} ({})", last(one), one.number));
                format!("the last ones are {}", each.collect::<Vec<_>>().join(", "))
            }
        }
    }

    /// A bar's printed number; empty for a bar that is not there.
    #[must_use]
    pub fn bar_label(&self, bar: u32) -> &str {
        self.bars.get(bar as usize).map_or("", |bar| bar.label.as_str())
    }

    /// A bar as people say it: `"bar 17"`, and `"II, bar 17"` in a file of several movements. `word` is what a bar
    /// is called.
    ///
    /// ```
    /// # use arcata_score::Score;
    /// assert_eq!(Score::default().bar_said("bar", 0), "bar \"\"", "a bar that is not there has no number");
    /// ```
    #[must_use]
    pub fn bar_said(&self, word: &str, bar: u32) -> String {
        places::bar_said(word, self.movement_said(bar), self.bar_label(bar))
    }

    /// The beat, from 1, at an offset of a bar by a part's metre.
    #[must_use]
    pub fn beat_at(&self, part: usize, bar: u32, offset: Length) -> Length {
        let meter = self.parts.get(part).and_then(|part| part.meter_at(bar));
        meter.map_or_else(|| beat_in_bar(&Meter::common(), offset), |meter| beat_in_bar(meter, offset))
    }

    /// A movement as a score of its own, as if the file held nothing else: bars, notes and slurs are counted from
    /// its beginning, signatures and clefs in force are stated in its first bar, and whatever leads across its ends
    /// is cut off. Elements keep their place in the file. `None` where there is no such movement.
    #[must_use]
    pub fn movement_alone(&self, movement: usize) -> Option<(Self, Beginning)> {
        let bars = self.movements.get(movement)?.bars.clone();
        self.cut_out(bars, movement, CutOpens::Afresh)
    }

    /// Some bars of a movement as a score of its own, cut out as [`Self::movement_alone`] cuts; the words and the dynamic in
    /// force at the first of them stand at its beginning. Tempos are those inside alone: what was in force before is a
    /// matter of seconds. `None` where the score has no such bars.
    ///
    /// ```
    /// let music = arcata_testkit::musicxml("viola: p \"pizz.\" 1/4 C4 D4 sf E4 F4 | 1/1 G4 | 1/1 A4");
    /// let document = arcata_xml::Document::parse(music.into_bytes(), &Default::default())?;
    /// let (bars, beginning) = arcata_score::read(&document).excerpt(1..=2).unwrap();
    /// assert_eq!((bars.bars.len(), bars.parts[0].notes.len(), beginning.notes[0]), (2, 2, 4));
    /// assert_eq!((bars.parts[0].instructions.len(), bars.parts[0].dynamics.len()), (1, 1), "still plucked, still soft");
    /// assert_eq!(bars.parts[0].dynamics[0].kind, arcata_score::DynamicKind::Level(arcata_score::Level::P));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn excerpt(&self, bars: RangeInclusive<u32>) -> Option<(Self, Beginning)> {
        let movement = self.movement_of(*bars.start());
        let end = self.movements.get(movement).map_or(*bars.end(), |movement| *movement.bars.end());
        self.cut_out(*bars.start()..=(*bars.end()).min(end), movement, CutOpens::InForce)
    }

    fn cut_out(
        &self,
        bars: RangeInclusive<u32>,
        movement: usize,
        opens: CutOpens,
    ) -> Option<(Self, Beginning)> {
        let (first, last) = (*bars.start(), *bars.end());
        let (begin, end) = (self.bars.get(first as usize)?, self.bars.get(last as usize)?);
        let whole = self.movements.get(movement);
        let in_force = match opens {
            CutOpens::Afresh => first..first,
            CutOpens::InForce => whole.map_or(0, |movement| *movement.bars.start())..first,
        };
        let cut = Cut { first, last, begin: begin.start, end: end.start + end.length, in_force };
        let shared = self.bars.get(first as usize..=last as usize)?.iter().cloned();
        let movement = Movement {
            bars: 0..=last - first,
            number: whole.map_or_else(String::new, |movement| movement.number.clone()),
            heading: whole.and_then(|movement| movement.heading.clone()),
        };
        let mut alone = Self {
            title: self.title.clone(),
            composer: self.composer.clone(),
            bars: shared.collect(),
            movements: vec![movement],
            ..Self::default()
        };
        for bar in &mut alone.bars {
            bar.start = cut.moment(bar.start);
        }
        let mut beginning = Beginning { bar: first, time: begin.start.since_start(), ..Beginning::default() };
        for part in &self.parts {
            let (part, notes, slurs) = cut.part(part);
            alone.parts.push(part);
            beginning.notes.push(notes);
            beginning.slurs.push(slurs);
        }
        alone.tempos.clone_from(&self.tempos);
        alone.tempos.retain_mut(|tempo| cut.place(&mut tempo.place));
        alone.problems.clone_from(&self.problems);
        alone.problems.retain_mut(|problem| match &mut problem.bar {
            Some(bar) if bars.contains(bar) => {
                *bar -= first;
                true
            }
            Some(_) => false,
            None => true,
        });
        Some((alone, beginning))
    }
}

/// How bars that are cut out begin.
#[derive(Clone, Copy, Debug)]
enum CutOpens {
    /// As if nothing had been said before.
    Afresh,
    /// With what is in force.
    InForce,
}

/// Some bars, and their time.
struct Cut {
    first: u32,
    last: u32,
    begin: Moment,
    end: Moment,
    /// Bars before whose words and dynamic hold at the beginning.
    in_force: Range<u32>,
}

impl Cut {
    fn moment(&self, moment: Moment) -> Moment {
        Moment(moment.min(self.end) - self.begin).max(Moment::START)
    }

    /// Counts a place from the beginning; whether it stands in the movement.
    fn place(&self, place: &mut Place) -> bool {
        let inside = (self.first..=self.last).contains(&place.bar);
        if inside {
            place.bar -= self.first;
            place.at = self.moment(place.at);
        }
        inside
    }

    /// A part's share, with the indices of its first note and slur.
    fn part(&self, part: &Part) -> (Part, u32, usize) {
        let from = part.notes.partition_point(|note| note.bar < self.first);
        let to = part.notes.partition_point(|note| note.bar <= self.last);
        let inside = |note: NoteId| (from..to).contains(&(note.0 as usize));
        let counted = |note: NoteId| NoteId(note.0 - from as u32);
        let first_slur = part.slurs.iter().position(|slur| inside(slur.start)).unwrap_or(part.slurs.len());
        let slurs = part.slurs.iter().filter(|slur| inside(slur.start) && inside(slur.end)).map(|slur| {
            let mut slur = *slur;
            (slur.start, slur.end) = (counted(slur.start), counted(slur.end));
            slur
        });
        let open = part.open_slurs.iter().filter(|open| inside(open.note)).map(|open| {
            let mut open = *open;
            open.note = counted(open.note);
            open
        });
        let mut alone = Part {
            id: part.id.clone(),
            name: part.name.clone(),
            abbreviation: part.abbreviation.clone(),
            instrument: part.instrument,
            players: part.players,
            transpose_cents: part.transpose_cents,
            staves: part.staves,
            voices: part.voices.clone(),
            notes: part.notes[from..to].iter().map(|note| self.note(note, (from, to))).collect(),
            slurs: slurs.collect(),
            open_slurs: open.collect(),
            dynamics: part.dynamics.clone(),
            swells: part.swells.clone(),
            instructions: part.instructions.clone(),
            meters: self.in_force(&part.meters),
            keys: self.in_force(&part.keys),
            clefs: self.clefs(&part.clefs),
            measures: part
                .measures
                .get(self.first as usize..=self.last as usize)
                .map_or_else(Vec::new, <[_]>::to_vec),
        };
        if alone.meters.is_empty() {
            alone.meters.push((0, Meter::common()));
        }
        let said = |place: &Place| self.in_force.contains(&place.bar);
        // Of each staff the last level holds; an accent was over with its note.
        let levels = alone.dynamics.iter().filter(|dynamic| said(&dynamic.place));
        let mut in_force: Vec<Dynamic> = Vec::new();
        for (dynamic, level) in levels.filter_map(|dynamic| Some((dynamic, dynamic.kind.lasting()?))) {
            in_force.retain(|known| known.place.staff != dynamic.place.staff);
            let place = Place { bar: 0, at: Moment::START, ..dynamic.place };
            in_force.push(Dynamic { place, kind: DynamicKind::Level(level) });
        }
        alone.dynamics.retain_mut(|dynamic| self.place(&mut dynamic.place));
        alone.dynamics.splice(..0, in_force);
        alone.instructions.retain_mut(|instruction| {
            if said(&instruction.place) {
                (instruction.place.bar, instruction.place.at) = (0, Moment::START);
                return true;
            }
            self.place(&mut instruction.place)
        });
        alone.swells.retain_mut(|swell| {
            swell.end = swell.end.map(|end| self.moment(end));
            self.place(&mut swell.place)
        });
        (alone, from as u32, first_slur)
    }

    fn note(&self, note: &Note, (from, to): (usize, usize)) -> Note {
        let mut alone = note.clone();
        alone.bar -= self.first;
        alone.onset = Moment(note.onset - self.begin);
        for end in [&mut alone.tie.from_before, &mut alone.tie.to_after] {
            if let TieEnd::Joined(partner) = *end {
                let inside = (from..to).contains(&(partner.0 as usize));
                *end = if inside { TieEnd::Joined(NoteId(partner.0 - from as u32)) } else { TieEnd::Open };
            }
        }
        alone
    }

    /// What holds from bar to bar, with what is in force at the beginning.
    fn in_force<T: Clone>(&self, changes: &[(u32, T)]) -> Vec<(u32, T)> {
        let before = changes.iter().rev().find(|(bar, _)| *bar <= self.first);
        let inside = changes.iter().filter(|(bar, _)| (self.first + 1..=self.last).contains(bar));
        before
            .map(|(_, value)| (0, value.clone()))
            .into_iter()
            .chain(inside.map(|(bar, value)| (bar - self.first, value.clone())))
            .collect()
    }

    fn clefs(&self, clefs: &[ClefChange]) -> Vec<ClefChange> {
        let mut alone: Vec<ClefChange> = Vec::new();
        for clef in clefs.iter().filter(|clef| clef.bar <= self.last) {
            let bar = clef.bar.saturating_sub(self.first);
            if clef.bar < self.first {
                // One of each staff is in force.
                alone.retain(|known| known.staff != clef.staff);
            }
            alone.push(ClefChange { bar, ..*clef });
        }
        alone
    }
}
