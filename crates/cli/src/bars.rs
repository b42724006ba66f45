//! Bars and parts as people name them.

use std::ops::RangeInclusive;

use arcata_score::Score;

use crate::failure::Failure;

/// The bars that `--bars` names, by printed number, in the movement that `--movement` names; without a movement
/// in the first that has them. All bars when nothing is named.
pub(crate) fn bars(
    score: &Score,
    text: Option<&str>,
    asked: Option<&str>,
) -> Result<RangeInclusive<u32>, Failure> {
    let within: Vec<RangeInclusive<u32>> = match asked {
        None => score.movements.iter().map(|movement| movement.bars.clone()).collect(),
        Some(asked) => vec![score.movements[movement(score, asked)?].bars.clone()],
    };
    let Some(text) = text else {
        let (first, last) =
            (within.first().map_or(0, |first| *first.start()), within.last().map_or(0, |last| *last.end()));
        return Ok(first..=last);
    };
    let failed = |why: String| Failure::Bars { text: text.to_owned(), why };
    let (from, to) = text.split_once('-').unwrap_or((text, text));
    let (from, to) = (from.trim(), to.trim());
    let is = |bar: &u32, label: &str| score.bars.get(*bar as usize).is_some_and(|bar| bar.label == label);
    let has = |label: &str| within.iter().flat_map(Clone::clone).any(|bar| is(&bar, label));
    if let Some(missing) = [from, to].into_iter().find(|label| !has(label)) {
        return Err(failed(match asked {
            None => format!("the score has no bar {missing}; {}", score.last_bars_said()),
            Some(asked) => {
                let named = movement(score, asked)?;
                let (alone, _) = score.movement_alone(named).unwrap_or_default();
                let name = score.movements[named].name();
                format!("{name} has no bar {missing}; {}", alone.last_bars_said())
            }
        }));
    }
    // Two bars of one number are the two halves of a bar that a repeat splits: both are meant.
    let found = within.iter().find_map(|movement| {
        let from = movement.clone().find(|bar| is(bar, from))?;
        let to = movement.clone().rev().find(|bar| is(bar, to))?;
        (from <= to).then_some(from..=to)
    });
    found.ok_or_else(|| failed("the second bar comes before the first".into()))
}

/// The index of the movement that `--movement` names.
pub(crate) fn movement(score: &Score, asked: &str) -> Result<usize, Failure> {
    score.movement_named(asked).ok_or_else(|| Failure::Movement {
        asked: asked.to_owned(),
        there: score.movements.iter().map(|movement| movement.name().to_owned()).collect(),
    })
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
