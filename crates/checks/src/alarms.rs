//! How often the review speaks on works that have been played for a century or two: findings per 100 bars, by
//! rule and severity.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

use arcata_bow::Profile;
use arcata_review::{Finding, REGISTER, ReviewSettings, Severity};
use arcata_testkit::Random;
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::reader;
use crate::reviewing::PlannedScore;
use crate::scores;
use crate::setting::CheckSetting;

/// What is allowed per 100 bars, in hundredths.
const TARGETS: [(Severity, u64); 3] = [(Severity::A, 20), (Severity::B, 200), (Severity::C, 450)];

/// Findings counted.
#[derive(Default)]
struct Alarms {
    works: usize,
    bars: u64,
    /// Findings by severity: one for a place, whatever the number of its reasons.
    findings: BTreeMap<Severity, u64>,
    /// By rule and severity: how often the rule speaks, first or as a further reason, and places.
    found: BTreeMap<(&'static str, Severity), (u64, u64)>,
}

impl Alarms {
    fn add(&mut self, bars: usize, findings: &[Finding]) {
        self.works += 1;
        self.bars += bars as u64;
        for finding in findings {
            *self.findings.entry(finding.severity).or_default() += 1;
            let (count, places) = self.found.entry((finding.rule, finding.severity)).or_default();
            *count += 1;
            *places += u64::from(finding.count);
            for reason in &finding.reasons {
                let (count, places) = self.found.entry((reason.rule, reason.severity)).or_default();
                *count += 1;
                *places += 1;
            }
        }
    }

    fn of(&self, severity: Severity) -> u64 {
        self.findings.get(&severity).copied().unwrap_or_default()
    }

    /// What the rules say at a severity, further reasons counted as well.
    fn said(&self, severity: Severity) -> u64 {
        self.found.iter().filter(|((_, found), _)| *found == severity).map(|(_, (count, _))| count).sum()
    }

    /// Findings per 100 bars, in hundredths, rounded.
    fn rate(&self, count: u64) -> u64 {
        (count * 10_000 + self.bars / 2) / self.bars.max(1)
    }

    /// A table in Markdown: rules in the order of the manual.
    fn table(&self) -> String {
        let mut out = format!(
            "{} works, {} bars. Per 100 bars (places in brackets). Of several rules that speak at one place one is the finding, \
             the others are its reasons.\n\n",
            self.works, self.bars
        );
        out.push_str("| rule | A | B | C | D |\n|---|---|---|---|---|\n");
        let said = |count: u64| format!("{}.{:02}", self.rate(count) / 100, self.rate(count) % 100);
        let severities = [Severity::A, Severity::B, Severity::C, Severity::D];
        for rule in REGISTER {
            let cells: Vec<String> = severities
                .iter()
                .map(|severity| match self.found.get(&(rule.card.id, *severity)) {
                    Some((count, places)) => format!("{} ({})", said(*count), said(*places)),
                    None => String::new(),
                })
                .collect();
            let _ = writeln!(out, "| {} | {} |", rule.card.id, cells.join(" | "));
        }
        let spoken: Vec<String> = severities.iter().map(|severity| said(self.said(*severity))).collect();
        let _ = writeln!(out, "| all that rules say | {} |", spoken.join(" | "));
        let sums: Vec<String> = severities.iter().map(|severity| said(self.of(*severity))).collect();
        let _ = writeln!(out, "| **findings** | {} |", sums.join(" | "));
        out
    }
}

/// Works of bowed strings with at least so many bars: shorter files are exercises and scraps.
const SHORTEST: usize = 16;

/// The review of music21's corpus: the table, and what is allowed.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let alarms = count(&works(setting)?, |_, _| ())?;
    println!("{}", alarms.table());
    outcome.check(alarms.works >= 20, "the corpus holds works for strings");
    for (severity, most) in TARGETS {
        let rate = alarms.rate(alarms.of(severity));
        let sentence = format!(
            "at most {}.{:02} findings of severity {severity} per 100 bars, and there are {}.{:02}",
            most / 100,
            most % 100,
            rate / 100,
            rate % 100
        );
        outcome.check(rate <= most, &sentence);
    }
    Ok(())
}

/// Works of the corpus in which at least two parts are bowed and named as such.
pub(crate) fn works(setting: &CheckSetting) -> Result<Vec<PathBuf>> {
    let mut works = Vec::new();
    for entry in reader::dump(setting)?.iter().filter(|entry| entry["group"] == "corpus") {
        let path = PathBuf::from(entry["path"].as_str().ok_or("the dump has an entry without a path")?);
        let Ok(file) = scores::open(&path) else { continue };
        let score = arcata_score::read(file.document());
        let bowed = score.parts.iter().filter(|part| part.instrument.is_bowed()).count();
        if bowed >= 2 && score.bars.len() >= SHORTEST {
            works.push(path);
        }
    }
    works.sort();
    works.dedup();
    Ok(works)
}

fn count(paths: &[PathBuf], mut see: impl FnMut(&Path, &Finding)) -> Result<Alarms> {
    let profile = Profile::default();
    let reviewed: Vec<Result<(usize, Vec<Finding>)>> = paths
        .par_iter()
        .map(|path| {
            let desk = PlannedScore::new(scores::document(path)?, &profile)?;
            Ok((desk.score().bars.len(), desk.findings(&ReviewSettings::default())))
        })
        .collect();
    let mut alarms = Alarms::default();
    for (path, reviewed) in paths.iter().zip(reviewed) {
        let (bars, findings) = reviewed?;
        alarms.add(bars, &findings);
        findings.iter().for_each(|finding| see(path, finding));
    }
    Ok(alarms)
}

/// The table for files that the user names; with `--show RULE` every finding of a rule, with `--draw COUNT` some
/// drawn by chance from a fixed seed, for reading by hand; `--seed NUMBER` draws others.
pub(crate) fn run(setting: &CheckSetting, arguments: &[String]) -> Result<()> {
    let (mut show, mut draw, mut seed, mut paths) = (Vec::new(), 0, DRAW_SEED, Vec::new());
    let mut rest = arguments.iter();
    while let Some(argument) = rest.next() {
        match argument.as_str() {
            "--show" => show.push(rest.next().ok_or("--show wants a rule")?.clone()),
            "--draw" => {
                draw = rest.next().and_then(|count| count.parse().ok()).ok_or("--draw wants a number")?
            }
            "--seed" => {
                seed = rest.next().and_then(|seed| seed.parse().ok()).ok_or("--seed wants a number")?
            }
            path => paths.push(PathBuf::from(path)),
        }
    }
    if paths.is_empty() {
        paths = works(setting)?;
    }
    let mut all: Vec<String> = Vec::new();
    let alarms = count(&paths, |path, finding| {
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        let said = format!(
            "{} {} [{name}] {} {} {}: {}",
            finding.severity,
            finding.rule,
            finding.place.movement.as_deref().unwrap_or_default(),
            finding.place.section,
            finding.count,
            arcata_languages::Wording::default().say(&finding.sentence)
        );
        if show.iter().any(|rule| rule == finding.rule) {
            println!("{said}");
        }
        for reason in finding.reasons.iter().filter(|reason| show.iter().any(|rule| rule == reason.rule)) {
            println!(
                "{} {} [{name}] beside {}: {}",
                reason.severity,
                reason.rule,
                finding.rule,
                arcata_languages::Wording::default().say(&reason.sentence)
            );
        }
        all.push(said);
    })?;
    let mut random = Random::new(seed);
    for _ in 0..draw {
        if !all.is_empty() {
            println!("{}", all.swap_remove(random.below(all.len())));
        }
    }
    println!("{}", alarms.table());
    Ok(())
}

/// Any number: the same findings are drawn on every run.
const DRAW_SEED: u64 = 11;
