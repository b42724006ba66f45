//! A rule's card says what it looks at: what the card leaves out may be taken away, and the rule says the same.
#![allow(clippy::disallowed_methods, clippy::expect_used, reason = "tests read their documents")]

mod support;

use std::path::PathBuf;

use arcata_bow::Profile;
use arcata_review::{REGISTER, Reads, Registered, review};
use arcata_score::{Score, Tie};
use arcata_testkit::suite::{self, Case};

use support::{Read, only, text};

const ALL: [Reads; 7] =
    [Reads::Slurs, Reads::Ties, Reads::Strokes, Reads::Bows, Reads::BowMarks, Reads::Marks, Reads::Words];

fn cases(rule: &Registered) -> Vec<Case> {
    let root = PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/suite"));
    let path = root.join(rule.card.family.name()).join(format!("{}.md", rule.card.id));
    let markdown = std::fs::read_to_string(path).expect("every rule has its document");
    suite::parse(&markdown).expect("documents are sound")
}

/// What the rule says without one kind of thing. The file and the search among other slurs are left out too: remedies look at
/// more than the rule.
fn said(read: &Read, rule: &Registered, without: Option<Reads>) -> String {
    let piece = read.piece();
    let mut score: Score = piece.score.clone();
    let (mut lines, mut plans) = (piece.lines.to_vec(), piece.plans.to_vec());
    let notes = |score: &mut Score, change: &dyn Fn(&mut arcata_score::Note)| {
        score.parts.iter_mut().flat_map(|part| &mut part.notes).for_each(change);
    };
    match without {
        None => {}
        Some(Reads::Slurs) => score.parts.iter_mut().for_each(|part| part.slurs.clear()),
        Some(Reads::Ties) => notes(&mut score, &|note| note.tie = Tie::default()),
        Some(Reads::Strokes) => {
            lines.clear();
            plans.clear();
        }
        Some(Reads::Bows) => plans.clear(),
        Some(Reads::BowMarks) => {
            notes(&mut score, &|note| {
                note.bow_mark = None;
                note.more_bow_marks.clear();
            });
            lines.iter_mut().flat_map(|line| &mut line.strokes).for_each(|stroke| stroke.printed = None);
        }
        Some(Reads::Marks) => notes(&mut score, &|note| note.articulations = Default::default()),
        Some(Reads::Words) => score.parts.iter_mut().for_each(|part| part.instructions.clear()),
    }
    let changed =
        arcata_review::Piece { document: None, score: &score, lines: &lines, plans: &plans, ..piece };
    text(&review(&changed, &only(rule.card.id)))
}

#[test]
fn what_a_card_leaves_out_does_not_matter() {
    let mut wrong = String::new();
    let mut told = 0;
    for rule in REGISTER {
        for case in cases(rule) {
            let profile = match &case.profile {
                None => Profile::default(),
                Some(block) => Profile::parse(&block.text).expect("a case's profile is sound"),
            };
            let music = case.fixture().expect("a case's music is sound").musicxml();
            let read = Read::new(music.into_bytes(), &profile);
            let plain = said(&read, rule, None);
            told += usize::from(!plain.is_empty());
            for without in ALL.into_iter().filter(|kind| !rule.card.reads.contains(kind)) {
                if said(&read, rule, Some(without)) != plain {
                    wrong += &format!("\n{} looks at {without:?}: {}", rule.card.id, case.heading);
                }
            }
        }
    }
    assert!(told >= 100, "only {told} cases say something");
    assert!(wrong.is_empty(), "cards leave out what their rules look at:{wrong}");
}
