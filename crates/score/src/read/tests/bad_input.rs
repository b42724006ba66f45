//! Files that contradict themselves: each is read, and each says what is wrong.

use super::*;
use crate::Pitch;

/// Asserts that a score has exactly these problems, each with a sentence and a place.
fn assert_problems(score: &Score, expected: &[ProblemKind]) {
    assert_eq!(kinds(score), expected, "{:?}", score.problems);
    for problem in &score.problems {
        assert!(problem.message.ends_with('.'), "{}", problem.message);
        assert!(problem.node.is_some(), "{}", problem.message);
    }
}

#[test]
fn xml_that_is_no_score() {
    for xml in ["<html><body/></html>", "<opus/>", "<score/>", "<container><rootfiles/></container>"] {
        let score = score_of(xml);
        assert_problems(&score, &[ProblemKind::NotAScore]);
        assert!(score.parts.is_empty() && score.bars.is_empty());
    }
}

#[test]
fn a_score_without_any_music() {
    let score = score_of("<score-partwise/>");
    assert_problems(&score, &[]);
    assert!(score.parts.is_empty());
    let score = score_of("<score-partwise><part id=\"P1\"/></score-partwise>");
    assert_problems(&score, &[ProblemKind::PartMismatch]);
}

#[test]
fn a_listed_part_without_music_and_music_without_a_list() {
    let xml = violin_xml(&[&note("C5", 16, "")]).replace("<part id=\"P1\">", "<part id=\"P9\">");
    let score = score_of(&xml);
    assert_problems(&score, &[ProblemKind::PartMismatch, ProblemKind::PartMismatch]);
    assert_eq!(score.parts[0].notes.len(), 1);
}

#[test]
fn divisions_missing() {
    let xml = violin_xml(&[&note("C5", 4, "")]).replace("<divisions>4</divisions>", "");
    let score = score_of(&xml);
    assert_problems(&score, &[ProblemKind::Divisions]);
    assert_eq!(score.parts[0].notes[0].length, Length::WHOLE);
}

#[test]
fn divisions_missing_are_worked_out_from_a_note_value() {
    // A real file counts 10,080 ticks to a quarter note without ever saying so.
    let bar = [note("C5", 10_080, "<type>quarter</type>"), note("D5", 30_240, "")].concat();
    let score = score_of(&violin_xml(&[&bar]).replace("<divisions>4</divisions>", ""));
    assert_problems(&score, &[ProblemKind::Divisions]);
    assert_eq!(score.parts[0].notes[1].length, whole(3, 4));
}

#[test]
fn divisions_zero_negative_or_not_a_number() {
    for divisions in ["0", "-4", "four", "", "NaN", "1e9"] {
        let attributes = format!("<attributes><divisions>{divisions}</divisions></attributes>");
        let score = violin(&[&note("C5", 16, ""), &[attributes, note("C5", 16, "")].concat()]);
        assert_problems(&score, &[ProblemKind::Divisions]);
        assert_eq!(only_part(&score).notes[1].length, Length::WHOLE, "the divisions before stay in force");
    }
}

#[test]
fn durations_missing_negative_endless_or_not_a_number() {
    for duration in [
        "",
        "<duration>-4</duration>",
        "<duration>0</duration>",
        "<duration>long</duration>",
        "<duration>9223372036854775807</duration>",
    ] {
        let first = format!(
            "<note><pitch><step>C</step><octave>5</octave></pitch>{duration}<type>half</type></note>"
        );
        let score = violin(&[&[first, note("D5", 8, "")].concat()]);
        assert_problems(&score, &[ProblemKind::Duration]);
        assert_eq!(only_part(&score).notes[0].length, whole(1, 2), "the note value is taken");
    }
}

#[test]
fn a_duration_that_its_note_value_contradicts() {
    let score =
        violin(&[&[note("C5", 8, "<type>quarter</type>"), note("D5", 8, "<type>half</type>")].concat()]);
    assert_problems(&score, &[ProblemKind::ValueContradictsDuration]);
    assert_eq!(only_part(&score).notes[0].length, whole(1, 2), "the duration is taken");
}

#[test]
fn a_bar_too_long_and_a_bar_too_short() {
    let score = violin(&[&note("C5", 16, ""), &note("C5", 20, ""), &note("C5", 12, ""), &note("C5", 16, "")]);
    assert_problems(&score, &[ProblemKind::BarOverfull, ProblemKind::BarUnderfull]);
    assert_eq!(score.problems[0].bar, Some(1));
    assert_eq!(score.bars[2].start.since_start(), whole(9, 4));
    assert_eq!(score.bars[3].start.since_start(), whole(3, 1));
}

#[test]
fn one_part_shorter_than_the_others() {
    let xml = violin_xml(&[&note("C5", 16, ""), &note("C5", 12, ""), &note("C5", 16, "")]).replace(
        "</score-partwise>",
        "<part id=\"P1\"><measure/><measure><attributes><divisions>1</divisions></attributes><note><rest/>\
         <duration>4</duration></note></measure></part></score-partwise>",
    );
    let score = score_of(&xml);
    let short: Vec<_> = score.problems.iter().filter(|p| p.kind == ProblemKind::BarUnderfull).collect();
    assert_eq!(short.len(), 1);
    assert_eq!((short[0].part, short[0].bar), (Some(0), Some(1)));
    assert_eq!(score.bars[2].start.since_start(), whole(2, 1), "all parts stay together");
}

#[test]
fn a_backup_before_the_beginning_of_the_bar() {
    let bar = [voiced("C5", 16, 1, ""), back(20), voiced("C4", 16, 2, "")].concat();
    let score = violin(&[&note("C5", 16, ""), &bar]);
    assert_problems(&score, &[ProblemKind::BackupBeforeBar]);
    assert_eq!(only_part(&score).notes[2].onset.since_start(), Length::WHOLE);
}

#[test]
fn backups_and_forwards_without_a_duration() {
    for broken in [
        "<backup/>",
        "<forward/>",
        "<backup><duration>-4</duration></backup>",
        "<forward><duration>x</duration></forward>",
    ] {
        let score = violin(&[&[note("C5", 8, ""), broken.to_owned(), note("D5", 8, "")].concat()]);
        assert_problems(&score, &[ProblemKind::Duration]);
        assert_eq!(only_part(&score).notes[1].onset.since_start(), whole(1, 2));
    }
}

#[test]
fn pitches_that_are_none() {
    for pitch in [
        "<pitch/>",
        "<pitch><step>H</step><octave>4</octave></pitch>",
        "<pitch><step>C</step><octave>high</octave></pitch>",
        "<pitch><step>C</step><alter>x</alter><octave>4</octave></pitch>",
        "<pitch><step>C</step><octave>4000</octave></pitch>",
        "",
    ] {
        let score = violin(&[&format!("<note>{pitch}<duration>16</duration></note>")]);
        assert_problems(&score, &[ProblemKind::Pitch]);
        assert_eq!(only_part(&score).notes[0].pitch, Pitch::Unpitched);
    }
}

#[test]
fn signatures_that_are_none() {
    for time in [
        "<beats>0</beats><beat-type>4</beat-type>",
        "<beats>3</beats>",
        "<beats>3</beats><beat-type>0</beat-type>",
        "<beats>x</beats><beat-type>4</beat-type>",
        "<beats>3+</beats><beat-type>4</beat-type>",
        "<beats>99999999</beats><beat-type>4</beat-type>",
        "",
    ] {
        let bar = format!("<attributes><time>{time}</time></attributes>{}", note("C5", 16, ""));
        assert_problems(&violin(&[&note("C5", 16, ""), &bar]), &[ProblemKind::Meter]);
    }
}

#[test]
fn tempos_that_are_none() {
    for tempo in [
        "<sound tempo=\"0\"/>".to_owned(),
        "<sound tempo=\"-60\"/>".to_owned(),
        "<sound tempo=\"fast\"/>".to_owned(),
        direction("<metronome><beat-unit>quarter</beat-unit><per-minute>0</per-minute></metronome>"),
        direction("<metronome><beat-unit/><per-minute>60</per-minute></metronome>"),
        direction("<metronome/>"),
    ] {
        let score = violin(&[&[tempo, note("C5", 16, "")].concat()]);
        assert_problems(&score, &[ProblemKind::Tempo]);
        assert!(score.tempos.is_empty());
    }
}

#[test]
fn numbers_beyond_all_music_do_not_overflow() {
    let huge = i64::MAX.to_string();
    let bar = format!(
        "<attributes><divisions>{huge}</divisions></attributes>{}<forward><duration>{huge}</duration></forward>\
         <attributes><divisions>1</divisions></attributes><forward><duration>{huge}</duration></forward>\
         <note><rest/><duration>{huge}</duration><type>maxima</type><time-modification>\
         <actual-notes>1</actual-notes><normal-notes>65535</normal-notes></time-modification></note>\
         <direction><direction-type><dynamics><p/></dynamics></direction-type><offset>-{huge}</offset></direction>",
        note("C5", 1, "")
    )
    .replace("<step>", "<alter>12</alter><step>");
    let score = violin(&[&bar, &note("C5", 16, "")]);
    assert!(kinds(&score).contains(&ProblemKind::Duration));
    assert!(score.end().since_start() < Length::new(1 << 20, 1));
    assert!(score.parts[0].notes.is_sorted_by_key(|note| note.onset));
}

#[test]
fn a_thousand_chord_notes_slurs_and_ties_at_once_are_read_quickly() {
    let ends = "<notations><slur type=\"start\"/><tied type=\"start\"/></notations>";
    let crowd = note("C5", 16, ends) + &note("C5", 16, &format!("<chord/>{ends}")).repeat(5_000);
    let score = violin(&[&crowd, &crowd.replace("start", "stop")]);
    assert_eq!(only_part(&score).notes.len(), 10_002);
    assert_eq!(only_part(&score).slurs.len() * 2 + only_part(&score).open_slurs.len(), 10_002);
}

#[test]
fn a_voice_for_every_note_is_read_quickly() {
    let mut bar = String::new();
    for voice in 0..70_000 {
        bar += &voiced("C5", 1, voice, "");
    }
    let score = violin(&[&bar]);
    assert_eq!(only_part(&score).voices.len(), usize::from(u16::MAX) + 1);
}
