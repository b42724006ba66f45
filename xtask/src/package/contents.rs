//! What every package holds besides the program: help for `man` and shells, whose work is in it and under which terms, demos.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::command::run;
use crate::notice::{self, Engraving};
use crate::places::Folders;
use crate::steps;
use crate::tools;

use super::build::{LINUX, PackageSystem, WINDOWS};

/// Puts it together in a folder beside the built program.
pub(super) fn gather(
    places: &Folders,
    folder: &Path,
    system: PackageSystem,
    program: &Path,
) -> Result<PathBuf, String> {
    let contents = folder.join("contents");
    let _ = fs::remove_dir_all(&contents);
    match system {
        PackageSystem::Linux => help(program, &contents)?,
        // One for Windows cannot run here.
        PackageSystem::Windows => help(&steps::program(places)?, &contents)?,
    }
    let licences = contents.join("licences");
    let demo = contents.join("demo");
    for made in [&licences, &demo] {
        fs::create_dir_all(made).map_err(|problem| format!("{}: {problem}", made.display()))?;
    }
    notice::licences(places, &licences)?;
    let target = if system == PackageSystem::Linux { LINUX } else { WINDOWS };
    let text = notice::of_package(places, "arcata", target, Engraving::InTheProgram)?;
    write(&contents.join("NOTICE.txt"), &text)?;
    let mut copyright = text;
    for name in ["LICENSE-MIT", "LICENSE-APACHE"] {
        let path = licences.join(name);
        let licence =
            fs::read_to_string(&path).map_err(|problem| format!("{}: {problem}", path.display()))?;
        copyright.push_str(&format!("\n{name}\n\n{licence}"));
    }
    write(&contents.join("copyright"), &copyright)?;
    for name in ["CHANGELOG.md", "SECURITY.md", "UNSUPPORTED.md"] {
        tools::copy(&places.root.join(name), &contents.join(name))?;
    }
    tools::copy(&places.root.join("packaging").join("READ-ME.txt"), &contents.join("READ-ME.txt"))?;
    for path in tools::list(&places.root.join("demo"))? {
        if path.extension().is_some_and(|ending| ending == "musicxml") {
            let name = path.file_name().unwrap_or_default();
            tools::copy(&path, &demo.join(name))?;
        }
    }
    for name in ["arcata.desktop", "arcata-musicxml.xml"] {
        tools::copy(&places.root.join("packaging").join(name), &contents.join(name))?;
    }
    tools::copy(&places.root.join("crates/workbench/page/icon.svg"), &contents.join("arcata.svg"))?;
    Ok(contents)
}

/// Pages for `man`, and what shells complete by: the program writes them.
fn help(program: &Path, contents: &Path) -> Result<(), String> {
    if !run(Command::new(program).arg("help-pages").arg(contents), "  ")?.well {
        return Err("the program does not write its help; see above".to_owned());
    }
    for path in tools::list(&contents.join("man"))? {
        let packed = run(Command::new("gzip").args(["--best", "--no-name"]).arg(&path), "  ")?.well;
        if !packed {
            return Err("gzip could not pack the man pages; see above".to_owned());
        }
    }
    Ok(())
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    fs::write(path, text).map_err(|problem| format!("{}: {problem}", path.display()))
}
