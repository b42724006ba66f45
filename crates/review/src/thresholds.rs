//! The numbers from which a rule speaks, each with unit, reason, source and status.

use arcata_bow::Profile;

use crate::Severity;

/// What the review compares with: the player's thresholds in the units of strokes and plans, and the
/// few that no profile sets.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Thresholds {
    /// A slur is stretched from here, thousandths of the slowest bow.
    pub slur_stretched: i64,
    /// A slur will be broken from here, thousandths of the slowest bow.
    pub slur_too_long: i64,
    /// A slur cannot be meant as one bow from here, thousandths of the slowest bow.
    pub slur_impossible: i64,
    /// A single note needs a change of bow from here, thousandths of the slowest bow.
    pub note_too_long: i64,
    /// Net travel of a whole passage that counts as drift, thousandths of the hair.
    pub drift_travel: i64,
    /// How long the passage must last, bars.
    pub drift_bars: i64,
    /// How far above its dynamic a returning note may stick out, hundredths of a decibel.
    pub return_level: i32,
    /// Bars in a row whose downbeat nobody begins, before the run itself is reported.
    pub silent_downbeat_run: usize,
    /// Length from which a swell within one stroke counts, microseconds.
    pub swell_shortest: i64,
    /// Change of level from which it counts, hundredths of a dynamic step.
    pub swell_steps: i32,
}

impl Thresholds {
    /// How many times a pattern must come in a row before it counts as carrying the bow away: twice is
    /// corrected without a thought (common practice, from memory).
    pub const DRIFT_REPETITIONS: usize = 3;

    /// Difference of level by which the light strokes of a pattern would have to stick out to win the bow
    /// back, hundredths of a decibel: less is evened out by contact point and pressure (from memory).
    pub const DRIFT_LEVEL: i32 = 900;

    /// Longest note that counts as a short returning one, microseconds: longer notes have time to shape
    /// the return (from memory).
    pub const RETURN_LONGEST: i64 = 600_000;

    /// Strength of an emphasised beat, hundredths of a plain downbeat: a downbeat with something more, an
    /// accent, a chord, a sudden rise (from memory).
    pub const BEAT_STRENGTH: u16 = 150;

    /// Length from which a phrase's last note counts as long, microseconds: about half of an easy bow at
    /// mf (Hoffmann, "Bow length duration on strings": mf 3 s).
    pub const ENDING_LONG: i64 = 1_500_000;

    /// Loudness from which a phrase's last note counts as loud: f (common practice).
    pub const ENDING_LOUD: i32 = 600;

    /// Strength of the joint after a note from which it ends a phrase, hundredths: a long rest, a double
    /// bar, the end (from memory).
    pub const ENDING_JOINT: u16 = 80;

    /// Shortest lack of time that is reported for a retake, microseconds: below it the estimate of the
    /// lift itself is less certain than the lack (from memory).
    pub const RETAKE_LACK: i64 = 30_000;

    /// The thresholds of a player.
    #[must_use]
    pub fn of(profile: &Profile) -> Self {
        let set = &profile.thresholds;
        let narrow = |value: i64| i32::try_from(value).unwrap_or(i32::MAX);
        Self {
            slur_stretched: set.slur_stretched.value * 10,
            slur_too_long: set.slur_too_long.value * 10,
            slur_impossible: set.slur_impossible.value * 10,
            note_too_long: set.note_too_long.value * 10,
            drift_travel: set.drift_distance.value,
            drift_bars: set.drift_bars.value,
            return_level: narrow(set.rushed_return.value),
            silent_downbeat_run: usize::try_from(set.silent_downbeats.value).unwrap_or(1).max(1),
            swell_shortest: set.swell_length.value * 1000,
            swell_steps: narrow(set.swell_steps.value),
        }
    }

    /// How grave a slur is that lasts `ratio` thousandths of the slowest bow; `None` when it fits.
    #[must_use]
    pub fn slur_severity(&self, ratio: i64) -> Option<Severity> {
        if ratio <= self.slur_stretched {
            None
        } else if ratio <= self.slur_too_long {
            Some(Severity::C)
        } else if ratio <= self.slur_impossible {
            Some(Severity::B)
        } else {
            Some(Severity::A)
        }
    }
}
