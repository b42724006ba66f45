//! `arcata plan`.

use std::collections::BTreeSet;
use std::ops::{Range, RangeInclusive};
use std::path::Path;
use std::process::ExitCode;

use arcata_analysis::Player;
use arcata_bow::plan::{
    Alternative, Anchored, MarkReading, RepairRequest, alternatives, anchored, repairs, ways_to_end,
};
use arcata_bow::{Line, LineSource, PlanSettings};
use arcata_languages::Saying;
use arcata_layer::add_marks;
use arcata_prepare::{PlannedMarks, planned_marks};
use arcata_report::{AnchorsView, DownbeatsView, EndingView, PlanView, RepairsView, TogetherView};
use arcata_score::{BowDirection, Score};

use crate::args::{MarksArgument, PlanArguments, PlanFormat, Table};
use crate::failure::Failure;
use crate::score_file::ScoreTarget;
use crate::{bars, files, plan_picture, studio, wishes};

pub(crate) fn run(arguments: &PlanArguments) -> Result<ExitCode, Failure> {
    let player = studio::player(&arguments.shared.player)?;
    let scores = files::scores(&arguments.shared.scores)?;
    let marks = if arguments.hide_printed { MarkReading::Hidden } else { MarkReading::Law };
    if let (Some(kind), Some(out)) = (arguments.marks, &arguments.out) {
        let [score] = scores.as_slice() else { return Err(Failure::OneScore { count: scores.len() }) };
        return write_marked(score, out, kind, arguments, &player, marks);
    }
    if let PlanFormat::Svg | PlanFormat::Png | PlanFormat::Pdf = arguments.format {
        let [score] = scores.as_slice() else { return Err(Failure::OneScore { count: scores.len() }) };
        return plan_picture::run(score, arguments, &player, marks);
    }
    let mut views = Vec::new();
    let mut unread = Vec::new();
    for score in &scores {
        match view(score, arguments, &player, marks) {
            Ok(view) => views.push(view),
            Err(failure @ Failure::Read { .. }) => unread.push(failure),
            Err(failure) => return Err(failure),
        }
    }
    let page = if arguments.out.is_some() { files::plain_page() } else { files::page() };
    let text = match arguments.format {
        PlanFormat::Json => arcata_report::plan_json(&views),
        PlanFormat::Text => match arguments.table {
            Table::Strokes => arcata_report::plan_text(&views, page),
            Table::Downbeats => arcata_report::downbeats_text(&views, page),
        },
        _ => match arguments.table {
            Table::Strokes => arcata_report::strokes_csv(&views),
            Table::Downbeats => arcata_report::downbeats_csv(&views),
        },
    };
    let text = match arguments.format {
        PlanFormat::Csv => text,
        _ => files::bar_word().said(&text).into_owned(),
    };
    match &arguments.out {
        Some(out) if scores.iter().any(|score| files::same(score, out)) => {
            return Err(Failure::SameFile { path: out.clone() });
        }
        Some(out) => arcata_files::write_whole(out, text.as_bytes())?,
        None if arguments.format == PlanFormat::Text => files::show_set(&text),
        None => files::hand_out(&text),
    }
    for failure in &unread {
        files::complain(&failure.to_string());
    }
    Ok(if unread.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(2) })
}

fn view(
    score: &Path,
    arguments: &PlanArguments,
    player: &Player,
    marks: MarkReading,
) -> Result<PlanView, Failure> {
    let mut desk = studio::open(score, &arguments.shared, player, marks)?;
    let bars = desk.bars.clone();
    let wording = files::wording();
    let mut view =
        PlanView::new(&score.display().to_string(), desk.score(), desk.assumptions(), files::wording())
            .planned_for(&player.profile);
    let ending =
        arguments.end.as_deref().map(|text| wishes::ending(desk.score(), &bars, text)).transpose()?;
    let anchors = wishes::anchors(&desk, &arguments.anchor)?;
    // What anchors cost is told of their own line, with the others as they bow without them.
    let priced = |index: usize| {
        let anchors = anchors[index].clone();
        let settings = PlanSettings { anchors, ..desk.settings(index).clone() };
        (!settings.anchors.is_empty()).then(|| anchored(&desk.lines()[index], &settings))
    };
    let prices: Vec<Option<Anchored>> = (0..desk.lines().len()).map(priced).collect();
    if prices.iter().any(Option::is_some) {
        desk.fix(anchors.clone());
    }
    let reading = desk.snapshot().ground().reading();
    let asks_sources = arguments.repairs > 0 || ending.is_some();
    let parts: BTreeSet<usize> = desk.lines().iter().filter(|_| asks_sources).map(|line| line.part).collect();
    // In the order of the lines on the desk, which come from the same parts.
    let sources: Vec<LineSource<'_>> = parts.into_iter().flat_map(|part| reading.sources(part)).collect();
    for index in desk.shown.clone() {
        let (line, plan) = (&desk.lines()[index], &desk.plans()[index]);
        let settings = desk.settings(index);
        let question = LineQuestion { arguments, score: desk.score(), bars: &bars, line, settings };
        view.add(desk.score(), line, plan, &bars, &question.alternatives(), settings.reach);
        let Some(shown) = view.lines.last_mut() else { continue };
        if arguments.sure {
            shown.say_how_sure(line, &bars, desk.sureness(index));
        }
        shown.anchors = prices[index]
            .as_ref()
            .map(|found| AnchorsView::new(desk.score(), line, &anchors[index], found, &wording));
        if let Some(source) = sources.get(index) {
            shown.ending = ending.and_then(|ending| question.ending(source, ending));
            shown.repairs = question.repairs(source);
        }
    }
    view.downbeats = DownbeatsView::new(desk.score(), desk.lines(), desk.plans(), &bars);
    view.together = desk.snapshot().together().map(|(together, agreements)| {
        TogetherView::new(desk.score(), desk.lines(), (&together, agreements), &bars, &desk.shown, &wording)
    });
    Ok(view)
}

/// What is asked about one line besides its plan.
struct LineQuestion<'a> {
    arguments: &'a PlanArguments,
    score: &'a Score,
    bars: &'a RangeInclusive<u32>,
    line: &'a Line,
    settings: &'a PlanSettings,
}

/// How many bars before its end a passage is looked at for ways to end it, unless --bars says.
const BARS_BEFORE: u32 = 7;
/// How many ways are shown unless --alternatives says.
const WAYS: usize = 5;

impl LineQuestion<'_> {
    fn strokes(&self, bars: &RangeInclusive<u32>) -> Range<usize> {
        let before = |bar: u32| self.line.strokes.partition_point(|stroke| stroke.bar < bar);
        before(*bars.start())..before(bars.end().saturating_add(1))
    }

    fn alternatives(&self) -> Vec<Alternative> {
        let window = self.strokes(self.bars);
        let count = usize::from(self.arguments.alternatives);
        // With --end the number is of the ways to end.
        if count == 0 || self.arguments.end.is_some() || window.is_empty() {
            return Vec::new();
        }
        alternatives(self.line, self.settings, window, count + 1)
    }

    fn ending(&self, source: &LineSource<'_>, asked: (u32, BowDirection)) -> Option<EndingView> {
        let (bar, direction) = asked;
        let ending = wishes::ending_of(self.score, self.line, asked)?;
        let first = match self.arguments.shared.bars {
            Some(_) => (*self.bars.start()).min(bar),
            None => bar.saturating_sub(BARS_BEFORE),
        };
        let count = match usize::from(self.arguments.alternatives) {
            0 => WAYS,
            count => count,
        };
        let window = self.strokes(&(first..=bar));
        let found = ways_to_end(source, self.settings, ending, &window, count);
        Some(EndingView::new(self.score, self.line, (first, bar), direction, &found, &files::wording()))
    }

    fn repairs(&self, source: &LineSource<'_>) -> Option<RepairsView> {
        let most = usize::from(self.arguments.repairs);
        let window = self.strokes(self.bars);
        if most == 0 || window.is_empty() {
            return None;
        }
        let request = RepairRequest { settings: self.settings, window, most, ending: None };
        Some(RepairsView::new(self.score, &repairs(source, &request), &files::wording()))
    }
}

/// Writes the score with the plan's marks, everything else byte for byte as it was.
fn write_marked(
    path: &Path,
    out: &Path,
    kind: MarksArgument,
    arguments: &PlanArguments,
    player: &Player,
    marks: MarkReading,
) -> Result<ExitCode, Failure> {
    if files::same(path, out) {
        return Err(Failure::SameFile { path: out.to_owned() });
    }
    let target = ScoreTarget::of(out)?;
    let mut desk = studio::open(path, &arguments.shared, player, marks)?;
    let bars =
        bars::bars(desk.score(), arguments.shared.bars.as_deref(), arguments.shared.movement.as_deref())?;
    let anchors = wishes::anchors(&desk, &arguments.anchor)?;
    if anchors.iter().any(|anchors| !anchors.is_empty()) {
        desk.fix(anchors);
    }
    let mut additions = Vec::new();
    let which = match kind {
        MarksArgument::All => PlannedMarks::All,
        MarksArgument::Least => PlannedMarks::Least,
    };
    for index in desk.shown.clone() {
        let (line, plan, reach) = (&desk.lines()[index], &desk.plans()[index], desk.settings(index).reach);
        let planned = planned_marks(desk.score(), (line, plan), reach, which);
        let shown = planned.into_iter().filter(|(stroke, _)| bars.contains(&line.strokes[*stroke].bar));
        additions.extend(shown.map(|(_, mark)| mark));
    }
    let failed = |why: String| Failure::Marks { why };
    let edits = add_marks(desk.file().document(), desk.score(), &additions)
        .map_err(|error| failed(files::told(&error.to_string())))?;
    let bytes =
        desk.file().document().apply(&edits).map_err(|error| failed(files::told(&error.to_string())))?;
    target.write(desk.file(), &bytes)?;
    let done = Saying::new("marks-written").with("count", edits.edits().len());
    files::complain(&files::wording().say(&done.quoting("path", out.display().to_string())));
    Ok(ExitCode::SUCCESS)
}
