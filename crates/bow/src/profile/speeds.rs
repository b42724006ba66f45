//! Bow speeds for every shade between two dynamics.

use arcata_score::Instrument;

use super::Profile;
use crate::{Loudness, SpeedWindow};

/// The speed windows of one instrument, for every loudness.
///
/// Between two dynamics the speed grows by equal ratios, since equal ratios are equal steps of level.
/// Below ppp the window of ppp holds: what is softer is done by the hand's weight and contact point.
#[derive(Clone, Debug)]
pub struct SpeedTable {
    /// By loudness, from ppp (100) to fff (800).
    windows: Vec<SpeedWindow>,
}

/// The loudness of ppp, and of one step (by definition).
const STEP: i32 = Loudness::PPP.0;
/// The loudness of fff (by definition).
const LOUDEST: i32 = Loudness::FFF.0;

impl SpeedTable {
    /// The table of an instrument.
    #[must_use]
    pub fn new(profile: &Profile, instrument: Instrument) -> Self {
        let scale = profile.scale.of(instrument).value;
        let levels = profile.speed.in_order().map(|setting| {
            // cm/s times percent: 10,000 µm/s a cm/s, a hundredth of it a percent.
            setting.value.map(|speed| u32::try_from(speed * scale * 100).unwrap_or(u32::MAX))
        });
        let mut windows = Vec::with_capacity(701);
        for pair in levels.windows(2) {
            let [slowest, preferred, fastest] =
                [0, 1, 2].map(|column| between(pair[0][column], pair[1][column]));
            windows.extend(
                slowest
                    .into_iter()
                    .zip(preferred)
                    .zip(fastest)
                    .map(|((slow, liked), fast)| window([slow, liked, fast])),
            );
        }
        windows.push(window(levels[levels.len() - 1]));
        Self { windows }
    }

    /// The window of a loudness.
    #[must_use]
    pub fn window(&self, loudness: Loudness) -> SpeedWindow {
        let shade = loudness.0.clamp(STEP, LOUDEST) - STEP;
        self.windows[usize::try_from(shade).unwrap_or(0).min(self.windows.len() - 1)]
    }
}

fn window([slowest, preferred, fastest]: [u32; 3]) -> SpeedWindow {
    SpeedWindow { slowest, preferred, fastest }
}

/// A hundred speeds in equal ratios from one speed towards the next.
///
/// Powers come from repeated square roots, which every machine rounds alike.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "speeds are small and positive")]
fn between(low: u32, high: u32) -> [u32; STEP as usize] {
    /// Bits behind the point of a table's steps (by definition).
    const BITS: usize = 16;
    let mut roots = [0.0; BITS];
    let mut root = f64::from(high) / f64::from(low.max(1));
    for slot in &mut roots {
        root = root.sqrt();
        *slot = root;
    }
    std::array::from_fn(|shade| {
        let fraction = (shade << BITS) / STEP as usize;
        let factor: f64 =
            (0..BITS).filter(|bit| fraction & (1 << (BITS - 1 - bit)) != 0).map(|bit| roots[bit]).product();
        (f64::from(low) * factor).round() as u32
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn written_dynamics_have_the_speeds_of_the_profile() {
        let table = SpeedTable::new(&Profile::default(), Instrument::Violin);
        let piano = SpeedWindow { slowest: 50_000, preferred: 100_000, fastest: 250_000 };
        assert_eq!(table.window(Loudness(300)), piano);
        assert_eq!(table.window(Loudness(800)).fastest, 1_300_000);
        assert_eq!(table.window(Loudness(0)), table.window(Loudness(100)));
    }

    #[test]
    fn half_way_between_two_dynamics_lies_their_geometric_mean() {
        let table = SpeedTable::new(&Profile::default(), Instrument::Violin);
        // √(10 · 15) = 12.2474 cm/s between p and mp.
        assert!(table.window(Loudness(350)).preferred.abs_diff(122_474) <= 2);
    }

    #[test]
    fn speeds_never_fall_as_loudness_grows() {
        let table = SpeedTable::new(&Profile::default(), Instrument::Bass);
        for loudness in 0..LOUDEST {
            let (softer, louder) = (table.window(Loudness(loudness)), table.window(Loudness(loudness + 1)));
            assert!(softer.slowest <= louder.slowest && softer.preferred <= louder.preferred);
            assert!(louder.slowest < louder.preferred && louder.preferred < louder.fastest);
        }
    }
}
