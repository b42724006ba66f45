//! What is wrong with a text of shorthand: where, what was expected, what was perhaps meant.

use std::fmt;

use arcata_score::places::{BarName, Misread, NotThere, bar_said};

use super::syntax::Typed;

/// A complaint about a text of shorthand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ShorthandProblem {
    /// Where in the text.
    pub at: Typed,
    /// Whether the text can be used all the same.
    pub gravity: Gravity,
    /// What is wrong.
    pub trouble: ShorthandProblemKind,
}

/// Whether a text with this complaint can be used.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gravity {
    /// No: nothing is entered until it is put right.
    Wrong,
    /// Yes: something to know.
    Remark,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ShorthandProblemKind {
    /// The text is larger than is read.
    TooLarge {
        /// The most that is read, in bytes or characters.
        most: usize,
    },
    /// The text speaks of more notes than one text may.
    TooManyDecisions {
        /// The most.
        most: usize,
    },
    /// No place stands here.
    NoPlace(Misread),
    /// Something else belongs here.
    Unexpected {
        /// What was found.
        found: String,
        /// What belongs here.
        expected: &'static str,
        /// What was perhaps meant.
        suggestion: Option<String>,
    },
    /// Words that cannot hold together.
    Together {
        /// Why not, and what to write.
        why: &'static str,
    },
    /// No section has been named so far.
    NoSection,
    /// No such section.
    UnknownSection {
        /// As typed.
        name: String,
        /// What was perhaps meant.
        suggestion: Option<String>,
        /// The sections there are.
        known: Vec<String>,
    },
    /// Several sections go by this name.
    SeveralSections {
        /// As typed.
        name: String,
        /// Which.
        known: Vec<String>,
    },
    /// No bar has been named so far on this line.
    NoBarBefore,
    /// No such bar.
    UnknownBar(NotThere),
    /// Several bars bear the number.
    SeveralBars {
        /// As typed.
        label: String,
        /// How many.
        count: usize,
        /// The movements in which they stand, where there are several.
        movements: Vec<String>,
    },
    /// The score has no such movement.
    UnknownMovement {
        /// As typed.
        name: String,
        /// The movements it has.
        known: Vec<String>,
    },
    /// The bar has no such beat.
    UnknownBeat {
        /// The bar as it is said.
        bar: String,
        /// The beat as it is said.
        beat: String,
        /// How many beats the bar has.
        beats: String,
    },
    /// No note begins there.
    NoNote {
        /// Bar, beat and section.
        place: String,
        /// Where notes begin in the bar.
        there: Vec<String>,
    },
    /// A rest stands there.
    Rest {
        /// Bar, beat and section.
        place: String,
    },
    /// Other notes stand there.
    OtherNote {
        /// Bar, beat and section.
        place: String,
        /// Their pitches.
        there: Vec<String>,
    },
    /// A stretch ends before it begins.
    Backwards {
        /// Where it begins.
        from: String,
        /// Where it ends.
        to: String,
        /// What was perhaps meant.
        suggestion: Option<String>,
    },
    /// Fewer strokes than the text wants.
    TooFewStrokes {
        /// Where.
        place: String,
        /// How many are wanted.
        wanted: usize,
        /// How many there are.
        there: usize,
    },
    /// No printed slur goes from here to there.
    NoSuchSlur {
        /// Where.
        place: String,
        /// The slurs that begin there or near.
        there: Vec<String>,
    },
    /// The note lies inside a slur or a tie: no stroke begins there.
    InsideSlur {
        /// Where.
        place: String,
        /// Where the slur or tie begins.
        begins: String,
    },
    /// The same note was decided otherwise before.
    SaidOtherwise {
        /// Where.
        place: String,
        /// The line that decided first.
        line: u32,
        /// What it decided.
        before: String,
    },
}

impl ShorthandProblem {
    pub(super) fn wrong(at: Typed, trouble: ShorthandProblemKind) -> Self {
        Self { at, gravity: Gravity::Wrong, trouble }
    }

    pub(super) fn remark(at: Typed, trouble: ShorthandProblemKind) -> Self {
        Self { at, gravity: Gravity::Remark, trouble }
    }

    /// The complaint, then the line it is about with a mark under the place.
    ///
    /// `text` is the text that was read.
    #[must_use]
    pub fn shown(&self, text: &str) -> String {
        self.shown_as(text, &self.to_string())
    }

    /// The same with the complaint in other words, such as those of another language.
    #[must_use]
    pub fn shown_as(&self, text: &str, said: &str) -> String {
        /// The widest that a line of a text is shown, letters (a limit).
        const WIDEST: usize = 160;
        let index = usize::try_from(self.at.line.saturating_sub(1)).unwrap_or(usize::MAX);
        let Some(line) = text.lines().nth(index) else { return said.to_owned() };
        let column = usize::try_from(self.at.column.max(1) - 1).unwrap_or(0);
        if column > WIDEST {
            return said.to_owned();
        }
        let plain = |letter: char| if letter.is_control() { ' ' } else { letter };
        let line: String = line.chars().take(WIDEST).map(plain).collect();
        let width = usize::try_from(self.at.width.max(1)).unwrap_or(1).min(WIDEST);
        format!("{said}\n  {}\n  {}{}", line.trim_end(), " ".repeat(column), "^".repeat(width))
    }
}

impl fmt::Display for ShorthandProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let remark = if self.gravity == Gravity::Remark { "note: " } else { "" };
        write!(out, "line {}, column {}: {remark}{}", self.at.line, self.at.column, self.trouble)
    }
}

impl From<Box<Misread>> for Box<ShorthandProblem> {
    fn from(misread: Box<Misread>) -> Self {
        Self::new(ShorthandProblem::wrong(misread.at, ShorthandProblemKind::NoPlace(*misread)))
    }
}

fn meant(suggestion: Option<&String>) -> String {
    suggestion.map_or_else(String::new, |name| format!(" Did you mean \"{name}\"?"))
}

impl fmt::Display for ShorthandProblemKind {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooLarge { most } => {
                write!(out, "more than {most} characters; split it into several texts or lines.")
            }
            Self::TooManyDecisions { most } => write!(
                out,
                "expected a text that speaks of at most {most} notes in all, found more up to here. Enter it in \
                 several texts, or name shorter stretches."
            ),
            Self::NoPlace(misread) => misread.fmt(out),
            Self::Unexpected { found, expected, suggestion } => {
                write!(out, "expected {expected}, found {found}.{}", meant(suggestion.as_ref()))
            }
            Self::Together { why } => write!(out, "{why}."),
            Self::NoSection => write!(
                out,
                "expected a section first, such as \"Vn1\" or \"all\": none has been named so far."
            ),
            Self::UnknownSection { name, suggestion, known } => write!(
                out,
                "expected a section of this score, found \"{name}\".{} The sections: {}.",
                meant(suggestion.as_ref()),
                known.join(", ")
            ),
            Self::SeveralSections { name, known } => write!(
                out,
                "expected one section, but \"{name}\" can be {}. Add the number, or write the plural for all \
                 of them.",
                known.join(" or ")
            ),
            Self::NoBarBefore => {
                write!(out, "expected a bar before the beat, such as 37/3: none has been named so far.")
            }
            Self::UnknownBar(not_there) => write!(out, "{not_there}."),
            Self::UnknownMovement { name, known } => write!(
                out,
                "expected a movement of this score, found \"{name}\". It has {}.",
                known.join(", ")
            ),
            Self::SeveralBars { label, movements, .. } if movements.len() > 1 => write!(
                out,
                "expected one bar, but {} stands in the movements {}. Name one above, on a line of its own: {}:",
                bar_said("bar", None, label),
                movements.join(", "),
                movements[0]
            ),
            Self::SeveralBars { label, count, .. } => write!(
                out,
                "expected one bar, but {count} bars are numbered {label}. Write {} for the first of them, {} for \
                 the second.",
                BarName { label: label.clone(), nth: Some(1) },
                BarName { label: label.clone(), nth: Some(2) }
            ),
            Self::UnknownBeat { bar, beat, beats } => {
                write!(out, "expected a beat of {bar}, found {beat}. The bar has {beats}.")
            }
            Self::NoNote { place, there } if there.is_empty() => {
                write!(out, "expected a note, but the bar has none: {place}.")
            }
            Self::NoNote { place, there } => {
                write!(out, "expected a place where a note begins, found {place}. ")?;
                write!(out, "Notes begin at {}.", there.join(", "))
            }
            Self::Rest { place } => write!(out, "expected a note, found a rest: {place}."),
            Self::OtherNote { place, there } => {
                write!(out, "expected one of the notes of {place}: {}.", there.join(", "))
            }
            Self::Backwards { from, to, suggestion } => {
                write!(out, "expected a stretch forwards, but {to} comes before {from}.")?;
                match suggestion {
                    Some(text) => write!(out, " For beats of one bar write {text}."),
                    None => Ok(()),
                }
            }
            Self::TooFewStrokes { place, wanted, there } => {
                write!(out, "expected {wanted} strokes, found {there}: {place}.")
            }
            Self::NoSuchSlur { place, there } if there.is_empty() => {
                write!(out, "expected a printed slur over this stretch, found none: {place}.")
            }
            Self::NoSuchSlur { place, there } => write!(
                out,
                "expected a printed slur over this stretch, found none: {place}. Slurs there: {}.",
                there.join(", ")
            ),
            Self::InsideSlur { place, begins } => write!(
                out,
                "no stroke begins here: {place} lies inside a slur or tie from {begins}. Mark that note, or \
                 take the slur off."
            ),
            Self::SaidOtherwise { place, line, before } => {
                write!(out, "expected one bowing a note, but line {line} says {before} for {place}.")
            }
        }
    }
}
