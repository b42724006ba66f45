//! What the parts in a folder were made from: the record that lies beside them.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What the parts in a folder were made from (`parts.json`).
#[derive(Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PartsMade {
    /// Always `arcata-parts`.
    #[schemars(extend("const" = "arcata-parts"))]
    pub format: String,
    /// Version of this format.
    #[schemars(extend("const" = 1))]
    pub version: u32,
    /// By the name of its files without their endings.
    pub parts: BTreeMap<String, PartMade>,
}

impl PartsMade {
    /// The format's name, which stands in it.
    const FORMAT: &str = "arcata-parts";
    /// The form of the record that this program reads and writes (by definition).
    const VERSION: u32 = 1;

    /// Whether it is of the form that this program reads.
    #[must_use]
    pub fn is_of_today(&self) -> bool {
        self.format == Self::FORMAT && self.version == Self::VERSION
    }
}

impl Default for PartsMade {
    fn default() -> Self {
        Self { format: Self::FORMAT.to_owned(), version: Self::VERSION, parts: BTreeMap::new() }
    }
}

/// One part as it was made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PartMade {
    /// The sum of what it was made from.
    pub made_from: String,
    /// Its files by name, each with its sum (SHA-256, hexadecimal).
    pub files: BTreeMap<String, String>,
    /// How many pages it has.
    pub pages: usize,
    /// What was said of it.
    pub told: Vec<String>,
    /// Whether it was as a part should be.
    pub complete: bool,
}
