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
//! - every movement begins afresh, and nothing leads from one into the next;
//! - repeat signs with their endings, da capo and dal segno become repeated stretches: what is played again
//!   is printed once.

mod bows;
mod events;
mod repeats;
pub(crate) mod road;
mod source;
mod strokes;
mod voices;

pub(crate) use bows::Going;
pub(crate) use events::{Event, TieInto};
pub use source::LineSource;
pub use strokes::MARKED_AROUND;
pub(crate) use strokes::{Binding, Extent, StrokeMaker};

use std::borrow::Cow;

use arcata_score::{Beginning, Instrument, Moment, Part, Players, Score};

use crate::profile::{Profile, SpeedTable};
use crate::techniques::Techniques;
use crate::timing::{TempoChoice, TempoMap};
use crate::{Force, Line};

/// What shapes the lines besides score and profile.
#[derive(Clone, Debug, Default)]
pub struct LineOptions {
    /// The tempo to reckon with.
    pub tempo: TempoChoice,
    /// The movement that [`TempoChoice::Opening`] speaks of; the others keep their proportion to it.
    pub opening_movement: usize,
    /// Who plays; `None` to go by the score.
    pub force: Option<Force>,
    /// Steps of the dynamics (p to mp is one) by which everything is played louder than written; softer where it is
    /// negative. A hall, a soloist or a conductor asks for it.
    pub louder: i8,
}

/// Everything that the lines of all parts share. Each movement is read for itself, as if the file held nothing
/// else; what is said of it is said in the bars, moments and notes of the whole score.
pub struct Reading<'a> {
    options: &'a LineOptions,
    movements: Vec<MovementReading<'a>>,
    /// The seconds of the score.
    pub tempo: TempoMap,
}

/// One movement, read for itself.
pub(crate) struct MovementReading<'a> {
    /// Index of the movement in the score.
    index: usize,
    /// Borrowed where the file holds nothing else.
    pub(crate) score: Cow<'a, Score>,
    beginning: Beginning,
    pub(crate) profile: &'a Profile,
    louder: i8,
    pub(crate) tempo: TempoMap,
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
        let alone = score.movements.len() < 2;
        let movements = (0..score.movements.len().max(1)).map(|index| {
            let cut = if alone { None } else { score.movement_alone(index) };
            let (score, beginning) = match cut {
                Some((score, beginning)) => (Cow::Owned(score), beginning),
                None => (Cow::Borrowed(score), Beginning::default()),
            };
            let tempo =
                TempoMap::new(&score, profile, options.tempo.within(index == options.opening_movement));
            MovementReading { index, score, beginning, profile, louder: options.louder, tempo }
        });
        let mut movements: Vec<MovementReading<'a>> = movements.collect();
        keep_proportion(&mut movements, options);
        let tempo = TempoMap::joined(
            movements.iter().map(|movement| (movement.beginning.moment(Moment::START), &movement.tempo)),
        );
        Self { options, movements, tempo }
    }

    /// One movement as if it were alone in its file: how it is read, its score, and where it begins in the whole.
    /// `None` where there is no such movement.
    #[must_use]
    pub fn alone(&self, movement: usize) -> Option<(Reading<'_>, &Score, &Beginning)> {
        let read = self.movements.get(movement)?;
        let alone = MovementReading {
            index: 0,
            score: Cow::Borrowed(&*read.score),
            beginning: Beginning::default(),
            profile: read.profile,
            louder: read.louder,
            tempo: read.tempo.clone(),
        };
        let reading = Reading { options: self.options, movements: vec![alone], tempo: read.tempo.clone() };
        Some((reading, &read.score, &read.beginning))
    }

    /// Some bars of the first movement, cut out by [`Score::excerpt`], read as they are read in the whole: at the same tempo, by
    /// the same player. Other slurs, marks and words may have been put into them.
    #[must_use]
    pub fn of_excerpt<'e>(&'e self, score: &'e Score, beginning: &Beginning) -> Option<Reading<'e>> {
        let read = self.movements.first()?;
        let tempo = read.tempo.from(beginning.moment(Moment::START));
        let excerpt = MovementReading {
            index: 0,
            score: Cow::Borrowed(score),
            beginning: Beginning::default(),
            profile: read.profile,
            louder: read.louder,
            tempo: tempo.clone(),
        };
        Some(Reading { options: self.options, movements: vec![excerpt], tempo })
    }

    /// The bowing lines of a part, movement by movement and staff by staff, leading voices first; none for parts
    /// without bows or where nothing is bowed.
    #[must_use]
    pub fn lines(&self, part_index: usize) -> Vec<Line> {
        self.sources(part_index).into_iter().map(LineSource::into_line).collect()
    }

    /// The lines of [`Self::lines`] with what they were made from.
    #[must_use]
    pub fn sources(&self, part_index: usize) -> Vec<LineSource<'_>> {
        self.movements.iter().flat_map(|movement| movement.sources(part_index, self.options.force)).collect()
    }
}

impl MovementReading<'_> {
    fn sources(&self, part_index: usize, force_told: Option<Force>) -> Vec<LineSource<'_>> {
        let score = &*self.score;
        let Some(part) = score.parts.get(part_index).filter(|part| part.instrument.is_bowed()) else {
            return Vec::new();
        };
        let speeds = SpeedTable::new(self.profile, part.instrument);
        let force = force_told.unwrap_or_else(|| force(score, part));
        let mut sources = Vec::new();
        for staff in 1..=part.staves.max(1) {
            let techniques = Techniques::new(score, part, staff);
            for group in voices::groups(score, part, staff, force, &techniques) {
                let material = strokes::Material::new(self, part, staff, &techniques, &speeds, &group);
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

/// Where a tempo is asked for the opening of one movement, the others are scaled by as much.
fn keep_proportion(movements: &mut [MovementReading<'_>], options: &LineOptions) {
    let TempoChoice::Opening(wanted) = options.tempo else { return };
    let Some(opening) = movements.get(options.opening_movement) else { return };
    let printed = TempoMap::new(&opening.score, opening.profile, TempoChoice::Written);
    let Some(factor) = wanted.in_units_of(printed.quarters_a_minute(Moment::START)) else { return };
    for movement in movements.iter_mut().filter(|movement| movement.index != options.opening_movement) {
        movement.tempo.scale(factor);
    }
}

/// One player or a section: as the score says, else a section unless the strings are at most two
/// violins, two violas and two cellos, each with a part, and no bass: then it is chamber music.
fn force(score: &Score, part: &Part) -> Force {
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
