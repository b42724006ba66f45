//! Each limit is kept, and says its value.

use std::time::{Duration, Instant};

use arcata_xml::{Document, Limited, Limits, XmlErrorKind};

use crate::support::{Written, parse, refuse, walk};

fn refuse_within(text: &str, limits: &Limits, limit: Limited, value: usize) {
    let error = Document::parse(text.as_bytes().to_vec(), limits).unwrap_err();
    assert_eq!(error.kind(), &XmlErrorKind::OverLimit { limit, value });
    assert!(error.to_string().contains(&value.to_string()), "{error}");
    assert!(error.to_string().ends_with("; if the file is a real score, raise the limit"), "{error}");
}

#[test]
fn depth() {
    let limits = Limits::default();
    let deep = |depth: usize| format!("{}{}", "<a>".repeat(depth), "</a>".repeat(depth));
    walk(&parse(&deep(limits.max_depth)));
    refuse_within(&deep(limits.max_depth + 1), &limits, Limited::Depth, 128);
    refuse_within(&deep(100_000), &limits, Limited::Depth, 128);
    // Reading and walking need no stack, so that whoever raises the limit is safe.
    let raised = Limits { max_depth: 100_000, ..Limits::default() };
    let document = Document::parse(deep(100_000).into_bytes(), &raised).unwrap();
    assert_eq!(document.elements().len(), 100_000);
}

#[test]
fn length() {
    let limits = Limits { max_bytes: 10, ..Limits::default() };
    assert!(Document::parse(b"<abcdefg/>".to_vec(), &limits).is_ok());
    refuse_within("<abcdefgh/>", &limits, Limited::Bytes, 10);
    // The text may be longer than the file: each of these is three bytes of UTF-8 and two of UTF-16.
    let bytes = Written::LittleEndian.bytes(&format!("<a>{}</a>", "♯".repeat(100)));
    let limits = Limits { max_bytes: bytes.len(), ..Limits::default() };
    assert!(Document::parse(bytes, &limits).is_err());
}

#[test]
fn elements() {
    let limits = Limits { max_elements: 3, ..Limits::default() };
    assert!(Document::parse(b"<a><b/><b/></a>".to_vec(), &limits).is_ok());
    refuse_within("<a><b/><b/><b/></a>", &limits, Limited::Elements, 3);
}

#[test]
fn names() {
    let many = |count: usize| {
        let inside: String = (0..count - 1).map(|number| format!("<n{number}/>")).collect();
        format!("<invented>{inside}<note/></invented>")
    };
    let limits = Limits::default();
    walk(&parse(&many(limits.max_names)));
    refuse_within(&many(limits.max_names + 1), &limits, Limited::Names, 4096);
    let raised = Limits { max_names: usize::MAX, ..limits };
    let error = Document::parse(many(70_000).into_bytes(), &raised).unwrap_err();
    assert!(matches!(error.kind(), XmlErrorKind::OverLimit { limit: Limited::Names, .. }));
}

#[test]
fn attributes() {
    let many = |count: usize| {
        let attributes: String = (0..count).map(|number| format!(" a{number}='x'")).collect();
        format!("<a{attributes}/>")
    };
    let limits = Limits::default();
    walk(&parse(&many(limits.max_attributes)));
    refuse_within(&many(limits.max_attributes + 1), &limits, Limited::Attributes, 256);
    refuse_within(&many(100_000), &limits, Limited::Attributes, 256);
}

#[test]
fn a_huge_attribute_is_only_long() {
    let long = "x".repeat(8 << 20);
    let document = parse(&format!("<a b='{long}' c='1'/>"));
    assert_eq!(document.root().attribute("b").unwrap().len(), long.len());
    assert_eq!(document.root().attribute("c").unwrap(), "1");
}

/// Inputs that make careless readers take time with the square of their length.
#[test]
#[allow(clippy::disallowed_methods, reason = "the clock is what is tested")]
fn hostile_files_are_read_in_step_with_their_length() {
    let start = Instant::now();
    let n = 400_000;
    refuse("<".repeat(n));
    refuse("<a ".repeat(n));
    refuse("<!--".repeat(n));
    refuse(format!("<a>{}", "&".repeat(n)));
    refuse(format!("<a b='{}", "&amp;".repeat(n)));
    refuse(format!("<a>{}", "<![CDATA[".repeat(n)));
    refuse(format!("<!DOCTYPE a [{}", "<!ENTITY ".repeat(n)));
    refuse(format!("<?xml {}", "encoding=".repeat(n)));
    parse(&format!("<a>{}</a>", "&x;".repeat(n)));
    parse(&format!("<a>{}</a>", "<!---->".repeat(n)));
    let flat = parse(&format!("<a>{}</a>", "x<b/>&lt;".repeat(n / 4)));
    assert_eq!(flat.root().text().len(), n / 2);
    for element in flat.elements() {
        assert_eq!(element.line_column().line, 1);
    }
    assert!(start.elapsed() < Duration::from_secs(60), "{:?}", start.elapsed());
}
