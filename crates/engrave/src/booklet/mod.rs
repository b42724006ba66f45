//! Parts: one string part as pages for the stand and as MusicXML.
//!
//! The part is copied out of the score, set once on a single line to learn how wide and high each bar is, broken
//! into lines and pages by a search of our own, and set again with these breaks. The engraver never chooses a
//! break, so that pages end where the player rests.

mod breaking;
mod engraving;
mod house;
mod pages;
mod part;
mod rests;
mod turns;
mod wide;

use arcata_bow::Seconds;
use arcata_bow::timing::TempoMap;
use arcata_score::Score;
use arcata_xml::{Document, Tag};

use crate::engraver::{EngraveError, Lines, Setting};
use crate::{Engraver, Picture};

use breaking::{Measured, Room, Side, System};
use engraving::PartDrawing;
pub use house::{House, HouseError};
use part::{Layout, Opens, PartCopy};
use rests::Unit;
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
    /// Index of the part.
    pub part: usize,
}

/// A part ready for the stand.
#[derive(Clone, Debug)]
pub struct Booklet {
    /// The pages, in order.
    pub pages: Vec<Picture>,
    /// The part as a score of its own, with the pages' breaks.
    pub musicxml: String,
    /// Lines of music on each page.
    pub systems: Vec<usize>,
    /// The ends of all pages but the last.
    pub turns: Vec<PageEnd>,
    /// Signs that came in from other parts.
    pub entered: usize,
    /// What a player or librarian should know.
    pub remarks: Vec<BookletRemark>,
}

/// The end of a page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PageEnd {
    /// Its printed number.
    pub page: usize,
    /// The bar that begins the next page, as people say it: "bar 17", "II, bar 17".
    pub bar: String,
    /// How long the player rests there.
    pub rest: Seconds,
    /// Whether the page is turned: its other side faces away.
    pub kind: PageEndKind,
}

/// What the player does at the end of a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PageEndKind {
    /// Reads on: the next page lies beside it.
    Facing,
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
        /// The first one's bar, as people say it.
        bar: String,
    },
    /// A rest that wants a cue, which Arcata does not make.
    NoCue {
        /// Its first and last bar, as people say them.
        bars: (String, String),
        /// How many bars.
        count: u32,
    },
    /// A part on several staves: the engraver draws its rests bar by bar.
    RestsWrittenOut,
    /// A line of music that is higher than a page.
    TooHigh {
        /// Its first bar, as people say it.
        bar: String,
    },
}

impl Booklet {
    /// Makes the booklet of one part.
    ///
    /// # Errors
    /// Music that the engraver does not take.
    pub fn make(request: &BookletRequest<'_>, engraver: &Engraver) -> Result<Self, EngraveError> {
        let (score, house) = (request.score, request.house);
        let part = &score.parts[request.part];
        let mut copy = PartCopy::new(request.document, score, request.part);
        let entered = request.wide.enter(&mut copy, request.part, part.staves);
        let units = rests::units(score, part, &copy, house.rests.shortest.value);
        let rests: Vec<(u32, u32)> =
            units.iter().filter(|unit| unit.last > unit.first).map(|unit| (unit.first, unit.last)).collect();
        let setter = Setter { request, engraver, copy: &copy, rests: &rests };
        let silence = turns::rests(score, part, request.tempo);
        let natural = setter.set(&every_few(&units), Lines::Natural)?;
        let measured = setter.measured(&natural, &units, &silence)?;
        let room = setter.room(&measured);
        let systems = breaking::systems(&measured, &room);
        let breaks = breaks(&systems, &units);
        let drawing = setter.set(&breaks, Lines::Stretched(setter.width()))?;
        let systems = setter.paged(&drawing, &systems, &units, &silence, &room)?;
        let breaks = self::breaks(&systems, &units);
        let layout = Layout { breaks: &breaks, rests: &rests, defaults: &pages::defaults(house) };
        let last = systems.last().map_or(0, |system| system.page);
        let on_page = |page: usize| systems.iter().filter(|system| system.page == page).count();
        let first_bar = |system: &System| setter.label(units[system.first].first);
        let mut remarks = setter.remarks(&drawing, &units);
        let high = |index: &usize| setter.height(&drawing, *index) > room.height;
        let too_high = (0..systems.len()).filter(high).map(|index| first_bar(&systems[index]));
        remarks.extend(too_high.map(|bar| BookletRemark::TooHigh { bar }));
        Ok(Self {
            pages: pages::pages(request, &drawing, &systems),
            musicxml: copy.musicxml(layout),
            systems: (0..=last).map(on_page).collect(),
            turns: setter.turns(&systems, &units, &silence, &room),
            entered,
            remarks,
        })
    }
}

/// Breaks for measuring: the time that the engraver takes grows faster than the length of a line.
fn every_few(units: &[Unit]) -> Vec<(u32, Opens)> {
    const FEW: usize = 8;
    units.iter().step_by(FEW).skip(1).map(|unit| (unit.first, Opens::System)).collect()
}

/// The first bar of each system after the first one.
fn breaks(systems: &[System], units: &[Unit]) -> Vec<(u32, Opens)> {
    let pairs = systems.windows(2);
    pairs
        .map(|pair| {
            let opens = if pair[0].page == pair[1].page { Opens::System } else { Opens::Page };
            (units[pair[1].first].first, opens)
        })
        .collect()
}

/// Tenths of a millimetre as millimetres.
#[expect(clippy::cast_precision_loss, reason = "a length on paper")]
fn millimetres(tenths: i64) -> f64 {
    tenths as f64 / 10.0
}

/// One part on its way through the engraver.
struct Setter<'a> {
    request: &'a BookletRequest<'a>,
    engraver: &'a Engraver,
    copy: &'a PartCopy,
    rests: &'a [(u32, u32)],
}

impl Setter<'_> {
    fn set(&self, breaks: &[(u32, Opens)], lines: Lines) -> Result<PartDrawing, EngraveError> {
        let layout = Layout { breaks, rests: self.rests, defaults: "" };
        let source = engraving::source(self.copy, layout);
        let numbers = self.request.house.bars.numbers.value.as_str();
        let number_every = u8::from(numbers == "bars");
        let svg = self.engraver.set_part(&source, Setting { lines, number_every })?;
        let score = self.request.score;
        let labels: Vec<&str> = match numbers {
            "none" => Vec::new(),
            _ => score.bars.iter().map(|bar| bar.label.as_str()).collect(),
        };
        engraving::read(&svg, &labels, &score.parts[self.request.part], self.rests)
    }

    /// Width of a line, hundredths of a staff height.
    fn width(&self) -> u32 {
        let house = self.request.house;
        let width = house.paper.width.value - 2 * house.paper.sides.value;
        u32::try_from(width * 100 / house.staff.height.value.max(1)).unwrap_or(u32::MAX)
    }

    /// Drawing units as hundredths of a millimetre.
    fn hundredths(&self, units: f64) -> i64 {
        let height = millimetres(self.request.house.staff.height.value);
        #[expect(clippy::cast_possible_truncation, reason = "a length on paper")]
        let hundredths = (units * height * 100.0 / UNITS).round() as i64;
        hundredths
    }

    /// Each unit as it stands on the one long line.
    fn measured(
        &self,
        natural: &PartDrawing,
        units: &[Unit],
        silence: &[Seconds],
    ) -> Result<Vec<Measured>, EngraveError> {
        let bars: usize = natural.systems.iter().map(|system| system.bars.len()).sum();
        if bars != units.len() {
            let why = format!("it has {bars} bars where {} were asked for", units.len());
            return Err(EngraveError::Unreadable { why });
        }
        let part = &self.request.score.parts[self.request.part];
        let mut measured = Vec::with_capacity(units.len());
        for (line, system) in natural.systems.iter().enumerate() {
            let mut left = system.staves.left;
            for (place, bar) in system.bars.iter().enumerate() {
                let unit = units[measured.len()];
                let key = part.keys.iter().rev().find(|(from, _)| *from <= unit.first);
                let signs = f64::from(key.map_or(0, |(_, fifths)| fifths.unsigned_abs()));
                let front = CLEF + SIGN * signs;
                // The first bar of each line but the first has clef and key in front.
                let own = if place == 0 && line > 0 { front } else { 0.0 };
                measured.push(Measured {
                    width: self.hundredths((bar.staves.right - left - own).max(0.0)),
                    front: self.hundredths(front),
                    above: self.hundredths(bar.staves.top - bar.all.top),
                    below: self.hundredths(bar.all.bottom - bar.staves.bottom),
                    rest_before: rest(silence, unit.first).micros / 1000,
                });
                left = bar.staves.right;
            }
        }
        Ok(measured)
    }

    fn room(&self, measured: &[Measured]) -> Room {
        let house = self.request.house;
        let part = &self.request.score.parts[self.request.part];
        let page = (house.paper.height.value - house.paper.head.value - house.paper.foot.value) * 10;
        let staves = i64::from(part.staves.max(1));
        let staff = house.staff.height.value * 10;
        let count = |number: i64| usize::try_from(number / staves).unwrap_or(1).max(1);
        debug_assert!(!measured.is_empty() || part.measures.is_empty());
        Room {
            width: (house.paper.width.value - 2 * house.paper.sides.value) * 10,
            first_height: page - hundredths_of(pages::first_head(self.request)),
            height: page - hundredths_of(pages::HEAD),
            // Staves of one part stand about a staff height and a half apart.
            staff: staff * staves + (staves - 1) * staff * 3 / 2,
            between: house.staff.between.value * 10,
            systems_first: count(house.pages.systems_first.value),
            systems: count(house.pages.systems.value),
            first: if house.pages.first.value == "left" { Side::Left } else { Side::Right },
            turn: house.pages.turn.value,
        }
    }

    /// Height of a line as engraved, hundredths of a millimetre.
    fn height(&self, drawing: &PartDrawing, index: usize) -> i64 {
        drawing.systems.get(index).map_or(0, |system| self.hundredths(system.all.bottom - system.all.top))
    }

    /// The same lines on pages by the heights that they came to have.
    fn paged(
        &self,
        drawing: &PartDrawing,
        systems: &[System],
        units: &[Unit],
        silence: &[Seconds],
        room: &Room,
    ) -> Result<Vec<System>, EngraveError> {
        if drawing.systems.len() != systems.len() {
            let why =
                format!("it has {} lines where {} were asked for", drawing.systems.len(), systems.len());
            return Err(EngraveError::Unreadable { why });
        }
        // A line is as wide as the page: no two share one.
        let lines: Vec<Measured> = (0..systems.len())
            .map(|index| Measured {
                width: room.width,
                front: 0,
                above: self.height(drawing, index) - room.staff,
                below: 0,
                rest_before: rest(silence, units[systems[index].first].first).micros / 1000,
            })
            .collect();
        let paged = breaking::systems(&lines, room);
        Ok(systems.iter().zip(paged).map(|(system, page)| System { page: page.page, ..*system }).collect())
    }

    /// A bar as people say it, with its movement where there are several.
    fn label(&self, bar: u32) -> String {
        self.request.score.bar_said("bar", bar)
    }

    fn turns(&self, systems: &[System], units: &[Unit], silence: &[Seconds], room: &Room) -> Vec<PageEnd> {
        let ends = systems.windows(2).filter(|pair| pair[0].page != pair[1].page);
        ends.map(|pair| {
            let bar = units[pair[1].first].first;
            let rest = rest(silence, bar);
            let kind = match (room.is_turned(pair[0].page), rest.micros >= room.turn * 1000) {
                (false, _) => PageEndKind::Facing,
                (true, true) => PageEndKind::Turned,
                (true, false) => PageEndKind::Rushed,
            };
            PageEnd {
                page: pages::number(self.request.house, pair[0].page),
                bar: self.label(bar),
                rest,
                kind,
            }
        })
        .collect()
    }

    fn remarks(&self, drawing: &PartDrawing, units: &[Unit]) -> Vec<BookletRemark> {
        let part = &self.request.score.parts[self.request.part];
        if part.notes.iter().all(|note| note.pitch.is_rest()) {
            return vec![BookletRemark::Tacet];
        }
        let mut remarks = Vec::new();
        let is_hidden = |note: &&arcata_score::Note| {
            let element = self.request.document.element(note.node);
            element.is_some_and(|element| element.attribute("print-object").as_deref() == Some("no"))
        };
        let missing: Vec<_> = part
            .notes
            .iter()
            .filter(|note| drawing.missing.binary_search(&note.node).is_ok() && !is_hidden(note))
            .collect();
        if let Some(first) = missing.first() {
            let bar = self.label(first.bar);
            remarks.push(BookletRemark::NotesNotDrawn { count: missing.len(), bar });
        }
        for unit in units {
            let count = unit.last - unit.first + 1;
            if i64::from(count) >= self.request.house.rests.cue.value {
                let bars = (self.label(unit.first), self.label(unit.last));
                remarks.push(BookletRemark::NoCue { bars, count });
            }
        }
        if part.staves > 1 {
            remarks.push(BookletRemark::RestsWrittenOut);
        }
        remarks
    }
}

/// Clef with its white, and one sign of a key signature, drawing units (a staff space is 180).
const CLEF: f64 = 700.0;
const SIGN: f64 = 190.0;

fn rest(silence: &[Seconds], bar: u32) -> Seconds {
    silence.get(bar as usize).copied().unwrap_or_default()
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
