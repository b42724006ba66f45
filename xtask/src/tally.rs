//! Counts, and how they are read out of what test runners print.

use std::ops::AddAssign;

/// How many checks went which way.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct CheckTally {
    pub(crate) passed: u64,
    pub(crate) failed: u64,
    pub(crate) skipped: u64,
}

impl AddAssign for CheckTally {
    fn add_assign(&mut self, other: Self) {
        self.passed += other.passed;
        self.failed += other.failed;
        self.skipped += other.skipped;
    }
}

impl CheckTally {
    /// The plain line that ends a run.
    pub(crate) fn line(self) -> String {
        let skipped = if self.skipped > 0 { format!(", {} skipped", self.skipped) } else { String::new() };
        format!("{} passed, {} failed{skipped}", self.passed, self.failed)
    }

    /// A run that did not end well has failed somewhere, even where no test says so (it did not build).
    #[must_use]
    pub(crate) fn of_run(mut self, well: bool) -> Self {
        if !well && self.failed == 0 {
            self.failed = 1;
        }
        self
    }
}

/// Sums the lines `test result: ok. 3 passed; 0 failed; 1 ignored; …` of cargo's own runner.
pub(crate) fn of_cargo_test(lines: &[String]) -> CheckTally {
    let mut sum = CheckTally::default();
    for line in lines.iter().filter_map(|line| line.trim_start().strip_prefix("test result: ")) {
        sum += counted(line, &["passed"], &["failed"], &["ignored"]);
    }
    sum
}

/// Reads the line `Summary [ 0.5s] 9 tests run: 8 passed (1 slow), 1 failed, 2 skipped` of nextest.
pub(crate) fn of_nextest(lines: &[String]) -> CheckTally {
    let summary = lines.iter().rev().find_map(|line| line.trim_start().strip_prefix("Summary ["));
    summary.map_or_else(CheckTally::default, |line| {
        counted(line, &["passed"], &["failed", "timed", "exec"], &["skipped"])
    })
}

/// Reads the lines `ℹ pass 3`, `ℹ fail 0`, `ℹ cancelled 0` and `ℹ skipped 0` of Node.js.
pub(crate) fn of_node(lines: &[String]) -> CheckTally {
    let count = |name: &str| -> u64 {
        let said = lines.iter().filter_map(|line| line.trim_start().strip_prefix("ℹ "));
        said.filter_map(|line| line.strip_prefix(name)?.strip_prefix(' ')?.trim().parse::<u64>().ok()).sum()
    };
    CheckTally {
        passed: count("pass"),
        failed: count("fail") + count("cancelled"),
        skipped: count("skipped"),
    }
}

/// Sums the numbers that stand before words.
fn counted(line: &str, passed: &[&str], failed: &[&str], skipped: &[&str]) -> CheckTally {
    let words: Vec<&str> =
        line.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    let sum = |names: &[&str]| {
        let pairs = words.windows(2).filter(|pair| names.contains(&pair[1]));
        pairs.filter_map(|pair| pair[0].parse::<u64>().ok()).sum()
    };
    CheckTally { passed: sum(passed), failed: sum(failed), skipped: sum(skipped) }
}

/// Reads the file `passed failed skipped` that `arcata-checks` writes.
pub(crate) fn of_file(text: &str) -> Option<CheckTally> {
    let mut numbers = text.split_whitespace().map(|word| word.parse().ok());
    Some(CheckTally { passed: numbers.next()??, failed: numbers.next()??, skipped: numbers.next()?? })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn lines(text: &str) -> Vec<String> {
        text.lines().map(str::to_owned).collect()
    }

    #[test]
    fn counts_are_read_from_cargo_test() {
        let shown = "running 4 tests\ntest result: ok. 3 passed; 0 failed; 1 ignored; 0 measured; 0 filtered out; finished in 0.00s\n\
                     test result: FAILED. 1 passed; 2 failed; 0 ignored; 0 measured; 0 filtered out";
        assert_eq!(of_cargo_test(&lines(shown)), CheckTally { passed: 4, failed: 2, skipped: 1 });
    }

    #[test]
    fn counts_are_read_from_nextest() {
        let shown = "     Summary [   0.031s] 12 tests run: 9 passed (2 slow), 2 failed, 1 timed out, 3 skipped\n        FAIL [   0.004s] a 1 failed";
        assert_eq!(of_nextest(&lines(shown)), CheckTally { passed: 9, failed: 3, skipped: 3 });
    }

    #[test]
    fn counts_are_read_from_node() {
        let shown =
            "✔ a page opens (3 ms)\nℹ tests 6\nℹ pass 3\nℹ fail 1\nℹ cancelled 1\nℹ skipped 1\nℹ todo 0";
        assert_eq!(of_node(&lines(shown)), CheckTally { passed: 3, failed: 2, skipped: 1 });
    }

    #[test]
    fn a_run_that_did_not_build_has_failed() {
        assert_eq!(of_nextest(&lines("error: could not compile")).of_run(false).line(), "0 passed, 1 failed");
    }

    #[test]
    fn the_last_line_is_plain() {
        let tally = CheckTally { passed: 3, failed: 0, skipped: 0 };
        assert_eq!(tally.line(), "3 passed, 0 failed");
        assert_eq!(CheckTally { skipped: 2, ..tally }.line(), "3 passed, 0 failed, 2 skipped");
    }
}
