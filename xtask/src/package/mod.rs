//! Packages: the program for people who have no compiler.
//!
//! One program is built for Linux, against an old C library; an archive, a Debian package and a Python wheel bring it, each with its
//! licences, and beside them lie a bill of materials and the sums of all. One for Windows is built where it is asked for (`--only
//! windows`).

mod archive;
mod build;
mod contents;
mod makers;
mod trial;
mod trial_windows;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, ExitCode};

use crate::command::{answer, cargo, run};
use crate::places::Folders;
use crate::tools;

use build::{Built, PackageSystem};

/// Where the packages go unless --out says otherwise, among the built files.
const OUT: &str = "arcata-packages";

/// The file of sums, as `sha256sum --check` reads it.
const SUMS: &str = "SHA256SUMS";

/// A kind of package: what it is called on the command line, and for which system it is.
const KINDS: [(&str, PackageSystem); 4] = [
    ("archive", PackageSystem::Linux),
    ("deb", PackageSystem::Linux),
    ("wheel", PackageSystem::Linux),
    ("windows", PackageSystem::Windows),
];

/// What is made, where, and whether it is tried.
struct Order {
    out: PathBuf,
    kinds: Vec<(&'static str, PackageSystem)>,
    tried: bool,
}

/// Makes the packages.
pub(crate) fn package(places: &Folders, arguments: &[String]) -> Result<ExitCode, String> {
    let order = order(places, arguments)?;
    let out = &order.out;
    if out.exists() && !out.join(SUMS).is_file() && !tools::is_empty(out) {
        return Err(format!("{} holds other files; name a folder that is empty or new", out.display()));
    }
    let _ = fs::remove_dir_all(out);
    fs::create_dir_all(out).map_err(|problem| format!("{}: {problem}", out.display()))?;
    let date = date(places);
    let mut linux = None;
    let mut made = Vec::new();
    for (kind, system) in &order.kinds {
        println!("== {kind}");
        let built = match (system, &linux) {
            (PackageSystem::Linux, Some(_)) => None,
            (system, _) => Some(build::build(places, *system, date)?),
        };
        if *system == PackageSystem::Linux && linux.is_none() {
            linux = built;
            made.push(make(places, kind, linux.as_ref().ok_or("nothing was built")?, &order, date)?);
            continue;
        }
        let built = built.as_ref().or(linux.as_ref()).ok_or("nothing was built")?;
        made.push(make(places, kind, built, &order, date)?);
    }
    bill(places, out, date)?;
    sums(out)?;
    for path in &made {
        println!("{}", said(path));
    }
    println!("\n{} holds the packages", out.display());
    if !order.tried {
        return Ok(ExitCode::SUCCESS);
    }
    let tried = trial::all(places, &made)?;
    Ok(if tried { ExitCode::SUCCESS } else { ExitCode::FAILURE })
}

fn order(places: &Folders, arguments: &[String]) -> Result<Order, String> {
    let mut order = Order { out: places.target.join(OUT), kinds: Vec::new(), tried: false };
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        match argument.as_str() {
            "--try" => order.tried = true,
            "--out" => order.out = left.next().map(PathBuf::from).ok_or("--out wants a folder")?,
            "--only" => {
                let name = left.next().ok_or("--only wants a kind of package")?;
                let kind = KINDS.into_iter().find(|(known, _)| known == name);
                order.kinds.push(kind.ok_or_else(|| {
                    format!("there is no package \"{name}\"; there are archive, deb, wheel and windows")
                })?);
            }
            other => {
                return Err(format!(
                    "package does not know \"{other}\"; it takes --out FOLDER, --only KIND and --try"
                ));
            }
        }
    }
    if order.kinds.is_empty() {
        // The one for Windows is made where it is asked for: the engraving library is compiled once more for it.
        order.kinds = KINDS.into_iter().filter(|(_, system)| *system == PackageSystem::Linux).collect();
    }
    Ok(order)
}

fn make(places: &Folders, kind: &str, built: &Built, order: &Order, date: u64) -> Result<PathBuf, String> {
    match kind {
        "deb" => makers::debian(places, &order.out, date),
        "wheel" => makers::wheel(places, built, &order.out, date),
        "windows" => archive::zip(places, built, &order.out, date),
        _ => archive::tar(places, built, &order.out, date),
    }
}

/// The version of all crates.
fn version(places: &Folders) -> Result<String, String> {
    let text = fs::read_to_string(places.root.join("Cargo.toml"))
        .map_err(|problem| format!("Cargo.toml: {problem}"))?;
    let found = text.lines().find_map(|line| line.strip_prefix("version = \"")?.strip_suffix('"'));
    found.map(str::to_owned).ok_or_else(|| "Cargo.toml has no version".to_owned())
}

/// A limit: no packed file can be older than this, the first second that a zip archive can say (1980).
const OLDEST: u64 = 315_532_800;

/// The date of all packed files, seconds since 1970: that of the commit, so that the same commit makes the same bytes.
fn date(places: &Folders) -> u64 {
    let mut last = Command::new("git");
    last.args(["log", "-1", "--format=%ct"]).current_dir(&places.root);
    answer(&mut last).and_then(|text| text.trim().parse().ok()).unwrap_or(OLDEST).max(OLDEST)
}

/// What the program is made of, in the standard form of `CycloneDX` (ECMA-424), of every package of crates.io.
fn bill(places: &Folders, out: &Path, date: u64) -> Result<(), String> {
    println!("== bill of materials");
    let tools = tools::cargo_tool(places, "cargo-cyclonedx", build::CYCLONEDX)?;
    let name = "arcata-bill";
    let mut list = cargo(places, &["cyclonedx", "--quiet", "--format", "json", "--override-filename", name]);
    list.args(["--manifest-path", "crates/cli/Cargo.toml", "--target", build::LINUX]);
    list.env("PATH", tools::path_with(&tools)).env("SOURCE_DATE_EPOCH", date.to_string());
    let well = run(&mut list, "  ")?.well;
    // The tool writes into every crate's folder.
    let file = format!("{name}.json");
    let crates = places.root.join("crates");
    let mut folders = tools::list(&crates)?;
    folders.push(places.root.join("xtask"));
    let mut found = false;
    for folder in folders {
        let path = folder.join(&file);
        if !path.is_file() {
            continue;
        }
        if folder.ends_with("cli") {
            let version = version(places)?;
            let text =
                fs::read_to_string(&path).map_err(|problem| format!("{}: {problem}", path.display()))?;
            let to = out.join(format!("arcata-{version}.cdx.json"));
            fs::write(&to, without_places(places, &text))
                .map_err(|problem| format!("{}: {problem}", to.display()))?;
            found = true;
        }
        fs::remove_file(&path).map_err(|problem| format!("{}: {problem}", path.display()))?;
    }
    if well && found { Ok(()) } else { Err("the bill of materials could not be made; see above".to_owned()) }
}

/// A bill that does not tell where the checkout was.
fn without_places(places: &Folders, text: &str) -> String {
    let root = places.root.display().to_string();
    text.replace(&format!("path+file://{root}"), "arcata").replace(&root, "arcata")
}

/// The sums of all files, in order of their names.
fn sums(out: &Path) -> Result<(), String> {
    let mut names: Vec<String> = tools::list(out)?
        .into_iter()
        .filter_map(|path| path.file_name().map(|name| name.to_string_lossy().into_owned()))
        .collect();
    names.sort();
    let text = answer(Command::new("sha256sum").args(&names).current_dir(out)).ok_or("sha256sum failed")?;
    fs::write(out.join(SUMS), text).map_err(|problem| format!("{SUMS}: {problem}"))
}

/// A file's name and size.
fn said(path: &Path) -> String {
    let bytes = fs::metadata(path).map_or(0, |found| found.len());
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    format!("{:7.2} MB  {name}", megabytes(bytes))
}

/// For people: the two decimals are exact enough.
#[expect(clippy::cast_precision_loss, reason = "shown with two decimals")]
fn megabytes(bytes: u64) -> f64 {
    bytes as f64 / 1e6
}
