//! The library's SVG made fit to stand inside another picture.
//!
//! Boxes and empty groups go, ids stay only on notes (two slices in one page would clash), glyphs are named
//! so that the same glyph is the same in every slice, text gets the fonts of [`crate::fonts`].

use std::collections::BTreeMap;
use std::fmt::Write as _;

use arcata_xml::{escape, seen};
use roxmltree::{Document, Node};

use crate::drawing::is_class;

/// What groups of a drawing are moved by, by their ids; those without a place are left out.
pub(crate) type Moves = BTreeMap<String, Option<Move>>;

/// To the right and down, drawing units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Move {
    pub(crate) right: f64,
    pub(crate) down: f64,
}

/// The drawing without its outer frames: glyphs first, then the system.
pub(crate) fn content(tree: &Document<'_>) -> String {
    let mut out = String::new();
    for node in tree.descendants() {
        if node.has_tag_name("defs") {
            out.push_str("<defs>");
            node.children().for_each(|glyph| write(glyph, &Moves::new(), &mut out));
            out.push_str("</defs>");
        } else if is_class(node, "definition-scale") {
            out.push_str(r#"<g class="music" font-family="Liberation Serif, Times, serif">"#);
            node.children().for_each(|child| write(child, &Moves::new(), &mut out));
            out.push_str("</g>");
        }
    }
    out
}

/// One group of a drawing, without the glyphs that it refers to.
pub(crate) fn group(node: Node<'_, '_>, moves: &Moves) -> String {
    let mut out = String::from(r#"<g class="music" font-family="Liberation Serif, Times, serif">"#);
    write(node, moves, &mut out);
    out.push_str("</g>");
    out
}

/// The glyphs of a drawing: name and `<symbol>` or path.
pub(crate) fn glyphs(tree: &Document<'_>) -> Vec<(String, String)> {
    let defined =
        tree.descendants().filter(|node| node.has_tag_name("defs")).flat_map(|defs| defs.children());
    let named = defined.filter_map(|node| {
        let id = node.attribute("id")?;
        let mut out = String::new();
        write(node, &Moves::new(), &mut out);
        Some((format!("glyph-{}", glyph(id)), out))
    });
    named.collect()
}

fn write(node: Node<'_, '_>, moves: &Moves, out: &mut String) {
    if let Some(text) = node.text().filter(|_| node.is_text()) {
        // Line breaks between elements are layout of the file.
        if !text.trim().is_empty() {
            out.push_str(&escape(&seen(text)));
        }
        return;
    }
    if !node.is_element() || is_class(node, "bounding-box") {
        return;
    }
    let moved = node.attribute("id").and_then(|id| moves.get(id));
    if moved == Some(&None) {
        return;
    }
    let mut inner = String::new();
    node.children().for_each(|child| write(child, moves, &mut inner));
    let name = node.tag_name().name();
    if inner.is_empty() && matches!(name, "g" | "text" | "tspan") {
        return;
    }
    let _ = write!(out, "<{name}");
    for attribute in node.attributes() {
        let (name, value) = (attribute.name(), attribute.value());
        match name {
            "id" if node.parent().is_some_and(|parent| parent.has_tag_name("defs")) => {
                let _ = write!(out, r#" id="glyph-{}""#, glyph(value));
            }
            "id" if !value.starts_with("note-") => {}
            "href" => {
                let _ = write!(out, r##" href="#glyph-{}""##, glyph(value.trim_start_matches('#')));
            }
            // Staff lines, stems and bars are the only paths without a fill of their own.
            "font-family" if value.contains("Bravura") => out.push_str(r#" font-family="Bravura""#),
            "font-family" => {}
            _ => {
                let _ = write!(out, r#" {name}="{}""#, escape(&seen(value)));
            }
        }
    }
    if let Some(Some(Move { right, down })) = moved {
        let _ = write!(out, r#" transform="translate({right:.0} {down:.0})""#);
    }
    out.push_str(style(node));
    let _ = write!(out, ">{inner}</{name}>");
}

/// The library's style sheet, said on the groups themselves: a style sheet inside one picture would reach
/// the others on the page. (What it says: tempo, rehearsal, ending and fingering bold; directions, dynamics
/// and bar numbers slanted; shapes outlined in the colour of the text.)
fn style(node: Node<'_, '_>) -> &'static str {
    let name = node.tag_name().name();
    if matches!(name, "path" | "polygon" | "polyline" | "rect" | "ellipse")
        && node.attribute("stroke").is_none()
        && !node.ancestors().any(|above| above.has_tag_name("defs"))
    {
        return r#" stroke="currentColor""#;
    }
    let Some(classes) = node.attribute("class").filter(|_| name == "g") else { return "" };
    let has = |wanted: &[&str]| classes.split(' ').any(|class| wanted.contains(&class));
    if has(&["ending", "fing", "reh", "tempo"]) {
        r#" font-weight="bold""#
    } else if has(&["dir", "dynam", "mNum"]) {
        r#" font-style="italic""#
    } else {
        ""
    }
}

/// `E0A4` of `E0A4-x126zpe5`: the code of the glyph in the music font (SMuFL).
fn glyph(id: &str) -> &str {
    id.split('-').next().unwrap_or(id)
}
