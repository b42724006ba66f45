//! The faults: what is wrong, said in figures that are put in place of bars.

use arcata_score::Instrument;

/// Where a figure goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum FigurePlace {
    /// Into one part, drawn by chance.
    Any,
    /// Into the part of a violin.
    Violin,
    /// Into all parts; what is for the first part alone comes first.
    All,
    /// Into a passage of one part.
    Alone,
    /// Into a passage whose parts are sections.
    Sections,
    /// Into two parts that play the same: as it is, and with the second figure.
    Two(&'static str),
    /// The same in a flute, and with the second figure in a string part.
    Wind(&'static str),
}

/// One fault.
pub(super) struct PlantedFault {
    pub(super) rule: &'static str,
    pub(super) place: FigurePlace,
    /// Quarters a minute; 0 where no tempo shall be written.
    pub(super) tempo: u32,
    /// Bars, with lines between them. Steps of a scale stand for notes.
    pub(super) figure: &'static str,
    /// Whether the bars are repeated.
    pub(super) repeat: bool,
}

const fn fault(rule: &'static str, place: FigurePlace, tempo: u32, figure: &'static str) -> PlantedFault {
    PlantedFault { rule, place, tempo, figure, repeat: false }
}

impl PlantedFault {
    /// The instrument that the figure is written for, where it holds real notes.
    pub(super) fn instrument(&self) -> Option<Instrument> {
        (self.place == Violin).then_some(Instrument::Violin)
    }
}

use FigurePlace::{All, Alone, Any, Sections, Two, Violin, Wind};

/// A fault for every rule.
pub(super) const FAULTS: &[PlantedFault] = &[
    fault("slur-outlasts-bow", Any, 50, "f (0/4 1/4 2/4 3/4 | 4/4 3/4 2/4 1/4)"),
    fault("note-outlasts-bow", Alone, 50, "ff 0/1_ | 0/1_ | 0/1"),
    fault(
        "bow-drift",
        Any,
        84,
        "f (0/8 1/8 2/8 3/8 4/8 3/8 2/8) 1/8 | (0/8 1/8 2/8 3/8 4/8 3/8 2/8) 1/8 | (0/8 1/8 2/8 3/8 4/8 3/8 2/8) 1/8 | (0/8 1/8 2/8 3/8 4/8 3/8 2/8) 1/8 | (0/8 1/8 2/8 3/8 4/8 3/8 2/8) 1/8",
    ),
    fault("rushed-return", Any, 72, "r/1 | ff (0/2!down 1/4..) 2/16!up | (0/2!down 1/4..) 2/16!up"),
    fault("crossing-slurs", Any, 80, "(0/4 1/4 (2:2/4 3/4) | 4/2)2 0/2"),
    fault("broken-slur", Any, 80, "(0/4 1/4 2/4 3/4"),
    fault("slur-over-change", Any, 80, "(0/4 1/4 \"pizz.\" 2/4 3/4) | \"arco\" 4/1"),
    fault("slur-skips-string", Violin, 120, "(1/16 A3 B5 A3 B5) 1/4 A3 1/2 rest"),
    fault("slurred-stops", Violin, 96, "(1/8 A3+D4 C5+G5) 1/4 rest 1/2 rest"),
    fault("tie-or-slur", Any, 80, "0/4 1/4 (2/4 2/4)"),
    fault("slur-misses-tie", Any, 80, "(0/4 1/4 2/4 3/4_) | 3/2 4/2"),
    fault("slur-over-rest", Any, 80, "(0/4 1/4 r/4 2/4)"),
    fault("nested-slurs", Any, 80, "(0/4 (2:1/4 2/4)2 3/4)"),
    fault(
        "phrase-mark-as-slur",
        Any,
        60,
        "f (0/4 1/4 (2:2/4 3/4)2 | 4/4 (2:3/4 2/4)2 1/4 | 0/4 1/4 (2:2/4 3/4)2 | 2/2 1/2)",
    ),
    fault(
        "legato-without-slurs",
        Any,
        80,
        "0/1 | 1/1 | 2/1 | 3/1 | \"legato\" 0/4 1/4 2/4 3/4 | 4/4 3/4 2/4 1/4 | \"détaché\" 0/1",
    ),
    fault("silent-downbeat", All, 96, "0/4 1/4 2/2_ | quarter=72 2/4 1/4 0/2"),
    fault(
        "beat-on-up-bow",
        Any,
        120,
        "f (0/4!down 1/4 2/4) 3/4 | (3/4 2/4 1/4) 0/4 | (0/4 1/4 2/4 3/4) | 0/1!sf | 1/1",
    ),
    PlantedFault {
        repeat: true,
        ..fault(
            "repeat-comes-back-reversed",
            Any,
            152,
            "0/8!down 1/8!up 2/8!down 3/8!up (4/8!down 2/8 1/8 0/8)",
        )
    },
    fault("slur-covers-beat", Any, 72, "(0/4 1/4 2/4 3/4 | sf 4/4 3/4) 2/4 1/4"),
    fault(
        "bar-comes-out-odd",
        Any,
        132,
        "0/4 1/4 2/2 | 0/4 1/4 2/2 | 0/4 1/4 2/2 | 0/4 1/4 2/2 | 0/4 1/4 2/2",
    ),
    fault("swell-against-bow", Any, 40, "mf 3/2 2/2!up | p <= 0/2 == f 1/2!up | 0/1"),
    fault("ending-on-up-bow", Any, 80, "r/1 | f 0/4 1/4 2/4 1/4 | 0/2 1/2 | r/1"),
    fault("no-time-to-retake", Any, 132, "ff 0/16!down 1/16!down 2/16!down 3/16!down 0/4!down r/2"),
    fault("accent-at-tip", Any, 50, "f (0/4 1/4 2/4) 1/4!sf | 0/1 | (0/4 1/4 2/4) 1/4!sf | 0/1"),
    fault("soft-entry-at-frog", Any, 40, "mf 0/2 r/2 | r/1 | r/1 | pp (0/1!down | 1/1 | 2/1) | 3/1"),
    fault("chords-too-close", Violin, 160, "ff 1/4 G3+D4+B4+G5!down G3+D4+B4+G5!down 1/2 rest"),
    fault(
        "lift-in-soft-line",
        Any,
        30,
        "r/1 | p (0/4!down 1/4 2/4 3/4) | (3/4 2/4 1/4 0/4) | (0/4 1/4 2/4 3/4) | (3/4!down 2/4 1/4 0/4) | r/1",
    ),
    fault("countable-tremolo", Any, 48, "p 0/1!trem3"),
    fault("slurred-tremolo", Any, 96, "(0/2!trem1 1/2!trem1)"),
    fault("dots-on-pizzicato", Any, 96, "\"pizz.\" 0/4!. 1/4!. 2/4!. r/4 | \"arco\" 0/1"),
    fault("dots-under-slur", Any, 96, "(0/8!. 1/8!. 2/8!. 3/8!.) 4/2"),
    fault("marks-contradict", Any, 96, "0/4!-!' 1/4 2/4!-!' 3/4"),
    fault(
        "on-or-off-string",
        Any,
        120,
        "p 0/8!. 1/8!. 2/8!. 3/8!. 4/8!. 3/8!. 2/8!. 1/8!. | 0/8!. 1/8!. 2/8!. 3/8!. 4/8!. 3/8!. 2/8!. 1/8!.",
    ),
    fault("stroke-out-of-speed", Any, 132, "f \"martelé\" 0/16 1/16 2/16 3/16 4/16 3/16 2/16 1/16 0/4 r/4"),
    fault(
        "thrown-count",
        Any,
        144,
        "\"ricochet\" (0/16!. 1/16!. 2/16!. 3/16!. 4/16!. 5/16!. 6/16!. 7/16!.) 7/2",
    ),
    fault("missing-arco", Any, 96, "\"pizz.\" 0/4 1/4 2/4 3/4 | r/1 | (0/4 1/4 2/4 3/4) | \"arco\" 0/1"),
    fault("state-never-ends", Any, 96, "\"con sord.\" 0/4 1/4 2/4 3/4 | 2/1 | \"con sord.\" 0/4 1/4 2/4 3/4"),
    fault(
        "pizz-change-too-quick",
        Any,
        120,
        "0/8 1/8 2/8 3/8 \"pizz.\" 4/8 3/8 2/8 1/8 | r/1 | \"arco\" 0/1",
    ),
    fault("mute-change-too-quick", Any, 96, "0/4 1/4 r/4 \"con sord.\" 2/4"),
    fault("pizz-too-fast", Any, 132, "\"pizz.\" 0/16 1/16 2/16 3/16 4/16 3/16 2/16 1/16 r/2 | \"arco\" 0/1"),
    fault("chord-or-divisi", Sections, 96, "0/4 1/4 <0+2>/2"),
    fault("stop-unplayable", Violin, 96, "1/2 A3+Bb3 rest"),
    fault("out-of-range", Violin, 96, "1/4 D4 B3 A3 F#3"),
    fault("stop-held-too-long", Violin, 60, "p 1/1 G3+D4+B4+G5"),
    fault(
        "doubling-bowed-apart",
        Two("(0/4 1/4) (2/4 3/4) | (4/4 3/4) 2/4 1/4 | (0/4 2/4) (4/4 2/4) | (1/4 0/4) (1/4 2/4)"),
        96,
        "(0/4 1/4) (2/4 3/4) | (4/4 3/4) (2/4 1/4) | (0/4 2/4) (4/4 2/4) | (1/4 0/4) (1/4 2/4)",
    ),
    fault(
        "parallel-bowed-apart",
        Any,
        96,
        "(0/4 1/4) (2/4 3/4) | (0/4 1/4) (2/4 3/4) | (0/4 1/4) (2/4 3/4) | (0/4 1/4) 2/4 3/4 | (0/4 1/4) (2/4 3/4)",
    ),
    fault(
        "doubling-marked-apart",
        Two("0/4!. 1/4!. 2/4!. 3/4!. | 4/4!. 3/4!. 2/4!. 1/4!. | 0/4 2/4 4/4 2/4"),
        96,
        "0/4!. 1/4!. 2/4!. 3/4!. | 4/4!. 3/4!. 2/4 1/4 | 0/4 2/4 4/4 2/4",
    ),
    fault(
        "winds-phrase-apart",
        Wind("(0/4 1/4) (2/4 3/4) | (4/4 3/4) 2/4 1/4 | (0/4 1/4) (2/4 3/4) | (4/4 3/4) (2/4 1/4)"),
        96,
        "(0/4 1/4) (2/4 3/4) | (4/4 3/4) (2/4 1/4) | (0/4 1/4) (2/4 3/4) | (4/4 3/4) (2/4 1/4)",
    ),
    fault("stands-contradict", Violin, 96, "{voices 1/4 C5!down D5 1/2 E5 over 1/4 E4!up F4 1/2 G4 }"),
    fault("mark-states-the-obvious", Any, 96, "r/1 | 0/4!down 1/4!up 2/4!down 3/4!up"),
    fault("mark-cannot-be", Any, 96, "(0/4 1/4!up 2/4 3/4)"),
    fault(
        "mark-on-every-note",
        Any,
        96,
        "0/4!down 1/4!up 2/4!down 3/4!up | 4/4!down 3/4!up 2/4!down 1/4!up | 0/4!down 2/4!up 1/4!down 0/4!up | 0/4!down 1/4!up 2/4!down 3/4!up",
    ),
    fault(
        "effect-marked-again",
        Any,
        96,
        "0/2!down 1/4!up 2/4!up | 0/2!down 1/4!up 2/4!up | 0/2!down 1/4!up 2/4!up | 0/2!down 1/4!up 2/4!up | 0/2!down 1/4!up 2/4!up",
    ),
    fault("entry-without-dynamic", Alone, 96, ""),
    fault("reentry-without-dynamic", All, 96, "p 0/1 | bar-rest*8 | 0/4 1/4 2/4 3/4"),
    fault("no-tempo", Any, 0, "0/1"),
    fault("landmarks-too-far", All, 96, "[A] 0/1 | bar-rest*48 | 1/1"),
    fault("page-turn-too-quick", Alone, 96, "0/4 1/4 2/4 3/4 | page 0/4 1/4 2/4 3/4"),
];
