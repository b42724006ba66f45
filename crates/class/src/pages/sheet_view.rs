//! What a sheet says, in the words of one language: HTML and PDF are made from it.

use std::collections::BTreeSet;

use crate::before::Since;
use crate::{KeptPicture, Record, RecordedPassage, Repairs, SaidOnSheet, Shown, Task, Words};

/// Lines for rules that are not shown as passages.
const REST: usize = 9;

/// What a sheet says.
#[derive(Clone, Debug, PartialEq)]
pub struct StudentSheetView<'a> {
    /// The language, its two letters.
    pub language: &'static str,
    /// The task.
    pub title: String,
    /// Who handed in.
    pub who: String,
    /// When it was due.
    pub due: Option<String>,
    /// The teacher's sentence to everybody.
    pub say: Option<String>,
    /// Heading and sentences of what works.
    pub works: (String, Vec<String>),
    /// Heading of the passages, and what is said where there are none.
    pub heading: (String, Option<String>),
    /// The passages.
    pub passages: Vec<SheetPassageView<'a>>,
    /// Heading and lines of what else was found.
    pub rest: (String, Vec<String>),
    /// Further short paragraphs, each with its heading: what was given, what the task asks, since the task before.
    pub further: Vec<(String, Vec<String>)>,
    /// How this was calculated.
    pub foot: Vec<String>,
}

/// A passage of a sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct SheetPassageView<'a> {
    /// Where.
    pub place: String,
    /// What it is called.
    pub title: String,
    /// How much it weighs, in words.
    pub weight: String,
    /// Label, text, and what kind of text it is.
    pub says: Vec<(String, String, Tongue)>,
    /// The music as it stands, with its caption.
    pub now: Option<(String, &'a KeptPicture)>,
    /// The music with the repair.
    pub repair: Option<(String, &'a KeptPicture)>,
    /// What is said where there is no picture.
    pub no_picture: String,
}

/// What kind of text it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tongue {
    /// The page's.
    Page,
    /// The review's own.
    Review,
    /// The page's, and it asks.
    Asks,
}

impl<'a> StudentSheetView<'a> {
    /// A sheet of a record that was read.
    #[must_use]
    pub fn new(words: &Words, task: &Task, who: &str, (shown, record): (&'a Shown, &Record)) -> Self {
        let say = |key: &str| words.word(key);
        let works: Vec<String> = shown.works.iter().map(|work| words.say(&work.said)).collect();
        let works = if works.is_empty() { vec![say("sheet-works-nothing")] } else { works };
        let nothing = shown.passages.is_empty() && shown.met.is_empty();
        let mut further = Vec::new();
        if !shown.given.is_empty() {
            further.push((say("sheet-given"), shown.given.iter().map(|said| words.say(said)).collect()));
        }
        if !task.criteria.is_empty() {
            further.push((say("sheet-criteria"), criteria(words, task, shown, &record.touch.ticked)));
        }
        for (key, text) in
            [("hand-sheet-note", &record.touch.note), ("hand-sheet-marks", &record.touch.marks)]
        {
            if !text.is_empty() {
                further.push((say(key), vec![text.clone()]));
            }
        }
        if let Some(since) = crate::before::since(&record.earlier, shown) {
            let heading = words.say(&SaidOnSheet::new("sheet-since").with("task", &since.task));
            let lines = since_told(words, &since);
            if !lines.is_empty() {
                further.push((heading, lines));
            }
        }
        Self {
            language: words.language().code(),
            title: task.title.clone(),
            who: who.to_owned(),
            due: task.due.as_ref().map(|due| words.say(&SaidOnSheet::new("sheet-due").with("due", due))),
            say: task.sheet.say.clone(),
            works: (say("sheet-works"), works),
            heading: (say("sheet-passages"), nothing.then(|| say("sheet-passages-nothing"))),
            passages: shown.passages.iter().map(|passage| passage_view(words, task, passage)).collect(),
            rest: (say("sheet-rest"), rest(words, shown)),
            further,
            foot: foot(words, task, shown),
        }
    }
}

fn passage_view<'a>(words: &Words, task: &Task, passage: &'a RecordedPassage) -> SheetPassageView<'a> {
    let key = if passage.beat == "1" { "sheet-bar" } else { "sheet-bar-beat" };
    let bar = words.say(&SaidOnSheet::new(key).with("bar", &passage.bar).with("beat", &passage.beat));
    let part =
        passage.part.as_deref().map_or_else(|| words.word("sheet-whole-score"), |part| words.part(part));
    let mut says = Vec::new();
    let label = |key: &str| words.word(key);
    let sayings = std::iter::once(&passage.sentence).chain(passage.reasons.first());
    let what: Vec<&str> = sayings.map(|sentence| sentence.said(words)).collect();
    says.push((label("sheet-what"), what.join(" "), Tongue::Review));
    if !passage.further.is_empty() {
        let also = SaidOnSheet::new("sheet-also").with("bars", passage.further.join(", "));
        says.push((String::new(), words.say(&also), Tongue::Page));
    }
    says.push((label("sheet-why"), words.why(&passage.rule), Tongue::Page));
    if let Some(own) = passage.own.as_ref().or_else(|| task.words.get(&passage.rule)) {
        says.push((label("sheet-own"), own.clone(), Tongue::Page));
    }
    match (&passage.repair, task.sheet.repairs) {
        (Some(repair), Repairs::Hinted) => {
            let kind = words.word(&format!("kind-{}", repair.kind));
            says.push((
                label("sheet-try"),
                words.say(&SaidOnSheet::new("sheet-hint").with("kind", kind)),
                Tongue::Page,
            ));
        }
        (Some(repair), Repairs::Shown) => {
            says.push((label("sheet-try"), repair.sentence.said(words).to_owned(), Tongue::Review));
        }
        (None, _) | (_, Repairs::Withheld) => {}
    }
    says.push((label("sheet-question"), words.question(&passage.rule), Tongue::Asks));
    let repaired = passage.repair.as_ref().and_then(|repair| repair.picture.as_ref());
    SheetPassageView {
        place: format!("{bar}, {part}"),
        title: words.title(&passage.rule),
        weight: words.word(&passage.weight),
        says,
        now: passage.now.as_ref().map(|now| (label("sheet-now"), now)),
        repair: repaired.map(|repaired| (label("sheet-repaired"), repaired)),
        no_picture: label("sheet-no-picture"),
    }
}

fn rest(words: &Words, shown: &Shown) -> Vec<String> {
    let places = |places: &[(Option<String>, String)]| {
        let said: Vec<String> = places
            .iter()
            .map(|(part, bars)| {
                let part =
                    part.as_deref().map_or_else(|| words.word("sheet-whole-score"), |part| words.part(part));
                format!("{part} {bars}")
            })
            .collect();
        said.join("; ")
    };
    let mut lines: Vec<String> = shown
        .rest
        .iter()
        .take(REST)
        .map(|line| format!("{}: {}", words.title(&line.rule), places(&line.places)))
        .collect();
    let more = shown.rest.len().saturating_sub(REST);
    if more > 0 {
        lines.push(words.say(&SaidOnSheet::new("sheet-rest-more").with("count", more)));
    }
    lines
}

/// What the teacher looks for, each with what the program found of it; what it cannot see is for the hand.
fn criteria(words: &Words, task: &Task, shown: &Shown, ticked: &BTreeSet<usize>) -> Vec<String> {
    let told = |(number, criterion): (usize, &crate::Criterion)| {
        let met: Vec<String> = criterion
            .rules
            .iter()
            .filter(|rule| shown.met.contains_key(*rule))
            .map(|rule| words.title(rule))
            .collect();
        let note = if criterion.rules.is_empty() {
            words.word("sheet-criterion-hand")
        } else if met.is_empty() {
            words.word("sheet-criterion-free")
        } else {
            words.say(&SaidOnSheet::new("sheet-criterion-met").with("rules", met.join("; ")))
        };
        let tick = if ticked.contains(&number) { '☑' } else { '☐' };
        format!("{tick} {} ({note})", criterion.words)
    };
    task.criteria.iter().enumerate().map(told).collect()
}

fn since_told(words: &Words, since: &Since) -> Vec<String> {
    let told = |key: &str, rules: &[String]| {
        let titles: Vec<String> = rules.iter().map(|rule| words.title(rule)).collect();
        (!titles.is_empty()).then(|| words.say(&SaidOnSheet::new(key).with("rules", titles.join("; "))))
    };
    [("sheet-since-gone", &since.gone), ("sheet-since-new", &since.new), ("sheet-since-back", &since.back)]
        .into_iter()
        .filter_map(|(key, rules)| told(key, rules))
        .collect()
}

fn foot(words: &Words, task: &Task, shown: &Shown) -> Vec<String> {
    let player = words.word(&format!("sheet-player-{}", task.player));
    let style = task.profile().map(|profile| profile.style.name()).unwrap_or_default();
    let mut calculated = vec![
        words.say(&SaidOnSheet::new("sheet-calculated-for").with("player", player).with("style", style)),
    ];
    calculated.extend(shown.assumed.iter().map(|said| format!("{}.", said.said(words))));
    calculated.push(words.word("sheet-lane"));
    calculated.push(words.word("sheet-advice"));
    vec![calculated.join(" "), words.word("sheet-caution")]
}
