//! One row a file: what a teacher with a folder of scores looks at first.

use arcata_review::{Finding, Severity};

/// A file's row.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SummaryRow {
    /// The file as named.
    pub file: String,
    /// What came of it.
    pub outcome: Outcome,
}

/// What came of a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// It was reviewed.
    Reviewed {
        /// Title, when it has one.
        title: Option<String>,
        /// Bars.
        bars: usize,
        /// Parts played with a bow.
        bowed_parts: usize,
        /// Strokes planned.
        strokes: usize,
        /// Findings of severity A, B, C and D.
        findings: [usize; 4],
        /// Places where the file contradicts itself.
        problems: usize,
    },
    /// It could not be read.
    Unreadable {
        /// What was wrong, and where.
        error: String,
    },
}

/// Findings counted by severity, A first.
#[must_use]
pub fn count(findings: &[Finding]) -> [usize; 4] {
    [Severity::A, Severity::B, Severity::C, Severity::D]
        .map(|severity| findings.iter().filter(|finding| finding.severity == severity).count())
}
