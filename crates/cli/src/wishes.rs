//! What a user asks of single strokes: anchors and endings, as they are typed.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use arcata_bow::plan::{Anchor, Ending};
use arcata_bow::{Line, Link};
use arcata_review::beats::beat_in_bar;
use arcata_review::words::beat_text;
use arcata_score::{BowDirection, Length, Score};

use crate::bars;
use crate::failure::Failure;
use crate::studio::Desk;

/// An anchor as typed: `60/1 down`, `Viola 60/2½ up`, `II: 12/3 down retake`.
struct Typed<'a> {
    /// The movement, where one is named.
    movement: Option<&'a str>,
    /// The part, empty when there is none.
    part: String,
    bar: &'a str,
    beat: Length,
    direction: Option<BowDirection>,
    link: Option<Link>,
}

/// The anchors of each line; one without a part's name means the lines that are shown.
pub(crate) fn anchors(desk: &Desk, texts: &[String]) -> Result<Vec<Vec<Anchor>>, Failure> {
    let (score, lines, shown) = (desk.score(), desk.lines(), &desk.shown);
    let mut found = vec![Vec::new(); lines.len()];
    for text in texts {
        let failed = |why: String| Failure::Anchor { text: text.clone(), why };
        let typed = typed(text).map_err(failed)?;
        let movement = match typed.movement {
            Some(asked) => Some(bars::movement(score, asked)?),
            None => {
                let mut of = shown.iter().map(|line| lines[*line].movement);
                let first = of.next();
                first.filter(|first| of.all(|other| other == *first))
            }
        };
        let mut meant = meant(lines, shown, &typed.part).map_err(failed)?;
        meant.retain(|line| movement.is_none_or(|movement| lines[*line].movement == movement));
        let mut places = Vec::new();
        for line in meant {
            if let Some(stroke) = stroke_at(score, &lines[line], typed.bar, typed.beat) {
                places.push((line, Anchor { stroke, direction: typed.direction, link: typed.link }));
            }
        }
        if places.is_empty() {
            return Err(failed(nothing_begins(score, lines, shown, &typed)));
        }
        let of: BTreeSet<usize> = places.iter().map(|(line, _)| lines[*line].movement).collect();
        if of.len() > 1 {
            let numbers: Vec<&str> = of.iter().map(|of| score.movements[*of].number.as_str()).collect();
            return Err(failed(format!(
                "bar {} stands in the movements {}: write one before it, such as \"{}: {text}\"",
                typed.bar,
                numbers.join(", "),
                numbers[0]
            )));
        }
        for (line, anchor) in places {
            found[line].push(anchor);
        }
    }
    Ok(found)
}

fn typed(text: &str) -> Result<Typed<'_>, String> {
    let (movement, text) = in_movement(text);
    let words: Vec<&str> = text.split_whitespace().collect();
    let place = words.iter().rposition(|word| word.contains('/')).ok_or("no bar and beat are named")?;
    let (bar, beat) = words[place].split_once('/').unwrap_or((words[place], ""));
    let beat = beat_typed(beat).ok_or_else(|| format!("\"{beat}\" is no beat"))?;
    let mut typed =
        Typed { movement, part: words[..place].join(" "), bar, beat, direction: None, link: None };
    for word in &words[place + 1..] {
        match *word {
            "down" => typed.direction = Some(BowDirection::Down),
            "up" => typed.direction = Some(BowDirection::Up),
            "hook" => typed.link = Some(Link::Hooked),
            "retake" => typed.link = Some(Link::Retake),
            other => return Err(format!("\"{other}\" is none of down, up, hook, retake")),
        }
    }
    if typed.direction.is_none() && typed.link.is_none() {
        return Err("it does not say what the stroke should do".to_owned());
    }
    Ok(typed)
}

/// The movement that a text begins with, before a colon, and the rest.
fn in_movement(text: &str) -> (Option<&str>, &str) {
    match text.split_once(':') {
        Some((movement, rest)) => (Some(movement.trim()), rest.trim()),
        None => (None, text.trim()),
    }
}

/// A beat from 1: `3`, `3.5`, `3½`, `3+1/2`.
fn beat_typed(text: &str) -> Option<Length> {
    const SIGNS: [(char, i64, i64); 11] = [
        ('½', 1, 2),
        ('⅓', 1, 3),
        ('⅔', 2, 3),
        ('¼', 1, 4),
        ('¾', 3, 4),
        ('⅙', 1, 6),
        ('⅚', 5, 6),
        ('⅛', 1, 8),
        ('⅜', 3, 8),
        ('⅝', 5, 8),
        ('⅞', 7, 8),
    ];
    let number = |text: &str| text.parse::<i64>().ok().filter(|number| (0..=9999).contains(number));
    if let Some((whole, rest)) = text.split_once('+') {
        let (above, below) = rest.split_once('/')?;
        let below = number(below).filter(|below| *below > 0)?;
        return Some(Length::new(number(whole)?, 1) + Length::new(number(above)?, below));
    }
    if let Some((whole, decimals)) = text.split_once('.') {
        let below = 10i64.checked_pow(u32::try_from(decimals.len()).ok().filter(|count| *count <= 4)?)?;
        return Some(Length::new(number(whole)?, 1) + Length::new(number(decimals)?, below));
    }
    if let Some((sign, above, below)) = SIGNS.into_iter().find(|(sign, ..)| text.ends_with(*sign)) {
        return Some(Length::new(number(text.trim_end_matches(sign))?, 1) + Length::new(above, below));
    }
    Some(Length::new(number(text)?, 1))
}

/// The lines that a part's name means; without a name all that are shown, when they are of one part.
fn meant(lines: &[Line], shown: &[usize], part: &str) -> Result<Vec<usize>, String> {
    let names = || lines.iter().map(|line| line.name.clone()).collect::<Vec<_>>().join(", ");
    if part.is_empty() {
        let parts: BTreeSet<usize> = shown.iter().map(|index| lines[*index].part).collect();
        return match parts.len() {
            0 => Err("there is no bowed line".to_owned()),
            1 => Ok(shown.to_vec()),
            _ => Err(format!("several parts are shown; name one before the bar: {}", names())),
        };
    }
    let asked = part.to_lowercase();
    let name = |index: &usize| lines[*index].name.to_lowercase();
    let exact: Vec<usize> = (0..lines.len()).filter(|index| name(index) == asked).collect();
    let begun: Vec<usize> = (0..lines.len()).filter(|index| name(index).starts_with(&asked)).collect();
    match (exact.is_empty(), begun.is_empty()) {
        (false, _) => Ok(exact),
        (true, false) => Ok(begun),
        (true, true) => Err(format!("no line is called \"{part}\": {}", names())),
    }
}

fn beats_in<'a>(
    score: &'a Score,
    line: &'a Line,
    bar: &'a str,
) -> impl Iterator<Item = (usize, Length)> + 'a {
    let strokes = line.strokes.iter().enumerate();
    strokes.filter_map(move |(index, stroke)| {
        score.bars.get(stroke.bar as usize).filter(|found| found.label == bar)?;
        let meter = score.parts.get(line.part)?.meter_at(stroke.bar)?;
        Some((index, beat_in_bar(meter, stroke.offset)))
    })
}

fn stroke_at(score: &Score, line: &Line, bar: &str, beat: Length) -> Option<usize> {
    beats_in(score, line, bar).find(|(_, found)| *found == beat).map(|(index, _)| index)
}

fn nothing_begins(score: &Score, lines: &[Line], shown: &[usize], typed: &Typed<'_>) -> String {
    if !score.bars.iter().any(|bar| bar.label == typed.bar) {
        return format!("the score has no bar {}; {}", typed.bar, score.last_bars_said());
    }
    let meant = meant(lines, shown, &typed.part).unwrap_or_default();
    let mut beats: Vec<Length> = meant
        .iter()
        .flat_map(|line| beats_in(score, &lines[*line], typed.bar))
        .map(|(_, beat)| beat)
        .collect();
    beats.sort_unstable();
    beats.dedup();
    let told: Vec<String> = beats.into_iter().map(beat_text).collect();
    if told.is_empty() {
        format!("no stroke begins in bar {}", typed.bar)
    } else {
        format!(
            "no stroke begins at bar {}, beat {}; strokes begin there at beat {}",
            typed.bar,
            beat_text(typed.beat),
            told.join(", ")
        )
    }
}

/// `8 down`, `II: 8 down`: the bar (an index) and the bow on which it should end. Without a movement the bar is looked
/// for among those asked for first.
pub(crate) fn ending(
    score: &Score,
    bars: &RangeInclusive<u32>,
    text: &str,
) -> Result<(u32, BowDirection), Failure> {
    let failed = |why: String| Failure::Ending { text: text.to_owned(), why };
    let (movement, rest) = in_movement(text);
    let within = match movement {
        Some(asked) => score.movements[bars::movement(score, asked)?].bars.clone(),
        None => 0..=u32::MAX,
    };
    let (bar, bow) =
        rest.rsplit_once(' ').ok_or_else(|| failed("a bar and a bow are expected".to_owned()))?;
    let direction = match bow {
        "down" => BowDirection::Down,
        "up" => BowDirection::Up,
        other => return Err(failed(format!("\"{other}\" is neither down nor up"))),
    };
    let bar = bar.trim();
    let named = |index: &u32| within.contains(index) && score.bar_label(*index) == bar;
    let all = 0..u32::try_from(score.bars.len()).unwrap_or(u32::MAX);
    let found = bars.clone().find(named).or_else(|| {
        let mut all = all;
        all.find(named)
    });
    let missing = || failed(format!("there is no bar {bar}; {}", score.last_bars_said()));
    found.map(|bar| (bar, direction)).ok_or_else(missing)
}

/// What the ending asks of a line: the last note that it begins before the bar's end; `None` where the
/// line is silent in the bar.
pub(crate) fn ending_of(score: &Score, line: &Line, (bar, direction): (u32, BowDirection)) -> Option<Ending> {
    let found = score.bars.get(bar as usize)?;
    let until = found.start + found.length;
    let stroke = line.strokes.partition_point(|stroke| stroke.onset < until).checked_sub(1)?;
    let last = &line.strokes[stroke];
    (last.onset + last.length > found.start).then_some(Ending { stroke, until, direction })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn beats_are_read_as_people_write_them() {
        for (text, beat) in [
            ("1", Length::new(1, 1)),
            ("3.5", Length::new(7, 2)),
            ("3½", Length::new(7, 2)),
            ("2+1/3", Length::new(7, 3)),
        ] {
            assert_eq!(beat_typed(text), Some(beat), "{text}");
        }
        for text in ["", "x", "3.", "3+1/0", "-1", "1.23456"] {
            assert_eq!(beat_typed(text), None, "{text}");
        }
    }

    #[test]
    fn an_anchor_is_a_place_and_what_to_do() {
        let anchor = typed("Violin II 60/2½ down retake").unwrap();
        assert_eq!((anchor.part.as_str(), anchor.bar), ("Violin II", "60"));
        assert_eq!((anchor.direction, anchor.link), (Some(BowDirection::Down), Some(Link::Retake)));
        assert!(typed("60 down").is_err());
        assert!(typed("60/1").is_err());
        assert!(typed("60/1 sideways").is_err());
    }
}
