use arcata_testkit::Random;

use super::*;

fn rest(millis: i64) -> TurnTime {
    TurnTime { rest: RealTime::from_micros(millis * 1000), ..TurnTime::default() }
}

fn unit(width: i64, rest_before: i64) -> MeasuredUnit {
    let turn = rest(rest_before);
    MeasuredUnit { width, front: 500, above: 400, below: 400, turn, opens: None, asked: AskedStart::Nothing }
}

fn room() -> PaperRoom {
    PaperRoom {
        width: 18_000,
        first_height: 22_000,
        height: 25_000,
        staff: 750,
        between: 600,
        apart: 800,
        systems_first: 10,
        systems: 11,
        first: BookletSide::Right,
        turn: RealTime::from_micros(3_000_000),
        blank: Blank::Never,
        fold: FoldOuts::Never,
        movements: MovementPages::Anywhere,
    }
}

fn chosen(units: &[MeasuredUnit], room: &PaperRoom, rushed: Rushed) -> Option<Chosen> {
    let lines = PossibleLines::of(units, room);
    let turns: Vec<TurnTime> = units.iter().map(|unit| unit.turn).collect();
    let outlines = Outlines { units, room };
    choose(&lines, &turns, room, (rushed, i64::MAX), |upper, lower| {
        outlines.distance(&lines.lines[upper], &lines.lines[lower])
    })
}

fn systems(units: &[MeasuredUnit], room: &PaperRoom) -> Vec<System> {
    chosen(units, room, Rushed::Priced).expect("a way").systems
}

fn pages(systems: &[System]) -> Vec<usize> {
    let last = systems.last().map_or(0, |system| system.page);
    (0..=last).map(|page| systems.iter().filter(|system| system.page == page).count()).collect()
}

#[test]
fn every_unit_stands_on_one_line_and_no_line_is_overfull() {
    let units: Vec<MeasuredUnit> = (0..200).map(|index| unit(2500 + index % 7 * 700, 0)).collect();
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
    // Five or six bars a line, ten lines a page: a long rest stands before bar 52, none at the end of the page.
    let units: Vec<MeasuredUnit> = (0..110).map(|bar| unit(2700, if bar == 52 { 4000 } else { 0 })).collect();
    let systems = systems(&units, &room());
    let second = systems.iter().find(|system| system.page == 1).expect("two pages");
    assert_eq!(second.first, 52);
}

#[test]
fn on_facing_pages_no_rest_is_looked_for() {
    let units: Vec<MeasuredUnit> = (0..110).map(|bar| unit(2700, if bar == 30 { 4000 } else { 0 })).collect();
    let left = PaperRoom { first: BookletSide::Left, ..room() };
    let systems = systems(&units, &left);
    let second = systems.iter().find(|system| system.page == 1).expect("two pages");
    assert!(second.first > 40, "the first page is filled: {second:?}");
}

#[test]
fn the_last_page_does_not_hold_a_single_line() {
    // 61 bars of six a line: eleven lines, of which ten fit on the first page.
    let units: Vec<MeasuredUnit> = (0..61).map(|_| unit(2700, 5000)).collect();
    let found = pages(&systems(&units, &room()));
    assert!(found.len() == 1 || found[found.len() - 1] > 1, "{found:?}");
}

#[test]
fn a_unit_wider_than_the_line_stands_alone() {
    let units = [unit(3000, 0), unit(40_000, 0), unit(3000, 0)];
    let found = systems(&units, &room());
    assert!(found.iter().any(|system| (system.first, system.end) == (1, 2)), "{found:?}");
}

#[test]
fn a_movement_begins_a_line_and_a_page_where_the_house_wants_it() {
    let opens = Some(MovementOpening { indent: 1500, heading: 800 });
    let units: Vec<MeasuredUnit> =
        (0..60).map(|bar| MeasuredUnit { opens: opens.filter(|_| bar == 33), ..unit(2700, 5000) }).collect();
    let found = systems(&units, &room());
    assert!(found.iter().any(|system| system.first == 33), "{found:?}");
    let own = PaperRoom { movements: MovementPages::NewPage, ..room() };
    let found = systems(&units, &own);
    let opened = found.iter().find(|system| system.first == 33).expect("a line");
    assert!(found.iter().all(|system| (system.page < opened.page) == (system.first < 33)), "{found:?}");
}

#[test]
fn what_is_asked_to_begin_a_line_or_a_page_does() {
    let asked = |bar| match bar {
        13 | 40 => AskedStart::Page,
        17 | 77 => AskedStart::Line,
        _ => AskedStart::Nothing,
    };
    let units: Vec<MeasuredUnit> =
        (0..110).map(|bar| MeasuredUnit { asked: asked(bar), ..unit(2700, 0) }).collect();
    let found = systems(&units, &room());
    for bar in [13, 40, 17, 77] {
        let at = found.iter().position(|system| system.first == bar).expect("it begins a line");
        assert_eq!(found[at].page > found[at - 1].page, asked(bar) == AskedStart::Page, "{found:?}");
    }
}

#[test]
fn a_blank_left_page_puts_the_turn_off() {
    // The only rest stands before bar 170: three pages on, after a left page.
    let units: Vec<MeasuredUnit> =
        (0..230).map(|bar| unit(2700, if [52, 105].contains(&bar) { 9000 } else { 0 })).collect();
    let blank = PaperRoom { blank: Blank::LeftPages, ..room() };
    let (with, without) = (chosen(&units, &blank, Rushed::Priced), chosen(&units, &room(), Rushed::Priced));
    let (with, without) = (with.expect("a way"), without.expect("a way"));
    assert!(with.cost < without.cost && pages(&with.systems).contains(&0), "{:?}", pages(&with.systems));
}

#[test]
fn a_page_folds_out_where_the_only_rest_comes_three_pages_on() {
    // Right, then left, right and fold-out.
    let units: Vec<MeasuredUnit> =
        (0..230).map(|bar| unit(2700, if [55, 218].contains(&bar) { 9000 } else { 0 })).collect();
    let fold = PaperRoom { fold: FoldOuts::ForTurns, ..room() };
    let found = chosen(&units, &fold, Rushed::Priced).expect("a way");
    let first = |side| found.systems.iter().find(|system| system.side == side).map(|system| system.page);
    assert_eq!((first(BookletSide::Right), first(BookletSide::FoldOut)), (Some(0), Some(3)), "{found:?}");
    let without = chosen(&units, &room(), Rushed::Priced).expect("a way");
    assert!(found.cost < without.cost);
}

#[test]
fn where_turns_are_to_be_fewest_pages_are_as_empty_as_that_takes() {
    // A rest after every thirty bars: half a page.
    let units: Vec<MeasuredUnit> =
        (0..230).map(|bar| unit(2700, if bar % 30 == 0 { 3000 } else { 2999 })).collect();
    let quick = |found: &Chosen| {
        let turned = found
            .systems
            .windows(2)
            .filter(|pair| pair[0].page != pair[1].page && pair[0].side.is_turned(pair[1].side));
        turned.filter(|pair| units[pair[1].first].turn.is_rushed(room().turn)).count()
    };
    let fewest = chosen(&units, &room(), Rushed::Fewest).expect("a way");
    assert_eq!(quick(&fewest), 0);
    let priced = chosen(&units, &room(), Rushed::Priced).expect("a way");
    assert!(priced.cost <= fewest.cost);
    // Where no turn has time there is one at each end of a right page still.
    let units: Vec<MeasuredUnit> = (0..110).map(|_| unit(2700, 0)).collect();
    let found = chosen(&units, &room(), Rushed::Fewest).expect("a way");
    assert!(found.cost > costs::ANY_RUSHED && pages(&found.systems).len() > 1);
}

/// The cost of lines on pages, counted from the words of the costs and nothing else: each page with its lines, and
/// how it is come to. None where it does not fit.
fn cost_of(way: &[(Opens, Vec<PossibleLine>)], units: &[MeasuredUnit], room: &PaperRoom) -> Option<i64> {
    let mut cost = 0;
    let mut side = room.first;
    for (number, (opens, lines)) in way.iter().enumerate() {
        if number > 0 {
            let time = units[lines[0].first].turn;
            cost += costs::PAGE;
            if *opens == Opens::FoldOut {
                if side != BookletSide::Right || room.fold == FoldOuts::Never {
                    return None;
                }
                cost += costs::FOLD;
                side = BookletSide::FoldOut;
            } else if side == BookletSide::Left {
                if *opens == Opens::AfterBlank {
                    return None;
                }
                side = BookletSide::Right;
            } else {
                cost += room.turn_cost(time);
                side = BookletSide::Left;
                if *opens == Opens::AfterBlank {
                    if room.blank == Blank::Never {
                        return None;
                    }
                    cost += costs::PAGE + costs::BLANK;
                    side = BookletSide::Right;
                }
            }
        }
        let (height, most) =
            if number == 0 { (room.first_height, room.systems_first) } else { (room.height, room.systems) };
        let outlines = Outlines { units, room };
        let apart =
            lines.windows(2).map(|pair| outlines.distance(&pair[0], &pair[1]) + room.staff).sum::<i64>();
        let (first, last) = (&lines[0], &lines[lines.len() - 1]);
        let used = first.above + room.staff + apart + last.below;
        if lines.len() > 1 && used > height || lines.len() > most {
            return None;
        }
        let new_page = |line: &PossibleLine| {
            line.is_movement() && room.movements == MovementPages::NewPage
                || line.first > 0 && units[line.first].asked == AskedStart::Page
        };
        let wanted = |line: &PossibleLine| {
            let inside = &units[line.first + 1..line.end];
            inside.iter().all(|unit| unit.asked == AskedStart::Nothing)
        };
        if !lines.iter().all(wanted) {
            return None;
        }
        if lines[1..].iter().any(new_page) {
            return None;
        }
        cost += lines.iter().map(|line| line.cost).sum::<i64>();
        cost += lines.windows(2).map(|pair| unequal_cost(&pair[0], &pair[1])).sum::<i64>();
        let is_last = number + 1 == way.len();
        let missing = most.saturating_sub(2).saturating_sub(lines.len()) as i64;
        let half = (most / 2).saturating_sub(lines.len()) as i64;
        let ends_half = is_last || new_page(&way[number + 1].1[0]);
        if !(is_last && number == 0) {
            cost +=
                if ends_half { costs::EMPTY_LAST * half * half } else { costs::EMPTY * missing * missing };
            if lines.len() == 1 && 2 * used < height {
                cost += costs::ALONE;
            }
            if lines.len() > 1 && last.is_movement() && last.stretch.is_some() {
                cost += costs::LONELY_HEADING;
            }
        }
    }
    Some(cost)
}

/// How a page is come to.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Opens {
    Next,
    AfterBlank,
    FoldOut,
}

/// Every way to put lines on pages.
fn every_way(
    lines: &PossibleLines,
    at: usize,
    end: usize,
    way: &mut Vec<(Opens, Vec<PossibleLine>)>,
    each: &mut impl FnMut(&[(Opens, Vec<PossibleLine>)]),
) {
    if at == end {
        return each(way);
    }
    for line in lines.lines.iter().filter(|line| line.first == at) {
        if let Some(page) = way.len().checked_sub(1) {
            way[page].1.push(*line);
            every_way(lines, line.end, end, way, each);
            way[page].1.pop();
        }
        for opens in [Opens::Next, Opens::AfterBlank, Opens::FoldOut] {
            if way.is_empty() && opens != Opens::Next {
                continue;
            }
            way.push((opens, vec![*line]));
            every_way(lines, line.end, end, way, each);
            way.pop();
        }
    }
}

#[test]
fn nothing_is_cheaper_than_what_is_chosen() {
    let mut random = Random::new(1701);
    let mut several_pages = 0;
    for _ in 0..400 {
        let count = 3 + random.below(4);
        let units: Vec<MeasuredUnit> = (0..count)
            .map(|index| MeasuredUnit {
                width: 3000 + 100 * random.below(80) as i64,
                front: 600,
                above: 100 * random.below(12) as i64,
                below: 100 * random.below(12) as i64,
                turn: TurnTime {
                    back: random.chance(20).then(|| RealTime::from_micros(500_000 * random.below(8) as i64)),
                    ..rest(500 * random.below(9) as i64)
                },
                opens: (index == 0 || random.chance(15))
                    .then_some(MovementOpening { indent: 1500, heading: 800 }),
                asked: match random.below(8) {
                    0 => AskedStart::Page,
                    1 => AskedStart::Line,
                    _ => AskedStart::Nothing,
                },
            })
            .collect();
        let room = PaperRoom {
            // Small pages, so that a few lines fill several.
            first_height: 2500 + 500 * random.below(6) as i64,
            height: 3500 + 500 * random.below(6) as i64,
            between: 150,
            systems_first: 1 + random.below(5),
            systems: 1 + random.below(5),
            first: *random.pick(&[BookletSide::Left, BookletSide::Right]),
            blank: *random.pick(&[Blank::Never, Blank::LeftPages]),
            fold: *random.pick(&[FoldOuts::Never, FoldOuts::ForTurns]),
            movements: *random.pick(&[MovementPages::Anywhere, MovementPages::NewPage]),
            ..room()
        };
        let lines = PossibleLines::of(&units, &room);
        let mut least: Option<i64> = None;
        every_way(&lines, 0, units.len(), &mut Vec::new(), &mut |way| {
            if let Some(cost) = cost_of(way, &units, &room) {
                least = Some(least.map_or(cost, |least| least.min(cost)));
            }
        });
        let found = chosen(&units, &room, Rushed::Priced);
        assert_eq!(found.as_ref().map(|found| found.cost), least, "{units:?} {room:?}");
        several_pages += usize::from(found.is_some_and(|found| pages(&found.systems).len() > 2));
    }
    assert!(several_pages > 100, "{several_pages}");
}
