//! Comparing and merging: laws on made-up layers.

use arcata_layer::{Address, Entry, HookSign, Layer, Mark, MergeRule, Spot, compare, merge, settle};
use arcata_score::Length;
use proptest::prelude::*;

fn place(bar: u32) -> Address {
    let spot = Spot { bar_ordinal: Some(bar), ..Spot::new(&bar.to_string(), Length::ZERO) };
    Address { part: if bar.is_multiple_of(2) { "Violin I" } else { "Viola" }.to_owned(), spot }
}

fn entry() -> impl Strategy<Value = Entry> {
    let mark = prop_oneof![
        Just(Mark::Down),
        Just(Mark::Up),
        Just(Mark::Lift),
        Just(Mark::Hook { bow: None, sign: HookSign::Marks }),
        Just(Mark::Hook { bow: None, sign: HookSign::Dots }),
        "[ab]".prop_map(|text| Mark::Text { text })
    ];
    (1..9_u32, mark).prop_map(|(bar, mark)| Entry::new(place(bar), mark))
}

fn layer(owner: &'static str) -> impl Strategy<Value = Layer> {
    prop::collection::vec(entry(), 0..10).prop_map(move |entries| {
        let mut layer = Layer { owner: owner.into(), entries, ..Layer::default() };
        layer.parts = vec!["Violin I".into(), "Viola".into()];
        layer.put_in_order();
        layer
    })
}

/// What is said, owners aside.
fn said(entries: &[Entry]) -> Vec<(Address, Mark)> {
    let mut said: Vec<_> = entries.iter().map(|entry| (entry.place.clone(), entry.mark.clone())).collect();
    said.sort();
    said.dedup();
    said
}

proptest! {
    #[test]
    fn nothing_differs_from_itself(layer in layer("leader")) {
        prop_assert!(compare(&layer, &layer).is_empty());
    }

    #[test]
    fn differences_turn_round(one in layer("leader"), other in layer("guest")) {
        let (there, back) = (compare(&one, &other), compare(&other, &one));
        prop_assert_eq!(there.len(), back.len());
        for (there, back) in there.iter().zip(&back) {
            prop_assert_eq!((&there.before, &there.after), (&back.after, &back.before));
        }
    }

    #[test]
    fn nothing_is_dropped(base in prop::option::of(layer("old")), one in layer("leader"), other in layer("guest")) {
        let merged = merge(base.as_ref(), &one, &other, &[]).layer;
        let mut kept = said(&merged.entries);
        for conflict in &merged.conflicts {
            kept.extend(said(&conflict.first));
            kept.extend(said(&conflict.second));
        }
        let old = base.as_ref().map(|base| said(&base.entries)).unwrap_or_default();
        for wish in said(&one.entries).into_iter().chain(said(&other.entries)) {
            // Only what one of the two has taken out or changed on purpose may go.
            prop_assert!(kept.contains(&wish) || old.contains(&wish), "{:?}", wish);
        }
    }

    #[test]
    fn sides_may_be_exchanged(base in prop::option::of(layer("old")), one in layer("leader"), other in layer("guest")) {
        let here = merge(base.as_ref(), &one, &other, &[]).layer;
        let there = merge(base.as_ref(), &other, &one, &[]).layer;
        prop_assert_eq!(said(&here.entries), said(&there.entries));
        prop_assert_eq!(here.conflicts.len(), there.conflicts.len());
        for (here, there) in here.conflicts.iter().zip(&there.conflicts) {
            prop_assert_eq!((&here.first, &here.second), (&there.second, &there.first));
        }
    }

    #[test]
    fn merged_with_what_it_came_from_a_layer_stays(base in layer("leader"), one in layer("leader")) {
        prop_assert_eq!(said(&merge(Some(&base), &one, &base, &[]).layer.entries), said(&one.entries));
        prop_assert_eq!(said(&merge(None, &one, &one, &[]).layer.entries), said(&one.entries));
    }

    #[test]
    fn a_rule_for_all_parts_leaves_no_conflict(one in layer("leader"), other in layer("guest")) {
        let rules = [MergeRule { part: None, winner: "leader".into() }];
        let merged = merge(None, &one, &other, &rules);
        prop_assert!(merged.layer.conflicts.is_empty());
        let mut by_hand = merge(None, &one, &other, &[]).layer;
        let overruled = settle(&mut by_hand, &rules);
        prop_assert_eq!(&overruled, &merged.overruled);
        prop_assert_eq!(said(&by_hand.entries), said(&merged.layer.entries));
    }
}

#[test]
fn a_rule_holds_only_in_its_part() {
    let one = Layer {
        owner: "leader".into(),
        entries: vec![Entry::new(place(1), Mark::Up), Entry::new(place(2), Mark::Up)],
        ..Layer::default()
    };
    let other = Layer {
        owner: "guest".into(),
        entries: vec![Entry::new(place(1), Mark::Down), Entry::new(place(2), Mark::Down)],
        ..Layer::default()
    };
    let rules = [MergeRule { part: Some("Violin I".into()), winner: "leader".into() }];
    let merged = merge(None, &one, &other, &rules);
    assert_eq!(merged.layer.conflicts.len(), 1);
    assert_eq!(merged.layer.conflicts[0].place.part, "Viola");
    assert_eq!(said(&merged.layer.entries), [(place(2), Mark::Up)]);
    assert_eq!(merged.layer.entries[0].owner.as_deref(), Some("leader"));
}
