//! Hairpins and cresc. or dim. in words, and the dashes that draw them out.

use arcata_xml::Element;

use super::problems::{Problems, Where};
use crate::{Niente, Part, Place, ProblemKind, Swell, SwellKind, SwellWriting};

/// Something about a swell, in document order.
#[derive(Clone, Copy, Debug)]
pub(super) struct SwellMark {
    pub(super) place: Place,
    pub(super) number: u8,
    pub(super) sign: SwellSign,
}

/// What a mark says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum SwellSign {
    /// A hairpin opens.
    Opens(SwellKind, Niente),
    /// A hairpin ends.
    Closes(Niente),
    /// cresc., dim. and their like.
    Word(SwellKind),
    /// Dashes begin.
    DashesBegin,
    /// Dashes end.
    DashesEnd,
}

impl SwellMark {
    /// Reads a `<wedge>`; nothing where it only shapes the drawing.
    pub(super) fn wedge(element: Element<'_>, place: Place) -> Option<Self> {
        let niente = match element.attribute("niente").as_deref() {
            Some("yes") => Niente::Circle,
            _ => Niente::No,
        };
        let sign = match element.attribute("type").as_deref() {
            Some("crescendo") => SwellSign::Opens(SwellKind::Growing, niente),
            Some("diminuendo") => SwellSign::Opens(SwellKind::Fading, niente),
            Some("stop") => SwellSign::Closes(niente),
            _ => return None,
        };
        Some(Self { place, number: number(element), sign })
    }

    /// Reads `<dashes>`.
    pub(super) fn dashes(element: Element<'_>, place: Place) -> Option<Self> {
        let sign = match element.attribute("type").as_deref() {
            Some("start") => SwellSign::DashesBegin,
            Some("stop") => SwellSign::DashesEnd,
            _ => return None,
        };
        Some(Self { place, number: number(element), sign })
    }
}

fn number(element: Element<'_>) -> u8 {
    element.attribute("number").and_then(|number| number.trim().parse().ok()).unwrap_or(1)
}

/// More swells of one sort than this are not open at once in music, and would be slow.
const MOST_OPEN: usize = 32;

/// Something that waits for its end.
#[derive(Clone, Copy)]
struct Open {
    mark: SwellMark,
    /// The swell it belongs to; dashes may belong to none (they may draw out a rit.).
    swell: Option<usize>,
}

/// Joins the swells of a part whose marks have their absolute moments.
pub(super) fn join(part: &mut Part, index: u32, marks: &[SwellMark], problems: &mut Problems) {
    let (mut wedges, mut dashes): (Vec<Open>, Vec<Open>) = (Vec::new(), Vec::new());
    let swells = &mut part.swells;
    for mark in marks {
        match mark.sign {
            SwellSign::Opens(kind, niente) => {
                close_reused(&mut wedges, mark, index, problems);
                wedges.push(Open { mark: *mark, swell: Some(swells.len()) });
                swells.push(new_swell(mark.place, kind, SwellWriting::Hairpin, niente));
            }
            SwellSign::Closes(niente) => match take(&mut wedges, mark).and_then(|open| open.swell) {
                Some(swell) => {
                    swells[swell].end = Some(mark.place.at);
                    if niente == Niente::Circle {
                        swells[swell].niente = niente;
                    }
                }
                None => add(problems, mark, index, "A hairpin ends here that never began."),
            },
            SwellSign::Word(kind) => {
                swells.push(new_swell(mark.place, kind, SwellWriting::Word, Niente::No));
            }
            SwellSign::DashesBegin => {
                close_reused(&mut dashes, mark, index, problems);
                let word = swells.iter().rposition(|swell| {
                    swell.written == SwellWriting::Word
                        && swell.place.at == mark.place.at
                        && swell.place.staff == mark.place.staff
                });
                // Only the words just written can be meant.
                let word = word.filter(|word| word + MOST_OPEN > swells.len());
                dashes.push(Open { mark: *mark, swell: word });
            }
            SwellSign::DashesEnd => match take(&mut dashes, mark) {
                Some(Open { swell: Some(swell), .. }) => swells[swell].end = Some(mark.place.at),
                Some(_) => {}
                None => add(problems, mark, index, "Dashes end here that never began."),
            },
        }
    }
    for open in wedges {
        add(problems, &open.mark, index, "A hairpin begins here and never ends.");
    }
    for open in dashes {
        add(problems, &open.mark, index, "Dashes begin here and never end.");
    }
    swells.sort_by_key(|swell| swell.place.at);
}

fn new_swell(place: Place, kind: SwellKind, written: SwellWriting, niente: Niente) -> Swell {
    Swell { place, end: None, kind, written, niente }
}

/// The open mark that a closing one belongs to: of its number, begun not later, of its staff if possible.
fn take(open: &mut Vec<Open>, stop: &SwellMark) -> Option<Open> {
    let fits = |open: &Open| open.mark.number == stop.number && open.mark.place.at <= stop.place.at;
    let best = (0..open.len())
        .filter(|index| fits(&open[*index]))
        .max_by_key(|index| (open[*index].mark.place.staff == stop.place.staff, *index))?;
    Some(open.remove(best))
}

/// A number that begins again on its staff before it has ended leaves the older one without an end.
fn close_reused(open: &mut Vec<Open>, mark: &SwellMark, part: u32, problems: &mut Problems) {
    let same = |open: &Open| open.mark.number == mark.number && open.mark.place.staff == mark.place.staff;
    let index = open.iter().position(same).or((open.len() >= MOST_OPEN).then_some(0));
    if let Some(index) = index {
        let older = open.remove(index);
        let what = match older.mark.sign {
            SwellSign::DashesBegin => {
                "Dashes begin here, and others of their number before these have ended."
            }
            _ => "A hairpin begins here, and another of its number before it has ended.",
        };
        add(problems, &older.mark, part, what);
    }
}

fn add(problems: &mut Problems, mark: &SwellMark, part: u32, message: &str) {
    let place = Where { node: Some(mark.place.node), part: Some(part), bar: Some(mark.place.bar) };
    problems.add(ProblemKind::Swell, place, message);
}
