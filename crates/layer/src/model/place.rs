//! Where an entry belongs: part, bar, offset, voice, pitch. Never a position on a page.

use std::cmp::Ordering;
use std::fmt;

use arcata_languages::{Argument, SaidPlace, Saying, Wording};
use arcata_score::{Length, Pitch, places};

/// A note of a score.
///
/// ```
/// use arcata_layer::{Address, Spot};
/// use arcata_score::Length;
/// let place = Address { part: "Violin I".into(), spot: Spot::new("37", Length::new(1, 2)) };
/// assert_eq!(place.to_string(), "Violin I, bar 37 after 1/2");
/// ```
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Address {
    /// The part: its printed name where no other part bears it, else its `id` in the file.
    pub part: String,
    /// Where in the part.
    pub spot: Spot,
}

/// A note within a part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Spot {
    /// The bar's number as printed.
    pub bar: String,
    /// The bar by position in the file, from 1: tells bars with one printed number apart, and orders
    /// entries. Where it is missing the printed number must be the only one of its kind.
    pub bar_ordinal: Option<u32>,
    /// How far into the bar, in whole notes.
    pub offset: Length,
    /// The voice as the file names it.
    pub voice: String,
    /// The written pitch; where it is missing, the first note that stands there is meant.
    pub pitch: Option<PitchName>,
    /// Which of the grace notes that stand there, from 1; nothing for the note itself.
    pub grace: Option<u16>,
    /// Which of several notes that agree in all this, from 1; 1 is not written.
    pub copy: u16,
}

/// A written pitch, as text `F#5`, `Bb3`, `C(+50)4` (cents beside the natural where a sharp or a flat does
/// not say it), or `x` without pitch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PitchName(pub Pitch);

impl Spot {
    /// A spot of the voice 1 with nothing more said about the note.
    #[must_use]
    pub fn new(bar: &str, offset: Length) -> Self {
        Self {
            bar: bar.to_owned(),
            bar_ordinal: None,
            offset,
            voice: "1".to_owned(),
            pitch: None,
            grace: None,
            copy: 1,
        }
    }

    /// Which of the notes that stand there: `, grace note 1`, `, voice 2`, `, F#5`; nothing where it is the only one.
    pub(crate) fn note_said(&self) -> String {
        let which = self.which().into_iter().map(|which| format!(", {which}"));
        which.chain(self.pitch.map(|pitch| format!(", {pitch}"))).collect()
    }

    /// As a file of a layer has it, to be said in a language where no score is known: a note value behind the bar line. Beat 1
    /// is known anyhow.
    #[must_use]
    pub fn argument(&self) -> Argument {
        let bar = SaidPlace::bar(&self.bar);
        let place = if self.offset.is_zero() {
            bar.on_beat(Length::WHOLE).into()
        } else {
            Saying::new("wish-bar-after").with("bar", bar).quoting("length", self.offset.to_string()).into()
        };
        self.among_notes(place)
    }

    /// A place with what tells the note apart from others there.
    pub(crate) fn among_notes(&self, place: Argument) -> Argument {
        let which = self.which().into_iter().map(Argument::from);
        let pitch = self.pitch.map(|pitch| Argument::Text(pitch.to_string()));
        Argument::Row(std::iter::once(place).chain(which).chain(pitch).collect())
    }

    /// The grace note and the voice, to be said in a language, where there is something to tell apart.
    #[must_use]
    pub fn which(&self) -> Vec<Saying> {
        let grace = self.grace.map(|grace| Saying::new("which-grace").with("number", i64::from(grace)));
        let voice = (self.voice != "1").then(|| {
            let plain = !self.voice.is_empty() && self.voice.bytes().all(|letter| letter.is_ascii_digit());
            let voice = if plain { self.voice.clone() } else { places::quoted(&self.voice) };
            Saying::new("which-voice").quoting("voice", voice)
        });
        [grace, voice].into_iter().flatten().collect()
    }
}

impl Ord for Spot {
    fn cmp(&self, other: &Self) -> Ordering {
        // Grace notes sound before the note they lead to.
        let key = |spot: &Self| {
            let bar = spot.bar_ordinal.unwrap_or(u32::MAX);
            (bar, spot.offset, spot.grace.unwrap_or(u16::MAX), spot.pitch.map(PitchName::rank), spot.copy)
        };
        key(self)
            .cmp(&key(other))
            .then_with(|| self.voice.cmp(&other.voice))
            .then_with(|| self.bar.cmp(&other.bar))
    }
}

impl PartialOrd for Spot {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl fmt::Display for Address {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}, {}", self.part, self.spot)
    }
}

/// As [`Spot::argument`] says it, in English.
impl fmt::Display for Spot {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&Wording::default().argument(&self.argument()))
    }
}

const STEPS: [char; 7] = ['C', 'D', 'E', 'F', 'G', 'A', 'B'];

impl PitchName {
    /// Order by sound, then by name; no pitch last.
    fn rank(self) -> (i32, u8) {
        match self.0 {
            Pitch::Pitched { step, .. } => (self.0.cents().unwrap_or(i32::MAX), step),
            Pitch::Unpitched | Pitch::Rest => (i32::MAX, u8::MAX),
        }
    }

    /// Reads `F#5`, `Bb3`, `C(+50)4` or `x`; nothing where the text is none of these.
    ///
    /// ```
    /// use arcata_layer::PitchName;
    /// for text in ["F#5", "Bb3", "C4", "G##-1", "E(-50)4", "x"] {
    ///     assert_eq!(PitchName::parse(text).unwrap().to_string(), text);
    /// }
    /// assert!(PitchName::parse("H4").is_none());
    /// ```
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        if text == "x" {
            return Some(Self(Pitch::Unpitched));
        }
        let mut letters = text.chars();
        let letter = letters.next()?.to_ascii_uppercase();
        let step = STEPS.iter().position(|step| *step == letter)?;
        let rest = letters.as_str();
        let (alter, octave) = if let Some(rest) = rest.strip_prefix('(') {
            let (cents, octave) = rest.split_once(')')?;
            (cents.parse::<i16>().ok()?, octave)
        } else {
            let octave = rest.trim_start_matches(['#', 'b']);
            let signs = &rest[..rest.len() - octave.len()];
            let one_kind = signs.chars().all(|sign| sign == '#') || signs.chars().all(|sign| sign == 'b');
            let count = i16::try_from(signs.len()).ok().filter(|count| one_kind && *count <= 12)?;
            (if signs.starts_with('b') { -100 * count } else { 100 * count }, octave)
        };
        let octave = octave.parse::<i8>().ok()?;
        let step = u8::try_from(step).ok()?;
        Some(Self(Pitch::Pitched { step, alter, octave }))
    }
}

impl PartialOrd for PitchName {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for PitchName {
    fn cmp(&self, other: &Self) -> Ordering {
        self.rank().cmp(&other.rank())
    }
}

impl fmt::Display for PitchName {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Pitch::Pitched { step, alter, octave } = self.0 else { return write!(out, "x") };
        write!(out, "{}", STEPS[usize::from(step % 7)])?;
        if alter % 100 == 0 {
            let sign = if alter < 0 { "b" } else { "#" };
            write!(out, "{}", sign.repeat(usize::from(alter.unsigned_abs() / 100)))?;
        } else {
            write!(out, "({alter:+})")?;
        }
        write!(out, "{octave}")
    }
}
