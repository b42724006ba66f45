//! The examples of the rules' pages, as people meet them: a picture with the bow under the staves, and in a terminal what the
//! review says of it and the bow in text.
//!
//! The music stands in `rules/`, a MusicXML file a rule, made by `cargo xtask docs` from the rules' own pages.
//!
//! ```
//! use arcata_examples::Example;
//!
//! let example = Example::of_rule("bow-drift").expect("every rule has an example");
//! let text = example.text("bow-drift", arcata_report::Page::default());
//! assert!(text.contains("frog") && text.contains("down"), "{text}");
//! ```

mod page;
mod picture;
mod table;
mod text;

use std::sync::Arc;

use arcata_bow::{Line, LineOptions, Plan, Profile, all_lines};
use arcata_review::{Beside, Piece};
use arcata_score::Score;
use arcata_xml::{Document, Limits};

pub use page::{blocks, with_examples};
pub use table::MUSIC;

/// An example, read and planned.
#[derive(Debug)]
pub struct Example {
    document: Document,
    /// The score.
    pub score: Score,
    /// Parts that stand for files of their own beside the score.
    beside: Vec<Beside>,
    profile: Profile,
    /// Its bowing lines.
    pub lines: Vec<Line>,
    /// Their plans.
    pub plans: Vec<Arc<Plan>>,
}

/// The MusicXML of a rule's example.
#[must_use]
pub fn music(rule: &str) -> Option<&'static str> {
    MUSIC.iter().find(|(id, _)| *id == rule).map(|(_, music)| *music)
}

impl Example {
    /// The example of a rule.
    #[must_use]
    pub fn of_rule(rule: &str) -> Option<Self> {
        Self::read(music(rule)?.as_bytes()).ok()
    }

    /// Reads an example and plans it for a professional, each part for itself.
    ///
    /// # Errors
    /// Why the text is no MusicXML, with line and column.
    pub fn read(musicxml: &[u8]) -> Result<Self, String> {
        let document =
            Document::parse(musicxml.to_vec(), &Limits::default()).map_err(|problem| problem.to_string())?;
        let mut score = arcata_score::read(&document);
        let beside = Beside::taken_out(&mut score);
        let profile = Profile::default();
        let lines = all_lines(&score, &profile, &LineOptions::default());
        let example = Self { document, score, beside, profile, lines, plans: Vec::new() };
        let settings = |line| example.piece().plan_settings(line);
        let plans = example
            .lines
            .iter()
            .enumerate()
            .map(|(index, line)| Arc::new(arcata_bow::plan(line, &settings(index))));
        let plans = plans.collect();
        Ok(Self { plans, ..example })
    }

    fn piece(&self) -> Piece<'_> {
        Piece {
            document: Some(&self.document),
            score: &self.score,
            lines: &self.lines,
            plans: &self.plans,
            reading: None,
            profile: &self.profile,
            beside: &self.beside,
        }
    }
}
