//! `arcata review --format html`: a page a score, and a page of the folder where there are several.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use arcata_bow::together::downbeats;
use arcata_bow::{Line, Plan};
use arcata_engrave::{Engraver, music_style_sheet};
use arcata_files::FileError;
use arcata_languages::{Language, Saying, Texts, Wording};
use arcata_report::{
    FileView, ReportPage, RuleExplanation, RulePage, Strip, SummaryRow, folder_html, review_html,
};
use arcata_review::{Finding, rule};

use crate::args::SharedArguments;
use crate::failure::Failure;
use crate::files;
use crate::review_pictures::{Scenes, example};
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
    let scenes = Scenes::new(desk, engraver, &files::wording());
    let pictures = scenes.draw(findings);
    let music_in_text = pictures.iter().any(|pictures| {
        let all = pictures.now.iter().chain(pictures.proposals.iter().flatten());
        all.into_iter().any(|drawn| drawn.svg.contains(r#"font-family="Bravura""#))
    });
    let wording = files::wording();
    let texts = wording.texts();
    let rules: BTreeSet<&str> = findings.iter().flat_map(Finding::rules).collect();
    let rules = rules.into_iter().filter_map(rule).map(|rule| RulePage {
        rule: rule.card.id.to_owned(),
        title: texts.rule(rule.card.id).map_or(rule.card.title.to_owned(), |text| text.title),
        page: rule.page(),
        example: example(rule.card.id, engraver),
        explanation: explanation(rule.card.id, texts),
    });
    let (lines, plans): (Vec<Line>, Vec<&Plan>) =
        desk.shown().map(|(line, plan)| (line.clone(), plan)).unzip();
    review_html(&ReportPage {
        view,
        strip: Strip::new(desk.score(), &lines, &downbeats(desk.score(), &lines, &plans)),
        settings: settings(shared, &wording),
        yardstick: desk.snapshot().ground().config.player.profile.weight("downbeat").unwrap_or_default(),
        rules: rules.collect(),
        pictures,
        wording: &wording,
        fonts: if music_in_text { music_style_sheet().to_owned() } else { String::new() },
    })
}

fn explanation(rule: &str, texts: &Texts) -> Option<RuleExplanation> {
    if texts.language() == Language::English {
        return None;
    }
    let page = texts.rule_page(rule, None)?;
    Some(RuleExplanation {
        language: texts.language().code().to_owned(),
        text: format!("{page}\n{}\n", texts.word("english-only")),
    })
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
