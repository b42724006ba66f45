//! Test documents are read, and renewed without touching anything else.

use arcata_testkit::suite::{parse, renew};

const DOCUMENT: &str = "# slur-outlasts-bow

Some words.

## Too long
Four slow bars
under one slur.

```profile
player = \"amateur\"
```

```music
violin: pp (1/1 D4 | E4)
```
```finding
old text
```

## Quiet
A short slur.
```music
violin: (1/2 D4 E4)
```
```findings
```

```text
not a case
```
Not said yet.
````music
viola: bar-rest
````
";

#[test]
fn cases_have_their_words_and_lines() {
    let cases = parse(DOCUMENT).unwrap_or_else(|error| panic!("{error}"));
    assert_eq!(cases.len(), 3);
    assert_eq!(
        (cases[0].heading.as_str(), cases[0].sentence.as_str()),
        ("Too long", "Four slow bars under one slur.")
    );
    assert_eq!(
        cases[0].profile.as_ref().map(|block| (block.text.as_str(), block.line)),
        Some(("player = \"amateur\"\n", 10))
    );
    assert_eq!(cases[0].music.line, 14);
    assert!(cases[0].expects("old text") && !cases[0].expects(""));
    assert!(cases[1].expects("") && cases[1].profile.is_none());
    assert_eq!(cases[2].sentence, "Not said yet.");
    assert!(cases[2].expected.is_none() && !cases[2].expects(""));
    assert!(cases.iter().all(|case| case.fixture().is_ok()));
}

#[test]
fn troubles_in_a_fixture_carry_lines_of_the_document() {
    let cases = parse("a\n```music\nviolin: 1/4 D4 h\n```\n").unwrap_or_else(|error| panic!("{error}"));
    let error = cases[0].fixture().expect_err("h is no note");
    assert_eq!((error.line, error.column), (3, 16));
}

#[test]
fn renewing_changes_the_expected_blocks_alone() {
    let texts = ["new\nlines".to_owned(), String::new(), "a fence: ```".to_owned()];
    let renewed = renew(DOCUMENT, &texts).unwrap_or_else(|error| panic!("{error}"));
    let wanted = DOCUMENT.replace("old text\n", "new\nlines\n") + "````findings\na fence: ```\n````\n";
    assert_eq!(renewed, wanted);
    assert_eq!(renew(&renewed, &texts).as_ref(), Ok(&renewed));
    let cases = parse(&renewed).unwrap_or_else(|error| panic!("{error}"));
    for (case, text) in cases.iter().zip(&texts) {
        assert!(case.expects(text), "{case:?}");
    }
}

#[test]
fn line_ends_of_other_systems_stay() {
    let document = DOCUMENT.replace('\n', "\r\n");
    let texts = ["new".to_owned(), String::new(), String::new()];
    let renewed = renew(&document, &texts).unwrap_or_else(|error| panic!("{error}"));
    assert_eq!(renewed, document.replace("old text", "new") + "```findings\r\n```\r\n");
    assert!(parse(&renewed).is_ok_and(|cases| cases.iter().all(|case| case.fixture().is_ok())));
}

#[test]
fn broken_documents_are_refused() {
    for (document, line, trouble) in [
        ("```music\nviolin: bar-rest\n", 1, "never closed"),
        ("x\n```finding\n```\n", 2, "no fixture before"),
        ("```music\nviolin: bar-rest\n```\n```finding\n```\n```findings\n```\n", 6, "a second block"),
        ("```profile\n```\n```profile\n```\n", 3, "a second profile"),
        ("```profile\n```\n", 2, "belongs to no fixture"),
    ] {
        let error = parse(document).expect_err(document);
        assert_eq!(error.line, line, "{document}");
        assert!(error.trouble.contains(trouble), "{error}");
    }
    let error = renew(DOCUMENT, &[]).expect_err("three texts are needed");
    assert!(error.trouble.contains("3 cases, 0 texts"), "{error}");
}
