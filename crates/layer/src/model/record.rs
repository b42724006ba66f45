//! What a layer remembers of the file that it was on, so that everything comes back as it was.

use arcata_languages::Saying;
use arcata_score::BowDirection;

use super::{HookSign, Spot};

/// How an element stood inside its note (or, for words, before it).
///
/// Places are told by structure, not by bytes of the file, so that they hold when other marks come and go.
/// Every one describes the state in which the marks that come after it in the layer are not there.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Exact {
    /// The elements around it that stay when it goes, from the note inwards: `notations 1/technical 2`
    /// is the second `<technical>` of the first `<notations>`. Empty: the note itself. `before`: it stands
    /// before the note.
    pub into: String,
    /// How many elements stand before it there (before the note: how many between it and the note).
    pub after: u32,
    /// How many bytes of blanks and comments stand between the element before it and `text`.
    pub skip: u32,
    /// What stood there, as it was written: blanks, the element, and the elements around it that it was
    /// the only content of.
    pub text: String,
}

/// A printed mark that gave way.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Taken {
    /// What it was.
    pub kind: TakenKind,
    /// How it stood.
    pub exact: Exact,
}

/// The mark on the stroke before that of a hook or a retake: two equal marks one after the other are how
/// players are told of either.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct MarkBefore {
    /// The note that bears it, in the part of the entry.
    pub spot: Spot,
    /// Which way.
    pub direction: BowDirection,
    /// Whether the score has it anyway: it is neither written nor wiped.
    pub printed: bool,
    /// What printed marks gave way to it.
    pub took_off: Vec<Taken>,
}

/// The slur that a hook was written as, with the dots or dashes under it. Hooks that go on from each other share one slur:
/// the first of them in the layer keeps it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct HookSlur {
    /// The first note under the slur, in the part of the entry.
    pub from: Spot,
    /// The last note under the slur.
    pub to: Spot,
    /// What was put under it.
    pub sign: HookSign,
    /// The notes that the layer hooks under it, in their order.
    pub hooked: Vec<Spot>,
    /// The notes on which dots or dashes were put, in the order of putting; where one stood already none was.
    pub signs: Vec<Spot>,
}

/// The kinds of printed marks that give way to an entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TakenKind {
    /// A printed down-bow.
    Down,
    /// A printed up-bow.
    Up,
    /// The beginning of a printed slur.
    SlurStart,
    /// The end of a printed slur.
    SlurStop,
}

impl TakenKind {
    /// Which way, for a bow mark.
    pub(crate) const fn way(self) -> Option<BowDirection> {
        match self {
            Self::Down => Some(BowDirection::Down),
            Self::Up => Some(BowDirection::Up),
            Self::SlurStart | Self::SlurStop => None,
        }
    }
}

/// Marks of one bar that spreading could not bring from one part into another.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct NotReached {
    /// The part that has the marks.
    pub from: String,
    /// The part that they do not reach.
    pub part: String,
    /// The bar by position in the file, from 1.
    pub bar_ordinal: u32,
    /// The bar's number as printed.
    pub bar: String,
    /// How many marks.
    pub marks: u32,
    /// Why, as its file has it.
    pub why: String,
}

impl NotReached {
    /// Why, to be said in a language: files of layers have it in English.
    #[must_use]
    pub fn saying(&self) -> Saying {
        let known = crate::spread::REASONS.into_iter().map(Saying::new);
        known
            .into_iter()
            .find(|known| known.to_string() == self.why)
            .unwrap_or_else(|| Saying::as_it_is(&self.why))
    }
}
