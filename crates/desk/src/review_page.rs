//! The review as a page of its own, with the pictures of each place.

use arcata_engrave::Engraver;
use arcata_export::ReviewExport;
use arcata_languages::{Language, Saying, Wording};
use arcata_report::{BarWord, FileView};
use arcata_review::Finding;

use crate::desk::Desk;
use crate::state::SessionState;

/// The page, HTML.
pub(crate) fn review_page(
    (file, desk, state): (&str, &Desk, &SessionState),
    findings: &[Finding],
    (engraver, wording): (&Engraver, &Wording),
) -> String {
    let (score, lines) = (desk.base.score(), desk.base.lines());
    let assumptions = desk.base.assumptions(wording);
    let view = FileView::reviewed(file, score, lines, assumptions, (findings, wording));
    let calculated = match state.profile.as_str() {
        "amateur" => "calculated-amateur",
        "student" => "calculated-student",
        _ => "calculated-professional",
    };
    let style = Saying::new("calculated-style").quoting("style", state.style.name());
    let shown: Vec<usize> = (0..lines.len()).collect();
    let export = ReviewExport {
        snapshot: &desk.snapshot,
        view: &view,
        findings,
        shown: &shown,
        settings: vec![wording.say(&Saying::new(calculated)), wording.say(&style)],
        engraver,
        // The examples of all rules would make the browser's module half as large again.
        examples: &|_| None,
        wording,
    };
    let html = export.html();
    let word = match wording.language {
        Language::English => BarWord::named(&wording.words.bar),
        _ => BarWord::Bar,
    };
    word.said(&html).into_owned()
}
