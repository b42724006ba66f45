//! From a part to its bowing lines: what one player reads, stroke by stroke.
//!
//! How notes become strokes, and what is taken in the least surprising way (each such place is also a
//! matter for the review):
//! - notes under one slur and tie chains are one stroke; of slurs inside one another the innermost are
//!   bows and the outer ones phrase marks; where slurs overlap or share a note, a bow begins where a
//!   slur begins; an inner slur over two notes of one pitch counts as a tie;
//! - a rest of up to a quarter under a slur stops the bow without ending the stroke, a longer one ends it;
//!   a slur that begins or ends on a rest begins or ends with the nearest note inside it;
//! - pizzicato, col legno battuto, plucked single notes, unpitched and cue notes are no strokes; the bow
//!   is free after them;
//! - a tremolo is one stroke of kind [`Tremolo`](crate::StrokeKind::Tremolo) whether measured or not;
//!   two alternating notes under a slur are fingered, and so slurred;
//! - grace notes belong to the stroke of the note after them, unless a slur from the note before ends on
//!   them; with no note after them they belong to the note before;
//! - a printed bow mark inside a slur begins no stroke;
//! - while div. is in force every voice of a staff is a line of its own; else a soloist plays all voices
//!   with one bow, whose strokes follow whichever voice moves, and a section joins to the first voice with
//!   notes in a bar those that share its rhythm there (double stops), leaving others to lines of their own;
//! - repeat signs with their endings, da capo and dal segno become repeated stretches: what is played again
//!   is printed once.

mod bows;
mod events;
mod repeats;
mod road;
mod source;
mod strokes;
mod voices;

pub(crate) use bows::Going;
pub(crate) use events::{Event, TieInto};
pub use source::LineSource;
pub(crate) use strokes::{Binding, Extent, Maker};

use std::collections::BTreeSet;

use arcata_score::{Instrument, Part, Players, Score};

use crate::profile::{Profile, SpeedTable};
use crate::techniques::Techniques;
use crate::timing::{TempoChoice, TempoMap};
use crate::{Force, Line};

/// What shapes the lines besides score and profile.
#[derive(Clone, Debug, Default)]
pub struct LineOptions {
    /// The tempo to reckon with.
    pub tempo: TempoChoice,
    /// Slurs taken as phrase marks and not as bows: (index of the part, index into its slurs).
    pub phrase_marks: BTreeSet<(usize, usize)>,
    /// Who plays; `None` to go by the score.
    pub force: Option<Force>,
    /// Steps of the dynamics (p to mp is one) by which everything is played louder than written; softer where it is
    /// negative. A hall, a soloist or a conductor asks for it.
    pub louder: i8,
}

/// Everything that the lines of all parts share.
pub struct Reading<'a> {
    pub(crate) score: &'a Score,
    pub(crate) profile: &'a Profile,
    pub(crate) options: &'a LineOptions,
    /// The seconds of the score.
    pub tempo: TempoMap,
}

impl std::fmt::Debug for Reading<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Reading").field("options", self.options).finish_non_exhaustive()
    }
}

impl<'a> Reading<'a> {
    /// Prepares a score to be read part by part.
    #[must_use]
    pub fn new(score: &'a Score, profile: &'a Profile, options: &'a LineOptions) -> Self {
        Self { score, profile, options, tempo: TempoMap::new(score, profile, options.tempo) }
    }

    /// The bowing lines of a part, staff by staff, leading voices first; none for parts without bows
    /// or where nothing is bowed.
    #[must_use]
    pub fn lines(&self, part_index: usize) -> Vec<Line> {
        self.sources(part_index).into_iter().map(LineSource::into_line).collect()
    }

    /// The lines of [`Self::lines`] with what they were made from.
    #[must_use]
    pub fn sources(&self, part_index: usize) -> Vec<LineSource<'_>> {
        let Some(part) = self.score.parts.get(part_index).filter(|part| part.instrument.is_bowed()) else {
            return Vec::new();
        };
        let speeds = SpeedTable::new(self.profile, part.instrument);
        let force = force(self.score, part, self.options);
        let mut sources = Vec::new();
        for staff in 1..=part.staves.max(1) {
            let techniques = Techniques::new(self.score, part, staff);
            for group in voices::groups(self.score, part, staff, force, &techniques) {
                let material =
                    strokes::Material::new(self, (part_index, part), staff, &techniques, &speeds, &group);
                let source = LineSource::new(material, (part_index, staff), force, &group);
                if !source.line().strokes.is_empty() {
                    sources.push(source);
                }
            }
        }
        name_apart(part, sources.iter_mut().map(LineSource::line_mut).collect());
        sources
    }
}

/// The bowing lines of one part. For whole scores prepare a [`Reading`] once.
#[must_use]
pub fn lines(score: &Score, part: usize, profile: &Profile, options: &LineOptions) -> Vec<Line> {
    Reading::new(score, profile, options).lines(part)
}

/// The bowing lines of every part, in score order.
#[must_use]
pub fn all_lines(score: &Score, profile: &Profile, options: &LineOptions) -> Vec<Line> {
    let reading = Reading::new(score, profile, options);
    (0..score.parts.len()).flat_map(|part| reading.lines(part)).collect()
}

/// One player or a section: as the score says, else a section unless the strings are at most two
/// violins, two violas and two cellos, each with a part, and no bass: then it is chamber music.
fn force(score: &Score, part: &Part, options: &LineOptions) -> Force {
    if let Some(force) = options.force {
        return force;
    }
    let count = |instrument| score.parts.iter().filter(|part| part.instrument == instrument).count();
    let chamber = [Instrument::Violin, Instrument::Viola, Instrument::Cello]
        .into_iter()
        .all(|instrument| count(instrument) <= 2)
        && count(Instrument::Bass) == 0
        && score.parts.len() <= 8;
    match part.players {
        Players::Solo => Force::Solo,
        Players::Section => Force::Section,
        Players::Unknown if chamber => Force::Solo,
        Players::Unknown => Force::Section,
    }
}

/// Where a part has several lines, their names say which is which.
fn name_apart(part: &Part, lines: Vec<&mut Line>) {
    if lines.len() < 2 {
        return;
    }
    for line in lines {
        if part.staves > 1 {
            line.name = format!("{}, staff {}", line.name, line.staff);
        }
        let voice = line.voices.first().and_then(|voice| part.voices.get(usize::from(*voice)));
        if let Some(voice) = voice {
            line.name = format!("{}, voice {voice}", line.name);
        }
    }
}

#[cfg(test)]
pub(crate) mod tests;
