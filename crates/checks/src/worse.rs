//! Every proposal that changes the file, made at the place where the review offers it in real works: the finding is
//! gone, nothing as bad has come in the bars around, and the file is as valid as before.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use arcata_bow::Profile;
use arcata_review::{AtOnePlace, Finding, FindingPlace, Proposal, ReviewSettings};
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::reviewing::PlannedScore;
use crate::setting::{CheckSetting, write};
use crate::{alarms, laws, scores};

/// Bars around a place in which nothing as bad may come.
const AROUND: u32 = 4;
/// Proposals of one rule that are tried in one work.
const EACH: usize = 3;
/// Of a hundred proposals so many must take the finding away and bring nothing as bad; the others are shown (counted: 479 of
/// 486, since each is tried in the bars around before it is offered; what lies farther off is not seen there).
const SHARE: usize = 97;
/// Files that are written and validated, of every so many proposals one.
const VALIDATED: usize = 5;

/// Every rule for itself, so that it is known whose proposal is made.
fn apart() -> ReviewSettings {
    ReviewSettings { places: AtOnePlace::Apart, ..ReviewSettings::default() }
}

/// What became of a proposal.
struct Tried {
    rule: &'static str,
    said: String,
    /// The finding is still there.
    stays: bool,
    /// A finding of the same or greater weight that was not there before.
    fresh: Option<String>,
    written: Option<(PathBuf, PathBuf)>,
}

/// Asks everything.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let folder = setting.scratch("worse")?;
    let works = alarms::works(setting)?;
    let tried: Vec<Result<Vec<Tried>>> =
        works.par_iter().enumerate().map(|(number, path)| of_work(path, &folder, number)).collect();
    let tried: Vec<Tried> = tried.into_iter().collect::<Result<Vec<_>>>()?.into_iter().flatten().collect();
    let mut counts: BTreeMap<&str, (usize, usize)> = BTreeMap::new();
    for one in &tried {
        let count = counts.entry(one.rule).or_default();
        count.0 += 1;
        count.1 += usize::from(!one.stays && one.fresh.is_none());
        if one.stays {
            println!("still there: {}", one.said);
        }
        if let Some(fresh) = &one.fresh {
            println!("as bad: {}: {fresh}", one.said);
        }
    }
    let well: usize = counts.values().map(|(_, well)| well).sum();
    let sentence = format!("{SHARE} % of the proposals do what they say: {well} of {}", tried.len());
    outcome.check(well * 100 >= tried.len() * SHARE, &sentence);
    let told: Vec<String> = counts.iter().map(|(rule, (all, well))| format!("{rule} {well}/{all}")).collect();
    println!("{} proposals made in {} works: {}", tried.len(), works.len(), told.join(", "));
    outcome.check(tried.len() >= 50, "proposals were made");
    let pairs: Vec<(PathBuf, PathBuf)> = tried.into_iter().filter_map(|one| one.written).collect();
    let result = laws::validate(setting, &folder, &pairs, outcome);
    if !outcome.has_failed() {
        let _ = fs::remove_dir_all(&folder);
    }
    result
}

/// The same for files that the user names: a report.
pub(crate) fn run(setting: &CheckSetting, arguments: &[String]) -> Result<()> {
    let folder = setting.scratch("worse")?;
    let tried: Vec<Result<Vec<Tried>>> = arguments
        .par_iter()
        .enumerate()
        .map(|(number, path)| of_work(Path::new(path), &folder, number))
        .collect();
    let mut counts: BTreeMap<&str, (usize, usize, usize)> = BTreeMap::new();
    for one in tried.into_iter().collect::<Result<Vec<_>>>()?.into_iter().flatten() {
        let count = counts.entry(one.rule).or_default();
        count.0 += 1;
        count.1 += usize::from(one.stays);
        count.2 += usize::from(one.fresh.is_some());
        if one.stays || one.fresh.is_some() {
            println!("{}: stays {}, fresh {:?}", one.said, one.stays, one.fresh);
        }
    }
    for (rule, (all, stay, fresh)) in counts {
        println!("{rule}: {all} made, {stay} stay, {fresh} bring something as bad");
    }
    let _ = fs::remove_dir_all(&folder);
    Ok(())
}

fn of_work(path: &Path, folder: &Path, number: usize) -> Result<Vec<Tried>> {
    let desk = PlannedScore::apart(scores::document(path)?, &Profile::default())?;
    let all = desk.findings(&apart());
    let mut seen: BTreeMap<&str, usize> = BTreeMap::new();
    let mut tried = Vec::new();
    for finding in &all {
        for proposal in finding.proposals.iter().filter(|proposal| !proposal.edits.is_empty()) {
            let count = seen.entry(finding.rule).or_default();
            *count += 1;
            if *count > EACH {
                continue;
            }
            let one = made(path, &desk, &all, finding, proposal)?;
            let after = one.1;
            let mut one = one.0;
            if tried.len() % VALIDATED == 0 {
                let written = folder.join(format!("{number}-{}.musicxml", tried.len()));
                write(&written, after.document().bytes())?;
                one.written = Some((path.to_owned(), written));
            }
            tried.push(one);
        }
    }
    Ok(tried)
}

fn made(
    path: &Path,
    desk: &PlannedScore,
    all: &[Finding],
    finding: &Finding,
    proposal: &Proposal,
) -> Result<(Tried, PlannedScore)> {
    let said = format!(
        "{}: {} {}, bar {}: {}",
        path.file_stem().unwrap_or_default().to_string_lossy(),
        finding.rule,
        finding.place.section,
        finding.place.bar_label,
        arcata_languages::Wording::default().say(&proposal.sentence)
    );
    let after = desk.with(&proposal.edits).map_err(|problem| format!("{said}: {problem}"))?;
    let found = after.findings(&apart());
    let stays = found
        .iter()
        .filter(|left| left.rule == finding.rule)
        .any(|left| places(left).any(|place| places(finding).any(|was| same_place(place, was))));
    let near = |place: &FindingPlace| {
        places(finding).any(|was| place.bar.abs_diff(was.bar) <= AROUND && shares_part(place, was))
    };
    let fresh = found.iter().filter(|fresh| fresh.severity <= finding.severity).find(|fresh| {
        places(fresh).any(|place| {
            let known = all.iter().any(|was| {
                was.rule == fresh.rule
                    && was.severity <= fresh.severity
                    && places(was).any(|was| same_place(place, was))
            });
            near(place) && !known
        })
    });
    let fresh = fresh
        .map(|fresh| format!("{} {}", fresh.rule, arcata_languages::Wording::default().say(&fresh.sentence)));
    Ok((Tried { rule: finding.rule, said, stays, fresh, written: None }, after))
}

fn places(finding: &Finding) -> impl Iterator<Item = &FindingPlace> {
    std::iter::once(&finding.place).chain(&finding.further)
}

fn shares_part(one: &FindingPlace, other: &FindingPlace) -> bool {
    one.part.is_none() || other.part.is_none() || one.part == other.part
}

fn same_place(one: &FindingPlace, other: &FindingPlace) -> bool {
    (one.part, one.bar, one.beat) == (other.part, other.bar, other.beat)
}
