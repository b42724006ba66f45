//! Element names as small numbers.
//!
//! A score repeats some four hundred names millions of times. Every name of MusicXML 4.0 has a fixed
//! [`Tag`], so that a reader compares numbers; a name that is not among them gets the next free number
//! in its own document.

use std::collections::BTreeMap;
use std::hash::Hasher as _;

use rustc_hash::FxHasher;

/// The name of an element as a number.
///
/// The constants are the same in every document; a number beyond [`Tag::KNOWN`] belongs to the document
/// that gave it, and says nothing in another one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Tag(u16);

macro_rules! known_tags {
    ($($constant:ident = $name:literal,)*) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        #[repr(u16)]
        enum Known { $($constant),* }

        /// The names with a fixed number, sorted by their bytes so that one is found by halving.
        const KNOWN_NAMES: &[&str] = &[$($name),*];

        impl Tag {
            $(
                #[doc = concat!("`<", $name, ">`")]
                pub const $constant: Tag = Tag(Known::$constant as u16);
            )*
        }
    };
}

impl Tag {
    /// How many names have a fixed number.
    pub const KNOWN: usize = KNOWN_NAMES.len();

    /// The fixed number of a MusicXML name, if it has one.
    ///
    /// ```
    /// use arcata_xml::Tag;
    /// assert_eq!(Tag::known("up-bow"), Some(Tag::UP_BOW));
    /// assert_eq!(Tag::known("recipe"), None);
    /// ```
    #[must_use]
    pub fn known(name: &str) -> Option<Tag> {
        KNOWN_NAMES.binary_search(&name).ok().map(|index| Tag(index as u16))
    }

    /// The name behind a fixed number; nothing for a number given by a document.
    #[must_use]
    pub fn known_name(self) -> Option<&'static str> {
        KNOWN_NAMES.get(usize::from(self.0)).copied()
    }
}

/// Slots of the table of names met lately; a power of two.
const SLOTS: usize = 1024;

/// A slot nothing was put into. `Names` never gives this number.
const FREE: u16 = u16::MAX;

/// The names of one document.
#[derive(Debug)]
pub(crate) struct Names {
    /// Names without a fixed number, in the order they were met.
    own: Vec<Box<str>>,
    /// Where each of `own` stands. A tree, not a hash table: a hostile file cannot choose names that
    /// make it slow.
    own_by_name: BTreeMap<Box<str>, u16>,
    /// The last number found for each hash: nearly every look-up ends here.
    recent: Box<[u16; SLOTS]>,
}

impl Names {
    pub(crate) fn new() -> Names {
        Names { own: Vec::new(), own_by_name: BTreeMap::new(), recent: Box::new([FREE; SLOTS]) }
    }

    /// The name behind a number of this document.
    pub(crate) fn name(&self, tag: Tag) -> &str {
        let index = usize::from(tag.0);
        match KNOWN_NAMES.get(index) {
            Some(name) => name,
            None => self.own.get(index - KNOWN_NAMES.len()).map_or("", |name| name),
        }
    }

    /// The number of a name that this document has met or that is fixed.
    pub(crate) fn find(&self, name: &str) -> Option<Tag> {
        Tag::known(name).or_else(|| self.own_by_name.get(name).copied().map(Tag))
    }

    /// The number of a name met while reading, looked up in the table of recent names first.
    #[inline]
    pub(crate) fn recall(&mut self, name: &str) -> Option<Tag> {
        let slot = slot_of(name);
        let recent = self.recent[slot];
        if recent != FREE && self.name(Tag(recent)) == name {
            return Some(Tag(recent));
        }
        let tag = self.find(name)?;
        self.recent[slot] = tag.0;
        Some(tag)
    }

    /// Gives a number to a name that has none; nothing when `limit` names of its own are reached.
    pub(crate) fn add(&mut self, name: &str, limit: usize) -> Option<Tag> {
        let room = usize::from(FREE) - KNOWN_NAMES.len();
        if self.own.len() >= limit.min(room) {
            return None;
        }
        let number = (KNOWN_NAMES.len() + self.own.len()) as u16;
        self.own.push(name.into());
        self.own_by_name.insert(name.into(), number);
        Some(Tag(number))
    }
}

#[inline]
fn slot_of(name: &str) -> usize {
    let mut hasher = FxHasher::default();
    hasher.write(name.as_bytes());
    (hasher.finish() >> 32) as usize % SLOTS
}

// The element names of the W3C's MusicXML 4.0 schema (musicxml.xsd), all of them.
known_tags! {
    ACCENT = "accent",
    ACCIDENTAL = "accidental",
    ACCIDENTAL_MARK = "accidental-mark",
    ACCIDENTAL_TEXT = "accidental-text",
    ACCORD = "accord",
    ACCORDION_HIGH = "accordion-high",
    ACCORDION_LOW = "accordion-low",
    ACCORDION_MIDDLE = "accordion-middle",
    ACCORDION_REGISTRATION = "accordion-registration",
    ACTUAL_NOTES = "actual-notes",
    ALTER = "alter",
    APPEARANCE = "appearance",
    ARPEGGIATE = "arpeggiate",
    ARROW = "arrow",
    ARROW_DIRECTION = "arrow-direction",
    ARROW_STYLE = "arrow-style",
    ARROWHEAD = "arrowhead",
    ARTICULATIONS = "articulations",
    ARTIFICIAL = "artificial",
    ASSESS = "assess",
    ATTRIBUTES = "attributes",
    BACKUP = "backup",
    BAR_STYLE = "bar-style",
    BARLINE = "barline",
    BARRE = "barre",
    BASE_PITCH = "base-pitch",
    BASS = "bass",
    BASS_ALTER = "bass-alter",
    BASS_SEPARATOR = "bass-separator",
    BASS_STEP = "bass-step",
    BEAM = "beam",
    BEAT_REPEAT = "beat-repeat",
    BEAT_TYPE = "beat-type",
    BEAT_UNIT = "beat-unit",
    BEAT_UNIT_DOT = "beat-unit-dot",
    BEAT_UNIT_TIED = "beat-unit-tied",
    BEATER = "beater",
    BEATS = "beats",
    BEND = "bend",
    BEND_ALTER = "bend-alter",
    BOOKMARK = "bookmark",
    BOTTOM_MARGIN = "bottom-margin",
    BRACKET = "bracket",
    BRASS_BEND = "brass-bend",
    BREATH_MARK = "breath-mark",
    CAESURA = "caesura",
    CANCEL = "cancel",
    CAPO = "capo",
    CHORD = "chord",
    CHROMATIC = "chromatic",
    CIRCULAR_ARROW = "circular-arrow",
    CLEF = "clef",
    CLEF_OCTAVE_CHANGE = "clef-octave-change",
    CODA = "coda",
    CONCERT_SCORE = "concert-score",
    CREATOR = "creator",
    CREDIT = "credit",
    CREDIT_IMAGE = "credit-image",
    CREDIT_SYMBOL = "credit-symbol",
    CREDIT_TYPE = "credit-type",
    CREDIT_WORDS = "credit-words",
    CUE = "cue",
    DAMP = "damp",
    DAMP_ALL = "damp-all",
    DASHES = "dashes",
    DEFAULTS = "defaults",
    DEGREE = "degree",
    DEGREE_ALTER = "degree-alter",
    DEGREE_TYPE = "degree-type",
    DEGREE_VALUE = "degree-value",
    DELAYED_INVERTED_TURN = "delayed-inverted-turn",
    DELAYED_TURN = "delayed-turn",
    DETACHED_LEGATO = "detached-legato",
    DIATONIC = "diatonic",
    DIRECTION = "direction",
    DIRECTION_TYPE = "direction-type",
    DIRECTIVE = "directive",
    DISPLAY_OCTAVE = "display-octave",
    DISPLAY_STEP = "display-step",
    DISPLAY_TEXT = "display-text",
    DISTANCE = "distance",
    DIVISIONS = "divisions",
    DOIT = "doit",
    DOT = "dot",
    DOUBLE = "double",
    DOUBLE_TONGUE = "double-tongue",
    DOWN_BOW = "down-bow",
    DURATION = "duration",
    DYNAMICS = "dynamics",
    EFFECT = "effect",
    ELEVATION = "elevation",
    ELISION = "elision",
    ENCODER = "encoder",
    ENCODING = "encoding",
    ENCODING_DATE = "encoding-date",
    ENCODING_DESCRIPTION = "encoding-description",
    END_LINE = "end-line",
    END_PARAGRAPH = "end-paragraph",
    ENDING = "ending",
    ENSEMBLE = "ensemble",
    EXCEPT_VOICE = "except-voice",
    EXTEND = "extend",
    EYEGLASSES = "eyeglasses",
    F = "f",
    FALLOFF = "falloff",
    FEATURE = "feature",
    FERMATA = "fermata",
    FF = "ff",
    FFF = "fff",
    FFFF = "ffff",
    FFFFF = "fffff",
    FFFFFF = "ffffff",
    FIFTHS = "fifths",
    FIGURE = "figure",
    FIGURE_NUMBER = "figure-number",
    FIGURED_BASS = "figured-bass",
    FINGERING = "fingering",
    FINGERNAILS = "fingernails",
    FIRST = "first",
    FIRST_FRET = "first-fret",
    FLIP = "flip",
    FOOTNOTE = "footnote",
    FOR_PART = "for-part",
    FORWARD = "forward",
    FP = "fp",
    FRAME = "frame",
    FRAME_FRETS = "frame-frets",
    FRAME_NOTE = "frame-note",
    FRAME_STRINGS = "frame-strings",
    FRET = "fret",
    FUNCTION = "function",
    FZ = "fz",
    GLASS = "glass",
    GLISSANDO = "glissando",
    GLYPH = "glyph",
    GOLPE = "golpe",
    GRACE = "grace",
    GROUP = "group",
    GROUP_ABBREVIATION = "group-abbreviation",
    GROUP_ABBREVIATION_DISPLAY = "group-abbreviation-display",
    GROUP_BARLINE = "group-barline",
    GROUP_LINK = "group-link",
    GROUP_NAME = "group-name",
    GROUP_NAME_DISPLAY = "group-name-display",
    GROUP_SYMBOL = "group-symbol",
    GROUP_TIME = "group-time",
    GROUPING = "grouping",
    HALF_MUTED = "half-muted",
    HAMMER_ON = "hammer-on",
    HANDBELL = "handbell",
    HARMON_CLOSED = "harmon-closed",
    HARMON_MUTE = "harmon-mute",
    HARMONIC = "harmonic",
    HARMONY = "harmony",
    HARP_PEDALS = "harp-pedals",
    HAYDN = "haydn",
    HEEL = "heel",
    HOLE = "hole",
    HOLE_CLOSED = "hole-closed",
    HOLE_SHAPE = "hole-shape",
    HOLE_TYPE = "hole-type",
    HUMMING = "humming",
    IDENTIFICATION = "identification",
    IMAGE = "image",
    INSTRUMENT = "instrument",
    INSTRUMENT_ABBREVIATION = "instrument-abbreviation",
    INSTRUMENT_CHANGE = "instrument-change",
    INSTRUMENT_LINK = "instrument-link",
    INSTRUMENT_NAME = "instrument-name",
    INSTRUMENT_SOUND = "instrument-sound",
    INSTRUMENTS = "instruments",
    INTERCHANGEABLE = "interchangeable",
    INVERSION = "inversion",
    INVERTED_MORDENT = "inverted-mordent",
    INVERTED_TURN = "inverted-turn",
    INVERTED_VERTICAL_TURN = "inverted-vertical-turn",
    IPA = "ipa",
    KEY = "key",
    KEY_ACCIDENTAL = "key-accidental",
    KEY_ALTER = "key-alter",
    KEY_OCTAVE = "key-octave",
    KEY_STEP = "key-step",
    KIND = "kind",
    LAUGHING = "laughing",
    LEFT_DIVIDER = "left-divider",
    LEFT_MARGIN = "left-margin",
    LEVEL = "level",
    LINE = "line",
    LINE_DETAIL = "line-detail",
    LINE_WIDTH = "line-width",
    LINK = "link",
    LISTEN = "listen",
    LISTENING = "listening",
    LYRIC = "lyric",
    LYRIC_FONT = "lyric-font",
    LYRIC_LANGUAGE = "lyric-language",
    MEASURE = "measure",
    MEASURE_DISTANCE = "measure-distance",
    MEASURE_LAYOUT = "measure-layout",
    MEASURE_NUMBERING = "measure-numbering",
    MEASURE_REPEAT = "measure-repeat",
    MEASURE_STYLE = "measure-style",
    MEMBRANE = "membrane",
    METAL = "metal",
    METRONOME = "metronome",
    METRONOME_ARROWS = "metronome-arrows",
    METRONOME_BEAM = "metronome-beam",
    METRONOME_DOT = "metronome-dot",
    METRONOME_NOTE = "metronome-note",
    METRONOME_RELATION = "metronome-relation",
    METRONOME_TIED = "metronome-tied",
    METRONOME_TUPLET = "metronome-tuplet",
    METRONOME_TYPE = "metronome-type",
    MF = "mf",
    MIDI_BANK = "midi-bank",
    MIDI_CHANNEL = "midi-channel",
    MIDI_DEVICE = "midi-device",
    MIDI_INSTRUMENT = "midi-instrument",
    MIDI_NAME = "midi-name",
    MIDI_PROGRAM = "midi-program",
    MIDI_UNPITCHED = "midi-unpitched",
    MILLIMETERS = "millimeters",
    MISCELLANEOUS = "miscellaneous",
    MISCELLANEOUS_FIELD = "miscellaneous-field",
    MODE = "mode",
    MORDENT = "mordent",
    MOVEMENT_NUMBER = "movement-number",
    MOVEMENT_TITLE = "movement-title",
    MP = "mp",
    MULTIPLE_REST = "multiple-rest",
    MUSIC_FONT = "music-font",
    MUTE = "mute",
    N = "n",
    NATURAL = "natural",
    NON_ARPEGGIATE = "non-arpeggiate",
    NORMAL_DOT = "normal-dot",
    NORMAL_NOTES = "normal-notes",
    NORMAL_TYPE = "normal-type",
    NOTATIONS = "notations",
    NOTE = "note",
    NOTE_SIZE = "note-size",
    NOTEHEAD = "notehead",
    NOTEHEAD_TEXT = "notehead-text",
    NUMERAL = "numeral",
    NUMERAL_ALTER = "numeral-alter",
    NUMERAL_FIFTHS = "numeral-fifths",
    NUMERAL_KEY = "numeral-key",
    NUMERAL_MODE = "numeral-mode",
    NUMERAL_ROOT = "numeral-root",
    OCTAVE = "octave",
    OCTAVE_CHANGE = "octave-change",
    OCTAVE_SHIFT = "octave-shift",
    OFFSET = "offset",
    OPEN = "open",
    OPEN_STRING = "open-string",
    OPUS = "opus",
    ORNAMENTS = "ornaments",
    OTHER_APPEARANCE = "other-appearance",
    OTHER_ARTICULATION = "other-articulation",
    OTHER_DIRECTION = "other-direction",
    OTHER_DYNAMICS = "other-dynamics",
    OTHER_LISTEN = "other-listen",
    OTHER_LISTENING = "other-listening",
    OTHER_NOTATION = "other-notation",
    OTHER_ORNAMENT = "other-ornament",
    OTHER_PERCUSSION = "other-percussion",
    OTHER_PLAY = "other-play",
    OTHER_TECHNICAL = "other-technical",
    P = "p",
    PAGE_HEIGHT = "page-height",
    PAGE_LAYOUT = "page-layout",
    PAGE_MARGINS = "page-margins",
    PAGE_WIDTH = "page-width",
    PAN = "pan",
    PART = "part",
    PART_ABBREVIATION = "part-abbreviation",
    PART_ABBREVIATION_DISPLAY = "part-abbreviation-display",
    PART_CLEF = "part-clef",
    PART_GROUP = "part-group",
    PART_LINK = "part-link",
    PART_LIST = "part-list",
    PART_NAME = "part-name",
    PART_NAME_DISPLAY = "part-name-display",
    PART_SYMBOL = "part-symbol",
    PART_TRANSPOSE = "part-transpose",
    PEDAL = "pedal",
    PEDAL_ALTER = "pedal-alter",
    PEDAL_STEP = "pedal-step",
    PEDAL_TUNING = "pedal-tuning",
    PER_MINUTE = "per-minute",
    PERCUSSION = "percussion",
    PF = "pf",
    PITCH = "pitch",
    PITCHED = "pitched",
    PLAY = "play",
    PLAYER = "player",
    PLAYER_NAME = "player-name",
    PLOP = "plop",
    PLUCK = "pluck",
    PP = "pp",
    PPP = "ppp",
    PPPP = "pppp",
    PPPPP = "ppppp",
    PPPPPP = "pppppp",
    PRE_BEND = "pre-bend",
    PREFIX = "prefix",
    PRINCIPAL_VOICE = "principal-voice",
    PRINT = "print",
    PULL_OFF = "pull-off",
    REHEARSAL = "rehearsal",
    RELATION = "relation",
    RELEASE = "release",
    REPEAT = "repeat",
    REST = "rest",
    RF = "rf",
    RFZ = "rfz",
    RIGHT_DIVIDER = "right-divider",
    RIGHT_MARGIN = "right-margin",
    RIGHTS = "rights",
    ROOT = "root",
    ROOT_ALTER = "root-alter",
    ROOT_STEP = "root-step",
    SCALING = "scaling",
    SCHLEIFER = "schleifer",
    SCOOP = "scoop",
    SCORDATURA = "scordatura",
    SCORE_INSTRUMENT = "score-instrument",
    SCORE_PART = "score-part",
    SCORE_PARTWISE = "score-partwise",
    SCORE_TIMEWISE = "score-timewise",
    SECOND = "second",
    SEGNO = "segno",
    SEMI_PITCHED = "semi-pitched",
    SENZA_MISURA = "senza-misura",
    SF = "sf",
    SFFZ = "sffz",
    SFP = "sfp",
    SFPP = "sfpp",
    SFZ = "sfz",
    SFZP = "sfzp",
    SHAKE = "shake",
    SIGN = "sign",
    SLASH = "slash",
    SLASH_DOT = "slash-dot",
    SLASH_TYPE = "slash-type",
    SLIDE = "slide",
    SLUR = "slur",
    SMEAR = "smear",
    SNAP_PIZZICATO = "snap-pizzicato",
    SOFT_ACCENT = "soft-accent",
    SOFTWARE = "software",
    SOLO = "solo",
    SOUND = "sound",
    SOUNDING_PITCH = "sounding-pitch",
    SOURCE = "source",
    SPICCATO = "spiccato",
    STACCATISSIMO = "staccatissimo",
    STACCATO = "staccato",
    STAFF = "staff",
    STAFF_DETAILS = "staff-details",
    STAFF_DISTANCE = "staff-distance",
    STAFF_DIVIDE = "staff-divide",
    STAFF_LAYOUT = "staff-layout",
    STAFF_LINES = "staff-lines",
    STAFF_SIZE = "staff-size",
    STAFF_TUNING = "staff-tuning",
    STAFF_TYPE = "staff-type",
    STAVES = "staves",
    STEM = "stem",
    STEP = "step",
    STICK = "stick",
    STICK_LOCATION = "stick-location",
    STICK_MATERIAL = "stick-material",
    STICK_TYPE = "stick-type",
    STOPPED = "stopped",
    STRAIGHT = "straight",
    STRESS = "stress",
    STRING = "string",
    STRING_MUTE = "string-mute",
    STRONG_ACCENT = "strong-accent",
    SUFFIX = "suffix",
    SUPPORTS = "supports",
    SWING = "swing",
    SWING_STYLE = "swing-style",
    SWING_TYPE = "swing-type",
    SYLLABIC = "syllabic",
    SYMBOL = "symbol",
    SYNC = "sync",
    SYSTEM_DISTANCE = "system-distance",
    SYSTEM_DIVIDERS = "system-dividers",
    SYSTEM_LAYOUT = "system-layout",
    SYSTEM_MARGINS = "system-margins",
    TAP = "tap",
    TECHNICAL = "technical",
    TENTHS = "tenths",
    TENUTO = "tenuto",
    TEXT = "text",
    THUMB_POSITION = "thumb-position",
    TIE = "tie",
    TIED = "tied",
    TIME = "time",
    TIME_MODIFICATION = "time-modification",
    TIME_RELATION = "time-relation",
    TIMPANI = "timpani",
    TOE = "toe",
    TOP_MARGIN = "top-margin",
    TOP_SYSTEM_DISTANCE = "top-system-distance",
    TOUCHING_PITCH = "touching-pitch",
    TRANSPOSE = "transpose",
    TREMOLO = "tremolo",
    TRILL_MARK = "trill-mark",
    TRIPLE_TONGUE = "triple-tongue",
    TUNING_ALTER = "tuning-alter",
    TUNING_OCTAVE = "tuning-octave",
    TUNING_STEP = "tuning-step",
    TUPLET = "tuplet",
    TUPLET_ACTUAL = "tuplet-actual",
    TUPLET_DOT = "tuplet-dot",
    TUPLET_NORMAL = "tuplet-normal",
    TUPLET_NUMBER = "tuplet-number",
    TUPLET_TYPE = "tuplet-type",
    TURN = "turn",
    TYPE = "type",
    UNPITCHED = "unpitched",
    UNSTRESS = "unstress",
    UP_BOW = "up-bow",
    VERTICAL_TURN = "vertical-turn",
    VIRTUAL_INSTRUMENT = "virtual-instrument",
    VIRTUAL_LIBRARY = "virtual-library",
    VIRTUAL_NAME = "virtual-name",
    VOICE = "voice",
    VOLUME = "volume",
    WAIT = "wait",
    WAVY_LINE = "wavy-line",
    WEDGE = "wedge",
    WITH_BAR = "with-bar",
    WOOD = "wood",
    WORD_FONT = "word-font",
    WORDS = "words",
    WORK = "work",
    WORK_NUMBER = "work-number",
    WORK_TITLE = "work-title",
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_names_are_sorted_and_found() {
        assert!(KNOWN_NAMES.is_sorted_by(|a, b| a < b));
        for (index, name) in KNOWN_NAMES.iter().enumerate() {
            assert_eq!(Tag::known(name), Some(Tag(index as u16)));
            assert_eq!(Tag(index as u16).known_name(), Some(*name));
        }
        assert_eq!(Tag::known("note"), Some(Tag::NOTE));
    }

    #[test]
    fn own_names_follow_the_known_ones() {
        let mut names = Names::new();
        assert_eq!(names.recall("note"), Some(Tag::NOTE));
        assert_eq!(names.recall("zither"), None);
        let zither = names.add("zither", 2).unwrap();
        assert_eq!(names.recall("zither"), Some(zither));
        assert_eq!(names.name(zither), "zither");
        assert!(names.add("zoo", 2).is_some());
        assert!(names.add("zone", 2).is_none());
    }
}
