//! One part on its way through the engraver.

use std::collections::{BTreeMap, BTreeSet};

use arcata_bow::RealTime;
use arcata_bow::turns::{TurnTime, turn_times};
use arcata_languages::SaidPlace;
use arcata_score::{Note, Part};
use rayon::prelude::*;
use sha2::{Digest, Sha256};

use super::breaking::{
    Blank, BookletSide, FoldOuts, MeasuredUnit, MovementOpening, MovementPages, PaperRoom, PossibleLine,
    PossibleLines, Rushed, System, begins, choose,
};
use super::cues::{CueMaker, CueWishes, PartCues};
use super::engraving::{PartDrawing, PartPiece, SystemDrawing, read, source};
use super::layout::{LayoutLimits, NaturalPart, PartLayout};
use super::outline::StaffOutline;
use super::page_name::{PageName, page_names};
use super::part::{BreakOpens, CopyLayout, PartCopy};
use super::rests::{BarUnit, units};
use super::{
    Booklet, BookletRemark, BookletRequest, PageEnd, PageEndKind, UNITS, advice, cuts, hundredths_of,
    lighter, millimetres, numbers, pages, rights,
};
use crate::Engraver;
use crate::engraver::{EngraveError, LastLine, LineWidth};
use crate::note_name;
use crate::slice::state::BarlineState;

/// Bars of a line, and about as many of a piece, for measuring: the time that the engraver takes grows faster than what it
/// gets.
const MEASURED_LINE: usize = 8;
const MEASURED_PIECE: usize = 24;
/// Clef with its white, and one sign of a key signature, drawing units (a staff space is 180).
const CLEF: f64 = 700.0;
const SIGN: f64 = 190.0;
/// White in front of a first line: for no letter, and for each (measured).
const INDENT: i64 = 360;
const INDENT_LETTER: i64 = 203;

/// One part with all that is known of it before it is engraved.
pub(super) struct Setter<'a> {
    pub(super) request: &'a BookletRequest<'a>,
    engraver: &'a Engraver,
    copy: PartCopy,
    entered: usize,
    cues: PartCues,
    pub(super) units: Vec<BarUnit>,
    rests: Vec<(u32, u32)>,
    states: Vec<BarlineState>,
    /// For each bar, whether the part can be cut before it.
    free: Vec<bool>,
    /// For each bar, the time to turn before it.
    times: Vec<TurnTime>,
}

/// A part on the lines that were chosen.
pub(super) struct DrawnPart {
    pub(super) systems: Vec<SystemDrawing>,
    pub(super) glyphs: BTreeMap<String, String>,
    notes: BTreeSet<String>,
}

impl<'a> Setter<'a> {
    pub(super) fn new(request: &'a BookletRequest<'a>, engraver: &'a Engraver) -> Self {
        let (document, score) = (request.document, request.score);
        let part = &score.parts[request.part];
        let mut copy = PartCopy::new(document, score, request.part);
        let entered = request.wide.enter(&mut copy, request.part, part.staves);
        lighter::lighten(&mut copy, document, &request.shown.lighter);
        copy.take_headings(score);
        copy.take_doubles();
        let wishes =
            CueWishes { after: request.house.rests.cue.value, bars: request.house.rests.cue_bars.value };
        let cues = CueMaker { document, score, part: request.part }.enter(&mut copy, wishes);
        let mut free = cuts::cuts(document, score, part);
        // A slur or tie of a cue may go on over its barlines.
        for (first, last) in &cues.made {
            free[*first as usize + 1..=*last as usize].fill(false);
        }
        let units = units((score, part), &copy, request.house.rests.shortest.value, request.asked);
        let rests =
            units.iter().filter(|unit| unit.last > unit.first).map(|unit| (unit.first, unit.last)).collect();
        let pause = RealTime::from_micros(request.house.movements.pause.value * 1000);
        Self {
            request,
            engraver,
            entered,
            rests,
            units,
            states: BarlineState::at_barlines(document, score, part),
            cues,
            free,
            times: turn_times(score, part, request.tempo, (&score.stops(document), pause)),
            copy,
        }
    }

    /// See [`Booklet::unpaged`].
    pub(super) fn unpaged(&self) -> String {
        self.copy.musicxml(CopyLayout { breaks: &[], rests: &self.rests, defaults: "" })
    }

    /// See [`Booklet::content_key`].
    pub(super) fn content_key(&self) -> String {
        let request = self.request;
        let score = request.score;
        let mut sum = Sha256::new();
        let mut take = |text: &str| {
            // Where one text ends and the next begins counts, too.
            sum.update(text.len().to_le_bytes());
            sum.update(text);
        };
        take(env!("CARGO_PKG_VERSION"));
        take(&self.unpaged());
        for child in self.copy.bars.iter().flat_map(|bar| &bar.children) {
            take(child.engraved.as_deref().unwrap_or_default());
        }
        for text in [score.title.as_deref(), score.composer.as_deref(), rights(request.document).as_deref()] {
            take(text.unwrap_or_default());
        }
        take(&self.part().name);
        take(&request.wording.word("page-left-blank"));
        score.bars.iter().for_each(|bar| take(&bar.label));
        score.movements.iter().for_each(|movement| take(&format!("{:?} {}", movement.bars, movement.name())));
        let settings = (request.house, request.turn, &self.times, &request.shown.bars, request.asked);
        take(&format!("{settings:?} {:?}", self.cues.missing));
        sum.finalize().iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"))
    }

    pub(super) fn booklet(self) -> Result<Booklet, EngraveError> {
        let natural = self.natural()?;
        let limits = LayoutLimits::of(self.request.house);
        let layout = natural.best(&limits, Rushed::Priced);
        let layout = layout.ok_or_else(|| EngraveError::Unreadable { why: "it has no bars".to_owned() })?;
        // What follows is measured on the staff that was chosen.
        let mut house = self.request.house.clone();
        house.staff.height.value = layout.part.staff;
        let request = BookletRequest { house: &house, ..*self.request };
        Setter { request: &request, ..self }.laid_out(&natural, &layout, &limits)
    }

    fn laid_out(
        &self,
        natural: &NaturalPart,
        layout: &PartLayout,
        limits: &LayoutLimits,
    ) -> Result<Booklet, EngraveError> {
        let (room, chosen) = (&layout.part.room, &layout.chosen);
        let mut drawn = self.drawn(&chosen.systems)?;
        self.number(&mut drawn, &chosen.systems);
        let outlines: Vec<StaffOutline> = drawn.systems.iter().map(StaffOutline::new).collect();
        let systems = self.paged(room, &chosen.systems, &outlines);
        let names = page_names(&systems, room.first);
        let breaks = self.breaks(&systems, &names);
        let layout_of_file = CopyLayout {
            breaks: &breaks,
            rests: &self.rests,
            defaults: &pages::defaults(self.request.house),
        };
        let on_page = |page: usize| systems.iter().filter(|system| system.page == page).count();
        let mut remarks = self.remarks(&drawn);
        let high = |outline: &StaffOutline| self.hundredths(outline.height()) > room.height;
        let too_high = systems.iter().zip(&outlines).filter(|(_, outline)| high(outline));
        remarks.extend(too_high.map(|(system, _)| BookletRemark::TooHigh { bar: self.bar_of(system) }));
        if layout.part.staff < natural.staff {
            let staff = layout.part.staff;
            remarks.push(BookletRemark::SmallerStaff { tenths: staff });
        }
        let turns = self.turns(&systems, room, &names);
        let (pages, bars) = pages::pages(self, &drawn, &outlines, &systems, (&turns, &names));
        Ok(Booklet {
            advice: advice::advice(natural, (layout, limits), &turns),
            cover: (room.first == BookletSide::Left).then(|| pages::cover(self.request)),
            pages,
            bars,
            musicxml: self.copy.musicxml(layout_of_file),
            systems: (0..names.len()).map(on_page).collect(),
            names,
            turns,
            entered: self.entered,
            cues: self.cues.made.len(),
            remarks,
        })
    }

    pub(super) fn part(&self) -> &Part {
        &self.request.score.parts[self.request.part]
    }

    /// The movement (index) that begins with a bar, where the score has several.
    pub(super) fn movement_at(&self, bar: u32) -> Option<usize> {
        let movements = &self.request.score.movements;
        let found = movements.iter().position(|movement| *movement.bars.start() == bar);
        found.filter(|_| movements.len() > 1)
    }

    pub(super) fn begins(&self, bar: u32) -> bool {
        bar == 0 || self.movement_at(bar).is_some()
    }

    /// Pieces of the part that begin with units, cut where a unit is wanted and nothing goes on.
    fn pieces(&self, wanted: impl Fn(usize, usize) -> bool) -> Vec<PartPiece> {
        let mut starts: Vec<usize> = Vec::new();
        for (index, unit) in self.units.iter().enumerate() {
            let last = starts.last().copied();
            let cut = self.free.get(unit.first as usize).copied().unwrap_or(false);
            let is_movement = self.begins(unit.first);
            if last.is_none_or(|last| is_movement || cut && wanted(last, index)) {
                starts.push(index);
            }
        }
        let ends = starts.iter().skip(1).copied().chain([self.units.len()]);
        let pieces = starts.iter().zip(ends).filter_map(|(start, end)| {
            let (first, last) = (self.units.get(*start)?.first, self.units.get(end.checked_sub(1)?)?.last);
            Some(PartPiece {
                bars: first..last + 1,
                opening: self.opening(first),
                indent: if self.begins(first) { self.indent() } else { 0 },
            })
        });
        pieces.collect()
    }

    /// What holds where a piece begins, the metre only at the beginning of a movement.
    fn opening(&self, bar: u32) -> String {
        let Some(mut state) = self.states.get(bar as usize).filter(|_| bar > 0).cloned() else {
            return String::new();
        };
        if !self.begins(bar) {
            state.leave_metre();
        }
        let document = self.request.document;
        let leading = self.copy.bars.get(bar as usize).map_or(0, super::part::BarCopy::leading);
        let children = self.copy.bars.get(bar as usize).map_or(&[][..], |bar| &bar.children[..leading]);
        let elements = children.iter().filter_map(|child| document.element(child.node?));
        elements
            .filter(|element| element.tag() == arcata_xml::Tag::ATTRIBUTES)
            .for_each(|own| state.take(own));
        state.attributes_but(document, super::part::of_the_page)
    }

    /// White letters in front of the first line of a movement.
    fn indent(&self) -> usize {
        let house = self.request.house;
        let wanted = house.movements.indent.value * 720 / house.staff.height.value.max(1);
        usize::try_from((wanted - INDENT) / INDENT_LETTER).unwrap_or(0)
    }

    fn set(
        &self,
        pieces: &[PartPiece],
        breaks: &[(u32, BreakOpens)],
        setting: impl Fn(&PartPiece) -> LineWidth + Sync,
    ) -> Result<Vec<PartDrawing>, EngraveError> {
        let layout = CopyLayout { breaks, rests: &self.rests, defaults: "" };
        let width = self.drawing_width();
        let one = |piece: &PartPiece| {
            let setting = setting(piece);
            let svg = self.engraver.set_part(&source(&self.copy, piece, layout), setting)?;
            read(&svg, if setting == LineWidth::Natural { f64::MAX } else { width })
        };
        // All are ordered before any is looked at: where drawings come from another worker they come together.
        let drawn: Vec<Result<PartDrawing, EngraveError>> = pieces.par_iter().map(one).collect();
        drawn.into_iter().collect()
    }

    fn natural(&self) -> Result<NaturalPart, EngraveError> {
        let pieces = self.pieces(|last, index| index >= last + MEASURED_PIECE);
        let mut breaks: Vec<(u32, BreakOpens)> = Vec::new();
        let mut line = 0;
        for (index, unit) in self.units.iter().enumerate() {
            if pieces.iter().any(|piece| piece.bars.start == unit.first) {
                line = index;
            } else if index >= line + MEASURED_LINE {
                breaks.push((unit.first, BreakOpens::System));
                line = index;
            }
        }
        let drawings = self.set(&pieces, &breaks, |_| LineWidth::Natural)?;
        let systems: Vec<SystemDrawing> = drawings.into_iter().flat_map(|drawing| drawing.systems).collect();
        let staff = self.request.house.staff.height.value;
        Ok(NaturalPart { units: self.measured(&systems)?, room: self.room(), staff })
    }

    /// Each unit as it stands in natural spacing.
    fn measured(&self, systems: &[SystemDrawing]) -> Result<Vec<MeasuredUnit>, EngraveError> {
        let bars: usize = systems.iter().map(|system| system.bars.len()).sum();
        if bars != self.units.len() {
            let why = format!("it has {bars} bars where {} were asked for", self.units.len());
            return Err(EngraveError::Unreadable { why });
        }
        let mut measured = Vec::with_capacity(self.units.len());
        for system in systems {
            let mut left = system.staves.left;
            for (place, bar) in system.bars.iter().enumerate() {
                let unit = self.units[measured.len()];
                let key = self.part().keys.iter().rev().find(|(from, _)| *from <= unit.first);
                let signs = f64::from(key.map_or(0, |(_, fifths)| fifths.unsigned_abs()));
                let front = CLEF + SIGN * signs;
                let begins = self.begins(unit.first);
                // The first bar of a line has clef and key in front; that of a movement keeps them.
                let own = if place == 0 && !begins { front } else { 0.0 };
                measured.push(MeasuredUnit {
                    width: self.hundredths((bar.staves.right - left - own).max(0.0)),
                    front: self.hundredths(front),
                    above: self.hundredths(bar.staves.top - bar.all.top),
                    below: self.hundredths(bar.all.bottom - bar.staves.bottom),
                    turn: self.time(unit.first),
                    asked: self.request.asked.at(unit.first),
                    opens: begins.then(|| MovementOpening {
                        indent: self.hundredths(system.staves.left),
                        heading: self.movement_at(unit.first).map_or(0, |_| hundredths_of(pages::HEADING)),
                    }),
                });
                left = bar.staves.right;
            }
        }
        Ok(measured)
    }

    /// The part set with the lines that were chosen.
    fn drawn(&self, systems: &[System]) -> Result<DrawnPart, EngraveError> {
        let starts: BTreeSet<usize> = systems.iter().map(|system| system.first).collect();
        let pieces = self.pieces(|_, index| starts.contains(&index));
        let breaks: Vec<(u32, BreakOpens)> = systems
            .iter()
            .skip(1)
            .map(|system| (self.units[system.first].first, BreakOpens::System))
            .collect();
        let hundredths = self.width();
        let setting = |piece: &PartPiece| {
            let ends = piece.bars.end as usize >= self.copy.bars.len() || self.begins(piece.bars.end);
            LineWidth::Stretched { hundredths, last: if ends { LastLine::Short } else { LastLine::Full } }
        };
        let mut drawn = DrawnPart { systems: Vec::new(), glyphs: BTreeMap::new(), notes: BTreeSet::new() };
        for drawing in self.set(&pieces, &breaks, setting)? {
            drawn.systems.extend(drawing.systems);
            drawn.glyphs.extend(drawing.glyphs);
            drawn.notes.extend(drawing.notes);
        }
        if drawn.systems.len() != systems.len() {
            let why = format!("it has {} lines where {} were asked for", drawn.systems.len(), systems.len());
            return Err(EngraveError::Unreadable { why });
        }
        Ok(drawn)
    }

    /// Puts the bar numbers in, as the house wants them; the first bar of a movement bears none.
    fn number(&self, drawn: &mut DrawnPart, systems: &[System]) {
        let every = self.request.house.bars.numbers.value.as_str();
        for (system, drawing) in systems.iter().zip(&mut drawn.systems) {
            let count = match every {
                "none" => 0,
                "bars" => system.end - system.first,
                _ => 1,
            };
            let lefts: Vec<f64> = std::iter::once(drawing.staves.left)
                .chain(drawing.bars.iter().map(|bar| bar.staves.right))
                .take(count)
                .collect();
            for (left, unit) in lefts.into_iter().zip(&self.units[system.first..]) {
                let bar = self.request.score.bars.get(unit.first as usize);
                let label = bar.map_or("", |bar| bar.label.as_str());
                if !self.begins(unit.first) && !label.is_empty() {
                    numbers::put(drawing, left, label);
                }
            }
        }
    }

    /// The same lines on pages by the heights that they came to have.
    fn paged(&self, room: &PaperRoom, systems: &[System], outlines: &[StaffOutline]) -> Vec<System> {
        let line = |(system, outline): (&System, &StaffOutline)| {
            let movement = self.movement_at(self.units[system.first].first);
            let heading = movement.map_or(0, |_| hundredths_of(pages::HEADING));
            PossibleLine {
                first: system.first,
                end: system.end,
                cost: 0,
                stretch: None,
                above: self.hundredths(outline.above()) + heading,
                below: self.hundredths(outline.below()),
                movement: begins(system.first, movement.is_some()),
                asked: self.request.asked.at(self.units[system.first].first),
            }
        };
        let lines = PossibleLines::new(systems.iter().zip(outlines).map(line).collect());
        let times: Vec<TurnTime> = self.units.iter().map(|unit| self.time(unit.first)).collect();
        let distance = |upper: usize, lower: usize| {
            self.distance(room, &outlines[upper], &outlines[lower], &lines.lines[lower])
        };
        let found = choose(&lines, &times, room, (Rushed::Priced, i64::MAX), distance);
        found.map_or_else(|| systems.to_vec(), |found| found.systems)
    }

    fn distance(
        &self,
        room: &PaperRoom,
        upper: &StaffOutline,
        lower: &StaffOutline,
        line: &PossibleLine,
    ) -> i64 {
        let near = if line.is_movement() {
            self.hundredths(upper.below()) + line.above
        } else {
            self.hundredths(upper.distance(lower))
        };
        room.apart.max(near + room.between)
    }

    /// The first bar of each system, and what it opens.
    fn breaks(&self, systems: &[System], names: &[PageName]) -> Vec<(u32, BreakOpens)> {
        let opened = |system: &System, blank: usize| BreakOpens::Page { name: names[system.page], blank };
        let first =
            systems.first().map(|system| (self.units[system.first].first, opened(system, system.page)));
        let others = systems.windows(2).map(|pair| {
            let opens = match pair[1].page - pair[0].page {
                0 => BreakOpens::System,
                on => opened(&pair[1], on - 1),
            };
            (self.units[pair[1].first].first, opens)
        });
        first.into_iter().chain(others).collect()
    }

    /// Width of a line, hundredths of a staff height.
    fn width(&self) -> u32 {
        let house = self.request.house;
        let width = house.paper.width.value - 2 * house.paper.sides.value;
        u32::try_from(width * 100 / house.staff.height.value.max(1)).unwrap_or(u32::MAX)
    }

    fn drawing_width(&self) -> f64 {
        f64::from(self.width()) * UNITS / 100.0
    }

    /// Drawing units as hundredths of a millimetre.
    pub(super) fn hundredths(&self, units: f64) -> i64 {
        let height = millimetres(self.request.house.staff.height.value);
        #[expect(clippy::cast_possible_truncation, reason = "a length on paper")]
        let hundredths = (units * height * 100.0 / UNITS).round() as i64;
        hundredths
    }

    fn room(&self) -> PaperRoom {
        let house = self.request.house;
        let page = (house.paper.height.value - house.paper.head.value - house.paper.foot.value) * 10;
        let staves = i64::from(self.part().staves.max(1));
        let staff = house.staff.height.value * 10;
        let count = |number: i64| usize::try_from(number / staves).unwrap_or(1).max(1);
        PaperRoom {
            width: (house.paper.width.value - 2 * house.paper.sides.value) * 10,
            first_height: page - hundredths_of(pages::first_head(self.request)),
            height: page - hundredths_of(pages::HEAD),
            // Staves of one part stand about a staff height and a half apart.
            staff: staff * staves + (staves - 1) * staff * 3 / 2,
            between: house.staff.between.value * 10,
            apart: house.staff.apart.value * 10,
            systems_first: count(house.pages.systems_first.value),
            systems: count(house.pages.systems.value),
            first: BookletSide::Right,
            turn: self.request.turn_needed(),
            blank: Blank::Never,
            fold: FoldOuts::Never,
            movements: if house.movements.start.value == "new page" {
                MovementPages::NewPage
            } else {
                MovementPages::Anywhere
            },
        }
    }

    fn time(&self, bar: u32) -> TurnTime {
        self.times.get(bar as usize).copied().unwrap_or_default()
    }

    /// A bar as people say it, with its movement where there are several.
    fn label(&self, bar: u32) -> SaidPlace {
        let score = self.request.score;
        let label = score.bars.get(bar as usize).map_or("", |bar| bar.label.as_str());
        SaidPlace::bar(label).of_movement(score.movement_said(bar))
    }

    fn bar_of(&self, system: &System) -> SaidPlace {
        self.label(self.units[system.first].first)
    }

    fn turns(&self, systems: &[System], room: &PaperRoom, names: &[PageName]) -> Vec<PageEnd> {
        let ends = systems.windows(2).filter(|pair| pair[0].page != pair[1].page);
        ends.map(|pair| {
            let time = self.time(self.units[pair[1].first].first);
            let kind = match (pair[0].side.is_turned(pair[1].side), time.is_rushed(room.turn)) {
                _ if pair[1].side == BookletSide::FoldOut => PageEndKind::FoldsOut,
                (false, _) => PageEndKind::Facing,
                (true, false) => PageEndKind::Turned,
                (true, true) => PageEndKind::Rushed,
            };
            PageEnd { page: names[pair[0].page], bar: self.bar_of(&pair[1]), time, kind }
        })
        .collect()
    }

    fn remarks(&self, drawn: &DrawnPart) -> Vec<BookletRemark> {
        let part = self.part();
        if part.notes.iter().all(|note| note.pitch.is_rest()) {
            return vec![BookletRemark::Tacet];
        }
        let mut remarks = Vec::new();
        let is_hidden = |note: &Note| {
            let element = self.request.document.element(note.node);
            element.is_some_and(|element| element.attribute("print-object").as_deref() == Some("no"))
        };
        let in_rest =
            |note: &Note| self.rests.iter().any(|(first, last)| (*first..=*last).contains(&note.bar));
        let is_missing =
            |note: &&Note| !drawn.notes.contains(&note_name(note.node)) && !is_hidden(note) && !in_rest(note);
        let missing: Vec<&Note> = part.notes.iter().filter(is_missing).collect();
        if let Some(first) = missing.first() {
            let bar = self.label(first.bar);
            remarks.push(BookletRemark::NotesNotDrawn { count: missing.len(), bar });
        }
        for (first, last) in &self.cues.missing {
            let bars = (self.label(*first), self.label(*last));
            remarks.push(BookletRemark::NoCue { bars, count: last - first + 1 });
        }
        if part.staves > 1 {
            remarks.push(BookletRemark::RestsWrittenOut);
        }
        remarks
    }
}
