//! Time signatures and bars.

use crate::{Length, Moment};

/// A time signature as groups of beats: 3/4 is `[3]`/4, 3+2+2/8 is `[3, 2, 2]`/8.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Meter {
    /// Numerators in order; several when the signature is additive, or composite such as 2/4 + 3/8
    /// (then each group carries its own unit).
    pub groups: Vec<BeatGroup>,
    /// How the signature is drawn; cut time beats in halves.
    pub symbol: MeterSymbol,
}

/// One group of an additive signature.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BeatGroup {
    /// How many units.
    pub count: u16,
    /// The unit's denominator: 4 for quarters.
    pub unit: u16,
}

/// How a time signature is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum MeterSymbol {
    /// Two numbers (or anything that beats as its numbers say).
    #[default]
    Numbers,
    /// C: common time.
    Common,
    /// Cut C: two half-note beats.
    Cut,
    /// No bars counted.
    SenzaMisura,
}

impl Meter {
    /// 4/4, what an unsigned piece is read in.
    #[must_use]
    pub fn common() -> Self {
        Self::simple(4, 4)
    }

    /// An ordinary signature.
    #[must_use]
    pub fn simple(count: u16, unit: u16) -> Self {
        Self { groups: vec![BeatGroup { count, unit }], symbol: MeterSymbol::Numbers }
    }

    /// The length of a full bar; zero when no bars are counted.
    #[must_use]
    pub fn bar_length(&self) -> Length {
        if self.symbol == MeterSymbol::SenzaMisura {
            return Length::ZERO;
        }
        self.groups.iter().map(|group| Length::new(i64::from(group.count), i64::from(group.unit))).sum()
    }
}

/// A bar of the whole score; all parts share it.
#[derive(Clone, Debug)]
pub struct Bar {
    /// Its number as printed (`"12"`, `"0"`, `"X1"`, `"12a"`).
    pub label: String,
    /// Where it begins, bars laid end to end as printed.
    pub start: Moment,
    /// How long it is: the longest that any part writes, or the signature's when all are empty.
    pub length: Length,
    /// Whether the file says that this bar is not counted (pickups, split bars).
    pub kind: BarKind,
    /// What stands at its left and right end.
    pub left: Barline,
    /// See `left`.
    pub right: Barline,
    /// Rehearsal mark at its start, when any part carries one.
    pub rehearsal: Option<String>,
    /// Signs of the road: segno, coda, and the words that send the player elsewhere.
    pub jumps: Vec<Jump>,
}

/// Whether a bar counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum BarKind {
    /// An ordinary bar.
    #[default]
    Counted,
    /// `implicit="yes"`: a pickup, or one half of a bar that a repeat splits.
    NotCounted,
}

/// One end of a bar.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Barline {
    /// How the line is drawn.
    pub style: BarlineStyle,
    /// A repeat sign, with how often the section is played when it ends here (2 unless written).
    pub repeat: Option<RepeatSign>,
    /// An ending bracket that begins or ends here.
    pub ending: Option<Ending>,
}

/// How a barline is drawn, as far as a player phrases by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum BarlineStyle {
    /// An ordinary barline or none.
    #[default]
    Single,
    /// A thin double line.
    Double,
    /// The end of a movement.
    Final,
}

/// A repeat sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RepeatSign {
    /// The section begins here.
    Begin,
    /// The section ends here and is played this many times in all.
    End {
        /// Times the section is played.
        times: u16,
    },
}

/// One end of an ending bracket.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ending {
    /// The passes it is for.
    pub numbers: Vec<u16>,
    /// Which end this is.
    pub edge: EndingEdge,
}

/// Which end of an ending bracket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EndingEdge {
    /// The bracket begins at this bar's left.
    Start,
    /// It ends with a hook.
    Stop,
    /// It ends open.
    Discontinue,
}

/// A sign of the road.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Jump {
    /// The sign to come back to.
    Segno,
    /// Where the coda begins.
    Coda,
    /// Where to leave for the coda.
    ToCoda,
    /// From the beginning again.
    DaCapo,
    /// From the sign again.
    DalSegno,
    /// Where a piece sent back ends.
    Fine,
}
