//! Text is read as a task and as the other files of a class.
#![no_main]

use arcata_class::{Key, Task, TeachersHand};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let lines = text.matches('\n').count() + 1;
    match Task::read(text) {
        Ok(task) => {
            assert!(!task.languages.is_empty() && !task.title.is_empty());
            match task.profile_file() {
                None => assert!(task.profile().is_ok(), "a task that was read has a player"),
                // The same bytes as a profile: refused in words, or a player.
                Some(_) => {
                    let _ = task.clone().described_by(text);
                    let described = task.described_by("extends = \"student\"\n").expect("a profile");
                    assert!(described.profile().is_ok());
                }
            }
        }
        Err(error) => {
            assert!((1..=lines).contains(&error.line), "{error}");
            assert!(error.column >= 1 && !error.why.is_empty(), "{error}");
        }
    }
    match Key::read(text) {
        Ok(key) => assert_eq!(Key::read(&key.text()).expect("a key"), key),
        Err(error) => assert!((1..=lines).contains(&error.line), "{error}"),
    }
    let _ = TeachersHand::read(text);
    let _ = TeachersHand::replayed(text);
});
