//! Bars and parts as people name them.

use std::ops::RangeInclusive;

use arcata_languages::Saying;
use arcata_score::Score;

use crate::failure::Failure;
use crate::files;
use crate::layer_words::say;

/// The bars that `--bars` names, in the movement that it or `--movement` names; without a movement in the first that has
/// them. All bars when nothing is named.
pub(crate) fn bars(
    score: &Score,
    text: Option<&str>,
    asked: Option<&str>,
) -> Result<RangeInclusive<u32>, Failure> {
    let within = asked.map(|asked| movement(score, asked)).transpose()?;
    let Some(text) = text else {
        let movements = match within {
            Some(movement) => &score.movements[movement..=movement],
            None => score.movements.as_slice(),
        };
        let first = movements.first().map_or(0, |first| *first.bars.start());
        return Ok(first..=movements.last().map_or(0, |last| *last.bars.end()));
    };
    let failed = |why: String| Failure::Bars { text: text.to_owned(), why };
    let typed = score.passage(text).map_err(|misread| Failure::Misread {
        option: "--bars",
        text: text.to_owned(),
        misread,
    })?;
    if let Some(part) = &typed.section {
        return Err(failed(say(&Saying::new("failure-names-part-for-bars").quoting("part", part))));
    }
    let named = typed.movement.as_deref().and_then(|named| score.movement_named(named));
    if let (Some(asked), Some(_), true) = (asked, named, named != within) {
        return Err(failed(say(&Saying::new("failure-bars-of-other-movement").quoting("asked", asked))));
    }
    score.bars_of(&typed, within).map_err(|not_there| failed(files::told(&not_there.to_string())))
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
