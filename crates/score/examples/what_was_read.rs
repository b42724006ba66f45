//! What is read out of scores, file by file, and how long the reading takes.
//!
//! `cargo run --release -p arcata-score --example what_was_read -- FILE…` prints one line of
//! tab-separated numbers a file; with `--problems` first, the problems too.
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "a measuring program reads files, times and prints"
)]

use std::error::Error;
use std::time::Instant;

use arcata_score::{Part, Score, read};
use arcata_xml::{Limits, open_score};

fn main() -> Result<(), Box<dyn Error>> {
    let mut show_problems = false;
    println!(
        "parse ms\tread ms\tparts\tbars\tnotes\tsounding\tslurs\topen\tbow marks\tdynamics\tswells\twords\ttempos\tproblems\tfile"
    );
    for path in std::env::args().skip(1) {
        if path == "--problems" {
            show_problems = true;
            continue;
        }
        let bytes = std::fs::read(&path)?;
        let start = Instant::now();
        let file = match open_score(bytes, &Limits::default()) {
            Ok(file) => file,
            Err(error) => {
                println!("{path}: {error}");
                continue;
            }
        };
        let parsed = start.elapsed();
        let start = Instant::now();
        let score = read(file.document());
        let lowered = start.elapsed();
        println!("{:.1}\t{:.1}\t{}\t{path}", ms(parsed), ms(lowered), counts(&score));
        if show_problems {
            for problem in &score.problems {
                let place = problem.node.and_then(|node| file.document().element(node));
                let line = place.map(|element| element.line_column().to_string()).unwrap_or_default();
                println!("    {:?} {line}, bar {:?}: {}", problem.kind, problem.bar, problem.message);
            }
        }
    }
    Ok(())
}

fn ms(time: std::time::Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

fn counts(score: &Score) -> String {
    let sum = |count: &dyn Fn(&Part) -> usize| score.parts.iter().map(count).sum::<usize>();
    let marks = |part: &Part| -> usize {
        part.notes.iter().map(|note| usize::from(note.bow_mark.is_some()) + note.more_bow_marks.len()).sum()
    };
    [
        score.parts.len(),
        score.bars.len(),
        sum(&|part| part.notes.len()),
        sum(&|part| part.notes.iter().filter(|note| !note.pitch.is_rest()).count()),
        sum(&|part| part.slurs.len()),
        sum(&|part| part.open_slurs.len()),
        sum(&marks),
        sum(&|part| part.dynamics.len()),
        sum(&|part| part.swells.len()),
        sum(&|part| part.instructions.len()),
        score.tempos.len(),
        score.problems.len(),
    ]
    .map(|number| number.to_string())
    .join("\t")
}
