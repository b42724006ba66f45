//! Two owners' layers made one: nothing is dropped, and what cannot be decided is kept as a conflict.

use crate::compare::{QuestionKey, agree, answers, sort_keys};
use crate::model::{Address, Conflict, Entry, Layer, Question};

/// Who decides where two owners want different things.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MergeRule {
    /// The part it is for; all parts where it is nothing.
    pub part: Option<String>,
    /// The owner who wins there.
    pub winner: String,
}

/// Two layers made one.
#[derive(Clone, Debug, PartialEq)]
pub struct Merged {
    /// The layer, with the conflicts that no rule decides in [`Layer::conflicts`].
    pub layer: Layer,
    /// Where a rule decided, and what lost: it is not in the layer.
    pub overruled: Vec<Conflict>,
}

/// Merges two layers, with what both started from where it is known.
///
/// With a base, what only one of the two changed is taken, and what both changed in the same way too. Without
/// one, what only one of the two says is taken. The rest is a conflict unless a rule decides it; the first
/// rule that fits counts. The two sides may be exchanged: only the order inside conflicts changes.
///
/// ```
/// use arcata_layer::{Entry, Layer, Mark, Address, Spot, merge};
/// let place = |bar: &str| Address { part: "Viola".into(), spot: Spot::new(bar, Default::default()) };
/// let layer = |owner: &str, entries| Layer { owner: owner.into(), entries, ..Layer::default() };
/// let base = layer("leader", vec![Entry::new(place("1"), Mark::Up)]);
/// let one = layer("leader", vec![Entry::new(place("1"), Mark::Down)]);
/// let other = layer("guest", vec![Entry::new(place("1"), Mark::Up), Entry::new(place("2"), Mark::Lift)]);
/// let merged = merge(Some(&base), &one, &other, &[]);
/// assert_eq!(merged.layer.entries.len(), 2);
/// assert!(merged.layer.conflicts.is_empty());
/// assert_eq!(merge(None, &one, &other, &[]).layer.conflicts.len(), 1);
/// ```
#[must_use]
pub fn merge(base: Option<&Layer>, first: &Layer, second: &Layer, rules: &[MergeRule]) -> Merged {
    let mut layer = heading(first, second);
    let mut overruled = Vec::new();
    let (old, one, two) = (base.map(answers), answers(first), answers(second));
    let mut keys: Vec<QuestionKey> = one.keys().chain(two.keys()).cloned().collect();
    sort_keys(&mut keys, &[first, second]);
    for key in keys {
        let said = |answers: &std::collections::BTreeMap<QuestionKey, Vec<Entry>>| {
            answers.get(&key).cloned().unwrap_or_default()
        };
        let start = old.as_ref().map(said);
        let (mine, theirs) = (owned(said(&one), first, &layer), owned(said(&two), second, &layer));
        match decide(start.as_deref(), &mine, &theirs) {
            Some(MergeSide::First) => layer.entries.extend(mine),
            Some(MergeSide::Second) => layer.entries.extend(theirs),
            Some(MergeSide::Both) => layer.entries.extend(one_voice(mine, &theirs)),
            None => {
                let conflict = conflict(&key, start.unwrap_or_default(), mine, theirs, first, second);
                match winner(&conflict, rules) {
                    Some(winner) => {
                        layer.entries.extend(winner.iter().cloned());
                        overruled.push(conflict);
                    }
                    None => layer.conflicts.push(conflict),
                }
            }
        }
    }
    layer.conflicts.extend(open_conflicts(first, second));
    layer.orphans = first.orphans.clone();
    let more = second.orphans.iter().filter(|entry| !first.orphans.contains(entry));
    layer.orphans.extend(more.cloned());
    layer.not_reached = first.not_reached.iter().chain(&second.not_reached).cloned().collect();
    layer.put_in_order();
    Merged { layer, overruled }
}

enum MergeSide {
    First,
    Second,
    /// Both say the same.
    Both,
}

fn decide(base: Option<&[Entry]>, first: &[Entry], second: &[Entry]) -> Option<MergeSide> {
    if agree(first, second) {
        return Some(MergeSide::Both);
    }
    match base {
        Some(base) if agree(base, first) => Some(MergeSide::Second),
        Some(base) if agree(base, second) => Some(MergeSide::First),
        None if first.is_empty() => Some(MergeSide::Second),
        None if second.is_empty() => Some(MergeSide::First),
        _ => None,
    }
}

/// What both say, with what either remembers of a file. The one that remembers more is kept, so that the
/// order of the two does not matter.
fn one_voice(first: Vec<Entry>, second: &[Entry]) -> Vec<Entry> {
    let known = |entry: &Entry| {
        let (exact, took_off) = (entry.exact.clone(), entry.took_off.clone());
        let slur = entry.hook_slur.clone();
        (exact, took_off, entry.before.clone(), slur, entry.owner.clone(), entry.doubt.clone())
    };
    let pairs = first.into_iter().zip(second);
    pairs.map(|(one, other)| if known(other) > known(&one) { other.clone() } else { one }).collect()
}

/// What the merged layer says of itself: what both agree on, else both.
fn heading(first: &Layer, second: &Layer) -> Layer {
    let both = |one: &str, other: &str| {
        let mut said: Vec<&str> = [one, other].into_iter().filter(|text| !text.is_empty()).collect();
        said.sort_unstable();
        said.dedup();
        said.join(" + ")
    };
    // The score of the side that knows one; of two different ones neither is true of the whole.
    let score = match (&first.score, &second.score) {
        (one, other) if one == other || other.bytes.is_none() => one.clone(),
        (one, other) if one.bytes.is_none() => other.clone(),
        (one, other) if one.music == other.music => {
            crate::model::ScoreIdentity { bytes: None, ..one.clone() }
        }
        _ => crate::model::ScoreIdentity::default(),
    };
    let mut parts = first.parts.clone();
    for part in &second.parts {
        if !parts.contains(part) {
            parts.push(part.clone());
        }
    }
    let mut other = second.other.clone();
    other.extend(first.other.clone());
    Layer {
        title: both(&first.title, &second.title),
        owner: both(&first.owner, &second.owner),
        ensemble: both(&first.ensemble, &second.ensemble),
        date: first.date.clone().max(second.date.clone()),
        score,
        parts,
        other,
        ..Layer::default()
    }
}

/// Entries that say whose they are, where that is not the merged layer's owner.
fn owned(entries: Vec<Entry>, layer: &Layer, merged: &Layer) -> Vec<Entry> {
    let named = entries.into_iter().map(|mut entry| {
        let owner = layer.owner_of(&entry).to_owned();
        entry.owner = (owner != merged.owner && !owner.is_empty()).then_some(owner);
        entry
    });
    named.collect()
}

fn conflict(
    (place, _): &(Address, Question),
    base: Vec<Entry>,
    first: Vec<Entry>,
    second: Vec<Entry>,
    one: &Layer,
    other: &Layer,
) -> Conflict {
    let owner = |entries: &[Entry], layer: &Layer| {
        let said = entries.iter().find_map(|entry| entry.owner.clone());
        said.unwrap_or_else(|| layer.owner.clone())
    };
    Conflict {
        place: place.clone(),
        base,
        first_owner: owner(&first, one),
        second_owner: owner(&second, other),
        first,
        second,
    }
}

/// What the first rule that fits takes; nothing where no rule names one of the two owners.
fn winner<'c>(conflict: &'c Conflict, rules: &[MergeRule]) -> Option<&'c [Entry]> {
    rules.iter().find_map(|rule| {
        let here = rule.part.as_ref().is_none_or(|part| *part == conflict.place.part);
        match (here, conflict.first_owner == rule.winner, conflict.second_owner == rule.winner) {
            (true, true, false) => Some(conflict.first.as_slice()),
            (true, false, true) => Some(conflict.second.as_slice()),
            _ => None,
        }
    })
}

/// Conflicts that a side brings along, each once.
fn open_conflicts(first: &Layer, second: &Layer) -> Vec<Conflict> {
    let mut open = first.conflicts.clone();
    for conflict in &second.conflicts {
        if !open.contains(conflict) {
            open.push(conflict.clone());
        }
    }
    open
}

/// Settles the conflicts of a layer by rules; what no rule decides stays. Gives what lost.
pub fn settle(layer: &mut Layer, rules: &[MergeRule]) -> Vec<Conflict> {
    let mut overruled = Vec::new();
    for conflict in std::mem::take(&mut layer.conflicts) {
        match winner(&conflict, rules).map(<[Entry]>::to_vec) {
            Some(entries) => {
                layer.entries.extend(entries);
                overruled.push(conflict);
            }
            None => layer.conflicts.push(conflict),
        }
    }
    layer.put_in_order();
    overruled
}
