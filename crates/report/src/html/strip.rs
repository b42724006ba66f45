//! The whole piece at a glance: a row a section, a column a bar.

use std::ops::Range;

use arcata_bow::Line;
use arcata_bow::together::{Downbeat, Speaking};
use arcata_languages::{Saying, Wording};
use arcata_score::{BowDirection, Score};
use maud::{Markup, PreEscaped, html};

use crate::review_view::FindingView;
use crate::together_view::{line_names, speaking};

/// Bars on one row of the strip at most: narrower columns cannot be told apart on a screen.
const WIDEST: usize = 240;

/// Who begins a stroke on the downbeat of which bar.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Strip {
    bars: Vec<String>,
    /// First and last bar of each movement and its heading; empty where the file has but one.
    movements: Vec<(Range<usize>, String)>,
    rows: Vec<StripRow>,
    /// Bars on whose downbeat a bow goes on and none begins.
    unspoken: Vec<usize>,
}

#[derive(Clone, Debug, PartialEq, Eq)]
struct StripRow {
    name: String,
    downbeats: Vec<Speaking>,
}

impl Strip {
    /// From who begins on which downbeat (see [`arcata_bow::together::downbeats`]).
    #[must_use]
    pub fn new(score: &Score, lines: &[Line], downbeats: &[Downbeat]) -> Self {
        let row = |name: String| StripRow {
            downbeats: downbeats.iter().map(|downbeat| speaking((score, lines), &name, downbeat)).collect(),
            name,
        };
        let several = score.movements.iter().filter(|_| score.movements.len() > 1);
        let movements = several.map(|movement| {
            let (first, last) = (*movement.bars.start() as usize, *movement.bars.end() as usize);
            (first..last + 1, movement.name().to_owned())
        });
        Self {
            bars: score.bars.iter().map(|bar| bar.label.clone()).collect(),
            movements: movements.collect(),
            rows: line_names(lines).into_iter().map(row).collect(),
            unspoken: downbeats
                .iter()
                .filter(|downbeat| downbeat.is_unspoken())
                .map(|downbeat| downbeat.bar as usize)
                .collect(),
        }
    }

    pub(super) fn markup(&self, findings: &[(usize, &FindingView)], words: &Wording) -> Markup {
        html! {
            @if self.movements.is_empty() { (self.rows_of(0..self.bars.len(), findings, words)) }
            @for (bars, heading) in &self.movements {
                h3.movement { (heading) }
                (self.rows_of(bars.clone(), findings, words))
            }
        }
    }

    /// Some bars in as many rows as they need.
    fn rows_of(&self, bars: Range<usize>, findings: &[(usize, &FindingView)], words: &Wording) -> Markup {
        let stretches = bars.len().div_ceil(WIDEST).max(1);
        let wide = bars.len().div_ceil(stretches).max(1);
        let first = |stretch: usize| (bars.start + stretch * wide).min(bars.end);
        html! {
            @for stretch in 0..stretches {
                (self.stretch(first(stretch)..first(stretch + 1), wide, findings, words))
            }
        }
    }

    fn stretch(
        &self,
        bars: Range<usize>,
        wide: usize,
        findings: &[(usize, &FindingView)],
        words: &Wording,
    ) -> Markup {
        let label = |bar: usize| self.bars.get(bar).map_or("", String::as_str);
        let stretch = |key: &'static str| {
            Saying::new(key)
                .quoting("first", label(bars.start))
                .quoting("last", label(bars.end.saturating_sub(1)))
        };
        let told = words.say(&stretch("strip-downbeats").quoting("told", self.told(&bars, words)));
        html! {
            div.strip role="group" aria-label=(words.say(&stretch("strip-bars"))) {
                div.row.ruler aria-hidden="true" {
                    span.name {}
                    div.cells {
                        @for bar in bars.clone().step_by(every(wide)) {
                            span style=(left(bar - bars.start, wide)) { (label(bar)) }
                        }
                    }
                }
                div.row {
                    span.name { (words.word("strip-all")) }
                    div.cells {
                        (cells(wide, &[("none", self.unspoken_path(&bars))], &told))
                        @for (number, finding) in findings.iter().filter(|(_, finding)| self.row_of(finding).is_none()) {
                            (spot(*number, finding, &bars, wide))
                        }
                    }
                }
                @for (index, row) in self.rows.iter().enumerate() {
                    div.row {
                        span.name { (row.name) }
                        div.cells {
                            (cells(wide, &row.paths(&bars), ""))
                            @for (number, finding) in findings.iter().filter(|(_, finding)| self.row_of(finding) == Some(index)) {
                                (spot(*number, finding, &bars, wide))
                            }
                        }
                    }
                }
            }
        }
    }

    /// The row that a finding belongs to; `None` for the whole score.
    fn row_of(&self, finding: &FindingView) -> Option<usize> {
        let section = &finding.place.section;
        let exact = self.rows.iter().position(|row| row.name == *section);
        exact.or_else(|| self.rows.iter().position(|row| row.name.starts_with(section.as_str())))
    }

    fn unspoken_path(&self, bars: &Range<usize>) -> String {
        let here = self.unspoken.iter().filter(|bar| bars.contains(bar));
        here.map(|bar| block(bar - bars.start, 3, 7)).collect()
    }

    /// The stretch in words.
    fn told(&self, bars: &Range<usize>, words: &Wording) -> String {
        let rows = self.rows.iter().map(|row| {
            let here = row.downbeats.get(bars.clone()).unwrap_or_default();
            let count = |wanted: Speaking| here.iter().filter(|speaking| **speaking == wanted).count();
            let said = Saying::new("strip-row")
                .quoting("name", &row.name)
                .with("down", count(Speaking::Begins(BowDirection::Down)))
                .with("up", count(Speaking::Begins(BowDirection::Up)))
                .with("on", count(Speaking::GoesOn));
            words.say(&said) + words.language.semicolon()
        });
        let silent = self.unspoken.iter().filter(|bar| bars.contains(bar)).count();
        let nobody = Saying::new("strip-nobody").with("count", silent);
        rows.collect::<String>() + &words.say(&nobody)
    }
}

impl StripRow {
    /// A down-bow stands high, an up-bow low, a stroke that goes on is a line: told apart without colour.
    fn paths(&self, bars: &Range<usize>) -> [(&'static str, String); 3] {
        let path = |wanted: Speaking, top: u32, bottom: u32| {
            let here = self.downbeats.get(bars.clone()).unwrap_or_default().iter().enumerate();
            here.filter(|(_, speaking)| **speaking == wanted)
                .map(|(column, _)| block(column, top, bottom))
                .collect::<String>()
        };
        [
            ("down", path(Speaking::Begins(BowDirection::Down), 1, 9)),
            ("up", path(Speaking::Begins(BowDirection::Up), 5, 9)),
            ("on", path(Speaking::GoesOn, 8, 9)),
        ]
    }
}

fn block(column: usize, top: u32, bottom: u32) -> String {
    format!("M{column}.1 {top}h.8V{bottom}h-.8z")
}

fn cells(wide: usize, paths: &[(&str, String)], told: &str) -> Markup {
    html! {
        svg viewBox=(format!("0 0 {wide} 10")) preserveAspectRatio="none" role=[(!told.is_empty()).then_some("img")] aria-label=[(!told.is_empty()).then_some(told)] aria-hidden=[told.is_empty().then_some("true")] {
            @for (class, path) in paths {
                @if !path.is_empty() { (PreEscaped(format!(r#"<path class="{class}" d="{path}"/>"#))) }
            }
        }
    }
}

/// A finding on its bar. The list below has the same links, so these are passed over by the tab key.
fn spot(number: usize, finding: &FindingView, bars: &Range<usize>, wide: usize) -> Markup {
    let bar = finding.place.bar_ordinal.saturating_sub(1) as usize;
    if !bars.contains(&bar) {
        return html! {};
    }
    let told = format!("{}: {}", super::finding::place(finding), finding.sentence);
    html! {
        a class=(format!("spot {}", finding.severity)) data-finding=(number) style=(left(bar - bars.start, wide)) href=(format!("#finding-{number}")) tabindex="-1" title=(told) aria-label=(told) {}
    }
}

fn left(column: usize, wide: usize) -> String {
    let thousandths = (column * 2 + 1) * 50_000 / wide.max(1);
    format!("left:{}.{:03}%", thousandths / 1000, thousandths % 1000)
}

/// Bars between two numbers of the ruler, so that numbers do not touch.
fn every(wide: usize) -> usize {
    [1, 2, 5, 10, 20, 50].into_iter().find(|step| wide / step <= 12).unwrap_or(50)
}
