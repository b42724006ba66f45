//! The archive for Windows, tried in Wine, which has the interface of Windows and not its every habit: what is good here was not
//! yet seen on a Windows.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::command::answer;
use crate::places::Folders;
use crate::tools;

use super::trial::{is_a_page, is_opened, ran};

/// Where Debian puts it: its 64-bit loader is not on the search path.
const WINE: [&str; 3] = ["wine64", "/usr/lib/wine/wine64", "/usr/bin/wine"];

/// Unpacks the archive and uses the program.
pub(super) fn zip(places: &Folders, path: &Path) -> Result<String, String> {
    let wine = wine()?;
    let home = places.cache.join("trial-windows");
    let _ = fs::remove_dir_all(&home);
    fs::create_dir_all(&home).map_err(|problem| format!("{}: {problem}", home.display()))?;
    ran(Command::new("python3").args(["-m", "zipfile", "-e"]).arg(path).arg(&home), "unpacking", 0)?;
    let folder = tools::list(&home)?.pop().ok_or("the archive is empty")?;
    let program = folder.join("arcata.exe");
    random_numbers(&folder)?;
    let prefix = home.join("wine");
    let command = || {
        let mut command = Command::new(&wine);
        command.arg(&program).env("WINEPREFIX", &prefix).env("WINEDEBUG", "-all").env("HOME", &home);
        // No desktop, no page in a browser of Wine's.
        command.env_remove("DISPLAY").current_dir(&home);
        command
    };
    let version = ran(command().arg("--version"), "arcata.exe --version", 0)?;
    // A blank and a letter that is not ASCII, as names have them.
    let score = "Übung eins.musicxml";
    tools::copy(&places.root.join("demo").join("lantern-study.musicxml"), &home.join(score))?;
    ran(command().args(["review", score, "--format", "html"]), "arcata.exe review", 1)?;
    is_a_page(&home.join("Übung eins-review.html"))?;
    let plan = ran(command().args(["plan", score]), "arcata.exe plan", 0)?;
    if !plan.contains("down") {
        return Err("the plan names no bow".to_owned());
    }
    is_opened(places, command().args(["open", score, "--no-browser"]))?;
    let mut stop = Command::new(wine.with_file_name("wineserver"));
    let _ = answer(stop.arg("--kill").env("WINEPREFIX", &prefix));
    let _ = fs::remove_dir_all(&home);
    Ok(format!("{} in Wine: review, plan, the page in Chromium", version.trim()))
}

/// Every Windows since 7 has a library for random numbers that Debian's Wine has not: one of our own stands in for it, in the folder of
/// the trial alone, and asks the older library that both have.
fn random_numbers(folder: &Path) -> Result<(), String> {
    const SOURCE: &str = "#include <windows.h>
BOOLEAN NTAPI SystemFunction036(PVOID, ULONG);
__declspec(dllexport) BOOL WINAPI ProcessPrng(PBYTE data, SIZE_T length) { return SystemFunction036(data, (ULONG)length); }
";
    let source = folder.join("random.c");
    fs::write(&source, SOURCE).map_err(|problem| format!("{}: {problem}", source.display()))?;
    let mut compiler = Command::new("x86_64-w64-mingw32-gcc-posix");
    compiler.arg("-shared").arg("-o").arg(folder.join("bcryptprimitives.dll")).arg(&source).arg("-ladvapi32");
    ran(&mut compiler, "what Wine lacks", 0)?;
    fs::remove_file(&source).map_err(|problem| format!("{}: {problem}", source.display()))
}

fn wine() -> Result<PathBuf, String> {
    let find = || {
        WINE.iter().find_map(|name| {
            tools::on_path(name).or_else(|| Some(PathBuf::from(name)).filter(|path| path.is_file()))
        })
    };
    if let Some(found) = find() {
        return Ok(found);
    }
    tools::debian_programs(&[("wine64", "wine64")])?;
    find().ok_or_else(|| "Wine is installed, and its program is not where Debian puts it".to_owned())
}
