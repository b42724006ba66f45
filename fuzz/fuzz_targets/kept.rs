//! Text is read as every other file that is kept: what is set aside, a journal, habits, a house profile, a player.
#![no_main]

use arcata_bow::Profile;
use arcata_desk::{HEADING, JournalContent, JournalEnd, journal_line};
use arcata_engrave::House;
use arcata_habits::Habits;
use arcata_review::Aside;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    journal(bytes);
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let lines = text.matches('\n').count() + 1;
    match Aside::read(text) {
        Ok(aside) => {
            let written = aside.entries.iter().map(|entry| entry.lines());
            let written = written.chain(aside.slurs.iter().map(|slur| slur.lines()));
            let written = Aside::head("a score") + &written.collect::<String>();
            assert_eq!(Aside::read(&written).as_ref(), Ok(&aside), "{written}");
        }
        Err(error) => assert!((1..=lines).contains(&error.line) && !error.why.is_empty(), "{error}"),
    }
    match Habits::read(text) {
        Ok(habits) => assert_eq!(Habits::read(&habits.text()).as_ref(), Ok(&habits)),
        Err(error) => assert!((1..=lines).contains(&error.line) && !error.why.is_empty(), "{error}"),
    }
    match House::parse(text) {
        Ok(house) => {
            let _ = house.conflicts();
        }
        Err(error) => assert!(error.to_string().len() > 10, "{error}"),
    }
    if let Err(error) = Profile::parse(text) {
        assert!(error.to_string().len() > 10, "{error}");
    }
});

/// What counts of a journal is a beginning of it, and is read again the same.
fn journal(bytes: &[u8]) {
    let read = JournalContent::read(bytes);
    assert!(read.good <= bytes.len());
    if matches!(read.end, JournalEnd::Whole) {
        assert_eq!(read.good, bytes.len());
    }
    let lines = read.steps.iter().zip(0..).map(|(step, number)| journal_line(number, step).expect("JSON"));
    let written = format!("{HEADING}\n{}", lines.collect::<String>());
    let again = JournalContent::read(written.as_bytes());
    assert!(matches!(again.end, JournalEnd::Whole), "{written}");
    assert_eq!(again.steps, read.steps);
}
