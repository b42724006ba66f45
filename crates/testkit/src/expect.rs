//! What a test expects, written under the music.

use std::ops::Range;

use crate::cursor::{CharacterCursor, FixturePlace};
use crate::error::FixtureRead;
use crate::model::{FixtureEvent, FixturePart, Fraction};

/// Something a test expects of one note.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Expectation {
    /// Name of the part.
    pub part: String,
    /// Place of the part in the score, from 0 at the top.
    pub part_index: usize,
    /// Place of the bar in the part, from 0.
    pub bar_index: usize,
    /// The bar's printed number: `"0"` for a pickup.
    pub bar: String,
    /// From the start of the bar, in whole notes.
    pub onset: Fraction,
    /// Beat in the unit of the metre's lower number; the bar begins on beat 1.
    pub beat: Fraction,
    /// Voice, from 1.
    pub voice: u32,
    /// How many `note` elements of the part stand before the note.
    pub note: usize,
    /// How the note was pointed at.
    pub pointer: Pointer,
    /// What is expected, as written.
    pub text: String,
    /// Line of the text, from 1.
    pub line: usize,
    /// Column of the text, from 1.
    pub column: usize,
}

/// How an expectation finds its note.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pointer {
    /// `^`: the note, chord or rest above the caret.
    Caret,
    /// `?`: the strokes in their order.
    Stroke,
    /// `??`: the written notes in their order, grace notes and tied notes too.
    Note,
}

/// A line of expectations, with the events of the line of music above it.
#[derive(Debug)]
pub(crate) struct ExpectationLine {
    pub(crate) part: usize,
    pub(crate) events: Range<usize>,
    pub(crate) items: Items,
}

#[derive(Debug)]
pub(crate) enum Items {
    Carets(Vec<(FixturePlace, String)>),
    Sequence {
        pointer: Pointer,
        bars: Vec<Vec<(FixturePlace, String)>>,
        rest_is_open: Rest,
        place: FixturePlace,
    },
}

/// Whether a sequence names every note, or says `...` at its end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Rest {
    Named,
    Open,
}

/// Reads the line from its `^` or `?`.
pub(crate) fn read_items(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Items> {
    let from = cursor.position();
    if !cursor.take('?') {
        return read_carets(cursor);
    }
    let pointer = if cursor.take('?') { Pointer::Note } else { Pointer::Stroke };
    let place = cursor.place_from(from);
    let mut bars = vec![Vec::new()];
    let mut rest_is_open = Rest::Named;
    loop {
        cursor.skip_spaces();
        if cursor.peek().is_none() {
            break;
        }
        if rest_is_open == Rest::Open {
            return Err(cursor.error("nothing behind the three dots"));
        }
        if cursor.take_text("...") {
            rest_is_open = Rest::Open;
        } else if cursor.take('|') {
            bars.push(Vec::new());
        } else if let Some(bar) = bars.last_mut() {
            bar.push(read_label(cursor)?);
        }
    }
    Ok(Items::Sequence { pointer, bars, rest_is_open, place })
}

fn read_carets(cursor: &mut CharacterCursor<'_>) -> FixtureRead<Items> {
    let mut carets = Vec::new();
    loop {
        cursor.skip_spaces();
        if cursor.peek().is_none() {
            return Ok(Items::Carets(carets));
        }
        let from = cursor.position();
        if !cursor.take('^') {
            return Err(cursor.error("a caret `^` under a note, with its text right behind it"));
        }
        let bare = cursor.peek().is_none_or(|c| c.is_whitespace() || c == '^');
        let text = if bare { String::new() } else { read_label(cursor)?.1 };
        carets.push((cursor.place_from(from), text));
    }
}

/// A word, or several in quotation marks.
fn read_label(cursor: &mut CharacterCursor<'_>) -> FixtureRead<(FixturePlace, String)> {
    let from = cursor.position();
    let text = if cursor.take('"') {
        cursor.take_quoted()?
    } else {
        cursor.take_while(|c| !c.is_whitespace() && c != '|' && c != '^')
    };
    if text.is_empty() && cursor.position() == from {
        return Err(cursor.error("a word"));
    }
    Ok((cursor.place_from(from), text))
}

/// Finds the note of every expectation.
pub(crate) fn resolve(parts: &[FixturePart], lines: &[ExpectationLine]) -> FixtureRead<Vec<Expectation>> {
    let mut found = Vec::new();
    for line in lines {
        let index = line.part;
        let events = &parts[index].events[line.events.clone()];
        match &line.items {
            Items::Carets(carets) => {
                for (place, text) in carets {
                    let event = event_above(events, place)?;
                    found.push(expectation(parts, index, event, Pointer::Caret, place, text));
                }
            }
            Items::Sequence { pointer, bars, rest_is_open, place } => {
                let pointed: Vec<&FixtureEvent> =
                    events.iter().filter(|event| counts(event, *pointer)).collect();
                for (event, (place, text)) in pair(&pointed, bars, *rest_is_open, place)? {
                    if text != "_" {
                        found.push(expectation(parts, index, event, *pointer, place, text));
                    }
                }
            }
        }
    }
    Ok(found)
}

fn counts(event: &FixtureEvent, pointer: Pointer) -> bool {
    match pointer {
        Pointer::Stroke => event.settled.begins_stroke,
        Pointer::Note | Pointer::Caret => !event.notes().is_empty(),
    }
}

fn event_above<'a>(events: &'a [FixtureEvent], caret: &FixturePlace) -> FixtureRead<&'a FixtureEvent> {
    let above = events.iter().find(|event| (event.place.from..event.place.to).contains(&caret.from));
    above.ok_or_else(|| {
        let nearest = events.iter().min_by_key(|event| event.place.from.abs_diff(caret.from));
        let hint = nearest
            .map_or(String::new(), |event| format!("; the nearest begins in column {}", event.place.from));
        caret.error(format!("a note or rest right above the caret in column {}{hint}", caret.from))
    })
}

type ExpectPair<'a> = (&'a FixtureEvent, &'a (FixturePlace, String));

/// Pairs events with labels: bar by bar where the line has bar lines, else straight through.
fn pair<'a>(
    events: &[&'a FixtureEvent],
    bars: &'a [Vec<(FixturePlace, String)>],
    rest: Rest,
    place: &FixturePlace,
) -> FixtureRead<Vec<ExpectPair<'a>>> {
    let labelled: Vec<&Vec<(FixturePlace, String)>> = bars.iter().filter(|bar| !bar.is_empty()).collect();
    if bars.len() == 1 {
        return pair_run(events, labelled.first().map_or(&[][..], |bar| bar.as_slice()), rest, place);
    }
    let mut runs: Vec<Vec<&'a FixtureEvent>> = Vec::new();
    for event in events {
        match runs.last_mut().filter(|run| run[0].settled.bar == event.settled.bar) {
            Some(run) => run.push(event),
            None => runs.push(vec![event]),
        }
    }
    let too_few = labelled.len() < runs.len() && rest == Rest::Named;
    if too_few || labelled.len() > runs.len() {
        return Err(place.error(format!(
            "expectations for {} bars with notes to expect them of, not {}",
            runs.len(),
            labelled.len()
        )));
    }
    let mut pairs = Vec::new();
    for (index, (run, labels)) in runs.iter().zip(&labelled).enumerate() {
        let open = if index + 1 == labelled.len() { rest } else { Rest::Named };
        pairs.extend(pair_run(run, labels, open, place)?);
    }
    Ok(pairs)
}

fn pair_run<'a>(
    events: &[&'a FixtureEvent],
    labels: &'a [(FixturePlace, String)],
    rest: Rest,
    place: &FixturePlace,
) -> FixtureRead<Vec<ExpectPair<'a>>> {
    let enough = labels.len() == events.len() || (rest == Rest::Open && labels.len() < events.len());
    if enough {
        return Ok(events.iter().copied().zip(labels).collect());
    }
    let at = labels.first().map_or(place, |(place, _)| place);
    Err(at.error(format!(
        "{} expectations here, one for each (`_` for none, `...` for no more), not {}",
        events.len(),
        labels.len()
    )))
}

fn expectation(
    parts: &[FixturePart],
    part_index: usize,
    event: &FixtureEvent,
    pointer: Pointer,
    place: &FixturePlace,
    text: &str,
) -> Expectation {
    let part = &parts[part_index];
    let settled = &event.settled;
    let bar = &part.bars[settled.bar];
    Expectation {
        part: part.name.clone(),
        part_index,
        bar_index: settled.bar,
        bar: bar.label.clone(),
        onset: settled.onset,
        beat: settled.onset * bar.beat_value + 1,
        voice: settled.voice,
        note: settled.note_element,
        pointer,
        text: text.to_owned(),
        line: place.line,
        column: place.from,
    }
}
