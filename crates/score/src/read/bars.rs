//! The bars of the whole score: aligned over the parts by index, laid end to end, checked against the
//! time signature.

use arcata_xml::NodeId;

use super::barlines::SharedBar;
use super::movements::BarOpening;
use super::problems::{ProblemPlace, Problems};
use crate::{Bar, BarKind, EndingEdge, Jump, Length, Meter, Moment, Part, ProblemKind, RepeatSign};

/// How much of a bar one part fills.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct PartBar {
    pub(super) node: Option<NodeId>,
    /// Where the last note or timed rest ends.
    extent: Length,
    /// Where the last rest that stands for a whole bar ends.
    rest_extent: Length,
    content: Content,
}

/// What a part has in a bar.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum Content {
    /// No note: nothing, or a rest for the whole bar.
    #[default]
    Silent,
    /// Notes or timed rests.
    Written,
}

impl PartBar {
    pub(super) fn reach(&mut self, end: Length) {
        if end > self.extent {
            self.extent = end;
        }
    }

    pub(super) fn rest_until(&mut self, end: Length) {
        if end > self.rest_extent {
            self.rest_extent = end;
        }
    }

    pub(super) fn note_written(&mut self) {
        self.content = Content::Written;
    }
}

/// One part's view of the bars.
pub(super) struct PartBars<'p> {
    pub(super) part: &'p Part,
    pub(super) bars: &'p [PartBar],
}

/// Lays the bars end to end.
pub(super) fn lay_out(
    shared: Vec<SharedBar>,
    parts: &[PartBars<'_>],
    problems: &mut Problems,
) -> (Vec<Bar>, Vec<BarOpening>) {
    let mut start = Moment::START;
    let mut bars = Vec::with_capacity(shared.len());
    let mut openings = Vec::with_capacity(shared.len());
    for (index, shared) in shared.into_iter().enumerate() {
        let length = bar_length(index, shared.kind, parts);
        bars.push(Bar {
            label: shared.label,
            start,
            length,
            kind: shared.kind,
            left: shared.left,
            right: shared.right,
            rehearsal: shared.rehearsal,
            jumps: shared.jumps,
        });
        openings.push(shared.opening);
        start = start + length;
    }
    check_lengths(&bars, parts, problems);
    check_repeats(&bars, parts, problems);
    (bars, openings)
}

fn meter_length(part: &Part, bar: usize) -> Length {
    match part.meter_at(bar as u32) {
        Some(meter) => meter.bar_length(),
        None => Meter::common().bar_length(),
    }
}

/// The longest that any part writes. A rest for the whole bar is as long as the bar, whatever its
/// duration says: it counts up to the time signature, and in a pickup only if nothing else is there.
fn bar_length(index: usize, kind: BarKind, parts: &[PartBars<'_>]) -> Length {
    let in_bar = || parts.iter().filter_map(|view| view.bars.get(index).map(|bar| (view.part, bar)));
    let written = in_bar().map(|(_, bar)| bar.extent).max().unwrap_or(Length::ZERO);
    if kind == BarKind::NotCounted && written.is_positive() {
        return written;
    }
    let signed = in_bar().map(|(part, _)| meter_length(part, index)).max().unwrap_or(Length::ZERO);
    let rests = in_bar().map(|(_, bar)| bar.rest_extent).max().unwrap_or(Length::ZERO);
    match (written.is_positive(), rests.is_positive()) {
        (true, _) if signed.is_positive() => written.max(rests.min(signed)),
        (true, _) => written.max(rests),
        (false, true) if kind == BarKind::NotCounted || !signed.is_positive() => rests,
        (false, _) => signed,
    }
}

/// Where a movement marks both coda signs alike, the first is the one to leave at.
pub(super) fn tell_codas_apart(bars: &mut [Bar]) {
    let codas = bars.iter().filter(|bar| bar.jumps.contains(&Jump::Coda)).count();
    if codas < 2 || bars.iter().any(|bar| bar.jumps.contains(&Jump::ToCoda)) {
        return;
    }
    let first = bars.iter_mut().flat_map(|bar| bar.jumps.iter_mut()).find(|jump| **jump == Jump::Coda);
    if let Some(first) = first {
        *first = Jump::ToCoda;
    }
}

/// Reports bars that are longer or shorter than their signature, and parts that do not agree.
fn check_lengths(bars: &[Bar], parts: &[PartBars<'_>], problems: &mut Problems) {
    for (index, bar) in bars.iter().enumerate() {
        let written: Vec<(usize, &PartBar)> = parts
            .iter()
            .enumerate()
            .filter_map(|(number, view)| view.bars.get(index).map(|bar| (number, bar)))
            .filter(|(_, bar)| bar.content == Content::Written)
            .collect();
        let Some((first, shown)) = written.first().copied() else { continue };
        let all_agree = written.iter().all(|(_, other)| other.extent == bar.length);
        if all_agree {
            let signed = meter_length(parts[first].part, index);
            let place = ProblemPlace { node: shown.node, part: None, bar: Some(index as u32) };
            report_length(bar, bar.length, signed, may_be_short(bars, index), place, problems);
            continue;
        }
        for (number, part_bar) in written {
            let signed = meter_length(parts[number].part, index);
            let place =
                ProblemPlace { node: part_bar.node, part: Some(number as u32), bar: Some(index as u32) };
            let expected =
                if bar.kind == BarKind::Counted && signed.is_positive() { signed } else { bar.length };
            report_length(bar, part_bar.extent, expected, Short::Wrong, place, problems);
        }
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Short {
    Usual,
    Wrong,
}

/// Whether a bar that all parts cut short is how music is written: a pickup, the last bar that makes up
/// for it, the two halves of a bar that a repeat or double bar splits.
fn may_be_short(bars: &[Bar], index: usize) -> Short {
    let bar = &bars[index];
    let splits = |line: &crate::Barline| line.repeat.is_some() || line.style != crate::BarlineStyle::Single;
    let before = index.checked_sub(1).map(|before| &bars[before]);
    let after = bars.get(index + 1);
    let usual = bar.kind == BarKind::NotCounted
        || before.is_none()
        || after.is_none()
        || splits(&bar.left)
        || splits(&bar.right)
        || before.is_some_and(|before| splits(&before.right))
        || after.is_some_and(|after| splits(&after.left));
    if usual { Short::Usual } else { Short::Wrong }
}

fn report_length(
    bar: &Bar,
    told: Length,
    expected: Length,
    short: Short,
    place: ProblemPlace,
    problems: &mut Problems,
) {
    if !expected.is_positive() {
        return;
    }
    if told > expected && bar.kind == BarKind::Counted {
        problems.add(
            ProblemKind::BarOverfull,
            place,
            format!(
                "The notes of the bar add up to {told} whole notes; the time signature asks for {expected}."
            ),
        );
    } else if told < expected && short == Short::Wrong {
        problems.add(
            ProblemKind::BarUnderfull,
            place,
            format!("The notes of the bar add up to only {told} whole notes; the time signature asks for {expected}."),
        );
    }
}

fn check_repeats(bars: &[Bar], parts: &[PartBars<'_>], problems: &mut Problems) {
    let node = |bar: usize| parts.iter().find_map(|view| view.bars.get(bar).and_then(|bar| bar.node));
    let mut report = |bar: usize, message: &str| {
        problems.add(
            ProblemKind::Repeat,
            ProblemPlace { node: node(bar), part: None, bar: Some(bar as u32) },
            message,
        );
    };
    let (mut begun, mut bracket): (Option<usize>, Option<usize>) = (None, None);
    for (index, bar) in bars.iter().enumerate() {
        if bar.left.repeat == Some(RepeatSign::Begin)
            && let Some(older) = begun.replace(index)
        {
            report(older, "A repeat begins here, and another one before it has ended.");
        }
        if bar.left.ending.as_ref().is_some_and(|ending| ending.edge == EndingEdge::Start)
            && let Some(older) = bracket.replace(index)
        {
            report(older, "An ending begins here, and another one before it has ended.");
        }
        if matches!(bar.right.repeat, Some(RepeatSign::End { .. })) {
            begun = None;
        }
        if bar.right.ending.as_ref().is_some_and(|ending| ending.edge != EndingEdge::Start)
            && bracket.take().is_none()
        {
            report(index, "An ending ends here that never began.");
        }
    }
    if let Some(index) = begun {
        report(index, "A repeat begins here and never ends.");
    }
    if let Some(index) = bracket {
        report(index, "An ending begins here and never ends.");
    }
}

/// Whether a bar may be entered from elsewhere than the bar before it.
pub(super) fn entered_anew(bars: &[Bar], bar: u32) -> bool {
    let Some(this) = bars.get(bar as usize) else { return false };
    let before = (bar as usize).checked_sub(1).map(|before| &bars[before]);
    this.left.ending.is_some()
        || this.left.repeat.is_some()
        || this.jumps.iter().any(|jump| matches!(jump, Jump::Segno | Jump::Coda))
        || before.is_some_and(|before| before.right.repeat.is_some())
}
