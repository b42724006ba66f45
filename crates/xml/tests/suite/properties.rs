//! What holds for every document, tried on random ones.

use arcata_xml::{Document, Edit, EditList, Editor, Element, Limits, NodeId, Position, open_score};
use proptest::prelude::*;
use proptest::sample::Index;

use crate::packages::{container, package};
use crate::random::{Manner, Piece, manner, names, root, texts, written};
use crate::support::{ALL_WRITTEN, Written, walk};

/// A random document in a random encoding: its text, its bytes and what it was made of.
fn document() -> impl Strategy<Value = (Written, String, Piece)> {
    (prop::sample::select(&ALL_WRITTEN[..]), root(), manner()).prop_map(
        |(encoding, root, manner): (Written, Piece, Manner)| {
            (encoding, written(&root, encoding.declaration(), manner), root)
        },
    )
}

fn read(encoding: Written, text: &str) -> (Document, Vec<u8>) {
    let bytes = encoding.bytes(text);
    (Document::parse(bytes.clone(), &Limits::default()).unwrap(), bytes)
}

/// Where one of the new elements goes.
fn position(parent: Element<'_>, choice: Index) -> Position {
    let children: Vec<NodeId> = parent.children().map(|child| child.id()).collect();
    match choice.index(2 + 2 * children.len()) {
        0 => Position::First,
        1 => Position::Last,
        n if n % 2 == 0 => Position::Before(children[n / 2 - 1]),
        n => Position::After(children[n / 2 - 1]),
    }
}

const NEW: [&str; 4] = [
    "<new0/>",
    "<new1><inner/><inner a='1'><deep/></inner></new1>",
    "<new2>text &amp; <b/> ♯</new2>",
    "<new3>\n  <x/>\n\n</new3>",
];

fn remove(document: &Document, which: &[usize]) -> Vec<u8> {
    let mut editor = Editor::new(document);
    for number in which {
        let name = format!("new{number}");
        let element = document.elements().find(|element| element.name() == name).unwrap();
        editor.remove(element).unwrap();
    }
    document.apply(&editor.finish().unwrap()).unwrap()
}

fn parse(bytes: Vec<u8>) -> Document {
    Document::parse(bytes, &Limits::default()).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn documents_come_out_as_they_went_in((encoding, text, root) in document()) {
        let text = encoding.narrowed(&text);
        let (document, bytes) = read(encoding, &text);
        walk(&document);
        prop_assert_eq!(document.text(), &text);
        prop_assert_eq!(document.bytes(), &bytes);
        prop_assert_eq!(&document.apply(&EditList::default()).unwrap(), &bytes);
        let (mut expected, mut expected_texts) = (Vec::new(), Vec::new());
        names(&root, &mut expected);
        texts(&root, &mut expected_texts);
        // Names are narrow enough for every encoding; texts are not.
        prop_assert!(document.elements().map(|element| element.name()).eq(&expected));
        for (element, expected) in document.elements().zip(&expected_texts) {
            let text: String = element.text().chars().filter(|c| !c.is_ascii_whitespace()).collect();
            // A character written as a reference is read in any encoding.
            prop_assert_eq!(text.replace('♯', "?"), encoding.narrowed(expected).replace('♯', "?"));
        }
    }

    #[test]
    fn edits_do_what_splicing_does(
        (encoding, text, _) in document(),
        cuts in prop::collection::vec(any::<Index>(), 0..9),
        inserts in prop::collection::vec("[a-z<>é ]{0,4}", 9),
    ) {
        let text = encoding.narrowed(&text);
        let (document, _) = read(encoding, &text);
        let boundaries: Vec<usize> = (0..=text.len()).filter(|&at| text.is_char_boundary(at)).collect();
        let mut cuts: Vec<usize> = cuts.iter().map(|cut| boundaries[cut.index(boundaries.len())]).collect();
        cuts.sort_unstable();
        let mut edits: Vec<Edit> = cuts
            .chunks_exact(2)
            .zip(&inserts)
            .map(|(cut, insert)| Edit::replacement(cut[0]..cut[1], insert.clone()))
            .collect();
        let mut spliced = text.clone();
        for edit in edits.iter().rev() {
            spliced.replace_range(edit.range.clone(), &edit.insert);
        }
        edits.reverse();
        // Two insertions at one place keep their order, which the reversal has turned round.
        let distinct = edits.windows(2).all(|pair| pair[0].range != pair[1].range);
        if let (true, Ok(list)) = (distinct, EditList::new(edits)) {
            prop_assert_eq!(document.apply(&list).unwrap(), encoding.bytes(&spliced));
        }
    }

    #[test]
    fn inserting_and_removing_leaves_no_trace(
        (encoding, text, _) in document(),
        places in prop::collection::vec((any::<Index>(), any::<Index>()), 1..=NEW.len()),
        stepwise in any::<[bool; 2]>(),
        turned in any::<bool>(),
    ) {
        let text = encoding.narrowed(&text);
        let (mut document, bytes) = read(encoding, &text);
        let elements = document.elements().len();
        let insert = |document: &Document, some: &[usize]| {
            let mut editor = Editor::new(document);
            for &number in some {
                let (parent, place) = places[number];
                let old = document.elements().filter(|e| !is_new(*e)).nth(parent.index(elements)).unwrap();
                editor.insert_child(old, NEW[number], position(old, place)).unwrap();
            }
            document.apply(&editor.finish().unwrap()).unwrap()
        };
        let all: Vec<usize> = (0..places.len()).collect();
        if stepwise[0] {
            for number in &all {
                document = parse(insert(&document, &[*number]));
            }
        } else {
            document = parse(insert(&document, &all));
        }
        walk(&document);
        let mut order = all.clone();
        if turned {
            order.reverse();
        }
        if stepwise[1] {
            for number in &order {
                document = parse(remove(&document, &[*number]));
            }
            prop_assert_eq!(document.bytes(), &bytes);
        } else {
            prop_assert_eq!(remove(&document, &order), bytes);
        }
    }

    #[test]
    fn random_bytes_are_read_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        try_to_read(bytes);
    }

    #[test]
    fn random_markup_is_read_or_refused(
        pieces in prop::collection::vec(prop::sample::select(&MARKUP[..]), 0..40),
    ) {
        try_to_read(pieces.concat().into_bytes());
    }

    #[test]
    fn spoilt_documents_are_read_or_refused(
        (encoding, text, _) in document(),
        spoils in prop::collection::vec((any::<Index>(), any::<u8>(), 0..3u8), 1..4),
        packed in any::<bool>(),
    ) {
        let mut bytes = encoding.bytes(&encoding.narrowed(&text));
        if packed {
            let inside = container("score.xml", "");
            bytes = package(&[("META-INF/container.xml", inside.as_bytes()), ("score.xml", &bytes)]);
        }
        for (at, byte, kind) in spoils {
            let at = at.index(bytes.len());
            match kind {
                0 => bytes[at] = byte,
                1 => bytes.insert(at, byte),
                _ => drop(bytes.drain(at..(at + usize::from(byte)).min(bytes.len() - 1).max(at))),
            }
        }
        try_to_read(bytes);
    }
}

const MARKUP: [&str; 32] = [
    "<",
    ">",
    "/>",
    "</",
    "<a>",
    "</a>",
    "<a",
    "<b/>",
    "=",
    "'",
    "\"",
    " x='1'",
    "&",
    ";",
    "&amp;",
    "&#",
    "<!--",
    "-->",
    "<![CDATA[",
    "]]>",
    "<?",
    "?>",
    "<?xml version='1.0' encoding='",
    "<!DOCTYPE",
    "[",
    "]",
    "<!ENTITY",
    " ",
    "\r\n",
    "é",
    "\u{FEFF}",
    "utf-16",
];

fn is_new(element: Element<'_>) -> bool {
    std::iter::successors(Some(element), |element| element.parent())
        .any(|element| element.name().starts_with("new"))
}

/// Whatever comes, no panic; and what is read is read rightly.
fn try_to_read(bytes: Vec<u8>) {
    match open_score(bytes.clone(), &Limits::default()) {
        Ok(file) => {
            walk(file.document());
            assert_eq!(file.write(file.document().bytes()).unwrap(), bytes);
        }
        Err(error) => assert!(error.to_string().contains("; "), "{error}"),
    }
}
