//! Tempo events of all parts as one list.
//!
//! Every part may repeat a tempo, and one event may be told three times: in words, as a metronome mark, and
//! as a `<sound>` for machines. What is printed stands above what is not.

use super::movements::Ends;
use crate::{Tempo, TempoKind};

/// A hostile file could make the search for doubles slow (a limit).
const MOST_AT_ONCE: usize = 64;

/// Tempo events in the order of time, each told once. What stands at the end of a movement and what stands at the
/// beginning of the next are two.
pub(super) fn in_order(mut tempos: Vec<Tempo>, ends: Ends<'_>) -> Vec<Tempo> {
    tempos.sort_by_key(|tempo| (tempo.place.at, ends.before(tempo.place.bar)));
    let together = |one: &Tempo, other: &Tempo| {
        one.place.at == other.place.at && ends.before(one.place.bar) == ends.before(other.place.bar)
    };
    tempos.chunk_by(together).flat_map(of_one_moment).collect()
}

fn of_one_moment(told: &[Tempo]) -> Vec<Tempo> {
    let mut printed: Vec<Tempo> = Vec::new();
    for tempo in told.iter().filter(|tempo| !tempo.text.is_empty()) {
        if printed.len() < MOST_AT_ONCE && !printed.iter().any(|known| known.kind == tempo.kind) {
            printed.push(tempo.clone());
        }
    }
    if let Some(marked) = printed.iter().position(|tempo| matches!(tempo.kind, TempoKind::Marked(_))) {
        give_number(&mut printed, marked);
        return printed;
    }
    let Some(silent) = told.iter().find(|tempo| tempo.text.is_empty()) else { return printed };
    // A word takes the number as its own. Under a gradual change the number belongs to a machine's version
    // of it, and a modulation says by itself what follows.
    if printed.is_empty() {
        printed.push(silent.clone());
    } else if let Some(word) = printed.iter_mut().find(|tempo| takes_number(&tempo.kind)) {
        word.kind = silent.kind.clone();
    }
    printed
}

/// Joins the words at the same moment to the metronome mark.
fn give_number(printed: &mut Vec<Tempo>, marked: usize) {
    let mark = printed[marked].clone();
    let mut text = String::new();
    for word in printed.iter().filter(|tempo| takes_number(&tempo.kind) && !mark.text.contains(&tempo.text)) {
        text.push_str(&word.text);
        text.push(' ');
    }
    printed[marked].text = text + &mark.text;
    printed.retain(|tempo| !takes_number(&tempo.kind));
}

/// Whether a tempo only waits for a number.
fn takes_number(kind: &TempoKind) -> bool {
    matches!(kind, TempoKind::Word(_) | TempoKind::Back(_) | TempoKind::Scaled(_))
}
