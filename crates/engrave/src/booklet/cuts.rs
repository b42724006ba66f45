//! Where a part can be cut in two without a trace.
//!
//! The engraver gets a part in pieces of a few lines: they are engraved on all cores, and its time grows faster than the
//! length of what it gets. A piece ends only where nothing goes on over the barline (no slur, tie, hairpin, trill line,
//! ending …) and nothing behind it must be announced before it (a new clef, key or metre), so that the pieces are what
//! the whole would have been.

use std::collections::BTreeMap;

use arcata_score::{Part, Score};
use arcata_xml::{Document, Element, Tag};

/// What goes on from one note or sign to another, with the words that MusicXML has for its beginning.
const SPANNING: [&str; 11] = [
    "slur",
    "tied",
    "wavy-line",
    "glissando",
    "slide",
    "wedge",
    "octave-shift",
    "dashes",
    "bracket",
    "pedal",
    "ending",
];

/// For each bar, whether the part can be cut before it.
pub(super) fn cuts(document: &Document, score: &Score, part: &Part) -> Vec<bool> {
    let mut free = vec![true; score.bars.len()];
    let mut open: BTreeMap<(&str, String), usize> = BTreeMap::new();
    for (bar, measure) in part.measures.iter().enumerate() {
        let Some(measure) = measure.and_then(|id| document.element(id)) else { continue };
        for child in measure.children().filter(|child| child.tag() != Tag::ATTRIBUTES) {
            let mut ends: Vec<(&str, String)> = Vec::new();
            let mut begins: Vec<(&str, String)> = Vec::new();
            for sign in child.descendants() {
                let Some(name) = SPANNING.iter().find(|name| **name == sign.name()) else { continue };
                let key = (*name, which(child, sign));
                match sign.attribute("type").as_deref() {
                    Some("stop" | "discontinue") => ends.push(key),
                    Some("continue" | "let-ring" | "change" | "sostenuto") | None => {}
                    Some(_) => begins.push(key),
                }
            }
            beams(child, &mut begins, &mut ends);
            // A note may end one slur and begin another of the same number, in either order.
            for key in ends {
                if let Some(start) = open.remove(&key) {
                    free[start + 1..=bar].fill(false);
                }
            }
            open.extend(begins.into_iter().map(|key| (key, bar)));
        }
    }
    announced(part, &mut free);
    for movement in &score.movements {
        if let Some(bar) = free.get_mut(*movement.bars.start() as usize) {
            *bar = true;
        }
    }
    free
}

/// What tells two signs of a kind apart: a number, and for ties the pitch.
fn which(child: Element<'_>, sign: Element<'_>) -> String {
    if sign.name() == "tied" {
        return child.child(Tag::PITCH).map(|pitch| pitch.source().to_owned()).unwrap_or_default();
    }
    // An ending's number names the passes it is for.
    let number = (sign.name() != "ending").then(|| sign.attribute("number")).flatten();
    number.map(|number| number.into_owned()).unwrap_or_default()
}

/// A beam over the barline.
fn beams(
    note: Element<'_>,
    begins: &mut Vec<(&'static str, String)>,
    ends: &mut Vec<(&'static str, String)>,
) {
    for beam in note.children().filter(|inner| inner.name() == "beam") {
        let number = beam.attribute("number").map(|number| number.into_owned()).unwrap_or_default();
        match beam.text().trim() {
            "begin" => begins.push(("beam", number)),
            "end" => ends.push(("beam", number)),
            _ => {}
        }
    }
}

/// A clef, key or metre that begins with a bar is announced at the end of the line before.
fn announced(part: &Part, free: &mut [bool]) {
    let keys = part.keys.iter().map(|(bar, _)| *bar);
    let clefs = part.clefs.iter().map(|clef| clef.bar);
    for bar in keys.chain(part.meters.iter().map(|(bar, _)| *bar)).chain(clefs) {
        if let Some(bar) = free.get_mut(bar as usize) {
            *bar = false;
        }
    }
}
