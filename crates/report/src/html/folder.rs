//! The page of a folder of scores: a row a score.

use arcata_languages::{Saying, Wording};
use maud::html;

use super::finding::sign;
use super::page::{WEIGHTS, document};
use crate::{Outcome, SummaryRow};

/// A table of scores, each with the address of its own page where it has one.
#[must_use]
pub fn folder_html(rows: &[(SummaryRow, Option<String>)], words: &Wording) -> String {
    let title = words.word("folder-title");
    let count = words.say(&Saying::new("folder-scores").with("count", rows.len()));
    let body = html! {
        header.head { h1 { (title) } p.file { (count) } }
        main {
            div.wide tabindex="0" role="region" aria-label=(words.word("folder-region")) {
                table {
                    thead {
                        tr {
                            th scope="col" { (words.word("folder-score")) } th scope="col" { (words.word("folder-title-of-work")) } th scope="col" { (words.word("page-bars")) }
                            th scope="col" { (words.word("page-bowed-parts")) } th scope="col" { (words.word("folder-strokes")) }
                            @for (letter, meaning) in WEIGHTS {
                                th scope="col" title=(words.word(meaning)) { (sign(letter)) span.unseen { (words.word(meaning)) } }
                            }
                            th scope="col" { (words.word("folder-contradictions")) }
                        }
                    }
                    tbody { @for (row, address) in rows { (table_row(row, address.as_deref())) } }
                }
            }
            p.key { @for (letter, meaning) in WEIGHTS { (sign(letter)) " " (words.word(meaning)) @if letter != "D" { ", " } } }
        }
    };
    document(&title, &body.into_string(), ("", ""), words)
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
