//! What the crates below say in English, said again in a language.
//!
//! Readers of files and of places stand below this crate and know no language: what they have to say of a file they say in English.
//! The file `told` holds every such sentence as a message. Here a sentence is matched with them, its parts are taken out by name, and
//! the message says it again. A part whose name is a kind (`$why`, `$bar`, `$expected-first`) is a sentence or a clause by itself:
//! the messages of that kind, `told-bar-…`, are looked through for it. Reasons, `why-…`, which are sayings where they are given, are
//! sentences, too: some are handed on as English. What no message fits stays as it is.

use std::sync::LazyLock;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

use crate::{Argument, Language, Saying};

/// With what the keys of the file begin.
const BEGINS: &str = "told-";
/// With what the keys of reasons begin.
const REASONS: &str = "why-";
/// The kind of whole sentences.
const SENTENCE: &str = "why";
/// Names of parts that are whole numbers; by them messages choose a plural.
const NUMBERS: [&str; 8] = ["line", "column", "count", "number", "limit", "opened", "version", "more"];
/// Clauses hold clauses so deep at most (a limit).
const DEEPEST: u8 = 6;

/// A sentence in English, taken apart.
struct EnglishPattern {
    key: &'static str,
    kind: &'static str,
    pieces: Vec<PatternPiece>,
    /// Letters that stand in it whatever is put in: of several that fit, the one with most is meant.
    letters: usize,
}

enum PatternPiece {
    Letters(String),
    Part(&'static str),
}

static TOLD: LazyLock<Vec<EnglishPattern>> = LazyLock::new(|| {
    let messages = |file: &'static str| {
        let resource = match parser::parse(file) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        resource.body.into_iter().filter_map(|entry| match entry {
            Entry::Message(message) => Some((message.id.name, message.value?)),
            _ => None,
        })
    };
    let told = messages(Language::English.told());
    let reasons = messages(Language::english_reasons()).filter(|(key, _)| key.starts_with(REASONS));
    told.chain(reasons).filter_map(|(key, pattern)| taken_apart(key, &pattern)).collect()
});

fn taken_apart(key: &'static str, pattern: &Pattern<&'static str>) -> Option<EnglishPattern> {
    let kind = match key.strip_prefix(BEGINS) {
        Some(rest) => rest.split('-').next()?,
        None => SENTENCE,
    };
    let piece = |element: &PatternElement<&'static str>| match element {
        PatternElement::TextElement { value } => Some(PatternPiece::Letters((*value).to_owned())),
        PatternElement::Placeable { expression: Expression::Inline(inline) } => match inline {
            InlineExpression::VariableReference { id } => Some(PatternPiece::Part(id.name)),
            InlineExpression::StringLiteral { value } => Some(PatternPiece::Letters((*value).to_owned())),
            _ => None,
        },
        PatternElement::Placeable { .. } => None,
    };
    let pieces: Vec<PatternPiece> = pattern.elements.iter().map(piece).collect::<Option<_>>()?;
    let letters = pieces.iter().map(|piece| match piece {
        PatternPiece::Letters(letters) => letters.len(),
        PatternPiece::Part(_) => 0,
    });
    Some(EnglishPattern { key, kind, letters: letters.sum(), pieces })
}

/// The parts of a text by name, where the pieces fit it.
fn fit<'t>(pieces: &[PatternPiece], text: &'t str, found: &mut Vec<(&'static str, &'t str)>) -> bool {
    let Some((piece, rest)) = pieces.split_first() else { return text.is_empty() };
    match piece {
        PatternPiece::Letters(letters) => {
            text.strip_prefix(letters.as_str()).is_some_and(|after| fit(rest, after, found))
        }
        PatternPiece::Part(name) => {
            let mut ends: Vec<usize> = match rest.first() {
                None => vec![text.len()],
                Some(PatternPiece::Letters(next)) => {
                    text.match_indices(next.as_str()).map(|(at, _)| at).collect()
                }
                Some(PatternPiece::Part(_)) => Vec::new(),
            };
            ends.retain(|end| may_be(name, &text[..*end], found));
            let known = found.len();
            ends.into_iter().any(|end| {
                found.truncate(known);
                found.push((name, &text[..end]));
                fit(rest, &text[end..], found)
            })
        }
    }
}

/// Whether a text can be the part of that name.
fn may_be(name: &str, text: &str, found: &[(&'static str, &str)]) -> bool {
    let number = text.parse::<i64>().is_ok();
    let same = found.iter().all(|(other, known)| *other != name || *known == text);
    !text.is_empty() && text == text.trim() && same && (number || !NUMBERS.contains(&name))
}

fn of_kind(kind: &str, text: &str, depth: u8) -> Option<Saying> {
    let fitting = TOLD.iter().filter(|told| told.kind == kind).filter_map(|told| {
        let mut found = Vec::new();
        fit(&told.pieces, text, &mut found).then_some((told, found))
    });
    let (told, found) = fitting.max_by_key(|(told, _)| told.letters)?;
    let saying = Saying::new(told.key);
    Some(
        found.into_iter().fold(saying, |saying, (name, part)| saying.with(name, argument(name, part, depth))),
    )
}

fn argument(name: &str, text: &str, depth: u8) -> Argument {
    if let (true, Ok(number)) = (NUMBERS.contains(&name), text.parse::<i64>()) {
        return Argument::Whole(number);
    }
    let kind = name.split('-').next().unwrap_or(name);
    let deeper = if depth < DEEPEST { of_kind(kind, text, depth + 1) } else { None };
    deeper.map_or_else(|| Argument::Text(text.to_owned()), Argument::Saying)
}

/// A sentence that a crate below has said in English, to be said in a language; as it is where no message fits it.
///
/// ```
/// use arcata_languages::{Language, Wording, retold};
///
/// let told = retold("line 3, column 1: the file is empty; export the score again");
/// assert_eq!(Wording::of(Language::Italian).say(&told), "riga 3, colonna 1: il file è vuoto; esportare di nuovo la partitura");
/// assert_eq!(retold("Input/output error").to_string(), "Input/output error");
/// ```
#[must_use]
pub fn retold(english: &str) -> Saying {
    of_kind(SENTENCE, english, 0).unwrap_or_else(|| Saying::as_it_is(english))
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    /// Every message is found again by what it says, with its parts, and no other message of its kind takes its place.
    #[test]
    fn every_message_is_found_again_by_what_it_says() {
        assert!(TOLD.len() > 200, "{} messages", TOLD.len());
        let messages = Language::English.told().lines().filter(|line| line.starts_with(BEGINS)).count();
        let ours = TOLD.iter().filter(|told| told.key.starts_with(BEGINS));
        assert_eq!(ours.count(), messages, "a message in English holds more than letters and parts");
        for told in TOLD.iter() {
            let sample = |name: &str| if NUMBERS.contains(&name) { "7" } else { "Xy" };
            let said: String = told
                .pieces
                .iter()
                .map(|piece| match piece {
                    PatternPiece::Letters(letters) => letters.as_str(),
                    PatternPiece::Part(name) => sample(name),
                })
                .collect();
            let found = of_kind(told.kind, &said, 0).unwrap_or_else(|| panic!("{said} is not found again"));
            assert_eq!(found.key(), told.key, "{said}");
            assert_eq!(found.to_string(), said);
        }
    }

    /// A part that is a clause has messages of its kind, and a kind that no part is named by is that of sentences.
    #[test]
    fn every_kind_is_asked_for() {
        let kinds: BTreeSet<&str> = TOLD.iter().map(|told| told.kind).collect();
        let mut asked: BTreeSet<&str> = BTreeSet::from([SENTENCE]);
        for told in TOLD.iter() {
            for piece in &told.pieces {
                if let PatternPiece::Part(name) = piece {
                    asked.insert(name.split('-').next().unwrap_or(name));
                }
            }
        }
        let idle: Vec<_> = kinds.difference(&asked).collect();
        assert!(idle.is_empty(), "no message has a part of these kinds: {idle:?}");
    }
}
