//! Metronome marks and metric modulations printed as text: "♩ = 120", "(♩. = 60-66)", "q =165", "♩ = ♪".

use std::ops::RangeInclusive;

use crate::{Length, TempoKind};

/// Signs of note values and what they are worth, in whole notes: Unicode's musical symbols and the private
/// code points of SMuFL (W3C community group, glyphs `metNote…` and `note…Up`).
const SIGNS: &[(char, (i64, i64))] = &[
    ('𝅝', (1, 1)),
    ('𝅗', (1, 2)),
    ('\u{1D15E}', (1, 2)),
    ('♩', (1, 4)),
    ('\u{1D15F}', (1, 4)),
    ('♪', (1, 8)),
    ('\u{1D160}', (1, 8)),
    ('\u{1D161}', (1, 16)),
    ('\u{ECA2}', (1, 1)),
    ('\u{ECA3}', (1, 2)),
    ('\u{ECA5}', (1, 4)),
    ('\u{ECA7}', (1, 8)),
    ('\u{ECA9}', (1, 16)),
    ('\u{E1D2}', (1, 1)),
    ('\u{E1D3}', (1, 2)),
    ('\u{E1D5}', (1, 4)),
    ('\u{E1D7}', (1, 8)),
    ('\u{E1D9}', (1, 16)),
];

/// Letters that older music fonts draw as notes; they count only as a word of their own before "=".
const LETTERS: &[(&str, (i64, i64))] = &[
    ("w", (1, 1)),
    ("h", (1, 2)),
    ("q", (1, 4)),
    ("e", (1, 8)),
    ("x", (1, 16)),
    ("whole", (1, 1)),
    ("half", (1, 2)),
    ("quarter", (1, 4)),
    ("eighth", (1, 8)),
    ("minim", (1, 2)),
    ("crotchet", (1, 4)),
    ("quaver", (1, 8)),
];

const DOTS: &[char] = &['.', '\u{1D16D}', '\u{ECB7}', '\u{E1E7}', '·'];

/// Slowest and fastest number believed, in beats a minute: metronomes print 40 to 208; the rest is room
/// for unusual beats. Status: from memory.
const BELIEVED: RangeInclusive<i64> = 8..=600;

/// The same where the note is only a letter: "e = 30" may be anything (rule of thumb).
const BELIEVED_OF_LETTERS: RangeInclusive<i64> = 40..=300;

/// The tempo that a text prints as an equation, when it does.
pub(crate) fn mark(text: &str) -> Option<TempoKind> {
    let (left, right) = text.split_once('=')?;
    let (unit, believed) = value_at_end(left)?;
    let right = right.trim_start_matches(['(', '[']).trim_start();
    if let Some(new) = value_at_start(right) {
        return Some(TempoKind::Modulation(unit, new));
    }
    let beats = beats(right).filter(|beats| believed.contains(&beats.floor()))?;
    let quarters = unit.scaled(4, 1);
    Some(TempoKind::Marked(beats.scaled(quarters.numerator(), quarters.denominator())))
}

/// The note value that a text ends with, and the numbers of beats to believe beside it.
fn value_at_end(text: &str) -> Option<(Length, RangeInclusive<i64>)> {
    let text = text.trim_end();
    let bare = text.trim_end_matches(|letter: char| DOTS.contains(&letter) || letter.is_whitespace());
    let dots = text[bare.len()..].chars().filter(|letter| DOTS.contains(letter)).count();
    // A stem or flag drawn by a combining sign stands after the head it belongs to.
    let bare = bare.trim_end_matches(['\u{1D165}', '\u{1D16E}']);
    let sign = bare.chars().next_back()?;
    if let Some((_, value)) = SIGNS.iter().find(|(known, _)| *known == sign) {
        return Some((dotted(*value, dots), BELIEVED));
    }
    let word = bare.rsplit(|letter: char| !letter.is_alphabetic()).next()?;
    LETTERS
        .iter()
        .find(|(known, _)| *known == word)
        .map(|(_, value)| (dotted(*value, dots), BELIEVED_OF_LETTERS))
}

fn value_at_start(text: &str) -> Option<Length> {
    let mut letters = text.chars();
    let sign = letters.next()?;
    let (_, value) = SIGNS.iter().find(|(known, _)| *known == sign)?;
    let dots = letters
        .skip_while(|letter| letter.is_whitespace())
        .take_while(|letter| DOTS.contains(letter))
        .count();
    Some(dotted(*value, dots))
}

fn dotted(value: (i64, i64), dots: usize) -> Length {
    let plain = Length::new(value.0, value.1);
    match dots {
        0 => plain,
        1 => plain.scaled(3, 2),
        _ => plain.scaled(7, 4),
    }
}

/// "120", "ca. 66", "c. 92", "132-144" (their middle), "66.5".
fn beats(text: &str) -> Option<Length> {
    let from = text.find(|letter: char| letter.is_ascii_digit())?;
    let before = text[..from].trim().trim_end_matches('.').to_lowercase();
    if !matches!(
        before.as_str(),
        "" | "c" | "ca" | "circa" | "about" | "approx" | "env" | "environ" | "etwa" | "~" | "≈"
    ) {
        return None;
    }
    let (first, rest) = number(&text[from..])?;
    let after = rest.trim_start();
    let range = after.strip_prefix(['-', '–', '—', '/']).and_then(|second| number(second.trim_start()));
    let beats = match range {
        Some((second, _)) if second > first => (first + second).scaled(1, 2),
        _ => first,
    };
    Some(beats)
}

fn number(text: &str) -> Option<(Length, &str)> {
    let (whole, rest) = digits(text)?;
    let fraction = rest.strip_prefix(['.', ',']).and_then(digits);
    match fraction {
        Some((tenths, rest)) if tenths.len() <= 3 => {
            let scale = 10_i64.pow(u32::try_from(tenths.len()).ok()?);
            let value = Length::new(whole.parse().ok()?, 1) + Length::new(tenths.parse().ok()?, scale);
            Some((value, rest))
        }
        _ => Some((Length::new(whole.parse().ok()?, 1), rest)),
    }
}

/// The digits at the head of a text (at most nine) and what follows.
fn digits(text: &str) -> Option<(&str, &str)> {
    let end = text.find(|letter: char| !letter.is_ascii_digit()).unwrap_or(text.len());
    (1..=9).contains(&end).then(|| text.split_at(end))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn printed_equations_are_read() {
        let cases = [
            ("♩ = 120", 120, 1),
            ("Allegro (♩=132)", 132, 1),
            ("q =165", 165, 1),
            ("♩. = 60", 90, 1),
            ("♪ = ca. 96", 48, 1),
            ("\u{1D15E} = 66", 132, 1),
            ("\u{1D157}\u{1D165} = 66", 132, 1),
            ("\u{ECA5}\u{ECB7} = 40", 60, 1),
            ("M.M. ♩ = 120–132", 126, 1),
            ("Vivo ♩= 66.5", 133, 2),
            ("quarter = 92", 92, 1),
        ];
        for (text, numerator, denominator) in cases {
            assert_eq!(mark(text), Some(TempoKind::Marked(Length::new(numerator, denominator))), "{text}");
        }
        assert_eq!(mark("♩ = ♪"), Some(TempoKind::Modulation(Length::QUARTER, Length::new(1, 8))));
        assert_eq!(mark("(♩ = ♩.)"), Some(TempoKind::Modulation(Length::QUARTER, Length::new(3, 8))));
    }

    #[test]
    fn other_equations_are_not() {
        for text in [
            "",
            "=",
            "♩ =",
            "a = 440",
            "120",
            "♩ = fast",
            "♩ = 0",
            "♩ = 99999999999999",
            "c'=fis'''",
            "♩ = 4711",
            "e = 30",
        ] {
            assert_eq!(mark(text), None, "{text}");
        }
    }
}
