//! Scores, layers and ways of writing a file.

use std::collections::{BTreeMap, BTreeSet};

use arcata_layer::{Addresses, BowPlace, Entry, HookSign, Layer, Mark, NamedNote, ToldBow, ToldBows};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_testkit::{Detail, Random, ScoreShape, random_score};
use arcata_xml::{Document, EditList, Limits};

pub(crate) fn document(text: &str) -> Document {
    Document::parse(text.as_bytes().to_vec(), &Limits::default()).expect("a made-up score is well-formed")
}

pub(crate) fn edited(before: &Document, edits: &EditList) -> Document {
    let bytes = before.apply(edits).expect("the edits fit");
    Document::parse(bytes, &Limits::default()).expect("what was written is well-formed")
}

/// A made-up score, set out in one of several manners, its bow marks and slurs with attributes of all
/// kinds.
pub(crate) fn score_text(seed: u64, bars: usize) -> String {
    let text = random_score(seed, ScoreShape { parts: 2, bars, detail: Detail::All });
    let mut random = Random::new(seed ^ 0x5eed);
    let text = with_attributes(&text, &mut random);
    match random.below(5) {
        0 => text.replace('\n', "\r\n"),
        1 => text.lines().map(str::trim).collect(),
        2 => text.replace("  ", "\t"),
        3 => text.replace("<notations>", "<notations><!-- seen -->"),
        _ => text,
    }
}

fn with_attributes(text: &str, random: &mut Random) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(at) = ["<down-bow", "<up-bow", "<slur", "<breath-mark"]
        .iter()
        .filter_map(|tag| rest.find(tag).map(|at| at + tag.len()))
        .min()
    {
        out.push_str(&rest[..at]);
        let added: &str =
            random.pick::<&str>(&["", "", " default-x='3'", " color=\"#00FF00\" placement=\"above\"", "\t "]);
        out.push_str(added);
        rest = &rest[at..];
    }
    out + rest
}

/// What a plan could say of the hooks and retakes of a layer: any note before as the stroke before, and for each note one
/// direction.
pub(crate) fn random_told(score: &Score, layer: &Layer, seed: u64) -> ToldBows {
    let addresses = Addresses::new(score);
    let mut random = Random::new(seed);
    let mut told = ToldBows::default();
    let mut ways = BTreeMap::new();
    for entry in &layer.entries {
        let way = match entry.mark {
            Mark::Down => BowDirection::Down,
            Mark::Up => BowDirection::Up,
            Mark::Double { first } => first.other(),
            Mark::Hook { bow: Some(bow), .. } | Mark::Retake { bow: Some(bow) } => bow,
            _ => continue,
        };
        ways.extend(addresses.find(&entry.place).ok().map(|at| (at, way)));
    }
    // Under the slur of a hook all strokes go one way; a plan that says otherwise there is none.
    let mut slurred = BTreeSet::new();
    for entry in &layer.entries {
        let Mark::Hook { sign: HookSign::Dots | HookSign::Dashes, .. } = entry.mark else { continue };
        let Ok(at) = addresses.find(&entry.place) else { continue };
        let notes = &score.parts[at.part].notes;
        let here = &notes[at.note.0 as usize];
        let before = notes
            .iter()
            .filter(|note| note.voice == here.voice && note.onset < here.onset && !note.pitch.is_rest());
        let mut from = before.map(|note| note.onset).max().unwrap_or(here.onset);
        // The chain of ties that the note before ends.
        while let Some(tied) = notes.iter().find_map(|note| match note.tie.from_before {
            arcata_score::TieEnd::Joined(before) if note.onset == from && note.voice == here.voice => {
                Some(notes[before.0 as usize].onset)
            }
            _ => None,
        }) {
            from = tied;
        }
        slurred.extend(
            notes
                .iter()
                .zip(0..)
                .filter(|(note, _)| from <= note.onset && note.onset <= here.onset)
                .map(|(_, index)| NamedNote { part: at.part, note: NoteId(index) }),
        );
    }
    for entry in layer.entries.iter().filter(|entry| entry.mark.follows()) {
        let Ok(at) = addresses.find(&entry.place) else { continue };
        let notes = &score.parts[at.part].notes;
        let earlier: Vec<NoteId> = (0..)
            .map(NoteId)
            .zip(notes)
            .filter(|(_, note)| note.onset < notes[at.note.0 as usize].onset && !note.pitch.is_rest())
            .map(|(id, _)| id)
            .collect();
        let direction = *ways.entry(at).or_insert(*random.pick(&[BowDirection::Down, BowDirection::Up]));
        let before = (!earlier.is_empty()).then(|| *random.pick(&earlier)).filter(|before| {
            let before = NamedNote { part: at.part, note: *before };
            !slurred.contains(&before) && *ways.entry(before).or_insert(direction) == direction
        });
        told.tell(at, ToldBow { direction, before });
    }
    told
}

/// A layer with marks of every kind on random notes, doubles and contradictions among them.
pub(crate) fn random_layer(score: &Score, seed: u64, count: usize) -> Layer {
    let addresses = Addresses::new(score);
    let mut random = Random::new(seed);
    let mut layer = Layer { owner: "leader".into(), ..Layer::default() };
    layer.parts = addresses.part_keys().to_vec();
    let spot = |random: &mut Random, part: usize| {
        let notes = score.parts[part].notes.len().max(1);
        let note = NoteId(u32::try_from(random.below(notes)).expect("small"));
        (note, addresses.spot(part, note))
    };
    for _ in 0..count {
        let part = random.below(score.parts.len());
        let (note, Some(_)) = spot(&mut random, part) else { continue };
        let Some(place) = addresses.place(part, note) else { continue };
        let slurs = &score.parts[part].slurs;
        let bow = *random.pick(&[None, Some(BowDirection::Down), Some(BowDirection::Up)]);
        let mark = match random.below(13) {
            0..=2 => Mark::Down,
            3 | 4 => Mark::Up,
            5 => {
                let sign = *random.pick(&[HookSign::Marks, HookSign::Dots, HookSign::Dots, HookSign::Dashes]);
                // Some go on, over notes that follow each other.
                for more in 1..=u32::try_from(random.below(3)).expect("small") {
                    let bow = bow.filter(|_| random.chance(50));
                    let Some(place) = addresses.place(part, NoteId(note.0 + more)) else { break };
                    layer.entries.push(Entry::new(place, Mark::Hook { bow, sign }));
                }
                Mark::Hook { bow, sign }
            }
            6 => Mark::Retake { bow },
            7 => Mark::AsItComes,
            8 => Mark::Lift,
            9 => Mark::InBow { place: *random.pick(&BowPlace::ALL) },
            10 => Mark::Double { first: bow.unwrap_or(BowDirection::Up) },
            11 => Mark::Text { text: (*random.pick(&["sul G & D", "near <them>", "both"])).to_owned() },
            _ => {
                let (_, Some(to)) = spot(&mut random, part) else { continue };
                if slurs.is_empty() || random.chance(50) {
                    Mark::SlurAdded { to }
                } else {
                    let slur = random.pick(slurs);
                    let (Some(from), Some(end)) =
                        (addresses.place(part, slur.start), addresses.spot(part, slur.end))
                    else {
                        continue;
                    };
                    let mark = if random.chance(50) {
                        Mark::SlurRemoved { to: end }
                    } else {
                        Mark::SlurMoved { to: end, new_from: None, new_to: Some(to) }
                    };
                    layer.entries.push(Entry::new(from, mark));
                    continue;
                }
            }
        };
        layer.entries.push(Entry::new(place, mark));
    }
    layer.put_in_order();
    layer
}
