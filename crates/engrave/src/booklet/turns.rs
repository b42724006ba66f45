//! How long a player rests where a page could be turned.

use arcata_bow::Seconds;
use arcata_bow::timing::TempoMap;
use arcata_score::{Moment, NoteKind, Part, Score};

/// Seconds of rest around the beginning of each bar: from the end of the last note before it to the next note.
/// Nothing where a note sounds on. The last entry stands for the end of the piece.
pub(super) fn rests(score: &Score, part: &Part, tempo: &TempoMap) -> Vec<Seconds> {
    let mut played: Vec<(Moment, Moment)> = part
        .notes
        .iter()
        .filter(|note| !note.pitch.is_rest() && note.kind != NoteKind::Cue)
        .map(|note| (note.onset, note.onset + note.length))
        .collect();
    played.sort();
    let mut next = 0;
    let mut sounded_until = Moment::START;
    let ends = score.bars.iter().map(|bar| bar.start).chain(std::iter::once(score.end()));
    ends.map(|barline| {
        while let Some((onset, end)) = played.get(next).filter(|(onset, _)| *onset < barline) {
            sounded_until = sounded_until.max(*end).max(*onset);
            next += 1;
        }
        if sounded_until > barline {
            return Seconds::default();
        }
        let until = played.get(next).map_or(score.end(), |(onset, _)| *onset);
        tempo.between(sounded_until, until.max(barline))
    })
    .collect()
}
