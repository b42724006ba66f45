//! What one note's part of a change sheet says: what stands on the paper before and after.

use arcata_layer::{Entry, EntryState, Mark};
use arcata_score::BowDirection;

/// What stands at a note on paper as one answer to one question.
#[derive(Clone, Debug, PartialEq, Eq)]
#[expect(clippy::large_enum_variant, reason = "few are alive at a time")]
pub(super) enum OnPaper {
    /// Nothing.
    Nothing,
    /// A mark of a layer, or a printed bow mark.
    Mark(Mark),
    /// A slur as it is printed.
    PrintedSlur,
}

impl OnPaper {
    pub(super) fn is_nothing(&self) -> bool {
        *self == Self::Nothing
    }
}

/// A bow mark, hook or retake: the layer's, else the printed one.
pub(super) fn bow(entry: Option<&Entry>, printed: Option<BowDirection>) -> OnPaper {
    match entry.map(|entry| &entry.mark) {
        None => printed.map_or(OnPaper::Nothing, |printed| OnPaper::Mark(Mark::of(printed))),
        Some(Mark::AsItComes) => OnPaper::Nothing,
        Some(mark) => OnPaper::Mark(mark.clone()),
    }
}

/// A mark that players do not need: it stays where it is printed, and is not written.
pub(super) fn spared(mark: &Mark, printed: Option<BowDirection>) -> OnPaper {
    match printed {
        Some(printed) if Mark::of(printed) == *mark => OnPaper::Mark(mark.clone()),
        _ => OnPaper::Nothing,
    }
}

/// A slur: the layer's, else the printed one that the other side speaks of.
pub(super) fn slur(entry: Option<&Entry>, other: Option<&Entry>) -> OnPaper {
    let speaks_of_printed = |entry: &Entry| {
        entry.state == EntryState::Printed
            || matches!(entry.mark, Mark::SlurRemoved { .. } | Mark::SlurMoved { .. })
    };
    match entry {
        Some(entry) if entry.state == EntryState::Printed => OnPaper::PrintedSlur,
        Some(entry) => match &entry.mark {
            Mark::SlurRemoved { .. } => OnPaper::Nothing,
            mark => OnPaper::Mark(mark.clone()),
        },
        None if other.is_some_and(speaks_of_printed) => OnPaper::PrintedSlur,
        None => OnPaper::Nothing,
    }
}

/// Lifts, places in the bow and words.
pub(super) fn other(entry: Option<&Entry>) -> OnPaper {
    entry.map_or(OnPaper::Nothing, |entry| OnPaper::Mark(entry.mark.clone()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use arcata_layer::{Address, Spot};
    use arcata_score::Length;

    fn entry(mark: Mark) -> Entry {
        Entry::new(Address { part: "Violin".into(), spot: Spot::new("1", Length::ZERO) }, mark)
    }

    #[test]
    fn printed_marks_stand_where_no_layer_speaks() {
        let down = OnPaper::Mark(Mark::Down);
        assert_eq!(bow(None, Some(BowDirection::Down)), down);
        assert_eq!(bow(Some(&entry(Mark::Down)), None), down);
        assert_eq!(bow(Some(&entry(Mark::AsItComes)), Some(BowDirection::Down)), OnPaper::Nothing);
        assert_eq!(spared(&Mark::Down, Some(BowDirection::Up)), OnPaper::Nothing);
        assert_eq!(spared(&Mark::Down, Some(BowDirection::Down)), down);
    }

    #[test]
    fn slurs_taken_off_were_on_the_paper() {
        let to = Spot::new("1", Length::QUARTER);
        let removed = entry(Mark::SlurRemoved { to: to.clone() });
        assert_eq!(slur(Some(&removed), None), OnPaper::Nothing);
        assert_eq!(slur(None, Some(&removed)), OnPaper::PrintedSlur);
        let added = entry(Mark::SlurAdded { to });
        assert_eq!(slur(None, Some(&added)), OnPaper::Nothing);
        assert!(!slur(Some(&added), None).is_nothing());
    }
}
