//! A sheet as one HTML file that needs nothing else. On the screen it holds all that there is; printed it is one page, as the PDF is:
//! with as much of everything as has room there, and pictures that give way.

use maud::{Markup, html};

use arcata_report::paper::Paper;

use super::frame::{page, picture};
use super::sheet_fit::{KeepOnSheet, SheetFit};
use super::sheet_pdf::{fit_of, is_reason};
use super::sheet_view::{SheetPassageView, StudentSheetView, Tongue};
use crate::Words;

/// A sheet. `fonts` is a style sheet with the music font, where pictures need one.
#[must_use]
pub fn sheet_html(words: &Words, view: &StudentSheetView<'_>, paper: Paper, fonts: &str) -> String {
    let fit = fit_of(view, paper);
    let body = html! {
        header.head {
            h1 { (view.title) }
            p.who { (view.who) }
            @if let Some(due) = &view.due { p.due { (due) } }
        }
        main {
            @if let Some(say) = &view.say { p { (say) } }
            section {
                h2 { (view.works.0) }
                ul { @for work in &view.works.1 { li { span { (work) } } } }
            }
            section.passages {
                h2 { (view.heading.0) }
                @if let Some(nothing) = &view.heading.1 { p { (nothing) } }
                @for passage in &view.passages { (one(passage, fit)) }
            }
            @if !view.rest.1.is_empty() { (list(&view.rest.0, &view.rest.1, fit.rest)) }
            @for (heading, lines) in &view.further { (list(heading, lines, usize::MAX)) }
        }
        footer {
            @for line in &view.foot { p { (line) } }
        }
    };
    let style = format!("{fonts}{}", printed(fit, paper));
    page(words, &format!("{}: {}", view.title, view.who), "sheet", &style, &body)
}

/// The sizes by which it is printed.
fn printed(fit: SheetFit, paper: Paper) -> String {
    let SheetFit { body, high, lines, .. } = fit;
    let paper = match paper {
        Paper::A4 => "A4",
        Paper::Letter => "letter",
    };
    format!("@page{{size:{paper}}}:root{{--letters:{body}pt;--high:{high}mm;--lines:{lines}}}")
}

/// A list; on paper it has as many lines as there is room for.
fn list(heading: &str, lines: &[String], printed: usize) -> Markup {
    html! {
        section {
            h2 { (heading) }
            ul { @for (index, line) in lines.iter().enumerate() { li.screen[index >= printed] { span { (line) } } } }
        }
    }
}

fn one(passage: &SheetPassageView<'_>, fit: SheetFit) -> Markup {
    let reason = |index: usize, label: &str, tongue: Tongue| {
        fit.why == KeepOnSheet::No && is_reason((index, label), tongue)
    };
    html! {
        article {
            header {
                h3 { (passage.place) }
                p { (passage.title) }
                p.weight { (passage.weight) }
            }
            @if passage.now.is_none() && passage.repair.is_none() {
                p.note { (passage.no_picture) }
            } @else {
                div.pair {
                    @if let Some((caption, kept)) = &passage.now {
                        figure { (picture(kept)) figcaption { (caption) } }
                    }
                    @if let Some((caption, kept)) = &passage.repair {
                        figure.screen[fit.repair == KeepOnSheet::No] { (picture(kept)) figcaption { (caption) } }
                    }
                }
            }
            dl {
                @for (index, (label, text, tongue)) in passage.says.iter().enumerate() {
                    @let screen = reason(index, label, *tongue);
                    dt.screen[screen] { (label) }
                    @match tongue {
                        Tongue::Page | Tongue::Review => dd.screen[screen] { (text) },
                        Tongue::Asks => dd.ask { (text) },
                    }
                }
            }
        }
    }
}
