//! The figures of `docs/trust.md`: what is measured beside what is to be reached. Long runs are commands of their own; each writes its
//! last figures into a small file, and the page is made from that. A figure that gets worse is shown with the one before.

use std::fs;
use std::process::ExitCode;
use std::time::{SystemTime, UNIX_EPOCH};

use crate::command::{answer, cargo, run};
use crate::places::Folders;
use crate::{fuzz, tools, trust_coverage, trust_faults, trust_soak};

/// The kept figures: name, measured, the one before where that was better, day; between tabulators.
const KEPT: &str = "docs/trust-figures.tsv";
/// The page that shows them.
const PAGE: &str = "docs/trust.md";
/// The section that is made; it is the last one of the page.
const SECTION: &str = "## Figures\n";

/// What reads `deny.toml` (a version that was tried).
const DENY: &str = "0.20.2";

/// What is to be reached.
#[derive(Clone, Copy)]
enum ToBeReached {
    AtLeast(f64),
    AtMost(f64),
}

/// A figure: its name in the file, what it counts, its target, the command that measures it.
struct TrustFigure(&'static str, &'static str, ToBeReached, &'static str);

use ToBeReached::{AtLeast, AtMost};

/// All figures that are to be reached (by definition).
const FIGURES: [TrustFigure; 24] = [
    TrustFigure(
        "kill-points",
        "system calls of writing commands at which the program was killed",
        AtLeast(200.0),
        "faults",
    ),
    TrustFigure(
        "kill-losses",
        "of these, files that were neither the old nor the new one",
        AtMost(0.0),
        "faults",
    ),
    TrustFigure("error-points", "system calls that failed (disk full, disk broken)", AtLeast(50.0), "faults"),
    TrustFigure("error-losses", "of these, files lost, or successes that were none", AtMost(0.0), "faults"),
    TrustFigure("error-untold", "of these, failures that nobody was told", AtMost(0.0), "faults"),
    TrustFigure(
        "power-cuts",
        "power cuts simulated (what was not put on the disk is dropped)",
        AtLeast(50.0),
        "faults",
    ),
    TrustFigure(
        "power-losses",
        "of these, files that were neither the old nor the new one",
        AtMost(0.0),
        "faults",
    ),
    TrustFigure("soak-acts", "acts of a scripted afternoon at the workbench", AtLeast(20_000.0), "soak"),
    TrustFigure("soak-tabs", "tabs that acted at once", AtLeast(3.0), "soak"),
    TrustFigure("soak-reloads", "reloads of the page's data in it", AtLeast(200.0), "soak"),
    TrustFigure("soak-changes", "changes of the score on the disk in it", AtLeast(20.0), "soak"),
    TrustFigure("soak-kills", "times that the program was killed in it", AtLeast(200.0), "soak"),
    TrustFigure("soak-lost", "confirmed acts that were lost", AtMost(0.0), "soak"),
    TrustFigure(
        "soak-memory",
        "growth of memory within a round of 1,000 acts, from its first quarter to its end, %",
        AtMost(15.0),
        "soak",
    ),
    TrustFigure("soak-parallel", "requests at once that were all answered", AtLeast(200.0), "soak"),
    TrustFigure(
        "soak-slow",
        "slow and oversized bodies that were refused while others were answered",
        AtLeast(20.0),
        "soak",
    ),
    TrustFigure("fuzz-targets", "fuzz targets", AtLeast(12.0), "fuzz"),
    TrustFigure("fuzz-hours", "hours of fuzzing by such runs, added up", AtLeast(24.0), "fuzz"),
    TrustFigure(
        "licence-faults",
        "licences, bans and sources that cargo-deny refuses",
        AtMost(0.0),
        "supply",
    ),
    TrustFigure("advisories", "advisories against what is built in", AtMost(0.0), "supply"),
    TrustFigure("lockfiles", "lockfiles that are not as the manifests say", AtMost(0.0), "supply"),
    TrustFigure(
        "coverage-core",
        "lines covered in xml, score, bow, layer and files, the least of them, %",
        AtLeast(95.0),
        "coverage",
    ),
    TrustFigure("coverage-all", "lines covered in all crates, the least of them, %", AtLeast(88.0), ""),
    TrustFigure(
        "mutants",
        "mutants killed in bow, layer, xml and files, the least of them, %",
        AtLeast(90.0),
        "",
    ),
];

/// A figure as it is kept.
#[derive(Clone, Default)]
struct KeptFigure {
    name: String,
    measured: f64,
    /// The figure before, where that was better.
    better_before: Option<f64>,
    day: String,
}

/// `trust [--check | faults | soak | fuzz SECONDS | supply | coverage]`.
pub(crate) fn trust(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let measured = match words.as_slice() {
        [] => Vec::new(),
        ["--check"] => return check(places),
        ["faults"] => trust_faults::faults(places)?,
        ["soak"] => trust_soak::soak(places)?,
        ["supply"] => supply(places)?,
        ["coverage"] => trust_coverage::coverage(places)?,
        ["fuzz", seconds] => fuzzed(places, seconds)?,
        _ => {
            return Err(
                "trust takes --check, faults, soak, fuzz SECONDS, supply, coverage or nothing".to_owned()
            );
        }
    };
    let mut kept = read(places)?;
    for (name, value) in measured {
        put(&mut kept, name, value, &today())?;
    }
    let lines = kept.iter().map(KeptFigure::line).collect::<String>();
    write(places, KEPT, &lines)?;
    let page = page(places, &kept)?;
    write(places, PAGE, &page)?;
    print!("{}", section(&kept));
    Ok(ExitCode::SUCCESS)
}

fn write(places: &Folders, path: &str, text: &str) -> Result<(), String> {
    fs::write(places.root.join(path), text).map_err(|problem| format!("{path}: {problem}"))
}

/// Whether the page shows what is kept.
fn check(places: &Folders) -> Result<ExitCode, String> {
    let there = fs::read_to_string(places.root.join(PAGE)).map_err(|problem| format!("{PAGE}: {problem}"))?;
    if page(places, &read(places)?)? == there {
        return Ok(ExitCode::SUCCESS);
    }
    println!("{PAGE} does not show the figures of {KEPT}: run cargo xtask trust");
    Ok(ExitCode::FAILURE)
}

fn read(places: &Folders) -> Result<Vec<KeptFigure>, String> {
    let text = fs::read_to_string(places.root.join(KEPT)).unwrap_or_default();
    text.lines()
        .map(|line| KeptFigure::read(line).ok_or(format!("{KEPT}: this is no figure: {line}")))
        .collect()
}

impl KeptFigure {
    fn read(line: &str) -> Option<Self> {
        let mut fields = line.split('\t');
        let (name, measured) = (fields.next()?.to_owned(), fields.next()?.parse().ok()?);
        let before = fields.next()?;
        let better_before = if before.is_empty() { None } else { Some(before.parse().ok()?) };
        Some(Self { name, measured, better_before, day: fields.next()?.to_owned() })
    }

    fn line(&self) -> String {
        let before = self.better_before.map_or_else(String::new, |before| before.to_string());
        format!("{}\t{}\t{before}\t{}\n", self.name, self.measured, self.day)
    }
}

impl ToBeReached {
    fn is_met(self, value: f64) -> bool {
        match self {
            Self::AtLeast(least) => value >= least,
            Self::AtMost(most) => value <= most,
        }
    }

    fn is_worse(self, value: f64, than: f64) -> bool {
        match self {
            Self::AtLeast(_) => value < than,
            Self::AtMost(_) => value > than,
        }
    }

    fn said(self) -> String {
        match self {
            Self::AtLeast(least) => format!("at least {least}"),
            Self::AtMost(most) => format!("at most {most}"),
        }
    }
}

/// Puts a measured figure among those that are kept. One that is worse than the best before keeps that beside it.
fn put(kept: &mut Vec<KeptFigure>, name: &str, value: f64, day: &str) -> Result<(), String> {
    let figure =
        FIGURES.iter().find(|figure| figure.0 == name).ok_or(format!("there is no figure {name}"))?;
    let old = kept.iter().position(|one| one.name == name).map(|at| kept.remove(at));
    let best = old.map(|old| old.better_before.unwrap_or(old.measured));
    let better_before = best.filter(|best| figure.2.is_worse(value, *best));
    kept.push(KeptFigure { name: name.to_owned(), measured: value, better_before, day: day.to_owned() });
    kept.sort_by_key(|one| FIGURES.iter().position(|figure| figure.0 == one.name));
    Ok(())
}

/// The page with its last section made anew.
fn page(places: &Folders, kept: &[KeptFigure]) -> Result<String, String> {
    let text = fs::read_to_string(places.root.join(PAGE)).map_err(|problem| format!("{PAGE}: {problem}"))?;
    let by_hand = text.split(SECTION).next().unwrap_or_default().trim_end().to_owned();
    Ok(format!("{by_hand}\n\n{}", section(kept)))
}

fn section(kept: &[KeptFigure]) -> String {
    let mut text = format!(
        "{SECTION}\nMade by `cargo xtask trust` from the last run of each command; targets stand in the program. What was never \
         measured is not reached. Where a figure was better once, that is said.\n\n\
         | what | measured | to be reached | | by |\n|---|--:|---|---|---|\n"
    );
    for TrustFigure(name, what, target, command) in &FIGURES {
        let one = kept.iter().find(|one| one.name == *name);
        let measured = one.map_or_else(
            || "not measured".to_owned(),
            |one| {
                let before = one.better_before.map_or_else(String::new, |best| format!(" (once {best})"));
                format!("{}{before}, {}", one.measured, one.day)
            },
        );
        let met = one.is_some_and(|one| target.is_met(one.measured));
        let by = if command.is_empty() { String::new() } else { format!("`cargo xtask trust {command}`") };
        let said = if met { "reached" } else { "**not reached**" };
        text.push_str(&format!("| {what} | {measured} | {} | {said} | {by} |\n", target.said()));
    }
    text
}

/// The day, as 2026-12-01.
fn today() -> String {
    let seconds = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_secs());
    day_of(seconds / 86_400)
}

/// The day so many days after the first of January 1970, by the calendar's own rule.
fn day_of(days: u64) -> String {
    let leap = |year: u64| (year.is_multiple_of(4) && !year.is_multiple_of(100)) || year.is_multiple_of(400);
    let (mut year, mut left) = (1970, days);
    while left >= 365 + u64::from(leap(year)) {
        left -= 365 + u64::from(leap(year));
        year += 1;
    }
    let months = [31, 28 + u64::from(leap(year)), 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let mut month = 0;
    while left >= months[month] {
        left -= months[month];
        month += 1;
    }
    format!("{year}-{:02}-{:02}", month + 1, left + 1)
}

/// Licences, bans and sources by cargo-deny; advisories where their database can be had; lockfiles.
fn supply(places: &Folders) -> Result<Vec<(&'static str, f64)>, String> {
    let path = tools::path_with(&tools::cargo_tool(places, "cargo-deny", DENY)?);
    let deny = |what: &[&str], manifest: &str| {
        let mut deny = cargo(places, &["deny", "--manifest-path", manifest, "check"]);
        deny.args(what).env("PATH", &path);
        deny
    };
    let mut faults = 0;
    for manifest in ["Cargo.toml", "fuzz/Cargo.toml"] {
        let ran = run(&mut deny(&["licenses", "bans", "sources"], manifest), "  ")?;
        let refused = ran.lines.iter().filter(|line| line.starts_with("error")).count();
        faults += if ran.well { 0 } else { refused.max(1) };
    }
    let mut measured = vec![("licence-faults", faults as f64)];
    let ran = run(&mut deny(&["advisories"], "Cargo.toml"), "  ")?;
    if ran.lines.iter().any(|line| line.contains("advisories ok") || line.contains("advisories FAILED")) {
        let found = ran.lines.iter().filter(|line| line.starts_with("error[")).count();
        measured.push(("advisories", found as f64));
    } else {
        println!("  the database of advisories cannot be had here: they are not measured");
    }
    let stale = ["Cargo.toml", "fuzz/Cargo.toml"].into_iter().filter(|manifest| {
        let arguments = ["metadata", "--locked", "--format-version", "1", "--manifest-path", manifest];
        answer(&mut cargo(places, &arguments)).is_none()
    });
    measured.push(("lockfiles", stale.count() as f64));
    Ok(measured)
}

/// Every fuzz target for so many seconds; what they took together is added to what is kept.
fn fuzzed(places: &Folders, seconds: &str) -> Result<Vec<(&'static str, f64)>, String> {
    let seconds: u32 = seconds.parse().map_err(|_| "trust fuzz takes a number of seconds".to_owned())?;
    let tally = fuzz::fuzz_for(places, seconds)?;
    if tally.failed > 0 {
        return Err("a target failed; make what it found a named case first".to_owned());
    }
    let before = read(places)?.iter().find(|one| one.name == "fuzz-hours").map_or(0.0, |one| one.measured);
    // Targets run side by side: no more of them at once than there are cores.
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    let busy = (tally.passed as usize).min(cores) as f64;
    let hours = before + busy * f64::from(seconds) / 3600.0;
    Ok(vec![("fuzz-targets", tally.passed as f64), ("fuzz-hours", (hours * 100.0).round() / 100.0)])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_page_shows_what_is_kept() {
        let root = std::path::PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..");
        let places = Folders { cache: root.clone(), target: root.clone(), root };
        let there = fs::read_to_string(places.root.join(PAGE)).expect("the page");
        let made = page(&places, &read(&places).expect("figures")).expect("the page");
        assert_eq!(made, there, "{PAGE} is not what {KEPT} says: run cargo xtask trust");
    }

    #[test]
    fn days_are_the_calendars() {
        assert_eq!(day_of(0), "1970-01-01");
        assert_eq!(day_of(11_016), "2000-02-29");
        assert_eq!(day_of(20_788), "2026-12-01");
    }

    #[test]
    fn what_gets_worse_keeps_what_was_better() {
        let mut kept = Vec::new();
        for value in [20_000.0, 15_000.0, 16_000.0] {
            put(&mut kept, "soak-acts", value, "2026-12-01").expect("a figure");
        }
        assert_eq!((kept[0].measured, kept[0].better_before), (16_000.0, Some(20_000.0)));
        assert!(section(&kept).contains("16000 (once 20000), 2026-12-01 | at least 20000 | **not reached**"));
        put(&mut kept, "soak-acts", 21_000.0, "2026-12-02").expect("a figure");
        assert_eq!(kept[0].better_before, None);
        put(&mut kept, "soak-lost", 1.0, "2026-12-02").expect("a figure");
        assert!(section(&kept).contains("| 1, 2026-12-02 | at most 0 | **not reached**"));
        let again = KeptFigure::read(kept[0].line().trim_end_matches('\n')).expect("a line");
        assert_eq!((again.measured, again.better_before), (kept[0].measured, None));
        assert!(put(&mut kept, "no-such", 1.0, "").is_err());
    }
}
