//! A few bars of a few parts as a small score of their own.
//!
//! The music is copied from the lossless document byte for byte; what holds at the cut is said again, and
//! every note gets an `id` made of the number of its element, in the slice only. What is left out: page
//! and system breaks, and the extent of rests over several bars.

mod bows_over;
mod reminders;
pub(crate) mod rest_slurs;
mod spaced;
pub(crate) mod state;
pub(crate) mod tamed;

use std::fmt::Write as _;
use std::ops::RangeInclusive;

use arcata_score::{Length, Part, Score};
use arcata_xml::{Document, Element, NodeId, Tag, escape};

use bows_over::{Carriers, carriers};
use reminders::Reminders;
use rest_slurs::DrawnSlurs;
use state::{BarlineState, DirectionSpan};

use crate::booklet::{SystemWide, closed};

/// What a slice says at its beginning.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Opening {
    /// All that holds there: it will stand alone.
    Excerpt,
    /// What a new line of the same music says: clef and key, the metre only where it changes.
    NextLine,
}

/// Cuts slices out of one score.
///
/// ```
/// use arcata_engrave::{Cutter, Opening};
/// use arcata_xml::{Limits, open_score};
///
/// let xml = arcata_testkit::musicxml("violin: 1/4 D4 E4 F#4 G4 | 1/2 A4 B4 |||");
/// let file = open_score(xml.into_bytes(), &Limits::default())?;
/// let score = arcata_score::read(file.document());
/// let slice = Cutter::new(file.document(), &score).cut(&[0], 1..=1, Opening::Excerpt);
/// assert!(slice.musicxml().contains("<step>A</step>"));
/// assert_eq!(slice.notes().len(), 2);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug)]
pub struct Cutter<'d> {
    document: &'d Document,
    score: &'d Score,
    /// For each part, what holds at each of its barlines.
    states: Vec<Vec<BarlineState>>,
    /// For each part, its slurs as they are drawn.
    slurs: Vec<DrawnSlurs>,
}

/// A few bars as MusicXML, and the notes in them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Slice {
    musicxml: String,
    notes: Vec<NodeId>,
    parts: Vec<usize>,
    bars: RangeInclusive<u32>,
}

impl Slice {
    /// The slice as a partwise score.
    #[must_use]
    pub fn musicxml(&self) -> &str {
        &self.musicxml
    }

    /// The `<note>` elements of the user's file that it shows, in document order a part.
    #[must_use]
    pub fn notes(&self) -> &[NodeId] {
        &self.notes
    }

    /// Indices of its parts in the score, from the top.
    #[must_use]
    pub fn parts(&self) -> &[usize] {
        &self.parts
    }

    /// Indices of its bars.
    #[must_use]
    pub fn bars(&self) -> RangeInclusive<u32> {
        self.bars.clone()
    }

    /// The same without the names of its parts, for pages that say them.
    #[must_use]
    pub fn unnamed(mut self) -> Self {
        const OPEN: &str = "<part-name>";
        let list = self.musicxml.find("</part-list>").unwrap_or_default();
        let (head, music) = self.musicxml.split_at(list);
        let mut pieces = head.split(OPEN);
        let mut musicxml = pieces.next().unwrap_or_default().to_owned();
        for piece in pieces {
            musicxml.push_str(OPEN);
            musicxml.push_str(piece.find("</part-name>").map_or(piece, |end| &piece[end..]));
        }
        musicxml.push_str(music);
        self.musicxml = musicxml;
        self
    }
}

/// The `id` that a note has in slices and pictures.
///
/// ```
/// assert_eq!(arcata_engrave::note_name(arcata_xml::NodeId(17)), "note-17");
/// ```
#[must_use]
pub fn note_name(node: NodeId) -> String {
    format!("note-{}", node.0)
}

impl<'d> Cutter<'d> {
    /// Reads through the parts once, so that every cut is quick.
    #[must_use]
    pub fn new(document: &'d Document, score: &'d Score) -> Self {
        let states =
            score.parts.iter().map(|part| BarlineState::at_barlines(document, score, part)).collect();
        let slurs = score.parts.iter().map(DrawnSlurs::new).collect();
        Self { document, score, states, slurs }
    }

    /// The document that is cut.
    #[must_use]
    pub fn document(&self) -> &'d Document {
        self.document
    }

    /// The score that is cut.
    #[must_use]
    pub fn score(&self) -> &'d Score {
        self.score
    }

    /// Cuts bars (indices, from 0) out of parts (indices). Bars and parts that the score has not are
    /// left out.
    #[must_use]
    pub fn cut(&self, parts: &[usize], bars: RangeInclusive<u32>, opening: Opening) -> Slice {
        let last = u32::try_from(self.score.bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
        let bars = *bars.start()..=(*bars.end()).min(last);
        let parts: Vec<usize> = parts.iter().copied().filter(|part| *part < self.score.parts.len()).collect();
        let mut musicxml = String::from(r#"<score-partwise version="4.0"><part-list>"#);
        if parts.len() > 1 {
            musicxml.push_str(
                r#"<part-group number="1" type="start"><group-symbol>bracket</group-symbol><group-barline>no</group-barline></part-group>"#,
            );
        }
        for part in &parts {
            let name = escape(&self.score.parts[*part].name);
            let _ = write!(
                musicxml,
                r#"<score-part id="part-{part}"><part-name>{name}</part-name></score-part>"#
            );
        }
        if parts.len() > 1 {
            musicxml.push_str(r#"<part-group number="1" type="stop"/>"#);
        }
        musicxml.push_str("</part-list>");
        let mut notes = Vec::new();
        let wide = self.said_elsewhere(&parts, &bars);
        for (place, part) in parts.iter().enumerate() {
            // What parts that are not shown say for all stands above the first line.
            let unsaid = |bar| if place == 0 { wide.unsaid(bar, &parts) } else { Vec::new() };
            self.write_part((*part, &unsaid), (&bars, opening), &mut musicxml, &mut notes);
        }
        musicxml.push_str("</score-partwise>");
        Slice { musicxml: spaced::spaced(&musicxml), notes, parts, bars }
    }

    /// What is for all players in the bars; nothing where every part is shown.
    fn said_elsewhere(&self, parts: &[usize], bars: &RangeInclusive<u32>) -> SystemWide {
        if parts.len() == self.score.parts.len() {
            return SystemWide::default();
        }
        let divisions = |part: usize| {
            let state = self.states.get(part).and_then(|states| states.get(*bars.start() as usize));
            state.map_or(1, |state| state.divisions(self.document))
        };
        SystemWide::within(self.document, self.score, bars.clone(), divisions)
    }

    fn write_part<'w>(
        &self,
        (index, unsaid): (usize, &dyn Fn(u32) -> SharedDirections<'w>),
        (bars, opening): (&RangeInclusive<u32>, Opening),
        musicxml: &mut String,
        notes: &mut Vec<NodeId>,
    ) {
        let part = &self.score.parts[index];
        let slurs = &self.slurs[index];
        let carriers = carriers(self.document, part, slurs, bars);
        let mut state = self.states[index].get(*bars.start() as usize).cloned().unwrap_or_default();
        if opening == Opening::NextLine {
            state.leave_metre();
        }
        let _ = write!(musicxml, r#"<part id="part-{index}">"#);
        for bar in bars.clone() {
            let label = self.score.bars.get(bar as usize).map_or("", |bar| bar.label.as_str());
            let _ = write!(musicxml, r#"<measure number="{}">"#, escape(label));
            if bar == *bars.start() {
                // The one break there is: the engraver takes it that the bars after it stay on one line.
                musicxml.push_str(r#"<print new-page="yes"/>"#);
            }
            let measure = part.measures.get(bar as usize).copied().flatten();
            let (document, carriers) = (self.document, &carriers);
            let (shared, staves) = (unsaid(bar), part.staves);
            let mut writer =
                BarWriter { document, carriers, slurs, state: &mut state, musicxml, notes, shared, staves };
            match measure.and_then(|id| self.document.element(id)) {
                Some(measure) if bar == *bars.start() => {
                    let reminders = match opening {
                        Opening::Excerpt => self.reminders(part, bar),
                        Opening::NextLine => Reminders::default(),
                    };
                    writer.first(self.document, measure, &reminders);
                }
                Some(measure) => measure.children().for_each(|child| writer.child(child)),
                None => self.silent_bar(part, bar, &mut writer),
            }
            writer.say_shared();
            if bar == *bars.end() {
                for span in state.spans(self.document) {
                    musicxml.push_str(&span_direction(span, "stop"));
                }
            }
            musicxml.push_str("</measure>");
        }
        musicxml.push_str("</part>");
    }

    fn reminders(&self, part: &Part, bar: u32) -> Reminders {
        let start = self.score.bars.get(bar as usize).map(|bar| bar.start);
        // Nothing holds where a movement begins.
        let first = self
            .score
            .movements
            .get(self.score.movement_of(bar))
            .map_or(0, |movement| *movement.bars.start());
        start
            .filter(|_| bar > first)
            .map_or_else(Reminders::default, |start| reminders::reminders(part, first, start))
    }

    /// A bar that a part does not have: a rest over the whole bar.
    fn silent_bar(&self, part: &Part, bar: u32, writer: &mut BarWriter<'_>) {
        let length = self.score.bars.get(bar as usize).map(|bar| bar.length);
        let quarters = length.map_or(4.0, |length| length.to_f64() * 4.0);
        #[expect(clippy::cast_possible_truncation, reason = "a whole number of divisions")]
        let divisions = (quarters * writer.state.divisions(self.document) as f64).round() as i64;
        if bar == 0 || part.measures.iter().take(bar as usize).all(Option::is_none) {
            writer.musicxml.push_str("<attributes><divisions>1</divisions></attributes>");
        } else {
            writer.musicxml.push_str(&writer.state.attributes(self.document));
        }
        writer.say_shared();
        let _ = write!(
            writer.musicxml,
            r#"<note><rest measure="yes"/><duration>{}</duration></note>"#,
            divisions.max(1)
        );
    }
}

/// Directions without their end, and when in the bar they stand.
type SharedDirections<'w> = Vec<(Length, &'w str)>;

/// Copies the bars of one part.
struct BarWriter<'w> {
    document: &'w Document,
    carriers: &'w Carriers,
    slurs: &'w DrawnSlurs,
    state: &'w mut BarlineState,
    musicxml: &'w mut String,
    notes: &'w mut Vec<NodeId>,
    /// What parts that are not shown say for all in this bar, as long as it is not written.
    shared: SharedDirections<'w>,
    staves: u8,
}

impl BarWriter<'_> {
    /// Writes what parts that are not shown say for all, once.
    fn say_shared(&mut self) {
        let divisions = self.state.divisions(self.document);
        for (at, open) in std::mem::take(&mut self.shared) {
            let offset = at.scaled(4 * divisions, 1);
            let offset = offset.numerator() / offset.denominator();
            let offset = if offset > 0 { format!("<offset>{offset}</offset>") } else { String::new() };
            let staff = if self.staves > 1 { "<staff>1</staff>" } else { "" };
            self.musicxml.push_str(&closed(open, &format!("{offset}{staff}")));
        }
    }

    /// The first bar: what it says before its first note joins what holds from before.
    fn first(&mut self, document: &Document, measure: Element<'_>, reminders: &Reminders) {
        let leading = measure.children().take_while(|child| !is_music(child));
        let under_way = self.state.spans(document);
        leading.filter(|child| child.tag() == Tag::ATTRIBUTES).for_each(|child| self.state.take(child));
        self.musicxml.push_str(&self.state.attributes(document));
        let beside = measure.children().take_while(|child| !is_music(child)).find(is_words_below);
        self.musicxml.push_str(&reminders.directions(beside));
        for span in under_way {
            let kind = span.start.attribute("type").unwrap_or_default();
            self.musicxml.push_str(&span_direction(span, &kind));
        }
        let mut music = false;
        for child in measure.children() {
            music |= is_music(&child);
            if beside.is_some_and(|beside| beside.id() == child.id()) {
                self.state.pass(child);
                self.musicxml.push_str(&reminders.before_words(child));
            } else if music || child.tag() != Tag::ATTRIBUTES {
                self.child(child);
            }
        }
    }

    /// One child of a measure.
    fn child(&mut self, child: Element<'_>) {
        if is_music(&child) {
            self.say_shared();
        }
        self.state.pass(child);
        match child.tag() {
            Tag::PRINT => {}
            Tag::NOTE => self.note(child),
            Tag::ATTRIBUTES => {
                let written = tamed::attributes(child, |inner| inner.tag() == Tag::MEASURE_STYLE);
                self.musicxml.push_str(&written);
            }
            _ => self.musicxml.push_str(child.source()),
        }
    }

    fn note(&mut self, note: Element<'_>) {
        if let Some(text) = self.carriers.before.get(&note.id()) {
            self.musicxml.push_str(text);
        }
        let _ = write!(self.musicxml, r#"<note id="{}""#, note_name(note.id()));
        for attribute in note.attributes().filter(|attribute| attribute.name() != "id") {
            let quote = if attribute.raw_value().contains('"') { '\'' } else { '"' };
            let _ = write!(self.musicxml, " {}={quote}{}{quote}", attribute.name(), attribute.raw_value());
        }
        let text = tamed::note(note, || self.state.is_tablature(self.document));
        let text = self.slurs.note(self.document, note.id(), text);
        let _ = write!(self.musicxml, ">{text}</note>");
        self.notes.push(note.id());
        if let Some(text) = self.carriers.after.get(&note.id()) {
            self.musicxml.push_str(text);
        }
    }
}

/// Whether a child of a measure is words below the staff.
fn is_words_below(child: &Element<'_>) -> bool {
    child.tag() == Tag::DIRECTION
        && child.attribute("placement").as_deref() == Some("below")
        && child.children_named(Tag::DIRECTION_TYPE).any(|kind| kind.child(Tag::WORDS).is_some())
}

/// Whether a child of a measure takes time.
fn is_music(child: &Element<'_>) -> bool {
    matches!(child.tag(), Tag::NOTE | Tag::BACKUP | Tag::FORWARD | Tag::FIGURED_BASS)
}

/// A direction that opens or closes a line anew.
fn span_direction(span: DirectionSpan<'_>, kind: &str) -> String {
    let name = span.start.name();
    let mut attributes = String::new();
    if span.number > 0 {
        let _ = write!(attributes, r#" number="{}""#, span.number);
    }
    for wanted in ["size", "niente", "line-type", "line-end"] {
        if let Some(value) = span.start.attribute(wanted) {
            let _ = write!(attributes, r#" {wanted}="{}""#, escape(&value));
        }
    }
    let placement = span.start.parent().and_then(Element::parent).and_then(|direction| {
        direction.attribute("placement").map(|value| format!(r#" placement="{}""#, escape(&value)))
    });
    let placement = placement.unwrap_or_default();
    format!(
        r#"<direction{placement}><direction-type><{name} type="{kind}"{attributes}/></direction-type></direction>"#
    )
}
