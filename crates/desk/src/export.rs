//! What leaves the workbench as files: the score with the bowings on it, layers, pictures, and what a print shop makes.

use std::fmt;

use arcata_engrave::{Engraver, House, Opening};
use arcata_languages::Wording;
use arcata_layer::{AskedBreaks, Layer};
use arcata_xml::Input;

use crate::desk::Desk;
use crate::failed::Failed;
use crate::request_language::RequestLanguage;
use crate::requests::{PartQuery, PictureQuery};
use crate::review_page::review_page;
use crate::shared::Shared;
use crate::{drawing, kept_beside, layers};

/// A file that leaves: its name, its kind, its bytes.
#[derive(Clone, Debug)]
pub struct ExportedFile {
    /// Its name.
    pub name: String,
    /// Its media type.
    pub kind: &'static str,
    /// What is in it.
    pub bytes: Vec<u8>,
}

/// Files that leave together, and what is to be told of them.
#[derive(Clone, Debug)]
pub struct ExportedFiles {
    /// The folder for them beside the score; none where they lie beside it themselves.
    pub folder: Option<String>,
    /// The files, the most wanted first.
    pub files: Vec<ExportedFile>,
    /// What is to be told, in words.
    pub told: Vec<String>,
}

/// The media type of a score.
pub const SCORE_TYPE: &str = "application/vnd.recordare.musicxml+xml";
/// The media type of a package with a score in it.
const PACKAGE: &str = "application/vnd.recordare.musicxml";
/// The media type of pages to print.
pub const PDF_TYPE: &str = "application/pdf";

/// The media type of a page.
const HTML_TYPE: &str = "text/html; charset=utf-8";

/// What a print shop makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PrintKind {
    /// The whole plan on pages.
    Pages,
    /// What is to be written into printed parts.
    Sheet,
    /// The parts; of one part its pages alone.
    Parts {
        /// The part by index; all that are bowed where there is none.
        only: Option<usize>,
    },
}

/// What is to be printed.
#[derive(Clone, Copy, Debug)]
pub struct PrintOrder<'a> {
    /// What.
    pub kind: PrintKind,
    /// The score with its bows.
    pub desk: &'a Desk,
    /// What the shown layers say together.
    pub layer: &'a Layer,
    /// Where pages and lines of parts are to begin.
    pub breaks: &'a AskedBreaks,
    /// How the house wants its parts.
    pub house: &'a House,
    /// The name of the score's file without its ending.
    pub stem: &'a str,
    /// Who engraves.
    pub engraver: &'a Engraver,
    /// In whose words.
    pub wording: &'a Wording,
}

/// Makes pages for paper. Where there is none (in a browser), printing is the browser's.
pub trait PrintShop: fmt::Debug + Send + Sync {
    /// Makes them.
    ///
    /// # Errors
    /// Why there are none, in words.
    fn print(&self, order: &PrintOrder<'_>) -> Result<ExportedFiles, String>;
}

pub(crate) fn leaving(
    (shared, spoken): (&Shared, RequestLanguage),
    what: &str,
    (query, part): (&PictureQuery, &PartQuery),
) -> Result<ExportedFiles, Failed> {
    let (desk, state, file_name) = {
        let session = shared.session();
        (session.desk(), session.state().clone(), session.name().to_owned())
    };
    let stem = stem(&file_name).to_owned();
    let wrong = |why: String| Failed::impossible(why);
    let printed = |kind: PrintKind| {
        let order = PrintOrder {
            kind,
            desk: &desk,
            layer: &state.layers.together(),
            breaks: &state.breaks,
            house: &shared.house,
            stem: &stem,
            engraver: &shared.engraver,
            wording: &spoken.wording(&desk),
        };
        let shop = shared.print_shop().ok_or_else(|| {
            wrong("pages for paper are made by the installed program; here print the page itself".to_owned())
        })?;
        shop.print(&order).map_err(wrong)
    };
    let mut told = Vec::new();
    let (name, kind, bytes) = match what {
        "score" => {
            let bowed = desk.bowed(&state.layers.together()).map_err(wrong)?;
            told.extend(bowed.left_out.iter().map(ToString::to_string));
            let file = desk.base.file();
            let bytes = file.write(bowed.document.bytes()).map_err(|problem| wrong(problem.to_string()))?;
            match file.kind() {
                Input::Document => (format!("{stem}-bowed.musicxml"), SCORE_TYPE, bytes),
                // What else the package holds goes along.
                Input::Package => (format!("{stem}-bowed.mxl"), PACKAGE, bytes),
            }
        }
        "layer" => {
            let one = state.layers.written();
            let name = if one.name == layers::FIRST { stem } else { format!("{stem}.{}", plain(&one.name)) };
            let bytes = arcata_layer::write(&one.layer).into_bytes();
            (format!("{name}.bowings.json"), "application/json", bytes)
        }
        "review" => {
            let wording = spoken.wording(&desk);
            let found = shared.findings();
            let drawn_in = (shared.engraver.as_ref(), &wording);
            let page = review_page((&file_name, &desk, &state), &found.findings, drawn_in);
            (format!("{stem}-review.html"), HTML_TYPE, page.into_bytes())
        }
        "pdf" => return printed(PrintKind::Pages),
        "picture" => {
            let bars = query.first.unwrap_or(0)..=query.last.or(query.first).unwrap_or(0);
            let wanted = query.wanted(spoken.wording(&desk))?;
            let picture =
                drawing::system_picture(&desk, &wanted, (bars.clone(), Opening::Excerpt), &shared.engraver);
            let picture = picture.map_err(wrong)?;
            let label = |bar: u32| {
                desk.base.score().bars.get(bar as usize).map_or_else(String::new, |bar| plain(&bar.label))
            };
            let name = format!("{stem}-bars-{}-{}.svg", label(*bars.start()), label(*bars.end()));
            (name, "image/svg+xml", picture.svg().into_bytes())
        }
        "sheet" => return printed(PrintKind::Sheet),
        "parts" => return printed(PrintKind::Parts { only: part.part }),
        "breaks" => {
            let text = arcata_layer::write_breaks(&state.breaks);
            (format!("{stem}.breaks.json"), "application/json", text.into_bytes())
        }
        "aside" => {
            let (name, text) = {
                let session = shared.session();
                (session.shelf().aside_name(), session.shelf().aside().map_err(wrong)?)
            };
            let music = (file_name.as_str(), desk.base.score());
            let text = kept_beside::with((&name, text), music, &state).map_err(wrong)?;
            (format!("{stem}.aside.toml"), "application/toml", text.into_bytes())
        }
        _ => {
            return Err(Failed::missing(
                "what leaves is score, layer, pdf, picture, sheet, parts, review, breaks or aside",
            ));
        }
    };
    Ok(ExportedFiles { folder: None, files: vec![ExportedFile { name, kind, bytes }], told })
}

/// The name of a file without its ending.
fn stem(name: &str) -> &str {
    name.rsplit_once('.').map_or(name, |(stem, _)| if stem.is_empty() { name } else { stem })
}

/// A name as part of the name of a file.
fn plain(name: &str) -> String {
    let letters = |letter: char| if letter.is_alphanumeric() || letter == '-' { letter } else { '_' };
    name.chars().map(letters).collect()
}
