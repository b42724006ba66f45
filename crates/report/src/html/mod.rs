//! The review as one HTML file: nothing is fetched, everything is inside.

mod finding;
mod folder;
mod page;
mod rules;
mod strip;

use arcata_languages::Wording;

use crate::FileView;

pub use folder::folder_html;
pub use page::review_html;
pub use strip::Strip;

/// Everything that the page of one score shows.
#[derive(Clone, Debug)]
pub struct ReportPage<'a> {
    /// What the review found.
    pub view: &'a FileView,
    /// The whole piece at a glance.
    pub strip: Strip,
    /// What the numbers were calculated for: the player, the way parts are bowed.
    pub settings: Vec<String>,
    /// What an up-bow on a downbeat counts, by which penalties are read, thousandths of a point.
    pub yardstick: i64,
    /// The rules that the findings name, in any order.
    pub rules: Vec<RulePage>,
    /// For each finding its pictures, in the same order; may be shorter.
    pub pictures: Vec<FindingPictures>,
    /// A style sheet with the music font, for text that holds music signs; empty where none does.
    pub fonts: String,
    /// In whose words the page is.
    pub wording: &'a Wording,
}

/// A rule's page of the manual.
#[derive(Clone, Debug, PartialEq)]
pub struct RulePage {
    /// The rule's name.
    pub rule: String,
    /// What it finds, as a heading.
    pub title: String,
    /// Its page in English, Markdown.
    pub page: String,
    /// Its example, engraved; a block of music in the page gives way to it.
    pub example: Option<RuleExample>,
    /// What it finds and why in another language, if one is asked for.
    pub explanation: Option<RuleExplanation>,
}

/// The example of a rule's page.
#[derive(Clone, Debug, PartialEq)]
pub struct RuleExample {
    /// What the review says of it, a sentence.
    pub sentence: String,
    /// The music with the bow under it.
    pub drawn: DrawnPicture,
}

/// What a rule finds and why, in a language other than English.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RuleExplanation {
    /// The two letters of the language.
    pub language: String,
    /// Markdown, with headings as in the English page.
    pub text: String,
}

/// The pictures of one finding.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FindingPictures {
    /// The bars as they stand.
    pub now: Option<DrawnPicture>,
    /// The same bars with each proposal, in the order of the proposals.
    pub proposals: Vec<Option<DrawnPicture>>,
}

/// An engraved picture and what it shows.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnPicture {
    /// What goes between `<svg>` and `</svg>`, in millimetres.
    pub svg: String,
    /// Width, mm.
    pub width: f64,
    /// Height, mm.
    pub height: f64,
    /// The same in words, for those who do not see it.
    pub text: String,
}
