//! What leaves the workbench as a file: the score with the bowings on it, the layer, a picture, a PDF.

use arcata_engrave::{Cutter, Engraver, LanePlan, Painter, PictureContent, PictureStyle, pdf};
use arcata_layer::{Trust, apply};

use crate::beside;
use crate::desk::Desk;
use crate::failed::Failed;
use crate::shared::Shared;
use crate::state::State;

/// What leaves as a file: its name, its kind, its bytes.
pub(crate) struct Leaving {
    pub(crate) name: String,
    pub(crate) kind: &'static str,
    pub(crate) bytes: Vec<u8>,
}

pub(crate) fn leaving(shared: &Shared, what: &str) -> Result<Leaving, Failed> {
    let (desk, state, stem): (Desk, State, String) = {
        let session = shared.session();
        let stem = session.path().file_stem().unwrap_or_default().to_string_lossy().into_owned();
        (session.desk(), session.state().clone(), stem)
    };
    let wrong = |why: String| Failed::impossible(why);
    let (name, kind, bytes) = match what {
        "score" => {
            let bytes = score(&desk, &state).map_err(wrong)?;
            (format!("{stem}-bowed.musicxml"), "application/vnd.recordare.musicxml+xml", bytes)
        }
        "layer" => (
            format!("{stem}.bowings.json"),
            "application/json",
            arcata_layer::write(&state.layer).into_bytes(),
        ),
        "pdf" => {
            let title = desk.base.score.title.clone().unwrap_or_else(|| stem.clone());
            let bytes = pages(&desk, &title, &shared.engraver).map_err(wrong)?;
            (format!("{stem}-bows.pdf"), "application/pdf", bytes)
        }
        "aside" => {
            let score = shared.session().path().to_owned();
            let text = beside::with(&score, &state).map_err(wrong)?;
            (format!("{stem}.aside.toml"), "application/toml", text.into_bytes())
        }
        _ => return Err(Failed::missing("what leaves is score, layer, pdf or aside")),
    };
    Ok(Leaving { name, kind, bytes })
}

/// The score with the layer on it.
///
/// # Errors
/// Where the layer does not fit, in words.
fn score(desk: &Desk, state: &State) -> Result<Vec<u8>, String> {
    let document = desk.base.file.document();
    let applied = apply(document, &desk.base.score, &state.layer, &[], Trust::AnyScore)
        .map_err(|problem| problem.to_string())?;
    document.apply(&applied.edits).map_err(|problem| problem.to_string())
}

/// The whole plan on pages of A4.
///
/// # Errors
/// Where nothing can be drawn, in words.
fn pages(desk: &Desk, title: &str, engraver: &Engraver) -> Result<Vec<u8>, String> {
    let base = &desk.base;
    let lanes: Vec<LanePlan<'_>> = base
        .lines
        .iter()
        .enumerate()
        .map(|(index, line)| LanePlan {
            line,
            first: 0,
            planned: &desk.plans[index].strokes,
            hair: base.settings(index, &[]).reach.hair,
            name: String::new(),
        })
        .collect();
    let last = u32::try_from(base.score.bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let content = PictureContent {
        title: title.to_owned(),
        subtitle: base.assumptions.join(". "),
        bars: 0..=last,
        lanes: &lanes,
        captions: Vec::new(),
    };
    let style = PictureStyle {
        page_height: Some(297.0),
        frog: base.profile.words.frog.value.clone(),
        tip: base.profile.words.tip.value.clone(),
        ..PictureStyle::paper()
    };
    let cutter = Cutter::new(base.file.document(), &base.score);
    let pictures =
        Painter::new(&cutter, engraver, &style).draw(&content).map_err(|problem| problem.to_string())?;
    pdf(&pictures).map_err(|problem| problem.to_string())
}
