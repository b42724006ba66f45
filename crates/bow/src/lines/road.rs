//! The sections that are played again: repeat signs, endings, da capo and dal segno. None leads out of its movement.

use arcata_score::{Bar, EndingEdge, Jump, Moment, RepeatSign, Score};

use crate::{Onward, Road};

/// Bars that are played again.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Section {
    pub(crate) begin: Moment,
    /// Where the first ending begins; the end of the section when there is none.
    pub(super) body_end: Moment,
    /// Where each way back leaves: the ends of the endings that lead back, or the section's end.
    pub(crate) turns: Vec<Moment>,
    pub(super) road: Road,
    pub(super) onward: Onward,
}

/// All sections, in the order in which they end; those between repeat signs first.
pub(crate) fn sections(score: &Score) -> Vec<Section> {
    let mut reader = RoadReader::default();
    for (index, bar) in score.bars.iter().enumerate() {
        if index == movement_start(score, index) {
            reader = RoadReader { sections: reader.sections, begin: bar.start, ..RoadReader::default() };
        }
        reader.bar(bar);
    }
    let mut sections = reader.sections;
    sections.extend((0..score.bars.len()).filter_map(|bar| sent_back(score, bar)));
    sections
}

/// What has been read of the repeat signs up to a bar.
#[derive(Default)]
struct RoadReader {
    sections: Vec<Section>,
    /// Begin signs that still wait for their end.
    open: Vec<Moment>,
    /// Where an end sign without a begin sign leads back to.
    begin: Moment,
    first_ending: Option<Moment>,
    bracket: Bracket,
}

/// The ending bracket over a bar.
#[derive(Clone, Copy, PartialEq, Eq, Default)]
enum Bracket {
    #[default]
    None,
    First,
    Later,
}

impl RoadReader {
    fn bar(&mut self, bar: &Bar) {
        if bar.left.repeat == Some(RepeatSign::Begin) {
            self.open.push(bar.start);
            self.begin = bar.start;
            self.first_ending = None;
            self.bracket = Bracket::None;
        }
        if let Some(ending) = bar.left.ending.as_ref().filter(|ending| ending.edge == EndingEdge::Start) {
            self.bracket = if ending.numbers.contains(&1) { Bracket::First } else { Bracket::Later };
            if self.bracket == Bracket::First {
                self.first_ending = Some(bar.start);
            }
        }
        let end = end_of(bar);
        if matches!(bar.right.repeat, Some(RepeatSign::End { .. })) {
            self.turn(end);
        }
        if bar.right.ending.as_ref().is_some_and(|ending| ending.edge != EndingEdge::Start) {
            if self.bracket == Bracket::Later {
                self.begin = end;
            }
            self.bracket = Bracket::None;
        }
    }

    /// An end sign.
    fn turn(&mut self, end: Moment) {
        if self.bracket == Bracket::Later {
            // The second of several endings that lead back belongs to the section whose first one it
            // follows; a sign under a later ending without such a section leads nowhere that is known.
            if let Some(section) = self.sections.last_mut().filter(|last| last.body_end < end) {
                section.turns.push(end);
            }
            return;
        }
        let begin = self.open.pop().unwrap_or(self.begin);
        let body_end = self.first_ending.take().filter(|at| *at > begin).unwrap_or(end);
        self.sections.push(Section {
            begin,
            body_end,
            turns: vec![end],
            road: Road::RepeatSign,
            onward: Onward::GoesOn,
        });
        self.begin = end;
    }
}

/// The section that a da capo or dal segno at the end of a bar sends back over.
///
/// Da capo leads to the beginning of the movement, dal segno to the last segno before it. Where a bar before says "to coda" and the
/// coda is printed right behind, the last pass leaves there; else the piece ends with the last pass.
fn sent_back(score: &Score, at: usize) -> Option<Section> {
    let bars = &score.bars;
    let has = |bar: usize, jump: Jump| bars[bar].jumps.contains(&jump);
    let (road, first) = if has(at, Jump::DaCapo) {
        (Road::DaCapo, movement_start(score, at))
    } else if has(at, Jump::DalSegno) {
        (Road::DalSegno, (movement_start(score, at)..=at).rev().find(|bar| has(*bar, Jump::Segno))?)
    } else {
        return None;
    };
    let end = end_of(&bars[at]);
    let leaves = (first..at).rev().find(|bar| has(*bar, Jump::ToCoda));
    let coda_follows = at + 1 < bars.len() && has(at + 1, Jump::Coda);
    let (body_end, onward) = match leaves.filter(|_| coda_follows) {
        Some(bar) => (end_of(&bars[bar]), Onward::GoesOn),
        None => (end, Onward::Anew),
    };
    Some(Section { begin: bars[first].start, body_end, turns: vec![end], road, onward })
}

/// The first bar (index) of the movement that a bar is in.
fn movement_start(score: &Score, bar: usize) -> usize {
    let number = u32::try_from(bar).unwrap_or(u32::MAX);
    score.movements.get(score.movement_of(number)).map_or(0, |movement| *movement.bars.start() as usize)
}

fn end_of(bar: &Bar) -> Moment {
    bar.start + bar.length
}
