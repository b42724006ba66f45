//! A place, or a stretch, as the whole of a text or at its beginning.

use super::cursor::Cursor;
use super::fraction;
use super::misread::Misread;
use super::point::{begins_point, begins_with_bar_word, point, stretch};
use super::roles::{Role, plays};
use super::tokens::{Token, TokenKind, tokens};
use super::{BarName, Passage, Point, Within};
use crate::Length;
use crate::words::is_roman;

/// Longer texts are no places, in bytes (a limit).
pub(super) const LONGEST_PLACE: usize = 4096;

/// Reads a text that is a place or a stretch: `12`, `41-42`, `II: 12/3½`, `Viola, bar 12, beat 3`,
/// `II, bar 12, beat 3½  Viola`.
///
/// # Errors
/// Where it is none, with what belongs where.
///
/// ```
/// use arcata_score::places::{Within, passage};
/// use arcata_score::Length;
/// for typed in ["12/4¾", "m. 12, beat 4 3/4", "batt. 12, tempo 19/4", "mes. 12, temps 4.75", "Takt 12, Schlag 4+3/4"] {
///     let place = passage(typed)?;
///     assert_eq!(place.bars().0.label, "12");
///     assert_eq!(place.from.within, Within::Beat(Length::new(19, 4)));
/// }
/// # Ok::<(), arcata_score::places::Misread>(())
/// ```
pub fn passage(text: &str) -> Result<Passage, Misread> {
    let line = PlaceText::new(text)?;
    if let Some(bare) = line.bare_labels() {
        return Ok(bare);
    }
    let (mut passage, cursor) = line.leading()?;
    if cursor.is_at_end() {
        return Ok(passage);
    }
    // "bar 23, beat 1  Violin": the section as a heading has it.
    let trailing = line.from(&cursor).trim_start_matches([',', ' ']);
    let names = passage.section.is_none()
        && match line.after_comma(&cursor).kind(0) {
            // "beats 2 and 3" are two places.
            Some(TokenKind::Word(word)) => !plays(word, Role::And),
            Some(TokenKind::Quoted(_)) => true,
            _ => false,
        }
        && line.named_with_word;
    if !names {
        return Err(*cursor.misread("nothing more", None));
    }
    passage.section = Some(trailing.trim().to_owned());
    Ok(passage)
}

/// Reads a place at the beginning of a text, names before it too; hands back what follows.
///
/// # Errors
/// Where no place stands there.
///
/// ```
/// let (place, rest) = arcata_score::places::leading("Viola 12/2½ up")?;
/// assert_eq!((place.section.as_deref(), rest), (Some("Viola"), "up"));
/// # Ok::<(), arcata_score::places::Misread>(())
/// ```
pub fn leading(text: &str) -> Result<(Passage, &str), Misread> {
    let line = PlaceText::new(text)?;
    let (passage, cursor) = line.leading()?;
    let rest = line.from(&cursor).trim();
    Ok((passage, rest))
}

/// Reads a text that is a beat: `3`, `3½`, `7/2`, `beat 3.5`.
///
/// # Errors
/// Where it is none.
///
/// ```
/// use arcata_score::places::beat;
/// let half = arcata_score::Length::new(7, 2);
/// assert!(["3½", "7/2", "3.5", "3+1/2", "3 1/2", "beat 3½", "Schlag 3½"].iter().all(|typed| beat(typed) == Ok(half)));
/// ```
pub fn beat(text: &str) -> Result<Length, Misread> {
    let line = PlaceText::new(text)?;
    let mut cursor = line.cursor();
    if cursor.word(0).is_some_and(|word| plays(word, Role::Beat)) {
        cursor.at += 1;
    }
    let beat = fraction::beat(&mut cursor).map_err(|misread| *misread)?;
    if cursor.is_at_end() { Ok(beat) } else { Err(*cursor.misread("nothing more", None)) }
}

/// Reads a text that is a note value, as files have it: `3/8`, `0`, `1`.
///
/// # Errors
/// Where it is none.
///
/// ```
/// use arcata_score::{Length, places::note_value};
/// assert_eq!(note_value("3/8"), Ok(Length::new(3, 8)));
/// assert!(note_value("-1").is_err());
/// ```
pub fn note_value(text: &str) -> Result<Length, Misread> {
    let line = PlaceText::new(text)?;
    let mut cursor = line.cursor();
    let length = fraction::note_value(&mut cursor).map_err(|misread| *misread)?;
    if cursor.is_at_end() { Ok(length) } else { Err(*cursor.misread("nothing more", None)) }
}

/// A text and its tokens.
struct PlaceText<'t> {
    text: &'t str,
    tokens: Vec<Token<'t>>,
    /// Whether a word for a bar stands in it: then its end is plain, and a name may follow.
    named_with_word: bool,
}

impl<'t> PlaceText<'t> {
    fn new(text: &'t str) -> Result<Self, Misread> {
        let (tokens, comment) = if text.len() > LONGEST_PLACE { (Vec::new(), None) } else { tokens(text) };
        let line = Self { text, tokens, named_with_word: false };
        if text.len() > LONGEST_PLACE {
            let found = "a text as long as a page".to_owned();
            return Err(Misread { found, ..*line.cursor().misread("a place", None) });
        }
        if comment.is_some() {
            let mut end = line.cursor();
            end.at = line.tokens.len();
            return Err(Misread {
                found: "\"#\"".to_owned(),
                ..*end.misread("a place without remarks", None)
            });
        }
        let named_with_word = line.starts().any(|cursor| begins_with_bar_word(&cursor));
        Ok(Self { named_with_word, ..line })
    }

    fn cursor(&self) -> Cursor<'_, 't> {
        Cursor::new(&self.tokens, 1, self.text)
    }

    /// A cursor before each token.
    fn starts(&self) -> impl Iterator<Item = Cursor<'_, 't>> {
        (0..self.tokens.len()).map(|at| Cursor { at, ..self.cursor() })
    }

    /// What is not read.
    fn from(&self, cursor: &Cursor<'_, 't>) -> &'t str {
        cursor.ahead(0).map_or("", |token| &self.text[token.at..])
    }

    fn after_comma<'l>(&self, cursor: &Cursor<'l, 't>) -> Cursor<'l, 't> {
        let mut cursor = cursor.clone();
        cursor.take(&TokenKind::Comma);
        cursor
    }

    /// A bar, or two parted by a dash, whose names need not be numbers: `X1`, `X1-X4`, `A`.
    fn bare_labels(&self) -> Option<Passage> {
        let name = |cursor: &Cursor<'_, '_>| match cursor.kind(0) {
            Some(TokenKind::Word(label)) if !is_said(label) && !begins_with_bar_word(cursor) => {
                Some(BarName::new(label))
            }
            Some(TokenKind::Quoted(label)) => Some(BarName::new(label)),
            _ => None,
        };
        let point = |bar| Point { bar: Some(bar), within: Within::Bar };
        let mut cursor = self.cursor();
        let from = name(&cursor)?;
        cursor.at += 1;
        let to = if cursor.take(&TokenKind::Dash) {
            let number = cursor.number(0).map(BarName::new);
            let to = name(&cursor).or(number)?;
            cursor.at += 1;
            Some(to)
        } else {
            None
        };
        cursor.is_at_end().then(|| Passage {
            movement: None,
            section: None,
            from: point(from),
            to: to.map(point),
        })
    }

    /// The place with the names before it, and how far it goes. Where a word says which number is the bar's, there;
    /// else at the first number that no other place follows ("Violin 1 37/3").
    fn leading(&self) -> Result<(Passage, Cursor<'_, 't>), Misread> {
        let with_word = self.starts().filter(begins_with_bar_word);
        let with_number = self.starts().filter(|cursor| matches!(cursor.kind(0), Some(TokenKind::Number(_))));
        for start in with_word.chain(with_number) {
            let mut cursor = start.clone();
            let (from, to) = stretch(&mut cursor, point).map_err(|misread| *misread)?;
            if self.goes_on(&cursor) {
                continue;
            }
            let (movement, section) = self.names(&start);
            let name = section.as_deref().unwrap_or("a name");
            if !name.contains(char::is_alphabetic) {
                return Err(*start.misread("nothing more", None));
            }
            if name.split_whitespace().next_back().is_some_and(|word| plays(word, Role::Beat)) {
                return Err(*self.cursor().misread("a bar before the beat", None));
            }
            return Ok((Passage { movement, section, from, to }, cursor));
        }
        Err(*self.cursor().misread("a bar such as 37, 37/3 or 41-42", None))
    }

    /// Whether another place begins in what follows: then the number before it belongs to a name.
    fn goes_on(&self, cursor: &Cursor<'_, 't>) -> bool {
        let rest = (cursor.at..self.tokens.len()).map(|at| Cursor { at, ..cursor.clone() });
        let mut ahead = rest.skip_while(|cursor| cursor.is(&TokenKind::Comma));
        match self.named_with_word {
            // Behind a bar with its word a name may follow that has a number.
            true => ahead.any(|cursor| begins_with_bar_word(&cursor) || cursor.is(&TokenKind::Slash)),
            false => ahead.any(|cursor| begins_point(&cursor)),
        }
    }

    /// The movement and the section of the names before a bar: `II, Viola`, `II: Viola`, `movement 2`, `Viola:`.
    fn names(&self, bar: &Cursor<'_, 't>) -> (Option<String>, Option<String>) {
        let end = bar.ahead(0).map_or(self.text.len(), |token| token.at);
        let text = self.text[..end].trim().trim_end_matches([',', ' ']);
        if let Some((first, rest)) = text.split_once(':') {
            let (first, rest) = (bare(first), bare(rest));
            let numbered = first.as_deref().is_some_and(|first| is_number(first) || is_movement(first));
            return if rest.is_some() || numbered { (first.map(movement), rest) } else { (None, first) };
        }
        let (first, rest) = text.split_once(',').unwrap_or((text, ""));
        // "2, bar 17", but not "2, 17".
        let is_first = |first: &str| is_movement(first) || self.named_with_word && is_number(first);
        match bare(first).filter(|first| is_first(first)) {
            Some(first) => (Some(movement(first)), bare(rest)),
            None => (None, bare(text)),
        }
    }
}

/// Whether a word says what another text is.
fn is_said(word: &str) -> bool {
    [Role::Bar, Role::Beat, Role::Movement].into_iter().any(|role| plays(word, role))
}

/// A name without what parts it from others.
fn bare(name: &str) -> Option<String> {
    let name = name.trim().trim_end_matches([',', ':', '.']).trim();
    let bare = name.strip_prefix('"').and_then(|name| name.strip_suffix('"')).unwrap_or(name);
    (!bare.is_empty()).then(|| bare.to_owned())
}

fn is_number(name: &str) -> bool {
    !name.is_empty() && name.bytes().all(|digit| digit.is_ascii_digit())
}

/// Whether a name can only be a movement's: a numeral, a heading with one, the word for a movement.
fn is_movement(name: &str) -> bool {
    let first = name.split(|letter: char| !letter.is_alphanumeric()).next().unwrap_or_default();
    let heading = name.get(first.len()..).is_some_and(|rest| rest.is_empty() || rest.starts_with('.'));
    heading && is_roman(&first.to_uppercase()) || plays(first, Role::Movement)
}

/// A movement's name without the word for one.
fn movement(name: String) -> String {
    match name.split_once(' ') {
        Some((word, number)) if plays(word, Role::Movement) => number.trim().to_owned(),
        _ => name,
    }
}
