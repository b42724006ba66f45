//! A score with a layer on it, in memory.

use arcata_layer::{Entry, Layer, LeftOut, Mark, ToldBows, Trust, apply_told};
use arcata_score::Score;
use arcata_xml::{Document, EditList, Limits};

/// A score with a layer on it.
#[derive(Debug)]
pub struct WithLayer {
    /// The document.
    pub document: Document,
    /// How it came from the one without the layer.
    pub edits: EditList,
    /// What of the layer found no place.
    pub left_out: Vec<LeftOut>,
}

/// Puts a layer on a score that has none, whatever score the layer was made for. Hooks and retakes go as `told` says; see
/// [`Planner::told`](crate::Planner::told).
///
/// ```
/// # let music = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5").into_bytes();
/// let document = arcata_xml::Document::parse(music, &Default::default())?;
/// let score = arcata_score::read(&document);
/// let place = arcata_layer::Addresses::new(&score).place(0, arcata_score::NoteId(1)).expect("a note");
/// let entries = vec![arcata_layer::Entry::new(place, arcata_layer::Mark::Up)];
/// let layer = arcata_layer::Layer { entries, ..Default::default() };
/// let with = arcata_analysis::with_layer((&document, &score), &layer, &Default::default())?;
/// assert!(with.document.text().contains("<up-bow/>") && with.left_out.is_empty());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
/// A layer that cannot be put on this score at all, in words.
pub fn with_layer(
    (document, score): (&Document, &Score),
    layer: &Layer,
    told: &ToldBows,
) -> Result<WithLayer, String> {
    let applied = apply_told(document, score, layer, (&[], told), Trust::AnyScore)
        .map_err(|problem| problem.to_string())?;
    let bytes = document.apply(&applied.edits).map_err(|problem| problem.to_string())?;
    let document = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
    Ok(WithLayer { document, edits: applied.edits, left_out: applied.left_out })
}

/// Whether a mark changes what is read, and is not only asked of the plan.
const fn is_read(mark: &Mark) -> bool {
    !matches!(mark, Mark::Down | Mark::Up | Mark::Hook { .. } | Mark::Retake { .. })
}

/// The entries of a layer that change what is read: slurs, words, both bows on one note, printed bows that give way.
#[must_use]
pub fn read_entries(layer: &Layer) -> Vec<Entry> {
    layer.entries.iter().filter(|entry| is_read(&entry.mark)).cloned().collect()
}

/// The score with the marks of a layer on it that change what is read; none where it has none.
///
/// # Errors
/// A document that leaves no place for them, in words.
pub fn with_read_marks(
    (document, score): (&Document, &Score),
    layer: &Layer,
) -> Result<Option<WithLayer>, String> {
    let entries = read_entries(layer);
    if entries.is_empty() {
        return Ok(None);
    }
    with_layer((document, score), &Layer { entries, ..Layer::default() }, &ToldBows::default()).map(Some)
}
