//! How long a folder of 10,000 layers takes to list, as a user lists it: from the start of the program to the
//! last byte that it prints.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use arcata_layer::{Addresses, Entry, Layer, Mark, ScoreIdentity, write};
use arcata_score::NoteId;
use arcata_testkit::{Detail, ScoreShape, random_score};
use arcata_xml::{Document, Limits};

use crate::outcome::Result;
use crate::setting::{self, CheckSetting};

/// A hundred works with a hundred layers each.
const WORKS: usize = 100;
const LAYERS: usize = 100;
const RUNS: usize = 21;
/// Marks in each layer.
const ENTRIES: u32 = 24;
/// A file that changed so shortly before it was read is read again next time: the index is trusted after this.
const SETTLED: Duration = Duration::from_secs(3);

/// Makes the folder, lists it cold and warm, and asks for one owner.
pub(crate) fn run(setting: &CheckSetting) -> Result<()> {
    let program = program()?;
    let folder = setting.scratch("bench-list")?;
    let library = folder.join("library");
    make(&library)?;
    std::thread::sleep(SETTLED);
    let call = |more: &[&str]| list(&program, &folder, &library, more);
    let cold = call(&[])?;
    let cases: [(&str, &[&str]); 3] = [
        ("all of them", &[]),
        ("as JSON", &["--format", "json"]),
        ("of one owner", &["--owner", "owner 42"]),
    ];
    println!("{} layers of {WORKS} works, read for the first time: {:.0} ms", WORKS * LAYERS, ms(cold));
    for (name, more) in cases {
        let mut times: Vec<Duration> = (0..RUNS).map(|_| call(more)).collect::<Result<_>>()?;
        times.sort_unstable();
        println!(
            "{} layers listed, {name:12} best {:5.1} ms, median {:5.1}, worst of {RUNS} {:5.1}   at most 50",
            WORKS * LAYERS,
            ms(times[0]),
            ms(times[RUNS / 2]),
            ms(times[RUNS - 1])
        );
    }
    fs::remove_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

/// The command line program, built beside this one.
fn program() -> Result<PathBuf> {
    let here = std::env::current_exe().map_err(|problem| problem.to_string())?;
    let program = here.with_file_name(format!("arcata{}", std::env::consts::EXE_SUFFIX));
    let missing = || format!("{} is not built; call this through cargo xtask", program.display());
    if program.is_file() { Ok(program.clone()) } else { Err(missing()) }
}

fn list(program: &Path, folder: &Path, library: &Path, more: &[&str]) -> Result<Duration> {
    let mut command = Command::new(program);
    command.args(["layer", "list"]).arg(library).args(more).env("XDG_CACHE_HOME", folder.join("cache"));
    command.stdin(Stdio::null()).stderr(Stdio::piped()).stdout(Stdio::piped());
    let start = Instant::now();
    let output = command.output().map_err(|problem| problem.to_string())?;
    let time = start.elapsed();
    let lines = output.stdout.iter().filter(|byte| **byte == b'\n').count();
    let wanted = if more.contains(&"--owner") { WORKS } else { WORKS * LAYERS };
    if output.status.success() && lines >= wanted {
        Ok(time)
    } else {
        Err(format!("the list has {lines} lines; {}", String::from_utf8_lossy(&output.stderr)))
    }
}

fn make(library: &Path) -> Result<()> {
    let text = random_score(9, ScoreShape { parts: 4, bars: 16, detail: Detail::Slurs });
    let document =
        Document::parse(text.into_bytes(), &Limits::default()).map_err(|problem| problem.to_string())?;
    let score = arcata_score::read(&document);
    let addresses = Addresses::new(&score);
    let mark = |note: u32| if note.is_multiple_of(2) { Mark::Down } else { Mark::Up };
    let entries: Vec<Entry> = (0..ENTRIES)
        .filter_map(|note| Some(Entry::new(addresses.place(0, NoteId(note))?, mark(note))))
        .collect();
    for work in 0..WORKS {
        let folder = library.join(format!("work {work:02}"));
        fs::create_dir_all(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        for number in 0..LAYERS {
            let mut layer = Layer {
                title: format!("bowings {number:02}"),
                owner: format!("owner {number:02}"),
                ensemble: format!("ensemble {:02}", (work + number) % 37),
                date: "2026-03-01".into(),
                score: ScoreIdentity { title: Some(format!("Work {work:02}")), ..ScoreIdentity::default() },
                parts: addresses.part_keys().to_vec(),
                entries: entries.clone(),
                ..Layer::default()
            };
            layer.put_in_order();
            setting::write(&folder.join(format!("{number:02}.json")), write(&layer))?;
        }
    }
    Ok(())
}
