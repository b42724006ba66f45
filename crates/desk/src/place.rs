//! A place that somebody types on the page.

use arcata_layer::shorthand;
use arcata_score::Score;
use arcata_score::places::{bars_typed, beat_said};
use serde::Serialize;
use utoipa::ToSchema;

/// A place as it was understood.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub(crate) struct PlaceView {
    /// Index of the first bar.
    #[schema(value_type = u64)]
    pub(crate) first: u32,
    /// Index of the last bar.
    #[schema(value_type = u64)]
    pub(crate) last: u32,
    /// Index of the part, where one is named.
    pub(crate) part: Option<usize>,
    /// The bars as they are typed.
    pub(crate) bars: String,
    /// The beat as it is said, where one is named.
    pub(crate) beat: Option<String>,
}

/// Reads a place; bars are of a movement (an index) unless another is named.
///
/// # Errors
/// Where it is none, or not in the score: what is told.
pub(crate) fn place(score: &Score, text: &str, movement: Option<usize>) -> Result<PlaceView, String> {
    let read = score.passage(text).map_err(|misread| misread.to_string())?;
    let bars = score.bars_of(&read, movement).map_err(|not_there| not_there.to_string())?;
    let (first, last) = (*bars.start(), *bars.end());
    let part = match &read.section {
        Some(name) => {
            let parts = shorthand::parts_named(score, name).map_err(|trouble| trouble.to_string())?;
            parts.first().copied()
        }
        None => None,
    };
    let offset = score.offset_of(part.unwrap_or(0), first, read.from.within);
    let offset = offset.map_err(|no_beat| format!("the bar has {no_beat}"))?;
    Ok(PlaceView {
        first,
        last,
        part,
        bars: bars_typed((score.bar_label(first), score.bar_label(last))),
        beat: offset.map(|offset| beat_said(score.beat_at(part.unwrap_or(0), first, offset))),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_is_read_as_everywhere() {
        let xml = arcata_testkit::musicxml("Viola: 1/4 C4 D4 E4 F4 | 1/8 G4 F4 E4 D4 1/2 C4 | 1/1 C4");
        let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default()).unwrap();
        let score = arcata_score::read(file.document());
        let read = |text: &str| place(&score, text, None);
        let at = |first, last, part, bars: &str, beat: Option<&str>| {
            Ok(PlaceView { first, last, part, bars: bars.to_owned(), beat: beat.map(str::to_owned) })
        };
        assert_eq!(read("2"), at(1, 1, None, "2", None));
        assert_eq!(read("Takte 2 bis 3"), at(1, 2, None, "2-3", None));
        assert_eq!(read("bar 2, beat 1½, Viola"), at(1, 1, Some(0), "2", Some("1½")));
        assert_eq!(read("Bratschen 2 after 1/8"), at(1, 1, Some(0), "2", Some("1½")));
        assert_eq!(read("9").unwrap_err(), "the score has no bar 9; the last one is 3");
        assert_eq!(read("2/9").unwrap_err(), "the bar has 4 beats");
        assert!(read("Tuba 2").is_err());
        assert!(read("😀").unwrap_err().contains("Places are written"));
    }
}
