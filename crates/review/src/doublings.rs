//! Where two parts play the same line, in unison or octaves, whatever their clefs and transpositions.
//!
//! Parts are compared bar by bar by what sounds: onsets and pitches without their octaves. Grace notes, trills and
//! cues do not count, repeated notes of one pitch count as one held, and a few notes may differ.

use std::ops::Range;

use arcata_score::{Length, Moment, Note, NoteId, NoteKind, Part, Score, TieEnd};
use rayon::prelude::*;

/// A passage that two parts play alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Doubling {
    /// The two parts, indices in the score, the upper one first.
    pub parts: (usize, usize),
    /// Bars, indices.
    pub bars: Range<u32>,
    /// The notes that sound together, in order: of the first part, of the second.
    pub notes: Vec<(NoteId, NoteId)>,
}

/// Fewer notes in common are a coincidence: two bars of quarters (rule of thumb).
const LEAST_NOTES: usize = 6;
/// Fewer bars in a row are one, too (rule of thumb).
const LEAST_BARS: u32 = 2;
/// So many of the notes of a bar must sound in both parts, hundredths: an ornament written out, a passing note
/// left out (rule of thumb).
const SHARE: usize = 75;

/// One note of a part's line.
#[derive(Clone, Copy, Debug)]
struct Sounded {
    at: Length,
    /// Cents above a C, without the octave.
    pitch: i32,
    note: NoteId,
}

/// All doublings of a score, by parts, then bars. The result does not depend on the number of threads.
///
/// ```
/// use arcata_review::doublings::doublings;
/// let xml = arcata_testkit::musicxml(
///     "violin: 1/4 C5 D5 E5 F5 | G5 A5 G5 F5 |||\ncello: 1/4 C3 D3 E3 F3 | G3 A3 G3 F3 |||",
/// );
/// let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default())?;
/// let score = arcata_score::read(file.document());
/// assert_eq!(doublings(&score).len(), 1);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn doublings(score: &Score) -> Vec<Doubling> {
    let lines: Vec<Vec<Vec<Sounded>>> = score.parts.par_iter().map(|part| line(score, part)).collect();
    let pairs: Vec<(usize, usize)> =
        (0..lines.len()).flat_map(|one| (one + 1..lines.len()).map(move |other| (one, other))).collect();
    pairs.par_iter().flat_map_iter(|pair| of_pair(*pair, &lines[pair.0], &lines[pair.1])).collect()
}

fn of_pair(parts: (usize, usize), one: &[Vec<Sounded>], other: &[Vec<Sounded>]) -> Vec<Doubling> {
    let mut found = Vec::new();
    let mut open: Option<Doubling> = None;
    for (bar, (one, other)) in (0u32..).zip(one.iter().zip(other)) {
        match alike(one, other) {
            Some(notes) => {
                let doubling =
                    open.get_or_insert_with(|| Doubling { parts, bars: bar..bar, notes: Vec::new() });
                doubling.bars.end = bar + 1;
                doubling.notes.extend(notes);
            }
            None => found.extend(open.take()),
        }
    }
    found.extend(open);
    found.retain(|doubling| {
        doubling.notes.len() >= LEAST_NOTES && doubling.bars.end - doubling.bars.start >= LEAST_BARS
    });
    found
}

/// The notes of a bar that sound in both parts, if they are nearly all.
fn alike(one: &[Sounded], other: &[Sounded]) -> Option<Vec<(NoteId, NoteId)>> {
    if one.is_empty() || other.is_empty() {
        return None;
    }
    let mut notes = Vec::new();
    let (mut left, mut right) = (0, 0);
    while let (Some(a), Some(b)) = (one.get(left), other.get(right)) {
        if a.at == b.at {
            if a.pitch == b.pitch {
                notes.push((a.note, b.note));
            }
            left += 1;
            right += 1;
        } else if a.at < b.at {
            left += 1;
        } else {
            right += 1;
        }
    }
    (notes.len() * 100 >= one.len().max(other.len()) * SHARE).then_some(notes)
}

/// The line of a part, bar by bar: the highest note of each moment, held and repeated notes once.
fn line(score: &Score, part: &Part) -> Vec<Vec<Sounded>> {
    let mut bars: Vec<Vec<Sounded>> = vec![Vec::new(); score.bars.len()];
    let mut last: Option<(Moment, i32)> = None;
    let mut at = 0;
    while at < part.notes.len() {
        let onset = part.notes[at].onset;
        let end = at + part.notes[at..].iter().take_while(|note| note.onset == onset).count();
        let chord = (at..end).filter_map(|index| {
            let note = &part.notes[index];
            let starts =
                note.kind == NoteKind::Ordinary && !matches!(note.tie.from_before, TieEnd::Joined(_));
            Some((note.pitch.cents().filter(|_| starts)?, index))
        });
        if let Some((cents, index)) = chord.max() {
            let note = &part.notes[index];
            let sounding = cents + part.transpose_cents;
            // The same pitch again at once is one note, bowed or tongued twice.
            let again = last == Some((note.onset, sounding));
            if let Some(bar) = bars.get_mut(note.bar as usize).filter(|_| !again) {
                let id = NoteId(u32::try_from(index).unwrap_or(u32::MAX));
                let offset = score.offset_in_bar(note.onset, note.bar);
                bar.push(Sounded { at: offset, pitch: sounding.rem_euclid(1200), note: id });
            }
            last = Some((end_of(note), sounding));
        }
        at = end;
    }
    bars
}

fn end_of(note: &Note) -> Moment {
    note.onset + note.length
}

#[cfg(test)]
mod tests {
    use arcata_testkit::{Detail, ScoreShape, random_score};

    use super::*;

    fn read(xml: String) -> Score {
        let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default()).expect("a score");
        arcata_score::read(file.document())
    }

    #[test]
    fn octaves_transpositions_and_ornaments_do_not_hide_a_doubling() {
        let score = read(arcata_testkit::musicxml(
            "violin: 1/4 C5 *D5 D5 E5 F5 | 1/2 G5 1/4 A5 rest | bar-rest | 1/1 C5 |||\n\
             clarinet: transpose -2 1/4 D4 E4 F#4 G4 | A4 A4 B4 rest | bar-rest | 1/1 D4 |||\n\
             viola: 1/4 D4 E4 F#4 G4 | 1/2 A4 1/4 B4 rest | bar-rest | 1/1 D4 |||",
        ));
        let found = doublings(&score);
        assert_eq!(found.len(), 1, "the viola plays a tone higher: {found:?}");
        assert_eq!((found[0].parts, found[0].bars.clone()), ((0, 1), 0..2));
        assert_eq!(found[0].notes.len(), 6);
    }

    /// Every pair of notes that begin together with one pitch class, by looking at all of them.
    fn slowly(score: &Score, one: usize, other: usize, bar: u32) -> usize {
        let notes = |part: usize| line(score, &score.parts[part]).swap_remove(bar as usize);
        let (one, other) = (notes(one), notes(other));
        one.iter().filter(|a| other.iter().any(|b| b.at == a.at && b.pitch == a.pitch)).count()
    }

    #[test]
    fn a_doubling_holds_all_common_notes_and_no_other() {
        for seed in 0..40 {
            let text = random_score(seed, ScoreShape { parts: 2, bars: 6, detail: Detail::Slurs });
            // The second part is made the same as the first one: all is doubled.
            let mut score = read(text);
            score.parts[1] = score.parts[0].clone();
            for doubling in doublings(&score) {
                let counted: usize = doubling.bars.clone().map(|bar| slowly(&score, 0, 1, bar)).sum();
                assert_eq!(doubling.notes.len(), counted, "seed {seed}");
                assert!(doubling.notes.iter().all(|(one, other)| one == other));
            }
        }
    }

    #[test]
    fn unlike_random_parts_double_no_long_passage() {
        for seed in 0..40 {
            let score = read(random_score(seed, ScoreShape { parts: 3, bars: 8, detail: Detail::Notes }));
            for doubling in doublings(&score) {
                for bar in doubling.bars.clone() {
                    let (one, other) = doubling.parts;
                    let common = slowly(&score, one, other, bar);
                    let notes = |part: usize| line(&score, &score.parts[part])[bar as usize].len();
                    assert!(common * 100 >= notes(one).max(notes(other)) * SHARE, "seed {seed}, bar {bar}");
                }
            }
        }
    }
}
