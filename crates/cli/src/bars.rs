//! Bars and parts as people name them.

use std::ops::RangeInclusive;

use arcata_score::Score;

use crate::failure::Failure;

/// The bars that `--bars` names, by printed number; all when it is not given.
pub(crate) fn bars(score: &Score, text: Option<&str>) -> Result<RangeInclusive<u32>, Failure> {
    let last = u32::try_from(score.bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let Some(text) = text else { return Ok(0..=last) };
    let failed = |why: String| Failure::Bars { text: text.to_owned(), why };
    let (from, to) = text.split_once('-').unwrap_or((text, text));
    let find = |label: &str, from_end: bool| {
        let label = label.trim();
        let matches = |bar: &arcata_score::Bar| bar.label == label;
        let found =
            if from_end { score.bars.iter().rposition(matches) } else { score.bars.iter().position(matches) };
        found
            .and_then(|at| u32::try_from(at).ok())
            .ok_or_else(|| failed(format!("the score has no bar {label}")))
    };
    let (from, to) = (find(from, false)?, find(to, true)?);
    if from > to { Err(failed("the second bar comes before the first".into())) } else { Ok(from..=to) }
}

/// Indices of the parts that `--part` names, all bowed parts when it names none.
pub(crate) fn parts(score: &Score, asked: &[String]) -> Result<Vec<usize>, Failure> {
    let bowed: Vec<usize> =
        (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed()).collect();
    if asked.is_empty() {
        return Ok(bowed);
    }
    let mut chosen = Vec::new();
    for name in asked {
        let mut found = named(score, &bowed, name);
        if found.is_empty() {
            let known = bowed.iter().map(|part| score.parts[*part].name.clone()).collect();
            return Err(Failure::Part { asked: name.clone(), known });
        }
        chosen.append(&mut found);
    }
    chosen.sort_unstable();
    chosen.dedup();
    Ok(chosen)
}

/// Exact names come before beginnings of names, names before numbers.
fn named(score: &Score, bowed: &[usize], asked: &str) -> Vec<usize> {
    let asked = asked.trim().to_lowercase();
    let matching = |test: &dyn Fn(&str) -> bool| -> Vec<usize> {
        let hits = |part: &&usize| {
            let part = &score.parts[**part];
            test(&part.name.to_lowercase()) || test(&part.abbreviation.to_lowercase())
        };
        bowed.iter().filter(hits).copied().collect()
    };
    let exact = matching(&|name| name == asked);
    if !exact.is_empty() {
        return exact;
    }
    let beginning = matching(&|name| !asked.is_empty() && name.starts_with(&asked));
    if !beginning.is_empty() {
        return beginning;
    }
    let number = asked.parse::<usize>().ok().and_then(|number| number.checked_sub(1));
    number.filter(|part| *part < score.parts.len()).into_iter().collect()
}
