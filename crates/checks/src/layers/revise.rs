//! Revisions of real works, made by rule, with what became of every note.

use std::collections::BTreeMap;

use arcata_testkit::Random;
use arcata_xml::{Document, Edit, EditList, Element, Limits, NodeId, Tag};

use crate::outcome::Result;

/// What a revision does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum RevisionChange {
    /// Eight bars are cut.
    Cut,
    /// Four new bars are put in.
    Insert,
    /// All bars get other numbers.
    Renumber,
    /// One note in twenty gets another pitch.
    Rewrite,
    /// Everything goes up a major second.
    Transpose,
}

impl RevisionChange {
    pub(super) const ALL: [Self; 5] =
        [Self::Cut, Self::Insert, Self::Renumber, Self::Rewrite, Self::Transpose];

    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Cut => "cut 8 bars",
            Self::Insert => "insert 4 bars",
            Self::Renumber => "renumber",
            Self::Rewrite => "rewrite 5 %",
            Self::Transpose => "transpose",
        }
    }
}

/// The attribute by which notes are known again. It is no attribute of MusicXML: these documents live only
/// in memory.
pub(super) const NAME: &str = "known-as";

/// Notes that a revision gave another pitch, by their names.
pub(super) type Rewritten = std::collections::BTreeSet<String>;

/// A document in which every note has a name.
pub(super) fn named(document: &Document) -> Result<Document> {
    let notes = document.elements().filter(|element| element.tag() == Tag::NOTE).enumerate();
    let edits = notes.map(|(number, note)| {
        let at = note.range().start + "<note".len();
        Edit::insertion(at, format!(" {NAME}=\"{number}\""))
    });
    edited(document, edits.collect())
}

/// The names of a document's notes.
pub(super) fn names(document: &Document) -> BTreeMap<NodeId, String> {
    let notes = document.elements().filter(|element| element.tag() == Tag::NOTE);
    notes.filter_map(|note| Some((note.id(), note.attribute(NAME)?.into_owned()))).collect()
}

/// A revision of a named document; nothing where the work is too short for it.
pub(super) fn revised(
    document: Document,
    changes: &[RevisionChange],
    seed: u64,
) -> Result<Option<(Document, Rewritten)>> {
    let mut random = Random::new(seed);
    let mut rewritten = Rewritten::new();
    let mut now = document;
    for change in changes {
        let edits = match change {
            RevisionChange::Cut => cut(&now, &mut random),
            RevisionChange::Insert => insert(&now, &mut random),
            RevisionChange::Renumber => Some(renumber(&now)),
            RevisionChange::Rewrite => Some(rewrite(&now, &mut random, &mut rewritten)),
            RevisionChange::Transpose => Some(transpose(&now)),
        };
        let Some(edits) = edits else { return Ok(None) };
        now = edited(&now, edits)?;
    }
    Ok(Some((now, rewritten)))
}

fn edited(document: &Document, edits: Vec<Edit>) -> Result<Document> {
    let said = |problem: &dyn std::fmt::Display| problem.to_string();
    let edits = EditList::new(edits).map_err(|problem| said(&problem))?;
    let bytes = document.apply(&edits).map_err(|problem| said(&problem))?;
    Document::parse(bytes, &Limits::default()).map_err(|problem| said(&problem))
}

/// The bars of every part.
fn bars(document: &Document) -> Vec<Vec<Element<'_>>> {
    let parts = document.root().children_named(Tag::PART);
    parts.map(|part| part.children_named(Tag::MEASURE).collect()).collect()
}

/// A stretch of bars that no part begins a signature in, so that it can go or be copied.
fn stretch(document: &Document, length: usize, random: &mut Random) -> Option<usize> {
    let parts = bars(document);
    let count = parts.iter().map(Vec::len).min()?;
    let carries = |bar: &Element<'_>| {
        let mut attributes = bar.children_named(Tag::ATTRIBUTES).flat_map(Element::children);
        attributes.any(|one| {
            [Tag::DIVISIONS, Tag::KEY, Tag::TIME, Tag::STAVES, Tag::TRANSPOSE].contains(&one.tag())
        })
    };
    let plain: Vec<bool> = (0..count).map(|bar| !parts.iter().any(|part| carries(&part[bar]))).collect();
    let free: Vec<usize> = (1..count.saturating_sub(length))
        .filter(|start| plain[*start..*start + length].iter().all(|plain| *plain))
        .collect();
    (!free.is_empty()).then(|| *random.pick(&free))
}

fn cut(document: &Document, random: &mut Random) -> Option<Vec<Edit>> {
    let start = stretch(document, 8, random)?;
    let gone = bars(document)
        .into_iter()
        .map(|part| Edit::deletion(part[start].range().start..part[start + 7].range().end));
    Some(gone.collect())
}

/// Four bars from elsewhere, every note a step higher, so that they are new music.
fn insert(document: &Document, random: &mut Random) -> Option<Vec<Edit>> {
    let (from, to) = (stretch(document, 4, random)?, stretch(document, 1, random)?);
    let put = bars(document).into_iter().map(|part| {
        let source = document.slice(part[from].range().start..part[from + 3].range().end);
        let mut text = String::new();
        let mut rest = source;
        while let Some(at) = rest.find("<step>") {
            let (before, after) = rest.split_at(at + "<step>".len());
            text.push_str(before);
            text.push_str(next_step(&after[..1]));
            rest = &after[1..];
        }
        text.push_str(rest);
        Edit::insertion(part[to].range().start, without_names(&text))
    });
    Some(put.collect())
}

fn without_names(text: &str) -> String {
    let mark = format!(" {NAME}=\"");
    let mut pieces = text.split(&mark);
    let mut out = pieces.next().unwrap_or_default().to_owned();
    for piece in pieces {
        out.push_str(piece.split_once('"').map_or("", |(_, rest)| rest));
    }
    out
}

fn next_step(step: &str) -> &'static str {
    match step {
        "C" => "D",
        "D" => "E",
        "E" => "F",
        "F" => "G",
        "G" => "A",
        "A" => "B",
        _ => "C",
    }
}

fn renumber(document: &Document) -> Vec<Edit> {
    let numbered = bars(document).into_iter().flat_map(|part| part.into_iter().enumerate());
    let edits = numbered.filter_map(|(index, bar)| {
        let number = bar.attributes().find(|attribute| attribute.name() == "number")?;
        let range = bar.start_tag_range();
        let at = document.slice(range.clone()).find(" number=")? + range.start + " number=".len() + 1;
        Some(Edit::replacement(at..at + number.raw_value().len(), (index + 11).to_string()))
    });
    edits.collect()
}

fn rewrite(document: &Document, random: &mut Random, rewritten: &mut Rewritten) -> Vec<Edit> {
    let notes = document.elements().filter(|element| element.tag() == Tag::NOTE);
    let mut edits = Vec::new();
    for note in notes {
        let Some(step) = note.child(Tag::PITCH).and_then(|pitch| pitch.child(Tag::STEP)) else { continue };
        if random.chance(5) {
            edits.push(Edit::replacement(step.content_range(), next_step(&step.text())));
            rewritten.extend(note.attribute(NAME).map(|name| name.into_owned()));
        }
    }
    edits
}

fn transpose(document: &Document) -> Vec<Edit> {
    let pitches = document.elements().filter(|element| element.tag() == Tag::PITCH);
    let edits = pitches.filter_map(|pitch| {
        let step = pitch.child(Tag::STEP)?.text().into_owned();
        let octave: i32 = pitch.child(Tag::OCTAVE)?.text().parse().ok()?;
        let alter = pitch.child(Tag::ALTER).map_or(Ok(0.0), |alter| alter.text().parse::<f64>()).ok()?;
        // From E to F and from B to C it is but a semitone.
        let alter = if matches!(step.as_str(), "E" | "B") { alter + 1.0 } else { alter };
        let octave = if step == "B" { octave + 1 } else { octave };
        let step = next_step(&step);
        let text = format!("<step>{step}</step><alter>{alter}</alter><octave>{octave}</octave>");
        Some(Edit::replacement(pitch.content_range(), text))
    });
    edits.collect()
}
