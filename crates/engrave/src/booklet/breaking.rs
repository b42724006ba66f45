//! Where lines and pages break.
//!
//! One search over all ways to break: a page that must be turned ends where the player rests, lines are about as
//! full as the engraver's natural spacing, pages are filled, and the last page is not nearly empty. The least sum
//! of costs wins; costs are whole thousandths, so that equal ways are equal on every machine and the first one
//! found stands.

/// A bar, or a rest over several, as wide as the engraver makes it. Lengths are hundredths of a millimetre.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Measured {
    /// Natural width.
    pub(super) width: i64,
    /// Clef and key, where it opens a line.
    pub(super) front: i64,
    /// What stands above the first line of the staff.
    pub(super) above: i64,
    /// What hangs below the last line.
    pub(super) below: i64,
    /// Rest around its beginning, milliseconds.
    pub(super) rest_before: i64,
}

/// The room there is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Room {
    pub(super) width: i64,
    /// For music on the first page and on the others.
    pub(super) first_height: i64,
    pub(super) height: i64,
    /// From the first line of the first staff to the last line of the last one.
    pub(super) staff: i64,
    /// Least white between two lines of music.
    pub(super) between: i64,
    pub(super) systems_first: usize,
    pub(super) systems: usize,
    /// Which side the first page lies on.
    pub(super) first: Side,
    /// Rest that a turn needs, milliseconds.
    pub(super) turn: i64,
}

/// The two sides of an open booklet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    Left,
    Right,
}

impl Side {
    fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

/// Costs, thousandths: by rule of thumb, tried on quartets and an orchestral score.
mod costs {
    /// No time at all to turn.
    pub(super) const TURN: i64 = 60_000;
    /// A page more.
    pub(super) const PAGE: i64 = 6_000;
    /// A page of which nothing is filled; less with the square of what is empty.
    pub(super) const EMPTY: i64 = 40_000;
    /// The same for the last page, counted from half a page.
    pub(super) const EMPTY_LAST: i64 = 30_000;
    /// A single line on the last page.
    pub(super) const ALONE: i64 = 25_000;
    /// A line stretched to twice its natural width, or squeezed to half.
    pub(super) const STRETCH: i64 = 16_000;
    /// Up to here a last line counts as short, hundredths of its width.
    pub(super) const SHORT_LAST: i64 = 50;
    /// The best width, hundredths of the natural one.
    pub(super) const BEST: i64 = 112;
    /// The narrowest, hundredths of the natural one: below it signs touch.
    pub(super) const NARROWEST: i64 = 97;
}

/// One line of music: units from `first` to before `end`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct System {
    pub(super) first: usize,
    pub(super) end: usize,
    /// Which page it is on, from 0.
    pub(super) page: usize,
}

/// A way to have come to a place: the last line ended before unit `at`.
#[derive(Clone, Copy, Debug)]
struct Step {
    cost: i64,
    /// Height used on the page so far.
    height: i64,
    /// The step before, and its unit.
    from: Option<(usize, usize)>,
    page: usize,
    /// Lines on the page so far; 0 where the page begins.
    lines: usize,
}

/// Where each line and page begins. A unit wider than a line gets a line of its own.
pub(super) fn systems(units: &[Measured], room: &Room) -> Vec<System> {
    let mut steps: Vec<Vec<Step>> = vec![Vec::new(); units.len() + 1];
    steps[0].push(Step { cost: 0, height: 0, from: None, page: 0, lines: 0 });
    for at in 0..units.len() {
        steps[at] = best(std::mem::take(&mut steps[at]));
        for index in 0..steps[at].len() {
            let step = steps[at][index];
            for (end, cost, height) in lines_from(units, room, at) {
                for next in room.after(step, (at, index), (end, cost, height), units) {
                    steps[end].push(next);
                }
            }
        }
    }
    let last = steps.last().map_or(&[][..], Vec::as_slice);
    let Some(mut step) = last.iter().min_by_key(|step| step.cost).copied() else { return Vec::new() };
    let mut end = units.len();
    let mut systems = Vec::new();
    while let Some((at, index)) = step.from {
        let before = steps[at][index];
        let page = if before.lines == 0 { before.page } else { before.page.min(step.page) };
        systems.push(System { first: at, end, page });
        (end, step) = (at, before);
    }
    systems.reverse();
    systems
}

/// The lines that may begin at a unit: where they end, what they cost, how high they are over their staff.
fn lines_from<'a>(
    units: &'a [Measured],
    room: &'a Room,
    at: usize,
) -> impl Iterator<Item = (usize, i64, i64)> + 'a {
    let front = if at == 0 { 0 } else { units[at].front };
    let mut natural = front;
    let (mut above, mut below) = (0, 0);
    (at..units.len()).map_while(move |index| {
        let unit = units[index];
        natural += unit.width;
        above = above.max(unit.above);
        below = below.max(unit.below);
        let stretch = room.width * 100 / natural.max(1);
        if stretch < costs::NARROWEST && index > at {
            return None;
        }
        let is_last = index + 1 == units.len();
        Some((index + 1, stretch_cost(stretch, is_last), above + room.staff + below))
    })
}

/// A last line may stay short, but a bar or two by themselves look lost.
fn stretch_cost(stretch: i64, is_last: bool) -> i64 {
    if is_last && stretch > costs::BEST {
        let filled = 10_000 / stretch;
        let missing = (costs::SHORT_LAST - filled).max(0);
        return costs::STRETCH * missing * missing / (costs::SHORT_LAST * costs::SHORT_LAST);
    }
    // Hundredths off the best width, as a share of it: half and double are alike.
    let off = if stretch >= costs::BEST {
        (stretch - costs::BEST) * 100 / costs::BEST
    } else {
        (costs::BEST - stretch) * 200 / costs::BEST
    };
    costs::STRETCH * off.min(1000) * off.min(1000) / 10_000
}

impl Room {
    /// The steps after one more line: on the same page, and with the page ended.
    fn after(
        &self,
        step: Step,
        from: (usize, usize),
        (end, line, height): (usize, i64, i64),
        units: &[Measured],
    ) -> impl Iterator<Item = Step> + use<> {
        let room = if step.page == 0 { self.first_height } else { self.height };
        let most = if step.page == 0 { self.systems_first } else { self.systems };
        let used = step.height + height + if step.lines == 0 { 0 } else { self.between };
        let lines = step.lines + 1;
        // A line higher than the page stands alone: there is no better place for it.
        let fits = (used <= room && lines <= most) || lines == 1;
        let base = Step { cost: step.cost + line, height: used, from: Some(from), page: step.page, lines };
        let is_end = end == units.len();
        let filled = (used * 100 / room.max(1)).min(100);
        let on = (!is_end).then_some(base);
        let over = if is_end {
            let missing = (50 - filled).max(0);
            let last = costs::EMPTY_LAST * missing * missing / 2500
                + if lines == 1 && step.page > 0 { costs::ALONE } else { 0 };
            Step { cost: base.cost + if step.page == 0 { 0 } else { last }, ..base }
        } else {
            let empty = 100 - filled;
            let turn = if self.is_turned(step.page) { self.turn_cost(units[end].rest_before) } else { 0 };
            let cost = base.cost + costs::PAGE + costs::EMPTY * empty * empty / 10_000 + turn;
            Step { cost, height: 0, from: Some(from), page: step.page + 1, lines: 0 }
        };
        [on, Some(over)].into_iter().flatten().filter(move |_| fits)
    }

    /// Whether a page is turned at its end.
    pub(super) fn is_turned(&self, page: usize) -> bool {
        let side = if page.is_multiple_of(2) { self.first } else { self.first.other() };
        side == Side::Right
    }

    fn turn_cost(&self, rest: i64) -> i64 {
        let missing = (self.turn - rest).max(0);
        costs::TURN * missing / self.turn.max(1)
    }
}

/// Of the steps that go on alike, with as many lines on a page of the same kind, those that are not dearer and
/// higher than another. What matters of a page is whether it is the first and which side it lies on.
fn best(mut steps: Vec<Step>) -> Vec<Step> {
    const KEPT: usize = 3;
    let kind = |step: &Step| if step.page == 0 { 0 } else { 1 + step.page % 2 };
    steps.sort_by_key(|step| (kind(step), step.lines, step.cost, step.height));
    let mut kept: Vec<Step> = Vec::new();
    for step in steps {
        let alike = |other: &&Step| kind(other) == kind(&step) && other.lines == step.lines;
        let known = kept.iter().rev().take_while(alike);
        let is_worse = known.clone().any(|other| other.height <= step.height);
        if !is_worse && known.count() < KEPT {
            kept.push(step);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn unit(width: i64, rest_before: i64) -> Measured {
        Measured { width, front: 500, above: 400, below: 400, rest_before }
    }

    fn room() -> Room {
        Room {
            width: 18_000,
            first_height: 22_000,
            height: 25_000,
            staff: 750,
            between: 600,
            systems_first: 10,
            systems: 11,
            first: Side::Right,
            turn: 3000,
        }
    }

    fn pages(systems: &[System]) -> Vec<usize> {
        let last = systems.last().map_or(0, |system| system.page);
        (0..=last).map(|page| systems.iter().filter(|system| system.page == page).count()).collect()
    }

    #[test]
    fn every_unit_stands_on_one_line_and_no_line_is_overfull() {
        let units: Vec<Measured> = (0..200).map(|index| unit(2500 + index % 7 * 700, 0)).collect();
        let systems = systems(&units, &room());
        assert_eq!(systems[0].first, 0);
        assert!(systems.windows(2).all(|pair| pair[0].end == pair[1].first && pair[0].page <= pair[1].page));
        assert_eq!(systems[systems.len() - 1].end, units.len());
        for system in &systems {
            let natural: i64 = units[system.first..system.end].iter().map(|unit| unit.width).sum();
            assert!(natural + 500 <= 18_000 * 100 / costs::NARROWEST, "{system:?}");
        }
        assert!(pages(&systems).iter().all(|lines| (2..=11).contains(lines)), "{:?}", pages(&systems));
    }

    #[test]
    fn a_right_page_ends_where_the_player_rests() {
        // Six bars a line, ten lines a page: a long rest stands before bar 52, none at the end of the page.
        let units: Vec<Measured> = (0..110).map(|bar| unit(2700, if bar == 52 { 4000 } else { 0 })).collect();
        let systems = systems(&units, &room());
        let second = systems.iter().find(|system| system.page == 1).expect("two pages");
        assert_eq!(second.first, 52);
    }

    #[test]
    fn on_facing_pages_no_rest_is_looked_for() {
        let units: Vec<Measured> = (0..110).map(|bar| unit(2700, if bar == 30 { 4000 } else { 0 })).collect();
        let left = Room { first: Side::Left, ..room() };
        let systems = systems(&units, &left);
        let second = systems.iter().find(|system| system.page == 1).expect("two pages");
        assert!(second.first > 40, "the first page is filled: {second:?}");
    }

    #[test]
    fn the_last_page_does_not_hold_a_single_line() {
        // 61 bars of six a line: eleven lines, of which ten fit on the first page.
        let units: Vec<Measured> = (0..61).map(|_| unit(2700, 5000)).collect();
        let found = pages(&systems(&units, &room()));
        assert!(found.len() == 1 || found[found.len() - 1] > 1, "{found:?}");
    }

    #[test]
    fn a_unit_wider_than_the_line_stands_alone() {
        let units = [unit(3000, 0), unit(40_000, 0), unit(3000, 0)];
        let found = systems(&units, &room());
        assert!(found.iter().any(|system| (system.first, system.end) == (1, 2)), "{found:?}");
    }
}
