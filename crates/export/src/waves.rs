//! Proposals that lie far apart go into one changed score: reading a score anew takes most of the time that a
//! picture of a proposal takes.

use std::collections::BTreeMap;
use std::ops::RangeInclusive;

use arcata_review::{Finding, Proposal};
use arcata_score::Score;
use arcata_xml::{Document, Edit, EditList};

/// Bars around a picture in which a proposal may change the bowing: farther away it is kept.
pub(crate) const AROUND: u32 = 8;

/// One proposal to be drawn.
#[derive(Clone, Debug)]
pub(crate) struct Job<'a> {
    /// Index of the finding, and of the proposal in it.
    pub(crate) at: (usize, usize),
    pub(crate) edits: &'a [Edit],
    pub(crate) parts: Vec<usize>,
    /// Bars of the picture.
    pub(crate) bars: RangeInclusive<u32>,
    /// Bars that may be bowed otherwise.
    pub(crate) near: RangeInclusive<u32>,
}

/// What is changed in the file, or what is sketched for the picture.
pub(crate) fn pictured(proposal: &Proposal) -> &[Edit] {
    if proposal.edits.is_empty() { &proposal.sketch } else { &proposal.edits }
}

/// Jobs that can share a changed score: where two change one part, their bars lie apart.
#[derive(Debug, Default)]
pub(crate) struct Wave<'a> {
    pub(crate) jobs: Vec<Job<'a>>,
}

impl<'a> Wave<'a> {
    fn takes(&self, job: &Job<'a>) -> bool {
        self.jobs.iter().all(|other| {
            let apart = other.near.end() < job.near.start() || job.near.end() < other.near.start();
            let strangers = other.parts.len() == 1 && job.parts.len() == 1 && other.parts != job.parts;
            apart || strangers
        })
    }

    /// The edits of all jobs.
    pub(crate) fn edits(&self) -> Option<EditList> {
        EditList::new(self.jobs.iter().flat_map(|job| job.edits.iter().cloned()).collect()).ok()
    }

    /// For each part that is drawn, the bars that may be bowed otherwise.
    pub(crate) fn near(&self) -> BTreeMap<usize, Vec<RangeInclusive<u32>>> {
        let mut near: BTreeMap<usize, Vec<RangeInclusive<u32>>> = BTreeMap::new();
        for job in &self.jobs {
            for part in &job.parts {
                near.entry(*part).or_default().push(job.near.clone());
            }
        }
        near
    }
}

/// The jobs in as few waves as a first fit gives, in their order.
pub(crate) fn waves(jobs: Vec<Job<'_>>) -> Vec<Wave<'_>> {
    let mut waves: Vec<Wave<'_>> = Vec::new();
    for job in jobs {
        match waves.iter_mut().find(|wave| wave.takes(&job)) {
            Some(wave) => wave.jobs.push(job),
            None => waves.push(Wave { jobs: vec![job] }),
        }
    }
    waves
}

/// Where the bars of a score lie in its text.
pub(crate) struct Bars {
    /// Where notes begin in the text, with their bars, in the order of the text.
    notes: Vec<(usize, u32)>,
}

impl Bars {
    pub(crate) fn new(document: &Document, score: &Score) -> Self {
        let notes = score.parts.iter().flat_map(|part| &part.notes);
        let mut notes: Vec<(usize, u32)> =
            notes.filter_map(|note| Some((document.element(note.node)?.range().start, note.bar))).collect();
        notes.sort_unstable();
        Self { notes }
    }

    /// The bar of the note at or before a place in the text: before a bar's first note that is the bar
    /// before, near enough for what is kept [`AROUND`] it.
    fn bar(&self, at: usize) -> u32 {
        let next = self.notes.partition_point(|(start, _)| *start <= at);
        next.checked_sub(1).or(Some(0)).and_then(|note| self.notes.get(note)).map_or(0, |(_, bar)| *bar)
    }

    /// All bars that a picture shows and its edits touch, and as many around them.
    pub(crate) fn near(&self, bars: &RangeInclusive<u32>, edits: &[Edit]) -> RangeInclusive<u32> {
        let touched = edits.iter().map(|edit| self.bar(edit.range.start));
        let (first, last) =
            touched.fold((*bars.start(), *bars.end()), |(first, last), bar| (first.min(bar), last.max(bar)));
        first.saturating_sub(AROUND)..=last.saturating_add(AROUND)
    }
}

/// The jobs of all findings.
pub(crate) fn jobs<'a>(
    findings: &'a [Finding],
    bars: &Bars,
    of: impl Fn(&Finding) -> (Vec<usize>, RangeInclusive<u32>),
) -> Vec<Job<'a>> {
    let mut jobs = Vec::new();
    for (finding_at, finding) in findings.iter().enumerate() {
        let (parts, shown) = of(finding);
        for (proposal_at, proposal) in finding.proposals.iter().enumerate() {
            let edits = pictured(proposal);
            if !edits.is_empty() {
                jobs.push(Job {
                    at: (finding_at, proposal_at),
                    edits,
                    parts: parts.clone(),
                    near: bars.near(&shown, edits),
                    bars: shown.clone(),
                });
            }
        }
    }
    jobs
}

#[cfg(test)]
mod tests {
    use super::*;

    fn job(at: usize, parts: &[usize], near: RangeInclusive<u32>) -> Job<'static> {
        Job { at: (at, 0), edits: &[], parts: parts.to_vec(), bars: near.clone(), near }
    }

    fn shape(waves: &[Wave<'_>]) -> Vec<Vec<usize>> {
        waves.iter().map(|wave| wave.jobs.iter().map(|job| job.at.0).collect()).collect()
    }

    #[test]
    fn what_lies_apart_shares_a_score() {
        let all = waves(vec![job(0, &[0], 0..=16), job(1, &[0], 17..=30), job(2, &[0], 16..=20)]);
        assert_eq!(shape(&all), [vec![0, 1], vec![2]]);
    }

    #[test]
    fn parts_do_not_disturb_each_other_but_a_finding_about_all_does() {
        let all = waves(vec![job(0, &[0], 0..=16), job(1, &[1], 0..=16), job(2, &[0, 1], 0..=16)]);
        assert_eq!(shape(&all), [vec![0, 1], vec![2]]);
        assert_eq!(all[0].near()[&1], [0..=16]);
    }
}
