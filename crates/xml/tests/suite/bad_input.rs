//! One clear error for each thing that may be wrong with a document.

use arcata_xml::{Document, Limits, TextPlace, XmlErrorKind};

use crate::support::{Written, parse, refuse};

#[test]
fn nothing_at_all() {
    assert_eq!(refuse("").to_string(), "the file is empty; export the score again");
    assert_eq!(refuse(" \n\t").kind(), &XmlErrorKind::Empty);
    assert_eq!(refuse(b"\xEF\xBB\xBF".to_vec()).kind(), &XmlErrorKind::Empty);
    assert_eq!(refuse(b"\xFF\xFE".to_vec()).kind(), &XmlErrorKind::Empty);
    assert_eq!(refuse("<?xml version='1.0'?><!-- only -->").kind(), &XmlErrorKind::NoRoot);
}

#[test]
fn other_kinds_of_files() {
    for bytes in [&b"MThd\0\0\0\x06"[..], b"%PDF-1.7", b"\x89PNG\r\n", b"{\"a\": 1}", b"\0\0\0\0", b"score"] {
        let error = refuse(bytes);
        assert_eq!(error.kind(), &XmlErrorKind::NotXml, "{bytes:?}");
        assert_eq!(
            error.to_string(),
            "this is not an XML file; choose a MusicXML file (.musicxml, .xml or .mxl)"
        );
    }
}

#[test]
fn binary_behind_a_tag() {
    let error = refuse(b"<a>\n\x00\x01".to_vec());
    assert_eq!(error.kind(), &XmlErrorKind::ForbiddenCharacter { code: 0 });
    assert_eq!(error.place(), Some(TextPlace { line: 2, column: 1 }));
}

#[test]
fn a_file_cut_short_anywhere_is_refused() {
    let whole = "<?xml version='1.0'?><!DOCTYPE a [<!ENTITY b 'c'>]><a b='ä'><!-- c --><d>&amp;é<![CDATA[x]]></d><?p q?></a>";
    for length in 0..whole.len() {
        let bytes = whole.as_bytes()[..length].to_vec();
        let error = Document::parse(bytes, &Limits::default()).unwrap_err();
        assert!(error.to_string().contains("; "), "{length}: {error}");
    }
    parse(whole);
}

#[test]
fn a_file_cut_short_says_where() {
    let error = refuse("<score>\n  <part>\n    <measure");
    assert_eq!(
        error.to_string(),
        "line 3, column 5: the file ends inside the tag that begins here; \
         the file was cut short: copy or export it again"
    );
    let error = refuse("<score>\n  <part>\n    <measure>\n");
    assert_eq!(
        error.to_string(),
        "line 4, column 1: the file ends inside <measure>, which was opened on line 3; \
         the file was cut short: copy or export it again"
    );
}

#[test]
fn wrong_nesting() {
    let error = refuse("<a>\n<b>♯</a></b>");
    assert_eq!(error.place(), Some(TextPlace { line: 2, column: 5 }));
    assert!(matches!(error.kind(), XmlErrorKind::MismatchedEnd { .. }));
    assert!(matches!(refuse("<a/></b>").kind(), XmlErrorKind::StrayEnd { .. }));
    assert!(matches!(refuse("</a>").kind(), XmlErrorKind::StrayEnd { .. }));
    assert!(matches!(refuse("<a/><b/>").kind(), XmlErrorKind::SecondRoot { .. }));
}

#[test]
fn text_outside_the_root() {
    let error = refuse("<a/>\n  ♯ lost");
    assert_eq!(error.kind(), &XmlErrorKind::TextOutsideRoot);
    assert_eq!(error.place(), Some(TextPlace { line: 2, column: 3 }));
    assert_eq!(refuse("<a/><![CDATA[x]]>").kind(), &XmlErrorKind::TextOutsideRoot);
    assert_eq!(refuse("<a/>&amp;").kind(), &XmlErrorKind::TextOutsideRoot);
    assert_eq!(refuse("\u{FEFF}\u{FEFF}<a/>").kind(), &XmlErrorKind::NotXml);
}

#[test]
fn attributes_that_are_none() {
    let error = refuse("<a>\n <b x='1' y='2' x='3'/></a>");
    assert_eq!(error.to_string(), "line 2, column 17: the attribute x is given twice; delete one of the two");
    let many: String = (0..20).map(|n| format!(" a{n}='1'")).collect();
    parse(&format!("<a{many}/>"));
    let error = refuse(format!("<a{many} a3=''/>"));
    assert_eq!(error.kind(), &XmlErrorKind::DuplicateAttribute { name: "a3".into() });
    assert_eq!(error.place(), Some(TextPlace { line: 1, column: many.len() + 4 }));
    for text in ["<a b/>", "<a b=c/>", "<a b='1'c='2'/>", "<a b='<'/>", "<a 'b'/>", "<a b = />", "<a / >"] {
        assert!(matches!(refuse(text).kind(), XmlErrorKind::BadAttribute { .. }), "{text}");
    }
}

#[test]
fn names_that_are_none() {
    for text in ["<1a/>", "<></>", "<a/b/>", "< a/>", "<-/>", "<a&b/>", "<a=\"b\"/>"] {
        let error = refuse(text);
        assert!(matches!(error.kind(), XmlErrorKind::BadName { .. }), "{text}: {error}");
    }
}

#[test]
fn references_that_are_none() {
    for text in ["<a>Strings & winds</a>", "<a>&</a>", "<a>&amp</a>", "<a>&;</a>", "<a>& b;</a>"] {
        let error = refuse(text);
        assert_eq!(error.kind(), &XmlErrorKind::LoneAmpersand, "{text}: {error}");
    }
    assert_eq!(refuse("<a b='&'/>").kind(), &XmlErrorKind::LoneAmpersand);
    assert_eq!(refuse("<a b='&amp;&x'/>").place(), Some(TextPlace { line: 1, column: 12 }));
    for text in ["<a>&#0;</a>", "<a>&#xD800;</a>", "<a>&#x110000;</a>", "<a>&#;</a>", "<a b='&#8;'/>"] {
        assert!(matches!(refuse(text).kind(), XmlErrorKind::BadReference { .. }), "{text}");
    }
}

#[test]
fn declarations_out_of_place() {
    for text in ["\n<?xml version='1.0'?><a/>", "<a/><?xml version='1.0'?>", "<a><!DOCTYPE a></a>"] {
        assert!(matches!(refuse(text).kind(), XmlErrorKind::Misplaced { .. }), "{text}");
    }
    assert!(matches!(refuse("<!DOCTYPE a><!DOCTYPE a><a/>").kind(), XmlErrorKind::Misplaced { .. }));
    assert_eq!(refuse("<a><!ELEMENT b ANY></a>").kind(), &XmlErrorKind::BadMarkup);
}

#[test]
fn bytes_that_are_not_in_the_encoding() {
    let error = refuse(b"<a>\n  caf\xE9</a>".to_vec());
    assert_eq!(
        error.to_string(),
        "line 2, column 6: the file claims to be UTF-8 (which holds where the first line names no \
         encoding), but the byte 0xE9 here is not UTF-8; correct the encoding in the first line, or save \
         the file as UTF-8"
    );
    let error = refuse(b"<?xml version='1.0' encoding='UTF-8'?><a>\xE9</a>".to_vec());
    assert!(error.to_string().starts_with("line 1, column 42: the file claims to be UTF-8, but"));
    let error = refuse(b"<?xml version='1.0' encoding='us-ascii'?>\n<a>\xC3\xA9</a>".to_vec());
    assert_eq!(error.place(), Some(TextPlace { line: 2, column: 4 }));
    let error = refuse("<?xml version='1.0' encoding='UTF-16'?><a/>");
    assert!(error.to_string().contains("claims to be UTF-16, but its characters have single bytes"));
    let error = refuse(Written::LittleEndian.bytes("<?xml version='1.0' encoding='UTF-8'?><a/>"));
    assert!(error.to_string().contains("claims to be UTF-8, but its bytes are UTF-16"));
    let error = refuse(Written::MarkedUtf8.bytes("<?xml version='1.0' encoding='ISO-8859-1'?><a/>"));
    assert!(error.to_string().contains("byte order mark of UTF-8"));
}

#[test]
fn encodings_that_are_not_read() {
    let error = refuse("<?xml version='1.0' encoding='Shift_JIS'?><a/>");
    assert_eq!(
        error.to_string(),
        "line 1, column 1: the encoding \"Shift_JIS\" is not read; \
         save it as UTF-8 (UTF-16, ISO-8859-1 and windows-1252 are read too)"
    );
    assert!(refuse(b"\xFF\xFE\0\0<\0\0\0".to_vec()).to_string().contains("UTF-32"));
}

#[test]
fn half_characters_of_utf16() {
    let mut bytes = Written::BigEndian.bytes("<a>\n♯</a>");
    bytes.pop();
    assert_eq!(refuse(bytes.clone()).kind(), &XmlErrorKind::Unfinished { what: "character" });
    let mut bytes = Written::BigEndian.bytes("<a>\n♯</a>");
    bytes[10..12].copy_from_slice(&[0xD8, 0x00]);
    let error = refuse(bytes);
    assert_eq!(error.place(), Some(TextPlace { line: 2, column: 1 }));
    assert!(matches!(error.kind(), XmlErrorKind::EncodingContradicted { .. }));
}

#[test]
fn hostile_names_stay_short_in_messages() {
    let name = "n".repeat(100_000);
    assert!(refuse(format!("<a></{name}>")).to_string().len() < 300);
    assert!(refuse(format!("<{name}>")).to_string().len() < 300);
    assert!(refuse(format!("<a>&#{name};</a>")).to_string().len() < 300);
}
