//! Every bar of made-up scores, read back from the MusicXML element by element.

use arcata_testkit::{Detail, Fixture, Fraction, NoteStands, ScoreShape, random_fixture};
use quick_xml::Reader;
use quick_xml::events::Event;

/// What the XML of one part or one measure adds up to.
#[derive(Default)]
struct Sums {
    divisions: i64,
    /// Each measure's furthest point, in whole notes.
    bars: Vec<Fraction>,
    /// Onset and length of each note that takes time.
    notes: Vec<(Fraction, Fraction)>,
}

/// Walks a partwise document with no help from the crate but its text.
fn sums(xml: &str) -> Vec<Sums> {
    let mut reader = Reader::from_str(xml);
    let mut parts: Vec<Sums> = Vec::new();
    let (mut at, mut furthest, mut before) = (0, 0, 0);
    let (mut text, mut duration, mut chord) = (String::new(), None, false);
    loop {
        let event = reader.read_event().unwrap_or_else(|error| panic!("not well-formed: {error}\n{xml}"));
        let name = match &event {
            Event::Start(start) | Event::Empty(start) => start.name().as_ref().to_owned(),
            Event::End(end) => end.name().as_ref().to_owned(),
            Event::Text(content) => {
                text = content.as_ref().to_owned();
                continue;
            }
            Event::Eof => return parts,
            _ => continue,
        };
        let start = matches!(event, Event::Start(_));
        match (name.as_str(), start) {
            ("part", true) => parts.push(Sums::default()),
            ("measure", true) => (at, furthest) = (0, 0),
            ("note", true) => (duration, chord) = (None, false),
            ("chord", false) => chord = true,
            ("duration", false) => duration = Some(text.clone()),
            ("divisions", false) => last(&mut parts).divisions = whole(Some(&text)),
            ("backup", false) => at -= whole(duration.as_ref()),
            ("forward", false) => at += whole(duration.as_ref()),
            ("note", false) => {
                let part = last(&mut parts);
                let length = duration.as_ref().map_or(0, |text| whole(Some(text)));
                let onset = if chord { before } else { at };
                if duration.is_some() {
                    let whole = part.divisions * 4;
                    part.notes.push((Fraction::new(onset, whole), Fraction::new(length, whole)));
                }
                if !chord {
                    before = at;
                    at += length;
                }
            }
            ("measure", false) => {
                let part = last(&mut parts);
                part.bars.push(Fraction::new(furthest.max(at), part.divisions * 4));
            }
            _ => {}
        }
        furthest = furthest.max(at);
    }
}

fn whole(text: Option<&String>) -> i64 {
    text.and_then(|text| text.parse().ok()).unwrap_or_else(|| panic!("a whole number is missing: {text:?}"))
}

fn last(parts: &mut [Sums]) -> &mut Sums {
    parts.last_mut().unwrap_or_else(|| panic!("an element outside the parts"))
}

#[test]
fn durations_are_exact_and_fill_every_bar() {
    let mut notes = 0;
    for seed in 1000..1150 {
        let shape = ScoreShape { parts: 3, bars: 12, detail: Detail::All };
        let text = random_fixture(seed, shape);
        let fixture = Fixture::parse(&text).unwrap_or_else(|error| panic!("seed {seed}: {error}"));
        let sums = sums(&fixture.musicxml());
        let read_bars: Vec<Fraction> = sums.iter().flat_map(|part| part.bars.clone()).collect();
        let bars: Vec<Fraction> = fixture.bars().iter().map(|bar| bar.length).collect();
        assert_eq!(read_bars, bars, "seed {seed}\n{text}");
        let read_notes: Vec<_> = sums.iter().flat_map(|part| part.notes.clone()).collect();
        let timed = fixture.notes().into_iter().filter(|note| note.kind != NoteStands::Grace);
        let written: Vec<_> = timed.map(|note| (note.onset, note.length)).collect();
        assert_eq!(read_notes, written, "seed {seed}\n{text}");
        notes += written.len();
    }
    assert!(notes > 10_000, "only {notes} notes were compared");
}

#[test]
fn made_up_scores_have_every_feature() {
    let mut all = String::new();
    for seed in 0..60 {
        all.push_str(&arcata_testkit::random_score(
            seed,
            ScoreShape { parts: 5, bars: 16, detail: Detail::All },
        ));
    }
    for feature in [
        "<slur number=\"2\"",
        "<slur number=\"3\"",
        "<tied ",
        "<tuplet ",
        "<grace slash",
        "<chord/>",
        "<backup>",
        "<wedge ",
        "<words>pizz.",
        "<words>arco",
        "<metronome>",
        "<sound tempo",
        "<ending ",
        "direction=\"forward\"",
        "direction=\"backward\"",
        "<down-bow/>",
        "<up-bow/>",
        "<tremolo ",
        "<fermata ",
        "<arpeggiate/>",
        "implicit=\"yes\"",
        "<rest measure=\"yes\"/>",
        "<breath-mark/>",
        "<octave-change>",
        "<trill-mark/>",
    ] {
        assert!(all.contains(feature), "{feature} never occurs");
    }
    let plain = arcata_testkit::random_score(5, ScoreShape { parts: 2, bars: 30, detail: Detail::Notes });
    assert!(!plain.contains("<notations>") && !plain.contains("<dynamics>"));
}
