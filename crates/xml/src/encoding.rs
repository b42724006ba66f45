//! From the bytes of a file to its text and back.
//!
//! A file in UTF-8 is its own text: its bytes are taken over, not copied. Any other encoding is decoded
//! once, and every one that is read can be turned back into the very same bytes.

use std::fmt;

use crate::error::{XmlError, XmlErrorKind, shown};
use crate::limits::Limits;
use crate::place::TextPlace;

/// The encodings that are read and written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Encoding {
    /// UTF-8, with or without a byte order mark.
    Utf8,
    /// UTF-16, the low byte first.
    Utf16LittleEndian,
    /// UTF-16, the high byte first.
    Utf16BigEndian,
    /// ISO-8859-1: byte and character have the same number.
    Latin1,
    /// windows-1252.
    Windows1252,
    /// US-ASCII.
    Ascii,
}

impl fmt::Display for Encoding {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Encoding::Utf8 => "UTF-8",
            Encoding::Utf16LittleEndian => "UTF-16 (low byte first)",
            Encoding::Utf16BigEndian => "UTF-16 (high byte first)",
            Encoding::Latin1 => "ISO-8859-1",
            Encoding::Windows1252 => "windows-1252",
            Encoding::Ascii => "US-ASCII",
        })
    }
}

impl Encoding {
    /// Whether every character has bytes of its own in this encoding.
    #[must_use]
    pub fn is_unicode(self) -> bool {
        matches!(self, Encoding::Utf8 | Encoding::Utf16LittleEndian | Encoding::Utf16BigEndian)
    }

    /// Whether `character` can be written in this encoding as itself.
    #[must_use]
    pub fn has(self, character: char) -> bool {
        match self {
            Encoding::Latin1 => u32::from(character) < 0x100,
            Encoding::Ascii => character.is_ascii(),
            Encoding::Windows1252 => {
                let mut buffer = [0; 4];
                !encoding_rs::WINDOWS_1252.encode(character.encode_utf8(&mut buffer)).2
            }
            _ => true,
        }
    }

    /// Appends `text`; a character that the encoding lacks becomes a character reference.
    pub(crate) fn write(self, text: &str, out: &mut Vec<u8>) {
        match self {
            Encoding::Utf8 => out.extend_from_slice(text.as_bytes()),
            Encoding::Utf16LittleEndian => out.extend(text.encode_utf16().flat_map(u16::to_le_bytes)),
            Encoding::Utf16BigEndian => out.extend(text.encode_utf16().flat_map(u16::to_be_bytes)),
            // The encoder writes a decimal character reference for what it lacks.
            Encoding::Windows1252 => out.extend_from_slice(&encoding_rs::WINDOWS_1252.encode(text).0),
            Encoding::Latin1 => write_narrow(text, 0x100, out),
            Encoding::Ascii => write_narrow(text, 0x80, out),
        }
    }
}

fn write_narrow(text: &str, end: u32, out: &mut Vec<u8>) {
    for character in text.chars() {
        let code = u32::from(character);
        match u8::try_from(code) {
            Ok(byte) if code < end => out.push(byte),
            _ => out.extend_from_slice(format!("&#{code};").as_bytes()),
        }
    }
}

/// The bytes of a file together with their text.
#[derive(Debug)]
pub(crate) struct EncodedText {
    /// The text, with the byte order mark of UTF-8 if the file has one.
    whole: String,
    /// Where the text begins in `whole`: behind that mark.
    start: usize,
    /// The bytes, where they are not those of `whole`.
    other: Option<Vec<u8>>,
    encoding: Encoding,
    /// The byte order mark of the file, or nothing.
    mark: &'static [u8],
}

const MARK_UTF8: &[u8] = b"\xEF\xBB\xBF";
const MARK_LITTLE: &[u8] = b"\xFF\xFE";
const MARK_BIG: &[u8] = b"\xFE\xFF";

impl EncodedText {
    /// Finds out the encoding and takes the bytes over.
    pub(crate) fn read(bytes: Vec<u8>, limits: &Limits) -> Result<EncodedText, XmlError> {
        refuse_what_is_no_xml(&bytes)?;
        let source = if let Some((encoding, mark)) = sixteen_bit(&bytes) {
            EncodedText::from_utf16(bytes, encoding, mark)?
        } else {
            let mark = if bytes.starts_with(MARK_UTF8) { MARK_UTF8 } else { b"" };
            let declared = declared_encoding(&bytes[mark.len()..]);
            let encoding = eight_bit(declared.as_deref(), mark)?;
            match encoding {
                Encoding::Utf8 => EncodedText::from_utf8(bytes, mark, declared.is_some())?,
                _ => EncodedText::from_narrow(bytes, encoding)?,
            }
        };
        if source.whole.len() > limits.max_bytes.min(u32::MAX as usize) {
            return Err(over_length(limits));
        }
        refuse_control_characters(source.text())?;
        Ok(source)
    }

    fn from_utf8(bytes: Vec<u8>, mark: &'static [u8], declared: bool) -> Result<EncodedText, XmlError> {
        match String::from_utf8(bytes) {
            Ok(whole) => {
                Ok(EncodedText { whole, start: mark.len(), other: None, encoding: Encoding::Utf8, mark })
            }
            Err(error) => {
                let (fault, bytes) = (error.utf8_error(), error.as_bytes());
                let at = fault.valid_up_to();
                let place = TextPlace::of(&bytes[mark.len().min(at)..], at - mark.len().min(at));
                if fault.error_len().is_none() {
                    let kind = XmlErrorKind::Unfinished { what: "character" };
                    return Err(XmlError::new(kind, place));
                }
                let claimed = if declared || !mark.is_empty() {
                    "UTF-8".to_owned()
                } else {
                    "UTF-8 (which holds where the first line names no encoding)".to_owned()
                };
                let found = format!("the byte 0x{:02X} here is not UTF-8", bytes[at]);
                Err(XmlError::new(XmlErrorKind::EncodingContradicted { claimed, found }, place))
            }
        }
    }

    fn from_utf16(bytes: Vec<u8>, encoding: Encoding, mark: &'static [u8]) -> Result<EncodedText, XmlError> {
        let mut whole = String::with_capacity(bytes.len() / 2 + bytes.len() / 16);
        let units = bytes[mark.len()..].chunks_exact(2).map(|pair| match encoding {
            Encoding::Utf16BigEndian => u16::from_be_bytes([pair[0], pair[1]]),
            _ => u16::from_le_bytes([pair[0], pair[1]]),
        });
        for unit in char::decode_utf16(units) {
            match unit {
                Ok(character) => whole.push(character),
                Err(lone) => {
                    let found = format!("half a character (0x{:04X}) stands here", lone.unpaired_surrogate());
                    let kind = XmlErrorKind::EncodingContradicted { claimed: encoding.to_string(), found };
                    return Err(XmlError::new(kind, TextPlace::of(whole.as_bytes(), whole.len())));
                }
            }
        }
        if !bytes.len().is_multiple_of(2) {
            let kind = XmlErrorKind::Unfinished { what: "character" };
            return Err(XmlError::new(kind, TextPlace::of(whole.as_bytes(), whole.len())));
        }
        if let Some(claimed) = declared_encoding(whole.as_bytes())
            && !claimed.to_ascii_lowercase().starts_with("utf-16")
        {
            let found = format!("its bytes are {encoding}");
            return Err(XmlError::new(
                XmlErrorKind::EncodingContradicted { claimed, found },
                TextPlace::START,
            ));
        }
        Ok(EncodedText { whole, start: 0, other: Some(bytes), encoding, mark })
    }

    fn from_narrow(bytes: Vec<u8>, encoding: Encoding) -> Result<EncodedText, XmlError> {
        if encoding == Encoding::Ascii
            && let Some(at) = bytes.iter().position(|byte| !byte.is_ascii())
        {
            let found = format!("the byte 0x{:02X} here is not", bytes[at]);
            let kind = XmlErrorKind::EncodingContradicted { claimed: encoding.to_string(), found };
            return Err(XmlError::new(kind, TextPlace::of(&bytes, at)));
        }
        let whole = match encoding {
            Encoding::Windows1252 => {
                encoding_rs::WINDOWS_1252.decode_without_bom_handling(&bytes).0.into_owned()
            }
            _ => bytes.iter().copied().map(char::from).collect(),
        };
        Ok(EncodedText { whole, start: 0, other: Some(bytes), encoding, mark: b"" })
    }

    pub(crate) fn text(&self) -> &str {
        &self.whole[self.start..]
    }

    pub(crate) fn bytes(&self) -> &[u8] {
        self.other.as_deref().unwrap_or(self.whole.as_bytes())
    }

    pub(crate) fn into_bytes(self) -> Vec<u8> {
        self.other.unwrap_or_else(|| self.whole.into_bytes())
    }

    pub(crate) fn encoding(&self) -> Encoding {
        self.encoding
    }

    pub(crate) fn mark(&self) -> &'static [u8] {
        self.mark
    }
}

pub(crate) fn over_length(limits: &Limits) -> XmlError {
    let kind = XmlErrorKind::OverLimit { limit: crate::error::Limited::Bytes, value: limits.max_bytes };
    XmlError::new(kind, None)
}

/// Refuses at once what no later message would describe as well: nothing, and other kinds of files.
fn refuse_what_is_no_xml(bytes: &[u8]) -> Result<(), XmlError> {
    if bytes.starts_with(b"\xFF\xFE\0\0") || bytes.starts_with(b"\0\0\xFE\xFF") {
        let kind = XmlErrorKind::UnknownEncoding { name: "UTF-32".into() };
        return Err(XmlError::new(kind, None));
    }
    let marked = [MARK_UTF8, MARK_LITTLE, MARK_BIG].iter().find(|mark| bytes.starts_with(mark));
    let behind_mark = &bytes[marked.map_or(0, |mark| mark.len())..];
    // The zeros are the other half of characters in UTF-16.
    match behind_mark.iter().find(|byte| !matches!(byte, b' ' | b'\t' | b'\r' | b'\n' | 0)) {
        Some(b'<') => Ok(()),
        Some(_) => Err(XmlError::new(XmlErrorKind::NotXml, None)),
        None if behind_mark.contains(&0) && marked.is_none() => {
            Err(XmlError::new(XmlErrorKind::NotXml, None))
        }
        None => Err(XmlError::new(XmlErrorKind::Empty, None)),
    }
}

/// UTF-16, known by its mark or, without one, by the zero beside the first `<`.
fn sixteen_bit(bytes: &[u8]) -> Option<(Encoding, &'static [u8])> {
    if bytes.starts_with(MARK_LITTLE) {
        Some((Encoding::Utf16LittleEndian, MARK_LITTLE))
    } else if bytes.starts_with(MARK_BIG) {
        Some((Encoding::Utf16BigEndian, MARK_BIG))
    } else if bytes.starts_with(b"<\0") {
        Some((Encoding::Utf16LittleEndian, b""))
    } else if bytes.starts_with(b"\0<") {
        Some((Encoding::Utf16BigEndian, b""))
    } else {
        None
    }
}

fn eight_bit(declared: Option<&str>, mark: &[u8]) -> Result<Encoding, XmlError> {
    let Some(name) = declared else { return Ok(Encoding::Utf8) };
    let encoding = match name.to_ascii_lowercase().as_str() {
        "utf-8" | "utf8" => return Ok(Encoding::Utf8),
        "iso-8859-1" | "iso8859-1" | "iso_8859-1" | "latin1" | "latin-1" | "l1" => Encoding::Latin1,
        "windows-1252" | "cp1252" | "cp-1252" => Encoding::Windows1252,
        "us-ascii" | "ascii" => Encoding::Ascii,
        lower if lower.starts_with("utf-16") || lower.starts_with("utf16") => {
            let found = "its characters have single bytes".to_owned();
            let kind = XmlErrorKind::EncodingContradicted { claimed: shown(name), found };
            return Err(XmlError::new(kind, TextPlace::START));
        }
        _ => {
            return Err(XmlError::new(XmlErrorKind::UnknownEncoding { name: shown(name) }, TextPlace::START));
        }
    };
    if mark.is_empty() {
        return Ok(encoding);
    }
    let found = "it begins with the byte order mark of UTF-8".to_owned();
    let kind = XmlErrorKind::EncodingContradicted { claimed: encoding.to_string(), found };
    Err(XmlError::new(kind, TextPlace::START))
}

/// The encoding named by the XML declaration at the very start.
fn declared_encoding(text: &[u8]) -> Option<String> {
    // A declaration has three short entries: one that is not over by here is none.
    const LONGEST: usize = 512;
    let declaration = text[..text.len().min(LONGEST)].strip_prefix(b"<?xml")?;
    let end = memchr::memmem::find(declaration, b"?>")?;
    let declaration = std::str::from_utf8(&declaration[..end]).ok()?;
    let value = declaration[declaration.find("encoding")? + "encoding".len()..].trim_start();
    let value = value.strip_prefix('=')?.trim_start();
    let quote = value.chars().next().filter(|quote| matches!(quote, '"' | '\''))?;
    value[1..].split(quote).next().map(str::to_owned)
}

/// XML has no control characters but tab, line feed and carriage return.
fn refuse_control_characters(text: &str) -> Result<(), XmlError> {
    let forbidden = |byte: u8| byte < 0x20 && !matches!(byte, b'\t' | b'\n' | b'\r');
    // Whole blocks first, without a branch in them: this runs over every byte of every file.
    for (index, block) in text.as_bytes().chunks(4096).enumerate() {
        if block.iter().fold(false, |seen, &byte| seen | forbidden(byte)) {
            let inside = block.iter().position(|&byte| forbidden(byte)).unwrap_or(0);
            let at = index * 4096 + inside;
            let kind = XmlErrorKind::ForbiddenCharacter { code: u32::from(block[inside]) };
            return Err(XmlError::new(kind, TextPlace::of(text.as_bytes(), at)));
        }
    }
    Ok(())
}
