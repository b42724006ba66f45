//! Parts and the whole score.

use arcata_xml::NodeId;

use crate::{
    Bar, ChordRole, Dynamic, Instruction, Length, Meter, Moment, Movement, Note, NoteId, OpenSlur, Problem,
    Slur, Swell, Tempo,
};

/// A whole score.
#[derive(Clone, Debug, Default)]
pub struct Score {
    /// Title of the work or movement, when the file has one.
    pub title: Option<String>,
    /// Composer, when the file has one.
    pub composer: Option<String>,
    /// The bars, in printed order, shared by all parts.
    pub bars: Vec<Bar>,
    /// The movements, in order; together they hold every bar. Empty only in a score without bars.
    pub movements: Vec<Movement>,
    /// The parts, in score order.
    pub parts: Vec<Part>,
    /// Tempo events of all parts, in order of time, doubles removed.
    pub tempos: Vec<Tempo>,
    /// What could not be read as music, in document order.
    pub problems: Vec<Problem>,
}

/// One part of the score.
#[derive(Clone, Debug)]
pub struct Part {
    /// The `id` of the file.
    pub id: String,
    /// Full name as printed.
    pub name: String,
    /// Short name as printed.
    pub abbreviation: String,
    /// Which instrument plays it.
    pub instrument: Instrument,
    /// One player or a section, as far as the score tells.
    pub players: Players,
    /// Written pitch plus this many cents sounds.
    pub transpose_cents: i32,
    /// Staves.
    pub staves: u8,
    /// Names of the voices, in order of appearance.
    pub voices: Vec<String>,
    /// Notes and rests by onset, then document order.
    pub notes: Vec<Note>,
    /// Complete slurs by start.
    pub slurs: Vec<Slur>,
    /// Slurs with one end.
    pub open_slurs: Vec<OpenSlur>,
    /// Dynamic marks in order of time.
    pub dynamics: Vec<Dynamic>,
    /// Hairpins and words.
    pub swells: Vec<Swell>,
    /// Words and sounds with a meaning.
    pub instructions: Vec<Instruction>,
    /// Time signatures by the bar they begin at; the first always begins at bar 0.
    pub meters: Vec<(u32, Meter)>,
    /// Key signatures (bar, fifths).
    pub keys: Vec<(u32, i8)>,
    /// Clefs by the bar they first stand in.
    pub clefs: Vec<ClefChange>,
    /// Each bar's `<measure>` element in this part; `None` where the part has no such bar.
    pub measures: Vec<Option<NodeId>>,
}

/// A clef that begins to hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ClefChange {
    /// Bar index.
    pub bar: u32,
    /// Staff, from 1.
    pub staff: u8,
    /// Which clef.
    pub sign: ClefSign,
    /// The line it stands on, from the lowest, 1; 0 when not said.
    pub line: u8,
    /// Octaves up (or down) that the small figure moves it.
    pub octaves: i8,
}

/// The kinds of clef.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClefSign {
    /// G: treble.
    G,
    /// F: bass.
    F,
    /// C: alto, tenor.
    C,
    /// Percussion, tablature and others that name no pitch.
    Other,
}

/// The instruments Arcata knows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Instrument {
    /// Violin.
    Violin,
    /// Viola.
    Viola,
    /// Cello.
    Cello,
    /// Double bass.
    Bass,
    /// A bowed string instrument that is none of the four (viol, viola d'amore …).
    OtherBowed,
    /// Anything else.
    NotBowed,
}

impl Instrument {
    /// Whether a bow plan makes sense.
    #[must_use]
    pub fn is_bowed(self) -> bool {
        self != Self::NotBowed
    }
}

/// How many play a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Players {
    /// One to a part: solo, chamber music.
    Solo,
    /// Several to a part.
    Section,
    /// The score does not tell.
    #[default]
    Unknown,
}

impl Part {
    /// The note with this id.
    #[must_use]
    pub fn note(&self, id: NoteId) -> &Note {
        &self.notes[id.0 as usize]
    }

    /// The first note of the chord that a note belongs to; the note itself where it stands alone.
    #[must_use]
    pub fn chord_head(&self, id: NoteId) -> NoteId {
        /// No hand holds more, and a hostile file could make the search slow (a limit).
        const LARGEST_CHORD: u32 = 64;
        let least = id.0.saturating_sub(LARGEST_CHORD);
        let head = (least..=id.0).rev().map(NoteId).find(|id| self.note(*id).chord == ChordRole::Main);
        head.unwrap_or(id)
    }

    /// The notes of the chord that a note belongs to, from its first on.
    pub fn chord(&self, id: NoteId) -> impl Iterator<Item = &Note> {
        let head = self.chord_head(id).0 as usize;
        let members = self.notes[head + 1..].iter().take_while(|note| note.chord == ChordRole::Member);
        std::iter::once(&self.notes[head]).chain(members)
    }

    /// The time signature in force in a bar.
    #[must_use]
    pub fn meter_at(&self, bar: u32) -> Option<&Meter> {
        let after = self.meters.partition_point(|(from, _)| *from <= bar);
        after.checked_sub(1).map(|index| &self.meters[index].1)
    }
}

impl Score {
    /// The bar that holds a moment (the last bar for any moment past the end).
    #[must_use]
    pub fn bar_at(&self, moment: Moment) -> Option<u32> {
        let after = self.bars.partition_point(|bar| bar.start <= moment);
        u32::try_from(after.checked_sub(1)?).ok()
    }

    /// How far into its bar a moment lies.
    #[must_use]
    pub fn offset_in_bar(&self, moment: Moment, bar: u32) -> Length {
        self.bars.get(bar as usize).map_or(Length::ZERO, |bar| moment - bar.start)
    }

    /// Where the last bar ends.
    #[must_use]
    pub fn end(&self) -> Moment {
        self.bars.last().map_or(Moment::START, |bar| bar.start + bar.length)
    }
}
