//! What the page sends, and the smaller things it is sent.

use arcata_languages::Wording;
use serde::{Deserialize, Serialize};
use utoipa::{IntoParams, ToSchema};

use crate::act::{Act, Begins, ByteEdit, SlurIs};
use crate::alike::Goes;
use crate::drawing::{SystemView, WIDTHS, Wanted};
use crate::failed::Failed;
use crate::views::DoneView;
use crate::ways::AskView;

#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct PictureQuery {
    /// Parts by index, with commas; all string parts where there are none.
    pub(crate) parts: Option<String>,
    /// Width in millimetres, 70 to 420.
    #[param(value_type = Option<u64>)]
    pub(crate) width: Option<u16>,
    /// First bar, index.
    #[param(value_type = Option<u64>)]
    pub(crate) first: Option<u32>,
    /// Last bar.
    #[param(value_type = Option<u64>)]
    pub(crate) last: Option<u32>,
    /// Whether strokes for which two ways are nearly equal are drawn hollow.
    #[serde(default)]
    pub(crate) sure: bool,
}

impl PictureQuery {
    /// What is to be drawn, labelled in words.
    pub(crate) fn wanted(&self, wording: Wording) -> Result<Wanted, Failed> {
        let parts = self.parts.as_deref().unwrap_or_default().split(',').filter(|part| !part.is_empty());
        let parts: Result<Vec<usize>, _> = parts.map(str::parse).collect();
        let width = self.width.unwrap_or(190);
        if !WIDTHS.contains(&width) {
            return Err(Failed::impossible(format!("a width is {} to {} mm", WIDTHS.start(), WIDTHS.end())));
        }
        Ok(Wanted {
            parts: parts.map_err(|_| Failed::impossible("parts are numbers with commas between"))?,
            width,
            sure: self.sure,
            wording,
        })
    }
}

/// Which part leaves.
#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct PartQuery {
    /// Of the parts this one alone, index.
    pub(crate) part: Option<usize>,
}

#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct PlaceQuery {
    /// The place as typed.
    pub(crate) text: String,
    /// Index of the movement that bars are of, unless the place names one.
    pub(crate) movement: Option<usize>,
}

#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct LineQuery {
    /// The line, index.
    pub(crate) line: usize,
    /// First bar, index.
    #[param(value_type = Option<u64>)]
    pub(crate) first: Option<u32>,
    /// Last bar.
    #[param(value_type = Option<u64>)]
    pub(crate) last: Option<u32>,
}

#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct StrokeQuery {
    /// The line, index.
    pub(crate) line: usize,
    /// The stroke, index.
    pub(crate) stroke: usize,
}

#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct LanguageQuery {
    /// `en`, `it`, `fr` or `de`.
    pub(crate) language: Option<String>,
}

/// What the page shows: its lanes come with the answer.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ShownRequest {
    /// Parts by index; all string parts where there are none.
    pub(crate) parts: Vec<usize>,
    /// Width in millimetres, 70 to 420.
    #[schema(value_type = u64)]
    pub(crate) width: u16,
    /// Whether strokes for which two ways are nearly equal are drawn hollow.
    #[serde(default)]
    pub(crate) sure: bool,
    /// The lines of music that are drawn.
    pub(crate) systems: Vec<SystemView>,
}

/// Where a stroke is, and what is asked of it.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct BowRequest {
    /// The line.
    pub(crate) line: usize,
    /// The strokes, with what is asked of each.
    pub(crate) asks: Vec<AskView>,
    /// Which strokes that are played as these are it is asked of, too: `here` (none), `places`, `players`, `all`.
    #[serde(default)]
    pub(crate) goes: Goes,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page, by the name it gave itself.
    #[serde(default)]
    pub(crate) by: String,
    /// What the page shows.
    #[serde(default)]
    pub(crate) shown: Option<ShownRequest>,
}

/// What a slur is said to be.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct SlurRequest {
    /// The line.
    pub(crate) line: usize,
    /// The stroke that the slur begins in.
    pub(crate) stroke: usize,
    /// What.
    pub(crate) is: SlurIs,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page.
    #[serde(default)]
    pub(crate) by: String,
}

/// Where a page or a line of a part is to begin.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct BreakRequest {
    /// The part, index.
    pub(crate) part: usize,
    /// The bar, index.
    #[schema(value_type = u64)]
    pub(crate) bar: u32,
    /// What begins; without it what was asked for there is taken back.
    #[serde(default)]
    pub(crate) begins: Option<Begins>,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page.
    #[serde(default)]
    pub(crate) by: String,
}

/// Which part is looked at.
#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct PagesQuery {
    /// The part, index.
    pub(crate) part: usize,
}

/// A proposal that is taken into the score.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ProposalRequest {
    /// Number of the finding in the list of this version, from 0.
    pub(crate) finding: usize,
    /// Number of the proposal, from 0.
    pub(crate) proposal: usize,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page.
    #[serde(default)]
    pub(crate) by: String,
}

/// An act, with what was seen when it was done.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ActRequest {
    /// The act.
    pub(crate) act: Act,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page.
    #[serde(default)]
    pub(crate) by: String,
}

/// A change of the score that is only looked at.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct LookRequest {
    /// Replaced bytes of the score as it is now.
    pub(crate) edits: Vec<ByteEdit>,
    /// The line to look at.
    pub(crate) line: usize,
    /// First bar, index.
    #[schema(value_type = u64)]
    pub(crate) first: u32,
    /// Last bar.
    #[schema(value_type = u64)]
    pub(crate) last: u32,
    /// The version that the user sees.
    pub(crate) version: u64,
}

/// A change of the score as it is looked at.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ChangeRequest {
    /// Replaced bytes.
    pub(crate) edits: Vec<ByteEdit>,
    /// The version that the user sees.
    pub(crate) version: u64,
    /// The page.
    #[serde(default)]
    pub(crate) by: String,
}

/// Undoing, or doing again.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct StepRequest {
    /// The page.
    pub(crate) by: String,
    /// What the page shows.
    #[serde(default)]
    pub(crate) shown: Option<ShownRequest>,
}

/// Bowings as they are typed.
#[derive(Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub(crate) struct ShorthandRequest {
    /// The text.
    pub(crate) text: String,
}

/// What is wrong with a text, or how many bowings it holds.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct ShorthandView {
    /// Decisions in it.
    pub(crate) decisions: usize,
    /// Whether it can be entered.
    pub(crate) sound: bool,
    /// What is wrong or doubtful, in words, with line and column.
    pub(crate) complaints: Vec<String>,
}

/// A text.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct TextView {
    /// The text.
    pub(crate) text: String,
}

/// A rule explained.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct RuleView {
    /// Its name.
    pub(crate) rule: String,
    /// The language of title and explanation.
    pub(crate) language: String,
    /// Its heading.
    pub(crate) title: String,
    /// What it finds.
    pub(crate) finds: String,
    /// Why that matters.
    pub(crate) why: String,
}

/// Two layers on the desk.
#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct TwoLayersQuery {
    /// The number of the one.
    pub(crate) one: usize,
    /// The number of the other.
    pub(crate) other: usize,
}

/// Bars of a line under one layer.
#[derive(Deserialize, IntoParams)]
#[into_params(parameter_in = Query)]
pub(crate) struct LayerPictureQuery {
    /// The number of the layer on the desk.
    pub(crate) layer: usize,
    /// The line, index.
    pub(crate) line: usize,
    /// First bar, index.
    #[param(value_type = u64)]
    pub(crate) first: u32,
    /// Last bar.
    #[param(value_type = u64)]
    pub(crate) last: u32,
}

/// What was written, and where.
#[derive(Debug, Serialize, ToSchema)]
pub struct KeptView {
    /// The file or folder, beside the score.
    pub file: String,
    /// How many files were written.
    pub files: usize,
    /// What is to be told of them.
    pub told: Vec<String>,
}

/// The score was written.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct WrittenView {
    /// What is there now.
    pub(crate) done: DoneView,
    /// What the file as it was is called now.
    pub(crate) kept: String,
}

/// What leaves the workbench as a file.
#[derive(Debug, ToSchema)]
#[serde(rename_all = "lowercase")]
#[expect(dead_code, reason = "it describes what stands in an address")]
pub(crate) enum ExportKind {
    /// The score with the bowings on it.
    Score,
    /// The layer that is written in.
    Layer,
    /// Everything on paper.
    Pdf,
    /// Some bars as a picture.
    Picture,
    /// What is to be written into printed parts.
    Sheet,
    /// The parts.
    Parts,
    /// What the review finds, as a page in words.
    Review,
    /// Where pages and lines of the parts are to begin.
    Breaks,
    /// What is set aside, and what slurs are said to be.
    Aside,
}
