//! A score with layers on it, in memory.

use std::path::{Path, PathBuf};

use arcata_layer::{Applied, Layer, LeftOut, Trust};
use arcata_score::Score;
use arcata_xml::{Document, EditList, Limits};

use crate::failure::Failure;
use crate::files;
use crate::layer_file::open_layer;
use crate::studio;

/// A score and what was put on it.
pub(crate) struct BowedScore {
    pub(crate) document: Document,
    pub(crate) score: Score,
    /// Entries of layers that found no note.
    pub(crate) left_out: Vec<LeftOut>,
    /// Down- and up-bows written or taken off.
    pub(crate) changed: usize,
}

impl BowedScore {
    /// A score with some edits done.
    pub(crate) fn new(document: &Document, edits: &EditList) -> Result<Self, Failure> {
        let bytes =
            document.apply(edits).map_err(|error| Failure::Marks { why: files::told(&error.to_string()) })?;
        let (document, score) = parsed(bytes)?;
        Ok(Self { document, score, left_out: Vec::new(), changed: edits.edits().len() })
    }

    /// Puts layers on, one over the other; `from` is the file of the score.
    pub(crate) fn put_on(&mut self, from: &Path, layers: &[PathBuf], trust: Trust) -> Result<(), Failure> {
        let mut below: Vec<Layer> = Vec::new();
        for path in layers {
            let opened = open_layer(path)?;
            let said = |why: String| Failure::Layer { path: path.clone(), why };
            let told = studio::told(from, (&self.document, &self.score), &opened.layer)?;
            let applied =
                arcata_layer::apply_told(&self.document, &self.score, &opened.layer, (&below, &told), trust);
            let Applied { edits, layer, left_out, .. } =
                applied.map_err(|error| said(files::wording().say(&error.saying())))?;
            let bytes = self.document.apply(&edits).map_err(|error| said(files::told(&error.to_string())))?;
            self.changed += edits.edits().len();
            (self.document, self.score) = parsed(bytes)?;
            self.left_out.extend(left_out);
            below.push(layer);
        }
        Ok(())
    }
}

fn parsed(bytes: Vec<u8>) -> Result<(Document, Score), Failure> {
    let document = Document::parse(bytes, &Limits::default())
        .map_err(|error| Failure::Marks { why: files::told(&error.to_string()) })?;
    let score = arcata_score::read(&document);
    Ok((document, score))
}
