//! The part as the engraver gets it, and its lines of music taken apart.

use std::borrow::Cow;
use std::fmt::Write as _;
use std::ops::Range;

use arcata_score::words::is_attacca;
use arcata_xml::Tag;
use roxmltree::{Document as Tree, Node};

use super::clearing::cleared;
use super::part::{BarCopy, Child, CopyLayout, PartCopy, rest_style, text_of};
use super::wide::sends_on;
use crate::drawing::{Area, boxes, is_class, lines, rectangle};
use crate::engraver::EngraveError;
use crate::note_name;

/// One line of music as engraved, in the drawing's units (720 to a staff height).
#[derive(Clone, Debug)]
pub(super) struct SystemDrawing {
    /// What is drawn, without the glyphs that it refers to.
    pub(super) content: String,
    /// Around the lines of all its staves.
    pub(super) staves: Area,
    /// Around everything in it.
    pub(super) all: Area,
    /// Around each sign in it.
    pub(super) areas: Vec<Area>,
    pub(super) bars: Vec<BarDrawing>,
}

/// One bar as engraved.
#[derive(Clone, Copy, Debug)]
pub(super) struct BarDrawing {
    /// Around its staff lines.
    pub(super) staves: Area,
    /// Around everything that begins in it.
    pub(super) all: Area,
}

/// A piece of a part on one or several lines.
#[derive(Clone, Debug)]
pub(super) struct PartDrawing {
    pub(super) systems: Vec<SystemDrawing>,
    /// Glyphs by the code that content refers to.
    pub(super) glyphs: Vec<(String, String)>,
    /// Names of the notes and rests that have a place in the drawing.
    pub(super) notes: Vec<String>,
}

/// A piece of a part that is engraved by itself.
#[derive(Clone, Debug)]
pub(super) struct PartPiece {
    pub(super) bars: Range<u32>,
    /// What holds where it begins, as `<attributes>`; empty at the beginning of the part.
    pub(super) opening: String,
    /// White in front of its first line: so many letters wide.
    pub(super) indent: usize,
}

/// A piece for the engraver: no name in front of the staff, ids on the notes, directions where it reads them.
pub(super) fn source(copy: &PartCopy, piece: &PartPiece, layout: CopyLayout<'_>) -> String {
    let mut out = String::from(r#"<score-partwise version="4.0"><part-list><score-part id="P">"#);
    // The engraver indents a first line by the name in front of it: white letters make the white.
    if piece.indent == 0 {
        out.push_str(r#"<part-name print-object="no"></part-name>"#);
    } else {
        let _ = write!(out, "<part-name>{}</part-name>", "\u{a0}".repeat(piece.indent));
    }
    out.push_str(r#"</score-part></part-list><part id="P">"#);
    let skipped = piece.bars.start as usize;
    for (number, bar) in (0_u32..).zip(&copy.bars).skip(skipped).take(piece.bars.len()) {
        let _ = write!(out, "<measure{}>", numbered(bar, number));
        let is_first = number == piece.bars.start;
        if is_first {
            // The engraver heeds breaks only where the first bar has one.
            out.push_str(r#"<print new-page="yes"/>"#);
            out.push_str(&piece.opening);
        } else if layout.print(number).is_some() {
            out.push_str(r#"<print new-system="yes"/>"#);
        }
        let led = if is_first && !piece.opening.is_empty() { bar.leading() } else { 0 };
        let children = bar.children.iter().enumerate();
        let children = children.filter(|(index, child)| *index >= led || child.tag != Tag::ATTRIBUTES);
        let children: Vec<&Child> = children.map(|(_, child)| child).collect();
        match layout.rest_from(number) {
            Some(bars) => rest(&mut out, &children, bars),
            None => {
                written(&mut out, &children);
                let next = copy.bars.get(number as usize + 1).filter(|_| number + 1 < piece.bars.end);
                out.push_str(&breadth(&children, next));
            }
        }
        out.push_str("</measure>");
    }
    out.push_str("</part></score-partwise>");
    out
}

/// The children of a bar, ids on the notes, directions where the engraver reads them.
fn written(out: &mut String, children: &[&Child]) {
    let last_note = children.iter().rposition(|child| child.tag == Tag::NOTE).unwrap_or(children.len());
    for (index, child) in children.iter().enumerate() {
        let source = child.engraved.as_ref().unwrap_or(&child.source);
        match (child.tag, child.node) {
            (Tag::NOTE, Some(node)) => {
                let _ = write!(out, r#"<note id="{}""#, note_name(node));
                out.push_str(&without_id(source.trim_start_matches("<note")));
            }
            (Tag::DIRECTION, _) if index > last_note => out.push_str(&ending(&spaced(source))),
            (Tag::DIRECTION, _) => out.push_str(&spaced(source)),
            _ => out.push_str(source),
        }
    }
}

/// What sends players on from the end of a bar, behind its last note, ends at the bar line (common practice for "Fine", "D.C." and
/// "attacca"): begun there it would stand over the next bar, or over a staff without music.
fn ending(direction: &str) -> Cow<'_, str> {
    let words = text_of(direction);
    let is_placed = ["halign=", "<offset", "<metronome"].iter().any(|name| direction.contains(name));
    if direction.contains("<words") && !is_placed && (sends_on(&words) || is_attacca(&words)) {
        Cow::Owned(direction.replace("<words", r#"<words halign="right""#))
    } else {
        Cow::Borrowed(direction)
    }
}

/// The engraver gives the rest of a whole bar no more width than its sign has. A note that is not drawn makes the bar as wide as
/// one of a half note (common practice: a bar's rest stands in a bar that can be seen); a clef that announces itself at its end
/// wants as much on both sides of the rest.
fn breadth(children: &[&Child], next: Option<&BarCopy>) -> String {
    let mut notes = children.iter().filter(|child| child.tag == Tag::NOTE);
    let (Some(rest), None) = (notes.next(), notes.next()) else { return String::new() };
    let is_clef = |child: &Child| child.tag == Tag::ATTRIBUTES && child.source.contains("<clef");
    let announces = next.is_some_and(|bar| bar.children.iter().take(bar.leading()).any(is_clef));
    let width = if announces { "<type>whole</type><dot/>" } else { "<type>half</type>" };
    match rest.duration() {
        Some(lasts) if rest.source.contains(r#"measure="yes""#) => format!(
            "<backup><duration>{lasts}</duration></backup><note print-object=\"no\"><rest/><duration>{lasts}</duration>\
             <voice>unseen</voice>{width}</note>"
        ),
        _ => String::new(),
    }
}

/// A direction with white between tempo words and the note value behind them, where the engraver leaves none.
fn spaced(direction: &str) -> Cow<'_, str> {
    const END: &str = "</words>";
    let metronome = direction.find("<metronome");
    match metronome.and_then(|metronome| direction[..metronome].rfind(END)) {
        Some(end) => Cow::Owned(format!("{}\u{a0}{}", direction[..end].trim_end(), &direction[end..])),
        None => Cow::Borrowed(direction),
    }
}

/// The bar's start tag. The engraver finds the bar of a sign by its number, and movements begin anew with 1: so
/// bars are numbered through, and the printed number is put in afterwards.
fn numbered(bar: &BarCopy, number: u32) -> String {
    let uncounted = bar.attributes.contains(r#"implicit="yes""#);
    format!(r#" number="{}"{}"#, number + 1, if uncounted { r#" implicit="yes""# } else { "" })
}

/// The engraver stops reading a bar where a rest over several begins: everything else comes before.
fn rest(out: &mut String, children: &[&Child], bars: u32) {
    let signs = children.iter().filter(|child| {
        matches!(child.tag, Tag::ATTRIBUTES | Tag::DIRECTION | Tag::SOUND)
            || child.tag == Tag::BARLINE && (bars == 1 || child.source.contains(r#"location="left""#))
    });
    signs.for_each(|child| out.push_str(child.engraved.as_ref().unwrap_or(&child.source)));
    out.push_str(&rest_style(bars));
}

/// The rest of a start tag and element without an `id` of the file's own.
fn without_id(source: &str) -> String {
    let end = source.find('>').unwrap_or(0);
    let (tag, rest) = source.split_at(end);
    match tag.find(" id=") {
        Some(start) => {
            let quote = tag[start + 4..].chars().next().unwrap_or('"');
            let value = start + 5;
            let close = tag[value..].find(quote).map_or(tag.len(), |close| value + close + 1);
            format!("{}{}{rest}", &tag[..start], &tag[close..])
        }
        None => source.to_owned(),
    }
}

/// Takes the engraver's picture apart; lines may be `width` units wide.
pub(super) fn read(svg: &str, width: f64) -> Result<PartDrawing, EngraveError> {
    let unreadable = |why: String| EngraveError::Unreadable { why };
    let tree = Tree::parse(svg).map_err(|error| unreadable(error.to_string()))?;
    let scaled = tree.descendants().find(|node| is_class(*node, "definition-scale"));
    let scaled = scaled.ok_or_else(|| unreadable("it has no drawing".to_owned()))?;
    let is_group = |node: &Node<'_, '_>, class| is_class(*node, class) && !is_class(*node, "bounding-box");
    let mut systems = Vec::new();
    for system in scaled.descendants().filter(|node| is_group(node, "system")) {
        let measures = system.descendants().filter(|node| is_group(node, "measure"));
        let staves: Vec<Area> = measures.clone().flat_map(staves).collect();
        let bars: Vec<BarDrawing> = measures.filter_map(bar_of).collect();
        let around = staves.iter().copied().reduce(Area::with);
        let around = around.ok_or_else(|| unreadable("it has a line without a staff".to_owned()))?;
        let (moves, areas) = cleared(system, &staves, width);
        systems.push(SystemDrawing {
            content: crate::cleaning::group(system, &moves),
            all: areas.iter().copied().fold(around, Area::with),
            staves: around,
            areas,
            bars,
        });
    }
    let notes =
        boxes(scaled).into_keys().filter(|name| name.starts_with("note-")).map(str::to_owned).collect();
    Ok(PartDrawing { systems, glyphs: crate::cleaning::glyphs(&tree), notes })
}

/// The staves of a bar.
fn staves<'t>(bar: Node<'t, 't>) -> impl Iterator<Item = Area> + 't {
    bar.children().filter(|node| is_class(*node, "staff")).filter_map(lines)
}

fn bar_of(bar: Node<'_, '_>) -> Option<BarDrawing> {
    let staves = staves(bar).reduce(Area::with)?;
    let all = around(bar).map_or(staves, |all| all.with(staves));
    Some(BarDrawing { staves, all })
}

/// Around everything inside a group.
pub(super) fn around(group: Node<'_, '_>) -> Option<Area> {
    let is_number = |node: &Node<'_, '_>| node.ancestors().any(|above| is_class(above, "mNum"));
    let boxed = group.descendants().filter(|node| is_class(*node, "bounding-box") && !is_number(node));
    boxed.filter_map(|node| spanned(node).or_else(|| rectangle(node))).reduce(Area::with)
}

/// What may go on over several lines of music: the engraver draws a piece on each of them, and gives all of
/// them the box of the last one.
const SPANNING: [&str; 5] = ["slur", "tie", "hairpin", "octave", "bracketSpan"];

/// Around the points by which a piece of something spanning is drawn.
fn spanned(bounding_box: Node<'_, '_>) -> Option<Area> {
    let piece = bounding_box.parent().filter(|piece| SPANNING.iter().any(|class| is_class(*piece, class)))?;
    let drawn =
        piece.descendants().filter_map(|node| node.attribute("d").or_else(|| node.attribute("points")));
    let points = drawn.flat_map(|drawn| {
        let numbers = drawn.split(|letter: char| !(letter.is_ascii_digit() || matches!(letter, '.' | '-')));
        let numbers: Vec<f64> = numbers.filter_map(|number| number.parse().ok()).collect();
        numbers.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect::<Vec<_>>()
    });
    points.map(|(x, y)| Area { left: x, top: y, right: x, bottom: y }).reduce(Area::with)
}
