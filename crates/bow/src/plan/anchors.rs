//! What a plan must do: anchors and printed marks as constraints.

use arcata_score::BowDirection;

use super::{Link, PlanSettings};
use crate::{Join, Line, Stroke};

/// A required direction or link of one stroke.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Anchor {
    /// Index of the stroke in its line.
    pub stroke: usize,
    /// Required direction, if any.
    pub direction: Option<BowDirection>,
    /// Required link, if any; ignored where the line does not allow it (no retake out of nothing).
    pub link: Option<Link>,
}

/// How printed down- and up-bows are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum MarkReading {
    /// They hold.
    #[default]
    Law,
    /// The planner does not see them.
    Hidden,
}

/// The directions and links that one stroke may take, as a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Allowed(u8);

impl Allowed {
    /// Everything.
    pub const ANY: Self = Self(0xff);

    fn bit(direction: BowDirection, link: Link) -> u8 {
        1 << (direction as u8 * 4 + link as u8)
    }

    /// Whether a stroke may go this way, linked like this.
    #[must_use]
    pub fn permits(self, direction: BowDirection, link: Link) -> bool {
        self.0 & Self::bit(direction, link) != 0
    }

    /// Only this direction.
    #[must_use]
    pub fn only_direction(self, direction: BowDirection) -> Self {
        Self(self.0 & (0x0f << (direction as u8 * 4)))
    }

    /// Only this link.
    #[must_use]
    pub fn only_link(self, link: Link) -> Self {
        Self(self.0 & (0x11 << link as u8))
    }

    /// Without one combination.
    #[must_use]
    pub fn without(self, direction: BowDirection, link: Link) -> Self {
        Self(self.0 & !Self::bit(direction, link))
    }

    /// Without all that another set permits.
    #[must_use]
    pub fn but(self, other: Self) -> Self {
        Self(self.0 & !other.0)
    }

    /// What both sets permit.
    #[must_use]
    pub fn both(self, other: Self) -> Self {
        Self(self.0 & other.0)
    }

    /// Only one combination.
    #[must_use]
    pub fn only(direction: BowDirection, link: Link) -> Self {
        Self(Self::bit(direction, link))
    }

    /// Whether nothing is left.
    #[must_use]
    pub fn is_empty(self) -> bool {
        self.0 == 0
    }
}

/// The links that the way into a stroke offers.
pub(crate) fn offered(join: Join) -> &'static [Link] {
    match join {
        Join::Entry => &[Link::Reset],
        Join::AfterRest => &[Link::Change, Link::Hooked, Link::Reset],
        Join::Continues => &[Link::Change, Link::Hooked, Link::Retake],
    }
}

/// What every stroke of the line may do under the settings. Never empty for any stroke: an anchor's
/// link that the line cannot offer is dropped, its direction stays.
pub(super) fn allowed(line: &Line, settings: &PlanSettings) -> Vec<Allowed> {
    let mut allowed: Vec<Allowed> =
        line.strokes.iter().map(|stroke| printed_allows(stroke, settings.marks)).collect();
    for anchor in &settings.anchors {
        let (Some(set), Some(stroke)) = (allowed.get_mut(anchor.stroke), line.strokes.get(anchor.stroke))
        else {
            continue;
        };
        let join = if anchor.stroke == 0 { Join::Entry } else { stroke.join };
        *set = anchor.narrow(*set, join);
    }
    allowed
}

/// What a stroke may do by the mark printed on it.
pub(super) fn printed_allows(stroke: &Stroke, marks: MarkReading) -> Allowed {
    match (marks, stroke.printed) {
        (MarkReading::Law, Some(direction)) => Allowed::ANY.only_direction(direction),
        _ => Allowed::ANY,
    }
}

impl Anchor {
    /// What is allowed with this anchor on a stroke that the line joins like this.
    pub(super) fn narrow(&self, allowed: Allowed, join: Join) -> Allowed {
        let directed = self.direction.map_or(allowed, |direction| Allowed::ANY.only_direction(direction));
        match self.link.filter(|link| offered(join).contains(link)) {
            Some(link) => directed.only_link(link),
            None => directed,
        }
    }
}
