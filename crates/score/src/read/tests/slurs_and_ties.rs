//! Slurs and ties: what has two ends.

use super::*;
use crate::{NoteId, SlurEnd, SlurLine, TieEnd};

/// The slurs of the only part as pairs of note numbers.
fn slurs(score: &Score) -> Vec<(u32, u32)> {
    only_part(score).slurs.iter().map(|slur| (slur.start.0, slur.end.0)).collect()
}

#[test]
fn a_slur_crosses_a_barline() {
    let score = violin(&[&note("C5", 16, &slur("start", 1)), &note("D5", 16, &slur("stop", 1))]);
    assert_sound(&score);
    assert_eq!(slurs(&score), [(0, 1)]);
}

#[test]
fn a_slur_may_end_and_another_begin_on_one_note_in_either_order() {
    for middle in
        ["<slur type=\"stop\"/><slur type=\"start\"/>", "<slur type=\"start\"/><slur type=\"stop\"/>"]
    {
        let bar = [
            note("C5", 4, "<notations><slur type=\"start\"/></notations>"),
            note("D5", 8, &format!("<notations>{middle}</notations>")),
            note("E5", 4, "<notations><slur type=\"stop\"/></notations>"),
        ];
        let score = violin(&[&bar.concat()]);
        assert_sound(&score);
        assert_eq!(slurs(&score), [(0, 1), (1, 2)]);
    }
}

#[test]
fn the_ends_of_slurs_may_be_on_different_notes_of_a_chord() {
    let bar = [
        note("C5", 4, &slur("start", 1)),
        note("D4", 8, &slur("start", 1)),
        note("D5", 8, &format!("<chord/>{}", slur("stop", 1))),
        note("E5", 4, &slur("stop", 1)),
    ];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    assert_eq!(slurs(&score), [(0, 2), (1, 3)]);
}

#[test]
fn numbers_pair_in_the_order_of_the_document_not_of_time() {
    // The example that the W3C gives for number-level: one slur in each of two staves, and one from the
    // lower staff to the upper, all with number 1, where the last one's stop comes first in the file.
    let upper = [
        voiced("C5", 4, 1, ""),
        voiced("D5", 4, 1, &slur("start", 1)),
        voiced("E5", 4, 1, &slur("stop", 1)),
        voiced("F5", 4, 1, &slur("stop", 1)),
    ];
    let lower = [
        voiced("C3", 4, 2, &format!("<staff>2</staff>{}", slur("start", 1))),
        voiced("D3", 4, 2, &format!("<staff>2</staff>{}", slur("start", 1))),
        voiced("E3", 4, 2, &format!("<staff>2</staff>{}", slur("stop", 1))),
        voiced("F3", 4, 2, "<staff>2</staff>"),
    ];
    let score = violin(&[&[upper.concat(), back(16), lower.concat()].concat()]);
    let part = only_part(&score);
    assert!(part.open_slurs.is_empty());
    let ends: Vec<(&str, &str)> = part
        .slurs
        .iter()
        .map(|slur| {
            let name = |id: NoteId| part.voices[usize::from(part.note(id).voice)].as_str();
            (name(slur.start), name(slur.end))
        })
        .collect();
    assert_eq!(ends, [("2", "1"), ("1", "1"), ("2", "2")]);
}

#[test]
fn writers_who_number_each_voice_by_itself_are_understood() {
    let first = [voiced("C5", 4, 1, ""), voiced("D5", 12, 1, &slur("start", 1))];
    let second = [voiced("C4", 4, 2, &slur("start", 1)), voiced("D4", 12, 2, &slur("stop", 1))];
    let bar = [first.concat(), back(16), second.concat()].concat();
    let score = violin(&[&bar, &voiced("E5", 16, 1, &slur("stop", 1))]);
    assert_sound(&score);
    let part = only_part(&score);
    for slur in &part.slurs {
        assert_eq!(part.note(slur.start).voice, part.note(slur.end).voice);
    }
    assert_eq!(part.slurs.len(), 2);
}

#[test]
fn a_slur_may_lead_from_one_voice_to_another() {
    let bar = [voiced("C5", 16, 1, &slur("start", 1))].concat();
    let score = violin(&[&bar, &voiced("D5", 16, 2, &slur("stop", 1))]);
    assert_sound(&score);
    assert_eq!(slurs(&score), [(0, 1)]);
}

#[test]
fn grace_notes_are_slurred_to_their_note() {
    let grace =
        format!("<note><grace/><pitch><step>B</step><octave>4</octave></pitch>{}</note>", slur("start", 1));
    let score = violin(&[&[grace, note("C5", 16, &slur("stop", 1))].concat()]);
    assert_sound(&score);
    assert_eq!(slurs(&score), [(0, 1)]);
}

#[test]
fn broken_lines_are_told_from_solid_ones() {
    let dashed = "<notations><slur type=\"start\" line-type=\"dashed\"/></notations>";
    let score = violin(&[&[note("C5", 8, dashed), note("D5", 8, &slur("stop", 1))].concat()]);
    assert_eq!(only_part(&score).slurs[0].line, SlurLine::Broken);
}

#[test]
fn a_slur_with_one_end_is_kept_and_reported() {
    let score = violin(&[&[note("C5", 8, &slur("start", 1)), note("D5", 8, &slur("stop", 2))].concat()]);
    let open = &only_part(&score).open_slurs;
    assert_eq!(open.iter().map(|open| open.written).collect::<Vec<_>>(), [SlurEnd::Start, SlurEnd::Stop]);
    assert_eq!(kinds(&score), [ProblemKind::Slur, ProblemKind::Slur]);
}

#[test]
fn a_number_used_again_before_its_end_is_reported() {
    let bar =
        [note("C5", 4, &slur("start", 1)), note("D5", 4, &slur("start", 1)), note("E5", 8, &slur("stop", 1))];
    let score = violin(&[&bar.concat()]);
    assert_eq!(slurs(&score), [(1, 2)]);
    assert_eq!(only_part(&score).open_slurs[0].note, NoteId(0));
    assert_eq!(kinds(&score), [ProblemKind::Slur, ProblemKind::Slur]);
    assert!(score.problems.iter().any(|problem| problem.message.contains("begins again")));
}

#[test]
fn a_lone_start_does_not_wait_for_a_stop_far_away() {
    // As in a printed quartet of the corpus, where a slur led from bar 8 to bar 142.
    let whole_slur = [note("C5", 8, &slur("start", 1)), note("D5", 8, &slur("stop", 1))].concat();
    let silent = rest(16);
    let start = note("C5", 16, &slur("start", 1));
    let stop = note("D5", 16, &slur("stop", 1));
    let score = violin(&[&start, &whole_slur, &silent, &silent, &silent, &silent, &stop]);
    assert_eq!(slurs(&score), [(1, 2)]);
    assert_eq!(only_part(&score).open_slurs.len(), 2);
}

#[test]
fn nested_slurs_with_one_number_are_read_if_they_are_short() {
    let bar = [
        note("C5", 4, &slur("start", 1)),
        note("D5", 4, &slur("start", 1)),
        note("E5", 4, &slur("stop", 1)),
        note("F5", 4, &slur("stop", 1)),
    ];
    let score = violin(&[&bar.concat()]);
    assert_eq!(slurs(&score), [(0, 3), (1, 2)]);
    assert_eq!(kinds(&score), [ProblemKind::Slur]);
}

#[test]
fn crossing_slurs_are_read_and_reported() {
    let bar = [
        note("C5", 4, &slur("start", 1)),
        note("D5", 4, &slur("start", 2)),
        note("E5", 4, &slur("stop", 1)),
        note("F5", 4, &slur("stop", 2)),
    ];
    let score = violin(&[&bar.concat()]);
    assert_eq!(slurs(&score), [(0, 2), (1, 3)]);
    assert_eq!(kinds(&score), [ProblemKind::Slur]);
    assert!(score.problems[0].message.contains("cross"));
}

#[test]
fn nested_slurs_are_sound() {
    let bar = [
        note("C5", 4, &slur("start", 1)),
        note("D5", 4, &slur("start", 2)),
        note("E5", 4, &slur("stop", 2)),
        note("F5", 4, &slur("stop", 1)),
    ];
    assert_sound(&violin(&[&bar.concat()]));
}

const TIE_ON: &str = "<notations><tied type=\"start\"/></notations>";
const TIE_END: &str = "<tie type=\"stop\"/>";

#[test]
fn either_element_makes_a_tie_and_it_crosses_the_barline() {
    let score = violin(&[&note("C5", 16, TIE_ON), &note("C5", 16, TIE_END)]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    assert_eq!(notes[0].tie.to_after, TieEnd::Joined(NoteId(1)));
    assert_eq!(notes[1].tie.from_before, TieEnd::Joined(NoteId(0)));
}

#[test]
fn ties_find_their_pitch_in_a_chord_and_in_another_voice() {
    let first = [voiced("C4", 16, 1, TIE_ON), voiced("E4", 16, 1, &format!("<chord/>{TIE_ON}"))].concat();
    let second = [voiced("E4", 16, 1, TIE_END), back(16), voiced("C4", 16, 2, TIE_END)].concat();
    let score = violin(&[&first, &second]);
    assert_sound(&score);
    for note in &only_part(&score).notes[..2] {
        let TieEnd::Joined(partner) = note.tie.to_after else { panic!("not joined") };
        assert_eq!(only_part(&score).note(partner).pitch, note.pitch);
    }
}

#[test]
fn a_tie_bridges_a_bar_that_another_part_writes_longer() {
    let short = [note("C5", 15, TIE_ON)].concat();
    let bars = [short, note("C5", 16, TIE_END)];
    let xml = violin_xml(&[&bars[0], &bars[1]]).replace(
        "</score-partwise>",
        "<part id=\"P2\"><measure number=\"1\"><attributes><divisions>1</divisions></attributes>\
         <note><rest/><duration>4</duration></note></measure></part></score-partwise>",
    );
    let score = score_of(&xml);
    assert_eq!(score.parts[0].notes[0].tie.to_after, TieEnd::Joined(NoteId(1)));
    assert!(!kinds(&score).contains(&ProblemKind::Tie));
}

#[test]
fn a_tie_to_another_pitch_is_open_and_reported() {
    let score = violin(&[&[note("C5", 8, TIE_ON), note("D5", 8, TIE_END)].concat()]);
    let notes = &only_part(&score).notes;
    assert_eq!((notes[0].tie.to_after, notes[1].tie.from_before), (TieEnd::Open, TieEnd::Open));
    assert_eq!(kinds(&score), [ProblemKind::Tie, ProblemKind::Tie]);
}

#[test]
fn a_tie_that_rings_is_open_on_purpose() {
    let ringing = "<notations><tied type=\"let-ring\"/></notations>";
    let score = violin(&[&note("C5", 16, ringing)]);
    assert_sound(&score);
    assert_eq!(only_part(&score).notes[0].tie.to_after, TieEnd::Open);
}

#[test]
fn a_tie_into_a_second_ending_comes_from_before_the_first() {
    let second = format!(
        "<barline location=\"left\"><ending number=\"2\" type=\"start\"/></barline>{}\
         <barline location=\"right\"><ending number=\"2\" type=\"stop\"/></barline>",
        note("C5", 16, TIE_END)
    );
    let score = violin(&[&note("D5", 16, ""), &second]);
    assert_sound(&score);
}
