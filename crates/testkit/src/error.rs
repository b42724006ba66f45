//! What went wrong in a fixture, told so that it can be put right at once.

use std::fmt;

/// Where a fixture cannot be understood, and what would have been.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FixtureError {
    /// Line, counted from 1.
    pub line: usize,
    /// Column in characters, counted from 1.
    pub column: usize,
    /// What could have stood there.
    pub expected: String,
    /// What stood there instead; empty at the end of the line.
    pub found: String,
    /// The whole line, for the message.
    pub source_line: String,
}

impl fmt::Display for FixtureError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "line {}, column {}: expected {}", self.line, self.column, self.expected)?;
        match self.found.as_str() {
            "" => write!(out, ", found the end of the line")?,
            found => write!(out, ", found `{found}`")?,
        }
        let indent: String = self
            .source_line
            .chars()
            .take(self.column - 1)
            .map(|c| if c == '\t' { '\t' } else { ' ' })
            .collect();
        write!(out, "\n  {}\n  {indent}^", self.source_line)
    }
}

impl std::error::Error for FixtureError {}

/// The result of reading a piece of a fixture.
pub(crate) type FixtureRead<T> = Result<T, FixtureError>;
