//! Dynamic marks by their letters.

use arcata_xml::{Element, Tag};

use super::part_reader::PartReader;
use crate::{Dynamic, DynamicKind, Level, Place};

impl PartReader {
    /// Reads a `<dynamics>`; its letters are read together where they make one mark (`f` and `p`: fp), and
    /// with the words that writers put beside them ("più f", "p dolce").
    pub(super) fn read_dynamics(&mut self, element: Element<'_>, place: Place) {
        let mut children = element.children();
        let (first, second) = (children.next(), children.next());
        if let (Some(only), None) = (first, second) {
            let letters = letters_of(only);
            if !self.take_letters(&letters, place) {
                self.read_text(&letters, place);
            }
            return;
        }
        let pieces: Vec<_> = element.children().map(letters_of).collect();
        if self.take_letters(&pieces.concat(), place) {
            return;
        }
        let known = (self.part.dynamics.len(), self.levels.len());
        self.read_text(&pieces.join(" "), place);
        if (self.part.dynamics.len(), self.levels.len()) == known {
            for piece in pieces {
                self.take_letters(&piece, place);
            }
        }
    }

    /// Takes up dynamic letters; whether they were any.
    fn take_letters(&mut self, letters: &str, place: Place) -> bool {
        let marks = match from_letters(letters) {
            Some(kind) => [Some(kind), None],
            // "ffsf": a level, and an accent in it.
            None => match letters.rfind("sf").map(|at| letters.split_at(at)) {
                Some((level, accent)) => [from_letters(level), from_letters(accent)],
                None => [None, None],
            },
        };
        self.part.dynamics.extend(marks.into_iter().flatten().map(|kind| Dynamic { place, kind }));
        marks[0].is_some()
    }
}

fn letters_of(mark: Element<'_>) -> std::borrow::Cow<'_, str> {
    if mark.tag() == Tag::OTHER_DYNAMICS { mark.text() } else { mark.name().into() }
}

/// What dynamic letters ask for: `p`, `mf`, `sfz`, `fp`, `sfpp`, `n`; `None` for anything else.
pub(super) fn from_letters(letters: &str) -> Option<DynamicKind> {
    let text = letters.trim();
    let (rest, accent) = match text.as_bytes().first()? {
        b's' | b'r' => (&text[1..], Accent::Written),
        _ => (text, Accent::None),
    };
    let (first, rest) = leading_level(rest)?;
    let (rest, accent) = match rest.strip_prefix('z') {
        Some(rest) => (rest, Accent::Written),
        None => (rest, accent),
    };
    if !rest.is_empty() {
        let (after, rest) = leading_level(rest)?;
        return rest.is_empty().then_some(DynamicKind::Shape(first, after));
    }
    match accent {
        Accent::Written if first >= Level::F => Some(DynamicKind::Accented(first)),
        Accent::Written => None,
        Accent::None => Some(DynamicKind::Level(first)),
    }
}

#[derive(Clone, Copy)]
enum Accent {
    None,
    Written,
}

/// The level at the head of the letters, and what follows.
fn leading_level(letters: &str) -> Option<(Level, &str)> {
    for (name, level) in [("mp", Level::Mp), ("mf", Level::Mf), ("n", Level::Niente)] {
        if let Some(rest) = letters.strip_prefix(name) {
            return Some((level, rest));
        }
    }
    let letter = letters.chars().next().filter(|letter| matches!(letter, 'p' | 'f'))?;
    let rest = letters.trim_start_matches(letter);
    let level = match (letter, letters.len() - rest.len()) {
        ('p', 1) => Level::P,
        ('p', 2) => Level::Pp,
        ('p', _) => Level::Ppp,
        (_, 1) => Level::F,
        (_, 2) => Level::Ff,
        _ => Level::Fff,
    };
    Some((level, rest))
}

#[cfg(test)]
mod tests {
    use super::*;
    use DynamicKind::{Accented, Level as Lasting, Shape};

    #[test]
    fn every_mark_of_the_schema_is_read() {
        // The names inside <dynamics> in the W3C's musicxml.xsd 4.0.
        for (letters, kind) in [
            ("p", Lasting(Level::P)),
            ("pp", Lasting(Level::Pp)),
            ("ppp", Lasting(Level::Ppp)),
            ("pppp", Lasting(Level::Ppp)),
            ("ppppp", Lasting(Level::Ppp)),
            ("pppppp", Lasting(Level::Ppp)),
            ("f", Lasting(Level::F)),
            ("ff", Lasting(Level::Ff)),
            ("fff", Lasting(Level::Fff)),
            ("ffff", Lasting(Level::Fff)),
            ("fffff", Lasting(Level::Fff)),
            ("ffffff", Lasting(Level::Fff)),
            ("mp", Lasting(Level::Mp)),
            ("mf", Lasting(Level::Mf)),
            ("n", Lasting(Level::Niente)),
            ("sf", Accented(Level::F)),
            ("sfz", Accented(Level::F)),
            ("sffz", Accented(Level::Ff)),
            ("fz", Accented(Level::F)),
            ("rf", Accented(Level::F)),
            ("rfz", Accented(Level::F)),
            ("fp", Shape(Level::F, Level::P)),
            ("sfp", Shape(Level::F, Level::P)),
            ("sfpp", Shape(Level::F, Level::Pp)),
            ("sfzp", Shape(Level::F, Level::P)),
            ("pf", Shape(Level::P, Level::F)),
            ("ffp", Shape(Level::Ff, Level::P)),
            ("mfp", Shape(Level::Mf, Level::P)),
        ] {
            assert_eq!(from_letters(letters), Some(kind), "{letters}");
        }
    }

    #[test]
    fn other_letters_are_no_dynamic() {
        for letters in ["", "s", "sp", "ffsf", "dim", "forte", "più f", "fpf", "z", "pz"] {
            assert_eq!(from_letters(letters), None, "{letters}");
        }
    }
}
