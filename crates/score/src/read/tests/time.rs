//! Notes in time.

use super::*;
use crate::{ChordRole, NoteKind, Pitch};

#[test]
fn a_fixture_becomes_a_score() {
    let score = fixture("key D  quarter=96\nviolin: mf 1/4 D4 (1/8 E4 F#4) 1/4 G4 A4 | 1/1 B4 |||");
    assert_sound(&score);
    let part = only_part(&score);
    assert_eq!(score.bars.len(), 2);
    assert_eq!(score.bars[1].start.since_start(), Length::WHOLE);
    assert_eq!((part.notes.len(), part.slurs.len(), part.keys[0]), (6, 1, (0, 2)));
}

#[test]
fn timewise_and_partwise_read_alike() {
    let bar = |number: u32, part: &str, pitch: &str| {
        (number, part.to_owned(), note(pitch, 16, "<type>whole</type>"))
    };
    let music = [bar(1, "P1", "C5"), bar(1, "P2", "E4"), bar(2, "P1", "D5"), bar(2, "P2", "F4")];
    let content = |number: u32, part: &str| {
        let (.., music) = music.iter().find(|(n, p, _)| *n == number && p == part).unwrap();
        format!("<attributes><divisions>4</divisions></attributes>{music}")
    };
    let list = "<part-list><score-part id=\"P1\"><part-name>Violin I</part-name></score-part>\
                <score-part id=\"P2\"><part-name>Violin II</part-name></score-part></part-list>";
    let mut partwise = format!("<score-partwise>{list}");
    for part in ["P1", "P2"] {
        partwise += &format!("<part id=\"{part}\">");
        for number in [1, 2] {
            partwise += &format!("<measure number=\"{number}\">{}</measure>", content(number, part));
        }
        partwise += "</part>";
    }
    let mut timewise = format!("<score-timewise>{list}");
    for number in [1, 2] {
        timewise += &format!("<measure number=\"{number}\">");
        for part in ["P1", "P2"] {
            timewise += &format!("<part id=\"{part}\">{}</part>", content(number, part));
        }
        timewise += "</measure>";
    }
    let one = score_of(&(partwise + "</score-partwise>"));
    let other = score_of(&(timewise + "</score-timewise>"));
    assert_sound(&one);
    assert_sound(&other);
    for (one, other) in one.parts.iter().zip(&other.parts) {
        assert_eq!((&one.name, times(&one.notes)), (&other.name, times(&other.notes)));
        assert_eq!(one.notes.len(), 2);
    }
    assert_eq!(other.bars[1].label, "2");
}

#[test]
fn a_part_may_be_missing_from_bars_of_a_timewise_score() {
    let part = |id: &str| {
        format!(
            "<part id=\"{id}\"><attributes><divisions>4</divisions></attributes>{}</part>",
            note("C5", 16, "")
        )
    };
    let score = score_of(&format!(
        "<score-timewise><part-list><score-part id=\"P1\"/><score-part id=\"P2\"/></part-list>\
         <measure number=\"1\">{}</measure><measure number=\"2\">{}{}</measure></score-timewise>",
        part("P1"),
        part("P1"),
        part("P2")
    ));
    assert_sound(&score);
    assert_eq!(score.parts[1].measures.iter().filter(|measure| measure.is_none()).count(), 1);
    assert_eq!(score.parts[1].notes[0].onset.since_start(), Length::WHOLE);
}

#[test]
fn voices_share_a_bar_and_stand_in_the_order_of_time() {
    let bar = [
        voiced("C5", 8, 1, ""),
        voiced("D5", 8, 1, ""),
        back(16),
        voiced("E4", 4, 2, ""),
        "<forward><duration>4</duration></forward>".to_owned(),
        voiced("F4", 8, 2, ""),
    ]
    .concat();
    let score = violin(&[&bar]);
    assert_sound(&score);
    let part = only_part(&score);
    assert_eq!(part.voices, ["1", "2"]);
    let voices: Vec<u16> = part.notes.iter().map(|note| note.voice).collect();
    assert_eq!(voices, [0, 1, 0, 1]);
    assert!(part.notes.is_sorted_by_key(|note| note.onset));
}

#[test]
fn chord_members_begin_with_their_main_note() {
    let bar = [note("G3", 8, ""), note("D4", 8, "<chord/>"), note("B4", 8, "<chord/>"), note("G5", 8, "")];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    assert_eq!(notes.iter().map(|note| note.chord).filter(|role| *role == ChordRole::Member).count(), 2);
    assert_eq!(times(notes)[2], (Length::ZERO, whole(1, 2)));
    assert_eq!(times(notes)[3], (whole(1, 2), whole(1, 2)));
}

#[test]
fn grace_notes_take_no_time_and_stand_before_their_note() {
    let grace = "<note><grace slash=\"yes\"/><pitch><step>B</step><octave>4</octave></pitch></note>";
    let long = grace.replace(" slash=\"yes\"", "");
    let score = violin(&[&[note("G4", 8, ""), grace.to_owned(), long, note("C5", 8, "")].concat()]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    assert_eq!((notes[1].kind, notes[2].kind), (NoteKind::SlashedGrace, NoteKind::Grace));
    assert_eq!(times(notes)[1..3], [(whole(1, 2), Length::ZERO); 2]);
    assert_eq!(notes[3].onset, notes[2].onset);
}

#[test]
fn cue_notes_count_in_time_and_say_so() {
    let score = violin(&[&[note("C5", 8, "<cue/>"), note("D5", 8, "")].concat()]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    assert_eq!((notes[0].kind, notes[1].onset.since_start()), (NoteKind::Cue, whole(1, 2)));
}

#[test]
fn tuplets_are_exact_and_keep_their_written_value() {
    let triplet = "<type>eighth</type><time-modification><actual-notes>3</actual-notes>\
                   <normal-notes>2</normal-notes></time-modification>";
    let bar = [
        "<attributes><divisions>12</divisions></attributes>".to_owned(),
        note("C5", 4, triplet),
        note("D5", 4, triplet),
        note("E5", 4, triplet),
        note("F5", 36, "<type>half</type><dot/>"),
    ]
    .concat();
    let score = violin(&[&bar]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    assert_eq!(times(notes)[2], (whole(1, 6), whole(1, 12)));
    let written = notes[0].written.unwrap();
    assert_eq!((written.base, written.actual, written.normal), (whole(1, 8), 3, 2));
    assert_eq!(notes[3].written.unwrap().dots, 1);
}

#[test]
fn divisions_too_coarse_for_a_tuplet_are_no_contradiction() {
    // Real exporters write septuplets at 480 divisions with durations of 68 or 69 ticks.
    let seventh = "<type>eighth</type><time-modification><actual-notes>7</actual-notes>\
                   <normal-notes>4</normal-notes></time-modification>";
    let mut bar = "<attributes><divisions>480</divisions></attributes>".to_owned();
    for ticks in [137, 137, 137, 137, 137, 137, 138] {
        bar += &note("C5", ticks, seventh);
    }
    let score = violin(&[&(bar + &rest(960))]);
    assert_sound(&score);
    assert_eq!(only_part(&score).notes[7].onset.since_start(), whole(1, 2));
}

#[test]
fn divisions_may_change_inside_a_bar_and_have_decimals() {
    let bar = [
        note("C5", 8, ""),
        "<attributes><divisions>0.5</divisions></attributes>".to_owned(),
        note("D5", 1, ""),
    ]
    .concat();
    let score = violin(&[&bar]);
    assert_sound(&score);
    assert_eq!(times(&only_part(&score).notes)[1], (whole(1, 2), whole(1, 2)));
}

#[test]
fn pitches_keep_quarter_tones_and_transposition() {
    let bar = "<attributes><transpose><diatonic>0</diatonic><chromatic>0</chromatic>\
               <octave-change>-1</octave-change></transpose></attributes>\
               <note><pitch><step>C</step><alter>0.5</alter><octave>4</octave></pitch><duration>16</duration></note>";
    let score = violin(&[bar]);
    let part = only_part(&score);
    assert_eq!(part.notes[0].pitch, Pitch::Pitched { step: 0, alter: 50, octave: 4 });
    assert_eq!(part.notes[0].pitch.cents(), Some(6050));
    assert_eq!(part.transpose_cents, -1200);
}

#[test]
fn every_note_knows_its_element() {
    let xml = violin_xml(&[&[note("C5", 8, ""), rest(8)].concat()]);
    let document = Document::parse(xml.into_bytes(), &Limits::default()).unwrap();
    let score = read(&document);
    for note in &only_part(&score).notes {
        assert_eq!(document.element(note.node).unwrap().name(), "note");
    }
    let measure = only_part(&score).measures[0].unwrap();
    assert_eq!(document.element(measure).unwrap().name(), "measure");
}

#[test]
fn parts_have_names_instruments_staves_clefs_and_players() {
    let xml = "<score-partwise><work><work-title>Study</work-title></work>\
        <identification><creator type=\"composer\">M. Rowan</creator></identification>\
        <part-list><score-part id=\"P1\"><part-name>Viola</part-name><part-abbreviation>Va.</part-abbreviation>\
        <score-instrument id=\"I1\"><instrument-name/><ensemble/></score-instrument></score-part></part-list>\
        <part id=\"P1\"><measure number=\"1\"><attributes><divisions>1</divisions><staves>2</staves>\
        <clef number=\"2\"><sign>C</sign><line>3</line></clef></attributes>\
        <note><rest/><duration>4</duration><staff>2</staff></note></measure></part></score-partwise>";
    let score = score_of(xml);
    assert_sound(&score);
    assert_eq!(score.title.as_deref(), Some("Study"));
    assert_eq!(score.composer.as_deref(), Some("M. Rowan"));
    let part = only_part(&score);
    assert_eq!((part.name.as_str(), part.abbreviation.as_str(), part.staves), ("Viola", "Va.", 2));
    assert_eq!((part.instrument, part.players), (crate::Instrument::Viola, crate::Players::Section));
    assert_eq!(part.notes[0].staff, 2);
    assert_eq!((part.clefs[0].staff, part.clefs[0].sign, part.clefs[0].line), (2, crate::ClefSign::C, 3));
}
