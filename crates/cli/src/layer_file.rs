//! Layers and scores as the commands about layers open and write them, and how they end.

use std::fmt::Display;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_layer::{Layer, LayerError};
use arcata_score::Score;
use arcata_xml::{Limits, ScoreFile};

use crate::failure::Failure;
use crate::{files, studio};

/// A layer as it was read from its file.
pub(crate) struct LayerFile {
    pub(crate) path: PathBuf,
    pub(crate) bytes: Vec<u8>,
    pub(crate) layer: Layer,
}

/// Reads a layer.
pub(crate) fn open_layer(path: &Path) -> Result<LayerFile, Failure> {
    let failed = |why: String| Failure::Read { path: path.to_owned(), why };
    let bytes = files::read(path, Limits::default().max_bytes).map_err(failed)?;
    let layer = arcata_layer::read(&bytes).map_err(|error| failed(files::told(&error.to_string())))?;
    Ok(LayerFile { path: path.to_owned(), bytes, layer })
}

/// Writes what has become of a layer; over its own file only if nobody else has changed it meanwhile.
pub(crate) fn save(layer: &Layer, from: &LayerFile, out: &Path) -> Result<(), Failure> {
    let bytes = arcata_layer::write(layer);
    if files::same(&from.path, out) {
        arcata_files::rewrite(&from.path, &from.bytes, bytes.as_bytes())?;
    } else {
        arcata_files::write_whole(out, bytes.as_bytes())?;
    }
    Ok(())
}

/// Reads a score.
pub(crate) fn open_score(path: &Path) -> Result<(ScoreFile, Score), Failure> {
    studio::open_score(path).map(arcata_analysis::Source::into_parts)
}

/// Refuses to write over what was read.
pub(crate) fn not_over(out: &Path, read: &[&Path]) -> Result<(), Failure> {
    match read.iter().find(|path| files::same(path, out)) {
        Some(path) => Err(Failure::SameFile { path: (*path).to_owned() }),
        None => Ok(()),
    }
}

/// Prints a list, one line each, with a heading where there is anything.
pub(crate) fn list<T: Display>(heading: &str, items: impl IntoIterator<Item = T>) {
    let lines: Vec<String> = items.into_iter().map(|item| format!("  {item}\n")).collect();
    if !lines.is_empty() {
        files::show(&format!("{heading}\n{}", lines.concat()));
    }
}

pub(crate) fn exit(is_complete: bool) -> ExitCode {
    if is_complete { ExitCode::SUCCESS } else { ExitCode::from(1) }
}

pub(crate) fn layer_failed(path: &Path, error: &LayerError) -> Failure {
    Failure::Layer { path: path.to_owned(), why: files::wording().say(&error.saying()) }
}
