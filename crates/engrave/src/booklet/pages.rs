//! Lines of music on pages, with what stands above them.

use std::fmt::Write as _;

use arcata_xml::{escape, seen};

use super::breaking::System;
use super::engraving::{PartDrawing, SystemDrawing};
use super::house::{Choice, House};
use super::{BookletRequest, UNITS, millimetres, rights};
use crate::Picture;
use crate::fonts::WORDS;
use crate::picture::wrapped;
use crate::sheet::rounded;

/// Height of the head of every page but the first, mm.
pub(super) const HEAD: f64 = 9.0;
/// Sizes of letters, mm.
const TITLE: f64 = 7.0;
const NAME: f64 = 5.0;
const RUNNING: f64 = 3.6;
const SMALL: f64 = 2.6;
/// From staff to staff, staff heights, where nothing asks for more: on last pages lines are not drawn apart.
const USUAL_PITCH: f64 = 3.4;

/// Height of the head of the first page, mm.
pub(super) fn first_head(request: &BookletRequest<'_>) -> f64 {
    let title = title_lines(request).len();
    #[expect(clippy::cast_precision_loss, reason = "a few lines")]
    let title = title as f64 * TITLE * 1.2;
    title + NAME * 1.5 + 5.0
}

/// The printed number of a page (index): right pages are odd (common practice).
pub(super) fn number(house: &House, page: usize) -> usize {
    if house.pages.first.value == "left" { page + 2 } else { page + 1 }
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

/// All pages of a part.
pub(super) fn pages(request: &BookletRequest<'_>, drawing: &PartDrawing, systems: &[System]) -> Vec<Picture> {
    let house = request.house;
    let last = systems.last().map_or(0, |system| system.page);
    let mut usual = USUAL_PITCH * millimetres(house.staff.height.value);
    let mut pages = Vec::new();
    for page in 0..=last {
        let here: Vec<&SystemDrawing> = systems
            .iter()
            .zip(&drawing.systems)
            .filter(|(system, _)| system.page == page)
            .map(|(_, drawing)| drawing)
            .collect();
        let mut content = glyphs(drawing, &here);
        head(request, page, &mut content);
        let pitch = place(request, page, (page == last).then_some(usual), &here, &mut content);
        usual = usual.max(pitch);
        pages.push(Picture {
            title: document_title(request),
            content,
            width: millimetres(house.paper.width.value),
            height: millimetres(house.paper.height.value),
        });
    }
    pages
}

/// The glyphs that the lines of a page refer to.
fn glyphs(drawing: &PartDrawing, systems: &[&SystemDrawing]) -> String {
    let mut out = String::from("<defs>");
    for (name, glyph) in &drawing.glyphs {
        let reference = format!("\"#{name}\"");
        if systems.iter().any(|system| system.content.contains(&reference)) {
            out.push_str(glyph);
        }
    }
    out.push_str("</defs>");
    out
}

/// Puts the lines of a page one below the other, their staves as evenly as their signs allow; returns the
/// distance from staff to staff, mm. Where `most` is given they are not drawn further apart.
fn place(
    request: &BookletRequest<'_>,
    page: usize,
    most: Option<f64>,
    systems: &[&SystemDrawing],
    content: &mut String,
) -> f64 {
    let house = request.house;
    let scale = millimetres(house.staff.height.value) / UNITS;
    let top = millimetres(house.paper.head.value) + if page == 0 { first_head(request) } else { HEAD };
    let bottom = millimetres(house.paper.height.value - house.paper.foot.value);
    let column = Column { systems, scale, top, between: millimetres(house.staff.between.value) };
    // By halving: the widest distance with which all still fits.
    let (mut low, mut high) = (0.0, most.unwrap_or(bottom - top));
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if column.end(middle) <= bottom { low = middle } else { high = middle }
    }
    let pitch = if column.end(high) <= bottom { high } else { low };
    for (system, y) in systems.iter().zip(column.tops(pitch)) {
        let _ = write!(
            content,
            r#"<g class="system" transform="translate({} {})"><g transform="scale({scale:.6})">{}</g></g>"#,
            rounded(millimetres(house.paper.sides.value) - system.staves.left * scale),
            rounded(y - system.staves.top * scale),
            system.content
        );
    }
    pitch
}

/// The lines of one page.
struct Column<'a> {
    systems: &'a [&'a SystemDrawing],
    scale: f64,
    top: f64,
    between: f64,
}

impl Column<'_> {
    /// Where the first line of each system's first staff lies if they stand this far apart, or as far as they
    /// must.
    fn tops(&self, pitch: f64) -> Vec<f64> {
        let mut tops: Vec<f64> = Vec::new();
        let mut under = self.top;
        for system in self.systems {
            let above = (system.staves.top - system.all.top) * self.scale;
            let y = match tops.last() {
                Some(last) => (last + pitch).max(under + self.between + above),
                None => under + above,
            };
            under = y + (system.all.bottom - system.staves.top) * self.scale;
            tops.push(y);
        }
        tops
    }

    fn end(&self, pitch: f64) -> f64 {
        let last = self.systems.last();
        let below = last.map_or(0.0, |system| (system.all.bottom - system.staves.top) * self.scale);
        self.tops(pitch).last().map_or(self.top, |y| y + below)
    }
}

fn document_title(request: &BookletRequest<'_>) -> String {
    let name = &request.score.parts[request.part].name;
    match &request.score.title {
        Some(title) => format!("{title}: {name}"),
        None => name.clone(),
    }
}

fn is_on(choice: &Choice, page: usize) -> bool {
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
fn head(request: &BookletRequest<'_>, page: usize, content: &mut String) {
    let house = request.house;
    let name = request.score.parts[request.part].name.trim();
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
        text(content, name, (left, y), NAME, "start", r#" font-weight="bold""#);
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
    let mut running = name.to_owned();
    if let Some(title) = request.score.title.as_deref().filter(|_| is_on(&house.heads.title, page)) {
        running = format!("{running} · {}", one_line(title));
    }
    text(content, &running, (middle, y), RUNNING, "middle", "");
    let number = number(house, page);
    if is_on(&house.heads.page_numbers, page) {
        let (x, anchor) = if number.is_multiple_of(2) { (left, "start") } else { (right, "end") };
        text(content, &number.to_string(), (x, y), RUNNING, anchor, r#" font-weight="bold""#);
    }
    if let Some(composer) = request.score.composer.as_deref().filter(|_| is_on(&house.heads.composer, page)) {
        let (x, anchor) = if number.is_multiple_of(2) { (right, "end") } else { (left, "start") };
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
