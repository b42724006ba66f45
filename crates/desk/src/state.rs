//! What the acts come to.

use std::sync::Arc;

use arcata_analysis::read_entries;
use arcata_bow::Style;
use arcata_habits::Habits;
use arcata_layer::{
    Address, Addresses, AskedBreaks, BreakOpening, Entry, HookSign, Layer, Mark, Question, Spot, read_breaks,
    shorthand,
};
use arcata_review::SlurEntry;
use arcata_score::{Length, places};

use crate::act::{Act, Ask, Begins, ByteEdit, NotePlace, SlurIs};
use crate::layers::Layers;

/// How much softer or louder than written everything can be played, steps of the dynamics (p to mp is one).
pub(crate) const LOUDER: std::ops::RangeInclusive<i8> = -3..=3;

/// The sum of all acts that count.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct SessionState {
    pub(crate) layers: Layers,
    pub(crate) slurs: Vec<(NotePlace, SlurIs)>,
    pub(crate) asides: Vec<FindingAside>,
    /// Where pages and lines of parts are to begin.
    pub(crate) breaks: AskedBreaks,
    /// Changes of the score, each on top of the one before.
    pub(crate) edits: Vec<Vec<ByteEdit>>,
    pub(crate) tempo: Option<u32>,
    /// Steps by which everything is played louder than the dynamics say; softer where it is negative.
    pub(crate) louder: i8,
    pub(crate) profile: String,
    pub(crate) style: Style,
    /// What the session began with.
    pub(crate) given: Given,
}

/// What a session begins with, and no act changes.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Given {
    /// What the file beside the score says of slurs.
    pub(crate) told: Vec<SlurEntry>,
    /// A leader's habits; they hold while the style is the one that they were learned in.
    pub(crate) habits: Option<Arc<Habits>>,
}

/// A finding that is set aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct FindingAside {
    pub(crate) rule: String,
    pub(crate) part: Option<String>,
    pub(crate) movement: Option<usize>,
    pub(crate) bar: String,
    pub(crate) beat: Length,
    pub(crate) reason: String,
}

impl SessionState {
    /// Nothing done yet.
    pub(crate) fn new(layer: Layer, given: Given) -> Self {
        Self {
            layers: Layers::new(layer),
            slurs: Vec::new(),
            asides: Vec::new(),
            breaks: AskedBreaks::default(),
            edits: Vec::new(),
            tempo: None,
            louder: 0,
            profile: "professional".to_owned(),
            style: given.habits.as_ref().map_or_else(Style::default, |habits| habits.style),
            given,
        }
    }

    /// Whether the lines that were found in the score for one state serve the other.
    pub(crate) fn reads_as(&self, other: &Self) -> bool {
        self.slurs == other.slurs
            && self.edits == other.edits
            && read_entries(&self.layers.together()) == read_entries(&other.layers.together())
            && self.tempo == other.tempo
            && self.louder == other.louder
            && self.profile == other.profile
            && self.style == other.style
    }

    /// Does one act more; the addresses are those of the score that it is done on, and are asked for only where the act names
    /// notes.
    ///
    /// # Errors
    /// Why it cannot be done; the state is as it was.
    pub(crate) fn act<'a>(
        &mut self,
        act: &Act,
        addresses: impl Fn() -> &'a Addresses<'a>,
    ) -> Result<(), String> {
        match act {
            Act::Bow { asks } => {
                if asks.is_empty() {
                    return Err("nothing is asked for".to_owned());
                }
                // One alone changes nothing where it fails; of several the first may have been done.
                let before = (asks.len() > 1).then(|| self.layers.clone());
                let done = asks.iter().try_for_each(|asked| self.bow(&asked.place, asked.ask, addresses()));
                if let (Err(_), Some(before)) = (&done, before) {
                    self.layers = before;
                }
                done
            }
            Act::Layer { name, text } => self.layers.add(name, text.as_deref()),
            Act::Show { name, shown } => self.layers.show(name, *shown),
            Act::Choose { name } => self.layers.choose(name),
            Act::Slurs { text } => self.layers.slur(text),
            Act::TakeUp { name } => self.layers.take_up(name),
            Act::TakeUpText { text } => self.layers.take_up_text(text),
            Act::TakeAway { name } => self.layers.take_away(name),
            Act::Enter { text } => self.enter(text, addresses()),
            Act::Slur { place, is } => {
                place.find(addresses())?;
                self.slurs.retain(|(before, _)| before != place);
                self.slurs.push((place.clone(), *is));
                Ok(())
            }
            Act::Change { edits, .. } => {
                if edits.is_empty() {
                    return Err("the change holds nothing".to_owned());
                }
                self.edits.push(edits.clone());
                Ok(())
            }
            Act::Aside { rule, part, movement, bar, beat, reason } => {
                if arcata_review::rule(rule).is_none() {
                    return Err(format!("no rule is called \"{rule}\""));
                }
                if reason.trim().is_empty() {
                    return Err("a reason in a few words is kept with it".to_owned());
                }
                let beat = places::beat(beat).map_err(|misread| misread.to_string())?;
                self.asides.push(FindingAside {
                    rule: rule.clone(),
                    part: part.clone(),
                    movement: *movement,
                    bar: bar.clone(),
                    beat,
                    reason: reason.trim().to_owned(),
                });
                Ok(())
            }
            Act::Tempo { quarters } => match quarters {
                Some(quarters) if !(10..=400).contains(quarters) => {
                    Err("a tempo is 10 to 400 quarter notes a minute".to_owned())
                }
                _ => {
                    self.tempo = *quarters;
                    Ok(())
                }
            },
            Act::Louder { steps } => {
                if !LOUDER.contains(steps) {
                    return Err(format!(
                        "everything is played up to {} steps softer or louder",
                        LOUDER.end()
                    ));
                }
                self.louder = *steps;
                Ok(())
            }
            Act::Style { style } => {
                let known = Style::ALL.map(Style::name).join(", ");
                self.style =
                    Style::named(style).ok_or_else(|| format!("no style is called \"{style}\": {known}"))?;
                Ok(())
            }
            Act::Player { profile } => {
                let known = ["professional", "amateur", "student"];
                if !known.contains(&profile.as_str()) {
                    return Err(format!("there is no player called \"{profile}\": {}", known.join(", ")));
                }
                self.profile.clone_from(profile);
                Ok(())
            }
            Act::Break { part, bar, bar_ordinal, begins } => {
                self.ask_break((part, bar, *bar_ordinal), *begins, addresses())
            }
            Act::Breaks { text } => {
                self.breaks = read_breaks(text)?;
                Ok(())
            }
            Act::Carried { layers, breaks, .. } => {
                let breaks = breaks.as_deref().map(read_breaks).transpose()?;
                self.layers.replace(layers)?;
                self.breaks = breaks.unwrap_or_else(|| self.breaks.clone());
                // Changes and words about slurs were for the file as it was.
                self.edits.clear();
                Ok(())
            }
        }
    }

    fn ask_break(
        &mut self,
        (part, bar, ordinal): (&str, &str, u32),
        begins: Option<Begins>,
        addresses: &Addresses<'_>,
    ) -> Result<(), String> {
        let part = addresses.part(part).ok_or_else(|| format!("no part is called \"{part}\""))?;
        let spot = Spot { bar_ordinal: Some(ordinal), ..Spot::new(bar, Length::ZERO) };
        let bar = addresses.bar(&spot).map_err(|why| why.to_string())?;
        let begins = begins.map(|begins| match begins {
            Begins::Line => BreakOpening::Line,
            Begins::Page => BreakOpening::Page,
        });
        self.breaks.ask(addresses, (part, bar), begins)
    }

    fn bow(&mut self, place: &NotePlace, ask: Ask, addresses: &Addresses<'_>) -> Result<(), String> {
        let found = place.find(addresses)?;
        let place: Address = addresses.place(found.part, found.note).ok_or("the note has no address")?;
        let mark = match ask {
            Ask::Down => Some(Mark::Down),
            Ask::Up => Some(Mark::Up),
            Ask::Hook => Some(Mark::Hook { bow: None, sign: HookSign::Marks }),
            Ask::HookDots => Some(Mark::Hook { bow: None, sign: HookSign::Dots }),
            Ask::HookDashes => Some(Mark::Hook { bow: None, sign: HookSign::Dashes }),
            Ask::Retake => Some(Mark::Retake { bow: None }),
            Ask::Free => None,
        };
        let same_note =
            |spot: &Spot| spot.bar_ordinal == place.spot.bar_ordinal && spot.offset == place.spot.offset;
        let answers = |entry: &Entry| {
            entry.place.part == place.part
                && same_note(&entry.place.spot)
                && entry.place.spot.voice == place.spot.voice
                && entry.place.spot.grace == place.spot.grace
                && entry.mark.question() == Question::Bow
        };
        if mark.is_none() && !self.layers.written().layer.entries.iter().any(answers) {
            return Err("nothing was asked for there".to_owned());
        }
        let layer = self.layers.write();
        layer.entries.retain(|entry| !answers(entry));
        if let Some(mark) = mark {
            layer.entries.push(Entry::new(place, mark));
        }
        layer.put_in_order();
        Ok(())
    }

    fn enter(&mut self, text: &str, addresses: &Addresses<'_>) -> Result<(), String> {
        let (read, mut complaints) = shorthand::read(text);
        let entered = shorthand::enter(&read, addresses);
        complaints.extend(entered.complaints.iter().cloned());
        if let Some(wrong) =
            complaints.iter().find(|complaint| complaint.gravity == shorthand::Gravity::Wrong)
        {
            return Err(wrong.shown(text));
        }
        if entered.entries.is_empty() && entered.cleared.is_empty() {
            return Err("the text holds no bowings".to_owned());
        }
        shorthand::put(self.layers.write(), &entered);
        Ok(())
    }
}
