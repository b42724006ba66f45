//! Where movements begin, and a movement alone.

use std::fmt::Write as _;

use arcata_xml::{Document, Limits};

use crate::{Length, Moment, NoteId, Score, TieEnd};

/// A bar in a word: its number, and behind it what is printed: `=` a final barline, `:` a repeat's end, `#` a new page,
/// `[text]` words above its beginning.
fn score(bars: &str) -> Score {
    crate::read(&document(bars))
}

fn document(bars: &str) -> Document {
    let mut xml = String::from(
        "<score-partwise><part-list><score-part id=\"P1\"><part-name>Viola</part-name></score-part></part-list><part id=\"P1\">",
    );
    for (index, bar) in bars.split(" | ").enumerate() {
        let (signs, words) = bar
            .split_once('[')
            .map_or((bar, None), |(signs, words)| (signs, Some(words.trim_end_matches(']'))));
        let number = signs.trim_end_matches(['=', ':', '#']);
        let _ = write!(xml, "<measure number=\"{number}\">");
        if signs.contains('#') {
            xml.push_str("<print new-page=\"yes\"/>");
        }
        if index == 0 {
            xml.push_str("<attributes><divisions>1</divisions><time><beats>4</beats><beat-type>4</beat-type></time></attributes>");
        }
        for words in words.into_iter().flat_map(|words| words.split(" + ")) {
            let _ =
                write!(xml, "<direction><direction-type><words>{words}</words></direction-type></direction>");
        }
        xml.push_str("<note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration></note>");
        if signs.contains('=') {
            xml.push_str("<barline location=\"right\"><bar-style>light-heavy</bar-style></barline>");
        }
        if signs.contains(':') {
            xml.push_str("<barline location=\"right\"><repeat direction=\"backward\"/></barline>");
        }
        xml.push_str("</measure>");
    }
    xml.push_str("</part></score-partwise>");
    Document::parse(xml.into_bytes(), &Limits::default()).unwrap()
}

/// Number, heading and bars (by index) of each movement.
fn told(bars: &str) -> Vec<String> {
    let score = score(bars);
    let told = score.movements.iter().map(|movement| {
        let heading = movement.heading.as_deref().unwrap_or("-");
        format!("{} ({heading}) {}-{}", movement.number, movement.bars.start(), movement.bars.end())
    });
    told.collect()
}

/// Common practice in printed scores; each case is a way of numbering found in open quartets.
#[test]
fn movements_are_found_by_what_is_printed() {
    for (bars, expected) in [
        ("1 | 2 | 3=", &["I (-) 0-2"][..]),
        ("1[I.] | 2= | 1[II. Romanze] | 2=", &["I (I) 0-1", "II (II. Romanze) 2-3"]),
        ("0 | 1 | 2= | 0[III.  Notturno] | 1=", &["I (-) 0-2", "III (III. Notturno) 3-4"]),
        // Numbered on through the work, with headings.
        ("1 | 2= | 3[II] | 4=", &["I (-) 0-1", "II (II) 2-3"]),
        // A new page with a tempo of its own behind a final barline.
        ("1 | 2= | 3#[Andante] | 4=", &["I (-) 0-1", "II (-) 2-3"]),
        // Split bars and second endings have labels of their own.
        ("1 | 2 | X1 | X2= | 1[IV. Finale] | 2=", &["I (-) 0-3", "IV (IV. Finale) 4-5"]),
        ("1 | X1 | 2 | X2 | 3=", &["I (-) 0-4"]),
        // Every bar that is not counted is 0.
        ("1 | 2 | 0 | 3 | 4=", &["I (-) 0-4"]),
        // A repeat ends the movement before.
        ("1 | 2: | 0 | 1 | 2=", &["I (-) 0-1", "II (-) 2-4"]),
        // Two of one number are told apart by their places.
        ("1[I] | 2= | 1[I] | 2=", &["I (I) 0-1", "II (I) 2-3"]),
    ] {
        assert_eq!(told(bars), expected, "{bars}");
    }
}

#[test]
fn parts_of_a_movement_are_none() {
    for bars in [
        "1[Menuetto] | 2=[Fine] | 3#[Trio + Andante] | 4:[D.C.]",
        "1 | 2= | 1[Trio] | 2=",
        "1[Tema] | 2= | 3#[Var. II + Allegro] | 4=",
        // The fourth string, a second player: numerals in the music.
        "1 | 2 | 3[IV] | 4 | 5#[II] | 6=",
        // Sent back over a Fine: the trio of a minuet, whatever its pages and numbers.
        "1 | 2=[Fine] | 3#[Andante] | 4[D.C.] | 5=",
        "1 | 2=[Fine] | 1 | 2[D.C.]",
    ] {
        assert_eq!(told(bars).len(), 1, "{bars}: {:?}", told(bars));
    }
}

#[test]
fn a_movement_alone_counts_from_its_beginning() {
    let score = score("1[I.] | 2= | 1[II.] | 2=");
    let (alone, beginning) = score.movement_alone(1).unwrap();
    assert_eq!((beginning.bar, beginning.time, beginning.notes.as_slice()), (2, Length::new(2, 1), &[2][..]));
    assert_eq!(
        (alone.bars.len(), alone.bars[0].start, alone.bars[0].label.as_str()),
        (2, Moment::START, "1")
    );
    assert_eq!(alone.parts[0].notes[0].onset, Moment::START);
    assert_eq!(alone.parts[0].meters.len(), 1, "the signature in force is stated");
    assert_eq!(beginning.note(0, NoteId(1)), NoteId(3));
    assert_eq!(
        alone.parts[0].notes[0].node, score.parts[0].notes[2].node,
        "elements keep their place in the file"
    );
    assert!(score.movement_alone(2).is_none());
}

#[test]
fn bars_are_said_with_their_movement_only_where_there_are_several() {
    assert_eq!(score("1 | 2=").bar_said("bar", 1), "bar 2");
    let several = score("1[I.] | 2= | 1[II.] | 2=");
    assert_eq!(several.bar_said("measure", 3), "II, measure 2");
    assert_eq!(several.last_bars_said(), "the last ones are 2 (I), 2 (II)");
}

/// A tie, a slur and a hairpin that nothing ends do not lead into the next movement.
#[test]
fn nothing_is_joined_across_movements() {
    let bar = |number: u32, notations: &str, tie: &str, more: &str| {
        format!(
            "<measure number=\"{number}\">{more}<note><pitch><step>C</step><octave>4</octave></pitch><duration>4</duration>{tie}<notations>{notations}</notations></note></measure>"
        )
    };
    let attributes = "<attributes><divisions>1</divisions></attributes>";
    let wedge = |kind: &str| {
        format!("<direction><direction-type><wedge type=\"{kind}\"/></direction-type></direction>")
    };
    let xml = format!(
        "<score-partwise><part-list><score-part id=\"P1\"><part-name>Viola</part-name></score-part></part-list><part id=\"P1\">{}{}{}</part></score-partwise>",
        bar(1, "<slur type=\"start\" number=\"1\"/>", "", attributes),
        bar(2, "<tied type=\"start\"/>", "<tie type=\"start\"/>", &wedge("crescendo")),
        bar(
            1,
            "<tied type=\"stop\"/><slur type=\"stop\" number=\"1\"/>",
            "<tie type=\"stop\"/>",
            &wedge("stop")
        )
    );
    let score = crate::read(&Document::parse(xml.into_bytes(), &Limits::default()).unwrap());
    let part = &score.parts[0];
    assert_eq!(score.movements.len(), 2);
    assert_eq!((part.slurs.len(), part.open_slurs.len()), (0, 2));
    assert_eq!(part.notes[1].tie.to_after, TieEnd::Open);
    assert_eq!(part.swells[0].end, None);
}

/// Common practice: players stop between movements, unless "attacca" stands at the end of the one before.
#[test]
fn players_stop_before_a_movement_unless_attacca_stands_there() {
    let stops = |bars: &str| {
        let document = document(bars);
        crate::read(&document).stops(&document)
    };
    assert_eq!(stops("1[I.] | 2= | 1[II.] | 2="), [2]);
    assert_eq!(stops("1[I.] | 2=[attacca] | 1[II.] | 2= | 1[III.] | 2="), [4]);
    assert_eq!(stops("1[I.] | 2=[Attaca il seguente] | 1[II.] | 2="), [] as [u32; 0]);
    // Said too long before the end it is about something else.
    let long: Vec<String> = (2..12).map(|bar| bar.to_string()).collect();
    assert_eq!(stops(&format!("1[attacca] | {}= | 1[II.] | 2=", long.join(" | "))), [11]);
}

/// Places as people type them, in a score of two movements; what is not there is told with what is.
#[test]
fn places_are_found_in_the_movement_that_is_meant() {
    let score = score("1[I.] | 2 | 3= | 1[II. Romanze] | 2 | 2 | X1=");
    let bars =
        |text: &str| score.bars_of(&score.passage(text).unwrap(), None).map_err(|error| error.to_string());
    for (text, first, last) in [
        ("2", 1, 1),
        ("1-3", 0, 2),
        ("II 2", 4, 5),
        ("II 2(2)", 5, 5),
        ("II, bar 1-2", 3, 5),
        ("Romanze 1", 3, 3),
        ("x1", 6, 6),
    ] {
        assert_eq!(bars(text), Ok(first..=last), "{text}");
    }
    for (text, why) in [
        ("IV 1", "there is no movement \"IV\"; the file has I, II. Romanze"),
        ("9", "the score has no bar 9"),
        ("II 3", "II. Romanze has no bar 3; the last one is 2"),
        ("3-2", "the second bar comes before the first"),
        ("I 2(2)", "no bar 2(2)"),
    ] {
        let told = bars(text).unwrap_err();
        assert!(told.contains(why), "{text}: {told}");
    }
    // The second movement alone is looked through where it is said which.
    let second = score.bars_of(&score.passage("2").unwrap(), Some(1));
    assert_eq!(second, Ok(4..=5));
}

/// A bar of 4/4 has beats 1 to 4; between them and behind them there is none.
#[test]
fn beats_lie_where_the_metre_says() {
    use crate::places::Within;
    let score = score("1 | 2=");
    let at = |within| score.offset_of(0, 1, within);
    assert_eq!(at(Within::Bar), Ok(None));
    assert_eq!(at(Within::After(Length::new(1, 8))), Ok(Some(Length::new(1, 8))));
    let beat = |number| at(Within::Beat(Length::new(number, 1)));
    assert_eq!(beat(1), Ok(Some(Length::ZERO)));
    assert_eq!(beat(4), Ok(Some(Length::new(3, 4))));
    assert_eq!(beat(5).unwrap_err().to_string(), "4 beats");
}
