//! `arcata review`.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_bow::Profile;
use arcata_bow::plan::MarkReading;
use arcata_report::{FileView, Outcome, ReviewView, SummaryRow, summary};
use arcata_review::{Finding, Piece, REGISTER, ReviewSettings, Severity, review};
use indicatif::{ParallelProgressIterator as _, ProgressBar, ProgressFinish, ProgressStyle};
use rayon::prelude::*;

use crate::args::{Format, ReviewArguments, Weight};
use crate::failure::Failure;
use crate::{bars, files, studio, writing};

struct Reviewed {
    view: FileView,
    row: SummaryRow,
}

pub(crate) fn run(arguments: &ReviewArguments) -> Result<ExitCode, Failure> {
    let profile = studio::profile(&arguments.shared.profile)?;
    let settings = settings(arguments)?;
    let scores = files::scores(&arguments.shared.scores)?;
    let reviewed = review_all(&scores, arguments, &profile, &settings)?;
    let found = reviewed.iter().any(|file| !file.view.findings.is_empty() || file.view.error.is_some());
    let unread = reviewed.iter().all(|file| file.view.error.is_some());
    let (files, rows): (Vec<FileView>, Vec<SummaryRow>) =
        reviewed.into_iter().map(|file| (file.view, file.row)).unzip();
    if arguments.format == Format::Csv {
        // A table of findings has no row for a file without any.
        for file in &files {
            if let Some(error) = &file.error {
                files::complain(&format!("{}: {error}", file.file));
            }
        }
    }
    let view = ReviewView::new(files);
    let page = if arguments.out.is_some() { arcata_report::Page::default() } else { files::page() };
    let mut text = match arguments.format {
        Format::Text => arcata_report::review_text(&view, page),
        Format::Json => arcata_report::review_json(&view),
        Format::Csv => arcata_report::findings_csv(&view),
    };
    if arguments.format == Format::Text && rows.len() > 1 {
        text.push('\n');
        text.push_str(&arcata_report::summary_text(&rows, page));
    }
    match &arguments.out {
        Some(out) => write_report(out, &scores, &text)?,
        None => files::show(&text),
    }
    if let Some(summary) = &arguments.summary {
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

/// Writes a report, never over one of the scores.
fn write_report(out: &Path, scores: &[PathBuf], text: &str) -> Result<(), Failure> {
    if scores.iter().any(|score| files::same(score, out)) {
        return Err(Failure::SameFile { path: out.to_owned() });
    }
    writing::write_whole(out, text.as_bytes())
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
fn review_all(
    scores: &[PathBuf],
    arguments: &ReviewArguments,
    profile: &Profile,
    settings: &ReviewSettings,
) -> Result<Vec<Reviewed>, Failure> {
    if let [score] = scores {
        return match review_one(score, arguments, profile, settings) {
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
        .progress_with(bar)
        .map(|score| {
            review_one(score, arguments, profile, settings).unwrap_or_else(|failure| match failure {
                Failure::Read { path, why } => unreadable(&path, &why),
                other => unreadable(score, &other.to_string()),
            })
        })
        .collect();
    Ok(reviewed)
}

fn review_one(
    path: &Path,
    arguments: &ReviewArguments,
    profile: &Profile,
    settings: &ReviewSettings,
) -> Result<Reviewed, Failure> {
    let desk = studio::open(path, &arguments.shared, profile, MarkReading::Law)?;
    let bars = bars::bars(&desk.score, arguments.shared.bars.as_deref())?;
    let piece = Piece {
        document: Some(desk.file.document()),
        score: &desk.score,
        lines: &desk.lines,
        plans: &desk.plans,
        profile,
    };
    let settings = ReviewSettings { bars: Some(bars), ..settings.clone() };
    let mut findings = review(&piece, &settings);
    if !arguments.shared.part.is_empty() {
        let chosen = bars::parts(&desk.score, &arguments.shared.part)?;
        findings.retain(|finding| finding.place.part.is_none_or(|part| chosen.contains(&part)));
    }
    let file = path.display().to_string();
    let row = row(&file, &desk, &findings);
    let lines: Vec<_> = desk.shown().map(|(line, _)| line.clone()).collect();
    let view = FileView::reviewed(&file, &desk.score, &lines, desk.assumptions, &findings);
    Ok(Reviewed { view, row })
}

fn row(file: &str, desk: &studio::Desk, findings: &[Finding]) -> SummaryRow {
    let outcome = Outcome::Reviewed {
        title: desk.score.title.clone(),
        bars: desk.score.bars.len(),
        bowed_parts: desk.score.parts.iter().filter(|part| part.instrument.is_bowed()).count(),
        strokes: desk.shown().map(|(line, _)| line.strokes.len()).sum(),
        findings: summary::count(findings),
        problems: desk.score.problems.len(),
    };
    SummaryRow { file: file.to_owned(), outcome }
}

fn unreadable(path: &Path, why: &str) -> Reviewed {
    let file = path.display().to_string();
    Reviewed {
        view: FileView::unreadable(&file, why),
        row: SummaryRow { file, outcome: Outcome::Unreadable { error: why.to_owned() } },
    }
}
