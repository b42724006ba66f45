//! The audit of printed bow marks: which are needed, which carry an effect, which state the obvious, and
//! which cannot be.
//!
//! Every mark of every bowed part falls in exactly one [`MarkClass`], for a stated [`MarkReason`]. Marks that
//! state the obvious can all go at once and nothing changes: players bowing as it comes do the same, and so
//! does the plan (see [`surplus`]).

mod effects;
mod places;
mod surplus;

use std::borrow::Borrow;
use std::collections::{BTreeMap, BTreeSet};

use arcata_score::{BowDirection, NoteId, Score};

pub use surplus::surplus;

use crate::plan::MarkReading;
use crate::plan::as_it_comes::{Arrival, arrivals};
use crate::{Join, Line, Plan, PlanSettings, Profile};
use effects::{Effect, effects};
use places::MarkPlace;

/// What a printed mark is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum MarkClass {
    /// Without it players would bow otherwise, or could.
    Needed,
    /// It belongs to an effect.
    Effect,
    /// It would come anyway.
    Obvious,
    /// It contradicts what it stands on or beside.
    Contradictory,
}

impl MarkClass {
    /// All classes, in the order they are reported.
    pub const ALL: [Self; 4] = [Self::Needed, Self::Effect, Self::Obvious, Self::Contradictory];

    /// The class in one word.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Needed => "needed",
            Self::Effect => "effect",
            Self::Obvious => "obvious",
            Self::Contradictory => "contradictory",
        }
    }
}

/// Why a mark is in its class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum MarkReason {
    /// Plain alternation gives the other bow.
    Alternation,
    /// So it does, and the figure was marked like this before: players may follow without it.
    LaterInstance,
    /// The bow is free here, and players differ.
    FreeBow,
    /// It stands after a rest, where players differ.
    AfterRest,
    /// It begins or ends a row in one direction.
    BesideRow,
    /// It says that an unusual bow is meant: on an accent, a swell, a phrase's end.
    Unusual,
    /// Without it another bowing would be the better one.
    HoldsPlan,
    /// A row of down-bows, loud or on chords.
    RowOfDowns,
    /// Up-bows that lead into a strong down-bow.
    UpsIntoDown,
    /// One of the first instances of a repeated figure.
    FirstInstances,
    /// Marks of one direction over a slur with dots or dashes.
    SpeltOut,
    /// It would come anyway.
    ComesAnyway,
    /// Down and up stand at the beginning of one stroke.
    BothBows,
    /// It stands on a rest.
    OnRest,
    /// It stands in pizzicato.
    Plucked,
    /// It stands on a note that is not bowed.
    NotBowed,
    /// It stands inside a slur.
    InsideSlur,
    /// It stands on a note tied from before.
    TiedFromBefore,
}

impl MarkReason {
    /// The class.
    #[must_use]
    pub const fn class(self) -> MarkClass {
        match self {
            Self::Alternation
            | Self::LaterInstance
            | Self::FreeBow
            | Self::AfterRest
            | Self::BesideRow
            | Self::Unusual
            | Self::HoldsPlan => MarkClass::Needed,
            Self::RowOfDowns | Self::UpsIntoDown | Self::FirstInstances | Self::SpeltOut => MarkClass::Effect,
            Self::ComesAnyway => MarkClass::Obvious,
            Self::BothBows
            | Self::OnRest
            | Self::Plucked
            | Self::NotBowed
            | Self::InsideSlur
            | Self::TiedFromBefore => MarkClass::Contradictory,
        }
    }

    /// The reason as a key: lower-case words with hyphens.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Alternation => "alternation",
            Self::LaterInstance => "later-instance",
            Self::FreeBow => "free-bow",
            Self::AfterRest => "after-rest",
            Self::BesideRow => "beside-row",
            Self::Unusual => "unusual",
            Self::HoldsPlan => "holds-plan",
            Self::RowOfDowns => "row-of-downs",
            Self::UpsIntoDown => "ups-into-down",
            Self::FirstInstances => "first-instances",
            Self::SpeltOut => "spelt-out",
            Self::ComesAnyway => "comes-anyway",
            Self::BothBows => "both-bows",
            Self::OnRest => "on-rest",
            Self::Plucked => "plucked",
            Self::NotBowed => "not-bowed",
            Self::InsideSlur => "inside-slur",
            Self::TiedFromBefore => "tied-from-before",
        }
    }
}

/// A printed mark and what it is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AuditedMark {
    /// Index of the part.
    pub part: usize,
    /// The note that carries it.
    pub note: NoteId,
    /// The stroke that it begins: (line, stroke); none where it begins none.
    pub stroke: Option<(usize, usize)>,
    /// Which way.
    pub direction: BowDirection,
    /// Why it is there.
    pub reason: MarkReason,
}

/// Every printed mark of some parts, in their order, then that of notes. `lines` are theirs, `plans` those of
/// the lines, printed marks kept as law; a line without one that fits is audited as if each of its marks were
/// needed by alternation.
#[must_use]
pub fn audit(
    score: &Score,
    parts: &[usize],
    lines: &[Line],
    plans: &[impl Borrow<Plan>],
    profile: &Profile,
) -> Vec<AuditedMark> {
    let places: Vec<MarkPlace> = parts.iter().flat_map(|part| places::places(score, *part, lines)).collect();
    let mut spelt_out: Vec<BTreeSet<usize>> = vec![BTreeSet::new(); lines.len()];
    for place in places.iter().filter(|place| place.trouble == Some(MarkReason::SpeltOut)) {
        if let Some((line, stroke)) = place.stroke {
            spelt_out[line].insert(stroke);
        }
    }
    let reasons: Vec<BTreeMap<usize, MarkReason>> = lines
        .iter()
        .enumerate()
        .map(|(at, line)| {
            match plans
                .get(at)
                .map(Borrow::borrow)
                .filter(|plan: &&Plan| plan.strokes.len() == line.strokes.len())
            {
                Some(plan) => line_reasons(line, plan, &spelt_out[at], profile),
                None => BTreeMap::new(),
            }
        })
        .collect();
    let marks = places.into_iter().map(|place| {
        let known = place.stroke.and_then(|(line, stroke)| reasons[line].get(&stroke)).copied();
        let reason = place.trouble.or(known).unwrap_or(MarkReason::Alternation);
        place.audited(reason)
    });
    marks.collect()
}

/// Marks that stand where no mark can stand, of one part: the note, the mark and why.
#[must_use]
pub fn contradictions(score: &Score, part: usize, lines: &[Line]) -> Vec<AuditedMark> {
    let places = places::places(score, part, lines).into_iter();
    places
        .filter_map(|place| {
            let reason = place.trouble.filter(|reason| reason.class() == MarkClass::Contradictory)?;
            Some(place.audited(reason))
        })
        .collect()
}

/// The reason of every mark that begins a stroke.
fn line_reasons(
    line: &Line,
    plan: &Plan,
    spelt_out: &BTreeSet<usize>,
    profile: &Profile,
) -> BTreeMap<usize, MarkReason> {
    let settings = &profile.plan_settings(line.instrument);
    let ways = arrivals(line, settings.reach);
    let against: Vec<bool> =
        (0..line.strokes.len()).map(|index| is_against(plan, index, &ways[index])).collect();
    if line.strokes.iter().all(|stroke| stroke.printed.is_none()) {
        return BTreeMap::new();
    }
    let unmarked = crate::plan(line, &PlanSettings { marks: MarkReading::Hidden, ..settings.clone() });
    let effects = effects(line, (plan, &unmarked), &against, profile);
    let ending_joint = u16::try_from(profile.thresholds.ending_joint.value).unwrap_or(u16::MAX);
    let surplus = surplus(line, plan, settings, ending_joint);
    let printed = (0..line.strokes.len()).filter(|index| line.strokes[*index].printed.is_some());
    printed
        .map(|index| {
            let reason = match effects.get(&index) {
                _ if spelt_out.contains(&index) => MarkReason::SpeltOut,
                Some(Effect::Row) => MarkReason::RowOfDowns,
                Some(Effect::Ups) => MarkReason::UpsIntoDown,
                Some(Effect::Figure) => MarkReason::FirstInstances,
                Some(Effect::LaterFigure) if against[index] => MarkReason::LaterInstance,
                _ if surplus.contains(&index) => MarkReason::ComesAnyway,
                _ => need(line, plan, &ways[index], index, ending_joint),
            };
            (index, reason)
        })
        .collect()
}

/// Whether the planned direction is not what alternation gives, on some way in.
fn is_against(plan: &Plan, index: usize, ways: &[Arrival]) -> bool {
    ways.iter().any(|way| {
        let before = way.before.map(|before| plan.strokes[before].direction);
        way.join != Join::Entry && before == Some(plan.strokes[index].direction)
    })
}

/// Why a mark that carries no effect and does not come anyway is needed.
fn need(line: &Line, plan: &Plan, ways: &[Arrival], index: usize, ending_joint: u16) -> MarkReason {
    let stroke = &line.strokes[index];
    let neighbours = [index.checked_sub(1), Some(index + 1)];
    let beside = neighbours
        .into_iter()
        .flatten()
        .filter_map(|other| line.strokes.get(other))
        .any(|other| other.printed.is_some() && other.printed == stroke.printed);
    match ways.first().map(|way| way.join) {
        _ if is_against(plan, index, ways) => MarkReason::Alternation,
        None | Some(Join::Entry) => MarkReason::FreeBow,
        Some(Join::AfterRest) => MarkReason::AfterRest,
        Some(Join::Continues) if beside => MarkReason::BesideRow,
        Some(Join::Continues) if surplus::vouches_for(stroke, &plan.strokes[index], ending_joint) => {
            MarkReason::Unusual
        }
        Some(Join::Continues) => MarkReason::HoldsPlan,
    }
}

#[cfg(test)]
mod tests;
