//! Hand-ins that are alike, for the teacher alone.

use maud::html;

use super::frame::{page, picture};
use crate::{KeptPicture, SaidOnSheet, Task, Words};

/// Two hand-ins that agree, as they are shown.
#[derive(Clone, Debug)]
pub struct AlikePair {
    /// What they are called.
    pub names: (String, String),
    /// Of a hundred short runs of notes of the smaller one, how many the other one has too.
    pub share: usize,
    /// The bars that agree, as they are said.
    pub bars: (String, String),
    /// The bars, engraved.
    pub pictures: (Option<KeptPicture>, Option<KeptPicture>),
}

/// The page, a question and no answer.
#[must_use]
pub fn alike_html(words: &Words, task: &Task, pairs: &[AlikePair], fonts: &str) -> String {
    let body = html! {
        header.head { h1 { (words.word("alike-title")) ": " (task.title) } }
        p { b { (words.word("alike-no-proof")) } }
        p { (words.word("alike-how")) }
        main {
            @for pair in pairs {
                section {
                    h2 { (pair.names.0) " · " (pair.names.1) }
                    p { (words.say(&SaidOnSheet::new("alike-share").with("share", pair.share))) }
                    div.side {
                        @for (name, bars, kept) in [
                            (&pair.names.0, &pair.bars.0, &pair.pictures.0),
                            (&pair.names.1, &pair.bars.1, &pair.pictures.1),
                        ] {
                            figure {
                                figcaption { (name) ": " (words.say(&SaidOnSheet::new("sheet-bar").with("bar", bars))) }
                                @if let Some(kept) = kept { (picture(kept)) } @else { p.note { (words.word("sheet-no-picture")) } }
                            }
                        }
                    }
                }
            }
        }
    };
    page(words, &words.word("alike-title"), "class", fonts, &body)
}
