//! The layers on the desk. One is written in; all that are shown bow the score together.

use std::borrow::Cow;
use std::collections::BTreeSet;

use arcata_layer::{Addresses, Layer};

use crate::with_marks::is_slur;

/// A layer on the desk.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct DeskLayer {
    pub(crate) name: String,
    pub(crate) layer: Layer,
    /// Whether the bows go by it.
    pub(crate) shown: bool,
}

/// All of them, the lowest first; never none.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Layers {
    all: Vec<DeskLayer>,
    writing: usize,
}

/// What the layer is called that a session begins with.
pub(crate) const FIRST: &str = "bowings";
/// More layers than this are a mistake.
const MOST: usize = 50;
/// A name is no longer than this, letters.
const LONGEST_NAME: usize = 80;

impl Layers {
    /// One layer, which is written in.
    pub(crate) fn new(layer: Layer) -> Self {
        Self { all: vec![DeskLayer { name: FIRST.to_owned(), layer, shown: true }], writing: 0 }
    }

    pub(crate) fn all(&self) -> &[DeskLayer] {
        &self.all
    }

    /// The number of the layer that is written in.
    pub(crate) const fn writing(&self) -> usize {
        self.writing
    }

    /// The layer that is written in.
    pub(crate) fn written(&self) -> &DeskLayer {
        &self.all[self.writing]
    }

    /// The layer to write in; it is shown from now on, so that one sees what one does.
    pub(crate) fn write(&mut self) -> &mut Layer {
        let written = &mut self.all[self.writing];
        written.shown = true;
        &mut written.layer
    }

    /// What the shown layers say together: of two answers to one question that of the higher layer, and the layer that
    /// is written in is the highest.
    pub(crate) fn together(&self) -> Cow<'_, Layer> {
        let written = self.written();
        let mut shown = self.shown_below();
        if written.shown {
            shown.push(&written.layer);
        }
        match shown.as_slice() {
            [only] => Cow::Borrowed(only),
            _ => Cow::Owned(self.sum(&shown)),
        }
    }

    /// What the shown layers below the one that is written in say together.
    pub(crate) fn below(&self) -> Layer {
        self.sum(&self.shown_below())
    }

    fn shown_below(&self) -> Vec<&Layer> {
        let below = self.all.iter().enumerate().filter(|(index, one)| one.shown && *index != self.writing);
        below.map(|(_, one)| &one.layer).collect()
    }

    fn sum(&self, layers: &[&Layer]) -> Layer {
        let Layer { title, parts, score, .. } = &self.written().layer;
        let (title, parts, score) = (title.clone(), parts.clone(), score.clone());
        let mut sum = Layer { title, parts, score, ..Layer::default() };
        layers.iter().for_each(|layer| put_on(&mut sum, layer));
        sum
    }

    /// Lets the layer that is written in say this of slurs, and nothing else of them.
    ///
    /// # Errors
    /// A text that is no layer.
    pub(crate) fn slur(&mut self, text: &str) -> Result<(), String> {
        let other = arcata_layer::read(text.as_bytes()).map_err(|problem| problem.to_string())?;
        let layer = self.write();
        layer.entries.retain(|entry| !is_slur(&entry.mark));
        layer.entries.extend(other.entries.into_iter().filter(|entry| is_slur(&entry.mark)));
        layer.put_in_order();
        Ok(())
    }

    fn named(&self, name: &str) -> Result<usize, String> {
        let found = self.all.iter().position(|one| one.name == name);
        found.ok_or_else(|| format!("no layer on the desk is called \"{name}\""))
    }

    /// Puts a layer on the desk, shown and on top of those that are not written in; without a text an empty one, which is
    /// written in from now on.
    ///
    /// # Errors
    /// A name that is taken, a text that is no layer.
    pub(crate) fn add(&mut self, name: &str, text: Option<&str>) -> Result<(), String> {
        let name = name.trim();
        if name.is_empty() || name.chars().count() > LONGEST_NAME {
            return Err(format!("a layer has a name of 1 to {LONGEST_NAME} letters"));
        }
        if self.named(name).is_ok() {
            return Err(format!("a layer called \"{name}\" is on the desk"));
        }
        if self.all.len() == MOST {
            return Err(format!("{MOST} layers are on the desk: take one away first"));
        }
        let own = &self.written().layer;
        let layer = match text {
            Some(text) => arcata_layer::read(text.as_bytes()).map_err(|problem| problem.to_string())?,
            None => Layer {
                title: name.to_owned(),
                parts: own.parts.clone(),
                score: own.score.clone(),
                ..Layer::default()
            },
        };
        self.all.push(DeskLayer { name: name.to_owned(), layer, shown: true });
        if text.is_none() {
            self.writing = self.all.len() - 1;
        }
        Ok(())
    }

    /// Shows a layer, or hides it.
    ///
    /// # Errors
    /// Where there is none of that name.
    pub(crate) fn show(&mut self, name: &str, shown: bool) -> Result<(), String> {
        let index = self.named(name)?;
        self.all[index].shown = shown;
        Ok(())
    }

    /// Chooses the layer to write in.
    ///
    /// # Errors
    /// Where there is none of that name.
    pub(crate) fn choose(&mut self, name: &str) -> Result<(), String> {
        self.writing = self.named(name)?;
        self.all[self.writing].shown = true;
        Ok(())
    }

    /// Puts what a layer says into the one that is written in, over what stands there.
    ///
    /// # Errors
    /// Where there is none of that name, or it is the very layer.
    pub(crate) fn take_up(&mut self, name: &str) -> Result<(), String> {
        let index = self.named(name)?;
        if index == self.writing {
            return Err("this is the layer that is being edited".to_owned());
        }
        let other = self.all[index].layer.clone();
        put_on(self.write(), &other);
        Ok(())
    }

    /// Puts what a layer's text says into the one that is written in, over what stands there.
    ///
    /// # Errors
    /// A text that is no layer.
    pub(crate) fn take_up_text(&mut self, text: &str) -> Result<(), String> {
        let other = arcata_layer::read(text.as_bytes()).map_err(|problem| problem.to_string())?;
        put_on(self.write(), &other);
        Ok(())
    }

    /// Takes a layer off the desk; its file, where it has one, stays.
    ///
    /// # Errors
    /// Where there is none of that name, or no other would be left.
    pub(crate) fn take_away(&mut self, name: &str) -> Result<(), String> {
        let index = self.named(name)?;
        if self.all.len() == 1 {
            return Err("one layer has to stay on the desk".to_owned());
        }
        self.all.remove(index);
        self.writing = match self.writing {
            same if same == index => 0,
            later if later > index => later - 1,
            earlier => earlier,
        };
        Ok(())
    }

    /// Puts other layers in the places of these, in their order.
    ///
    /// # Errors
    /// Where there are not as many, or one of them cannot be read.
    pub(crate) fn replace(&mut self, texts: &[String]) -> Result<(), String> {
        if texts.len() != self.all.len() {
            return Err(format!("{} layers are on the desk, {} are there", self.all.len(), texts.len()));
        }
        let layers: Result<Vec<Layer>, _> =
            texts.iter().map(|text| arcata_layer::read(text.as_bytes())).collect();
        for (one, layer) in self.all.iter_mut().zip(layers.map_err(|problem| problem.to_string())?) {
            one.layer = layer;
        }
        Ok(())
    }
}

/// Whether a layer that shall come on the desk belongs to the score there. The journal is taken up without asking: what comes
/// after it counts on the layer.
///
/// # Errors
/// A text that is no layer, or of which no bowing finds its note; in words.
pub(crate) fn belongs(text: &str, addresses: &Addresses<'_>) -> Result<(), String> {
    let layer = arcata_layer::read(text.as_bytes()).map_err(|problem| problem.to_string())?;
    let fits = layer.entries.iter().any(|entry| addresses.find(&entry.place).is_ok());
    if fits || layer.entries.is_empty() {
        Ok(())
    } else {
        Err("none of its bowings finds its note in this score".to_owned())
    }
}

/// Puts the bowings of a layer on top of those of another.
fn put_on(below: &mut Layer, above: &Layer) {
    let answered: BTreeSet<_> =
        above.entries.iter().map(|entry| (&entry.place, entry.mark.question())).collect();
    below.entries.retain(|entry| !answered.contains(&(&entry.place, entry.mark.question())));
    below.entries.extend(above.entries.iter().cloned());
    below.put_in_order();
}

#[cfg(test)]
mod tests {
    use arcata_layer::{Address, Entry, Mark, Spot};

    use super::*;

    fn layer(entries: &[(&str, Mark)]) -> Layer {
        let entry = |(bar, mark): &(&str, Mark)| {
            let place =
                Address { part: "Viola".to_owned(), spot: Spot::new(bar, arcata_score::Length::ZERO) };
            Entry::new(place, mark.clone())
        };
        Layer {
            parts: vec!["Viola".to_owned()],
            entries: entries.iter().map(entry).collect(),
            ..Layer::default()
        }
    }

    fn says(layers: &Layers) -> Vec<String> {
        let together = layers.together();
        together.entries.iter().map(|entry| format!("{} {:?}", entry.place.spot.bar, entry.mark)).collect()
    }

    #[test]
    fn shown_layers_bow_together_and_the_one_that_is_written_in_is_on_top() {
        let mut layers = Layers::new(layer(&[("1", Mark::Down), ("2", Mark::Up)]));
        let text = arcata_layer::write(&layer(&[("1", Mark::Up), ("3", Mark::Up)]));
        layers.add("guest", Some(&text)).unwrap();
        assert_eq!(says(&layers), ["1 Down", "2 Up", "3 Up"]);
        layers.choose("guest").unwrap();
        assert_eq!(says(&layers), ["1 Up", "2 Up", "3 Up"], "the other one is on top now");
        layers.show(FIRST, false).unwrap();
        assert_eq!(says(&layers), ["1 Up", "3 Up"]);
        layers.show("guest", false).unwrap();
        assert!(says(&layers).is_empty(), "nothing is shown");
        layers.write();
        assert_eq!(says(&layers), ["1 Up", "3 Up"], "what is written in is shown");
        layers.take_up(FIRST).unwrap();
        assert_eq!(says(&layers), ["1 Down", "2 Up", "3 Up"]);
        layers.take_away("guest").unwrap();
        assert_eq!((layers.written().name.as_str(), layers.all().len()), (FIRST, 1));
        layers.show(FIRST, true).unwrap();
        assert_eq!(says(&layers), ["1 Down", "2 Up"], "what was taken up is away with its layer");
        assert!(layers.take_away(FIRST).is_err() && layers.show("guest", true).is_err());
        layers.add("mine", None).unwrap();
        assert_eq!(layers.written().name, "mine");
        assert!(layers.add(" mine ", None).is_err(), "the name is taken");
        assert!(layers.add("strange", Some("{}")).is_err());
    }

    #[test]
    fn a_layer_of_other_music_does_not_belong() {
        let text = arcata_testkit::musicxml("viola: 1/1 C4 | C4 | C4 |||");
        let document =
            arcata_xml::Document::parse(text.into_bytes(), &arcata_xml::Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        let addresses = Addresses::new(&score);
        let text = |entries| arcata_layer::write(&layer(entries));
        assert!(belongs(&text(&[("7", Mark::Up)]), &addresses).is_err(), "there is no bar 7");
        assert!(belongs(&text(&[]), &addresses).is_ok() && belongs("[]", &addresses).is_err());
    }
}
