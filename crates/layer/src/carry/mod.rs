//! Carrying a layer over to a revised score.
//!
//! Bars are aligned by their music, whatever their numbers; then each entry looks for its note in the bar
//! that its bar has become. It is carried exactly, carried with doubt, or kept as an orphan: never lost.

mod align;
mod features;
mod notes;
mod parts;
mod repeats;

use std::fmt;

use arcata_languages::{Argument, Saying};
use arcata_score::Score;
use arcata_xml::Document;

use crate::address::{Addresses, NotFound};
use crate::identity;
use crate::model::{Address, Entry, EntryState, Layer, Mark, NotReached, Spot};
use align::BarPair;
use features::{Features, SharedPart};
use notes::{Fit, NoteFinder};
use parts::matching_parts;
use repeats::written_out;

/// A layer on a revised score.
#[derive(Clone, Debug)]
pub struct Carried {
    /// The layer for the new score: what was carried exactly and with doubt as entries, the rest as
    /// [`Layer::orphans`] with their old addresses.
    pub layer: Layer,
    /// How many entries were carried exactly.
    pub exactly: usize,
    /// Entries that were carried, but should be looked at.
    pub doubtful: Vec<Doubtful>,
    /// Entries whose note is no more.
    pub orphaned: Vec<Orphan>,
}

/// An entry that was carried with doubt.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubtful {
    /// Where it stood.
    pub from: Address,
    /// Where it stands.
    pub to: Address,
    /// What it says.
    pub mark: Mark,
    /// Why it should be looked at.
    pub why: Doubt,
}

/// Why a carried entry should be looked at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Doubt {
    /// Other bars could be meant as well: their printed numbers.
    OtherBars(Vec<String>),
    /// The bar was rewritten.
    BarRewritten,
    /// The note has another pitch.
    OtherPitch,
    /// The note has another length.
    OtherLength,
    /// The note stands elsewhere in the bar.
    Moved,
    /// What sounds together with the note, or its voice, is not what it was.
    OtherChord,
    /// A repeat was written out: this is the second pass.
    WrittenOut,
}

/// An entry that found no note.
#[derive(Clone, Debug, PartialEq)]
pub struct Orphan {
    /// The entry with its old address.
    pub entry: Entry,
    /// Why.
    pub why: Saying,
}

impl Doubt {
    /// Why, to be said in a language.
    #[must_use]
    pub fn saying(&self) -> Saying {
        match self {
            Self::OtherBars(labels) => {
                let bars = labels.iter().map(|label| Argument::BarNumber(label.clone())).collect();
                Saying::new("doubt-other-bars").with("count", labels.len()).with("bars", Argument::Row(bars))
            }
            Self::BarRewritten => Saying::new("doubt-bar-rewritten"),
            Self::OtherPitch => Saying::new("doubt-other-pitch"),
            Self::OtherLength => Saying::new("doubt-other-length"),
            Self::Moved => Saying::new("doubt-moved"),
            Self::OtherChord => Saying::new("doubt-other-chord"),
            Self::WrittenOut => Saying::new("doubt-written-out"),
        }
    }
}

impl fmt::Display for Doubt {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.saying().fmt(out)
    }
}

impl Doubtful {
    /// As it is said where both scores are known: by bar and beat.
    #[must_use]
    pub fn said(&self, old: &Addresses<'_>, new: &Addresses<'_>) -> String {
        let mark = self.mark.words_in(new, &self.to.part);
        let to = new.part(&self.to.part).map(|part| new.spot_said(part, &self.to.spot));
        let to = to.unwrap_or_else(|| self.to.spot.to_string());
        format!("{} → {to}, {mark}: {}", old.said(&self.from), self.why)
    }
}

impl Orphan {
    /// As it is said where the old score is known: by bar and beat.
    #[must_use]
    pub fn said(&self, old: &Addresses<'_>) -> String {
        let mark = self.entry.mark.words_in(old, &self.entry.place.part);
        format!("{}, {mark}: {}", old.said(&self.entry.place), self.why)
    }
}

impl fmt::Display for Doubtful {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{} → {}, {}: {}", self.from, self.to.spot, self.mark.words(), self.why)
    }
}

impl fmt::Display for Orphan {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}, {}: {}", self.entry.place, self.entry.mark.words(), self.why)
    }
}

/// Bars of which less than this stayed (thousandths) count as rewritten (rule of thumb).
const REWRITTEN: i32 = 450;

/// Carries a layer from the score it belongs to over to a revision of it.
///
/// The new layer names the new score, and remembers nothing of the old one's printed marks: apply it to know
/// them. Time grows with old bars × new bars; a movement of 1,000 bars takes a fraction of a second.
///
/// ```
/// use arcata_layer::{Addresses, Entry, Layer, Mark, carry};
/// # let parse = |text: &str| {
/// #     let text = arcata_testkit::musicxml(text);
/// #     arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap()
/// # };
/// let old = parse("violin: 1/4 C5 D5 E5 F5 | G5 A5 B5 A5 | 1/1 G5");
/// let new = parse("violin: 1/4 G5 A5 B5 A5 | 1/1 G5");
/// let (old_score, new_score) = (arcata_score::read(&old), arcata_score::read(&new));
/// let place = Addresses::new(&old_score).place(0, arcata_score::NoteId(5)).unwrap();
/// let layer = Layer { entries: vec![Entry::new(place, Mark::Up)], ..Layer::default() };
/// let carried = carry(&layer, &old_score, (&new, &new_score));
/// assert_eq!(carried.exactly, 1);
/// assert_eq!(carried.layer.entries[0].place.spot.bar, "1");
/// ```
#[must_use]
pub fn carry(layer: &Layer, old: &Score, (document, new): (&Document, &Score)) -> Carried {
    let parts = matching_parts(old, new);
    let known = |index: usize, number: usize, shift: i32| SharedPart { index, number, shift };
    let of_old: Vec<SharedPart> = parts.iter().map(|(one, _)| known(*one, *one, 0)).collect();
    let features = Features::of(old, &of_old);
    let of_new = |shifts: &[i32]| -> Features {
        let parts = parts.iter().zip(shifts);
        let parts: Vec<SharedPart> = parts.map(|((one, other), shift)| known(*other, *one, *shift)).collect();
        Features::of(new, &parts)
    };
    let mut new_features = of_new(&vec![0; parts.len()]);
    let mut pairs = align::align(&features, &new_features);
    let mut finder = NoteFinder::new(old, new, &parts, &pairs);
    let shifts = finder.shifts(&parts);
    if shifts.iter().any(|shift| *shift != 0) {
        // Steps and rhythm alone tell bars apart less well than pitches do: once it is known how far the
        // music was transposed, look again as if it had not been.
        new_features = of_new(&shifts);
        pairs = align::align(&features, &new_features);
        finder = NoteFinder::new(old, new, &parts, &pairs);
    }
    let copies = written_out(old, &features, &new_features, &pairs);
    let mut carrier = Carrier { old: Addresses::new(old), finder, new: Addresses::new(new), pairs, copies };
    let mut carried = Carried {
        layer: Layer { entries: Vec::new(), parts: carrier.new.part_keys().to_vec(), ..layer.clone() },
        exactly: 0,
        doubtful: Vec::new(),
        orphaned: Vec::new(),
    };
    carried.layer.score =
        crate::model::ScoreIdentity { other: layer.score.other.clone(), ..identity::of(document, new) };
    for entry in &layer.entries {
        carrier.carry_entry(entry, &mut carried);
    }
    carried.layer.conflicts.clear();
    for conflict in &layer.conflicts {
        carrier.carry_conflict(conflict, &mut carried);
    }
    carried.layer.not_reached = carrier.not_reached(&layer.not_reached);
    carried.layer.orphans.extend(carried.orphaned.iter().map(|orphan| orphan.entry.clone()));
    carried.layer.put_in_order();
    carried
}

struct Carrier<'s> {
    old: Addresses<'s>,
    new: Addresses<'s>,
    finder: NoteFinder<'s>,
    pairs: Vec<Option<BarPair>>,
    /// For old bars of a repeat that was written out: the new bars of its second pass.
    copies: Vec<Option<usize>>,
}

/// A note carried over.
struct Landing {
    place: Address,
    why: Option<Doubt>,
}

impl Carrier<'_> {
    fn carry_entry(&mut self, entry: &Entry, carried: &mut Carried) {
        match self.land_entry(entry, None) {
            Err(why) => carried.orphaned.push(orphan(entry, &why)),
            Ok((landed, why)) => {
                carried.put(entry, landed, why, &self.old);
                let second = self.copy_of(&entry.place);
                if let Some(Ok((landed, _))) = second.map(|bar| self.land_entry(entry, Some(bar))) {
                    carried.put(entry, landed, Some(Doubt::WrittenOut), &self.old);
                }
            }
        }
    }

    fn carry_conflict(&mut self, conflict: &crate::model::Conflict, carried: &mut Carried) {
        let mut list = |entries: &[Entry]| -> Result<Vec<Entry>, Saying> {
            entries.iter().map(|entry| Ok(self.land_entry(entry, None)?.0)).collect()
        };
        let landed = (|| {
            let (base, first, second) =
                (list(&conflict.base)?, list(&conflict.first)?, list(&conflict.second)?);
            let place = first.iter().chain(&second).next().map(|entry| entry.place.clone());
            let place = place.ok_or(Saying::new("lost-conflict-wants-nothing"))?;
            Ok::<_, Saying>(crate::model::Conflict { place, base, first, second, ..conflict.clone() })
        })();
        match landed {
            Ok(conflict) => carried.layer.conflicts.push(conflict),
            Err(why) => {
                let both = conflict.first.iter().chain(&conflict.second);
                carried.orphaned.extend(both.map(|entry| orphan(entry, &why)));
            }
        }
    }

    /// What spreading did not reach, where its bars are still there.
    fn not_reached(&self, left: &[NotReached]) -> Vec<NotReached> {
        let carried = left.iter().filter_map(|left| {
            let bar = usize::try_from(left.bar_ordinal).ok()?.checked_sub(1)?;
            let new = self.pairs.get(bar)?.as_ref()?.new;
            let label = self.new.score().bars.get(new)?.label.clone();
            Some(NotReached { bar_ordinal: u32::try_from(new + 1).ok()?, bar: label, ..left.clone() })
        });
        carried.collect()
    }

    /// The new bar of the second pass, where the entry's bar belongs to a repeat that was written out.
    fn copy_of(&self, place: &Address) -> Option<usize> {
        let bar = self.old.bar(&place.spot).ok()?;
        self.copies.get(bar as usize).copied().flatten()
    }

    /// An entry on the new score; into the bar given, or the one that its bar has become.
    fn land_entry(&mut self, entry: &Entry, bar: Option<usize>) -> Result<(Entry, Option<Doubt>), Saying> {
        let landing = self.land(&entry.place.part, &entry.place.spot, bar)?;
        let mut why = landing.why;
        let part = entry.place.part.clone();
        let mut end = |spot: &Spot| -> Result<Spot, Saying> {
            let second = bar.and_then(|_| {
                let old = self.old.bar(spot).ok()?;
                self.copies.get(old as usize).copied().flatten()
            });
            let landed = self
                .land(&part, spot, second)
                .map_err(|said| Saying::new("lost-other-end").with("why", said))?;
            if why.is_none() {
                why = landed.why;
            }
            Ok(landed.place.spot)
        };
        let mark = match &entry.mark {
            Mark::SlurAdded { to } => Mark::SlurAdded { to: end(to)? },
            Mark::SlurRemoved { to } => Mark::SlurRemoved { to: end(to)? },
            Mark::SlurMoved { to, new_from, new_to } => Mark::SlurMoved {
                to: end(to)?,
                new_from: new_from.as_ref().map(&mut end).transpose()?,
                new_to: new_to.as_ref().map(&mut end).transpose()?,
            },
            other => other.clone(),
        };
        // Slurs get a number that is free in the new score.
        let keeps = !matches!(mark, Mark::SlurAdded { .. } | Mark::SlurMoved { .. });
        let landed = Entry {
            place: landing.place,
            mark,
            state: EntryState::Own,
            written: None,
            before: None,
            hook_slur: None,
            took_off: None,
            exact: if keeps { entry.exact.clone() } else { Vec::new() },
            ..entry.clone()
        };
        Ok((landed, why))
    }

    fn land(&mut self, part: &str, spot: &Spot, into: Option<usize>) -> Result<Landing, Saying> {
        let part = self.old.part(part).ok_or(Saying::new("lost-part"))?;
        let in_old = |why: NotFound| Saying::new("lost-in-old-score").with("why", why.saying());
        let found = self.old.find_in(part, spot).map_err(in_old)?;
        let bar = self.old.bar(spot).map_err(in_old)? as usize;
        let pair = self.pairs.get(bar).and_then(Option::as_ref);
        let (new_bar, mut why) = match (into, pair) {
            (Some(bar), _) => (bar, None),
            (None, Some(pair)) => (pair.new, self.doubt_of(bar, pair)),
            (None, None) => return Err(Saying::new("lost-bar")),
        };
        let (note, fit) = self.finder.find(found, new_bar).ok_or(Saying::new("lost-note"))?;
        let of_note = match fit {
            Fit::Same => None,
            Fit::OtherPitch => Some(Doubt::OtherPitch),
            Fit::OtherLength => Some(Doubt::OtherLength),
            Fit::Moved => Some(Doubt::Moved),
            Fit::OtherChord => Some(Doubt::OtherChord),
        };
        why = why.or(of_note);
        let place = self.new.place(note.part, note.note).ok_or(Saying::new("lost-note-is-rest"))?;
        Ok(Landing { place, why })
    }

    /// Why the pairing of a bar is not certain.
    fn doubt_of(&self, bar: usize, pair: &BarPair) -> Option<Doubt> {
        if pair.by_place || pair.likeness < REWRITTEN {
            return Some(Doubt::BarRewritten);
        }
        // The second pass of a repeat written out is no rival: the entry goes into both.
        let copy = self.copies.get(bar).copied().flatten();
        let rivals: Vec<usize> = pair.rivals.iter().copied().filter(|rival| Some(*rival) != copy).collect();
        if rivals.is_empty() && !(pair.claimed && copy.is_none()) {
            return None;
        }
        let label = |bar: &usize| self.new.score().bars.get(*bar).map(|bar| bar.label.clone());
        Some(Doubt::OtherBars(rivals.iter().take(4).filter_map(label).collect()))
    }
}

impl Carried {
    /// Takes an entry in, with what is doubtful about it; `old` is the score that it comes from.
    fn put(&mut self, from: &Entry, mut landed: Entry, why: Option<Doubt>, old: &Addresses<'_>) {
        match why {
            None => self.exactly += 1,
            Some(why) => {
                landed.doubt = Some(doubts(from, format!("was {}: {why}", old.said(&from.place))));
                let (to, mark) = (landed.place.clone(), landed.mark.clone());
                self.doubtful.push(Doubtful { from: from.place.clone(), to, mark, why });
            }
        }
        self.layer.entries.push(landed);
    }
}

fn orphan(entry: &Entry, why: &Saying) -> Orphan {
    let doubt = Some(doubts(entry, why.to_string()));
    Orphan { entry: Entry { doubt, ..entry.clone() }, why: why.clone() }
}

/// What an entry was in doubt about before, and what it is in doubt about now.
fn doubts(entry: &Entry, now: String) -> String {
    match &entry.doubt {
        Some(before) => format!("{before}; {now}"),
        None => now,
    }
}
