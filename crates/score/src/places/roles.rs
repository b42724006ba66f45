//! The words of places, in English, Italian, French and German.
//!
//! Source: how orchestra parts, rehearsal plans and pencil marks name bars and beats (common practice).

use crate::words::folded_words;

const BAR: &str = "bar|bars|b|bb|m|mm|measure|measures|batt|battuta|battute|misura|misure|mis|mesure|mesures|\
                   mes|takt|takte|t";
const BEAT: &str =
    "beat|beats|bt|temps|tempo|tempi|movimento|movimenti|mov|zahlzeit|zahlzeiten|zz|schlag|schlage";
const NOTE: &str = "note|n|nota";
const AFTER: &str = "after|dopo|apres|nach";
const VOICE: &str = "voice|voce|voix|stimme";
const TO: &str = "to|through|until|bis|a|al|au|jusqu a|fino a";
const AND: &str = "and|e|et|und";
const ANCHOR: &str = "anchor|anchored|ancora|ancre|anker";
const MOVEMENT: &str = "movement|mvt|movimento|mov|mouvement|satz";

/// What a word is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// Before a bar's number.
    Bar,
    /// Before a beat.
    Beat,
    /// Before the number of a note.
    Note,
    /// Before a note value counted from the beginning of the bar.
    After,
    /// Before a voice.
    Voice,
    /// Between the ends of a stretch.
    To,
    /// Between names.
    And,
    /// Before what plans must keep to.
    Anchor,
    /// Before a movement.
    Movement,
}

/// Whether a word plays a role, in any of the languages; capitals, accents and full stops do not matter.
///
/// ```
/// use arcata_score::places::{Role, plays};
/// assert!(plays("Batt.", Role::Bar) && plays("Zählzeit", Role::Beat));
/// ```
#[must_use]
pub fn plays(word: &str, role: Role) -> bool {
    let names = match role {
        Role::Bar => BAR,
        Role::Beat => BEAT,
        Role::Note => NOTE,
        Role::After => AFTER,
        Role::Voice => VOICE,
        Role::To => TO,
        Role::And => AND,
        Role::Anchor => ANCHOR,
        Role::Movement => MOVEMENT,
    };
    let folded = folded_words(word).join(" ");
    names.split('|').any(|name| name == folded)
}

/// `m37`, `T.12a`: the bar's label behind a glued bar word.
pub(super) fn glued_bar(word: &str) -> Option<&str> {
    glued(word, Role::Bar)
}

/// `n5`: the note's number behind a glued word.
pub(super) fn glued_note(word: &str) -> Option<&str> {
    glued(word, Role::Note)
}

fn glued(word: &str, role: Role) -> Option<&str> {
    let digits = word.find(|letter: char| letter.is_ascii_digit())?;
    let (stem, number) = word.split_at(digits);
    let number = number.trim_end_matches('.');
    let whole = number.chars().all(char::is_alphanumeric);
    (whole && plays(stem, role)).then_some(number)
}
