//! What is written is read again; what cannot be read says why.

use arcata_score::{BowDirection, Length, Pitch};
use proptest::prelude::*;
use serde_json::json;

use super::{ReadErrorKind, read, write};
use crate::model::{
    Address, BowPlace, Conflict, Entry, EntryForce, EntryState, Exact, HookSign, HookSlur, Layer, Mark,
    NotReached, PitchName, Spot, Taken, TakenKind,
};

fn pitch() -> impl Strategy<Value = Option<PitchName>> {
    let pitched = (0..7_u8, -300..300_i16, -1..9_i8).prop_map(|(step, alter, octave)| Pitch::Pitched {
        step,
        alter,
        octave,
    });
    prop::option::of(prop_oneof![9 => pitched, 1 => Just(Pitch::Unpitched)].prop_map(PitchName))
}

fn spot() -> impl Strategy<Value = Spot> {
    let bar = prop_oneof!["[0-9]{1,3}", "X1", "\\PC{0,3}"];
    (
        bar,
        prop::option::of(1..400_u32),
        0..30_i64,
        "[12]|v\\PC",
        pitch(),
        prop::option::of(1..3_u16),
        1..3_u16,
    )
        .prop_map(|(bar, bar_ordinal, offset, voice, pitch, grace, copy)| Spot {
            bar,
            bar_ordinal,
            offset: Length::new(offset, 24),
            voice,
            pitch,
            grace,
            copy,
        })
}

fn sign() -> impl Strategy<Value = HookSign> {
    prop_oneof![Just(HookSign::Marks), Just(HookSign::Dots), Just(HookSign::Dashes)]
}

prop_compose! {
    fn hook_slur()(
        from in spot(),
        to in spot(),
        dots in any::<bool>(),
        hooked in prop::collection::vec(spot(), 0..3),
        signs in prop::collection::vec(spot(), 0..3),
    ) -> HookSlur {
        let sign = if dots { HookSign::Dots } else { HookSign::Dashes };
        HookSlur { from, to, sign, hooked, signs }
    }
}

fn mark() -> impl Strategy<Value = Mark> {
    let bow = prop::option::of(prop_oneof![Just(BowDirection::Down), Just(BowDirection::Up)]);
    prop_oneof![
        Just(Mark::Down),
        Just(Mark::Up),
        (bow.clone(), sign()).prop_map(|(bow, sign)| Mark::Hook { bow, sign }),
        bow.prop_map(|bow| Mark::Retake { bow }),
        Just(Mark::AsItComes),
        Just(Mark::Lift),
        prop::sample::select(&BowPlace::ALL[..]).prop_map(|place| Mark::InBow { place }),
        "\\PC{0,5}[a-zé\"]\n?".prop_map(|text| Mark::Text { text }),
        spot().prop_map(|to| Mark::SlurAdded { to }),
        spot().prop_map(|to| Mark::SlurRemoved { to }),
        (spot(), spot()).prop_map(|(to, new)| Mark::SlurMoved { to, new_from: None, new_to: Some(new) }),
    ]
}

fn exact() -> impl Strategy<Value = Exact> {
    ("\\PC{0,9}", 0..3_u32, 0..3_u32, "\\PC{0,9}\r?\n?").prop_map(|(into, after, skip, text)| Exact {
        into,
        after,
        skip,
        text,
    })
}

prop_compose! {
    fn entry()(
        part in "Violin I|P[12]|\\PC{0,4}",
        spot in spot(),
        mark in mark(),
        flags in 0..6_u8,
        owner in prop::option::of("[a-z]{1,5}"),
        took_off in prop::option::of(prop::collection::vec(exact(), 0..2)),
        exact in prop::collection::vec(exact(), 0..2),
        note in prop::option::of("\\PC{0,5}"),
        slur in prop::option::weighted(0.3, hook_slur()),
        doubt in prop::option::of("\\PC{0,9}"),
    ) -> Entry {
        let mut entry = Entry::new(Address { part, spot }, mark);
        entry.force = if flags & 1 == 1 { EntryForce::Anchor } else { EntryForce::Mark };
        entry.state = [EntryState::Own, EntryState::Printed, EntryState::LeftOut][usize::from(flags / 2)];
        entry.written = (flags == 1).then_some(BowDirection::Up);
        entry.owner = owner;
        entry.hook_slur = slur;
        let slur = |exact| Taken { kind: TakenKind::SlurStop, exact };
        entry.took_off = took_off.map(|list| list.into_iter().map(slur).collect());
        entry.exact = exact;
        entry.doubt = doubt;
        entry.other.extend(note.map(|note| ("remark".to_owned(), json!([note, 1.5]))));
        entry
    }
}

prop_compose! {
    fn layer()(
        entries in prop::collection::vec(entry(), 0..12),
        conflict in prop::option::of((entry(), entry())),
        title in "\\PC{0,8}",
    ) -> Layer {
        let mut layer = Layer { title, parts: vec!["Violin I".into(), "P1".into()], entries, ..Layer::default() };
        layer.conflicts.extend(conflict.map(|(first, second)| Conflict {
            place: first.place.clone(),
            base: Vec::new(),
            first: vec![first],
            second: vec![second],
            first_owner: "leader".into(),
            second_owner: "guest".into(),
        }));
        layer.orphans.extend(layer.entries.first().cloned());
        layer.not_reached.extend(layer.entries.iter().map(|entry| NotReached {
            from: entry.place.part.clone(),
            part: "P1".into(),
            bar_ordinal: entry.place.spot.bar_ordinal.unwrap_or(1),
            bar: entry.place.spot.bar.clone(),
            marks: 2,
            why: entry.place.spot.voice.clone(),
        }));
        layer.other.insert("colour".into(), json!("green"));
        layer.score.other.insert("edition".into(), json!({"plate": 7}));
        layer.put_in_order();
        layer
    }
}

proptest! {
    #[test]
    fn what_is_written_is_read_again_unknown_fields_too(layer in layer()) {
        let text = write(&layer);
        prop_assert_eq!(&read(text.as_bytes()).unwrap(), &layer);
        prop_assert_eq!(write(&read(text.as_bytes()).unwrap()), text);
    }

    #[test]
    fn every_entry_has_a_line_of_its_own(layer in layer()) {
        let text = write(&layer);
        let lines = text.lines().filter(|line| line.starts_with("{\"part\":")).count();
        prop_assert_eq!(lines, layer.entries.len() + layer.conflicts.len() + layer.orphans.len());
    }

    #[test]
    fn a_file_cut_short_anywhere_is_refused(layer in layer(), cut in 0..1000_usize) {
        let text = write(&layer);
        let kept = text.trim_end().len() - 1;
        let bytes = &text.as_bytes()[..cut * kept / 1000];
        let error = read(bytes).unwrap_err();
        let short = matches!(error.kind, ReadErrorKind::CutShort | ReadErrorKind::NotALayer);
        prop_assert!(short || error.to_string().contains("cannot be read"), "{}", error);
    }

    #[test]
    fn no_bytes_make_it_panic(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        prop_assert!(read(&bytes).is_err());
    }
}

fn said(text: &str) -> String {
    read(text.as_bytes()).unwrap_err().to_string()
}

fn with_entry(entry: &str) -> String {
    format!("{{\"format\":\"arcata-layer\",\"version\":1,\"entries\":[{entry}]}}")
}

#[test]
fn a_later_version_is_refused_whatever_it_holds() {
    let text = "{\"format\": \"arcata-layer\", \"version\": 2, \"entries\": \"elsewhere\"}";
    assert_eq!(
        said(text),
        "the layer is written in version 2 of the format; this program reads version 1. Take a newer \
         program, or have the layer written in version 1"
    );
}

#[test]
fn what_is_no_layer_is_told_apart_from_a_layer_cut_short() {
    assert!(said("<score-partwise/>").contains("not a bowing layer"));
    assert!(said("{\"format\": \"recipe\", \"version\": 1}").contains("not a bowing layer"));
    assert!(said("{}").contains("not a bowing layer"));
    assert!(said("").contains("not a bowing layer"));
    assert!(said("{\"format\": \"arcata-layer\", \"vers").contains("the file ends in the middle"));
    assert!(said("{\"format\": \"arcata-layer\"}").contains("\"version\" is missing"));
}

#[test]
fn an_entry_that_cannot_be_understood_is_named_with_what_would_be_right() {
    let slur = "{\"part\":\"Viola\",\"bar\":\"3\",\"offset\":\"0\",\"mark\":\"slur added\"}";
    assert_eq!(said(&with_entry(slur)), "entry 1 (Viola, bar 3): a slur needs \"to\", its last note");
    let offset = "{\"part\":\"Viola\",\"bar\":\"3\",\"offset\":\"1/0\",\"mark\":\"up\"}";
    assert!(said(&with_entry(offset)).contains("write whole notes as a fraction"));
    let pitch = "{\"part\":\"Viola\",\"bar\":\"3\",\"offset\":\"0\",\"pitch\":\"H4\",\"mark\":\"up\"}";
    assert!(said(&with_entry(pitch)).contains("is no pitch"));
    let mark = "\n{\"part\":\"Viola\",\"bar\":\"3\",\"offset\":\"0\",\"mark\":\"sideways\"}";
    let said_of_mark = said(&with_entry(mark));
    assert!(said_of_mark.starts_with("line 2:") && said_of_mark.contains("`sideways`"), "{said_of_mark}");
    let unknown = "{\"part\":\"V\",\"bar\":\"3\",\"offset\":\"0\",\"mark\":\"slur added\",\"to\":{\"bar\":\"3\",\"offset\":\"1/2\",\"x\":1}}";
    assert!(said(&with_entry(unknown)).contains("unknown field `x`"));
}

#[test]
fn a_hook_says_how_it_is_written_and_old_files_mean_bow_marks() {
    let hook = |more: &str| {
        with_entry(&format!("{{\"part\":\"V\",\"bar\":\"3\",\"offset\":\"0\",\"mark\":\"hook\"{more}}}"))
    };
    let mark = |more: &str| read(hook(more).as_bytes()).unwrap().entries[0].mark.clone();
    assert_eq!(mark(""), Mark::Hook { bow: None, sign: HookSign::Marks });
    assert_eq!(mark(",\"sign\":\"dots\""), Mark::Hook { bow: None, sign: HookSign::Dots });
    let dashes = Mark::Hook { bow: Some(BowDirection::Up), sign: HookSign::Dashes };
    assert_eq!(mark(",\"bow\":\"up\",\"sign\":\"dashes\""), dashes);
    // What was written by an older version comes out as it was.
    let old = read(hook("").as_bytes()).unwrap();
    assert!(!write(&old).contains("sign"), "{}", write(&old));
    assert!(said(&hook(",\"sign\":\"wedges\"")).contains("`wedges`, expected `dots` or `dashes`"));
    let up = "{\"part\":\"V\",\"bar\":\"3\",\"offset\":\"0\",\"mark\":\"up\",\"sign\":\"dots\"}";
    assert!(said(&with_entry(up)).contains("\"sign\" says how a hook is written"));
}

#[test]
fn hostile_depth_and_numbers_are_refused() {
    let (open, close) = ("[".repeat(100_000), "]".repeat(100_000));
    let deep = format!("{{\"format\":\"arcata-layer\",\"version\":1,\"x\":{open}{close}}}");
    assert!(said(&deep).contains("recursion"));
    let large = with_entry(
        "{\"part\":\"V\",\"bar\":\"3\",\"bar_ordinal\":99999999999,\"offset\":\"0\",\"mark\":\"up\"}",
    );
    assert!(said(&large).contains("99999999999"));
}
