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
    /// From here a slur is told at all, thousandths of the slowest bow.
    pub slur_too_long: i64,
    /// From here on length is a sign that a slur is a phrase mark, thousandths of the slowest bow.
    pub phrase_slur: i64,
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
    /// Notes shorter than this leave no time to pass over a string, or to shift, under a slur, microseconds.
    pub string_skip: i64,
    /// Leaps from here on are tried on the strings, cents.
    pub string_reach: i32,
    /// How long three or four strings sound on together, microseconds.
    pub stop_held: i64,
    /// Share of strokes with marks from which a bar is crowded, percent.
    pub marks_dense: usize,
    /// Marks in a row of crowded bars from which it is reported.
    pub marks_dense_strokes: usize,
    /// Instances of a marked figure that are worth marking.
    pub effect_instances: usize,
    /// Place in the bow beyond which an accent finds no weight, thousandths of the hair.
    pub accent_at_tip: u16,
    /// Place in the bow below which a soft entry is heavy, thousandths of the hair.
    pub soft_entry_at_frog: u16,
    /// How long a chord of three or four strings takes to break and speak, microseconds.
    pub chord_speaks: i64,
    /// Bars from one rehearsal mark to the next that players count.
    pub landmark_bars: usize,
    /// Whole bars of rest after which an entry carries its dynamic anew.
    pub reentry_bars: usize,
    /// What another bow has to cost more for a lift to count as forced, thousandths of a point.
    pub forced_lift: i64,
    /// Another bow that costs no more than this above the best is a choice of the players, thousandths of a point.
    pub choice_of_bow: i64,
    /// The same for another place in the bow.
    pub choice_of_place: i64,
}

impl Thresholds {
    /// The thresholds of a player.
    #[must_use]
    pub fn of(profile: &Profile) -> Self {
        let set = &profile.thresholds;
        let narrow = |value: i64| i32::try_from(value).unwrap_or(i32::MAX);
        let share = |value: i64| u16::try_from(value).unwrap_or(u16::MAX);
        let count = |value: i64| usize::try_from(value).unwrap_or(1).max(1);
        let milliseconds = |value: i64| value.saturating_mul(1000);
        Self {
            slur_stretched: set.slur_stretched.value,
            slur_impossible: set.slur_impossible.value,
            slur_too_long: set.slur_too_long.value,
            phrase_slur: set.phrase_slur.value * 10,
            note_too_long: set.note_too_long.value,
            drift_repetitions: count(set.drift_repetitions.value),
            drift_travel: set.drift_travel.value,
            drift_level: narrow(set.drift_level.value),
            return_level: narrow(set.return_level.value),
            return_longest: milliseconds(set.return_longest.value),
            beat_strength: share(set.beat_strength.value),
            silent_downbeat_run: count(set.silent_downbeat_run.value),
            swell_shortest: milliseconds(set.swell_shortest.value),
            swell_steps: narrow(set.swell_steps.value),
            ending_long: milliseconds(set.ending_long.value),
            ending_loud: narrow(set.ending_loud.value),
            ending_joint: share(set.ending_joint.value),
            retake_lack: milliseconds(set.retake_lack.value),
            string_skip: milliseconds(set.string_skip.value),
            string_reach: narrow(set.string_reach.value.saturating_mul(100)),
            stop_held: milliseconds(set.stop_held.value),
            marks_dense: count(set.marks_dense.value),
            marks_dense_strokes: count(set.marks_dense_strokes.value),
            effect_instances: count(set.effect_instances.value),
            accent_at_tip: share(set.accent_at_tip.value),
            soft_entry_at_frog: share(set.soft_entry_at_frog.value),
            chord_speaks: milliseconds(set.chord_speaks.value),
            landmark_bars: count(set.landmark_bars.value),
            reentry_bars: count(set.reentry_bars.value),
            forced_lift: set.forced_lift.value,
            choice_of_bow: set.choice_of_bow.value,
            choice_of_place: set.choice_of_place.value,
        }
    }

    /// How grave a slur is that lasts `ratio` thousandths of the slowest bow; `None` when it fits.
    #[must_use]
    pub fn slur_severity(&self, ratio: i64) -> Option<Severity> {
        if ratio <= self.slur_too_long {
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
