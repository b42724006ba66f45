//! Shorthand put against a score: statements become entries.

use std::collections::BTreeMap;
use std::rc::Rc;

use arcata_score::{BowDirection, NoteId};

use super::locate::{self, Locator};
use super::problem::{ShorthandProblem, ShorthandProblemKind};
use super::slurs;
use super::strokes::{SlurChanges, StrokeBeginning, Strokes};
use super::syntax::{Also, Bow, Text, Typed, Where, Within};
use super::wish::{Wish, assigned};
use crate::address::Addresses;
use crate::model::{Address, Entry, HookSign, Mark, Question};

/// The most notes that one text may speak of. A note counts each time that a stretch finds it, and each time
/// that something is asked of it.
///
/// Reason: the marks of a whole opera, every note of every string part once, are some 100,000; more is a
/// text gone wrong, or made to keep the program busy. Source: counted by hand, from memory.
pub const MOST_DECISIONS: usize = 400_000;

/// What a text of shorthand decides for a score.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Entered {
    /// The decisions, one a note and question, in the order of the score.
    pub entries: Vec<Entry>,
    /// Notes that are bowed as they come though nothing is printed on them: decisions that a layer has
    /// for them go.
    pub cleared: Vec<Address>,
    /// What is wrong with the text, in its order. While one of these is [`Gravity::Wrong`] the entries are
    /// not the whole of what was meant.
    ///
    /// [`Gravity::Wrong`]: super::Gravity::Wrong
    pub complaints: Vec<ShorthandProblem>,
}

/// Puts a text against a score.
///
/// ```
/// use arcata_layer::{Addresses, shorthand};
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let (text, _) = shorthand::read("violin 1/2 up, 1/4 down");
/// let entered = shorthand::enter(&text, &Addresses::new(&score));
/// assert!(entered.complaints.is_empty());
/// let said: Vec<String> = entered.entries.iter().map(|entry| entry.mark.words()).collect();
/// assert_eq!(said, ["up-bow", "down-bow"]);
/// ```
#[must_use]
pub fn enter(text: &Text, addresses: &Addresses<'_>) -> Entered {
    let mut locator = Locator::new(addresses);
    let mut complaints = Vec::new();
    let wanted = assigned(text, &mut locator, &mut complaints);
    let mut desk = GatheredEntries::new(addresses, complaints);
    let mut changes: BTreeMap<usize, SlurChanges> = BTreeMap::new();
    for wish in &wanted {
        desk.slurs(wish, &mut changes);
        if desk.is_spent() {
            return desk.finish();
        }
    }
    let none = SlurChanges::default();
    let score = addresses.score();
    let mut strokes: BTreeMap<usize, Strokes> = BTreeMap::new();
    for wish in &wanted {
        let part = wish.part;
        let strokes = strokes
            .entry(part)
            .or_insert_with(|| Strokes::new(score, &score.parts[part], changes.get(&part).unwrap_or(&none)));
        desk.marks(wish, strokes);
        if desk.is_spent() {
            break;
        }
    }
    desk.finish()
}

/// Where entries are gathered.
pub(super) struct GatheredEntries<'a, 's> {
    pub(super) addresses: &'a Addresses<'s>,
    pub(super) complaints: Vec<ShorthandProblem>,
    decided: BTreeMap<(Address, Question), (Entry, Typed)>,
    /// As it comes over a bar or a stretch: gives way to what is said of a single note.
    by_stretch: Vec<Address>,
    cleared: Vec<Address>,
    printed: BTreeMap<usize, Rc<Strokes>>,
    /// Notes that may still be spoken of; nothing once it was more.
    left: Option<usize>,
}

impl<'a, 's> GatheredEntries<'a, 's> {
    fn new(addresses: &'a Addresses<'s>, complaints: Vec<ShorthandProblem>) -> Self {
        Self {
            addresses,
            complaints,
            decided: BTreeMap::new(),
            by_stretch: Vec::new(),
            cleared: Vec::new(),
            printed: BTreeMap::new(),
            left: Some(MOST_DECISIONS),
        }
    }

    /// Counts notes that are spoken of; from the one too many on nothing more is entered.
    pub(super) fn spend(&mut self, at: Typed, notes: usize) {
        let Some(left) = self.left else { return };
        self.left = left.checked_sub(notes);
        if self.left.is_none() {
            self.wrong(at, ShorthandProblemKind::TooManyDecisions { most: MOST_DECISIONS });
        }
    }

    fn is_spent(&self) -> bool {
        self.left.is_none()
    }

    pub(super) fn wrong(&mut self, at: Typed, trouble: ShorthandProblemKind) {
        self.complaints.push(ShorthandProblem::wrong(at, trouble));
    }

    /// Bar, beat and section of a note, as people say it.
    pub(super) fn said(&self, part: usize, note: NoteId) -> String {
        locate::said(self.addresses, part, note)
    }

    /// The strokes of a part as its slurs are printed.
    pub(super) fn printed_strokes(&mut self, part: usize) -> Rc<Strokes> {
        let score = self.addresses.score();
        let new = || Rc::new(Strokes::new(score, &score.parts[part], &SlurChanges::default()));
        Rc::clone(self.printed.entry(part).or_insert_with(new))
    }

    /// The bars of a place that follows another one of the same statement.
    pub(super) fn bars_of(
        &self,
        place: &Where,
        bar: u32,
    ) -> Result<(u32, Option<u32>), ShorthandProblemKind> {
        let mut locator = Locator::new(self.addresses);
        locator.stand_in(bar);
        locator.target(place).map(|target| (target.bar, target.to))
    }

    pub(super) fn decide(&mut self, wish: &Wish<'_>, note: NoteId, mark: Mark) {
        self.spend(wish.at, 1);
        if self.is_spent() {
            return;
        }
        let Some(place) = self.addresses.place(wish.part, note) else { return };
        let mut entry = Entry::new(place.clone(), mark);
        if entry.mark.question() == Question::Bow && entry.mark != Mark::AsItComes {
            entry.force = wish.statement.force;
        }
        let key = (place, entry.mark.question());
        match self.decided.get(&key) {
            Some((before, _)) if before.says_the_same(&entry) => {}
            Some((before, at)) => {
                let trouble = ShorthandProblemKind::SaidOtherwise {
                    place: self.said(wish.part, note),
                    line: at.line,
                    before: before.mark.words(),
                };
                self.wrong(wish.at, trouble);
            }
            None => {
                self.decided.insert(key, (entry, wish.at));
            }
        }
    }

    /// The slurs of a statement.
    fn slurs(&mut self, wish: &Wish<'_>, changes: &mut BTreeMap<usize, SlurChanges>) {
        for also in &wish.statement.also {
            self.spend(wish.at, 1);
            let changes = changes.entry(wish.part).or_default();
            match also {
                Also::Slur => slurs::add(self, wish, changes),
                Also::NoSlur => slurs::remove(self, wish, changes),
                Also::SlurNow(now) => slurs::change(self, wish, now, changes),
                Also::Lift | Also::InBow(_) | Also::Text(_) => {}
            }
        }
    }

    /// All but the slurs of a statement.
    fn marks(&mut self, wish: &Wish<'_>, strokes: &Strokes) {
        let notes: Vec<&Also> = wish
            .statement
            .also
            .iter()
            .filter(|also| matches!(also, Also::Lift | Also::InBow(_) | Also::Text(_)))
            .collect();
        if wish.statement.bow.is_none() && notes.is_empty() {
            return;
        }
        if wish.statement.bow == Some(Bow::AsItComes) && wish.is_wide() {
            self.as_it_comes(wish, strokes);
            if notes.is_empty() {
                return;
            }
        }
        let Some(reached) = self.reach(wish, strokes) else { return };
        match &wish.statement.bow {
            None => {}
            Some(Bow::AsItComes) if wish.is_wide() => {}
            Some(bow) => self.bow(wish, strokes, bow, &reached),
        }
        for also in notes {
            match also {
                Also::InBow(place) => self.decide(wish, reached[0].note, Mark::InBow { place: *place }),
                Also::Text(text) => self.decide(wish, reached[0].note, Mark::Text { text: text.clone() }),
                _ => reached.iter().for_each(|stroke| self.decide(wish, stroke.note, Mark::Lift)),
            }
        }
    }

    /// The strokes that a statement speaks of; never empty. A note inside a slur is taken where it was
    /// named, and remarked.
    fn reach(&mut self, wish: &Wish<'_>, strokes: &Strokes) -> Option<Vec<StrokeBeginning>> {
        let hooks_bar = matches!(wish.statement.bow, Some(Bow::Hook { .. }));
        let whole = wish.place.to.is_some() || (hooks_bar && wish.place.from.within == Within::Bar);
        if whole {
            let stretch = wish.stretch(self.addresses, strokes);
            self.spend(wish.at, stretch.as_ref().map_or(1, Vec::len));
            return match stretch {
                Ok(found) if found.is_empty() => {
                    let place = format!("{} in {}", wish.place, self.addresses.part_keys()[wish.part]);
                    self.wrong(wish.at, ShorthandProblemKind::TooFewStrokes { place, wanted: 1, there: 0 });
                    None
                }
                Ok(found) => Some(found),
                Err(trouble) => {
                    self.wrong(wish.at, trouble);
                    None
                }
            };
        }
        match wish.single(self.addresses, strokes) {
            Ok(found) => {
                if let Some(begins) = found.inside
                    && wish.place.from.grace.is_none()
                {
                    let trouble = ShorthandProblemKind::InsideSlur {
                        place: self.said(wish.part, found.note),
                        begins: self.said(wish.part, begins),
                    };
                    self.complaints.push(ShorthandProblem::remark(wish.at, trouble));
                }
                Some(vec![found])
            }
            Err(trouble) => {
                self.wrong(wish.at, trouble);
                None
            }
        }
    }

    fn bow(&mut self, wish: &Wish<'_>, strokes: &Strokes, bow: &Bow, reached: &[StrokeBeginning]) {
        let voice = wish.voice(self.addresses);
        let is_stretch = wish.place.to.is_some();
        match bow {
            Bow::Directions(ways) if is_stretch => {
                for (stroke, way) in reached.iter().zip(ways.iter().cycle()) {
                    self.decide(wish, stroke.note, Mark::of(*way));
                }
            }
            Bow::Directions(ways) => {
                let found = strokes.after(reached[0], ways.len(), voice);
                if self.enough(wish, ways.len(), found.len()) {
                    for (stroke, way) in found.iter().zip(ways) {
                        self.decide(wish, stroke.note, Mark::of(*way));
                    }
                }
            }
            Bow::Hook { count, bow, sign } if is_stretch || wish.place.from.within == Within::Bar => {
                let count = usize::from(count.unwrap_or(2));
                if self.enough(wish, 2, reached.len()) {
                    for (index, group) in reached.chunks(count).enumerate() {
                        self.hook(wish, group, (bow.filter(|_| index == 0), *sign));
                    }
                }
            }
            Bow::Hook { count: Some(count), bow, sign } => {
                let count = usize::from(*count);
                let found = strokes.after(reached[0], count, voice);
                if self.enough(wish, count, found.len()) {
                    self.hook(wish, &found, (*bow, *sign));
                }
            }
            Bow::Double { first } => self.decide(wish, reached[0].note, Mark::Double { first: *first }),
            Bow::Hook { count: None, bow, sign } => {
                self.decide(wish, reached[0].note, Mark::Hook { bow: *bow, sign: *sign });
            }
            Bow::Retake { bow } => {
                for stroke in reached {
                    self.decide(wish, stroke.note, Mark::Retake { bow: *bow });
                }
            }
            Bow::AsItComes => self.decide(wish, reached[0].note, Mark::AsItComes),
        }
    }

    fn enough(&mut self, wish: &Wish<'_>, wanted: usize, there: usize) -> bool {
        if there < wanted {
            let place = format!("{} in {}", wish.place, self.addresses.part_keys()[wish.part]);
            self.wrong(wish.at, ShorthandProblemKind::TooFewStrokes { place, wanted, there });
        }
        there >= wanted
    }

    /// The first stroke of a group goes as it does, or as it is told; the others are hooked onto it.
    fn hook(
        &mut self,
        wish: &Wish<'_>,
        group: &[StrokeBeginning],
        (bow, sign): (Option<BowDirection>, HookSign),
    ) {
        for (index, stroke) in group.iter().enumerate() {
            match (index, bow) {
                (0, None) => {}
                (0, Some(bow)) => self.decide(wish, stroke.note, Mark::of(bow)),
                _ => self.decide(wish, stroke.note, Mark::Hook { bow, sign }),
            }
        }
    }

    /// As it comes over a bar or a stretch: every printed mark goes. Where none is printed, the first
    /// stroke keeps the decision.
    fn as_it_comes(&mut self, wish: &Wish<'_>, strokes: &Strokes) {
        let bounds = match wish.bounds(self.addresses, strokes) {
            Ok(bounds) => bounds,
            Err(trouble) => return self.wrong(wish.at, trouble),
        };
        let score = self.addresses.score();
        let part = &score.parts[wish.part];
        let within = |note: &arcata_score::Note| {
            let here = (note.bar, score.offset_in_bar(note.onset, note.bar));
            here >= bounds.0
                && (note.bar < bounds.1.0
                    || (note.bar == bounds.1.0 && bounds.1.1.is_none_or(|offset| here.1 <= offset)))
        };
        let voice = wish.voice(self.addresses);
        let mut any = false;
        let first = part.notes.partition_point(|note| note.bar < bounds.0.0);
        for (note, index) in
            part.notes.iter().zip(0..).skip(first).take_while(|(note, _)| note.bar <= bounds.1.0)
        {
            if note.pitch.is_rest() || !within(note) || voice.is_some_and(|voice| note.voice != voice) {
                continue;
            }
            self.spend(wish.at, 1);
            if self.is_spent() {
                return;
            }
            let Some(place) = self.addresses.place(wish.part, NoteId(index)) else { continue };
            if note.bow_mark.is_some() {
                any = true;
                self.by_stretch.push(place);
            } else {
                self.cleared.push(place);
            }
        }
        if !any && let Some(first) = strokes.between(bounds.0, bounds.1, voice).first() {
            self.by_stretch.extend(self.addresses.place(wish.part, first.note));
        }
    }

    fn finish(mut self) -> Entered {
        for place in std::mem::take(&mut self.by_stretch) {
            let entry = Entry::new(place.clone(), Mark::AsItComes);
            let key = (place, Question::Bow);
            self.decided.entry(key).or_insert((entry, Typed::default()));
        }
        let decided = &self.decided;
        self.cleared.sort();
        self.cleared.dedup();
        self.cleared.retain(|place| !decided.contains_key(&(place.clone(), Question::Bow)));
        self.complaints.sort_by_key(|complaint| complaint.at);
        self.complaints.dedup();
        let entries = self.decided.into_values().map(|(entry, _)| entry).collect();
        Entered { entries, cleared: self.cleared, complaints: self.complaints }
    }
}
