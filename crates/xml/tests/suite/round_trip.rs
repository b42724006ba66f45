//! A file that is read and written is the same file.

use arcata_xml::{Document, EditList, Encoding, Limits};

use crate::support::{ALL_WRITTEN, Written, find_named, walk};

const BODY: &str = "\r\n<!DOCTYPE score-partwise PUBLIC \"-//Invented//DTD Score 4.0//EN\" \"score.dtd\" [\n\
    <!ENTITY who \"nobody\"> <!-- > ]> -->\n]>\n<?style a=\"b\"?>\t\n<!-- before -->\n\
    <score-partwise  version = '4.0'\n>\n\t<work><work-title>Étude “€” &who;</work-title  ></work>\r\n\
    \t<part id=\"P&#49;\" ><![CDATA[<&]]><measure/><measure /></part>\n</score-partwise>\n<!-- after -->\n\n";

#[test]
fn every_encoding_comes_out_as_it_went_in() {
    for written in ALL_WRITTEN {
        let text = written.narrowed(&format!("{}{BODY}", written.declaration()));
        let bytes = written.bytes(&text);
        let document = Document::parse(bytes.clone(), &Limits::default()).unwrap();
        walk(&document);
        assert_eq!(document.text(), text, "{written:?}");
        assert_eq!(document.bytes(), bytes, "{written:?}");
        assert_eq!(document.apply(&EditList::default()).unwrap(), bytes, "{written:?}");
        let title = find_named(&document, "work-title");
        assert_eq!(title.text(), written.narrowed("Étude “€” &who;"), "{written:?}");
        assert!(document.doctype().unwrap().ends_with("]>"));
        assert_eq!(document.into_bytes(), bytes, "{written:?}");
    }
}

#[test]
fn utf8_is_not_copied() {
    let bytes = b"<a>text</a>".to_vec();
    let place = bytes.as_ptr();
    let document = Document::parse(bytes, &Limits::default()).unwrap();
    assert_eq!(document.bytes().as_ptr(), place);
    assert_eq!(document.text().as_ptr(), place);
    let bytes = document.into_bytes();
    assert_eq!(bytes.as_ptr(), place);
}

#[test]
fn every_byte_of_the_narrow_encodings_comes_back() {
    for (name, encoding) in [("iso-8859-1", Encoding::Latin1), ("cp1252", Encoding::Windows1252)] {
        let mut bytes = format!("<?xml version='1.0' encoding='{name}'?><a>").into_bytes();
        bytes.extend((0x20..=0xFF).filter(|byte| !matches!(byte, b'<' | b'&' | b'>')));
        bytes.extend_from_slice(b"</a>");
        let document = Document::parse(bytes.clone(), &Limits::default()).unwrap();
        assert_eq!(document.encoding(), encoding);
        assert_eq!(document.apply(&EditList::default()).unwrap(), bytes);
        assert_eq!(document.bytes(), bytes);
    }
}

#[test]
fn utf16_without_a_mark_is_known_by_its_first_tag() {
    for (written, encoding) in
        [(Written::LittleEndian, Encoding::Utf16LittleEndian), (Written::BigEndian, Encoding::Utf16BigEndian)]
    {
        let bytes = written.bytes("<a>♯</a>")[2..].to_vec();
        let document = Document::parse(bytes.clone(), &Limits::default()).unwrap();
        assert_eq!(document.encoding(), encoding);
        assert_eq!(document.root().text(), "♯");
        assert_eq!(document.apply(&EditList::default()).unwrap(), bytes);
    }
}
