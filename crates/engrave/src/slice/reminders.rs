//! Dynamics and ways of playing that hold at a cut, said again in square brackets.
//!
//! Square brackets are what editions use for what is not printed at the place (common practice).

use arcata_score::{DynamicKind, Length, Level, Meaning, Moment, Part};
use arcata_xml::{Element, escape};

/// Ways of playing that exclude each other.
const GROUPS: [&[Meaning]; 5] = [
    &[Meaning::Pizzicato, Meaning::Arco, Meaning::ColLegno, Meaning::ColLegnoBattuto],
    &[Meaning::MuteOn, Meaning::MuteOff],
    &[Meaning::SulPonticello, Meaning::SulTasto, Meaning::Ordinario],
    &[Meaning::Solo, Meaning::Tutti, Meaning::HalfSection],
    &[Meaning::Unison, Meaning::NonDivisi],
];

/// What needs no reminder: it is what players do where nothing is said.
const ORDINARY: [Meaning; 6] = [
    Meaning::Arco,
    Meaning::MuteOff,
    Meaning::Ordinario,
    Meaning::Tutti,
    Meaning::Unison,
    Meaning::NonDivisi,
];

/// What is said again where music is cut.
#[derive(Clone, Debug, Default)]
pub(super) struct Reminders {
    /// Ways of playing, as directions.
    playing: String,
    /// The dynamic in force.
    level: Option<&'static str>,
    /// Where it finds room.
    room: ReminderRoom,
}

/// Where a dynamic is said again.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
enum ReminderRoom {
    /// Where dynamics stand.
    #[default]
    Below,
    /// A hairpin is under way there, or another dynamic follows at once: above the staff.
    Above,
}

impl ReminderRoom {
    /// A dynamic that follows within this time would be printed over the reminder (measured on the demo scores).
    const AT_ONCE: Length = Length::QUARTER;

    fn at(part: &Part, start: Moment) -> Self {
        let soon = |at: Moment| at > start && at <= start + Self::AT_ONCE;
        let under_way = part
            .swells
            .iter()
            .any(|swell| swell.place.at < start && swell.end.is_some_and(|end| end > start));
        let follows = part.dynamics.iter().any(|mark| soon(mark.place.at));
        if under_way || follows { Self::Above } else { Self::Below }
    }
}

impl Reminders {
    /// All as directions; `beside` is the direction that stands at the same place below the staff, if one does: the engraver sets
    /// dynamics and words like *dim.* on one spot, so the dynamic goes in front of its words.
    pub(super) fn directions(&self, beside: Option<Element<'_>>) -> String {
        let mut text = self.playing.clone();
        if let (Some(level), None) = (self.level, beside) {
            text.push_str(&match self.room {
                ReminderRoom::Below => format!(
                    r#"<direction placement="below"><direction-type><dynamics><other-dynamics>[{level}]</other-dynamics></dynamics></direction-type></direction>"#
                ),
                ReminderRoom::Above => format!(
                    r#"<direction placement="above"><direction-type><words font-style="italic">[{level}]</words></direction-type></direction>"#
                ),
            });
        }
        text
    }

    /// The direction that stands beside, with the dynamic in front of its words.
    pub(super) fn before_words(&self, beside: Element<'_>) -> String {
        let source = beside.source();
        let words = source.find("<words").and_then(|at| Some(at + source[at..].find('>')? + 1));
        match (self.level, words) {
            (Some(level), Some(at)) => format!("{}[{level}] {}", &source[..at], &source[at..]),
            _ => source.to_owned(),
        }
    }
}

/// What holds at `start` and was said since the movement's first bar (an index); nothing where nothing needs to be said again.
pub(super) fn reminders(part: &Part, first: u32, start: Moment) -> Reminders {
    let mut text = String::new();
    for words in playing(part, first, start) {
        let words = escape(&words);
        text.push_str(&format!(
            r#"<direction placement="above"><direction-type><words font-style="italic">[{words}]</words></direction-type></direction>"#
        ));
    }
    Reminders { playing: text, level: level(part, first, start), room: ReminderRoom::at(part, start) }
}

/// The level in force, unless a new one is written at the cut.
fn level(part: &Part, first: u32, start: Moment) -> Option<&'static str> {
    let lasting = |kind| match kind {
        DynamicKind::Level(level) | DynamicKind::Shape(_, level) => Some(level),
        DynamicKind::Accented(_) => None,
    };
    if part.dynamics.iter().any(|mark| mark.place.at == start && lasting(mark.kind).is_some()) {
        return None;
    }
    let before = part.dynamics.iter().rev();
    let before = before.filter(|mark| mark.place.at < start && mark.place.bar >= first);
    before.filter_map(|mark| lasting(mark.kind)).next().map(letters)
}

const fn letters(level: Level) -> &'static str {
    match level {
        Level::Niente => "n",
        Level::Ppp => "ppp",
        Level::Pp => "pp",
        Level::P => "p",
        Level::Mp => "mp",
        Level::Mf => "mf",
        Level::F => "f",
        Level::Ff => "ff",
        Level::Fff => "fff",
    }
}

/// The words of the ways of playing in force, each group once.
fn playing(part: &Part, first: u32, start: Moment) -> Vec<String> {
    let in_group = |group: &[Meaning], meaning: Meaning| group.contains(&meaning);
    GROUPS
        .iter()
        .filter_map(|group| {
            let said = part.instructions.iter().filter(|said| in_group(group, said.meaning));
            if said.clone().any(|said| said.place.at == start) {
                return None;
            }
            let last = said.rev().find(|said| said.place.at < start && said.place.bar >= first)?;
            let plain = ORDINARY.contains(&last.meaning) || last.text.trim().is_empty();
            (!plain).then(|| last.text.trim().to_owned())
        })
        .collect()
}
