//! # A doubled line marked in two ways
//!
//! ## What it finds
//! Two string parts that play one line in unison or octaves for two bars or more, of which some notes carry dots, accents,
//! dashes or sforzati in one and not in the other, though both have such marks in the passage; or whose dynamics, mutes,
//! pizz. or place on the string differ for the smaller part of it. Slurs and bow marks are looked at by another rule.
//!
//! ## Why it matters
//! Players of one line listen to each other. Where most is marked alike and a few notes are not, one part plays short what
//! the other holds, or soft what the other has loud, and somebody will ask which is meant.
//!
//! ## Example
//! ```music
//! quarter=96
//! Violins I: mf 1/4 C5!. D5!. E5!. F5!. | G5!. A5!. G5!. F5!. | 1/2 E5 C5 |||
//! Violins II: mf 1/4 C4!. D4!. E4!. F4!. | G4!. A4!. G4 F4 | 1/2 E4 C4 |||
//! ```
//!
//! ## What it proposes
//! To give the lower part the marks of the upper one (copy, writer's choice): in the file where only signs on notes differ.
//!
//! ## What it cannot know
//! Which of the two is meant. Where most of the marks stand in one part alone, or one part has none of a kind, the
//! writer wants two articulations of one line, or marks what the other part need not be told, and nothing is said. Marks over
//! plucked notes and tremolos are left out.
//!
//! ## Sources
//! A principal's notes, as quoted: one line, one way of playing; common practice.

use std::collections::BTreeSet;

use arcata_languages::{Argument, Saying};
use arcata_score::{Articulation, Dynamic, DynamicKind, Level, Moment, NoteId, Part};
use arcata_xml::Tag;

use crate::attack_marks::{SHORT, take_marks};
use crate::change::Change;
use crate::doublings::{Doubling, doublings};
use crate::under_slur::note;
use crate::ways::WaysOfPlaying;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct DoublingMarkedApart;

/// Above this share, hundredths, of the marks of a kind, or of the notes with another dynamic, the difference is meant
/// (rule of thumb).
const MEANT: usize = 60;
/// The same for notes in another state: what one part plucks and the other bows is mostly meant so (rule of thumb).
const STATE_MEANT: usize = 20;
/// So many notes in a row must have another dynamic: a mark that is drawn a note late is no other dynamic (rule of thumb).
const LEVEL_RUN: usize = 3;

impl Rule for DoublingMarkedApart {
    const CARD: Card = Card {
        id: "doubling-marked-apart",
        family: Family::Between,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "A doubled line marked in two ways",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let parts = &piece.score.parts;
        let ways: Vec<WaysOfPlaying<'_>> =
            parts.iter().map(|part| WaysOfPlaying::new(piece.score, part)).collect();
        // Of three parts on one line the odd one differs from both others: it is told once.
        let mut told: BTreeSet<(usize, NoteId)> = BTreeSet::new();
        for doubling in doublings(piece.score) {
            let (one, other) = doubling.parts;
            if !parts[one].instrument.is_bowed() || !parts[other].instrument.is_bowed() {
                continue;
            }
            let both = Both { upper: &parts[one], lower: &parts[other], ways: (&ways[one], &ways[other]) };
            let reasons = both.reasons(&doubling.notes);
            let Some(first) = reasons.iter().flat_map(|reason| &reason.notes).min().copied() else {
                continue;
            };
            if told.insert((one, first.0)) & told.insert((other, first.1)) {
                let draft = marked_apart(piece, found, &doubling, &reasons, first);
                found.report(draft);
            }
        }
    }
}

/// In what two parts differ.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum MarkedIn {
    Short,
    Accent,
    Long,
    Sforzato,
    Level,
    State,
}

impl MarkedIn {
    const ON_NOTES: [Self; 4] = [Self::Short, Self::Accent, Self::Long, Self::Sforzato];

    fn word(self) -> &'static str {
        match self {
            Self::Short => "sign-dots",
            Self::Accent => "sign-accents",
            Self::Long => "sign-dashes",
            Self::Sforzato => "sign-sforzati",
            Self::Level => "sign-dynamics",
            Self::State => "sign-way-of-playing",
        }
    }

    fn evidence(self) -> &'static str {
        match self {
            Self::Short => "evidence-dots-in-one-part",
            Self::Accent => "evidence-accents-in-one-part",
            Self::Long => "evidence-dashes-in-one-part",
            Self::Sforzato => "evidence-sforzati-in-one-part",
            Self::Level => "evidence-notes-with-another-dynamic",
            Self::State => "evidence-notes-played-differently",
        }
    }

    fn marks(self) -> &'static [Articulation] {
        match self {
            Self::Short => &[Articulation::Staccato, Articulation::Staccatissimo, Articulation::Spiccato],
            Self::Accent => &[Articulation::Accent, Articulation::StrongAccent],
            Self::Long => &[Articulation::Tenuto],
            Self::Sforzato | Self::Level | Self::State => &[],
        }
    }

    fn on(self, part: &Part, id: NoteId) -> bool {
        let Some(note) = note(part, id) else { return false };
        if self == Self::Sforzato {
            let from = part.dynamics.partition_point(|dynamic| dynamic.place.at < note.onset);
            let here = part.dynamics[from..].iter().take_while(|dynamic| dynamic.place.at == note.onset);
            let accented =
                |dynamic: &Dynamic| matches!(dynamic.kind, DynamicKind::Accented(_) | DynamicKind::Shape(..));
            return here.into_iter().any(accented);
        }
        // What stands over a chord stands on one of its notes, often another than the doubled one.
        part.chord(id).any(|note| self.marks().iter().any(|mark| note.articulations.has(*mark)))
    }
}

/// A kind of difference and the common notes that show it.
struct MarkedApart {
    sign: MarkedIn,
    notes: Vec<(NoteId, NoteId)>,
}

/// Two parts on one line.
struct Both<'a> {
    upper: &'a Part,
    lower: &'a Part,
    ways: (&'a WaysOfPlaying<'a>, &'a WaysOfPlaying<'a>),
}

impl Both<'_> {
    fn reasons(&self, notes: &[(NoteId, NoteId)]) -> Vec<MarkedApart> {
        let plain = |pair: &&(NoteId, NoteId)| self.ways.0.is_plain(pair.0) && self.ways.1.is_plain(pair.1);
        let bowed: Vec<(NoteId, NoteId)> = notes.iter().filter(plain).copied().collect();
        let signs = MarkedIn::ON_NOTES.into_iter().filter_map(|sign| self.signed_apart(sign, &bowed));
        signs.chain(self.level_apart(notes)).chain(self.state_apart(notes)).collect()
    }

    /// Signs on notes: both parts carry them, and the greater part of them alike.
    fn signed_apart(&self, sign: MarkedIn, notes: &[(NoteId, NoteId)]) -> Option<MarkedApart> {
        let on = |pair: &(NoteId, NoteId)| (sign.on(self.upper, pair.0), sign.on(self.lower, pair.1));
        let (mut upper, mut lower, mut either, mut apart) = (0, 0, 0, Vec::new());
        for pair in notes {
            let (first, second) = on(pair);
            upper += usize::from(first);
            lower += usize::from(second);
            either += usize::from(first || second);
            if first != second {
                apart.push(*pair);
            }
        }
        let slip = upper > 0 && lower > 0 && !apart.is_empty() && apart.len() * 100 <= either * MEANT;
        slip.then_some(MarkedApart { sign, notes: apart })
    }

    /// Lasting dynamics: other ones for a few notes in a row, and the same for most.
    fn level_apart(&self, notes: &[(NoteId, NoteId)]) -> Option<MarkedApart> {
        let differ = |pair: &&(NoteId, NoteId)| {
            let levels = (level_on(self.upper, pair.0), level_on(self.lower, pair.1));
            matches!(levels, (Some(upper), Some(lower)) if upper != lower)
        };
        let mut apart = Vec::new();
        for run in notes.chunk_by(|a, b| differ(&a) == differ(&b)) {
            if run.first().is_some_and(|first| differ(&first)) && run.len() >= LEVEL_RUN {
                apart.extend_from_slice(run);
            }
        }
        (!apart.is_empty() && apart.len() * 100 <= notes.len() * MEANT)
            .then_some(MarkedApart { sign: MarkedIn::Level, notes: apart })
    }

    /// Pizz., mute, place on the string.
    fn state_apart(&self, notes: &[(NoteId, NoteId)]) -> Option<MarkedApart> {
        let state =
            |ways: &WaysOfPlaying<'_>, id| ways.at(id).map(|state| (state.contact, state.mute, state.place));
        let differ = |pair: &&(NoteId, NoteId)| state(self.ways.0, pair.0) != state(self.ways.1, pair.1);
        let apart: Vec<(NoteId, NoteId)> = notes.iter().filter(differ).copied().collect();
        (!apart.is_empty() && apart.len() * 100 <= notes.len() * STATE_MEANT)
            .then_some(MarkedApart { sign: MarkedIn::State, notes: apart })
    }
}

/// The lasting dynamic that holds on a note.
fn level_on(part: &Part, id: NoteId) -> Option<Level> {
    let at: Moment = note(part, id)?.onset;
    let after = part.dynamics.partition_point(|dynamic| dynamic.place.at <= at);
    part.dynamics[..after].iter().rev().find_map(|dynamic| match dynamic.kind {
        DynamicKind::Level(level) | DynamicKind::Shape(_, level) => Some(level),
        DynamicKind::Accented(_) => None,
    })
}

fn marked_apart(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    doubling: &Doubling,
    reasons: &[MarkedApart],
    first: (NoteId, NoteId),
) -> Draft {
    let (one, other) = doubling.parts;
    let (upper, lower) = (&piece.score.parts[one], &piece.score.parts[other]);
    let mut draft = found.at_notes(Severity::C, other, &[first.1]);
    let signs = reasons.iter().map(|reason| Saying::new(reason.sign.word()).into()).collect();
    let places: BTreeSet<NoteId> =
        reasons.iter().flat_map(|reason| &reason.notes).map(|pair| pair.1).collect();
    let sentence = Saying::new("say-doubling-marked-apart")
        .quoting("upper", &upper.name)
        .quoting("lower", &lower.name)
        .with("first", piece.bar_number(doubling.bars.start))
        .with("last", piece.bar_number(doubling.bars.end.saturating_sub(1)))
        .with("signs", Argument::List(signs))
        .with("at", piece.where_is(draft.place()))
        .with("more", places.len().saturating_sub(1));
    for reason in reasons {
        let count = Argument::Whole(i64::try_from(reason.notes.len()).unwrap_or(i64::MAX));
        draft = draft.evidence(reason.sign.evidence(), count, "");
    }
    draft.say(sentence).cause(format!("{one}")).propose_change(
        Grade::WritersChoice,
        ProposalKind::Copy,
        Saying::new("offer-give-marks").quoting("lower", &lower.name).quoting("upper", &upper.name),
        copied(piece, (upper, lower), reasons),
    )
}

/// The signs of the upper part put on the notes of the lower one; nothing where more than signs on notes differ.
fn copied(piece: &Piece<'_>, (upper, lower): (&Part, &Part), reasons: &[MarkedApart]) -> Vec<Change> {
    let mut changes = Vec::new();
    for MarkedApart { sign, notes } in reasons {
        let (element, all): (&str, &[Tag]) = match sign {
            MarkedIn::Short => ("staccato", &SHORT),
            MarkedIn::Accent => ("accent", &[Tag::ACCENT, Tag::STRONG_ACCENT]),
            MarkedIn::Long => ("tenuto", &[Tag::TENUTO]),
            MarkedIn::Sforzato | MarkedIn::Level | MarkedIn::State => return Vec::new(),
        };
        for (a, b) in notes {
            let Some(target) = note(lower, *b) else { return Vec::new() };
            if sign.on(upper, *a) {
                let xml = format!("<articulations><{element}/></articulations>");
                changes.push(Change::Notation { note: target.node, xml });
            } else {
                changes.extend(take_marks(piece, target, all));
            }
        }
    }
    changes
}
