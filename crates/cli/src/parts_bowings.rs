//! The score with the bowings that shall stand in the parts.

use std::path::Path;

use arcata_bow::plan::MarkReading;
use arcata_layer::{Applied, Layer, LeftOut, Trust, add_marks, remove_marks};
use arcata_prepare::{PlannedMarks, planned_marks};
use arcata_xml::{Document, EditError, EditList, Limits};

use crate::args::Shared;
use crate::failure::Failure;
use crate::layer_command::open_layer;
use crate::parts_args::{Bowings, PartsArguments};
use crate::studio;

/// A score ready to be cut into parts.
pub(crate) struct BowedScore {
    pub(crate) document: Document,
    pub(crate) score: arcata_score::Score,
    /// Entries of layers that found no note.
    pub(crate) left_out: Vec<LeftOut>,
    /// Down- and up-bows written or taken off.
    pub(crate) changed: usize,
}

/// Reads the score and puts the bowings on: first the choice, then the layers.
pub(crate) fn open(arguments: &PartsArguments) -> Result<BowedScore, Failure> {
    let opened = studio::open_score(&arguments.score)?;
    let edits = match arguments.bowings {
        Bowings::Score => EditList::default(),
        Bowings::None => remove_marks(opened.file.document(), &opened.score, |_, _| true).map_err(failed)?,
        Bowings::Plan | Bowings::Least => planned(arguments)?,
    };
    let changed = edits.edits().len();
    let bytes = opened.file.document().apply(&edits).map_err(failed)?;
    let (document, score) = parsed(bytes)?;
    let mut bowed = BowedScore { document, score, left_out: Vec::new(), changed };
    let mut below: Vec<Layer> = Vec::new();
    for path in &arguments.layer {
        put_on(&mut bowed, (&arguments.score, path), &mut below, arguments.bowings)?;
    }
    Ok(bowed)
}

/// The plan's marks as edits of the score as it is.
fn planned(arguments: &PartsArguments) -> Result<EditList, Failure> {
    let shared = Shared {
        scores: vec![arguments.score.clone()],
        part: Vec::new(),
        bars: None,
        movement: None,
        profile: arguments.profile.clone(),
        style: arguments.style,
        habits: arguments.habits.clone(),
        tempo: arguments.tempo,
        louder: 0,
        apart: false,
    };
    let profile = studio::player(&shared)?;
    let desk = studio::open(&arguments.score, &shared, &profile, MarkReading::Law)?;
    let mut additions = Vec::new();
    for (index, (line, plan)) in desk.lines.iter().zip(&desk.plans).enumerate() {
        let which = if arguments.bowings == Bowings::Plan { PlannedMarks::All } else { PlannedMarks::Least };
        let marks = planned_marks(&desk.score, (line, plan), desk.settings[index].reach, which);
        additions.extend(marks.into_iter().map(|(_, mark)| mark));
    }
    add_marks(desk.file.document(), &desk.score, &additions).map_err(failed)
}

/// Puts a layer on. A score that other bowings were put on or taken off before is no longer the one that the
/// layer knows by its bytes, but its notes are the same.
fn put_on(
    bowed: &mut BowedScore,
    (score, path): (&Path, &Path),
    below: &mut Vec<Layer>,
    bowings: Bowings,
) -> Result<(), Failure> {
    let opened = open_layer(path)?;
    let said = |why: String| Failure::Layer { path: path.to_owned(), why };
    let trust = if bowings == Bowings::Score { Trust::OwnScore } else { Trust::AnyScore };
    let told = studio::told(score, (&bowed.document, &bowed.score), &opened.layer)?;
    let applied =
        arcata_layer::apply_told(&bowed.document, &bowed.score, &opened.layer, (below, &told), trust);
    let Applied { edits, layer, left_out, .. } = applied.map_err(|error| said(error.to_string()))?;
    let bytes = bowed.document.apply(&edits).map_err(|error| said(error.to_string()))?;
    bowed.changed += edits.edits().len();
    (bowed.document, bowed.score) = parsed(bytes)?;
    bowed.left_out.extend(left_out);
    below.push(layer);
    Ok(())
}

fn parsed(bytes: Vec<u8>) -> Result<(Document, arcata_score::Score), Failure> {
    let document = Document::parse(bytes, &Limits::default())
        .map_err(|error| Failure::Marks { why: error.to_string() })?;
    let score = arcata_score::read(&document);
    Ok((document, score))
}

#[expect(clippy::needless_pass_by_value, reason = "for map_err")]
fn failed(error: EditError) -> Failure {
    Failure::Marks { why: error.to_string() }
}
