//! The notation, feature by feature.

use arcata_testkit::{
    Detail, Fixture, Fraction, Pointer, Random, ScoreShape, TieFact, musicxml, random_fixture,
};

fn lengths(text: &str) -> Vec<String> {
    let fixture = Fixture::parse(text).unwrap_or_else(|error| panic!("{error}"));
    fixture.notes().iter().map(|note| note.length.to_string()).collect()
}

fn trouble(text: &str) -> String {
    match Fixture::parse(text) {
        Ok(_) => panic!("the fixture should not be readable: {text}"),
        Err(error) => error.to_string(),
    }
}

#[test]
fn values_carry_on_with_their_dots() {
    assert_eq!(lengths("violin: 3/8 D4 E4 1/8 F4 G4"), ["3/8", "3/8", "1/8", "1/8"]);
    assert_eq!(lengths("time none\nviolin: 7/8 D4 1/64 E4 1/128 F4 rest"), ["7/8", "1/64", "1/128", "1/128"]);
}

#[test]
fn tuplets_shorten_notes_and_divisions_hold_them_all() {
    let text =
        "time 3/4\nviola: {3:2 1/8 C4 D4 E4} {5:4 1/16 F4 G4 A4 B4 C5} {3:2 {3:2 1/8 C4 D4 E4} 1/4 F4}";
    let mut wanted = vec!["1/12"; 3];
    wanted.extend(["1/20"; 5]);
    wanted.extend(["1/18"; 3]);
    wanted.push("1/6");
    assert_eq!(
        lengths(
            "time none\nviola: {3:2 1/8 C4 D4 E4} {5:4 1/16 F4 G4 A4 B4 C5} {3:2 {3:2 1/8 C4 D4 E4} 1/4 F4}"
        ),
        wanted
    );
    assert!(trouble(text).contains("not 5/6"), "{}", trouble(text));
    let xml = musicxml(
        "time none\nviola: {3:2 1/8 C4 D4 E4} {5:4 1/16 F4 G4 A4 B4 C5} {3:2 {3:2 1/8 C4 D4 E4} 1/4 F4}",
    );
    // Quarters of 1/3, 1/5 and 2/9: the least common multiple of 3, 5 and 9.
    assert!(xml.contains("<divisions>45</divisions>"), "{xml}");
    assert!(xml.contains("<duration>15</duration>") && xml.contains("<duration>9</duration>"));
    assert!(xml.contains("<actual-notes>9</actual-notes><normal-notes>4</normal-notes>"));
}

#[test]
fn dynamics_are_no_notes() {
    let fixture = Fixture::parse("cello: f 1/4 B3 Bb3 Bbb3 F3 | F#2 rest rest rest")
        .unwrap_or_else(|error| panic!("{error}"));
    let pitches: Vec<_> =
        fixture.notes().iter().filter_map(|note| note.pitch).map(|p| (p.step, p.alter, p.octave)).collect();
    assert_eq!(pitches, [('B', 0, 3), ('B', -1, 3), ('B', -2, 3), ('F', 0, 3), ('F', 1, 2)]);
    assert!(fixture.musicxml().contains("<dynamics><f/></dynamics>"));
}

#[test]
fn expectations_find_their_notes() {
    let fixture = Fixture::parse(
        "time 3/4
         violin: mf | (1/4 D4 1/8 E4 F#4) 1/4 G4_ | G4 rest *A4 G4 |
         ?            D                       U   | D
                      ^down                            ^\"no stroke here\"
         ??           1           2  3        4   | 5       _   6",
    )
    .unwrap_or_else(|error| panic!("{error}"));
    let told: Vec<_> = fixture
        .expectations()
        .iter()
        .map(|e| (e.pointer, e.bar.as_str(), e.beat.to_string(), e.note, e.text.as_str()))
        .collect();
    assert_eq!(
        told,
        [
            (Pointer::Stroke, "1", "1".to_owned(), 0, "D"),
            (Pointer::Stroke, "1", "3".to_owned(), 3, "U"),
            (Pointer::Stroke, "2", "3".to_owned(), 6, "D"),
            (Pointer::Caret, "1", "1".to_owned(), 0, "down"),
            (Pointer::Caret, "2", "2".to_owned(), 5, "no stroke here"),
            (Pointer::Note, "1", "1".to_owned(), 0, "1"),
            (Pointer::Note, "1", "2".to_owned(), 1, "2"),
            (Pointer::Note, "1", "5/2".to_owned(), 2, "3"),
            (Pointer::Note, "1", "3".to_owned(), 3, "4"),
            (Pointer::Note, "2", "1".to_owned(), 4, "5"),
            (Pointer::Note, "2", "3".to_owned(), 7, "6"),
        ]
    );
    assert_eq!(fixture.notes()[3].tie, TieFact::Start);
    assert_eq!(fixture.notes()[4].tie, TieFact::Stop);
    assert_eq!(fixture.expectations()[0].onset, Fraction::default());
}

#[test]
fn the_first_part_gives_metre_repeats_and_endings_to_all() {
    let xml = musicxml(
        "time 3/4
         violin: 3/4 D4 |: E4 | ending=1 F4 :| ending=2 G4 | time 2/4 1/2 A4 open-ended | B4 |||
         cello:  3/4 D3  |  E3  |    1/4 F3 rest rest |  bar-rest |          bar-rest   | 1/2 B3",
    );
    assert_eq!(xml.matches("<repeat direction=\"forward\"/>").count(), 2);
    assert_eq!(xml.matches("<repeat direction=\"backward\"/>").count(), 2);
    for ending in
        ["\"1\" type=\"start\"", "\"1\" type=\"stop\"", "\"2\" type=\"start\"", "\"2\" type=\"discontinue\""]
    {
        assert_eq!(xml.matches(&format!("<ending number={ending}/>")).count(), 2, "{ending}\n{xml}");
    }
    assert_eq!(xml.matches("<beats>2</beats>").count(), 2);
    assert_eq!(xml.matches("<bar-style>light-heavy</bar-style>").count(), 4);
}

#[test]
fn pickups_and_unnumbered_bars_have_their_numbers() {
    let fixture =
        Fixture::parse("pickup time 2/4\nviola: 1/8 C4 | 1/2 D4 | short 1/4 E4 :| unnumbered F4 | bar-rest*3 | empty | 1/2 C4")
            .unwrap_or_else(|error| panic!("{error}"));
    let labels: Vec<String> = fixture.bars().into_iter().map(|bar| bar.label).collect();
    assert_eq!(labels, ["0", "1", "2", "X1", "3", "4", "5", "6", "7"]);
    let xml = fixture.musicxml();
    assert!(xml.contains("<measure number=\"0\" implicit=\"yes\">"));
    assert!(xml.contains("<measure number=\"X1\" implicit=\"yes\">"));
    assert!(xml.contains("<multiple-rest>3</multiple-rest>"));
}

#[test]
fn slurs_may_meet_nest_and_cross() {
    let fixture = Fixture::parse("violin: (1/4 D4 (E4) F4 G4) | (1/8 A4 (2B4 C5) D5 E5)2 rest 1/4 A4")
        .unwrap_or_else(|error| panic!("{error}"));
    let slurs: Vec<_> =
        fixture.slurs().iter().map(|slur| (slur.number, slur.first_note, slur.last_note)).collect();
    assert_eq!(slurs, [(1, 0, 1), (1, 1, 3), (1, 4, 6), (2, 5, 8)]);
    let xml = fixture.musicxml();
    assert!(xml.contains("<slur number=\"1\" type=\"stop\"/><slur number=\"1\" type=\"start\"/>"), "{xml}");
}

#[test]
fn broken_slurs_and_ties_need_leave() {
    for (text, expected) in [
        ("violin: (1/4 D4 E4 F4 G4", "slur 1 to be closed by the end of the part"),
        ("violin: 1/4 D4 E4) F4 G4", "slur 1 to be open here"),
        ("violin: (1/4 D4) E4 F4 G4", "a slur over more than one note"),
        ("violin: (1/4 D4 (E4 F4 G4)", "another number, as in (2"),
        ("violin: 1/4 D4_ E4 F4 G4", "a tie to the same pitch"),
        ("violin: 1/4 D4 E4 F4 G4_", "a note after the tie"),
    ] {
        let message = trouble(text);
        assert!(message.contains(expected), "{text}: {message}");
        let broken = format!("broken-slurs broken-ties\n{text}");
        assert!(Fixture::parse(&broken).is_ok(), "{broken}");
    }
    let xml = musicxml("broken-slurs broken-ties\nviolin: (1/4 D4) E4_ F4 G4");
    assert!(xml.contains("<slur number=\"1\" type=\"stop\"/><slur number=\"1\" type=\"start\"/>"), "{xml}");
    assert_eq!(
        (xml.matches("<tied type=\"start\"/>").count(), xml.matches("<tied type=\"stop\"/>").count()),
        (1, 1)
    );
}

#[test]
fn marks_stand_where_musicxml_has_them() {
    let xml = musicxml("violin: 1/4 D4_+A4!arp!.!down!fermata!sf D4+B4!trem3 E4!gliss< F4!gliss>");
    assert!(xml.contains(
        "<notations><tied type=\"start\"/><technical><down-bow/></technical>\
         <articulations><staccato/></articulations><dynamics><sf/></dynamics>\
         <fermata type=\"upright\"/><arpeggiate/></notations>"
    ));
    // The upper note of the chord: not tied, but under the same arpeggio.
    assert!(xml.contains("<notations><arpeggiate/></notations>"));
    assert!(xml.contains("<tremolo type=\"single\">3</tremolo>"));
    assert!(xml.contains("<glissando number=\"1\" type=\"stop\"/>"));
}

#[test]
fn voices_go_back_and_stay_level() {
    let fixture = Fixture::parse("time 2/4\nviola: {voices 1/4 C5_ C5 over 1/8 E4 F4 1/4 G4 } | 1/2 C4")
        .unwrap_or_else(|e| panic!("{e}"));
    let voices: Vec<_> = fixture.notes().iter().map(|note| (note.voice, note.onset.to_string())).collect();
    let wanted = [(1, "0"), (1, "1/4"), (2, "0"), (2, "1/8"), (2, "1/4"), (1, "0")];
    assert_eq!(voices, wanted.map(|(voice, onset)| (voice, onset.to_owned())));
    assert!(fixture.musicxml().contains("<backup><duration>4</duration></backup>"));
    assert!(
        trouble("time 2/4\nviola: {voices 1/2 C5 over 1/4 E4 }")
            .contains("voices of one length, not 1/2 and 1/4")
    );
}

#[test]
fn directions_are_written_before_their_note() {
    let xml = musicxml(
        "\"Allegro\" quarter=96\nviolin: pp <=o \"pizz.\" dashes( 1/4 D4 E4 quarter.=92-96 dashes) == ff F4 [B] quarter=half G4",
    );
    let order = [
        "<words>Allegro</words>",
        "<beat-unit>quarter</beat-unit><per-minute>96</per-minute>",
        "<pp/>",
        "<wedge niente=\"yes\" type=\"crescendo\"/>",
        "<words>pizz.</words>",
        "<dashes number=\"1\" type=\"start\"/>",
        "<step>D</step>",
        "<beat-unit>quarter</beat-unit><beat-unit-dot/><per-minute>92-96</per-minute>",
        "<wedge type=\"stop\"/>",
        "<ff/>",
        "<step>F</step>",
        "<rehearsal>B</rehearsal>",
        "<beat-unit>quarter</beat-unit><beat-unit>half</beat-unit>",
        "<step>G</step>",
    ];
    let places: Vec<usize> = order
        .iter()
        .map(|text| xml.find(text).unwrap_or_else(|| panic!("{text} is missing in\n{xml}")))
        .collect();
    assert!(places.is_sorted(), "{places:?}");
}

#[test]
fn headers_reach_the_file() {
    let xml = musicxml(
        "title \"Reeds & Water\" composer \"N. N.\" timewise version 3.1 time 3+2/8 key Bb minor
         double bass [abbreviation Db.; program 44]: 1/8 D3 E3 F3 G3 A3",
    );
    for text in [
        "<score-timewise version=\"3.1\">",
        "<work-title>Reeds &amp; Water</work-title>",
        "<beats>3+2</beats><beat-type>8</beat-type>",
        "<fifths>-5</fifths><mode>minor</mode>",
        "<part-abbreviation>Db.</part-abbreviation>",
        "<midi-program>44</midi-program>",
        "<transpose><diatonic>0</diatonic><chromatic>0</chromatic><octave-change>-1</octave-change></transpose>",
    ] {
        assert!(xml.contains(text), "{text} is missing in\n{xml}");
    }
    let measure = xml.find("<measure").unwrap_or_default();
    assert!(xml.find("<part id").is_some_and(|part| part > measure));
}

#[test]
fn keys_are_found_from_their_tonic() {
    for (key, fifths) in
        [("C", 0), ("D", 2), ("Bb", -2), ("F#", 6), ("Cb", -7), ("A minor", 0), ("F# minor", 3)]
    {
        let xml = musicxml(&format!("key {key}\nviolin: bar-rest"));
        assert!(xml.contains(&format!("<fifths>{fifths}</fifths>")), "{key}");
    }
    assert!(trouble("key G#\nviolin: bar-rest").contains("a key"));
}

#[test]
fn troubles_are_named_where_they_are() {
    for (text, place, expected) in [
        ("violin: 1/4 D4 h", "column 16", "a note such as F#4"),
        ("violin: 1/3 D4", "column 9", "a value: 1/1, 1/2, 1/4"),
        ("violin: D", "column 10", "an octave from 0 to 9"),
        ("violin: {3:2 1/8 D4 E4 F4 |", "column 9", "the tuplet to be closed"),
        ("violin: {voices 1/1 D4 over E4 |", "column 9", "the voices to be closed"),
        ("violin: 1/4 D4!sideways", "column 16", "a mark"),
        ("violin: D4+ | ", "column 12", "a note"),
        ("violin: 1/1 D4\ncello: 1/1 D3 | E3", "line 2", "1 bars in cello as in violin, not 2"),
        ("violin: 1/1 D4\n     ^x", "column 6", "the nearest begins in column 13"),
        ("violin: 1/2 D4 E4\n ? D", "column 4", "2 expectations here"),
        ("violin: 1/1 D4 | E4\n ? D | U    | D", "column 2", "expectations for 2 bars"),
        ("? D", "column 1", "a line of music above"),
        ("tempo 96\nviolin: 1/1 D4", "column 1", "a header item"),
        ("violin: 1/4 D4 time 2/4 E4", "column 16", "at the start of its bar"),
        ("violin: 1/2 D4 | E4", "bar 1", "the header pickup"),
        ("time none\nviolin: bar-rest", "column 9", "without a metre"),
        ("", "line 1", "a part line"),
    ] {
        let message = trouble(text);
        assert!(message.contains(place) && message.contains(expected), "{text}:\n{message}");
    }
}

#[test]
fn a_test_panics_with_a_readable_message() {
    let panic = std::panic::catch_unwind(|| musicxml("violin: 1/4 D4 h")).expect_err("the fixture is wrong");
    let message = panic.downcast_ref::<String>().map_or("", String::as_str);
    assert!(
        message.contains("line 1, column 16") && message.contains("  violin: 1/4 D4 h\n                 ^"),
        "{message}"
    );
}

#[test]
fn strokes_skip_slurs_ties_cues_and_grace_notes() {
    let fixture = Fixture::parse(
        "viola: *D4 *E4 1/4 F4 (*G4 A4 B4) C5_ | 1/8 C5 D4!cue 1/4 D4_+A4 D4+B4 {voices (1/8 E4 F4) over C4 D4 }
       ?   1               2                3  |          4      5                         6          7 8",
    )
    .unwrap_or_else(|error| panic!("{error}"));
    let notes: Vec<usize> = fixture.expectations().iter().map(|e| e.note).collect();
    assert_eq!(notes, [0, 3, 6, 9, 11, 13, 15, 16]);
}

#[test]
fn no_text_makes_the_reader_panic() {
    let alphabet: Vec<char> =
        " \n|:[](){}<>=+!*/^?\"'.,#_0123456789ABCDEFGbrestoverIVtimekyp%é".chars().collect();
    let mut random = Random::new(11);
    let mut refused = 0;
    for seed in 0..3000 {
        let shape = ScoreShape { parts: 2, bars: 3, detail: Detail::All };
        let mut text: Vec<char> = random_fixture(seed, shape).chars().collect();
        for _ in 0..=random.below(4) {
            let place = random.below(text.len());
            match random.below(3) {
                0 => text[place] = *random.pick(&alphabet),
                1 => text.insert(place, *random.pick(&alphabet)),
                _ => drop(text.remove(place)),
            }
        }
        let text: String = text.into_iter().collect();
        match Fixture::parse(&text) {
            Ok(fixture) => assert!(fixture.musicxml().ends_with("partwise>\n")),
            Err(error) => {
                refused += 1;
                assert!(error.line >= 1 && error.column >= 1 && !error.to_string().is_empty());
            }
        }
    }
    assert!(refused > 500, "only {refused} texts were refused");
}
