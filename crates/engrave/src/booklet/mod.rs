//! Parts: one string part as pages for the stand and as MusicXML.
//!
//! The part is copied out of the score, set once in natural spacing to learn how wide and high each bar is, broken
//! into lines and pages by a search of our own, and set again with these lines. The engraver never chooses a
//! break, so that pages end where the player rests. It gets the part in pieces that can be cut without a trace, and sets
//! them on all cores.

mod advice;
mod breaking;
mod clearing;
mod cues;
mod cuts;
mod engraving;
mod house;
mod house_conflicts;
mod imposition;
mod layout;
mod lighter;
mod numbers;
mod outline;
mod page_name;
mod pages;
mod part;
mod rests;
mod said;
mod setter;
mod wide;

use std::collections::BTreeSet;

use arcata_bow::RealTime;
use arcata_bow::timing::TempoMap;
use arcata_bow::turns::TurnTime;
use arcata_languages::{SaidPlace, Wording};
use arcata_score::Score;
use arcata_xml::{Document, NodeId, Tag};

use crate::engraver::EngraveError;
use crate::{Engraver, Picture};

pub use advice::{Advice, Mend, Mending};
pub use house::{House, HouseError};
pub use house_conflicts::HouseConflict;
pub use imposition::{FoldedSheets, sheet_sides};
pub use page_name::PageName;
pub use said::{advice_said, house_conflict_said, page_end_said, remark_said};
use setter::Setter;
pub use wide::SystemWide;
pub(crate) use wide::closed;

/// Drawing units in a staff height.
const UNITS: f64 = 720.0;

/// What a booklet is made of.
#[derive(Clone, Copy, Debug)]
pub struct BookletRequest<'a> {
    /// The score, with the bowings that shall stand in the part.
    pub document: &'a Document,
    /// The same, read.
    pub score: &'a Score,
    /// What is written once for all players in it.
    pub wide: &'a SystemWide,
    /// Seconds, for page turns.
    pub tempo: &'a TempoMap,
    /// How the house wants its parts.
    pub house: &'a House,
    /// What the player takes to turn a page; the house may ask for more.
    pub turn: RealTime,
    /// Index of the part.
    pub part: usize,
    /// What is shown besides.
    pub shown: &'a ShownChanges,
    /// Where somebody wants pages and lines to begin.
    pub asked: &'a AskedStarts,
    /// In whose words a page says that it is left blank.
    pub wording: &'a Wording,
}

/// Bars (from 0) that somebody wants to begin a page or a line of music.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct AskedStarts {
    /// That begin a page.
    pub pages: BTreeSet<u32>,
    /// That begin a line.
    pub lines: BTreeSet<u32>,
}

impl AskedStarts {
    /// What is asked to begin with a bar; of both the page.
    fn at(&self, bar: u32) -> AskedStart {
        if self.pages.contains(&bar) {
            AskedStart::Page
        } else if self.lines.contains(&bar) {
            AskedStart::Line
        } else {
            AskedStart::Nothing
        }
    }
}

/// What is new in a part, to be shown on its pages.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ShownChanges {
    /// Signs for bows and slurs (elements of the document) that are printed lighter, as if in pencil.
    pub lighter: BTreeSet<NodeId>,
    /// Bars (from 0) whose lines bear a mark in the margin.
    pub bars: BTreeSet<u32>,
}

impl BookletRequest<'_> {
    /// The time that a page turn needs: the player's, or the house's where that is longer.
    #[must_use]
    pub fn turn_needed(&self) -> RealTime {
        self.turn.max(self.house.turn())
    }
}

/// A part ready for the stand.
#[derive(Clone, Debug)]
pub struct Booklet {
    /// The pages, in order.
    pub pages: Vec<Picture>,
    /// A front page for a part that begins on page 2; nothing where page 1 has music.
    pub cover: Option<Picture>,
    /// The part as a score of its own, with the pages' breaks.
    pub musicxml: String,
    /// What each page is called; it is printed where the house wants numbers.
    pub names: Vec<PageName>,
    /// Where each bar stands on its page.
    pub bars: Vec<BarOnPage>,
    /// Lines of music on each page; none on one that is left blank.
    pub systems: Vec<usize>,
    /// The ends of all pages but the last and blank ones.
    pub turns: Vec<PageEnd>,
    /// Where turns are too quick: what better layouts would cost.
    pub advice: Option<Advice>,
    /// Signs that came in from other parts.
    pub entered: usize,
    /// How many cues stand in it.
    pub cues: usize,
    /// What a player or librarian should know.
    pub remarks: Vec<BookletRemark>,
}

/// Where a bar, or a rest over several, stands; lengths are millimetres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BarOnPage {
    /// The page, from 0.
    pub page: usize,
    /// First and last bar, indices.
    pub bars: (u32, u32),
    /// From the left edge of the page to its left end and to its right end.
    pub across: (f64, f64),
    /// From the upper edge of the page to the first line of its first staff and to the last line of its last one.
    pub down: (f64, f64),
    /// What somebody has asked to begin with it.
    pub asked: AskedStart,
}

/// What is asked to begin with a bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum AskedStart {
    /// Nothing.
    #[default]
    Nothing,
    /// A line of music.
    Line,
    /// A page.
    Page,
}

/// The end of a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PageEnd {
    /// Its printed number.
    pub page: PageName,
    /// The bar that begins the next page.
    pub bar: SaidPlace,
    /// The time there is.
    pub time: TurnTime,
    /// Whether the page is turned: its other side faces away.
    pub kind: PageEndKind,
}

/// What the player does at the end of a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PageEndKind {
    /// Reads on: the next page lies beside it.
    Facing,
    /// Reads on: the next page folds out beside it.
    FoldsOut,
    /// Turns it, with rest enough.
    Turned,
    /// Must turn it with less rest than a turn needs.
    Rushed,
}

/// Something that is not as a part should be, or that Arcata does not do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum BookletRemark {
    /// Nothing to play.
    Tacet,
    /// So many notes of the part that are not printed: the engraver has left them out.
    NotesNotDrawn {
        /// How many.
        count: usize,
        /// The first one's bar.
        bar: SaidPlace,
    },
    /// A rest that wants a cue, where nobody plays a line that can be shown.
    NoCue {
        /// Its first and last bar.
        bars: (SaidPlace, SaidPlace),
        /// How many bars.
        count: u32,
    },
    /// A part on several staves: the engraver draws its rests bar by bar.
    RestsWrittenOut,
    /// The staff is smaller than the house wants it, as far as it allows, for the sake of the turns.
    SmallerStaff {
        /// Its height, tenths of a millimetre.
        tenths: i64,
    },
    /// A line of music that is higher than a page.
    TooHigh {
        /// Its first bar.
        bar: SaidPlace,
    },
}

impl Booklet {
    /// Makes the booklet of one part.
    ///
    /// # Errors
    /// Music that the engraver does not take.
    pub fn make(request: &BookletRequest<'_>, engraver: &Engraver) -> Result<Self, EngraveError> {
        Setter::new(request, engraver).booklet()
    }

    /// The part as a score of its own, without the pages' breaks: to compare it before anything is engraved.
    #[must_use]
    pub fn unpaged(request: &BookletRequest<'_>, engraver: &Engraver) -> String {
        Setter::new(request, engraver).unpaged()
    }

    /// What a part is made from, as a sum (SHA-256, hexadecimal): while it stays the same the pages stay the same, whatever has
    /// changed elsewhere in the score.
    #[must_use]
    pub fn content_key(request: &BookletRequest<'_>, engraver: &Engraver) -> String {
        Setter::new(request, engraver).content_key()
    }
}

/// Tenths of a millimetre as millimetres.
#[expect(clippy::cast_precision_loss, reason = "a length on paper")]
fn millimetres(tenths: i64) -> f64 {
    tenths as f64 / 10.0
}

#[expect(clippy::cast_possible_truncation, reason = "a length on paper")]
fn hundredths_of(millimetres: f64) -> i64 {
    (millimetres * 100.0).round() as i64
}

/// The rights that the score's file states, for the foot of the first page.
fn rights(document: &Document) -> Option<String> {
    let identification = document.root().child(Tag::IDENTIFICATION)?;
    let text = identification.child(Tag::RIGHTS)?.text().trim().to_owned();
    (!text.is_empty()).then_some(text)
}
