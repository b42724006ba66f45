//! `arcata layer carry`.

use std::process::ExitCode;

use arcata_languages::Saying;
use arcata_layer::identity::{Kinship, kinship};
use arcata_layer::{Addresses, LayerError};

use crate::args::CarryArguments;
use crate::failure::Failure;
use crate::layer_file::{exit, layer_failed, list, not_over, open_layer, open_score, save};
use crate::layer_words::{say, word};
use crate::{files, layer_words};

pub(crate) fn run(arguments: &CarryArguments) -> Result<ExitCode, Failure> {
    let (old_file, old) = open_score(&arguments.from)?;
    let (new_file, new) = open_score(&arguments.score)?;
    let opened = open_layer(&arguments.layer)?;
    not_over(&arguments.out, &[&arguments.from, &arguments.score])?;
    if kinship(&opened.layer, old_file.document(), &old) == Kinship::OtherMusic {
        let error =
            LayerError::OtherScore { layer: opened.layer.score.title.clone(), score: old.title.clone() };
        return Err(layer_failed(&opened.path, &error));
    }
    let carried = arcata_layer::carry(&opened.layer, &old, (new_file.document(), &new));
    save(&carried.layer, &opened, &arguments.out)?;
    let done = Saying::new("layer-carried")
        .with("count", carried.exactly)
        .with("doubtful", carried.doubtful.len())
        .with("orphaned", carried.orphaned.len());
    files::complain(&say(&done));
    let (old, new) = (Addresses::new(&old), Addresses::new(&new));
    list(
        &word("layer-look-at"),
        carried.doubtful.iter().map(|doubtful| layer_words::doubtful(doubtful, &old, &new)),
    );
    list(
        &word("layer-without-note"),
        carried.orphaned.iter().map(|orphan| layer_words::orphan(orphan, &old)),
    );
    Ok(exit(carried.doubtful.is_empty() && carried.orphaned.is_empty()))
}
