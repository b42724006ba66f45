//! The review itself: every rule asked, the findings in one order.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use rayon::prelude::*;

use crate::aside::{Aside, AsideIn, SetAside};
use crate::findings::order;
use crate::one_place::joined;
use crate::{Finding, Findings, Piece, REGISTER, Severity};

/// What to look at and what to leave out.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct ReviewSettings {
    /// Rules that are not asked, by id.
    pub off: BTreeSet<String>,
    /// When not empty, only these rules are asked.
    pub only: BTreeSet<String>,
    /// The lightest severity that is still reported; `None` reports all.
    pub lightest: Option<Severity>,
    /// Only this part (index in the score); findings about the whole score stay.
    pub part: Option<usize>,
    /// Only bars with these indices.
    pub bars: Option<RangeInclusive<u32>>,
    /// What has been set aside.
    pub aside: Aside,
    /// What becomes of several rules that speak at one place.
    pub places: Places,
}

/// What becomes of several rules that speak at one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Places {
    /// One finding with several reasons.
    #[default]
    Joined,
    /// A finding for each rule: for tests and counts of single rules.
    Apart,
}

impl ReviewSettings {
    fn asks(&self, id: &str) -> bool {
        !self.off.contains(id) && (self.only.is_empty() || self.only.contains(id))
    }

    fn keeps(&self, finding: &Finding) -> bool {
        let place = &finding.place;
        let heavy_enough = self.lightest.is_none_or(|lightest| finding.severity <= lightest);
        let part_asked = self.part.is_none_or(|part| place.part.is_none_or(|found| found == part));
        let bar_asked = self.bars.as_ref().is_none_or(|bars| {
            bars.contains(&place.bar) || finding.further.iter().any(|further| bars.contains(&further.bar))
        });
        heavy_enough && part_asked && bar_asked
    }

    /// Ids in these settings that no rule has, so that a slip of the pen is not taken for silence.
    #[must_use]
    pub fn unknown_rules(&self) -> Vec<&str> {
        let known = |id: &&str| REGISTER.iter().any(|rule| rule.card.id == *id);
        self.off.iter().chain(&self.only).map(String::as_str).filter(|id| !known(id)).collect()
    }
}

/// What a review finds, and what it leaves alone.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Reviewed {
    /// The findings, in order of the score, then weight.
    pub findings: Vec<Finding>,
    /// Findings that an entry of [`ReviewSettings::aside`] holds, each of one place, in the same order.
    pub set_aside: Vec<SetAside>,
}

impl Reviewed {
    /// Entries that hold nothing, by index: of rules that were not asked nothing is known.
    #[must_use]
    pub fn unused(&self, settings: &ReviewSettings) -> Vec<usize> {
        let entries = settings.aside.entries.iter().enumerate();
        let unused = entries.filter(|(index, entry)| {
            let asked = entry.rule.as_ref().is_none_or(|rule| settings.asks(rule));
            asked && !self.set_aside.iter().any(|aside| aside.entry == *index)
        });
        unused.map(|(index, _)| index).collect()
    }
}

/// Asks every rule; of several that speak at one place the gravest tells, and the others are its reasons. The result does not depend on the number of threads.
#[must_use]
pub fn reviewed(piece: &Piece<'_>, settings: &ReviewSettings) -> Reviewed {
    let asked: Vec<_> = REGISTER.iter().filter(|rule| settings.asks(rule.card.id)).collect();
    let aside = AsideIn::new(&settings.aside, piece.score);
    let each: Vec<Reviewed> = asked
        .par_iter()
        .map(|rule| {
            let mut found = Findings::new(*piece, rule.card);
            (rule.check)(piece, &mut found);
            found.gathered(&aside)
        })
        .collect();
    let mut all = Reviewed::default();
    for one in each {
        all.findings.extend(one.findings);
        all.set_aside.extend(one.set_aside);
    }
    all.findings.retain(|finding| settings.keeps(finding));
    all.findings.sort_by(|a, b| order(a).cmp(&order(b)));
    if settings.places == Places::Joined {
        all.findings = joined(all.findings);
    }
    all.set_aside.sort_by(|a, b| order(&a.finding).cmp(&order(&b.finding)));
    all
}

/// The findings alone, in order of the score, then weight: those set aside are left out.
#[must_use]
pub fn review(piece: &Piece<'_>, settings: &ReviewSettings) -> Vec<Finding> {
    reviewed(piece, settings).findings
}
