//! What several tests share.

use arcata_xml::{Document, Element, Limits, Tag, XmlError};

pub(crate) fn parse(text: &str) -> Document {
    Document::parse(text.as_bytes().to_vec(), &Limits::default()).unwrap()
}

pub(crate) fn refuse(bytes: impl Into<Vec<u8>>) -> XmlError {
    Document::parse(bytes.into(), &Limits::default()).unwrap_err()
}

pub(crate) fn find(document: &Document, tag: Tag) -> Element<'_> {
    document.elements().find(|element| element.tag() == tag).unwrap()
}

pub(crate) fn find_named<'d>(document: &'d Document, name: &str) -> Element<'d> {
    document.elements().find(|element| element.name() == name).unwrap()
}

/// Asks everything of every element, and checks that the answers agree with each other.
pub(crate) fn walk(document: &Document) {
    let text = document.text();
    for (number, element) in document.elements().enumerate() {
        assert_eq!(element.id().0 as usize, number);
        let (range, content) = (element.range(), element.content_range());
        assert!(range.start < content.start && content.start <= content.end && content.end <= range.end);
        assert!(text[range.clone()].starts_with('<') && text[range.clone()].ends_with('>'));
        assert_eq!(&text[range.start + 1..range.start + 1 + element.name().len()], element.name());
        assert_eq!(element.is_empty_tag(), text[element.start_tag_range()].ends_with("/>"));
        let mut before = content.start;
        for child in element.children() {
            assert_eq!(child.parent(), Some(element));
            assert!(before <= child.range().start && child.range().end <= content.end);
            before = child.range().end;
        }
        let siblings = std::iter::successors(element.children().next(), |child| child.next_sibling());
        assert!(siblings.eq(element.children()));
        for attribute in element.attributes() {
            assert_eq!(element.attribute(attribute.name()), Some(attribute.value()));
        }
        assert_eq!(element.text().trim_matches([' ', '\t', '\r', '\n']), element.text());
        assert_eq!(document.tag(element.name()), Some(element.tag()));
    }
    assert_eq!(document.root().descendants().len() + 1, document.elements().len());
    assert!(document.place(text.len()) >= document.root().line_column());
}

/// The encodings a file may have, with the characters that tell them apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Written {
    Utf8,
    MarkedUtf8,
    LittleEndian,
    BigEndian,
    Latin1,
    Windows1252,
}

pub(crate) const ALL_WRITTEN: [Written; 6] = [
    Written::Utf8,
    Written::MarkedUtf8,
    Written::LittleEndian,
    Written::BigEndian,
    Written::Latin1,
    Written::Windows1252,
];

impl Written {
    pub(crate) fn declaration(self) -> &'static str {
        match self {
            Written::Utf8 => "<?xml version=\"1.0\" encoding=\"UTF-8\"?>",
            Written::MarkedUtf8 => "<?xml version=\"1.0\"?>",
            Written::LittleEndian => "<?xml version='1.0' encoding='UTF-16'?>",
            Written::BigEndian => "<?xml version='1.0' encoding='utf-16' standalone='no'?>",
            Written::Latin1 => "<?xml version=\"1.0\" encoding = \"ISO-8859-1\" ?>",
            Written::Windows1252 => "<?xml version=\"1.0\" encoding=\"Windows-1252\"?>",
        }
    }

    /// The bytes of a text; a character that the encoding lacks becomes a question mark.
    pub(crate) fn bytes(self, text: &str) -> Vec<u8> {
        match self {
            Written::Utf8 => text.as_bytes().to_vec(),
            Written::MarkedUtf8 => [b"\xEF\xBB\xBF", text.as_bytes()].concat(),
            Written::LittleEndian => {
                [0xFF, 0xFE].into_iter().chain(text.encode_utf16().flat_map(u16::to_le_bytes)).collect()
            }
            Written::BigEndian => {
                [0xFE, 0xFF].into_iter().chain(text.encode_utf16().flat_map(u16::to_be_bytes)).collect()
            }
            Written::Latin1 => text.chars().map(|c| u8::try_from(u32::from(c)).unwrap_or(b'?')).collect(),
            Written::Windows1252 => text.chars().map(windows_1252).collect(),
        }
    }

    /// A text with only characters that the encoding has.
    pub(crate) fn narrowed(self, text: &str) -> String {
        let has = |c: char| match self {
            Written::Latin1 => u32::from(c) < 0x100,
            Written::Windows1252 => c == '?' || windows_1252(c) != b'?',
            _ => true,
        };
        text.chars().map(|c| if has(c) { c } else { '?' }).collect()
    }
}

/// Two of the characters that windows-1252 has beyond Latin-1 (Unicode Consortium, CP1252.TXT), and
/// those that the two share.
fn windows_1252(character: char) -> u8 {
    match character {
        '€' => 0x80,
        '“' => 0x93,
        _ => match u8::try_from(u32::from(character)) {
            Ok(byte) if !(0x80..0xA0).contains(&byte) => byte,
            _ => b'?',
        },
    }
}
