//! The part as the engraver gets it, and its lines of music taken apart.

use std::borrow::Cow;
use std::fmt::Write as _;

use arcata_score::Part;
use arcata_xml::{NodeId, Tag, escape};
use roxmltree::{Document as Tree, Node};

use super::part::{BarCopy, Layout, PartCopy, rest_style};
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

/// A part on one or several lines.
#[derive(Clone, Debug)]
pub(super) struct PartDrawing {
    pub(super) systems: Vec<SystemDrawing>,
    /// Glyphs by the code that content refers to.
    pub(super) glyphs: Vec<(String, String)>,
    /// Notes of the part that have no place in the drawing.
    pub(super) missing: Vec<NodeId>,
}

/// The part for the engraver: no name in front of the staff, ids on the notes, directions where it reads them.
pub(super) fn source(copy: &PartCopy, layout: Layout<'_>) -> String {
    let mut out = String::from(
        r#"<score-partwise version="4.0"><part-list><score-part id="P"><part-name print-object="no"></part-name></score-part></part-list><part id="P">"#,
    );
    for (number, bar) in (0_u32..).zip(&copy.bars) {
        let _ = write!(out, "<measure{}>", numbered(bar, number));
        if number == 0 {
            // The engraver heeds breaks only where the first bar has one.
            out.push_str(r#"<print new-page="yes"/>"#);
        } else if layout.print(number).is_some() {
            out.push_str(r#"<print new-system="yes"/>"#);
        }
        match layout.rest_from(number) {
            Some(bars) => rest(&mut out, bar, bars),
            None => bar.children.iter().for_each(|child| {
                let source = child.engraved.as_ref().unwrap_or(&child.source);
                match (child.tag, child.node) {
                    (Tag::NOTE, Some(node)) => {
                        let _ = write!(out, r#"<note id="{}""#, note_name(node));
                        out.push_str(&without_id(source.trim_start_matches("<note")));
                    }
                    (Tag::DIRECTION, _) => out.push_str(&spaced(source)),
                    _ => out.push_str(source),
                }
            }),
        }
        out.push_str("</measure>");
    }
    out.push_str("</part></score-partwise>");
    out
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

/// The printed numbers in the place of those that the engraver was given.
fn with_labels(content: String, labels: &[&str]) -> String {
    const OPENED: &str = r#"class="mNum"#;
    if !content.contains(OPENED) {
        return content;
    }
    let mut out = String::with_capacity(content.len());
    let mut rest = content.as_str();
    while let Some(start) = rest.find(OPENED) {
        let (before, number) = rest.split_at(start);
        out.push_str(before);
        let end = number.find("</text>").unwrap_or(number.len());
        let (group, after) = number.split_at(end);
        // The number is the last text of its group: `>12<`.
        let digits = group.rfind(|letter: char| letter.is_ascii_digit()).map_or(0, |at| at + 1);
        let first = group[..digits].rfind('>').map_or(digits, |at| at + 1);
        let index = group[first..digits].parse::<usize>().ok().and_then(|number| number.checked_sub(1));
        let label = index.and_then(|index| labels.get(index)).copied().unwrap_or_default();
        out.push_str(&group[..first]);
        out.push_str(&escape(label));
        out.push_str(&group[digits..]);
        rest = after;
    }
    out.push_str(rest);
    out
}

/// The engraver stops reading a bar where a rest over several begins: everything else comes before.
fn rest(out: &mut String, bar: &BarCopy, bars: u32) {
    let signs = bar.children.iter().filter(|child| {
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

/// Takes the engraver's picture apart. Labels are the printed numbers of the bars; without them none is printed.
pub(super) fn read(
    svg: &str,
    labels: &[&str],
    part: &Part,
    rests: &[(u32, u32)],
) -> Result<PartDrawing, EngraveError> {
    let unreadable = |why: String| EngraveError::Unreadable { why };
    let tree = Tree::parse(svg).map_err(|error| unreadable(error.to_string()))?;
    let scaled = tree.descendants().find(|node| is_class(*node, "definition-scale"));
    let scaled = scaled.ok_or_else(|| unreadable("it has no drawing".to_owned()))?;
    let boxes = boxes(scaled);
    let is_group = |node: &Node<'_, '_>, class| is_class(*node, class) && !is_class(*node, "bounding-box");
    let mut systems = Vec::new();
    for system in scaled.descendants().filter(|node| is_group(node, "system")) {
        let bars: Vec<BarDrawing> =
            system.descendants().filter(|node| is_group(node, "measure")).filter_map(bar_of).collect();
        let staves = bars.iter().map(|bar| bar.staves).reduce(Area::with);
        let staves = staves.ok_or_else(|| unreadable("it has a line without a staff".to_owned()))?;
        let all = around(system).map_or(staves, |all| all.with(staves));
        systems.push(SystemDrawing {
            content: with_labels(crate::cleaning::group(system), labels),
            staves,
            all,
            bars,
        });
    }
    let missing = part.notes.iter().filter(|note| {
        let in_rest = rests.iter().any(|(first, last)| (*first..=*last).contains(&note.bar));
        !in_rest && !boxes.contains_key(note_name(note.node).as_str())
    });
    Ok(PartDrawing {
        systems,
        glyphs: crate::cleaning::glyphs(&tree),
        missing: missing.map(|note| note.node).collect(),
    })
}

fn bar_of(bar: Node<'_, '_>) -> Option<BarDrawing> {
    let staves =
        bar.children().filter(|node| is_class(*node, "staff")).filter_map(lines).reduce(Area::with)?;
    let all = around(bar).map_or(staves, |all| all.with(staves));
    Some(BarDrawing { staves, all })
}

/// Around everything inside a group.
fn around(group: Node<'_, '_>) -> Option<Area> {
    let boxed = group.descendants().filter(|node| is_class(*node, "bounding-box"));
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
