//! Dots, wedges and dashes on notes, and the words about strokes that hold over them.

use arcata_score::{Articulation, Instruction, Meaning, Moment, Note, Part};
use arcata_xml::Tag;

use crate::Piece;
use crate::change::Change;

/// The elements that shorten a note.
pub(crate) const SHORT: [Tag; 3] = [Tag::STACCATO, Tag::STACCATISSIMO, Tag::SPICCATO];

/// Whether a note carries a dot, a wedge or a spiccato sign.
pub(crate) fn is_dotted(note: &Note) -> bool {
    let marks = note.articulations;
    [Articulation::Staccato, Articulation::Staccatissimo, Articulation::Spiccato]
        .into_iter()
        .any(|mark| marks.has(mark))
}

/// Takes these marks off a note; nothing where the file is not at hand.
pub(crate) fn take_marks(piece: &Piece<'_>, note: &Note, marks: &[Tag]) -> Vec<Change> {
    let Some(element) = piece.document.and_then(|document| document.element(note.node)) else {
        return Vec::new();
    };
    let notations = element.children_named(Tag::NOTATIONS);
    let signs = notations.flat_map(|notations| notations.children_named(Tag::ARTICULATIONS));
    let inside = signs.flat_map(arcata_xml::Element::children);
    inside.filter(|sign| marks.contains(&sign.tag())).map(|sign| Change::Remove(sign.id())).collect()
}

/// The words about strokes on one staff of a part, in order of time; `None` where one is taken back.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct StrokeWords {
    said: Vec<(Moment, Option<Meaning>)>,
}

impl StrokeWords {
    /// Reads them.
    pub(crate) fn new(part: &Part, staff: u8) -> Self {
        let on_staff = part.instructions.iter().filter(|said| is_for(part, said, staff));
        let said = on_staff.filter_map(|said| Some((said.place.at, effect(said.meaning)?)));
        Self { said: said.collect() }
    }

    /// The last word about strokes at or before a moment, and since when it holds.
    pub(crate) fn at(&self, moment: Moment) -> Option<(Moment, Meaning)> {
        let after = self.said.partition_point(|(from, _)| *from <= moment);
        let (from, meaning) = self.said[after.checked_sub(1)?];
        meaning.map(|meaning| (from, meaning))
    }

    /// When such a word was last said or taken back; the beginning where none was.
    pub(crate) fn last_change(&self, moment: Moment) -> Moment {
        let after = self.said.partition_point(|(from, _)| *from <= moment);
        after.checked_sub(1).map_or(Moment::START, |index| self.said[index].0)
    }
}

/// Whether words stand for a staff of a part.
pub(crate) fn is_for(part: &Part, said: &Instruction, staff: u8) -> bool {
    part.staves <= 1 || said.place.staff == 0 || said.place.staff == staff
}

/// What words do to the kind of stroke: name one, take one back, or nothing.
fn effect(meaning: Meaning) -> Option<Option<Meaning>> {
    match meaning {
        Meaning::Spiccato
        | Meaning::Sautille
        | Meaning::Thrown
        | Meaning::Martele
        | Meaning::Detache
        | Meaning::Legato
        | Meaning::StaccatoWord
        | Meaning::TenutoWord
        | Meaning::OnString
        | Meaning::OffString => Some(Some(meaning)),
        Meaning::Ordinario
        | Meaning::Arco
        | Meaning::Pizzicato
        | Meaning::ColLegno
        | Meaning::ColLegnoBattuto => Some(None),
        _ => None,
    }
}

/// A stroke's name as players say it.
pub(crate) const fn stroke_name(meaning: Meaning) -> &'static str {
    match meaning {
        Meaning::Spiccato => "spiccato",
        Meaning::Sautille => "sautille",
        Meaning::Thrown => "a-thrown-stroke",
        Meaning::Martele => "martele",
        Meaning::Detache => "detache",
        Meaning::Legato => "legato",
        Meaning::StaccatoWord => "staccato",
        Meaning::TenutoWord => "tenuto",
        Meaning::OnString => "on-the-string",
        Meaning::OffString => "off-the-string",
        _ => "another",
    }
}
