//! Random documents, with what they must read as.

use proptest::prelude::*;

/// A node of a document.
#[derive(Clone, Debug)]
pub(crate) enum Piece {
    Element { name: String, attributes: Vec<String>, children: Vec<Piece>, form: u8 },
    Text(String),
    Literal(String),
    Comment(String),
    Instruction(String),
}

/// How a document is set out: the line break, how deep a level is set in, and whether at all.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Manner {
    pub(crate) line_break: &'static str,
    pub(crate) step: &'static str,
}

const NAMES: [&str; 10] =
    ["note", "pitch", "technical", "notations", "words", "x:own", "Ä", "_", "a.b-c", "score-partwise"];

fn text() -> impl Strategy<Value = String> {
    let piece = prop_oneof![
        4 => "[a-z0-9 ]{1,6}",
        1 => Just("&amp;".to_owned()),
        1 => Just("&#9839;".to_owned()),
        1 => Just("&own;".to_owned()),
        1 => "[éß€“♯𝄞>\"']{1,3}",
        1 => "[ \t\r\n]{1,3}",
    ];
    prop::collection::vec(piece, 1..4).prop_map(|pieces| pieces.concat())
}

fn leaf() -> impl Strategy<Value = Piece> {
    prop_oneof![
        3 => text().prop_map(Piece::Text),
        1 => "[a-z<&é ]{0,5}".prop_map(Piece::Literal),
        1 => "[a-z<&♯ ]{0,5}".prop_map(Piece::Comment),
        1 => "[a-z<& ]{0,5}".prop_map(Piece::Instruction),
    ]
}

fn element(children: impl Strategy<Value = Vec<Piece>>) -> impl Strategy<Value = Piece> {
    let attributes = prop::collection::vec("[a-zé&;♯ ]{0,4}", 0..3).prop_map(|values| {
        let values = values.into_iter().enumerate();
        values.map(|(index, value)| format!(" a{index} = '{}'", value.replace('&', "&lt;"))).collect()
    });
    (prop::sample::select(&NAMES[..]), attributes, children, 0..4u8).prop_map(
        |(name, attributes, children, form)| Piece::Element {
            name: name.to_owned(),
            attributes,
            children,
            form,
        },
    )
}

/// The root of a document.
pub(crate) fn root() -> impl Strategy<Value = Piece> {
    let below = element(Just(Vec::new())).boxed();
    let piece = below.prop_recursive(4, 40, 5, |inner| {
        let elements = prop::collection::vec(inner.clone(), 0..5);
        let mixed = prop::collection::vec(prop_oneof![2 => inner, 1 => leaf()], 0..5);
        prop_oneof![3 => element(elements), 2 => element(mixed)]
    });
    piece.boxed()
}

pub(crate) fn manner() -> impl Strategy<Value = Manner> {
    let line_break = prop::sample::select(vec!["\n", "\r\n", "\r", "", " ", "\n\n"]);
    let step = prop::sample::select(vec!["  ", "\t", "    ", "", " "]);
    (line_break, step).prop_map(|(line_break, step)| Manner { line_break, step })
}

/// The document as text.
pub(crate) fn written(root: &Piece, declaration: &str, manner: Manner) -> String {
    let mut out = declaration.to_owned();
    write_piece(root, manner, 0, &mut out);
    out.push_str(manner.line_break);
    out
}

fn write_piece(piece: &Piece, manner: Manner, depth: usize, out: &mut String) {
    match piece {
        Piece::Text(text) => out.push_str(text),
        Piece::Literal(text) => out.push_str(&format!("<![CDATA[{text}]]>")),
        Piece::Comment(text) => out.push_str(&format!("<!--{text}-->")),
        Piece::Instruction(text) => out.push_str(&format!("<?p {text}?>")),
        Piece::Element { name, attributes, children, form } => {
            write_lead(manner, depth, out);
            let attributes = attributes.concat();
            match (children.is_empty(), form) {
                (true, 0) => return out.push_str(&format!("<{name}{attributes}/>")),
                (true, 1) => return out.push_str(&format!("<{name}{attributes} />")),
                (true, 2) => return out.push_str(&format!("<{name}{attributes}></{name}>")),
                _ => out.push_str(&format!("<{name}{attributes}>")),
            }
            for child in children {
                write_piece(child, manner, depth + 1, out);
            }
            if !matches!(children.last(), Some(Piece::Text(_))) {
                write_lead(manner, depth, out);
            }
            out.push_str(&format!("</{name}>"));
        }
    }
}

fn write_lead(manner: Manner, depth: usize, out: &mut String) {
    out.push_str(manner.line_break);
    if !manner.line_break.is_empty() {
        out.push_str(&manner.step.repeat(depth));
    }
}

/// The names of all elements in the order of their start tags.
pub(crate) fn names(piece: &Piece, out: &mut Vec<String>) {
    if let Piece::Element { name, children, .. } = piece {
        out.push(name.clone());
        children.iter().for_each(|child| names(child, out));
    }
}

/// The text directly inside each element without its blanks, in the order of the start tags.
pub(crate) fn texts(piece: &Piece, out: &mut Vec<String>) {
    let Piece::Element { children, .. } = piece else { return };
    let mut own = String::new();
    for child in children {
        match child {
            Piece::Text(text) => own.push_str(&text.replace("&amp;", "&").replace("&#9839;", "♯")),
            Piece::Literal(text) => own.push_str(text),
            _ => {}
        }
    }
    out.push(own.chars().filter(|c| !c.is_ascii_whitespace()).collect());
    children.iter().for_each(|child| texts(child, out));
}
