//! A sheet as one HTML file that needs nothing else. It holds all that there is; the PDF is the one that is fitted to a page.

use maud::{Markup, html};

use super::frame::{page, picture};
use super::sheet_view::{SheetPassageView, StudentSheetView, Tongue};
use crate::Words;

/// A sheet. `fonts` is a style sheet with the music font, where pictures need one.
#[must_use]
pub fn sheet_html(words: &Words, view: &StudentSheetView<'_>, fonts: &str) -> String {
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
                ul { @for work in &view.works.1 { li { (work) } } }
            }
            section {
                h2 { (view.heading.0) }
                @if let Some(nothing) = &view.heading.1 { p { (nothing) } }
                @for passage in &view.passages { (one(passage)) }
            }
            @if !view.rest.1.is_empty() { (list(&view.rest.0, &view.rest.1)) }
            @for (heading, lines) in &view.further { (list(heading, lines)) }
        }
        footer {
            @for line in &view.foot { p { (line) } }
        }
    };
    page(words, &format!("{}: {}", view.title, view.who), "sheet", fonts, &body)
}

fn list(heading: &str, lines: &[String]) -> Markup {
    html! {
        section {
            h2 { (heading) }
            ul { @for line in lines { li { (line) } } }
        }
    }
}

fn one(passage: &SheetPassageView<'_>) -> Markup {
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
                    @for (caption, kept) in passage.now.iter().chain(&passage.repair) {
                        figure { (picture(kept)) figcaption { (caption) } }
                    }
                }
            }
            dl {
                @for (label, text, tongue) in &passage.says {
                    dt { (label) }
                    @match tongue {
                        Tongue::Page => dd { (text) },
                        Tongue::Review => dd { (text) },
                        Tongue::Asks => dd.ask { (text) },
                    }
                }
            }
        }
    }
}
