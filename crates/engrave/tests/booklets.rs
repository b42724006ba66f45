//! Parts as booklets: what an ordinary part looks like, and parts that nobody would write.
#![allow(clippy::expect_used, clippy::unwrap_used, reason = "tests")]

use arcata_bow::timing::{TempoChoice, TempoMap};
use arcata_bow::{Profile, RealTime};
use arcata_engrave::{
    Area, AskedStart, AskedStarts, Booklet, BookletRemark, BookletRequest, Engraver, House, PageEndKind,
    PrintForm, ShownChanges, SystemWide, pdf, print_pdf,
};
use arcata_xml::{Document, Limits};

fn made(musicxml: &str, house: &str) -> Booklet {
    made_of(musicxml, 0, house)
}

/// The booklet of one part of several.
fn made_of(musicxml: &str, part: usize, house: &str) -> Booklet {
    made_with(musicxml, part, house, &AskedStarts::default())
}

fn made_with(musicxml: &str, part: usize, house: &str, asked: &AskedStarts) -> Booklet {
    let document = Document::parse(musicxml.as_bytes().to_vec(), &Limits::default()).expect("well-formed");
    let score = arcata_score::read(&document);
    let house = House::parse(house).expect("a house profile");
    let request = BookletRequest {
        document: &document,
        score: &score,
        wide: &SystemWide::new(&document, &score),
        tempo: &TempoMap::new(&score, &Profile::default(), TempoChoice::Written),
        house: &house,
        turn: RealTime::from_micros(3_000_000),
        part,
        shown: &ShownChanges::default(),
        asked,
        wording: &arcata_languages::Wording::default(),
    };
    Booklet::make(&request, &Engraver::new()).expect("a booklet")
}

fn music(bars: &[String]) -> String {
    arcata_testkit::musicxml(&format!("quarter=96\nviolin: mf {} |||", bars.join(" | ")))
}

fn notes_drawn(booklet: &Booklet) -> usize {
    booklet.pages.iter().map(|page| page.content.matches(r#" class="note""#).count()).sum()
}

/// No word lies over another sign.
fn nothing_touches(booklet: &Booklet) {
    let words = ["dir", "tempo", "reh", "dynam", "bar-number", "heading", "turn-word", "head"];
    for page in &booklet.pages {
        let marks = page.marks().expect("marks");
        for word in marks.iter().filter(|mark| words.contains(&mark.kind.as_str())) {
            let over = marks.iter().find(|other| {
                let (one, two) = (word.area, other.area);
                other.sign != word.sign
                    && one.right.min(two.right) - one.left.max(two.left) > 0.25
                    && one.bottom.min(two.bottom) - one.top.max(two.top) > 0.25
            });
            assert!(over.is_none(), "{word:?} lies over {over:?}");
        }
    }
}

#[test]
fn three_thousand_bars_become_pages_with_every_note() {
    let bars: Vec<String> = (0..3000)
        .map(
            |bar| {
                if bar % 9 == 8 { "1/1 rest".to_owned() } else { "1/4 C5 (1/8 D5 E5) 1/4 F5 G5".to_owned() }
            },
        )
        .collect();
    let booklet = made(&music(&bars), "");
    assert_eq!(notes_drawn(&booklet), 2667 * 5);
    assert!(booklet.systems.iter().all(|lines| (2..=12).contains(lines)), "{:?}", booklet.systems);
    assert_eq!(booklet.turns.len() + 1, booklet.pages.len());
    assert!(pdf(&booklet.pages).expect("a PDF").len() > 10_000);
}

#[test]
fn where_somebody_wants_a_page_or_a_line_to_begin_it_does_and_a_long_rest_gives_way() {
    let bar = |bar: usize| if (20..40).contains(&bar) { "1/1 rest" } else { "1/4 C5 D5 E5 F5" }.to_owned();
    let music = music(&(0..60).map(bar).collect::<Vec<_>>());
    let asked = AskedStarts { pages: [9, 30].into(), lines: [5, 47].into() };
    let booklet = made_with(&music, 0, "", &asked);
    let at = |bar: u32| booklet.bars.iter().find(|one| one.bars.0 == bar).expect("a bar begins there");
    for (bar, before, kind) in [
        (9, 8, AskedStart::Page),
        (30, 20, AskedStart::Page),
        (5, 4, AskedStart::Line),
        (47, 46, AskedStart::Line),
    ] {
        let (one, before) = (at(bar), at(before));
        assert_eq!(one.asked, kind);
        assert_eq!(one.page > before.page, kind == AskedStart::Page, "{bar}: {before:?} {one:?}");
        assert!(one.across.0 < before.across.0 && one.down != before.down, "{before:?} {one:?}");
    }
    // The rest of twenty bars is counted in two: ten before the turn, ten after it.
    assert_eq!((at(20).bars, at(30).bars), ((20, 29), (30, 39)));
    assert_eq!(notes_drawn(&booklet), 40 * 4);
    let pages = booklet.musicxml.matches("new-page=\"yes\"").count();
    assert!(
        pages >= 2
            && booklet
                .turns
                .iter()
                .all(|turn| turn.kind != PageEndKind::Rushed || turn.time.rest.micros < 3_000_000)
    );
}

#[test]
fn one_bar_is_a_page() {
    let booklet = made(&music(&["1/1 C5".to_owned()]), "");
    assert_eq!((booklet.systems.as_slice(), notes_drawn(&booklet)), (&[1][..], 1));
    assert!(booklet.turns.is_empty() && booklet.advice.is_none());
}

#[test]
fn without_any_rest_the_quick_turns_are_told_with_what_they_cost() {
    let bars = vec!["1/16 C5 D5 E5 F5 G5 F5 E5 D5 C5 D5 E5 F5 G5 F5 E5 D5".to_owned(); 200];
    let booklet = made(&music(&bars), "");
    let rushed = booklet.turns.iter().filter(|turn| turn.kind == PageEndKind::Rushed).count();
    assert!(rushed > 0);
    let advice = booklet.advice.as_ref().expect("advice");
    assert_eq!(advice.rushed, rushed);
    assert!(
        advice.cost > advice.without_turns && advice.mends.iter().all(|mend| mend.rushed < rushed),
        "{advice:?}"
    );
    assert!(booklet.pages.iter().any(|page| page.content.contains("V.S.")));
    assert_eq!(notes_drawn(&booklet), 200 * 16);
}

/// Sixteenths, and after every 75 bars six bars of rest: more than two pages of music from one rest to the next.
fn rests_three_pages_apart() -> String {
    let bar = |bar: usize| {
        let rests = bar % 81 >= 75;
        if rests { "1/1 rest" } else { "1/16 C5 D5 E5 F5 G5 F5 E5 D5 C5 D5 E5 F5 G5 F5 E5 D5" }.to_owned()
    };
    music(&(0..160).map(bar).collect::<Vec<_>>())
}

#[test]
fn a_third_page_folds_out_where_the_turn_must_come_later_and_the_file_says_so() {
    let music = rests_three_pages_apart();
    let rushed =
        |booklet: &Booklet| booklet.turns.iter().filter(|turn| turn.kind == PageEndKind::Rushed).count();
    let flat = made(&music, "[pages]\nfold_outs = \"never\"\nfirst = \"left\"\n");
    let folded = made(&music, "[pages]\nfirst = \"left\"\n");
    assert!(rushed(&flat) > 0, "{:?}", flat.turns);
    assert_eq!(rushed(&folded), 0, "{:?}", folded.turns);
    let names: Vec<String> = folded.names.iter().map(ToString::to_string).collect();
    assert!(
        names.starts_with(&["2".to_owned(), "3".to_owned(), "3a".to_owned(), "4".to_owned()]),
        "{names:?}"
    );
    assert!(folded.musicxml.contains(r#"page-number="3a""#));
    assert_eq!(folded.turns[1].kind, PageEndKind::FoldsOut);
    assert!(folded.pages[2].content.contains(">3a</text>"));
}

#[test]
fn the_staff_is_smaller_only_where_that_spares_a_turn_and_the_house_allows_it() {
    let music = rests_three_pages_apart();
    let staff = |house: &str| {
        let booklet = made(&music, &format!("[pages]\nfold_outs = \"never\"\n[staff]\n{house}"));
        let smaller = booklet.remarks.iter().find_map(|remark| match remark {
            BookletRemark::SmallerStaff { tenths } => Some(*tenths),
            _ => None,
        });
        assert!(booklet.musicxml.contains(&format!("<millimeters>{}", smaller.unwrap_or(90) / 10)));
        smaller
    };
    assert_eq!(staff("height = 90\nsmallest = 90\n"), None);
    assert_eq!(staff("height = 90\nsmallest = 55\n"), Some(55));
}

#[test]
fn long_words_stay_on_the_page_and_touch_nothing() {
    let bars: Vec<String> = (0..24)
        .map(|bar| match bar {
            3 => "\"with the whole bow and as if from far away, always a little slower\" 1/4 C6 D6 E6 F6"
                .to_owned(),
            7 => "\"without hurrying and very quietly\" 1/4 C5 D5 E5 F5".to_owned(),
            _ => "1/4 C5 D5 E5 F5".to_owned(),
        })
        .collect();
    let booklet = made(&music(&bars), "");
    nothing_touches(&booklet);
    for page in &booklet.pages {
        for mark in page.marks().expect("marks") {
            assert!(mark.area.left > 5.0 && mark.area.right < page.width - 5.0, "{mark:?}");
        }
    }
}

/// Two movements: the second begins a line with its heading, or a page where the house wants that.
fn two_movements() -> String {
    let bars: Vec<String> = (0..60).map(|_| "1/4 C5 D5 E5 F5".to_owned()).collect();
    let music = music(&bars);
    // Numbers begin anew behind a final bar line.
    let at = music.find(r#"<measure number="31""#).expect("bar 31");
    let (first, second) = music.split_at(at);
    let end = first.rfind("</measure>").expect("an end");
    let mut second = second.to_owned();
    for bar in 31..=60 {
        second = second
            .replace(&format!(r#"<measure number="{bar}""#), &format!(r#"<measure number="{}""#, bar - 30));
    }
    let barline = r#"<barline location="right"><bar-style>light-heavy</bar-style></barline>"#;
    format!("{}{barline}{}{second}", &first[..end], &first[end..])
}

#[test]
fn a_movement_begins_a_line_with_its_heading_and_a_page_where_the_house_wants_it() {
    let music = two_movements();
    let (anywhere, own) = (made(&music, ""), made(&music, "[movements]\nstart = \"new page\"\n"));
    assert_eq!((anywhere.pages.len(), own.pages.len()), (1, 2));
    for booklet in [&anywhere, &own] {
        let headings: usize =
            booklet.pages.iter().map(|page| page.content.matches(r#"class="heading""#).count()).sum();
        assert_eq!(headings, 2);
        nothing_touches(booklet);
        // What was chosen is what the file says.
        let systems: usize = booklet.systems.iter().sum();
        assert_eq!(booklet.musicxml.matches("new-system=").count() + booklet.pages.len(), systems);
    }
    assert!(
        own.turns[0].bar.movement.as_deref() == Some("II")
            && own.turns[0].bar.bar == "1"
            && own.turns[0].kind == PageEndKind::Turned,
        "{:?}",
        own.turns
    );
}

#[test]
fn a_part_that_is_silent_is_told_to_be() {
    let booklet = made(&music(&vec!["1/1 rest".to_owned(); 30]), "");
    assert_eq!(booklet.remarks, [BookletRemark::Tacet]);
}

#[test]
fn what_a_bar_says_twice_at_one_moment_is_printed_once() {
    let music = music(&["1/4 C5 D5 E5 F5".to_owned()]);
    let start = music.find("<dynamics").expect("a dynamic");
    // `<direction-type>` begins alike.
    let opened = ["<direction>", "<direction "].iter().filter_map(|tag| music[..start].rfind(tag)).max();
    let from = opened.expect("its start");
    let end = start + music[start..].find("</direction>").expect("its end") + "</direction>".len();
    let doubled = format!("{}{}{}", &music[..end], &music[from..end], &music[end..]);
    let (once, twice) = (made(&music, ""), made(&doubled, ""));
    let count = |booklet: &Booklet| booklet.pages[0].content.matches(r#"class="dynam""#).count();
    assert_eq!((count(&once), count(&twice)), (1, 1));
    assert_eq!(twice.musicxml.matches("<dynamics").count(), 2, "the file keeps what it says");
}

/// A quartet's two violins and a cello, the cello resting twelve bars before it comes in, over two bars of melody in thirds.
fn long_rest() -> String {
    let tune = "1/4 D5 (1/8 F#5 G5) 1/2 A5";
    let last = "1/4 D5 (1/8 F5 G5) 1/2 A5";
    let first: Vec<&str> = (0..14).map(|bar| if bar == 11 { last } else { tune }).collect();
    let second = vec!["1/2 D4 F#4"; 14];
    let cello: Vec<&str> =
        (0..14).map(|bar| if (1..12).contains(&bar) { "1/1 rest" } else { "1/1 D3" }).collect();
    arcata_testkit::musicxml(&format!(
        "quarter=96\nviolin I: key D mf {} |||\nviolin II: key D {} |||\ncello: key D {} |||",
        first.join(" | "),
        second.join(" | "),
        cello.join(" | ")
    ))
}

fn of_part(musicxml: &str, part: usize, house: &str) -> (Booklet, arcata_score::Score) {
    let booklet = made_of(musicxml, part, house);
    let own =
        Document::parse(booklet.musicxml.clone().into_bytes(), &Limits::default()).expect("well-formed");
    let read = arcata_score::read(&own);
    (booklet, read)
}

/// Long rests get cues from the line that is heard, named and written for the reader (E. Gould, Behind Bars, on cues:
/// small notes, the player's rests stay, the instrument named, in the reader's clef and transposition).
#[test]
fn after_a_long_rest_the_highest_line_is_shown_small_and_named() {
    let (booklet, read) = of_part(&long_rest(), 2, "");
    assert_eq!(booklet.cues, 1);
    assert!(booklet.remarks.is_empty(), "{:?}", booklet.remarks);
    nothing_touches(&booklet);
    let part = &read.parts[0];
    let cue: Vec<_> = part.notes.iter().filter(|note| note.kind == arcata_score::NoteKind::Cue).collect();
    // Two bars of the first violin's tune, two octaves lower so that it stands near the bass staff.
    assert_eq!(cue.len(), 8);
    assert_eq!(cue[0].bar, 10);
    assert_eq!(cue[0].pitch.cents(), Some(7400 - 2400));
    assert!(booklet.pages[0].content.contains("violin I 15ma"), "{}", booklet.pages[0].content);
    // F sharp stands in the key; the F of the last bar wants its natural.
    assert_eq!(booklet.musicxml.matches("<accidental>natural</accidental>").count(), 1);
    // Ten bars of rest and two with the cue became nine and two; the player's own rests stand in them.
    assert!(booklet.musicxml.contains("<multiple-rest>9</multiple-rest>"));
    let rests = part.notes.iter().filter(|note| (10..12).contains(&note.bar) && note.pitch.is_rest());
    assert_eq!(rests.count(), 2);
}

#[test]
fn a_cue_is_no_note_of_the_players() {
    let music = long_rest();
    let (with, cued) = of_part(&music, 2, "");
    let (without, plain) = of_part(&music, 2, "[rests]\ncue = 1000\n");
    assert_eq!((with.cues, without.cues), (1, 0));
    let own = |score: &arcata_score::Score| {
        let part = &score.parts[0];
        let own = part.notes.iter().filter(|note| note.kind != arcata_score::NoteKind::Cue);
        let notes: Vec<_> = own.map(|note| (note.onset, note.length, note.pitch, note.tie)).collect();
        let slurs = part
            .slurs
            .iter()
            .filter(|slur| part.notes[slur.start.0 as usize].kind != arcata_score::NoteKind::Cue);
        (notes, slurs.count(), part.instructions.len(), part.dynamics.len())
    };
    assert_eq!(own(&cued), own(&plain));
    let strokes = |score: &arcata_score::Score| -> Vec<_> {
        let lines = arcata_bow::lines(score, 0, &Profile::default(), &arcata_bow::LineOptions::default());
        lines
            .iter()
            .flat_map(|line| line.strokes.iter().map(|stroke| stroke.onset).collect::<Vec<_>>())
            .collect()
    };
    assert_eq!(strokes(&cued), strokes(&plain));
    assert_eq!(with.turns, without.turns);
}

#[test]
fn where_nobody_plays_before_the_entry_there_is_no_cue_and_it_is_told() {
    let rest = ["1/1 rest"; 12].join(" | ");
    let music = arcata_testkit::musicxml(&format!(
        "quarter=96\nviolin: {rest} | 1/1 D5 |||\ncello: {rest} | 1/1 D3 |||"
    ));
    let (booklet, _) = of_part(&music, 1, "");
    assert_eq!(booklet.cues, 0);
    assert!(matches!(booklet.remarks[..], [BookletRemark::NoCue { count: 12, .. }]), "{:?}", booklet.remarks);
}

/// Folded and stitched, the pages lie in the order of their numbers: through the right halves of the fronts and the left
/// halves of the backs to the innermost sheet, and back again (by definition of a saddle-stitched booklet).
/// Common practice: every part says where it ends and where it goes back to. The score says it once, over the top part.
#[test]
fn the_signs_of_the_road_and_headings_within_a_movement_stand_in_every_part() {
    let score = arcata_testkit::musicxml(
        "quarter=96\nviolin: 1/1 C5 | 1/1 D5 \"Fine\" |: \"Trio\" 1/1 E5 | 1/1 F5 \"D.C. al Fine\" :|\n\
         cello: 1/1 C3 | 1/1 D3 |: 1/1 E3 | 1/1 F3 :|",
    );
    let page = |part| made_of(&score, part, "").pages[0].clone();
    for part in [0, 1] {
        let page = page(part);
        for word in ["Fine", "Trio", "D.C. al Fine"] {
            assert!(
                page.content.contains(&format!(">{word}<")),
                "{word} is not in part {part}: {}",
                page.content
            );
        }
        // The words behind the last note end at its bar line.
        let marks = page.marks().expect("marks");
        let right = |kind: &str| {
            let these = marks.iter().filter(|mark| mark.kind == kind).map(|mark| mark.area.right);
            these.fold(0.0, f64::max)
        };
        assert!(right("dir") < right("barLine") + 1.0, "{marks:?}");
    }
}

/// ISO 32000-1, 14.11.2: the media box holds the bleed box, which holds the trim box. A printer cuts at the trim box.
#[test]
fn a_page_that_is_cut_says_where() {
    let booklet = made(&music(&["1/4 C5 D5 E5 F5".to_owned()]), "");
    let form = |bleed| PrintForm { archived: Some((2026, 5, 4)), bleed };
    let boxes = |bleed: f64| {
        let bytes = print_pdf(&booklet.pages, form(bleed)).expect("a PDF");
        let text = String::from_utf8_lossy(&bytes).into_owned();
        let of = |name: &str| -> Vec<f64> {
            let (_, rest) = text
                .split_once(&format!("/{name} ["))
                .or_else(|| text.split_once(&format!("/{name}[")))
                .expect(name);
            let (numbers, _) = rest.split_once(']').expect("an array");
            numbers
                .split_whitespace()
                .map(|number| number.parse::<f64>().expect("a number") / 72.0 * 25.4)
                .collect()
        };
        ["MediaBox", "BleedBox", "TrimBox"].map(of)
    };
    let near = |found: &[f64], wanted: [f64; 4]| {
        assert!(
            found.iter().zip(wanted).all(|(one, other)| (one - other).abs() < 0.01),
            "{found:?} {wanted:?}"
        );
    };
    for found in boxes(0.0) {
        near(&found, [0.0, 0.0, 210.0, 297.0]);
    }
    // ISO 32000-1, 14.8.4.5: a figure with words in its place.
    let bytes = print_pdf(&booklet.pages, form(0.0)).expect("a PDF");
    let says = |what: &str| bytes.windows(what.len()).any(|found| found == what.as_bytes());
    assert!(says("/MarkInfo") && (says("/S/Figure") || says("/S /Figure")) && says("/Alt"));
    let [media, bleed, trim] = boxes(3.0);
    near(&media, [0.0, 0.0, 226.0, 313.0]);
    near(&bleed, [5.0, 5.0, 221.0, 308.0]);
    near(&trim, [8.0, 8.0, 218.0, 305.0]);
}

/// The engraver gives the rest of a bar no width, and draws no slur that ends on a rest.
#[test]
fn a_rest_stands_in_a_bar_that_can_be_seen_and_a_note_slurred_into_it_rings() {
    let plain = music(&["1/4 C5 D5 E5 F5".to_owned(), "bar-rest".to_owned(), "1/4 C5 D5 E5 F5".to_owned()]);
    let areas = |booklet: &Booklet, class: &str| -> Vec<Area> {
        let marks = booklet.pages[0].marks().expect("marks");
        marks.into_iter().filter(|mark| mark.kind == class).map(|mark| mark.area).collect()
    };
    let booklet = made(&plain, "");
    let rest = areas(&booklet, "mRest");
    let [rest] = rest[..] else { panic!("{rest:?}") };
    let lines = areas(&booklet, "barLine");
    let before = lines.iter().map(|line| line.left).filter(|left| *left < rest.left).fold(0.0, f64::max);
    let behind = lines.iter().map(|line| line.left).filter(|left| *left > rest.left).fold(f64::MAX, f64::min);
    assert!(behind - before > 9.0, "the bar is {} mm wide", behind - before);
    let middle = f64::midpoint(before, behind);
    assert!((f64::midpoint(rest.left, rest.right) - middle).abs() < 1.0, "{rest:?} in {before} to {behind}");
    let slur = |kind: &str| format!(r#"<notations><slur type="{kind}"/></notations></note>"#);
    let (head, tail) = plain.split_once("<rest measure=\"yes\"/>").expect("a rest");
    let before = head.rfind("</note>").expect("a note");
    let slurred = format!(
        "{}{}{}<rest measure=\"yes\"/>{}",
        &head[..before],
        slur("start"),
        &head[before + "</note>".len()..],
        tail.replacen("</note>", &slur("stop"), 1)
    );
    assert_eq!(made(&slurred, "").pages[0].content.matches(r#" class="lv""#).count(), 1);
}

#[test]
fn folded_sheets_are_read_in_the_order_of_the_pages() {
    let booklet = made(&rests_three_pages_apart(), "[pages]\nfirst = \"left\"\n");
    let folded = booklet.folded_sheets();
    assert_eq!(folded.sides.len() % 2, 0);
    let half = |side: &arcata_engrave::Picture, right: bool| {
        let at = format!(r#"<g transform="translate({} 0)">"#, if right { side.width / 2.0 } else { 0.0 });
        let begun = side.content.split_once(&at).map(|(_, behind)| behind).unwrap_or_default();
        let end = begun.find(r#"<g transform="translate("#).filter(|_| !right).unwrap_or(begun.len());
        begun[..end].to_owned()
    };
    let sheets: Vec<_> = folded.sides.chunks_exact(2).collect();
    let there = sheets.iter().flat_map(|sheet| [half(&sheet[0], true), half(&sheet[1], false)]);
    let back = sheets.iter().rev().flat_map(|sheet| [half(&sheet[1], true), half(&sheet[0], false)]);
    let read: Vec<String> = there.chain(back).collect();
    let cover = booklet.cover.as_ref().expect("a cover in front of page 2");
    assert!(read[0].starts_with(&cover.content));
    let mut behind = 1;
    for (name, page) in booklet.names.iter().zip(&booklet.pages).filter(|(name, _)| !name.folds_out) {
        assert!(read[name.number - 1].starts_with(&page.content), "page {name}");
        behind = name.number;
    }
    assert!(read[behind..].iter().all(|page| !page.contains("<text")), "what is left is blank");
    let apart: Vec<String> = folded.folding_out.iter().map(|(name, _)| name.to_string()).collect();
    assert_eq!(apart[0], "3a");
    let (page, side) = (&booklet.pages[0], &folded.sides[0]);
    assert_eq!((side.width, side.height), (2.0 * page.width, page.height));
    assert!(pdf(&folded.sides).expect("a PDF").len() > 1000);
}
