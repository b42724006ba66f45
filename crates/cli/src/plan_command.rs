//! `arcata plan`.

use std::path::Path;
use std::process::ExitCode;

use arcata_bow::Profile;
use arcata_bow::plan::{MarkReading, alternatives, least_marks};
use arcata_layer::{BowAddition, add_marks};
use arcata_report::PlanView;

use crate::args::{Format, Marks, PlanArguments};
use crate::failure::Failure;
use crate::{bars, files, studio, writing};

pub(crate) fn run(arguments: &PlanArguments) -> Result<ExitCode, Failure> {
    let profile = studio::profile(&arguments.shared.profile)?;
    let scores = files::scores(&arguments.shared.scores)?;
    let marks = if arguments.hide_printed { MarkReading::Hidden } else { MarkReading::Law };
    if let (Some(kind), Some(out)) = (arguments.marks, &arguments.out) {
        let [score] = scores.as_slice() else { return Err(Failure::OneScore { count: scores.len() }) };
        return write_marked(score, out, kind, arguments, &profile, marks);
    }
    let mut views = Vec::new();
    let mut unread = Vec::new();
    for score in &scores {
        match view(score, arguments, &profile, marks) {
            Ok(view) => views.push(view),
            Err(failure @ Failure::Read { .. }) => unread.push(failure),
            Err(failure) => return Err(failure),
        }
    }
    let page = if arguments.out.is_some() { arcata_report::Page::default() } else { files::page() };
    let text = match arguments.shared.format {
        Format::Text => arcata_report::plan_text(&views, page),
        Format::Json => arcata_report::plan_json(&views),
        Format::Csv => arcata_report::strokes_csv(&views),
    };
    match &arguments.out {
        Some(out) if scores.iter().any(|score| files::same(score, out)) => {
            return Err(Failure::SameFile { path: out.clone() });
        }
        Some(out) => writing::write_whole(out, text.as_bytes())?,
        None => files::show(&text),
    }
    for failure in &unread {
        files::complain(&failure.to_string());
    }
    Ok(if unread.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(2) })
}

fn view(
    score: &Path,
    arguments: &PlanArguments,
    profile: &Profile,
    marks: MarkReading,
) -> Result<PlanView, Failure> {
    let desk = studio::open(score, &arguments.shared, profile, marks)?;
    let bars = bars::bars(&desk.score, arguments.shared.bars.as_deref())?;
    let mut view = PlanView::new(&score.display().to_string(), &desk.score, desk.assumptions.clone());
    for (line, plan) in desk.lines.iter().zip(&desk.plans) {
        let first = line.strokes.partition_point(|stroke| stroke.bar < *bars.start());
        let last = line.strokes.partition_point(|stroke| stroke.bar <= *bars.end());
        let others = if arguments.alternatives > 0 && first < last {
            let count = usize::from(arguments.alternatives) + 1;
            let mut found = alternatives(line, &studio::settings(line, profile, marks), first..last, count);
            found.drain(..1.min(found.len()));
            found
        } else {
            Vec::new()
        };
        let reach = studio::settings(line, profile, marks).reach;
        view.add(&desk.score, line, plan, &bars, &others, reach);
    }
    Ok(view)
}

/// Writes the score with the plan's marks, everything else byte for byte as it was.
fn write_marked(
    path: &Path,
    out: &Path,
    kind: Marks,
    arguments: &PlanArguments,
    profile: &Profile,
    marks: MarkReading,
) -> Result<ExitCode, Failure> {
    if files::same(path, out) {
        return Err(Failure::SameFile { path: out.to_owned() });
    }
    let desk = studio::open(path, &arguments.shared, profile, marks)?;
    let bars = bars::bars(&desk.score, arguments.shared.bars.as_deref())?;
    let mut additions = Vec::new();
    for (line, plan) in desk.lines.iter().zip(&desk.plans) {
        let chosen: Vec<usize> = match kind {
            Marks::All => (0..plan.strokes.len()).collect(),
            Marks::Least => {
                let reach = studio::settings(line, profile, marks).reach;
                let mut strokes: Vec<usize> =
                    least_marks(line, plan, reach).iter().map(|mark| mark.stroke).collect();
                strokes.dedup();
                strokes
            }
        };
        for index in chosen {
            let stroke = &line.strokes[index];
            if !bars.contains(&stroke.bar) {
                continue;
            }
            if let Some(note) = stroke.notes.first() {
                additions.push(BowAddition {
                    part: line.part,
                    note: *note,
                    direction: plan.strokes[index].direction,
                });
            }
        }
    }
    let failed = |why: String| Failure::Marks { why };
    let edits = add_marks(desk.file.document(), &desk.score, &additions)
        .map_err(|error| failed(error.to_string()))?;
    let bytes = desk.file.document().apply(&edits).map_err(|error| failed(error.to_string()))?;
    let bytes = desk.file.write(&bytes).map_err(|error| failed(error.to_string()))?;
    writing::write_whole(out, &bytes)?;
    files::complain(&format!("{} marks written to {}", edits.edits().len(), out.display()));
    Ok(ExitCode::SUCCESS)
}
