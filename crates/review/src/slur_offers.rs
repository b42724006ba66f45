//! Every single change of the slurs around a stroke, for somebody who writes: split, join, shift, with what it would buy.

use arcata_bow::plan::{ChangeKind, RepairRequest, same_bows, singly};

use arcata_languages::Saying;

use crate::change::edits;
use crate::other_bow::{kept_edges, passage};
use crate::other_notation::kind;
use crate::repair_words;
use crate::slur_change;
use crate::{Grade, Piece, Proposal};

/// Strokes to each side whose slurs may be changed (rule of thumb).
const AROUND: usize = 2;

/// Changes of the slurs near a stroke of a line that can be written into the file, the one that costs the arm least first. The
/// passage around is planned anew for each, and one that would leave every bow as it is planned is not offered; what the arm saves or pays is in [`Proposal::cost_change`].
///
/// Without a document or a reading nothing is offered.
#[must_use]
pub fn slur_offers(piece: &Piece<'_>, line_index: usize, stroke: usize) -> Vec<Proposal> {
    offers(piece, line_index, stroke).unwrap_or_default()
}

fn offers(piece: &Piece<'_>, line_index: usize, stroke: usize) -> Option<Vec<Proposal>> {
    let (document, reading) = (piece.document?, piece.reading?);
    let line = piece.lines.get(line_index)?;
    line.strokes.get(stroke)?;
    let part = piece.score.parts.get(line.part)?;
    let sources = reading.sources(line.part);
    let source = sources.iter().find(|source| source.line().is_of(line))?;
    let range = passage(line, stroke);
    let mut settings = piece.plan_settings(line_index);
    settings.anchors = kept_edges(piece, line_index, &range, stroke)?;
    let window = stroke.saturating_sub(AROUND).max(range.start)..(stroke + AROUND + 1).min(range.end);
    let request = RepairRequest { settings: &settings, window, most: 1, ending: None };
    let found = singly(source, &request, &range);
    let (unchanged, changed) = found.split_first()?;
    let mut offers: Vec<(i64, Proposal)> = Vec::new();
    for repaired in changed {
        // What no arm would do otherwise is nothing to offer.
        if same_bows((&unchanged.line, &unchanged.plan), (&repaired.line, &repaired.plan)) {
            continue;
        }
        let Some(change) = repaired.changes.first().filter(|change| change.kind != ChangeKind::Hook) else {
            continue;
        };
        let Some(changes) = slur_change::changes(part, change).filter(|changes| !changes.is_empty()) else {
            continue;
        };
        let cost = repaired.plan.total.less(&unchanged.plan.total);
        let sentence =
            Saying::new("offer-repair").with("repair", repair_words::what(piece.score, line.part, change));
        let proposal = Proposal {
            edits: edits(document, &changes),
            cost_change: Some(cost),
            ..Proposal::new(Grade::WritersChoice, kind(change), sentence)
        };
        offers.push((cost.total(), proposal));
    }
    offers.sort_by_key(|(cost, _)| *cost);
    Some(
        offers
            .into_iter()
            .map(|(_, proposal)| proposal)
            .filter(|proposal| !proposal.edits.is_empty())
            .collect(),
    )
}
