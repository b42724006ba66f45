//! Many threads at once, from the first moment of a program. Where something goes wrong it does so once in ten programs (measured
//! without what keeps them apart), so that many are begun.
#![expect(clippy::unwrap_used, reason = "tests")]

use std::path::Path;
use std::process::Command;
use std::sync::Barrier;

use arcata_engrave::{Cutter, Engraver, Opening, SystemSpread};
use arcata_xml::{Document, Limits};

const THREADS: usize = 8;
const PROGRAMS: usize = 40;
/// Set in the programs that the test begins.
const CHILD: &str = "ARCATA_TEST_CHILD";

/// An accidental that holds for a second note: what the library fills a table for that all its toolkits share.
const MUSIC: &str = r#"<score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Violin</part-name></score-part></part-list>
<part id="P1"><measure number="1"><attributes><divisions>1</divisions><time><beats>2</beats><beat-type>4</beat-type></time></attributes>
<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration><type>quarter</type><accidental>sharp</accidental></note>
<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration><type>quarter</type></note></measure></part></score-partwise>"#;

#[test]
fn threads_that_begin_together_do_not_disturb_each_other() {
    if std::env::var_os(CHILD).is_some() {
        return begin_together();
    }
    let program = std::env::current_exe().unwrap();
    // Each lays out 12 MB of fonts; memory is quicker than a disk.
    let memory = Path::new("/dev/shm");
    let scratch = if memory.is_dir() { memory.to_owned() } else { std::env::temp_dir() };
    for number in 0..PROGRAMS {
        let ended = Command::new(&program).env(CHILD, "1").env("TMPDIR", &scratch).output().unwrap();
        assert!(ended.status.success(), "program {number}: {ended:?}");
    }
}

fn begin_together() {
    let document = Document::parse(MUSIC.as_bytes().to_vec(), &Limits::default()).unwrap();
    let score = arcata_score::read(&document);
    let slice = Cutter::new(&document, &score).cut(&[0], 0..=0, Opening::NextLine);
    let engraver = Engraver::new();
    // Toolkits for all, made one after another: what follows begins at one moment.
    (0..THREADS).for_each(|_| engraver.prepare());
    let barrier = Barrier::new(THREADS);
    std::thread::scope(|scope| {
        for _ in 0..THREADS {
            scope.spawn(|| {
                barrier.wait();
                engraver.engrave(&slice, SystemSpread::default()).unwrap();
            });
        }
    });
}
