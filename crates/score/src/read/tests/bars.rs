//! Bars, signatures, repeats and signs of the road.

use super::*;
use crate::{BarKind, BarlineStyle, BeatGroup, EndingEdge, Jump, MeterSymbol, RepeatSign};

fn time(inside: &str) -> String {
    format!("<attributes><time>{inside}</time></attributes>")
}

#[test]
fn additive_and_composite_signatures() {
    let additive = time("<beats>3+2+2</beats><beat-type>8</beat-type>");
    let score = violin(&[&[additive, note("C5", 14, "")].concat()]);
    assert_sound(&score);
    let (bar, meter) = &only_part(&score).meters[0];
    let counts: Vec<u16> = meter.groups.iter().map(|group| group.count).collect();
    assert_eq!((*bar, counts, meter.bar_length()), (0, vec![3, 2, 2], whole(7, 8)));
    let composite = time("<beats>2</beats><beat-type>4</beat-type><beats>3</beats><beat-type>8</beat-type>");
    let score = violin(&[&[composite, note("C5", 14, "")].concat()]);
    assert_sound(&score);
    let groups = [BeatGroup { count: 2, unit: 4 }, BeatGroup { count: 3, unit: 8 }];
    assert_eq!(only_part(&score).meters[0].1.groups, groups);
}

#[test]
fn symbols_and_bars_that_are_not_counted() {
    let cut = time("<beats>2</beats><beat-type>2</beat-type>").replace("<time>", "<time symbol=\"cut\">");
    let score = violin(&[
        &[cut, note("C5", 16, "")].concat(),
        &[time("<senza-misura/>"), note("C5", 36, "")].concat(),
    ]);
    assert_sound(&score);
    let symbols: Vec<_> = only_part(&score).meters.iter().map(|(_, meter)| meter.symbol).collect();
    assert_eq!(symbols, [MeterSymbol::Cut, MeterSymbol::SenzaMisura]);
    assert_eq!(score.bars[1].length, whole(9, 4));
}

#[test]
fn a_pickup_is_as_long_as_its_notes() {
    let xml = violin_xml(&[&note("C5", 4, ""), &note("D5", 16, "")])
        .replace("<measure number=\"1\">", "<measure number=\"0\" implicit=\"yes\">");
    let score = score_of(&xml);
    assert_sound(&score);
    let bar = &score.bars[0];
    assert_eq!((bar.label.as_str(), bar.kind, bar.length), ("0", BarKind::NotCounted, whole(1, 4)));
    assert_eq!(score.bars[1].start.since_start(), whole(1, 4));
}

#[test]
fn a_rest_for_the_bar_is_as_long_as_the_bar() {
    let three = time("<beats>3</beats><beat-type>4</beat-type>");
    // Many files write such a rest as a whole note, whatever the signature, or leave its duration out.
    for duration in ["<duration>16</duration>", "<duration>12</duration>", ""] {
        let rest = format!("<note><rest measure=\"yes\"/>{duration}<type>whole</type></note>");
        let score = violin(&[&[three.clone(), rest].concat(), &note("C5", 12, "")]);
        assert_sound(&score);
        assert_eq!(only_part(&score).notes[0].length, whole(3, 4), "{duration}");
        assert_eq!(score.bars[1].start.since_start(), whole(3, 4), "{duration}");
    }
}

#[test]
fn a_second_rest_for_the_bar_finds_no_room() {
    let rest = "<note><rest measure=\"yes\"/><duration>16</duration></note>";
    let score = violin(&[&rest.repeat(3)]);
    assert_eq!(score.bars[0].length, Length::WHOLE);
    assert_eq!(times(&only_part(&score).notes)[2], (Length::WHOLE, Length::ZERO));
}

#[test]
fn bars_are_as_long_as_the_longest_part_and_parts_may_have_fewer() {
    let xml = violin_xml(&[&note("C5", 16, ""), &note("D5", 16, "")]).replace(
        "</score-partwise>",
        "<part id=\"P2\"><measure number=\"1\"><attributes><divisions>1</divisions></attributes>\
         </measure></part></score-partwise>",
    );
    let score = score_of(&xml);
    assert_eq!(score.bars.len(), 2);
    assert_eq!(score.parts[1].measures.len(), 2);
    assert_eq!(score.parts[1].measures[1], None);
    assert_eq!(kinds(&score), [ProblemKind::PartMismatch]);
}

#[test]
fn repeats_endings_and_barlines() {
    let bars = [
        format!("<barline location=\"left\"><repeat direction=\"forward\"/></barline>{}", note("C5", 16, "")),
        format!(
            "<barline location=\"left\"><ending number=\"1, 2\" type=\"start\"/></barline>{}<barline>\
             <bar-style>light-heavy</bar-style><ending number=\"1, 2\" type=\"stop\"/>\
             <repeat direction=\"backward\" times=\"3\"/></barline>",
            note("D5", 16, "")
        ),
        format!(
            "<barline location=\"left\"><ending number=\"3\" type=\"start\"/></barline>{}\
             <barline location=\"right\"><bar-style>light-heavy</bar-style><ending number=\"3\" \
             type=\"discontinue\"/></barline>",
            note("E5", 16, "")
        ),
    ];
    let score = violin(&[&bars[0], &bars[1], &bars[2]]);
    assert_sound(&score);
    assert_eq!(score.bars[0].left.repeat, Some(RepeatSign::Begin));
    assert_eq!(score.bars[1].right.repeat, Some(RepeatSign::End { times: 3 }));
    assert_eq!(score.bars[1].left.ending.as_ref().unwrap().numbers, [1, 2]);
    assert_eq!(score.bars[2].right.ending.as_ref().unwrap().edge, EndingEdge::Discontinue);
    assert_eq!(score.bars[1].right.style, BarlineStyle::Single);
    assert_eq!(score.bars[2].right.style, BarlineStyle::Final);
}

#[test]
fn repeats_and_endings_without_their_partner_are_reported() {
    let begin =
        format!("<barline location=\"left\"><repeat direction=\"forward\"/></barline>{}", note("C5", 16, ""));
    let stop = format!("{}<barline><ending number=\"1\" type=\"stop\"/></barline>", note("C5", 16, ""));
    let score = violin(&[&begin, &stop]);
    assert_eq!(kinds(&score), [ProblemKind::Repeat, ProblemKind::Repeat]);
}

#[test]
fn signs_of_the_road_from_signs_words_and_sounds() {
    let bars = [
        [direction("<segno/>"), direction("<rehearsal>A</rehearsal>"), note("C5", 16, "")].concat(),
        [
            "<direction><direction-type><coda/></direction-type><sound tocoda=\"c\"/></direction>",
            &note("C5", 16, ""),
        ]
        .concat(),
        [note("C5", 16, ""), direction("<words>D.S. al Coda</words>"), "<sound dalsegno=\"s\"/>".to_owned()]
            .concat(),
        ["<direction><direction-type><coda/></direction-type></direction>", &note("C5", 16, "")].concat(),
    ];
    let score = violin(&[&bars[0], &bars[1], &bars[2], &bars[3]]);
    assert_sound(&score);
    assert_eq!(score.bars[0].jumps, [Jump::Segno]);
    assert_eq!(score.bars[0].rehearsal.as_deref(), Some("A"));
    assert_eq!(score.bars[1].jumps, [Jump::ToCoda]);
    assert_eq!(score.bars[2].jumps, [Jump::DalSegno]);
    assert_eq!(score.bars[3].jumps, [Jump::Coda]);
}

#[test]
fn of_two_coda_signs_alike_the_first_is_the_one_to_leave_at() {
    let bar = [direction("<coda/>"), note("C5", 16, "")].concat();
    let score = violin(&[&bar, &bar]);
    assert_eq!((score.bars[0].jumps[0], score.bars[1].jumps[0]), (Jump::ToCoda, Jump::Coda));
}

#[test]
fn bars_that_a_repeat_splits_are_no_trouble() {
    let first = format!("{}<barline><repeat direction=\"backward\"/></barline>", note("C5", 12, ""));
    assert_sound(&violin(&[&note("C5", 16, ""), &first, &note("C5", 4, ""), &note("C5", 16, "")]));
}
