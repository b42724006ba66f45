//! What differs between two layers, or two states of one.

use std::collections::BTreeMap;

use crate::model::{Address, Entry, Layer, Question};

/// A note about which two layers do not say the same.
#[derive(Clone, Debug, PartialEq)]
pub struct LayerDifference {
    /// The note.
    pub place: Address,
    /// What is decided there.
    pub question: Question,
    /// What the first layer says; empty where it says nothing.
    pub before: Vec<Entry>,
    /// What the second layer says.
    pub after: Vec<Entry>,
}

/// A question about a note.
pub(crate) type QuestionKey = (Address, Question);

/// The answers of a layer; several where it contradicts itself.
pub(crate) fn answers(layer: &Layer) -> BTreeMap<QuestionKey, Vec<Entry>> {
    let mut answers: BTreeMap<QuestionKey, Vec<Entry>> = BTreeMap::new();
    for entry in &layer.entries {
        let given = answers.entry((entry.place.clone(), entry.mark.question())).or_default();
        if !given.iter().any(|other| entry.says_the_same(other)) {
            given.push(entry.clone());
        }
    }
    for given in answers.values_mut() {
        given.sort_by(|one, other| (&one.mark, one.force).cmp(&(&other.mark, other.force)));
    }
    answers
}

/// Whether two sets of answers to one question are the same.
pub(crate) fn agree(one: &[Entry], other: &[Entry]) -> bool {
    one.len() == other.len() && one.iter().zip(other).all(|(one, other)| one.says_the_same(other))
}

/// Every note about which two layers do not say the same, in the order of parts, bars and offsets. What they
/// remember of files does not count, nor who said it.
///
/// ```
/// use arcata_layer::{Entry, Layer, Mark, Address, Spot, compare};
/// let place = Address { part: "Viola".into(), spot: Spot::new("7", Default::default()) };
/// let one = Layer { entries: vec![Entry::new(place.clone(), Mark::Up)], ..Layer::default() };
/// let other = Layer { entries: vec![Entry::new(place, Mark::Down)], ..Layer::default() };
/// assert!(compare(&one, &one).is_empty());
/// assert_eq!(compare(&one, &other).len(), 1);
/// ```
#[must_use]
pub fn compare(before: &Layer, after: &Layer) -> Vec<LayerDifference> {
    let (mut old, mut new) = (answers(before), answers(after));
    let mut keys: Vec<QuestionKey> = old.keys().chain(new.keys()).cloned().collect();
    sort_keys(&mut keys, &[before, after]);
    let differences = keys.into_iter().filter_map(|key| {
        let (before, after) = (old.remove(&key).unwrap_or_default(), new.remove(&key).unwrap_or_default());
        (!agree(&before, &after)).then_some(LayerDifference { place: key.0, question: key.1, before, after })
    });
    differences.collect()
}

/// Puts keys into the order in which people read: parts as the layers list them, then by place.
pub(crate) fn sort_keys(keys: &mut Vec<QuestionKey>, layers: &[&Layer]) {
    let parts: Vec<&String> = layers.iter().flat_map(|layer| &layer.parts).collect();
    let rank = |place: &Address| {
        let known = parts.iter().position(|part| **part == place.part);
        (known.unwrap_or(parts.len()), place.clone())
    };
    keys.sort_by(|one, other| (rank(&one.0), &one.1).cmp(&(rank(&other.0), &other.1)));
    keys.dedup();
}
