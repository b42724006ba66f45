//! What checks have found, counted.

use std::fs;

/// A result whose error is a sentence for the person who runs the checks.
pub(crate) type Result<T> = std::result::Result<T, String>;

/// Counts of checks that hold and do not hold.
#[derive(Debug, Default)]
pub(crate) struct CheckOutcome {
    passed: u64,
    failed: u64,
    skipped: u64,
}

impl CheckOutcome {
    /// Counts one check; says so if it does not hold.
    pub(crate) fn check(&mut self, holds: bool, sentence: &str) {
        if holds {
            self.passed += 1;
        } else {
            self.failed += 1;
            println!("NOT SO: {sentence}");
        }
    }

    /// Counts and shows a check that there was nothing for.
    pub(crate) fn left_out(&mut self, sentence: &str) {
        self.skipped += 1;
        println!("left out: {sentence}");
    }

    pub(crate) fn has_failed(&self) -> bool {
        self.failed > 0
    }

    /// Writes the counts where the caller wants them, if it does.
    pub(crate) fn write_counts(&self) -> Result<()> {
        let Some(path) = std::env::var_os("ARCATA_COUNTS") else { return Ok(()) };
        let text = format!("{} {} {}\n", self.passed, self.failed, self.skipped);
        fs::write(&path, text).map_err(|problem| format!("{}: {problem}", path.to_string_lossy()))
    }
}
