//! From one task to the next: what has gone, what is new, what has come back.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Record, RememberedTask, Shown};

/// How a student's rules stand beside the task before.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Since {
    /// The task before.
    pub task: String,
    /// Met then and not now.
    pub gone: Vec<String>,
    /// Met now and never before.
    pub new: Vec<String>,
    /// Met now and in a task further back, and not in the one before.
    pub back: Vec<String>,
    /// Met then and now.
    pub stays: Vec<String>,
}

/// What a later task remembers of a record: its own courses, and itself.
#[must_use]
pub fn remembered(earlier: &Record) -> Vec<RememberedTask> {
    let mut all = earlier.earlier.clone();
    if let Some(shown) = earlier.shown() {
        all.push(RememberedTask { task: earlier.task.clone(), met: shown.met.clone() });
    }
    all
}

/// What has changed since the task before; none where there is none.
#[must_use]
pub fn since(earlier: &[RememberedTask], now: &Shown) -> Option<Since> {
    let (last, further) = earlier.split_last()?;
    let then: BTreeSet<&String> = last.met.keys().collect();
    let now: BTreeSet<&String> = now.met.keys().collect();
    let ever: BTreeSet<&String> = further.iter().flat_map(|course| course.met.keys()).collect();
    let named = |rules: Vec<&&String>| rules.into_iter().map(|rule| (*rule).clone()).collect();
    let fresh = || now.difference(&then);
    Some(Since {
        task: last.task.clone(),
        gone: named(then.difference(&now).collect()),
        new: named(fresh().filter(|rule| !ever.contains(*rule)).collect()),
        back: named(fresh().filter(|rule| ever.contains(*rule)).collect()),
        stays: named(then.intersection(&now).collect()),
    })
}

/// A task of the class's year: how many hand-ins there were, and how many met each rule.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TaskBefore {
    /// The task.
    pub task: String,
    /// Hand-ins that were read.
    pub hand_ins: usize,
    /// How many of them met each rule.
    pub met: BTreeMap<String, usize>,
}

/// The class's way through its tasks, in order of time; of students who have handed in now. `now` is the title of this task. Two
/// tasks of one title are two: a draft and what came of it.
#[must_use]
pub fn course<'a>(now: &str, records: impl IntoIterator<Item = &'a Record>) -> Vec<TaskBefore> {
    let mut stages: Vec<(usize, TaskBefore)> = Vec::new();
    // Who has missed no task knows their order.
    let mut all: Vec<Vec<RememberedTask>> = records.into_iter().map(remembered).collect();
    all.sort_by_key(|courses| std::cmp::Reverse(courses.len()));
    for courses in all {
        // Where in the year this student is.
        let mut at = 0;
        for (index, RememberedTask { task, met }) in courses.iter().enumerate() {
            // Counted from the end: whoever has handed in once has handed in what came of it.
            let again = courses[index + 1..].iter().filter(|later| later.task == *task).count();
            let known = stages.iter().position(|(known, stage)| (*known, &stage.task) == (again, task));
            at = known.unwrap_or_else(|| {
                let new = TaskBefore { task: task.clone(), hand_ins: 0, met: BTreeMap::new() };
                stages.insert(at, (again, new));
                at
            });
            stages[at].1.hand_ins += 1;
            for rule in met.keys() {
                *stages[at].1.met.entry(rule.clone()).or_default() += 1;
            }
            at += 1;
        }
    }
    if let Some(last) = stages.iter().position(|(again, stage)| *again == 0 && stage.task == now) {
        let this = stages.remove(last);
        stages.push(this);
    }
    stages.into_iter().map(|(_, stage)| stage).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn met(rules: &[&str]) -> BTreeMap<String, u32> {
        rules.iter().map(|rule| ((*rule).to_owned(), 1)).collect()
    }

    fn record(task: &str, earlier: &[&str]) -> Record {
        let shown = Shown { met: met(&["no-tempo"]), ..crate::record::nothing() };
        let outcome = crate::HandInOutcome::Read(shown);
        let mut record = Record::new(task, "Alder Bank", (String::new(), String::new()), outcome);
        let remembered = |task: &&str| RememberedTask { task: (*task).to_owned(), met: met(&["no-tempo"]) };
        record.earlier = earlier.iter().map(remembered).collect();
        record
    }

    #[test]
    fn the_course_of_a_year_keeps_the_order_of_its_tasks() {
        // Somebody has missed the second task, somebody the first two; three have handed in a draft of the third one first.
        let records = [
            record("3", &["1", "3"]),
            record("3", &["3"]),
            record("3", &["1", "2", "3"]),
            record("3", &["2"]),
        ];
        let stages = course("3", &records);
        let told: Vec<(&str, usize)> =
            stages.iter().map(|stage| (stage.task.as_str(), stage.hand_ins)).collect();
        assert_eq!(told, [("1", 2), ("2", 2), ("3", 3), ("3", 4)]);
    }

    #[test]
    fn gone_new_and_back_again() {
        let earlier = [
            RememberedTask { task: "1".to_owned(), met: met(&["no-tempo", "bow-drift"]) },
            RememberedTask { task: "2".to_owned(), met: met(&["bow-drift", "broken-slur"]) },
        ];
        let now =
            Shown { met: met(&["no-tempo", "broken-slur", "nested-slurs"]), ..crate::record::nothing() };
        let since = since(&earlier, &now).expect("a task before");
        assert_eq!(since.task, "2");
        assert_eq!((since.gone, since.new), (vec!["bow-drift".to_owned()], vec!["nested-slurs".to_owned()]));
        assert_eq!((since.back, since.stays), (vec!["no-tempo".to_owned()], vec!["broken-slur".to_owned()]));
    }
}
