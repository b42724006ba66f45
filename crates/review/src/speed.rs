//! How fast strokes and attacks follow each other, in hundreds a second like the rates of the profile.

use arcata_bow::Stroke;

/// Attacks of a stroke in 100 s, by the time that it takes; `None` for a stroke that takes none.
pub(crate) fn rate_of(stroke: &Stroke) -> Option<i64> {
    rate(i64::from(stroke.note_count), stroke.duration.micros)
}

/// So many attacks in so many microseconds, as attacks in 100 s, rounded.
pub(crate) fn rate(attacks: i64, micros: i64) -> Option<i64> {
    (micros > 0).then(|| (attacks.saturating_mul(100_000_000) + micros / 2) / micros)
}

/// A rate as it is said, a second with one place: `7.2`.
pub(crate) fn rate_text(rate: i64) -> String {
    let tenths = (rate + 5) / 10;
    match (tenths / 10, tenths % 10) {
        (whole, 0) => whole.to_string(),
        (whole, part) => format!("{whole}.{part}"),
    }
}
