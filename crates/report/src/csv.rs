//! Tables for spreadsheets.

use arcata_xml::seen;

use crate::{MarksView, Outcome, PlanView, ReviewView, SummaryRow};

/// A cell that a spreadsheet would take for a formula is quoted, so that a score's title cannot act, not even behind blanks.
pub(crate) fn cell(text: &str) -> String {
    let text = seen(text);
    if text.trim_start().starts_with(['=', '+', '-', '@']) { format!("'{text}") } else { text.into_owned() }
}

fn table(header: &[&str], rows: impl Iterator<Item = Vec<String>>) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    // Writing to memory does not fail.
    let _ = writer.write_record(header);
    for row in rows {
        let _ = writer.write_record(row.iter().map(|text| cell(text)));
    }
    writer.into_inner().ok().and_then(|bytes| String::from_utf8(bytes).ok()).unwrap_or_default()
}

/// One row a finding.
#[must_use]
pub fn findings_csv(view: &ReviewView) -> String {
    let header = [
        "file",
        "severity",
        "rule",
        "section",
        "movement",
        "bar",
        "beat",
        "count",
        "also in bars",
        "sentence",
        "evidence",
        "assumed",
        "reasons",
        "proposals",
    ];
    let rows = view.files.iter().flat_map(|file| {
        file.findings.iter().map(|finding| {
            let evidence: Vec<String> = finding
                .evidence
                .iter()
                .map(|evidence| {
                    format!("{}: {} {}", evidence.name, evidence.value, evidence.unit).trim_end().to_owned()
                })
                .collect();
            let further: Vec<&str> = finding.further.iter().map(|place| place.bar.as_str()).collect();
            let proposals: Vec<&str> =
                finding.proposals.iter().map(|proposal| proposal.sentence.as_str()).collect();
            let reasons: Vec<String> = finding
                .reasons
                .iter()
                .map(|reason| format!("{}: {}", reason.rule, reason.sentence))
                .collect();
            vec![
                file.file.clone(),
                finding.severity.clone(),
                finding.rule.to_owned(),
                finding.place.section.clone(),
                finding.place.movement.clone().unwrap_or_default(),
                finding.place.bar.clone(),
                finding.place.beat.clone(),
                finding.count.to_string(),
                further.join(" "),
                finding.sentence.clone(),
                evidence.join("; "),
                finding.assumptions.join(" "),
                reasons.join(" | "),
                proposals.join(" | "),
            ]
        })
    });
    table(&header, rows)
}

/// One row a stroke.
#[must_use]
pub fn strokes_csv(views: &[PlanView]) -> String {
    let header = [
        "file",
        "line",
        "movement",
        "bar",
        "beat",
        "length",
        "seconds",
        "notes",
        "kind",
        "direction",
        "link",
        "start",
        "end",
        "printed",
        "cost",
        "sure",
    ];
    let rows = views.iter().flat_map(|view| {
        view.lines.iter().flat_map(move |line| {
            line.strokes.iter().map(move |stroke| {
                vec![
                    view.file.clone(),
                    line.name.clone(),
                    line.movement.clone().unwrap_or_default(),
                    stroke.bar.clone(),
                    stroke.beat.clone(),
                    stroke.length.clone(),
                    format!("{:.3}", stroke.seconds),
                    stroke.notes.to_string(),
                    stroke.kind.to_owned(),
                    stroke.direction.to_owned(),
                    stroke.link.to_owned(),
                    stroke.start.to_string(),
                    stroke.end.to_string(),
                    stroke.printed.unwrap_or_default().to_owned(),
                    stroke.cost.values().sum::<i64>().to_string(),
                    stroke.sure.map(|sure| sure.to_string()).unwrap_or_default(),
                ]
            })
        })
    });
    table(&header, rows)
}

/// One row a line and downbeat.
#[must_use]
pub fn downbeats_csv(views: &[PlanView]) -> String {
    let header = ["file", "movement", "bar", "bar ordinal", "line", "does", "unspoken"];
    let rows = views.iter().flat_map(|view| {
        let table = &view.downbeats;
        table.bars.iter().flat_map(move |bar| {
            table.lines.iter().zip(&bar.lines).map(move |(line, does)| {
                let unspoken = if bar.unspoken { "yes" } else { "no" };
                let movement = bar.movement.as_deref().unwrap_or_default();
                [&view.file, movement, &bar.bar, &bar.bar_ordinal.to_string(), line, *does, unspoken]
                    .map(str::to_owned)
                    .to_vec()
            })
        })
    });
    table(&header, rows)
}

/// One row a printed mark.
#[must_use]
pub fn marks_csv(views: &[MarksView]) -> String {
    let header = ["file", "part", "movement", "bar", "beat", "direction", "class", "reason"];
    let rows = views.iter().flat_map(|view| {
        view.parts.iter().flat_map(move |part| {
            part.printed.iter().map(move |mark| {
                vec![
                    view.file.clone(),
                    part.name.clone(),
                    mark.movement.clone().unwrap_or_default(),
                    mark.bar.clone(),
                    mark.beat.clone(),
                    mark.direction.to_owned(),
                    mark.class.to_owned(),
                    mark.reason.clone(),
                ]
            })
        })
    });
    table(&header, rows)
}

/// One row a file.
#[must_use]
pub fn summary_csv(rows: &[SummaryRow]) -> String {
    let header = ["file", "title", "bars", "bowed parts", "strokes", "A", "B", "C", "D", "problems", "error"];
    let rows = rows.iter().map(|row| match &row.outcome {
        Outcome::Reviewed { title, bars, bowed_parts, strokes, findings, problems } => {
            let mut cells = vec![row.file.clone(), title.clone().unwrap_or_default()];
            cells.extend([*bars, *bowed_parts, *strokes].map(|number| number.to_string()));
            cells.extend(findings.map(|number| number.to_string()));
            cells.extend([problems.to_string(), String::new()]);
            cells
        }
        Outcome::Unreadable { error } => {
            let mut cells = vec![row.file.clone()];
            cells.extend(std::iter::repeat_n(String::new(), 9));
            cells.push(error.clone());
            cells
        }
    });
    table(&header, rows)
}
