//! A score as it is looked at: the file, what is said of its slurs, marks of layers on it.

use arcata_layer::Layer;
use arcata_score::{ProblemKind, Score};
use arcata_xml::{Document, Limits, ScoreFile, open_score};

use crate::overlay::{WithLayer, with_read_marks};

/// A score as it is looked at.
#[derive(Debug)]
pub struct Source {
    file: ScoreFile,
    /// The score with marks of a layer on it, where there are any that change what is read.
    overlaid: Option<WithLayer>,
    /// The music.
    pub score: Score,
}

impl Source {
    /// Reads the bytes of a score file of either kind.
    ///
    /// ```
    /// use arcata_analysis::Source;
    ///
    /// let music = arcata_testkit::musicxml("viola: 1/4 C4 D4 E4 F4");
    /// assert_eq!(Source::open(music.into_bytes())?.score.parts.len(), 1);
    /// assert!(Source::open(b"<html/>".to_vec()).is_err());
    /// # Ok::<(), String>(())
    /// ```
    ///
    /// # Errors
    /// Bytes that are no score, in words, with line and column where there are any.
    pub fn open(bytes: Vec<u8>) -> Result<Self, String> {
        Self::of(open_score(bytes, &Limits::default()).map_err(|error| error.to_string())?)
    }

    /// Reads a score file that is open.
    ///
    /// # Errors
    /// A document that holds no score, in words.
    pub fn of(file: ScoreFile) -> Result<Self, String> {
        let score = arcata_score::read(file.document());
        match score.problems.iter().find(|problem| problem.kind == ProblemKind::NotAScore) {
            Some(problem) => Err(problem.message.clone()),
            None => Ok(Self { file, overlaid: None, score }),
        }
    }

    /// The same with the marks of a layer on it that change what is read: slurs, words, printed bows that give way. Bows that
    /// the layer asks for are asked of the plan; see [`asks`](crate::asks).
    ///
    /// # Errors
    /// A document that leaves no place for them, in words.
    pub fn with_layer(self, layer: &Layer) -> Result<Self, String> {
        Ok(match with_read_marks((self.file.document(), &self.score), layer)? {
            None => self,
            Some(with) => {
                let score = arcata_score::read(&with.document);
                Self { file: self.file, overlaid: Some(with), score }
            }
        })
    }

    /// The file, and the music in it.
    #[must_use]
    pub fn into_parts(self) -> (ScoreFile, Score) {
        (self.file, self.score)
    }

    /// The score's own file, without the layer.
    #[must_use]
    pub const fn file(&self) -> &ScoreFile {
        &self.file
    }

    /// The layer on it, where it changes what is read.
    #[must_use]
    pub const fn overlaid(&self) -> Option<&WithLayer> {
        self.overlaid.as_ref()
    }

    /// The document that is looked at, with the marks of the layer in it.
    #[must_use]
    pub fn document(&self) -> &Document {
        self.overlaid.as_ref().map_or(self.file.document(), |overlaid| &overlaid.document)
    }
}
