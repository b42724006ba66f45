//! Which lines play one rhythm, bar by bar.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_score::{Instrument, Length, NoteKind, Score};

use super::{About, Agreement, Member};
use crate::{Force, Line, Stroke, StrokeKind, Term, Weights};

/// Lines that play the same rhythm with the same slurs for some bars.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// Indices of the lines, in order.
    pub lines: Vec<usize>,
    /// Indices of the bars, from the first to one past the last.
    pub bars: Range<u32>,
    /// How many strokes they share.
    pub strokes: usize,
    /// How their notes lie to each other.
    pub relation: Relation,
}

/// How the notes of a group lie to each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Relation {
    /// One pitch.
    Unison,
    /// One pitch but for octaves.
    Octaves,
    /// A fixed distance apart.
    Parallel,
    /// One rhythm, pitches of their own.
    Chordal,
}

impl Relation {
    /// In a sentence: "in octaves".
    #[must_use]
    pub const fn phrase(self) -> &'static str {
        match self {
            Self::Unison => "in unison",
            Self::Octaves => "in octaves",
            Self::Parallel => "in parallel",
            Self::Chordal => "in one rhythm",
        }
    }
}

/// What a bar must have in common, parts in four of the longer bar: the rest may be an ornament, or a
/// note held where others repeat it (rule of thumb).
const COMMON: (usize, usize) = (3, 4);

/// Where a stroke stands in its bar, and how long it lasts.
type StrokeShape = (Length, Length);

/// The strokes that begin in one bar.
struct BarStrokes {
    first: usize,
    shapes: Vec<StrokeShape>,
}

/// For each bar, the lines that play in it and their strokes there.
fn by_bar(lines: &[Line]) -> BTreeMap<u32, Vec<(usize, BarStrokes)>> {
    let mut bars: BTreeMap<u32, Vec<(usize, BarStrokes)>> = BTreeMap::new();
    for (index, line) in lines.iter().enumerate() {
        let mut first = 0;
        for strokes in line.strokes.chunk_by(|a, b| a.bar == b.bar) {
            let shapes = strokes.iter().map(|stroke| (stroke.offset, stroke.length)).collect();
            bars.entry(strokes[0].bar).or_default().push((index, BarStrokes { first, shapes }));
            first += strokes.len();
        }
    }
    bars
}

/// How many shapes two bars have in common; both are in order of time.
fn in_common(one: &[StrokeShape], other: &[StrokeShape]) -> usize {
    let (mut at, mut to, mut count) = (0, 0, 0);
    while at < one.len() && to < other.len() {
        match one[at].cmp(&other[to]) {
            std::cmp::Ordering::Less => at += 1,
            std::cmp::Ordering::Greater => to += 1,
            std::cmp::Ordering::Equal => {
                count += 1;
                at += 1;
                to += 1;
            }
        }
    }
    count
}

fn alike(one: &BarStrokes, other: &BarStrokes) -> bool {
    let longer = one.shapes.len().max(other.shapes.len());
    in_common(&one.shapes, &other.shapes) * COMMON.1 >= longer * COMMON.0
}

/// The lines of one bar, sorted into classes of one rhythm: each line joins the first class whose first
/// line it is like. Classes of one are left out.
fn classes(playing: &[(usize, BarStrokes)]) -> Vec<Vec<usize>> {
    let mut classes: Vec<Vec<usize>> = Vec::new();
    for (index, (_, strokes)) in playing.iter().enumerate() {
        match classes.iter_mut().find(|class| alike(&playing[class[0]].1, strokes)) {
            Some(class) => class.push(index),
            None => classes.push(vec![index]),
        }
    }
    classes.retain(|class| class.len() > 1);
    classes
}

/// The strokes of a class that stand at one place and last equally long.
fn shared(playing: &[(usize, BarStrokes)], class: &[usize]) -> Vec<Vec<(usize, usize)>> {
    let mut places: BTreeMap<StrokeShape, Vec<(usize, usize)>> = BTreeMap::new();
    for member in class {
        let (line, strokes) = &playing[*member];
        for (index, shape) in strokes.shapes.iter().enumerate() {
            places.entry(*shape).or_default().push((*line, strokes.first + index));
        }
    }
    places.into_values().filter(|strokes| strokes.len() > 1).collect()
}

fn price(line: &Line, weights: &Weights) -> i64 {
    match (line.force, line.instrument) {
        (Force::Solo, _) => weights.unity_alone,
        (Force::Section, Instrument::Cello | Instrument::Bass) => weights.unity_low,
        (Force::Section, _) => weights.unity,
    }
}

/// Unity: what stands at one moment in lines of one rhythm. A tremolo is many strokes, and agrees with nobody.
pub(super) fn agreements(lines: &[Line], weights: &Weights) -> Vec<Agreement> {
    let bowed = |(line, stroke): &(usize, usize)| lines[*line].strokes[*stroke].kind != StrokeKind::Tremolo;
    let mut found = Vec::new();
    for playing in by_bar(lines).into_values() {
        for class in classes(&playing) {
            let together = shared(&playing, &class).into_iter().map(|mut strokes| {
                strokes.retain(bowed);
                strokes
            });
            found.extend(together.filter(|strokes| strokes.len() > 1).map(|strokes| {
                Agreement {
                    members: strokes
                        .into_iter()
                        .map(|(line, stroke)| Member {
                            line,
                            stroke,
                            thousandths: price(&lines[line], weights),
                        })
                        .collect(),
                    term: Term::Unity,
                    about: About::Direction,
                }
            }));
        }
    }
    found
}

/// The groups of a score's lines, in order of their first bars: the longest stretches of bars in which
/// the same lines play one rhythm with the same slurs.
#[must_use]
pub fn groups(score: &Score, lines: &[Line]) -> Vec<Group> {
    let mut open: Vec<OpenGroup> = Vec::new();
    let mut done: Vec<OpenGroup> = Vec::new();
    for (bar, playing) in by_bar(lines) {
        let mut going = Vec::new();
        for class in classes(&playing) {
            let members: Vec<usize> = class.iter().map(|member| playing[*member].0).collect();
            let strokes = shared(&playing, &class);
            let before = open.iter().position(|group| group.lines == members && group.end == bar);
            let mut group = match before {
                Some(before) => open.swap_remove(before),
                None => OpenGroup { lines: members, first: bar, end: bar, strokes: Vec::new() },
            };
            group.end = bar + 1;
            group.strokes.extend(strokes);
            going.push(group);
        }
        done.append(&mut open);
        open = going;
    }
    done.append(&mut open);
    done.sort_by(|a, b| (a.first, &a.lines).cmp(&(b.first, &b.lines)));
    done.into_iter()
        .map(|open| Group {
            relation: relation(score, lines, &open.strokes),
            strokes: open.strokes.len(),
            lines: open.lines,
            bars: open.first..open.end,
        })
        .collect()
}

/// A group that may still go on.
struct OpenGroup {
    lines: Vec<usize>,
    first: u32,
    end: u32,
    strokes: Vec<Vec<(usize, usize)>>,
}

/// The first note that a stroke sounds, in cents; of a chord the lowest written first.
pub(super) fn first_pitch(score: &Score, line: &Line, stroke: &Stroke) -> Option<i32> {
    let part = score.parts.get(line.part)?;
    let notes = stroke.notes.iter().map(|id| part.note(*id));
    notes.filter(|note| note.kind == NoteKind::Ordinary).find_map(|note| note.pitch.cents())
}

fn relation(score: &Score, lines: &[Line], strokes: &[Vec<(usize, usize)>]) -> Relation {
    let mut distances: BTreeMap<(usize, usize), Option<i32>> = BTreeMap::new();
    let mut relation = Relation::Unison;
    for together in strokes {
        let pitch =
            |(line, stroke): (usize, usize)| first_pitch(score, &lines[line], &lines[line].strokes[stroke]);
        let Some(first) = pitch(together[0]) else { continue };
        for other in &together[1..] {
            let Some(sounding) = pitch(*other) else { continue };
            let distance = sounding - first;
            let found = match distance {
                0 => Relation::Unison,
                _ if distance % 1200 == 0 => Relation::Octaves,
                _ => {
                    let known = distances.entry((together[0].0, other.0)).or_insert(Some(distance));
                    if *known == Some(distance) { Relation::Parallel } else { Relation::Chordal }
                }
            };
            relation = if (found as u8) > (relation as u8) { found } else { relation };
        }
    }
    relation
}
