//! The one message for a place that is not understood.

use std::fmt;

use super::Typed;

/// What the message offers where it cannot guess.
pub const WAYS: &str = "Places are written 12, 12/3½, \"bar 12, beat 3½\", 41-42 or II: 12.";

/// Why a text is not understood as a place.
///
/// ```
/// let misread = arcata_score::places::passage("12/x").unwrap_err();
/// assert_eq!(
///     misread.to_string(),
///     "expected a beat such as 3, 3½, 3.5, 7/2 or 3+1/3, found \"x\". Places are written 12, 12/3½, \
///      \"bar 12, beat 3½\", 41-42 or II: 12."
/// );
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Misread {
    /// Where in the text.
    pub at: Typed,
    /// What was found there.
    pub found: String,
    /// What belongs there.
    pub expected: &'static str,
    /// What was perhaps meant.
    pub suggestion: Option<String>,
}

impl fmt::Display for Misread {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "expected {}, found {}. ", self.expected, self.found)?;
        match &self.suggestion {
            Some(meant) => write!(out, "Did you mean \"{meant}\"?"),
            None => out.write_str(WAYS),
        }
    }
}

impl std::error::Error for Misread {}
