//! Archives to unpack: for Linux and for Windows. The same files make the same bytes.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::command::run;
use crate::places::Folders;
use crate::tools;

use super::build::Built;
use super::version;

/// What archives hold beside the program and what shells complete by: the Debian package has the rest.
const EVERYWHERE: [&str; 8] = [
    "READ-ME.txt",
    "NOTICE.txt",
    "CHANGELOG.md",
    "SECURITY.md",
    "UNSUPPORTED.md",
    "licences",
    "demo",
    "completions",
];

/// An archive for Linux.
pub(super) fn tar(places: &Folders, built: &Built, out: &Path, date: u64) -> Result<PathBuf, String> {
    let (name, folder) = unpacked(places, built, "linux-x86_64", &["man"])?;
    let path = out.join(format!("{name}.tar.xz"));
    let mut pack = Command::new("tar");
    pack.args([
        "--create",
        "--sort=name",
        "--owner=0",
        "--group=0",
        "--numeric-owner",
        "--format=gnu",
        "--mode=u+rw,go+r-w,a+X",
    ]);
    pack.arg(format!("--mtime=@{date}"))
        .arg("--use-compress-program=xz -9 --threads=1")
        .arg("--file")
        .arg(&path);
    pack.arg("--directory").arg(folder.parent().unwrap_or(&folder)).arg(&name);
    packed(&mut pack, path)
}

/// An archive for Windows.
pub(super) fn zip(places: &Folders, built: &Built, out: &Path, date: u64) -> Result<PathBuf, String> {
    let (name, folder) = unpacked(places, built, "windows-x86_64", &[])?;
    let path = out.join(format!("{name}.zip"));
    let python = tools::python_with(places, "packaging.txt")?;
    let mut pack = Command::new(python);
    pack.arg(places.root.join("packaging").join("zip.py")).arg(&folder).arg(&path).arg(date.to_string());
    packed(&mut pack, path)
}

fn packed(pack: &mut Command, path: PathBuf) -> Result<PathBuf, String> {
    if run(pack, "  ")?.well {
        Ok(path)
    } else {
        Err(format!("{} could not be packed; see above", path.display()))
    }
}

/// A folder as it will be unpacked, and its name.
fn unpacked(
    places: &Folders,
    built: &Built,
    system: &str,
    more: &[&str],
) -> Result<(String, PathBuf), String> {
    let name = format!("arcata-{}-{system}", version(places)?);
    let folder = built.contents.with_file_name("unpacked").join(&name);
    let _ = fs::remove_dir_all(&folder);
    copy_all(&built.program, &folder.join(built.program.file_name().unwrap_or_default()))?;
    for what in EVERYWHERE.iter().chain(more) {
        copy_all(&built.contents.join(what), &folder.join(what))?;
    }
    Ok((name, folder))
}

fn copy_all(from: &Path, to: &Path) -> Result<(), String> {
    if !from.is_dir() {
        let folder = to.parent().unwrap_or(to);
        fs::create_dir_all(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        return tools::copy(from, to);
    }
    for path in tools::list(from)? {
        copy_all(&path, &to.join(path.file_name().unwrap_or_default()))?;
    }
    Ok(())
}
