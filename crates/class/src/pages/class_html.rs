//! The page of the class: one that stays with the teacher, one that may be shown.

use maud::{Markup, html};

use super::course::course_svg;
use super::frame::{page, picture};
use crate::before::{Since, TaskBefore, since};
use crate::{ClassView, HandIn, HandInOutcome, LEAST_GROUP, SaidOnSheet, Task, Words};

/// Rules with examples.
const WITH_EXAMPLES: usize = 10;

/// For whom the page is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ClassPageFor {
    /// The teacher: every hand-in by itself, sheets at a click.
    Teacher,
    /// Anybody: nothing of single hand-ins.
    Anybody,
}

/// What the page of the class is made of.
#[derive(Debug)]
pub struct ClassPage<'a> {
    /// The task.
    pub task: &'a Task,
    /// The hand-ins, in the order of their names on pages.
    pub hand_ins: &'a [HandIn<'a>],
    /// Names on the list of the class from whom nothing came.
    pub nothing_from: &'a [String],
    /// The class's way through its tasks, this one last; empty where there was none before.
    pub course: &'a [TaskBefore],
    /// Address of the page about hand-ins that are alike, where there is one.
    pub alike: Option<String>,
    /// A style sheet with the music font, where pictures need one.
    pub fonts: &'a str,
}

impl ClassPage<'_> {
    /// The class's way through its tasks as it may be told: tasks to which few handed in are the teacher's alone.
    pub(super) fn course_for(&self, told: ClassPageFor) -> Vec<TaskBefore> {
        let is_told = |stage: &&TaskBefore| told == ClassPageFor::Teacher || stage.hand_ins >= LEAST_GROUP;
        self.course.iter().filter(is_told).cloned().collect()
    }
}

/// The page of the class.
#[must_use]
pub fn class_html(words: &Words, class: &ClassPage<'_>, told: ClassPageFor) -> String {
    let view = ClassView::new(class.hand_ins, class.task);
    let say = |key: &str| words.word(key);
    let small = told == ClassPageFor::Anybody && view.read < LEAST_GROUP;
    let body = html! {
        header.head {
            h1 { (say("class-title")) ": " (class.task.title) }
            @if let Some(due) = &class.task.due { p.due { (words.say(&SaidOnSheet::new("sheet-due").with("due", due))) } }
        }
        p.note { (say(if told == ClassPageFor::Teacher { "class-stays" } else { "class-to-show" })) }
        p { (words.say(&SaidOnSheet::new("class-counts").with("read", view.read))) }
        main {
            @if small {
                p { (words.say(&SaidOnSheet::new("class-small").with("least", LEAST_GROUP))) }
                ul { @for row in view.rules.iter().filter(|row| row.met > 0) { li { (words.title(&row.rule)) } } }
            } @else {
                (rules(words, &view))
            }
            @if told == ClassPageFor::Teacher {
                (table(words, class, &view))
                (nothing(words, class))
                (since_before(words, class))
                (outliers(words, &view))
            }
            @if !small { (course(words, &class.course_for(told))) }
            @if !small { (middles(words, &view)) }
            @if !small { (examples(words, &view)) }
        }
        footer {
            p { (say("sheet-lane")) }
            p { (say("sheet-advice")) " " (say("sheet-caution")) }
        }
    };
    page(words, &format!("{}: {}", say("class-title"), class.task.title), "class", class.fonts, &body)
}

fn rules(words: &Words, view: &ClassView<'_>) -> Markup {
    let free = view.rules.iter().filter(|row| row.met == 0);
    let free: Vec<String> = free.map(|row| words.title(&row.rule)).collect();
    html! {
        section {
            h2 { (words.word("class-rules")) }
            table {
                tbody {
                    @for row in view.rules.iter().filter(|row| row.met > 0) {
                        tr {
                            td { (words.title(&row.rule)) }
                            td {
                                span.bar style=(format!("width:{}rem", tenths(row.met * 100 / view.read.max(1)))) {}
                                (of(words, row.met, view.read))
                            }
                        }
                    }
                }
            }
            @if !free.is_empty() {
                p.note { (words.say(&SaidOnSheet::new("class-not-met").with("rules", free.join("; ")))) }
            }
        }
    }
}

/// "11 of 24".
fn of(words: &Words, met: usize, read: usize) -> String {
    words.say(&SaidOnSheet::new("class-of").with("met", met).with("read", read))
}

fn tenths(hundredths: usize) -> String {
    format!("{}.{}", hundredths / 10, hundredths % 10)
}

fn examples(words: &Words, view: &ClassView<'_>) -> Markup {
    let shown: Vec<_> =
        view.rules.iter().filter(|row| !row.examples.is_empty()).take(WITH_EXAMPLES).collect();
    html! {
        @if !shown.is_empty() {
            section {
                h2 { (words.word("class-examples")) }
                @for row in shown {
                    h3 { (words.title(&row.rule)) }
                    p.note { (words.question(&row.rule)) }
                    div.examples {
                        @for passage in &row.examples {
                            @if let Some(now) = &passage.now { figure { (picture(now)) } }
                        }
                    }
                }
            }
        }
    }
}

fn middles(words: &Words, view: &ClassView<'_>) -> Markup {
    html! {
        section {
            h2 { (words.word("class-middles")) }
            table {
                thead { tr { th {} th.number { (words.word("class-middle")) } th.number { (words.word("class-half")) } } }
                tbody {
                    @for (measure, (low, middle, high)) in &view.middles {
                        tr {
                            td { (words.word(measure.key())) }
                            td.number { (measure.said(*middle, words)) }
                            td.number { (measure.said(*low, words)) " – " (measure.said(*high, words)) }
                        }
                    }
                }
            }
        }
    }
}

/// A hand-in by its name, with its sheet at a click.
fn link(hand_in: &HandIn<'_>) -> Markup {
    html! {
        @match &hand_in.sheet {
            Some(sheet) => a href=(sheet) { (hand_in.name) },
            None => (hand_in.name),
        }
    }
}

fn outliers(words: &Words, view: &ClassView<'_>) -> Markup {
    html! {
        @if !view.outliers.is_empty() {
            section {
                h2 { (words.word("class-outliers")) }
                ul {
                    @for outlier in &view.outliers {
                        li {
                            (words.word(outlier.measure.key())) ": "
                            @for (key, values) in [("class-lowest", &outlier.low), ("class-highest", &outlier.high)] {
                                @if !values.is_empty() {
                                    (words.word(key)) " "
                                    @for (index, (hand_in, value)) in values.iter().enumerate() {
                                        @if index > 0 { ", " }
                                        (link(hand_in)) " " (outlier.measure.said(*value, words))
                                    }
                                    ". "
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn table(words: &Words, class: &ClassPage<'_>, view: &ClassView<'_>) -> Markup {
    let rules: Vec<&str> = view.rules.iter().filter(|row| row.met > 0).map(|row| row.rule.as_str()).collect();
    html! {
        section {
            h2 { (words.word("class-table")) }
            p.note { (words.word("class-table-how")) }
            p { a href="./hand.html" { (words.word("hand-title")) } ": " (words.word("hand-how")) }
            @if let Some(alike) = &class.alike { p { a href=(alike) { (words.word("alike-title")) } } }
            div.wide {
                table {
                    thead {
                        tr {
                            th { (words.word("class-student")) }
                            @for rule in &rules { th.rule scope="col" { span { (words.title(rule)) } } }
                        }
                    }
                    tbody {
                        @for hand_in in class.hand_ins {
                            @if let Some(shown) = hand_in.record.shown() {
                                tr {
                                    th scope="row" { (link(hand_in)) }
                                    @for rule in &rules {
                                        @match shown.met.get(*rule) {
                                            Some(count) => td.some title=(words.title(rule)) { (count) },
                                            None => td { "·" },
                                        }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// From whom nothing came, what could not be read and why, and what came anew.
fn nothing(words: &Words, class: &ClassPage<'_>) -> Markup {
    let unread = class.hand_ins.iter().filter_map(|hand_in| match &hand_in.record.outcome {
        HandInOutcome::Unreadable { why } => Some((&hand_in.name, why)),
        HandInOutcome::Read(_) => None,
    });
    let unread: Vec<_> = unread.collect();
    let replaced: Vec<_> = class.hand_ins.iter().filter(|hand_in| hand_in.record.replaced > 0).collect();
    html! {
        @if !unread.is_empty() || !class.nothing_from.is_empty() || !replaced.is_empty() {
            section {
                h2 { (words.word("class-none")) }
                ul {
                    @if !class.nothing_from.is_empty() {
                        li { (words.say(&SaidOnSheet::new("class-nothing-from").with("names", class.nothing_from.join(", ")))) }
                    }
                    @for (name, why) in unread { li { (name) ": " span lang="en" { (why) } } }
                    @for hand_in in replaced {
                        li { (link(hand_in)) ": " (words.say(&SaidOnSheet::new("class-replaced").with("count", hand_in.record.replaced))) }
                    }
                }
            }
        }
    }
}

fn course(words: &Words, course: &[TaskBefore]) -> Markup {
    html! {
        @if course.len() > 1 {
            section {
                h2 { (words.word("class-course")) }
                p.note { (words.word("class-course-how")) }
                (course_svg(words, course))
            }
        }
    }
}

fn since_before(words: &Words, class: &ClassPage<'_>) -> Markup {
    let of = |hand_in: &HandIn<'_>| since(&hand_in.record.earlier, hand_in.record.shown()?);
    let all: Vec<(&HandIn<'_>, Since)> =
        class.hand_ins.iter().filter_map(|hand_in| Some((hand_in, of(hand_in)?))).collect();
    let titles = |rules: &[String]| {
        let titles: Vec<String> = rules.iter().map(|rule| words.title(rule)).collect();
        titles.join("; ")
    };
    html! {
        @if !all.is_empty() {
            section {
                h2 { (words.word("class-since")) }
                table {
                    thead {
                        tr {
                            th { (words.word("class-student")) }
                            @for key in ["class-gone", "class-new", "class-back"] { th { (words.word(key)) } }
                        }
                    }
                    tbody {
                        @for (hand_in, since) in &all {
                            tr {
                                td { (link(hand_in)) }
                                td { (titles(&since.gone)) }
                                td { (titles(&since.new)) }
                                td { (titles(&since.back)) }
                            }
                        }
                    }
                }
            }
        }
    }
}
