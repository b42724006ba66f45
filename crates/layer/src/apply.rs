//! Putting a layer onto a score.

use std::fmt;

use arcata_languages::Saying;
use arcata_score::{NoteId, Score};
use arcata_xml::{Document, EditError, EditList};

use crate::address::{Addresses, NamedNote};
use crate::contradictions::{Below, Quarrels, SlurWishes};
use crate::hook_slur::{HookSlurs, Judged};
use crate::identity::{self, Kinship};
use crate::markup::MarkupPiece;
use crate::model::{Entry, EntryState, Layer, Mark, Question, Taken, TakenKind};
use crate::put_bows::{KnownAtEntry, asked, put_bow, put_double};
use crate::session::LayerSession;
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
    /// Entries of the layers below about a bow or a slur of which this layer says the contrary: its word holds, and why
    /// theirs does not is told.
    pub overruled: Vec<LeftOut>,
}

/// An entry that was passed over.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// The entry.
    pub entry: Entry,
    /// Why, as the end of a sentence that begins with its place.
    pub why: Saying,
}

impl LeftOut {
    /// The same with its place by bar and beat, where the score is known.
    #[must_use]
    pub fn said(&self, addresses: &Addresses<'_>) -> String {
        let mark = self.entry.mark.words_in(addresses, &self.entry.place.part);
        format!("{}, {mark}: {}", addresses.said(&self.entry.place), self.why)
    }
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

impl LayerError {
    /// What is wrong and what to do, to be said in a language.
    #[must_use]
    pub fn saying(&self) -> Saying {
        match self {
            Self::OtherScore { layer, score } => {
                let named = |title: &Option<String>| match title {
                    Some(title) => Saying::new("why-score-titled").quoting("title", title),
                    None => Saying::new("why-score-untitled"),
                };
                Saying::new("why-layer-of-other-score")
                    .with("layer", named(layer))
                    .with("score", named(score))
            }
            Self::Edit(error) => Saying::as_it_is(error.to_string()),
        }
    }
}

impl fmt::Display for LayerError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.saying().fmt(out)
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
/// and listed. Where a layer below draws a slur that this one takes off, or takes off one that this one draws, the
/// upper layer's word holds, and what it overrules is listed, too.
///
/// ```
/// use arcata_layer::{Addresses, Entry, Layer, Mark, Trust, apply, wipe};
/// # let text = arcata_testkit::musicxml("violin: 1/4 C5 D5 E5 F5");
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
    let mut session = LayerSession::new(document, score);
    if kinship == Kinship::Unbound {
        layer.score =
            crate::model::ScoreIdentity { other: layer.score.other, ..identity::of(document, score) };
    }
    if layer.parts.is_empty() {
        layer.parts = session.addresses.part_keys().to_vec();
    }
    layer.put_in_order();
    let clean = matches!(kinship, Kinship::Unbound | Kinship::Clean);
    let below = Below::of(&session, below);
    let quarrels = Quarrels::of(&session, &layer);
    let asked = asked(&session, &layer);
    let slurs = SlurWishes::of(&session, &layer, &quarrels);
    let mut applied = Applied {
        edits: EditList::default(),
        layer,
        written: 0,
        standing: 0,
        left_out: Vec::new(),
        overruled: Vec::new(),
    };
    let mut entries = std::mem::take(&mut applied.layer.entries);
    let judged = Judged { clean, told, asked: &asked, quarrels: &quarrels, slurs: &slurs };
    let mut hooks = HookSlurs::of(&mut session, &mut entries, &judged);
    // Slurs of hooks first: what goes on from such a slur looks for its bow mark where it begins.
    let (hooked, others): (Vec<&mut Entry>, Vec<&mut Entry>) =
        entries.iter_mut().partition(|entry| entry.mark.is_hook_slur());
    for entry in hooked.into_iter().chain(others) {
        let done = find(&session, entry, &quarrels).and_then(|at| {
            let others_mark = below.marks.contains(&(at, entry.mark.clone()));
            let under_slur = entry.mark.is_hook_slur();
            // What is told of a hook under a slur has been heard when the slurs were settled.
            let told = told.of(at).filter(|_| entry.mark.follows() && !under_slur);
            let told = told.transpose().map_err(Clone::clone)?;
            let known = KnownAtEntry { settled: clean || others_mark, clean, told, asked: &asked };
            if under_slur {
                entry.before = entry.before.take().filter(|_| !clean);
                return hooks.put(&mut session, entry, at, clean);
            }
            put_entry(&mut session, entry, at, (&known, &below))
        });
        if done.is_ok() {
            applied.overruled.extend(overruled(&session, entry, &below));
        }
        match done {
            Ok(EntryDone::Written) => applied.written += 1,
            Ok(EntryDone::Standing) => applied.standing += 1,
            Ok(EntryDone::GivesWay) => {
                let why = Saying::new("why-taken-off-above");
                applied.overruled.push(LeftOut { entry: entry.clone(), why });
            }
            Err(why) => {
                entry.state = EntryState::LeftOut;
                applied.left_out.push(LeftOut { entry: entry.clone(), why });
            }
        }
    }
    for conflict in &applied.layer.conflicts {
        for entry in conflict.first.iter().chain(&conflict.second) {
            let why = Saying::new("why-two-owners");
            applied.left_out.push(LeftOut { entry: entry.clone(), why });
        }
    }
    applied.layer.entries = entries;
    applied.edits = session.surgery.finish()?;
    Ok(applied)
}

/// The entries of layers below about whose slurs or bows an entry says the contrary.
fn overruled(session: &LayerSession<'_, '_>, entry: &Entry, below: &Below) -> Vec<LeftOut> {
    let Ok(at) = session.addresses.find(&entry.place) else { return Vec::new() };
    let ends = session.slur_ends(entry, at).ok();
    let mut ends = ends.map_or((None, None), |ends| (ends.printed, ends.wanted));
    if let Some(slur) = &entry.hook_slur {
        let note = |spot| session.addresses.find_in(at.part, spot).ok().map(|found| found.note);
        ends.1 = note(&slur.from).zip(note(&slur.to));
    }
    let key = |(from, to): (NoteId, NoteId)| (at.part, from, to);
    let drawn = ends.0.and_then(|ends| below.drawn.get(&key(ends)));
    let taken = ends.1.and_then(|ends| below.taken.get(&key(ends)));
    let because = |entry: &Entry, why: &'static str| LeftOut { entry: entry.clone(), why: Saying::new(why) };
    let drawn = drawn.map(|entry| because(entry, "why-slur-taken-off-above"));
    let taken = taken.map(|entry| because(entry, "why-slur-drawn-above"));
    let bow = below
        .bows
        .get(&at)
        .filter(|under| entry.mark.question() == Question::Bow && under.mark != entry.mark);
    let bow = bow.map(|entry| because(entry, "why-other-bow-above"));
    drawn.into_iter().chain(taken).chain(bow).collect()
}

fn find(session: &LayerSession<'_, '_>, entry: &Entry, quarrels: &Quarrels) -> Result<NamedNote, Saying> {
    let found = session.addresses.find(&entry.place).map_err(|why| why.saying())?;
    match quarrels.why(found, &entry.mark) {
        Some(why) => Err(why),
        None => Ok(found),
    }
}

pub(crate) enum EntryDone {
    Written,
    Standing,
    /// It is printed, and a layer over this one has taken it off: that layer brings it back.
    GivesWay,
}

/// Writes one entry.
fn put_entry(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    at: NamedNote,
    (known, below): (&KnownAtEntry<'_>, &Below),
) -> Result<EntryDone, Saying> {
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
            put_double(session, entry, at, first, known)
        }
        Mark::Down | Mark::Up | Mark::Hook { .. } | Mark::Retake { .. } => put_bow(session, entry, at, known),
        Mark::AsItComes => {
            let taken = session.take_other_bows(at, None);
            let done = if taken.is_empty() { EntryDone::Standing } else { EntryDone::Written };
            remember(entry, taken, known.clean);
            Ok(done)
        }
        Mark::Lift => put_piece(session, entry, at, &MarkupPiece::BreathMark, settled),
        Mark::InBow { place } => {
            let words = MarkupPiece::Words(place.words().to_owned());
            put_piece(session, entry, at, &words, settled)
        }
        Mark::Text { text } => {
            let words = MarkupPiece::Words(text.clone());
            put_piece(session, entry, at, &words, settled)
        }
        Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. } => {
            put_slurs(session, entry, at, (known, below))
        }
    }
}

/// Why a mark cannot be written.
pub(crate) const NO_PLACE: Saying = Saying::new("why-no-place");

/// Keeps what was taken off. While the layer is on the score what it first took off, if anything, is the printed mark: what
/// stands there by now came from another layer, which remembers it.
pub(crate) fn remember(entry: &mut Entry, taken: Vec<Taken>, clean: bool) {
    if clean || entry.took_off.is_none() {
        entry.took_off = Some(taken);
    }
}

pub(crate) fn put_piece(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    at: NamedNote,
    piece: &MarkupPiece,
    settled: bool,
) -> Result<EntryDone, Saying> {
    if session.has(at, piece) {
        if settled && entry.exact.is_empty() {
            entry.state = EntryState::Printed;
        }
        return Ok(EntryDone::Standing);
    }
    entry.state = EntryState::Own;
    if session.put(at, piece, entry.exact.first()) { Ok(EntryDone::Written) } else { Err(NO_PLACE) }
}

fn put_slurs(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    at: NamedNote,
    (known, below): (&KnownAtEntry<'_>, &Below),
) -> Result<EntryDone, Saying> {
    let ends = session.slur_ends(entry, at)?;
    let mut done = EntryDone::Standing;
    if ends.wanted.is_some() && ends.wanted == ends.printed {
        return Err(Saying::new("why-slur-moves-nowhere"));
    }
    let notes = &session.score().parts[at.part];
    if let Some((from, to)) = ends.wanted
        && ((notes.note(from).onset, from) >= (notes.note(to).onset, to)
            || notes.chord_head(from) == notes.chord_head(to))
    {
        return Err(Saying::new("why-slur-backwards"));
    }
    if let Some((from, to)) = ends.wanted
        && notes.note(from).node > notes.note(to).node
        && entry.exact.is_empty()
    {
        return Err(Saying::new("why-slur-in-two-voices"));
    }
    if let (Some((from, to)), Some((first, last))) = (ends.printed, ends.wanted)
        && is_slurred(session, at, from, to)
        && is_slurred(session, at, first, last)
        && (known.clean || entry.taken_off().is_empty())
    {
        return Err(Saying::new("why-slur-printed-there"));
    }
    if let Some((from, to)) = ends.printed {
        let mut taken = Vec::new();
        while let Some(slur) = session.slurs(at.part).between(from, to) {
            let [start, stop] = session
                .take_slur(at.part, slur, &[])
                .ok_or_else(|| Saying::new("why-slur-ends-not-in-file"))?;
            taken.push(Taken { kind: TakenKind::SlurStop, exact: stop });
            taken.push(Taken { kind: TakenKind::SlurStart, exact: start });
        }
        if !taken.is_empty() {
            remember(entry, taken, known.clean);
            done = EntryDone::Written;
        } else if ends.wanted.is_none()
            && entry.taken_off().is_empty()
            && below.taken.contains_key(&(at.part, from, to))
        {
            // A layer below has taken it off: nothing is left to do, nor to bring back.
            entry.state = EntryState::Printed;
        } else if entry.taken_off().is_empty()
            && ends.wanted.is_none_or(|(a, b)| !is_slurred(session, at, a, b))
        {
            return Err(Saying::new("why-no-slur-to-take-off"));
        }
    }
    if let Some((from, to)) = ends.wanted {
        if is_slurred(session, at, from, to) {
            // It is printed, or a layer below draws it; and nothing gave way to this entry: it stays when this layer goes.
            let theirs = known.settled || below.drawn.contains_key(&(at.part, from, to));
            if theirs && entry.exact.is_empty() && entry.taken_off().is_empty() {
                entry.state = EntryState::Printed;
            }
        } else if known.gives_way(entry) {
            done = EntryDone::GivesWay;
        } else if session.put_slurs(at.part, from, to, &entry.exact) {
            entry.state = EntryState::Own;
            done = EntryDone::Written;
        } else {
            return Err(Saying::new("why-too-many-slurs"));
        }
    }
    Ok(done)
}

fn is_slurred(session: &mut LayerSession<'_, '_>, at: NamedNote, from: NoteId, to: NoteId) -> bool {
    session.slurs(at.part).between(from, to).is_some()
}
