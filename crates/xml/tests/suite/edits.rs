//! Edits change what they name and nothing else.

use arcata_xml::{Document, Edit, EditError, EditList, Editor, Limits, Position, Tag};

use crate::support::{Written, find, find_named, parse, refuse};

fn inserted(before: &str, inserts: &[(&str, &str, Position)]) -> String {
    let document = parse(before);
    let mut editor = Editor::new(&document);
    for (parent, xml, position) in inserts {
        editor.insert_child(find_named(&document, parent), xml, *position).unwrap();
    }
    String::from_utf8(document.apply(&editor.finish().unwrap()).unwrap()).unwrap()
}

fn removed(before: &str, names: &[&str]) -> String {
    let document = parse(before);
    let mut editor = Editor::new(&document);
    for name in names {
        editor.remove(find_named(&document, name)).unwrap();
    }
    String::from_utf8(document.apply(&editor.finish().unwrap()).unwrap()).unwrap()
}

/// Inserts, checks the outcome, removes what was inserted and checks that nothing is left of it.
fn insert_and_remove(before: &str, parent: &str, position: Position, after: &str) {
    let document = parse(before);
    let mut editor = Editor::new(&document);
    editor.insert_child(find_named(&document, parent), "<up-bow/>", position).unwrap();
    let bytes = document.apply(&editor.finish().unwrap()).unwrap();
    assert_eq!(std::str::from_utf8(&bytes).unwrap(), after);

    let document = Document::parse(bytes, &Limits::default()).unwrap();
    let mut editor = Editor::new(&document);
    editor.remove(find(&document, Tag::UP_BOW)).unwrap();
    let bytes = document.apply(&editor.finish().unwrap()).unwrap();
    assert_eq!(std::str::from_utf8(&bytes).unwrap(), before);
}

#[test]
fn a_new_child_takes_a_line_like_its_neighbours() {
    let before = "<a>\r\n\t<b>\r\n\t\t<c/>\r\n\r\n\t\t<d/>\r\n\t</b>\r\n</a>";
    let c = parse(before).root().descendants().nth(1).unwrap().id();
    let last = before.replace("<d/>", "<d/>\r\n\t\t<up-bow/>");
    insert_and_remove(before, "b", Position::Last, &last);
    let first = before.replace("<c/>", "<up-bow/>\r\n\t\t<c/>");
    insert_and_remove(before, "b", Position::First, &first);
    insert_and_remove(before, "b", Position::Before(c), &first);
    let behind = before.replace("<c/>", "<c/>\r\n\t\t<up-bow/>");
    insert_and_remove(before, "b", Position::After(c), &behind);
}

#[test]
fn a_new_child_joins_a_line_without_blanks() {
    insert_and_remove("<a><b><c/></b></a>", "b", Position::Last, "<a><b><c/><up-bow/></b></a>");
    insert_and_remove("<a><b/></a>", "b", Position::Last, "<a><b><up-bow/></b></a>");
    insert_and_remove("<a><b x='1' /></a>", "b", Position::Last, "<a><b x='1' ><up-bow/></b></a>");
    insert_and_remove("<a><b></b></a>", "b", Position::Last, "<a><b> <up-bow/></b></a>");
    insert_and_remove("<a/>", "a", Position::First, "<a><up-bow/></a>");
}

#[test]
fn an_empty_tag_is_opened_and_closed_again() {
    insert_and_remove(
        "<a>\n  <b>\n    <c/>\n  </b>\n</a>",
        "c",
        Position::Last,
        "<a>\n  <b>\n    <c>\n      <up-bow/>\n    </c>\n  </b>\n</a>",
    );
    insert_and_remove(
        "<x>\n   <c />\n</x>",
        "c",
        Position::First,
        "<x>\n   <c >\n      <up-bow/>\n   </c>\n</x>",
    );
    insert_and_remove("<!-- x -->\n<c/>\n", "c", Position::First, "<!-- x -->\n<c>\n  <up-bow/>\n</c>\n");
}

#[test]
fn elements_that_are_empty_in_other_ways_stay_so() {
    let before = "<a>\n  <b></b>\n</a>";
    insert_and_remove(before, "b", Position::Last, "<a>\n  <b>\n    <up-bow/></b>\n</a>");
    // One blank more tells this from an empty tag that was opened.
    let before = "<a>\n  <b>\n  </b>\n</a>";
    insert_and_remove(before, "b", Position::Last, "<a>\n  <b>\n     <up-bow/>\n  </b>\n</a>");
    let before = "<a>\n  <b>\n    <!-- c -->\n  </b>\n</a>";
    let after = "<a>\n  <b>\n    <!-- c -->\n    <up-bow/>\n  </b>\n</a>";
    insert_and_remove(before, "b", Position::Last, after);
}

#[test]
fn text_keeps_its_blanks() {
    insert_and_remove("<a>\n <b> x </b></a>", "b", Position::Last, "<a>\n <b> x <up-bow/></b></a>");
    insert_and_remove("<a>\n <b> x </b></a>", "b", Position::First, "<a>\n <b><up-bow/> x </b></a>");
    insert_and_remove(
        "<b>x\n <c/> y</b>",
        "b",
        Position::After(parse("<b><c/></b>").elements().last().unwrap().id()),
        "<b>x\n <c/><up-bow/> y</b>",
    );
}

#[test]
fn a_new_element_with_children_is_laid_out() {
    let before = "<note>\n  <duration>1</duration>\n</note>";
    let notations = "<notations><technical><up-bow/><fingering>1 &amp; 2</fingering></technical></notations>";
    let after = inserted(before, &[("note", notations, Position::Last)]);
    assert_eq!(
        after,
        "<note>\n  <duration>1</duration>\n  <notations>\n    <technical>\n      <up-bow/>\n      \
         <fingering>1 &amp; 2</fingering>\n    </technical>\n  </notations>\n</note>"
    );
}

#[test]
fn a_new_element_on_a_line_with_others_stays_on_it() {
    let after = inserted(
        "<note><duration>1</duration></note>",
        &[("note", " <notations>\n <technical/></notations>\n", Position::Last)],
    );
    assert_eq!(after, "<note><duration>1</duration><notations>\n <technical/></notations></note>");
}

#[test]
fn several_new_children_keep_their_order_and_go_one_by_one_or_all_at_once() {
    for before in [
        "<a>\n <b/>\n</a>",
        "<a>\n <b />\n</a>",
        "<a>\n <b></b>\n</a>",
        "<a>\n <b>\n </b>\n</a>",
        "<a>\n <b>\n  <q/>\n </b>\n</a>",
        "<a><b/></a>",
        "<a><b></b></a>",
        "<a><b><q/></b></a>",
        "<a> <b> <q/> </b></a>",
    ] {
        let inserts = [
            ("b", "<x/>", Position::Last),
            ("b", "<y><z/></y>", Position::Last),
            ("b", "<w/>", Position::First),
        ];
        let after = inserted(before, &inserts);
        assert!(after.find("<x/>") < after.find("<y>"), "{after}");
        for order in [["x", "y", "w"], ["w", "y", "x"], ["y", "x", "w"]] {
            assert_eq!(removed(&after, &order), before, "all at once from {after}");
            let one_by_one = order.iter().fold(after.clone(), |text, name| removed(&text, &[name]));
            assert_eq!(one_by_one, before, "one by one from {after}");
        }
        let stepwise = inserts.iter().fold(before.to_owned(), |text, insert| inserted(&text, &[*insert]));
        assert_eq!(removed(&stepwise, &["w", "x", "y"]), before, "{stepwise}");
    }
}

#[test]
fn removing_an_element_takes_its_line() {
    let before = "<a>\n  <b/>\n\n  <!-- c -->\n  <d>\n    <e/>\n  </d>\n</a>";
    assert_eq!(removed(before, &["d"]), "<a>\n  <b/>\n\n  <!-- c -->\n</a>");
    assert_eq!(removed(before, &["b"]), "<a>\n\n  <!-- c -->\n  <d>\n    <e/>\n  </d>\n</a>");
    assert_eq!(removed(before, &["e"]), "<a>\n  <b/>\n\n  <!-- c -->\n  <d/>\n</a>");
    assert_eq!(removed("<a>x <b/> y</a>", &["b"]), "<a>x  y</a>");
}

#[test]
fn edits_are_sorted_and_keep_their_order_at_one_place() {
    let document = parse("<a>xyz</a>");
    let list = EditList::new(vec![
        Edit::replacement(4..5, "Y"),
        Edit::insertion(4, "1"),
        Edit::insertion(3, "0"),
        Edit::insertion(4, "2"),
        Edit::insertion(5, "3"),
    ])
    .unwrap();
    assert_eq!(document.apply(&list).unwrap(), b"<a>0x12Y3z</a>");
}

#[test]
fn edits_that_do_not_fit_are_refused() {
    let document = parse("<a>♯x</a>");
    let refuse = |edits: Vec<Edit>| EditList::new(edits).and_then(|list| document.apply(&list)).unwrap_err();
    let backwards = Edit { range: std::ops::Range { start: 4, end: 3 }, insert: String::new() };
    assert!(matches!(refuse(vec![backwards]), EditError::Backwards { .. }));
    let error = refuse(vec![Edit::deletion(3..7), Edit::insertion(6, "y")]);
    assert_eq!(
        error.to_string(),
        "two edits change the same text, bytes 3..7 and 6..6; \
         make one first, read the file again, then make the other"
    );
    assert!(matches!(refuse(vec![Edit::insertion(4, "y")]), EditError::SplitsCharacter { .. }));
    assert!(matches!(refuse(vec![Edit::insertion(99, "y")]), EditError::PastTheEnd { length: 11, .. }));
}

#[test]
fn elements_that_cannot_be_inserted_or_removed() {
    let document = parse("<a><b/><c/></a>");
    let other = parse("<a><b/></a>");
    let mut editor = Editor::new(&document);
    let b = find_named(&document, "b");
    for xml in ["", "text", "<x>", "<x></y>"] {
        let error = editor.insert_child(b, xml, Position::Last).unwrap_err();
        assert!(matches!(error, EditError::Malformed { .. }), "{xml}: {error}");
    }
    for xml in ["<x/><y/>", "<!-- c --><x/>", "<?xml version='1.0'?><x/>", "<x/><!-- c -->"] {
        let error = editor.insert_child(b, xml, Position::Last).unwrap_err();
        assert_eq!(error, EditError::NotOneElement, "{xml}");
    }
    let c = find_named(&document, "c").id();
    let error = editor.insert_child(b, "<x/>", Position::Before(c)).unwrap_err();
    assert!(matches!(error, EditError::NotAChild { .. }));
    assert_eq!(editor.remove(document.root()).unwrap_err(), EditError::RemovesRoot);
    let mut elsewhere = Editor::new(&other);
    assert_eq!(elsewhere.remove(b).unwrap_err(), EditError::OtherDocument);
    assert_eq!(elsewhere.insert_child(b, "<x/>", Position::Last).unwrap_err(), EditError::OtherDocument);
    editor.insert_child(b, "<x/>", Position::Last).unwrap();
    editor.remove(b).unwrap();
    assert!(matches!(editor.finish().unwrap_err(), EditError::Overlap { .. }));
}

#[test]
fn characters_that_an_encoding_lacks_become_references() {
    for (name, outcome) in [
        ("ISO-8859-1", &b"\xE9&#8364;&#9839;"[..]),
        ("windows-1252", b"\xE9\x80&#9839;"),
        ("US-ASCII", b"&#233;&#8364;&#9839;"),
    ] {
        let text = format!("<?xml version='1.0' encoding='{name}'?><a>x</a>");
        let document = parse(&text);
        let at = document.root().content_range();
        let list = EditList::new(vec![Edit::replacement(at, "é€♯")]).unwrap();
        let bytes = document.apply(&list).unwrap();
        let expected = [&text.as_bytes()[..text.len() - 5], outcome, b"</a>"].concat();
        assert_eq!(bytes, expected, "{name}");
        let again = Document::parse(bytes, &Limits::default()).unwrap();
        assert_eq!(again.root().text(), "é€♯");
        let mut editor = Editor::new(&again);
        let error = editor.insert_child(again.root(), "<♯/>", Position::Last).unwrap_err();
        assert!(matches!(error, EditError::NameNotInEncoding { .. } | EditError::Malformed { .. }));
    }
}

#[test]
fn the_mark_and_the_encoding_stay() {
    for written in [Written::MarkedUtf8, Written::LittleEndian, Written::BigEndian] {
        let text = "<a>\r\n\t<b>♯</b>\r\n</a>";
        let document = Document::parse(written.bytes(text), &Limits::default()).unwrap();
        let mut editor = Editor::new(&document);
        editor.insert_child(document.root(), "<c>𝄞</c>", Position::Last).unwrap();
        let bytes = document.apply(&editor.finish().unwrap()).unwrap();
        let expected = "<a>\r\n\t<b>♯</b>\r\n\t<c>𝄞</c>\r\n</a>";
        assert_eq!(bytes, written.bytes(expected), "{written:?}");
    }
}

#[test]
fn an_edited_document_that_is_no_longer_well_formed_is_refused_when_read() {
    let document = parse("<a><b/></a>");
    let list = EditList::new(vec![Edit::deletion(4..5)]).unwrap();
    refuse(document.apply(&list).unwrap());
}
