//! The page of a folder of scores: a row a score.

use maud::html;

use super::finding::sign;
use super::page::{WEIGHTS, document};
use crate::{Outcome, SummaryRow};

/// A table of scores, each with the address of its own page where it has one.
#[must_use]
pub fn folder_html(rows: &[(SummaryRow, Option<String>)]) -> String {
    let body = html! {
        header.head { h1 { "Scores reviewed" } p.file { (rows.len()) @if rows.len() == 1 { " score" } @else { " scores" } } }
        main {
            div.wide tabindex="0" role="region" aria-label="Scores" {
                table {
                    thead {
                        tr {
                            th scope="col" { "Score" } th scope="col" { "Title" } th scope="col" { "Bars" }
                            th scope="col" { "Bowed parts" } th scope="col" { "Strokes" }
                            @for (letter, meaning) in WEIGHTS {
                                th scope="col" title=(meaning) { (sign(letter)) span.unseen { (meaning) } }
                            }
                            th scope="col" { "Contradictions in the file" }
                        }
                    }
                    tbody { @for (row, address) in rows { (table_row(row, address.as_deref())) } }
                }
            }
            p.key { @for (letter, meaning) in WEIGHTS { (sign(letter)) " " (meaning) @if letter != "D" { ", " } } }
        }
    };
    document("Scores reviewed", &body.into_string(), "", "")
}

fn table_row(row: &SummaryRow, address: Option<&str>) -> maud::Markup {
    html! {
        tr {
            th scope="row" { @if let Some(address) = address { a href=(address) { (row.file) } } @else { (row.file) } }
            @match &row.outcome {
                Outcome::Reviewed { title, bars, bowed_parts, strokes, findings, problems } => {
                    td { (title.as_deref().unwrap_or_default()) }
                    td { (bars) } td { (bowed_parts) } td { (strokes) }
                    @for count in findings { td { (count) } }
                    td { (problems) }
                }
                Outcome::Unreadable { error } => { td colspan="9" { (error) } }
            }
        }
    }
}
