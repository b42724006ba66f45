//! The addresses that the page asks.
#![allow(unused_qualifications, reason = "the descriptions that utoipa makes name types in full")]

use std::collections::BTreeMap;
use std::net::SocketAddr;
use std::str::FromStr as _;

use arcata_engrave::music_style_sheet;
use arcata_languages::{Language, Texts};
use arcata_layer::{Addresses, shorthand};
use axum::body::Body;
use axum::extract::{DefaultBodyLimit, Path, State};
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use axum::{Router, middleware};
use utoipa::OpenApi;

use crate::act::{Act, Ask, Asked, ByteEdit, NotePlace, SlurIs};
use crate::alike::{AlikeView, StrokeAt, alike, is_there};
use crate::comparison::{self, PassageView};
use crate::drawing::{self, PictureView, SystemView, Wanted};
use crate::events::{self, Happened};
use crate::failed::{Answer, Failed, Json, Query, work};
use crate::guard::{AccessKey, Guard, guard};
use crate::place::{PlaceView, place};
use crate::request_language::RequestLanguage;
use crate::requests::{
    ActRequest, BowRequest, ChangeRequest, ExportKind, KeptView, LanguageQuery, LayerPictureQuery, LineQuery,
    LookRequest, PartQuery, PictureQuery, PlaceQuery, ProposalRequest, RuleView, ShorthandRequest,
    ShorthandView, ShownRequest, SlurRequest, StepRequest, StrokeQuery, TextView, TwoLayersQuery,
    WrittenView,
};
use crate::session::{Session, SessionError};
use crate::shared::Shared;
use crate::sound::{PieceSound, sound};
use crate::views::{self, DoneView, FindingsView, OfferView, ScoreView, StrokeView};
use crate::ways::{WayView, ways};
use crate::{export, page};

/// A request holds no more than this: shorthand for a whole symphony.
const LARGEST: usize = 1 << 20;
/// An act holds no more than this: a layer for a whole symphony, changes of a score.
const LARGEST_ACT: usize = 16 << 20;
/// Everything behind the guard.
pub fn router(shared: Shared, key: AccessKey, address: SocketAddr) -> Router {
    let api = Router::new()
        .route("/score", get(score))
        .route("/place", get(place_read))
        .route("/systems", get(systems))
        .route("/system", get(system))
        .route("/strokes", get(strokes))
        .route("/findings", get(findings))
        .route("/ways", get(other_ways))
        .route("/slurs", get(other_slurs))
        .route("/look", post(look))
        .route("/slurs/layer", post(slurs_into_layer))
        .route("/downbeats", get(downbeats))
        .route("/sound", get(heard))
        .route("/rules/{rule}", get(rule))
        .route("/acts", post(act).layer(DefaultBodyLimit::max(LARGEST_ACT)))
        .route("/bow", post(bow))
        .route("/proposal", post(proposal))
        .route("/slur", post(slur))
        .route("/alike", get(who_plays_alike))
        .route("/undo", post(undo))
        .route("/redo", post(redo))
        .route("/shorthand", post(check_shorthand))
        .route("/layer/shorthand", get(layer_shorthand))
        .route("/layers/differences", get(differences))
        .route("/layers/picture", get(layer_picture))
        .route("/export/{what}", get(exported))
        .route("/keep/{what}", post(kept))
        .route("/write", post(write))
        .route("/events", get(listen))
        .route("/openapi.json", get(openapi))
        .fallback(|| async { Failed::missing("there is nothing at this address") });
    Router::new()
        .route("/", get(|| async { page::index() }))
        .route(
            "/fonts.css",
            get(|| async { ([(header::CONTENT_TYPE, "text/css; charset=utf-8")], music_style_sheet()) }),
        )
        .route("/page/{file}", get(|Path(file): Path<String>| async move { page::file(&file) }))
        .nest("/api", api)
        .layer(DefaultBodyLimit::max(LARGEST))
        .layer(middleware::from_fn_with_state(Guard { key, address }, guard))
        .with_state(shared)
}

/// The score as a whole.
#[utoipa::path(get, path = "/api/score", params(("accept-language" = Option<String>, Header, description = "The language of the sentences: en, it, fr or de.")), responses((status = 200, body = ScoreView)))]
async fn score(State(shared): State<Shared>, spoken: RequestLanguage) -> Answer<ScoreView> {
    work(move || Ok(axum::Json(ScoreView::new(&shared.session(), spoken)))).await
}

/// A place that somebody typed, read as everywhere.
#[utoipa::path(get, path = "/api/place", params(PlaceQuery), responses((status = 200, body = PlaceView), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn place_read(State(shared): State<Shared>, Query(query): Query<PlaceQuery>) -> Answer<PlaceView> {
    work(move || {
        let (desk, _) = shared.desk();
        place(desk.base.score(), &query.text, query.movement).map(axum::Json).map_err(Failed::impossible)
    })
    .await
}

/// Which bars share a line of music.
#[utoipa::path(get, path = "/api/systems", params(PictureQuery), responses((status = 200, body = Vec<SystemView>), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn systems(State(shared): State<Shared>, Query(query): Query<PictureQuery>) -> Answer<Vec<SystemView>> {
    let wanted = query.wanted()?;
    work(move || Ok(axum::Json(drawing::systems(&shared.desk().0, &wanted, &shared.engraver)))).await
}

/// One line of music, engraved, with the bow under the staves.
#[utoipa::path(get, path = "/api/system", params(PictureQuery), responses((status = 200, body = PictureView), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn system(State(shared): State<Shared>, Query(query): Query<PictureQuery>) -> Answer<PictureView> {
    let wanted = query.wanted()?;
    work(move || {
        let (desk, version) = shared.desk();
        let bars = query.first.unwrap_or(0)..=query.last.or(query.first).unwrap_or(0);
        let drawn = drawing::system(&desk, &wanted, bars, (&shared.engraver, version));
        drawn.map(axum::Json).map_err(Failed::impossible)
    })
    .await
}

/// The strokes of a line.
#[utoipa::path(get, path = "/api/strokes", params(LineQuery), responses((status = 200, body = Vec<StrokeView>), (status = 404, body = Failed), (status = 400, body = Failed)))]
async fn strokes(State(shared): State<Shared>, Query(query): Query<LineQuery>) -> Answer<Vec<StrokeView>> {
    work(move || {
        let strokes = views::strokes(&shared.desk().0, query.line)
            .ok_or_else(|| Failed::missing("there is no such line"))?;
        let bars = query.first.unwrap_or(0)..=query.last.unwrap_or(u32::MAX);
        Ok(axum::Json(strokes.into_iter().filter(|stroke| bars.contains(&stroke.bar)).collect()))
    })
    .await
}

/// What the review finds.
#[utoipa::path(get, path = "/api/findings", params(("accept-language" = Option<String>, Header, description = "The language of the sentences: en, it, fr or de.")), responses((status = 200, body = FindingsView)))]
async fn findings(State(shared): State<Shared>, spoken: RequestLanguage) -> Answer<FindingsView> {
    work(move || {
        let found = shared.findings();
        Ok(axum::Json(FindingsView::new(
            found.version,
            (&found.findings, found.aside),
            &spoken.wording(&shared.desk().0),
        )))
    })
    .await
}

/// Other ways to bow some bars of a line.
#[utoipa::path(get, path = "/api/ways", params(LineQuery), responses((status = 200, body = Vec<WayView>), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn other_ways(
    State(shared): State<Shared>,
    spoken: RequestLanguage,
    Query(query): Query<LineQuery>,
) -> Answer<Vec<WayView>> {
    work(move || {
        let (desk, version) = shared.desk();
        let first = query.first.unwrap_or(0);
        let bars = (first, query.last.unwrap_or(first));
        ways(&desk, query.line, bars, (&shared.engraver, version), &spoken.wording(&desk))
            .map(axum::Json)
            .map_err(Failed::impossible)
    })
    .await
}

/// Changes of the slurs around a stroke: split, join, shift.
#[utoipa::path(get, path = "/api/slurs", params(StrokeQuery), responses((status = 200, body = Vec<OfferView>), (status = 400, body = Failed)))]
async fn other_slurs(
    State(shared): State<Shared>,
    spoken: RequestLanguage,
    Query(query): Query<StrokeQuery>,
) -> Answer<Vec<OfferView>> {
    work(move || {
        let (desk, _) = shared.desk();
        Ok(axum::Json(views::offers(&desk, (query.line, query.stroke), &spoken.wording(&desk))))
    })
    .await
}

/// Takes a change of slurs into the layer that is written in.
#[utoipa::path(post, path = "/api/slurs/layer", request_body = ChangeRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn slurs_into_layer(
    State(shared): State<Shared>,
    Json(request): Json<ChangeRequest>,
) -> Answer<DoneView> {
    done(shared, (request.by.clone(), None), move |session| {
        let layer = session.desk().base.slurs_for_layer(session.state(), &request.edits);
        let text = arcata_layer::write(&layer.map_err(Failed::impossible)?);
        acted(session, Act::Slurs { text }, request.version)
    })
    .await
}

/// Some bars as they would be with one change more in the score; changes nothing.
#[utoipa::path(post, path = "/api/look", request_body = LookRequest, responses((status = 200, body = PictureView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn look(State(shared): State<Shared>, Json(request): Json<LookRequest>) -> Answer<PictureView> {
    work(move || {
        let (desk, state, version) = {
            let session = shared.session();
            (session.desk(), session.state().clone(), session.version())
        };
        if version != request.version {
            return Err(SessionError::Late.into());
        }
        let bars = (request.line, request.first, request.last);
        let drawing = (shared.engraver.as_ref(), version);
        let drawn = comparison::changed_picture(&desk, (&state, &request.edits), bars, drawing);
        drawn.map(axum::Json).map_err(Failed::impossible)
    })
    .await
}

/// Who begins a stroke on which downbeat.
#[utoipa::path(get, path = "/api/downbeats", responses((status = 200, body = Object)))]
async fn downbeats(State(shared): State<Shared>) -> Answer<serde_json::Value> {
    work(move || Ok(axum::Json(views::downbeat_table(&shared.desk().0)))).await
}

/// What is heard, in milliseconds.
#[utoipa::path(get, path = "/api/sound", responses((status = 200, body = PieceSound)))]
async fn heard(State(shared): State<Shared>) -> Answer<PieceSound> {
    work(move || {
        let (desk, version) = shared.desk();
        Ok(axum::Json(sound(&desk, version)))
    })
    .await
}

/// A rule explained.
#[utoipa::path(get, path = "/api/rules/{rule}", params(("rule" = String, Path), LanguageQuery), responses((status = 200, body = RuleView), (status = 404, body = Failed), (status = 422, body = Failed)))]
async fn rule(Path(rule): Path<String>, Query(query): Query<LanguageQuery>) -> Answer<RuleView> {
    let language =
        Language::from_str(query.language.as_deref().unwrap_or("en")).map_err(Failed::impossible)?;
    let texts = Texts::new(language);
    let text = texts.rule(&rule).ok_or_else(|| Failed::missing("no rule is called so"))?;
    let language = language.code().to_owned();
    Ok(axum::Json(RuleView { rule, language, title: text.title, finds: text.finds, why: text.why }))
}

/// Does what a page asks for, and tells the others; the lanes that the page shows come with the answer.
async fn done(
    shared: Shared,
    (by, shown): (String, Option<ShownRequest>),
    job: impl FnOnce(&mut Session) -> Result<DoneView, Failed> + Send + 'static,
) -> Answer<DoneView> {
    work(move || {
        let (mut done, desk) = {
            let mut session = shared.session();
            (job(&mut session)?, session.desk())
        };
        // Nobody listening is no trouble.
        let _ = shared.happened.send(Happened::Done { done: done.clone(), by });
        if let Some(shown) = shown.filter(|_| !done.everything) {
            let wanted = Wanted { parts: shown.parts, width: shown.width, sure: shown.sure };
            let moved: Vec<_> =
                done.moved.iter().map(|moved| (moved.line, moved.first, moved.last)).collect();
            let drawing = (shared.engraver.as_ref(), done.version);
            done.drawn = drawing::moved_lanes(&desk, (&wanted, &shown.systems), &moved, drawing);
        }
        Ok(axum::Json(done))
    })
    .await
}

fn acted(session: &mut Session, act: Act, version: u64) -> Result<DoneView, Failed> {
    let moved = session.act(act, Some(version))?;
    Ok(DoneView::new(session, Some(moved), Vec::new()))
}

/// Does an act.
#[utoipa::path(post, path = "/api/acts", request_body = ActRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn act(State(shared): State<Shared>, Json(request): Json<ActRequest>) -> Answer<DoneView> {
    if matches!(request.act, Act::Carried { .. }) {
        return Err(Failed::impossible("a layer is carried over when the file changes, not before"));
    }
    done(shared, (request.by, None), move |session| acted(session, request.act, request.version)).await
}

/// Asks for a bow.
#[utoipa::path(post, path = "/api/bow", request_body = BowRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn bow(State(shared): State<Shared>, Json(request): Json<BowRequest>) -> Answer<DoneView> {
    done(shared, (request.by.clone(), request.shown.clone()), move |session| {
        let desk = session.desk();
        let mut asks = Vec::new();
        for asked in &request.asks {
            let at = StrokeAt { line: request.line, stroke: asked.stroke };
            if !is_there(desk.base.lines(), at) {
                return Err(Failed::impossible("there is no such stroke"));
            }
            let all: Vec<StrokeAt> = alike(&desk.base, at, request.goes).into_iter().collect();
            let places = session.places_of(&all).into_iter();
            asks.extend(places.map(|place| Asked { place, ask: asked.ask }));
        }
        acted(session, Act::Bow { asks }, request.version)
    })
    .await
}

/// The strokes that are played as one is.
#[utoipa::path(get, path = "/api/alike", params(StrokeQuery), responses((status = 200, body = AlikeView), (status = 404, body = Failed), (status = 400, body = Failed)))]
async fn who_plays_alike(
    State(shared): State<Shared>,
    Query(query): Query<StrokeQuery>,
) -> Answer<AlikeView> {
    work(move || {
        let (base, at) = (&shared.desk().0.base, StrokeAt { line: query.line, stroke: query.stroke });
        if !is_there(base.lines(), at) {
            return Err(Failed::missing("there is no such stroke"));
        }
        Ok(axum::Json(AlikeView::new(base, at)))
    })
    .await
}

/// Says what a slur is.
#[utoipa::path(post, path = "/api/slur", request_body = SlurRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn slur(State(shared): State<Shared>, Json(request): Json<SlurRequest>) -> Answer<DoneView> {
    done(shared, (request.by.clone(), None), move |session| {
        let place = views::slur_place(&session.desk(), request.line, request.stroke);
        let place = place.ok_or_else(|| Failed::impossible("no slur begins there"))?;
        acted(session, Act::Slur { place, is: request.is }, request.version)
    })
    .await
}

/// Takes a proposal of the review into the score.
#[utoipa::path(post, path = "/api/proposal", request_body = ProposalRequest, responses((status = 200, body = DoneView), (status = 409, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn proposal(
    State(shared): State<Shared>,
    spoken: RequestLanguage,
    Json(request): Json<ProposalRequest>,
) -> Answer<DoneView> {
    let looking = shared.clone();
    done(shared, (request.by.clone(), None), move |session| {
        if session.version() != request.version {
            return Err(SessionError::Late.into());
        }
        let findings = looking.found(request.version).ok_or(Failed::from(SessionError::Late))?;
        let proposal =
            findings.get(request.finding).and_then(|finding| finding.proposals.get(request.proposal));
        let proposal = proposal.ok_or_else(|| Failed::impossible("there is no such proposal"))?;
        if proposal.edits.is_empty() {
            return Err(Failed::impossible(
                "this proposal changes nothing in the file: make the change in the score itself",
            ));
        }
        let edits = views::byte_edits(&proposal.edits);
        let sentence = spoken.wording(&session.desk()).say(&proposal.sentence);
        let change = Act::Change { sentence, edits, of: None };
        acted(session, change, request.version)
    })
    .await
}

/// Undoes the last act.
#[utoipa::path(post, path = "/api/undo", request_body = StepRequest, responses((status = 200, body = DoneView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
async fn undo(State(shared): State<Shared>, Json(request): Json<StepRequest>) -> Answer<DoneView> {
    done(shared, (request.by, request.shown), |session| {
        let moved = session.undo()?;
        Ok(DoneView::new(session, moved, Vec::new()))
    })
    .await
}

/// Does again what was undone.
#[utoipa::path(post, path = "/api/redo", request_body = StepRequest, responses((status = 200, body = DoneView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
async fn redo(State(shared): State<Shared>, Json(request): Json<StepRequest>) -> Answer<DoneView> {
    done(shared, (request.by, request.shown), |session| {
        let moved = session.redo()?;
        Ok(DoneView::new(session, moved, Vec::new()))
    })
    .await
}

/// Says what is wrong with bowings as they are typed; changes nothing.
#[utoipa::path(post, path = "/api/shorthand", request_body = ShorthandRequest, responses((status = 200, body = ShorthandView), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
async fn check_shorthand(
    State(shared): State<Shared>,
    Json(request): Json<ShorthandRequest>,
) -> Answer<ShorthandView> {
    work(move || {
        let (desk, _) = shared.desk();
        let addresses = Addresses::new(desk.base.score());
        let (read, mut complaints) = shorthand::read(&request.text);
        let entered = shorthand::enter(&read, &addresses);
        complaints.extend(entered.complaints.iter().cloned());
        complaints.sort_by_key(|complaint| complaint.at);
        Ok(axum::Json(ShorthandView {
            decisions: entered.entries.len(),
            sound: complaints.iter().all(|complaint| complaint.gravity != shorthand::Gravity::Wrong),
            complaints: complaints.iter().take(20).map(|complaint| complaint.shown(&request.text)).collect(),
        }))
    })
    .await
}

/// The layer as shorthand.
#[utoipa::path(get, path = "/api/layer/shorthand", responses((status = 200, body = TextView)))]
async fn layer_shorthand(State(shared): State<Shared>) -> Answer<TextView> {
    work(move || {
        let (desk, layer) = {
            let session = shared.session();
            (session.desk(), session.state().layers.written().layer.clone())
        };
        let text = shorthand::of_layer(&layer, &Addresses::new(desk.base.score())).to_string();
        Ok(axum::Json(TextView { text }))
    })
    .await
}

/// Where two layers on the desk differ.
#[utoipa::path(get, path = "/api/layers/differences", params(TwoLayersQuery), responses((status = 200, body = Vec<PassageView>), (status = 404, body = Failed), (status = 400, body = Failed)))]
async fn differences(
    State(shared): State<Shared>,
    Query(query): Query<TwoLayersQuery>,
) -> Answer<Vec<PassageView>> {
    work(move || {
        let one = shared.layer(query.one)?;
        let other = shared.layer(query.other)?;
        Ok(axum::Json(comparison::passages(&shared.desk().0, &one, &other)))
    })
    .await
}

/// Some bars of a line as they are bowed under one layer alone.
#[utoipa::path(get, path = "/api/layers/picture", params(LayerPictureQuery), responses((status = 200, body = PictureView), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn layer_picture(
    State(shared): State<Shared>,
    Query(query): Query<LayerPictureQuery>,
) -> Answer<PictureView> {
    work(move || {
        let layer = shared.layer(query.layer)?;
        let (desk, state, version) = {
            let session = shared.session();
            (session.desk(), session.state().clone(), session.version())
        };
        let bars = (query.line, query.first, query.last);
        let drawn = comparison::picture(&desk, (&state, &layer), bars, (&shared.engraver, version));
        drawn.map(axum::Json).map_err(Failed::impossible)
    })
    .await
}

/// A file for the browser to show or keep; of several the first.
#[utoipa::path(get, path = "/api/export/{what}", params(("what" = ExportKind, Path), PictureQuery, PartQuery), responses((status = 200, description = "the file"), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed)))]
async fn exported(
    State(shared): State<Shared>,
    spoken: RequestLanguage,
    Path(what): Path<String>,
    Query(picture): Query<PictureQuery>,
    Query(part): Query<PartQuery>,
) -> Result<Response, Failed> {
    let parcel = work(move || export::leaving((&shared, spoken), &what, (&picture, &part))).await?;
    let missing = || Failed::new(StatusCode::INTERNAL_SERVER_ERROR, "the file cannot be sent");
    let file = parcel.files.into_iter().next().ok_or_else(missing)?;
    let name: String =
        file.name.chars().filter(|letter| letter.is_ascii_graphic() && !"\"\\;".contains(*letter)).collect();
    // What browsers show by themselves they show: from there it is printed.
    let how = if file.kind == "application/pdf" { "inline" } else { "attachment" };
    let answer = Response::builder()
        .header(header::CONTENT_TYPE, file.kind)
        .header(header::CONTENT_DISPOSITION, format!("{how}; filename=\"{name}\""))
        .body(Body::from(file.bytes));
    answer.map_err(|_| missing())
}

/// Writes files beside the score; the score itself is never written over, and what somebody else wrote there is kept.
#[utoipa::path(post, path = "/api/keep/{what}", params(("what" = ExportKind, Path), PictureQuery, PartQuery), request_body = StepRequest, responses((status = 200, body = KeptView), (status = 404, body = Failed), (status = 422, body = Failed), (status = 400, body = Failed), (status = 415, body = Failed)))]
async fn kept(
    State(shared): State<Shared>,
    spoken: RequestLanguage,
    Path(what): Path<String>,
    Query(picture): Query<PictureQuery>,
    Query(part): Query<PartQuery>,
    Json(_request): Json<StepRequest>,
) -> Answer<KeptView> {
    work(move || {
        let parcel = export::leaving((&shared, spoken), &what, (&picture, &part))?;
        let score = shared.session().path().to_owned();
        shared.keep(&score, parcel).map(axum::Json).map_err(Failed::impossible)
    })
    .await
}

/// Writes the changes of the score into its own file; the file as it was is kept under another name.
#[utoipa::path(post, path = "/api/write", request_body = StepRequest, responses((status = 200, body = WrittenView), (status = 409, body = Failed), (status = 400, body = Failed), (status = 422, body = Failed), (status = 415, body = Failed)))]
async fn write(State(shared): State<Shared>, Json(request): Json<StepRequest>) -> Answer<WrittenView> {
    work(move || {
        let (done, kept) = {
            let mut session = shared.session();
            let (moved, told, kept) = session.write_score()?;
            (DoneView::new(&session, Some(moved), told), kept)
        };
        // Nobody listening is no trouble.
        let _ = shared.happened.send(Happened::Done { done: done.clone(), by: request.by });
        Ok(axum::Json(WrittenView { done, kept }))
    })
    .await
}

/// What happens, as server-sent events.
#[utoipa::path(get, path = "/api/events", responses((status = 200, description = "a stream of events", content_type = "text/event-stream")))]
async fn listen(State(shared): State<Shared>) -> impl IntoResponse {
    events::stream(shared.happened.subscribe())
}

/// The addresses, described.
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
        write,
        listen
    ),
    components(schemas(ExportKind, Act, Ask, Asked, NotePlace, SlurIs, ByteEdit, Happened))
)]
struct Description;

async fn openapi() -> axum::Json<BTreeMap<String, serde_json::Value>> {
    let text = Description::openapi().to_json().unwrap_or_default();
    axum::Json(serde_json::from_str(&text).unwrap_or_default())
}
