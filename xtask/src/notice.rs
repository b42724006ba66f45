//! Whose work is in what is given away, and under which terms.

use std::path::{Path, PathBuf};

use crate::command::{answer, cargo};
use crate::places::Folders;
use crate::tools;

/// How the engraving library comes with a package.
pub(crate) enum Engraving {
    /// Compiled into the program.
    InTheProgram,
    /// As a file of its own beside a module for browsers.
    InAFile,
}

/// The licences' texts, into a folder.
pub(crate) fn licences(places: &Folders, folder: &Path) -> Result<(), String> {
    for name in ["LICENSE-MIT", "LICENSE-APACHE"] {
        tools::copy(&places.root.join(name), &folder.join(name))?;
    }
    let library = folder_of(places, "verovio-sys")?.join("vendor").join("verovio");
    tools::copy(&library.join("COPYING.LESSER"), &folder.join("LGPL-3.0.txt"))?;
    tools::copy(&library.join("COPYING"), &folder.join("GPL-3.0.txt"))
}

/// The notice for what a package of the workspace becomes on a system.
pub(crate) fn of_package(
    places: &Folders,
    package: &str,
    system: &str,
    engraving: Engraving,
) -> Result<String, String> {
    let mut tree = cargo(places, &["tree", "--quiet", "--locked", "--package", package, "--target", system]);
    tree.args(["--edges", "normal", "--prefix", "none", "--format", "{p} | {l}"]);
    let used = answer(&mut tree).ok_or("cargo does not tell what the program is made of")?;
    let mut used: Vec<&str> = used
        .lines()
        .map(|line| line.trim_end_matches(" (*)"))
        .filter(|line| !line.starts_with("arcata") && !line.is_empty())
        .collect();
    used.sort_unstable();
    used.dedup();
    let (program, engraving) = match engraving {
        Engraving::InAFile => (
            "arcata.wasm is",
            "verovio/verovio-module.mjs: the engraving library Verovio, version 6.2.0, LGPL-3.0-or-later (licences/LGPL-3.0.txt,\n\
             licences/GPL-3.0.txt), as its makers publish it on npm, unchanged; its source is at\n\
             https://github.com/rism-digital/verovio. It is a file of its own: another version can be put in its place.\n\n\
             fonts.css: the music font Bravura, SIL Open Font License 1.1, as it comes with the engraving library, which also holds\n\
             Liberation Serif under the same licence.",
        ),
        Engraving::InTheProgram => (
            "The program is",
            "The engraving library Verovio, version 6.2.1, LGPL-3.0-or-later (licences/LGPL-3.0.txt, licences/GPL-3.0.txt), is in the\n\
             program, unchanged, as the package verovio-sys of crates.io brings its source. All that the program is made from is open\n\
             source, this project's part under MIT or Apache-2.0: whoever wants another version of the library in it puts its source\n\
             in the place of that package ([patch.crates-io] in Cargo.toml) and builds the program anew with cargo build --release.\n\n\
             The music font Bravura and Liberation Serif, SIL Open Font License 1.1, come with the engraving library.",
        ),
    };
    Ok(format!(
        "Arcata: MIT OR Apache-2.0 (licences/LICENSE-MIT, licences/LICENSE-APACHE).\n\n{engraving}\n\n\
         {program} made from these packages of crates.io, each under its own terms:\n\n{}\n",
        used.join("\n")
    ))
}

/// The folder of a package from the registry, where cargo has it.
pub(crate) fn folder_of(places: &Folders, name: &str) -> Result<PathBuf, String> {
    let described = answer(&mut cargo(places, &["metadata", "--format-version", "1", "--locked"]));
    let described = described.ok_or("cargo does not tell where its packages are")?;
    let is_it = |path: &Path| {
        let folder = path.parent().and_then(Path::file_name).unwrap_or_default().to_string_lossy();
        let version = folder.strip_prefix(name).and_then(|rest| rest.strip_prefix('-'));
        version.is_some_and(|version| version.starts_with(|first: char| first.is_ascii_digit()))
    };
    let paths = described.split("\"manifest_path\":\"").skip(1).filter_map(|rest| rest.split('"').next());
    let found = paths.map(PathBuf::from).find(|path| is_it(path));
    let found = found.and_then(|path| path.parent().map(Path::to_owned));
    found.ok_or_else(|| format!("the package {name} is not among cargo's"))
}
