//! Names of movements and sections at the head of a line, of sections also behind a separator.

use arcata_score::instrument::section_name;
use arcata_score::places::tokens::{BeforeToken, Token, TokenKind};
use arcata_score::places::{Cursor, Role, begins_point, begins_with_bar_word, plays};
use arcata_score::words::is_roman;

use super::parser::{ParseFailure, unexpected};
use super::syntax::At;
use super::words::is_only_a_mark;

/// Reads the number of a movement at the head of a line: a Roman numeral and a colon, or a comma and a bar with its
/// word, as places are printed (`II, bar 17`). A section is never called by a numeral alone.
pub(super) fn movement(cursor: &mut Cursor<'_, '_>) -> Option<At<String>> {
    let from = cursor.spot();
    let number = cursor.word(0).filter(|word| is_roman(&word.to_uppercase()))?;
    let mut bar = cursor.clone();
    bar.at += 2;
    match cursor.kind(1) {
        Some(TokenKind::Colon) => {}
        Some(TokenKind::Comma) if begins_with_bar_word(&bar) => {}
        _ => return None,
    }
    cursor.at += 1;
    let spot = cursor.since(from);
    cursor.at += 1;
    Some(At { value: number.to_uppercase(), spot })
}

/// Whether names of sections come next.
pub(super) fn begins(cursor: &Cursor<'_, '_>) -> bool {
    match cursor.kind(0) {
        Some(TokenKind::Quoted(_)) => true,
        Some(TokenKind::Word(word)) => {
            !begins_point(cursor) && !plays(word, Role::Anchor) && !is_only_a_mark(&cursor.words())
        }
        // "1. Violine", "2nd violins": a number that a known name follows.
        Some(TokenKind::Number(_)) => named_after_number(cursor),
        _ => false,
    }
}

fn named_after_number(cursor: &Cursor<'_, '_>) -> bool {
    let dot = usize::from(cursor.kind(1) == Some(&TokenKind::Dot));
    let name = cursor.word(1 + dot);
    name.is_some_and(|name| name.chars().count() > 2 && section_name(name).is_some())
}

/// Reads names up to the bar that follows, or up to a colon.
pub(super) fn sections(cursor: &mut Cursor<'_, '_>) -> Result<Vec<At<String>>, ParseFailure> {
    let colon = colon_ahead(cursor);
    let mut names: Vec<At<String>> = Vec::new();
    loop {
        let from = cursor.spot();
        let before = names.last().map(|name| name.value.clone());
        let Some(name) = name(cursor, colon, before.as_deref()) else {
            return Err(unexpected(cursor, "the name of a section", None));
        };
        names.push(At { value: name, spot: cursor.since(from) });
        if !joined(cursor, colon) {
            break;
        }
    }
    if !cursor.take(&TokenKind::Colon) {
        cursor.take(&TokenKind::Comma);
    }
    Ok(names)
}

/// Where the colon stands that ends the names, if one does.
fn colon_ahead(cursor: &Cursor<'_, '_>) -> Option<usize> {
    let rest = &cursor.tokens[cursor.at..];
    let length = rest.iter().position(|token| !belongs_to_names(&token.kind))?;
    let names_only = rest[length].kind == TokenKind::Colon
        && (0..length).all(|at| {
            let mut here = cursor.clone();
            here.at += at;
            let beat = here.word(0).is_some_and(|word| plays(word, Role::Beat)) && here.number(1).is_some();
            !beat && (here.number(0).is_some_and(is_small) || !begins_point(&here))
        });
    names_only.then_some(cursor.at + length)
}

fn belongs_to_names(kind: &TokenKind<'_>) -> bool {
    matches!(
        kind,
        TokenKind::Word(_)
            | TokenKind::Number(_)
            | TokenKind::Quoted(_)
            | TokenKind::Comma
            | TokenKind::Ampersand
            | TokenKind::Plus
            | TokenKind::Dot
    )
}

/// One name. A number by itself ("Violin 1, 2") takes the name before it along.
fn name(cursor: &mut Cursor<'_, '_>, colon: Option<usize>, before: Option<&str>) -> Option<String> {
    if let Some(TokenKind::Quoted(text)) = cursor.kind(0) {
        cursor.at += 1;
        return Some(text.clone());
    }
    let mut taken: Vec<&Token<'_>> = Vec::new();
    while let Some(token) = cursor.ahead(0) {
        let belongs = match &token.kind {
            TokenKind::Word(word) => {
                colon.is_some() && !plays(word, Role::And)
                    || !(plays(word, Role::And) && !taken.is_empty()
                        || begins_point(cursor)
                        || plays(word, Role::Anchor)
                        || (!taken.is_empty() && is_only_a_mark(&cursor.words())))
            }
            TokenKind::Number(_) => {
                colon.is_some()
                    || is_section_number(cursor)
                    || (taken.is_empty() && named_after_number(cursor))
            }
            TokenKind::Dot => token.before == BeforeToken::Token && !taken.is_empty(),
            _ => false,
        };
        if !belongs {
            break;
        }
        taken.push(token);
        cursor.at += 1;
    }
    let text = joined_text(&taken);
    let lone = matches!(taken.as_slice(), [only] if is_number_alone(only));
    match before {
        Some(before) if lone => Some(format!("{} {text}", stem(before))),
        _ => (!text.is_empty()).then_some(text),
    }
}

pub(super) fn is_number_alone(token: &Token<'_>) -> bool {
    let roman = ["I", "II", "III", "IV", "i", "ii", "iii", "iv"];
    matches!(token.kind, TokenKind::Number(_))
        || matches!(token.kind, TokenKind::Word(word) if roman.contains(&word))
}

/// A name without its number: "Violin 1" and "Vn1" give "Violin" and "Vn".
fn stem(name: &str) -> &str {
    let last = name.rsplit(' ').next().unwrap_or(name);
    let bare = name.trim_end_matches(|letter: char| letter.is_ascii_digit()).trim_end();
    if ["i", "ii", "iii", "iv"].contains(&last.to_lowercase().as_str()) && last.len() < name.len() {
        name[..name.len() - last.len()].trim_end()
    } else if bare.is_empty() {
        name
    } else {
        bare
    }
}

fn joined_text(taken: &[&Token<'_>]) -> String {
    let mut text = String::new();
    for token in taken {
        if !text.is_empty() && token.before == BeforeToken::Space {
            text.push(' ');
        }
        text.push_str(token.text);
    }
    text
}

/// Whether a number can be a section's: "2", "2nd".
fn is_small(number: &str) -> bool {
    let digits = number.trim_end_matches(char::is_alphabetic);
    digits.parse::<u8>().is_ok_and(|number| (1..=12).contains(&number))
}

/// Whether a number behind a name is the section's and not a bar: something must follow that makes it so.
fn is_section_number(cursor: &Cursor<'_, '_>) -> bool {
    if !cursor.number(0).is_some_and(is_small) {
        return false;
    }
    let mut next = cursor.clone();
    next.at += 1;
    if next.kind(0) == Some(&TokenKind::Dot) {
        next.at += 1;
    }
    let comma = next.take(&TokenKind::Comma);
    match next.kind(0) {
        None => !comma,
        Some(TokenKind::Ampersand | TokenKind::Plus) => true,
        Some(TokenKind::Word(word)) if plays(word, Role::And) || plays(word, Role::Anchor) => true,
        Some(TokenKind::Word(_)) if comma => begins(&next),
        Some(TokenKind::Word(_)) => begins_point(&next),
        Some(TokenKind::Number(_)) if comma => is_section_number(&next),
        Some(TokenKind::Number(_)) => true,
        _ => false,
    }
}

/// Takes what joins two names, when another name follows.
fn joined(cursor: &mut Cursor<'_, '_>, colon: Option<usize>) -> bool {
    let mut next = cursor.clone();
    let joins = match next.kind(0) {
        Some(TokenKind::Comma) => {
            next.at += 1;
            colon.is_some_and(|colon| next.at < colon)
                || match next.kind(0) {
                    Some(TokenKind::Number(_)) => is_section_number(&next) || named_after_number(&next),
                    _ => begins(&next),
                }
        }
        Some(TokenKind::Ampersand | TokenKind::Plus) => {
            next.at += 1;
            true
        }
        Some(TokenKind::Word(word)) if plays(word, Role::And) => {
            next.at += 1;
            true
        }
        _ => false,
    };
    if joins {
        *cursor = next;
    }
    joins
}
