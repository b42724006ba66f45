//! The numbers from which a rule speaks, each with unit, reason, source and status.

use crate::Severity;

/// What the review compares with. Every value is a setting of the player; these are the shipped ones.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Thresholds {
    /// How much longer than the slowest bow a slur may last and count as merely stretched, thousandths.
    ///
    /// 1300: of 181,000 printed slurs in 122 string quartets (CC0 corpus, counted November 2026) about
    /// 1 % outlast the slowest bow and few go beyond a third more. Status: calibrated by that count.
    pub slur_stretched: i64,
    /// From here a slur cannot be meant as one bow, thousandths of the slowest bow.
    ///
    /// 2500: what lies above in the same count is phrase marks. Status: calibrated by that count.
    pub slur_impossible: i64,
    /// How many times a pattern must come in a row before it counts as carrying the bow away.
    ///
    /// 3: twice is corrected without a thought (common practice, from memory).
    pub drift_repetitions: usize,
    /// Net travel of the whole passage from which it does, thousandths of the hair.
    ///
    /// 600: more than half a bow away from where it began leaves the part of the bow the stroke lives
    /// in (Broadley 1899, mixed bowings, names the trouble without a figure; from memory).
    pub drift_travel: i64,
    /// Difference of level by which the light strokes would have to stick out to win the bow back,
    /// hundredths of a decibel.
    ///
    /// 900: less is evened out by contact point and pressure (from memory).
    pub drift_level: i32,
    /// How far above its dynamic a returning note may stick out, hundredths of a decibel.
    ///
    /// 800: level is proportional to bow speed at one contact point (Cremer 1984), so this is two and a
    /// half times the speed. Players take back about a doubling (6 dB) by moving from the bridge
    /// (from memory).
    pub return_level: i32,
    /// Longest note that counts as a short returning one, microseconds.
    ///
    /// 600,000: longer notes have time to shape the return (from memory).
    pub return_longest: i64,
    /// Bars in a row whose downbeat nobody begins, before the run itself is reported.
    ///
    /// 4: a phrase's length; shorter syncopated runs are ordinary writing (common practice).
    pub silent_downbeat_run: usize,
    /// Strength of an emphasised beat, hundredths of a plain downbeat.
    ///
    /// 150: a downbeat with something more: an accent, a chord, a sudden rise (from memory).
    pub beat_strength: u16,
    /// Length from which a swell within one stroke counts as long, microseconds.
    ///
    /// 2,000,000: shorter swells are made by the hand at either end of the bow (from memory).
    pub swell_longest: i64,
    /// Change of level from which it counts, hundredths of a dynamic step.
    ///
    /// 100: one step.
    pub swell_steps: i32,
    /// Length from which a phrase's last note counts as long, microseconds.
    ///
    /// 1,500,000: about half of an easy bow at mf (Hoffmann, "Bow length duration on strings": mf 3 s).
    pub ending_long: i64,
    /// Loudness from which a phrase's last note counts as loud, hundredths of a step (f = 600).
    ///
    /// 600: f (common practice).
    pub ending_loud: i32,
    /// Strength of the joint after a note from which it ends a phrase, hundredths.
    ///
    /// 80: a long rest, a double bar, the end (from memory).
    pub ending_joint: u16,
    /// Shortest lack of time that is reported for a retake, microseconds.
    ///
    /// 30,000: below this the estimate of the lift itself is less certain than the lack (from memory).
    pub retake_lack: i64,
}

impl Default for Thresholds {
    fn default() -> Self {
        Self {
            slur_stretched: 1300,
            slur_impossible: 2500,
            drift_repetitions: 3,
            drift_travel: 600,
            drift_level: 900,
            return_level: 800,
            return_longest: 600_000,
            silent_downbeat_run: 4,
            beat_strength: 150,
            swell_longest: 2_000_000,
            swell_steps: 100,
            ending_long: 1_500_000,
            ending_loud: 600,
            ending_joint: 80,
            retake_lack: 30_000,
        }
    }
}

impl Thresholds {
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
