//! How many lines of the core the tests run through: cargo-llvm-cov over the crates that read, plan and write, and over those that use
//! them most. Test code itself does not count, and examples in documents run without counters.

use std::collections::BTreeMap;

use crate::command::{cargo, run};
use crate::places::Folders;
use crate::tools;

/// The crates whose least is told, by their folders.
const CORE: [&str; 5] = ["xml", "score", "bow", "layer", "files"];
/// Crates whose tests run through the core, too, and that build without the engraving library.
const USERS: [&str; 3] = ["review", "analysis", "habits"];
/// What counts (a version that was tried).
const LLVM_COV: &str = "0.9.1";
/// So many files that lack most are listed (rule of thumb).
const LISTED: usize = 20;

/// Lines: how many there are, and how many were run through.
#[derive(Clone, Copy, Debug, Default)]
struct LineCoverage {
    all: u64,
    covered: u64,
}

impl LineCoverage {
    fn percent(self) -> f64 {
        if self.all == 0 { 100.0 } else { (self.covered as f64 * 1000.0 / self.all as f64).floor() / 10.0 }
    }
}

/// Runs the tests of the core with counters in it; the least of its crates.
pub(crate) fn coverage(places: &Folders) -> Result<Vec<(&'static str, f64)>, String> {
    let path = tools::path_with(&tools::cargo_tool(places, "cargo-llvm-cov", LLVM_COV)?);
    let report = places.target.join("coverage.info");
    // Counters change every crate that is built in: those have a folder of their own, beside the tests'.
    let mut tests = cargo(places, &["llvm-cov", "nextest", "--locked", "--lcov", "--output-path"]);
    tests.arg(&report).env("PATH", &path);
    let tested = CORE.iter().chain(&USERS);
    tests.args(tested.flat_map(|name| ["--package".to_owned(), format!("arcata-{name}")]));
    if !run(&mut tests, "  ")?.well {
        return Err("the tests failed with counters in them; see above".to_owned());
    }
    let text =
        std::fs::read_to_string(&report).map_err(|problem| format!("{}: {problem}", report.display()))?;
    let code = |file: &str| std::fs::read_to_string(file).map_or(0, |source| before_tests(&source));
    let files = read(&text, code).ok_or("the report of cargo-llvm-cov is not understood")?;
    let mut crates: BTreeMap<&str, LineCoverage> = BTreeMap::new();
    let mut lacking: Vec<(u64, &str, LineCoverage)> = Vec::new();
    for (file, lines) in &files {
        let Some((name, inside)) = of_the_core(file) else { continue };
        let whole = crates.entry(name).or_default();
        *whole = LineCoverage { all: whole.all + lines.all, covered: whole.covered + lines.covered };
        lacking.push((lines.all - lines.covered, inside, *lines));
    }
    lacking.sort_by(|one, other| other.0.cmp(&one.0).then(one.1.cmp(other.1)));
    println!("| crate | lines | covered, % |\n|---|--:|--:|");
    for (name, lines) in &crates {
        println!("| {name} | {} | {} |", lines.all, lines.percent());
    }
    println!("\n| files that lack most | lines not run through | covered, % |\n|---|--:|--:|");
    for (missing, file, lines) in lacking.iter().take(LISTED) {
        println!("| {file} | {missing} | {} |", lines.percent());
    }
    let least = crates.values().map(|lines| lines.percent()).fold(f64::INFINITY, f64::min);
    if crates.len() < CORE.len() {
        return Err("the report lacks a crate of the core".to_owned());
    }
    Ok(vec![("coverage-core", least)])
}

/// The crate of a source file of the core, and the file from its crate on; nothing for code of tests.
fn of_the_core(file: &str) -> Option<(&'static str, &str)> {
    let (_, inside) = file.rsplit_once("/crates/")?;
    let name = CORE
        .into_iter()
        .find(|name| inside.strip_prefix(name).is_some_and(|rest| rest.starts_with("/src/")))?;
    let is_test = inside.split('/').any(|piece| matches!(piece, "tests" | "tests.rs"));
    (!is_test).then_some((name, inside))
}

/// Files and their lines in a report in the form of lcov: `SF` names a file, `DA` a line of it and how often that was run through,
/// `end_of_record` ends it. `code` says how many lines of a file come before its own tests.
fn read(text: &str, code: impl Fn(&str) -> usize) -> Option<Vec<(String, LineCoverage)>> {
    let mut files = Vec::new();
    let (mut name, mut end, mut lines) = (None, 0, LineCoverage::default());
    for line in text.lines() {
        match line.split_once(':') {
            Some(("SF", file)) => {
                end = code(file);
                name = Some(file.replace('\\', "/"));
            }
            Some(("DA", counted)) => {
                let (number, count) = counted.split_once(',')?;
                let count = count.split(',').next()?;
                if number.parse::<usize>().ok()? <= end {
                    lines.all += 1;
                    lines.covered += u64::from(count.parse::<u64>().ok()? > 0);
                }
            }
            _ if line == "end_of_record" => files.push((name.take()?, std::mem::take(&mut lines))),
            _ => {}
        }
    }
    (!files.is_empty()).then_some(files)
}

/// How many lines of a source come before the tests at its end.
fn before_tests(source: &str) -> usize {
    let mut code = 0;
    for line in source.lines() {
        if line == "#[cfg(test)]" {
            break;
        }
        code += 1;
    }
    code
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn code_of_tests_does_not_count() {
        assert_eq!(of_the_core("/a/crates/bow/src/plan/mod.rs"), Some(("bow", "bow/src/plan/mod.rs")));
        assert_eq!(of_the_core("/a/crates/bow/src/plan/tests.rs"), None);
        assert_eq!(of_the_core("/a/crates/bow/src/plan/tests/rows.rs"), None);
        assert_eq!(of_the_core("/a/crates/review/src/lib.rs"), None);
        assert_eq!(of_the_core("/a/crates/xml/tests/laws.rs"), None);
    }

    #[test]
    fn lines_are_read_from_a_report() {
        let text = "TN:\nSF:/a/b.rs\nDA:1,4\nDA:2,0\nDA:9,1\nLF:3\nLH:2\nend_of_record\n";
        let found = read(text, |_| 8).expect("a report");
        assert_eq!((found[0].1.all, found[0].1.covered), (2, 1));
        assert!((found[0].1.percent() - 50.0).abs() < 0.01);
        assert!(read("", |_| 8).is_none() && read("DA:many", |_| 8).is_none());
    }

    #[test]
    fn the_tests_at_the_end_of_a_file_are_none_of_its_code() {
        assert_eq!(before_tests("one\ntwo\n\n#[cfg(test)]\nmod tests {\n}\n"), 3);
        assert_eq!(before_tests("one\n    #[cfg(test)]\n    hidden();\n"), 3);
    }
}
