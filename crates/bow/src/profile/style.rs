//! Styles: how the music is bowed, beside who bows it.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::{Named, Setting};

/// A way of bowing, with prices of its own for some of the planner's weights.
///
/// ```
/// use arcata_bow::{Profile, Style};
///
/// let profile = Profile::default().in_style(Style::Dance);
/// assert_eq!(profile.style, Style::Dance);
/// assert_eq!(Style::named("early"), Some(Style::Early));
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Style {
    /// Concert music of the eighteenth century and later: the bow goes on as it comes where the line sounds on.
    #[default]
    Concert,
    /// Reels, hornpipes, jigs and marches as an American collection of 1883 prints them.
    Dance,
    /// The rule of the down-bow, as the treatises from 1660 to 1760 give it.
    Early,
}

impl Style {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Concert, Self::Dance, Self::Early];

    /// Its name in profiles, on the command line, and in what is written.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Concert => "concert",
            Self::Dance => "dance",
            Self::Early => "early",
        }
    }

    /// The style of a name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|style| style.name() == name)
    }

    /// For whom it is, in a line.
    #[must_use]
    pub const fn about(self) -> &'static str {
        match self {
            Self::Concert => "Concert music: the weights of the profile itself",
            Self::Dance => "Reels, hornpipes, jigs and marches as printed in 1883",
            Self::Early => "The rule of the down-bow, from the treatises",
        }
    }

    /// What it prices otherwise than the profile does.
    #[must_use]
    #[expect(clippy::expect_used, reason = "the shipped files are part of the program; a test reads each")]
    pub(super) fn weights(self) -> Named {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct StyleFile {
            weights: BTreeMap<String, Setting<i64>>,
        }
        let text = match self {
            Self::Concert => return Named::new(),
            Self::Dance => include_str!("../../profiles/dance.toml"),
            Self::Early => include_str!("../../profiles/early.toml"),
        };
        let file: StyleFile = toml::from_str(text).expect("shipped styles are sound");
        file.weights
    }
}
