//! What the command about parts says when it has made them.

use arcata_bow::RealTime;
use arcata_engrave::{PageEndKind, advice_said, page_end_said, remark_said};
use arcata_languages::{Argument, Saying};
use arcata_prepare::PartPaper;

use crate::layer_words::say;
use crate::parts_command::StitchedSheets;

/// Bars that are named one by one at most.
const MOST_BARS: usize = 12;

/// What is said of a part, line by line with how far each stands in, and whether the part is as it should be.
pub(crate) struct PartTold {
    pub(crate) lines: Vec<String>,
    pub(crate) complete: bool,
}

impl PartTold {
    fn add(&mut self, depth: usize, saying: &Saying) {
        self.lines.push(format!("{}{}", "  ".repeat(depth), say(saying)));
    }

    /// How its pages end, what would mend quick turns, what its player should know.
    pub(crate) fn of(paper: &PartPaper, sheets: Option<&StitchedSheets>, needed: RealTime) -> Self {
        let booklet = &paper.booklet;
        let mut told = Self { lines: Vec::new(), complete: true };
        if let Some(sheets) = sheets {
            let tenths = |length: f64| Argument::Text(format!("{length:.0}"));
            let (width, height) = sheets.size;
            told.lines.push(format!("  {}", sheets.path.display()));
            let said = Saying::new("part-sheets").with("count", sheets.count);
            told.add(2, &said.with("width", tenths(width)).with("height", tenths(height)));
            if !sheets.folding_out.is_empty() {
                let pages = sheets.folding_out.join(", ");
                told.add(2, &Saying::new("part-glued").quoting("pages", pages));
            }
        }
        for turn in &booklet.turns {
            told.complete &= turn.kind != PageEndKind::Rushed;
            told.add(1, &page_end_said(turn, needed));
        }
        for (depth, saying) in booklet.advice.iter().flat_map(advice_said) {
            told.add(depth + 1, &saying);
        }
        for (key, count) in [("part-entered", booklet.entered), ("part-cues", booklet.cues)] {
            if count > 0 {
                told.add(1, &Saying::new(key).with("count", count));
            }
        }
        for remark in &booklet.remarks {
            let (saying, is_trouble) = remark_said(remark);
            told.complete &= !is_trouble;
            told.add(1, &saying);
        }
        told
    }
}

/// Which bars are marked in the margin; `None` where there was no part to compare with.
pub(crate) fn changed_said(bars: Option<Vec<String>>) -> Saying {
    match bars {
        None => Saying::new("part-new"),
        Some(bars) if bars.is_empty() => Saying::new("part-not-changed"),
        Some(bars) => {
            let named = bars.iter().take(MOST_BARS).cloned().collect::<Vec<_>>().join(", ");
            let shown = match bars.len().checked_sub(MOST_BARS).filter(|more| *more > 0) {
                None => Argument::Text(named),
                Some(more) => {
                    Saying::new("part-changed-and-more").quoting("bars", named).with("more", more).into()
                }
            };
            Saying::new("part-changed").with("count", bars.len()).with("bars", shown)
        }
    }
}
