//! What another way to bow a passage would bring that was not there before.

use std::collections::BTreeSet;
use std::ops::Range;
use std::sync::Arc;

use arcata_bow::plan::Anchor;
use arcata_bow::{Line, Plan, plan};
use arcata_score::BowDirection;

use crate::findings::Choices;
use crate::other_bow::{kept_edges, passage, stretch};
use crate::rules::{beat, direction, length};
use crate::{Findings, Piece, Rule, Severity};

/// A finding by its rule and place.
type Told = (&'static str, u32, arcata_score::Length);

/// Whether a passage bowed in a second way, or with other slurs, brings a finding about the bow that it does not have as it
/// is.
pub(crate) fn brings_worse(piece: &Piece<'_>, as_it_is: (&Line, &Plan), other: (&Line, &Plan)) -> bool {
    let before = told(piece, as_it_is, Choices::LeftOut);
    told(piece, other, Choices::Told).iter().any(|finding| !before.contains(finding))
}

/// What the rules that read directions and places say of a passage by itself.
fn told(piece: &Piece<'_>, (stretch, plan): (&Line, &Plan), choices: Choices) -> BTreeSet<Told> {
    let plans = [Arc::new(plan.clone())];
    let alone = Piece {
        // Without a document no rule looks for a remedy: it is only asked what it sees.
        document: None,
        reading: None,
        lines: std::slice::from_ref(stretch),
        plans: &plans,
        ..*piece
    };
    let mut all = BTreeSet::new();
    all.append(&mut asked::<beat::beat_on_up_bow::BeatOnUpBow>(&alone, choices));
    all.append(&mut asked::<direction::accent_at_tip::AccentAtTip>(&alone, choices));
    all.append(&mut asked::<direction::ending_on_up_bow::EndingOnUpBow>(&alone, choices));
    all.append(&mut asked::<direction::swell_against_bow::SwellAgainstBow>(&alone, choices));
    all.append(&mut asked::<direction::no_time_to_retake::NoTimeToRetake>(&alone, choices));
    all.append(&mut asked::<direction::chords_too_close::ChordsTooClose>(&alone, choices));
    all.append(&mut asked::<length::rushed_return::RushedReturn>(&alone, choices));
    all
}

fn asked<R: Rule>(piece: &Piece<'_>, choices: Choices) -> BTreeSet<Told> {
    let mut found = Findings::new(*piece, R::CARD).with(choices);
    R::check(piece, &mut found);
    let grave = found.drafts().iter().filter(|draft| draft.severity() <= Severity::C);
    grave.map(|draft| (R::CARD.id, draft.place().bar, draft.place().beat)).collect()
}

/// Whether fixing some strokes of a line brings something worse into the passage around the first of them.
pub(crate) fn fixing_brings_worse(piece: &Piece<'_>, at: usize, fixed: &[(usize, BowDirection)]) -> bool {
    let Some(line) = piece.lines.get(at) else { return false };
    let Some((first, _)) = fixed.first() else { return false };
    let range: Range<usize> = passage(line, *first);
    let (Some(kept), stretch) = (kept_edges(piece, at, &range, *first), stretch(line, &range)) else {
        return false;
    };
    let mut settings = piece.plan_settings(at);
    let local =
        |stroke: usize| stroke.checked_sub(range.start).filter(|local| *local < stretch.strokes.len());
    settings.anchors = kept
        .into_iter()
        .filter_map(|anchor| Some(Anchor { stroke: local(anchor.stroke)?, ..anchor }))
        .collect();
    let best = plan(&stretch, &settings);
    for (stroke, direction) in fixed {
        if let Some(stroke) = local(*stroke) {
            settings.anchors.retain(|anchor| anchor.stroke != stroke);
            settings.anchors.push(Anchor { stroke, direction: Some(*direction), link: None });
        }
    }
    let other = plan(&stretch, &settings);
    brings_worse(piece, (&stretch, &best), (&stretch, &other))
}
