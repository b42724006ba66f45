//! Edits on a document: patches do what splicing does, and insertions are taken back without a trace.
#![no_main]

use arcata_xml::{Document, Edit, EditList, Editor, Limits, NodeId, Position};
use libfuzzer_sys::fuzz_target;

const INSERTS: [&str; 4] = ["", "text", "<a/>", "♯&#9;"];
const CHILDREN: [&str; 3] = ["new0", "new1", "new2"];

fuzz_target!(|input: &[u8]| {
    let Some((document, choices)) = split(input) else { return };
    let Ok(document) = Document::parse(document.to_vec(), &Limits::default()) else { return };
    splice(&document, choices);
    insert_and_remove(&document, choices);
});

/// The last byte says how many bytes before it choose the edits.
fn split(input: &[u8]) -> Option<(&[u8], &[u8])> {
    let (&count, rest) = input.split_last()?;
    rest.split_at_checked(rest.len().checked_sub(usize::from(count))?)
}

/// A document with something inserted may pass a limit that it kept before.
fn parse(bytes: Vec<u8>) -> Option<Document> {
    let limits = Limits { max_depth: 1000, max_names: 60_000, ..Limits::default() };
    Document::parse(bytes, &limits).ok()
}

fn splice(document: &Document, choices: &[u8]) {
    let text = document.text();
    let edits: Vec<Edit> = choices
        .chunks_exact(3)
        .map(|choice| {
            let start = boundary(text, usize::from(choice[0]) * text.len() / 255);
            let end = boundary(text, start + usize::from(choice[1] % 16));
            Edit::replacement(start..end.max(start), INSERTS[usize::from(choice[2]) % INSERTS.len()])
        })
        .collect();
    let Ok(list) = EditList::new(edits) else { return };
    let mut spliced = text.to_owned();
    for edit in list.edits().iter().rev() {
        spliced.replace_range(edit.range.clone(), &edit.insert);
    }
    let bytes = document.apply(&list).unwrap();
    if document.encoding() == arcata_xml::Encoding::Utf8 {
        assert!(bytes.ends_with(spliced.as_bytes()));
    }
    if let Some(again) = parse(bytes) {
        // An edit may have changed the declared encoding, or written a character as a reference.
        if document.encoding().is_unicode() && again.encoding() == document.encoding() {
            assert_eq!(again.text(), spliced);
        }
    }
}

fn boundary(text: &str, at: usize) -> usize {
    (at.min(text.len())..=text.len()).find(|&at| text.is_char_boundary(at)).unwrap_or(text.len())
}

fn insert_and_remove(document: &Document, choices: &[u8]) {
    if CHILDREN.iter().any(|name| document.tag(name).is_some()) {
        return;
    }
    let mut editor = Editor::new(document);
    let mut inserted = 0;
    for (choice, name) in choices.chunks_exact(2).zip(CHILDREN) {
        let parent = usize::from(choice[0]) * document.elements().len() / 256;
        let parent = document.element(NodeId(parent as u32)).unwrap();
        let child = parent.children().nth(usize::from(choice[1] / 4)).map(|child| child.id());
        let position = match (choice[1] % 4, child) {
            (0, _) => Position::First,
            (1, Some(child)) => Position::Before(child),
            (2, Some(child)) => Position::After(child),
            _ => Position::Last,
        };
        let xml = if inserted == 1 { format!("<{name}><a><b/></a></{name}>") } else { format!("<{name}/>") };
        editor.insert_child(parent, &xml, position).unwrap();
        inserted += 1;
    }
    let grown = parse(document.apply(&editor.finish().unwrap()).unwrap()).unwrap();
    let mut editor = Editor::new(&grown);
    for name in &CHILDREN[..inserted] {
        let child = grown.elements().find(|element| element.name() == *name).unwrap();
        editor.remove(child).unwrap();
    }
    assert_eq!(grown.apply(&editor.finish().unwrap()).unwrap(), document.bytes());
}
