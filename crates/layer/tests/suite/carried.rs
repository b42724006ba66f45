//! A layer carried over to a revision: what lands, what lands in doubt and why, what finds no note. The reasons are what a librarian
//! goes through by hand, so they must name the place and what is other there (common practice).

use arcata_layer::{Addresses, Carried, Entry, Layer, Mark, carry};
use arcata_score::NoteId;
use arcata_testkit::musicxml;

use crate::support::document;

const OLD: &str = "violin: 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5";

/// An up-bow on a note (index) of the old score, carried to the new one, and what is said of it.
fn carried(old: &str, note: u32, new: &str) -> (Carried, String) {
    let (old, new) = (document(&musicxml(old)), document(&musicxml(new)));
    let (old_score, new_score) = (arcata_score::read(&old), arcata_score::read(&new));
    let place = Addresses::new(&old_score).place(0, NoteId(note)).expect("a note stands there");
    let layer = Layer { entries: vec![Entry::new(place, Mark::Up)], ..Layer::default() };
    let carried = carry(&layer, &old_score, (&new, &new_score));
    let (before, after) = (Addresses::new(&old_score), Addresses::new(&new_score));
    let doubtful = carried.doubtful.iter().map(|one| one.said(&before, &after));
    let orphaned = carried.orphaned.iter().map(|one| one.said(&before));
    let said = doubtful.chain(orphaned).collect::<Vec<_>>().join("\n");
    // What is printed without the scores names the same reason.
    let plain: Vec<String> = carried
        .doubtful
        .iter()
        .map(ToString::to_string)
        .chain(carried.orphaned.iter().map(ToString::to_string))
        .collect();
    for line in &plain {
        let (_, why) = line.rsplit_once(": ").expect("a reason");
        assert!(said.contains(why), "{line} and {said}");
    }
    (carried, said)
}

#[test]
fn what_stayed_lands_and_nothing_is_said() {
    for new in [
        OLD,
        // A bar put in before it, a dynamic, another part.
        "violin: 1/4 G4 A4 B4 G4 | 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5",
        "violin: mf 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5\nviola: 1/1 C4 | 1/1 D4 | 1/1 E4 | 1/1 C4",
    ] {
        let (carried, said) = carried(OLD, 5, new);
        assert_eq!((carried.exactly, said.as_str()), (1, ""), "{new}");
    }
}

#[test]
fn what_lands_in_doubt_says_what_is_other() {
    for (new, why) in [
        (
            "violin: 1/4 C5 D5 E5 F5 | 1/4 G5 Ab5 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5",
            "the note has another pitch",
        ),
        ("violin: 1/4 C5 D5 E5 F5 | 1/4 G5 1/8 A5 A5 1/4 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5", "length"),
        ("violin: 1/4 C5 D5 E5 F5 | 1/4 G5 rest A5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5", "elsewhere"),
        (
            "violin: 1/4 C5 D5 E5 F5 | 1/4 G5 A5+D5 B5 C6 | 1/4 B5 G5 D5 B4 | 1/1 C5",
            "other notes stand together with it",
        ),
        ("violin: 1/4 C5 D5 E5 F5 | 1/8 E5 F5 G5 F5 E5 D5 1/4 A5 | 1/4 B5 G5 D5 B4 | 1/1 C5", "rewritten"),
    ] {
        let (carried, said) = carried(OLD, 5, new);
        assert!(carried.layer.entries.len() + carried.orphaned.len() == 1, "{new}");
        assert!(said.contains(why), "{new}: {said}");
    }
}

#[test]
fn a_repeat_written_out_gets_the_mark_in_both_passes() {
    let repeated = "violin: |: 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 :| 1/1 C5";
    let written = "violin: 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 | 1/4 C5 D5 E5 F5 | 1/4 G5 A5 B5 C6 | 1/1 C5";
    let (carried, said) = carried(repeated, 5, written);
    let bars: Vec<&str> = carried.layer.entries.iter().map(|entry| entry.place.spot.bar.as_str()).collect();
    assert_eq!(bars, ["2", "4"], "{said}");
    assert!(said.contains("repeat"), "{said}");
}

#[test]
fn what_is_gone_is_kept_and_told() {
    let (carried, said) = carried(OLD, 5, "violin: 1/4 C5 D5 E5 F5 | 1/4 B5 G5 D5 B4 | 1/1 C5");
    assert_eq!((carried.exactly, carried.orphaned.len(), carried.layer.orphans.len()), (0, 1, 1));
    assert!(said.contains("bar 2") && said.contains("up-bow"), "{said}");
}
