//! The class as a table for programs.

use crate::{ClassMeasure, HandIn, HandInOutcome};

/// A row a hand-in: name, whether it was read, measures, and a column a rule with the number of places.
#[must_use]
pub fn class_csv(hand_ins: &[HandIn<'_>], rules: &[String]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let measures =
        ClassMeasure::ALL.map(|measure| measure.key().trim_start_matches("measure-").replace('-', "_"));
    let head = ["hand_in".to_owned(), "read".to_owned(), "why_not".to_owned(), "replaced".to_owned()];
    let mut rows = vec![head.into_iter().chain(measures).chain(rules.iter().cloned()).collect::<Vec<_>>()];
    for hand_in in hand_ins {
        let mut row = vec![guarded(&hand_in.name)];
        match &hand_in.record.outcome {
            HandInOutcome::Unreadable { why } => {
                row.extend(["no".to_owned(), guarded(why), hand_in.record.replaced.to_string()]);
                row.extend(vec![String::new(); ClassMeasure::ALL.len() + rules.len()]);
            }
            HandInOutcome::Read(shown) => {
                row.extend(["yes".to_owned(), String::new(), hand_in.record.replaced.to_string()]);
                let measure = |measure: &ClassMeasure| {
                    shown.measures.get(measure).map(i64::to_string).unwrap_or_default()
                };
                row.extend(ClassMeasure::ALL.iter().map(measure));
                row.extend(
                    rules.iter().map(|rule| shown.met.get(rule).copied().unwrap_or_default().to_string()),
                );
            }
        }
        rows.push(row);
    }
    for row in rows {
        // Nothing fails that writes into memory.
        let _ = writer.write_record(row);
    }
    let bytes = writer.into_inner().unwrap_or_default();
    String::from_utf8_lossy(&bytes).into_owned()
}

/// A text that no spreadsheet takes for a formula.
fn guarded(text: &str) -> String {
    let text = arcata_xml::seen(text);
    if text.trim_start().starts_with(['=', '+', '-', '@']) { format!("'{text}") } else { text.into_owned() }
}
