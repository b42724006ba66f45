//! Where lines and pages break.
//!
//! One search over all ways to break a part into lines and pages together: a page that must be turned ends where the
//! player has time, lines are about as full as they look best and about as full as their neighbours, pages are filled,
//! none holds a single line, each movement begins a line. The least sum of costs wins; costs are whole numbers, so
//! that equal ways are equal on every machine and the first one found stands.
//!
//! The search goes from line to line. Two ways that have come to the same line, on a page of the same kind with as
//! many lines on it, go on alike but for the room that is left; so of each such kind only those are kept that are
//! cheaper or less far down than every other. That leaves nothing out that could be best: a twin in the tests tries
//! every way there is.

use arcata_bow::RealTime;
use arcata_bow::turns::TurnTime;

use super::AskedStart;

/// A bar, or a rest over several, as wide as the engraver makes it. Lengths are hundredths of a millimetre.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub(super) struct MeasuredUnit {
    /// Natural width.
    pub(super) width: i64,
    /// Clef and key, where it opens a line.
    pub(super) front: i64,
    /// What stands above the first line of the staff.
    pub(super) above: i64,
    /// What hangs below the last line.
    pub(super) below: i64,
    /// What a page turn right before it would cost the player.
    pub(super) turn: TurnTime,
    /// Where it begins a movement: what that takes.
    pub(super) opens: Option<MovementOpening>,
    /// What somebody wants to begin with it.
    pub(super) asked: AskedStart,
}

/// What the first line of a movement takes, hundredths of a millimetre.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub(super) struct MovementOpening {
    /// White in front of the line.
    pub(super) indent: i64,
    /// Height of the heading over it.
    pub(super) heading: i64,
}

/// The room there is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct PaperRoom {
    pub(super) width: i64,
    /// For music on the first page and on the others.
    pub(super) first_height: i64,
    pub(super) height: i64,
    /// From the first line of the first staff to the last line of the last one.
    pub(super) staff: i64,
    /// Least white between two lines of music, and least distance of their staves.
    pub(super) between: i64,
    pub(super) apart: i64,
    pub(super) systems_first: usize,
    pub(super) systems: usize,
    /// Which side the first page lies on.
    pub(super) first: BookletSide,
    /// Time that a turn needs.
    pub(super) turn: RealTime,
    pub(super) blank: Blank,
    pub(super) fold: FoldOuts,
    pub(super) movements: MovementPages,
}

/// Where a page lies in an open booklet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum BookletSide {
    Left,
    Right,
    /// On a leaf glued to the right page, folded out beside it.
    FoldOut,
}

impl BookletSide {
    /// Where the next page lies that is no fold-out.
    pub(super) fn next(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right | Self::FoldOut => Self::Left,
        }
    }

    /// Whether a page is turned at its end to come to a page on another side.
    pub(super) fn is_turned(self, to: Self) -> bool {
        self != Self::Left && to != Self::FoldOut
    }
}

/// Whether a third page may fold out beside two.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum FoldOuts {
    Never,
    ForTurns,
}

/// Whether a left page may stay blank, so that the next turn comes later.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Blank {
    Never,
    LeftPages,
}

/// Where movements begin.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum MovementPages {
    Anywhere,
    NewPage,
}

/// What becomes of turns without time enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Rushed {
    /// They have their price.
    Priced,
    /// As few as there can be, whatever else that costs.
    Fewest,
}

/// Costs: by rule of thumb, tried on quartets and orchestral parts.
pub(super) mod costs {
    /// A point: about what a line costs that is stretched to one and a half times its natural width.
    pub(crate) const POINT: i64 = 1_000_000_000;
    /// A turn without time enough, and as much again without any time at all.
    pub(super) const RUSHED: i64 = 45 * POINT;
    /// A turn without time enough, where there are to be as few as there can be.
    pub(crate) const ANY_RUSHED: i64 = 100_000 * POINT;
    /// To be sent back over a turn by a repeat.
    pub(super) const BACK: i64 = 8 * POINT;
    /// A page more.
    pub(super) const PAGE: i64 = 4 * POINT;
    /// To begin on a left page, behind a cover.
    pub(crate) const COVER: i64 = 3 * POINT;
    /// A page left blank.
    pub(super) const BLANK: i64 = 12 * POINT;
    /// A leaf that is glued in to fold out.
    pub(super) const FOLD: i64 = 20 * POINT;
    /// A staff smaller than the house wants it, a tenth of a millimetre.
    pub(crate) const SMALLER: i64 = 3 * POINT;
    /// Up to here a page may have fewer lines than it can hold: houses say 9 to 10, 10 to 11, 10 to 12.
    pub(super) const SPARE_LINES: usize = 2;
    /// The square of a line that a page has fewer.
    pub(super) const EMPTY: i64 = POINT;
    /// The same for the last page, or the last one before a movement that begins its own, from half a page on.
    pub(super) const EMPTY_LAST: i64 = POINT;
    /// A single line on a page.
    pub(super) const ALONE: i64 = 25 * POINT;
    /// A heading with a single line of its movement at the foot of a page.
    pub(super) const LONELY_HEADING: i64 = 15 * POINT;
    /// A line stretched to twice the best width.
    pub(super) const STRETCH: i64 = 16 * POINT;
    /// Two lines on top of each other, the one stretched to twice its natural width and the other not at all.
    pub(super) const UNEQUAL: i64 = 6 * POINT;
    /// Up to here the last line of a movement counts as short, hundredths of its width.
    pub(super) const SHORT_LAST: i64 = 40;
    /// The best width, hundredths of the natural one.
    pub(super) const BEST: i64 = 112;
    /// The narrowest, hundredths of the natural one: below it signs touch.
    pub(super) const NARROWEST: i64 = 98;
    /// The widest, hundredths of the natural one, where another bar would still fit.
    pub(super) const WIDEST: i64 = 200;
}

/// A line of music that may be made: units from `first` to before `end`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct PossibleLine {
    pub(super) first: usize,
    pub(super) end: usize,
    /// What it costs by itself.
    pub(super) cost: i64,
    /// Hundredths of its natural width; nothing for the last line of a movement, which is not drawn out.
    pub(super) stretch: Option<i64>,
    /// Over the first line of its staff, with a heading; under the last.
    pub(super) above: i64,
    pub(super) below: i64,
    /// Whether it begins a movement that is not the first.
    pub(super) movement: LineBegins,
    /// Whether somebody wants it to begin a page.
    pub(super) asked: AskedStart,
}

impl PossibleLine {
    pub(super) fn is_movement(&self) -> bool {
        self.movement == LineBegins::Movement
    }

    /// Whether a page begins with it that is not the first one.
    fn owns_page(&self, movements: MovementPages) -> bool {
        self.first > 0 && self.asked == AskedStart::Page
            || self.is_movement() && movements == MovementPages::NewPage
    }
}

/// What a line begins, whose first unit may open a movement; the first movement begins with the part.
pub(super) fn begins(first: usize, is_movement: bool) -> LineBegins {
    if is_movement && first > 0 { LineBegins::Movement } else { LineBegins::Nothing }
}

/// What begins with a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum LineBegins {
    Nothing,
    Movement,
}

/// One line of music as chosen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct System {
    pub(super) first: usize,
    pub(super) end: usize,
    /// Which page it is on, from 0; a page left blank counts.
    pub(super) page: usize,
    /// Where that page lies.
    pub(super) side: BookletSide,
}

/// The way that was found.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub(super) struct Chosen {
    pub(super) cost: i64,
    pub(super) systems: Vec<System>,
}

/// All lines that may be made of the units, by their first unit, with how near they can stand to each other.
#[derive(Clone, Debug)]
pub(super) struct PossibleLines {
    pub(super) lines: Vec<PossibleLine>,
    /// For each unit, the lines that begin with it: the first one's index.
    starts: Vec<usize>,
}

impl PossibleLines {
    /// Lines in the order of their first unit.
    pub(super) fn new(lines: Vec<PossibleLine>) -> Self {
        let units = lines.iter().map(|line| line.end).max().unwrap_or(0);
        let starts = (0..=units + 1).map(|unit| lines.partition_point(|line| line.first < unit)).collect();
        Self { lines, starts }
    }

    /// Every line that is neither too narrow nor far too wide. A unit wider than a line gets a line of its own.
    pub(super) fn of(units: &[MeasuredUnit], room: &PaperRoom) -> Self {
        let mut lines = Vec::new();
        for first in 0..units.len() {
            let mut found = lines_from(units, room, first);
            let widest = found.len().saturating_sub(1);
            let mut index = 0;
            found.retain(|line| {
                index += 1;
                line.stretch.is_none_or(|stretch| stretch <= costs::WIDEST) || index > widest
            });
            lines.extend(found);
        }
        Self::new(lines)
    }

    /// The lines that begin with a unit.
    fn from(&self, unit: usize) -> std::ops::Range<usize> {
        let at = |unit: usize| self.starts.get(unit).copied().unwrap_or(self.lines.len());
        at(unit)..at(unit + 1)
    }
}

fn lines_from(units: &[MeasuredUnit], room: &PaperRoom, first: usize) -> Vec<PossibleLine> {
    let opening = units[first].opens.unwrap_or_default();
    let is_movement = units[first].opens.is_some();
    let width = room.width - opening.indent;
    // What opens a movement has clef and key in its own width.
    let mut natural = if first == 0 || is_movement { 0 } else { units[first].front };
    let (mut above, mut below) = (0, 0);
    let mut lines = Vec::new();
    for (index, unit) in units.iter().enumerate().skip(first) {
        if index > first && (unit.opens.is_some() || unit.asked != AskedStart::Nothing) {
            break;
        }
        natural += unit.width;
        above = above.max(unit.above);
        below = below.max(unit.below);
        let stretch = width * 100 / natural.max(1);
        if stretch < costs::NARROWEST && index > first {
            break;
        }
        let is_last = units.get(index + 1).is_none_or(|next| next.opens.is_some());
        let short = is_last && stretch > costs::BEST;
        lines.push(PossibleLine {
            first,
            end: index + 1,
            cost: if short { short_cost(stretch) } else { stretch_cost(stretch) },
            stretch: (!short).then_some(stretch),
            above: rounded_up(above + opening.heading),
            below,
            movement: begins(first, is_movement),
            asked: units[first].asked,
        });
    }
    lines
}

/// Hundredths off the best width, as a share of it: half and double are alike.
fn stretch_cost(stretch: i64) -> i64 {
    let off = if stretch >= costs::BEST {
        (stretch - costs::BEST) * 100 / costs::BEST
    } else {
        (costs::BEST - stretch) * 200 / costs::BEST
    };
    costs::STRETCH / 10_000 * off.min(1000) * off.min(1000)
}

/// A last line may stay short, but a bar or two by themselves look lost.
fn short_cost(stretch: i64) -> i64 {
    let missing = (costs::SHORT_LAST - 10_000 / stretch.max(1)).max(0);
    costs::STRETCH / (costs::SHORT_LAST * costs::SHORT_LAST) * missing * missing
}

/// How near lines of units can stand: their signs side by side, not the highest of the one over the lowest of the
/// other.
#[derive(Clone, Copy, Debug)]
pub(super) struct Outlines<'a> {
    pub(super) units: &'a [MeasuredUnit],
    pub(super) room: &'a PaperRoom,
}

impl Outlines<'_> {
    /// From the last line of the upper staff to the first line of the lower one.
    pub(super) fn distance(&self, upper: &PossibleLine, lower: &PossibleLine) -> i64 {
        if lower.is_movement() {
            return self.room.apart.max(rounded_up(upper.below + lower.above + self.room.between));
        }
        let natural = |line: &PossibleLine| {
            self.units[line.first..line.end].iter().map(|unit| unit.width).sum::<i64>().max(1)
        };
        let (wide, other) = (natural(upper), natural(lower));
        let (mut one, mut two) = (upper.first, lower.first);
        // Where the current unit of each ends, in parts of both natural widths multiplied.
        let (mut ends, mut next) = (self.units[one].width * other, self.units[two].width * wide);
        let mut most = 0;
        loop {
            most = most.max(self.units[one].below + self.units[two].above);
            if ends <= next {
                one += 1;
                if one >= upper.end {
                    break;
                }
                ends += self.units[one].width * other;
            } else {
                two += 1;
                if two >= lower.end {
                    break;
                }
                next += self.units[two].width * wide;
            }
        }
        self.room.apart.max(rounded_up(most + self.room.between))
    }
}

/// To two millimetres: ways that differ by less go on alike.
fn rounded_up(hundredths: i64) -> i64 {
    const STEP: i64 = 200;
    (hundredths + STEP - 1).div_euclid(STEP) * STEP
}

/// A way to have come to a line.
#[derive(Clone, Copy, Debug)]
struct BreakingStep {
    cost: i64,
    /// Where the last line of the last staff lies, from the top of the page.
    foot: i64,
    /// Lines on the page so far, and what page it is.
    lines: usize,
    page: BookletPage,
    number: usize,
    from: Option<usize>,
    line: usize,
}

/// What matters of a page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct BookletPage {
    is_first: bool,
    side: BookletSide,
}

/// The cheapest way to break lines and pages; none where all cost more than `most`.
pub(super) fn choose(
    lines: &PossibleLines,
    turns: &[TurnTime],
    room: &PaperRoom,
    (rushed, most): (Rushed, i64),
    distance: impl Fn(usize, usize) -> i64,
) -> Option<Chosen> {
    let search = BreakSearch { lines, turns, room, rushed, rest: rest_costs(&lines.lines, room) };
    // A good way found quickly says what is too dear to be looked at.
    let first = search.run(&distance, Keeps::Cheapest, most);
    let limit = first.as_ref().map_or(most, |first| first.cost);
    search.run(&distance, Keeps::All, limit).or(first)
}

/// What the lines from each unit on cost at least, with their share of a page.
fn rest_costs(lines: &[PossibleLine], room: &PaperRoom) -> Vec<i64> {
    let end = lines.iter().map(|line| line.end).max().unwrap_or(0);
    let mut rest = vec![i64::MAX; end + 1];
    rest[end] = 0;
    for line in lines.iter().rev() {
        let on = rest[line.end].saturating_add(line.cost + room.page_share());
        rest[line.first] = rest[line.first].min(on);
    }
    rest
}

/// What is kept of the ways that have come to a line with as many lines on a page of the same kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Keeps {
    Cheapest,
    All,
}

struct BreakSearch<'a> {
    lines: &'a PossibleLines,
    turns: &'a [TurnTime],
    room: &'a PaperRoom,
    rushed: Rushed,
    rest: Vec<i64>,
}

impl BreakSearch<'_> {
    /// The cheapest way of those that are kept and cost `limit` at most.
    fn run(&self, distance: impl Fn(usize, usize) -> i64, keeps: Keeps, limit: i64) -> Option<Chosen> {
        let (all, room) = (&self.lines.lines, self.room);
        let end = all.iter().map(|line| line.end).max()?;
        // Those that were kept, and for each line those that have come to it.
        let mut steps: Vec<BreakingStep> = Vec::new();
        let mut at: Vec<Front> = vec![Front::default(); all.len()];
        let offer = |front: &mut Front, step: BreakingStep| {
            if room.least(&step, self.rest[all[step.line].end]) <= limit {
                front.offer(step, keeps);
            }
        };
        for line in self.lines.from(0) {
            let page = BookletPage { is_first: true, side: room.first };
            let foot = all[line].above + room.staff;
            let step =
                BreakingStep { cost: all[line].cost, foot, lines: 1, page, number: 0, from: None, line };
            offer(&mut at[line], step);
        }
        let mut best: Option<(i64, usize)> = None;
        for index in 0..all.len() {
            let here = steps.len();
            steps.extend(std::mem::take(&mut at[index]).0.into_iter().flatten());
            for from in (here..steps.len()).filter(|_| all[index].end == end) {
                let cost = steps[from].cost + room.end_cost(&steps[from], &all[index]);
                if best.is_none_or(|(least, _)| cost < least) {
                    best = Some((cost, from));
                }
            }
            for next in self.lines.from(all[index].end) {
                let apart = distance(index, next);
                // Of all ways to open a page with the next line only the cheapest on each side matter.
                let mut opened = Front::default();
                for (from, step) in steps.iter().enumerate().skip(here) {
                    let made = |made: BreakingStep| BreakingStep { from: Some(from), ..made };
                    if let Some(on) = room.on_the_page(step, (index, next), all, apart) {
                        offer(&mut at[next], made(on));
                    }
                    let pages = room.opened(step, (index, next), all, self.turns, self.rushed);
                    pages.for_each(|page| opened.offer(made(page), Keeps::Cheapest));
                }
                opened.0.into_iter().flatten().for_each(|step| offer(&mut at[next], step));
            }
        }
        let (cost, mut last) = best?;
        let mut systems = Vec::new();
        loop {
            let step = &steps[last];
            let line = &all[step.line];
            systems.push(System {
                first: line.first,
                end: line.end,
                page: step.number,
                side: step.page.side,
            });
            let Some(from) = step.from else { break };
            last = from;
        }
        systems.reverse();
        Some(Chosen { cost, systems })
    }
}

impl PaperRoom {
    fn height_of(&self, page: BookletPage) -> i64 {
        if page.is_first { self.first_height } else { self.height }
    }

    /// The next line on the same page, where it fits.
    fn on_the_page(
        &self,
        step: &BreakingStep,
        (index, next): (usize, usize),
        all: &[PossibleLine],
        apart: i64,
    ) -> Option<BreakingStep> {
        let line = &all[next];
        if line.owns_page(self.movements) {
            return None;
        }
        let most = self.most(step.page);
        let foot = step.foot + apart + self.staff;
        let fits = step.lines < most && foot + line.below <= self.height_of(step.page);
        let cost = step.cost + line.cost + unequal_cost(&all[index], line);
        fits.then_some(BreakingStep { cost, foot, lines: step.lines + 1, line: next, ..*step })
    }

    /// The next line on a new page, with a page left blank before it, and on a page that folds out.
    fn opened(
        &self,
        step: &BreakingStep,
        (index, next): (usize, usize),
        all: &[PossibleLine],
        turns: &[TurnTime],
        rushed: Rushed,
    ) -> impl Iterator<Item = BreakingStep> + use<> {
        let (before, line) = (&all[index], &all[next]);
        let side = step.page.side;
        let turn = turns.get(line.first).copied().unwrap_or_default();
        let turned = self.turn_cost(turn)
            + if rushed == Rushed::Fewest && turn.is_rushed(self.turn) { costs::ANY_RUSHED } else { 0 };
        let empty = if line.owns_page(self.movements) { self.last_empty(step) } else { self.empty(step) };
        let cost = step.cost + line.cost + costs::PAGE + empty + self.lines_cost(step, before);
        let foot = line.above + self.staff;
        let opened = move |side, number, more| BreakingStep {
            cost: cost + more,
            foot,
            lines: 1,
            page: BookletPage { is_first: false, side },
            number,
            from: None,
            line: next,
        };
        let (number, is_turned) = (step.number + 1, side.is_turned(side.next()));
        let made = opened(side.next(), number, if is_turned { turned } else { 0 });
        let over = (is_turned && self.blank == Blank::LeftPages)
            .then(|| opened(BookletSide::Right, number + 1, turned + costs::PAGE + costs::BLANK));
        let fold = (side == BookletSide::Right && self.fold == FoldOuts::ForTurns)
            .then(|| opened(BookletSide::FoldOut, number, costs::FOLD));
        [Some(made), over, fold].into_iter().flatten()
    }

    /// What the lines of a page cost together when it ends.
    fn lines_cost(&self, step: &BreakingStep, line: &PossibleLine) -> i64 {
        // A line that fills a page alone cannot be helped.
        let alone = step.lines == 1 && 2 * (step.foot + line.below) < self.height_of(step.page);
        let lonely = step.lines > 1 && line.is_movement() && line.stretch.is_some();
        i64::from(alone) * costs::ALONE + i64::from(lonely) * costs::LONELY_HEADING
    }

    /// What the end of the piece costs; a piece on one page may be as short as it is.
    fn end_cost(&self, step: &BreakingStep, line: &PossibleLine) -> i64 {
        if step.page.is_first { 0 } else { self.last_empty(step) + self.lines_cost(step, line) }
    }

    /// A line's share of the cost of a page that is full.
    fn page_share(&self) -> i64 {
        costs::PAGE / i64::try_from(self.systems.max(self.systems_first)).unwrap_or(i64::MAX)
    }

    /// What a way costs at least when it has come to the end, the lines behind it costing `rest`: they may yet fill the page
    /// that is open.
    fn least(&self, step: &BreakingStep, rest: i64) -> i64 {
        let left = self.systems.max(self.systems_first).saturating_sub(step.lines);
        step.cost.saturating_add(rest).saturating_sub(self.page_share() * i64::try_from(left).unwrap_or(0))
    }

    fn most(&self, page: BookletPage) -> usize {
        if page.is_first { self.systems_first } else { self.systems }
    }

    fn empty(&self, step: &BreakingStep) -> i64 {
        let wanted = self.most(step.page).saturating_sub(costs::SPARE_LINES);
        costs::EMPTY * squared(wanted.saturating_sub(step.lines))
    }

    fn last_empty(&self, step: &BreakingStep) -> i64 {
        costs::EMPTY_LAST * squared((self.most(step.page) / 2).saturating_sub(step.lines))
    }

    pub(super) fn turn_cost(&self, turn: TurnTime) -> i64 {
        let needed = self.turn.micros / 1000;
        let rushed = |time: RealTime| {
            let missing = (needed - time.micros / 1000).max(0);
            if missing == 0 { 0 } else { costs::RUSHED + costs::RUSHED / needed.max(1) * missing }
        };
        let back = turn.back.map_or(0, |back| costs::BACK + rushed(back));
        rushed(turn.free()) + back
    }
}

/// The ways that have come to a line and may yet be best: for each kind of page and number of lines on it, those of
/// which none is both dearer and further down than another.
#[derive(Clone, Debug, Default)]
struct Front(Vec<Vec<BreakingStep>>);

impl Front {
    /// Takes a way in, unless another is as cheap and as far up; what it beats goes.
    fn offer(&mut self, step: BreakingStep, keeps: Keeps) {
        let kind = 4 * step.lines
            + match step.page {
                BookletPage { is_first: true, .. } => 0,
                BookletPage { side: BookletSide::Right, .. } => 1,
                BookletPage { side: BookletSide::Left, .. } => 2,
                BookletPage { side: BookletSide::FoldOut, .. } => 3,
            };
        if self.0.len() <= kind {
            self.0.resize(kind + 1, Vec::new());
        }
        let alike = &mut self.0[kind];
        let beats = |one: &BreakingStep, other: &BreakingStep| {
            one.cost <= other.cost && (keeps == Keeps::Cheapest || one.foot <= other.foot)
        };
        if !alike.iter().any(|other| beats(other, &step)) {
            alike.retain(|other| !beats(&step, other));
            alike.push(step);
        }
    }
}

fn squared(count: usize) -> i64 {
    i64::try_from(count * count).unwrap_or(i64::MAX >> 32)
}

fn unequal_cost(one: &PossibleLine, other: &PossibleLine) -> i64 {
    let (Some(one), Some(other)) = (one.stretch, other.stretch) else { return 0 };
    let off = (one - other).abs().min(1000);
    costs::UNEQUAL / 10_000 * off * off
}

#[cfg(test)]
mod tests;
