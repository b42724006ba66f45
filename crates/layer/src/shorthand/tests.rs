//! The syntax of shorthand: forgiving to read, one way to print, all troubles told.

use proptest::prelude::*;

use super::*;
use crate::model::{BowPlace, EntryForce, HookSign};
use arcata_score::{BowDirection, Length};

/// What a text prints as; it must not be complained about.
fn canonical(text: &str) -> String {
    let (read, complaints) = read(text);
    let said: Vec<String> = complaints.iter().map(ToString::to_string).collect();
    assert_eq!(said, Vec::<String>::new(), "{text}");
    read.to_string().trim_end().to_owned()
}

fn complaints(text: &str) -> Vec<String> {
    read(text).1.iter().map(ToString::to_string).collect()
}

#[test]
fn the_ways_people_type_a_place_come_to_one() {
    for typed in [
        "Vn1 37/3 down",
        "vn1  37 / 3   Down",
        "Vn1 m.37/3 down",
        "Vn1 m. 37/3 d",
        "Vn1 bar 37 beat 3 down-bow",
        "Vn1 b37/3 ⊓",
        "Vn1: T. 37/3 Abstrich",
        "Vn1, 37/3 n",
        "Vn1 mes. 37, temps 3 tiré",
        "Vn1 batt. 37/3 in giù",
        "Vn1 37., beat 3: down",
    ] {
        assert_eq!(canonical(typed).to_lowercase(), "vn1: 37/3 down", "{typed}");
    }
}

#[test]
fn the_examples_of_the_design_are_read() {
    assert_eq!(canonical("41-42 hook 2"), "41-42 hook 2");
    assert_eq!(canonical("45 as it comes"), "45 as it comes");
    assert_eq!(canonical("anchor 60/1 down"), "anchor 60/1 down");
    assert_eq!(canonical("60/1 down anchor"), "anchor 60/1 down");
}

#[test]
fn several_marks_and_places_fit_on_a_line() {
    assert_eq!(
        canonical("Vn1 37/3 d, 38/1 u; Va 37 up retake # both"),
        "Vn1: 37/3 down, 38/1 up; Va: 37 retake up  # both"
    );
    assert_eq!(canonical("37/1 d u u d /3 up"), "37/1 down up up down, /3 up");
    assert_eq!(canonical("41, 45, 49 wie es kommt"), "41, 45, 49 as it comes");
    assert_eq!(canonical("37/1 down, at the frog, \"marcato\""), "37/1 down at the frog \"marcato\"");
    assert_eq!(canonical("41/3 hook 42 up"), "41/3 hook, 42 up");
    assert_eq!(canonical("41/3 hook dots"), "41/3 hook dots");
    assert_eq!(canonical("41/3 hook 2 dashes up"), "41/3 hook 2 dashes up");
    assert_eq!(canonical("41/3 up hook with dots, 42 down"), "41/3 hook dots up, 42 down");
    assert_eq!(
        canonical("41/3 agganciata con punti; 42/3 accroché avec tirets"),
        "41/3 hook dots, 42/3 hook dashes"
    );
    assert_eq!(canonical("41/3 angebunden 3 mit Strichen"), "41/3 hook 3 dashes");
    assert_eq!(canonical("41/3 hook 2 38/1 up"), "41/3 hook 2, 38/1 up");
}

#[test]
fn sections_are_told_from_bars() {
    assert_eq!(canonical("Violin 1 37 down"), "Violin 1: 37 down");
    assert_eq!(canonical("Violin I, II 37 down"), "Violin I, Violin II: 37 down");
    assert_eq!(canonical("Vn1, 2: 37 down"), "Vn1, Vn 2: 37 down");
    assert_eq!(canonical("Vn1+2 & Va 37 down"), "Vn1, Vn 2, Va: 37 down");
    assert_eq!(canonical("Vn1, Va, 37 down"), "Vn1, Va: 37 down");
    assert_eq!(canonical("Viole e celli m. 3 down"), "Viole, celli: 3 down");
    assert_eq!(canonical("2. Violine 37 down"), "2. Violine: 37 down");
    assert_eq!(canonical("Violin 1\n37 down"), "Violin 1:\n37 down");
    assert_eq!(canonical("Vc 3, 5 down"), "Vc: 3, 5 down");
    assert_eq!(canonical("V 37 v"), "\"V\": 37 up");
}

#[test]
fn beats_are_exact() {
    for (typed, beat) in [
        ("3½", "3½"),
        ("3.5", "3½"),
        ("3+", "3½"),
        ("3&", "3½"),
        ("7/2", "3½"),
        ("3 1/2", "3½"),
        ("3 + 1/2", "3½"),
        ("2.33", "2⅓"),
        ("2+5/16", "2+5/16"),
        ("1.75", "1¾"),
        ("4", "4"),
        ("n5", "n5"),
        ("note 5", "n5"),
    ] {
        assert_eq!(canonical(&format!("37/{typed} up")), format!("37/{beat} up"));
    }
    assert_eq!(canonical("37 note 5 up"), "37/n5 up");
}

#[test]
fn places_are_read_as_they_are_printed() {
    for (printed, typed) in [
        ("II, bar 17, beat 1 down", "II: 17/1 down"),
        ("II: Viola, bar 17, beat 1 down", "II: Viola: 17/1 down"),
        ("Violin I, bar 37, beat 3½, F#5 down", "Violin I: 37/3½ pitch F#5 down"),
        ("Violin I, Takt 37, Schlag 3 1/2, B5 down", "Violin I: 37/3½ pitch B5 down"),
        (
            "Va bar 5 after 3/8, grace note 1, voice 2, C(+50)4 up",
            "Va: 5 after 3/8 voice 2 pitch C(+50)4 grace 1 up",
        ),
        ("bar \"5-8\", beat 2+5/16 up", "bar \"5-8\"/2+5/16 up"),
        ("bars 41-42 hook 2", "41-42 hook 2"),
        ("41 fino a 42 hook 2", "41-42 hook 2"),
        ("37/1, /after 3/8 up", "37/1, /after 3/8 up"),
        // Behind a bar alone a letter with a number is another bar, and a numeral with a space a section.
        ("37, B5 down", "37, 5 down"),
        ("V 37 v", "\"V\": 37 up"),
    ] {
        assert_eq!(canonical(printed), typed, "{printed}");
    }
}

#[test]
fn stretches_slurs_and_odd_bars() {
    assert_eq!(canonical("41/1–42/3 no slur"), "41/1-42/3 no slur");
    assert_eq!(canonical("41/1 to 42 slur"), "41/1-42 slur");
    assert_eq!(canonical("41/1-/3 slur now /1-/2"), "41/1-/3 slur now /1-/2");
    assert_eq!(canonical("bar X1 up"), "bar \"X1\" up");
    assert_eq!(canonical("37(2)/1 up, 12a down"), "37(2)/1 up, 12a down");
    assert_eq!(canonical("37/1 voice 2 pitch F#5 grace 1 up"), "37/1 voice 2 pitch F#5 grace 1 up");
    assert_eq!(canonical("# only words\n\n37 up"), "# only words\n\n37 up");
}

#[test]
fn every_trouble_is_told_with_its_place() {
    let said = complaints(
        "Vn1 37/3 dwon\n38/ up\n39 down sideways, 40 hok; 41 up\nanchor 60/1 slur\ndown\n42 \"open",
    );
    assert_eq!(said.len(), 7, "{said:#?}");
    assert!(said[0].starts_with("line 1, column 10: expected a mark"), "{}", said[0]);
    assert!(said[0].ends_with("found \"dwon\". Did you mean \"down\"?"));
    assert!(said[1].starts_with("line 2, column 5: expected a beat"), "{}", said[1]);
    assert!(said[2].starts_with("line 3, column 9: expected another mark"), "{}", said[2]);
    assert!(said[3].starts_with("line 3, column 22: expected a mark"), "{}", said[3]);
    assert!(said[3].ends_with("Did you mean \"hook\"?"));
    assert!(said[4].starts_with("line 4, column 1: an anchor needs a direction"));
    assert!(said[5].starts_with("line 5, column 1: expected a bar"));
    assert!(said[6].starts_with("line 6, column 4: expected a mark"), "{}", said[6]);
    assert!(said[6].contains("never closed"));
}

#[test]
fn a_bar_with_a_point_is_asked_about() {
    assert!(complaints("37.3 down")[0].ends_with("Did you mean \"37/3\"?"));
}

#[test]
fn marks_that_cannot_hold_together_are_refused() {
    assert!(complaints("37 as it comes down")[0].contains("no direction of its own"));
    assert!(complaints("37/1 dots")[0].contains("write the hook before them, as in 41/3 hook dots"));
    assert!(complaints("37/1 up dots")[0].contains("write the hook before them"));
    assert!(complaints("37/1 hook dots dashes")[0].contains("one of them"));
    assert!(complaints("37 hook retake")[0].contains("one of them"));
    assert!(complaints("37 down up lift")[0].contains("place of its own"));
    assert!(complaints("37/3-").first().unwrap().contains("last bar or beat"));
}

#[test]
fn the_line_is_shown_with_the_place_marked() {
    let text = "Vn1\n  37/3 dwon";
    let shown = read(text).1[0].shown(text);
    assert!(shown.ends_with("\n    37/3 dwon\n         ^^^^"), "{shown}");
}

#[test]
fn hostile_sizes_are_refused() {
    assert!(complaints(&"37 up\n".repeat(LARGEST_TEXT / 5))[0].contains("split it"));
    assert!(complaints(&"37 up, ".repeat(LONGEST_LINE))[0].contains("split it"));
    assert_eq!(complaints("99999999999999999999/99999999999 up").len(), 1);
    assert_eq!(complaints("1(99999999999) up").len(), 1);
    assert_eq!(complaints("1/1.99999999999 up").len(), 1);
}

fn directions() -> impl Strategy<Value = BowDirection> {
    prop_oneof![Just(BowDirection::Down), Just(BowDirection::Up)]
}

fn bars() -> impl Strategy<Value = BarName> {
    let label = prop_oneof![
        6 => (0u32..300).prop_map(|bar| bar.to_string()),
        1 => "[0-9]{1,3}[a-z]",
        1 => "[A-Z][0-9]",
        1 => any::<String>().prop_map(|label| label.replace('\u{feff}', "")),
    ];
    (label, proptest::option::weighted(0.1, 1u16..9)).prop_map(|(label, nth)| BarName { label, nth })
}

fn spots(bar: impl Strategy<Value = Option<BarName>>) -> impl Strategy<Value = NoteSpot> {
    let within = prop_oneof![
        Just(Within::Bar),
        (4i64..40, 1i64..5).prop_map(|(beat, parts)| Within::Beat(Length::new(beat.max(parts), parts))),
        (1u16..20).prop_map(Within::Note),
        (1i64..40, 1i64..33).prop_map(|(above, below)| Within::After(Length::new(above, below))),
    ];
    let voice = proptest::option::weighted(0.2, prop_oneof!["[0-9]{1,2}", any::<String>()]);
    let pitch =
        proptest::option::weighted(0.1, prop_oneof![Just("F#5".to_owned()), Just("C(+50)4".to_owned())]);
    let number = || proptest::option::weighted(0.1, 1u16..5);
    (bar, within, voice, pitch, number(), number()).prop_map(|(bar, within, voice, pitch, grace, copy)| {
        // A place without a bar says a beat: nothing else would be left of it.
        let within = match (&bar, within) {
            (None, Within::Bar) => Within::Note(1),
            (_, within) => within,
        };
        NoteSpot { bar, within, voice, pitch, grace, copy }
    })
}

fn places() -> impl Strategy<Value = At<Where>> {
    let from = spots(proptest::option::weighted(0.9, bars()));
    let to = proptest::option::weighted(0.4, spots(proptest::option::weighted(0.7, bars())));
    (from, to).prop_map(|(from, to)| At::nowhere(Where { from, to }))
}

fn statements() -> impl Strategy<Value = At<Statement>> {
    let bow = prop_oneof![
        prop::collection::vec(directions(), 1..5).prop_map(|strokes| Some(Bow::Directions(strokes))),
        (
            prop::option::of(2u8..=16),
            prop::option::of(directions()),
            prop::sample::select(vec![HookSign::Marks, HookSign::Dots, HookSign::Dashes])
        )
            .prop_map(|(count, bow, sign)| Some(Bow::Hook { count, bow, sign })),
        prop::option::of(directions()).prop_map(|bow| Some(Bow::Retake { bow })),
        Just(Some(Bow::AsItComes)),
        Just(None),
    ];
    let also = prop_oneof![
        Just(Also::Lift),
        prop::sample::select(BowPlace::ALL.to_vec()).prop_map(Also::InBow),
        any::<String>().prop_map(Also::Text),
        Just(Also::Slur),
        Just(Also::NoSlur),
        places().prop_map(|place| Also::SlurNow(Box::new(place))),
    ];
    let anchored = prop::bool::weighted(0.2);
    (anchored, prop::collection::vec(places(), 1..3), bow, prop::collection::vec(also, 0..3)).prop_map(
        |(anchored, places, bow, mut also)| {
            let many = matches!(&bow, Some(Bow::Directions(strokes)) if strokes.len() > 1);
            if many {
                also.clear();
            }
            if bow.is_none() && also.is_empty() {
                also.push(Also::Lift);
            }
            let can = bow.as_ref().is_some_and(|bow| *bow != Bow::AsItComes);
            let force = if anchored && can { EntryForce::Anchor } else { EntryForce::Mark };
            At::nowhere(Statement { force, places, bow, also })
        },
    )
}

fn lines() -> impl Strategy<Value = ShorthandLine> {
    let names = prop_oneof![
        4 => prop::sample::select(vec!["Vn1", "Violin II", "Viole", "Vc.", "2. Violine", "all", "D.B.", "1st violins"])
            .prop_map(str::to_owned),
        1 => any::<String>(),
    ];
    let item = prop_oneof![
        1 => prop::collection::vec(names.prop_map(At::nowhere), 1..4).prop_map(Item::Sections),
        4 => statements().prop_map(Item::Statement),
    ];
    let comment = proptest::option::weighted(0.2, "[a-z]{0,3}( [#a-zA-Z,;:0-9\"]{1,8}){0,3}");
    let movement = proptest::option::weighted(0.1, (1usize..40).prop_map(arcata_score::words::roman));
    (movement, prop::collection::vec(item, 0..4), comment).prop_map(|(movement, items, comment)| {
        ShorthandLine {
            movement: movement.map(At::nowhere),
            items,
            comment: comment.map(|comment| comment.trim().to_owned()),
        }
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn what_is_printed_is_read_back(lines in prop::collection::vec(lines(), 0..4)) {
        let text = Text { lines };
        let printed = text.to_string();
        let (back, complaints) = read(&printed);
        let said: Vec<String> = complaints.iter().map(|complaint| complaint.shown(&printed)).collect();
        prop_assert_eq!(said, Vec::<String>::new(), "{}", printed);
        prop_assert_eq!(back.to_string(), printed.clone());
        prop_assert_eq!(back, text, "{}", printed);
    }

    #[test]
    fn whatever_is_typed_is_read_without_trouble(text in "([a-zA-Z0-9/+.,;:()#\" -]|hook|down|bar |m\\.|½|⊓|\n){0,60}") {
        let (first, complaints) = read(&text);
        for complaint in &complaints {
            prop_assert!(!complaint.shown(&text).is_empty());
        }
        let printed = first.to_string();
        let (again, complaints) = read(&printed);
        prop_assert!(complaints.is_empty(), "{}", printed);
        prop_assert_eq!(again.to_string(), printed);
    }
}

/// The manual's page: every block and every row of its examples is what the reader does.
#[test]
fn the_examples_of_the_manual_hold() {
    let page = include_str!("../../../../docs/manual/shorthand.md");
    let block = page.split("```shorthand\n").nth(1).and_then(|rest| rest.split("```").next()).unwrap();
    assert!(canonical(block).contains("Vn1: 37/3 down"));
    let rows = |heading: &str| -> Vec<(String, String)> {
        let section = page.split(heading).nth(1).unwrap().split("\n## ").next().unwrap();
        let rows = section.lines().filter(|line| line.starts_with("| `"));
        rows.map(|row| {
            let (typed, told) = row.trim_matches(['|', ' ']).split_once(" | ").unwrap();
            (typed.trim_matches('`').to_owned(), told.trim_matches('`').to_owned())
        })
        .collect()
    };
    let examples = rows("## Examples");
    assert!(examples.len() >= 8);
    for (typed, printed) in examples {
        assert_eq!(canonical(&typed), printed, "{typed}");
    }
    let troubles = rows("## Troubles");
    assert!(troubles.len() >= 4);
    for (typed, told) in troubles {
        assert_eq!(complaints(&typed), [told], "{typed}");
    }
    // The tables of places and marks: what is set in code there can be typed, each in its place.
    let tables = page.split("## A line").nth(1).unwrap().split("## The grammar").next().unwrap();
    let (places, marks) = tables.split_once("| mark | typed |").unwrap();
    let codes = |table: &str, column: usize| -> Vec<String> {
        let cells =
            table.lines().filter(|row| row.starts_with("| ")).filter_map(|row| row.split(" | ").nth(column));
        cells
            .flat_map(|cell| cell.split('`').skip(1).step_by(2).map(str::to_owned).collect::<Vec<_>>())
            .collect()
    };
    let is_place = |typed: &str| {
        typed.starts_with(['3', '4', '/'])
            || ["m", "b", "T", "mes"].iter().any(|word| {
                let rest = typed.strip_prefix(word).unwrap_or("-");
                rest.starts_with(['.', '3', ' ']) || typed.starts_with("bar ") || typed.starts_with("batt")
            })
    };
    let mut tried = 0;
    for typed in codes(places, 0) {
        let text = if is_place(&typed) { format!("9 up, {typed} up") } else { format!("{typed} 37 up") };
        assert_eq!(complaints(&text), Vec::<String>::new(), "{text}");
        assert!(!canonical(&text).contains('"') || typed.contains("X1"), "{text}");
        tried += 1;
    }
    for typed in codes(marks, 1) {
        let text = if typed.contains(|letter: char| letter.is_ascii_digit()) {
            typed
        } else {
            format!("37 {typed}")
        };
        assert_eq!(complaints(&text), Vec::<String>::new(), "{text}");
        tried += 1;
    }
    assert!(tried > 80, "{tried}");
}
