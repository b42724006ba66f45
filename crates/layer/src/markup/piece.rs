//! The elements that a layer writes, and how they are told.

use arcata_score::BowDirection;
use arcata_xml::{Element, Tag, escape};

/// One element at a note.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum MarkupPiece {
    /// `<down-bow/>`, `<up-bow/>`.
    Bow(BowDirection),
    /// `<breath-mark/>`: in string parts the sign to lift the bow (common practice).
    BreathMark,
    /// `<staccato/>`: a dot.
    Dot,
    /// `<staccatissimo/>` or `<spiccato/>`: a short note by another sign. It is looked for, never written.
    Wedge,
    /// `<tenuto/>`: a dash.
    Dash,
    /// `<detached-legato/>`: a dash and a dot. It is looked for, never written.
    DashAndDot,
    /// One end of a slur.
    SlurStart(u8),
    /// The other.
    SlurStop(u8),
    /// Words in a `<direction>` before the note.
    Words(String),
}

/// What stands around an element inside its note.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum MarkShell {
    /// An element inside `<notations>`.
    Inside(Tag),
    /// `<notations>` itself.
    Notations,
    /// It does not stand inside the note, but before it.
    Before,
}

impl MarkupPiece {
    pub(crate) fn shell(&self) -> MarkShell {
        match self {
            Self::Bow(_) => MarkShell::Inside(Tag::TECHNICAL),
            Self::BreathMark | Self::Dot | Self::Wedge | Self::Dash | Self::DashAndDot => {
                MarkShell::Inside(Tag::ARTICULATIONS)
            }
            Self::SlurStart(_) | Self::SlurStop(_) => MarkShell::Notations,
            Self::Words(_) => MarkShell::Before,
        }
    }

    /// As it is written where nothing else is known.
    pub(crate) fn plain(&self) -> String {
        match self {
            Self::Bow(BowDirection::Down) => "<down-bow/>".to_owned(),
            Self::Bow(BowDirection::Up) => "<up-bow/>".to_owned(),
            Self::BreathMark => "<breath-mark/>".to_owned(),
            Self::Dot => "<staccato/>".to_owned(),
            Self::Wedge => "<staccatissimo/>".to_owned(),
            Self::Dash => "<tenuto/>".to_owned(),
            Self::DashAndDot => "<detached-legato/>".to_owned(),
            Self::SlurStart(number) => format!("<slur type=\"start\" number=\"{number}\"/>"),
            Self::SlurStop(number) => format!("<slur type=\"stop\" number=\"{number}\"/>"),
            Self::Words(text) => format!("<words>{}</words>", escape(text)),
        }
    }

    /// Whether an element says the same.
    pub(crate) fn is(&self, element: Element<'_>) -> bool {
        match self {
            Self::Bow(BowDirection::Down) => element.tag() == Tag::DOWN_BOW,
            Self::Bow(BowDirection::Up) => element.tag() == Tag::UP_BOW,
            Self::BreathMark => element.tag() == Tag::BREATH_MARK,
            Self::Dot => element.tag() == Tag::STACCATO,
            Self::Wedge => matches!(element.tag(), Tag::STACCATISSIMO | Tag::SPICCATO),
            Self::Dash => element.tag() == Tag::TENUTO,
            Self::DashAndDot => element.tag() == Tag::DETACHED_LEGATO,
            Self::SlurStart(number) => is_slur(element, "start", *number),
            Self::SlurStop(number) => is_slur(element, "stop", *number),
            Self::Words(text) => words_of(element).is_some_and(|words| words == text.trim()),
        }
    }
}

fn is_slur(element: Element<'_>, end: &str, number: u8) -> bool {
    element.tag() == Tag::SLUR
        && element.attribute("type").as_deref() == Some(end)
        // As the score reads it: what is no number counts as 1.
        && element.attribute("number").map_or(1, |text| text.trim().parse().unwrap_or(1)) == number
}

/// The words of a `<direction>` that says nothing else.
pub(crate) fn words_of(direction: Element<'_>) -> Option<String> {
    if direction.tag() != Tag::DIRECTION {
        return None;
    }
    let mut types = direction.children_named(Tag::DIRECTION_TYPE);
    let only = types.next().filter(|_| types.next().is_none())?;
    let mut inside = only.children();
    let words = inside.next().filter(|_| inside.next().is_none())?;
    (words.tag() == Tag::WORDS).then(|| words.text().into_owned()).filter(|text| !text.is_empty())
}
