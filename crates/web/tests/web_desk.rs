//! A session in a browser, without the browser: what is drawn comes when it is ordered, and what is kept is taken up again.
#![allow(clippy::unwrap_used, clippy::panic, reason = "tests")]

use std::sync::{Arc, Mutex};

use arcata_analysis::Source;
use arcata_desk::{HEADING, Happened, MemoryShelf, PageAnswer, PageRequest, Session, SessionStart, Shared};
use arcata_engrave::{Engraver, EngravingOrder, InProcess, Press as _};
use arcata_web::{AsItIs, JournalKeeper, Opened, WebAnswer, WebDesk};

const MUSIC: &str = "violin: mf 1/4 C5 D5 E5 F5 | (G5 F5) 1/2 E5 | 1/4 C5 D5 E5 F5 | 1/1 G5";

/// A journal in memory, which can be full.
#[derive(Clone, Debug, Default)]
struct Drawer(Arc<Mutex<Kept>>);

#[derive(Debug, Default)]
struct Kept {
    text: String,
    broken: Vec<String>,
    full: bool,
}

impl Drawer {
    fn text(&self) -> String {
        self.0.lock().unwrap().text.clone()
    }
}

impl JournalKeeper for Drawer {
    fn append(&mut self, text: &str) -> Result<(), String> {
        let mut kept = self.0.lock().unwrap();
        if kept.full {
            return Err("no room".to_owned());
        }
        kept.text.push_str(text);
        Ok(())
    }

    fn cut(&mut self, after: usize) -> Result<(), String> {
        self.0.lock().unwrap().text.truncate(after);
        Ok(())
    }

    fn keep_broken(&mut self) -> Result<String, String> {
        let mut kept = self.0.lock().unwrap();
        let text = std::mem::take(&mut kept.text);
        kept.broken.push(text);
        Ok(format!("acts-{}.jsonl", kept.broken.len()))
    }
}

fn open(drawer: &Drawer) -> Result<WebDesk, String> {
    let score = arcata_testkit::musicxml(MUSIC).into_bytes();
    let journal = drawer.text().into_bytes();
    WebDesk::open(
        &Opened { name: "study.musicxml", score: &score, journal: &journal },
        Box::new(drawer.clone()),
    )
}

/// Asks, and has drawn what is wanting; how many rounds that took.
fn asked(desk: &mut WebDesk, press: &InProcess, request: PageRequest) -> (PageAnswer, usize) {
    let number = desk.begin(request);
    for round in 0..10 {
        match desk.finish(number, AsItIs::No).unwrap() {
            WebAnswer::Answer(answer) => return (answer, round),
            WebAnswer::Orders(orders) => {
                for order in orders {
                    let key = order.key;
                    let order = EngravingOrder {
                        options: order.options,
                        musicxml: order.musicxml,
                        seconds: order.seconds,
                    };
                    desk.hand_in(&key, press.fill(&order).ok());
                }
            }
        }
    }
    panic!("the answer never comes");
}

fn text(answer: &PageAnswer) -> String {
    String::from_utf8(answer.bytes.clone()).unwrap()
}

fn tempo(quarters: u32, version: u64) -> PageRequest {
    let body = format!(r#"{{"act":{{"act":"tempo","quarters":{quarters}}},"version":{version}}}"#);
    PageRequest::post("acts", &body)
}

#[test]
fn what_is_wanting_is_ordered_and_the_answer_is_the_servers() {
    let (press, drawer) = (InProcess::default(), Drawer::default());
    let mut desk = open(&drawer).unwrap();
    let bytes = arcata_testkit::musicxml(MUSIC).into_bytes();
    let start = SessionStart {
        name: "study.musicxml".to_owned(),
        source: Source::open(bytes.clone()).unwrap(),
        bytes: bytes.clone(),
        steps: Vec::new(),
        journal_told: None,
        aside: arcata_review::Aside::default(),
        habits: None,
    };
    let session = Session::new(start, Box::new(MemoryShelf::new(bytes))).unwrap();
    let server = Shared::new(session, Arc::new(Engraver::new()));
    let bow = r#"{"line":0,"asks":[{"stroke":1,"ask":"down"}],"version":0,"shown":{"parts":[],"width":190,"systems":[{"first":0,"last":3}]}}"#;
    let requests = [
        PageRequest::get("system", "width=190&first=0&last=3"),
        PageRequest::post("bow", bow),
        PageRequest::get("ways", "line=0&first=0&last=1"),
        PageRequest::get("strokes", "line=0"),
        PageRequest::get("nowhere", ""),
        PageRequest::post("break", r#"{"part":0,"bar":2,"begins":"page","version":1}"#),
        PageRequest::get("pages", "part=0"),
    ];
    let mut rounds = Vec::new();
    for request in requests {
        let (answer, taken) = asked(&mut desk, &press, request.clone());
        assert_eq!(answer, server.answer(request), "{}", text(&answer));
        rounds.push(taken);
    }
    assert!(rounds[0] > 0, "a picture is drawn elsewhere");
    assert_eq!(rounds[1], 0, "the lanes go over music that is drawn already");
    assert_eq!(rounds[6], 2, "the pages of a part are measured, then set");
    let number = desk.begin(PageRequest::get("system", "width=150&first=0&last=3"));
    let WebAnswer::Answer(answer) = desk.finish(number, AsItIs::Yes).unwrap() else { panic!("an answer") };
    assert_eq!(answer.status, 422, "without an engraver it says so");
    assert!(desk.finish(number, AsItIs::No).is_none(), "it was answered");
}

#[test]
fn an_act_is_kept_before_it_is_confirmed_and_a_torn_line_is_none() {
    let (press, drawer) = (InProcess::default(), Drawer::default());
    let mut desk = open(&drawer).unwrap();
    for version in 0..2 {
        let (answer, _) = asked(&mut desk, &press, tempo(60 + u32::try_from(version).unwrap(), version));
        assert_eq!(answer.status, 200, "{}", text(&answer));
    }
    drawer.0.lock().unwrap().full = true;
    let (answer, _) = asked(&mut desk, &press, tempo(99, 2));
    assert_eq!((answer.status, text(&answer)), (500, r#"{"why":"no room"}"#.to_owned()));
    drawer.0.lock().unwrap().full = false;
    let whole = drawer.text();
    assert!(whole.starts_with(HEADING) && whole.lines().count() == 3, "{whole}");
    let ends: Vec<usize> = whole.match_indices('\n').map(|(at, _)| at + 1).collect();
    for cut in 0..=whole.len() {
        drawer.0.lock().unwrap().text = whole[..cut].to_owned();
        let mut desk = open(&drawer).unwrap();
        let (answer, _) = asked(&mut desk, &press, PageRequest::get("score", ""));
        let score: serde_json::Value = serde_json::from_slice(&answer.bytes).unwrap();
        let kept = ends.iter().filter(|end| **end <= cut).count().saturating_sub(1);
        assert_eq!(
            (score["undo"].as_u64(), &score["lost"]),
            (Some(kept as u64), &serde_json::json!([])),
            "cut at {cut}"
        );
        let (answer, _) = asked(&mut desk, &press, tempo(72, 0));
        assert_eq!(answer.status, 200);
        assert_eq!(drawer.text().lines().count(), kept + 2, "cut at {cut}");
    }
}

#[test]
fn a_journal_that_cannot_be_understood_is_kept_under_another_name() {
    let (press, drawer) = (InProcess::default(), Drawer::default());
    let mut desk = open(&drawer).unwrap();
    for version in 0..3 {
        asked(&mut desk, &press, tempo(60 + u32::try_from(version).unwrap(), version));
    }
    let broken = drawer.text().replacen("61", "66", 1);
    drawer.0.lock().unwrap().text.clone_from(&broken);
    let mut desk = open(&drawer).unwrap();
    let (answer, _) = asked(&mut desk, &press, PageRequest::get("score", ""));
    assert!(text(&answer).contains("line 3 is broken"), "{}", text(&answer));
    assert!(text(&answer).contains("kept as acts-1.jsonl"), "{}", text(&answer));
    assert_eq!(drawer.0.lock().unwrap().broken, [broken]);
    assert_eq!(drawer.text().lines().count(), 2);
}

#[test]
fn what_is_no_score_begins_no_journal() {
    let drawer = Drawer::default();
    let opened = Opened { name: "letter.txt", score: b"Dear player,", journal: b"" };
    let why = WebDesk::open(&opened, Box::new(drawer.clone())).unwrap_err();
    assert!(why.starts_with("letter.txt: "), "{why}");
    assert_eq!(drawer.text(), "");
}

#[test]
fn bowings_are_carried_over_to_a_newer_version_and_stay_there() {
    let (press, drawer) = (InProcess::default(), Drawer::default());
    let mut desk = open(&drawer).unwrap();
    let bow = r#"{"line":0,"asks":[{"stroke":2,"ask":"up"}],"version":0}"#;
    assert_eq!(asked(&mut desk, &press, PageRequest::post("bow", bow)).0.status, 200);
    let before = drawer.text();
    let told = |happened: Option<Happened>| serde_json::to_value(happened).unwrap();
    let same = arcata_testkit::musicxml(MUSIC).into_bytes();
    assert_eq!(told(desk.carry_to(same)), serde_json::Value::Null, "the same file is no newer version");
    let unreadable = told(desk.carry_to(b"Dear player,".to_vec()));
    assert_eq!(unreadable["event"], "unreadable", "{unreadable}");
    assert_eq!(drawer.text(), before, "nothing was done");

    let newer = arcata_testkit::musicxml(&format!("{MUSIC} | 1/1 C5")).into_bytes();
    let carried = told(desk.carry_to(newer.clone()));
    assert_eq!(carried["done"]["told"], serde_json::json!(["1 bowing is kept as it was"]));
    let journal = drawer.text().into_bytes();
    assert!(drawer.text().starts_with(&before), "the journal goes on");
    let opened = Opened { name: "study.musicxml", score: &newer, journal: &journal };
    let mut again = WebDesk::open(&opened, Box::new(drawer.clone())).unwrap();
    let (answer, _) = asked(&mut again, &press, PageRequest::get("score", ""));
    let score: serde_json::Value = serde_json::from_slice(&answer.bytes).unwrap();
    assert_eq!((&score["bowings"], &score["lost"]), (&serde_json::json!(1), &serde_json::json!([])));
}
