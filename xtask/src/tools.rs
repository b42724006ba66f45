//! What the checks need besides Rust: an environment for Python, and cargo-fuzz.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::command::{answer, cargo, run};
use crate::places::{Folders, key};

/// The Python of an environment with the packages of `outside/requirements.txt`, made when it is not
/// there yet. A change of the list makes another environment.
pub(crate) fn python(places: &Folders) -> Result<PathBuf, String> {
    python_with(places, "requirements.txt")
}

/// A Python environment with the packages of a list in `outside`. A change of the list makes another one.
pub(crate) fn python_with(places: &Folders, list: &str) -> Result<PathBuf, String> {
    let name = list;
    let list = places.root.join("outside").join(list);
    let wanted = fs::read(&list).map_err(|problem| format!("{}: {problem}", list.display()))?;
    let home = places.cache.join(format!("python-{}", key(&wanted)));
    let program = home.join("bin").join("python");
    let ready = home.join("complete");
    if ready.is_file() {
        return Ok(program);
    }
    println!("installing the Python packages of outside/{name} into {}", home.display());
    if home.exists() {
        fs::remove_dir_all(&home).map_err(|problem| format!("{}: {problem}", home.display()))?;
    }
    let made = run(Command::new("python3").args(["-m", "venv"]).arg(&home), "  ")?;
    if !made.well {
        return Err("python3 cannot make an environment; on Debian install python3-venv".to_owned());
    }
    let mut install = Command::new(&program);
    install
        .args(["-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--requirement"])
        .arg(&list);
    if !run(&mut install, "  ")?.well {
        return Err("pip could not install the packages; see above".to_owned());
    }
    fs::write(&ready, "").map_err(|problem| format!("{}: {problem}", ready.display()))?;
    Ok(program)
}

/// What opens pages: Node.js with the packages of `browser/package-lock.json`, Chromium, and Firefox.
pub(crate) struct Browser {
    /// A copy of `browser` with its packages beside it.
    pub(crate) home: PathBuf,
    /// Chromium.
    pub(crate) program: PathBuf,
    /// Firefox, by the name that Debian gives it or by its own.
    pub(crate) firefox: PathBuf,
}

impl Browser {
    /// Finds them; installs Debian's packages where they are missing and that is allowed, and the npm packages
    /// into the cache.
    pub(crate) fn find(places: &Folders) -> Result<Self, String> {
        let mut wanted = vec![("node", "nodejs"), ("npm", "npm"), ("chromium", "chromium")];
        let firefox = || on_path("firefox-esr").or_else(|| on_path("firefox"));
        if firefox().is_none() {
            wanted.push(("firefox-esr", "firefox-esr"));
        }
        debian_programs(&wanted)
            .map_err(|problem| format!("the pages are opened in two browsers; {problem}"))?;
        let program = on_path("chromium").ok_or("Chromium is installed but not on the search path")?;
        let firefox = firefox().ok_or("Firefox is installed but not on the search path")?;
        Ok(Self { home: packages(places)?, program, firefox })
    }
}

/// The folder of the cache with the npm packages. A change of their list makes another one.
pub(crate) fn packages(places: &Folders) -> Result<PathBuf, String> {
    let source = places.root.join("browser");
    let list = source.join("package-lock.json");
    let wanted = fs::read(&list).map_err(|problem| format!("{}: {problem}", list.display()))?;
    let home = places.cache.join(format!("browser-{}", key(&wanted)));
    let ready = home.join("complete");
    if ready.is_file() {
        return Ok(home);
    }
    println!("installing the npm packages of browser/package-lock.json into {}", home.display());
    fs::create_dir_all(&home).map_err(|problem| format!("{}: {problem}", home.display()))?;
    for name in ["package.json", "package-lock.json", ".npmrc"] {
        copy(&source.join(name), &home.join(name))?;
    }
    let mut install = Command::new("npm");
    install.args(["ci", "--no-audit", "--no-fund"]).current_dir(&home);
    if !run(&mut install, "  ")?.well {
        return Err("npm could not install the packages; see above".to_owned());
    }
    fs::write(&ready, "").map_err(|problem| format!("{}: {problem}", ready.display()))?;
    Ok(home)
}

pub(crate) fn copy(from: &Path, to: &Path) -> Result<(), String> {
    fs::copy(from, to).map(|_| ()).map_err(|problem| format!("{}: {problem}", from.display()))
}

/// What is in a folder, in order of names.
pub(crate) fn list(folder: &Path) -> Result<Vec<PathBuf>, String> {
    let entries = fs::read_dir(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    let mut found: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    found.sort();
    Ok(found)
}

/// Whether nothing is in a folder.
pub(crate) fn is_empty(folder: &Path) -> bool {
    list(folder).is_ok_and(|found| found.is_empty())
}

/// Makes sure that programs are there, each with the package of Debian that brings it.
pub(crate) fn debian_programs(wanted: &[(&str, &str)]) -> Result<(), String> {
    let missing: Vec<&str> = wanted
        .iter()
        .filter(|(program, _)| on_path(program).is_none())
        .map(|(_, package)| *package)
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    println!("installing {} from Debian", missing.join(", "));
    // A first try without the list of packages being fetched anew: it may be fresh enough.
    if debian(&missing)? || (debian_update()? && debian(&missing)?) {
        return Ok(());
    }
    let packages = missing.join(" ");
    Err(format!("install {} (on Debian: apt-get install {packages})", missing.join(", ")))
}

/// Makes sure that the toolchain has the standard library for a system; rustup is asked for what is missing.
pub(crate) fn rust_target(system: &str) -> Result<(), String> {
    let mut libraries = Command::new("rustc");
    let there = answer(libraries.args(["--print", "target-libdir", "--target", system]));
    let there = there.is_some_and(|folder| Path::new(folder.trim()).is_dir());
    if there || answer(Command::new("rustup").args(["target", "add", system])).is_some() {
        return Ok(());
    }
    Err(format!("this toolchain has no standard library for {system}, and rustup could not get it"))
}

/// Makes sure that a command of cargo is there in the version asked for, in the cache; the folder it is in.
pub(crate) fn cargo_tool(places: &Folders, name: &str, version: &str) -> Result<PathBuf, String> {
    let folder = tools_folder(places);
    let ready = folder.join(format!("{name}-{version}"));
    if !ready.is_file() {
        println!("installing {name} {version} into {}", folder.display());
        let mut install = cargo(places, &["install", "--locked", "--quiet", "--force", "--root"]);
        install.arg(&folder).args(["--version", version, name]);
        // Built where no other build waits for it.
        install.env("CARGO_TARGET_DIR", folder.join("target"));
        if !run(&mut install, "  ")?.well {
            return Err(format!("{name} could not be installed; see above"));
        }
        fs::write(&ready, "").map_err(|problem| format!("{}: {problem}", ready.display()))?;
    }
    Ok(folder)
}

fn debian(packages: &[&str]) -> Result<bool, String> {
    let mut install = Command::new("apt-get");
    install.args(["install", "--yes", "--no-install-recommends"]).args(packages);
    install.env("DEBIAN_FRONTEND", "noninteractive");
    Ok(on_path("apt-get").is_some() && run(&mut install, "  ")?.well)
}

fn debian_update() -> Result<bool, String> {
    Ok(on_path("apt-get").is_some() && run(Command::new("apt-get").arg("update"), "  ")?.well)
}

/// A program on the search path.
pub(crate) fn on_path(program: &str) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    std::env::split_paths(&path).map(|folder| folder.join(program)).find(|file| file.is_file())
}

/// How `cargo fuzz` is called: its sanitizers need a nightly compiler, or a stable one that is told to
/// take nightly flags.
pub(crate) enum Fuzzer {
    /// By a toolchain of this name.
    Nightly(String),
    /// By the toolchain in use, with `RUSTC_BOOTSTRAP=1`.
    Bootstrap,
}

impl Fuzzer {
    /// Finds the fuzzer, and installs cargo-fuzz into the cache where there is none.
    pub(crate) fn find(places: &Folders) -> Result<Self, String> {
        let tools = tools_folder(places);
        let there = answer(cargo(places, &["fuzz", "--version"]).env("PATH", path_with(&tools)));
        if there.is_none() {
            println!("installing cargo-fuzz into {}", tools.display());
            let mut install = cargo(places, &["install", "cargo-fuzz", "--locked", "--quiet", "--root"]);
            if !run(install.arg(&tools), "  ")?.well {
                return Err("cargo-fuzz could not be installed; see above".to_owned());
            }
        }
        let toolchains = answer(Command::new("rustup").args(["toolchain", "list"])).unwrap_or_default();
        let names = toolchains.lines().filter_map(|line| line.split_whitespace().next());
        let nightly = names.filter(|name| name.starts_with("nightly")).map(str::to_owned).next();
        Ok(nightly.map_or(Self::Bootstrap, Self::Nightly))
    }

    /// A `cargo fuzz` command.
    pub(crate) fn command(&self, places: &Folders, arguments: &[&str]) -> Command {
        let mut command = match self {
            Self::Nightly(toolchain) => {
                let mut command = Command::new("rustup");
                command.args(["run", toolchain, "cargo"]);
                // The stable cargo that runs this program must not be taken for the nightly one.
                command.env_remove("CARGO").env_remove("RUSTUP_TOOLCHAIN");
                command
            }
            Self::Bootstrap => {
                let mut command = cargo(places, &[]);
                command.env("RUSTC_BOOTSTRAP", "1");
                command
            }
        };
        command.arg("fuzz").args(arguments).current_dir(&places.root);
        command.env("PATH", path_with(&tools_folder(places))).env_remove("CARGO_TARGET_DIR");
        command
    }
}

pub(crate) fn tools_folder(places: &Folders) -> PathBuf {
    places.cache.join("tools")
}

/// The search path with the programs of the cache at its end.
pub(crate) fn path_with(tools: &Path) -> std::ffi::OsString {
    let path = std::env::var_os("PATH").unwrap_or_default();
    let folders = std::env::split_paths(&path).chain([tools.join("bin")]);
    std::env::join_paths(folders).unwrap_or(path)
}
