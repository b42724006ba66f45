//! The attributes inside a start tag.

use std::borrow::Cow;

use crate::references::unescape;

/// One attribute as it stands in a start tag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Attribute<'d> {
    pub(crate) name: &'d str,
    pub(crate) raw: &'d str,
}

impl<'d> Attribute<'d> {
    /// The name, with its prefix if it has one (`xlink:href`).
    #[must_use]
    pub fn name(&self) -> &'d str {
        self.name
    }

    /// The value, with references to characters resolved.
    #[must_use]
    pub fn value(&self) -> Cow<'d, str> {
        attribute_value(self.raw)
    }

    /// What stands between the quotes.
    #[must_use]
    pub fn raw_value(&self) -> &'d str {
        self.raw
    }
}

/// Line breaks and tabs in a value are blanks (XML 1.0, 3.3.3), unless written as references.
fn attribute_value(raw: &str) -> Cow<'_, str> {
    if !raw.bytes().any(|byte| matches!(byte, b'&' | b'\t' | b'\n' | b'\r')) {
        return Cow::Borrowed(raw);
    }
    let blanked = raw.replace("\r\n", " ").replace(['\t', '\n', '\r'], " ");
    Cow::Owned(unescape(&blanked).into_owned())
}

/// The attributes of an element in the order they stand.
#[derive(Clone, Debug)]
pub struct Attributes<'d> {
    /// What stands between the name and the end of the start tag.
    tag: &'d str,
    at: usize,
}

impl<'d> Attributes<'d> {
    pub(crate) fn new(tag: &'d str) -> Attributes<'d> {
        Attributes { tag, at: 0 }
    }
}

impl<'d> Iterator for Attributes<'d> {
    type Item = Attribute<'d>;

    fn next(&mut self) -> Option<Attribute<'d>> {
        // Reading the document has refused every fault, so that a fault here means the end.
        let found = next_attribute(self.tag.as_bytes(), self.at).ok()??;
        self.at = found.next;
        Some(Attribute {
            name: &self.tag[found.name.0..found.name.1],
            raw: &self.tag[found.value.0..found.value.1],
        })
    }
}

/// Where the parts of an attribute stand, as (from, to) in what was searched.
#[derive(Clone, Copy, Debug)]
pub(crate) struct FoundAttribute {
    pub(crate) name: (usize, usize),
    pub(crate) value: (usize, usize),
    pub(crate) next: usize,
}

/// Something in a start tag that is no attribute.
#[derive(Clone, Copy, Debug)]
pub(crate) struct AttributeFault {
    pub(crate) what: &'static str,
    pub(crate) at: usize,
}

/// The attribute that begins at or after `from`; nothing at the end of the tag.
#[inline]
pub(crate) fn next_attribute(tag: &[u8], from: usize) -> Result<Option<FoundAttribute>, AttributeFault> {
    let start = skip_blanks(tag, from);
    if start == tag.len() {
        return Ok(None);
    }
    if start == from {
        return Err(AttributeFault { what: "a blank is missing before an attribute", at: start });
    }
    let name_end = name_end(tag, start);
    if name_end == start {
        return Err(AttributeFault { what: "this is not the name of an attribute", at: start });
    }
    let equals = skip_blanks(tag, name_end);
    if tag.get(equals) != Some(&b'=') {
        return Err(AttributeFault { what: "an attribute has no value", at: start });
    }
    let open = skip_blanks(tag, equals + 1);
    let Some(&quote) = tag.get(open).filter(|quote| matches!(quote, b'"' | b'\'')) else {
        return Err(AttributeFault { what: "the value of an attribute has no quotes", at: start });
    };
    let value = open + 1;
    match tag[value..].iter().position(|&byte| byte == quote || byte == b'<') {
        Some(length) if tag[value + length] == quote => Ok(Some(FoundAttribute {
            name: (start, name_end),
            value: (value, value + length),
            next: value + length + 1,
        })),
        Some(length) => {
            Err(AttributeFault { what: "the value of an attribute holds a <", at: value + length })
        }
        None => Err(AttributeFault { what: "the value of an attribute has no closing quote", at: start }),
    }
}

#[inline]
fn skip_blanks(tag: &[u8], mut at: usize) -> usize {
    while matches!(tag.get(at), Some(b' ' | b'\t' | b'\r' | b'\n')) {
        at += 1;
    }
    at
}

/// The end of the name that begins at `start`, or `start` itself where none does.
#[inline]
pub(crate) fn name_end(text: &[u8], start: usize) -> usize {
    match text.get(start) {
        Some(byte) if byte.is_ascii_alphabetic() || matches!(byte, b'_' | b':') || *byte >= 0x80 => {}
        _ => return start,
    }
    let mut at = start + 1;
    while let Some(byte) = text.get(at) {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'.' | b'_' | b':') || *byte >= 0x80 {
            at += 1;
        } else {
            break;
        }
    }
    at
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pairs(tag: &str) -> Vec<(String, String)> {
        Attributes::new(tag).map(|a| (a.name().to_owned(), a.value().into_owned())).collect()
    }

    #[test]
    fn both_quotes_and_blanks_around_the_sign() {
        let expected = [("a", "1"), ("b-c", "'"), ("d", "")].map(|(n, v)| (n.to_owned(), v.to_owned()));
        assert_eq!(pairs(" a=\"1\" \n b-c = \"'\"\td=''"), expected);
    }

    #[test]
    fn blanks_in_values_are_spaces_unless_referred_to() {
        assert_eq!(pairs(" a=\"x\r\ny\tz&#10;&amp;lt;\"")[0].1, "x y z\n&lt;");
    }

    #[test]
    fn faults_name_their_place() {
        for (tag, at) in
            [(" a", 1), (" a=1", 1), (" a=\"1", 1), (" a='1'b='2'", 6), (" 1='a'", 1), (" a='<'", 4)]
        {
            let mut from = 0;
            let fault = loop {
                match next_attribute(tag.as_bytes(), from) {
                    Ok(Some(found)) => from = found.next,
                    Ok(None) => panic!("no fault in {tag}"),
                    Err(fault) => break fault,
                }
            };
            assert_eq!(fault.at, at, "{tag}: {}", fault.what);
        }
    }
}
