//! Our reading of a score in the form of the dump.

use arcata_score::{BowDirection, Length, Note, NoteId, NoteKind, Part, Pitch, Score};

use super::PartLines;

const STEPS: [char; 7] = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];

/// The lines of every part; numbers are fractions of a quarter note.
pub(super) fn reading(score: &Score) -> PartLines {
    score.parts.iter().map(|part| (part.id.clone(), part_lines(score, part))).collect()
}

fn part_lines(score: &Score, part: &Part) -> Vec<String> {
    let mut lines = Vec::new();
    for note in part.notes.iter().filter(|note| !note.pitch.is_rest()) {
        let place = place(score, note);
        let what = format!("{} {}", pitch(note.pitch), note.staff);
        if matches!(note.kind, NoteKind::Grace | NoteKind::SlashedGrace) {
            lines.push(format!("grace {place} 0 {what}"));
        } else {
            lines.push(format!("note {place} {} {what}", quarters(note.length)));
            lines.push(format!("onset {place} {}", quarters(note.onset.since_start())));
        }
        for mark in note.bow_mark.iter().chain(&note.more_bow_marks) {
            let direction = if mark.direction == BowDirection::Up { "up" } else { "down" };
            lines.push(format!("mark {place} {direction}"));
        }
    }
    let at = |note: NoteId| place(score, part.note(note));
    lines.extend(part.slurs.iter().map(|slur| format!("slur {} {}", at(slur.start), at(slur.end))));
    lines
}

/// The bar, counted from 1, and the offset in it.
fn place(score: &Score, note: &Note) -> String {
    format!("{} {}", note.bar + 1, quarters(score.offset_in_bar(note.onset, note.bar)))
}

fn quarters(length: Length) -> String {
    (length * 4).to_string()
}

fn pitch(pitch: Pitch) -> String {
    let Pitch::Pitched { step, alter, octave } = pitch else { return "- - -".to_owned() };
    let alter = match (alter / 100, alter % 100) {
        (whole, 0) => whole.to_string(),
        _ => (f64::from(alter) / 100.0).to_string(),
    };
    format!("{} {alter} {octave}", STEPS[usize::from(step % 7)])
}
