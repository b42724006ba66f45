//! Element names as small numbers.
//!
//! A score repeats some four hundred names millions of times. Every name of MusicXML 4.0 has a fixed
//! [`Tag`], so that a reader compares numbers; a name that is not among them gets the next free number
//! in its own document.

use std::collections::BTreeMap;
use std::hash::Hasher as _;

use rustc_hash::FxHasher;

use crate::tag_names::musicxml_names;

/// The name of an element as a number.
///
/// The constants are the same in every document; a number beyond [`Tag::KNOWN`] belongs to the document
/// that gave it, and says nothing in another one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Tag(u16);

macro_rules! known_tags {
    ($($constant:ident = $name:literal,)*) => {
        #[allow(non_camel_case_types, clippy::upper_case_acronyms)]
        #[repr(u16)]
        enum KnownTag { $($constant),* }

        /// The names with a fixed number, sorted by their bytes so that one is found by halving.
        const KNOWN_NAMES: &[&str] = &[$($name),*];

        impl Tag {
            $(
                #[doc = concat!("`<", $name, ">`")]
                pub const $constant: Tag = Tag(KnownTag::$constant as u16);
            )*
        }
    };
}

impl Tag {
    /// How many names have a fixed number.
    pub const KNOWN: usize = KNOWN_NAMES.len();

    /// The fixed number of a MusicXML name, if it has one.
    ///
    /// ```
    /// use arcata_xml::Tag;
    /// assert_eq!(Tag::known("up-bow"), Some(Tag::UP_BOW));
    /// assert_eq!(Tag::known("recipe"), None);
    /// ```
    #[must_use]
    pub fn known(name: &str) -> Option<Tag> {
        KNOWN_NAMES.binary_search(&name).ok().map(|index| Tag(index as u16))
    }

    /// The name behind a fixed number; nothing for a number given by a document.
    #[must_use]
    pub fn known_name(self) -> Option<&'static str> {
        KNOWN_NAMES.get(usize::from(self.0)).copied()
    }
}

/// Slots of the table of names met lately; a power of two.
const SLOTS: usize = 1024;

/// A slot nothing was put into. `Names` never gives this number.
const FREE: u16 = u16::MAX;

/// The names of one document.
#[derive(Debug)]
pub(crate) struct Names {
    /// Names without a fixed number, in the order they were met.
    own: Vec<Box<str>>,
    /// Where each of `own` stands. A tree, not a hash table: a hostile file cannot choose names that
    /// make it slow.
    own_by_name: BTreeMap<Box<str>, u16>,
    /// The last number found for each hash: nearly every look-up ends here.
    recent: Box<[u16; SLOTS]>,
}

impl Names {
    pub(crate) fn new() -> Names {
        Names { own: Vec::new(), own_by_name: BTreeMap::new(), recent: Box::new([FREE; SLOTS]) }
    }

    /// The name behind a number of this document.
    pub(crate) fn name(&self, tag: Tag) -> &str {
        let index = usize::from(tag.0);
        match KNOWN_NAMES.get(index) {
            Some(name) => name,
            None => self.own.get(index - KNOWN_NAMES.len()).map_or("", |name| name),
        }
    }

    /// The number of a name that this document has met or that is fixed.
    pub(crate) fn find(&self, name: &str) -> Option<Tag> {
        Tag::known(name).or_else(|| self.own_by_name.get(name).copied().map(Tag))
    }

    /// The number of a name met while reading, looked up in the table of recent names first.
    #[inline]
    pub(crate) fn recall(&mut self, name: &str) -> Option<Tag> {
        let slot = slot_of(name);
        let recent = self.recent[slot];
        if recent != FREE && self.name(Tag(recent)) == name {
            return Some(Tag(recent));
        }
        let tag = self.find(name)?;
        self.recent[slot] = tag.0;
        Some(tag)
    }

    /// Gives a number to a name that has none; nothing when `limit` names of its own are reached.
    pub(crate) fn add(&mut self, name: &str, limit: usize) -> Option<Tag> {
        let room = usize::from(FREE) - KNOWN_NAMES.len();
        if self.own.len() >= limit.min(room) {
            return None;
        }
        let number = (KNOWN_NAMES.len() + self.own.len()) as u16;
        self.own.push(name.into());
        self.own_by_name.insert(name.into(), number);
        Some(Tag(number))
    }
}

#[inline]
fn slot_of(name: &str) -> usize {
    let mut hasher = FxHasher::default();
    hasher.write(name.as_bytes());
    (hasher.finish() >> 32) as usize % SLOTS
}

musicxml_names!(known_tags);

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_names_are_sorted_and_found() {
        assert!(KNOWN_NAMES.is_sorted_by(|a, b| a < b));
        for (index, name) in KNOWN_NAMES.iter().enumerate() {
            assert_eq!(Tag::known(name), Some(Tag(index as u16)));
            assert_eq!(Tag(index as u16).known_name(), Some(*name));
        }
        assert_eq!(Tag::known("note"), Some(Tag::NOTE));
    }

    #[test]
    fn own_names_follow_the_known_ones() {
        let mut names = Names::new();
        assert_eq!(names.recall("note"), Some(Tag::NOTE));
        assert_eq!(names.recall("zither"), None);
        let zither = names.add("zither", 2).unwrap();
        assert_eq!(names.recall("zither"), Some(zither));
        assert_eq!(names.name(zither), "zither");
        assert!(names.add("zoo", 2).is_some());
        assert!(names.add("zone", 2).is_none());
    }
}
