//! Where movements begin.
//!
//! A file of several movements says so in more than one way, and none of them alone is proof: numbers begin
//! anew at a movement, but a trio may be numbered anew too; a final barline ends a movement, but also a minuet
//! before its trio; a Roman numeral is a heading, but also a string. So a movement begins where
//! - the printed numbers begin anew with 0 or 1, or go back behind a final barline;
//! - a heading with a number stands behind a final barline or at the top of a page;
//! - behind a final barline a new page opens with a tempo of its own;
//!
//! and never where the heading names a part of a movement (a trio, a variation), or where a da capo further on leads
//! back over a "Fine" right before (common practice in minuets and marches).

use std::ops::RangeInclusive;

use crate::words::{Heading, heading, roman};
use crate::{Bar, BarlineStyle, Jump, Movement};

/// What is printed where a bar begins, besides what [`Bar`] keeps.
#[derive(Clone, Debug, Default)]
pub(super) struct BarOpening {
    /// Headings, in the order of the parts.
    pub(super) headings: Vec<String>,
    /// Whether the bar opens a page or a line.
    pub(super) layout: BarLayout,
    /// Whether a tempo is written at its beginning.
    pub(super) tempo: BarTempo,
}

/// Where on the page a bar stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum BarLayout {
    /// Behind the one before, as far as the file says.
    #[default]
    GoesOn,
    /// It opens a page.
    NewPage,
}

/// Whether a bar has a tempo of its own.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) enum BarTempo {
    /// None.
    #[default]
    GoesOn,
    /// A tempo mark or word.
    Written,
}

/// How sure it is that a movement begins.
#[derive(Clone, Copy, PartialEq, Eq)]
enum MovementBegins {
    No,
    /// Unless a da capo leads back over it.
    Perhaps,
    Yes,
}

/// The movements of a file, in order; one for a file without any sign of several.
pub(super) fn movements(bars: &[Bar], openings: &[BarOpening]) -> Vec<Movement> {
    let mut numbers = Numbers::default();
    let mut starts: Vec<(usize, MovementBegins)> = Vec::new();
    for index in 0..bars.len() {
        let anew = numbers.next(bars, index);
        let begins = if index == 0 { MovementBegins::Yes } else { begins(bars, openings, index, anew) };
        if begins != MovementBegins::No {
            starts.push((index, begins));
        }
    }
    let mut kept: Vec<usize> = Vec::new();
    for (at, (start, begins)) in starts.iter().enumerate() {
        let next = starts[at + 1..].iter().find(|(_, begins)| *begins == MovementBegins::Yes);
        let section = &bars[*start..next.map_or(bars.len(), |(next, _)| *next)];
        let sent_back = section.iter().any(|bar| bar.jumps.contains(&Jump::DaCapo));
        if *begins == MovementBegins::Yes || !sent_back {
            kept.push(*start);
        }
    }
    let ends = kept.iter().skip(1).copied().chain([bars.len()]);
    let ranges = kept.iter().zip(ends).filter_map(|(start, end)| {
        Some(u32::try_from(*start).ok()?..=u32::try_from(end.checked_sub(1)?).ok()?)
    });
    named(ranges.collect(), openings)
}

fn named(ranges: Vec<RangeInclusive<u32>>, openings: &[BarOpening]) -> Vec<Movement> {
    let mut named = Vec::with_capacity(ranges.len());
    for (index, bars) in ranges.into_iter().enumerate() {
        let printed = openings.get(*bars.start() as usize).map_or(&[][..], |opening| &opening.headings);
        let headed = printed.iter().find_map(|text| match heading(text)? {
            Heading::Movement { number, text } => Some((number, text)),
            Heading::Within => None,
        });
        let (number, heading) = match headed {
            Some((number, text)) => (number, Some(text)),
            None => (roman(index + 1), None),
        };
        named.push(Movement { bars, number, heading });
    }
    // Two movements of one number cannot be told apart by it: then their places in the file count.
    let doubled = (1..named.len()).any(|at| named[..at].iter().any(|one| one.number == named[at].number));
    if doubled {
        for (index, movement) in named.iter_mut().enumerate() {
            movement.number = roman(index + 1);
        }
    }
    named
}

fn begins(bars: &[Bar], openings: &[BarOpening], index: usize, anew: Anew) -> MovementBegins {
    let before = &bars[index - 1];
    let opening = openings.get(index);
    let heading_here =
        opening.into_iter().flat_map(|opening| &opening.headings).find_map(|text| heading(text));
    let is_final = before.right.style == BarlineStyle::Final;
    let new_page = opening.is_some_and(|opening| opening.layout == BarLayout::NewPage);
    let tempo = opening.is_some_and(|opening| opening.tempo == BarTempo::Written);
    // A repeat sign at the end of a movement is drawn in place of the final barline; a double one leads on at once.
    // A numeral behind any other barline is a string, or a player.
    let parted = before.right.repeat.is_some() || before.right.style == BarlineStyle::Double;
    let ended = is_final || parted && new_page;
    match (heading_here, anew) {
        (Some(Heading::Within), _) => MovementBegins::No,
        (Some(Heading::Movement { .. }), Anew::Begins | Anew::GoesBack) => MovementBegins::Yes,
        (Some(Heading::Movement { .. }), Anew::GoesOn) if ended => MovementBegins::Yes,
        (_, Anew::Begins) if before.jumps.contains(&Jump::Fine) => MovementBegins::Perhaps,
        (_, Anew::Begins) => MovementBegins::Yes,
        (_, Anew::GoesBack) if is_final => MovementBegins::Yes,
        (_, Anew::GoesOn) if is_final && new_page && tempo => MovementBegins::Perhaps,
        _ => MovementBegins::No,
    }
}

/// What no sign leads across: the beginnings of all movements but the first.
#[derive(Clone, Copy)]
pub(super) struct Ends<'a>(pub(super) &'a [u32]);

impl Ends<'_> {
    /// How many movements have ended before a bar.
    pub(super) fn before(self, bar: u32) -> usize {
        self.0.partition_point(|start| *start <= bar)
    }

    /// Whether a movement begins behind one bar and not behind another.
    pub(super) fn between(self, before: u32, bar: u32) -> bool {
        self.before(before) < self.before(bar)
    }
}

/// How a bar's number follows those before it.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Anew {
    GoesOn,
    /// It is lower than the last one.
    GoesBack,
    /// Counting begins again with 0 or 1.
    Begins,
}

/// The printed numbers up to a bar.
#[derive(Default)]
struct Numbers {
    last: Option<i64>,
}

impl Numbers {
    fn next(&mut self, bars: &[Bar], index: usize) -> Anew {
        let number = |bar: &Bar| bar.label.parse::<i64>().ok();
        // Split bars and second endings have labels that are no numbers: they count for nothing.
        let Some(now) = number(&bars[index]) else { return Anew::GoesOn };
        let Some(last) = self.last.replace(now) else { return Anew::GoesOn };
        if now >= last {
            return Anew::GoesOn;
        }
        // Some files number every bar that is not counted with 0: then the count goes on behind it.
        let counted = bars[index..].iter().skip(1).find_map(number).unwrap_or(now + 1);
        if now <= 1 && counted <= 2 { Anew::Begins } else { Anew::GoesBack }
    }
}
