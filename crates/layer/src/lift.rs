//! Taking the marks of a score into a layer.

use std::collections::BTreeSet;

use arcata_languages::Saying;
use arcata_score::words::{WordMeaning, meanings};
use arcata_score::{Articulation, BowDirection, Meaning, NoteId, Score, SlurEnd};
use arcata_xml::{Document, EditList, Limits, NodeId, Tag};

use crate::address::NamedNote;
use crate::apply::LayerError;
use crate::identity;
use crate::markup::{MarkupPiece, node, words_before};
use crate::model::{BowPlace, Entry, Exact, Layer, Mark};
use crate::session::{LayerSession, WAYS};

/// What is to be lifted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LiftChoice {
    /// Indices of the parts; all where it is nothing.
    pub parts: Option<Vec<usize>>,
    /// Which kinds of marks.
    pub kinds: Vec<LiftKind>,
}

/// The kinds of marks that can be lifted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LiftKind {
    /// Down- and up-bows.
    Bows,
    /// Words about the bow: at the frog, whole bow, as it comes …
    Words,
    /// Breath marks, which in string parts lift the bow.
    Lifts,
    /// Slurs. Of a composer's score they are the composer's: lift them only from a copy in which the
    /// players wrote them.
    Slurs,
}

impl Default for LiftChoice {
    fn default() -> Self {
        Self { parts: None, kinds: vec![LiftKind::Bows] }
    }
}

/// A score without its marks, and the layer that holds them.
#[derive(Clone, Debug)]
pub struct Lifted {
    /// What changes in the document.
    pub edits: EditList,
    /// The marks.
    pub layer: Layer,
    /// Marks that stay where they are, and why.
    pub staying: Vec<Staying>,
}

/// A mark that cannot be lifted.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Staying {
    /// The part's name.
    pub part: String,
    /// The bar's number as printed.
    pub bar: String,
    /// Why.
    pub why: Saying,
}

/// A mark on its way into the layer.
struct Lifting {
    at: NamedNote,
    until: Option<NoteId>,
    entry: Entry,
}

/// Lifts marks off a score into a new layer.
///
/// The layer remembers how each mark stood wherever that is not how this crate writes it, so that applying
/// it gives the same bytes again.
///
/// # Errors
///
/// A document that leaves no way to take an element out.
pub fn lift(document: &Document, score: &Score, choice: &LiftChoice) -> Result<Lifted, LayerError> {
    let mut session = LayerSession::new(document, score);
    let mut staying = Vec::new();
    let mut lifting = Vec::new();
    for part in 0..score.parts.len() {
        if choice.parts.as_ref().is_none_or(|parts| parts.contains(&part)) {
            collect(&mut session, document, part, &choice.kinds, &mut lifting, &mut staying);
        }
    }
    if choice.kinds.contains(&LiftKind::Slurs) {
        staying.extend(on_unread_notes(document, score, choice));
    }
    let mut layer = Layer { parts: session.addresses.part_keys().to_vec(), ..Layer::default() };
    lifting.sort_by(|one, other| {
        (one.at.part, &one.entry.place, &one.entry.mark).cmp(&(
            other.at.part,
            &other.entry.place,
            &other.entry.mark,
        ))
    });
    // Backwards: each mark is remembered in the state in which it will be put on again.
    for mut mark in lifting.into_iter().rev() {
        match take(&mut session, &mark) {
            Some(exact) => {
                mark.entry.exact = exact;
                layer.entries.push(mark.entry);
            }
            None => staying.push(stays(score, mark.at, "stays-unlike-one-mark")),
        }
    }
    layer.entries.reverse();
    let edits = session.surgery.finish()?;
    let clean = document.apply(&edits)?;
    layer.score = identity::of(document, score);
    if let Ok(clean) = Document::parse(clean, &Limits::default()) {
        layer.score.bytes = Some(identity::bytes(&clean));
    }
    Ok(Lifted { edits, layer, staying })
}

fn stays(score: &Score, at: NamedNote, why: &'static str) -> Staying {
    let part = &score.parts[at.part];
    let bar = score.bars.get(part.note(at.note).bar as usize);
    Staying {
        part: part.name.clone(),
        bar: bar.map_or_else(String::new, |bar| bar.label.clone()),
        why: Saying::new(why),
    }
}

fn collect(
    session: &mut LayerSession<'_, '_>,
    document: &Document,
    part: usize,
    kinds: &[LiftKind],
    lifting: &mut Vec<Lifting>,
    staying: &mut Vec<Staying>,
) {
    let score = session.score();
    let notes = &score.parts[part];
    for index in 0..notes.notes.len() {
        let at = NamedNote { part, note: NoteId(u32::try_from(index).unwrap_or(u32::MAX)) };
        let (found, why) = marks_of(session, document, at, kinds);
        staying.extend(why.into_iter().map(|why| stays(score, at, why)));
        let slurs =
            notes.slurs.iter().filter(|slur| kinds.contains(&LiftKind::Slurs) && slur.start == at.note);
        // One entry for a slur that several elements write between the same two notes.
        let slurs: BTreeSet<NoteId> = slurs.map(|slur| slur.end).collect();
        if found.is_empty() && slurs.is_empty() {
            continue;
        }
        let known = session.addresses.place(part, at.note);
        let Some(place) = known.filter(|place| session.addresses.find(place) == Ok(at)) else {
            staying.push(stays(score, at, "stays-without-address"));
            continue;
        };
        for mark in found {
            lifting.push(Lifting { at, until: None, entry: Entry::new(place.clone(), mark) });
        }
        for end in slurs {
            let spot = session.addresses.spot(part, end);
            match spot
                .filter(|spot| session.addresses.find_in(part, spot) == Ok(NamedNote { part, note: end }))
            {
                Some(to) => {
                    let entry = Entry::new(place.clone(), Mark::SlurAdded { to });
                    lifting.push(Lifting { at, until: Some(end), entry });
                }
                None => staying.push(stays(score, at, "stays-slur-end-without-address")),
            }
        }
    }
    if kinds.contains(&LiftKind::Slurs) {
        staying.extend(halves_of_slurs(document, score, part));
    }
}

/// Slur elements that are no whole slur: they stay, and every one is told.
fn halves_of_slurs(document: &Document, score: &Score, part: usize) -> Vec<Staying> {
    let notes = &score.parts[part];
    let mut told: Vec<(NoteId, &'static str)> = Vec::new();
    for open in &notes.open_slurs {
        let why = match open.written {
            SlurEnd::Start => "stays-slur-never-ends",
            SlurEnd::Stop => "stays-slur-never-began",
        };
        told.push((open.note, why));
    }
    for (note, index) in notes.notes.iter().zip(0..) {
        let notations =
            document.element(note.node).into_iter().flat_map(|note| note.children_named(Tag::NOTATIONS));
        let slurs = notations.flat_map(|notations| notations.children_named(Tag::SLUR));
        let middles =
            slurs.filter(|slur| !matches!(slur.attribute("type").as_deref(), Some("start" | "stop")));
        told.extend(middles.map(|_| (NoteId(index), "stays-slur-middle")));
    }
    told.sort_by_key(|(note, _)| *note);
    told.into_iter().map(|(note, why)| stays(score, NamedNote { part, note }, why)).collect()
}

/// Slur elements on notes that the score does not read, such as hidden grace notes by which a slur reaches into an ending.
fn on_unread_notes(document: &Document, score: &Score, choice: &LiftChoice) -> Vec<Staying> {
    let read: BTreeSet<NodeId> =
        score.parts.iter().flat_map(|part| part.notes.iter().map(|note| note.node)).collect();
    let mut told = Vec::new();
    for slur in document.elements().filter(|element| element.tag() == Tag::SLUR) {
        let around = || std::iter::successors(slur.parent(), |element| element.parent());
        if around().any(|element| read.contains(&element.id())) {
            continue;
        }
        let named = |tag: Tag, attribute: &str| {
            let element = around().find(|element| element.tag() == tag);
            element.and_then(|element| element.attribute(attribute)).unwrap_or_default().into_owned()
        };
        let id = named(Tag::PART, "id");
        let part = score.parts.iter().position(|part| part.id == id);
        if part.is_some_and(|part| choice.parts.as_ref().is_some_and(|chosen| !chosen.contains(&part))) {
            continue;
        }
        told.push(Staying {
            part: part.map_or(id, |part| score.parts[part].name.clone()),
            bar: named(Tag::MEASURE, "number"),
            why: Saying::new("stays-slur-on-hidden-note"),
        });
    }
    told
}

/// The marks on a note that can be lifted, and why others cannot.
fn marks_of(
    session: &mut LayerSession<'_, '_>,
    document: &Document,
    at: NamedNote,
    kinds: &[LiftKind],
) -> (Vec<Mark>, Vec<&'static str>) {
    let score = session.score();
    let note = score.parts[at.part].note(at.note);
    let (mut marks, mut why) = (Vec::new(), Vec::new());
    if kinds.contains(&LiftKind::Bows) && note.bow_mark.is_some() {
        let ways: Vec<BowDirection> =
            note.bow_mark.iter().chain(&note.more_bow_marks).map(|mark| mark.direction).collect();
        match ways.as_slice() {
            [only] => marks.push(Mark::of(*only)),
            [first, second] if first != second => marks.push(Mark::Double { first: *first }),
            _ => why.push("stays-bow-mark-twice"),
        }
    }
    if kinds.contains(&LiftKind::Lifts) && note.articulations.has(Articulation::Breath) {
        marks.push(Mark::Lift);
    }
    if kinds.contains(&LiftKind::Words)
        && let Some(element) = document.element(node(score, at.part, at.note))
    {
        let words = words_before(element);
        for text in words.iter().filter(|text| is_about_the_bow(text)) {
            if words.iter().filter(|other| *other == text).count() > 1 {
                why.push("stays-words-twice");
                continue;
            }
            let place = BowPlace::ALL.into_iter().find(|place| place.words() == text);
            marks
                .push(place.map_or_else(|| Mark::Text { text: text.clone() }, |place| Mark::InBow { place }));
        }
    }
    (marks, why)
}

fn is_about_the_bow(text: &str) -> bool {
    meanings(text).iter().any(|meaning| {
        let WordMeaning::Instruction(meaning) = meaning else { return false };
        matches!(
            meaning,
            Meaning::AtFrog
                | Meaning::AtTip
                | Meaning::MiddleOfBow
                | Meaning::WholeBow
                | Meaning::FreeBowing
                | Meaning::AllDownBows
                | Meaning::AllUpBows
                | Meaning::AsItComes
        )
    }) || BowPlace::ALL.iter().any(|place| place.words() == text)
}

/// Takes one mark off; what has to be remembered of it.
fn take(session: &mut LayerSession<'_, '_>, mark: &Lifting) -> Option<Vec<Exact>> {
    if let Some(until) = mark.until {
        return take_slur(session, mark.at, until);
    }
    if let Mark::Double { first } = mark.entry.mark {
        return take_double(session, mark.at, first);
    }
    let piece = match &mark.entry.mark {
        Mark::Down => MarkupPiece::Bow(WAYS[0]),
        Mark::Up => MarkupPiece::Bow(WAYS[1]),
        Mark::Lift => MarkupPiece::BreathMark,
        Mark::InBow { place } => MarkupPiece::Words(place.words().to_owned()),
        Mark::Text { text } => MarkupPiece::Words(text.clone()),
        _ => return None,
    };
    let note = node(session.score(), mark.at.part, mark.at.note);
    let exact = session.surgery.take(note, &piece, None)?;
    if session.surgery.has(note, &piece) {
        session.surgery.put(note, &piece, Some(&exact));
        return None;
    }
    let plain = session.surgery.is_plain(note, &piece, &exact);
    Some(if plain { Vec::new() } else { vec![exact] })
}

/// Takes both bows off, the second one first.
fn take_double(session: &mut LayerSession<'_, '_>, at: NamedNote, first: BowDirection) -> Option<Vec<Exact>> {
    let note = node(session.score(), at.part, at.note);
    let (first, second) = (MarkupPiece::Bow(first), MarkupPiece::Bow(first.other()));
    let last_exact = session.surgery.take(note, &second, None)?;
    let is_last_plain = session.surgery.is_plain(note, &second, &last_exact);
    let Some(exact) = session.surgery.take(note, &first, None) else {
        session.surgery.put(note, &second, Some(&last_exact));
        return None;
    };
    let is_plain = is_last_plain && session.surgery.is_plain(note, &first, &exact);
    Some(if is_plain { Vec::new() } else { vec![exact, last_exact] })
}

/// Takes a slur off, and every other between the same two notes; the pairs of their ends in the order in which they go on.
fn take_slur(session: &mut LayerSession<'_, '_>, at: NamedNote, until: NoteId) -> Option<Vec<Exact>> {
    let slur = session.slurs(at.part).between(at.note, until)?;
    let exact = session.take_slur(at.part, slur, &[])?;
    let mut pairs = vec![exact];
    while let Some(other) = session.slurs(at.part).between(at.note, until) {
        let Some(exact) = session.take_slur(at.part, other, &[]) else {
            for exact in pairs.iter().rev() {
                session.put_slur(at.part, at.note, until, exact);
            }
            return None;
        };
        pairs.push(exact);
    }
    let [exact] = pairs.as_slice() else { return Some(pairs.into_iter().rev().flatten().collect()) };
    let number = session.slurs(at.part).free_number(at.note, until);
    let score = session.score();
    // One that ends in the file before it begins is never written anew, only put back.
    let notes = &score.parts[at.part];
    let plain = notes.note(at.note).node < notes.note(until).node
        && number == Some(slur.number)
        && session.surgery.is_plain(
            node(score, at.part, at.note),
            &MarkupPiece::SlurStart(slur.number),
            &exact[0],
        )
        && session.surgery.is_plain(
            node(score, at.part, until),
            &MarkupPiece::SlurStop(slur.number),
            &exact[1],
        );
    Some(if plain { Vec::new() } else { exact.to_vec() })
}
