//! Pages of PDF: the paper, and a board to set text, rules and pictures on; the fonts come along in the program.

mod board;

use std::fmt;

pub use board::{Board, Face, POINTS_A_MILLIMETRE, ReadAs};

/// The paper.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Paper {
    /// 210 by 297 mm.
    #[default]
    A4,
    /// 8½ by 11 inches.
    Letter,
}

/// Why no PDF could be made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PdfError(String);

impl fmt::Display for PdfError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "the PDF could not be made: {}; write .html or .txt instead", self.0)
    }
}

impl std::error::Error for PdfError {}
