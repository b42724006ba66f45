//! What is made in the music is what a reader finds in the file that is made: for every change that a rule proposes in the
//! literate tests.

use std::path::PathBuf;

use arcata_bow::{LineOptions, Profile, Reading, all_lines};
use arcata_testkit::suite;
use arcata_xml::{EditList, Limits};

use super::*;
use crate::{Findings, Piece, REGISTER, change};

/// What changes touch, without the elements that they stand in.
fn music(score: &Score) -> String {
    let mut told = String::new();
    for part in &score.parts {
        let mut slurs: Vec<_> = part.slurs.iter().map(|slur| (slur.start, slur.end, slur.line)).collect();
        slurs.sort_by_key(|(start, end, _)| (*start, *end));
        let signs = |note: &Note| {
            let bows: Vec<_> =
                note.bow_mark.iter().chain(&note.more_bow_marks).map(|mark| mark.direction).collect();
            (bows, note.tie, note.articulations)
        };
        let notes: Vec<_> = part.notes.iter().map(signs).collect();
        let words: Vec<_> = part.instructions.iter().map(|said| (said.place.at, said.meaning)).collect();
        told += &format!("{slurs:?}\n{notes:?}\n{words:?}\n");
    }
    told
}

#[test]
#[allow(clippy::disallowed_methods, reason = "the test reads the documents of the suite")]
fn what_is_made_in_the_music_is_what_the_changed_file_says() {
    let root = PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/suite"));
    let profile = Profile::default();
    let (mut compared, mut kinds) = (0, BTreeSet::new());
    for rule in REGISTER {
        let path = root.join(rule.card.family.name()).join(format!("{}.md", rule.card.id));
        let markdown = std::fs::read_to_string(path).unwrap();
        for case in suite::parse(&markdown).unwrap() {
            let bytes = case.fixture().unwrap().musicxml().into_bytes();
            let document = Document::parse(bytes, &Limits::default()).unwrap();
            let score = arcata_score::read(&document);
            let options = LineOptions::default();
            let lines = all_lines(&score, &profile, &options);
            let reading = Reading::new(&score, &profile, &options);
            let mut piece = Piece {
                document: Some(&document),
                score: &score,
                lines: &lines,
                plans: &[],
                reading: Some(&reading),
                profile: &profile,
                beside: &[],
            };
            let plans: Vec<_> = (0..lines.len())
                .map(|at| std::sync::Arc::new(arcata_bow::plan(&lines[at], &piece.plan_settings(at))))
                .collect();
            piece.plans = &plans;
            let audited = std::sync::OnceLock::new();
            let mut found = Findings::new(piece, rule.card, &audited);
            (rule.check)(&piece, &mut found);
            for changes in found.drafts().iter().flat_map(crate::Draft::changes) {
                let edits = change::edits(&document, changes);
                let mut made = score.clone();
                let touched = put_in(&document, &mut made, changes);
                if edits.is_empty() || touched.is_empty() {
                    continue;
                }
                let list = EditList::new(edits).unwrap();
                let file = Document::parse(document.apply(&list).unwrap(), &Limits::default()).unwrap();
                let read = arcata_score::read(&file);
                assert_eq!(music(&made), music(&read), "{}, {}", rule.card.id, case.heading);
                compared += 1;
                kinds.extend(touched);
            }
        }
    }
    assert!(compared >= 60, "only {compared} changes were compared");
    use Reads::{BowMarks, Bows, Marks, Slurs, Strokes, Ties, Words};
    assert_eq!(kinds, BTreeSet::from([Slurs, Ties, Strokes, Bows, BowMarks, Marks, Words]));
}

#[test]
fn what_somebody_has_said_of_a_slur_stays_where_another_is_changed() {
    let music = arcata_testkit::musicxml("violin: (1/4 D4 E4 F4 G4) | (D4 E4) F4 G4");
    let document = Document::parse(music.into_bytes(), &Limits::default()).unwrap();
    let mut score = arcata_score::read(&document);
    score.parts[0].slurs[0].told = SlurTold::Phrase;
    let other = score.parts[0].slurs[1];
    put_in(&document, &mut score, &[Change::Remove(other.start_node), Change::Remove(other.end_node)]);
    let left: Vec<SlurTold> = score.parts[0].slurs.iter().map(|slur| slur.told).collect();
    assert_eq!(left, [SlurTold::Phrase]);
}
