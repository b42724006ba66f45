//! Pictures as records keep them.

use arcata_report::Drawn;
use serde::{Deserialize, Serialize};

/// A picture with what it shows in words.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Kept {
    /// What goes between `<svg>` and `</svg>`, in millimetres.
    pub svg: String,
    /// Width, mm.
    pub width: f64,
    /// Height, mm.
    pub height: f64,
    /// The same in words.
    pub text: String,
}

impl From<Drawn> for Kept {
    fn from(Drawn { svg, width, height, text }: Drawn) -> Self {
        Self { svg, width, height, text }
    }
}
