//! An example for a terminal.

use std::ops::RangeInclusive;

use arcata_bow::{LineOptions, Reading};
use arcata_report::{Page, PlanView};
use arcata_review::{AtOnePlace, Finding, Piece, ReviewSettings, review};

use crate::Example;

/// Strokes that a reader looks through; of a longer example the bars around what is found are shown.
const STROKES: usize = 20;

impl Example {
    /// What the review says of the example by a rule, in a sentence, and the bow under it in text.
    #[must_use]
    pub fn text(&self, rule: &str, page: Page) -> String {
        let found = self.finding(rule);
        let mut out = String::new();
        if let Some(found) = &found {
            out.push_str(&page.fill(&page.wording().say(&found.sentence), "", ""));
            out.push('\n');
        }
        if self.lines.is_empty() {
            // All of it is plucked.
            return out;
        }
        out.push('\n');
        let bars = self.shown_bars(found.as_ref());
        let mut view = PlanView::new("", &self.score, Vec::new(), page.wording());
        for (line, plan) in self.lines.iter().zip(&self.plans) {
            let reach = self.profile.plan_settings(line.instrument).reach;
            view.add(&self.score, line, plan, &bars, &[], reach);
        }
        out.push_str(&arcata_report::lanes_text(&view, page));
        out
    }

    /// What the rule finds first.
    #[must_use]
    pub fn finding(&self, rule: &str) -> Option<Finding> {
        let options = LineOptions::default();
        let reading = Reading::new(&self.score, &self.profile, &options);
        let piece = Piece { reading: Some(&reading), ..self.piece() };
        let settings = ReviewSettings {
            only: [rule.to_owned()].into(),
            places: AtOnePlace::Apart,
            ..ReviewSettings::default()
        };
        review(&piece, &settings).into_iter().next()
    }

    fn shown_bars(&self, found: Option<&Finding>) -> RangeInclusive<u32> {
        let last = u32::try_from(self.score.bars.len()).unwrap_or(u32::MAX).saturating_sub(1);
        let strokes: usize = self.lines.iter().map(|line| line.strokes.len()).sum();
        if strokes <= STROKES {
            return 0..=last;
        }
        let within = |bars: &RangeInclusive<u32>| {
            let of = self.lines.iter().flat_map(|line| &line.strokes);
            of.filter(|stroke| bars.contains(&stroke.bar)).count() <= STROKES
        };
        let from = found.map_or(0, |found| found.place.bar.min(last));
        // Bar by bar outwards, for as long as there is room.
        let mut bars = from..=from;
        loop {
            let before = bars.start().saturating_sub(1)..=*bars.end();
            let after = *bars.start()..=(*bars.end() + 1).min(last);
            let wider = [before, after].into_iter().find(|wider| *wider != bars && within(wider));
            match wider {
                Some(wider) => bars = wider,
                None => return bars,
            }
        }
    }
}
