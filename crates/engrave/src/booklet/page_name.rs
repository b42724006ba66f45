//! What pages are called: by number, a page that folds out by the number of the page that it is glued to.

use std::fmt;

use super::breaking::{BookletSide, System};

/// The printed number of a page.
///
/// ```
/// use arcata_engrave::PageName;
/// assert_eq!(PageName { number: 3, folds_out: true }.to_string(), "3a");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct PageName {
    /// Odd on the right (common practice).
    pub number: usize,
    /// Whether it is a leaf glued to the right page of this number, folded out beside it.
    pub folds_out: bool,
}

impl fmt::Display for PageName {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}{}", self.number, if self.folds_out { "a" } else { "" })
    }
}

/// The names of all pages, blank ones too.
pub(super) fn page_names(systems: &[System], first: BookletSide) -> Vec<PageName> {
    let pages = systems.last().map_or(0, |system| system.page + 1);
    let mut number = if first == BookletSide::Left { 1 } else { 0 };
    let mut names = Vec::with_capacity(pages);
    for page in 0..pages {
        let folds_out =
            systems.iter().any(|system| system.page == page && system.side == BookletSide::FoldOut);
        number += usize::from(!folds_out);
        names.push(PageName { number, folds_out });
    }
    names
}
