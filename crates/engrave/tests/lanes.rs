//! Bow lanes: every stroke of a plan has its line, and the line says what the plan says.
#![expect(clippy::unwrap_used, reason = "tests")]

use arcata_bow::plan::MarkReading;
use arcata_bow::{LineOptions, Link, Plan, PlanSettings, Profile, all_lines, plan};
use arcata_engrave::{Cutter, Engraver, LanePlan, Painter, Picture, PictureContent, PictureStyle, pdf};
use arcata_score::Score;
use arcata_xml::{Document, Element, Limits, ScoreFile, Tag, open_score};

const DEMOS: [&[u8]; 4] = [
    include_bytes!("../../../demo/ferry-bell-quartet.musicxml"),
    include_bytes!("../../../demo/lantern-study.musicxml"),
    include_bytes!("../../../demo/slipway-strings.musicxml"),
    include_bytes!("../../../demo/tide-table-exercise.musicxml"),
];

fn opened(xml: &[u8]) -> (ScoreFile, Score) {
    let file = open_score(xml.to_vec(), &Limits::default()).unwrap();
    let score = arcata_score::read(file.document());
    (file, score)
}

struct Planned {
    lines: Vec<arcata_bow::Line>,
    plans: Vec<Plan>,
    settings: Vec<PlanSettings>,
}

fn planned(score: &Score) -> Planned {
    let profile = Profile::default();
    let lines = all_lines(score, &profile, &LineOptions::default());
    let settings: Vec<PlanSettings> = lines
        .iter()
        .map(|line| PlanSettings { marks: MarkReading::Law, ..profile.plan_settings(line.instrument) })
        .collect();
    let plans = lines.iter().zip(&settings).map(|(line, settings)| plan(line, settings)).collect();
    Planned { lines, plans, settings }
}

fn drawn(file: &ScoreFile, score: &Score, planned: &Planned, style: &PictureStyle) -> Vec<Picture> {
    let lanes: Vec<LanePlan<'_>> = (0..planned.lines.len())
        .map(|index| LanePlan {
            line: &planned.lines[index],
            first: 0,
            planned: &planned.plans[index].strokes,
            hair: planned.settings[index].reach.hair,
            name: String::new(),
            open: Vec::new(),
        })
        .collect();
    let content = PictureContent {
        title: "All of it".to_owned(),
        subtitle: String::new(),
        bars: 0..=u32::MAX - 1,
        lanes: &lanes,
        captions: Vec::new(),
    };
    let cutter = Cutter::new(file.document(), score);
    let engraver = Engraver::new();
    Painter::new(&cutter, &engraver, style).draw(&content).unwrap()
}

fn groups<'d>(document: &'d Document, class: &str) -> Vec<Element<'d>> {
    let is = |element: &Element<'d>| {
        element.attribute("class").is_some_and(|classes| classes.split(' ').any(|one| one == class))
    };
    document.elements().filter(is).collect()
}

fn numbers(element: Element<'_>, name: &str) -> Vec<f64> {
    let text = element.attribute(name).unwrap();
    text.split(' ').map(|number| number.parse().unwrap()).collect()
}

/// Half a per cent of the bow is 0.04 mm in a lane of 8 mm.
#[test]
fn every_stroke_has_a_line_whose_ends_agree_with_the_plan_to_half_a_per_cent() {
    let mut strokes = 0;
    for demo in DEMOS {
        let (file, score) = opened(demo);
        let planned = planned(&score);
        let picture = drawn(&file, &score, &planned, &PictureStyle::paper()).remove(0);
        let svg = Document::parse(picture.svg().into_bytes(), &Limits::default()).unwrap();
        for (line, plan) in planned.lines.iter().zip(&planned.plans) {
            let own: Vec<Element<'_>> = svg
                .elements()
                .filter(|element| element.attribute("data-line").as_deref() == Some(&line.name))
                .flat_map(|lane| lane.descendants().collect::<Vec<_>>())
                .collect();
            for (index, planned) in plan.strokes.iter().enumerate() {
                let name = index.to_string();
                let shown: Vec<Element<'_>> = own
                    .iter()
                    .copied()
                    .filter(|element| element.attribute("data-stroke").as_deref() == Some(&name))
                    .collect();
                assert!(!shown.is_empty(), "{}: stroke {index} is not drawn", line.name);
                let (begins, ends) = (shown[0], shown[shown.len() - 1]);
                let place = |stroke: Element<'_>, side: usize| {
                    let lane = stroke.parent().unwrap();
                    let (frog, tip) = (numbers(lane, "data-frog")[0], numbers(lane, "data-tip")[0]);
                    (numbers(stroke, "data-y")[side] - frog) / (tip - frog) * 1000.0
                };
                assert!((place(begins, 0) - f64::from(planned.start)).abs() <= 5.0);
                assert!((place(ends, 1) - f64::from(planned.end)).abs() <= 5.0);
                for part in &shown {
                    let x = numbers(*part, "data-x");
                    assert!(x[0] < x[1], "time runs to the right");
                    assert!(part.descendants().any(|inner| inner.name() == "path"));
                }
                strokes += 1;
            }
        }
    }
    assert!(strokes > 700, "{strokes} strokes were looked at");
}

#[test]
fn strokes_follow_one_another_and_stay_inside_the_bow() {
    let (file, score) = opened(DEMOS[0]);
    let picture = drawn(&file, &score, &planned(&score), &PictureStyle::phone()).remove(0);
    let svg = Document::parse(picture.svg().into_bytes(), &Limits::default()).unwrap();
    for lane in groups(&svg, "lane") {
        let (frog, tip) = (numbers(lane, "data-frog")[0], numbers(lane, "data-tip")[0]);
        let mut far = f64::MIN;
        for stroke in lane.children().filter(|child| child.attribute("data-stroke").is_some()) {
            let (x, y) = (numbers(stroke, "data-x"), numbers(stroke, "data-y"));
            assert!(x[0] + 0.011 >= far, "a stroke begins before the last one ends");
            far = x[1];
            assert!(y.iter().all(|y| (frog - 0.01..=tip + 0.01).contains(y)));
        }
    }
}

#[test]
fn stops_lifts_and_worked_out_signs_are_drawn_as_what_the_arm_does() {
    // Hooked and retaken as printed: two downs on short notes after a rest, pairs of ups.
    let (file, score) = opened(
        arcata_testkit::musicxml("time 4/4  quarter=60\nviolin: f 1/4 D4!down E4!down F4 G4 |||").as_bytes(),
    );
    let planned = planned(&score);
    let link = planned.plans[0].strokes[1].link;
    let svg = drawn(&file, &score, &planned, &PictureStyle::paper()).remove(0).svg();
    let svg = Document::parse(svg.into_bytes(), &Limits::default()).unwrap();
    let strokes: Vec<Element<'_>> =
        svg.elements().filter(|element| element.attribute("data-stroke").is_some()).collect();
    assert_eq!(strokes.len(), 4);
    let arcs = strokes[1].children().filter(|child| {
        child.name() == "path" && child.attribute("d").is_some_and(|path| path.contains('Q'))
    });
    assert_eq!(arcs.count(), usize::from(link == Link::Retake));
    assert!(matches!(link, Link::Retake | Link::Hooked), "two printed down-bows in a row");
    let signs = |stroke: Element<'_>| {
        stroke.children().filter(|child| child.attribute("class").as_deref() == Some("sign")).count()
    };
    assert_eq!(signs(strokes[0]) + signs(strokes[1]), 0, "printed signs stand in the staff");
}

#[test]
fn a_pdf_embeds_its_fonts_and_keeps_text_and_a_png_has_the_size_asked_for() {
    let (file, score) = opened(DEMOS[1]);
    let style = PictureStyle { page_height: Some(297.0), ..PictureStyle::paper() };
    let pages = drawn(&file, &score, &planned(&score), &style);
    assert!(pages.len() > 1);
    let bytes = pdf(&pages).unwrap();
    assert!(bytes.starts_with(b"%PDF-"));
    let has = |wanted: &[u8]| bytes.windows(wanted.len()).any(|window| window == wanted);
    assert!(has(b"LiberationSerif"));
    assert!(has(b"FontFile"), "the fonts are inside");
    assert!(has(b"ToUnicode"), "text can be searched");
    let png = pages[0].png(100).unwrap();
    // Width of the picture in dots (PNG specification, IHDR).
    let width = u32::from_be_bytes(png[16..20].try_into().unwrap());
    assert_eq!(width, 827, "210 mm at 100 dots an inch");
    assert!(pages[0].png(60_000).is_err(), "no machine holds that many dots");
}

#[test]
fn the_note_of_a_metronome_mark_is_in_the_raster() {
    let (file, score) =
        opened(arcata_testkit::musicxml("quarter=72\nviolin: 1/4 D4 E4 F4 G4 |||").as_bytes());
    let picture = drawn(&file, &score, &planned(&score), &PictureStyle::paper()).remove(0);
    assert!(picture.svg().contains(r#"font-family="Bravura""#));
    // The note is a character of the music font, among the private ones (SMuFL).
    let is_music = |letter: char| ('\u{e000}'..='\u{f8ff}').contains(&letter);
    assert!(picture.content.contains(is_music));
    let without = Picture { content: picture.content.replace(is_music, ""), ..picture.clone() };
    assert!(picture.png(60).unwrap() != without.png(60).unwrap(), "the music font draws the note");
    assert!(svg_is_well_formed(&picture));
}

fn svg_is_well_formed(picture: &Picture) -> bool {
    let svg = Document::parse(picture.svg().into_bytes(), &Limits::default()).unwrap();
    svg.root().name() == "svg" && svg.root().tag() != Tag::NOTE
}
