//! How messages tell the two bows apart.

use arcata_score::BowDirection;

/// The case of a message: `down` or `up`.
#[must_use]
pub const fn bow(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    }
}
