//! Headings of movements, and of what lies within one.

/// What a printed text is a heading of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Heading {
    /// A movement.
    Movement {
        /// Its number as people say it: a Roman numeral, or a plain one where that is printed.
        number: String,
        /// The heading as printed, its white space tidied, without a full stop behind a bare number.
        text: String,
    },
    /// A part of a movement: a trio, a variation, a double.
    Within,
}

/// Parts of a movement that have headings of their own (common practice in English, Italian, French, German).
const WITHIN: [&str; 18] = [
    "trio",
    "alternativo",
    "maggiore",
    "minore",
    "majeur",
    "mineur",
    "var",
    "variation",
    "variazione",
    "variatio",
    "double",
    "coda",
    "musette",
    "cadenza",
    "kadenz",
    "cadence",
    "thema",
    "tema",
];

/// Longer texts are no headings (rule of thumb).
const LONGEST: usize = 80;

/// Reads a text that stands where a bar begins as a heading; `None` when it is none.
///
/// ```
/// use arcata_score::words::{Heading, heading};
/// let found = heading("III.  Notturno");
/// assert_eq!(found, Some(Heading::Movement { number: "III".to_owned(), text: "III. Notturno".to_owned() }));
/// assert_eq!(heading("Trio"), Some(Heading::Within));
/// assert_eq!(heading("Andante"), None);
/// ```
#[must_use]
pub fn heading(text: &str) -> Option<Heading> {
    let tidy = text.split_whitespace().collect::<Vec<_>>().join(" ");
    if tidy.is_empty() || tidy.chars().count() > LONGEST {
        return None;
    }
    let first = tidy.split(|letter: char| !letter.is_alphanumeric()).next().unwrap_or_default();
    if WITHIN.iter().any(|word| first.to_lowercase() == *word) {
        return Some(Heading::Within);
    }
    let (number, rest) = numbered(&tidy)?;
    let rest = rest.trim();
    let text = if rest.is_empty() { number.to_owned() } else { tidy.trim_end().to_owned() };
    Some(Heading::Movement { number: number.to_owned(), text })
}

/// The number that a heading begins with, and what follows it.
fn numbered(text: &str) -> Option<(&str, &str)> {
    let bare = text
        .strip_prefix("No. ")
        .or_else(|| text.strip_prefix("Nr. "))
        .or_else(|| text.strip_prefix("N° "))
        .unwrap_or(text);
    let end = bare.find(|letter: char| !letter.is_ascii_alphanumeric()).unwrap_or(bare.len());
    let (number, rest) = bare.split_at(end);
    let plain = !number.is_empty() && number.len() <= 2 && number.bytes().all(|digit| digit.is_ascii_digit());
    let sound = plain || is_roman(number);
    let parted = rest.strip_prefix(['.', ':', ')', '-', '–', '—', ',']).or_else(|| rest.strip_prefix(" – "));
    // A plain number wants its full stop: "2 Solo" is no heading.
    match parted {
        Some(rest) if sound => Some((number, rest)),
        None if sound && !plain && rest.is_empty() => Some((number, rest)),
        None if sound && !plain && rest.starts_with(' ') => Some((number, rest)),
        _ => None,
    }
}

/// Whether a text is a Roman numeral from I to XXXIX: no work has more movements.
#[must_use]
pub fn is_roman(text: &str) -> bool {
    let units = text.trim_start_matches('X');
    let tens = text.len() - units.len();
    tens <= 3
        && !text.is_empty()
        && matches!(units, "" | "I" | "II" | "III" | "IV" | "V" | "VI" | "VII" | "VIII" | "IX")
}

/// A number as a Roman numeral; a plain one from 400 on.
#[must_use]
pub fn roman(number: usize) -> String {
    /// Roman numerals by value (by definition).
    const SIGNS: [(usize, &str); 9] =
        [(100, "C"), (90, "XC"), (50, "L"), (40, "XL"), (10, "X"), (9, "IX"), (5, "V"), (4, "IV"), (1, "I")];
    if number >= 400 {
        return number.to_string();
    }
    let mut left = number;
    let mut said = String::new();
    for (value, sign) in SIGNS {
        while left >= value {
            said.push_str(sign);
            left -= value;
        }
    }
    said
}

/// The value of a Roman numeral from I to XXXIX.
#[must_use]
pub fn from_roman(text: &str) -> Option<usize> {
    (1..40).find(|number| roman(*number) == text)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_of_movements_have_a_number() {
        let read = |text: &str| match heading(text) {
            Some(Heading::Movement { number, text }) => format!("{number} = {text}"),
            Some(Heading::Within) => "within".to_owned(),
            None => "none".to_owned(),
        };
        let cases = [
            ("II.", "II = II"),
            ("II", "II = II"),
            (" IV. ", "IV = IV"),
            ("III.  Notturno", "III = III. Notturno"),
            ("II Scherzo", "II = II Scherzo"),
            ("IX: Air", "IX = IX: Air"),
            ("2. Menuett", "2 = 2. Menuett"),
            ("No. 3. Gavotte", "3 = No. 3. Gavotte"),
            ("Trio.", "within"),
            ("Var. II", "within"),
            ("Variation 3", "within"),
            ("2 Solo", "none"),
            ("Vivace", "none"),
            ("I°", "none"),
            ("Adagio come I.", "none"),
            ("1st time", "none"),
            ("XXXX", "none"),
            ("", "none"),
        ];
        for (text, expected) in cases {
            assert_eq!(read(text), expected, "{text}");
        }
    }
}
