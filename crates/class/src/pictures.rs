//! Pictures as records keep them.

use arcata_report::DrawnPicture;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A picture with what it shows in words.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct KeptPicture {
    /// What goes between `<svg>` and `</svg>`, in millimetres.
    pub svg: String,
    /// Width, mm.
    pub width: f64,
    /// Height, mm.
    pub height: f64,
    /// The same in words.
    pub text: String,
}

impl From<DrawnPicture> for KeptPicture {
    fn from(DrawnPicture { svg, width, height, text }: DrawnPicture) -> Self {
        Self { svg, width, height, text }
    }
}
