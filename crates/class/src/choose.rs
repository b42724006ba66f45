//! Which few passages a sheet shows: the most useful first, of different kinds.

use std::collections::BTreeSet;

use arcata_review::{Finding, Severity};

use crate::{Expected, Task};

/// How useful it is to show a finding; less is more useful. What cannot be played comes first, then what the task trains, then
/// what weighs more, then what can be mended and what comes back.
#[must_use]
pub fn usefulness(finding: &Finding, task: &Task) -> (u8, Severity, bool, std::cmp::Reverse<u32>) {
    let trained =
        Expected::of_id(finding.rule).is_some() || finding.rules().any(|rule| task.trains.contains(rule));
    let weight = match finding.severity {
        Severity::A => 0,
        Severity::B => 2,
        Severity::C => 4,
        Severity::D => 6,
    };
    let untrained = if finding.severity == Severity::A { 1 } else { 3 };
    let rank = weight + if trained { 0 } else { untrained };
    let mended =
        finding.proposals.iter().any(|proposal| !proposal.edits.is_empty() || !proposal.sketch.is_empty());
    (rank, finding.severity, !mended, std::cmp::Reverse(finding.count))
}

/// The kind of a finding: the chapter of its rule; what is missing belongs to none.
fn kind(finding: &Finding) -> &'static str {
    arcata_review::rule(finding.rule).map_or(finding.rule, |rule| rule.card.family.name())
}

/// The findings that a sheet shows, at most as many as the task says: each of another chapter while there are any, then each of
/// another rule.
#[must_use]
pub fn chosen<'a>(findings: &'a [Finding], task: &Task) -> Vec<&'a Finding> {
    let mut order: Vec<&Finding> = findings.iter().collect();
    order.sort_by(|one, other| {
        usefulness(one, task)
            .cmp(&usefulness(other, task))
            .then_with(|| one.place.cmp(&other.place))
            .then_with(|| one.rule.cmp(other.rule))
    });
    let most = task.sheet.passages;
    let mut taken: Vec<usize> = Vec::new();
    let mut kinds: BTreeSet<&str> = BTreeSet::new();
    for (index, finding) in order.iter().enumerate() {
        if taken.len() < most && kinds.insert(kind(finding)) {
            taken.push(index);
        }
    }
    let mut rules: BTreeSet<&str> = taken.iter().map(|index| order[*index].rule).collect();
    for (index, finding) in order.iter().enumerate() {
        if taken.len() < most && !taken.contains(&index) && rules.insert(finding.rule) {
            taken.push(index);
        }
    }
    taken.sort_unstable();
    taken.into_iter().map(|index| order[index]).collect()
}
