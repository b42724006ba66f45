//! What was entered, put into a layer.

use std::collections::BTreeMap;

use super::enter::Entered;
use crate::model::{Address, Entry, Layer, Mark, Question};

/// Puts what was entered into a layer: it replaces what the layer decided about the same notes.
///
/// ```
/// use arcata_layer::{Addresses, Layer, shorthand};
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &Default::default()).unwrap();
/// let score = arcata_score::read(&document);
/// let addresses = Addresses::new(&score);
/// let mut layer = Layer { parts: addresses.part_keys().to_vec(), ..Layer::default() };
/// for typed in ["violin 1/2 up", "violin 1/2 down", "violin 1 as it comes"] {
///     let entered = shorthand::enter(&shorthand::read(typed).0, &addresses);
///     shorthand::put(&mut layer, &entered);
/// }
/// assert_eq!(layer.entries.len(), 1);
/// assert_eq!(layer.entries[0].place.spot.offset, arcata_score::Length::ZERO);
/// ```
pub fn put(layer: &mut Layer, entered: &Entered) {
    let mut kept: BTreeMap<(Address, Question), Entry> = BTreeMap::new();
    for entry in std::mem::take(&mut layer.entries) {
        kept.insert((entry.place.clone(), entry.mark.question()), entry);
    }
    for place in &entered.cleared {
        // A printed mark that an entry took off is still taken off.
        let key = (place.clone(), Question::Bow);
        if let Some(before) = kept.remove(&key)
            && !before.taken_off().is_empty()
        {
            let took_off = before.took_off.clone();
            kept.insert(key, Entry { took_off, ..Entry::new(place.clone(), Mark::AsItComes) });
        }
    }
    for entry in &entered.entries {
        let key = (entry.place.clone(), entry.mark.question());
        let mut entry = entry.clone();
        if let Some(before) = kept.remove(&key) {
            if before.says_the_same(&entry) {
                // Typed again it has been looked at.
                entry = Entry { doubt: None, ..before };
            } else {
                // What was taken off for the old decision is still off the score that the layer knows.
                (entry.took_off, entry.before) = (before.took_off, before.before);
                entry.hook_slur = before.hook_slur;
            }
        }
        kept.insert(key, entry);
    }
    layer.entries = kept.into_values().collect();
    layer.put_in_order();
}
