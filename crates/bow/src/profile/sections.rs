//! The sections of a profile. The shipped files give every field its value, unit, reason and source;
//! what a field is for stands there, once.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::setting::Setting;

/// Declares a section whose settings are all of one type.
macro_rules! section {
    ($(#[$about:meta])* $name:ident of $value:ty { $($(#[$doc:meta])* $key:ident),+ $(,)? }) => {
        $(#[$about])*
        #[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            $($(#[$doc])* pub $key: Setting<$value>,)+
        }
    };
}

section! {
    /// What things are called in messages.
    Words of String {
        /// Bar, measure.
        bar,
        /// Stand, desk.
        stand,
        /// Frog, heel.
        frog,
        /// Tip, point.
        tip,
        /// Leader, concertmaster.
        leader,
    }
}

section! {
    /// Slowest, preferred and fastest speed of a violin bow by dynamic, cm/s.
    Speeds of [i64; 3] {
        /// ppp
        ppp,
        /// pp
        pp,
        /// p
        p,
        /// mp
        mp,
        /// mf
        mf,
        /// f
        f,
        /// ff
        ff,
        /// fff
        fff,
    }
}

impl Speeds {
    /// The settings from ppp to fff.
    #[must_use]
    pub fn in_order(&self) -> [&Setting<[i64; 3]>; 8] {
        [&self.ppp, &self.pp, &self.p, &self.mp, &self.mf, &self.f, &self.ff, &self.fff]
    }
}

section! {
    /// Where in the bow a kind of stroke lives: (from, to) in thousandths of the hair from the frog.
    Homes of [u16; 2] {
        /// Soft detached notes.
        single_soft,
        /// Detached notes.
        single,
        /// Loud detached notes.
        single_loud,
        /// Soft short notes.
        short_soft,
        /// Short notes.
        short,
        /// Loud short notes.
        short_loud,
        /// Slurs.
        slurred,
        /// Slurred dots and dashes.
        pulsed,
        /// Dotted pairs in one bow.
        hooked_pair,
        /// Chords of three and four notes.
        broken_chord,
        /// Soft tremolo.
        tremolo_soft,
        /// Tremolo.
        tremolo,
        /// Accented beginnings.
        accented,
        /// Soft beginnings after silence.
        soft_entry,
    }
}

section! {
    /// Times that players need, milliseconds, and the shares of a note that a lift may take, percent.
    Times of i64 {
        /// Lift and set down on the spot.
        lift,
        /// Further, the whole length through the air.
        carry,
        /// A rest that frees the bow.
        free_rest,
        /// Silence that a caesura adds.
        caesura,
        /// Mute on.
        mute_on,
        /// Mute off.
        mute_off,
        /// From the bow to plucking.
        to_pizzicato,
        /// From plucking to the bow.
        to_arco,
        /// A page turn.
        page_turn,
        /// Share that a short or accented note may lend, percent.
        short_share,
        /// Share that another note may lend, percent.
        plain_share,
    }
}

section! {
    /// What is assumed where the score is silent.
    Assumed of i64 {
        /// Tempo where none is written, quarters a minute.
        quarters_a_minute,
        /// Loudness before any dynamic, 100 a step.
        level,
        /// How far a hairpin without a goal goes.
        hairpin_step,
        /// How long cresc. or dim. without a goal lasts, bars.
        word_bars,
        /// Length of a held note, percent.
        fermata,
        /// Where a rit. arrives, percent of the tempo.
        slowing,
        /// Where an accel. arrives, percent of the tempo.
        quickening,
        /// How long a rit. or accel. without a goal lasts, bars.
        ramp_bars,
    }
}

section! {
    /// Thresholds of the review.
    Thresholds of i64 {
        /// Up to here a slur that outlasts the slowest bow is merely stretched, thousandths of it.
        slur_stretched,
        /// A slur cannot be one bow from here, thousandths of the slowest bow.
        slur_impossible,
        /// A slur is told from here, thousandths of the slowest bow.
        slur_too_long,
        /// A note needs a change of bow from here, thousandths of the slowest bow.
        note_too_long,
        /// A pattern must come so many times in a row before it counts as drift.
        drift_repetitions,
        /// Drift is felt, thousandths of the hair.
        drift_travel,
        /// How far light strokes would have to stick out to win the bow back, hundredths of a decibel.
        drift_level,
        /// A short note that wins the bow back sticks out, hundredths of a decibel.
        return_level,
        /// Longest note that counts as a short returning one, milliseconds.
        return_longest,
        /// Swells against the bow are felt from this long, milliseconds.
        swell_shortest,
        /// And from this many hundredths of a dynamic step.
        swell_steps,
        /// A beat is emphasised from this strength, hundredths of a plain downbeat.
        beat_strength,
        /// Run of bars whose downbeat no bow begins.
        silent_downbeat_run,
        /// A phrase's last note is long from here, milliseconds.
        ending_long,
        /// A phrase's last note is loud from here, hundredths of a dynamic step.
        ending_loud,
        /// A joint ends a phrase from here, hundredths of a full joint.
        ending_joint,
        /// Shortest lack of time for a lift that is reported, milliseconds.
        retake_lack,
        /// An accent finds no weight beyond this place in the bow.
        accent_at_tip,
        /// A soft entry is heavy below this place in the bow.
        soft_entry_at_frog,
        /// Most notes in one throw.
        thrown_notes,
        /// A slur looks like a phrase mark, percent of the slowest bow.
        phrase_slur,
        /// Tremolo will be counted below this rate, strokes in 100 s.
        countable_tremolo,
        /// A skipped string is heard below this time, milliseconds.
        string_skip,
        /// Leaps tried on strings, semitones.
        string_reach,
        /// Instances of a pattern that are worth marking.
        effect_instances,
        /// A row of down-bows is an effect from this loudness.
        effect_loud,
        /// Marks are clutter above this share of strokes, percent.
        marks_dense,
        /// Rehearsal marks are far apart from this many bars.
        landmark_bars,
        /// An entry carries its dynamic anew after this many bars of rest.
        reentry_bars,
        /// A lift is forced where another bow costs so much more, thousandths of a point.
        forced_lift,
        /// Another bow is a choice where it costs no more than this above the best, thousandths of a point.
        choice_of_bow,
        /// The same for another place in the bow.
        choice_of_place,
        /// Stops of three and four strings are held too long, milliseconds.
        stop_held,
        /// Parts moving alike for this many bars are bowed alike.
        unity_bars,
        /// Marks in a row of crowded bars before the passage is told.
        marks_dense_strokes,
        /// A broken chord takes this long to speak, milliseconds.
        chord_speaks,
    }
}

/// Settings by name: rates of strokes, weights of the planner.
pub type Named = BTreeMap<String, Setting<i64>>;
