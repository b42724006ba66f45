//! `arcata-manual FOLDER [SITE]`: the manual as a book of HTML pages, its examples engraved. The pages are those of `docs/`. With the
//! folder of the page that needs no server one can try it from the book's front page.
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "an edge program: it reads and writes files, prints, and reads its arguments and the environment"
)]

mod contents;
mod example;
mod links;

use std::fs;
use std::path::{Path, PathBuf};

use arcata_engrave::Engraver;
use arcata_xml::{Limits, open_score};
use mdbook_driver::MDBook;
use mdbook_driver::config::Config;
use rayon::prelude::*;

use contents::{BookPage, TriedPage};

/// What the book is called, in its language, where its pages stand.
const SETTINGS: &str = r#"
[book]
title = "Arcata: the manual"
language = "en"
src = "src"

[build]
create-missing = false

[output.html]
default-theme = "light"
additional-css = ["manual.css"]
no-section-label = true
"#;

/// Engraved music is black on white, in a dark theme too.
const STYLE: &str =
    "img[src$='.svg'], img[src$='.png'] { background: #fff; border-radius: 4px; max-width: 100%; }\n";

fn main() -> Result<(), String> {
    let out = std::env::args().nth(1).map(PathBuf::from).ok_or("arcata-manual FOLDER [SITE]")?;
    let site = std::env::args().nth(2).map(PathBuf::from);
    let root = std::env::var_os("ARCATA_ROOT").map_or_else(|| PathBuf::from("."), PathBuf::from);
    let source = out.with_extension("source");
    remove(&source)?;
    remove(&out)?;
    let tried = site.as_deref().map(tried).transpose()?;
    let pages = contents::pages(&root, tried.as_ref())?;
    let pictures = write_source(&root, &source, &pages)?;
    let mut config: Config = SETTINGS.parse().map_err(|problem| format!("the book's settings: {problem}"))?;
    config.build.build_dir.clone_from(&out);
    let book = MDBook::load_with_config(&source, config).map_err(|problem| format!("{problem:#}"))?;
    book.build().map_err(|problem| format!("{problem:#}"))?;
    remove(&source)?;
    if let Some(site) = site {
        copy(&site, &out.join(contents::TRIED))?;
    }
    let broken = links::broken(&out)?;
    for link in &broken {
        println!("{link}");
    }
    println!("{} pages, {pictures} engraved examples: {}", pages.len(), out.join("index.html").display());
    if broken.is_empty() { Ok(()) } else { Err(format!("{} links lead nowhere", broken.len())) }
}

fn remove(folder: &Path) -> Result<(), String> {
    if !folder.exists() {
        return Ok(());
    }
    fs::remove_dir_all(folder).map_err(|problem| format!("{}: {problem}", folder.display()))
}

/// Writes what the book is made from; returns how many examples were engraved.
fn write_source(root: &Path, source: &Path, pages: &[BookPage]) -> Result<usize, String> {
    write(&source.join("manual.css"), STYLE.as_bytes())?;
    let within = source.join("src");
    write(&within.join("SUMMARY.md"), contents::summary(pages).as_bytes())?;
    for folder in ["pictures", "schema"] {
        for entry in list(&root.join("docs").join(folder))? {
            let name = entry.file_name().ok_or("a file without a name")?.to_owned();
            write(&within.join(folder).join(name), &read(&entry)?)?;
        }
    }
    let engraver = Engraver::new();
    let engraved: Result<Vec<usize>, String> = pages
        .par_iter()
        .map(|page| {
            let (text, pictures) = example::engraved(&page.text, &page.name, &engraver)?;
            for (name, picture) in &pictures {
                write(&within.join(&page.path).with_file_name(name), picture.as_bytes())?;
            }
            write(&within.join(&page.path), text.as_bytes())?;
            Ok(usize::from(!pictures.is_empty()))
        })
        .collect();
    Ok(engraved?.into_iter().sum())
}

fn read(path: &Path) -> Result<Vec<u8>, String> {
    fs::read(path).map_err(|problem| format!("{}: {problem}", path.display()))
}

/// What there is to try on the page in a folder.
fn tried(site: &Path) -> Result<TriedPage, String> {
    let demo = |path: &PathBuf| {
        let file = open_score(read(path)?, &Limits::default()).map_err(|problem| problem.to_string())?;
        let name = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let title = arcata_score::read(file.document()).title.unwrap_or_else(|| name.clone());
        Ok((name, title))
    };
    let demos: Result<Vec<(String, String)>, String> = list(&site.join("demo"))?.iter().map(demo).collect();
    Ok(TriedPage { demos: demos? })
}

/// A folder with all that is in it.
fn copy(from: &Path, to: &Path) -> Result<(), String> {
    let entries = fs::read_dir(from).map_err(|problem| format!("{}: {problem}", from.display()))?;
    for path in entries.filter_map(|entry| Some(entry.ok()?.path())) {
        let to = to.join(path.file_name().ok_or("a file without a name")?);
        if path.is_dir() { copy(&path, &to)? } else { write(&to, &read(&path)?)? }
    }
    Ok(())
}

/// The files of a folder by name.
fn list(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let entries = fs::read_dir(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let mut paths: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    paths.retain(|path| path.is_file());
    paths.sort();
    Ok(paths)
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), String> {
    let failed = |problem: std::io::Error| format!("{}: {problem}", path.display());
    path.parent().map_or(Ok(()), fs::create_dir_all).map_err(failed)?;
    fs::write(path, bytes).map_err(failed)
}
