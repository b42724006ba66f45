//! The score with the bowings that shall stand in the parts.

use std::collections::BTreeSet;

use arcata_bow::plan::MarkReading;
use arcata_layer::{Trust, add_marks, remove_marks};
use arcata_prepare::{PlannedMarks, fresh_signs, planned_marks};
use arcata_xml::{EditError, EditList, NodeId};

use crate::args::{Bowings, PartsArguments, SharedArguments};
use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::studio;

/// The score as it shall stand in the parts.
pub(crate) struct PartsScore {
    pub(crate) bowed: BowedScore,
    /// Signs for bows and slurs that it did not have before.
    pub(crate) fresh: BTreeSet<NodeId>,
}

/// Reads the score and puts the bowings on: first the choice, then the layers.
pub(crate) fn open(arguments: &PartsArguments) -> Result<PartsScore, Failure> {
    let opened = studio::open_score(arguments.score())?;
    let edits = match arguments.bowings {
        Bowings::Score => EditList::default(),
        Bowings::None => remove_marks(opened.document(), &opened.score, |_, _| true).map_err(failed)?,
        Bowings::Plan | Bowings::Least => planned(arguments)?,
    };
    let mut bowed = BowedScore::new(opened.document(), &edits)?;
    // A score that other bowings were put on or taken off before is no longer the one that the layer knows by its bytes, but
    // its notes are the same.
    let trust = if arguments.bowings == Bowings::Score { Trust::OwnScore } else { Trust::AnyScore };
    bowed.put_on(arguments.score(), &arguments.layer, trust)?;
    let fresh = fresh_signs((opened.document(), &opened.score), (&bowed.document, &bowed.score));
    Ok(PartsScore { bowed, fresh })
}

/// The plan's marks as edits of the score as it is.
fn planned(arguments: &PartsArguments) -> Result<EditList, Failure> {
    let shared = SharedArguments {
        scores: vec![arguments.score().to_owned()],
        part: Vec::new(),
        bars: None,
        movement: None,
        player: arguments.player.clone(),
        tempo: arguments.tempo,
        louder: 0,
        apart: false,
    };
    let player = studio::player(&shared.player)?;
    let desk = studio::open(arguments.score(), &shared, &player, MarkReading::Law)?;
    let mut additions = Vec::new();
    for (index, (line, plan)) in desk.lines().iter().zip(desk.plans()).enumerate() {
        let which = if arguments.bowings == Bowings::Plan { PlannedMarks::All } else { PlannedMarks::Least };
        let marks = planned_marks(desk.score(), (line, plan), desk.settings(index).reach, which);
        additions.extend(marks.into_iter().map(|(_, mark)| mark));
    }
    add_marks(desk.file().document(), desk.score(), &additions).map_err(failed)
}

#[expect(clippy::needless_pass_by_value, reason = "for map_err")]
fn failed(error: EditError) -> Failure {
    Failure::Marks { why: error.to_string() }
}
