//! Lifting and applying, applying and wiping leave no trace.

use arcata_layer::{
    Addresses, Entry, EntryState, Layer, LiftChoice, LiftKind, Mark, NamedNote, Question, ToldBows, Trust,
    apply, apply_told, lift, read, wipe, write,
};
use arcata_score::{BowDirection, NoteId};
use arcata_testkit::Random;
use arcata_xml::Document;
use proptest::prelude::*;

use crate::support::{document, edited, random_layer, random_told, score_text};

/// The slurs of each part.
fn slurs(document: &Document) -> Vec<Vec<(NoteId, NoteId)>> {
    let score = arcata_score::read(document);
    let of = |part: &arcata_score::Part| {
        let mut slurs: Vec<_> = part.slurs.iter().map(|slur| (slur.start, slur.end)).collect();
        slurs.sort_unstable();
        slurs
    };
    score.parts.iter().map(of).collect()
}

/// Where two files differ first.
fn differing(one: &str, other: &str) -> String {
    let same = one.bytes().zip(other.bytes()).take_while(|(one, other)| one == other).count();
    let part = |text: &str| {
        let from = text[..same].rfind("<note").unwrap_or(0);
        text.get(from..(same + 150).min(text.len())).unwrap_or_default().to_owned()
    };
    format!("{}\nand\n{}", part(one), part(other))
}

/// What players see of bows, whatever the order of the elements in the file: marks and slurs, and the dots and dashes.
fn marks(document: &Document) -> (Vec<String>, Vec<Vec<(NoteId, NoteId)>>) {
    let score = arcata_score::read(document);
    let notes = score.parts.iter().flat_map(|part| &part.notes);
    let said = |note: &arcata_score::Note| {
        format!("{:?} {:?}", note.bow_mark.map(|mark| mark.direction), note.articulations)
    };
    (notes.map(said).collect(), slurs(document))
}

/// A score with layers put on in an order, each through its file.
fn put_on(layers: &mut [Layer; 2], order: &[usize], score: &Document) -> Document {
    let mut now = edited(score, &arcata_xml::EditList::default());
    for index in order {
        let read_score = arcata_score::read(&now);
        let (below, above) = layers.split_at(*index);
        let applied =
            apply(&now, &read_score, &above[0], below, Trust::OwnScore).expect("the layer is of this score");
        now = edited(&now, &applied.edits);
        layers[*index] = read(write(&applied.layer).as_bytes()).expect("a layer as written");
    }
    now
}

/// A layer about slurs, many of them printed.
fn about_slurs(clean: &Document, seed: u64) -> Layer {
    let score = arcata_score::read(clean);
    let addresses = Addresses::new(&score);
    let mut random = Random::new(seed);
    let mut layer = random_layer(&score, seed, 60);
    layer.entries.retain(|entry| matches!(entry.mark.question(), Question::Slur(_)));
    for (notes, part) in score.parts.iter().zip(0..) {
        for slur in &notes.slurs {
            let (place, to) = (addresses.place(part, slur.start), addresses.spot(part, slur.end));
            let (Some(place), Some(to)) = (place, to) else { continue };
            let new_to = addresses.spot(part, NoteId(slur.end.0 + 1)).filter(|_| random.chance(30));
            let mark = match (random.below(4), new_to) {
                (0, None) => Mark::SlurRemoved { to },
                (1, _) => Mark::SlurAdded { to },
                (2, Some(new_to)) => Mark::SlurMoved { to, new_from: None, new_to: Some(new_to) },
                _ => continue,
            };
            layer.entries.push(Entry::new(place, mark));
        }
    }
    layer.put_in_order();
    layer
}

const KINDS: [LiftKind; 4] = [LiftKind::Bows, LiftKind::Words, LiftKind::Lifts, LiftKind::Slurs];

proptest! {
    #[test]
    fn what_is_lifted_and_applied_is_the_same_file(seed in any::<u64>(), choice in 1..16_u8) {
        let kinds = (0..4).filter(|kind| choice & (1 << kind) != 0).map(|kind| KINDS[kind]).collect();
        let marked = document(&score_text(seed, 6));
        let score = arcata_score::read(&marked);
        let lifted = lift(&marked, &score, &LiftChoice { parts: None, kinds }).unwrap();
        let clean = edited(&marked, &lifted.edits);
        // Through the file, as a librarian would.
        let layer = read(write(&lifted.layer).as_bytes()).unwrap();
        let applied = apply(&clean, &arcata_score::read(&clean), &layer, &[], Trust::OwnScore).unwrap();
        prop_assert!(applied.left_out.is_empty(), "{:?}", applied.left_out);
        prop_assert_eq!(applied.written, layer.entries.len());
        let again = edited(&clean, &applied.edits);
        prop_assert_eq!(again.text(), marked.text());
    }

    #[test]
    fn what_is_applied_and_wiped_is_the_same_file(seed in any::<u64>(), bars in 1..6_usize) {
        let clean = document(&score_text(seed, bars));
        let score = arcata_score::read(&clean);
        let layer = random_layer(&score, seed, 3 * bars);
        let applied = apply(&clean, &score, &layer, &[], Trust::OwnScore).unwrap();
        let marked = edited(&clean, &applied.edits);
        let kept = read(write(&applied.layer).as_bytes()).unwrap();
        let wiped = wipe(&marked, &arcata_score::read(&marked), &kept, Trust::OwnScore).unwrap();
        let cleaned = edited(&marked, &wiped.edits);
        prop_assert_eq!(cleaned.text(), clean.text());
    }

    #[test]
    fn applied_twice_is_applied_once(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 4));
        let score = arcata_score::read(&clean);
        let layer = random_layer(&score, seed, 12);
        let once = apply(&clean, &score, &layer, &[], Trust::OwnScore).unwrap();
        let marked = edited(&clean, &once.edits);
        let marked_score = arcata_score::read(&marked);
        let twice = apply(&marked, &marked_score, &once.layer, &[], Trust::OwnScore).unwrap();
        prop_assert!(twice.edits.is_empty(), "{:?}", twice.edits);
        prop_assert_eq!(&twice.layer, &once.layer);
    }

    /// Hooks and retakes that a plan has settled, whichever notes it names.
    #[test]
    fn told_bows_leave_no_trace_and_are_told_once(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 4));
        let score = arcata_score::read(&clean);
        let layer = random_layer(&score, seed, 40);
        let told = random_told(&score, &layer, seed);
        let applied = apply_told(&clean, &score, &layer, (&[], &told), Trust::OwnScore).unwrap();
        let marked = edited(&clean, &applied.edits);
        let marked_score = arcata_score::read(&marked);
        let kept = read(write(&applied.layer).as_bytes()).unwrap();
        for told in [&told, &ToldBows::default()] {
            let twice = apply_told(&marked, &marked_score, &kept, (&[], told), Trust::OwnScore).unwrap();
            prop_assert!(twice.edits.is_empty(), "{:?}", twice.edits);
            prop_assert_eq!(&twice.layer, &kept);
        }
        let wiped = wipe(&marked, &marked_score, &kept, Trust::OwnScore).unwrap();
        let cleaned = edited(&marked, &wiped.edits);
        prop_assert_eq!(cleaned.text(), clean.text());
    }

    #[test]
    fn wiping_the_clean_score_changes_nothing(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 3));
        let score = arcata_score::read(&clean);
        let layer = random_layer(&score, seed, 9);
        let applied = apply(&clean, &score, &layer, &[], Trust::OwnScore).unwrap();
        prop_assert!(wipe(&clean, &score, &applied.layer, Trust::OwnScore).unwrap().edits.is_empty());
    }

    #[test]
    fn two_layers_come_off_in_the_other_order(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 4));
        let score = arcata_score::read(&clean);
        let first = apply(&clean, &score, &random_layer(&score, seed, 8), &[], Trust::OwnScore).unwrap();
        let one = edited(&clean, &first.edits);
        let one_score = arcata_score::read(&one);
        let other = random_layer(&score, seed.wrapping_add(1), 8);
        let second =
            apply(&one, &one_score, &other, std::slice::from_ref(&first.layer), Trust::OwnScore).unwrap();
        let two = edited(&one, &second.edits);
        let wiped = wipe(&two, &arcata_score::read(&two), &second.layer, Trust::OwnScore).unwrap();
        let back = edited(&two, &wiped.edits);
        prop_assert_eq!(back.text(), one.text());
        let wiped = wipe(&back, &arcata_score::read(&back), &first.layer, Trust::OwnScore).unwrap();
        let back = edited(&back, &wiped.edits);
        prop_assert_eq!(back.text(), clean.text());
    }

    /// Slurs that one layer takes off and the other draws: both may go on again in their order, the upper one holds each
    /// time, and off again the slurs are those of the clean score. (Byte for byte holds where they went on once.)
    #[test]
    fn two_layers_about_slurs_may_go_on_again(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 4));
        let mut layers = [about_slurs(&clean, seed), about_slurs(&clean, seed.wrapping_add(1))];
        let mut now = edited(&clean, &arcata_xml::EditList::default());
        let mut known = None;
        for _ in 0..3 {
            for index in 0..2 {
                let score = arcata_score::read(&now);
                let (below, above) = layers.split_at(index);
                let applied = apply(&now, &score, &above[0], below, Trust::OwnScore).unwrap();
                now = edited(&now, &applied.edits);
                layers[index] = read(write(&applied.layer).as_bytes()).unwrap();
                // What one layer has no room for may find some under the other: that is another wish.
                layers[index].entries.retain(|entry| entry.state != EntryState::LeftOut);
            }
            let standing = slurs(&now);
            prop_assert!(known.as_ref().is_none_or(|known| *known == standing), "{known:?} {standing:?}");
            known = Some(standing);
        }
        for layer in layers.iter().rev() {
            let wiped = wipe(&now, &arcata_score::read(&now), layer, Trust::OwnScore).unwrap();
            now = edited(&now, &wiped.edits);
        }
        prop_assert_eq!(slurs(&now), slurs(&clean));
    }

    /// Whatever bows two layers ask of the same notes: on again in their order, the lower one alone between, and off again.
    #[test]
    fn two_layers_may_go_on_again(seed in any::<u64>(), alone in any::<bool>()) {
        let clean = document(&score_text(seed, 4));
        let score = arcata_score::read(&clean);
        let mut layers = [random_layer(&score, seed, 30), random_layer(&score, seed.wrapping_add(1), 30)];
        for layer in &mut layers {
            layer.entries.retain(|entry| entry.mark.question() == Question::Bow);
            for entry in &mut layer.entries {
                // What takes its direction from the note before means another thing under another layer.
                if let Mark::Hook { bow, .. } | Mark::Retake { bow } = &mut entry.mark {
                    bow.get_or_insert(BowDirection::Up);
                }
            }
        }
        // What one layer has no room for may find some when another entry goes: that is another wish.
        let mut found_room = false;
        while !found_room {
            let mut tried = layers.clone();
            put_on(&mut tried, &[0, 1], &clean);
            let left_out = |entry: &Entry| entry.state == EntryState::LeftOut;
            found_room = !tried.iter().any(|layer| layer.entries.iter().any(left_out));
            for (layer, tried) in layers.iter_mut().zip(tried) {
                let kept = tried.entries.into_iter().filter(|entry| !left_out(entry));
                layer.entries = kept.map(|entry| Entry::new(entry.place, entry.mark)).collect();
            }
        }
        let first = put_on(&mut layers, &[0, 1], &clean);
        let again = put_on(&mut layers, if alone { &[0, 0, 1, 1] } else { &[0, 1] }, &first);
        prop_assert_eq!(marks(&again), marks(&first));
        let mut now = put_on(&mut layers, &[0, 1], &again);
        prop_assert_eq!(marks(&now), marks(&first));
        for layer in layers.iter().rev() {
            let wiped = wipe(&now, &arcata_score::read(&now), layer, Trust::OwnScore).unwrap();
            now = edited(&now, &wiped.edits);
        }
        prop_assert!(now.text() == clean.text(), "{}", differing(clean.text(), now.text()));
    }

    #[test]
    fn every_note_is_found_at_its_address(seed in any::<u64>()) {
        let document = document(&score_text(seed, 4));
        let score = arcata_score::read(&document);
        let addresses = Addresses::new(&score);
        for (part, notes) in score.parts.iter().enumerate() {
            for (note, id) in notes.notes.iter().zip(0..).filter(|(note, _)| !note.pitch.is_rest()) {
                let found = NamedNote { part, note: NoteId(id) };
                let place = addresses.place(part, found.note).unwrap();
                prop_assert_eq!(addresses.find(&place), Ok(found), "{} {:?}", place, note);
            }
        }
    }

    #[test]
    fn edits_stay_within_notes_and_the_words_before_them(seed in any::<u64>()) {
        let clean = document(&score_text(seed, 4));
        let score = arcata_score::read(&clean);
        let layer = random_layer(&score, seed, 12);
        let applied = apply(&clean, &score, &layer, &[], Trust::OwnScore).unwrap();
        let notes: Vec<std::ops::Range<usize>> = clean
            .elements()
            .filter(|element| element.tag() == arcata_xml::Tag::NOTE)
            .map(|note| {
                let before = note.parent().unwrap().children().take_while(|child| child.id() != note.id());
                before.last().map_or(note.parent().unwrap().content_range().start, |before| before.range().end)..note.range().end
            })
            .collect();
        for edit in applied.edits.edits() {
            let inside = notes.iter().any(|note| note.start <= edit.range.start && edit.range.end <= note.end);
            prop_assert!(inside, "{edit:?}");
        }
    }
}
