//! Words and signs that lie over each other are drawn apart.
//!
//! The engraver finds places for most signs, but sets words that stand over one note on top of each other, and letters
//! into slurs. So words and dynamics are looked at once more, from the staff outwards, and each goes as far away from
//! its staff as it must to touch nothing. Words that would stand out over the end of the line begin earlier.

use roxmltree::Node;

use super::engraving::around;
use crate::cleaning::{Move, Moves};
use crate::drawing::{Area, is_class, rectangle};

/// What can be moved without saying something else.
const MOVABLE: [&str; 5] = ["dir", "tempo", "reh", "dynam", "harm"];
/// Groups around other groups: their parts are looked at.
const FRAMES: [&str; 7] = ["system", "section", "measure", "staff", "layer", "beam", "tuplet"];
/// White around words, drawing units (720 to a staff height).
const WHITE: f64 = 24.0;
/// White beside words, drawing units: letters are drawn a little wider than the engraver takes them to be.
const BESIDE: f64 = 60.0;
/// A letter of a serif face, as a share of its size: how wide at most on an average, how far above and below its line.
const LETTER: f64 = 0.6;
/// See [`LETTER`].
const RISES: f64 = 0.75;
/// See [`LETTER`].
const SINKS: f64 = 0.25;
/// Between words side by side.
const SPACE: f64 = 90.0;
/// Further from its place than two staff heights nobody looks for a word.
const FURTHEST: f64 = 2.5 * 720.0;

/// A word or sign that may move.
struct Movable<'t> {
    id: &'t str,
    area: Area,
    /// Whether it stands over its staff.
    goes: ClearingWay,
    /// From the staff.
    far: f64,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum ClearingWay {
    Up,
    Down,
}

/// What is to be moved in a line of music so that nothing touches, and where everything is then.
pub(super) fn cleared(system: Node<'_, '_>, staves: &[Area], width: f64) -> (Moves, Vec<Area>) {
    let mut moves = Moves::new();
    let mut areas = staves.to_vec();
    let mut movable = Vec::new();
    look(system, &mut areas, &mut |node| match node.attribute("id") {
        Some(id) if is_class(node, "mNum") => {
            moves.insert(id.to_owned(), None);
        }
        Some(id) => movable.extend(around(node).map(|area| placed(id, area, staves))),
        None => {}
    });
    movable.sort_by(|one, other| {
        one.far
            .total_cmp(&other.far)
            .then(one.area.left.total_cmp(&other.area.left))
            .then(one.id.cmp(other.id))
    });
    let mut words = Vec::new();
    for word in movable {
        let over = (word.area.right - width).max(0.0).min(word.area.left.max(0.0));
        let area = Area { left: word.area.left - over, right: word.area.right - over, ..word.area };
        // Words side by side want a space between them.
        let down = free(area, word.goes, &areas, &words);
        let there = Area { top: area.top + down, bottom: area.bottom + down, ..area };
        areas.push(there);
        words.push(Area { left: there.left - SPACE, right: there.right + SPACE, ..there });
        if over > 0.0 || down != 0.0 {
            moves.insert(word.id.to_owned(), Some(Move { right: -over, down }));
        }
    }
    (moves, areas)
}

fn placed<'t>(id: &'t str, area: Area, staves: &[Area]) -> Movable<'t> {
    let middle = f64::midpoint(area.top, area.bottom);
    let from = |staff: &Area| (middle - f64::midpoint(staff.top, staff.bottom)).abs();
    let nearest = staves.iter().min_by(|one, other| from(one).total_cmp(&from(other)));
    let goes = if nearest.is_some_and(|staff| middle > f64::midpoint(staff.top, staff.bottom)) {
        ClearingWay::Down
    } else {
        ClearingWay::Up
    };
    Movable { id, area, goes, far: nearest.map_or(0.0, from) }
}

/// How far down (up: less than nothing) an area goes until it touches none.
fn free(area: Area, goes: ClearingWay, areas: &[Area], words: &[Area]) -> f64 {
    let mut down = 0.0;
    // Each round leaves one area behind at least.
    for _ in 0..areas.len() + words.len() {
        let here = Area { top: area.top + down, bottom: area.bottom + down, ..area };
        let wide = Area { left: here.left - BESIDE, right: here.right + BESIDE, ..here };
        let signs = areas.iter().filter(|other| touch(wide, **other));
        let in_the_way = signs.chain(words.iter().filter(|other| touch(here, **other)));
        let next = match goes {
            ClearingWay::Up => in_the_way.map(|other| other.top - WHITE - area.bottom).reduce(f64::min),
            ClearingWay::Down => in_the_way.map(|other| other.bottom + WHITE - area.top).reduce(f64::max),
        };
        match next {
            None => return down,
            Some(next) if next.abs() > FURTHEST => return down,
            Some(next) => down = next,
        }
    }
    down
}

/// Whether two areas lie over each other by more than a hair.
fn touch(one: Area, other: Area) -> bool {
    const HAIR: f64 = 8.0;
    one.left + HAIR < other.right
        && other.left + HAIR < one.right
        && one.top + HAIR < other.bottom
        && other.top + HAIR < one.bottom
}

/// Goes through the groups of a line: what cannot move into `areas`, the rest to `other`.
fn look<'t>(node: Node<'t, 't>, areas: &mut Vec<Area>, other: &mut impl FnMut(Node<'t, 't>)) {
    let is = |classes: &[&str]| classes.iter().any(|class| is_class(node, class));
    if is_class(node, "bounding-box") {
        return;
    }
    if is(&MOVABLE) || is_class(node, "mNum") {
        return other(node);
    }
    if is_class(node, "syl") {
        return areas.extend(syllable(node));
    }
    if is(&["slur", "tie"]) {
        return areas.extend(drawn(node).flat_map(curve));
    }
    if is_class(node, "hairpin") {
        return areas.extend(drawn(node).flat_map(strokes));
    }
    if is_class(node, "beam") {
        let bars = node.children().filter(|child| child.has_tag_name("polygon"));
        areas.extend(bars.filter_map(|bar| bar.attribute("points")).flat_map(strokes));
    } else if !is(&FRAMES) {
        let boxed = node.children().filter(|child| is_class(*child, "bounding-box"));
        areas.extend(boxed.filter_map(rectangle));
    }
    node.children().for_each(|child| look(child, areas, other));
}

/// Around a syllable below the staff: the engraver gives it a box without size.
fn syllable(node: Node<'_, '_>) -> Option<Area> {
    let place = node.children().find(|child| child.has_tag_name("text"))?;
    let number = |name: &str| place.attribute(name)?.parse::<f64>().ok();
    let (x, y) = (number("x")?, number("y")?);
    let letters: Vec<Node<'_, '_>> =
        node.descendants().filter(|inner| inner.is_text() && inner.text().is_some()).collect();
    let mut right = x;
    let mut size = 0.0_f64;
    for text in letters {
        let own = text.ancestors().find_map(|above| above.attribute("font-size"));
        let own = own.and_then(|own| own.trim_end_matches("px").parse::<f64>().ok()).unwrap_or(0.0);
        let count = text.text().map_or(0, |letters| letters.trim().chars().count());
        right += own * LETTER * f64::from(u16::try_from(count).unwrap_or(u16::MAX));
        size = size.max(own);
    }
    (size > 0.0).then_some(Area { left: x, right, top: y - size * RISES, bottom: y + size * SINKS })
}

fn drawn<'t>(node: Node<'t, 't>) -> impl Iterator<Item = &'t str> {
    node.descendants().filter_map(|node| node.attribute("d").or_else(|| node.attribute("points")))
}

fn points(drawn: &str) -> Vec<(f64, f64)> {
    let numbers = drawn.split(|letter: char| !(letter.is_ascii_digit() || matches!(letter, '.' | '-')));
    let numbers: Vec<f64> = numbers.filter_map(|number| number.parse().ok()).collect();
    numbers.chunks_exact(2).map(|pair| (pair[0], pair[1])).collect()
}

fn around_points(points: impl Iterator<Item = (f64, f64)>) -> Option<Area> {
    points.map(|(x, y)| Area { left: x, top: y, right: x, bottom: y }).reduce(Area::with)
}

/// The pieces of a line of strokes: each cut into short ones, so that a slanted line has no large box.
fn strokes(drawn: &str) -> Vec<Area> {
    const PIECES: u8 = 6;
    let points = points(drawn);
    let pairs = points.windows(2).flat_map(|pair| {
        let ((x, y), (to_x, to_y)) = (pair[0], pair[1]);
        let at = move |piece: u8| {
            let share = f64::from(piece) / f64::from(PIECES);
            (x + (to_x - x) * share, y + (to_y - y) * share)
        };
        (0..PIECES).filter_map(move |piece| around_points([at(piece), at(piece + 1)].into_iter()))
    });
    pairs.collect()
}

/// The pieces of a slur: its outer and inner curve, each cut into short ones.
fn curve(drawn: &str) -> Vec<Area> {
    let points = points(drawn);
    // A cubic curve there, and one back (SVG: M, then C with three points each).
    if points.len() < 4 {
        return around_points(points.into_iter()).into_iter().collect();
    }
    let curves = points.windows(4).step_by(3).map(|curve| [curve[0], curve[1], curve[2], curve[3]]);
    curves.flat_map(one_curve).collect()
}

fn one_curve([from, one, two, to]: [(f64, f64); 4]) -> Vec<Area> {
    const PIECES: u8 = 10;
    let at = |(from, one, two, to): (f64, f64, f64, f64), piece: u8| {
        let share = f64::from(piece) / f64::from(PIECES);
        let left = 1.0 - share;
        from * left * left * left
            + 3.0 * one * left * left * share
            + 3.0 * two * left * share * share
            + to * share * share * share
    };
    let point =
        |piece: u8| (at((from.0, one.0, two.0, to.0), piece), at((from.1, one.1, two.1, to.1), piece));
    (0..PIECES).filter_map(|piece| around_points([point(piece), point(piece + 1)].into_iter())).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn area(left: f64, top: f64, right: f64, bottom: f64) -> Area {
        Area { left, top, right, bottom }
    }

    #[test]
    fn a_word_goes_away_from_its_staff_until_it_touches_nothing() {
        let areas =
            [area(0.0, 100.0, 500.0, 820.0), area(0.0, 40.0, 100.0, 130.0), area(50.0, -200.0, 80.0, 20.0)];
        let word = area(20.0, 60.0, 300.0, 120.0);
        let up = free(word, ClearingWay::Up, &areas, &[]);
        let there = Area { top: word.top + up, bottom: word.bottom + up, ..word };
        assert!(up < 0.0 && areas.iter().all(|other| !touch(there, *other)), "{up}");
        assert!(free(area(600.0, 0.0, 700.0, 50.0), ClearingWay::Up, &areas, &[]).abs() < 1e-9);
    }

    #[test]
    fn a_syllable_takes_its_room_though_its_box_is_empty() {
        let drawn = "<g class=\"syl\"><g class=\"syl bounding-box\"/><text x=\"100\" y=\"500\" font-size=\"0px\">\
                     <tspan class=\"text\"><tspan font-size=\"400px\">ah</tspan></tspan></text></g>";
        let tree = roxmltree::Document::parse(drawn).unwrap();
        let mut areas = Vec::new();
        look(tree.root_element(), &mut areas, &mut |_| {});
        assert_eq!(areas.len(), 1);
        assert!(touch(areas[0], area(300.0, 300.0, 330.0, 400.0)));
        assert!(!touch(areas[0], area(700.0, 300.0, 900.0, 400.0)));
    }

    #[test]
    fn a_slur_is_in_the_way_where_it_is_drawn_and_not_in_its_box() {
        let slur = curve("M0,100 C100,0 900,0 1000,100 C900,20 100,20 0,100");
        assert!(slur.iter().any(|piece| touch(*piece, area(480.0, 0.0, 520.0, 60.0))));
        assert!(slur.iter().all(|piece| !touch(*piece, area(400.0, 60.0, 600.0, 100.0))));
    }
}
