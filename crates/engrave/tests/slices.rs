//! Slices cut and engraved: what holds at the cut is said again, and every note is found in the drawing.
#![expect(clippy::unwrap_used, reason = "tests")]

use arcata_engrave::{Cutter, Engraver, Opening, SystemSpread, Width};
use arcata_score::Score;
use arcata_xml::{Limits, ScoreFile, Tag, open_score};

const QUARTET: &[u8] = include_bytes!("../../../demo/ferry-bell-quartet.musicxml");

fn opened(xml: &[u8]) -> (ScoreFile, Score) {
    let file = open_score(xml.to_vec(), &Limits::default()).unwrap();
    let score = arcata_score::read(file.document());
    (file, score)
}

fn slice_of(text: &str, first: u32, last: u32) -> String {
    let (file, score) = opened(arcata_testkit::musicxml(text).as_bytes());
    Cutter::new(file.document(), &score).cut(&[0], first..=last, Opening::Excerpt).musicxml().to_owned()
}

#[test]
fn clef_key_metre_and_dynamic_are_said_again_at_the_cut() {
    let slice = slice_of("key Bb  time 3/4\nviola: p 1/4 D4 Eb4 F4 | 3/4 D4 | 1/4 D4 Eb4 F4 |||", 1, 2);
    for wanted in [
        "<sign>C</sign><line>3</line>",
        "<fifths>-2</fifths>",
        "<beats>3</beats>",
        "<divisions>",
        "<other-dynamics>[p]</other-dynamics>",
        r#"<measure number="2">"#,
    ] {
        let close = slice.replace(['\n', ' '], "");
        assert!(close.contains(&wanted.replace(' ', "")), "{wanted} is not in {slice}");
    }
}

#[test]
fn a_reminder_was_printed_over_the_dim_that_stands_at_the_cut() {
    let (file, score) = opened(QUARTET);
    let bar = (0u32..).zip(&score.bars).find(|(_, bar)| bar.label == "24").unwrap().0;
    let slice = Cutter::new(file.document(), &score).cut(&[0], bar..=bar, Opening::Excerpt);
    let text = slice.musicxml();
    assert!(text.contains(">[ff] dim.</words>") && !text.contains("<other-dynamics>"), "{text}");
}

#[test]
fn a_reminder_was_printed_over_the_hairpin_under_way_and_the_dynamic_it_leads_to() {
    let (file, score) = opened(QUARTET);
    let bar = (0u32..).zip(&score.bars).find(|(_, bar)| bar.label == "17").unwrap().0;
    let slice = Cutter::new(file.document(), &score).cut(&[2], bar..=bar, Opening::Excerpt);
    let text = slice.musicxml().replace('\n', "");
    let reminder = r#"<direction placement="above"><direction-type><words font-style="italic">[mp]</words>"#;
    assert!(text.contains(reminder) && !text.contains("<other-dynamics>"), "{text}");
}

#[test]
fn tempo_and_rehearsal_marks_of_parts_that_are_not_shown_stand_above_the_first_line() {
    let (file, score) = opened(QUARTET);
    let cutter = Cutter::new(file.document(), &score);
    let bar = (0u32..).zip(&score.bars).find(|(_, bar)| bar.label == "17").unwrap().0;
    let count = |parts: &[usize], what: &str| {
        cutter.cut(parts, bar..=bar, Opening::NextLine).musicxml().matches(what).count()
    };
    for parts in [&[0][..], &[2], &[2, 3], &[0, 1, 2, 3]] {
        assert_eq!(count(parts, "<rehearsal"), 1, "{parts:?}");
        assert_eq!(count(parts, "<metronome"), 1, "{parts:?}");
    }
    // Of several lines the first one has it, and a mark in the middle of a bar keeps its place.
    let pair = cutter.cut(&[2, 3], bar..=bar, Opening::NextLine).musicxml().to_owned();
    let (first, second) = pair.split_once(r#"<part id="part-3">"#).unwrap();
    assert!(first.contains("<rehearsal") && !second.contains("<rehearsal"));
}

#[test]
fn a_slur_and_a_tie_over_the_cut_get_ends_of_their_own() {
    let (file, score) =
        opened(arcata_testkit::musicxml("violin: 1/4 D4 E4 (F4 G4 | 1/2 A4) B4_ | 1/1 B4 |||").as_bytes());
    let cutter = Cutter::new(file.document(), &score);
    let middle = cutter.cut(&[0], 1..=1, Opening::Excerpt);
    let (cut, _) = opened(middle.musicxml().as_bytes());
    assert!(cut.document().elements().any(|element| element.tag() == Tag::GRACE));
    // The carriers are hidden, and hidden notes are no notes: the ends are counted in the file.
    let ends = |tag: Tag, end: &str| {
        let typed = |element: &arcata_xml::Element<'_>| element.attribute("type").as_deref() == Some(end);
        cut.document().elements().filter(|element| element.tag() == tag && typed(element)).count()
    };
    for tag in [Tag::SLUR, Tag::TIED] {
        assert_eq!((ends(tag, "start"), ends(tag, "stop")), (1, 1), "{tag:?}: {}", middle.musicxml());
    }
    assert_eq!(middle.notes().len(), 2, "the carriers are not notes of the user's");
    let whole = cutter.cut(&[0], 0..=2, Opening::Excerpt);
    let (cut, _) = opened(whole.musicxml().as_bytes());
    assert!(!cut.document().elements().any(|element| element.tag() == Tag::GRACE));
}

#[test]
fn every_note_lies_in_its_system_and_beside_its_own_staff() {
    let (file, score) = opened(QUARTET);
    let cutter = Cutter::new(file.document(), &score);
    let engraver = Engraver::new();
    let all: Vec<usize> = (0..4).collect();
    let slices: Vec<_> = (0..8)
        .map(|line| (cutter.cut(&all, line * 4..=line * 4 + 3, Opening::Excerpt), SystemSpread::default()))
        .collect();
    for ((slice, _), drawing) in slices.iter().zip(engraver.engrave_all(&slices)) {
        let drawing = drawing.unwrap();
        assert!(drawing.remarks.is_empty(), "{:?}", drawing.remarks);
        assert_eq!(drawing.staves.len(), 4);
        assert_eq!(drawing.barlines.len(), 4);
        for part in all.iter().copied() {
            let staff = drawing.staves[part];
            for note in score.parts[part].notes.iter().filter(|note| slice.bars().contains(&note.bar)) {
                let area = drawing.notes[&note.node];
                assert!(drawing.system.holds(area), "{area:?} is outside {:?}", drawing.system);
                assert!(area.left > staff.left && area.right < staff.right);
                let middle = f64::midpoint(area.top, area.bottom);
                let nearest = (0..4).min_by(|one, other| {
                    let far = |index: &usize| {
                        let staff = drawing.staves[*index];
                        (middle - f64::midpoint(staff.top, staff.bottom)).abs()
                    };
                    far(one).total_cmp(&far(other))
                });
                assert_eq!(nearest, Some(part));
            }
        }
    }
}

#[test]
fn the_same_slice_gives_the_same_drawing_on_every_thread_and_fills_the_width_asked_for() {
    let (file, score) = opened(QUARTET);
    let cutter = Cutter::new(file.document(), &score);
    let spread = SystemSpread { width: Width::Hundredths(2400), between_staves: 24 };
    let slice = cutter.cut(&[0, 3], 4..=7, Opening::Excerpt);
    let drawn = |_| Engraver::new().engrave(&slice, spread).unwrap();
    let others: Vec<_> = std::thread::scope(|scope| {
        let started: Vec<_> = (0..4).map(|index| scope.spawn(move || drawn(index))).collect();
        started.into_iter().map(|thread| thread.join().unwrap()).collect()
    });
    let first = drawn(0);
    assert!(others.iter().all(|other| **other == *first));
    assert!((first.width - 17_280.0).abs() < 1.0);
    let last = first.barlines.last().unwrap();
    assert!((last - first.width).abs() < 90.0, "the last barline is at {last} of {}", first.width);
}

/// Real files hold hairpins that nothing closes, and hairpins whose end stands before their beginning, in another voice.
#[test]
fn a_hairpin_that_nothing_closes_is_not_drawn_through_the_piece() {
    let xml = arcata_testkit::musicxml("violin: p <= 1/4 D4 E4 F4 == G4 | 1/1 A4 | B4 |||");
    let open = xml.replacen(r#"<wedge type="stop"/>"#, "<words>x</words>", 1);
    assert_ne!(open, xml, "the fixture has the end that is taken out");
    for (text, wedges) in [(xml, 0), (open, 0)] {
        let (file, score) = opened(text.as_bytes());
        let slice = Cutter::new(file.document(), &score).cut(&[0], 1..=2, Opening::Excerpt);
        assert_eq!(slice.musicxml().matches("<wedge").count(), wedges, "{}", slice.musicxml());
    }
    let long = arcata_testkit::musicxml("violin: p <= 1/4 D4 E4 F4 G4 | 1/1 A4 | == B4 |||");
    let (file, score) = opened(long.as_bytes());
    let slice = Cutter::new(file.document(), &score).cut(&[0], 1..=1, Opening::Excerpt);
    assert_eq!(slice.musicxml().matches("<wedge").count(), 2, "one that is closed later is said again");
}

#[test]
fn nothing_is_said_again_from_the_movement_before() {
    let text =
        arcata_testkit::musicxml("unchecked\nviola: f 1/4 D4 E4 F4 G4 ||| D4 E4 F4 G4 | D4 E4 F4 G4 |||");
    let text = text.replacen("number=\"2\"", "number=\"1\"", 1).replacen("number=\"3\"", "number=\"2\"", 1);
    // The testkit leaves the first of equal numbers where it is: the movement begins where counting goes back.
    let text = text.replacen("number=\"1\"", "number=\"7\"", 1);
    let (file, score) = opened(text.as_bytes());
    assert_eq!(score.movements.len(), 2);
    let cutter = Cutter::new(file.document(), &score);
    for bars in [1..=1, 2..=2] {
        let slice = cutter.cut(&[0], bars, Opening::Excerpt);
        assert!(!slice.musicxml().contains("[f]"), "{}", slice.musicxml());
    }
}

/// Two notes of a bar, and the rest behind them, where a file has the slur's end.
fn slurred_into_a_rest(from: &str) -> String {
    let music = arcata_testkit::musicxml("violin: 1/4 C5 D5 rest rest |||");
    let slur = |kind: &str| format!(r#"<notations><slur type="{kind}" number="1"/></notations></note>"#);
    let mut notes: Vec<String> = music.split("</note>").map(str::to_owned).collect();
    let begins = usize::from(from == "D");
    notes[begins].push_str(&slur("start"));
    notes[2].push_str(&slur("stop"));
    let last = notes.len() - 1;
    let closed = notes.into_iter().enumerate().map(|(index, note)| {
        if index == last || note.ends_with("</note>") { note } else { note + "</note>" }
    });
    closed.collect()
}

/// Slurs of open scores end on rests; the engraver draws none of them. Common practice: a slur ends on a note, and a short
/// curve behind a note lets it ring.
#[test]
fn a_slur_that_ends_on_a_rest_is_drawn_to_the_last_note_before_it() {
    let slice = |from: &str| {
        let (file, score) = opened(slurred_into_a_rest(from).as_bytes());
        assert_eq!(score.parts[0].slurs.len(), 1);
        Cutter::new(file.document(), &score).cut(&[0], 0..=0, Opening::Excerpt).musicxml().to_owned()
    };
    let notes = |text: &str| text.split("</note>").map(str::to_owned).collect::<Vec<_>>();
    let text = slice("C");
    let found = notes(&text);
    assert!(found[0].contains("slur type=\"start\"") && found[1].contains("slur type=\"stop\""), "{text}");
    assert!(!found[2].contains("<slur"), "{text}");
    let text = slice("D");
    let found = notes(&text);
    assert!(found[1].contains("let-ring") && !text.contains("<slur"), "{text}");
}
