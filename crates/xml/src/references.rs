//! References to characters and entities in text.
//!
//! Only the five entities of XML itself and numbered characters are resolved. A document may declare
//! entities of its own; those stay as they are written, so that nothing can swell or reach outside.

use std::borrow::Cow;

/// What a reference, the part between `&` and `;`, stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum ReferenceMeaning {
    /// A character.
    Character(char),
    /// A number that XML gives to no character.
    Nothing,
    /// An entity that a document would have to declare.
    Entity,
}

pub(crate) fn meaning(reference: &str) -> ReferenceMeaning {
    if let Some(number) = reference.strip_prefix('#') {
        let code = match number.strip_prefix('x') {
            Some(digits) if digits.bytes().all(|byte| byte.is_ascii_hexdigit()) => {
                u32::from_str_radix(digits, 16).ok()
            }
            None if number.bytes().all(|byte| byte.is_ascii_digit()) => number.parse().ok(),
            _ => None,
        };
        let character = code.and_then(char::from_u32).filter(|character| is_xml_character(*character));
        return character.map_or(ReferenceMeaning::Nothing, ReferenceMeaning::Character);
    }
    match reference {
        "amp" => ReferenceMeaning::Character('&'),
        "lt" => ReferenceMeaning::Character('<'),
        "gt" => ReferenceMeaning::Character('>'),
        "quot" => ReferenceMeaning::Character('"'),
        "apos" => ReferenceMeaning::Character('\''),
        _ => ReferenceMeaning::Entity,
    }
}

fn is_xml_character(character: char) -> bool {
    match character {
        '\t' | '\n' | '\r' => true,
        '\u{FFFE}' | '\u{FFFF}' => false,
        _ => character >= ' ',
    }
}

/// Text with its references resolved; what cannot be resolved stays as written.
pub(crate) fn unescape(raw: &str) -> Cow<'_, str> {
    if memchr::memchr(b'&', raw.as_bytes()).is_none() {
        return Cow::Borrowed(raw);
    }
    let mut text = String::with_capacity(raw.len());
    let mut rest = raw;
    while let Some(ampersand) = memchr::memchr(b'&', rest.as_bytes()) {
        text.push_str(&rest[..ampersand]);
        rest = &rest[ampersand..];
        let end = memchr::memchr2(b';', b'&', &rest.as_bytes()[1..]).map_or(rest.len(), |at| at + 1);
        let is_closed = rest.as_bytes().get(end) == Some(&b';');
        match meaning(&rest[1..end]) {
            ReferenceMeaning::Character(character) if is_closed => {
                text.push(character);
                rest = &rest[end + 1..];
            }
            _ => {
                text.push_str(&rest[..end]);
                rest = &rest[end..];
            }
        }
    }
    text.push_str(rest);
    Cow::Owned(text)
}

/// Text that reads back as `text` between tags or quotes.
///
/// ```
/// assert_eq!(arcata_xml::escape("Fast & <loud>"), "Fast &amp; &lt;loud&gt;");
/// ```
#[must_use]
pub fn escape(text: &str) -> Cow<'_, str> {
    if !text.bytes().any(|byte| matches!(byte, b'&' | b'<' | b'>' | b'"' | b'\t' | b'\n' | b'\r')) {
        return Cow::Borrowed(text);
    }
    let mut escaped = String::with_capacity(text.len() + 16);
    for character in text.chars() {
        match character {
            '&' => escaped.push_str("&amp;"),
            '<' => escaped.push_str("&lt;"),
            '>' => escaped.push_str("&gt;"),
            '"' => escaped.push_str("&quot;"),
            '\t' => escaped.push_str("&#9;"),
            '\n' => escaped.push_str("&#10;"),
            '\r' => escaped.push_str("&#13;"),
            _ => escaped.push(character),
        }
    }
    Cow::Owned(escaped)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_references_are_resolved_and_others_stay() {
        assert_eq!(unescape("&lt;&#65;&#x42;&amp;amp;"), "<AB&amp;");
        assert_eq!(unescape("&lol; & &#0; &#xD800; &amp"), "&lol; & &#0; &#xD800; &amp");
    }

    #[test]
    fn numbers_with_signs_are_no_numbers() {
        assert_eq!(meaning("#+65"), ReferenceMeaning::Nothing);
        assert_eq!(meaning("#x+41"), ReferenceMeaning::Nothing);
        assert_eq!(meaning("#"), ReferenceMeaning::Nothing);
        assert_eq!(meaning("#99999999999"), ReferenceMeaning::Nothing);
    }

    #[test]
    fn escaped_text_reads_back() {
        let text = "a<b>&\"c\"\td\r\ne♯";
        assert_eq!(unescape(&escape(text)), text);
    }
}
