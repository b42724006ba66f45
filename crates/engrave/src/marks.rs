//! Where everything stands in a finished picture: measured in what is printed, letters by their outlines, not taken from
//! what the engraver says of it.

use std::fmt::Write as _;

use resvg::tiny_skia::{PathSegment, Point, Rect, Transform};
use resvg::usvg::{Group, Node, Options, Tree};

use crate::drawing::Area;
use crate::fonts;
use crate::sheet::{Picture, PictureError};

/// Something that is drawn.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnMark {
    /// The sign that it belongs to: marks of one sign have one number.
    pub sign: usize,
    /// What kind of sign it is: `note`, `slur`, `tempo`, `bar-number` ….
    pub kind: String,
    /// Around it, mm from the upper left corner of the page. A long curve or line is several marks.
    pub area: Area,
}

/// Kinds that are long and slanted: a box around all of one says nothing.
const LONG: [&str; 5] = ["slur", "tie", "hairpin", "beam", "ending"];
/// Parts a segment of such a path is cut into.
const PIECES: u8 = 24;
/// Stands between a sign's number and its kind.
const BETWEEN: char = '~';

impl Picture {
    /// All marks of the picture.
    ///
    /// # Errors
    /// A picture without size.
    pub fn marks(&self) -> Result<Vec<DrawnMark>, PictureError> {
        let options = Options { fontdb: fonts::database(), ..Options::default() };
        let tree = Tree::from_str(&numbered(&self.svg()), &options);
        let tree = tree.map_err(|error| PictureError(error.to_string()))?;
        let mut marks = DrawnMarks { found: Vec::new(), scale: self.width / f64::from(tree.size().width()) };
        marks.group(tree.root(), Transform::identity(), (0, ""));
        Ok(marks.found)
    }
}

/// The kinds as names that the library keeps: it knows no classes, but names of groups.
fn numbered(svg: &str) -> String {
    let mut out = String::with_capacity(svg.len());
    let mut rest = svg;
    let mut number = 0;
    while let Some(at) = rest.find("<g ") {
        let (before, from) = rest.split_at(at);
        let (tag, after) = from.split_at(from.find('>').unwrap_or(from.len()));
        out.push_str(before);
        if tag.contains(" id=\"glyph-") {
            out.push_str(tag);
            rest = after;
            continue;
        }
        number += 1;
        let value = |name: &str| {
            let start = tag.find(name)? + name.len();
            Some(&tag[start..start + tag[start..].find('"')?])
        };
        let kind = value(" class=\"").and_then(|kinds| kinds.split(' ').next()).unwrap_or_default();
        let transform =
            value(" transform=\"").map_or_else(String::new, |text| format!(" transform=\"{text}\""));
        let _ = write!(out, "<g id=\"{number}{BETWEEN}{kind}\"{transform}{}", kept(tag));
        rest = after;
    }
    out.push_str(rest);
    out
}

/// What of a group's attributes shapes letters and lines.
fn kept(tag: &str) -> String {
    let mut out = String::new();
    for name in [
        " font-family=\"",
        " font-weight=\"",
        " font-style=\"",
        " font-size=\"",
        " stroke-width=\"",
        " stroke=\"",
        " fill=\"",
    ] {
        let Some(start) = tag.find(name) else { continue };
        let end = tag[start + name.len()..].find('"').map_or(tag.len(), |end| start + name.len() + end + 1);
        out.push_str(&tag[start..end]);
    }
    out
}

struct DrawnMarks {
    found: Vec<DrawnMark>,
    /// Millimetres in a unit of the tree.
    scale: f64,
}

impl DrawnMarks {
    /// Goes through a group. Transforms are followed here: what the library gives as absolute counts those of glyphs that are
    /// used by reference twice.
    fn group(&mut self, group: &Group, outer: Transform, (sign, kind): (usize, &str)) {
        let named = group.id().split_once(BETWEEN).filter(|(_, kind)| !kind.is_empty());
        let (sign, kind) = named.map_or((sign, kind), |(number, kind)| (number.parse().unwrap_or(0), kind));
        let inner = outer.pre_concat(group.transform());
        for child in group.children() {
            match child {
                Node::Group(group) => self.group(group, inner, (sign, kind)),
                Node::Path(path) if LONG.contains(&kind) => {
                    for (from, to) in pieces(path.data().segments(), inner) {
                        let (left, right) = (from.x.min(to.x), from.x.max(to.x));
                        self.put(sign, kind, (left, from.y.min(to.y), right, from.y.max(to.y)));
                    }
                }
                Node::Path(path) => self.around(sign, kind, path.bounding_box(), inner),
                Node::Text(text) => self.around(sign, kind, text.flattened().bounding_box(), inner),
                Node::Image(_) => {}
            }
        }
    }

    fn around(&mut self, sign: usize, kind: &str, area: Rect, transform: Transform) {
        let area = area.transform(transform).unwrap_or(area);
        self.put(sign, kind, (area.left(), area.top(), area.right(), area.bottom()));
    }

    fn put(&mut self, sign: usize, kind: &str, (left, top, right, bottom): (f32, f32, f32, f32)) {
        let millimetres = |length: f32| f64::from(length) * self.scale;
        let area = Area {
            left: millimetres(left),
            top: millimetres(top),
            right: millimetres(right),
            bottom: millimetres(bottom),
        };
        self.found.push(DrawnMark { sign, kind: kind.to_owned(), area });
    }
}

/// The ends of short pieces of a path.
fn pieces(segments: impl Iterator<Item = PathSegment>, transform: Transform) -> Vec<(Point, Point)> {
    let mut from = Point::zero();
    let mut start = from;
    let mut found = Vec::new();
    for segment in segments {
        let (points, to) = match segment {
            PathSegment::MoveTo(to) => {
                (from, start) = (to, to);
                continue;
            }
            PathSegment::LineTo(to) => ([from, from, to, to], to),
            PathSegment::QuadTo(middle, to) => ([from, middle, middle, to], to),
            PathSegment::CubicTo(one, two, to) => ([from, one, two, to], to),
            PathSegment::Close => ([from, from, start, start], start),
        };
        let at = |piece: u8| {
            let (share, left) =
                (f32::from(piece) / f32::from(PIECES), 1.0 - f32::from(piece) / f32::from(PIECES));
            let weights = [
                left * left * left,
                3.0 * left * left * share,
                3.0 * left * share * share,
                share * share * share,
            ];
            let sum = |each: fn(&Point) -> f32| {
                points.iter().zip(weights).map(|(point, weight)| each(point) * weight).sum()
            };
            let mut point = Point::from_xy(sum(|point| point.x), sum(|point| point.y));
            transform.map_point(&mut point);
            point
        };
        found.extend((0..PIECES).map(|piece| (at(piece), at(piece + 1))));
        from = to;
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_and_lines_are_found_where_they_are_drawn() {
        let picture = Picture {
            title: String::new(),
            content: format!(
                r#"<g class="system" transform="translate(10 20)"><g class="tempo"><text x="5" y="10" font-family="{}" font-size="5">x</text></g><g class="bar"><path d="M0 0L0 8" stroke="black" stroke-width="0.2"/></g></g>"#,
                fonts::WORDS
            ),
            width: 100.0,
            height: 50.0,
        };
        let marks = picture.marks().unwrap();
        let of = |kind: &str| marks.iter().find(|mark| mark.kind == kind).map(|mark| mark.area).unwrap();
        let (word, bar) = (of("tempo"), of("bar"));
        // An x has no more than half of its size in height, and stands on its line.
        assert!(
            (word.bottom - 30.0).abs() < 0.2 && word.bottom - word.top < 2.6 && word.left > 14.9,
            "{word:?}"
        );
        assert!((bar.left - 10.0).abs() < 0.1 && (bar.bottom - bar.top - 8.0).abs() < 0.1, "{bar:?}");
    }
}
