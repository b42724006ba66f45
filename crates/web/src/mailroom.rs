//! Where drawings are ordered and handed out: the engraving library works in another worker of the page.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use arcata_engrave::{EngravingOrder, Press, PressError};
use serde::Serialize;
use sha2::{Digest as _, Sha256};

/// What is to be engraved, as the page is told.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct WrittenOrder {
    /// What the drawing is handed in under.
    pub key: String,
    /// The library's options, JSON.
    pub options: String,
    /// The music, MusicXML.
    pub musicxml: String,
    /// After how many seconds to give it up.
    pub seconds: u64,
}

/// Orders that wait, and drawings that have come.
#[derive(Debug, Default)]
struct Trays {
    wanted: BTreeMap<String, WrittenOrder>,
    filled: BTreeMap<String, Result<String, PressError>>,
}

/// A press that has nothing in stock: what is not there yet is noted down, and refused until it comes.
#[derive(Clone, Debug, Default)]
pub(crate) struct Mailroom(Arc<Mutex<Trays>>);

impl Mailroom {
    fn trays(&self) -> MutexGuard<'_, Trays> {
        // Each change is one insertion or removal: a panic elsewhere leaves the trays whole.
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// What was asked for and is not there, in the order of the keys; it is forgotten with that.
    pub(crate) fn wanted(&self) -> Vec<WrittenOrder> {
        std::mem::take(&mut self.trays().wanted).into_values().collect()
    }

    /// Hands in a drawing, or why there is none.
    pub(crate) fn hand_in(&self, key: &str, drawing: Result<String, PressError>) {
        self.trays().filled.insert(key.to_owned(), drawing);
    }
}

impl Press for Mailroom {
    fn prepare(&self) {}

    fn fill(&self, order: &EngravingOrder) -> Result<String, PressError> {
        let key = key(order);
        let mut trays = self.trays();
        match trays.filled.get(&key) {
            Some(Err(problem)) => Err(*problem),
            // The engraver keeps what it has made of it.
            Some(Ok(_)) => trays.filled.remove(&key).unwrap_or(Err(PressError::Refused)),
            None => {
                let EngravingOrder { options, musicxml, seconds } = order.clone();
                trays.wanted.insert(key.clone(), WrittenOrder { key, options, musicxml, seconds });
                Err(PressError::NotStarted)
            }
        }
    }
}

/// Tells one order from another.
fn key(order: &EngravingOrder) -> String {
    let mut hash = Sha256::new();
    hash.update(order.options.as_bytes());
    hash.update([0]);
    hash.update(order.musicxml.as_bytes());
    hash.finalize().iter().take(12).map(|byte| format!("{byte:02x}")).collect()
}
