//! # A slur lasts longer than one bow
//!
//! ## What it finds
//! Notes under one slur that together last longer than the slowest bow at their dynamic: 1.1 times at least,
//! since the slowest bows are rounded figures. Up to 1.3 bows the slur is stretched (C; nothing where it fades by a dynamic
//! step or more, for then the hand saves bow), up to 2.5 it will be changed somewhere (B), above that it cannot have been
//! meant as one bow (A).
//!
//! ## Why it matters
//! The sound thins out, or each player changes where the arm happens to run out, and the section
//! discusses it in the rehearsal. A slur tells a string player "one bow": whoever means a phrase should
//! say so in another way.
//!
//! ## Example
//! ```music
//! quarter=40
//! violin: f (1/4 C5 D5 E5 F5 | G5 A5 B5 C6 | B5 A5 G5 F5) |||
//! ```
//!
//! ## What it proposes
//! To split the slur on the strongest beats that leave every piece within a bow (split, writer's
//! choice). In a section, also to let players change at different times (stagger, player's choice): that
//! writes nothing, since they do it unasked, and a word for it would hold until another ends it.
//!
//! ## What it cannot know
//! Hall, bow and player; whether a section will hide its changes. The time comes from the tempo in the
//! score: if none is written, the assumed one stands beside the number.
//!
//! ## Sources
//! R. Hoffmann, "Bow length duration on strings": seconds a violin bow lasts by dynamic; loud values are
//! preferred, not slowest, speeds. C. Flesch, as summarised by M. Salles: 15 s for the steadiest long
//! tone. Counted: 181,000 printed slurs in 122 string quartets (CC0), 99 % of them within the slowest
//! bow used here.

use arcata_bow::profile::SpeedTable;
use arcata_bow::{Force, StrokeKind, Written};

use crate::mechanics::{bow_lasts, dynamics_said, dynamics_shown, fades_out, longest_bow, share_of_longest};
use crate::phrase_verdict::{is_left_to_phrases, slur_from};
use crate::under_slur::free_bowing;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity, split};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct SlurOutlastsBow;

impl Rule for SlurOutlastsBow {
    const CARD: Card = Card {
        id: "slur-outlasts-bow",
        family: Family::Length,
        gravest: Severity::A,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Strokes],
        since: "0.1",
        title: "A slur lasts longer than one bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            for index in 0..line.strokes.len() {
                if let Some(draft) = stretched(piece, found, at, index) {
                    found.report(draft);
                }
            }
        }
    }
}

fn stretched(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Option<Draft> {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let under_slur = matches!(stroke.kind, StrokeKind::Slurred | StrokeKind::Pulsed);
    if !under_slur || stroke.note_count < 2 {
        return None;
    }
    let hair = piece.hair(at);
    let ratio = share_of_longest(stroke, hair);
    // On an assumed tempo nothing is sure enough to be called impossible.
    let lightest = if line.tempo_written == Written::Assumed { Severity::B } else { Severity::A };
    let severity = piece.thresholds().slur_severity(ratio)?.max(lightest);
    if severity == Severity::C && fades_out(stroke) {
        return None;
    }
    let part = piece.score.parts.get(line.part)?;
    let slur = slur_from(part, &stroke.notes);
    if free_bowing(part, stroke.onset) || slur.is_some_and(|slur| is_left_to_phrases(piece, line.part, slur))
    {
        return None;
    }
    let longest = longest_bow(stroke, hair);
    let draft = found.at_stroke(severity, at, index);
    let sentence = Saying::new("say-slur-outlasts-bow")
        .with("at", piece.where_is(draft.place()))
        .with("lasts", Argument::Seconds(stroke.duration.micros))
        .with("longest", Argument::Seconds(longest))
        .with("dynamics", dynamics_said(stroke));
    let draft = draft
        .say(sentence)
        .seconds("evidence-slur-lasts", stroke.duration.micros)
        .seconds("evidence-slowest-bow-lasts", longest)
        .evidence("evidence-bows-needed", Argument::Thousandths(ratio), "")
        .evidence("evidence-dynamic", dynamics_shown(stroke), "")
        .cause(format!("{ratio}"));
    let draft = piece.with_tempo_assumption(draft, line);
    Some(with_proposals(piece, draft, at, index, longest))
}

fn with_proposals(piece: &Piece<'_>, draft: Draft, at: usize, index: usize, longest: i64) -> Draft {
    let line = &piece.lines[at];
    let mut draft = draft;
    // The louder end of a swell leaves the least time: every piece must fit there too.
    let stroke = &line.strokes[index];
    let loudest = stroke.level_start.max(stroke.level_end);
    let slowest = SpeedTable::new(piece.profile, line.instrument).window(loudest).slowest;
    let shortest = longest.min(bow_lasts(slowest, piece.hair(at)));
    if let Some(split) = split::evenly(piece, line, stroke, shortest) {
        let places = split.places(piece, draft.place());
        draft = draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::Split,
            Saying::new("offer-split-slur-before").with("places", places),
            split.changes(piece),
        );
    }
    if line.force == Force::Section {
        draft =
            draft.propose(Grade::PlayersChoice, ProposalKind::Stagger, Saying::new("offer-stagger-unheard"));
    }
    draft
}
