//! What is heard: notes and strokes in seconds. A sketch of articulation, not of tone.

use arcata_score::{NoteKind, TieEnd};
use serde::Serialize;
use utoipa::ToSchema;

use crate::desk::Desk;
use crate::views::{bow_name, link_name};

/// What a line sounds.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct SoundView {
    /// The line.
    pub(crate) line: usize,
    /// Its notes: tied ones are one.
    pub(crate) notes: Vec<HeardNote>,
    /// Its strokes.
    pub(crate) strokes: Vec<HeardStroke>,
}

/// A note that sounds.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct HeardNote {
    /// Begin, milliseconds from the beginning of the score.
    pub(crate) at: i64,
    /// How long, milliseconds.
    pub(crate) lasts: i64,
    /// Hundredths of a semitone above the C of 8 feet (middle C is 6000).
    pub(crate) cents: i32,
    /// The stroke it is in; none where it is plucked or not bowed.
    pub(crate) stroke: Option<usize>,
}

/// A stroke.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct HeardStroke {
    /// Begin, milliseconds.
    pub(crate) at: i64,
    /// How long the bow is on the string, milliseconds.
    pub(crate) lasts: i64,
    /// Which way.
    pub(crate) bow: &'static str,
    /// How it follows.
    pub(crate) link: &'static str,
    /// Where it begins, thousandths of the hair.
    pub(crate) start: u16,
    /// Where it ends.
    pub(crate) end: u16,
    /// How loud it begins, hundredths of a dynamic step (p = 300, f = 600).
    pub(crate) loud: i32,
    /// How loud it ends.
    pub(crate) then: i32,
    /// Its bar, index.
    pub(crate) bar: u32,
}

/// When each bar begins, and what each line sounds.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct PieceSound {
    /// The version.
    pub(crate) version: u64,
    /// Begin of each bar, milliseconds, and the end of the last.
    pub(crate) bars: Vec<i64>,
    /// The lines.
    pub(crate) lines: Vec<SoundView>,
}

/// What a score sounds, bars one after another as they are printed.
pub(crate) fn sound(desk: &Desk, version: u64) -> PieceSound {
    let base = &desk.base;
    let score = base.score();
    let reading = base.ground.reading();
    let at = |moment| reading.tempo.at(moment).micros / 1000;
    let mut bars: Vec<i64> = score.bars.iter().map(|bar| at(bar.start)).collect();
    bars.push(at(score.end()));
    let lines = base.lines().iter().enumerate().map(|(index, line)| {
        let part = &score.parts[line.part];
        let mut notes = Vec::new();
        for (number, stroke) in line.strokes.iter().enumerate() {
            for id in &stroke.notes {
                let note = part.note(*id);
                let held = note.tie.from_before != TieEnd::None;
                let Some(cents) = note.pitch.cents().filter(|_| !held && note.kind == NoteKind::Ordinary)
                else {
                    continue;
                };
                let mut end = note.onset + note.length;
                let mut last = note;
                while let TieEnd::Joined(after) = last.tie.to_after {
                    last = part.note(after);
                    end = last.onset + last.length;
                }
                let begin = at(note.onset);
                notes.push(HeardNote {
                    at: begin,
                    lasts: (at(end) - begin).max(20),
                    cents,
                    stroke: Some(number),
                });
            }
        }
        let strokes =
            line.strokes.iter().zip(&desk.plans()[index].strokes).map(|(stroke, planned)| HeardStroke {
                at: at(stroke.onset),
                lasts: stroke.duration.micros / 1000,
                bow: bow_name(planned.direction),
                link: link_name(planned.link),
                start: planned.start,
                end: planned.end,
                loud: stroke.level_start.0,
                then: stroke.level_end.0,
                bar: stroke.bar,
            });
        SoundView { line: index, notes, strokes: strokes.collect() }
    });
    PieceSound { version, bars, lines: lines.collect() }
}
