//! Packages tried as somebody without a compiler does: put into a bare Debian of an older release, used, taken away again.

use std::fs;
use std::io::{BufRead as _, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use crate::command::{answer, run};
use crate::places::Folders;
use crate::tools;

use super::build::C_LIBRARY;
use super::trial_windows;

/// The release of Debian that packages are tried in: the oldest that Debian still serves (its C library is 2.31).
const RELEASE: &str = "bullseye";

/// What changes in a root without a package's doing.
const MOVING: [&str; 5] = ["./var/lib/dpkg", "./var/log", "./var/cache", "./proc", "./dev"];

/// Tries all that were made; whether all went well.
pub(super) fn all(places: &Folders, made: &[PathBuf]) -> Result<bool, String> {
    let mut well = true;
    for path in made {
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        println!("== {name}, tried");
        let tried = match path.extension().and_then(|ending| ending.to_str()) {
            Some("deb") => BareRoot::ready(places).and_then(|root| debian(places, &root, path)),
            Some("whl") => wheel(places, path),
            Some("zip") => trial_windows::zip(places, path),
            _ => BareRoot::ready(places).and_then(|root| archive(places, &root, path)),
        };
        match tried {
            Ok(told) => println!("  good: {told}"),
            Err(problem) => {
                well = false;
                println!("  FAILED: {problem}");
            }
        }
    }
    Ok(well)
}

/// A Debian with nothing in it but what every Debian has.
struct BareRoot {
    folder: PathBuf,
}

impl BareRoot {
    /// Made once, and kept.
    fn ready(places: &Folders) -> Result<Self, String> {
        let folder = places.cache.join(format!("bare-root-{RELEASE}"));
        let made = folder.join("complete");
        if !made.is_file() {
            tools::debian_programs(&[("debootstrap", "debootstrap")])?;
            println!("  unpacking Debian {RELEASE} into {}", folder.display());
            let _ = fs::remove_dir_all(&folder);
            let mut unpack = Command::new("debootstrap");
            unpack.args(["--variant=minbase", RELEASE]).arg(&folder);
            if let Some(mirror) = mirror() {
                unpack.arg(mirror);
            }
            if !run(&mut unpack, "    ")?.well {
                return Err("a bare Debian could not be unpacked; see above".to_owned());
            }
            fs::write(&made, "").map_err(|problem| format!("{}: {problem}", made.display()))?;
        }
        Ok(Self { folder })
    }

    /// A command in the root, which sees nothing of this machine but its processes and its loopback address.
    fn command(&self, script: &str) -> Command {
        // The processes are mounted in a space of names of its own, which goes with the command.
        let mut command = Command::new("unshare");
        let root = self.folder.display();
        command.args(["--mount", "--", "sh", "-c"]);
        command
            .arg(format!("mount -t proc proc '{root}/proc' && exec chroot '{root}' sh -c \"$0\""))
            .arg(script);
        command.env_clear().env("PATH", "/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin");
        command.env("HOME", "/root").env("LANG", "C.UTF-8");
        command
    }

    /// Runs it; what it printed.
    fn run(&self, script: &str, code: i32) -> Result<String, String> {
        ran(&mut self.command(script), script, code)
    }

    /// All files, with their sizes and rights.
    fn files(&self) -> Result<Vec<String>, String> {
        let mut find = Command::new("find");
        find.args([".", "-xdev", "(", "-type", "f", "-o", "-type", "l", "-o", "-type", "d", ")"]);
        find.args(["-printf", "%p %y %m %s\n"]).current_dir(&self.folder);
        let found = answer(&mut find).ok_or("the files of the bare root cannot be listed")?;
        let mut lines: Vec<String> = found
            .lines()
            .filter(|line| !MOVING.iter().any(|moving| line.starts_with(moving)))
            // A folder's size is the file system's matter.
            .map(|line| {
                if line.contains(" d ") {
                    line.rsplit_once(' ').map_or(line, |(start, _)| start)
                } else {
                    line
                }
            })
            .map(str::to_owned)
            .collect();
        lines.sort();
        Ok(lines)
    }

    fn has_no_compiler(&self) -> Result<(), String> {
        self.run("! command -v cc gcc g++ clang rustc cargo python3 node >&2", 0).map(|_| ())
    }
}

/// The mirror that this machine's own Debian uses.
fn mirror() -> Option<String> {
    let mut files = vec![PathBuf::from("/etc/apt/sources.list")];
    files.extend(tools::list(Path::new("/etc/apt/sources.list.d")).unwrap_or_default());
    let texts = files.iter().filter_map(|path| fs::read_to_string(path).ok()).collect::<Vec<_>>();
    let words = texts.iter().flat_map(|text| text.lines().filter(|line| !line.trim_start().starts_with('#')));
    let mut words = words.flat_map(str::split_whitespace);
    words.find(|word| word.starts_with("http") && !word.contains("security")).map(str::to_owned)
}

/// Runs a command that must end with a code; what it printed.
pub(super) fn ran(command: &mut Command, said: &str, code: i32) -> Result<String, String> {
    let output = command.stdin(Stdio::null()).output().map_err(|problem| format!("{said}: {problem}"))?;
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    if output.status.code() == Some(code) {
        return Ok(text);
    }
    let complaint = String::from_utf8_lossy(&output.stderr);
    Err(format!("{said}: {} instead of code {code}\n{text}{complaint}", output.status))
}

/// What a review leaves: a page with pictures.
pub(super) fn is_a_page(path: &Path) -> Result<(), String> {
    let page = fs::read_to_string(path).map_err(|problem| format!("{}: {problem}", path.display()))?;
    let pictures = page.matches("<svg").count();
    if pictures > 4 { Ok(()) } else { Err(format!("the page of the review has {pictures} pictures")) }
}

/// Opens the page that a started workbench tells of, in Chromium, and stops the workbench.
pub(super) fn is_opened(places: &Folders, start: &mut Command) -> Result<(), String> {
    let browser = tools::Browser::find(places)?;
    let mut child = start
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .map_err(|problem| format!("the workbench does not start: {problem}"))?;
    let seen = address(&mut child).and_then(|address| {
        let test = browser.home.join("opened.mjs");
        tools::copy(&places.root.join("packaging").join("opened.mjs"), &test)?;
        let mut node = Command::new("node");
        node.arg(&test).arg(&address).env("ARCATA_BROWSER", &browser.program);
        ran(&mut node, "the page in Chromium", 0).map(|_| ())
    });
    stop(&mut child);
    seen
}

/// So long a workbench has to put away what it had laid out.
const TO_STOP: Duration = Duration::from_secs(10);

/// Stops a workbench as a system does that shuts down.
fn stop(child: &mut Child) {
    let _ = answer(Command::new("kill").args(["-TERM", &child.id().to_string()]));
    let asked = Instant::now();
    while asked.elapsed() < TO_STOP {
        if !matches!(child.try_wait(), Ok(None)) {
            return;
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    let _ = child.kill();
    let _ = child.wait();
}

/// The first line that a workbench prints.
fn address(child: &mut Child) -> Result<String, String> {
    let out = child.stdout.take().ok_or("the workbench has no output")?;
    let mut line = String::new();
    BufReader::new(out).read_line(&mut line).map_err(|problem| format!("the workbench: {problem}"))?;
    let line = line.trim().to_owned();
    if line.starts_with("http://127.0.0.1:") {
        Ok(line)
    } else {
        Err(format!("the workbench told no address but \"{line}\""))
    }
}

/// No symbol of the C library is newer than the one that was built for.
fn is_old_enough(program: &Path) -> Result<(), String> {
    let bytes = fs::read(program).map_err(|problem| format!("{}: {problem}", program.display()))?;
    let number = |text: &str| -> Option<(u32, u32)> {
        let (major, minor) = text.split_once('.')?;
        let minor: String = minor.chars().take_while(char::is_ascii_digit).collect();
        Some((major.parse().ok()?, minor.parse().ok()?))
    };
    let text = String::from_utf8_lossy(&bytes);
    let newest = text.split("GLIBC_").skip(1).filter_map(|rest| number(rest.get(..6).unwrap_or(rest))).max();
    let most = number(C_LIBRARY).ok_or("the version of the C library is no number")?;
    match newest {
        Some(newest) if newest <= most => Ok(()),
        Some((major, minor)) => Err(format!("the program asks for the C library {major}.{minor}")),
        None => Err("the program names no C library".to_owned()),
    }
}

/// An archive: unpacked, used, its folder removed.
fn archive(places: &Folders, root: &BareRoot, path: &Path) -> Result<String, String> {
    root.has_no_compiler()?;
    let before = root.files()?;
    let opt = root.folder.join("opt");
    ran(Command::new("tar").arg("--extract").arg("--file").arg(path).arg("--directory").arg(&opt), "tar", 0)?;
    let folder = tools::list(&opt)?.pop().ok_or("the archive is empty")?;
    let name = folder.file_name().unwrap_or_default().to_string_lossy().into_owned();
    is_old_enough(&folder.join("arcata"))?;
    let used = used_in(places, root, &format!("/opt/{name}/arcata"), &format!("/opt/{name}/demo"));
    let _ = fs::remove_dir_all(&folder);
    let review = used?;
    traces(&before, root)?;
    Ok(review)
}

/// A Debian package: installed, used, purged.
fn debian(places: &Folders, root: &BareRoot, path: &Path) -> Result<String, String> {
    root.has_no_compiler()?;
    let before = root.files()?;
    let inside = root.folder.join("tmp").join("arcata.deb");
    tools::copy(path, &inside)?;
    let installed = root.run("dpkg --install /tmp/arcata.deb", 0);
    let _ = fs::remove_file(&inside);
    installed?;
    let used = used_in(places, root, "arcata", "/usr/share/doc/arcata/examples").and_then(|told| {
        root.run("test -s /usr/share/applications/arcata.desktop && test -s /usr/share/mime/packages/arcata-musicxml.xml", 0)?;
        Ok(told)
    });
    let purged = root.run("dpkg --purge arcata", 0);
    let told = used?;
    purged?;
    traces(&before, root)?;
    Ok(told)
}

/// The first commands in the root, and the page.
fn used_in(places: &Folders, root: &BareRoot, program: &str, demo: &str) -> Result<String, String> {
    let version = root.run(&format!("{program} --version"), 0)?;
    let own = "rm -rf /tmp/use && mkdir /tmp/use && cd /tmp/use && HOME=/tmp/use";
    let score = "study.musicxml";
    root.run(
        &format!(
            "{own} && cp {demo}/lantern-study.musicxml {score} && {program} review {score} --format html"
        ),
        1,
    )?;
    let used = root.folder.join("tmp").join("use");
    is_a_page(&used.join("study-review.html"))?;
    let plan = root.run(&format!("cd /tmp/use && {program} plan {score}"), 0)?;
    if !plan.contains("down") {
        return Err("the plan names no bow".to_owned());
    }
    is_opened(
        places,
        &mut root.command(&format!(
            "cd /tmp/use && HOME=/tmp/use TMPDIR=/tmp/use exec {program} open {score} --no-browser"
        )),
    )?;
    let _ = fs::remove_dir_all(&used);
    Ok(format!(
        "{} in Debian {RELEASE} without a compiler: review, plan, the page in Chromium; nothing is left of it",
        version.trim()
    ))
}

fn traces(before: &[String], root: &BareRoot) -> Result<(), String> {
    let after = root.files()?;
    let new: Vec<&String> = after.iter().filter(|line| before.binary_search(line).is_err()).collect();
    let gone = before.iter().filter(|line| after.binary_search(line).is_err()).count();
    if new.is_empty() && gone == 0 {
        return Ok(());
    }
    let first = new.iter().take(5).map(|line| line.as_str()).collect::<Vec<_>>().join(", ");
    Err(format!("{} files are left behind and {gone} are gone: {first}", new.len()))
}

/// A wheel: installed into an environment of Python from which no compiler is found, used, removed.
fn wheel(places: &Folders, path: &Path) -> Result<String, String> {
    let home = places.cache.join("trial-wheel");
    let _ = fs::remove_dir_all(&home);
    fs::create_dir_all(&home).map_err(|problem| format!("{}: {problem}", home.display()))?;
    let environment = home.join("environment");
    ran(Command::new("python3").args(["-m", "venv"]).arg(&environment), "python3 -m venv", 0)?;
    let bin = environment.join("bin");
    let listing = || -> Result<Vec<String>, String> {
        let find = Command::new("find")
            .arg(&environment)
            .args(["-not", "-name", "*.pyc", "-not", "-name", "__pycache__"])
            .output();
        let found = find.map_err(|problem| format!("find: {problem}"))?;
        let mut lines: Vec<String> =
            String::from_utf8_lossy(&found.stdout).lines().map(str::to_owned).collect();
        lines.sort();
        Ok(lines)
    };
    let before = listing()?;
    let command = |program: &str| {
        let mut command = Command::new(bin.join(program));
        command.env_clear().env("PATH", &bin).env("HOME", &home).env("LANG", "C.UTF-8").current_dir(&home);
        command
    };
    let pip = ["-m", "pip", "--disable-pip-version-check", "--quiet"];
    ran(command("python").args(pip).args(["install", "--no-index"]).arg(path), "pip install", 0)?;
    let version = ran(command("arcata").arg("--version"), "arcata --version", 0)?;
    tools::copy(&places.root.join("demo").join("lantern-study.musicxml"), &home.join("study.musicxml"))?;
    ran(command("arcata").args(["review", "study.musicxml", "--format", "html"]), "arcata review", 1)?;
    is_a_page(&home.join("study-review.html"))?;
    is_opened(places, command("arcata").args(["open", "study.musicxml", "--no-browser"]))?;
    ran(command("python").args(pip).args(["uninstall", "--yes", "arcata"]), "pip uninstall", 0)?;
    let after = listing()?;
    if after != before {
        return Err(format!(
            "{} files before it was installed, {} after it was removed",
            before.len(),
            after.len()
        ));
    }
    let _ = fs::remove_dir_all(&home);
    Ok(format!(
        "{} by pip, without a compiler: review, the page in Chromium; nothing is left of it",
        version.trim()
    ))
}
