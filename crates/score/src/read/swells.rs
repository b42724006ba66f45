//! Hairpins and cresc. or dim. in words, and the dashes that draw them out.

use arcata_xml::Element;

use super::movements::Ends;
use super::problems::{ProblemPlace, Problems};
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

/// More swells of one sort than this are not open at once in music, and would be slow (a limit).
const MOST_OPEN: usize = 32;

/// Something that waits for its end.
#[derive(Clone, Copy)]
struct OpenSwell {
    mark: SwellMark,
    /// The swell it belongs to; dashes may belong to none (they may draw out a rit.).
    swell: Option<usize>,
}

/// Hairpins, or dashes, and what they lack so far.
struct Pairs {
    what: &'static str,
    open: Vec<OpenSwell>,
    /// Ends that found no beginning before them: a `<backup>` may bring them first.
    early: Vec<SwellMark>,
}

/// Joins the swells of a part whose marks have their absolute moments.
pub(super) fn join(
    part: &mut Part,
    (index, ends): (u32, Ends<'_>),
    marks: &[SwellMark],
    problems: &mut Problems,
) {
    let mut wedges = Pairs { what: "hairpin", open: Vec::new(), early: Vec::new() };
    let mut dashes = Pairs { what: "line of dashes", open: Vec::new(), early: Vec::new() };
    let mut report = |mark: &SwellMark, message: String| {
        let place =
            ProblemPlace { node: Some(mark.place.node), part: Some(index), bar: Some(mark.place.bar) };
        problems.add(ProblemKind::Swell, place, message);
    };
    let swells = &mut part.swells;
    let mut bar = 0;
    for mark in marks {
        if ends.between(bar, mark.place.bar) {
            [&mut wedges, &mut dashes].into_iter().for_each(|pairs| pairs.leave(&mut report));
        }
        bar = mark.place.bar;
        match mark.sign {
            SwellSign::Opens(kind, niente) => {
                swells.push(new_swell(mark.place, kind, SwellWriting::Hairpin, niente));
                wedges.open(*mark, Some(swells.len() - 1), swells, &mut report);
            }
            SwellSign::Closes(_) => wedges.close(*mark, swells, &mut report),
            SwellSign::Word(kind) => {
                swells.push(new_swell(mark.place, kind, SwellWriting::Word, Niente::No));
            }
            SwellSign::DashesBegin => {
                let word = word_at(swells, &mark.place);
                dashes.open(*mark, word, swells, &mut report);
            }
            SwellSign::DashesEnd => dashes.close(*mark, swells, &mut report),
        }
    }
    wedges.leave(&mut report);
    dashes.leave(&mut report);
    swells.sort_by_key(|swell| swell.place.at);
}

/// The words that dashes at a place draw out: just written, at the same moment, for the same staff.
fn word_at(swells: &[Swell], place: &Place) -> Option<usize> {
    let first = swells.len().saturating_sub(MOST_OPEN);
    let word = swells[first..].iter().rposition(|swell| {
        swell.written == SwellWriting::Word && swell.place.at == place.at && swell.place.staff == place.staff
    });
    word.map(|index| first + index)
}

impl Pairs {
    fn open(
        &mut self,
        mark: SwellMark,
        swell: Option<usize>,
        swells: &mut [Swell],
        report: &mut impl FnMut(&SwellMark, String),
    ) {
        let same_staff = |other: &SwellMark| other.place.staff == mark.place.staff;
        let fits = |stop: &SwellMark| stop.number == mark.number && stop.place.at >= mark.place.at;
        let early = (0..self.early.len())
            .filter(|index| fits(&self.early[*index]))
            .max_by_key(|index| (same_staff(&self.early[*index]), *index));
        if let Some(index) = early {
            let stop = self.early.remove(index);
            end(swell, &stop, swells);
            return;
        }
        let reused =
            self.open.iter().position(|open| open.mark.number == mark.number && same_staff(&open.mark));
        // A number that begins again before it has ended leaves the older one without an end.
        if let Some(index) = reused.or((self.open.len() >= MOST_OPEN).then_some(0)) {
            let older = self.open.remove(index);
            report(&older.mark, format!("A {} begins here and never ends.", self.what));
        }
        self.open.push(OpenSwell { mark, swell });
    }

    fn close(&mut self, stop: SwellMark, swells: &mut [Swell], report: &mut impl FnMut(&SwellMark, String)) {
        match self.start_of(&stop) {
            Some(index) => end(self.open.remove(index).swell, &stop, swells),
            None => {
                self.early.push(stop);
                if self.early.len() > MOST_OPEN {
                    let oldest = self.early.remove(0);
                    self.report_early(&oldest, report);
                }
            }
        }
    }

    /// The open mark that an end belongs to: of its number, begun not later, of its staff if possible.
    fn start_of(&self, stop: &SwellMark) -> Option<usize> {
        let fits = |open: &OpenSwell| open.mark.number == stop.number && open.mark.place.at <= stop.place.at;
        (0..self.open.len())
            .filter(|index| fits(&self.open[*index]))
            .max_by_key(|index| (self.open[*index].mark.place.staff == stop.place.staff, *index))
    }

    fn report_early(&self, stop: &SwellMark, report: &mut impl FnMut(&SwellMark, String)) {
        report(stop, format!("A {} ends here that never began.", self.what));
    }

    /// Nothing that waits here leads on.
    fn leave(&mut self, report: &mut impl FnMut(&SwellMark, String)) {
        self.early.iter().for_each(|stop| self.report_early(stop, report));
        for open in &self.open {
            report(&open.mark, format!("A {} begins here and never ends.", self.what));
        }
        self.early.clear();
        self.open.clear();
    }
}

fn end(swell: Option<usize>, stop: &SwellMark, swells: &mut [Swell]) {
    let Some(swell) = swell.and_then(|index| swells.get_mut(index)) else { return };
    swell.end = Some(stop.place.at);
    if stop.sign == SwellSign::Closes(Niente::Circle) {
        swell.niente = Niente::Circle;
    }
}

fn new_swell(place: Place, kind: SwellKind, written: SwellWriting, niente: Niente) -> Swell {
    Swell { place, end: None, kind, written, niente }
}
