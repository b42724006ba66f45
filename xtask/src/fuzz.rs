//! Fuzz targets: built, then run for a minute each, side by side.

use std::fs;
use std::path::Path;
use std::thread;

use crate::command::{answer, run, run_showing};
use crate::places::Folders;
use crate::tally::CheckTally;
use crate::tools::Fuzzer;

const SECONDS: u32 = 60;
/// The longest that one input may take: anything slower is a hang to a person, too.
const SECONDS_AN_INPUT: u32 = 10;
const MEGABYTES: u32 = 2048;
/// Large enough for a small score with every kind of element.
const LONGEST_INPUT: u32 = 16384;

/// Builds and runs every target; each counts as one check.
pub(crate) fn fuzz(places: &Folders) -> Result<CheckTally, String> {
    fuzz_for(places, SECONDS)
}

/// The same, so many seconds each.
pub(crate) fn fuzz_for(places: &Folders, seconds: u32) -> Result<CheckTally, String> {
    if !places.root.join("fuzz").join("Cargo.toml").is_file() {
        return Err("there is no fuzz/Cargo.toml".to_owned());
    }
    let fuzzer = Fuzzer::find(places)?;
    let listed = answer(&mut fuzzer.command(places, &["list"])).unwrap_or_default();
    let targets: Vec<&str> = listed.split_whitespace().collect();
    if targets.is_empty() {
        return Err("cargo fuzz lists no targets in fuzz/".to_owned());
    }
    let built_in = places.target.join("fuzz").to_string_lossy().into_owned();
    let build = run(&mut fuzzer.command(places, &["build", "--target-dir", &built_in]), "  ")?;
    if !build.well {
        return Ok(CheckTally { failed: targets.len() as u64, ..CheckTally::default() });
    }
    let results: Vec<Result<bool, String>> = thread::scope(|scope| {
        let running: Vec<_> = targets
            .iter()
            .map(|target| scope.spawn(|| run_target(places, &fuzzer, (target, seconds), &built_in)))
            .collect();
        let ended = running.into_iter().map(|thread| thread.join());
        ended.map(|ended| ended.unwrap_or_else(|_| Err("the run was cut off".to_owned()))).collect()
    });
    let mut tally = CheckTally::default();
    for (target, result) in targets.iter().zip(results) {
        if result? {
            tally.passed += 1;
        } else {
            println!("  fuzz target {target} failed; the input that shows it is named above");
            tally.failed += 1;
        }
    }
    Ok(tally)
}

fn run_target(
    places: &Folders,
    fuzzer: &Fuzzer,
    (target, seconds): (&str, u32),
    built_in: &str,
) -> Result<bool, String> {
    let kept = places.cache.join("fuzz").join(target);
    let corpus = kept.join("corpus");
    let artifacts = kept.join("artifacts");
    for folder in [&corpus, &artifacts] {
        fs::create_dir_all(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    }
    let mut command = fuzzer.command(places, &["run", "--target-dir", built_in, target]);
    command.arg(&corpus);
    // The first folder grows, the others are only read.
    let seeds =
        [Path::new("fuzz").join("seeds").join(target), Path::new("fuzz").join("seeds"), "demo".into()];
    command.args(seeds.iter().filter(|folder| places.root.join(folder).is_dir()));
    command.arg("--").args([
        format!("-max_total_time={seconds}"),
        format!("-timeout={SECONDS_AN_INPUT}"),
        format!("-rss_limit_mb={MEGABYTES}"),
        format!("-max_len={LONGEST_INPUT}"),
        "-verbosity=0".to_owned(),
        "-print_final_stats=1".to_owned(),
        format!("-artifact_prefix={}/", artifacts.display()),
    ]);
    Ok(run_showing(&mut command, &format!("  {target}: "), is_no_dictionary)?.well)
}

/// The words that a target came upon fill a screen each and tell nothing of how it went.
fn is_no_dictionary(line: &str) -> bool {
    !(line.contains("# Uses: ") || line.starts_with("###### "))
}
