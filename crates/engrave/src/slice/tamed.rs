//! What the engraving library breaks off over, left out of what it is given. A picture without a fret number or an odd metre
//! is better than none. (Found with the element tests of an open reference library and mutated open scores.)

use std::borrow::Cow;

use arcata_xml::Element;

/// The largest staff, percent, and the most staves that anybody writes for a bowed instrument.
const STAFF_SIZES: std::ops::RangeInclusive<u32> = 10..=400;
const STAVES: std::ops::RangeInclusive<u32> = 1..=8;
/// The shortest note that a metre counts in.
const SHORTEST_BEAT: u32 = 128;

/// A child of `<attributes>` as the library takes it; empty where it takes none of it.
pub(crate) fn attribute<'d>(child: Element<'d>) -> Cow<'d, str> {
    let number = |element: Element<'_>| element.text().trim().parse::<u32>().ok();
    let named = |name: &'static str| child.children().filter(move |inner| inner.name() == name);
    match child.name() {
        // A sign for "no metre" that has a letter in it ends the library.
        "time" if named("senza-misura").any(|sign| !sign.text().trim().is_empty()) => {
            "<time><senza-misura/></time>".into()
        }
        "time" if named("senza-misura").next().is_some() => child.source().into(),
        "time" => {
            let beats = named("beats").all(|beats| {
                let text = beats.text();
                text.split('+').all(|count| count.trim().parse::<u32>().is_ok_and(|count| count > 0))
            });
            let kinds: Vec<Option<u32>> = named("beat-type").map(number).collect();
            let kinds_sound = kinds
                .iter()
                .all(|kind| kind.is_some_and(|kind| kind.is_power_of_two() && kind <= SHORTEST_BEAT));
            let sound = beats && kinds_sound && !kinds.is_empty() && kinds.len() == named("beats").count();
            if sound { child.source().into() } else { Cow::default() }
        }
        "staves" => {
            let sound = number(child).is_some_and(|count| STAVES.contains(&count));
            if sound { child.source().into() } else { Cow::default() }
        }
        "staff-details" => {
            let sound = named("staff-size").all(|size| {
                let size = size.text().trim().parse::<f64>().ok();
                size.is_some_and(|size| {
                    (f64::from(*STAFF_SIZES.start())..=f64::from(*STAFF_SIZES.end())).contains(&size)
                })
            });
            if sound { child.source().into() } else { Cow::default() }
        }
        _ => child.source().into(),
    }
}

/// A child of a bar other than a note as the library takes it, where that is otherwise than as written.
pub(crate) fn child(child: Element<'_>, left_out: impl Fn(&Element<'_>) -> bool) -> Option<String> {
    let is_tame = |inner: Element<'_>| attribute(inner) == inner.source();
    (child.name() == "attributes" && !child.children().all(is_tame)).then(|| attributes(child, left_out))
}

/// An `<attributes>` as the library takes it, without the children that `left_out` names.
pub(crate) fn attributes(element: Element<'_>, left_out: impl Fn(&Element<'_>) -> bool) -> String {
    let kept = element.children().filter(|child| !left_out(child));
    let inner: String = kept.map(|child| attribute(child).into_owned()).collect();
    format!("<attributes>{inner}</attributes>")
}

/// What stands in a note, without fret numbers: on a staff that is no tablature they end the library.
pub(crate) fn note<'d>(note: Element<'d>, is_tablature: impl Fn() -> bool) -> Cow<'d, str> {
    let text = note.raw_text();
    if !text.contains("<fret") || is_tablature() {
        return text.into();
    }
    let mut out = text.to_owned();
    let technical = note.children().filter(|child| child.name() == "notations").flat_map(Element::children);
    for fret in technical.flat_map(Element::children).filter(|child| child.name() == "fret") {
        out = out.replacen(fret.source(), "", 1);
    }
    out.into()
}
