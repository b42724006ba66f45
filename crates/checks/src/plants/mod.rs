//! Known faults planted in passages of real works: the review must find them.
//!
//! A passage is eight bars of up to four parts of a work of music21's corpus, written in the notation of fixtures.
//! One fault is put in place of some bars, on pitches and at a place drawn by chance from a fixed seed, and the rule it
//! belongs to is asked. A passage in which the rule speaks there before the fault is planted is passed over.

mod alike;
mod beside;
mod class;
mod faults;
mod passage;

use arcata_bow::Profile;
use arcata_review::{Finding, REGISTER, ReviewSettings};
use arcata_score::Instrument;
use arcata_testkit::{Fixture, Random};
use arcata_xml::{Document, Limits};
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::reviewing::PlannedScore;
use crate::setting::CheckSetting;
use crate::{alarms, scores};
use faults::{FAULTS, FigurePlace, PlantedFault};
use passage::{BARS, PlantPassage, Scale, passages};

pub(crate) use class::check as check_class;

/// Plants a rule.
const PLANTS: usize = 200;
/// Passages that are tried for them at most.
const TRIED: usize = 600;
/// Found of a hundred: for each rule, and over all.
const EACH: usize = 90;
const OVERALL: usize = 95;

/// What became of a rule's faults.
struct RuleFaults {
    rule: &'static str,
    planted: usize,
    found: usize,
    /// A fault that was missed, as a fixture.
    missed: Option<String>,
}

/// Plants and counts.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let mut all: Vec<PlantPassage> = Vec::new();
    for path in alarms::works(setting)? {
        all.extend(passages(&arcata_score::read(&scores::document(&path)?)));
    }
    println!("{} passages of {BARS} bars", all.len());
    outcome.check(all.len() >= 100, "there are passages to plant faults in");
    if all.is_empty() {
        return Ok(());
    }
    let mut rows: Vec<RuleFaults> =
        FAULTS.par_iter().enumerate().map(|(number, fault)| row(fault, &all, number)).collect();
    rows.push(beside::row(&all));
    for rule in REGISTER {
        let known = rows.iter().any(|row| row.rule == rule.card.id);
        outcome.check(known, &format!("a fault of the kind {} is planted", rule.card.id));
    }
    for row in &rows {
        let share = row.found * 100 / row.planted.max(1);
        println!("{:28} {:3} planted, {:3} found ({share} %)", row.rule, row.planted, row.found);
        if let Some(missed) = &row.missed {
            println!("  one that is missed:\n{}", missed.trim_end().replace('\n', "\n    "));
        }
        outcome.check(row.planted >= PLANTS, &format!("{}: {PLANTS} faults are planted", row.rule));
        outcome.check(share >= EACH, &format!("{}: {EACH} % of the faults are found", row.rule));
    }
    let (planted, found) = rows.iter().fold((0, 0), |sum, row| (sum.0 + row.planted, sum.1 + row.found));
    println!("{planted} planted, {found} found");
    outcome.check(found * 100 >= planted * OVERALL, &format!("{OVERALL} % of all faults are found"));
    Ok(())
}

fn row(fault: &PlantedFault, all: &[PlantPassage], number: usize) -> RuleFaults {
    let mut random = Random::new(u64::try_from(number).unwrap_or(0) + 1);
    let mut row = RuleFaults { rule: fault.rule, planted: 0, found: 0, missed: None };
    for _ in 0..TRIED {
        if row.planted == PLANTS {
            break;
        }
        let passage = random.pick(all);
        let Some(planted) = plant(fault, passage, &mut random) else { continue };
        let (Some(before), Some(after)) =
            (said(&planted.clean, fault.rule), said(&planted.faulty, fault.rule))
        else {
            continue;
        };
        if before.iter().any(|finding| planted.holds(finding)) && fault.tempo > 0 {
            continue;
        }
        row.planted += 1;
        if after.iter().any(|finding| planted.holds(finding)) {
            row.found += 1;
        } else if row.missed.is_none() {
            row.missed = Some(planted.faulty.text());
        }
    }
    row
}

/// A passage with a fault in it.
struct Planted {
    /// With plain bars where the fault goes.
    clean: PlantPassage,
    faulty: PlantPassage,
    /// Parts and bars in which it is found.
    parts: Vec<usize>,
    bars: (u32, u32),
}

impl Planted {
    fn holds(&self, finding: &Finding) -> bool {
        std::iter::once(&finding.place).chain(&finding.further).any(|place| {
            let part = place.part.is_none_or(|part| self.parts.contains(&part));
            part && (self.bars.0..=self.bars.1).contains(&place.bar)
        })
    }
}

fn plant(fault: &PlantedFault, passage: &PlantPassage, random: &mut Random) -> Option<Planted> {
    let mut clean = passage.clone();
    clean.tempo = Some(if fault.tempo == 0 { 96 } else { fault.tempo });
    let candidates = clean.parts_of(fault.instrument());
    let part = *candidates.get(random.below(candidates.len().max(1)))?;
    match fault.place {
        FigurePlace::Alone => clean.parts = vec![clean.parts[part].clone()],
        FigurePlace::Sections => {
            for (number, line) in clean.parts.iter_mut().enumerate() {
                line.name = format!("{} section {}", plural(line.instrument), number + 1);
            }
        }
        _ => {}
    }
    let part = if fault.place == FigurePlace::Alone { 0 } else { part };
    let bars = fault.figure.split(" | ").count();
    let room = clean.parts[part].bars.len();
    let first = random.below(room + 1 - bars.min(room));
    let scale = Scale::on(clean.parts[part].instrument, random);
    let mut faulty = clean.clone();
    if fault.rule == "entry-without-dynamic" {
        faulty.parts[0].dynamic = "";
    }
    if fault.tempo == 0 {
        faulty.tempo = None;
    }
    if fault.repeat {
        faulty.repeat = Some((first, first + bars - 1));
    }
    let put = |line: &mut passage::PassageLine, figure: &str, scale: &Scale| {
        // Bars hold their own slurs: none runs into the figure.
        for (at, bar) in figure.split(" | ").enumerate().filter(|(_, bar)| !bar.is_empty()) {
            if let Some(place) = line.bars.get_mut(first + at) {
                *place = scale.figure(bar);
            }
        }
    };
    let mut parts = vec![part];
    match fault.place {
        FigurePlace::All => {
            for index in 0..faulty.parts.len() {
                let own = Scale::on(faulty.parts[index].instrument, random);
                // Marks for all players stand in the first part.
                let figure = if index == 0 { fault.figure.to_owned() } else { without_marks(fault.figure) };
                put(&mut faulty.parts[index], &figure, &own);
            }
            parts = (0..faulty.parts.len()).collect();
        }
        FigurePlace::Two(second) => {
            let other = (0..faulty.parts.len()).find(|other| *other != part)?;
            let mut copy = faulty.parts[part].clone();
            copy.name = faulty.parts[other].name.clone();
            copy.instrument = faulty.parts[other].instrument;
            faulty.parts[other] = copy;
            put(&mut faulty.parts[part], fault.figure, &scale);
            put(&mut faulty.parts[other], second, &scale);
            parts.push(other);
        }
        FigurePlace::Wind(second) => {
            let mut flute = faulty.parts[part].clone();
            flute.name = "flute".to_owned();
            flute.instrument = Instrument::NotBowed;
            put(&mut flute, fault.figure, &scale);
            put(&mut faulty.parts[part], second, &scale);
            faulty.parts.push(flute);
        }
        FigurePlace::Any | FigurePlace::Violin | FigurePlace::Alone | FigurePlace::Sections => {
            put(&mut faulty.parts[part], fault.figure, &scale);
        }
    }
    let from = u32::try_from(first).ok()?.saturating_sub(1);
    let to = u32::try_from(first + bars).ok()?;
    let bars = match fault.rule {
        // What is about the whole piece stands at its beginning, or somewhere in it.
        "no-tempo" | "entry-without-dynamic" | "reentry-without-dynamic" | "landmarks-too-far" => {
            (0, u32::MAX)
        }
        _ => (from, to),
    };
    Some(Planted { clean, faulty, parts, bars })
}

fn plural(instrument: Instrument) -> &'static str {
    match instrument {
        Instrument::Violin => "Violins",
        Instrument::Viola => "Violas",
        Instrument::Cello => "Violoncellos",
        _ => "Double Basses",
    }
}

fn without_marks(figure: &str) -> String {
    let kept = figure.split(' ').filter(|word| !word.starts_with("quarter=") && !word.starts_with('['));
    kept.collect::<Vec<_>>().join(" ")
}

/// What one rule says of a passage; `None` where the passage cannot be written.
fn said(passage: &PlantPassage, rule: &str) -> Option<Vec<Finding>> {
    let fixture = Fixture::parse(&passage.text()).ok()?;
    let document = Document::parse(fixture.musicxml().into_bytes(), &Limits::default()).ok()?;
    let settings = ReviewSettings { only: [rule.to_owned()].into(), ..ReviewSettings::default() };
    Some(PlannedScore::apart(document, &Profile::default()).ok()?.findings(&settings))
}
