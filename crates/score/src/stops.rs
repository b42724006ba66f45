//! Where players stop between two movements.

use arcata_xml::{Document, Tag};

use crate::Score;

/// Bars before the end of a movement in which "attacca" may stand (rule of thumb).
const LAST_BARS: u32 = 8;

impl Score {
    /// The first bars of the movements before which players stop: of all but the first, unless "attacca" stands at the end of
    /// the one before, in any part. `document` is what the score was read from.
    #[must_use]
    pub fn stops(&self, document: &Document) -> Vec<u32> {
        let starts = self.movements.iter().skip(1).map(|movement| *movement.bars.start());
        starts.filter(|start| !self.says_attacca(document, *start)).collect()
    }

    fn says_attacca(&self, document: &Document, start: u32) -> bool {
        (start.saturating_sub(LAST_BARS)..start).any(|bar| {
            self.parts.iter().any(|part| {
                let measure = part.measures.get(bar as usize).copied().flatten();
                let directions = measure
                    .and_then(|measure| document.element(measure))
                    .into_iter()
                    .flat_map(|measure| measure.children_named(Tag::DIRECTION));
                let mut words = directions
                    .flat_map(|direction| direction.descendants())
                    .filter(|inner| inner.tag() == Tag::WORDS);
                // "attaca" is a common slip.
                words.any(|words| words.text().to_lowercase().contains("attac"))
            })
        })
    }
}
