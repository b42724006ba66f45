//! The notation, feature by feature.

use arcata_testkit::{Fixture, Fraction, Pointer, Tie, musicxml};

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
    assert_eq!(lengths("violin: d'4. e' f'8 g'"), ["3/8", "3/8", "1/8", "1/8"]);
    assert_eq!(lengths("time none\nviolin: d'2.. e'64 f'128 r"), ["7/8", "1/64", "1/128", "1/128"]);
}

#[test]
fn tuplets_shorten_notes_and_divisions_hold_them_all() {
    let text = "time 3/4\nviola: {3:2 c'8 d' e'} {5:4 f'16 g' a' b' c''} {3:2 {3:2 c'8 d' e'} f'4}";
    let mut wanted = vec!["1/12"; 3];
    wanted.extend(["1/20"; 5]);
    wanted.extend(["1/18"; 3]);
    wanted.push("1/6");
    assert_eq!(
        lengths("time none\nviola: {3:2 c'8 d' e'} {5:4 f'16 g' a' b' c''} {3:2 {3:2 c'8 d' e'} f'4}"),
        wanted
    );
    assert!(trouble(text).contains("not 5/6"), "{}", trouble(text));
    let xml = musicxml("time none\nviola: {3:2 c'8 d' e'} {5:4 f'16 g' a' b' c''} {3:2 {3:2 c'8 d' e'} f'4}");
    // Quarters of 1/3, 1/5 and 2/9: the least common multiple of 3, 5 and 9.
    assert!(xml.contains("<divisions>45</divisions>"), "{xml}");
    assert!(xml.contains("<duration>15</duration>") && xml.contains("<duration>9</duration>"));
    assert!(xml.contains("<actual-notes>9</actual-notes><normal-notes>4</normal-notes>"));
}

#[test]
fn a_bare_f_is_a_dynamic_and_b_is_natural() {
    let message = trouble("cello: b4 a g f | f#, r r r");
    assert!(message.contains("bar 1 to last 1") && message.contains("a bare f is a dynamic"), "{message}");
    let fixture =
        Fixture::parse("cello: f b4 bb bbb f4 | f#, r r r").unwrap_or_else(|error| panic!("{error}"));
    let pitches: Vec<_> =
        fixture.notes().iter().filter_map(|note| note.pitch).map(|p| (p.step, p.alter, p.octave)).collect();
    assert_eq!(pitches, [('B', 0, 3), ('B', -1, 3), ('B', -2, 3), ('F', 0, 3), ('F', 1, 2)]);
    assert!(fixture.musicxml().contains("<dynamics><f/></dynamics>"));
}

#[test]
fn expectations_find_their_notes() {
    let fixture = Fixture::parse(
        "time 3/4
         violin: mf | (d'4 e'8 f#') g'4~ | g'4 r *a'16 g'4 |
         ?            D             U    | D
                      ^down                    ^\"no stroke here\"
         ??           1    2   3    4    | 5      _    6",
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
    assert_eq!(fixture.notes()[3].tie, Tie::Start);
    assert_eq!(fixture.notes()[4].tie, Tie::Stop);
    assert_eq!(fixture.expectations()[0].onset, Fraction::default());
}
