//! Which of a layer's marks players do not need: they would do the same without them.

use std::collections::{BTreeMap, BTreeSet};

use arcata_bow::Line;
use arcata_bow::plan::{Told, as_told, least_marks_for};
use arcata_layer::{Addresses, Layer, Mark, Question};
use arcata_score::{BowDirection, NoteId};

/// Notes (part, note) whose down- or up-bow in the layer comes anyway when players bow as it comes and
/// keep to the other marks.
#[must_use]
pub fn marks_that_come_anyway(
    addresses: &Addresses<'_>,
    lines: &[Line],
    layer: &Layer,
) -> BTreeSet<(usize, NoteId)> {
    let mut bows: BTreeMap<(usize, NoteId), &Mark> = BTreeMap::new();
    for entry in layer.entries.iter().filter(|entry| entry.mark.question() == Question::Bow) {
        if let Ok(found) = addresses.find(&entry.place) {
            bows.insert((found.part, found.note), &entry.mark);
        }
    }
    lines.iter().flat_map(|line| of_line(line, &bows)).collect()
}

fn of_line(line: &Line, bows: &BTreeMap<(usize, NoteId), &Mark>) -> Vec<(usize, NoteId)> {
    let told: BTreeMap<usize, Told> = line
        .strokes
        .iter()
        .enumerate()
        .filter_map(|(index, stroke)| {
            let first = stroke.notes.first()?;
            let marked = bows.get(&(line.part, *first)).map(|mark| (*mark).clone());
            let mark = marked.or_else(|| stroke.printed.map(Mark::of))?;
            Some((index, told_by(&mark)?))
        })
        .collect();
    let directions = as_told(line, &told);
    let needed: BTreeSet<usize> = least_marks_for(line, &directions).into_iter().collect();
    let spare = told.keys().filter(|index| !needed.contains(index));
    spare
        .filter_map(|index| line.strokes[*index].notes.first())
        .map(|note| (line.part, *note))
        .filter(|place| bows.get(place).is_some_and(|mark| matches!(mark, Mark::Down | Mark::Up)))
        .collect()
}

fn told_by(mark: &Mark) -> Option<Told> {
    match mark {
        Mark::Down => Some(Told::Way(BowDirection::Down)),
        Mark::Up => Some(Told::Way(BowDirection::Up)),
        // What follows goes on from the second of the two.
        Mark::Double { first } => Some(Told::Way(first.other())),
        Mark::Hook { bow: Some(bow), .. } | Mark::Retake { bow: Some(bow) } => Some(Told::Way(*bow)),
        Mark::Hook { bow: None, .. } | Mark::Retake { bow: None } => Some(Told::Again),
        _ => None,
    }
}
