//! The program, built to be given away.

use std::path::PathBuf;

use crate::command::{cargo, run};
use crate::places::Folders;
use crate::tools;

use super::{contents, megabytes};

/// The system that Linux packages are for.
pub(crate) const LINUX: &str = "x86_64-unknown-linux-gnu";

/// The oldest C library that the program runs with: that of Debian 10, Ubuntu 18.10 and Red Hat Enterprise Linux 8.
pub(super) const C_LIBRARY: &str = "2.28";

/// The system that the Windows program is for.
pub(crate) const WINDOWS: &str = "x86_64-pc-windows-gnu";

/// The profile in the workspace's Cargo.toml.
pub(super) const PROFILE: &str = "shipped";

/// Versions of the programs that make packages: the same make the same.
pub(super) const ZIGBUILD: &str = "0.24.1";
pub(super) const CARGO_DEB: &str = "3.8.0";
pub(super) const CYCLONEDX: &str = "0.5.9";

/// What a program is built for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum PackageSystem {
    Linux,
    Windows,
}

/// A built program, and what goes into a package with it.
pub(super) struct Built {
    pub(super) program: PathBuf,
    /// Man pages, completions, licences, demos.
    pub(super) contents: PathBuf,
}

/// Builds it.
pub(super) fn build(places: &Folders, system: PackageSystem, date: u64) -> Result<Built, String> {
    let (target, program) = match system {
        PackageSystem::Linux => (LINUX, "arcata"),
        PackageSystem::Windows => (WINDOWS, "arcata.exe"),
    };
    let mut command = match system {
        PackageSystem::Linux => {
            let tools = tools::cargo_tool(places, "cargo-zigbuild", ZIGBUILD)?;
            let mut command =
                cargo(places, &["zigbuild", "--locked", "--target", &format!("{LINUX}.{C_LIBRARY}")]);
            command.env("PATH", tools::path_with(&tools)).env("CARGO_ZIGBUILD_ZIG_PATH", zig(places)?);
            command.env("RUSTFLAGS", flags(places, ""));
            same_everywhere(places, &mut command, "x86_64_unknown_linux_gnu");
            command
        }
        PackageSystem::Windows => {
            tools::debian_programs(&[
                ("x86_64-w64-mingw32-g++-posix", "g++-mingw-w64-x86-64-posix"),
                ("x86_64-w64-mingw32-gcc-posix", "gcc-mingw-w64-x86-64-posix"),
            ])?;
            tools::rust_target(WINDOWS)?;
            let mut command = cargo(places, &["rustc", "--target", WINDOWS, "--bin", "arcata"]);
            command.env("CXX_x86_64_pc_windows_gnu", "x86_64-w64-mingw32-g++-posix");
            command.env("CC_x86_64_pc_windows_gnu", "x86_64-w64-mingw32-gcc-posix");
            command.env("CARGO_TARGET_X86_64_PC_WINDOWS_GNU_LINKER", "x86_64-w64-mingw32-g++-posix");
            let headers = windows_headers(places)?;
            compiler_flags(
                places,
                &mut command,
                "x86_64_pc_windows_gnu",
                &format!("-I{}", headers.display()),
            );
            // The libraries of the compiler go into the program: nobody has them.
            command
                .env("RUSTFLAGS", flags(places, "-Clink-arg=-static -Clink-arg=-Wl,--no-insert-timestamp"));
            command
        }
    };
    command.args(["--quiet", "--profile", PROFILE, "--package", "arcata"]);
    if system == PackageSystem::Windows {
        let libraries = windows_libraries(places)?;
        command.args(["--", &format!("-Clink-arg=-L{}", libraries.display())]);
    }
    command.env("SOURCE_DATE_EPOCH", date.to_string());
    if !run(&mut command, "  ")?.well {
        return Err(format!("the program for {target} does not build; see above"));
    }
    let folder = places.target.join(target).join(PROFILE);
    let program = folder.join(program);
    let bytes = std::fs::metadata(&program).map_err(|problem| format!("{}: {problem}", program.display()))?;
    println!("  the program has {:.1} MB", megabytes(bytes.len()));
    let contents = contents::gather(places, &folder, system, &program)?;
    Ok(Built { program, contents })
}

/// Where the compiler of C and C++ is that links against old libraries.
pub(super) fn zig(places: &Folders) -> Result<PathBuf, String> {
    let python = tools::python_with(places, "packaging.txt")?;
    let find = "import ziglang, os; print(os.path.join(os.path.dirname(ziglang.__file__), 'zig'))";
    let found = crate::command::answer(std::process::Command::new(python).args(["-c", find]));
    found
        .map(|path| PathBuf::from(path.trim()))
        .ok_or_else(|| "the compiler zig is not where it was put".to_owned())
}

/// Places of this machine, and what stands for them in the program: who builds it where is nobody's business, and the same source
/// makes the same bytes anywhere.
fn stand_ins(places: &Folders) -> Vec<(PathBuf, &'static str)> {
    let home = std::env::var_os("CARGO_HOME")
        .map(PathBuf::from)
        .or_else(|| std::env::var_os("HOME").map(|home| PathBuf::from(home).join(".cargo")));
    let registry = home.map(|home| (home.join("registry").join("src"), "/cargo"));
    registry
        .into_iter()
        .chain([(places.root.clone(), "/arcata"), (places.target.clone(), "/built")])
        .collect()
}

/// Flags of the Rust compiler.
pub(super) fn flags(places: &Folders, more: &str) -> String {
    let stand_ins = stand_ins(places);
    let mut flags: Vec<String> = stand_ins
        .iter()
        .map(|(place, stands)| format!("--remap-path-prefix={}={stands}", place.display()))
        .collect();
    flags.extend(more.split_whitespace().map(str::to_owned));
    flags.join(" ")
}

/// The same for the compilers of C and C++, by the variables that their build scripts read.
pub(super) fn same_everywhere(places: &Folders, command: &mut std::process::Command, target: &str) {
    compiler_flags(places, command, target, "");
}

/// What the engraving library asks for by names of its own when it is built for Windows: its own headers of these names are for
/// another compiler, and with them its build script looks at the system that builds, not at the one that is built for. The compiler
/// that is used here has both things under their usual names.
fn windows_headers(places: &Folders) -> Result<PathBuf, String> {
    let folder = places.target.join("windows-headers");
    let failed = |problem: std::io::Error| format!("{}: {problem}", folder.display());
    std::fs::create_dir_all(&folder).map_err(failed)?;
    for (name, usual) in [("win_dirent.h", "dirent.h"), ("win_time.h", "sys/time.h")] {
        std::fs::write(folder.join(name), format!("#include <{usual}>\n")).map_err(failed)?;
    }
    Ok(folder)
}

/// A folder with the library of C++ as it goes into a program, and in no other form: the engraving library's build script asks for
/// the form that is a file of its own, which a linker takes where it finds both.
fn windows_libraries(places: &Folders) -> Result<PathBuf, String> {
    let name = "libstdc++.a";
    let mut compiler = std::process::Command::new("x86_64-w64-mingw32-g++-posix");
    let found = crate::command::answer(compiler.arg(format!("-print-file-name={name}")));
    let found = found.map(|path| PathBuf::from(path.trim())).filter(|path| path.is_absolute());
    let found = found.ok_or_else(|| format!("the compiler for Windows has no {name}"))?;
    let folder = places.target.join("windows-libraries");
    std::fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    tools::copy(&found, &folder.join(name))?;
    Ok(folder)
}

fn compiler_flags(places: &Folders, command: &mut std::process::Command, target: &str, more: &str) {
    let mut flags: Vec<String> = stand_ins(places)
        .iter()
        .map(|(place, stands)| format!("-ffile-prefix-map={}={stands}", place.display()))
        .collect();
    flags.extend(Some(more.to_owned()).filter(|more| !more.is_empty()));
    for variable in ["CFLAGS", "CXXFLAGS"] {
        command.env(format!("{variable}_{target}"), flags.join(" "));
    }
}
