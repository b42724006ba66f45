//! Every way to write a place, every way it is printed, and what is told where it is none.

use proptest::prelude::*;

use super::passage::LONGEST_PLACE;
use super::*;

/// The table of the manual: what is typed, and what it means.
#[test]
fn the_table_of_the_manual_holds() {
    let manual = include_str!("../../../../docs/manual/places.md");
    let table = manual.split("## What is read").nth(1).and_then(|rest| rest.split("\n## ").next()).unwrap();
    let mut rows = 0;
    for row in table.lines().filter(|row| row.starts_with("| `")) {
        let cells: Vec<&str> = row.trim_matches('|').split('|').map(str::trim).collect();
        let [typed, movement, section, bars, within] = cells.as_slice() else { panic!("{row}") };
        for typed in typed.split("` · `").map(|typed| typed.trim_matches('`')) {
            let read = passage(typed).unwrap_or_else(|misread| panic!("{typed}: {misread}"));
            let name = |name: &Option<String>| name.clone().unwrap_or_default();
            let bars_read = match &read.to {
                None => format!("{}", read.bars().0),
                Some(_) => format!("{}-{}", read.bars().0, read.bars().1),
            };
            let end = read.to.as_ref().map_or_else(String::new, |to| format!(" to {}", exact(to.within)));
            let told = [
                name(&read.movement),
                name(&read.section),
                bars_read,
                exact(read.from.within) + end.trim_end_matches(" to "),
            ];
            assert_eq!(told, [*movement, *section, *bars, *within].map(str::to_owned), "{typed}");
            rows += 1;
        }
    }
    assert!(rows > 50, "{rows}");
}

fn exact(within: Within) -> String {
    match within {
        Within::Bar => String::new(),
        Within::Beat(beat) => beat_exact(beat),
        Within::After(length) => format!("after {length}"),
        Within::Note(number) => format!("note {number}"),
    }
}

/// The table of what is told, from the manual.
#[test]
fn what_is_no_place_gets_the_one_message() {
    let manual = include_str!("../../../../docs/manual/places.md");
    let table = manual.split("## What is told").nth(1).and_then(|rest| rest.split("\n## ").next()).unwrap();
    let rows: Vec<&str> = table.lines().filter(|row| row.starts_with("| `")).collect();
    for row in &rows {
        let cells: Vec<&str> = row.trim_matches('|').split('|').map(str::trim).collect();
        let [typed, told] = cells.as_slice() else { panic!("{row}") };
        assert_eq!(passage(typed.trim_matches('`')).unwrap_err().to_string(), *told, "{typed}");
    }
    assert!(rows.len() > 4);
}

#[test]
fn absurd_texts_get_the_one_message_and_what_to_do() {
    let long = "9".repeat(LONGEST_PLACE + 1);
    for absurd in [
        "",
        " ",
        "\u{feff}",
        "😀",
        "12/😀",
        "٣",
        "١٢/٣",
        "12/٣",
        "12/0",
        "12/1/0",
        "12/3+1/0",
        "12/99999999999999999999",
        "12/1.99999999999",
        "1(99999999999)",
        "12/-3",
        "12-",
        "-",
        "/",
        "//",
        "/3",
        "½",
        "12/½",
        "bar",
        "beat 3",
        "12 13",
        "12, 13",
        "12 # why",
        "\"12",
        "12/3 \u{202e}4",
        "🎻, bar",
        "12/3 3",
        long.as_str(),
    ] {
        let misread = passage(absurd).unwrap_err();
        let said = misread.to_string();
        let does = said.ends_with(WAYS) || misread.suggestion.is_some();
        assert!(said.starts_with("expected ") && said.contains(", found ") && does, "{absurd:?}: {said}");
        assert!(!said.contains('\n'), "{said}");
    }
    for absurd in
        ["", "0", "x", "1/2", "3/0", "٣", "3 of", "3+4/3", "99999999999999999999", "1.00000", "-2", "1e3"]
    {
        assert!(beat(absurd).is_err(), "{absurd}");
    }
}

/// Bar and beat in the four languages, as titles of scores and pencil have them.
const WORDS: [(&str, &str); 12] = [
    ("bar", "beat"),
    ("measure", "beat"),
    ("b.", "beat"),
    ("m.", "beat"),
    ("battuta", "movimento"),
    ("batt.", "tempo"),
    ("misura", "mov."),
    ("mesure", "temps"),
    ("mes.", "temps"),
    ("Takt", "Schlag"),
    ("T.", "Zählzeit"),
    ("takt", "zz"),
];

fn beats() -> impl Strategy<Value = Length> {
    prop_oneof![
        (1i64..40).prop_map(|beat| Length::new(beat, 1)),
        (1i64..40, 0i64..12, prop::sample::select(vec![2, 3, 4, 5, 6, 7, 8, 9, 12]))
            .prop_map(|(whole, above, below)| Length::new(whole, 1) + Length::new(above % below, below)),
        (1i64..9999, 0i64..999_999, 1i64..999_999)
            .prop_map(|(whole, above, below)| Length::new(whole, 1) + Length::new(above % below, below)),
    ]
}

fn labels() -> impl Strategy<Value = String> {
    prop_oneof![
        5 => (0u32..3000).prop_map(|bar| bar.to_string()),
        2 => "[0-9]{1,3}[a-z]{1,2}",
        2 => "[A-Z]{1,2}[0-9]{1,2}",
        1 => "[0-9]{1,2}-[0-9]{1,2}",
        1 => "[a-zA-Z0-9 ,.:;/()+#\"'-]{0,9}",
        1 => any::<String>().prop_map(|label| label.replace('\u{feff}', "")),
    ]
}

fn movements() -> impl Strategy<Value = Option<String>> {
    proptest::option::weighted(
        0.4,
        (1usize..39, any::<u8>()).prop_map(|(number, plain)| {
            if plain < 64 { number.to_string() } else { crate::words::roman(number) }
        }),
    )
}

/// A movement's number as it is printed.
fn numeral(number: &Option<String>) -> Option<String> {
    let roman = |number: &String| number.parse().map_or_else(|_| number.clone(), crate::words::roman);
    number.as_ref().map(roman)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn what_is_printed_for_people_is_read_as_the_same_place(
        label in labels(), beat in beats(), movement in movements(), words in prop::sample::select(WORDS.to_vec()),
    ) {
        let (bar_word, beat_word) = words;
        let said = place_said(bar_word, movement.as_deref(), &label, beat);
        let said = said.replace(", beat ", &format!(", {beat_word} "));
        prop_assume!(!label.contains(", beat "));
        let read = passage(&said).map_err(|misread| TestCaseError::fail(format!("{said:?}: {misread}")))?;
        prop_assert_eq!(&read.from, &Point { bar: Some(BarName::new(&label)), within: Within::Beat(beat) }, "{}", said);
        prop_assert_eq!(read.movement, numeral(&movement));
        prop_assert_eq!((read.section, read.to), (None, None));
        let bar = passage(&bar_said(bar_word, movement.as_deref(), &label));
        prop_assert_eq!(bar.map(|read| (read.from, read.movement)), Ok((
            Point { bar: Some(BarName::new(&label)), within: Within::Bar },
            numeral(&movement),
        )));
    }

    #[test]
    fn what_is_printed_in_shorthand_is_read_as_the_same_place(label in labels(), beat in beats(), nth in proptest::option::weighted(0.2, 1u16..9), which in 0u8..4) {
        let within = match which {
            0 => Within::Bar,
            1 => Within::Note(7),
            2 => Within::After(beat),
            _ => Within::Beat(beat),
        };
        let point = Point { bar: Some(BarName { label, nth }), within };
        let said = point.to_string();
        let read = passage(&said).map_err(|misread| TestCaseError::fail(format!("{said:?}: {misread}")))?;
        prop_assert_eq!((&read.from, read.to), (&point, None), "{}", said);
    }

    #[test]
    fn what_is_printed_for_programs_is_read_as_the_same_beat(beat_meant in beats()) {
        prop_assert_eq!(beat(&beat_exact(beat_meant)), Ok(beat_meant));
        prop_assert_eq!(beat(&beat_said(beat_meant)), Ok(beat_meant));
        let read = passage(&format!("12/{}", beat_exact(beat_meant))).map(|read| read.from.within);
        prop_assert_eq!(read, Ok(Within::Beat(beat_meant)));
    }

    #[test]
    fn stretches_are_read_as_the_same_bars(first in labels(), last in labels(), movement in movements(), word in prop::sample::select(vec!["bar", "measure", "mesure"])) {
        let said = bars_said(word, movement.as_deref(), (&first, &last));
        let read = passage(&said).map_err(|misread| TestCaseError::fail(format!("{said:?}: {misread}")))?;
        prop_assert_eq!(read.bars(), (BarName::new(&first), BarName::new(&last)), "{}", said);
        prop_assert_eq!(read.movement, numeral(&movement));
        prop_assert_eq!(read.section, None);
        let typed = bars_typed((&first, &last));
        let read = passage(&typed).map_err(|misread| TestCaseError::fail(format!("{typed:?}: {misread}")))?;
        prop_assert_eq!(read.bars(), (BarName::new(&first), BarName::new(&last)), "{}", typed);
    }

    #[test]
    fn whatever_is_typed_is_read_or_told(text in "([a-zA-Z0-9/+.,;:()#\" -]|bar |beat |II|½|٣|😀|\n){0,40}") {
        let _ = beat(&text);
        let _ = leading(&text);
        if let Err(misread) = passage(&text) {
            prop_assert!(misread.to_string().starts_with("expected "));
        }
    }
}

#[test]
fn a_place_may_begin_a_text() {
    let read = |text| leading(text).map(|(place, rest)| (place.section, place.from.to_string(), rest));
    let some = |name: &str| Some(name.to_owned());
    for (text, section, point, rest) in [
        ("60/1 down", None, "60/1", "down"),
        ("Viola 12/2.5 up", some("Viola"), "12/2½", "up"),
        ("Violin 1 37/3 down", some("Violin 1"), "37/3", "down"),
        ("2. Violine 37/3 down", some("2. Violine"), "37/3", "down"),
        ("B 2 12/3 down", some("B 2"), "12/3", "down"),
        ("Violin I, bar 37, beat 3½, F5 up", some("Violin I"), "37/3½", ", F5 up"),
        ("bar 23, beat 1  Violin 2 down", None, "23/1", "Violin 2 down"),
        ("8 down", None, "8", "down"),
        ("Takt 12, Schlag 3 up", None, "12/3", "up"),
        ("Viola, voice 2, bar 12, beat 3 up", some("Viola, voice 2"), "12/3", "up"),
        ("Viola, voice 2 12/3 up", some("Viola, voice 2"), "12/3", "up"),
    ] {
        assert_eq!(read(text), Ok((section, point.to_owned(), rest)), "{text}");
    }
}
