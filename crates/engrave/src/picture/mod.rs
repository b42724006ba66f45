//! Bars of a plan as one picture: systems of engraved music, a bow lane under each staff, captions.

mod breaking;
mod page;
mod system;

use std::ops::RangeInclusive;

use arcata_bow::{Line, PlannedStroke};
use arcata_languages::Wording;
use arcata_score::Score;
use arcata_xml::Document;

use crate::engraver::EngraveError;
use crate::sheet::PictureError;
use crate::{Cutter, Engraver, Opening, Picture};

pub(crate) use page::wrapped;

/// One way to bow one line: a lane under its staff.
#[derive(Clone, Debug)]
pub struct LanePlan<'a> {
    /// The line.
    pub line: &'a Line,
    /// Index in the line of the first stroke that is planned.
    pub first: usize,
    /// The planned strokes.
    pub planned: &'a [PlannedStroke],
    /// Usable hair, micrometres.
    pub hair: i64,
    /// A number or name in front of the lane, empty for none.
    pub name: String,
    /// Strokes of the line, by index, for which two ways are nearly equal, in order: they are drawn hollow.
    pub open: Vec<usize>,
}

/// A sentence under the music, such as what an alternative does and costs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Caption {
    /// In bold, in front.
    pub name: String,
    /// The sentence.
    pub text: String,
}

/// Everything that is to be seen.
#[derive(Clone, Debug)]
pub struct PictureContent<'a> {
    /// Stands on top.
    pub title: String,
    /// Stands below the title, empty for none.
    pub subtitle: String,
    /// The bars, indices.
    pub bars: RangeInclusive<u32>,
    /// The lanes, in the order of the parts; several of one line are alternatives.
    pub lanes: &'a [LanePlan<'a>],
    /// Sentences under the music.
    pub captions: Vec<Caption>,
}

/// Sizes and words. Lengths are millimetres.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureStyle {
    /// Width of the picture or page.
    pub width: f64,
    /// Height of a page; `None` for one picture as high as it needs to be.
    pub page_height: Option<f64>,
    /// White on the left and right.
    pub side: f64,
    /// White above and below.
    pub head: f64,
    /// From the first line of a staff to the fifth.
    pub staff: f64,
    /// From frog to tip.
    pub lane: f64,
    /// What the frog is called.
    pub frog: String,
    /// What the tip is called.
    pub tip: String,
    /// What the lane means, and what a hollow sign in it, below a picture that stands alone.
    pub key: (String, String),
    /// What stands around the music.
    pub surroundings: Surroundings,
}

/// What a picture holds besides music, lanes and captions.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surroundings {
    /// The title above, what the lane means below: the picture stands alone.
    Explained,
    /// Nothing: the page that the picture stands on says it.
    Bare,
}

impl PictureStyle {
    /// An A4 page's width; staff 7.5 mm, best for a part (MOLA guidelines 2017, as quoted); sides 15 mm, head
    /// and foot 10 mm (Metropole Orkest's rules for parts); a lane of 8 mm.
    #[must_use]
    pub fn paper() -> Self {
        Self {
            width: 210.0,
            page_height: None,
            side: 15.0,
            head: 10.0,
            staff: 7.5,
            lane: 8.0,
            frog: String::new(),
            tip: String::new(),
            key: (String::new(), String::new()),
            surroundings: Surroundings::Explained,
        }
        .in_words(&Wording::default())
    }

    /// The same in the words of a language.
    ///
    /// ```
    /// use arcata_engrave::PictureStyle;
    /// use arcata_languages::{Language, Wording};
    ///
    /// let style = PictureStyle::column().in_words(&Wording::of(Language::Italian));
    /// assert_eq!((style.frog.as_str(), style.tip.as_str()), ("tallone", "punta"));
    /// ```
    #[must_use]
    pub fn in_words(self, wording: &Wording) -> Self {
        let word = |key: &'static str| wording.word(key);
        Self {
            frog: word("picture-frog"),
            tip: word("picture-tip"),
            key: (word("picture-key"), word("picture-key-open")),
            ..self
        }
    }

    /// On a page of a report, two beside each other on a wide screen, one on a phone.
    #[must_use]
    pub fn column() -> Self {
        Self {
            width: 126.0,
            side: 2.0,
            head: 1.0,
            staff: 6.5,
            surroundings: Surroundings::Bare,
            ..Self::paper()
        }
    }

    /// A phone held upright: 100 mm wide in the picture's own measure, small margins.
    #[must_use]
    pub fn phone() -> Self {
        Self { width: 100.0, side: 3.0, head: 3.0, ..Self::paper() }
    }
}

/// Why there is no picture.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum DrawError {
    /// The music cannot be engraved.
    Engrave(EngraveError),
    /// The picture cannot be made.
    Picture(PictureError),
}

impl std::fmt::Display for DrawError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::Engrave(error) => error.fmt(out),
            Self::Picture(error) => error.fmt(out),
        }
    }
}

impl std::error::Error for DrawError {}

impl From<EngraveError> for DrawError {
    fn from(error: EngraveError) -> Self {
        Self::Engrave(error)
    }
}

/// Draws the parts of lanes with their music: one picture, or as many pages as it takes.
#[derive(Debug)]
pub struct Painter<'a> {
    cutter: &'a Cutter<'a>,
    score: &'a Score,
    engraver: &'a Engraver,
    style: &'a PictureStyle,
}

impl<'a> Painter<'a> {
    /// For one score.
    #[must_use]
    pub fn new(cutter: &'a Cutter<'a>, engraver: &'a Engraver, style: &'a PictureStyle) -> Self {
        Self { cutter, score: cutter.score(), engraver, style }
    }

    /// The document behind the score.
    #[must_use]
    pub fn document(&self) -> &'a Document {
        self.cutter.document()
    }

    /// Which bars share a line of music.
    #[must_use]
    pub fn systems(&self, content: &PictureContent<'_>) -> Vec<RangeInclusive<u32>> {
        breaking::systems(self.score, content, self.style)
    }

    /// Draws the bars as one line of music, however full it becomes; `opening` says whether it stands alone or goes on from
    /// a line before.
    ///
    /// # Errors
    /// Music that cannot be engraved, or nothing to draw.
    pub fn draw_system(
        &self,
        content: &PictureContent<'_>,
        opening: Opening,
    ) -> Result<Vec<Picture>, DrawError> {
        let blocks = system::blocks(self, content, &content.bars, opening)?;
        if blocks.is_empty() {
            return Err(DrawError::Picture(PictureError("there is nothing to draw".to_owned())));
        }
        Ok(page::pages(content, self.style, blocks))
    }

    /// Draws.
    ///
    /// # Errors
    /// Music that cannot be engraved, or nothing to draw.
    pub fn draw(&self, content: &PictureContent<'_>) -> Result<Vec<Picture>, DrawError> {
        let systems = breaking::systems(self.score, content, self.style);
        let mut blocks = Vec::new();
        for bars in systems {
            let opening =
                if bars.start() == content.bars.start() { Opening::Excerpt } else { Opening::NextLine };
            blocks.extend(system::blocks(self, content, &bars, opening)?);
        }
        if blocks.is_empty() {
            return Err(DrawError::Picture(PictureError("there is nothing to draw".to_owned())));
        }
        Ok(page::pages(content, self.style, blocks))
    }
}
