//! A text of shorthand as it was understood, before any score is looked at.

use arcata_score::BowDirection;
use arcata_score::places::Point;
pub use arcata_score::places::{BarName, Typed, Within};

use crate::model::{BowPlace, EntryForce, HookSign};

/// A text of shorthand. Two texts are equal when they say the same in the same order, wherever on the
/// page.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Text {
    /// Its lines, empty ones too.
    pub lines: Vec<ShorthandLine>,
}

/// One line.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ShorthandLine {
    /// The movement that this line and those below it speak of, until another is named (`II:`).
    pub movement: Option<At<String>>,
    /// What stands on it, in order.
    pub items: Vec<Item>,
    /// What follows `#`.
    pub comment: Option<String>,
}

/// A piece of a line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Item {
    /// Names of sections: they hold until others are named.
    Sections(Vec<At<String>>),
    /// Places and what is decided about them.
    Statement(At<Statement>),
}

/// A value and where it was typed. The spot does not count when two texts are compared.
#[derive(Clone, Debug)]
pub struct At<T> {
    /// The value.
    pub value: T,
    /// Where it stands.
    pub spot: Typed,
}

impl<T: PartialEq> PartialEq for At<T> {
    fn eq(&self, other: &Self) -> bool {
        self.value == other.value
    }
}

impl<T: Eq> Eq for At<T> {}

impl<T> At<T> {
    /// A value typed nowhere in particular.
    #[must_use]
    pub fn nowhere(value: T) -> Self {
        Self { value, spot: Typed::default() }
    }
}

/// Places and what is decided about them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Statement {
    /// Whether plans must keep to it.
    pub force: EntryForce,
    /// Where; never empty.
    pub places: Vec<At<Where>>,
    /// What the bow does.
    pub bow: Option<Bow>,
    /// What else is written there.
    pub also: Vec<Also>,
}

/// A bar, a note or a stretch.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Where {
    /// Where it begins.
    pub from: NoteSpot,
    /// Where it ends, for a stretch; the end belongs to it.
    pub to: Option<NoteSpot>,
}

/// A bar or a note in it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoteSpot {
    /// The bar; `None` for the bar named before (`/3`).
    pub bar: Option<BarName>,
    /// Where in the bar.
    pub within: Within,
    /// The voice, where it is said.
    pub voice: Option<String>,
    /// The pitch, as typed.
    pub pitch: Option<String>,
    /// Which grace note, from 1.
    pub grace: Option<u16>,
    /// Which of several notes that agree in all else, from 1.
    pub copy: Option<u16>,
}

impl NoteSpot {
    /// The bar, and where in it.
    #[must_use]
    pub fn point(&self) -> Point {
        Point { bar: self.bar.clone(), within: self.within }
    }
}

/// What the bow does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Bow {
    /// Strokes in these directions, one after the other; never empty.
    Directions(Vec<BowDirection>),
    /// Both bows on one note, this one first.
    Double {
        /// The first of the two.
        first: BowDirection,
    },
    /// Hooked: onto the stroke before, or so many in one bow.
    Hook {
        /// How many strokes in one direction; onto the stroke before when not said.
        count: Option<u8>,
        /// Which way.
        bow: Option<BowDirection>,
        /// How it is written.
        sign: HookSign,
    },
    /// Taken back first.
    Retake {
        /// Which way it then goes.
        bow: Option<BowDirection>,
    },
    /// No mark, and the printed one taken off.
    AsItComes,
}

/// What else can be written at a note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Also {
    /// The bow leaves the string afterwards.
    Lift,
    /// Where in the bow.
    InBow(BowPlace),
    /// Words for the players.
    Text(String),
    /// A slur over the stretch.
    Slur,
    /// The printed slur over the stretch goes.
    NoSlur,
    /// The printed slur over the stretch gets another stretch.
    SlurNow(Box<At<Where>>),
}
