//! Where players stop between two movements.

use arcata_xml::{Document, Tag};

use crate::Score;
use crate::words::is_attacca;

/// Bars before the end of a movement in which "attacca" may stand (rule of thumb).
const LAST_BARS: u32 = 8;

impl Score {
    /// The first bars of the movements before which players stop: of all but the first, unless "attacca" stands at the end of
    /// the one before, in any part. `document` is what the score was read from.
    #[must_use]
    pub fn stops(&self, document: &Document) -> Vec<u32> {
        let pairs = self.movements.windows(2).map(|pair| (*pair[0].bars.start(), *pair[1].bars.start()));
        pairs
            .filter(|(before, start)| !self.says_attacca(document, *before, *start))
            .map(|(_, start)| start)
            .collect()
    }

    /// Whether "attacca" stands near the end of the movement that begins at bar `before` and ends where another `start`s.
    fn says_attacca(&self, document: &Document, before: u32, start: u32) -> bool {
        (start.saturating_sub(LAST_BARS).max(before)..start).any(|bar| {
            self.parts.iter().any(|part| {
                let measure = part.measures.get(bar as usize).copied().flatten();
                let directions = measure
                    .and_then(|measure| document.element(measure))
                    .into_iter()
                    .flat_map(|measure| measure.children_named(Tag::DIRECTION));
                let mut words = directions
                    .flat_map(|direction| direction.descendants())
                    .filter(|inner| inner.tag() == Tag::WORDS);
                words.any(|words| is_attacca(&words.text()))
            })
        })
    }
}
