//! Slurs and ties that cross a cut, and the notes that carry their outer ends.
//!
//! An engraver lets a slur that comes from the line before begin in front of the first note, and one that
//! goes on end behind the last (common practice). The carriers are grace notes that are not printed:
//! they take no time, and their slurs and ties are drawn all the same.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::ops::RangeInclusive;

use arcata_score::{ChordRole, NoteId, NoteKind, Part, Pitch, SlurLine, TieEnd};
use arcata_xml::{Document, Element, NodeId, Tag};

use super::rest_slurs::DrawnSlurs;

/// What crosses one end of the slice in one voice.
#[derive(Clone, Debug, Default)]
struct CrossingBow {
    /// Numbers of slurs, and how they are drawn.
    slurs: Vec<(u8, SlurLine)>,
    /// The tied notes inside the slice.
    ties: Vec<NoteId>,
}

/// Which end of the slice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum SliceEnd {
    Before,
    After,
}

/// Notes to be put in: text to stand before, and behind, an element.
#[derive(Clone, Debug, Default)]
pub(super) struct Carriers {
    pub(super) before: BTreeMap<NodeId, String>,
    pub(super) after: BTreeMap<NodeId, String>,
}

/// The carriers that a part needs for a slice.
pub(super) fn carriers(
    document: &Document,
    part: &Part,
    drawn: &DrawnSlurs,
    bars: &RangeInclusive<u32>,
) -> Carriers {
    let bar = |note: NoteId| part.note(note).bar;
    let (first, last) = (*bars.start(), *bars.end());
    let mut before: BTreeMap<u16, CrossingBow> = BTreeMap::new();
    let mut after: BTreeMap<u16, CrossingBow> = BTreeMap::new();
    for slur in &drawn.slurs {
        let voice = part.note(slur.start).voice;
        if bar(slur.start) < first && bar(slur.end) >= first {
            before.entry(voice).or_default().slurs.push((slur.number, slur.line));
        }
        if bar(slur.start) <= last && bar(slur.end) > last {
            after.entry(voice).or_default().slurs.push((slur.number, slur.line));
        }
    }
    let inside = part.notes.iter().enumerate().filter(|(_, note)| bars.contains(&note.bar));
    for (index, note) in inside.clone() {
        let Ok(id) = u32::try_from(index).map(NoteId) else { continue };
        if matches!(note.tie.from_before, TieEnd::Joined(from) if bar(from) < first) {
            before.entry(note.voice).or_default().ties.push(id);
        }
        if matches!(note.tie.to_after, TieEnd::Joined(to) if bar(to) > last) {
            after.entry(note.voice).or_default().ties.push(id);
        }
    }
    let mut carriers = Carriers::default();
    for (voice, crossing) in &before {
        let here = || inside.clone().filter(|(_, note)| note.voice == *voice);
        let Some(anchor) = here().map(|(_, note)| note.node).min() else { continue };
        let sounding = here().find(|(_, note)| is_carrier(note)).map(|(index, _)| index);
        if let Some(text) = carrier(document, part, crossing, sounding, SliceEnd::Before) {
            carriers.before.entry(anchor).or_default().push_str(&text);
        }
    }
    for (voice, crossing) in &after {
        let here = || inside.clone().filter(|(_, note)| note.voice == *voice);
        let Some(anchor) = here().map(|(_, note)| note.node).max() else { continue };
        let sounding = here().rfind(|(_, note)| is_carrier(note)).map(|(index, _)| index);
        if let Some(text) = carrier(document, part, crossing, sounding, SliceEnd::After) {
            carriers.after.entry(anchor).or_default().push_str(&text);
        }
    }
    carriers
}

fn is_carrier(note: &arcata_score::Note) -> bool {
    note.kind == NoteKind::Ordinary
        && note.chord == ChordRole::Main
        && matches!(note.pitch, Pitch::Pitched { .. })
}

/// One grace note that is not printed, or a chord of them where several notes are tied.
fn carrier(
    document: &Document,
    part: &Part,
    crossing: &CrossingBow,
    sounding: Option<usize>,
    side: SliceEnd,
) -> Option<String> {
    let kind = if side == SliceEnd::Before { "start" } else { "stop" };
    let mut heads: Vec<NodeId> = crossing.ties.iter().map(|id| part.note(*id).node).collect();
    let tied = !heads.is_empty();
    if heads.is_empty() {
        heads.push(part.notes.get(sounding?)?.node);
    }
    let mut text = String::new();
    for (index, head) in heads.into_iter().enumerate() {
        let note = document.element(head)?;
        let child = |tag| note.child(tag).map_or("", Element::source);
        let _ = write!(text, r#"<note print-object="no"><grace/>"#);
        text.push_str(if index == 0 { "" } else { "<chord/>" });
        text.push_str(child(Tag::PITCH));
        if tied {
            let _ = write!(text, r#"<tie type="{kind}"/>"#);
        }
        let _ = write!(text, "{}<type>16th</type>{}<notations>", child(Tag::VOICE), child(Tag::STAFF));
        if tied {
            let _ = write!(text, r#"<tied type="{kind}"/>"#);
        }
        for (number, line) in crossing.slurs.iter().filter(|_| index == 0) {
            let dashed = match line {
                SlurLine::Broken if side == SliceEnd::Before => r#" line-type="dashed""#,
                _ => "",
            };
            let _ = write!(text, r#"<slur type="{kind}" number="{number}"{dashed}/>"#);
        }
        text.push_str("</notations></note>");
    }
    Some(text)
}
