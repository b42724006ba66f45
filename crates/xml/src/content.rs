//! The text directly inside an element.

use std::borrow::Cow;
use std::ops::Range;

use crate::element::Element;
use crate::references::unescape;

/// Cuts off the blanks of XML at both ends.
pub(crate) fn trim(text: &str) -> &str {
    text.trim_matches(is_blank)
}

pub(crate) fn is_blank(character: char) -> bool {
    matches!(character, ' ' | '\t' | '\r' | '\n')
}

/// See [`Element::text`].
pub(crate) fn direct_text(element: Element<'_>) -> Cow<'_, str> {
    if !element.has_children() {
        let raw = element.raw_text();
        if memchr::memchr3(b'<', b'&', b'\r', raw.as_bytes()).is_none() {
            return Cow::Borrowed(trim(raw));
        }
    }
    let mut text = String::new();
    for gap in gaps(element) {
        for piece in ContentPieces(&element.document().text()[gap]) {
            match piece {
                ContentPiece::Text(raw) => text.push_str(&unescape(&with_plain_breaks(raw))),
                ContentPiece::Literal(raw) => text.push_str(&with_plain_breaks(raw)),
                ContentPiece::Other => {}
            }
        }
    }
    match trim(&text) {
        trimmed if trimmed.len() == text.len() => Cow::Owned(text),
        trimmed => Cow::Owned(trimmed.to_owned()),
    }
}

/// The stretches of an element's content that lie outside its child elements.
pub(crate) fn gaps(element: Element<'_>) -> impl Iterator<Item = Range<usize>> {
    let content = element.content_range();
    let starts = std::iter::once(content.start).chain(element.children().map(|child| child.range().end));
    let ends = element.children().map(|child| child.range().start).chain(std::iter::once(content.end));
    starts.zip(ends).map(|(start, end)| start..end)
}

/// Every line break reads as a line feed (XML 1.0, 2.11).
fn with_plain_breaks(raw: &str) -> Cow<'_, str> {
    match memchr::memchr(b'\r', raw.as_bytes()) {
        None => Cow::Borrowed(raw),
        Some(_) => Cow::Owned(raw.replace("\r\n", "\n").replace('\r', "\n")),
    }
}

/// What stands between elements.
pub(crate) enum ContentPiece<'d> {
    /// Text, with references.
    Text(&'d str),
    /// The inside of a CDATA section.
    Literal(&'d str),
    /// A comment or a processing instruction.
    Other,
}

/// The pieces of a stretch without elements.
pub(crate) struct ContentPieces<'d>(pub(crate) &'d str);

impl<'d> Iterator for ContentPieces<'d> {
    type Item = ContentPiece<'d>;

    fn next(&mut self) -> Option<ContentPiece<'d>> {
        const FORMS: [(&str, &str); 3] = [("<![CDATA[", "]]>"), ("<!--", "-->"), ("<?", "?>")];
        let rest = self.0;
        if rest.is_empty() {
            return None;
        }
        for (index, (open, close)) in FORMS.into_iter().enumerate() {
            if let Some(inside) = rest.strip_prefix(open) {
                let (inside, after) = inside.split_once(close).unwrap_or((inside, ""));
                self.0 = after;
                return Some(if index == 0 { ContentPiece::Literal(inside) } else { ContentPiece::Other });
            }
        }
        // A `<` of no known form cannot come: reading has refused it. Stepping over it ends the loop.
        let end = memchr::memchr(b'<', &rest.as_bytes()[1..]).map_or(rest.len(), |at| at + 1);
        self.0 = &rest[end..];
        Some(ContentPiece::Text(&rest[..end]))
    }
}
