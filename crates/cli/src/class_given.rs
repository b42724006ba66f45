//! What was given with a task: its files, beside it.

use std::path::Path;

use arcata_analysis::Source;
use arcata_class::{GivenMaterial, Melody, Model, ModelScore, Task};
use arcata_layer::Trust;
use arcata_score::Score;
use arcata_xml::EditList;

use crate::bowed_score::BowedScore;
use crate::failure::Failure;
use crate::files;
use crate::studio;

/// Reads what the task names.
pub(crate) fn material(path: &Path, task: &Task) -> Result<GivenMaterial, Failure> {
    let failed = |why: String| Failure::Task { path: path.to_owned(), why: files::told(&why) };
    let beside = |name: &str| path.with_file_name("").join(name);
    let read = |name: &str| {
        studio::open_score(&beside(name)).map_err(|failure| failed(format!("[given]: {failure}")))
    };
    let mut material = GivenMaterial::default();
    if let Some(name) = &task.given.melody {
        let score = read(name)?.score;
        material.grams = Melody::grams(&score);
        material.melody = Melody::new(&score, task.given.part);
        if material.melody.is_none() {
            return Err(failed(format!("[given]: the melody {name} has no notes")));
        }
    }
    for Model { name, score, layer } in &task.given.models {
        let source = read(score)?;
        let score = match layer {
            None => source.score,
            Some(layer) => with_layer(&source, &beside(score), &beside(layer))
                .map_err(|failure| failed(format!("[[given.model]] {name}: {failure}")))?,
        };
        material.models.push(ModelScore::new(name, &score));
    }
    Ok(material)
}

/// A score with a layer put on it.
fn with_layer(source: &Source, path: &Path, layer: &Path) -> Result<Score, Failure> {
    let mut bowed = BowedScore::new(source.document(), &EditList::default())?;
    bowed.put_on(path, &[layer.to_owned()], Trust::OwnScore)?;
    Ok(bowed.score)
}
