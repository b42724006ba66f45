//! `arcata layer enter`.

use std::fmt::Write as _;
use std::path::Path;
use std::process::ExitCode;

use arcata_languages::Saying;
use arcata_layer::shorthand::{self, Gravity};
use arcata_layer::{Addresses, Layer};

use crate::args::EnterArguments;
use crate::failure::Failure;
use crate::layer_file::{LayerFile, open_layer};
use crate::layer_words::say;
use crate::{files, studio};

/// The most troubles that are told at once; nobody reads more.
const MOST_SHOWN: usize = 100;

pub(crate) fn run(arguments: &EnterArguments) -> Result<ExitCode, Failure> {
    let opened = studio::open_score(&arguments.score)?;
    let addresses = Addresses::new(&opened.score);
    let read_before = match &arguments.layer {
        Some(path) if path.exists() => Some(open_layer(path)?),
        _ => None,
    };
    let mut layer = match &read_before {
        Some(opened) => opened.layer.clone(),
        _ => {
            Layer { score: arcata_layer::identity::of(opened.document(), &opened.score), ..Layer::default() }
        }
    };
    adopt(&mut layer, arguments, &addresses);
    // Printing a layer that exists needs no text.
    let printing = arguments.print && arguments.notes.is_none() && arguments.layer.is_some();
    let text = if printing { String::new() } else { notes(arguments)? };
    let (read, mut complaints) = shorthand::read(&text);
    let entered = shorthand::enter(&read, &addresses);
    complaints.extend(entered.complaints.iter().cloned());
    complaints.sort_by_key(|complaint| complaint.at);
    let mut said = String::new();
    for complaint in complaints.iter().take(MOST_SHOWN) {
        let _ = writeln!(said, "{}", complaint.shown_as(&text, &files::told(&complaint.to_string())));
    }
    if complaints.len() > MOST_SHOWN {
        let more = Saying::new("layer-more-troubles").with("count", complaints.len() - MOST_SHOWN);
        let _ = writeln!(said, "{}", say(&more));
    }
    if !said.is_empty() {
        files::say(&said);
    }
    let wrong = complaints.iter().filter(|complaint| complaint.gravity == Gravity::Wrong).count();
    if wrong > 0 {
        files::complain(&say(&Saying::new("layer-troubles").with("count", wrong)));
        return Ok(ExitCode::from(1));
    }
    shorthand::put(&mut layer, &entered);
    if arguments.check {
        files::complain(&say(&Saying::new("layer-nothing-wrong").with("count", entered.entries.len())));
    } else if arguments.print {
        files::hand_out(&shorthand::of_layer(&layer, &addresses).to_string());
    } else {
        write(arguments, read_before.as_ref(), &layer, entered.entries.len())?;
    }
    Ok(ExitCode::SUCCESS)
}

/// Takes over what the command line says about the layer.
fn adopt(layer: &mut Layer, arguments: &EnterArguments, addresses: &Addresses<'_>) {
    for (field, said) in [
        (&mut layer.title, &arguments.title),
        (&mut layer.owner, &arguments.owner),
        (&mut layer.ensemble, &arguments.ensemble),
        (&mut layer.date, &arguments.date),
    ] {
        if let Some(said) = said {
            field.clone_from(said);
        }
    }
    if layer.parts.is_empty() {
        layer.parts = addresses.part_keys().to_vec();
    }
}

fn notes(arguments: &EnterArguments) -> Result<String, Failure> {
    // One more than is read, so that a longer text is refused by the reader with its own words.
    let most = shorthand::LARGEST_TEXT + 1;
    match &arguments.notes {
        Some(path) => {
            let bytes = files::read(path, most).map_err(|why| Failure::Read { path: path.clone(), why })?;
            text_of(bytes, path)
        }
        None => text_of(files::standard_input(most)?, &files::standard_input_said()),
    }
}

fn text_of(bytes: Vec<u8>, path: &Path) -> Result<String, Failure> {
    String::from_utf8(bytes).map_err(|error| {
        let before = &error.as_bytes()[..error.utf8_error().valid_up_to()];
        let line = before.iter().filter(|byte| **byte == b'\n').count() + 1;
        let why = format!("line {line} is not UTF-8 text; save the notes as UTF-8 and try again");
        Failure::Read { path: path.to_owned(), why: files::told(&why) }
    })
}

fn write(
    arguments: &EnterArguments,
    before: Option<&LayerFile>,
    layer: &Layer,
    count: usize,
) -> Result<(), Failure> {
    let text = arcata_layer::write(layer);
    match arguments.out.as_ref().or(arguments.layer.as_ref()) {
        Some(path) if files::same(path, &arguments.score) => Err(Failure::SameFile { path: path.clone() }),
        Some(path) => {
            match before.filter(|before| before.path == *path) {
                Some(before) => arcata_files::rewrite(path, &before.bytes, text.as_bytes())?,
                // It was to be added to, and was not there.
                None if arguments.layer.as_ref() == Some(path) => {
                    arcata_files::write_new(path, text.as_bytes())?
                }
                None => arcata_files::write_whole(path, text.as_bytes())?,
            }
            let done = Saying::new("layer-entered")
                .with("count", count)
                .with("all", layer.entries.len())
                .quoting("layer", path.display().to_string());
            files::complain(&say(&done));
            Ok(())
        }
        None => {
            files::hand_out(&text);
            Ok(())
        }
    }
}
