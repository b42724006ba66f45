//! `arcata review --format html`: a page a score, and a page of the folder where there are several.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use arcata_bow::{Line, Plan};
use arcata_engrave::Engraver;
use arcata_examples::Example;
use arcata_export::{ReviewExport, drawn_with_words};
use arcata_files::FileError;
use arcata_languages::{Saying, Wording};
use arcata_report::{FileView, RuleExample, SummaryRow, folder_html};
use arcata_review::Finding;

use crate::args::SharedArguments;
use crate::failure::Failure;
use crate::files;
use crate::studio::StudioScore;

/// What every page that this program makes says of itself: only such files are written over.
const OURS: &str = r#"<meta name="generator" content="Arcata">"#;

/// The page of one score.
pub(crate) fn page(
    desk: &StudioScore,
    view: &FileView,
    findings: &[Finding],
    shared: &SharedArguments,
    engraver: &Engraver,
) -> String {
    let wording = files::wording();
    let export = ReviewExport {
        snapshot: desk.snapshot(),
        view,
        findings,
        shown: &desk.shown,
        settings: settings(shared, &wording),
        engraver,
        examples: &|rule| example(rule, engraver, &wording),
        wording: &wording,
    };
    export.html()
}

/// A rule's example, engraved, and what the review says of it.
fn example(rule: &str, engraver: &Engraver, wording: &Wording) -> Option<RuleExample> {
    let example = Example::of_rule(rule)?;
    let picture = example.picture(engraver).ok()?;
    let bowed: Vec<(&Line, &Plan)> =
        example.lines.iter().zip(example.plans.iter().map(AsRef::as_ref)).collect();
    let drawn = drawn_with_words(&picture, (&example.score, wording), &bowed);
    let sentence = example.finding(rule).map_or_else(String::new, |found| wording.say(&found.sentence));
    Some(RuleExample { sentence, drawn })
}

fn settings(shared: &SharedArguments, wording: &Wording) -> Vec<String> {
    let mut said = vec![wording.say(&match shared.player.style.profile.as_str() {
        "professional" => Saying::new("calculated-professional"),
        "amateur" => Saying::new("calculated-amateur"),
        "student" => Saying::new("calculated-student"),
        file => Saying::new("calculated-file").quoting("file", file),
    })];
    if let Some(style) = shared.player.style.style {
        said.push(wording.say(&Saying::new("calculated-style").quoting("style", style.name())));
    }
    if shared.apart {
        said.push(wording.word("calculated-apart"));
    }
    said
}

/// Where the page of a single score goes unless --out says otherwise: into the folder one is in, named
/// after the score.
pub(crate) fn usual_path(score: &Path) -> PathBuf {
    let stem = score.file_stem().unwrap_or_default().to_string_lossy();
    PathBuf::from(format!("{stem}-review.html"))
}

/// Writes a page. A file of that name that this program has not made is left alone.
pub(crate) fn write(out: &Path, page: &str) -> Result<(), Failure> {
    if out.exists() && !files::read_text(out).is_ok_and(|text| text.contains(OURS)) {
        return Err(Failure::File(FileError::Write {
            path: out.to_owned(),
            why: files::wording().word("failure-not-a-review"),
        }));
    }
    Ok(arcata_files::write_whole(out, page.as_bytes())?)
}

/// Where the pages of several scores go in a folder, in their order.
pub(crate) fn paths(folder: &Path, scores: &[PathBuf]) -> Vec<PathBuf> {
    let mut taken = BTreeSet::from(["index.html".to_owned()]);
    scores.iter().map(|score| folder.join(free_name(score, &mut taken))).collect()
}

/// Writes the page that leads to the others: a row a score, with the page that was written of it.
pub(crate) fn write_index(folder: &Path, rows: &[(SummaryRow, Option<PathBuf>)]) -> Result<PathBuf, Failure> {
    let address_of =
        |path: &PathBuf| files::address("./", &path.file_name().unwrap_or_default().to_string_lossy());
    let rows: Vec<(SummaryRow, Option<String>)> =
        rows.iter().map(|(row, path)| (row.clone(), path.as_ref().map(address_of))).collect();
    let index = folder.join("index.html");
    write(&index, &folder_html(&rows, &files::wording()))?;
    Ok(index)
}

/// A name for the page of a score that no other score of the folder has.
fn free_name(score: &Path, taken: &mut BTreeSet<String>) -> String {
    let usual = usual_path(score).display().to_string();
    let stem = usual.trim_end_matches(".html");
    let names = std::iter::once(usual.clone()).chain((2..).map(|number| format!("{stem}-{number}.html")));
    for name in names {
        if taken.insert(name.clone()) {
            return name;
        }
    }
    usual
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_scores_of_one_name_get_two_pages() {
        let mut taken = BTreeSet::new();
        assert_eq!(free_name(Path::new("a/tide.musicxml"), &mut taken), "tide-review.html");
        assert_eq!(free_name(Path::new("b/tide.mxl"), &mut taken), "tide-review-2.html");
    }

    #[test]
    fn any_name_can_be_a_link() {
        assert_eq!(files::address("./", "für 2 #1.html"), "./f%C3%BCr%202%20%231.html");
    }
}
