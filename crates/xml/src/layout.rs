//! The manners of a file: what stands before an element on its line, and how deep it is set in.
//!
//! Everything here looks only at what an insertion leaves as it is, so that a removal finds the same
//! answer as the insertion before it.

use crate::content::{ContentPiece, ContentPieces, gaps, is_blank};
use crate::document::Document;
use crate::element::Element;

/// Where nothing around an element shows how deep a level is set in.
const USUAL_STEP: &str = "  ";

/// The blanks before an offset, back to whatever is not blank.
pub(crate) fn blanks_before(text: &str, at: usize) -> &str {
    let kept = text[..at].trim_end_matches(is_blank).len();
    &text[kept..at]
}

/// The blanks before an offset that belong to it: the last line break and what follows it, or all of
/// them where no line is broken.
pub(crate) fn lead_before(text: &str, at: usize) -> &str {
    let blanks = blanks_before(text, at);
    match last_break(blanks) {
        Some(start) => &blanks[start..],
        None => blanks,
    }
}

/// The blanks that belong to an element; none where they are part of a text.
pub(crate) fn lead_of(element: Element<'_>) -> &str {
    match element.parent() {
        Some(parent) if has_text(parent) => "",
        _ => lead_before(element.document().text(), element.range().start),
    }
}

fn last_break(blanks: &str) -> Option<usize> {
    let last = blanks.rfind(['\n', '\r'])?;
    Some(if blanks[..=last].ends_with("\r\n") { last - 1 } else { last })
}

pub(crate) fn breaks_line(lead: &str) -> bool {
    lead.contains(['\n', '\r'])
}

/// What a lead sets in after its line break; nothing where it breaks no line.
fn indent(lead: &str) -> Option<&str> {
    breaks_line(lead).then(|| lead.trim_start_matches(['\n', '\r']))
}

/// How far an element is set in; nothing where it does not begin a line.
fn indent_of(element: Element<'_>) -> Option<&str> {
    let lead = lead_of(element);
    // The first line of a file begins without a line break.
    let begins_file = lead.len() == element.range().start;
    if begins_file { Some(lead) } else { indent(lead) }
}

/// How much deeper a level is set in than the one around it, going by the elements around `parent`.
pub(crate) fn step_around(parent: Element<'_>) -> &str {
    let mut inner = parent;
    while let Some(outer) = inner.parent() {
        if let Some(step) = indent_of(inner).and_then(|indent| step_from(outer, indent)) {
            return step;
        }
        inner = outer;
    }
    USUAL_STEP
}

/// How much deeper the children of `parent` are set in, if `lead` stands before one of them.
pub(crate) fn step_inside<'t>(parent: Element<'t>, lead: &'t str) -> &'t str {
    let step = indent(lead).and_then(|indent| step_from(parent, indent));
    step.unwrap_or_else(|| step_around(parent))
}

/// How much deeper `inner` is set in than an element; nothing where it is not deeper.
fn step_from<'t>(outer: Element<'_>, inner: &'t str) -> Option<&'t str> {
    inner.strip_prefix(indent_of(outer)?).filter(|step| !step.is_empty())
}

/// How the content of an empty element would be laid out: what stands before each child, and what
/// before the end tag.
pub(crate) struct EmptyLayout {
    pub(crate) lead: String,
    pub(crate) tail: String,
}

impl EmptyLayout {
    pub(crate) fn of(parent: Element<'_>) -> EmptyLayout {
        let own = lead_of(parent);
        if !breaks_line(own) {
            return EmptyLayout { lead: String::new(), tail: String::new() };
        }
        EmptyLayout { lead: format!("{own}{}", step_around(parent)), tail: own.to_owned() }
    }
}

/// Whether an element has text of its own: blanks between its children then mean something.
pub(crate) fn has_text(element: Element<'_>) -> bool {
    let text = element.document().text();
    gaps(element).any(|gap| {
        ContentPieces(&text[gap]).any(|piece| match piece {
            ContentPiece::Text(text) => !text.chars().all(is_blank),
            ContentPiece::Literal(_) => true,
            ContentPiece::Other => false,
        })
    })
}

/// Whether `element` looks as if it had been an empty-element tag before its children were inserted.
pub(crate) fn was_empty_tag(element: Element<'_>) -> bool {
    let text = element.document().text();
    let end_tag = &text[element.content_range().end..element.range().end];
    if element.is_empty_tag() || end_tag.len() != element.name().len() + "</>".len() {
        return false;
    }
    let layout = EmptyLayout::of(element);
    let mut gaps = gaps(element).peekable();
    while let Some(gap) = gaps.next() {
        let expected = if gaps.peek().is_some() { &layout.lead } else { &layout.tail };
        if &text[gap] != expected {
            return false;
        }
    }
    true
}

/// An element as text, each element inside it on a line of its own where nothing speaks against it.
pub(crate) fn laid_out(fragment: &Document, lead: &str, step: &str) -> String {
    let mut out = String::with_capacity(fragment.text().len() * 2);
    if breaks_line(lead) {
        lay_out(fragment.root(), &mut lead.to_owned(), step, &mut out);
    } else {
        out.push_str(fragment.root().source());
    }
    out
}

// Recursion: the depth of a document is limited.
fn lay_out(element: Element<'_>, lead: &mut String, step: &str, out: &mut String) {
    let text = element.document().text();
    let only_elements = element.has_children() && gaps(element).all(|gap| text[gap].chars().all(is_blank));
    if !only_elements {
        out.push_str(element.source());
        return;
    }
    out.push_str(&text[element.start_tag_range()]);
    let outer = lead.len();
    lead.push_str(step);
    for child in element.children() {
        out.push_str(lead);
        lay_out(child, lead, step, out);
    }
    lead.truncate(outer);
    out.push_str(lead);
    out.push_str(&text[element.content_range().end..element.range().end]);
}

/// Offset of the `>` or `/>` that ends the start tag of an element.
pub(crate) fn closing_bracket(element: Element<'_>) -> usize {
    let tail = if element.is_empty_tag() { "/>" } else { ">" };
    element.start_tag_range().end - tail.len()
}
