//! `arcata marks`.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::ExitCode;

use arcata_analysis::Player;
use arcata_bow::Profile;
use arcata_bow::audit::{AuditedMark, MarkClass, MarkReason, audit};
use arcata_bow::plan::MarkReading;
use arcata_languages::Saying;
use arcata_layer::remove_marks;
use arcata_report::MarksView;
use arcata_score::NoteId;

use crate::args::{Format, MarksArguments, Surplus};
use crate::failure::Failure;
use crate::score_file::ScoreTarget;
use crate::studio::StudioScore;
use crate::{bars, files, studio};

pub(crate) fn run(arguments: &MarksArguments) -> Result<ExitCode, Failure> {
    let player = studio::player(&arguments.shared.player)?;
    let scores = files::scores(&arguments.shared.scores)?;
    if arguments.write.is_some() && scores.len() != 1 {
        return Err(Failure::OneScore { count: scores.len() });
    }
    let written = [&arguments.out, &arguments.write];
    for out in written.into_iter().flatten() {
        if scores.iter().any(|score| files::same(score, out)) {
            return Err(Failure::SameFile { path: out.clone() });
        }
    }
    if let (Some(out), Some(write)) = (&arguments.out, &arguments.write)
        && (out == write || files::same(out, write))
    {
        return Err(Failure::TwoInOne { path: out.clone() });
    }
    if let Some(write) = &arguments.write {
        ScoreTarget::of(write)?;
    }
    let mut views = Vec::new();
    let mut unread = Vec::new();
    for score in &scores {
        match look(score, arguments, &player) {
            Ok((desk, marks)) => {
                if let Some(out) = &arguments.write {
                    write_without(&desk, &marks, &arguments.take, out)?;
                }
                views.push(view(score, &desk, &marks, &player.profile));
            }
            Err(failure @ Failure::Read { .. }) => unread.push(failure),
            Err(failure) => return Err(failure),
        }
    }
    show(&views, arguments)?;
    for failure in &unread {
        files::complain(&failure.to_string());
    }
    Ok(if unread.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(2) })
}

/// The score on the desk, and its marks in the bars asked for.
fn look(
    score: &Path,
    arguments: &MarksArguments,
    player: &Player,
) -> Result<(StudioScore, Vec<AuditedMark>), Failure> {
    let desk = studio::open(score, &arguments.shared, player, MarkReading::Law)?;
    let bars = desk.bars.clone();
    let parts = bars::parts(desk.score(), &arguments.shared.part)?;
    let mut marks = audit(desk.score(), &parts, desk.lines(), desk.plans(), &player.profile);
    marks.retain(|mark| {
        let note = desk.score().parts.get(mark.part).and_then(|part| part.notes.get(mark.note.0 as usize));
        note.is_some_and(|note| bars.contains(&note.bar))
    });
    Ok((desk, marks))
}

fn view(score: &Path, desk: &StudioScore, marks: &[AuditedMark], profile: &Profile) -> MarksView {
    let bars = &desk.bars;
    let file = score.display().to_string();
    let lines = (desk.lines(), desk.plans());
    let view = MarksView::new(&file, desk.score(), lines, marks, (profile, &files::wording()), |bar| {
        bars.contains(&bar)
    });
    MarksView { assumptions: desk.assumptions(), ..view }
}

fn show(views: &[MarksView], arguments: &MarksArguments) -> Result<(), Failure> {
    let page = if arguments.out.is_some() { files::plain_page() } else { files::page() };
    let text = match arguments.format {
        Format::Text => arcata_report::marks_text(views, page),
        Format::Json => arcata_report::marks_json(views),
        Format::Csv => arcata_report::marks_csv(views),
    };
    let text = match arguments.format {
        Format::Csv => text,
        Format::Text | Format::Json => files::bar_word().said(&text).into_owned(),
    };
    match &arguments.out {
        Some(out) => arcata_files::write_whole(out, text.as_bytes())?,
        None if arguments.format == Format::Text => files::show_set(&text),
        None => files::hand_out(&text),
    }
    Ok(())
}

/// Whether a mark is among those to take out.
fn is_taken(mark: &AuditedMark, take: &[Surplus]) -> bool {
    match mark.reason.class() {
        MarkClass::Obvious => take.contains(&Surplus::Obvious),
        MarkClass::Contradictory => {
            take.contains(&Surplus::Contradictory) && mark.reason != MarkReason::BothBows
        }
        MarkClass::Needed | MarkClass::Effect => false,
    }
}

/// Writes the score without the surplus marks, everything else byte for byte as it was.
fn write_without(
    desk: &StudioScore,
    marks: &[AuditedMark],
    take: &[Surplus],
    out: &Path,
) -> Result<(), Failure> {
    let taken: BTreeSet<(usize, NoteId)> =
        marks.iter().filter(|mark| is_taken(mark, take)).map(|mark| (mark.part, mark.note)).collect();
    let failed = |why: String| Failure::Marks { why };
    let document = desk.file().document();
    let edits = remove_marks(document, desk.score(), |part, note| taken.contains(&(part, note)))
        .map_err(|error| failed(files::told(&error.to_string())))?;
    let bytes = document.apply(&edits).map_err(|error| failed(files::told(&error.to_string())))?;
    ScoreTarget::of(out)?.write(desk.file(), &bytes)?;
    let done = Saying::new("marks-taken-out").with("count", taken.len());
    files::complain(&files::wording().say(&done.quoting("path", out.display().to_string())));
    Ok(())
}
