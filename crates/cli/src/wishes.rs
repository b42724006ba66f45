//! What a user asks of single strokes: anchors and endings, as they are typed.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use arcata_bow::plan::{Anchor, WishedEnding};
use arcata_bow::{Line, Link};
use arcata_languages::{Argument, SaidPlace, Saying};
use arcata_layer::{PitchName, shorthand};
use arcata_score::places::{self, BarName, Passage, Within, beat_said};
use arcata_score::{BowDirection, Length, Score};

use crate::failure::Failure;
use crate::layer_words::{say, word};
use crate::studio::StudioScore;
use crate::{bars, files};

/// An anchor as typed: `60/1 down`, `Viola 60/2½ up`, `II: 12/3 down retake`.
struct TypedWish {
    /// The movement, where one is named.
    movement: Option<String>,
    /// The part, empty when there is none.
    part: String,
    bar: BarName,
    within: Within,
    direction: Option<BowDirection>,
    link: Option<Link>,
}

/// The anchors of each line; one without a part's name means the lines that are shown.
pub(crate) fn anchors(desk: &StudioScore, texts: &[String]) -> Result<Vec<Vec<Anchor>>, Failure> {
    let (score, lines, shown) = (desk.score(), desk.lines(), &desk.shown);
    let mut found = vec![Vec::new(); lines.len()];
    for text in texts {
        let failed = |why: String| Failure::Anchor { text: text.clone(), why };
        let typed = typed(score, text).map_err(failed)?;
        let movement = match &typed.movement {
            Some(asked) => Some(bars::movement(score, asked)?),
            None => {
                let mut of = shown.iter().map(|line| lines[*line].movement);
                let first = of.next();
                first.filter(|first| of.all(|other| other == *first))
            }
        };
        let mut meant = meant(score, lines, shown, &typed.part).map_err(failed)?;
        meant.retain(|line| movement.is_none_or(|movement| lines[*line].movement == movement));
        let mut places = Vec::new();
        for line in &meant {
            if let Some(stroke) = stroke_at(score, &lines[*line], &typed) {
                places.push((*line, Anchor { stroke, direction: typed.direction, link: typed.link }));
            }
        }
        if places.is_empty() {
            return Err(failed(nothing_begins(score, lines, &meant, &typed)));
        }
        let of: BTreeSet<usize> = places.iter().map(|(line, _)| lines[*line].movement).collect();
        if of.len() > 1 {
            let numbers: Vec<&str> = of.iter().map(|of| score.movements[*of].number.as_str()).collect();
            let several = Saying::new("wish-of-several-movements")
                .with("bar", SaidPlace::bar(&typed.bar.label))
                .quoting("movements", numbers.join(", "))
                .quoting("such", format!("{}: {text}", numbers[0]));
            return Err(failed(say(&several)));
        }
        for (line, anchor) in places {
            found[line].push(anchor);
        }
    }
    Ok(found)
}

fn typed(score: &Score, text: &str) -> Result<TypedWish, String> {
    let (passage, rest) = places::leading(text).map_err(|misread| files::told(&misread.to_string()))?;
    let passage = score.with_its_names(passage);
    let Passage { movement, section, from, to } = passage;
    match (&to, from.within) {
        (Some(_), _) => return Err(word("wish-stretch")),
        (None, Within::Bar) => return Err(word("wish-no-beat")),
        (None, Within::Note(_)) => return Err(word("wish-by-note")),
        (None, Within::Beat(_) | Within::After(_)) => {}
    }
    let mut typed = TypedWish {
        movement,
        part: section.unwrap_or_default(),
        bar: from.bar.unwrap_or_else(|| BarName::new("")),
        within: from.within,
        direction: None,
        link: None,
    };
    for word in without_the_note(rest, &mut typed.part) {
        match word {
            "down" => typed.direction = Some(BowDirection::Down),
            "up" => typed.direction = Some(BowDirection::Up),
            "hook" => typed.link = Some(Link::Hooked),
            "retake" => typed.link = Some(Link::Retake),
            other => return Err(say(&Saying::new("wish-none-of").quoting("word", other))),
        }
    }
    if typed.direction.is_none() && typed.link.is_none() {
        return Err(word("wish-says-nothing"));
    }
    Ok(typed)
}

/// What the stroke should do, of the words behind a place. A printed place may end in the pitch of its note or in the
/// section: "bar 23, beat 1, F5", "bar 23, beat 1  Violin".
fn without_the_note<'t>(rest: &'t str, part: &mut String) -> Vec<&'t str> {
    let is_asked = |word: &&str| ["down", "up", "hook", "retake"].contains(word);
    let words: Vec<&str> = rest.trim_start_matches([',', ' ']).split_whitespace().collect();
    let asked = words.iter().rev().take_while(|word| is_asked(word)).count();
    let (before, asked) = words.split_at(words.len() - asked);
    match before {
        [] => asked.to_vec(),
        [pitch] if PitchName::parse(pitch).is_some() => asked.to_vec(),
        name if part.is_empty() && !asked.is_empty() => {
            *part = name.join(" ");
            asked.to_vec()
        }
        _ => words,
    }
}

/// The lines that a part's name means; without a name all that are shown, when they are of one part.
fn meant(score: &Score, lines: &[Line], shown: &[usize], part: &str) -> Result<Vec<usize>, String> {
    let names = || lines.iter().map(|line| line.name.clone()).collect::<Vec<_>>().join(", ");
    if part.is_empty() {
        let parts: BTreeSet<usize> = shown.iter().map(|index| lines[*index].part).collect();
        return match parts.len() {
            0 => Err(word("wish-no-line")),
            1 => Ok(shown.to_vec()),
            _ => Err(say(&Saying::new("wish-several-parts").quoting("names", names()))),
        };
    }
    // In lists the comma of "Viola, voice 2" is left out.
    let plain = |name: &str| name.to_lowercase().replace(", voice", " voice");
    let asked = plain(part);
    let those = |test: &dyn Fn(&Line) -> bool| -> Vec<usize> {
        (0..lines.len()).filter(|index| test(&lines[*index])).collect()
    };
    let exact = those(&|line| plain(&line.name) == asked);
    let begun = those(&|line| plain(&line.name).starts_with(&asked));
    let known = shorthand::parts_named(score, part).unwrap_or_default();
    let section = those(&|line| known.contains(&line.part));
    let found = [exact, begun, section].into_iter().find(|found| !found.is_empty());
    found
        .ok_or_else(|| say(&Saying::new("wish-no-such-line").quoting("part", part).quoting("names", names())))
}

/// The bars of the line's movement that are meant.
fn bars_meant(score: &Score, line: &Line, bar: &BarName) -> Vec<u32> {
    let movement = score.movements.get(line.movement);
    score.bars_called(bar, movement.map_or(0..=u32::MAX, |movement| movement.bars.clone()))
}

fn stroke_at(score: &Score, line: &Line, typed: &TypedWish) -> Option<usize> {
    bars_meant(score, line, &typed.bar).into_iter().find_map(|bar| {
        let offset = score.offset_of(line.part, bar, typed.within).ok().flatten()?;
        line.strokes.iter().position(|stroke| stroke.bar == bar && stroke.offset == offset)
    })
}

fn nothing_begins(score: &Score, lines: &[Line], meant: &[usize], typed: &TypedWish) -> String {
    let movement = typed.movement.as_deref().and_then(|asked| score.movement_named(asked));
    let within = movement.map_or(0..=u32::MAX, |movement| score.movements[movement].bars.clone());
    if score.bars_called(&typed.bar, within).is_empty() {
        return files::told(&score.no_bar(&typed.bar, movement).to_string());
    }
    let beats_of = |line: &usize| -> Vec<Length> {
        let line = &lines[*line];
        let bars = bars_meant(score, line, &typed.bar);
        let there = line.strokes.iter().filter(|stroke| bars.contains(&stroke.bar));
        there.map(|stroke| score.beat_at(line.part, stroke.bar, stroke.offset)).collect()
    };
    let mut beats: Vec<Length> = meant.iter().flat_map(beats_of).collect();
    beats.sort_unstable();
    beats.dedup();
    let told: Vec<String> = beats.into_iter().map(beat_said).collect();
    let bar = SaidPlace::bar(&typed.bar.label);
    if told.is_empty() {
        return say(&Saying::new("wish-no-stroke-in-bar").with("bar", bar));
    }
    let place: Argument = match typed.within {
        Within::Beat(beat) => bar.on_beat(beat).into(),
        Within::After(length) => {
            Saying::new("wish-bar-after").with("bar", bar).quoting("length", length.to_string()).into()
        }
        Within::Bar | Within::Note(_) => bar.into(),
    };
    say(&Saying::new("wish-no-stroke-at").with("place", place).quoting("beats", told.join(", ")))
}

/// `8 down`, `II: 8 down`: the bar (an index) and the bow on which it should end. Without a movement the bar is looked
/// for among those asked for first.
pub(crate) fn ending(
    score: &Score,
    bars: &RangeInclusive<u32>,
    text: &str,
) -> Result<(u32, BowDirection), Failure> {
    let failed = |why: String| Failure::Ending { text: text.to_owned(), why };
    let (passage, bow) =
        places::leading(text).map_err(|misread| failed(files::told(&misread.to_string())))?;
    let passage = score.with_its_names(passage);
    let movement = passage.movement.as_deref().map(|asked| bars::movement(score, asked)).transpose()?;
    if let Some(part) = &passage.section {
        return Err(failed(say(&Saying::new("ending-names-part").quoting("part", part))));
    }
    if passage.to.is_some() {
        return Err(failed(word("ending-stretch")));
    }
    let direction = match bow {
        "down" => BowDirection::Down,
        "up" => BowDirection::Up,
        "" => return Err(failed(word("ending-expects"))),
        other => return Err(failed(say(&Saying::new("ending-neither").quoting("word", other)))),
    };
    let within = movement.map_or(0..=u32::MAX, |movement| score.movements[movement].bars.clone());
    let (bar, _) = passage.bars();
    let found = score.bars_called(&bar, within);
    let first = found.iter().find(|index| bars.contains(*index)).or(found.first());
    let missing = || failed(files::told(&score.no_bar(&bar, movement).to_string()));
    first.map(|bar| (*bar, direction)).ok_or_else(missing)
}

/// What the ending asks of a line: the last note that it begins before the bar's end; `None` where the
/// line is silent in the bar.
pub(crate) fn ending_of(
    score: &Score,
    line: &Line,
    (bar, direction): (u32, BowDirection),
) -> Option<WishedEnding> {
    let found = score.bars.get(bar as usize)?;
    let until = found.start + found.length;
    let stroke = line.strokes.partition_point(|stroke| stroke.onset < until).checked_sub(1)?;
    let last = &line.strokes[stroke];
    (last.onset + last.length > found.start).then_some(WishedEnding { stroke, until, direction })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_anchor_is_a_place_and_what_to_do() {
        let score = Score::default();
        let read = |text: &str| {
            typed(&score, text)
                .map(|typed| (typed.part, typed.bar.label, typed.within, typed.direction, typed.link))
        };
        let half = Within::Beat(Length::new(5, 2));
        let down = Some(BowDirection::Down);
        let anchored = |part: &str| Ok((part.to_owned(), "60".to_owned(), half, down, Some(Link::Retake)));
        for text in [
            "Violin II 60/2½ down retake",
            "Violin II, bar 60, beat 2½ down retake",
            "bar 60, beat 2½  Violin II down retake",
            "Violin II, Takt 60, Schlag 2 1/2 down retake",
            "Violin II: m. 60, beat 5/2 down retake",
            "Violin II, bar 60, beat 2½, F5 down retake",
        ] {
            assert_eq!(read(text), anchored("Violin II"), "{text}");
        }
        assert_eq!(read("60/2½ down retake"), anchored(""));
        for wrong in ["60 down", "60/1", "60/1 sideways", "60-61 down", "60/n2 down", "down", "60/0 down"] {
            assert!(read(wrong).is_err(), "{wrong}");
        }
    }
}
