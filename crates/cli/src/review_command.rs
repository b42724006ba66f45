//! `arcata review`.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_analysis::Player;
use arcata_bow::plan::MarkReading;
use arcata_engrave::Engraver;
use arcata_languages::Saying;
use arcata_report::{AsideView, FileView, Outcome, ReviewView, SummaryRow, summary};
use arcata_review::{Beside, Finding, REGISTER, ReviewSettings, Severity};
use indicatif::{ParallelProgressIterator as _, ProgressBar, ProgressFinish, ProgressStyle};
use rayon::prelude::*;

use crate::args::{ReviewArguments, ReviewFormat, Weight};
use crate::failure::Failure;
use crate::{aside_file, bars, engraving, files, review_pages, studio};

struct ReviewedFile {
    view: FileView,
    row: SummaryRow,
    /// The page that was written of it.
    page: Option<PathBuf>,
}

/// What is asked of every score.
struct Request<'a> {
    arguments: &'a ReviewArguments,
    player: Player,
    settings: ReviewSettings,
    /// Draws the pages.
    engraver: Engraver,
}

pub(crate) fn run(arguments: &ReviewArguments) -> Result<ExitCode, Failure> {
    let request = Request {
        arguments,
        player: studio::player(&arguments.shared.player)?,
        settings: settings(arguments)?,
        engraver: engraving::engraver(),
    };
    let scores = files::scores(&arguments.shared.scores)?;
    let reviewed = review_all(&scores, &request)?;
    let found = reviewed.iter().any(|file| !file.view.findings.is_empty() || file.view.error.is_some());
    let unread = reviewed.iter().all(|file| file.view.error.is_some());
    let mut files = Vec::new();
    let mut rows = Vec::new();
    for file in reviewed {
        files.push(file.view);
        rows.push((file.row, file.page));
    }
    tell(arguments, &scores, files, &rows)?;
    if let Some(summary) = &arguments.summary {
        let rows: Vec<SummaryRow> = rows.into_iter().map(|(row, _)| row).collect();
        write_report(summary, &scores, &arcata_report::summary_csv(&rows))?;
    }
    Ok(if unread {
        ExitCode::from(2)
    } else if found {
        ExitCode::from(1)
    } else {
        ExitCode::SUCCESS
    })
}

/// Prints or writes what was found. Pages are written already: the terminal gets the findings and where the
/// pages are.
fn tell(
    arguments: &ReviewArguments,
    scores: &[PathBuf],
    files: Vec<FileView>,
    rows: &[(SummaryRow, Option<PathBuf>)],
) -> Result<(), Failure> {
    let to_file = arguments.out.as_ref().filter(|_| arguments.format != ReviewFormat::Html);
    // What goes into a file or a program is not read at once, and a table of findings has no row for a file without any.
    for file in &files {
        if let Some(error) = &file.error {
            let unread = Saying::new("failure-of").quoting("of", &file.file).quoting("why", error);
            files::complain(&files::wording().say(&unread));
        }
    }
    let view = ReviewView::new(files);
    let page = if to_file.is_some() { files::plain_page() } else { files::page() };
    let all_rows = || rows.iter().map(|(row, _)| row.clone()).collect::<Vec<_>>();
    let text = match arguments.format {
        ReviewFormat::Json => arcata_report::review_json(&view),
        ReviewFormat::Csv => arcata_report::findings_csv(&view),
        ReviewFormat::Html if rows.len() > 1 => arcata_report::summary_text(&all_rows(), page),
        ReviewFormat::Text if rows.len() > 1 => {
            format!(
                "{}\n{}",
                arcata_report::review_text(&view, page),
                arcata_report::summary_text(&all_rows(), page)
            )
        }
        ReviewFormat::Text | ReviewFormat::Html => arcata_report::review_text(&view, page),
    };
    let text = match arguments.format {
        ReviewFormat::Csv => text,
        _ => files::bar_word().said(&text).into_owned(),
    };
    match to_file {
        Some(out) => write_report(out, scores, &text)?,
        None if matches!(arguments.format, ReviewFormat::Json | ReviewFormat::Csv) => files::hand_out(&text),
        None => files::show_set(&text),
    }
    if arguments.format == ReviewFormat::Html {
        let written = match rows {
            [(_, page)] => page.clone(),
            _ => Some(review_pages::write_index(&folder(arguments), rows)?),
        };
        if let Some(written) = written {
            let said = Saying::new("with-engraved-music").quoting("file", written.display().to_string());
            files::say(&format!("{}\n", files::wording().say(&said)));
        }
    }
    Ok(())
}

/// Where the pages of several scores go.
fn folder(arguments: &ReviewArguments) -> PathBuf {
    arguments.out.clone().unwrap_or_else(|| PathBuf::from("reviews"))
}

/// Where the page of each score goes; nowhere unless pages are asked for.
fn page_paths(scores: &[PathBuf], arguments: &ReviewArguments) -> Result<Vec<Option<PathBuf>>, Failure> {
    if arguments.format != ReviewFormat::Html {
        return Ok(vec![None; scores.len()]);
    }
    let paths = match scores {
        [score] => vec![arguments.out.clone().unwrap_or_else(|| review_pages::usual_path(score))],
        _ => {
            files::make_folder(&folder(arguments))?;
            review_pages::paths(&folder(arguments), scores)
        }
    };
    let over = paths.iter().find(|path| scores.iter().any(|score| files::same(score, path)));
    match over {
        Some(path) => Err(Failure::SameFile { path: path.clone() }),
        None => Ok(paths.into_iter().map(Some).collect()),
    }
}

/// Writes a report, never over one of the scores.
fn write_report(out: &Path, scores: &[PathBuf], text: &str) -> Result<(), Failure> {
    if scores.iter().any(|score| files::same(score, out)) {
        return Err(Failure::SameFile { path: out.to_owned() });
    }
    Ok(arcata_files::write_whole(out, text.as_bytes())?)
}

fn settings(arguments: &ReviewArguments) -> Result<ReviewSettings, Failure> {
    let lightest = match arguments.severity {
        Weight::A => Severity::A,
        Weight::B => Severity::B,
        Weight::C => Severity::C,
        Weight::D => Severity::D,
    };
    let settings = ReviewSettings {
        off: arguments.without.iter().cloned().collect(),
        only: arguments.only.iter().cloned().collect(),
        lightest: Some(lightest),
        ..ReviewSettings::default()
    };
    if let Some(asked) = settings.unknown_rules().first() {
        let known = REGISTER.iter().map(|rule| rule.card.id).collect();
        return Err(Failure::Rule { asked: (*asked).to_owned(), known });
    }
    Ok(settings)
}

/// All files, in parallel, in the order they were named. A file that cannot be read gets its row; a
/// wrong `--part` or `--bars` for a single score stops everything.
fn review_all(scores: &[PathBuf], request: &Request<'_>) -> Result<Vec<ReviewedFile>, Failure> {
    let pages = page_paths(scores, request.arguments)?;
    if let [score] = scores {
        return match review_one(score, pages.into_iter().next().flatten(), request) {
            Ok(reviewed) => Ok(vec![reviewed]),
            Err(Failure::Read { path, why }) => Ok(vec![unreadable(&path, &why)]),
            Err(failure) => Err(failure),
        };
    }
    let bar = ProgressBar::new(scores.len() as u64).with_style(
        ProgressStyle::with_template("{bar:30} {pos}/{len} scores")
            .unwrap_or_else(|_| ProgressStyle::default_bar()),
    );
    let bar = bar.with_finish(ProgressFinish::AndClear);
    let reviewed = scores
        .par_iter()
        .zip(pages)
        .progress_with(bar)
        .map(|(score, page)| {
            review_one(score, page, request).unwrap_or_else(|failure| match failure {
                Failure::Read { path, why } => unreadable(&path, &why),
                other => unreadable(score, &other.to_string()),
            })
        })
        .collect();
    Ok(reviewed)
}

fn review_one(path: &Path, page: Option<PathBuf>, request: &Request<'_>) -> Result<ReviewedFile, Failure> {
    let Request { arguments, player, settings, engraver } = request;
    let kept = match arguments.tell_all {
        true => None,
        false => aside_file::of(path, arguments.aside.as_deref())?,
    };
    let (aside_path, aside) = kept.unzip();
    let desk = studio::open_told(path, &arguments.shared, player, MarkReading::Law, aside.as_ref())?;
    let bars = desk.bars.clone();
    let beside = beside(&arguments.beside)?;
    let settings = ReviewSettings { bars: Some(bars), aside: aside.unwrap_or_default(), ..settings.clone() };
    let reviewed = desk.snapshot().review(&beside, &settings);
    let unused = reviewed.unused(&settings);
    let wording = files::wording();
    let aside = aside_path.map(|path| {
        let held = (&reviewed.set_aside[..], &unused[..]);
        AsideView::new(&path.display().to_string(), &settings.aside, held, &wording).with_slurs(
            &settings.aside,
            &desk.slurs_without,
            &wording,
        )
    });
    let mut findings = reviewed.findings;
    if !arguments.shared.part.is_empty() {
        let chosen = bars::parts(desk.score(), &arguments.shared.part)?;
        findings.retain(|finding| finding.place.part.is_none_or(|part| chosen.contains(&part)));
    }
    let file = path.display().to_string();
    let row = row(&file, &desk, &findings);
    let lines: Vec<_> = desk.shown().map(|(line, _)| line.clone()).collect();
    let view = FileView::reviewed(&file, desk.score(), &lines, desk.assumptions(), (&findings, &wording))
        .beside(aside);
    if let Some(out) = &page {
        let html = review_pages::page(&desk, &view, &findings, &arguments.shared, engraver);
        review_pages::write(out, &files::bar_word().said(&html))?;
    }
    Ok(ReviewedFile { view, row, page })
}

/// The files of the parts that stand beside a score.
fn beside(paths: &[PathBuf]) -> Result<Vec<Beside>, Failure> {
    let open = |path: &PathBuf| {
        let score = studio::open_score(path)?.score;
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        Ok(Beside { name, score })
    };
    paths.iter().map(open).collect()
}

fn row(file: &str, desk: &studio::StudioScore, findings: &[Finding]) -> SummaryRow {
    let outcome = Outcome::Reviewed {
        title: desk.score().title.clone(),
        bars: desk.score().bars.len(),
        bowed_parts: desk.score().parts.iter().filter(|part| part.instrument.is_bowed()).count(),
        strokes: desk.shown().map(|(line, _)| line.strokes.len()).sum(),
        findings: summary::count(findings),
        problems: desk.score().problems.len(),
    };
    SummaryRow { file: file.to_owned(), outcome }
}

fn unreadable(path: &Path, why: &str) -> ReviewedFile {
    let file = path.display().to_string();
    ReviewedFile {
        view: FileView::unreadable(&file, why),
        row: SummaryRow { file, outcome: Outcome::Unreadable { error: why.to_owned() } },
        page: None,
    }
}
