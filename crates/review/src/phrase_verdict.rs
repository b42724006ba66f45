//! Whether a slur is a bow or a phrase mark, by several signs of which none is enough.

use arcata_languages::{Argument, Saying};
use arcata_score::{Articulations, Note, Part, Slur, SlurTold};

use crate::mechanics::longest_bow;
use crate::under_slur::{main_notes, solid_slurs};
use crate::{Piece, rules};

/// From this weight on a slur is a phrase mark: two strong signs, or a strong one and two weak ones (rule of thumb).
const PHRASE: u32 = 4;

/// One thing that speaks for a phrase mark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PhraseEvidence {
    /// What is seen, as a noun phrase.
    pub name: Saying,
    /// 2 for a strong sign, 1 for a weak one.
    pub weight: u32,
}

/// What the signs say about a slur.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Verdict {
    /// The signs, strong ones first.
    pub signs: Vec<PhraseEvidence>,
}

impl Verdict {
    /// The weight of all signs.
    #[must_use]
    pub fn weight(&self) -> u32 {
        self.signs.iter().map(|sign| sign.weight).sum()
    }

    /// Whether they are enough.
    #[must_use]
    pub fn is_phrase_mark(&self) -> bool {
        self.weight() >= PHRASE
    }
}

/// Looks at a slur (with its first and last note) of a part.
#[must_use]
pub fn phrase_verdict(piece: &Piece<'_>, part_index: usize, slur: (&Slur, &Note, &Note)) -> Verdict {
    let Some(part) = piece.score.parts.get(part_index) else { return Verdict { signs: Vec::new() } };
    let (_, start, end) = slur;
    if slur.0.told == SlurTold::Bow {
        return Verdict { signs: Vec::new() };
    }
    let mut signs = Vec::new();
    let mut sign = |seen: bool, weight: u32, name: Saying| {
        if seen {
            signs.push(PhraseEvidence { name, weight });
        }
    };
    let bows = bows_needed(piece, part_index, start, end);
    let far_too_long = bows >= piece.thresholds().phrase_slur;
    sign(far_too_long, 2, Saying::new("sign-slowest-bows").with("bows", tenths(bows)));
    let inside = rules::slurs::nested_slurs::inner(part, slur);
    sign(inside > 0, 2, Saying::new("sign-slurs-inside").with("count", inside));
    let rest = rules::slurs::slur_over_rest::rest_under(part, start, end).is_some();
    sign(rest, 2, Saying::new("sign-rest"));
    let marks = marks_under(part, start, end);
    // A mark on the first note of a bow under the line says no more than that bow does.
    sign(marks > 0 && inside == 0, 2, Saying::new("sign-bow-marks").with("count", marks));
    sign(repeats_a_pitch(part, start, end), 1, Saying::new("sign-repeated-pitch"));
    let bars = whole_bars(piece, part, start, end);
    sign(bars.is_some(), 1, Saying::new("sign-whole-bars").with("count", bars.unwrap_or(0)));
    Verdict { signs }
}

/// Thousandths rounded to one place, which is always printed.
fn tenths(thousandths: i64) -> Argument {
    Argument::Tenths((thousandths + 50) / 100)
}

/// How many of the slowest bows of its first stroke's dynamic the slur lasts, thousandths.
fn bows_needed(piece: &Piece<'_>, part_index: usize, start: &Note, end: &Note) -> i64 {
    let Some(reading) = piece.reading else { return 0 };
    let micros = reading.tempo.between(start.onset, end.onset + end.length).micros;
    let stroke =
        piece.lines.iter().enumerate().filter(|(_, line)| line.part == part_index).find_map(|(at, line)| {
            let index = line.strokes.partition_point(|stroke| stroke.onset <= start.onset).checked_sub(1)?;
            let stroke = &line.strokes[index];
            (stroke.onset + stroke.length > start.onset).then_some((at, stroke))
        });
    stroke.map_or(0, |(at, stroke)| micros.saturating_mul(1000) / longest_bow(stroke, piece.hair(at)).max(1))
}

fn marks_under(part: &Part, start: &Note, end: &Note) -> usize {
    let under = main_notes(part, start.voice)
        .filter(|(_, note)| note.onset > start.onset && note.onset <= end.onset && note.bow_mark.is_some());
    under.count()
}

fn repeats_a_pitch(part: &Part, start: &Note, end: &Note) -> bool {
    let under: Vec<&Note> = main_notes(part, start.voice)
        .map(|(_, note)| note)
        .filter(|note| note.onset >= start.onset && note.onset <= end.onset)
        .collect();
    under.windows(2).any(|pair| {
        let plain = |note: &Note| note.articulations == Articulations::default() && note.tremolo.is_none();
        pair[0].pitch.cents().is_some()
            && pair[0].pitch == pair[1].pitch
            && !crate::under_slur::tied_from_before(pair[1])
            && plain(pair[0])
            && plain(pair[1])
    })
}

/// Two, four or eight bars from a downbeat to a last bar's end.
fn whole_bars(piece: &Piece<'_>, part: &Part, start: &Note, end: &Note) -> Option<u32> {
    let bars = end.bar.checked_sub(start.bar)? + 1;
    let from_the_start = piece.score.offset_in_bar(start.onset, start.bar).is_zero();
    let last =
        main_notes(part, end.voice).filter(|(_, note)| note.bar == end.bar && !note.pitch.is_rest()).last();
    let to_the_end = last.is_some_and(|(_, last)| last.onset == end.onset);
    (from_the_start && to_the_end && [2, 4, 8].contains(&bars)).then_some(bars)
}

/// Whether another rule leaves this slur to the one on phrase marks.
pub(crate) fn is_left_to_phrases(piece: &Piece<'_>, part_index: usize, slur: (&Slur, &Note, &Note)) -> bool {
    phrase_verdict(piece, part_index, slur).is_phrase_mark()
}

/// The longest slur that begins on one of some notes.
pub(crate) fn slur_from<'a>(
    part: &'a Part,
    notes: &[arcata_score::NoteId],
) -> Option<(&'a Slur, &'a Note, &'a Note)> {
    let begun = solid_slurs(part).filter(|(slur, ..)| notes.contains(&slur.start));
    begun.max_by_key(|(_, start, end)| end.onset - start.onset)
}
