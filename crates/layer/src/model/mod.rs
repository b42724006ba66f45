//! The bowing layer: who decided which bowing for which note.
//!
//! Plain values with public fields. Nothing here knows bytes of a score except [`Exact`], which remembers
//! how a mark stood in the file it was lifted from.

mod place;
mod record;

pub use place::{Address, PitchName, Spot};
pub use record::{Exact, HookSlur, MarkBefore, NotReached, Taken, TakenKind};

use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;
use serde_json::{Map, Value};

use crate::address::Addresses;

/// The version of the format that this crate reads and writes (by definition).
pub const VERSION: u32 = 1;

/// A named, owned record of bowings apart from the score.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Layer {
    /// What people call it: "Tour, spring".
    pub title: String,
    /// Who decided it: "leader".
    pub owner: String,
    /// For which orchestra or ensemble.
    pub ensemble: String,
    /// When, as its owner writes dates; `2026-03-01` sorts best.
    pub date: String,
    /// The score it belongs to.
    pub score: ScoreIdentity,
    /// The parts in score order, by the names that entries use; entries are kept in this order.
    pub parts: Vec<String>,
    /// What was decided, in the order of [`Layer::put_in_order`].
    pub entries: Vec<Entry>,
    /// What a merge could not decide: both wishes are kept until somebody does.
    pub conflicts: Vec<Conflict>,
    /// Entries whose notes a revision has taken away, with the addresses they had: kept for a later one.
    pub orphans: Vec<Entry>,
    /// What spreading could not bring into other parts, until it is spread again.
    pub not_reached: Vec<NotReached>,
    /// Fields that this version does not know, kept as they are.
    pub other: Map<String, Value>,
}

/// Which score a layer belongs to.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ScoreIdentity {
    /// Its title.
    pub title: Option<String>,
    /// Fingerprint of the document without this layer, as [`crate::identity::bytes`] gives it. Set when
    /// the layer is lifted or first applied.
    pub bytes: Option<String>,
    /// Fingerprint of its bars and notes, as [`crate::identity::music`] gives it: the same whatever marks
    /// stand on them.
    pub music: Option<String>,
    /// Fields that this version does not know.
    pub other: Map<String, Value>,
}

/// One decision about one note.
#[derive(Clone, Debug, PartialEq)]
pub struct Entry {
    /// The note. For a slur its first note.
    pub place: Address,
    /// What was decided.
    pub mark: Mark,
    /// Whether planners must keep to it.
    pub force: EntryForce,
    /// Whose it is, where it is not the layer's owner's (after a merge).
    pub owner: Option<String>,
    /// What became of it when the layer was last applied.
    pub state: EntryState,
    /// Which bow a hook or a retake was written as, where the entry itself does not say.
    pub written: Option<BowDirection>,
    /// The mark that it put on the stroke before, where none stood there.
    pub before: Option<MarkBefore>,
    /// The slur that it was written as, for a hook with dots or dashes.
    pub hook_slur: Option<HookSlur>,
    /// What printed marks gave way to this one, in the order they were taken off; nothing where it has not been put on a
    /// score yet. What stands there later is not printed: another layer has put it there.
    pub took_off: Option<Vec<Taken>>,
    /// How the marks stood in the file that they were lifted from, in the order they are put on; empty
    /// where they stand as this crate writes them by itself.
    pub exact: Vec<Exact>,
    /// Why somebody should look at it, in a sentence: what carrying it over left in doubt, or why it found no
    /// note. A person who has looked takes it out.
    pub doubt: Option<String>,
    /// Fields that this version does not know, kept as they are.
    pub other: Map<String, Value>,
}

/// How binding a decision is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum EntryForce {
    /// A mark to be read.
    #[default]
    Mark,
    /// An anchor: a direction that every plan must keep.
    Anchor,
}

/// What became of an entry when its layer was applied.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum EntryState {
    /// Its mark, where it stands in the score, is the layer's.
    #[default]
    Own,
    /// The score has this very mark anyway: it is neither written nor wiped.
    Printed,
    /// It was not applied, so that there is nothing to wipe.
    LeftOut,
}

/// What can be decided about a note.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Mark {
    /// Down-bow.
    Down,
    /// Up-bow.
    Up,
    /// Both bows on one note: the bow changes while it lasts, as on a fermata.
    Double {
        /// The first of the two.
        first: BowDirection,
    },
    /// In the direction of the stroke before, stopped on the string.
    Hook {
        /// Which way both go; nothing where the note before says it.
        bow: Option<BowDirection>,
        /// The sign by which players are told of it.
        sign: HookSign,
    },
    /// Lifted and set down again before this note.
    Retake {
        /// Which way this note then goes; nothing where the note before says it.
        bow: Option<BowDirection>,
    },
    /// The printed bow mark is taken off and none put in its place.
    AsItComes,
    /// The bow leaves the string after this note.
    Lift,
    /// Where in the bow.
    InBow {
        /// The place.
        place: BowPlace,
    },
    /// Words for the players.
    Text {
        /// As they are to be printed.
        text: String,
    },
    /// A slur that the score has not.
    SlurAdded {
        /// Its last note.
        to: Spot,
    },
    /// A printed slur that is taken off.
    SlurRemoved {
        /// Its last note.
        to: Spot,
    },
    /// A printed slur that gets another beginning or end.
    SlurMoved {
        /// Its last note as printed.
        to: Spot,
        /// Its new first note, where that changes.
        new_from: Option<Spot>,
        /// Its new last note, where that changes.
        new_to: Option<Spot>,
    },
}

/// How a hook is written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum HookSign {
    /// The same bow mark on both strokes.
    #[default]
    Marks,
    /// A slur over both, with a dot on each: short, the bow stopped between them.
    Dots,
    /// A slur over both, with a dash on each: portato, the bow pressed anew.
    Dashes,
}

/// A place in the bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum BowPlace {
    /// At the frog.
    Frog,
    /// Lower half.
    LowerHalf,
    /// In the middle.
    Middle,
    /// Upper half.
    UpperHalf,
    /// At the tip.
    Tip,
    /// The whole bow.
    Whole,
}

/// Wishes for one note that cannot both be had.
#[derive(Clone, Debug, PartialEq)]
pub struct Conflict {
    /// The note.
    pub place: Address,
    /// What both started from.
    pub base: Vec<Entry>,
    /// What the first owner wants; empty where the owner wants nothing there.
    pub first: Vec<Entry>,
    /// What the second owner wants.
    pub second: Vec<Entry>,
    /// Who the first owner is.
    pub first_owner: String,
    /// Who the second owner is.
    pub second_owner: String,
}

impl Entry {
    /// An entry as a person makes it: nothing taken off so far, nothing remembered.
    #[must_use]
    pub fn new(place: Address, mark: Mark) -> Self {
        Self {
            place,
            mark,
            force: EntryForce::Mark,
            owner: None,
            state: EntryState::Own,
            written: None,
            before: None,
            hook_slur: None,
            took_off: None,
            exact: Vec::new(),
            doubt: None,
            other: Map::new(),
        }
    }

    /// The printed marks that gave way to it.
    #[must_use]
    pub fn taken_off(&self) -> &[Taken] {
        self.took_off.as_deref().unwrap_or_default()
    }

    /// Whether two entries decide the same about the same note; what they remember of a file aside.
    #[must_use]
    pub fn says_the_same(&self, other: &Self) -> bool {
        self.place == other.place && self.mark == other.mark && self.force == other.force
    }
}

impl Mark {
    /// A bow mark in a direction.
    #[must_use]
    pub fn of(direction: BowDirection) -> Self {
        match direction {
            BowDirection::Down => Self::Down,
            BowDirection::Up => Self::Up,
        }
    }

    /// Whether it asks for the direction of the stroke before: a hook or a retake.
    #[must_use]
    pub const fn follows(&self) -> bool {
        matches!(self, Self::Hook { .. } | Self::Retake { .. })
    }

    /// Whether it is written as a slur with dots or dashes: a hook that says so.
    #[must_use]
    pub const fn is_hook_slur(&self) -> bool {
        matches!(self, Self::Hook { sign: HookSign::Dots | HookSign::Dashes, .. })
    }

    /// Which question about a note the mark answers: two entries that answer one question for one note
    /// differently contradict each other.
    #[must_use]
    pub fn question(&self) -> Question {
        match self {
            Self::Down
            | Self::Up
            | Self::Double { .. }
            | Self::Hook { .. }
            | Self::Retake { .. }
            | Self::AsItComes => Question::Bow,
            Self::Lift => Question::Lift,
            Self::InBow { .. } => Question::InBow,
            Self::Text { text } => Question::Text(text.clone()),
            Self::SlurAdded { to } | Self::SlurRemoved { to } | Self::SlurMoved { to, .. } => {
                Question::Slur(to.clone())
            }
        }
    }

    /// The mark in a player's words.
    #[must_use]
    pub fn words(&self) -> String {
        self.saying(Spot::argument).to_string()
    }

    /// The same where the score is known: the ends of slurs are said by bar and beat.
    #[must_use]
    pub fn words_in(&self, addresses: &Addresses<'_>, part: &str) -> String {
        self.saying_in(addresses, part).to_string()
    }

    /// The mark of a note of a part, to be said in a language where the score is known.
    #[must_use]
    pub fn saying_in(&self, addresses: &Addresses<'_>, part: &str) -> Saying {
        let part = addresses.part(part);
        self.saying(|spot| match part {
            Some(part) => addresses.spot_argument(part, spot),
            None => spot.argument(),
        })
    }

    /// The mark, to be said in a language; ends of slurs are said by `to`.
    ///
    /// ```
    /// use arcata_languages::{Language, Wording};
    /// use arcata_layer::Mark;
    ///
    /// let retake = Mark::Retake { bow: None }.saying(arcata_layer::Spot::argument);
    /// assert_eq!(Wording::of(Language::French).say(&retake), "reprise d'archet");
    /// ```
    #[must_use]
    pub fn saying(&self, to: impl Fn(&Spot) -> Argument) -> Saying {
        let way = |bow: Option<BowDirection>| match bow {
            Some(BowDirection::Down) => "down",
            Some(BowDirection::Up) => "up",
            None => "any",
        };
        match self {
            Self::Down => Saying::new("mark-bow").choosing("bow", "down"),
            Self::Up => Saying::new("mark-bow").choosing("bow", "up"),
            Self::Double { first } => Saying::new("mark-both-bows").choosing("bow", way(Some(*first))),
            Self::Hook { bow, sign } => Saying::new("mark-hook")
                .choosing("sign", sign.word().unwrap_or("marks"))
                .choosing("bow", way(*bow)),
            Self::Retake { bow } => Saying::new("mark-retake").choosing("bow", way(*bow)),
            Self::AsItComes => Saying::new("mark-as-it-comes"),
            Self::Lift => Saying::new("mark-lift"),
            Self::InBow { place } => Saying::new("mark-in-bow").choosing("place", place.case()),
            Self::Text { text } => Saying::new("mark-text").quoting("text", text),
            Self::SlurAdded { to: end } => Saying::new("mark-slur").with("to", to(end)),
            Self::SlurRemoved { to: end } => Saying::new("mark-no-slur").with("to", to(end)),
            Self::SlurMoved { to: end, new_from, new_to } => {
                let known = |spot: &Option<Spot>| if spot.is_some() { "yes" } else { "no" };
                let or_end = |spot: &Option<Spot>| to(spot.as_ref().unwrap_or(end));
                Saying::new("mark-slur-moved")
                    .with("end", to(end))
                    .choosing("moves-from", known(new_from))
                    .with("from", or_end(new_from))
                    .choosing("moves-to", known(new_to))
                    .with("to", or_end(new_to))
            }
        }
    }
}

/// What a mark decides; see [`Mark::question`].
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Question {
    /// Which way the bow goes.
    Bow,
    /// Whether it leaves the string.
    Lift,
    /// Where in the bow.
    InBow,
    /// Whether these words stand there.
    Text(String),
    /// What becomes of the slur to a note.
    Slur(Spot),
}

impl HookSign {
    /// All ways to write a hook.
    pub const ALL: [Self; 3] = [Self::Marks, Self::Dots, Self::Dashes];

    /// What stands under the slur, in a player's word; nothing for bow marks, which need no slur.
    #[must_use]
    pub const fn word(self) -> Option<&'static str> {
        match self {
            Self::Marks => None,
            Self::Dots => Some("dots"),
            Self::Dashes => Some("dashes"),
        }
    }
}

impl BowPlace {
    /// All places from frog to tip, then the whole bow.
    pub const ALL: [Self; 6] =
        [Self::Frog, Self::LowerHalf, Self::Middle, Self::UpperHalf, Self::Tip, Self::Whole];

    /// By what messages tell it apart.
    const fn case(self) -> &'static str {
        match self {
            Self::Frog => "frog",
            Self::LowerHalf => "lower-half",
            Self::Middle => "middle",
            Self::UpperHalf => "upper-half",
            Self::Tip => "tip",
            Self::Whole => "whole",
        }
    }

    /// The words printed for it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Frog => "at the frog",
            Self::LowerHalf => "lower half",
            Self::Middle => "middle of the bow",
            Self::UpperHalf => "upper half",
            Self::Tip => "at the tip",
            Self::Whole => "whole bow",
        }
    }
}

impl Layer {
    /// Puts the entries into the one order in which they are written: by part as in `parts`, then bar,
    /// offset, voice, grace notes first, pitch, and what they decide.
    pub fn put_in_order(&mut self) {
        let parts = std::mem::take(&mut self.parts);
        let rank = |part: &str| parts.iter().position(|known| known == part).unwrap_or(parts.len());
        for entries in [&mut self.entries, &mut self.orphans] {
            entries.sort_by(|one, other| {
                let ranks = rank(&one.place.part).cmp(&rank(&other.place.part));
                ranks.then_with(|| one.place.cmp(&other.place)).then_with(|| one.mark.cmp(&other.mark))
            });
        }
        self.conflicts.sort_by(|one, other| {
            let ranks = rank(&one.place.part).cmp(&rank(&other.place.part));
            ranks.then_with(|| one.place.cmp(&other.place))
        });
        self.not_reached.sort_by(|one, other| {
            let key = |left: &NotReached| (rank(&left.from), rank(&left.part), left.bar_ordinal);
            (key(one), one).cmp(&(key(other), other))
        });
        self.not_reached.dedup();
        self.parts = parts;
    }

    /// Whose an entry is.
    #[must_use]
    pub fn owner_of<'l>(&'l self, entry: &'l Entry) -> &'l str {
        entry.owner.as_deref().unwrap_or(&self.owner)
    }
}
