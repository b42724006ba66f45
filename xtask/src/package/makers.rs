//! Packages for systems of packages: Debian's, made by cargo-deb, and Python's, made by hatchling.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::command::{cargo, run};
use crate::places::Folders;
use crate::tools;

use super::build::{Built, C_LIBRARY, CARGO_DEB, LINUX, PROFILE};
use super::version;

/// A Debian package; what it holds stands in `crates/cli/Cargo.toml`.
pub(super) fn debian(places: &Folders, out: &Path, date: u64) -> Result<PathBuf, String> {
    tools::debian_programs(&[("dpkg-deb", "dpkg")])?;
    let tools = tools::cargo_tool(places, "cargo-deb", CARGO_DEB)?;
    let mut make = cargo(places, &["deb", "--no-build", "--no-strip", "--quiet", "--package", "arcata"]);
    make.args(["--target", LINUX, "--profile", PROFILE, "--output"]).arg(out);
    make.env("PATH", tools::path_with(&tools)).env("SOURCE_DATE_EPOCH", date.to_string());
    made(&mut make, out, "deb")
}

/// A Python wheel that brings the command: the program of the other packages, not built once more.
pub(super) fn wheel(places: &Folders, built: &Built, out: &Path, date: u64) -> Result<PathBuf, String> {
    let folder = built.contents.with_file_name("wheel");
    let _ = fs::remove_dir_all(&folder);
    let said = |path: &Path, problem: std::io::Error| format!("{}: {problem}", path.display());
    fs::create_dir_all(folder.join("licences")).map_err(|problem| said(&folder, problem))?;
    let source = places.root.join("packaging").join("wheel");
    let described = source.join("pyproject.toml");
    let text = fs::read_to_string(&described).map_err(|problem| said(&described, problem))?;
    let text = text.replace("version = \"0.0.0\"", &format!("version = \"{}\"", version(places)?));
    let described = folder.join("pyproject.toml");
    fs::write(&described, text).map_err(|problem| said(&described, problem))?;
    tools::copy(&source.join("READ-ME.md"), &folder.join("READ-ME.md"))?;
    tools::copy(&built.contents.join("NOTICE.txt"), &folder.join("NOTICE.txt"))?;
    tools::copy(&built.program, &folder.join("arcata"))?;
    for path in tools::list(&built.contents.join("licences"))? {
        tools::copy(&path, &folder.join("licences").join(path.file_name().unwrap_or_default()))?;
    }
    let python = tools::python_with(places, "packaging.txt")?;
    let mut make = Command::new(&python);
    make.args(["-m", "hatchling", "build", "--target", "wheel", "--directory"]).arg(&folder);
    make.current_dir(&folder).env("SOURCE_DATE_EPOCH", date.to_string());
    let plain = made(&mut make, &folder, "whl")?;
    let mut tag = Command::new(&python);
    let system = format!("manylinux_{}_x86_64", C_LIBRARY.replace('.', "_"));
    tag.args([
        "-m",
        "wheel",
        "tags",
        "--remove",
        "--python-tag",
        "py3",
        "--abi-tag",
        "none",
        "--platform-tag",
    ]);
    tag.arg(system).arg(&plain).env("SOURCE_DATE_EPOCH", date.to_string());
    let tagged = made(&mut tag, &folder, "whl")?;
    let path = out.join(tagged.file_name().unwrap_or_default());
    tools::copy(&tagged, &path)?;
    Ok(path)
}

/// Runs what makes a package, and finds it.
fn made(make: &mut Command, out: &Path, ending: &str) -> Result<PathBuf, String> {
    if !run(make, "  ")?.well {
        return Err(format!("the package (.{ending}) could not be made; see above"));
    }
    let found = tools::list(out)?.into_iter().find(|path| path.extension().is_some_and(|end| end == ending));
    found.ok_or_else(|| format!("the package (.{ending}) is not where it was put"))
}
