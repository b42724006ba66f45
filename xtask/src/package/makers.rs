//! Packages for systems of packages: Debian's, made by cargo-deb, and Python's, made by maturin.

use std::fs;
use std::path::{Path, PathBuf};

use crate::command::{cargo, run};
use crate::places::Folders;
use crate::tools;

use super::build::{self, Built, CARGO_DEB, LINUX, PROFILE};

/// A Debian package; what it holds stands in `crates/cli/Cargo.toml`.
pub(super) fn debian(places: &Folders, built: &Built, out: &Path, date: u64) -> Result<PathBuf, String> {
    tools::debian_programs(&[("dpkg-deb", "dpkg")])?;
    let tools = tools::cargo_tool(places, "cargo-deb", CARGO_DEB)?;
    let mut make = cargo(places, &["deb", "--no-build", "--no-strip", "--quiet", "--package", "arcata"]);
    make.args(["--target", LINUX, "--profile", PROFILE, "--output"]).arg(out);
    make.env("PATH", tools::path_with(&tools)).env("SOURCE_DATE_EPOCH", date.to_string());
    // The program is that of the other packages; its path is not told twice.
    debug_assert!(built.program.is_file());
    made(&mut make, out, "deb")
}

/// A Python wheel that brings the command.
pub(super) fn wheel(places: &Folders, built: &Built, out: &Path, date: u64) -> Result<PathBuf, String> {
    let folder = built.contents.with_file_name("wheel");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(folder.join("licences"))
        .map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let source = places.root.join("packaging").join("wheel");
    let text = fs::read_to_string(source.join("pyproject.toml"))
        .map_err(|problem| format!("pyproject.toml: {problem}"))?;
    let manifest = places.root.join("crates").join("cli").join("Cargo.toml");
    let text = text.replace("../../crates/cli/Cargo.toml", &manifest.display().to_string());
    fs::write(folder.join("pyproject.toml"), text).map_err(|problem| format!("pyproject.toml: {problem}"))?;
    tools::copy(&source.join("READ-ME.md"), &folder.join("READ-ME.md"))?;
    tools::copy(&built.contents.join("NOTICE.txt"), &folder.join("NOTICE.txt"))?;
    for path in tools::list(&built.contents.join("licences"))? {
        tools::copy(&path, &folder.join("licences").join(path.file_name().unwrap_or_default()))?;
    }
    let python = tools::python_with(places, "packaging.txt")?;
    let mut make = std::process::Command::new(python);
    make.args([
        "-m",
        "maturin",
        "build",
        "--quiet",
        "--locked",
        "--zig",
        "--profile",
        PROFILE,
        "--target",
        LINUX,
    ]);
    make.args(["--compatibility", &format!("manylinux_{}", build::C_LIBRARY.replace('.', "_")), "--out"])
        .arg(out);
    make.current_dir(&folder)
        .env("CARGO_TARGET_DIR", &places.target)
        .env("SOURCE_DATE_EPOCH", date.to_string());
    make.env("CARGO_ZIGBUILD_ZIG_PATH", build::zig(places)?).env("RUSTFLAGS", build::flags(places, ""));
    build::same_everywhere(places, &mut make, "x86_64_unknown_linux_gnu");
    made(&mut make, out, "whl")
}

/// Runs what makes a package, and finds it.
fn made(make: &mut std::process::Command, out: &Path, ending: &str) -> Result<PathBuf, String> {
    if !run(make, "  ")?.well {
        return Err(format!("the package (.{ending}) could not be made; see above"));
    }
    let found = tools::list(out)?.into_iter().find(|path| path.extension().is_some_and(|end| end == ending));
    found.ok_or_else(|| format!("the package (.{ending}) is not where it was put"))
}
