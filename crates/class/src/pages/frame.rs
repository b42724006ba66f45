//! What all pages share: the head of the file, the look, pictures.

use arcata_xml::seen;
use maud::{DOCTYPE, Markup, PreEscaped, html};

use crate::{KeptPicture, Words};

const STYLE: &str = include_str!("class.css");

/// A page of its own that fetches nothing. `fonts` is a style sheet with the music font, where pictures need one.
pub(super) fn page(words: &Words, title: &str, kind: &str, fonts: &str, body: &Markup) -> String {
    let page = html! {
        (DOCTYPE)
        html lang=(words.language().code()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src data:";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="generator" content="Arcata";
                title { (title) }
                style { (PreEscaped(STYLE)) (PreEscaped(fonts)) }
            }
            body class=(kind) { (body) }
        }
    };
    seen(&page.into_string()).into_owned()
}

/// A picture as large as it was drawn, smaller where there is no room.
pub(super) fn picture(kept: &KeptPicture) -> Markup {
    let text = html! { (kept.text) }.into_string().replace('"', "&quot;");
    let head = format!(
        r#"<svg class="music" viewBox="0 0 {:.2} {:.2}" preserveAspectRatio="xMinYMin" role="img" aria-label="{text}" style="max-width:{:.2}mm">"#,
        kept.width, kept.height, kept.width
    );
    html! { (PreEscaped(head)) (PreEscaped(&kept.svg)) (PreEscaped("</svg>")) }
}
