//! The rules, one file each, by chapter.

use crate::register::{page_length, page_of};
use crate::{Registered, Rule};

/// Declares the rule files of each chapter and the register, in the order of the manual.
macro_rules! register {
    ($($family:ident { $($file:ident: $rule:ident,)* })*) => {
        $(
            /// One chapter's rules.
            pub mod $family { $(pub mod $file;)* }
        )*

        /// Every rule, in the order of the manual.
        pub static REGISTER: &[Registered] = &[$($(
            Registered::new(
                (<$family::$file::$rule as Rule>::CARD, <$family::$file::$rule as Rule>::SEES),
                <$family::$file::$rule as Rule>::check,
                concat!(stringify!($file), ".rs"),
                {
                    const SOURCE: &str =
                        include_str!(concat!(stringify!($family), "/", stringify!($file), ".rs"));
                    const PAGE: [u8; page_length(SOURCE)] = page_of(SOURCE);
                    match str::from_utf8(&PAGE) {
                        Ok(page) => page,
                        Err(_) => panic!("a page ends between two letters"),
                    }
                },
            ),
        )*)*];
    };
}

register! {
    length {
        slur_outlasts_bow: SlurOutlastsBow,
        note_outlasts_bow: NoteOutlastsBow,
        bow_drift: BowDrift,
        rushed_return: RushedReturn,
    }
    slurs {
        crossing_slurs: CrossingSlurs,
        broken_slur: BrokenSlur,
        slur_over_change: SlurOverChange,
        slur_skips_string: SlurSkipsString,
        slurred_stops: SlurredStops,
        tie_or_slur: TieOrSlur,
        slur_misses_tie: SlurMissesTie,
        slur_over_rest: SlurOverRest,
        nested_slurs: NestedSlurs,
        phrase_mark_as_slur: PhraseMarkAsSlur,
        legato_without_slurs: LegatoWithoutSlurs,
    }
    beat {
        silent_downbeat: SilentDownbeat,
        beat_on_up_bow: BeatOnUpBow,
        repeat_comes_back_reversed: RepeatComesBackReversed,
        slur_covers_beat: SlurCoversBeat,
        bar_comes_out_odd: BarComesOutOdd,
    }
    direction {
        swell_against_bow: SwellAgainstBow,
        ending_on_up_bow: EndingOnUpBow,
        no_time_to_retake: NoTimeToRetake,
        lift_in_soft_line: LiftInSoftLine,
        accent_at_tip: AccentAtTip,
        soft_entry_at_frog: SoftEntryAtFrog,
        chords_too_close: ChordsTooClose,
    }
    kinds {
        dots_on_pizzicato: DotsOnPizzicato,
        dots_under_slur: DotsUnderSlur,
        marks_contradict: MarksContradict,
        countable_tremolo: CountableTremolo,
        slurred_tremolo: SlurredTremolo,
        thrown_count: ThrownCount,
        stroke_out_of_speed: StrokeOutOfSpeed,
        on_or_off_string: OnOrOffString,
    }
    states {
        missing_arco: MissingArco,
        state_never_ends: StateNeverEnds,
        pizz_change_too_quick: PizzChangeTooQuick,
        mute_change_too_quick: MuteChangeTooQuick,
        pizz_too_fast: PizzTooFast,
        chord_or_divisi: ChordOrDivisi,
    }
    hand {
        stop_unplayable: StopUnplayable,
        out_of_range: OutOfRange,
        stop_held_too_long: StopHeldTooLong,
    }
    between {
        doubling_bowed_apart: DoublingBowedApart,
        doubling_marked_apart: DoublingMarkedApart,
        parallel_bowed_apart: ParallelBowedApart,
        winds_phrase_apart: WindsPhraseApart,
        stands_contradict: StandsContradict,
    }
    marks {
        mark_states_the_obvious: MarkStatesTheObvious,
        mark_cannot_be: MarkCannotBe,
        mark_on_every_note: MarkOnEveryNote,
        effect_marked_again: EffectMarkedAgain,
    }
    parts {
        entry_without_dynamic: EntryWithoutDynamic,
        reentry_without_dynamic: ReentryWithoutDynamic,
        no_tempo: NoTempo,
        landmarks_too_far: LandmarksTooFar,
        page_turn_too_quick: PageTurnTooQuick,
        part_differs_from_score: PartDiffersFromScore,
    }
}
