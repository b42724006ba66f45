//! Strokes: what the notation fixes about one travel of the bow, before any direction is chosen.

use arcata_score::{BowDirection, Instrument, Length, Moment, NoteId};

/// What one player, or one group that bows alike, reads: a part, one of its staves, its voices and
/// its state of division.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// Index of the movement in the score.
    pub movement: usize,
    /// Index of the part in the score.
    pub part: usize,
    /// Staff within the part, from 1.
    pub staff: u8,
    /// The voices this line reads (indices into the part's voices): several where one player reads
    /// double stops written as two voices.
    pub voices: Vec<u16>,
    /// Name for messages: the part's name, with the voice where several lines share a part.
    pub name: String,
    /// Instrument.
    pub instrument: Instrument,
    /// Who plays.
    pub force: Force,
    /// The strokes in order of time.
    pub strokes: Vec<Stroke>,
    /// Repeated stretches of strokes, inner ones before those around them.
    pub repeats: Vec<RepeatedStretch>,
    /// Whether any tempo was written before the first stroke; if not, seconds rest on an assumption.
    pub tempo_written: Written,
}

/// A player alone or a section: thresholds differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Force {
    /// One player.
    Solo,
    /// Several players on one part.
    Section,
}

/// Whether something stands in the score or was assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Written {
    /// It is written.
    InScore,
    /// It was assumed.
    Assumed,
}

/// A stretch of strokes played several times from one printing: between repeat signs, with or without
/// endings, or sent back to by da capo or dal segno.
///
/// Every pass plays the body, `first..body_end`; then a pass plays one of the endings that lead back,
/// which are printed one after another from `body_end` on, or turns where the body ends when there is
/// none. The last pass goes on behind them all. Stretches of a line may lie inside one another.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RepeatedStretch {
    /// First stroke.
    pub first: usize,
    /// One past the last stroke of the stretch that every pass plays.
    pub body_end: usize,
    /// One past the last stroke of the first ending; equal to `body_end` when there are no endings.
    /// The pass after the first jumps from `body_end` over the first ending to `first_ending_end`.
    pub first_ending_end: usize,
    /// Silence between the end of the pass and its beginning again, seconds.
    pub silence_at_turn: RealTime,
    /// Silence between `body_end` and the stroke at `first_ending_end`, seconds.
    pub silence_at_skip: RealTime,
    /// Further endings that lead back, printed one after another from `first_ending_end` on.
    pub later_endings: Vec<LaterEnding>,
    /// What sends the player back.
    pub road: Road,
    /// How the line goes on behind the stretch.
    pub onward: Onward,
}

/// A second or later ending that leads back to the beginning.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LaterEnding {
    /// How many strokes it has.
    pub strokes: usize,
    /// Silence between its end and the beginning of the stretch, seconds.
    pub silence_at_turn: RealTime,
    /// Silence between the body's end and the stroke behind this ending, seconds.
    pub silence_at_skip: RealTime,
}

/// What sends the player back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Road {
    /// A repeat sign.
    RepeatSign,
    /// Dal segno.
    DalSegno,
    /// Da capo.
    DaCapo,
}

/// How a line goes on behind a stretch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Onward {
    /// From the end of the body, over the endings that lead back.
    GoesOn,
    /// The piece ends with the last pass (al fine): what is printed behind begins anew.
    Anew,
}

impl RepeatedStretch {
    /// A stretch without endings between repeat signs.
    #[must_use]
    pub fn between(first: usize, end: usize, silence_at_turn: RealTime) -> Self {
        Self {
            first,
            body_end: end,
            first_ending_end: end,
            silence_at_turn,
            silence_at_skip: RealTime::default(),
            later_endings: Vec::new(),
            road: Road::RepeatSign,
            onward: Onward::GoesOn,
        }
    }

    /// One past the last stroke of the last ending that leads back.
    #[must_use]
    pub fn end(&self) -> usize {
        self.first_ending_end + self.later_endings.iter().map(|ending| ending.strokes).sum::<usize>()
    }

    /// Whether its bounds make sense in a line of this many strokes.
    #[must_use]
    pub fn is_sound(&self, strokes: usize) -> bool {
        self.first < self.body_end && self.body_end <= self.first_ending_end && self.end() <= strokes
    }
}

/// Real time, whole microseconds: integers so that plans are alike on every machine.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct RealTime {
    /// Microseconds.
    pub micros: i64,
}

impl RealTime {
    /// From whole microseconds.
    #[must_use]
    pub const fn from_micros(micros: i64) -> Self {
        Self { micros }
    }

    /// For display.
    #[must_use]
    #[expect(clippy::cast_precision_loss, reason = "for display")]
    pub fn to_f64(self) -> f64 {
        self.micros as f64 / 1_000_000.0
    }
}

/// One stroke: what the notation asks of one travel in one direction.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stroke {
    /// The notes it sounds, in order (chords: every member), never empty.
    pub notes: Vec<NoteId>,
    /// Begin.
    pub onset: Moment,
    /// Score time from the first onset to the end of the last note.
    pub length: Length,
    /// Bar index of the onset.
    pub bar: u32,
    /// Offset of the onset in its bar.
    pub offset: Length,
    /// How long the bow is on the string.
    pub duration: RealTime,
    /// Silence between this stroke's end and the next onset (rests, or the time a short note leaves
    /// open is *not* counted here: see `lendable`).
    pub silence_after: RealTime,
    /// How much of its own time this stroke may give to a lift after it: half for short or accented
    /// notes, a quarter for others, none under tenuto or a tie into the next.
    pub lendable: RealTime,
    /// What kind of stroke the notation makes it.
    pub kind: StrokeKind,
    /// How the line goes on from the stroke before.
    pub join: Join,
    /// Printed mark on its first note.
    pub printed: Option<BowDirection>,
    /// Metric and written emphasis of its onset.
    pub emphasis: Emphasis,
    /// Loudness at the beginning, in [`LoudnessStep`]s.
    pub level_start: Loudness,
    /// Loudness at the end.
    pub level_end: Loudness,
    /// Bow speed that the level prefers, micrometres a second (already scaled to the instrument).
    pub speed: SpeedWindow,
    /// Where in the bow this kind of stroke lives.
    pub home: BowInterval,
    /// How many notes (attacks inside one bow count, chord members do not).
    pub note_count: u16,
    /// Where the phrase stands.
    pub phrase: PhrasePlace,
}

/// Loudness on a fine integer scale: 100 a dynamic step, p = 300, f = 600 (see `Level`).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Loudness(pub i32);

impl Loudness {
    /// ppp.
    pub const PPP: Self = Self(100);
    /// pp.
    pub const PP: Self = Self(200);
    /// p.
    pub const P: Self = Self(300);
    /// mp.
    pub const MP: Self = Self(400);
    /// mf.
    pub const MF: Self = Self(500);
    /// f.
    pub const F: Self = Self(600);
    /// ff.
    pub const FF: Self = Self(700);
    /// fff.
    pub const FFF: Self = Self(800);
}

/// Bow speeds for one dynamic on one instrument, micrometres a second.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct SpeedWindow {
    /// Below this the tone breaks.
    pub slowest: u32,
    /// What a player would choose.
    pub preferred: u32,
    /// Above this the tone is louder than written whatever the hand does.
    pub fastest: u32,
}

/// An interval of the bow in thousandths of the usable hair, 0 at the frog.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct BowInterval {
    /// Nearest the frog.
    pub from: u16,
    /// Nearest the tip.
    pub to: u16,
}

impl BowInterval {
    /// The whole bow: no preference.
    pub const ANYWHERE: Self = Self { from: 0, to: 1000 };
}

/// What kind of stroke the notation makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum StrokeKind {
    /// One note, its own stroke.
    Single,
    /// One note with a dot or wedge, off or shortened.
    Short,
    /// Several notes under one slur (or a tie chain, or a trill).
    Slurred,
    /// Notes under a slur with dots or dashes: one direction, with pulses.
    Pulsed,
    /// Dotted pair joined in one direction by slur and dot.
    HookedPair,
    /// A chord of three or more notes, broken over one stroke.
    BrokenChord,
    /// A tremolo: many strokes, the direction after it is free.
    Tremolo,
}

/// How a stroke begins after the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Join {
    /// First of the line, or after pizzicato, tremolo or a long rest: the bow is free.
    Entry,
    /// After a rest too short to be free.
    AfterRest,
    /// Straight on.
    Continues,
}

/// Why an onset is strong; all in hundredths of the weight of a plain downbeat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub struct Emphasis {
    /// Place in the bar.
    pub metric: MetricPlace,
    /// Strength in hundredths: metric place raised by accents, chords, sudden rises, long notes after
    /// short, rehearsal marks; lowered in syncopations.
    pub strength: u16,
    /// Whether an accent, sf, or chord asks for weight, hundredths (0 = none).
    pub accent: u16,
    /// How the bar counts.
    pub count: BarCount,
    /// How long the stroke lasts, hundredths of a full bar; 0 where no bars are counted.
    pub bars: u16,
    /// Where the stroke ends.
    pub bar_end: BarEnd,
}

/// How a bar counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum BarCount {
    /// In twos: 2/4, 4/4, cut time, and whatever is no other.
    #[default]
    Even,
    /// Three beats: minuet, waltz.
    Triple,
    /// Beats in threes: 6/8, 9/8, 12/8.
    Compound,
}

/// Where a stroke ends in its bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum BarEnd {
    /// Before the bar does.
    #[default]
    Within,
    /// With the bar.
    With,
    /// In a later bar.
    Beyond,
}

/// Place in the bar.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum MetricPlace {
    /// The first beat.
    Downbeat,
    /// The middle of an even bar, or the start of a later group of an additive one.
    MidBar,
    /// Another beat.
    Beat,
    /// Between beats.
    #[default]
    Offbeat,
}

/// Place in the phrase.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub struct PhrasePlace {
    /// Strength of the joint before this stroke, hundredths (100 = a long rest or double bar).
    pub joint_before: u16,
    /// Strength of the joint after it.
    pub joint_after: u16,
    /// Whether somebody has marked bows near, on this stroke or another.
    pub marked: bool,
}
