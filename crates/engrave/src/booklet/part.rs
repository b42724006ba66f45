//! One part copied out of the score, element by element as the file has them.
//!
//! What belongs to the page of the score goes: page and system breaks, credits at places of that page, the
//! extent of rests over several bars, hidden staves. What is written once for all players comes in from the
//! other parts (see [`super::wide`]).

use std::fmt::Write as _;

use super::page_name::PageName;
use crate::slice::rest_slurs::DrawnSlurs;
use crate::slice::tamed;
use arcata_score::{Length, Score};
use arcata_xml::{Document, Element, NodeId, Tag, escape};

/// A part with the head of its file.
#[derive(Clone, Debug)]
pub(super) struct PartCopy {
    /// The version of MusicXML that the score says it is.
    version: String,
    /// `<work>`, `<movement-title>`, `<identification>` and the like.
    head: Vec<String>,
    /// The part's `<score-part>`.
    entry: String,
    id: String,
    pub(super) bars: Vec<BarCopy>,
}

/// One bar: its start tag's attributes and what is in it.
#[derive(Clone, Debug, Default)]
pub(super) struct BarCopy {
    pub(super) attributes: String,
    pub(super) children: Vec<Child>,
    /// How many divisions a quarter note has at the bar's beginning.
    pub(super) divisions: i64,
    /// Whether a cue stands in it.
    pub(super) is_cued: bool,
}

/// One child of a bar.
#[derive(Clone, Debug)]
pub(super) struct Child {
    pub(super) tag: Tag,
    pub(super) source: String,
    /// What the engraver gets instead, where it would break off over the source.
    pub(super) engraved: Option<String>,
    /// Its element in the score; none for what came from another part.
    pub(super) node: Option<NodeId>,
    /// When it comes, from the beginning of the bar.
    pub(super) at: Length,
}

/// How a copy is written.
#[derive(Clone, Copy, Debug)]
pub(super) struct CopyLayout<'a> {
    /// The first bars of the systems after the first one, and whether they open a page.
    pub(super) breaks: &'a [(u32, BreakOpens)],
    /// Rests over several bars: first and last bar.
    pub(super) rests: &'a [(u32, u32)],
    /// What goes between the head and the list of parts, such as `<defaults>`.
    pub(super) defaults: &'a str,
}

/// What a break opens.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum BreakOpens {
    System,
    /// A page with its printed number, after so many blank ones.
    Page {
        name: PageName,
        blank: usize,
    },
}

/// The children of a score before its list of parts that are no matter of the page.
const HEAD: [Tag; 4] = [Tag::WORK, Tag::MOVEMENT_NUMBER, Tag::MOVEMENT_TITLE, Tag::IDENTIFICATION];

impl PartCopy {
    /// Copies a part (index).
    pub(super) fn new(document: &Document, score: &Score, part: usize) -> Self {
        let root = document.root();
        let of = &score.parts[part];
        let head = root.children().filter(|child| HEAD.contains(&child.tag()));
        let entry = root.child(Tag::PART_LIST).into_iter().flat_map(Element::children).find(|entry| {
            entry.tag() == Tag::SCORE_PART && entry.attribute("id").is_some_and(|id| id == of.id.as_str())
        });
        let invented = || {
            let (id, name) = (escape(&of.id), escape(&of.name));
            format!(r#"<score-part id="{id}"><part-name>{name}</part-name></score-part>"#)
        };
        Self {
            version: root.attribute("version").map_or_else(|| "1.0".to_owned(), |text| text.into_owned()),
            head: head.map(|child| child.source().to_owned()).collect(),
            entry: entry.map_or_else(invented, |entry| entry.source().to_owned()),
            id: of.id.clone(),
            bars: bars(document, score, part),
        }
    }

    /// The part as a file of its own.
    pub(super) fn musicxml(&self, layout: CopyLayout<'_>) -> String {
        let mut out = String::from("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        let _ = writeln!(out, r#"<score-partwise version="{}">"#, escape(&self.version));
        self.head.iter().for_each(|child| line(&mut out, 1, child));
        line(&mut out, 1, layout.defaults);
        line(&mut out, 1, "<part-list>");
        line(&mut out, 2, &self.entry);
        line(&mut out, 1, "</part-list>");
        line(&mut out, 1, &format!(r#"<part id="{}">"#, escape(&self.id)));
        for (number, bar) in (0_u32..).zip(&self.bars) {
            line(&mut out, 2, &format!("<measure{}>", bar.attributes));
            if let Some(print) = layout.print(number) {
                line(&mut out, 3, &print);
            }
            if let Some(bars) = layout.rest_from(number) {
                line(&mut out, 3, &rest_style(bars));
            }
            bar.children.iter().for_each(|child| line(&mut out, 3, &child.source));
            line(&mut out, 2, "</measure>");
        }
        line(&mut out, 1, "</part>");
        out.push_str("</score-partwise>\n");
        out
    }
}

impl Child {
    /// How many divisions a note lasts, as it is written; grace notes say nothing.
    pub(super) fn duration(&self) -> Option<i64> {
        let (_, rest) = self.source.split_once("<duration>")?;
        rest.split_once('<')?.0.trim().parse().ok()
    }
}

impl BarCopy {
    /// How many of its children come before its music.
    pub(super) fn leading(&self) -> usize {
        let is_music =
            |child: &Child| matches!(child.tag, Tag::NOTE | Tag::BACKUP | Tag::FORWARD | Tag::FIGURED_BASS);
        self.children.iter().position(is_music).unwrap_or(self.children.len())
    }
}

impl CopyLayout<'_> {
    /// The break before a bar, where there is one (MusicXML 4.0, `print`).
    pub(super) fn print(&self, bar: u32) -> Option<String> {
        let found = self.breaks.binary_search_by_key(&bar, |(first, _)| *first).ok()?;
        Some(match self.breaks[found].1 {
            BreakOpens::System => r#"<print new-system="yes"/>"#.to_owned(),
            // The first page opens by itself: only a number that is not 1 need be said.
            BreakOpens::Page { name: PageName { number: 1, .. }, .. } if bar == 0 => return None,
            BreakOpens::Page { name, .. } if bar == 0 => format!(r#"<print page-number="{name}"/>"#),
            BreakOpens::Page { name, blank: 0 } => {
                format!(r#"<print new-page="yes" page-number="{name}"/>"#)
            }
            BreakOpens::Page { name, blank } => {
                format!(r#"<print new-page="yes" blank-page="{blank}" page-number="{name}"/>"#)
            }
        })
    }

    /// How many bars the rest has that begins in a bar.
    pub(super) fn rest_from(&self, bar: u32) -> Option<u32> {
        let found = self.rests.binary_search_by_key(&bar, |(first, _)| *first).ok()?;
        Some(self.rests[found].1 - bar + 1)
    }
}

impl PartCopy {
    /// Leaves out of the picture what a bar says twice at one moment: files have marks of two voices or two players of a staff.
    pub(super) fn take_doubles(&mut self) {
        for bar in &mut self.bars {
            let mut said: Vec<(Length, String)> = Vec::new();
            for child in bar.children.iter_mut().filter(|child| child.tag == Tag::DIRECTION) {
                // What goes on to somewhere else is no word: its two ends belong together. Only what is there twice letter for letter is
                // a slip.
                let leads_on =
                    LINES.iter().any(|line| child.source.contains(line)) || child.source.contains("<offset");
                let says =
                    (child.at, if leads_on { child.source.clone() } else { names_and_text(&child.source) });
                if said.contains(&says) {
                    child.engraved = Some(String::new());
                } else {
                    said.push(says);
                }
            }
        }
    }

    /// Leaves the words out of the picture that are printed as the heading of a movement.
    pub(super) fn take_headings(&mut self, score: &Score) {
        let plain =
            |text: &str| -> String { text.chars().filter(|letter| letter.is_alphanumeric()).collect() };
        for movement in &score.movements {
            let Some(heading) = movement.heading.as_deref().map(plain) else { continue };
            let Some(bar) = self.bars.get_mut(*movement.bars.start() as usize) else { continue };
            let words = bar.children.iter_mut().filter(|child| child.tag == Tag::DIRECTION);
            for direction in words.filter(|child| plain(&text_of(&child.source)) == heading) {
                direction.engraved = Some(String::new());
            }
        }
    }
}

const LINES: [&str; 6] = ["<wedge", "<dashes", "<bracket", "<octave-shift", "<pedal", "<staff>"];

/// Names of elements and what stands between them, without attributes.
fn names_and_text(source: &str) -> String {
    let told = |tag: &&str| !["/", "voice", "sound"].iter().any(|start| tag.starts_with(start));
    let tags = source.split('<').filter(told);
    let plain = tags.map(|tag| {
        let (opened, text) = tag.split_once('>').unwrap_or((tag, ""));
        let name = opened.split([' ', '/', '\n', '\t']).next().unwrap_or_default();
        format!("{name} {} ", text.trim())
    });
    plain.collect()
}

/// What stands between tags.
pub(super) fn text_of(source: &str) -> String {
    let mut text = String::new();
    let mut inside = false;
    for letter in source.chars() {
        match letter {
            '<' => inside = true,
            '>' => inside = false,
            _ if !inside => text.push(letter),
            _ => {}
        }
    }
    text
}

pub(super) fn rest_style(bars: u32) -> String {
    format!("<attributes><measure-style><multiple-rest>{bars}</multiple-rest></measure-style></attributes>")
}

fn line(out: &mut String, depth: usize, text: &str) {
    if !text.is_empty() {
        let _ = writeln!(out, "{:1$}{text}", "", depth * 2);
    }
}

fn bars(document: &Document, score: &Score, part: usize) -> Vec<BarCopy> {
    let mut divisions = 1;
    let slurs = DrawnSlurs::new(&score.parts[part]);
    // What the engraver gets where it draws nothing for the source, or breaks off over it.
    let engraved = |child: Element<'_>| {
        if child.tag() != Tag::NOTE {
            return tamed::child(child, of_the_page);
        }
        let text = child.raw_text();
        let drawn = slurs.note(document, child.id(), tamed::note(child, || false));
        (drawn != text).then(|| child.source().replacen(text, &drawn, 1))
    };
    let mut bars = Vec::with_capacity(score.bars.len());
    for (number, measure) in score.parts[part].measures.iter().enumerate() {
        let bar = match measure.and_then(|id| document.element(id)) {
            Some(measure) => copied(measure, &mut divisions, engraved),
            None => silent(score, number, divisions),
        };
        bars.push(bar);
    }
    for number in bars.len()..score.bars.len() {
        bars.push(silent(score, number, divisions));
    }
    bars
}

fn copied(
    measure: Element<'_>,
    divisions: &mut i64,
    engraved: impl Fn(Element<'_>) -> Option<String>,
) -> BarCopy {
    // In a timewise score the music stands in a `<part>` inside the `<measure>`.
    let header = if measure.tag() == Tag::MEASURE { Some(measure) } else { measure.parent() };
    let mut bar = BarCopy { divisions: *divisions, ..BarCopy::default() };
    for attribute in header.into_iter().flat_map(Element::attributes) {
        // Widths are those of the score's page.
        if attribute.name() != "width" {
            let quote = if attribute.raw_value().contains('"') { '\'' } else { '"' };
            let _ = write!(bar.attributes, " {}={quote}{}{quote}", attribute.name(), attribute.raw_value());
        }
    }
    let mut leading = true;
    walk(measure, divisions, |child, at, divisions| {
        leading &= child.tag() != Tag::NOTE;
        if leading {
            bar.divisions = divisions;
        }
        let source = match child.tag() {
            Tag::PRINT => return,
            Tag::ATTRIBUTES => attributes(child),
            _ => child.source().to_owned(),
        };
        if !source.is_empty() {
            let engraved = engraved(child);
            bar.children.push(Child { tag: child.tag(), source, engraved, node: Some(child.id()), at });
        }
    });
    bar
}

/// Goes through a bar with the clock: each child, when it comes, and the divisions of a quarter there.
pub(super) fn walk<'d>(
    measure: Element<'d>,
    divisions: &mut i64,
    mut each: impl FnMut(Element<'d>, Length, i64),
) {
    let mut at = Length::ZERO;
    for child in measure.children() {
        let number = |tag: Tag| child.child(tag).and_then(|inner| inner.text().trim().parse::<i64>().ok());
        if child.tag() == Tag::ATTRIBUTES {
            *divisions = number(Tag::DIVISIONS).filter(|number| *number > 0).unwrap_or(*divisions);
        }
        let lasts = number(Tag::DURATION).unwrap_or(0).clamp(0, 1 << 32);
        let lasts = Length::new(lasts, divisions.saturating_mul(4));
        let is_chord = child.child(Tag::CHORD).is_some();
        each(child, if is_chord { at - lasts } else { at }, *divisions);
        match child.tag() {
            Tag::NOTE if !is_chord && child.child(Tag::GRACE).is_none() => at += lasts,
            Tag::FORWARD => at += lasts,
            Tag::BACKUP => at = at - lasts,
            _ => {}
        }
    }
}

/// What in `<attributes>` is a matter of the score's page.
pub(super) fn of_the_page(child: &Element<'_>) -> bool {
    match child.tag() {
        Tag::MEASURE_STYLE => child.child(Tag::MULTIPLE_REST).is_some(),
        Tag::STAFF_DETAILS => child.attribute("print-object").is_some(),
        _ => false,
    }
}

/// `<attributes>` without what is a matter of the score's page; empty where nothing is left.
fn attributes(element: Element<'_>) -> String {
    if !element.children().any(|child| of_the_page(&child)) {
        return element.source().to_owned();
    }
    let kept: String = element
        .children()
        .filter(|child| !of_the_page(child))
        .map(|child| child.source().to_owned())
        .collect();
    if kept.is_empty() { kept } else { format!("<attributes>{kept}</attributes>") }
}

/// A bar that the part does not have: a rest over the whole bar.
fn silent(score: &Score, number: usize, divisions: i64) -> BarCopy {
    let bar = score.bars.get(number);
    let label = escape(bar.map_or("", |bar| bar.label.as_str())).into_owned();
    let length = bar.map_or(Length::WHOLE, |bar| bar.length);
    let duration = length.scaled(4 * divisions, 1);
    let duration = (duration.numerator() / duration.denominator()).max(1);
    let rest = format!(r#"<note><rest measure="yes"/><duration>{duration}</duration></note>"#);
    BarCopy {
        attributes: format!(r#" number="{label}""#),
        children: vec![Child { tag: Tag::NOTE, source: rest, engraved: None, node: None, at: Length::ZERO }],
        divisions,
        is_cued: false,
    }
}
