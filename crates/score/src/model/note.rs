//! Notes, slurs and the marks on them.

use arcata_xml::{NodeId, Tag};

use crate::{Length, Moment};

/// A note's place in its part's list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct NoteId(pub u32);

/// A note, a chord member or a rest.
#[derive(Clone, Debug)]
pub struct Note {
    /// Its `<note>` element.
    pub node: NodeId,
    /// Where it begins; grace notes stand at the moment of the note they belong to.
    pub onset: Moment,
    /// How long it sounds by its `<duration>`; zero for grace notes.
    pub length: Length,
    /// Index into the score's bars.
    pub bar: u32,
    /// Staff within the part, from 1.
    pub staff: u8,
    /// Index into the part's `voices` names.
    pub voice: u16,
    /// What sounds.
    pub pitch: Pitch,
    /// Ordinary, grace or cue.
    pub kind: NoteKind,
    /// Whether it stands alone or shares a stem.
    pub chord: ChordRole,
    /// What is drawn: the value, its dots and tuplet.
    pub written: Option<NoteValue>,
    /// Tied to the same pitch after or before.
    pub tie: Tie,
    /// Marks of attack and release.
    pub articulations: Articulations,
    /// A printed down- or up-bow, with its element.
    pub bow_mark: Option<BowMark>,
    /// Second and further bow marks on the same note: a contradiction, kept for the review.
    pub more_bow_marks: Vec<BowMark>,
    /// Tremolo strokes on one note, or the edge of a tremolo between two.
    pub tremolo: Option<Tremolo>,
    /// A trill, turn, mordent or the like is played on it.
    pub ornament: Option<Ornament>,
    /// A fermata stands over it.
    pub fermata: Fermata,
    /// Rolled or broken from string to string.
    pub arpeggio: Arpeggio,
    /// Technical marks other than bow marks.
    pub technical: Technical,
    /// The notehead is a cross.
    pub notehead: Notehead,
    /// Whether it stands on the page: a rest that is not printed, or whose note is not, is read by nobody.
    pub on_page: bool,
}

impl Note {
    /// The two bows of a note that bears both signs and lasts long enough for both, in their order: the bow changes while the
    /// note sounds. It lasts long enough under a fermata, or from a half note on (common practice); on a shorter note two signs
    /// contradict each other.
    #[must_use]
    pub fn both_bows(&self) -> Option<[BowDirection; 2]> {
        let [second] = self.more_bow_marks.as_slice() else { return None };
        let bows = [self.bow_mark?.direction, second.direction];
        let lasts = self.fermata == Fermata::Held || self.length >= Length::new(1, 2);
        (bows[0] != bows[1] && lasts && self.length.is_positive() && !self.pitch.is_rest()).then_some(bows)
    }
}

/// What a note sounds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pitch {
    /// A written pitch; `alter` in cents so that quarter tones stay exact. Octave 4 holds middle C.
    Pitched {
        /// 0 = C … 6 = B.
        step: u8,
        /// Cents above the natural: a sharp is 100.
        alter: i16,
        /// Octave as written.
        octave: i8,
    },
    /// No pitch.
    Unpitched,
    /// Silence.
    Rest,
}

impl Pitch {
    /// The written pitch in cents above C-1 (MIDI note 60 = 6000); `None` for rests and unpitched notes.
    #[must_use]
    pub fn cents(self) -> Option<i32> {
        /// Cents above C of the seven letters (by definition).
        const STEPS: [i32; 7] = [0, 200, 400, 500, 700, 900, 1100];
        match self {
            Self::Pitched { step, alter, octave } => {
                Some(STEPS[usize::from(step % 7)] + i32::from(alter) + 1200 * (i32::from(octave) + 1))
            }
            Self::Unpitched | Self::Rest => None,
        }
    }

    /// Whether this is silence.
    #[must_use]
    pub fn is_rest(self) -> bool {
        self == Self::Rest
    }
}

/// How a note counts in time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum NoteKind {
    /// Played, with a duration.
    #[default]
    Ordinary,
    /// A grace note without a slash: takes its time from the note after it.
    Grace,
    /// A grace note with a slash: before the beat, crushed.
    SlashedGrace,
    /// Printed small for orientation; not played.
    Cue,
}

/// Whether a note shares its onset and stem with others.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum ChordRole {
    /// Alone, or the first of a chord as written.
    #[default]
    Main,
    /// A further note of the chord begun before.
    Member,
}

/// A note value as drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoteValue {
    /// The undotted value: a quarter is 1/4.
    pub base: Length,
    /// Dots.
    pub dots: u8,
    /// Tuplet: this many in the time of `normal`; (1, 1) when none.
    pub actual: u16,
    /// See `actual`.
    pub normal: u16,
}

impl NoteValue {
    /// How long the drawn value lasts.
    #[must_use]
    pub fn length(self) -> Length {
        let mut total = self.base;
        let mut half = self.base;
        for _ in 0..self.dots.min(8) {
            half = half.scaled(1, 2);
            total += half;
        }
        total.scaled(i64::from(self.normal), i64::from(self.actual.max(1)))
    }
}

/// Ties at the two ends of a note.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Tie {
    /// Tied from the note before.
    pub from_before: TieEnd,
    /// Tied to the note after.
    pub to_after: TieEnd,
}

/// One end of a tie, and whether its partner was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum TieEnd {
    /// No tie.
    #[default]
    None,
    /// Tied to this note.
    Joined(NoteId),
    /// Written, without a partner (also let-ring ties).
    Open,
}

/// Marks of attack and release, as a small set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Articulations(pub u32);

/// One mark of attack or release.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u8)]
pub enum Articulation {
    /// A dot.
    Staccato,
    /// A wedge.
    Staccatissimo,
    /// A dash.
    Tenuto,
    /// Dash and dot.
    DetachedLegato,
    /// The horizontal accent.
    Accent,
    /// The upright accent.
    StrongAccent,
    /// Stress sign.
    Stress,
    /// Unstress sign.
    Unstress,
    /// Spiccato sign.
    Spiccato,
    /// A breath mark after the note.
    Breath,
    /// A caesura after the note.
    Caesura,
    /// Soft accent.
    SoftAccent,
    /// A scoop, plop, doit or falloff.
    Slide,
}

impl Articulation {
    /// The one that an element inside `<articulations>` stands for.
    #[must_use]
    pub fn of_tag(tag: Tag) -> Option<Self> {
        Some(match tag {
            Tag::STACCATO => Self::Staccato,
            Tag::STACCATISSIMO => Self::Staccatissimo,
            Tag::TENUTO => Self::Tenuto,
            Tag::DETACHED_LEGATO => Self::DetachedLegato,
            Tag::ACCENT => Self::Accent,
            Tag::STRONG_ACCENT => Self::StrongAccent,
            Tag::SOFT_ACCENT => Self::SoftAccent,
            Tag::STRESS => Self::Stress,
            Tag::UNSTRESS => Self::Unstress,
            Tag::SPICCATO => Self::Spiccato,
            Tag::BREATH_MARK => Self::Breath,
            Tag::CAESURA => Self::Caesura,
            Tag::SCOOP | Tag::PLOP | Tag::DOIT | Tag::FALLOFF => Self::Slide,
            _ => return None,
        })
    }
}

impl Articulations {
    /// With one more mark.
    #[must_use]
    pub fn with(self, mark: Articulation) -> Self {
        Self(self.0 | 1 << mark as u8)
    }

    /// Without a mark.
    #[must_use]
    pub fn without(self, mark: Articulation) -> Self {
        Self(self.0 & !(1 << mark as u8))
    }

    /// Whether a mark is there.
    #[must_use]
    pub fn has(self, mark: Articulation) -> bool {
        self.0 & (1 << mark as u8) != 0
    }

    /// Whether a dot, a wedge or a dash is there: under a slur the bow stops before such a note.
    #[must_use]
    pub fn stops_the_bow(self) -> bool {
        const STOPS: [Articulation; 4] = [
            Articulation::Staccato,
            Articulation::Staccatissimo,
            Articulation::Tenuto,
            Articulation::DetachedLegato,
        ];
        STOPS.into_iter().any(|mark| self.has(mark))
    }

    /// Whether a breath mark or a caesura stands after the note.
    #[must_use]
    pub fn breathes(self) -> bool {
        self.has(Articulation::Breath) || self.has(Articulation::Caesura)
    }

    /// Whether no mark is there.
    #[must_use]
    pub fn is_empty(self) -> bool {
        self.0 == 0
    }

    /// The marks of both.
    #[must_use]
    pub fn union(self, other: Self) -> Self {
        Self(self.0 | other.0)
    }
}

/// Which way a bow travels.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BowDirection {
    /// From the frog towards the tip.
    Down,
    /// From the tip towards the frog.
    Up,
}

impl BowDirection {
    /// The other way.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Down => Self::Up,
            Self::Up => Self::Down,
        }
    }
}

/// A printed down- or up-bow.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BowMark {
    /// Which way.
    pub direction: BowDirection,
    /// Its `<down-bow>` or `<up-bow>` element.
    pub node: NodeId,
}

/// A tremolo.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Tremolo {
    /// Beams through the stem; 0 for unmeasured (`type="unmeasured"`, or written with a Z).
    pub beams: u8,
    /// On one note, or between two.
    pub role: TremoloRole,
}

/// Where a tremolo stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TremoloRole {
    /// On one note: bowed.
    Single,
    /// The first of two notes that alternate: fingered under a slur, else bowed.
    PairStart,
    /// The second of two.
    PairStop,
}

/// An ornament that keeps the bow in one stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ornament {
    /// A trill.
    Trill,
    /// A turn of any kind.
    Turn,
    /// A mordent of any kind.
    Mordent,
    /// Anything else written as an ornament (schleifer, shake …).
    Other,
}

/// Whether a fermata holds the note.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Fermata {
    /// None.
    #[default]
    None,
    /// Held.
    Held,
}

/// Whether a chord is rolled.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Arpeggio {
    /// Nothing written.
    #[default]
    None,
    /// Rolled.
    Rolled,
    /// A bracket: not rolled.
    NotRolled,
}

/// Technical marks that matter to the bow or the left hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Technical {
    /// A harmonic sign (natural or artificial).
    pub harmonic: Harmonic,
    /// String asked for, 1 = highest; 0 when none.
    pub string: u8,
    /// Snap (Bartók) pizzicato or a left-hand + sign.
    pub plucked: Plucked,
    /// An open-string sign.
    pub open_string: OpenString,
}

/// A harmonic sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Harmonic {
    /// None.
    #[default]
    None,
    /// Natural, or not said.
    Natural,
    /// Artificial.
    Artificial,
}

/// A sign that a single note is plucked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Plucked {
    /// None.
    #[default]
    None,
    /// Snapped against the fingerboard.
    Snap,
    /// By the left hand.
    LeftHand,
}

/// An open-string sign.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum OpenString {
    /// None.
    #[default]
    None,
    /// Written.
    Written,
}

/// The shape of the notehead, as far as it changes what is played.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Notehead {
    /// Ordinary.
    #[default]
    Ordinary,
    /// A cross: struck, not sounded in the usual way.
    Cross,
    /// A diamond: a touched harmonic.
    Diamond,
}

/// A slur from one note to another of the same part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Slur {
    /// First note under it.
    pub start: NoteId,
    /// Last note under it.
    pub end: NoteId,
    /// The number the file gives it.
    pub number: u8,
    /// The element that opens it.
    pub start_node: NodeId,
    /// The element that closes it.
    pub end_node: NodeId,
    /// Solid or broken line.
    pub line: SlurLine,
    /// What somebody has said that it is, beside the score.
    pub told: SlurTold,
}

impl Slur {
    /// Whether players must take it for a bow: a solid line that nobody has called a phrase mark, or any line that somebody has
    /// called a bow.
    #[must_use]
    pub const fn is_bow(&self) -> bool {
        match self.told {
            SlurTold::Bow => true,
            SlurTold::Phrase => false,
            SlurTold::Nothing => matches!(self.line, SlurLine::Solid),
        }
    }
}

/// What somebody who knows has said that a slur is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum SlurTold {
    /// Nobody has said anything.
    #[default]
    Nothing,
    /// A bow.
    Bow,
    /// A phrase mark, which does not bind the bow.
    Phrase,
}

/// How a slur is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum SlurLine {
    /// Solid.
    #[default]
    Solid,
    /// Dashed or dotted: an editor's, or a phrase mark.
    Broken,
}

/// A slur with one end only.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OpenSlur {
    /// The note that carries the end.
    pub note: NoteId,
    /// The element.
    pub node: NodeId,
    /// Its number.
    pub number: u8,
    /// Which end is written.
    pub written: SlurEnd,
}

/// One end of a slur.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SlurEnd {
    /// The opening.
    Start,
    /// The closing.
    Stop,
}
