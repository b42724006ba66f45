//! The rules' pages, folded in.

use maud::{Markup, PreEscaped, html};
use pulldown_cmark::{Event, HeadingLevel, Options, Parser, Tag, TagEnd};

use super::RulePage;

pub(super) fn markup(rules: &[RulePage]) -> Markup {
    html! {
        @for rule in rules {
            details.rule id=(format!("rule-{}", rule.rule)) {
                summary { (rule.title) " " code { (rule.rule) } }
                @if let Some(explanation) = &rule.explanation {
                    div lang=(explanation.language) { (PreEscaped(page(&explanation.text))) }
                }
                (PreEscaped(page(&rule.page)))
            }
        }
    }
}

/// A page without its own title, its headings two levels down. HTML inside Markdown is taken as text.
fn page(markdown: &str) -> String {
    let mut title = false;
    let events = Parser::new_ext(markdown, Options::ENABLE_TABLES).filter_map(|event| match event {
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
        let page = super::page("# Title\n\n## Why\nBow <b>up</b>.\n");
        assert_eq!(page, "<h3>Why</h3>\n<p>Bow &lt;b&gt;up&lt;/b&gt;.</p>\n");
    }
}
