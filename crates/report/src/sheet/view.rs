//! The change sheet as data.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::{Saying, Wording};
use arcata_layer::{Addresses, Layer};
use arcata_score::NoteId;

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
    /// In whose words the sheet is.
    pub wording: Wording,
}

/// A change sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct SheetView {
    /// Title of the work.
    pub work: String,
    /// Composer.
    pub composer: Option<String>,
    /// What the parts hold now.
    pub before: Option<LayerHeading>,
    /// What they shall hold.
    pub after: LayerHeading,
    /// A page each: sections with something to write, in score order.
    pub sections: Vec<SectionSheet>,
    /// The librarian's page.
    pub librarian: LibrarianView,
    /// In whose words it is.
    pub wording: Wording,
}

/// A layer as a heading names it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayerHeading {
    /// Its title.
    pub title: String,
    /// Owner, ensemble and date, as far as they are known.
    pub about: String,
}

/// One section's page.
#[derive(Clone, Debug, PartialEq)]
pub struct SectionSheet {
    /// Index of the part.
    pub part: usize,
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
#[derive(Clone, Debug, PartialEq)]
pub struct BarChanges {
    /// Index of the bar.
    pub index: u32,
    /// The bar as printed.
    pub bar: String,
    /// The heading of its movement, where the file has several and the bars before it are of another one.
    pub movement: Option<String>,
    /// A rehearsal mark at its start.
    pub rehearsal: Option<String>,
    /// The changes, in order.
    pub changes: Vec<ChangeView>,
    /// The bar as it shall look, where somebody has engraved it.
    pub music: Option<Excerpt>,
}

/// A picture of a bar, for HTML and PDF.
#[derive(Clone, Debug, PartialEq)]
pub struct Excerpt {
    /// SVG that needs no font.
    pub svg: String,
    /// Width, mm.
    pub width: f32,
    /// Height, mm.
    pub height: f32,
}

/// Where a picture of a bar has room, mm: a column of the sheet on the narrower paper.
pub const EXCERPT_WIDTH: f32 = 83.0;

/// The key of how a section's page is read.
pub(super) fn key(section: &SectionSheet) -> &'static str {
    if section.bars.iter().any(|bar| bar.music.is_some()) { "sheet-key-with-music" } else { "sheet-key" }
}

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
    /// The note, as the clean score counts it.
    pub note: NoteId,
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
    /// What stands in the parts but was carried over with doubt.
    pub doubtful: Vec<NotCarried>,
    /// What spreading did not bring into other parts.
    pub not_spread: Vec<NotSpreadView>,
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

/// A decision that is in no part, or in one with doubt.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotCarried {
    /// Where it was meant.
    pub place: String,
    /// What it is.
    pub mark: String,
    /// Why it is in no part, or in doubt.
    pub why: String,
}

/// Marks of one part that another did not get.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NotSpreadView {
    /// The part that has them.
    pub from: String,
    /// The part without them.
    pub part: String,
    /// The bars, as "3, 5-9".
    pub bars: String,
    /// How many marks.
    pub marks: u32,
    /// Why.
    pub why: String,
}

/// A list on the librarian's page.
pub(super) struct LeftList {
    pub(super) heading: String,
    /// Each thing: where, and what about it.
    pub(super) items: Vec<(String, String)>,
}

impl LibrarianView {
    /// What is left to do by hand, as lists; empty ones are left out.
    pub(super) fn lists(&self, wording: &Wording) -> Vec<LeftList> {
        let said = |left: &NotCarried| (left.place.clone(), format!("{}; {}", left.mark, left.why));
        let spread = |left: &NotSpreadView| {
            let about = Saying::new("sheet-not-spread")
                .with("marks", i64::from(left.marks))
                .choosing("bars-are", if left.bars.contains([',', '-']) { "many" } else { "one" })
                .quoting("bars", &left.bars)
                .quoting("why", &left.why);
            let to = Saying::new("sheet-not-to").quoting("from", &left.from).quoting("part", &left.part);
            (wording.say(&to), wording.say(&about))
        };
        let lists = [
            LeftList {
                heading: wording.word("sheet-to-settle"),
                items: self.not_carried.iter().map(said).collect(),
            },
            LeftList {
                heading: wording.word("sheet-doubtful"),
                items: self.doubtful.iter().map(said).collect(),
            },
            LeftList {
                heading: wording.word("sheet-not-spread-heading"),
                items: self.not_spread.iter().map(spread).collect(),
            },
        ];
        lists.into_iter().filter(|list| !list.items.is_empty()).collect()
    }
}

impl SheetView {
    /// What of a section is to be written and taken off.
    pub(super) fn count(&self, section: &SectionSheet) -> String {
        let count = Saying::new("sheet-count")
            .with("write", i64::from(section.to_write))
            .with("off", i64::from(section.to_take_off));
        self.wording.say(&count)
    }

    /// What stood there, behind what is written now.
    pub(super) fn was(&self, was: &str) -> String {
        self.wording.say(&Saying::new("sheet-was").quoting("was", was))
    }

    /// What the parts hold now, in words.
    #[must_use]
    pub fn before_words(&self) -> String {
        self.before.as_ref().map_or_else(|| self.wording.word("sheet-as-printed"), LayerHeading::words)
    }
}

impl LayerHeading {
    /// Title and what is known of it.
    #[must_use]
    pub fn words(&self) -> String {
        if self.about.is_empty() { self.title.clone() } else { format!("{} ({})", self.title, self.about) }
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
