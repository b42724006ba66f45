//! A fixture as it was written: parts, bars, events and what stands between them.

use num_rational::Ratio;

use crate::cursor::FixturePlace;
use crate::marks::{FixtureMark, MarkHome};

/// Exact musical time in whole notes: a quarter note is 1/4.
pub type Fraction = Ratio<i64>;

/// A pitch as it is written, before any transposition.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct WrittenPitch {
    /// Letter of the note, upper case: `'A'` to `'G'`.
    pub step: char,
    /// Semitones up by sharps (1, 2) or down by flats (-1, -2).
    pub alter: i32,
    /// Octave; middle C begins octave 4.
    pub octave: i32,
}

#[derive(Debug, Clone)]
pub(crate) struct ChordNote {
    pub(crate) pitch: WrittenPitch,
    pub(crate) tied_on: bool,
    /// Filled in by `settle`.
    pub(crate) tied_from: bool,
}

#[derive(Debug, Clone)]
pub(crate) enum FixtureSound {
    /// One note, or several for a chord.
    Notes(Vec<ChordNote>),
    Rest,
    /// A rest as long as its bar, whatever that is.
    BarRest,
    /// Time in which this voice has nothing written.
    Gap,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Grace {
    Plain,
    Slashed,
}

/// A note value as it is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct WrittenValue {
    /// 1 for a whole note, 4 for a quarter note, and so on.
    pub(crate) denominator: u32,
    pub(crate) dots: u32,
}

impl WrittenValue {
    pub(crate) const QUARTER: Self = Self { denominator: 4, dots: 0 };
    pub(crate) const SIXTEENTH: Self = Self { denominator: 16, dots: 0 };

    /// The value that lasts `count / of` of a whole note: 3/8 is a quarter note with a dot.
    pub(crate) fn of(count: u32, of: u32) -> Option<Self> {
        let dots = (0..=4).find(|dots| (2 << dots) - 1 == count)?;
        let denominator = of >> dots;
        let known = matches!(denominator, 1 | 2 | 4 | 8 | 16 | 32 | 64 | 128);
        (known && denominator << dots == of).then_some(Self { denominator, dots })
    }

    /// Length in whole notes, outside any tuplet.
    pub(crate) fn length(self) -> Fraction {
        let plain = Fraction::new(1, i64::from(self.denominator));
        let dotted = 1_i64 << self.dots;
        plain * Fraction::new(2 * dotted - 1, dotted)
    }
}

/// A tuplet: `actual` notes in the time of `normal`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Tuplet {
    pub(crate) actual: u32,
    pub(crate) normal: u32,
}

impl Tuplet {
    /// Two in the time of one is how MusicXML writes tremolos between two notes: no bracket.
    pub(crate) fn has_bracket(self) -> bool {
        (self.actual, self.normal) != (2, 1)
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum TupletEdge {
    Start(usize),
    Stop(usize),
}

#[derive(Debug, Clone)]
pub(crate) struct FixtureEvent {
    pub(crate) sound: FixtureSound,
    pub(crate) value: WrittenValue,
    /// The tuplets around it, the outermost first.
    pub(crate) tuplets: Vec<Tuplet>,
    pub(crate) tuplet_edges: Vec<TupletEdge>,
    pub(crate) grace: Option<Grace>,
    pub(crate) marks: Vec<FixtureMark>,
    pub(crate) slur_starts: Vec<u32>,
    pub(crate) slur_stops: Vec<u32>,
    pub(crate) staff: u32,
    pub(crate) place: FixturePlace,
    pub(crate) settled: SettledEvent,
}

/// What is known of an event only once its whole part has been read.
#[derive(Debug, Clone, Default)]
pub(crate) struct SettledEvent {
    pub(crate) bar: usize,
    /// From the start of the bar.
    pub(crate) onset: Fraction,
    /// Time it takes; zero for grace notes.
    pub(crate) length: Fraction,
    pub(crate) voice: u32,
    /// How many `note` elements of the part stand before it.
    pub(crate) note_element: usize,
    pub(crate) begins_stroke: bool,
}

impl FixtureEvent {
    pub(crate) fn notes(&self) -> &[ChordNote] {
        match &self.sound {
            FixtureSound::Notes(notes) => notes,
            _ => &[],
        }
    }

    pub(crate) fn is_cue(&self) -> bool {
        self.marks.iter().any(|mark| mark.home == MarkHome::Cue)
    }

    /// How many `note` elements it becomes.
    pub(crate) fn note_elements(&self) -> usize {
        match &self.sound {
            FixtureSound::Notes(notes) => notes.len(),
            FixtureSound::Rest | FixtureSound::BarRest => 1,
            FixtureSound::Gap => 0,
        }
    }

    /// The time it takes where the bar lasts `bar`.
    pub(crate) fn length_in(&self, bar: Fraction) -> Fraction {
        match (&self.sound, self.grace) {
            (_, Some(_)) => Fraction::default(),
            (FixtureSound::BarRest, _) => bar,
            _ => self.tuplets.iter().fold(self.value.length(), |length, tuplet| {
                length * Fraction::new(i64::from(tuplet.normal), i64::from(tuplet.actual))
            }),
        }
    }
}

#[derive(Debug, Clone)]
pub(crate) enum FixtureItem {
    /// Index into the events of the part.
    Event(usize),
    /// A direction and the staff it belongs to.
    Direction(Direction, u32),
    Change(FixtureChange),
    Voices(Vec<Vec<FixtureItem>>),
}

#[derive(Debug, Clone, PartialEq)]
pub(crate) enum Direction {
    Dynamic(&'static str),
    Words(String),
    Rehearsal(String),
    Tempo(FixtureTempo),
    /// Beats a minute for playback alone, with nothing printed.
    SoundTempo(String),
    Wedge(Wedge),
    DashesStart,
    DashesStop,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct FixtureTempo {
    pub(crate) unit: WrittenValue,
    pub(crate) equals: TempoEquals,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum TempoEquals {
    PerMinute(String),
    Unit(WrittenValue),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Wedge {
    Crescendo,
    CrescendoFromNothing,
    Diminuendo,
    Stop,
    StopToNothing,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum FixtureChange {
    Key(FixtureKey),
    Time(Metre),
    Clef(Clef),
    /// Semitones from the written to the sounding pitch.
    Transpose(i32),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) struct FixtureKey {
    pub(crate) fifths: i32,
    pub(crate) mode: Mode,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum Mode {
    #[default]
    Major,
    Minor,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) struct Clef {
    pub(crate) sign: char,
    pub(crate) sign_line: u32,
    pub(crate) octave_change: i32,
    pub(crate) staff: u32,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Metre {
    /// Beats (`3+2`) and beat value (8), in groups that follow each other.
    Counted(Vec<(String, u32)>),
    Common,
    Cut,
    /// Without a metre: bars may have any length.
    Free,
}

impl Metre {
    /// Length of a bar in whole notes, if the metre gives one.
    pub(crate) fn bar_length(&self) -> Option<Fraction> {
        match self {
            Self::Common | Self::Cut => Some(Fraction::from_integer(1)),
            Self::Free => None,
            Self::Counted(groups) => Some(
                groups
                    .iter()
                    .map(|(beats, value)| {
                        let count: i64 = beats.split('+').filter_map(|b| b.parse::<i64>().ok()).sum();
                        Fraction::new(count, i64::from(*value))
                    })
                    .sum(),
            ),
        }
    }

    /// The lower number: 4 where quarter notes are counted.
    pub(crate) fn beat_value(&self) -> i64 {
        match self {
            Self::Counted(groups) => groups.first().map_or(4, |(_, value)| i64::from(*value)),
            Self::Common | Self::Free => 4,
            Self::Cut => 2,
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum BarStyle {
    #[default]
    Plain,
    Double,
    Final,
    /// Repeated so many times, if it says.
    RepeatBack(Option<u32>),
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum EndingStop {
    Closed,
    Open,
}

/// How strictly one bar is held to its metre, and how it is numbered.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(crate) enum BarFill {
    #[default]
    Full,
    /// Any length, numbered like others.
    Short,
    /// Any length, not numbered.
    Unnumbered,
    /// Nothing in it at all.
    Empty,
}

#[derive(Debug, Clone, Default)]
pub(crate) struct FixtureBar {
    pub(crate) items: Vec<FixtureItem>,
    pub(crate) repeat_start: bool,
    pub(crate) ending_start: Option<String>,
    /// The ending that stops here, and how.
    pub(crate) ending_stop: Option<(String, EndingStop)>,
    pub(crate) end: BarStyle,
    pub(crate) fill: BarFill,
    /// It begins a page.
    pub(crate) starts_page: bool,
    /// Set on the first of several bars printed as one rest.
    pub(crate) rest_bars: Option<u32>,
    pub(crate) place: FixturePlace,
    /// Filled in by `settle`: the printed number.
    pub(crate) label: String,
    /// Filled in by `settle`: the time it takes.
    pub(crate) length: Fraction,
    /// Filled in by `settle`: the lower number of the metre.
    pub(crate) beat_value: i64,
}

#[derive(Debug, Clone, Default)]
pub(crate) struct FixturePart {
    pub(crate) name: String,
    pub(crate) abbreviation: Option<String>,
    pub(crate) sound: Option<String>,
    pub(crate) program: Option<u32>,
    pub(crate) events: Vec<FixtureEvent>,
    pub(crate) bars: Vec<FixtureBar>,
}

impl FixturePart {
    pub(crate) fn staves(&self) -> u32 {
        self.events.iter().map(|event| event.staff).max().unwrap_or(1)
    }
}

/// What the header lines say.
#[derive(Debug, Clone)]
pub(crate) struct Header {
    pub(crate) title: Option<String>,
    pub(crate) composer: Option<String>,
    pub(crate) version: String,
    pub(crate) metre: Metre,
    pub(crate) key: FixtureKey,
    /// Tempo marks and words for the top of the first part.
    pub(crate) opening: Vec<Direction>,
    pub(crate) leave: Vec<Leave>,
}

/// What the header may ask for beyond an ordinary, sound score.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Leave {
    Pickup,
    Unchecked,
    Timewise,
    BrokenSlurs,
    BrokenTies,
}

impl Default for Header {
    fn default() -> Self {
        Self {
            title: None,
            composer: None,
            version: "4.0".to_owned(),
            metre: Metre::Counted(vec![("4".to_owned(), 4)]),
            key: FixtureKey::default(),
            opening: Vec::new(),
            leave: Vec::new(),
        }
    }
}

impl Header {
    pub(crate) fn asks(&self, leave: Leave) -> bool {
        self.leave.contains(&leave)
    }
}
