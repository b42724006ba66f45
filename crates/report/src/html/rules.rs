//! The rules' pages, folded in.

use maud::{Markup, PreEscaped, html};
use pulldown_cmark::{CodeBlockKind, Event, HeadingLevel, Options, Parser, Tag, TagEnd};

use super::finding::picture;
use super::{RuleExample, RulePage};

pub(super) fn markup(rules: &[RulePage]) -> Markup {
    html! {
        @for rule in rules {
            details.rule id=(format!("rule-{}", rule.rule)) {
                summary { (rule.title) " " code { (rule.rule) } }
                @if let Some(explanation) = &rule.explanation {
                    (PreEscaped(page(&explanation.text, None)))
                    @if let Some(example) = &rule.example {
                        figure { figcaption { (example.sentence) } (picture(&example.drawn)) }
                    }
                    div lang="en" { (PreEscaped(page(&rule.page, None))) }
                } @else {
                    (PreEscaped(page(&rule.page, rule.example.as_ref())))
                }
            }
        }
    }
}

/// A page without its own title, its headings two levels down, its music engraved. HTML inside Markdown is taken as text.
fn page(markdown: &str, example: Option<&RuleExample>) -> String {
    let (mut title, mut music) = (false, false);
    let is_music = |kind: &CodeBlockKind<'_>| matches!(kind, CodeBlockKind::Fenced(of) if &**of == "music");
    let events = Parser::new_ext(markdown, Options::ENABLE_TABLES).filter_map(|event| match event {
        Event::Start(Tag::CodeBlock(kind)) if is_music(&kind) => {
            music = true;
            example.map(|example| {
                let figure = html! { figure { figcaption { (example.sentence) } (picture(&example.drawn)) } };
                Event::Html(figure.into_string().into())
            })
        }
        Event::End(TagEnd::CodeBlock) if music => {
            music = false;
            None
        }
        _ if music => None,
        Event::Start(Tag::Heading { level: HeadingLevel::H1, .. }) => {
            title = true;
            None
        }
        Event::End(TagEnd::Heading(HeadingLevel::H1)) => {
            title = false;
            None
        }
        _ if title => None,
        Event::Start(Tag::Heading { id, classes, attrs, .. }) => {
            Some(Event::Start(Tag::Heading { level: HeadingLevel::H3, id, classes, attrs }))
        }
        Event::End(TagEnd::Heading(_)) => Some(Event::End(TagEnd::Heading(HeadingLevel::H3))),
        Event::Html(text) | Event::InlineHtml(text) => Some(Event::Text(text)),
        other => Some(other),
    });
    let mut out = String::new();
    pulldown_cmark::html::push_html(&mut out, events);
    out
}

#[cfg(test)]
mod tests {
    #[test]
    fn a_page_brings_no_title_and_no_markup_of_its_own() {
        let page = super::page("# Title\n\n## Why\nBow <b>up</b>.\n", None);
        assert_eq!(page, "<h3>Why</h3>\n<p>Bow &lt;b&gt;up&lt;/b&gt;.</p>\n");
    }

    #[test]
    fn the_music_of_a_page_is_a_picture() {
        let drawn =
            crate::DrawnPicture { svg: "<g/>".into(), width: 1.0, height: 1.0, text: "Bar 1: up-bow".into() };
        let example = crate::RuleExample { sentence: "It begins up.".into(), drawn };
        let page = super::page("## Example\n```music\nviolin: C5\n```\n", Some(&example));
        assert!(
            page.contains("<figcaption>It begins up.</figcaption><svg") && !page.contains("C5"),
            "{page}"
        );
    }
}
