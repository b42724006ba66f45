//! Agreement by what a stroke is, besides where it stands in the bar.

use arcata_bow::{Join, StrokeKind};
use arcata_score::BowDirection;
use rayon::prelude::*;

use super::agreement::Share;
use super::tunes::{Tune, TuneMark};

/// What a marked stroke is; it may be several of these.
#[derive(Clone, Copy)]
pub(super) struct MarkedKind {
    pub(super) name: &'static str,
    is: fn(&Tune, &TuneMark) -> bool,
}

pub(super) const KINDS: [MarkedKind; 4] = [
    MarkedKind { name: "last notes of a phrase", is: ends_phrase },
    MarkedKind { name: "entries after rests", is: enters },
    MarkedKind { name: "hooked pairs", is: hooked },
    MarkedKind { name: "repeated down-bows", is: repeated_down },
];

/// Before a rest or a free joint, or the last of all.
fn ends_phrase(tune: &Tune, mark: &TuneMark) -> bool {
    tune.lines[mark.line].strokes.get(mark.stroke + 1).is_none_or(|next| next.join != Join::Continues)
}

fn enters(tune: &Tune, mark: &TuneMark) -> bool {
    mark.stroke > 0 && tune.lines[mark.line].strokes[mark.stroke].join != Join::Continues
}

/// Two notes on one bow, stopped between them: a stroke of its own kind, or a second stroke printed with
/// the up-bow of the one before.
fn hooked(tune: &Tune, mark: &TuneMark) -> bool {
    let strokes = &tune.lines[mark.line].strokes;
    strokes[mark.stroke].kind == StrokeKind::HookedPair || again(tune, mark, BowDirection::Up)
}

fn repeated_down(tune: &Tune, mark: &TuneMark) -> bool {
    again(tune, mark, BowDirection::Down)
}

/// Printed with the mark that the stroke right before it carries, too.
fn again(tune: &Tune, mark: &TuneMark, direction: BowDirection) -> bool {
    let strokes = &tune.lines[mark.line].strokes;
    let before = mark.stroke.checked_sub(1).and_then(|before| strokes[before].printed);
    mark.direction == direction && before == Some(direction) && strokes[mark.stroke].join == Join::Continues
}

/// The share of each kind's marks that a bowing agrees with.
pub(super) fn by_kind(
    tunes: &[&Tune],
    bowing: impl Fn(&Tune) -> Vec<BowDirection> + Sync,
) -> [Share; KINDS.len()] {
    let each = tunes.par_iter().map(|tune| {
        let mut shares = [Share::default(); KINDS.len()];
        for (mark, direction) in tune.marks.iter().zip(bowing(tune)) {
            for (share, kind) in shares.iter_mut().zip(&KINDS) {
                if (kind.is)(tune, mark) {
                    share.count(mark.direction == direction);
                }
            }
        }
        shares
    });
    let plus = |one: [Share; KINDS.len()], other: [Share; KINDS.len()]| {
        std::array::from_fn(|kind| one[kind].plus(other[kind]))
    };
    each.reduce(|| [Share::default(); KINDS.len()], plus)
}
