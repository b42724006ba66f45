//! The numbers from which a rule speaks. Reason, unit, source and status of each stand in the player
//! profile; here they are turned into the units of strokes and plans.

use arcata_bow::Profile;

use crate::Severity;

/// What the review compares with.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Thresholds {
    /// Up to here a slur that outlasts the slowest bow is merely stretched, thousandths of it.
    pub slur_stretched: i64,
    /// From here a slur cannot be meant as one bow, thousandths of the slowest bow.
    pub slur_impossible: i64,
    /// A single note needs a change of bow from here, thousandths of the slowest bow.
    pub note_too_long: i64,
    /// How many times a pattern must come in a row before it counts as carrying the bow away.
    pub drift_repetitions: usize,
    /// Net travel of a whole passage that counts as drift, thousandths of the hair.
    pub drift_travel: i64,
    /// How far the light strokes would have to stick out to win the bow back, hundredths of a decibel.
    pub drift_level: i32,
    /// How far above its dynamic a returning note may stick out, hundredths of a decibel.
    pub return_level: i32,
    /// Longest note that counts as a short returning one, microseconds.
    pub return_longest: i64,
    /// Strength of an emphasised beat, hundredths of a plain downbeat.
    pub beat_strength: u16,
    /// Bars in a row whose downbeat nobody begins, before the run itself is reported.
    pub silent_downbeat_run: usize,
    /// Length from which a swell within one stroke counts, microseconds.
    pub swell_shortest: i64,
    /// Change of level from which it counts, hundredths of a dynamic step.
    pub swell_steps: i32,
    /// Length from which a phrase's last note counts as long, microseconds.
    pub ending_long: i64,
    /// Loudness from which a phrase's last note counts as loud, hundredths of a step.
    pub ending_loud: i32,
    /// Strength of the joint after a note from which it ends a phrase, hundredths.
    pub ending_joint: u16,
    /// Shortest lack of time that is reported for a retake, microseconds.
    pub retake_lack: i64,
}

impl Thresholds {
    /// The thresholds of a player. Every profile extends a shipped one, which has them all; a missing one
    /// counts as the largest number, so that its rule stays silent rather than guess.
    #[must_use]
    pub fn of(profile: &Profile) -> Self {
        let set = |name: &str| profile.threshold(name).unwrap_or(i64::MAX / 1000);
        let narrow = |name: &str| i32::try_from(set(name)).unwrap_or(i32::MAX);
        let share = |name: &str| u16::try_from(set(name)).unwrap_or(u16::MAX);
        let count = |name: &str| usize::try_from(set(name)).unwrap_or(1).max(1);
        let milliseconds = |name: &str| set(name).saturating_mul(1000);
        Self {
            slur_stretched: set("slur_stretched"),
            slur_impossible: set("slur_impossible"),
            note_too_long: set("note_too_long"),
            drift_repetitions: count("drift_repetitions"),
            drift_travel: set("drift_travel"),
            drift_level: narrow("drift_level"),
            return_level: narrow("return_level"),
            return_longest: milliseconds("return_longest"),
            beat_strength: share("beat_strength"),
            silent_downbeat_run: count("silent_downbeat_run"),
            swell_shortest: milliseconds("swell_longest"),
            swell_steps: narrow("swell_steps"),
            ending_long: milliseconds("ending_long"),
            ending_loud: narrow("ending_loud"),
            ending_joint: share("ending_joint"),
            retake_lack: milliseconds("retake_lack"),
        }
    }

    /// How grave a slur is that lasts `ratio` thousandths of the slowest bow; `None` when it fits.
    #[must_use]
    pub fn slur_severity(&self, ratio: i64) -> Option<Severity> {
        if ratio <= 1000 {
            None
        } else if ratio <= self.slur_stretched {
            Some(Severity::C)
        } else if ratio <= self.slur_impossible {
            Some(Severity::B)
        } else {
            Some(Severity::A)
        }
    }
}
