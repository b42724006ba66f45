//! Speed of the search for repairs, on one core. A report; nothing here passes or fails.

use std::path::Path;
use std::time::{Duration, Instant};

use arcata_bow::plan::{RepairRequest, repairs};
use arcata_bow::{LineOptions, LineSource, Profile, Reading};

use crate::outcome::Result;
use crate::scores;

const RUNS: u32 = 5;
const CHANGES: usize = 3;
/// A phrase of so many strokes is to take well under 100 ms.
const PHRASE: usize = 60;

/// The slowest phrase of each line, and the whole lines.
pub(crate) fn run(path: &Path) -> Result<()> {
    let opened = scores::open(path)?;
    let score = arcata_score::read(opened.document());
    let (profile, options) = (Profile::default(), LineOptions::default());
    let reading = Reading::new(&score, &profile, &options);
    for part in 0..score.parts.len() {
        for source in reading.sources(part) {
            of_line(&source, &profile);
        }
    }
    Ok(())
}

fn of_line(source: &LineSource<'_>, profile: &Profile) {
    let settings = profile.plan_settings(source.line().instrument);
    let count = source.line().strokes.len();
    let timed = |window: std::ops::Range<usize>| {
        let request = RepairRequest { settings: &settings, window, most: CHANGES, ending: None };
        (0..RUNS)
            .map(|_| {
                let start = Instant::now();
                std::hint::black_box(repairs(source, &request));
                start.elapsed()
            })
            .min()
            .unwrap_or(Duration::ZERO)
    };
    let slowest = (0..count).step_by(PHRASE).map(|first| timed(first..(first + PHRASE).min(count))).max();
    println!(
        "repairs, {CHANGES} changes: {:24} slowest {PHRASE} strokes {:7.1} ms, all {count} strokes {:7.1} ms",
        source.line().name,
        slowest.unwrap_or(Duration::ZERO).as_secs_f64() * 1e3,
        timed(0..count).as_secs_f64() * 1e3
    );
}
