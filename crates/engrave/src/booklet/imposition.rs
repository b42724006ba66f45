//! A part as sheets to be folded and stitched: two pages side by side on each side of a sheet.
//!
//! Sheets are printed on both sides (turned over on the short edge), laid into each other, folded in the middle and stitched
//! through the fold. Page 1 is the front: where the music begins on page 2, that is a cover. Pages that fold out cannot be
//! part of a folded sheet; they stand by themselves behind the sheets.

use std::fmt::Write as _;

use super::{Booklet, PageName};
use crate::Picture;
use crate::sheet::rounded;

/// The mark at the head and foot of a fold, mm: short enough to stay in the margin (rule of thumb).
const FOLD_MARK: f64 = 4.0;

/// A part on sheets.
#[derive(Clone, Debug, PartialEq)]
pub struct FoldedSheets {
    /// The sides of the sheets, outermost sheet first, front and back.
    pub sides: Vec<Picture>,
    /// Pages that fold out, each on a sheet of its own, with the page that it is glued to.
    pub folding_out: Vec<(PageName, Picture)>,
}

/// The pages (numbers from 1) on the sides of the sheets of a booklet, left and right; as many as fill whole sheets.
///
/// ```
/// use arcata_engrave::sheet_sides;
/// assert_eq!(sheet_sides(3), [(4, 1), (2, 3)]);
/// assert_eq!(sheet_sides(8), [(8, 1), (2, 7), (6, 3), (4, 5)]);
/// ```
#[must_use]
pub fn sheet_sides(pages: usize) -> Vec<(usize, usize)> {
    let all = pages.div_ceil(4) * 4;
    let of_a_sheet = |sheet: usize| {
        let (outer, inner) = (2 * sheet + 1, all - 2 * sheet);
        [(inner, outer), (outer + 1, inner - 1)]
    };
    (0..all / 4).flat_map(of_a_sheet).collect()
}

impl Booklet {
    /// The pages on sheets.
    #[must_use]
    pub fn folded_sheets(&self) -> FoldedSheets {
        let named = || self.names.iter().zip(&self.pages);
        let page = |number: usize| {
            let own = named().find(|(name, _)| name.number == number && !name.folds_out);
            own.map(|(_, page)| page).or_else(|| self.cover.as_ref().filter(|_| number == 1))
        };
        let last = self.names.iter().map(|name| name.number).max().unwrap_or(0);
        let sides =
            sheet_sides(last).into_iter().filter_map(|(left, right)| self.side(page(left), page(right)));
        let folding_out = named().filter(|(name, _)| name.folds_out);
        FoldedSheets {
            sides: sides.collect(),
            folding_out: folding_out.map(|(name, page)| (*name, page.clone())).collect(),
        }
    }

    fn side(&self, left: Option<&Picture>, right: Option<&Picture>) -> Option<Picture> {
        let like = self.pages.first()?;
        let (width, height) = (like.width, like.height);
        let mut content = String::new();
        for (page, x) in [(left, 0.0), (right, width)] {
            let Some(page) = page else { continue };
            let _ = write!(content, r#"<g transform="translate({} 0)">{}</g>"#, rounded(x), page.content);
        }
        let _ = write!(
            content,
            r#"<path class="fold" d="M{x} 0V{FOLD_MARK}M{x} {}V{}" stroke="currentColor" stroke-width="0.1" fill="none"/>"#,
            rounded(height - FOLD_MARK),
            rounded(height),
            x = rounded(width)
        );
        Some(Picture { title: like.title.clone(), content, width: 2.0 * width, height })
    }
}
