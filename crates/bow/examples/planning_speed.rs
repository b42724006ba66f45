//! How fast lines are planned, by length: `cargo run --release --example planning_speed`.
#![expect(
    clippy::disallowed_methods,
    clippy::disallowed_macros,
    reason = "a bench reads the clock and prints"
)]
#![expect(clippy::cast_precision_loss, reason = "for display")]

use std::time::Instant;

use arcata_bow::*;
use arcata_score::{Instrument, Length, Moment, NoteId};

fn stroke(index: usize) -> Stroke {
    let in_bar = index % 5;
    let at = Length::new(i64::try_from(index).unwrap_or(0), 4);
    Stroke {
        notes: vec![NoteId(u32::try_from(index).unwrap_or(0))],
        onset: Moment(at),
        length: Length::QUARTER,
        bar: u32::try_from(index / 5).unwrap_or(0),
        offset: Length::new(i64::try_from(in_bar).unwrap_or(0), 4),
        duration: Seconds::from_micros([250_000, 500_000, 750_000, 1_500_000][index * 7 % 4]),
        silence_after: Seconds::from_micros(if index % 16 == 15 { 400_000 } else { 0 }),
        lendable: Seconds::from_micros(60_000),
        kind: if index % 3 == 0 { StrokeKind::Slurred } else { StrokeKind::Single },
        join: match index {
            0 => Join::Entry,
            _ if index % 16 == 0 => Join::AfterRest,
            _ => Join::Continues,
        },
        printed: None,
        emphasis: Emphasis {
            metric: if in_bar == 0 { MetricPlace::Downbeat } else { MetricPlace::Beat },
            strength: if in_bar == 0 { 100 } else { 30 },
            accent: 0,
        },
        level_start: Loudness(500),
        level_end: Loudness(500),
        speed: SpeedWindow { slowest: 80_000, preferred: 200_000, fastest: 500_000 },
        home: BowInterval::ANYWHERE,
        note_count: 1,
        phrase: PhrasePlace::default(),
    }
}

fn main() {
    println!("{:>9} {:>9} {:>12}", "strokes", "ms", "strokes/s");
    for count in [1_000, 10_000, 100_000, 1_000_000] {
        let line = Line {
            part: 0,
            staff: 1,
            voices: vec![0],
            name: "Violin".into(),
            instrument: Instrument::Violin,
            force: Force::Solo,
            strokes: (0..count).map(stroke).collect(),
            repeats: Vec::new(),
            tempo_written: Written::InScore,
        };
        let settings = PlanSettings::default();
        let rounds = (200_000 / count).clamp(1, 50);
        let mut best = f64::MAX;
        for _ in 0..rounds {
            let began = Instant::now();
            let plan = plan(&line, &settings);
            let took = began.elapsed().as_secs_f64();
            assert_eq!(plan.strokes.len(), count, "every stroke is planned");
            best = best.min(took);
        }
        println!("{count:>9} {:>9.2} {:>12.0}", best * 1000.0, count as f64 / best);
    }
}
