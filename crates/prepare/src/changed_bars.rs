//! Which bars of a part have changed since it was printed.

use std::collections::BTreeSet;

use arcata_xml::{Document, Element, Limits, Tag};
use similar::{Algorithm, DiffOp, capture_diff_slices};

/// What is a matter of the page and not of the music.
const OF_THE_PAGE: [&str; 12] = [
    "id",
    "color",
    "width",
    "default-x",
    "default-y",
    "relative-x",
    "relative-y",
    "placement",
    "bezier-x",
    "bezier-y",
    "font-size",
    "font-family",
];

/// The bars (from 0) of a part's file that are new or not as they were in an earlier one; bars that were put in or left out shift the others.
/// Where bars were left out, the one behind them counts as changed.
///
/// # Errors
/// A file that is no MusicXML, in words.
///
/// ```
/// let part = |music: &str| arcata_testkit::musicxml(music);
/// let before = part("violin: 1/4 C4 D4 E4 F4 | G4 A4 B4 C5 | 1/1 D5");
/// let after = part("violin: 1/4 C4 D4 E4 F4 | G4!up A4 B4 C5 | 1/1 D5");
/// let changed = arcata_prepare::changed_bars(before.into_bytes(), after.into_bytes());
/// assert_eq!(changed.map(|bars| bars.into_iter().collect()), Ok(vec![1]));
/// ```
pub fn changed_bars(before: Vec<u8>, after: Vec<u8>) -> Result<BTreeSet<u32>, String> {
    let (before, after) = (bars(before)?, bars(after)?);
    let mut changed = BTreeSet::new();
    for change in capture_diff_slices(Algorithm::Myers, &before, &after) {
        let bars = match change {
            DiffOp::Equal { .. } => continue,
            DiffOp::Delete { new_index, .. } => new_index..(new_index + 1).min(after.len()),
            DiffOp::Insert { new_index, new_len, .. } | DiffOp::Replace { new_index, new_len, .. } => {
                new_index..new_index + new_len
            }
        };
        changed.extend(bars.filter_map(|bar| u32::try_from(bar).ok()));
    }
    Ok(changed)
}

/// What is in each bar, as a text: names, attributes and words.
fn bars(file: Vec<u8>) -> Result<Vec<String>, String> {
    let document = Document::parse(file, &Limits::default()).map_err(|problem| problem.to_string())?;
    let part = document.root().child(Tag::PART).ok_or("there is no part in it")?;
    Ok(part.children_named(Tag::MEASURE).map(music).collect())
}

fn music(bar: Element<'_>) -> String {
    let mut text = String::new();
    for child in bar.children() {
        let is_page = child.tag() == Tag::PRINT
            || child.tag() == Tag::ATTRIBUTES
                && child.children().all(|inner| inner.tag() == Tag::MEASURE_STYLE);
        if !is_page {
            child.descendants().for_each(|element| tell(element, &mut text));
        }
    }
    text
}

fn tell(element: Element<'_>, text: &mut String) {
    text.push('<');
    text.push_str(element.name());
    for attribute in element.attributes().filter(|attribute| !OF_THE_PAGE.contains(&attribute.name())) {
        text.push(' ');
        text.push_str(attribute.name());
        text.push('=');
        text.push_str(&attribute.value());
    }
    text.push('>');
    if element.children().next().is_none() {
        text.push_str(element.text().trim());
    }
}
