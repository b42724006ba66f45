//! The review itself: every rule asked, the findings in one order.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;
use std::sync::Arc;

use arcata_bow::{Line, Plan, Reading};
use arcata_score::{Beginning, Score};
use rayon::prelude::*;

use crate::aside::{Aside, AsideIn, SetAside};
use crate::findings::{AuditOnce, order};
use crate::one_place::joined;
use crate::{Finding, FindingPlace, Findings, Piece, REGISTER, Sees, Severity};

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
    pub places: AtOnePlace,
}

/// What becomes of several rules that speak at one place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum AtOnePlace {
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
    fn take(&mut self, other: Self) {
        self.findings.extend(other.findings);
        self.set_aside.extend(other.set_aside);
    }

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

/// Asks every rule, movement by movement; of several that speak at one place the gravest tells, and the others are its
/// reasons. The result does not depend on the number of threads.
#[must_use]
pub fn reviewed(piece: &Piece<'_>, settings: &ReviewSettings) -> Reviewed {
    let aside = AsideIn::new(&settings.aside, piece.score);
    let movements = piece.score.movements.len();
    let mut all = if movements < 2 {
        asked(piece, settings, &aside, None)
    } else {
        let mut all = asked(piece, settings, &aside, Some(Sees::WholeFile));
        let each: Vec<Reviewed> =
            (0..movements).into_par_iter().map(|index| movement(piece, index, settings, &aside)).collect();
        each.into_iter().for_each(|one| all.take(one));
        all
    };
    all.findings.retain(|finding| settings.keeps(finding));
    all.findings.sort_by(|a, b| order(a).cmp(&order(b)));
    if settings.places == AtOnePlace::Joined {
        all.findings = joined(all.findings);
    }
    all.set_aside.sort_by(|a, b| order(&a.finding).cmp(&order(&b.finding)));
    all
}

/// What is found in one movement, read as if it were alone in its file, told in the bars and notes of the whole.
fn movement(piece: &Piece<'_>, index: usize, settings: &ReviewSettings, aside: &AsideIn<'_>) -> Reviewed {
    if let Some((reading, score, beginning)) = piece.reading.and_then(|reading| reading.alone(index)) {
        return movement_alone(piece, index, settings, aside, (Some(&reading), score, beginning));
    }
    match piece.score.movement_alone(index) {
        Some((score, beginning)) => movement_alone(piece, index, settings, aside, (None, &score, &beginning)),
        None => Reviewed::default(),
    }
}

fn movement_alone(
    piece: &Piece<'_>,
    index: usize,
    settings: &ReviewSettings,
    aside: &AsideIn<'_>,
    (reading, score, beginning): (Option<&Reading<'_>>, &Score, &Beginning),
) -> Reviewed {
    let of_line: Vec<usize> =
        (0..piece.lines.len()).filter(|line| piece.lines[*line].movement == index).collect();
    let lines: Vec<Line> = of_line.iter().map(|line| piece.lines[*line].alone(beginning)).collect();
    let plans: Vec<Arc<Plan>> =
        of_line.iter().map(|line| piece.plans.get(*line).cloned().unwrap_or_default()).collect();
    let alone = Piece { score, lines: &lines, plans: &plans, reading, ..*piece };
    let mut found = asked(&alone, settings, &aside.counting_from(beginning.bar), Some(Sees::EachMovement));
    let number = piece.score.movements.get(index).map(|movement| movement.number.clone());
    let in_whole = |place: &mut FindingPlace| {
        place.bar += beginning.bar;
        place.movement.clone_from(&number);
        place.stroke = place.stroke.and_then(|(line, stroke)| Some((*of_line.get(line)?, stroke)));
        if let Some(part) = place.part {
            place.notes.iter_mut().for_each(|note| *note = beginning.note(part, *note));
        }
    };
    let set_aside = found.set_aside.iter_mut().map(|aside| &mut aside.finding);
    for finding in found.findings.iter_mut().chain(set_aside) {
        in_whole(&mut finding.place);
        finding.further.iter_mut().for_each(in_whole);
    }
    found
}

/// Asks the rules, of all kinds or of one.
fn asked(piece: &Piece<'_>, settings: &ReviewSettings, aside: &AsideIn<'_>, sees: Option<Sees>) -> Reviewed {
    let asked: Vec<_> = REGISTER
        .iter()
        .filter(|rule| settings.asks(rule.card.id) && sees.is_none_or(|sees| rule.sees == sees))
        .collect();
    let audited = AuditOnce::new();
    let each: Vec<Reviewed> = asked
        .par_iter()
        .map(|rule| {
            let mut found = Findings::new(*piece, rule.card, &audited);
            (rule.check)(piece, &mut found);
            found.gathered(aside)
        })
        .collect();
    let mut all = Reviewed::default();
    each.into_iter().for_each(|one| all.take(one));
    all
}

/// The findings alone, in order of the score, then weight: those set aside are left out.
#[must_use]
pub fn review(piece: &Piece<'_>, settings: &ReviewSettings) -> Vec<Finding> {
    reviewed(piece, settings).findings
}
