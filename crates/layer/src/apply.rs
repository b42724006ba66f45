//! Putting a layer onto a score.

use std::collections::BTreeMap;
use std::fmt;

use arcata_score::{ChordRole, NoteId, Part, Score};
use arcata_xml::{Document, EditError, EditList};

use crate::address::Found;
use crate::identity::{self, Kinship};
use crate::markup::Piece;
use crate::model::{Entry, Layer, Mark, Question, State, Taken, TakenKind};
use crate::put_bows::{Known, asked, put_bow, put_double};
use crate::session::Session;
use crate::told::ToldBows;

/// Whether a layer may go onto a score that it does not name.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Trust {
    /// Only onto its own score, whatever marks stand there.
    #[default]
    OwnScore,
    /// Onto any score: what finds its note is written.
    AnyScore,
}

/// A score with a layer on it.
#[derive(Clone, Debug)]
pub struct Applied {
    /// What changes in the document.
    pub edits: EditList,
    /// The layer with what it now knows of the score: what printed marks it took off, what stood there
    /// already. Keep it: without it a wipe cannot tell the layer's marks from the composer's.
    pub layer: Layer,
    /// Entries whose marks were written.
    pub written: usize,
    /// Entries whose marks stood there already.
    pub standing: usize,
    /// Entries that were not applied, and why.
    pub left_out: Vec<LeftOut>,
}

/// An entry that was passed over.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// The entry.
    pub entry: Entry,
    /// Why, as the end of a sentence that begins with its place.
    pub why: String,
}

impl fmt::Display for LeftOut {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}, {}: {}", self.entry.place, self.entry.mark.words(), self.why)
    }
}

/// Why a layer cannot be put onto a score, lifted off it or wiped from it.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum LayerError {
    /// The layer belongs to another score, or to another state of this one.
    OtherScore {
        /// Title of the layer's score.
        layer: Option<String>,
        /// Title of the score given.
        score: Option<String>,
    },
    /// The document leaves no way to make the edits.
    Edit(EditError),
}

impl fmt::Display for LayerError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OtherScore { layer, score } => {
                let named = |title: &Option<String>| {
                    title
                        .as_ref()
                        .map_or("a score without a title".to_owned(), |title| format!("\"{title}\""))
                };
                write!(
                    out,
                    "the layer was made for {}, this is {}, and their notes are not the same; if this is a \
                     revision, carry the layer over first",
                    named(layer),
                    named(score)
                )
            }
            Self::Edit(error) => error.fmt(out),
        }
    }
}

impl std::error::Error for LayerError {}

impl From<EditError> for LayerError {
    fn from(error: EditError) -> Self {
        Self::Edit(error)
    }
}

/// Whether a layer belongs to a score.
///
/// # Errors
///
/// [`LayerError::OtherScore`] where it names another one and only its own is trusted.
pub(crate) fn check_kinship(
    layer: &Layer,
    document: &Document,
    score: &Score,
    trust: Trust,
) -> Result<Kinship, LayerError> {
    let kinship = identity::kinship(layer, document, score);
    if kinship == Kinship::OtherMusic && trust == Trust::OwnScore {
        return Err(LayerError::OtherScore { layer: layer.score.title.clone(), score: score.title.clone() });
    }
    Ok(kinship)
}

/// Puts a layer onto a score, over the layers that are on it already (`below`, in the order they came).
///
/// A mark that stands there already is not written again. A printed mark that says otherwise gives way and
/// is remembered. An entry whose note is not found, and entries that contradict each other, are left out
/// and listed.
///
/// ```
/// use arcata_layer::{Addresses, Entry, Layer, Mark, Trust, apply, wipe};
/// # let text = arcata_testkit::musicxml("violin: c''4 d'' e'' f''");
/// # let parse = |text: &[u8]| arcata_xml::Document::parse(text.to_vec(), &Default::default()).unwrap();
/// # let document = parse(text.as_bytes());
/// let score = arcata_score::read(&document);
/// let place = Addresses::new(&score).place(0, arcata_score::NoteId(1)).unwrap();
/// let layer = Layer { entries: vec![Entry::new(place, Mark::Up)], ..Layer::default() };
/// let applied = apply(&document, &score, &layer, &[], Trust::OwnScore)?;
/// let marked = parse(&document.apply(&applied.edits)?);
/// assert!(marked.text().contains("<up-bow/>"));
/// let wiped = wipe(&marked, &arcata_score::read(&marked), &applied.layer, Trust::OwnScore)?;
/// assert_eq!(marked.apply(&wiped.edits)?, document.bytes());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
///
/// # Errors
///
/// A layer of another score, and a document that leaves no place for an insertion.
pub fn apply(
    document: &Document,
    score: &Score,
    layer: &Layer,
    below: &[Layer],
    trust: Trust,
) -> Result<Applied, LayerError> {
    apply_told(document, score, layer, (below, &ToldBows::default()), trust)
}

/// [`apply`] where somebody has planned the strokes: a hook or a retake goes as `told` says, and the stroke before gets the
/// same mark where it has none. Two equal marks one after the other are how players are told of either (common practice).
/// What is not told goes as the note before is marked.
///
/// # Errors
///
/// As for [`apply`].
pub fn apply_told(
    document: &Document,
    score: &Score,
    layer: &Layer,
    (below, told): (&[Layer], &ToldBows),
    trust: Trust,
) -> Result<Applied, LayerError> {
    let kinship = check_kinship(layer, document, score, trust)?;
    let mut layer = layer.clone();
    let mut session = Session::new(document, score);
    if kinship == Kinship::Unbound {
        layer.score =
            crate::model::ScoreIdentity { other: layer.score.other, ..identity::of(document, score) };
    }
    if layer.parts.is_empty() {
        layer.parts = session.addresses.part_keys().to_vec();
    }
    layer.put_in_order();
    let clean = matches!(kinship, Kinship::Unbound | Kinship::Clean);
    let below = said_below(&session, below);
    let quarrels = quarrels(&session, &layer);
    let asked = asked(&session, &layer);
    let mut applied =
        Applied { edits: EditList::default(), layer, written: 0, standing: 0, left_out: Vec::new() };
    let mut entries = std::mem::take(&mut applied.layer.entries);
    for entry in &mut entries {
        let done = find(&session, entry, &quarrels).and_then(|at| {
            let others_mark = below.contains_key(&(at, entry.mark.clone()));
            let told = told.of(at).filter(|_| entry.mark.follows()).transpose()?;
            put_entry(
                &mut session,
                entry,
                at,
                &Known { settled: clean || others_mark, clean, told, asked: &asked },
            )
        });
        match done {
            Ok(Done::Written) => applied.written += 1,
            Ok(Done::Standing) => applied.standing += 1,
            Err(why) => {
                entry.state = State::LeftOut;
                applied.left_out.push(LeftOut { entry: entry.clone(), why });
            }
        }
    }
    for conflict in &applied.layer.conflicts {
        for entry in conflict.first.iter().chain(&conflict.second) {
            let why = "two owners want different things here; decide first".to_owned();
            applied.left_out.push(LeftOut { entry: entry.clone(), why });
        }
    }
    applied.layer.entries = entries;
    applied.edits = session.surgery.finish()?;
    Ok(applied)
}

/// What other layers have put where.
fn said_below(session: &Session<'_, '_>, below: &[Layer]) -> BTreeMap<(Found, Mark), ()> {
    let entries = below.iter().flat_map(|layer| &layer.entries);
    entries
        .filter_map(|entry| Some(((session.addresses.find(&entry.place).ok()?, entry.mark.clone()), ())))
        .collect()
}

/// Questions that several entries answer differently.
pub(crate) fn quarrels(session: &Session<'_, '_>, layer: &Layer) -> BTreeMap<(Found, Question), usize> {
    let mut answers: BTreeMap<(Found, Question), Vec<&Mark>> = BTreeMap::new();
    for entry in &layer.entries {
        if let Ok(found) = session.addresses.find(&entry.place) {
            let given = answers.entry((found, entry.mark.question())).or_default();
            if !given.contains(&&entry.mark) {
                given.push(&entry.mark);
            }
        }
    }
    answers.into_iter().map(|(key, given)| (key, given.len())).filter(|(_, count)| *count > 1).collect()
}

fn find(
    session: &Session<'_, '_>,
    entry: &Entry,
    quarrels: &BTreeMap<(Found, Question), usize>,
) -> Result<Found, String> {
    let found = session.addresses.find(&entry.place).map_err(|why| why.to_string())?;
    match quarrels.get(&(found, entry.mark.question())) {
        Some(count) => Err(format!("the layer says {count} different things about it; keep one")),
        None => Ok(found),
    }
}

pub(crate) enum Done {
    Written,
    Standing,
}

/// Writes one entry.
fn put_entry(
    session: &mut Session<'_, '_>,
    entry: &mut Entry,
    at: Found,
    known: &Known<'_>,
) -> Result<Done, String> {
    let settled = known.settled;
    if let Some(before) = entry.before.take_if(|_| known.clean || !entry.mark.follows())
        && !known.clean
    {
        // It was a hook when it was last applied.
        session.take_before(at.part, &before);
    }
    match &entry.mark {
        Mark::Double { first } => {
            let first = *first;
            put_double(session, entry, at, (first, settled))
        }
        Mark::Down | Mark::Up | Mark::Hook { .. } | Mark::Retake { .. } => put_bow(session, entry, at, known),
        Mark::AsItComes => {
            let taken = session.take_other_bows(at, None);
            let done = if taken.is_empty() { Done::Standing } else { Done::Written };
            remember(entry, taken);
            Ok(done)
        }
        Mark::Lift => put_piece(session, entry, at, &Piece::BreathMark, settled),
        Mark::InBow { place } => {
            let words = Piece::Words(place.words().to_owned());
            put_piece(session, entry, at, &words, settled)
        }
        Mark::Text { text } => {
            let words = Piece::Words(text.clone());
            put_piece(session, entry, at, &words, settled)
        }
        Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. } => {
            put_slurs(session, entry, at, settled)
        }
    }
}

/// Why a mark cannot be written.
pub(crate) const NO_PLACE: &str = "the markup of the note leaves no place for it";

/// Keeps what was taken off now; where nothing was, what is known from before stays.
pub(crate) fn remember(entry: &mut Entry, taken: Vec<Taken>) {
    if !taken.is_empty() {
        entry.took_off = taken;
    }
}

pub(crate) fn put_piece(
    session: &mut Session<'_, '_>,
    entry: &mut Entry,
    at: Found,
    piece: &Piece,
    settled: bool,
) -> Result<Done, String> {
    if session.has(at, piece) {
        if settled && entry.exact.is_empty() {
            entry.state = State::Printed;
        }
        return Ok(Done::Standing);
    }
    entry.state = State::Own;
    if session.put(at, piece, entry.exact.first()) { Ok(Done::Written) } else { Err(NO_PLACE.to_owned()) }
}

fn put_slurs(
    session: &mut Session<'_, '_>,
    entry: &mut Entry,
    at: Found,
    settled: bool,
) -> Result<Done, String> {
    let ends = session.slur_ends(entry, at)?;
    let mut done = Done::Standing;
    if ends.wanted.is_some() && ends.wanted == ends.printed {
        return Err("it moves the slur to where it is".to_owned());
    }
    let notes = &session.score().parts[at.part];
    if let Some((from, to)) = ends.wanted
        && ((notes.note(from).onset, from) >= (notes.note(to).onset, to)
            || chord_head(notes, from) == chord_head(notes, to))
    {
        return Err("its last note does not come after its first".to_owned());
    }
    if let Some((from, to)) = ends.wanted
        && notes.note(from).node > notes.note(to).node
        && entry.exact.is_empty()
    {
        return Err(
            "its ends are in two voices, the later one written first; no reader would join them".to_owned()
        );
    }
    if let (Some((from, to)), Some((first, last))) = (ends.printed, ends.wanted)
        && is_slurred(session, at, from, to)
        && is_slurred(session, at, first, last)
    {
        return Err("a slur is printed there already; remove this one instead".to_owned());
    }
    if let Some((from, to)) = ends.printed {
        let mut taken = Vec::new();
        while let Some(slur) = session.slurs(at.part).between(from, to) {
            let [start, stop] = session
                .take_slur(at.part, slur, &[])
                .ok_or("the printed slur cannot be taken off; its two ends are not both in the file")?;
            taken.push(Taken { kind: TakenKind::SlurStop, exact: stop });
            taken.push(Taken { kind: TakenKind::SlurStart, exact: start });
        }
        if !taken.is_empty() {
            remember(entry, taken);
            done = Done::Written;
        } else if entry.took_off.is_empty() && ends.wanted.is_none_or(|(a, b)| !is_slurred(session, at, a, b))
        {
            return Err("the score has no such slur to take off".to_owned());
        }
    }
    if let Some((from, to)) = ends.wanted {
        if is_slurred(session, at, from, to) {
            if settled && entry.exact.is_empty() && ends.printed.is_none() {
                entry.state = State::Printed;
            }
        } else if session.put_slur(at.part, from, to, &entry.exact.clone()) {
            entry.state = State::Own;
            done = Done::Written;
        } else {
            return Err("more than sixteen slurs are open there; no number is left for another".to_owned());
        }
    }
    Ok(done)
}

fn is_slurred(session: &mut Session<'_, '_>, at: Found, from: NoteId, to: NoteId) -> bool {
    session.slurs(at.part).between(from, to).is_some()
}

/// The first note of the chord that a note belongs to.
fn chord_head(part: &Part, note: NoteId) -> usize {
    let head = part.notes[..=note.0 as usize].iter().rposition(|note| note.chord == ChordRole::Main);
    head.unwrap_or_default()
}
