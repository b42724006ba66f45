//! What a place that was read means in a score.

use std::fmt;
use std::ops::RangeInclusive;

use super::{BarName, Misread, Passage, Point, Within, bar_said, beat_said, passage};
use crate::beats::{beat_in_bar, offset_of_beat};
use crate::{Length, Meter, Movement, Score};

/// Why a score has no such bars.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotThere {
    /// No movement is called so.
    Movement {
        /// As typed.
        asked: String,
        /// The movements there are.
        there: Vec<String>,
    },
    /// No bar bears that number.
    Bar {
        /// The score, or the movement that was named.
        whose: String,
        /// The bar as it is typed.
        bar: String,
        /// The last printed number of each movement, in a sentence.
        last: String,
    },
    /// The second bar comes before the first.
    Backwards,
}

impl fmt::Display for NotThere {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Movement { asked, there } => {
                write!(out, "there is no movement \"{asked}\"; the file has {}", there.join(", "))
            }
            Self::Bar { whose, bar, last } => write!(out, "{whose} has no {bar}; {last}"),
            Self::Backwards => out.write_str("the second bar comes before the first"),
        }
    }
}

impl std::error::Error for NotThere {}

/// A bar has no such beat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoBeat {
    /// How many beats it has.
    pub beats: Length,
}

impl fmt::Display for NoBeat {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let one = Length::WHOLE;
        if self.beats < one {
            write!(out, "{} beats", self.beats)
        } else {
            write!(out, "{} {}", beat_said(self.beats), if self.beats == one { "beat" } else { "beats" })
        }
    }
}

impl Score {
    /// Reads a place that was typed for this score: a name before it is the movement's or the section's, as the score has
    /// them, and a bar may be typed by its number as printed, whatever that is.
    ///
    /// # Errors
    /// Where it is no place; whether the score has it is another question, see [`Score::bars_of`].
    pub fn passage(&self, text: &str) -> Result<Passage, Misread> {
        let read = passage(text).map(|read| self.with_its_names(read));
        let there = read.as_ref().is_ok_and(|read| self.bars_of(read, None).is_ok());
        let label = text.trim();
        // "5-8" is four bars where the score has them, whatever else is called so.
        let is_stretch = there && label.contains('-');
        if !is_stretch && self.bars.iter().any(|bar| bar.label == label) {
            let from = Point { bar: Some(BarName::new(label)), within: Within::Bar };
            return Ok(Passage { movement: None, section: None, from, to: None });
        }
        read
    }

    /// A place with the name before it told apart: what no part is called and a movement is, is the movement.
    #[must_use]
    pub fn with_its_names(&self, passage: Passage) -> Passage {
        let is_part = |name: &str| {
            let name = name.to_lowercase();
            let begins = |own: &String| own.to_lowercase().starts_with(&name);
            self.parts.iter().any(|part| begins(&part.name) || begins(&part.abbreviation))
        };
        match (&passage.movement, &passage.section) {
            (None, Some(name)) if !is_part(name) && self.movement_named(name).is_some() => {
                Passage { movement: passage.section, section: None, ..passage }
            }
            (Some(name), None) if is_part(name) && self.movement_named(name).is_none() => {
                Passage { movement: None, section: passage.movement, ..passage }
            }
            _ => passage,
        }
    }

    /// The bars of a number among some bars, in order: as printed, else with small letters for capitals; only one of
    /// them where it is said which.
    #[must_use]
    pub fn bars_called(&self, name: &BarName, within: RangeInclusive<u32>) -> Vec<u32> {
        let labelled = |same: &dyn Fn(&str) -> bool| -> Vec<u32> {
            let there = |bar: &u32| self.bars.get(*bar as usize).is_some_and(|bar| same(&bar.label));
            let last = u32::try_from(self.bars.len()).unwrap_or(u32::MAX);
            within.clone().take_while(|bar| *bar < last).filter(there).collect()
        };
        let mut found = labelled(&|label| label == name.label);
        if found.is_empty() {
            found = labelled(&|label| label.eq_ignore_ascii_case(&name.label));
        }
        match name.nth {
            None => found,
            Some(nth) => found.get(usize::from(nth).wrapping_sub(1)).copied().into_iter().collect(),
        }
    }

    /// The bars, by index, of a place or stretch; of the movement it names, else of `movement`, else of the first that has
    /// them. A number that two bars bear, the halves of a bar that a repeat splits, means both.
    ///
    /// # Errors
    /// Where the score has no such movement or bar, or the stretch goes backwards.
    pub fn bars_of(
        &self,
        passage: &Passage,
        movement: Option<usize>,
    ) -> Result<RangeInclusive<u32>, NotThere> {
        let movement = match &passage.movement {
            Some(asked) => Some(self.movement_named(asked).ok_or_else(|| self.no_movement(asked))?),
            None => movement,
        };
        let bars = |movement: &Movement| movement.bars.clone();
        let within: Vec<RangeInclusive<u32>> = match movement {
            None => self.movements.iter().map(bars).collect(),
            Some(movement) => self.movements.get(movement).map(bars).into_iter().collect(),
        };
        let (first, last) = passage.bars();
        for name in [&first, &last] {
            if !within.iter().any(|bars| !self.bars_called(name, bars.clone()).is_empty()) {
                return Err(self.no_bar(name, movement));
            }
        }
        let found = within.into_iter().find_map(|bars| {
            let from = self.bars_called(&first, bars.clone()).first().copied()?;
            let to = self.bars_called(&last, bars).last().copied()?;
            (from <= to).then_some(from..=to)
        });
        found.ok_or(NotThere::Backwards)
    }

    fn no_movement(&self, asked: &str) -> NotThere {
        let there = self.movements.iter().map(|movement| movement.name().to_owned()).collect();
        NotThere::Movement { asked: asked.to_owned(), there }
    }

    /// Says that the score, or one of its movements, has no such bar.
    #[must_use]
    pub fn no_bar(&self, name: &BarName, movement: Option<usize>) -> NotThere {
        let nth = name.nth.map_or_else(String::new, |nth| format!("({nth})"));
        let bar = format!("{}{nth}", bar_said("bar", None, &name.label));
        let alone =
            movement.and_then(|index| Some((self.movements.get(index)?, self.movement_alone(index)?)));
        match alone {
            Some((movement, (alone, _))) if self.movements.len() > 1 => {
                NotThere::Bar { whose: movement.name().to_owned(), bar, last: alone.last_bars_said() }
            }
            _ => NotThere::Bar { whose: "the score".to_owned(), bar, last: self.last_bars_said() },
        }
    }

    /// How far into a bar of a part a beat or a note value lies; `None` for what says neither. A pickup is counted from
    /// its beginning, and from its end as well: the last quarter of 4/4 is beat 4.
    ///
    /// # Errors
    /// Where the bar is shorter.
    pub fn offset_of(&self, part: usize, bar: u32, within: Within) -> Result<Option<Length>, NoBeat> {
        let meter = self.parts.get(part).and_then(|part| part.meter_at(bar)).cloned();
        let meter = meter.unwrap_or_else(Meter::common);
        let length = self.bars.get(bar as usize).map_or(Length::ZERO, |bar| bar.length);
        let beats = || beat_in_bar(&meter, length) - Length::WHOLE;
        let (offset, missing) = match within {
            Within::Bar | Within::Note(_) => return Ok(None),
            Within::After(offset) => (offset, Length::ZERO),
            Within::Beat(beat) => (offset_of_beat(&meter, beat), meter.bar_length() - length),
        };
        if offset < length {
            return Ok(Some(offset));
        }
        if missing.is_positive() && offset - missing < length && offset >= missing {
            return Ok(Some(offset - missing));
        }
        Err(NoBeat { beats: beats() })
    }
}
