//! Lines of music on pages, with what stands above them.

use std::fmt::Write as _;

use arcata_xml::{escape, seen};

use super::breaking::System;
use super::engraving::SystemDrawing;
use super::house::{House, HouseChoice};
use super::outline::StaffOutline;
use super::page_name::PageName;
use super::rests::BarUnit;
use super::setter::{DrawnPart, Setter};
use super::{BarOnPage, BookletRequest, PageEnd, PageEndKind, UNITS, millimetres, rights};
use crate::Picture;
use crate::fonts::WORDS;
use crate::picture::wrapped;
use crate::sheet::rounded;

/// Height of the head of every page but the first, mm.
pub(super) const HEAD: f64 = 9.0;
/// Height of the heading of a movement, mm.
pub(super) const HEADING: f64 = 8.0;
/// Sizes of letters, mm.
const MOVEMENT: f64 = 4.6;
const TITLE: f64 = 7.0;
const NAME: f64 = 5.0;
const RUNNING: f64 = 3.6;
const SMALL: f64 = 2.6;
/// How thick the mark in the margin is, mm.
const MARGIN_MARK: f64 = 0.9;
/// From staff to staff, staff heights, where nothing asks for more: on last pages lines are not drawn apart.
const USUAL_PITCH: f64 = 3.0;
/// The same for pages that end early because of a turn: lines that stand further apart look lost.
const WIDEST_PITCH: f64 = 4.2;

/// Height of the head of the first page, mm.
pub(super) fn first_head(request: &BookletRequest<'_>) -> f64 {
    let title = title_lines(request).len();
    #[expect(clippy::cast_precision_loss, reason = "a few lines")]
    let title = title as f64 * TITLE * 1.2;
    title + NAME * 1.5 + 5.0
}

/// `<defaults>` of the part: size of the staff, paper and margins (MusicXML 4.0: 40 tenths to a staff).
pub(super) fn defaults(house: &House) -> String {
    let staff = millimetres(house.staff.height.value);
    let tenths = |value: i64| rounded(millimetres(value) * 40.0 / staff);
    let paper = &house.paper;
    format!(
        "<defaults><scaling><millimeters>{}</millimeters><tenths>40</tenths></scaling><page-layout>\
         <page-height>{}</page-height><page-width>{}</page-width><page-margins type=\"both\">\
         <left-margin>{3}</left-margin><right-margin>{3}</right-margin><top-margin>{4}</top-margin>\
         <bottom-margin>{5}</bottom-margin></page-margins></page-layout></defaults>",
        rounded(staff),
        tenths(paper.height.value),
        tenths(paper.width.value),
        tenths(paper.sides.value),
        tenths(paper.head.value),
        tenths(paper.foot.value)
    )
}

/// What a page is made of.
struct Leaf<'a> {
    setter: &'a Setter<'a>,
    /// From 0.
    page: usize,
    /// Whether its outer margin is the left one.
    is_left: bool,
    lines: Vec<Placed<'a>>,
}

/// A line of music on its way to its page.
struct Placed<'a> {
    drawing: &'a SystemDrawing,
    outline: &'a StaffOutline,
    /// The bars in it.
    units: &'a [BarUnit],
    /// The heading over it.
    heading: Option<&'a str>,
    is_indented: bool,
    /// Whether something in it has changed.
    is_changed: bool,
}

/// All pages of a part.
pub(super) fn pages(
    setter: &Setter<'_>,
    drawn: &DrawnPart,
    outlines: &[StaffOutline],
    systems: &[System],
    (turns, names): (&[PageEnd], &[PageName]),
) -> (Vec<Picture>, Vec<BarOnPage>) {
    let request = setter.request;
    let house = request.house;
    let last = names.len().saturating_sub(1);
    let mut usual = USUAL_PITCH * millimetres(house.staff.height.value);
    let (mut pages, mut bars) = (Vec::new(), Vec::new());
    for (page, name) in names.iter().enumerate() {
        let drawings = systems.iter().zip(&drawn.systems).zip(outlines);
        let lines =
            drawings.filter(|((system, _), _)| system.page == page).map(|((system, drawing), outline)| {
                let bar = setter.units[system.first].first;
                let movement = setter.movement_at(bar).map(|index| request.score.movements[index].name());
                let units = &setter.units[system.first..system.end];
                let mut bars = units.iter().flat_map(|unit| unit.first..=unit.last);
                Placed {
                    drawing,
                    outline,
                    units: &setter.units[system.first..system.end],
                    heading: movement,
                    is_indented: setter.begins(bar),
                    is_changed: bars.any(|bar| request.shown.bars.contains(&bar)),
                }
            });
        let leaf = Leaf { setter, page, is_left: name.number.is_multiple_of(2), lines: lines.collect() };
        let mut content = leaf.glyphs(drawn);
        content.push_str(r#"<g class="head">"#);
        head(request, (page, *name), &mut content);
        content.push_str("</g>");
        if leaf.lines.is_empty() {
            leaf.left_blank(&mut content);
        } else {
            let most =
                if page == last { usual } else { WIDEST_PITCH * millimetres(house.staff.height.value) };
            let (pitch, foot) = leaf.place(most, &mut content, &mut bars);
            usual = usual.max(pitch.min(most));
            if let Some(turn) = turns.iter().find(|turn| turn.page == *name) {
                leaf.turn_word(turn, foot, &mut content);
            }
        }
        pages.push(Picture {
            title: document_title(request),
            content,
            width: millimetres(house.paper.width.value),
            height: millimetres(house.paper.height.value),
        });
    }
    (pages, bars)
}

impl Placed<'_> {
    /// Where its bars stand on a page: the left edge of the drawing and the first line of its first staff are at a point, mm.
    fn bars(&self, scale: f64, (x, y): (f64, f64), leaf: &Leaf<'_>) -> Vec<BarOnPage> {
        let mut left = self.drawing.staves.left;
        let height = (self.drawing.staves.bottom - self.drawing.staves.top) * scale;
        let bars = self.units.iter().zip(&self.drawing.bars).map(|(unit, bar)| {
            let across = (x + left * scale, x + bar.staves.right * scale);
            left = bar.staves.right;
            let asked = leaf.setter.request.asked.at(unit.first);
            BarOnPage { page: leaf.page, bars: (unit.first, unit.last), across, down: (y, y + height), asked }
        });
        bars.collect()
    }
}

impl Leaf<'_> {
    /// The glyphs that the lines of the page refer to.
    fn glyphs(&self, drawn: &DrawnPart) -> String {
        let mut out = String::from("<defs>");
        for (name, glyph) in &drawn.glyphs {
            let reference = format!("\"#{name}\"");
            if self.lines.iter().any(|line| line.drawing.content.contains(&reference)) {
                out.push_str(glyph);
            }
        }
        out.push_str("</defs>");
        out
    }

    /// Puts the lines one below the other, their staves as evenly as their signs allow, and not further apart than
    /// `most`; returns the distance from staff to staff and where the last line ends, mm.
    fn place(&self, most: f64, content: &mut String, bars: &mut Vec<BarOnPage>) -> (f64, f64) {
        let house = self.setter.request.house;
        let scale = millimetres(house.staff.height.value) / UNITS;
        let bottom = millimetres(house.paper.height.value - house.paper.foot.value);
        // By halving: the widest distance with which all still fits.
        let (mut low, mut high) = (0.0, most);
        for _ in 0..40 {
            let middle = f64::midpoint(low, high);
            if self.end(middle) <= bottom { low = middle } else { high = middle }
        }
        let pitch = if self.end(most) <= bottom { most } else { low };
        for (line, y) in self.lines.iter().zip(self.tops(pitch)) {
            // White in front of a first line stays white; braces in front of others stand outside.
            let left = if line.is_indented { 0.0 } else { line.drawing.staves.left };
            if let Some(heading) = line.heading {
                let at = y - line.outline.above() * scale - HEADING * 0.35;
                let middle = millimetres(house.paper.width.value) / 2.0;
                content.push_str(r#"<g class="heading">"#);
                text(content, &one_line(heading), (middle, at), MOVEMENT, "middle", "");
                content.push_str("</g>");
            }
            if line.is_changed {
                self.margin_mark(y, (line.drawing.staves.bottom - line.drawing.staves.top) * scale, content);
            }
            let side = millimetres(house.paper.sides.value) - left * scale;
            bars.extend(line.bars(scale, (side, y), self));
            let _ = write!(
                content,
                r#"<g class="system" transform="translate({} {})"><g transform="scale({scale:.6})">{}</g></g>"#,
                rounded(side),
                rounded(y - line.drawing.staves.top * scale),
                line.drawing.content
            );
        }
        (pitch, self.end(pitch))
    }

    /// An upright line in the outer margin, beside a line of music that has changed.
    fn margin_mark(&self, y: f64, height: f64, content: &mut String) {
        let paper = &self.setter.request.house.paper;
        let sides = millimetres(paper.sides.value);
        let x = if self.is_left { sides * 0.6 } else { millimetres(paper.width.value) - sides * 0.6 };
        let _ = write!(
            content,
            r#"<g class="changed"><path d="M{0} {1}V{2}" stroke="currentColor" stroke-width="{MARGIN_MARK}"/></g>"#,
            rounded(x),
            rounded(y),
            rounded(y + height)
        );
    }

    fn top(&self) -> f64 {
        let request = self.setter.request;
        let head = if self.page == 0 { first_head(request) } else { HEAD };
        millimetres(request.house.paper.head.value) + head
    }

    /// Where the first line of each system's first staff lies if they stand this far apart, or as far as they must.
    fn tops(&self, pitch: f64) -> Vec<f64> {
        let house = self.setter.request.house;
        let scale = millimetres(house.staff.height.value) / UNITS;
        let (between, apart) = (millimetres(house.staff.between.value), millimetres(house.staff.apart.value));
        let mut tops: Vec<f64> = Vec::new();
        let mut before: Option<&Placed<'_>> = None;
        for line in &self.lines {
            let above = line.outline.above() * scale + line.heading.map_or(0.0, |_| HEADING);
            let y = match (tops.last(), before) {
                (Some(last), Some(before)) => {
                    let near = match line.heading {
                        Some(_) => before.outline.below() * scale + above,
                        None => before.outline.distance(line.outline) * scale,
                    };
                    let staves = before.drawing.staves.bottom - before.drawing.staves.top;
                    (last + pitch).max(last + staves * scale + apart.max(near + between))
                }
                _ => self.top() + above,
            };
            tops.push(y);
            before = Some(line);
        }
        tops
    }

    /// Where the lowest sign of the last line ends.
    fn end(&self, pitch: f64) -> f64 {
        let scale = millimetres(self.setter.request.house.staff.height.value) / UNITS;
        let below = |line: &Placed<'_>| {
            (line.drawing.staves.bottom - line.drawing.staves.top + line.outline.below()) * scale
        };
        let last = self.tops(pitch).last().copied().zip(self.lines.last());
        last.map_or(self.top(), |(y, line)| y + below(line))
    }

    /// "V.S." where the player must turn at once, "time" where the rest begins only behind the turn.
    fn turn_word(&self, turn: &PageEnd, foot: f64, content: &mut String) {
        let request = self.setter.request;
        let house = request.house;
        let needed = request.turn_needed();
        let before = turn.time.rest.micros - turn.time.rest_after.micros;
        let word = match (turn.kind, house.pages.turn_words.value.as_str()) {
            (PageEndKind::Facing | PageEndKind::FoldsOut, _) | (_, "none") => return,
            (PageEndKind::Rushed, _) => "V.S.",
            (PageEndKind::Turned, "V.S. and time") if before < needed.micros => "time",
            (PageEndKind::Turned, _) => return,
        };
        let right = millimetres(house.paper.width.value - house.paper.sides.value);
        let lowest = millimetres(house.paper.height.value) - RUNNING;
        let style = r#" font-style="italic" font-weight="bold""#;
        content.push_str(r#"<g class="turn-word">"#);
        text(content, word, (right, (foot + RUNNING * 1.2).min(lowest)), RUNNING, "end", style);
        content.push_str("</g>");
    }

    fn left_blank(&self, content: &mut String) {
        let paper = &self.setter.request.house.paper;
        let middle = (millimetres(paper.width.value) / 2.0, millimetres(paper.height.value) / 2.0);
        text(
            content,
            &self.setter.request.wording.word("page-left-blank"),
            middle,
            RUNNING,
            "middle",
            r#" font-style="italic""#,
        );
    }
}

/// The front of a part whose music begins on page 2: title, composer, who plays.
pub(super) fn cover(request: &BookletRequest<'_>) -> Picture {
    let paper = &request.house.paper;
    let (width, height) = (millimetres(paper.width.value), millimetres(paper.height.value));
    let room = width - 2.0 * millimetres(paper.sides.value);
    let mut content = String::from(r#"<g class="head">"#);
    let mut y = height / 3.0;
    let mut put = |lines: &str, size: f64, more: &str| {
        for line in wrapped(lines, room, size) {
            y += size * 1.4;
            text(&mut content, &line, (width / 2.0, y), size, "middle", more);
        }
        y += size;
    };
    if let Some(title) = &request.score.title {
        put(title, TITLE * 1.3, "");
    }
    if let Some(composer) = &request.score.composer {
        put(&one_line(composer), NAME, "");
    }
    put(request.score.parts[request.part].name.trim(), TITLE, r#" font-weight="bold""#);
    content.push_str("</g>");
    Picture { title: document_title(request), content, width, height }
}

fn document_title(request: &BookletRequest<'_>) -> String {
    let name = &request.score.parts[request.part].name;
    match &request.score.title {
        Some(title) => format!("{title}: {name}"),
        None => name.clone(),
    }
}

fn is_on(choice: &HouseChoice, page: usize) -> bool {
    match choice.value.as_str() {
        "every page" => true,
        "first page" => page == 0,
        _ => false,
    }
}

fn title_lines(request: &BookletRequest<'_>) -> Vec<String> {
    let house = request.house;
    let width = millimetres(house.paper.width.value - 2 * house.paper.sides.value);
    match &request.score.title {
        Some(title) if is_on(&house.heads.title, 0) => wrapped(title, width, TITLE),
        _ => Vec::new(),
    }
}

/// Part name, title, composer and page number.
fn head(request: &BookletRequest<'_>, (page, name): (usize, PageName), content: &mut String) {
    let house = request.house;
    let player = request.score.parts[request.part].name.trim();
    let (left, width) = (millimetres(house.paper.sides.value), millimetres(house.paper.width.value));
    let (right, middle) = (width - left, width / 2.0);
    let mut y = millimetres(house.paper.head.value);
    if page == 0 {
        for line in title_lines(request) {
            y += TITLE;
            text(content, &line, (middle, y), TITLE, "middle", "");
            y += TITLE * 0.2;
        }
        y += NAME * 1.3;
        text(content, player, (left, y), NAME, "start", r#" font-weight="bold""#);
        if let Some(composer) = request.score.composer.as_deref().filter(|_| is_on(&house.heads.composer, 0))
        {
            text(content, &one_line(composer), (right, y), RUNNING, "end", "");
        }
        if let Some(rights) = rights(request.document) {
            let y = millimetres(house.paper.height.value - house.paper.foot.value / 2);
            text(content, &one_line(&rights), (middle, y), SMALL, "middle", "");
        }
        return;
    }
    y += RUNNING;
    let mut running = player.to_owned();
    if let Some(title) = request.score.title.as_deref().filter(|_| is_on(&house.heads.title, page)) {
        running = format!("{running} · {}", one_line(title));
    }
    text(content, &running, (middle, y), RUNNING, "middle", "");
    if is_on(&house.heads.page_numbers, page) {
        let (x, anchor) = if name.number.is_multiple_of(2) { (left, "start") } else { (right, "end") };
        text(content, &name.to_string(), (x, y), RUNNING, anchor, r#" font-weight="bold""#);
    }
    if let Some(composer) = request.score.composer.as_deref().filter(|_| is_on(&house.heads.composer, page)) {
        let (x, anchor) = if name.number.is_multiple_of(2) { (right, "end") } else { (left, "start") };
        text(content, &one_line(composer), (x, y), SMALL, anchor, "");
    }
}

fn one_line(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn text(out: &mut String, line: &str, (x, y): (f64, f64), size: f64, anchor: &str, more: &str) {
    let _ = write!(
        out,
        r#"<text x="{}" y="{}" font-family="{WORDS}" font-size="{}" text-anchor="{anchor}" fill="currentColor"{more}>{}</text>"#,
        rounded(x),
        rounded(y),
        rounded(size),
        escape(&seen(line))
    );
}
