//! What the acts come to.

use arcata_layer::{Addresses, Entry, Layer, Mark, Place, Question, Spot, shorthand};

use arcata_review::SlurEntry;

use crate::act::{Act, Ask, ByteEdit, NotePlace, SlurIs};

/// The sum of all acts that count.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct State {
    pub(crate) layer: Layer,
    pub(crate) slurs: Vec<(NotePlace, SlurIs)>,
    pub(crate) asides: Vec<SetAside>,
    /// Changes of the score, each on top of the one before.
    pub(crate) edits: Vec<Vec<ByteEdit>>,
    pub(crate) tempo: Option<u32>,
    pub(crate) profile: String,
    /// What the file beside the score said of slurs when the session began.
    pub(crate) told_before: Vec<SlurEntry>,
}

/// A finding that is set aside.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct SetAside {
    pub(crate) rule: String,
    pub(crate) part: Option<String>,
    pub(crate) bar: String,
    pub(crate) beat: String,
    pub(crate) reason: String,
}

impl State {
    /// Nothing done yet.
    pub(crate) fn new(layer: Layer) -> Self {
        Self {
            layer,
            slurs: Vec::new(),
            asides: Vec::new(),
            edits: Vec::new(),
            tempo: None,
            profile: "professional".to_owned(),
            told_before: Vec::new(),
        }
    }

    /// Whether the lines that were found in the score for one state serve the other.
    pub(crate) fn reads_as(&self, other: &Self) -> bool {
        self.slurs == other.slurs
            && self.edits == other.edits
            && self.tempo == other.tempo
            && self.profile == other.profile
    }

    /// Does one act more; the addresses are those of the score that it is done on.
    ///
    /// # Errors
    /// Why it cannot be done; the state is as it was.
    pub(crate) fn act(&mut self, act: &Act, addresses: &Addresses<'_>) -> Result<(), String> {
        match act {
            Act::Bow { asks } => {
                if asks.is_empty() {
                    return Err("nothing is asked for".to_owned());
                }
                asks.iter().try_for_each(|asked| self.bow(&asked.place, asked.ask, addresses))
            }
            Act::Layer { text, .. } => self.take_up(text, addresses),
            Act::Enter { text } => self.enter(text, addresses),
            Act::Slur { place, is } => {
                place.find(addresses)?;
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
            Act::Aside { rule, part, bar, beat, reason } => {
                if arcata_review::rule(rule).is_none() {
                    return Err(format!("no rule is called \"{rule}\""));
                }
                if reason.trim().is_empty() {
                    return Err("a reason in a few words is kept with it".to_owned());
                }
                self.asides.push(SetAside {
                    rule: rule.clone(),
                    part: part.clone(),
                    bar: bar.clone(),
                    beat: beat.clone(),
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
            Act::Player { profile } => {
                let known = ["professional", "amateur", "student"];
                if !known.contains(&profile.as_str()) {
                    return Err(format!("there is no player called \"{profile}\": {}", known.join(", ")));
                }
                self.profile.clone_from(profile);
                Ok(())
            }
            Act::Carried { layer, .. } => {
                self.layer = arcata_layer::read(layer.as_bytes()).map_err(|problem| problem.to_string())?;
                // Changes and words about slurs were for the file as it was.
                self.edits.clear();
                Ok(())
            }
        }
    }

    fn bow(&mut self, place: &NotePlace, ask: Ask, addresses: &Addresses<'_>) -> Result<(), String> {
        let found = place.find(addresses)?;
        let place: Place = addresses.place(found.part, found.note).ok_or("the note has no address")?;
        let mark = match ask {
            Ask::Down => Some(Mark::Down),
            Ask::Up => Some(Mark::Up),
            Ask::Hook => Some(Mark::Hook { bow: None }),
            Ask::Retake => Some(Mark::Retake { bow: None }),
            Ask::Free => None,
        };
        let same_note =
            |spot: &Spot| spot.bar_ordinal == place.spot.bar_ordinal && spot.offset == place.spot.offset;
        let before = self.layer.entries.len();
        self.layer.entries.retain(|entry| {
            !(entry.place.part == place.part
                && same_note(&entry.place.spot)
                && entry.place.spot.voice == place.spot.voice
                && entry.place.spot.grace == place.spot.grace
                && entry.mark.question() == Question::Bow)
        });
        match mark {
            Some(mark) => self.layer.entries.push(Entry::new(place, mark)),
            None if self.layer.entries.len() == before => {
                return Err("nothing was asked for there".to_owned());
            }
            None => {}
        }
        self.layer.put_in_order();
        Ok(())
    }

    /// Puts the bowings of another layer on top.
    fn take_up(&mut self, text: &str, addresses: &Addresses<'_>) -> Result<(), String> {
        let other = arcata_layer::read(text.as_bytes()).map_err(|problem| problem.to_string())?;
        let fits = other.entries.iter().any(|entry| addresses.find(&entry.place).is_ok());
        if !fits && !other.entries.is_empty() {
            return Err("none of its bowings finds its note in this score".to_owned());
        }
        for entry in other.entries {
            self.layer
                .entries
                .retain(|own| own.place != entry.place || own.mark.question() != entry.mark.question());
            self.layer.entries.push(entry);
        }
        self.layer.put_in_order();
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
        shorthand::put(&mut self.layer, &entered);
        Ok(())
    }
}
