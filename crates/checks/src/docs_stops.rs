//! The page of all stops of two notes on each instrument.

use std::fmt::Write as _;

use arcata_bow::Profile;
use arcata_hand::{Ease, Finger, Fingerboard, Stopping, Strings};
use arcata_score::Instrument;

const INSTRUMENTS: [(Instrument, &str); 4] = [
    (Instrument::Violin, "Violin"),
    (Instrument::Viola, "Viola"),
    (Instrument::Cello, "Cello"),
    (Instrument::Bass, "Double bass"),
];

/// Intervals from a semitone to a tenth, semitones.
const INTERVALS: std::ops::RangeInclusive<i32> = 1..=16;
const HEADS: [&str; 16] =
    ["m2", "M2", "m3", "M3", "4", "tritone", "5", "m6", "M6", "m7", "M7", "8", "m9", "M9", "m10", "M10"];

const INTRODUCTION: &str = "\
# Stops of two notes

Made by `cargo xtask docs` from `crates/hand` and the professional profile (`strings`, `hand_close`, `hand_stretched`,
`hand_thumb` in [profiles.md](profiles.md), each with its source; the limits of two stopped notes are from memory).

Rows: the lower note as it sounds, up to an octave above the highest open string (middle C is C4). Columns: the
interval above it, m minor, M major.

| sign | the easiest way |
|---|---|
| `o` | with an open string |
| `c` | within the closed hand |
| `s` | with the hand stretched |
| `t` | with the thumb on the string |
| nothing | no two neighbouring strings hold both |

That two notes can be stopped does not make them easy to tune or to reach in a hurry. A stretch that strains the hand
is not worth it: rest, and ask a teacher or a physician about pain.
";

pub(crate) fn page() -> String {
    let mut text = INTRODUCTION.to_owned();
    for (instrument, name) in INSTRUMENTS {
        let Some(board) = Fingerboard::new(instrument, Strings::Four, &Profile::default()) else { continue };
        let _ =
            write!(text, "\n## {name}\n\n| | {} |\n|---|{}\n", HEADS.join(" | "), "---|".repeat(HEADS.len()));
        let last = board.open.last().map_or(0, |open| open + 1200);
        let mut low = board.lowest();
        while low <= last {
            let cells: Vec<&str> =
                INTERVALS.map(|interval| sign(&board, low, low + interval * 100)).collect();
            let _ = writeln!(text, "| {} | {} |", note(low), cells.join(" | "));
            low += 100;
        }
    }
    text
}

fn sign(board: &Fingerboard, low: i32, high: i32) -> &'static str {
    let ways = board.stoppings(&[low, high]);
    let open = |way: &Stopping| way.stops.iter().any(|stop| stop.finger == Finger::Open);
    if ways.iter().any(open) {
        return "`o`";
    }
    match ways.first().map(|way| way.ease) {
        None => "",
        Some(Ease::Close) => "`c`",
        Some(Ease::Stretched) => "`s`",
        Some(Ease::Thumb) => "`t`",
    }
}

fn note(cents: i32) -> String {
    const NAMES: [&str; 12] =
        ["C", "C sharp", "D", "E flat", "E", "F", "F sharp", "G", "A flat", "A", "B flat", "B"];
    let semitone = cents.div_euclid(100);
    let name = NAMES[usize::try_from(semitone.rem_euclid(12)).unwrap_or(0)];
    let gap = if name.len() > 1 { " " } else { "" };
    format!("{name}{gap}{}", semitone.div_euclid(12) - 1)
}
