//! A movement cut out of a file by its text alone, as somebody would who keeps each movement in a file of its own.

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::ops::RangeInclusive;

use arcata_xml::{Document, Element, Limits};

use crate::outcome::Result;

/// What `<attributes>` state once and then holds, in the order of the schema. Source: MusicXML 4.0, attributes.
const HOLDS: [&str; 8] =
    ["divisions", "key", "time", "staves", "part-symbol", "instruments", "clef", "transpose"];

/// The bars (by index) of every part, with the attributes that are in force stated in the first one.
pub(super) fn cut(document: &Document, bars: &RangeInclusive<u32>) -> Result<Document> {
    let root = document.root();
    let parts: Vec<Element<'_>> = root.children().filter(|child| child.name() == "part").collect();
    let first = parts.first().ok_or("the score has no parts")?;
    let mut text = document.slice(0..first.range().start).to_owned();
    for part in parts {
        text.push_str(document.slice(part.start_tag_range()));
        let measures: Vec<Element<'_>> = part.children().filter(|child| child.name() == "measure").collect();
        let (from, to) = (*bars.start() as usize, *bars.end() as usize);
        for (index, measure) in measures.iter().enumerate().take(to + 1).skip(from) {
            if index == from {
                text.push_str(document.slice(measure.start_tag_range()));
                text.push_str(&in_force(&measures[..from]));
                text.push_str(document.slice(measure.content_range()));
                text.push_str("</measure>");
            } else {
                text.push_str(measure.source());
            }
        }
        text.push_str("</part>");
    }
    text.push_str("</score-partwise>");
    Document::parse(text.into_bytes(), &Limits::default()).map_err(|problem| problem.to_string())
}

/// What is in force behind some bars, as an element.
fn in_force(measures: &[Element<'_>]) -> String {
    let mut held: BTreeMap<(usize, String), String> = BTreeMap::new();
    for attributes in
        measures.iter().flat_map(|measure| measure.children()).filter(|child| child.name() == "attributes")
    {
        for child in attributes.children() {
            let Some(place) = HOLDS.iter().position(|name| *name == child.name()) else { continue };
            let number = child.attribute("number").unwrap_or_default().into_owned();
            if number.is_empty() {
                // A sign for all staves takes the place of those for one.
                held.retain(|(other, _), _| *other != place);
            }
            held.insert((place, number), child.source().to_owned());
        }
    }
    let mut text = String::new();
    if !held.is_empty() {
        let _ = write!(text, "<attributes>{}</attributes>", held.into_values().collect::<String>());
    }
    text
}
