//! The addresses that the page asks, below `/api/`.
#![allow(unused_qualifications, reason = "the descriptions that utoipa makes name types in full")]

use std::str::FromStr as _;

use arcata_languages::{Language, Texts};
use arcata_layer::{Addresses, shorthand};
use utoipa::OpenApi;

use crate::act::{Act, Ask, Asked, Begins, ByteEdit, NotePlace, SlurIs};
use crate::alike::{AlikeView, StrokeAt, alike, is_there};
use crate::answers::{AskedBy, PageAnswer, PageRequest};
use crate::comparison::{self, PassageView};
use crate::desk::Desk;
use crate::drawing::{self, PictureView, SystemView};
use crate::export;
use crate::failed::Failed;
use crate::happened::Happened;
use crate::part_pages::{PartPagesView, PrintedPart, part_pages};
use crate::place::{PlaceView, place};
use crate::request_language::RequestLanguage;
use crate::requests::{
    ActRequest, BowRequest, BreakRequest, ChangeRequest, ExportKind, KeptView, LanguageQuery,
    LayerPictureQuery, LineQuery, LookRequest, PagesQuery, PartQuery, PictureQuery, PlaceQuery,
    ProposalRequest, RuleView, ShorthandRequest, ShorthandView, ShownRequest, SlurRequest, StepRequest,
    StrokeQuery, TextView, TwoLayersQuery, WrittenView,
};
use crate::session::{Session, SessionError};
use crate::shared::Shared;
use crate::sound::{PieceSound, sound};
use crate::views::{self, DoneView, FindingsView, OfferView, ScoreView, StrokeView};
use crate::ways::{WayView, ways};

/// Looks at something, and changes nothing.
pub(crate) type LookMaker = fn(&Shared, &PageRequest, &str) -> Result<PageAnswer, Failed>;

/// Does something, once.
pub(crate) type DeedMaker = fn(&Shared, &PageRequest, &str) -> Result<Deed, Failed>;

/// What is behind an address.
#[derive(Clone, Copy)]
pub(crate) enum Handling {
    Looks(LookMaker),
    Does(DeedMaker),
}

/// What was done.
#[derive(Debug)]
pub(crate) enum Deed {
    /// An act, or one undone; with the desk after it, and what the page shows.
    Done { done: DoneView, desk: Desk, shown: Option<ShownRequest>, spoken: RequestLanguage },
    /// Files were put beside the score.
    Kept(KeptView),
    /// The score was written.
    Written(WrittenView),
}

/// All addresses. One that ends in `/` has a name behind it.
const ADDRESSES: [(AskedBy, &str, Handling); 29] = [
    (AskedBy::Get, "score", Handling::Looks(score)),
    (AskedBy::Get, "place", Handling::Looks(place_read)),
    (AskedBy::Get, "systems", Handling::Looks(systems)),
    (AskedBy::Get, "system", Handling::Looks(system)),
    (AskedBy::Get, "pages", Handling::Looks(pages)),
    (AskedBy::Post, "break", Handling::Does(ask_break)),
    (AskedBy::Get, "strokes", Handling::Looks(strokes)),
    (AskedBy::Get, "findings", Handling::Looks(findings)),
    (AskedBy::Get, "ways", Handling::Looks(other_ways)),
    (AskedBy::Get, "slurs", Handling::Looks(other_slurs)),
    (AskedBy::Post, "look", Handling::Looks(look)),
    (AskedBy::Post, "slurs/layer", Handling::Does(slurs_into_layer)),
    (AskedBy::Get, "downbeats", Handling::Looks(downbeats)),
    (AskedBy::Get, "sound", Handling::Looks(heard)),
    (AskedBy::Get, "rules/", Handling::Looks(rule)),
    (AskedBy::Post, "acts", Handling::Does(act)),
    (AskedBy::Post, "bow", Handling::Does(bow)),
    (AskedBy::Post, "proposal", Handling::Does(proposal)),
    (AskedBy::Post, "slur", Handling::Does(slur)),
    (AskedBy::Get, "alike", Handling::Looks(who_plays_alike)),
    (AskedBy::Post, "undo", Handling::Does(undo)),
    (AskedBy::Post, "redo", Handling::Does(redo)),
    (AskedBy::Post, "shorthand", Handling::Looks(check_shorthand)),
    (AskedBy::Get, "layer/shorthand", Handling::Looks(layer_shorthand)),
    (AskedBy::Get, "layers/differences", Handling::Looks(differences)),
    (AskedBy::Get, "layers/picture", Handling::Looks(layer_picture)),
    (AskedBy::Get, "export/", Handling::Looks(exported)),
    (AskedBy::Post, "keep/", Handling::Does(kept)),
    (AskedBy::Post, "write", Handling::Does(write)),
];

/// The name behind an address that it names; empty where it takes none, nothing where it is another.
fn named<'p>(address: &str, path: &'p str) -> Option<&'p str> {
    match address.ends_with('/') {
        true => path.strip_prefix(address).filter(|rest| !rest.is_empty() && !rest.contains('/')),
        false => (path == address).then_some(""),
    }
}

/// How an address below `/api/` is asked; nothing where there is none.
///
/// ```
/// use arcata_desk::{AskedBy, asked_by};
///
/// assert_eq!(asked_by("score"), Some(AskedBy::Get));
/// assert_eq!(asked_by("keep/layer"), Some(AskedBy::Post));
/// assert_eq!(asked_by("nowhere"), None);
/// ```
#[must_use]
pub fn asked_by(path: &str) -> Option<AskedBy> {
    ADDRESSES.iter().find(|(_, address, _)| named(address, path).is_some()).map(|(by, ..)| *by)
}

/// What is behind an address, and the name behind it.
///
/// # Errors
/// Where there is nothing, or it is asked in another way.
pub(crate) fn handling(by: AskedBy, path: &str) -> Result<(Handling, &str), Failed> {
    let found = ADDRESSES
        .iter()
        .find_map(|(asked, address, handling)| named(address, path).map(|rest| (*asked, *handling, rest)));
    match found {
        Some((asked, handling, rest)) if asked == by => Ok((handling, rest)),
        Some(_) => Err(Failed::new(Failed::NOT_SO, "this address is asked in another way")),
        None => Err(Failed::missing("there is nothing at this address")),
    }
}

/// The score as a whole.
#[utoipa::path(get, path = "/api/score", params(("accept-language" = Option<String>, Header, description = "The language of the sentences: en, it, fr or de.")), responses((status = 200, body = ScoreView)))]
fn score(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    PageAnswer::json(&ScoreView::new(&shared.session(), request.spoken()))
}

/// A place that somebody typed, read as everywhere.
#[utoipa::path(get, path = "/api/place", params(PlaceQuery), responses((status = 200, body = PlaceView), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn place_read(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: PlaceQuery = request.query()?;
    let (desk, _) = shared.desk();
    let read = place(desk.base.score(), &query.text, query.movement).map_err(Failed::impossible)?;
    PageAnswer::json(&read)
}

/// Which bars share a line of music.
#[utoipa::path(get, path = "/api/systems", params(PictureQuery), responses((status = 200, body = Vec<SystemView>), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn systems(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let (desk, _) = shared.desk();
    let wanted = request.query::<PictureQuery>()?.wanted(request.spoken().wording(&desk))?;
    PageAnswer::json(&drawing::systems(&desk, &wanted, &shared.engraver))
}

/// One line of music, engraved, with the bow under the staves.
#[utoipa::path(get, path = "/api/system", params(PictureQuery), responses((status = 200, body = PictureView), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn system(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: PictureQuery = request.query()?;
    let (desk, version) = shared.desk();
    let wanted = query.wanted(request.spoken().wording(&desk))?;
    let bars = query.first.unwrap_or(0)..=query.last.or(query.first).unwrap_or(0);
    let drawn = drawing::system(&desk, &wanted, bars, (&shared.engraver, version));
    PageAnswer::json(&drawn.map_err(Failed::impossible)?)
}

/// The pages of a part as they would be printed; making them takes seconds.
#[utoipa::path(get, path = "/api/pages", params(PagesQuery, ("accept-language" = Option<String>, Header, description = "The language of the sentences: en, it, fr or de.")), responses((status = 200, body = PartPagesView), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn pages(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let PagesQuery { part } = request.query()?;
    let (desk, state, version) = {
        let session = shared.session();
        (session.desk(), session.state().clone(), session.version())
    };
    let printed = PrintedPart {
        desk: &desk,
        layer: &state.layers.together(),
        breaks: &state.breaks,
        house: &shared.house,
        part,
    };
    let wording = request.spoken().wording(&desk);
    let made = part_pages(&printed, (&shared.engraver, &shared.made_parts, version), &wording);
    PageAnswer::json(&made.map_err(Failed::impossible)?)
}

/// Asks for a page or a line of a part to begin with a bar, or takes that back.
#[utoipa::path(post, path = "/api/break", request_body = BreakRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn ask_break(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let BreakRequest { part, bar, begins, version, by } = request.json()?;
    done(shared, (request, by, None), |session| {
        let desk = session.desk();
        let score = desk.base.score();
        let addresses = Addresses::new(score);
        let name = addresses.part_keys().get(part).cloned();
        let name = name.ok_or_else(|| Failed::impossible("there is no such part"))?;
        let there = score.bars.get(bar as usize).ok_or_else(|| Failed::impossible("there is no such bar"))?;
        let act = Act::Break { part: name, bar: there.label.clone(), bar_ordinal: bar + 1, begins };
        acted(session, act, version)
    })
}

/// The strokes of a line.
#[utoipa::path(get, path = "/api/strokes", params(LineQuery), responses((status = 200, body = Vec<StrokeView>), (status = 404, body = Failed), (status = 400, body = Failed)))]
fn strokes(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: LineQuery = request.query()?;
    let strokes = views::strokes(&shared.desk().0, query.line);
    let mut strokes = strokes.ok_or_else(|| Failed::missing("there is no such line"))?;
    let bars = query.first.unwrap_or(0)..=query.last.unwrap_or(u32::MAX);
    strokes.retain(|stroke| bars.contains(&stroke.bar));
    PageAnswer::json(&strokes)
}

/// What the review finds.
#[utoipa::path(get, path = "/api/findings", params(("accept-language" = Option<String>, Header, description = "The language of the sentences: en, it, fr or de.")), responses((status = 200, body = FindingsView)))]
fn findings(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let found = shared.findings();
    let wording = request.spoken().wording(&shared.desk().0);
    PageAnswer::json(&FindingsView::new(found.version, (&found.findings, found.aside), &wording))
}

/// Other ways to bow some bars of a line.
#[utoipa::path(get, path = "/api/ways", params(LineQuery), responses((status = 200, body = Vec<WayView>), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn other_ways(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: LineQuery = request.query()?;
    let (desk, version) = shared.desk();
    let first = query.first.unwrap_or(0);
    let bars = (first, query.last.unwrap_or(first));
    let wording = request.spoken().wording(&desk);
    let found = ways(&desk, query.line, bars, (&shared.engraver, version), &wording);
    PageAnswer::json(&found.map_err(Failed::impossible)?)
}

/// Changes of the slurs around a stroke: split, join, shift.
#[utoipa::path(get, path = "/api/slurs", params(StrokeQuery), responses((status = 200, body = Vec<OfferView>), (status = 400, body = Failed)))]
fn other_slurs(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: StrokeQuery = request.query()?;
    let (desk, _) = shared.desk();
    PageAnswer::json(&views::offers(&desk, (query.line, query.stroke), &request.spoken().wording(&desk)))
}

/// Takes a change of slurs into the layer that is written in.
#[utoipa::path(post, path = "/api/slurs/layer", request_body = ChangeRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn slurs_into_layer(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let ChangeRequest { edits, version, by } = request.json()?;
    done(shared, (request, by, None), |session| {
        let layer = session.desk().base.slurs_for_layer(session.state(), &edits);
        let text = arcata_layer::write(&layer.map_err(Failed::impossible)?);
        acted(session, Act::Slurs { text }, version)
    })
}

/// Some bars as they would be with one change more in the score; changes nothing.
#[utoipa::path(post, path = "/api/look", request_body = LookRequest, responses((status = 200, body = PictureView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn look(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let look: LookRequest = request.json()?;
    let (desk, state, version) = {
        let session = shared.session();
        (session.desk(), session.state().clone(), session.version())
    };
    if version != look.version {
        return Err(SessionError::Late.into());
    }
    let bars = (look.line, look.first, look.last);
    let wording = request.spoken().wording(&desk);
    let drawing = (shared.engraver.as_ref(), version, &wording);
    let drawn = comparison::changed_picture(&desk, (&state, &look.edits), bars, drawing);
    PageAnswer::json(&drawn.map_err(Failed::impossible)?)
}

/// Who begins a stroke on which downbeat.
#[utoipa::path(get, path = "/api/downbeats", responses((status = 200, body = Object)))]
fn downbeats(shared: &Shared, _: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    PageAnswer::json(&views::downbeat_table(&shared.desk().0))
}

/// What is heard, in milliseconds.
#[utoipa::path(get, path = "/api/sound", responses((status = 200, body = PieceSound)))]
fn heard(shared: &Shared, _: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let (desk, version) = shared.desk();
    PageAnswer::json(&sound(&desk, version))
}

/// A rule explained.
#[utoipa::path(get, path = "/api/rules/{rule}", params(("rule" = String, Path), LanguageQuery), responses((status = 200, body = RuleView), (status = 404, body = Failed), (status = 422, body = Failed)))]
fn rule(_: &Shared, request: &PageRequest, rule: &str) -> Result<PageAnswer, Failed> {
    let query: LanguageQuery = request.query()?;
    let language =
        Language::from_str(query.language.as_deref().unwrap_or("en")).map_err(Failed::impossible)?;
    let texts = Texts::new(language);
    let text = texts.rule(rule).ok_or_else(|| Failed::missing("no rule is called so"))?;
    let language = language.code().to_owned();
    let rule = rule.to_owned();
    PageAnswer::json(&RuleView { rule, language, title: text.title, finds: text.finds, why: text.why })
}

/// Does what a page asks for, and tells the others; the lanes that the page shows come with the answer.
fn done(
    shared: &Shared,
    (request, by, shown): (&PageRequest, String, Option<ShownRequest>),
    job: impl FnOnce(&mut Session) -> Result<DoneView, Failed>,
) -> Result<Deed, Failed> {
    let (done, desk) = {
        let mut session = shared.session();
        (job(&mut session)?, session.desk())
    };
    shared.tell(&Happened::Done { done: done.clone(), by });
    Ok(Deed::Done { done, desk, shown, spoken: request.spoken() })
}

fn acted(session: &mut Session, act: Act, version: u64) -> Result<DoneView, Failed> {
    let moved = session.act(act, Some(version))?;
    Ok(DoneView::new(session, Some(moved), Vec::new()))
}

/// Does an act.
#[utoipa::path(post, path = "/api/acts", request_body = ActRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn act(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let ActRequest { act, version, by } = request.json()?;
    if matches!(act, Act::Carried { .. }) {
        return Err(Failed::impossible("a layer is carried over when the file changes, not before"));
    }
    done(shared, (request, by, None), |session| acted(session, act, version))
}

/// Asks for a bow.
#[utoipa::path(post, path = "/api/bow", request_body = BowRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn bow(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let BowRequest { line, asks: wanted, goes, version, by, shown } = request.json()?;
    done(shared, (request, by, shown), |session| {
        let desk = session.desk();
        let mut asks = Vec::new();
        for asked in &wanted {
            let at = StrokeAt { line, stroke: asked.stroke };
            if !is_there(desk.base.lines(), at) {
                return Err(Failed::impossible("there is no such stroke"));
            }
            let all: Vec<StrokeAt> = alike(&desk.base, at, goes).into_iter().collect();
            let places = session.places_of(&all).into_iter();
            asks.extend(places.map(|place| Asked { place, ask: asked.ask }));
        }
        acted(session, Act::Bow { asks }, version)
    })
}

/// The strokes that are played as one is.
#[utoipa::path(get, path = "/api/alike", params(StrokeQuery), responses((status = 200, body = AlikeView), (status = 404, body = Failed), (status = 400, body = Failed)))]
fn who_plays_alike(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: StrokeQuery = request.query()?;
    let (base, at) = (&shared.desk().0.base, StrokeAt { line: query.line, stroke: query.stroke });
    if !is_there(base.lines(), at) {
        return Err(Failed::missing("there is no such stroke"));
    }
    PageAnswer::json(&AlikeView::new(base, at))
}

/// Says what a slur is.
#[utoipa::path(post, path = "/api/slur", request_body = SlurRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn slur(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let SlurRequest { line, stroke, is, version, by } = request.json()?;
    done(shared, (request, by, None), |session| {
        let place = views::slur_place(&session.desk(), line, stroke);
        let place = place.ok_or_else(|| Failed::impossible("no slur begins there"))?;
        acted(session, Act::Slur { place, is }, version)
    })
}

/// Takes a proposal of the review into the score.
#[utoipa::path(post, path = "/api/proposal", request_body = ProposalRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn proposal(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let spoken = request.spoken();
    let ProposalRequest { finding, proposal, version, by } = request.json()?;
    done(shared, (request, by, None), |session| {
        if session.version() != version {
            return Err(SessionError::Late.into());
        }
        let findings = shared.found(version).ok_or(Failed::from(SessionError::Late))?;
        let proposal = findings.get(finding).and_then(|finding| finding.proposals.get(proposal));
        let proposal = proposal.ok_or_else(|| Failed::impossible("there is no such proposal"))?;
        if proposal.edits.is_empty() {
            return Err(Failed::impossible(
                "this proposal changes nothing in the file: make the change in the score itself",
            ));
        }
        let edits = views::byte_edits(&proposal.edits);
        let sentence = spoken.wording(&session.desk()).say(&proposal.sentence);
        acted(session, Act::Change { sentence, edits, of: None }, version)
    })
}

/// Undoes the last act.
#[utoipa::path(post, path = "/api/undo", request_body = StepRequest, responses((status = 200, body = DoneView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
fn undo(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let StepRequest { by, shown } = request.json()?;
    done(shared, (request, by, shown), |session| {
        let moved = session.undo()?;
        Ok(DoneView::new(session, moved, Vec::new()))
    })
}

/// Does again what was undone.
#[utoipa::path(post, path = "/api/redo", request_body = StepRequest, responses((status = 200, body = DoneView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
fn redo(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let StepRequest { by, shown } = request.json()?;
    done(shared, (request, by, shown), |session| {
        let moved = session.redo()?;
        Ok(DoneView::new(session, moved, Vec::new()))
    })
}

/// Says what is wrong with bowings as they are typed; changes nothing.
#[utoipa::path(post, path = "/api/shorthand", request_body = ShorthandRequest, responses((status = 200, body = ShorthandView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
fn check_shorthand(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let request: ShorthandRequest = request.json()?;
    let (desk, _) = shared.desk();
    let addresses = Addresses::new(desk.base.score());
    let (read, mut complaints) = shorthand::read(&request.text);
    let entered = shorthand::enter(&read, &addresses);
    complaints.extend(entered.complaints.iter().cloned());
    complaints.sort_by_key(|complaint| complaint.at);
    PageAnswer::json(&ShorthandView {
        decisions: entered.entries.len(),
        sound: complaints.iter().all(|complaint| complaint.gravity != shorthand::Gravity::Wrong),
        complaints: complaints.iter().take(20).map(|complaint| complaint.shown(&request.text)).collect(),
    })
}

/// The layer as shorthand.
#[utoipa::path(get, path = "/api/layer/shorthand", responses((status = 200, body = TextView)))]
fn layer_shorthand(shared: &Shared, _: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let (desk, layer) = {
        let session = shared.session();
        (session.desk(), session.state().layers.written().layer.clone())
    };
    let text = shorthand::of_layer(&layer, &Addresses::new(desk.base.score())).to_string();
    PageAnswer::json(&TextView { text })
}

/// Where two layers on the desk differ.
#[utoipa::path(get, path = "/api/layers/differences", params(TwoLayersQuery), responses((status = 200, body = Vec<PassageView>), (status = 404, body = Failed), (status = 400, body = Failed)))]
fn differences(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: TwoLayersQuery = request.query()?;
    let one = shared.layer(query.one)?;
    let other = shared.layer(query.other)?;
    let (desk, _) = shared.desk();
    let wording = request.spoken().wording(&desk);
    PageAnswer::json(&comparison::passages(&desk, (&one, &other), &wording))
}

/// Some bars of a line as they are bowed under one layer alone.
#[utoipa::path(get, path = "/api/layers/picture", params(LayerPictureQuery), responses((status = 200, body = PictureView), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn layer_picture(shared: &Shared, request: &PageRequest, _: &str) -> Result<PageAnswer, Failed> {
    let query: LayerPictureQuery = request.query()?;
    let layer = shared.layer(query.layer)?;
    let (desk, state, version) = {
        let session = shared.session();
        (session.desk(), session.state().clone(), session.version())
    };
    let bars = (query.line, query.first, query.last);
    let wording = request.spoken().wording(&desk);
    let drawn = comparison::picture(&desk, (&state, &layer), bars, (&shared.engraver, version, &wording));
    PageAnswer::json(&drawn.map_err(Failed::impossible)?)
}

/// A file for the browser to show or keep; of several the first.
#[utoipa::path(get, path = "/api/export/{what}", params(("what" = ExportKind, Path), PictureQuery, PartQuery), responses((status = 200, description = "the file"), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed)))]
fn exported(shared: &Shared, request: &PageRequest, what: &str) -> Result<PageAnswer, Failed> {
    let (picture, part): (PictureQuery, PartQuery) = (request.query()?, request.query()?);
    let parcel = export::leaving((shared, request.spoken()), what, (&picture, &part))?;
    let file = parcel.files.into_iter().next();
    let file = file.ok_or_else(|| Failed::new(Failed::BROKEN, "the file cannot be sent"))?;
    Ok(PageAnswer { status: 200, kind: file.kind, file: Some(file.name), bytes: file.bytes })
}

/// Writes files beside the score; the score itself is never written over, and what somebody else wrote there is kept.
#[utoipa::path(post, path = "/api/keep/{what}", params(("what" = ExportKind, Path), PictureQuery, PartQuery), request_body = StepRequest, responses((status = 200, body = KeptView), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
fn kept(shared: &Shared, request: &PageRequest, what: &str) -> Result<Deed, Failed> {
    let (picture, part): (PictureQuery, PartQuery) = (request.query()?, request.query()?);
    let _: StepRequest = request.json()?;
    let parcel = export::leaving((shared, request.spoken()), what, (&picture, &part))?;
    shared.session().shelf().keep(parcel).map(Deed::Kept).map_err(Failed::impossible)
}

/// Writes the changes of the score into its own file; the file as it was is kept under another name.
#[utoipa::path(post, path = "/api/write", request_body = StepRequest, responses((status = 200, body = WrittenView), (status = 409, body = Failed), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
fn write(shared: &Shared, request: &PageRequest, _: &str) -> Result<Deed, Failed> {
    let StepRequest { by, .. } = request.json()?;
    let (done, kept) = {
        let mut session = shared.session();
        let (moved, told, kept) = session.write_score()?;
        (DoneView::new(&session, Some(moved), told), kept)
    };
    shared.tell(&Happened::Done { done: done.clone(), by });
    Ok(Deed::Written(WrittenView { done, kept }))
}

/// The addresses, described in OpenAPI.
#[derive(OpenApi)]
#[openapi(
    info(
        title = "Arcata workbench",
        description = "What the page of the workbench asks of its server, on this machine."
    ),
    paths(
        score,
        place_read,
        systems,
        system,
        pages,
        ask_break,
        strokes,
        findings,
        other_ways,
        other_slurs,
        look,
        slurs_into_layer,
        downbeats,
        heard,
        rule,
        act,
        bow,
        who_plays_alike,
        slur,
        proposal,
        undo,
        redo,
        check_shorthand,
        layer_shorthand,
        differences,
        layer_picture,
        exported,
        kept,
        write
    ),
    components(schemas(ExportKind, Act, Ask, Asked, Begins, NotePlace, SlurIs, ByteEdit, Happened))
)]
pub struct Description;
