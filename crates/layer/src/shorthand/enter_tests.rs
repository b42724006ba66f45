//! Shorthand against scores.

use arcata_score::{NoteId, Score};
use arcata_testkit::{ScoreShape, musicxml, random_score};
use arcata_xml::Document;
use proptest::prelude::*;

use super::{Gravity, enter, of_layer, put, read};
use crate::address::Addresses;
use crate::model::{Address, BowPlace, Entry, EntryForce, HookSign, Layer, Mark};

fn score(text: &str) -> Score {
    let document = Document::parse(musicxml(text).into_bytes(), &arcata_xml::Limits::default()).unwrap();
    arcata_score::read(&document)
}

/// What is entered, as place and mark; it must not be complained about.
fn entered(score: &Score, typed: &str) -> Vec<String> {
    let addresses = Addresses::new(score);
    let (text, complaints) = read(typed);
    assert_eq!(complaints, [], "{typed}");
    let entered = enter(&text, &addresses);
    let said: Vec<String> = entered.complaints.iter().map(ToString::to_string).collect();
    assert_eq!(said, Vec::<String>::new(), "{typed}");
    entered.entries.iter().map(|entry| format!("{}: {}", entry.place, entry.mark.words())).collect()
}

fn complaints(score: &Score, typed: &str) -> Vec<String> {
    let (text, complaints) = read(typed);
    assert_eq!(complaints, [], "{typed}");
    enter(&text, &Addresses::new(score)).complaints.iter().map(ToString::to_string).collect()
}

const QUARTET: &str = "\
Violin I: 1/4 C5 D5 E5 F5 | 1/8 G5 F5 E5 D5 1/2 C5 | (1/4 C5 D5) (E5 F5) | rest C5 D5 E5
Violin II: 1/4 C4 D4 E4 F4 | 1/8 G4 F4 E4 D4 1/2 C4 | 1/4 C4 D4 E4 F4 | rest C4 D4 E4
Viola: 1/4 C4 D4 E4 F4 | 1/8 G4 F4 E4 D4 1/2 C4 | 1/4 C4 D4 E4 F4 | rest C4 D4 E4
Violoncello: 1/4 C3 D3 E3 F3 | 1/8 G3 F3 E3 D3 1/2 C3 | 1/4 C3 D3 E3 F3 | rest C3 D3 E3
";

#[test]
fn sections_are_found_by_any_of_their_names() {
    let score = score(QUARTET);
    for (typed, parts) in [
        ("Vn1", vec!["Violin I"]),
        ("violini II", vec!["Violin II"]),
        ("2. Geigen", vec!["Violin II"]),
        ("Vn1, 2", vec!["Violin I", "Violin II"]),
        ("violins", vec!["Violin I", "Violin II"]),
        ("Bratsche", vec!["Viola"]),
        ("Vc.", vec!["Violoncello"]),
        ("alto & vcl", vec!["Viola", "Violoncello"]),
        ("tutti", vec!["Violin I", "Violin II", "Viola", "Violoncello"]),
        ("lower strings", vec!["Violoncello"]),
        ("viola", vec!["Viola"]),
        ("V 1", vec!["Violin I"]),
    ] {
        let found = entered(&score, &format!("{typed}: 1/2 up"));
        let wanted: Vec<String> = parts.iter().map(|part| format!("{part}, bar 1 after 1/4")).collect();
        let mut found: Vec<String> =
            found.iter().map(|entry| entry.split(", ").take(2).collect::<Vec<_>>().join(", ")).collect();
        found.sort();
        let mut wanted = wanted;
        wanted.sort();
        assert_eq!(found, wanted, "{typed}");
    }
}

#[test]
fn misspelt_and_doubtful_sections_are_asked_about() {
    let score = score(QUARTET);
    assert_eq!(
        complaints(&score, "Voila 1 up"),
        [
            "line 1, column 1: expected a section of this score, found \"Voila\". Did you mean \"Viola\"? The sections: \
          Violin I, Violin II, Viola, Violoncello."
        ]
    );
    assert!(complaints(&score, "Violin: 1 up")[0].contains("can be Violin I or Violin II"));
    assert!(
        complaints(&score, "Vnl 2: 1 up")[0].contains("Did you mean \"vn 2\"?")
            || complaints(&score, "Vnl 2: 1 up")[0].contains("Did you mean")
    );
    assert!(complaints(&score, "Vn3: 1 up")[0].contains("found \"Vn3\""));
    assert!(complaints(&score, "contrabass: 1 up")[0].contains("expected a section"));
    assert!(complaints(&score, "1 up\n2 up")[0].contains("none has been named"));
    assert_eq!(complaints(&score, "1 up\n2 up").len(), 1);
}

#[test]
fn marks_land_on_strokes() {
    let score = score(QUARTET);
    let said = |typed| entered(&score, typed);
    assert_eq!(said("va 1 down"), ["Viola, bar 1, beat 1, C4: down-bow"]);
    assert_eq!(
        said("va 1/2 d u u"),
        [
            "Viola, bar 1 after 1/4, D4: down-bow",
            "Viola, bar 1 after 1/2, E4: up-bow",
            "Viola, bar 1 after 3/4, F4: up-bow"
        ]
    );
    assert_eq!(said("va 2/1+ up"), ["Viola, bar 2 after 1/8, F4: up-bow"]);
    assert_eq!(said("va 2/n4 up"), ["Viola, bar 2 after 3/8, D4: up-bow"]);
    assert_eq!(said("va 4 up"), ["Viola, bar 4 after 1/4, C4: up-bow"]);
    // The slurred notes are one stroke: the second up-bow is the note after the slur.
    assert_eq!(
        said("vn1 3 up up"),
        ["Violin I, bar 3, beat 1, C5: up-bow", "Violin I, bar 3 after 1/2, E5: up-bow"]
    );
    assert_eq!(
        said("va 2-3/1 down up"),
        [
            "Viola, bar 2, beat 1, G4: down-bow",
            "Viola, bar 2 after 1/8, F4: up-bow",
            "Viola, bar 2 after 1/4, E4: down-bow",
            "Viola, bar 2 after 3/8, D4: up-bow",
            "Viola, bar 2 after 1/2, C4: down-bow",
            "Viola, bar 3, beat 1, C4: up-bow",
        ]
    );
    assert_eq!(
        said("va 2/1 at the tip \"dolce\""),
        ["Viola, bar 2, beat 1, G4: at the tip", "Viola, bar 2, beat 1, G4: \"dolce\""]
    );
}

#[test]
fn hooks_join_strokes_two_by_two() {
    let score = score(QUARTET);
    assert_eq!(
        entered(&score, "va 1 hook 2"),
        ["Viola, bar 1 after 1/4, D4: hooked", "Viola, bar 1 after 3/4, F4: hooked"]
    );
    assert_eq!(
        entered(&score, "va 1/3 hook 3 up"),
        [
            "Viola, bar 1 after 1/2, E4: up-bow",
            "Viola, bar 1 after 3/4, F4: hooked (up)",
            "Viola, bar 2, beat 1, G4: hooked (up)"
        ]
    );
    assert_eq!(
        entered(&score, "va 1/3 hook 3 dashes up"),
        [
            "Viola, bar 1 after 1/2, E4: up-bow",
            "Viola, bar 1 after 3/4, F4: hooked by a slur with dashes (up)",
            "Viola, bar 2, beat 1, G4: hooked by a slur with dashes (up)"
        ]
    );
    assert_eq!(
        entered(&score, "va 1 hook 2 dots"),
        [
            "Viola, bar 1 after 1/4, D4: hooked by a slur with dots",
            "Viola, bar 1 after 3/4, F4: hooked by a slur with dots"
        ]
    );
    assert_eq!(entered(&score, "va 1/2 hook"), ["Viola, bar 1 after 1/4, D4: hooked"]);
    assert!(complaints(&score, "va 4/4 hook 2")[0].contains("expected 2 strokes, found 1"));
}

#[test]
fn as_it_comes_takes_printed_marks_off_and_gives_way_to_single_notes() {
    let score = score("Violin: 1/4 C5!down D5!up E5 F5!up | 1/1 C5");
    let said = entered(&score, "violin 1 as it comes, 1/4 down, 2 as it comes");
    assert_eq!(
        said,
        [
            "Violin, bar 1, beat 1, C5: as it comes",
            "Violin, bar 1 after 1/4, D5: as it comes",
            "Violin, bar 1 after 3/4, F5: down-bow",
            "Violin, bar 2, beat 1, C5: as it comes",
        ]
    );
}

#[test]
fn slurs_are_put_on_taken_off_and_moved() {
    let score = score(QUARTET);
    assert_eq!(entered(&score, "va 1/1-/2 slur"), ["Viola, bar 1, beat 1, C4: slur to bar 1 after 1/4, D4"]);
    assert_eq!(
        entered(&score, "vn1 3 no slur"),
        [
            "Violin I, bar 3, beat 1, C5: no slur to bar 3 after 1/4, D5",
            "Violin I, bar 3 after 1/2, E5: no slur to bar 3 after 3/4, F5"
        ]
    );
    assert_eq!(
        entered(&score, "vn1 3/1-/2 slur now /1-/3"),
        ["Violin I, bar 3, beat 1, C5: slur to bar 3 after 1/4, D5 now to bar 3 after 1/2, E5"]
    );
    // A slur that goes frees its notes, one that comes binds them.
    assert_eq!(entered(&score, "vn1 3/2 up, 3/1 no slur").len(), 2);
    assert_eq!(entered(&score, "va 1/1-/3 slur, 1/1 up up")[2], "Viola, bar 1 after 3/4, F4: up-bow");
    assert_eq!(
        complaints(&score, "vn1 3/2-/3 no slur")[0],
        "line 1, column 5: expected a printed slur over this stretch, found none: 3/2-/3 in Violin I. \
         Slurs there: 3/1-3/2, 3/3-3/4."
    );
}

#[test]
fn places_without_a_note_are_told_with_what_is_there() {
    let score = score(QUARTET);
    let said = |typed| complaints(&score, typed).join("\n");
    assert_eq!(said("va 4/1 up"), "line 1, column 4: expected a note, found a rest: 4/1 in Viola.");
    assert_eq!(
        said("va 1/1+ up"),
        "line 1, column 4: expected a place where a note begins, found bar 1, beat 1½ in Viola. \
         Notes begin at 1, 2, 3, 4."
    );
    assert_eq!(
        said("va 1/5 up"),
        "line 1, column 4: expected a beat of bar 1, found beat 5. The bar has 4 beats."
    );
    assert_eq!(said("va 9 up"), "line 1, column 4: the score has no bar 9; the last one is 4.");
    assert_eq!(
        said("va 3-2 up"),
        "line 1, column 4: expected a stretch forwards, but bar 2 comes before bar 3."
    );
    assert!(said("va 4/2-3 up").contains("For beats of one bar write 4/2-/3."));
    assert!(said("va 1/3-/2 up").contains("1/2 comes before 1/3"));
    assert!(said("va /3 up").contains("none has been named so far"));
    assert!(
        said("vn1 3/2 up")
            .contains("note: no stroke begins here: 3/2 in Violin I lies inside a slur or tie from 3/1")
    );
    assert!(said("va 1 voice 3 up").contains("expected a voice of this part"));
    assert!(said("va 1 pitch F#5 up").contains("expected one of the notes of 1/1 in Viola: C4."));
    assert!(
        said("va 1/1 up\nva 1/1 down")
            .contains("line 2, column 4: expected one bowing a note, but line 1 says up-bow")
    );
    assert_eq!(said("va 1/1 up\nva 1/1 up"), "");
}

#[test]
fn a_thousand_troubles_are_all_told() {
    let score = score(QUARTET);
    let (text, _) = read(&"va 9/1 up\n".repeat(1000));
    assert_eq!(enter(&text, &Addresses::new(&score)).complaints.len(), 1000);
}

#[test]
fn what_is_entered_replaces_what_was() {
    let score = score(QUARTET);
    let addresses = Addresses::new(&score);
    let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
    for typed in ["vn1, va: 1/1 up, 1/2 down lift", "va 1/1 down", "vn1 1 as it comes"] {
        let entered = enter(&read(typed).0, &addresses);
        assert_eq!(entered.complaints, []);
        put(&mut layer, &entered);
    }
    let said: Vec<String> =
        layer.entries.iter().map(|entry| format!("{}: {}", entry.place, entry.mark.words())).collect();
    assert_eq!(
        said,
        [
            "Violin I, bar 1, beat 1, C5: as it comes",
            "Violin I, bar 1 after 1/4, D5: lift",
            "Viola, bar 1, beat 1, C4: down-bow",
            "Viola, bar 1 after 1/4, D4: down-bow",
            "Viola, bar 1 after 1/4, D4: lift",
        ]
    );
}

/// A layer with marks on notes of a score, chosen by numbers.
fn layer_of(addresses: &Addresses<'_>, choices: &[(u32, u8, bool)]) -> Layer {
    let score = addresses.score();
    let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
    let mut seen = std::collections::BTreeSet::new();
    for (choice, kind, anchored) in choices {
        let part = *choice as usize % score.parts.len();
        let notes = &score.parts[part].notes;
        if notes.is_empty() {
            continue;
        }
        let id = NoteId(u32::try_from(*choice as usize / 7 % notes.len()).unwrap());
        let Some(place) = addresses.place(part, id) else { continue };
        let slur = score.parts[part].slurs.get(*choice as usize % 5);
        let bow = [None, Some(arcata_score::BowDirection::Down), Some(arcata_score::BowDirection::Up)]
            [*kind as usize % 3];
        let (place, mark) = match (kind % 10, slur) {
            (0, _) => (place, Mark::Down),
            (1, _) => (place, Mark::Up),
            (2, _) => (
                place,
                Mark::Hook {
                    bow,
                    sign: [HookSign::Marks, HookSign::Dots, HookSign::Dashes][*choice as usize % 3],
                },
            ),
            (3, _) => (place, Mark::Retake { bow }),
            (4, _) => (place, Mark::AsItComes),
            (5, _) => (place, Mark::Lift),
            (6, _) => (place, Mark::InBow { place: BowPlace::ALL[*kind as usize % 6] }),
            (7, Some(slur)) => {
                let Some(place) = addresses.place(part, slur.start) else { continue };
                (place, Mark::SlurRemoved { to: addresses.spot(part, slur.end).unwrap() })
            }
            _ => (place, Mark::Text { text: format!("\"{kind}\", # \\ {choice}") }),
        };
        if !seen.insert((place.clone(), mark.question())) {
            continue;
        }
        let mut entry = Entry::new(place, mark);
        if *anchored && kind % 10 < 4 {
            entry.force = EntryForce::Anchor;
        }
        layer.entries.push(entry);
    }
    layer.put_in_order();
    layer
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    /// A layer printed as shorthand and entered again decides the same about the same notes.
    #[test]
    fn a_layer_printed_and_entered_again_says_the_same(
        seed in any::<u64>(),
        choices in prop::collection::vec((any::<u32>(), any::<u8>(), any::<bool>()), 1..40),
    ) {
        let text = random_score(seed, ScoreShape { parts: 3, ..ScoreShape::default() });
        let document = Document::parse(text.into_bytes(), &arcata_xml::Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        let addresses = Addresses::new(&score);
        let layer = layer_of(&addresses, &choices);
        let printed = of_layer(&layer, &addresses).to_string();
        let (text, complaints) = read(&printed);
        prop_assert!(complaints.is_empty(), "{}", complaints[0].shown(&printed));
        let entered = enter(&text, &addresses);
        let wrong: Vec<String> = entered
            .complaints
            .iter()
            .filter(|complaint| complaint.gravity == Gravity::Wrong)
            .map(|complaint| complaint.shown(&printed))
            .collect();
        prop_assert_eq!(wrong, Vec::<String>::new());
        let mut again = Layer { parts: layer.parts.clone(), ..Layer::default() };
        put(&mut again, &entered);
        let said = |layer: &Layer| -> Vec<String> {
            layer.entries.iter().map(|entry| format!("{} {} {:?}", entry.place, entry.mark.words(), entry.force)).collect()
        };
        prop_assert_eq!(said(&again), said(&layer), "{}", printed);
    }
}

#[test]
#[expect(clippy::disallowed_methods, reason = "the test holds that it does not take for ever")]
fn a_text_that_speaks_of_too_many_notes_is_refused_once_and_soon() {
    let bars = vec!["1/8 C4 D4 E4 F4 G4 A4 B4 C5"; 250].join(" | ");
    let parts: Vec<String> = (1..=8).map(|part| format!("Violin {part}: {bars}")).collect();
    let score = score(&parts.join("\n"));
    for typed in ["1-250 d u\n", "1-250 as it comes\n", "1-250 slur\n", "1-250 \"sul tasto\"\n"] {
        let text = format!("all:\n{}", typed.repeat(50_000));
        let begun = std::time::Instant::now();
        let (text, complaints) = read(&text);
        assert_eq!(complaints, []);
        let entered = enter(&text, &Addresses::new(&score));
        let refused: Vec<String> = entered
            .complaints
            .iter()
            .map(ToString::to_string)
            .filter(|said| said.contains("at most 400000 notes"))
            .collect();
        assert_eq!(refused.len(), 1, "{typed}: {refused:?}");
        assert!(begun.elapsed().as_secs() < 60, "{typed} takes {:?}", begun.elapsed());
    }
}

/// Two movements of two bars each, numbered anew.
fn two_movements() -> Score {
    let xml = musicxml("unchecked\nviolin: 1/4 C5 D5 E5 F5 | 1/1 C5 | 1/4 C5 D5 E5 F5 | 1/1 C5 |||");
    let xml = xml.replacen("number=\"3\"", "number=\"1\"", 1).replacen("number=\"4\"", "number=\"2\"", 1);
    let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
    arcata_score::read(file.document())
}

#[test]
fn a_movement_is_named_once_above_its_bars() {
    let score = two_movements();
    let addresses = Addresses::new(&score);
    let bars = |text: &str| -> Vec<Option<u32>> {
        let (text, complaints) = read(text);
        assert_eq!(complaints, []);
        let entered = enter(&text, &addresses);
        assert_eq!(entered.complaints, []);
        entered.entries.iter().map(|entry| entry.place.spot.bar_ordinal).collect()
    };
    assert_eq!(bars("violin:\nI:\n1/2 up\nII:\n1/2 up, 2 down"), [Some(1), Some(3), Some(4)]);
    assert_eq!(bars("ii: violin 2 down"), [Some(4)]);
}

#[test]
fn a_bar_of_several_movements_asks_for_one() {
    let score = two_movements();
    let addresses = Addresses::new(&score);
    let said = |text: &str| -> String {
        let entered = enter(&read(text).0, &addresses);
        entered.complaints.iter().map(ToString::to_string).collect()
    };
    let several = said("violin 1/2 up");
    assert!(
        several.contains("bar 1 stands in the movements I, II. Name one above, on a line of its own: I:"),
        "{several}"
    );
    let unknown = said("IV: violin 1/2 up");
    assert!(unknown.contains("expected a movement of this score, found \"IV\". It has I, II."), "{unknown}");
}

#[test]
fn a_layer_is_written_movement_by_movement_and_read_back() {
    let score = two_movements();
    let addresses = Addresses::new(&score);
    let entered = enter(&read("violin:\nI:\n1/2 up\nII:\n1/2 up, 2 down").0, &addresses);
    let layer =
        Layer { parts: addresses.part_keys().to_vec(), entries: entered.entries.clone(), ..Layer::default() };
    let text = of_layer(&layer, &addresses);
    assert_eq!(text.to_string(), "violin:\nI:\n1/2 up\nII:\n1/2 up\n2/1 down\n");
    assert_eq!(enter(&text, &addresses).entries, entered.entries);
}

/// What is printed about a layer is typed as it stands, with a mark behind it.
#[test]
fn printed_places_are_entered_as_they_stand() {
    let score = score(
        "Violin I: 1/4 C5 D5 1/8 E5 F#5 1/4 B5 | time 6/8 3/8 C5 1/8 D5 E5 B5\nViola: 1/4 C4 D4 E4 F4 | 3/8 C4 3/8 D4",
    );
    let addresses = Addresses::new(&score);
    let notes = score.parts.iter().enumerate().flat_map(|(part, notes)| {
        (0..notes.notes.len()).filter_map(move |note| Some((part, NoteId(u32::try_from(note).ok()?))))
    });
    let mut count = 0;
    for place in notes.filter_map(|(part, note)| addresses.place(part, note)) {
        for printed in [addresses.said(&place), place.to_string()] {
            let (text, complaints) = read(&format!("{printed} down"));
            assert!(complaints.is_empty(), "{printed}: {complaints:?}");
            let entered = enter(&text, &addresses);
            let found: Vec<&Address> = entered.entries.iter().map(|entry| &entry.place).collect();
            assert_eq!(found, [&place], "{printed}: {:?}", entered.complaints);
            count += 1;
        }
    }
    assert_eq!(count, 2 * 15);
}
