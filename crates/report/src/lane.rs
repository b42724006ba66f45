//! The bow as a lane: time from left to right, the frog above, the tip below, as in pictures.

use arcata_languages::Language;

use crate::plan_view::PlanStrokeView;
use crate::style::{Characters, Page};

/// Rows from frog to tip.
const ROWS: usize = 5;
/// Columns before the lane.
const MARGIN: usize = 6;
/// The same for longer words than *frog*.
const WIDE_MARGIN: usize = 8;
/// Fewest and most columns a second.
const SCALE: (f64, f64) = (2.0, 16.0);

/// What the lane is drawn with.
struct Pen {
    down: char,
    up: char,
    level: char,
    bar: char,
    down_sign: char,
    up_sign: char,
}

impl Pen {
    const fn new(characters: Characters) -> Self {
        match characters {
            Characters::Ascii => {
                Self { down: '\\', up: '/', level: '-', bar: '|', down_sign: 'D', up_sign: 'U' }
            }
            Characters::Unicode => {
                Self { down: '╲', up: '╱', level: '─', bar: '│', down_sign: '⊓', up_sign: '∨' }
            }
        }
    }
}

/// The lanes of some strokes, in as many systems as the width needs; every row is one line of text no
/// wider than `width`.
pub(crate) fn lanes(strokes: &[PlanStrokeView], width: usize, page: Page) -> Vec<String> {
    let columns = width.saturating_sub(margin(page)).max(20);
    let bars: Vec<&[PlanStrokeView]> = strokes.chunk_by(|a, b| a.bar_ordinal == b.bar_ordinal).collect();
    let seconds: f64 = strokes.iter().map(time).sum();
    let room = columns.saturating_sub(bars.len());
    let scale = (room as f64 / seconds.max(0.1)).clamp(SCALE.0, SCALE.1);
    let mut rows = Vec::new();
    let mut system: Vec<&[PlanStrokeView]> = Vec::new();
    let mut used = 0;
    for bar in bars {
        let wide = 1 + bar.iter().map(|stroke| span(stroke, scale).0).sum::<usize>();
        if used + wide > columns && !system.is_empty() {
            rows.extend(Canvas::of(&system, scale, columns, page.characters).rows(page));
            system.clear();
            used = 0;
        }
        used += wide;
        system.push(bar);
    }
    if !system.is_empty() {
        rows.extend(Canvas::of(&system, scale, columns, page.characters).rows(page));
    }
    rows
}

/// Columns before the lane in a language.
const fn margin(page: Page) -> usize {
    match page.language {
        Language::English => MARGIN,
        Language::Italian | Language::French | Language::German => WIDE_MARGIN,
    }
}

fn time(stroke: &PlanStrokeView) -> f64 {
    stroke.seconds + stroke.silence.min(2.0)
}

/// Columns of a stroke with the silence after it, and of the stroke alone: at least two, so that its sign
/// has room.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "columns of a drawing, small")]
fn span(stroke: &PlanStrokeView, scale: f64) -> (usize, usize) {
    let columns = |seconds: f64| (seconds * scale).round().clamp(0.0, 400.0) as usize;
    let alone = columns(stroke.seconds).max(2);
    (alone + columns(stroke.silence.min(2.0)), alone)
}

/// One system: the bar numbers, the lane, the signs.
struct Canvas {
    numbers: Vec<char>,
    lane: Vec<Vec<char>>,
    signs: Vec<char>,
    pen: Pen,
    columns: usize,
}

impl Canvas {
    fn of(bars: &[&[PlanStrokeView]], scale: f64, columns: usize, characters: Characters) -> Self {
        let blank = || vec![' '; columns];
        let mut canvas = Self {
            numbers: blank(),
            lane: (0..ROWS).map(|_| blank()).collect(),
            signs: blank(),
            pen: Pen::new(characters),
            columns,
        };
        let mut at = 0;
        for bar in bars {
            canvas.bar_line(at, bar.first().map_or("", |stroke| &stroke.bar));
            at += 1;
            for stroke in *bar {
                let (whole, alone) = span(stroke, scale);
                canvas.stroke(stroke, at, alone);
                at += whole;
            }
        }
        canvas
    }

    fn bar_line(&mut self, at: usize, number: &str) {
        for (column, letter) in (at..self.columns).zip(number.chars()) {
            self.numbers[column] = letter;
        }
        let bar = self.pen.bar;
        for row in &mut self.lane {
            if let Some(cell) = row.get_mut(at) {
                *cell = bar;
            }
        }
    }

    /// The row of a place in the bow, thousandths from the frog.
    fn row(place: usize) -> usize {
        (place * ROWS / 1000).min(ROWS - 1)
    }

    fn stroke(&mut self, stroke: &PlanStrokeView, at: usize, wide: usize) {
        let (from, to) = (usize::from(stroke.start), usize::from(stroke.end));
        let place = |column: usize| (from * (2 * wide - 2 * column - 1) + to * (2 * column + 1)) / (2 * wide);
        let slope = if stroke.direction == "down" { self.pen.down } else { self.pen.up };
        for column in 0..wide {
            let here = Self::row(place(column));
            // The last column of a row, from which the bow goes on to the next, slopes.
            let leaves = column + 1 == wide || Self::row(place(column + 1)) != here;
            if let Some(cell) = self.lane[here].get_mut(at + column) {
                *cell = if leaves { slope } else { self.pen.level };
            }
        }
        let sign = if stroke.direction == "down" { self.pen.down_sign } else { self.pen.up_sign };
        let link = match stroke.link {
            "hooked" => Some('h'),
            "retake" => Some('r'),
            _ => None,
        };
        for (column, sign) in (at..self.columns).zip([Some(sign), link].into_iter().flatten()) {
            self.signs[column] = sign;
        }
    }

    fn rows(&self, page: Page) -> Vec<String> {
        let margin = margin(page);
        let text = |label: &str, row: &[char]| {
            let row: String = row.iter().collect();
            format!("{label:<margin$}{row}").trim_end().to_owned()
        };
        let (frog, tip) = (page.word("lane-frog"), page.word("lane-tip"));
        let labels = |row: usize| match row {
            0 => frog.as_str(),
            row if row + 1 == ROWS => tip.as_str(),
            _ => "",
        };
        let lane = self.lane.iter().enumerate().map(|(row, cells)| text(labels(row), cells));
        let numbers = text(&page.short_bar(), &self.numbers);
        std::iter::once(numbers).chain(lane).chain([text("", &self.signs)]).collect()
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use super::*;

    fn stroke(bar: u32, direction: &'static str, start: u16, end: u16, seconds: f64) -> PlanStrokeView {
        PlanStrokeView {
            bar: bar.to_string(),
            bar_ordinal: bar,
            beat: "1".into(),
            spoken_beat: "1".into(),
            length: "1/4".into(),
            seconds,
            silence: 0.0,
            notes: 1,
            kind: "single",
            direction,
            link: "change",
            start,
            end,
            printed: None,
            sure: None,
            open: false,
            cost: BTreeMap::new(),
        }
    }

    #[test]
    fn a_lane_shows_the_way_from_frog_to_tip_and_back() {
        let strokes = [stroke(1, "down", 0, 1000, 1.0), stroke(2, "up", 1000, 0, 1.0)];
        let rows = lanes(&strokes, 30, Page::default());
        let expected = "\
bar   1           2
frog  |-\\         |         -/
      |  -\\       |       -/
      |    --\\    |    --/
      |       -\\  |  -/
tip   |         -\\|-/
       D           U";
        assert_eq!(rows.join("\n"), expected);
    }

    #[test]
    fn no_row_is_wider_than_the_page_and_ascii_is_ascii() {
        let strokes: Vec<PlanStrokeView> =
            (0..90).map(|index| stroke(1 + index / 6, "down", 100, 700, 0.11)).collect();
        for width in [40, 80, 120] {
            let rows = lanes(&strokes, width, Page::default());
            assert!(rows.iter().all(|row| row.chars().count() <= width && row.is_ascii()));
            assert!(rows.iter().filter(|row| row.starts_with("bar")).count() > 1);
        }
        assert!(
            lanes(&strokes, 80, Page { characters: Characters::Unicode, ..Page::default() })
                .iter()
                .any(|row| row.contains('⊓'))
        );
    }
}
