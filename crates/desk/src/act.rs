//! What somebody can do at the workbench: each act is one line of the journal and one step of undoing.

use arcata_layer::{Addresses, NamedNote, Spot};
use arcata_score::places::note_value;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// One act.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(tag = "act", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Act {
    /// Bows are asked for at notes where strokes begin.
    Bow {
        /// The notes, with what is asked there.
        asks: Vec<Asked>,
    },
    /// A layer is put on the desk.
    Layer {
        /// What it is called there.
        name: String,
        /// The layer, in its file format; without it a new one, which is written in from now on.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        text: Option<String>,
    },
    /// A layer is shown, and the bows go by it; or it is hidden.
    Show {
        /// Its name on the desk.
        name: String,
        /// Whether it is shown.
        shown: bool,
    },
    /// A layer is written in from now on.
    Choose {
        /// Its name on the desk.
        name: String,
    },
    /// What the layer that is written in says of slurs from now on.
    Slurs {
        /// A layer with the marks of slurs, in its file format.
        text: String,
    },
    /// What a layer says is put into the one that is written in, over what stands there.
    TakeUp {
        /// Its name on the desk.
        name: String,
    },
    /// What a layer that is not on the desk says is put into the one that is written in. Journals of the first form have it.
    TakeUpText {
        /// The layer, in its file format.
        text: String,
    },
    /// A layer is taken off the desk.
    TakeAway {
        /// Its name on the desk.
        name: String,
    },
    /// Bowings typed as shorthand.
    Enter {
        /// The text, one or more lines.
        text: String,
    },
    /// A slur is said to be a phrase mark or a bow; nothing takes the word back.
    Slur {
        /// The note that the slur begins on.
        place: NotePlace,
        /// `phrase`, `bow` or `nothing`.
        is: SlurIs,
    },
    /// A proposal of the review is taken into the score itself.
    Change {
        /// What it does, for the list of acts.
        sentence: String,
        /// Replaced bytes of the score as it then stands, in order, none overlapping.
        edits: Vec<ByteEdit>,
        /// Checksum of the score as it then stands; the server puts it in. A change that was for other bytes is left out.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        of: Option<String>,
    },
    /// A finding is set aside, with a reason.
    Aside {
        /// The rule.
        rule: String,
        /// The part by name; none where the whole score is meant.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        part: Option<String>,
        /// The movement, from 1; none where the file has but one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        movement: Option<usize>,
        /// The bar as printed.
        bar: String,
        /// The beat, from 1, exact: `7/2`.
        beat: String,
        /// Why.
        reason: String,
    },
    /// The tempo at the opening; none goes by the score.
    Tempo {
        /// Quarter notes a minute.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        #[schema(value_type = Option<u64>)]
        quarters: Option<u32>,
    },
    /// Everything is played louder than the dynamics say, or softer.
    Louder {
        /// Steps of the dynamics, -3 to 3; p to mp is one.
        #[schema(value_type = i64, minimum = -3, maximum = 3)]
        steps: i8,
    },
    /// Another way of bowing.
    Style {
        /// `concert`, `dance` or `early`.
        style: String,
    },
    /// Another player.
    Player {
        /// `professional`, `amateur` or `student`.
        profile: String,
    },
    /// A page or a line of a part is to begin with a bar.
    Break {
        /// The part, as layers name it.
        part: String,
        /// The bar as printed.
        bar: String,
        /// The bar by position in the file, from 1.
        #[schema(value_type = u64)]
        bar_ordinal: u32,
        /// What begins; without it what was asked for there is taken back.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        begins: Option<Begins>,
    },
    /// Breaks as the file beside the score has them: another program has written it.
    Breaks {
        /// The breaks, in their file format.
        text: String,
    },
    /// The file was changed by another program: what the layers are after they were carried over.
    Carried {
        /// The layers on the desk, in their order and file format.
        layers: Vec<String>,
        /// The breaks asked for in the parts, in their file format; those that there were where it says nothing.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        breaks: Option<String>,
        /// What moved, is in doubt, or found no note any more.
        told: Vec<String>,
    },
}

/// A note, and the bow that is asked for there.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Asked {
    /// The note.
    pub place: NotePlace,
    /// What is asked.
    pub ask: Ask,
}

/// A bow that is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Ask {
    /// Down-bow.
    Down,
    /// Up-bow.
    Up,
    /// In the direction of the stroke before, stopped on the string: the same sign on both strokes.
    Hook,
    /// The same, as a slur with dots over both.
    HookDots,
    /// The same, as a slur with dashes over both.
    HookDashes,
    /// Lifted, and set down again in the direction of the stroke before.
    Retake,
    /// Nothing: as it comes.
    Free,
}

/// What is asked to begin with a bar of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub enum Begins {
    /// A line of music.
    Line,
    /// A page.
    Page,
}

/// What a slur is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "kebab-case")]
pub enum SlurIs {
    /// A phrase mark.
    Phrase,
    /// A bow.
    Bow,
    /// What its line says.
    Nothing,
}

/// Bytes that give way to others.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ByteEdit {
    /// The first byte.
    pub from: usize,
    /// The byte after the last.
    pub to: usize,
    /// What takes their place.
    pub insert: String,
}

/// A note by part, bar and place in the bar: it is found again when bars before it have changed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NotePlace {
    /// The part, as layers name it.
    pub part: String,
    /// The bar as printed.
    pub bar: String,
    /// The bar by position in the file, from 1.
    #[schema(value_type = u64)]
    pub bar_ordinal: u32,
    /// How far into the bar, in whole notes, exact: `3/8`.
    pub offset: String,
    /// The voice as the file names it.
    pub voice: String,
    /// Which of the grace notes that stand there, from 1.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<u64>)]
    pub grace: Option<u16>,
}

impl NotePlace {
    /// The place of a note.
    #[must_use]
    pub fn of(addresses: &Addresses<'_>, found: NamedNote) -> Option<Self> {
        let place = addresses.place(found.part, found.note)?;
        Some(Self {
            part: place.part,
            bar: place.spot.bar,
            bar_ordinal: place.spot.bar_ordinal?,
            offset: place.spot.offset.to_string(),
            voice: place.spot.voice,
            grace: place.spot.grace,
        })
    }

    /// The note; an error in words where there is none.
    ///
    /// # Errors
    /// Says what of the place is not in the score.
    pub fn find(&self, addresses: &Addresses<'_>) -> Result<NamedNote, String> {
        let part =
            addresses.part(&self.part).ok_or_else(|| format!("no part is called \"{}\"", self.part))?;
        let offset =
            note_value(&self.offset).map_err(|_| format!("\"{}\" is no place in a bar", self.offset))?;
        let spot = Spot {
            bar_ordinal: Some(self.bar_ordinal),
            voice: self.voice.clone(),
            grace: self.grace,
            ..Spot::new(&self.bar, offset)
        };
        addresses.find_in(part, &spot).map_err(|why| why.to_string())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn acts_are_lines_of_json_and_nothing_unknown_passes() {
        let place = NotePlace {
            part: "Viola".to_owned(),
            bar: "12".to_owned(),
            bar_ordinal: 13,
            offset: "3/8".to_owned(),
            voice: "1".to_owned(),
            grace: None,
        };
        let act = Act::Bow { asks: vec![Asked { place, ask: Ask::Up }] };
        let text = serde_json::to_string(&act).unwrap();
        assert_eq!(
            text,
            r#"{"act":"bow","asks":[{"place":{"part":"Viola","bar":"12","bar_ordinal":13,"offset":"3/8","voice":"1"},"ask":"up"}]}"#
        );
        assert_eq!(serde_json::from_str::<Act>(&text).unwrap(), act);
        for wrong in [
            r#"{"act":"bow"}"#,
            r#"{"act":"fly"}"#,
            r#"{"act":"tempo","quarters":-3}"#,
            r#"{"act":"tempo","more":1}"#,
        ] {
            assert!(serde_json::from_str::<Act>(wrong).is_err(), "{wrong}");
        }
        assert_eq!(note_value("3/8"), Ok(arcata_score::Length::new(3, 8)));
        for wrong in ["", "-1", "1/0", "x", "1/2/3", "99999999999999"] {
            assert!(note_value(wrong).is_err(), "{wrong}");
        }
    }
}
