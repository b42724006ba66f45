//! An afternoon at the workbench: what undoing, doing again and opening anew take, and how memory grows.
//!
//! `cargo bench -p arcata-workbench --bench afternoon [-- [--opening] [SCORE]]`; without a score on a made-up quartet of 400 bars; with `--opening` memory
//! is not watched, which takes minutes. A report, with the figure
//! that is wanted beside each; nothing here passes or fails.
#![allow(
    clippy::disallowed_methods,
    clippy::disallowed_macros,
    clippy::expect_used,
    reason = "a bench prints"
)]

#[path = "../tests/support/mod.rs"]
mod support;

use std::path::PathBuf;
use std::time::Instant;

use arcata_testkit::{Detail, Random, ScoreShape, random_score};
use arcata_workbench::open_session;
use serde_json::{Value, json};
use support::{Bench, bench_of, get, post};

/// So many proposals are written into the score.
const PROPOSALS: usize = 12;
/// So many acts are in the journal when it is opened anew.
const ACTS: usize = 500;
/// So many acts memory is watched over.
const MANY: usize = 10_000;

fn main() {
    let path = std::env::args().skip(1).find(|argument| !argument.starts_with("--")).map(PathBuf::from);
    let shape = ScoreShape { parts: 4, bars: 400, detail: Detail::Slurs };
    let (name, music) = match path {
        Some(path) => {
            let file =
                arcata_xml::open_score(std::fs::read(&path).expect("a file"), &arcata_xml::Limits::default())
                    .expect("a score");
            (path.display().to_string(), file.document().text().to_owned())
        }
        None => ("a made-up quartet of 400 bars".to_owned(), random_score(7, shape)),
    };
    println!("{name}, {} KB", music.len() / 1000);
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
    let watched = !std::env::args().any(|argument| argument == "--opening");
    runtime.block_on(afternoon(&music, watched));
}

async fn afternoon(music: &str, watched: bool) {
    let bench = bench_of(music);
    let mut desk = Desk { version: 0, lines: lines(&bench).await, random: Random::new(1), bench };
    let fresh = desk.opened_elsewhere(music);
    let mut written = Vec::new();
    for _ in 0..PROPOSALS {
        let start = Instant::now();
        if !desk.take_a_proposal().await {
            break;
        }
        written.push(millis(start));
        for _ in 0..5 {
            desk.bow().await;
        }
    }
    tell(&format!("{} proposals written into the score, each", written.len()), &mut written, "");
    let (mut undone, mut redone) = (Vec::new(), Vec::new());
    while let Some(took) = desk.step("undo").await {
        undone.push(took);
    }
    while let Some(took) = desk.step("redo").await {
        redone.push(took);
    }
    tell("undo", &mut undone, "median at most 30, 95 of 100 at most 80");
    tell("redo", &mut redone, "the same");
    let acts = (PROPOSALS * 6).max(1);
    for _ in acts..ACTS {
        desk.bow().await;
    }
    let anew = desk.opened_anew();
    println!(
        "opened anew with {ACTS} acts {anew:.0} ms, fresh {fresh:.0} ms: {:.2} times (at most 2)",
        anew / fresh
    );
    if !watched {
        return;
    }
    let before = memory();
    for count in ACTS..MANY {
        desk.bow().await;
        if count % 100 == 0 {
            desk.step("undo").await;
        }
    }
    println!("memory after {ACTS} acts {before} MB, after {MANY} {} MB", memory());
}

/// A workbench and what is known of it.
struct Desk {
    bench: Bench,
    version: u64,
    /// For each line, how many strokes it has.
    lines: Vec<u64>,
    random: Random,
}

async fn lines(bench: &Bench) -> Vec<u64> {
    let (_, score) = get(bench, "/api/score").await;
    let score: Value = serde_json::from_str(&score).expect("JSON");
    score["lines"].as_array().into_iter().flatten().filter_map(|line| line["strokes"].as_u64()).collect()
}

impl Desk {
    /// Asks for a bow somewhere.
    async fn bow(&mut self) {
        let line = self.random.below(self.lines.len());
        let stroke = self.random.below(usize::try_from(self.lines[line]).unwrap_or(1).max(1));
        let ask = *self.random.pick(&["down", "up"]);
        let body = json!({
            "line": line, "asks": [{"stroke": stroke, "ask": ask}], "version": self.version, "by": "a bench"
        });
        let (_, done) = post(&self.bench, "/api/bow", &body).await;
        self.version = done["version"].as_u64().unwrap_or(self.version);
    }

    /// Writes the first proposal that can be written into the score; whether there was one.
    async fn take_a_proposal(&mut self) -> bool {
        let (_, found) = get(&self.bench, "/api/findings").await;
        let found: Value = serde_json::from_str(&found).expect("JSON");
        for (index, finding) in found["findings"].as_array().into_iter().flatten().enumerate() {
            let writable = finding["writable"].as_array().into_iter().flatten();
            for (proposal, _) in writable.enumerate().filter(|(_, writable)| writable.as_bool() == Some(true))
            {
                let body =
                    json!({"finding": index, "proposal": proposal, "version": self.version, "by": "a bench"});
                let (status, done) = post(&self.bench, "/api/proposal", &body).await;
                if status.is_success() {
                    self.version = done["version"].as_u64().unwrap_or(self.version);
                    return true;
                }
            }
        }
        false
    }

    /// Undoes or does again; how long it took, milliseconds.
    async fn step(&mut self, what: &str) -> Option<f64> {
        let start = Instant::now();
        let (status, done) = post(&self.bench, &format!("/api/{what}"), &json!({"by": "a bench"})).await;
        let took = millis(start);
        let version = done["version"].as_u64().filter(|version| *version != self.version);
        self.version = version.filter(|_| status.is_success())?;
        Some(took)
    }

    /// Milliseconds to open the score of this desk with all that was done, from a copy.
    fn opened_anew(&self) -> f64 {
        let folder = tempfile::tempdir().expect("a folder");
        for name in ["study.musicxml", "study.acts.jsonl"] {
            std::fs::copy(self.bench.folder.path().join(name), folder.path().join(name)).expect("a copy");
        }
        open(&folder.path().join("study.musicxml"))
    }

    /// Milliseconds to open the score with nothing done.
    fn opened_elsewhere(&self, music: &str) -> f64 {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join("study.musicxml");
        std::fs::write(&path, music).expect("a score");
        open(&path)
    }
}

/// The best of three.
fn open(path: &std::path::Path) -> f64 {
    let once = || {
        let start = Instant::now();
        std::hint::black_box(open_session(path, None).expect("opens"));
        millis(start)
    };
    (0..3).map(|_| once()).fold(f64::INFINITY, f64::min)
}

fn millis(start: Instant) -> f64 {
    start.elapsed().as_secs_f64() * 1e3
}

fn tell(what: &str, times: &mut [f64], wanted: &str) {
    times.sort_by(f64::total_cmp);
    let at = |part: usize| times.get((times.len() * part / 100).min(times.len().saturating_sub(1))).copied();
    println!(
        "{what}: median {:.1} ms, 95 of 100 below {:.1} ms, of {} {wanted}",
        at(50).unwrap_or(0.0),
        at(95).unwrap_or(0.0),
        times.len()
    );
}

/// Resident memory, MB.
fn memory() -> u64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|line| line.starts_with("VmRSS:")).unwrap_or_default();
    line.split_whitespace().nth(1).and_then(|kilobytes| kilobytes.parse::<u64>().ok()).unwrap_or(0) / 1024
}
