//! Change sheets: what is counted, and what each form says.

#![allow(clippy::unwrap_used, reason = "the tests read what they made")]

use std::collections::{BTreeMap, BTreeSet};

use arcata_bow::{LineOptions, Profile, all_lines};
use arcata_layer::{Addresses, EntryState, Layer, NotReached, shorthand};
use arcata_report::Page;
use arcata_report::sheet::{
    CopyingSettings, Paper, SheetEnd, SheetInput, SheetView, marks_that_come_anyway, sheet_html, sheet_pdf,
    sheet_text,
};
use arcata_score::Score;
use arcata_xml::{Document, Limits};

const MUSIC: &str = "\
title \"Lock & <Quay>\" composer \"A. Player\"
Violin I: 1/4 C5!up D5 E5 F5 | (1/2 G5 A5) | 1/1 C5
Violin II: 1/4 C4 D4 E4 F4 | 1/2 G4 A4 | 1/1 C4
Flute: 1/1 C5 | C5 | C5
";

fn score() -> Score {
    let text = arcata_testkit::musicxml(MUSIC);
    arcata_score::read(&Document::parse(text.into_bytes(), &Limits::default()).unwrap())
}

fn layer(addresses: &Addresses<'_>, typed: &str) -> Layer {
    let (text, complaints) = shorthand::read(typed);
    assert_eq!(complaints, []);
    let entered = shorthand::enter(&text, addresses);
    assert_eq!(entered.complaints, []);
    let parts = addresses.part_keys().to_vec();
    let mut layer = Layer { title: "Spring".into(), owner: "leader".into(), parts, ..Layer::default() };
    shorthand::put(&mut layer, &entered);
    layer
}

fn input<'a>(addresses: &'a Addresses<'a>, before: Option<&'a Layer>, after: &'a Layer) -> SheetInput<'a> {
    SheetInput {
        addresses,
        before,
        after,
        stands: BTreeMap::from([(0, 7), (1, 6)]),
        settings: CopyingSettings::default(),
        spared: BTreeSet::new(),
        wording: arcata_languages::Wording::default(),
    }
}

/// Every change as bar, beat and words, section by section.
fn said(view: &SheetView) -> Vec<String> {
    let mut said = Vec::new();
    for section in &view.sections {
        for bar in &section.bars {
            for change in &bar.changes {
                let was = change.was.as_ref().map_or(String::new(), |was| format!(" (was {was})"));
                said.push(format!("{} {}/{} {}{was}", section.name, bar.bar, change.beat, change.words));
            }
        }
    }
    said
}

#[test]
fn against_the_printed_parts_printed_marks_count() {
    let score = score();
    let addresses = Addresses::new(&score);
    let after =
        layer(&addresses, "Vn1: 1/1 down, 2 no slur, 3 up \"dolce\"; Vn2: 1 as it comes, 2/1-/3 slur");
    let view = SheetView::new(&input(&addresses, None, &after));
    assert_eq!(
        said(&view),
        [
            "Violin I 1/1 down-bow (was up-bow)",
            "Violin I 2/1 take off: the printed slur to beat 3",
            "Violin I 3/1 up-bow",
            "Violin I 3/1 \"dolce\"",
            "Violin II 2/1 slur to beat 3",
        ]
    );
    // Violin I: three signs written, two taken off, on 7 stands; Violin II: one on 6. 5 s each.
    assert_eq!((view.sections[0].to_write, view.sections[0].to_take_off), (3, 2));
    assert_eq!(view.librarian.marks, 5 * 7 + 6);
    assert_eq!(view.librarian.seconds, 5 * (5 * 7 + 6));
    assert_eq!(view.librarian.sections.len(), 2, "the flute has nothing to do with it");
}

#[test]
fn the_same_layer_twice_is_no_work() {
    let score = score();
    let addresses = Addresses::new(&score);
    let one = layer(&addresses, "Vn1: 1/1 down, 2 no slur, 3 up");
    let view = SheetView::new(&input(&addresses, Some(&one), &one));
    assert!(view.sections.is_empty());
    assert_eq!((view.librarian.marks, view.librarian.not_carried.len()), (0, 0));
}

#[test]
fn what_is_undone_is_work_too() {
    let score = score();
    let addresses = Addresses::new(&score);
    let before = layer(&addresses, "Vn1: 1/1 down, 2 no slur, 3 up");
    let after = layer(&addresses, "Vn1: 3 down");
    let view = SheetView::new(&input(&addresses, Some(&before), &after));
    assert_eq!(
        said(&view),
        [
            "Violin I 1/1 up-bow (was down-bow)",
            "Violin I 2/1 the printed slur to beat 3",
            "Violin I 3/1 down-bow (was up-bow)",
        ]
    );
    assert_eq!((view.sections[0].to_write, view.sections[0].to_take_off), (3, 2));
}

#[test]
fn the_sheet_told_a_copyist_to_take_off_what_was_never_applied() {
    let score = score();
    let addresses = Addresses::new(&score);
    let mut before = layer(&addresses, "Vn1 3 up; Vn2 1 down");
    for entry in &mut before.entries {
        entry.state = EntryState::LeftOut;
    }
    let nothing = layer(&addresses, "");
    let view = SheetView::new(&input(&addresses, Some(&before), &nothing));
    assert_eq!(said(&view), Vec::<String>::new());
    // What was not applied then and is now has to be written.
    let after = layer(&addresses, "Vn2 1 down");
    let view = SheetView::new(&input(&addresses, Some(&before), &after));
    assert_eq!(said(&view), ["Violin II 1/1 down-bow"]);
}

#[test]
fn least_marks_leave_out_what_comes_anyway_and_what_stands_there() {
    let score = score();
    let addresses = Addresses::new(&score);
    let lines = all_lines(&score, &Profile::default(), &LineOptions::default());
    let after = layer(&addresses, "Vn2: 1/1 d u d u, 2/1 up");
    let spared = marks_that_come_anyway(&addresses, &lines, &after);
    // Down, up, down, up comes by itself; the up-bow after an up-bow does not.
    let view = SheetView::new(&SheetInput { spared: spared.clone(), ..input(&addresses, None, &after) });
    assert_eq!(said(&view), ["Violin II 2/1 up-bow"]);
    assert_eq!(view.librarian.spared, 4);
    let before = layer(&addresses, "Vn2: 1/1 d u");
    let view = SheetView::new(&SheetInput { spared, ..input(&addresses, Some(&before), &after) });
    assert_eq!(said(&view), ["Violin II 2/1 up-bow"], "nothing is rubbed out for being superfluous");
}

#[test]
fn what_is_in_no_part_is_on_the_librarians_page() {
    let score = score();
    let addresses = Addresses::new(&score);
    let mut after = layer(&addresses, "Vn1: 3 up");
    let mut lost = after.entries[0].clone();
    lost.place.spot.bar = "99".into();
    lost.place.spot.bar_ordinal = None;
    after.orphans.push(after.entries[0].clone());
    after.entries.push(lost);
    let view = SheetView::new(&input(&addresses, None, &after));
    let whys: Vec<&str> = view.librarian.not_carried.iter().map(|left| left.why.as_str()).collect();
    assert_eq!(
        whys,
        ["the score has no such bar", "it found no note when the layer was carried over to this score",]
    );
    let text = sheet_text(&view, Page::default(), SheetEnd::FormFeed);
    assert!(text.contains("To settle: in no part") && text.contains("bar 99"), "{text}");
    assert!(text.lines().all(|line| line.trim_start_matches('\u{c}').chars().count() <= 80), "{text}");
    assert_eq!(text.matches('\u{c}').count(), 1);
}

#[test]
fn what_was_carried_with_doubt_or_not_spread_is_on_the_librarians_page() {
    let score = score();
    let addresses = Addresses::new(&score);
    let mut after = layer(&addresses, "Vn1: 3 up");
    after.entries[0].doubt = Some("was Violin I, bar 9, C6: the note has another pitch".into());
    let left = |bar: u32, marks| NotReached {
        from: "Violin I".into(),
        part: "Violin II".into(),
        bar_ordinal: bar,
        bar: bar.to_string(),
        marks,
        why: "different rhythm".into(),
    };
    after.not_reached = vec![left(1, 4), left(2, 1), left(5, 2)];
    let view = SheetView::new(&input(&addresses, None, &after));
    let text = sheet_text(&view, Page::default(), SheetEnd::FormFeed);
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let html = sheet_html(&view).replace("<b>", "").replace("</b>", "");
    for told in [
        "up-bow; was Violin I, bar 9, C6: the note has another pitch",
        "Violin I not to Violin II: 7 marks in bars 1-2, 5; different rhythm",
    ] {
        assert!(text.contains(told), "{text}");
        assert!(html.contains(told), "{html}");
    }
    assert_eq!(said(&view), ["Violin I 3/1 up-bow"], "a doubtful mark is written all the same");
    assert!(sheet_pdf(&view, Paper::A4).unwrap().len() > 1000);
}

#[test]
fn html_needs_nothing_else_and_escapes_what_it_is_given() {
    let score = score();
    let addresses = Addresses::new(&score);
    let mut after = layer(&addresses, "Vn1: 3 up \"<script>alert('x')</script>\"; Vn2: 3 down");
    after.owner = "\"Q\" & sons".into();
    let html = sheet_html(&SheetView::new(&input(&addresses, None, &after)));
    assert!(!html.contains("<script") && !html.contains("http") && !html.contains("<Quay>"), "{html}");
    assert!(html.contains("&lt;script&gt;") && html.contains("&quot;Q&quot; &amp; sons"));
    assert_eq!(html.matches("<section class=\"page\">").count(), 3);
    let tree = Document::parse(
        html.replace("<!DOCTYPE html>\n", "")
            .replace("<meta charset=\"utf-8\">", "")
            .replace("initial-scale=1\">", "initial-scale=1\"/>")
            .replace("<br>", "<br/>")
            .into_bytes(),
        &Limits::default(),
    );
    assert!(tree.is_ok(), "its elements are closed");
}

#[test]
fn pdf_is_the_same_each_time_and_has_a_page_a_section() {
    let score = score();
    let addresses = Addresses::new(&score);
    let after = layer(&addresses, "Vn1: 1/1 down, 2 no slur; Vn2: 3 up \"Ж ♯ ½ 漢 \u{7}\"");
    let view = SheetView::new(&input(&addresses, None, &after));
    for paper in [Paper::A4, Paper::Letter] {
        let pdf = sheet_pdf(&view, paper).unwrap();
        assert_eq!(pdf, sheet_pdf(&view, paper).unwrap());
        assert!(pdf.starts_with(b"%PDF-"));
        let text = String::from_utf8_lossy(&pdf);
        assert!(text.contains("/Count 3"), "two sections and the librarian");
    }
}

#[test]
fn long_sections_go_on_over_pages() {
    let bars = vec!["1/4 C4 D4 E4 F4"; 240].join(" | ");
    let text = arcata_testkit::musicxml(&format!("Violin: {bars}"));
    let score = arcata_score::read(&Document::parse(text.into_bytes(), &Limits::default()).unwrap());
    let addresses = Addresses::new(&score);
    let after = layer(&addresses, "Violin: 1-240 down up");
    let view = SheetView::new(&input(&addresses, None, &after));
    assert_eq!(view.sections[0].to_write, 960);
    let pdf = sheet_pdf(&view, Paper::A4).unwrap();
    let text = String::from_utf8_lossy(&pdf);
    // 240 bars of four lines, about 11 a column.
    let pages: u32 = text
        .split("/Count ")
        .nth(1)
        .and_then(|rest| rest.split(|c: char| !c.is_ascii_digit()).next())
        .and_then(|count| count.parse().ok())
        .unwrap();
    assert!((10..=14).contains(&pages), "{pages}");
}
