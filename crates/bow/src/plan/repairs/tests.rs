//! The search for repairs against its brute-force twin, and the laws it must keep.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use arcata_score::BowDirection;
use proptest::prelude::*;

use super::notation::{Border, Borders, price};
use super::*;
use crate::lines::tests::score;
use crate::lines::{Binding, Extent};
use crate::plan::{Anchor, Grid, MarkReading, plan};
use crate::{LineOptions, Profile, Reading};

/// One note of a drawn line: eighths, pitch, how it hangs on the note before, its mark.
#[derive(Clone, Copy, Debug)]
struct Drawn {
    eighths: u8,
    pitch: usize,
    glue: Glue,
    mark: &'static str,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Glue {
    Apart,
    Slur,
    Tie,
    Rest,
}

fn any_notes(longest: usize) -> impl Strategy<Value = Vec<Drawn>> {
    let note = (
        prop::sample::select(vec![1u8, 1, 2, 3]),
        0usize..5,
        prop::sample::select(vec![
            Glue::Apart,
            Glue::Apart,
            Glue::Slur,
            Glue::Slur,
            Glue::Slur,
            Glue::Tie,
            Glue::Rest,
        ]),
        prop::sample::select(vec!["", "", "", "", "!.", "!>", "!down", "!up"]),
    );
    let note = note.prop_map(|(eighths, pitch, glue, mark)| Drawn { eighths, pitch, glue, mark });
    prop::collection::vec(note, 2..=longest)
}

/// The notes in the fixtures' notation: bars of 3/8, 6/8 and 1/8 would hide mistakes, so notes are
/// written into 4/4 and held over no bar line: a note that does not fit is shortened.
fn fixture(notes: &[Drawn]) -> String {
    const PITCHES: [&str; 5] = ["G4", "A4", "C5", "D5", "F5"];
    let mut text = "violin: mf ".to_owned();
    let mut filled = 0;
    let mut pitch = 0;
    for (index, note) in notes.iter().enumerate() {
        let next = notes.get(index + 1).map_or(Glue::Apart, |next| next.glue);
        let glued = |glue: Glue| matches!(glue, Glue::Slur | Glue::Tie);
        if index > 0 && note.glue == Glue::Rest {
            filled += rest(&mut text, filled);
        }
        let tied = index > 0 && note.glue == Glue::Tie;
        pitch = if tied { pitch } else { note.pitch };
        let eighths = note.eighths.min(8 - filled);
        let opens = glued(next) && (index == 0 || !glued(note.glue));
        let closes = index > 0 && glued(note.glue) && !glued(next);
        let value = ["", "1/8", "1/4", "3/8"][usize::from(eighths)];
        let tie = if next == Glue::Tie { "_" } else { "" };
        let _ = write!(
            text,
            "{}{value} {}{tie}{}{} ",
            if opens { "(" } else { "" },
            PITCHES[pitch],
            note.mark,
            if closes { ")" } else { "" }
        );
        filled += eighths;
        if filled == 8 {
            text.push_str("| ");
            filled = 0;
        }
    }
    while filled > 0 && filled < 8 {
        text.push_str("1/8 rest ");
        filled += 1;
    }
    text
}

fn rest(text: &mut String, filled: u8) -> u8 {
    if filled < 7 {
        text.push_str("1/8 rest ");
        1
    } else {
        0
    }
}

/// Every way to draw the strokes of a line with at most `most` changes, and the least price of each
/// number of changes.
struct Twin<'a> {
    source: &'a LineSource<'a>,
    borders: Borders,
    settings: &'a PlanSettings,
    most: usize,
    best: BTreeMap<usize, i64>,
}

impl Twin<'_> {
    /// Decides border after border whether a stroke begins there.
    fn draw(&mut self, starts: &mut Vec<usize>, event: usize) {
        let events = self.borders.events();
        if event == events.end {
            return self.bind(starts);
        }
        let border = self.borders.at(event);
        let neighbours = [event.checked_sub(1).filter(|at| *at >= events.start), Some(event + 1)];
        let reached = [
            neighbours[0].and_then(|at| self.borders.at(at).later()),
            neighbours[1].filter(|at| *at < events.end).and_then(|at| self.borders.at(at).earlier()),
        ];
        let may_begin = border.is_printed() || border.cut().is_some() || reached.iter().any(Option::is_some);
        let may_go = !border.is_printed() || border.slur().is_some() || border.hook().is_some();
        if may_begin {
            starts.push(event);
            self.draw(starts, event + 1);
            starts.pop();
        }
        if may_go && event > events.start {
            self.draw(starts, event + 1);
        }
    }

    /// Tries both bindings for each stroke that could be hooked.
    fn bind(&mut self, starts: &[usize]) {
        let last = self.borders.events().end;
        let ends = starts.iter().skip(1).copied().chain([last]);
        let extents: Vec<Extent> =
            starts.iter().zip(ends).map(|(first, end)| Extent { first: *first, end }).collect();
        let gone = |extent: &Extent| -> Vec<usize> {
            (extent.first + 1..extent.end).filter(|event| self.borders.at(*event).is_printed()).collect()
        };
        let printed = |event: usize| event == last || self.borders.at(event).is_printed();
        let choices: Vec<Vec<Binding>> = extents
            .iter()
            .map(|extent| {
                let inner = gone(extent);
                let written = inner.iter().all(|event| self.borders.at(*event).slur().is_some());
                let stopped = !inner.is_empty()
                    && inner.len() == extent.end - extent.first - 1
                    && printed(extent.first)
                    && printed(extent.end)
                    && inner.iter().all(|event| self.borders.at(*event).hook().is_some());
                [(written, Binding::Written), (stopped, Binding::Stopped)]
                    .into_iter()
                    .filter_map(|(may, binding)| may.then_some(binding))
                    .collect()
            })
            .collect();
        if choices.iter().any(Vec::is_empty) {
            return;
        }
        let ways: usize = choices.iter().map(Vec::len).product();
        for mut way in 0..ways {
            let pieces: Vec<(Extent, Binding)> = extents
                .iter()
                .zip(&choices)
                .map(|(extent, bindings)| {
                    let binding = bindings[way % bindings.len()];
                    way /= bindings.len();
                    (*extent, binding)
                })
                .collect();
            self.weigh(&pieces);
        }
    }

    fn weigh(&mut self, pieces: &[(Extent, Binding)]) {
        let weights = &self.settings.weights;
        let mut paid = Vec::new();
        let mut open = Vec::new();
        for (extent, binding) in pieces {
            for event in extent.first + 1..extent.end {
                let border = self.borders.at(event);
                match binding {
                    Binding::Stopped => paid.extend(border.hook()),
                    Binding::Written if border.is_printed() => open.push(event),
                    Binding::Written => {}
                }
            }
        }
        let cuts: Vec<usize> = pieces
            .iter()
            .map(|(extent, _)| extent.first)
            .filter(|event| !self.borders.at(*event).is_printed())
            .collect();
        let prices = self.settle(&cuts, &open);
        if prices.keys().all(|count| count + paid.len() > self.most) {
            return;
        }
        let mut line = self.source.rebuilt(&self.source.maker(), pieces);
        line.repeats.clear();
        let bow = plan(&line, self.settings).total.total();
        let hooks: i64 = paid.iter().map(|kind| price(weights, *kind)).sum();
        for (count, notation) in prices {
            let total = bow + hooks + notation;
            let slot = self.best.entry(count + paid.len()).or_insert(i64::MAX);
            *slot = (*slot).min(total);
        }
    }

    /// Least price by number of changes that account for the cuts and the borders that are gone.
    fn settle(&self, cuts: &[usize], gone: &[usize]) -> BTreeMap<usize, i64> {
        let weights = &self.settings.weights;
        let mut found = BTreeMap::new();
        let Some((cut, rest)) = cuts.split_first() else {
            let kinds = gone.iter().map(|event| self.borders.at(*event).slur().expect("may go"));
            found.insert(gone.len(), kinds.map(|kind| price(weights, kind)).sum());
            return found;
        };
        let mut add = |deeper: BTreeMap<usize, i64>, kind: ChangeKind| {
            for (count, sum) in deeper {
                let slot = found.entry(count + 1).or_insert(i64::MAX);
                *slot = (*slot).min(sum + price(weights, kind));
            }
        };
        if let Border::Inside(Some(kind)) = self.borders.at(*cut) {
            add(self.settle(rest, gone), kind);
        }
        for moved in gone {
            let border = self.borders.at(*moved);
            let kind = if *moved + 1 == *cut {
                border.later()
            } else if *moved == *cut + 1 {
                border.earlier()
            } else {
                None
            };
            if let Some(kind) = kind {
                let left: Vec<usize> = gone.iter().copied().filter(|event| event != moved).collect();
                add(self.settle(rest, &left), kind);
            }
        }
        found
    }
}

/// What each number of changes costs at best.
fn exhaustive(source: &LineSource<'_>, settings: &PlanSettings, most: usize) -> BTreeMap<usize, i64> {
    let whole = 0..source.line().strokes.len();
    let borders = Borders::new(source, settings, &whole, &whole);
    // The twin draws one passage: the notation draws no pizzicato and no long rests.
    let first = borders.events().start;
    let mut twin = Twin { source, borders, settings, most, best: BTreeMap::new() };
    twin.draw(&mut vec![first], first + 1);
    twin.best.into_iter().filter(|(count, _)| *count <= most).collect()
}

/// The totals by number of changes, only where more changes cost less.
fn falling(best: &BTreeMap<usize, i64>) -> Vec<(usize, i64)> {
    let mut kept: Vec<(usize, i64)> = Vec::new();
    for (count, total) in best {
        if kept.last().is_none_or(|(_, least)| total < least) {
            kept.push((*count, *total));
        }
    }
    kept
}

/// Cheap changes, so that many are made.
fn eager() -> PlanSettings {
    let mut settings = PlanSettings { grid: Grid::Coarse, ..PlanSettings::default() };
    let weights = &mut settings.weights;
    (weights.split_slur, weights.split_tie, weights.join_strokes) = (330, 610, 270);
    (weights.write_hook, weights.move_slur_end) = (190, 230);
    settings
}

fn with_source<R>(fixture: &str, look: impl FnOnce(&LineSource<'_>) -> R) -> Option<R> {
    let score = score(fixture);
    let (profile, options) = (Profile::default(), LineOptions::default());
    let reading = Reading::new(&score, &profile, &options);
    let sources = reading.sources(0);
    sources.first().map(look)
}

fn asked<'a>(source: &LineSource<'_>, settings: &'a PlanSettings, most: usize) -> RepairRequest<'a> {
    RepairRequest { settings, window: 0..source.line().strokes.len(), most, ending: None }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(300))]

    #[test]
    fn no_repair_is_cheaper(notes in any_notes(8), hidden in any::<bool>()) {
        let marks = if hidden { MarkReading::Hidden } else { MarkReading::Law };
        let settings = PlanSettings { marks, ..eager() };
        let told = with_source(&fixture(&notes), |source| {
            let frontier = repairs(source, &asked(source, &settings, 3));
            let found: Vec<(usize, i64)> =
                frontier.steps.iter().map(|step| (step.changes.len(), step.cost.total())).collect();
            (found, falling(&exhaustive(source, &settings, 3)))
        });
        let (found, least) = told.expect("a line");
        prop_assert_eq!(found, least, "{}", fixture(&notes));
    }

    #[test]
    fn strokes_made_again_are_the_printed_ones(notes in any_notes(20)) {
        with_source(&fixture(&notes), |source| {
            let pieces: Vec<_> =
                source.extents().iter().map(|extent| (*extent, Binding::Written)).collect();
            let again = source.rebuilt(&source.maker(), &pieces);
            assert_eq!(format!("{:?}", again.strokes), format!("{:?}", source.line().strokes));
        });
    }

    #[test]
    fn with_no_change_it_is_the_plan(notes in any_notes(20)) {
        with_source(&fixture(&notes), |source| {
            let settings = PlanSettings::default();
            let frontier = repairs(source, &asked(source, &settings, 2));
            assert_eq!(frontier.steps[0].plan, plan(source.line(), &settings));
        });
    }

    #[test]
    fn anchors_hold_and_never_make_repairs_cheaper(notes in any_notes(12), at in any::<prop::sample::Index>()) {
        with_source(&fixture(&notes), |source| {
            let settings = PlanSettings { marks: MarkReading::Hidden, ..eager() };
            let free = repairs(source, &asked(source, &settings, 2));
            let stroke = at.index(source.line().strokes.len());
            let note = source.line().strokes[stroke].notes[0];
            for direction in [BowDirection::Down, BowDirection::Up] {
                let anchors = vec![Anchor { stroke, direction: Some(direction), link: None }];
                let bound = PlanSettings { anchors, ..settings.clone() };
                let found = repairs(source, &asked(source, &bound, 2));
                for step in &found.steps {
                    let at = step.line.strokes.iter().position(|s| s.notes[0] == note).expect("stays a stroke");
                    assert_eq!(step.plan.strokes[at].direction, direction);
                    let as_cheap = free.steps.iter().rfind(|free| free.changes.len() <= step.changes.len());
                    assert!(as_cheap.expect("no change at all").cost.total() <= step.cost.total());
                }
            }
        });
    }

    #[test]
    fn the_best_of_all_single_changes_is_the_frontier_s(notes in any_notes(10)) {
        with_source(&fixture(&notes), |source| {
            let settings = eager();
            let request = asked(source, &settings, 1);
            let frontier = repairs(source, &request);
            let all = singly(source, &request, &request.window);
            let least = all.iter().map(|repaired| repaired.cost.total()).min();
            assert_eq!(frontier.steps.last().map(|step| step.cost.total()), least);
        });
    }
}

/// The kinds of change at each border of a fixture's first line.
fn kinds(fixture: &str) -> Vec<ChangeKind> {
    with_source(fixture, |source| {
        let settings = PlanSettings::default();
        let request = asked(source, &settings, 1);
        let all = singly(source, &request, &request.window);
        all.iter().flat_map(|repaired| repaired.changes.iter().map(|change| change.kind)).collect()
    })
    .expect("a line")
}

#[test]
fn each_border_offers_the_changes_that_a_writer_could_make() {
    use ChangeKind::*;
    assert_eq!(kinds("violin: (1/4 C5 D5 E5 F5)"), [BeginLater, Split, EndEarlier]);
    assert_eq!(kinds("violin: (1/4 C5 D5) 1/2 E5"), [Split, EndLater]);
    assert_eq!(kinds("violin: 1/2 C5 D5"), [JoinNotes, Hook]);
    assert_eq!(
        kinds("violin: (1/4 C5 D5) (E5 F5)"),
        [Split, JoinSlurs, HandOverLater, HandOverEarlier, Split]
    );
    assert_eq!(kinds("violin: 1/2 C5_ 1/4 C5 D5"), [SplitTie, EndLater]);
}

#[test]
fn nothing_crosses_rests_breaths_fermatas_pizzicato_or_tremolo() {
    for fixture in [
        "violin: 1/4 C5 rest 1/2 D5",
        "violin: 1/2 C5!, D5",
        "violin: 1/2 C5!fermata D5",
        "violin: \"pizz.\" 1/2 C5 \"arco\" D5",
        "violin: 1/1 C5 || D5",
    ] {
        assert_eq!(kinds(fixture), [], "{fixture}");
    }
}

#[test]
fn a_slur_over_one_pitch_is_no_repair_but_a_hook_is() {
    assert_eq!(kinds("violin: 1/2 C5 C5"), [ChangeKind::Hook]);
}

#[test]
fn a_slur_too_long_for_the_bow_is_split_and_the_price_is_in_the_sum() {
    let told = with_source("quarter=60\nviolin: f (1/2 C5 D5 | 1/1 E5) | 1/2 F5 E5 | 1/1 D5 |||", |source| {
        let settings = PlanSettings::default();
        let frontier = repairs(source, &asked(source, &settings, 3));
        let step = frontier.steps[1].clone();
        (step.changes[0].kind, step.change, step.changes[0].before.clone(), step.changes[0].after.clone())
    });
    let (kind, change, before, after) = told.expect("a line");
    assert!(matches!(kind, ChangeKind::EndEarlier | ChangeKind::BeginLater), "{kind:?}");
    assert_eq!((before, after), (0..1, 0..2));
    assert!(change.total() < 0 && change.term(crate::Term::SpeedLimit) < 0);
    assert_eq!(change.term(crate::Term::Notation), PlanSettings::default().weights.move_slur_end);
}
