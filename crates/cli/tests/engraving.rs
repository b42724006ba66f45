//! No music ends the program: the engraving library works in processes of its own, and what it is known to break off over is
//! kept away from it. Each odd input is legal MusicXML 4.0 or was met in mutated open scores.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "the tests look at files they made")]

use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Output;

use arcata_engrave::{EngravingOrder, Press, PressError};
use arcata_workers::Workers;
use assert_cmd::Command;

fn arcata(arguments: &[&str], folder: &Path) -> Output {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("arcata"));
    command.args(arguments).current_dir(folder).output().expect("runs")
}

fn workers() -> Workers {
    let program = PathBuf::from(assert_cmd::cargo::cargo_bin!("arcata"));
    Workers::new(program, vec![OsString::from("engraving-worker")])
}

/// One bar of two half notes in a metre.
fn order(time: &str, seconds: u64) -> EngravingOrder {
    let musicxml = format!(
        r#"<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list><part id="P1"><measure number="1"><attributes><divisions>1</divisions>{time}<clef><sign>G</sign><line>2</line></clef></attributes><note><pitch><step>G</step><octave>4</octave></pitch><duration>2</duration><type>half</type></note><note><pitch><step>A</step><octave>4</octave></pitch><duration>2</duration><type>half</type></note></measure></part></score-partwise>"#
    );
    EngravingOrder { options: r#"{"inputFrom":"musicxml"}"#.to_owned(), musicxml, seconds }
}

/// What ends the library (an assertion in its C++), and what it takes.
const FATAL: &str = "<time><senza-misura>X</senza-misura></time>";
const SOUND: &str = "<time><beats>4</beats><beat-type>4</beat-type></time>";

#[test]
fn a_worker_that_ends_costs_one_drawing() {
    let workers = workers();
    let drawn = workers.fill(&order(SOUND, 60)).expect("sound music is drawn");
    assert!(drawn.contains("<svg"));
    assert_eq!(workers.fill(&order(FATAL, 60)), Err(PressError::Refused));
    assert_eq!(workers.fill(&order(SOUND, 60)), Ok(drawn.clone()), "the same, by another worker");
    // Many at once, odd ones among them.
    let all: Vec<Result<String, PressError>> = std::thread::scope(|scope| {
        let fill = |index: usize| workers.fill(&order(if index % 3 == 1 { FATAL } else { SOUND }, 60));
        let threads: Vec<_> = (0..12).map(|index| scope.spawn(move || fill(index))).collect();
        threads.into_iter().map(|thread| thread.join().expect("no thread fails")).collect()
    });
    for (index, found) in all.into_iter().enumerate() {
        assert_eq!(
            found,
            if index % 3 == 1 { Err(PressError::Refused) } else { Ok(drawn.clone()) },
            "{index}"
        );
    }
}

#[test]
fn a_worker_that_takes_too_long_is_given_up() {
    let workers = workers();
    assert_eq!(workers.fill(&order(SOUND, 0)), Err(PressError::TooLong { seconds: 0 }));
    assert!(workers.fill(&order(SOUND, 60)).is_ok());
    let nothing = Workers::new(PathBuf::from("no-such-program"), Vec::new());
    assert_eq!(nothing.fill(&order(SOUND, 60)), Err(PressError::NotStarted));
}

#[test]
fn what_the_library_breaks_off_over_is_kept_away_from_it() {
    let folder = tempfile::tempdir().expect("a folder");
    let demo = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../demo/lantern-study.musicxml");
    let demo = std::fs::read_to_string(demo).expect("the demo");
    let (time, note) = (demo.find("<time>").expect("a metre"), demo.find("</note>").expect("a note"));
    let time_end = demo.find("</time>").expect("its end") + "</time>".len();
    let metre = |text: &str| [&demo[..time], text, &demo[time_end..]].concat();
    let clef = demo.find("<clef").expect("a clef");
    let odd = [
        ("senza", metre(FATAL)),
        ("beat", metre("<time><beats>4</beats><beat-type>0</beat-type></time>")),
        ("no-beat", metre("<time><beats>4</beats></time>")),
        ("fret", {
            let fret = "<notations><technical><fret>0</fret></technical></notations>";
            [&demo[..note], fret, &demo[note..]].concat()
        }),
        ("staves", [&demo[..clef], "<staves>32768</staves>", &demo[clef..]].concat()),
        ("size", {
            let end = demo.find("</attributes>").expect("attributes");
            let size = "<staff-details><staff-size>4294967296</staff-size></staff-details>";
            [&demo[..end], size, &demo[end..]].concat()
        }),
    ];
    for (name, text) in &odd {
        let score = format!("{name}.musicxml");
        std::fs::write(folder.path().join(&score), text).expect("written");
        let done = arcata(&["plan", &score, "--format", "svg", "--out", "lane.svg"], folder.path());
        assert_eq!(done.status.code(), Some(0), "{name}: {}", String::from_utf8_lossy(&done.stderr));
        if !matches!(*name, "senza" | "fret") {
            continue;
        }
        let done = arcata(&["parts", &score, "--out", &format!("{name}-parts")], folder.path());
        assert!(
            done.status.code().is_some_and(|code| code < 2),
            "{name}: {}",
            String::from_utf8_lossy(&done.stderr)
        );
    }
    // A folder of them: a page for each.
    let done = arcata(&["review", ".", "--format", "html", "--out", "pages"], folder.path());
    assert_eq!(done.status.code(), Some(1), "{}", String::from_utf8_lossy(&done.stderr));
    let pages = std::fs::read_dir(folder.path().join("pages")).expect("the pages").count();
    assert!(pages > odd.len(), "{pages} pages");
}
