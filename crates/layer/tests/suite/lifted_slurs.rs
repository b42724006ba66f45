//! Lifting slurs: those written twice go with the others and come back as they stood; every half of a slur is told.

use arcata_layer::{LiftChoice, LiftKind, Lifted, Trust, apply, carry, lift, read, wipe, write};
use arcata_testkit::musicxml;
use arcata_xml::Document;

use crate::support::{document, edited};

const START: &str = "<slur number=\"1\" type=\"start\"/>";
const STOP: &str = "<slur number=\"1\" type=\"stop\"/>";

/// A slur over three notes, its markup as a test wants it.
fn slurred(start: &str, middle: &str, stop: &str) -> Document {
    let plain = musicxml("violin: 1/4 (C5 D5 E5) F5");
    let mut notes = plain.split("<note").map(str::to_owned).collect::<Vec<_>>();
    assert!(notes[1].contains(START) && notes[3].contains(STOP), "{plain}");
    notes[1] = notes[1].replace(START, start);
    if !middle.is_empty() {
        notes[2] = notes[2].replace("</note>", &format!("<notations>{middle}</notations></note>"));
    }
    notes[3] = notes[3].replace(STOP, stop);
    document(&notes.join("<note"))
}

fn lifted(score: &Document) -> (Lifted, Document) {
    let choice = LiftChoice { parts: None, kinds: vec![LiftKind::Slurs] };
    let lifted = lift(score, &arcata_score::read(score), &choice).expect("lifts");
    let clean = edited(score, &lifted.edits);
    (lifted, clean)
}

fn reasons(lifted: &Lifted) -> Vec<String> {
    lifted.staying.iter().map(|staying| staying.why.to_string()).collect()
}

/// Lifted, through its file, applied and wiped again: the same bytes each time.
fn there_and_back(score: &Document) {
    let (lifted, clean) = lifted(score);
    let layer = read(write(&lifted.layer).as_bytes()).expect("a layer as written");
    let applied = apply(&clean, &arcata_score::read(&clean), &layer, &[], Trust::OwnScore).expect("applies");
    let again = edited(&clean, &applied.edits);
    assert_eq!(again.text(), score.text());
    let twice =
        apply(&again, &arcata_score::read(&again), &applied.layer, &[], Trust::OwnScore).expect("applies");
    assert!(twice.edits.is_empty(), "{:?}", twice.edits);
    let wiped = wipe(&again, &arcata_score::read(&again), &applied.layer, Trust::OwnScore).expect("wipes");
    assert_eq!(edited(&again, &wiped.edits).text(), clean.text());
}

#[test]
fn a_slur_written_twice_is_lifted_with_both_its_elements() {
    let other =
        ["<slur type=\"start\" number=\"2\" placement=\"below\"/>", "<slur number=\"2\" type=\"stop\"/>"];
    for (start, stop) in [
        (format!("{START}{}", other[0]), format!("{STOP}{}", other[1])),
        (format!("{}{START}", other[0]), format!("{STOP}{}", other[1])),
        (format!("{START}\n{START}"), format!("{STOP}{STOP}")),
        (format!("{START}{}{START}", other[0]), format!("{}{STOP}{STOP}", other[1])),
    ] {
        let score = slurred(&start, "", &stop);
        let (lifted, clean) = lifted(&score);
        assert!(!clean.text().contains("<slur"), "{}", clean.text());
        assert!(lifted.staying.is_empty(), "{:?}", lifted.staying);
        assert_eq!(lifted.layer.entries.len(), 1, "players see one slur");
        there_and_back(&score);
        let revised =
            carry(&lifted.layer, &arcata_score::read(&clean), (&clean, &arcata_score::read(&clean)));
        assert_eq!(revised.layer.entries.len(), 1, "{:?}", revised.orphaned);
    }
}

/// Text between notations is no MusicXML (they hold elements alone), and it is the file's all the same. Found by fuzzing.
#[test]
fn text_that_strayed_among_notations_stays_where_it_was() {
    for (start, stop) in [
        (START.to_owned(), format!("{STOP}P")),
        (format!(" x {START}"), format!("{STOP} <![CDATA[P]]>\n")),
        (format!("{START}&amp;"), format!("P\n  {STOP}\n  Q")),
    ] {
        let score = slurred(&start, "", &stop);
        let (lifted, clean) = lifted(&score);
        assert_eq!(lifted.layer.entries.len(), 1);
        assert!(clean.text().contains('P') && !clean.text().contains("<slur"), "{}", clean.text());
        there_and_back(&score);
    }
}

#[test]
fn every_half_of_a_slur_stays_and_is_told() {
    let never_ends = slurred(START, "", "<dynamics><f/></dynamics>");
    let (lifted_one, clean) = lifted(&never_ends);
    assert_eq!(reasons(&lifted_one), ["a slur begins here and never ends; end it, or take it out"]);
    assert_eq!(clean.text().matches("<slur").count(), 1);
    let never_began = slurred("<dynamics><f/></dynamics>", "", STOP);
    assert_eq!(
        reasons(&lifted(&never_began).0),
        ["a slur ends here that never began; begin it, or take it out"]
    );
    let with_a_middle = slurred(START, "<slur type=\"continue\" number=\"1\"/>", STOP);
    let (lifted_three, clean) = lifted(&with_a_middle);
    assert_eq!(reasons(&lifted_three), ["a slur's element that is neither its beginning nor its end"]);
    assert_eq!(lifted_three.layer.entries.len(), 1);
    assert_eq!(clean.text().matches("<slur").count(), 1);
    // By a hidden grace note some writers let a slur reach into a second ending.
    let hidden = slurred(START, "", STOP).text().replacen("<note>", "<note print-object=\"no\"><grace/>", 1);
    let hidden = document(&hidden.replacen("<duration>1</duration>", "", 1).replacen(
        "<beats>4</beats>",
        "<beats>3</beats>",
        1,
    ));
    let (lifted_four, clean) = lifted(&hidden);
    let mut told = reasons(&lifted_four);
    told.sort_unstable();
    let on_hidden = "a slur's end on a hidden note, which no layer can name";
    assert_eq!(told, ["a slur ends here that never began; begin it, or take it out", on_hidden]);
    assert_eq!(clean.text().matches("<slur").count(), 2);
    for score in [never_ends, never_began, with_a_middle, hidden] {
        there_and_back(&score);
    }
}
