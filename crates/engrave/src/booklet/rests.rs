//! Rests over several bars, and the bars that are engraved as one.

use arcata_score::{Fermata, Part, Score};
use arcata_xml::Tag;

use super::part::{BarCopy, PartCopy};
use super::{AskedStart, AskedStarts};

/// Bars that are engraved as one: a single bar, or a rest over several.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct BarUnit {
    pub(super) first: u32,
    pub(super) last: u32,
}

/// The bars of a part, rests of at least `shortest` bars taken together. A rest ends before and after
/// everything that a player must see: a sign, a new metre or key, a bar line that is more than a line; and where somebody wants a
/// line or a page to begin.
pub(super) fn units(
    (score, part): (&Score, &Part),
    copy: &PartCopy,
    shortest: i64,
    asked: &AskedStarts,
) -> Vec<BarUnit> {
    let mut units: Vec<BarUnit> = Vec::new();
    let mut run: Option<BarUnit> = None;
    let end = |run: &mut Option<BarUnit>, units: &mut Vec<BarUnit>| {
        let Some(run) = run.take() else { return };
        if i64::from(run.last - run.first) + 1 >= shortest {
            units.push(run);
        } else {
            units.extend((run.first..=run.last).map(|bar| BarUnit { first: bar, last: bar }));
        }
    };
    for (number, bar) in (0_u32..).zip(&copy.bars) {
        let is_rest = part.staves <= 1 && is_silent(score, part, number) && bar.is_plain() && !bar.is_cued;
        if !is_rest || bar.says_something() || asked.at(number) != AskedStart::Nothing {
            end(&mut run, &mut units);
        }
        if is_rest {
            match &mut run {
                Some(run) => run.last = number,
                None => run = Some(BarUnit { first: number, last: number }),
            }
            if bar.ends_something() {
                end(&mut run, &mut units);
            }
        } else {
            units.push(BarUnit { first: number, last: number });
        }
    }
    end(&mut run, &mut units);
    units
}

/// Whether nothing sounds in a bar and no swell goes on over it.
pub(super) fn is_silent(score: &Score, part: &Part, number: u32) -> bool {
    let first = part.notes.partition_point(|note| note.bar < number);
    let here = part.notes[first..].iter().take_while(|note| note.bar == number);
    let silent = here.clone().all(|note| note.pitch.is_rest() && note.fermata == Fermata::None);
    let Some(bar) = score.bars.get(number as usize) else { return silent };
    let swells = part.swells.iter().filter(|swell| swell.place.at < bar.start + bar.length);
    let under_way = swells.filter_map(|swell| swell.end).any(|end| end > bar.start);
    silent && !under_way
}

impl BarCopy {
    /// Whether it holds nothing but rests, and signs at its very beginning or end.
    pub(super) fn is_plain(&self) -> bool {
        let is_known = |tag| {
            matches!(
                tag,
                Tag::NOTE
                    | Tag::BACKUP
                    | Tag::FORWARD
                    | Tag::ATTRIBUTES
                    | Tag::BARLINE
                    | Tag::DIRECTION
                    | Tag::SOUND
            )
        };
        let starts = |tag| matches!(tag, Tag::DIRECTION | Tag::ATTRIBUTES);
        let mut music = false;
        self.children.iter().all(|child| {
            music |= child.tag == Tag::NOTE;
            let late = starts(child.tag) && (music || child.source.contains("<offset"));
            is_known(child.tag)
                && !late
                && !child.source.contains(r#"location="middle""#)
                && !child.source.contains("<fermata")
        })
    }

    /// Whether something stands at its beginning that a player must see.
    fn says_something(&self) -> bool {
        self.children.iter().any(|child| match child.tag {
            Tag::DIRECTION | Tag::ATTRIBUTES => true,
            Tag::BARLINE => child.source.contains(r#"location="left""#),
            _ => false,
        })
    }

    /// Whether its right bar line is more than a line.
    fn ends_something(&self) -> bool {
        self.children
            .iter()
            .any(|child| child.tag == Tag::BARLINE && !child.source.contains(r#"location="left""#))
    }
}
