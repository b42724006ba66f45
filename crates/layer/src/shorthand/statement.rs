//! Places and the marks behind them.

use arcata_score::BowDirection;
use arcata_score::places::tokens::TokenKind;
use arcata_score::places::{Cursor, Role, begins_point, plays};

use super::parser::{ParseFailure, unexpected};
use super::place;
use super::problem::{ShorthandProblem, ShorthandProblemKind};
use super::syntax::{Also, At, Bow, Statement, Typed};
use super::words::{MarkWord, mark, nearest_mark};
use crate::model::{EntryForce, HookSign};

/// The most strokes that one hook may join, and the most directions in a row (a limit).
pub(super) const MOST_HOOKED: u8 = 16;
/// See [`MOST_HOOKED`] (a limit).
const MOST_DIRECTIONS: usize = 64;

const A_MARK: &str =
    "a mark such as down, up, hook, retake, lift, at the frog, slur, as it comes or \"text\"";

/// Reads one statement.
pub(super) fn statement(cursor: &mut Cursor<'_, '_>) -> Result<At<Statement>, ParseFailure> {
    let from = cursor.spot();
    let mut said = Said::default();
    said.take_anchor(cursor);
    let mut places = vec![place::place(cursor)?];
    loop {
        let mut next = cursor.clone();
        if !(next.take(&TokenKind::Comma) && begins_point(&next)) {
            break;
        }
        *cursor = next;
        places.push(place::place(cursor)?);
    }
    cursor.take(&TokenKind::Colon);
    marks(cursor, &mut said)?;
    let spot = cursor.since(from);
    let force = said.checked(spot)?;
    Ok(At { value: Statement { force, places, bow: said.bow, also: said.also }, spot })
}

/// What was read so far.
#[derive(Default)]
struct Said {
    bow: Option<Bow>,
    also: Vec<Also>,
    anchor: Option<Typed>,
}

impl Said {
    fn take_anchor(&mut self, cursor: &mut Cursor<'_, '_>) -> bool {
        let is_anchor = cursor.word(0).is_some_and(|word| plays(word, Role::Anchor));
        if is_anchor {
            self.anchor = Some(cursor.spot());
            cursor.at += 1;
        }
        is_anchor
    }

    /// What can only be said when all is read.
    fn checked(&self, spot: Typed) -> Result<EntryForce, ParseFailure> {
        let together =
            |at, why| Err(Box::new(ShorthandProblem::wrong(at, ShorthandProblemKind::Together { why })));
        if let (Some(Bow::Directions(strokes)), false) = (&self.bow, self.also.is_empty())
            && strokes.len() > 1
        {
            return together(
                spot,
                "several strokes in a row cannot carry other marks; give the stroke that has one a place of \
                 its own, such as 37/3 down retake",
            );
        }
        match (self.anchor, &self.bow) {
            (None, _) => Ok(EntryForce::Mark),
            (Some(_), Some(bow)) if *bow != Bow::AsItComes => Ok(EntryForce::Anchor),
            (Some(at), _) => together(at, "an anchor needs a direction; write anchor 60/1 down or up"),
        }
    }
}

fn marks(cursor: &mut Cursor<'_, '_>, said: &mut Said) -> Result<(), ParseFailure> {
    let mut count = 0;
    loop {
        let mut next = cursor.clone();
        let comma = count > 0 && next.take(&TokenKind::Comma);
        if comma && !begins_mark(&next) {
            break;
        }
        // Before a place the word belongs to what follows.
        let anchors = is_anchor_behind(&next) && said.take_anchor(&mut next);
        if !anchors && !one_mark(&mut next, said)? {
            break;
        }
        *cursor = next;
        count += 1;
    }
    let goes_on = matches!(cursor.kind(0), None | Some(TokenKind::Comma | TokenKind::Semicolon));
    let anchor = cursor.word(0).is_some_and(|word| plays(word, Role::Anchor));
    if count == 0 || !(goes_on || anchor || begins_point(cursor)) {
        let suggestion = cursor.word(0).and_then(nearest_mark);
        let expected = if count == 0 { A_MARK } else { "another mark or a separator" };
        return Err(unexpected(cursor, expected, suggestion));
    }
    Ok(())
}

fn begins_mark(cursor: &Cursor<'_, '_>) -> bool {
    match cursor.kind(0) {
        Some(TokenKind::DownSign | TokenKind::UpSign) => true,
        // A text behind a comma could be a section's name: it is one only before a colon.
        Some(TokenKind::Quoted(_)) => cursor.kind(1) != Some(&TokenKind::Colon),
        Some(TokenKind::Word(_)) => is_anchor_behind(cursor) || mark(&cursor.words()).is_some(),
        _ => false,
    }
}

/// Whether the word for an anchor comes next and no place of its own behind it.
fn is_anchor_behind(cursor: &Cursor<'_, '_>) -> bool {
    let mut next = cursor.clone();
    next.at += 1;
    cursor.word(0).is_some_and(|word| plays(word, Role::Anchor)) && !begins_point(&next)
}

/// Reads a mark, if one comes next.
fn one_mark(cursor: &mut Cursor<'_, '_>, said: &mut Said) -> Result<bool, ParseFailure> {
    let from = cursor.spot();
    let together = |cursor: &Cursor<'_, '_>, why| {
        Err(Box::new(ShorthandProblem::wrong(cursor.since(from), ShorthandProblemKind::Together { why })))
    };
    let word = match cursor.kind(0) {
        Some(TokenKind::Quoted(text)) => {
            cursor.at += 1;
            said.also.push(Also::Text(text.clone()));
            return Ok(true);
        }
        Some(TokenKind::DownSign) => {
            cursor.at += 1;
            MarkWord::Direction(BowDirection::Down)
        }
        Some(TokenKind::UpSign) => {
            cursor.at += 1;
            MarkWord::Direction(BowDirection::Up)
        }
        _ => match mark(&cursor.words()) {
            Some((word, length)) => {
                cursor.at += length;
                word
            }
            None => return Ok(false),
        },
    };
    let bow = said.bow.take();
    said.bow = match (word, bow) {
        (MarkWord::Direction(direction), bow) => match with_direction(bow, direction) {
            Ok(bow) => Some(bow),
            Err(why) => return together(cursor, why),
        },
        (MarkWord::Double(first), None) => Some(Bow::Double { first }),
        (MarkWord::Hook, None) => Some(Bow::Hook { count: hooked(cursor), bow: None, sign: HookSign::Marks }),
        (MarkWord::Hook, Some(Bow::Directions(strokes))) if strokes.len() == 1 => {
            Some(Bow::Hook { count: hooked(cursor), bow: strokes.first().copied(), sign: HookSign::Marks })
        }
        (MarkWord::Sign(sign), Some(Bow::Hook { count, bow, sign: HookSign::Marks })) => {
            Some(Bow::Hook { count, bow, sign })
        }
        (MarkWord::Sign(_), Some(Bow::Hook { .. })) => {
            return together(cursor, "a hook is written with dots or with dashes, one of them");
        }
        (MarkWord::Sign(_), _) => {
            return together(
                cursor,
                "dots and dashes say how a hook is written; write the hook before them, as in 41/3 hook dots",
            );
        }
        (MarkWord::Retake, None) => Some(Bow::Retake { bow: None }),
        (MarkWord::Retake, Some(Bow::Directions(strokes))) if strokes.len() == 1 => {
            Some(Bow::Retake { bow: strokes.first().copied() })
        }
        (MarkWord::AsItComes, None) => Some(Bow::AsItComes),
        (MarkWord::Double(_) | MarkWord::Hook | MarkWord::Retake | MarkWord::AsItComes, Some(_)) => {
            return together(
                cursor,
                "a note is hooked, retaken or bowed as it comes, one of them; give each its own place",
            );
        }
        (also, bow) => {
            let also = match also {
                MarkWord::Lift => Also::Lift,
                MarkWord::InBow(place) => Also::InBow(place),
                MarkWord::NoSlur => Also::NoSlur,
                MarkWord::SlurNow => Also::SlurNow(Box::new(place::place(cursor)?)),
                _ => Also::Slur,
            };
            said.also.push(also);
            bow
        }
    };
    Ok(true)
}

fn with_direction(bow: Option<Bow>, direction: BowDirection) -> Result<Bow, &'static str> {
    match bow {
        None => Ok(Bow::Directions(vec![direction])),
        Some(Bow::Directions(strokes)) if strokes.len() >= MOST_DIRECTIONS => {
            Err("too many strokes in a row; begin anew with a bar")
        }
        Some(Bow::Directions(mut strokes)) => {
            strokes.push(direction);
            Ok(Bow::Directions(strokes))
        }
        Some(Bow::Hook { count, bow: None, sign }) => Ok(Bow::Hook { count, bow: Some(direction), sign }),
        Some(Bow::Retake { bow: None }) => Ok(Bow::Retake { bow: Some(direction) }),
        Some(Bow::Double { .. }) => Err("a note has two bows at most; give the next one its own place"),
        Some(Bow::AsItComes) => Err("what is bowed as it comes has no direction of its own"),
        Some(Bow::Hook { .. } | Bow::Retake { .. }) => {
            Err("one hook or retake goes one way; give the next stroke its own place")
        }
    }
}

/// How many strokes a hook joins: a small number that no beat, range or bar follows.
fn hooked(cursor: &mut Cursor<'_, '_>) -> Option<u8> {
    let count = cursor.number(0)?.parse().ok().filter(|count| (2..=MOST_HOOKED).contains(count))?;
    let is_place = matches!(cursor.kind(1), Some(TokenKind::Slash | TokenKind::Dash | TokenKind::Open));
    if is_place {
        return None;
    }
    cursor.at += 1;
    Some(count)
}
