//! The engraving library, kept behind one door.
//!
//! The library is not safe to share: a toolkit belongs to one thread at a time, and its C++ can end a process (see the
//! press). Its log would go to the terminal and cannot be caught, so it is switched off; what went wrong is found out from
//! the drawing and stands in [`Drawing::remarks`].

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex};

use rayon::prelude::*;
use sha2::{Digest, Sha256};

use crate::Slice;
use crate::drawing::Drawing;
#[cfg(feature = "native")]
use crate::press::InProcess;
use crate::press::{EngravingOrder, Press, PressError, kept};

/// The options of the engraving library that never change. Lengths are in its own unit, a tenth of a
/// drawing unit; the staff is 72 of them high.
const OPTIONS: &str = concat!(
    r#"{"font":"Bravura","fontTextLiberation":true,"smuflTextFont":"none","inputFrom":"musicxml","#,
    r#""header":"none","footer":"none","adjustPageHeight":true,"svgBoundingBoxes":true,"#,
    r#""svgViewBox":true,"svgRemoveXlink":true,"svgFormatRaw":true,"barLineWidth":0.3,"#,
    r#""pageMarginTop":0,"pageMarginBottom":0,"pageMarginLeft":0,"pageMarginRight":0,"pageHeight":60000,"#,
    r#""justifyVertically":false,"#
);

/// How a slice is spread out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SystemSpread {
    /// Width.
    pub width: Width,
    /// Least room between two staves, eighths of a staff height: 12 is usual, a bow lane wants more.
    pub between_staves: u8,
}

impl Default for SystemSpread {
    fn default() -> Self {
        Self { width: Width::Natural, between_staves: 12 }
    }
}

/// How wide a slice is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Width {
    /// As wide as the music asks.
    Natural,
    /// Stretched or squeezed to this many hundredths of a staff height.
    Hundredths(u32),
}

/// How wide the lines of a part are set; they end where the part says so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum LineWidth {
    /// In natural spacing.
    Natural,
    /// Stretched to this many hundredths of a staff height.
    Stretched {
        /// How wide.
        hundredths: u32,
        /// What the last line is.
        last: LastLine,
    },
}

/// What becomes of the last line of music.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum LastLine {
    /// As wide as the others.
    Full,
    /// As wide as it asks, unless it is nearly full.
    Short,
}

/// Why a slice cannot be engraved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum EngraveError {
    /// The library could not lay out its fonts.
    NoFonts,
    /// The library did not take the slice.
    Refused {
        /// First and last bar, indices.
        bars: (u32, u32),
    },
    /// The library was given up.
    TooLong {
        /// First and last bar, indices.
        bars: (u32, u32),
        /// After so many seconds.
        seconds: u64,
    },
    /// The process that the library works in does not start.
    NotStarted,
    /// What the library drew is not what it is known to draw.
    Unreadable {
        /// What is missing or odd.
        why: String,
    },
}

impl std::fmt::Display for EngraveError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::NoFonts => write!(
                out,
                "the engraver cannot write its fonts, 12 MB, into the folder for temporary files; make room there or name another with TMPDIR"
            ),
            Self::Refused { bars } => {
                write!(out, "{} cannot be engraved; the rest of the score can", counted(*bars))
            }
            Self::TooLong { bars, seconds } => write!(
                out,
                "{} could not be engraved within {seconds} s; the rest of the score can",
                counted(*bars)
            ),
            Self::NotStarted => {
                write!(
                    out,
                    "the engraver's process does not start; see that the program may start programs here"
                )
            }
            Self::Unreadable { why } => write!(out, "the engraved music cannot be read: {why}"),
        }
    }
}

impl std::error::Error for EngraveError {}

/// Bars as people count them who have only the file: the numbers that are printed may begin anew.
fn counted((first, last): (u32, u32)) -> String {
    let (first, last) = (first + 1, last + 1);
    if first == last {
        format!("bar {first} (counted from the beginning of the file)")
    } else {
        format!("bars {first} to {last} (counted from the beginning of the file)")
    }
}

/// Engraves slices, several at once, each only once.
#[derive(Debug)]
pub struct Engraver {
    press: Box<dyn Press>,
    done: Mutex<DoneDrawings>,
    /// Pieces of parts as the library drew them; nothing where they are not kept.
    pieces: Option<Mutex<DonePieces>>,
}

/// Pieces of parts by the hash of what they were made from.
#[derive(Debug, Default)]
struct DonePieces {
    pieces: BTreeMap<[u8; 32], Arc<String>>,
    /// Bytes of all of them.
    bytes: usize,
}

/// Drawings by the hash of what they were made from.
#[derive(Debug, Default)]
struct DoneDrawings {
    drawings: BTreeMap<[u8; 32], Arc<Drawing>>,
    /// Bytes of all of them, about.
    bytes: usize,
}

/// After how long the library is given up over a few bars, and over a whole part (a long one takes half a minute).
const SECONDS: u64 = 20;
const SECONDS_OF_A_PART: u64 = 900;

/// More than this, bytes, is not kept: a program that runs for an afternoon does not grow. A symphony's pages fit (a limit).
const MOST_KEPT: usize = 192 << 20;

/// The same for pieces of parts, bytes: those of several long parts fit (a limit).
const MOST_PIECES: usize = 128 << 20;

impl DonePieces {
    fn put(&mut self, key: [u8; 32], piece: &Arc<String>) {
        if self.bytes > MOST_PIECES {
            *self = Self::default();
        }
        self.bytes += piece.len();
        self.pieces.insert(key, Arc::clone(piece));
    }
}

impl DoneDrawings {
    fn put(&mut self, key: [u8; 32], drawing: &Arc<Drawing>) {
        if self.bytes > MOST_KEPT {
            *self = Self::default();
        }
        self.bytes += drawing.content.len();
        self.drawings.insert(key, Arc::clone(drawing));
    }
}

#[cfg(feature = "native")]
impl Default for Engraver {
    fn default() -> Self {
        Self::new()
    }
}

impl Engraver {
    /// An engraver that has drawn nothing yet, with the library in this process. The first drawing takes about half a second
    /// longer: the library lays out its fonts in a folder of its own, which goes with the last engraver.
    #[cfg(feature = "native")]
    #[must_use]
    pub fn new() -> Self {
        Self::with(Box::new(InProcess::default()))
    }

    /// An engraver whose library works elsewhere.
    #[must_use]
    pub fn with(press: Box<dyn Press>) -> Self {
        Self { press, done: Mutex::default(), pieces: None }
    }

    /// The same, keeping the pieces of parts that it has set: of a part whose pages are looked at while breaks are asked for most
    /// pieces stay as they are.
    #[must_use]
    pub fn keeping_parts(self) -> Self {
        Self { pieces: Some(Mutex::default()), ..self }
    }

    /// Does what the first drawing would have to wait for. Where that fails the first drawing says why.
    pub fn prepare(&self) {
        self.press.prepare();
    }

    /// Engraves one slice on one system.
    ///
    /// # Errors
    /// Music that the library does not take.
    pub fn engrave(&self, slice: &Slice, spread: SystemSpread) -> Result<Arc<Drawing>, EngraveError> {
        let key = key(slice, spread);
        if let Some(drawing) = kept(&self.done).drawings.get(&key) {
            return Ok(Arc::clone(drawing));
        }
        let bars = (*slice.bars().start(), *slice.bars().end());
        let drawn = self.press.fill(&order(slice, spread)).map_err(|problem| match problem {
            PressError::NoFonts => EngraveError::NoFonts,
            PressError::Refused => EngraveError::Refused { bars },
            PressError::TooLong { seconds } => EngraveError::TooLong { bars, seconds },
            PressError::NotStarted => EngraveError::NotStarted,
        })?;
        let drawing = Arc::new(Drawing::read(&drawn, slice)?);
        kept(&self.done).put(key, &drawing);
        Ok(drawing)
    }

    /// Engraves a piece of a part and gives the library's own picture.
    pub(crate) fn set_part(&self, musicxml: &str, setting: LineWidth) -> Result<Arc<String>, EngraveError> {
        let sized = match setting {
            LineWidth::Natural => r#""noJustification":true,"pageWidth":90000"#.to_owned(),
            LineWidth::Stretched { hundredths, last } => {
                let least = if last == LastLine::Full { "0" } else { "0.9" };
                let width = staff_hundredths(hundredths);
                format!(r#""noJustification":false,"minLastJustification":{least},"pageWidth":{width}"#)
            }
        };
        // Denser than the library does it by itself: a part has as many bars in a line as an edition, and stretching
        // gives back what is left. (The library's own 0.25 makes five bars of what is printed as six or seven.)
        let options = format!(
            r#"{OPTIONS}{sized},"breaks":"encoded","adjustPageWidth":false,"mnumInterval":0,"spacingStaff":12,"spacingLinear":0.16}}"#
        );
        let mut key = Sha256::new_with_prefix(options.as_bytes());
        key.update(musicxml.as_bytes());
        let key = key.finalize().into();
        if let Some(piece) = self.pieces.as_ref().and_then(|pieces| kept(pieces).pieces.get(&key).cloned()) {
            return Ok(piece);
        }
        let order = EngravingOrder { options, musicxml: musicxml.to_owned(), seconds: SECONDS_OF_A_PART };
        let drawn = self.press.fill(&order).map_err(|problem| match problem {
            PressError::NoFonts => EngraveError::NoFonts,
            PressError::Refused => {
                EngraveError::Unreadable { why: "the engraver refused the part".to_owned() }
            }
            PressError::TooLong { seconds } => EngraveError::Unreadable {
                why: format!("the part was not engraved within {seconds} s and given up"),
            },
            PressError::NotStarted => EngraveError::NotStarted,
        })?;
        let piece = Arc::new(drawn);
        if let Some(pieces) = &self.pieces {
            kept(pieces).put(key, &piece);
        }
        Ok(piece)
    }

    /// Engraves many slices on all cores, in the order in which they are given.
    #[must_use]
    pub fn engrave_all(&self, slices: &[(Slice, SystemSpread)]) -> Vec<Result<Arc<Drawing>, EngraveError>> {
        slices.par_iter().map(|(slice, spread)| self.engrave(slice, *spread)).collect()
    }
}

fn key(slice: &Slice, spread: SystemSpread) -> [u8; 32] {
    let mut hash = Sha256::new();
    let width = match spread.width {
        Width::Natural => 0,
        Width::Hundredths(hundredths) => hundredths,
    };
    hash.update(width.to_le_bytes());
    hash.update([spread.between_staves]);
    hash.update(slice.musicxml().as_bytes());
    hash.finalize().into()
}

/// Hundredths of a staff height in the library's own unit, within what it takes.
fn staff_hundredths(hundredths: u32) -> u32 {
    (hundredths.clamp(200, 80_000) * 72).div_ceil(100)
}

fn order(slice: &Slice, spread: SystemSpread) -> EngravingOrder {
    let sized = match spread.width {
        Width::Natural => r#""breaks":"none","adjustPageWidth":true,"pageWidth":60000"#.to_owned(),
        // The last line is stretched whatever it holds.
        Width::Hundredths(hundredths) => format!(
            r#""breaks":"encoded","adjustPageWidth":false,"minLastJustification":0,"pageWidth":{}"#,
            staff_hundredths(hundredths)
        ),
    };
    let options = format!(
        r#"{OPTIONS}{sized},"noJustification":false,"mnumInterval":0,"spacingLinear":0.25,"spacingStaff":{}}}"#,
        spread.between_staves.min(48)
    );
    EngravingOrder { options, musicxml: slice.musicxml().to_owned(), seconds: SECONDS }
}
