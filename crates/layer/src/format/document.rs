//! The layer as it stands in the file. Field names and their order are the format.
//!
//! Fields that this version does not know are kept where people and programs add them: in the layer, its
//! score and its entries. In the small records inside an entry they are refused by name, so that none is
//! lost.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

/// A bowing layer: bowings decided once, apart from the score.
#[derive(Deserialize, Serialize, JsonSchema)]
pub(super) struct LayerDocument {
    /// Always `arcata-layer`.
    pub(super) format: String,
    /// Version of this format: 1.
    pub(super) version: u64,
    /// What people call it.
    #[serde(default)]
    pub(super) title: String,
    /// Who decided it.
    #[serde(default)]
    pub(super) owner: String,
    /// For which orchestra or ensemble.
    #[serde(default)]
    pub(super) ensemble: String,
    /// When, best as 2026-03-01.
    #[serde(default)]
    pub(super) date: String,
    /// The score it belongs to.
    #[serde(default)]
    pub(super) score: ScoreDocument,
    /// The parts in score order, by the names that entries use.
    #[serde(default)]
    pub(super) parts: Vec<String>,
    /// The bowings, one a line, in order of part, bar and offset.
    #[serde(default)]
    pub(super) entries: Vec<EntryDocument>,
    /// What a merge could not decide.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) conflicts: Vec<ConflictDocument>,
    /// Entries whose notes a revision has taken away.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) orphans: Vec<EntryDocument>,
    /// What spreading could not bring into other parts.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) not_reached: Vec<NotReachedDocument>,
    #[serde(flatten)]
    pub(super) other: Map<String, Value>,
}

/// Which score a layer belongs to.
#[derive(Default, Deserialize, Serialize, JsonSchema)]
pub(super) struct ScoreDocument {
    /// Its title.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) title: Option<String>,
    /// SHA-256 of the MusicXML document without this layer.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) bytes: Option<String>,
    /// SHA-256 of its bars and notes, whatever marks stand on them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) music: Option<String>,
    #[serde(flatten)]
    pub(super) other: Map<String, Value>,
}

/// A note within its part.
#[derive(Clone, Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct SpotDocument {
    /// The bar's number as printed.
    pub(super) bar: String,
    /// The bar by position in the file, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) bar_ordinal: Option<u32>,
    /// How far into the bar, in whole notes, as an exact fraction: `0`, `3/8`.
    pub(super) offset: String,
    /// The voice as the file names it; `1` unless written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) voice: Option<String>,
    /// The written pitch: `F#5`, `Bb3`, `C(+50)4`, or `x` without pitch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) pitch: Option<String>,
    /// Which of the grace notes there, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) grace: Option<u16>,
    /// Which of several notes that agree in all this; 1 unless written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) copy: Option<u16>,
}

/// One bowing.
#[derive(Deserialize, Serialize, JsonSchema)]
pub(super) struct EntryDocument {
    /// The part by its printed name, or by its `id` where the name is not the only one.
    pub(super) part: String,
    /// The bar's number as printed.
    pub(super) bar: String,
    /// The bar by position in the file, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) bar_ordinal: Option<u32>,
    /// How far into the bar, in whole notes, as an exact fraction: `0`, `3/8`.
    pub(super) offset: String,
    /// The voice as the file names it; `1` unless written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) voice: Option<String>,
    /// The written pitch: `F#5`, `Bb3`, `C(+50)4`, or `x` without pitch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) pitch: Option<String>,
    /// Which of the grace notes there, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) grace: Option<u16>,
    /// Which of several notes that agree in all this; 1 unless written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) copy: Option<u16>,
    /// What was decided.
    pub(super) mark: MarkName,
    /// The direction of a hook or a retake; where it is missing, that of the stroke before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) bow: Option<BowName>,
    /// How a hook is written; where it is missing, as a bow mark on both strokes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) sign: Option<SignName>,
    /// The place of a mark `in bow`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) place: Option<BowPlaceName>,
    /// The words of a mark `text`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) text: Option<String>,
    /// The last note of a slur; of a slur moved, as printed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) to: Option<SpotDocument>,
    /// The new first note of a slur moved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) new_from: Option<SpotDocument>,
    /// The new last note of a slur moved.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) new_to: Option<SpotDocument>,
    /// Whether the direction is an anchor, which every plan must keep.
    #[serde(default, skip_serializing_if = "is_false")]
    pub(super) anchor: bool,
    /// Whose it is, where it is not the layer's owner's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) owner: Option<String>,
    /// What became of it when the layer was applied; its mark is the layer's own unless written.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) state: Option<StateName>,
    /// Which bow a hook or a retake without `bow` was written as.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) written: Option<BowName>,
    /// The mark that a hook or a retake put on the stroke before.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) before: Option<BeforeDocument>,
    /// The slur that a hook with dots or dashes was written as.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) hook_slur: Option<HookSlurDocument>,
    /// What printed marks gave way to this one: none of them where it is empty, and where it is missing the entry has not
    /// been put on a score yet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) took_off: Option<Vec<TakenDocument>>,
    /// How the marks stood in the file that they were lifted from.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) exact: Vec<ExactDocument>,
    /// Why somebody should look at it; whoever has looked takes it out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub(super) doubt: Option<String>,
    #[serde(flatten)]
    pub(super) other: Map<String, Value>,
}

/// Two wishes for one note.
#[derive(Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ConflictDocument {
    /// The part.
    pub(super) part: String,
    /// The note.
    pub(super) at: SpotDocument,
    /// What both started from.
    #[serde(default)]
    pub(super) base: Vec<EntryDocument>,
    /// Who the first owner is.
    pub(super) first_owner: String,
    /// What the first owner wants.
    pub(super) first: Vec<EntryDocument>,
    /// Who the second owner is.
    pub(super) second_owner: String,
    /// What the second owner wants.
    pub(super) second: Vec<EntryDocument>,
}

/// Marks of one bar that spreading could not bring from one part into another.
#[derive(Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct NotReachedDocument {
    /// The part that has the marks.
    pub(super) from: String,
    /// The part that they do not reach.
    pub(super) not_to: String,
    /// The bar's number as printed.
    pub(super) bar: String,
    /// The bar by position in the file, from 1.
    pub(super) bar_ordinal: u32,
    /// How many marks.
    pub(super) marks: u32,
    /// Why.
    pub(super) why: String,
}

/// What can be decided.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
pub(super) enum MarkName {
    #[serde(rename = "down")]
    Down,
    #[serde(rename = "up")]
    Up,
    #[serde(rename = "down up")]
    DownUp,
    #[serde(rename = "up down")]
    UpDown,
    #[serde(rename = "hook")]
    Hook,
    #[serde(rename = "retake")]
    Retake,
    #[serde(rename = "as it comes")]
    AsItComes,
    #[serde(rename = "lift")]
    Lift,
    #[serde(rename = "in bow")]
    InBow,
    #[serde(rename = "text")]
    Text,
    #[serde(rename = "slur added")]
    SlurAdded,
    #[serde(rename = "slur removed")]
    SlurRemoved,
    #[serde(rename = "slur moved")]
    SlurMoved,
}

/// A direction of the bow.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub(super) enum BowName {
    Down,
    Up,
}

/// What stands under the slur of a hook.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub(super) enum SignName {
    Dots,
    Dashes,
}

/// A place in the bow.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub(super) enum BowPlaceName {
    Frog,
    LowerHalf,
    Middle,
    UpperHalf,
    Tip,
    Whole,
}

/// What became of a bowing.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
pub(super) enum StateName {
    #[serde(rename = "printed")]
    Printed,
    #[serde(rename = "left out")]
    LeftOut,
}

/// The mark on the stroke before a hook or a retake.
#[derive(Clone, Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct BeforeDocument {
    /// The note that bears it.
    pub(super) at: SpotDocument,
    /// Which way.
    pub(super) bow: BowName,
    /// Whether the score has it anyway.
    #[serde(default, skip_serializing_if = "is_false")]
    pub(super) printed: bool,
    /// What printed marks gave way to it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) took_off: Vec<TakenDocument>,
}

/// The slur that a hook was written as, with the dots or dashes under it.
#[derive(Clone, Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct HookSlurDocument {
    /// The first note under the slur.
    pub(super) from: SpotDocument,
    /// The last note under the slur.
    pub(super) to: SpotDocument,
    /// What was put under it.
    pub(super) sign: SignName,
    /// The notes that the layer hooks under it.
    pub(super) hooked: Vec<SpotDocument>,
    /// The notes on which dots or dashes were put.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub(super) signs: Vec<SpotDocument>,
}

/// A printed mark that gave way.
#[derive(Clone, Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct TakenDocument {
    /// What it was.
    pub(super) mark: TakenName,
    /// How it stood.
    pub(super) exact: ExactDocument,
}

/// The kinds of printed marks that give way.
#[derive(Clone, Copy, Deserialize, Serialize, JsonSchema)]
pub(super) enum TakenName {
    #[serde(rename = "down")]
    Down,
    #[serde(rename = "up")]
    Up,
    #[serde(rename = "slur start")]
    SlurStart,
    #[serde(rename = "slur stop")]
    SlurStop,
}

/// How an element stood inside its note, or before it.
#[derive(Clone, Deserialize, Serialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub(super) struct ExactDocument {
    /// The elements around it that stay, from the note inwards (`notations 1/technical 2`); empty for the
    /// note itself; `before` for what stands before the note.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub(super) into: String,
    /// How many elements stand before it there; before the note, how many between it and the note.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub(super) after: u32,
    /// How many bytes of blanks and comments stand between the element before it and the text.
    #[serde(default, skip_serializing_if = "is_zero")]
    pub(super) skip: u32,
    /// What stood there, as it was written.
    pub(super) text: String,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde gives a reference")]
fn is_false(value: &bool) -> bool {
    !*value
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "serde gives a reference")]
fn is_zero(value: &u32) -> bool {
    *value == 0
}
