//! One small fixture for every rule by which notes become strokes.

use std::collections::BTreeSet;

use arcata_testkit::musicxml;
use arcata_xml::{Document, Limits};

use super::*;
use arcata_score::{BowDirection, SlurLine, SlurTold};

use crate::{Join, RepeatedStretch, StrokeKind, Written};

/// A score from the fixtures' notation.
pub(crate) fn score(fixture: &str) -> Score {
    let document = Document::parse(musicxml(fixture).into_bytes(), &Limits::default()).unwrap();
    arcata_score::read(&document)
}

/// The lines of the first part, for the professional.
pub(crate) fn lines_of(fixture: &str) -> Vec<Line> {
    lines(&score(fixture), 0, &Profile::default(), &LineOptions::default())
}

/// The only line of the first part.
pub(crate) fn line(fixture: &str) -> Line {
    let mut lines = lines_of(fixture);
    assert_eq!(lines.len(), 1, "{:?}", lines.iter().map(|line| &line.name).collect::<Vec<_>>());
    lines.remove(0)
}

/// Each stroke as kind, count of attacks and length in quarters.
fn told(line: &Line) -> Vec<String> {
    line.strokes
        .iter()
        .map(|stroke| {
            let kind = match stroke.kind {
                StrokeKind::Single => "single",
                StrokeKind::Short => "short",
                StrokeKind::Slurred => "slurred",
                StrokeKind::Pulsed => "pulsed",
                StrokeKind::HookedPair => "hooked",
                StrokeKind::BrokenChord => "chord",
                StrokeKind::Tremolo => "tremolo",
            };
            format!("{kind} {} {}", stroke.note_count, stroke.length * 4)
        })
        .collect()
}

fn joins(line: &Line) -> Vec<Join> {
    line.strokes.iter().map(|stroke| stroke.join).collect()
}

#[track_caller]
fn check(fixture: &str, expected: &[&str]) {
    assert_eq!(told(&line(fixture)), expected, "{fixture}");
}

/// Common practice: both signs on a held note mean a change of bow while it lasts.
#[test]
fn a_held_note_with_both_signs_is_two_strokes() {
    let held = line("violin: mf 1/4 C5 D5 1/2 E5!fermata!down!up | (1/4 F5 G5!fermata!up!down A5) B5");
    let printed: Vec<_> = held.strokes.iter().map(|stroke| stroke.printed).collect();
    let (down, up) = (Some(BowDirection::Down), Some(BowDirection::Up));
    // Under a slur the first sign begins no stroke, the second does, and the slur goes on from there.
    assert_eq!(printed, [None, None, down, up, None, down, None]);
    assert_eq!(held.strokes[2].notes, held.strokes[3].notes);
    let lengths: Vec<String> = held.strokes.iter().map(|stroke| (stroke.length * 4).to_string()).collect();
    assert_eq!(lengths, ["1", "1", "1", "1", "3/2", "3/2", "1"]);
    assert_eq!(held.strokes[2].duration, held.strokes[3].duration);
    assert_eq!(held.strokes[3].join, Join::Continues);
    // On a note that is too short for both the first sign counts, and the review tells.
    assert_eq!(line("violin: mf 1/4 C5!down!up D5 1/2 E5").strokes.len(), 3);
    // What is tied on sounds in the second of the two.
    check("violin: mf 1/1 C5_!up!down | 1/2 C5 D5", &["single 1 2", "slurred 1 4", "single 1 2"]);
}

#[test]
fn each_note_is_a_stroke_and_a_slur_is_one() {
    check(
        "violin: 1/4 D4 (1/8 E4 F#4) 1/4 G4 A4!.",
        &["single 1 1", "slurred 2 1", "single 1 1", "short 1 1"],
    );
}

#[test]
fn a_tie_chain_is_one_attack_in_one_stroke() {
    check("violin: 1/2 D4 E4_ | 1/1 E4_ | 1/4 E4 3/4 F4", &["single 1 2", "slurred 1 7", "single 1 3"]);
}

#[test]
fn a_slur_that_ends_on_a_tied_note_goes_on_with_it() {
    check("violin: (1/4 D4 3/4 E4_) | 1/2 E4 F4", &["slurred 2 6", "single 1 2"]);
}

#[test]
fn dots_and_dashes_under_a_slur_are_pulses() {
    check("violin: (1/4 D4!. E4!. F4!. G4!.) | (1/2 A4!- B4!-)", &["pulsed 4 4", "pulsed 2 4"]);
}

#[test]
fn a_dot_on_the_last_note_alone_only_shortens_it() {
    check("violin: (1/4 D4 E4 F4 G4!.)", &["slurred 4 4"]);
}

#[test]
fn a_dotted_pair_with_a_dot_on_the_short_note_is_hooked() {
    check("violin: (3/8 D4 1/8 E4!.) (3/8 F4 1/8 G4!.)", &["hooked 2 2", "hooked 2 2"]);
}

#[test]
fn nested_slurs_leave_the_inner_ones_as_bows() {
    check(
        "violin: (1/4 D4 (2E4 F4)2 G4) | (A4 B4)  1/2 C5",
        &["single 1 1", "slurred 2 2", "single 1 1", "slurred 2 2", "single 1 2"],
    );
}

#[test]
fn an_inner_slur_over_one_pitch_is_a_tie_and_makes_no_phrase_mark() {
    check("violin: (1/4 D4 (2E4 E4)2 G4)", &["slurred 4 4"]);
}

#[test]
fn where_slurs_overlap_or_share_a_note_a_bow_begins_where_a_slur_begins() {
    check("violin: (1/4 D4 (2E4 F4) G4)2", &["single 1 1", "slurred 3 3"]);
    check("violin: (1/4 D4 E4 (F4) G4)", &["slurred 2 2", "slurred 2 2"]);
}

#[test]
fn a_slur_named_as_a_phrase_mark_binds_nothing() {
    let mut score = score("violin: (1/4 D4 E4 F4 G4)");
    score.parts[0].slurs[0].told = SlurTold::Phrase;
    assert_eq!(lines(&score, 0, &Profile::default(), &LineOptions::default())[0].strokes.len(), 4);
}

#[test]
fn a_short_rest_under_a_slur_stops_the_bow_and_a_long_one_ends_the_stroke() {
    check("violin: (1/8 D4!. rest E4!. rest) 1/2 F4", &["pulsed 2 3/2", "single 1 2"]);
    check("violin: (1/8 D4!. rest E4!.) rest 1/2 F4", &["pulsed 2 3/2", "single 1 2"]);
    check("violin: (1/4 D4 1/2 rest 1/4 E4)", &["single 1 1", "single 1 1"]);
}

#[test]
fn a_trill_is_one_stroke() {
    check("violin: 1/2 D4!trill E4", &["slurred 1 2", "single 1 2"]);
}

#[test]
fn a_tremolo_is_free_after_itself_and_a_slurred_pair_is_fingered() {
    let tremolo = line("violin: 1/2 D4!trem3 E4");
    assert_eq!(told(&tremolo), ["tremolo 1 2", "single 1 2"]);
    assert_eq!(joins(&tremolo), [Join::Entry, Join::Entry]);
    check("violin: {2:1 1/2 D4!trem3< F4!trem3>} E4", &["tremolo 2 2", "single 1 2"]);
    check("violin: {2:1 (1/2 D4!trem3< F4!trem3>)} E4", &["slurred 2 2", "single 1 2"]);
}

#[test]
fn plucked_struck_and_cue_notes_are_no_strokes_and_free_the_bow() {
    let plucked = line("violin: 1/4 D4 \"pizz.\" E4 F4 \"arco\" G4");
    assert_eq!(told(&plucked), ["single 1 1", "single 1 1"]);
    assert_eq!(joins(&plucked), [Join::Entry, Join::Entry]);
    assert_eq!(plucked.strokes[0].silence_after.micros, 1_200_000);
    check("violin: 1/4 D4 \"col legno battuto\" E4 F4 \"ord.\" G4", &["single 1 1", "single 1 1"]);
    check("violin: 1/4 D4 E4!cue F4 G4!snap", &["single 1 1", "single 1 1"]);
}

#[test]
fn grace_notes_go_with_the_next_note_or_with_the_one_they_are_slurred_from() {
    let before = line("violin: 1/2 D4 *G4 A4");
    assert_eq!(before.strokes.iter().map(|stroke| stroke.notes.len()).collect::<Vec<_>>(), [1, 2]);
    let after = line("violin: (1/2 D4 *C4 *D4) E4");
    assert_eq!(after.strokes.iter().map(|stroke| stroke.notes.len()).collect::<Vec<_>>(), [3, 1]);
    let bound = line("violin: (*G4 1/2 A4) B4");
    assert_eq!(told(&bound), ["single 1 2", "single 1 2"]);
}

#[test]
fn chords_of_three_are_broken_unless_the_section_divides() {
    check("violin: 1/2 G3+D4+B4 D4+B4", &["chord 1 2", "single 1 2"]);
    check("violin: \"div.\" 1/1 G3+D4+B4", &["single 1 4"]);
}

#[test]
fn a_printed_mark_inside_a_slur_begins_no_stroke() {
    let line = line("violin: (1/4 D4!down E4!up F4) G4!up");
    let printed: Vec<_> = line.strokes.iter().map(|stroke| stroke.printed).collect();
    use arcata_score::BowDirection::{Down, Up};
    assert_eq!(printed, [Some(Down), Some(Up)]);
}

#[test]
fn rests_are_silence_and_long_ones_free_the_bow() {
    let line = line("quarter=60\nviolin: 1/4 D4 1/8 rest E4 1/2 rest | 1/1 F4 | bar-rest | G4");
    assert_eq!(joins(&line), [Join::Entry, Join::AfterRest, Join::Entry, Join::Entry]);
    let silences: Vec<i64> = line.strokes.iter().map(|stroke| stroke.silence_after.micros / 1000).collect();
    assert_eq!(silences, [500, 2000, 4000, 0]);
    assert_eq!(line.tempo_written, Written::InScore);
}

#[test]
fn short_and_accented_notes_lend_half_others_a_quarter_and_held_ones_nothing() {
    let line = line("quarter=60\nviolin: 1/4 D4!. E4!> F4 G4!-");
    let lent: Vec<i64> = line.strokes.iter().map(|stroke| stroke.lendable.micros / 1000).collect();
    assert_eq!(lent, [500, 500, 250, 0]);
}

#[test]
fn a_fermata_doubles_its_note_only() {
    let line = line("quarter=60\nviolin: (1/4 D4 E4!fermata) 1/2 F4");
    assert_eq!(line.strokes[0].duration.micros, 3_000_000);
    assert_eq!(line.strokes[1].duration.micros, 2_000_000);
}

#[test]
fn a_soloist_has_one_bow_for_all_voices() {
    // Alone with its part, the violin is chamber music.
    check("violin: {voices 1/2 D5 E5 over (1/4 B4 A4) 1/2 G4 }", &["slurred 2 2", "single 1 2"]);
    check("violin: {voices 1/2 D5 E5 over B4 C5 }", &["single 1 2", "single 1 2"]);
}

#[test]
fn a_section_leaves_another_rhythm_to_a_line_of_its_own() {
    let score = score("violin: {voices 1/2 D5 E5 over 1/4 B4 A4 1/2 G4 } | {voices D5 E5 over B4 C5 }");
    let options = LineOptions { force: Some(Force::Section), ..LineOptions::default() };
    let lines = lines(&score, 0, &Profile::default(), &options);
    let told: Vec<_> = lines.iter().map(|line| (line.name.as_str(), line.strokes.len())).collect();
    assert_eq!(told, [("violin, voice 1", 4), ("violin, voice 2", 3)]);
    assert_eq!(lines[0].voices, [0, 1]);
    assert_eq!(lines[0].strokes[2].notes.len(), 2);
}

#[test]
fn divided_voices_are_lines_of_their_own_until_unis() {
    let lines = lines_of("violin: \"div.\" {voices 1/2 D5 E5 over B4 C5 } | \"unis.\" 1/1 D5");
    assert_eq!(lines.iter().map(|line| line.strokes.len()).collect::<Vec<_>>(), [3, 2]);
}

#[test]
fn repeat_signs_and_first_endings_are_stretches() {
    let line = line("quarter=60\nviolin: 1/1 D4 |: 1/2 E4 F4 | ending=1 G4 rest :| ending=2 1/1 A4 |||");
    let expected = RepeatedStretch {
        first: 1,
        body_end: 3,
        first_ending_end: 4,
        silence_at_turn: crate::RealTime::from_micros(2_000_000),
        silence_at_skip: crate::RealTime::from_micros(0),
        ..RepeatedStretch::between(1, 3, crate::RealTime::default())
    };
    assert_eq!(line.repeats, [expected]);
}

#[test]
fn a_repeat_without_a_beginning_goes_back_to_the_last_one() {
    let line = line("violin: 1/1 D4 :| E4 :| F4");
    let bounds: Vec<_> = line.repeats.iter().map(|s| (s.first, s.body_end, s.first_ending_end)).collect();
    assert_eq!(bounds, [(0, 1, 1), (1, 2, 2)]);
}

/// The stretches of a fixture: first stroke, end of the body, ends of the endings that lead back.
#[track_caller]
fn stretches(fixture: &str, expected: &[(usize, usize, &[usize])]) {
    let line = line(fixture);
    let told: Vec<(usize, usize, Vec<usize>)> = line
        .repeats
        .iter()
        .map(|stretch| {
            let mut ends = vec![stretch.first_ending_end];
            ends.extend(stretch.later_endings.iter().scan(stretch.first_ending_end, |end, ending| {
                *end += ending.strokes;
                Some(*end)
            }));
            (stretch.first, stretch.body_end, ends)
        })
        .collect();
    let expected: Vec<_> =
        expected.iter().map(|(first, body, ends)| (*first, *body, ends.to_vec())).collect();
    assert_eq!(told, expected, "{fixture}");
}

#[test]
fn repeats_lie_inside_one_another() {
    stretches("violin: |: 1/1 D4 |: E4 :| F4 :| G4", &[(1, 2, &[2]), (0, 3, &[3])]);
    stretches("violin: |: 1/1 D4 :| E4 |: F4 :|", &[(0, 1, &[1]), (2, 3, &[3])]);
}

#[test]
fn several_endings_lead_back() {
    stretches("violin: |: 1/1 D4 | ending=1 E4 :| ending=2 F4 :| ending=3 G4 | A4", &[(0, 1, &[2, 3])]);
}

#[test]
fn da_capo_and_dal_segno_send_back() {
    stretches("violin: 1/1 D4 :| \"Fine\" E4 | F4 \"D.C. al Fine\" | G4", &[(0, 1, &[1]), (0, 3, &[3])]);
    let line = line("violin: 1/1 D4 | \"segno\" E4 | F4 \"to coda\" | G4 \"D.S. al Coda\" | \"coda\" A4");
    let told: Vec<_> =
        line.repeats.iter().map(|s| (s.first, s.body_end, s.end(), s.road, s.onward)).collect();
    assert_eq!(told, [(1, 3, 4, crate::Road::DalSegno, crate::Onward::GoesOn)]);
}

#[test]
fn parts_without_bows_have_no_lines() {
    assert!(lines_of("flute: 1/1 D4").is_empty());
    assert!(lines_of("violin: \"pizz.\" 1/1 D4").is_empty());
}

#[test]
fn lines_of_made_up_scores_hold_together() {
    use arcata_testkit::{Detail, ScoreShape, random_score};
    for seed in 0..60 {
        let xml = random_score(seed, ScoreShape { parts: 3, bars: 12, detail: Detail::All });
        let document = Document::parse(xml.into_bytes(), &Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        for line in all_lines(&score, &Profile::default(), &LineOptions::default()) {
            let mut seen = BTreeSet::new();
            for (index, stroke) in line.strokes.iter().enumerate() {
                assert!(!stroke.notes.is_empty() && stroke.duration.micros > 0, "seed {seed}: {stroke:?}");
                assert!(stroke.notes.iter().all(|note| seen.insert(*note)), "seed {seed}: a note twice");
                assert!(stroke.silence_after.micros >= 0 && stroke.home.from < stroke.home.to);
                assert!(stroke.lendable <= stroke.duration);
                if let Some(next) = line.strokes.get(index + 1) {
                    assert!(stroke.onset + stroke.length <= next.onset, "seed {seed}: strokes overlap");
                    assert_eq!(stroke.phrase.joint_after, next.phrase.joint_before);
                }
            }
            assert!(line.repeats.iter().all(|stretch| stretch.is_sound(line.strokes.len())));
        }
    }
}

#[test]
fn a_broken_slur_is_a_bow_while_a_bow_lasts_and_what_somebody_says_counts_more() {
    let broken = |fixture: &str, told: SlurTold| {
        let mut score = score(fixture);
        score.parts[0].slurs[0].line = SlurLine::Broken;
        score.parts[0].slurs[0].told = told;
        lines(&score, 0, &Profile::default(), &LineOptions::default())[0].strokes.len()
    };
    const SHORT: &str = "quarter=60\nviolin: p (1/4 D4 E4 F4 G4) |||";
    const LONG: &str =
        "quarter=60\nviolin: f (1/4 D4 E4 F4 G4 | A4 G4 F4 E4 | D4 E4 F4 G4 | A4 G4 F4 E4 | 1/1 D4) |||";
    assert_eq!(broken(SHORT, SlurTold::Nothing), 1);
    assert_eq!(broken(SHORT, SlurTold::Phrase), 4);
    assert_eq!(broken(LONG, SlurTold::Nothing), 17);
    assert_eq!(broken(LONG, SlurTold::Bow), 1);
}

/// Common practice: each slur is a bow, and where one ends on a held sound and the next begins on it the bow changes.
#[test]
fn slurs_that_meet_on_a_tied_note_are_two_bows() {
    check(
        "cello: mf (1/4 C3 D3 E3 F3_) | (F3 G3 1/2 A3) | 1/1 C3 |||",
        &["slurred 4 4", "slurred 3 4", "single 1 4"],
    );
    check(
        "cello: mf (1/4 C3 D3 1/2 E3_) | 1/4 E3_ (E3 G3 A3) | 1/1 C3 |||",
        &["slurred 3 5", "slurred 3 3", "single 1 4"],
    );
    check("cello: mf (1/4 C3 D3 E3 F3_ | F3 G3 1/2 A3) | 1/1 C3 |||", &["slurred 6 8", "single 1 4"]);
    check(
        "cello: mf (1/4 C3 D3 E3 F3_) | 1/2 F3 G3 | 1/1 C3 |||",
        &["slurred 4 6", "single 1 2", "single 1 4"],
    );
    check("cello: mf 1/2 C3_ (1/4 C3 D3) | 1/1 C3 |||", &["slurred 2 4", "single 1 4"]);
}

/// A file of several movements, numbered anew in each.
pub(crate) fn movements(of: &[&str]) -> Score {
    let count = |music: &str| music.split(' ').filter(|sign| sign.contains('|')).count();
    let bars: usize = of.iter().map(|music| count(music)).sum();
    let xml = musicxml(&format!("unchecked\nviolin: {}", of.join(" ")));
    let mut renumbered = xml;
    let mut number = bars;
    for music in of.iter().rev() {
        for own in (1..=count(music)).rev() {
            renumbered =
                renumbered.replacen(&format!("number=\"{number}\">"), &format!("number=\"{own}!\">"), 1);
            number -= 1;
        }
    }
    let document =
        Document::parse(renumbered.replace("!\">", "\">").into_bytes(), &Limits::default()).unwrap();
    arcata_score::read(&document)
}

#[test]
fn nothing_leads_from_one_movement_into_the_next() {
    let score = movements(&["p 1/4 C5 D5 E5 F5 | 1/2 G5 (1/4 A5_ A5) |||", "1/4 C5 D5 E5 F5 | 1/1 G5 |||"]);
    assert_eq!(score.movements.len(), 2);
    let lines = lines(&score, 0, &Profile::default(), &LineOptions::default());
    assert_eq!(lines.iter().map(|line| line.movement).collect::<Vec<_>>(), [0, 1]);
    let (first, second) = (&lines[0], &lines[1]);
    assert_eq!(second.strokes[0].join, Join::Entry);
    assert_eq!(second.strokes[0].bar, 2, "in the bars of the whole file");
    assert_eq!(second.strokes[0].notes[0].0, 7, "and its notes");
    assert_eq!(second.strokes[0].level_start.0, 500, "no dynamic is in force");
    assert_eq!(first.strokes[0].level_start.0, 300);
    // As if it were alone in its file.
    let alone = movements(&["1/4 C5 D5 E5 F5 | 1/1 G5 |||"]);
    let (_, beginning) = score.movement_alone(1).unwrap();
    let expected = super::lines(&alone, 0, &Profile::default(), &LineOptions::default());
    assert_eq!(second.alone(&beginning).strokes, expected[0].strokes);
}

#[test]
fn repeats_stand_in_their_own_movement() {
    let score = movements(&["1/4 C5 D5 E5 F5 | 1/1 G5 |||", "1/4 C5 D5 E5 F5 | 1/1 G5 :|"]);
    let lines = lines(&score, 0, &Profile::default(), &LineOptions::default());
    assert_eq!(lines[0].repeats, []);
    assert_eq!((lines[1].repeats[0].first, lines[1].repeats[0].end()), (0, 5));
}
