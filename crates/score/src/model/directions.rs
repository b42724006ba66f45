//! Dynamics, hairpins, words and tempo.

use arcata_xml::NodeId;

use crate::{Length, Moment};

/// Where a direction stands in its part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Place {
    /// When it takes effect.
    pub at: Moment,
    /// Bar index.
    pub bar: u32,
    /// Staff it is written for; 0 when not said (all staves of the part).
    pub staff: u8,
    /// Voice it is written for (index into the part's voices), when said.
    pub voice: Option<u16>,
    /// Its element: the direction type's child, or the notation on the note.
    pub node: NodeId,
}

/// A dynamic mark.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Dynamic {
    /// Where.
    pub place: Place,
    /// What.
    pub kind: DynamicKind,
}

/// What a dynamic mark asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DynamicKind {
    /// A lasting level.
    Level(Level),
    /// A single accented attack at the level in force: sf, sfz, sffz, fz, rf, rfz.
    Accented(Level),
    /// A loud attack that falls at once: fp, sfp, sfpp, pf … : (attack, after).
    Shape(Level, Level),
}

impl DynamicKind {
    /// The level that holds after it; none after an accent.
    #[must_use]
    pub const fn lasting(self) -> Option<Level> {
        match self {
            Self::Level(level) | Self::Shape(_, level) => Some(level),
            Self::Accented(_) => None,
        }
    }
}

/// A dynamic level; the order is loudness.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Level {
    /// n: from or into silence.
    Niente,
    /// ppp and softer.
    Ppp,
    /// pp
    Pp,
    /// p
    P,
    /// mp
    Mp,
    /// mf
    Mf,
    /// f
    F,
    /// ff
    Ff,
    /// fff and louder.
    Fff,
}

/// A hairpin, or cresc./dim. with or without dashes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Swell {
    /// Where it begins.
    pub place: Place,
    /// Where it ends, when the file says; words end at the next dynamic.
    pub end: Option<Moment>,
    /// Growing or fading.
    pub kind: SwellKind,
    /// Drawn as a hairpin or said in words.
    pub written: SwellWriting,
    /// From or into silence.
    pub niente: Niente,
}

/// Growing or fading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SwellKind {
    /// Crescendo.
    Growing,
    /// Diminuendo.
    Fading,
}

/// How a swell is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SwellWriting {
    /// A hairpin.
    Hairpin,
    /// A word.
    Word,
}

/// Whether a hairpin carries the small circle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Niente {
    /// No circle.
    #[default]
    No,
    /// A circle: from silence (growing) or into silence (fading).
    Circle,
}

/// Words or a sound element with a meaning for the players.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Instruction {
    /// Where.
    pub place: Place,
    /// What they mean.
    pub meaning: Meaning,
    /// As printed; empty when only a `<sound>` says it.
    pub text: String,
}

/// What words mean to a string player. One printed text may carry several.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Meaning {
    /// pizz.
    Pizzicato,
    /// arco
    Arco,
    /// con sord.
    MuteOn,
    /// senza sord., via sord.
    MuteOff,
    /// div., div. a n
    Divisi(u8),
    /// unis., tutti after a division, non div.
    Unison,
    /// non div.
    NonDivisi,
    /// solo, or soli for a few
    Solo,
    /// tutti, gli altri
    Tutti,
    /// One stand, half the section and so on.
    HalfSection,
    /// sul ponticello
    SulPonticello,
    /// sul tasto, flautando
    SulTasto,
    /// ordinario, modo ordinario, naturale
    Ordinario,
    /// col legno (tratto or not said)
    ColLegno,
    /// col legno battuto
    ColLegnoBattuto,
    /// spiccato, saltando
    Spiccato,
    /// sautillé
    Sautille,
    /// ricochet, jeté, gettato
    Thrown,
    /// martelé, martellato
    Martele,
    /// détaché
    Detache,
    /// legato
    Legato,
    /// staccato, in words
    StaccatoWord,
    /// tenuto, sostenuto, in words
    TenutoWord,
    /// on the string
    OnString,
    /// off the string
    OffString,
    /// at the frog
    AtFrog,
    /// at the tip
    AtTip,
    /// in the middle of the bow
    MiddleOfBow,
    /// whole bow
    WholeBow,
    /// free bowing, bow changes not together
    FreeBowing,
    /// In words: every note down-bow
    AllDownBows,
    /// In words: every note up-bow
    AllUpBows,
    /// In words: as it comes
    AsItComes,
    /// tremolo in words
    TremoloWord,
    /// simile, segue: go on in the same way
    Simile,
    /// Loud or soft in words (forte, piano …).
    LevelWord(Level),
    /// subito
    Subito,
}

/// A tempo event of the whole score.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tempo {
    /// Where.
    pub place: Place,
    /// What.
    pub kind: TempoKind,
    /// As printed, empty when only a `<sound>` says it.
    pub text: String,
}

impl Tempo {
    /// Whether a new tempo that players read begins here, and not gradually.
    #[must_use]
    pub fn begins_at_once(&self) -> bool {
        !self.text.is_empty() && !matches!(self.kind, TempoKind::Slowing | TempoKind::Quickening)
    }
}

/// What a tempo event asks for. Speeds are quarter notes a minute as exact fractions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TempoKind {
    /// A metronome mark or a sound tempo: quarters a minute.
    Marked(Length),
    /// A tempo word with the speed that the table gives it.
    Word(Length),
    /// rit., rall. …: gradually slower until the next tempo event.
    Slowing,
    /// accel., stringendo …: gradually faster.
    Quickening,
    /// meno mosso and the like: at once slower, by this fraction of the tempo in force.
    Scaled(Length),
    /// a tempo, tempo primo.
    Back(TempoBack),
    /// A metric modulation: old value = new value (both in whole notes).
    Modulation(Length, Length),
}

/// Which tempo is taken up again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TempoBack {
    /// The one before the last rit. or accel.
    Previous,
    /// The first of the movement.
    First,
}
