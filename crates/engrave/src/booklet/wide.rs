//! What is written once for all players: tempo, rehearsal marks, signs of the road, bar lines.
//!
//! A score prints them over its top part (or wherever its engraver put them); every part needs them. They are
//! recognised by what they are: tempo marks and tempo words, rehearsal marks, segno, coda and the words that
//! send the player there, headings within a movement ("Trio"), and what the file itself calls a matter of the system (`system` of a
//! `<direction>`, MusicXML 4.0). A part that says the same in the same bar already keeps its own.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::ops::RangeInclusive;

use arcata_score::words::{Heading, WordMeaning, heading, meanings};
use arcata_score::{Length, Score};
use arcata_xml::{Document, Element, NodeId, Tag};

use super::part::{Child, PartCopy, text_of, walk};

/// Something for all players, in the bar where it stands.
#[derive(Clone, Debug)]
struct Wide {
    part: usize,
    /// All parts that say it at this moment.
    parts: BTreeSet<usize>,
    at: Length,
    /// The directions to copy, without `<offset>` and end tag.
    open: Vec<String>,
    /// What is heard or read of it, to find out who has it already.
    said: String,
    is_metronome: bool,
    is_rehearsal: bool,
}

/// All that is written once for all players of a score.
#[derive(Clone, Debug, Default)]
pub struct SystemWide {
    directions: BTreeMap<u32, Vec<Wide>>,
    /// Bar lines that are more than a line, by bar and side, with the parts that have one there.
    barlines: BTreeMap<(u32, &'static str), (String, BTreeSet<usize>)>,
}

/// What of a direction is for all.
const SHARED: [Tag; 6] = [Tag::WORDS, Tag::METRONOME, Tag::REHEARSAL, Tag::SEGNO, Tag::CODA, Tag::SYMBOL];
/// Attributes of `<sound>` that send all players somewhere.
const ROAD: [&str; 6] = ["dacapo", "dalsegno", "segno", "coda", "tocoda", "fine"];

impl SystemWide {
    /// Reads through all parts of a score.
    #[must_use]
    pub fn new(document: &Document, score: &Score) -> Self {
        let last = u32::try_from(score.bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
        Self::within(document, score, 0..=last, |_| 1)
    }

    /// Reads some bars (indices) of all parts; `divisions` says how many a quarter has in a part when they begin.
    pub(crate) fn within(
        document: &Document,
        score: &Score,
        bars: RangeInclusive<u32>,
        divisions: impl Fn(usize) -> i64,
    ) -> Self {
        let tempos: BTreeSet<NodeId> = score
            .tempos
            .iter()
            .filter(|tempo| !tempo.text.trim().is_empty())
            .map(|tempo| tempo.place.node)
            .collect();
        let mut wide = Self::default();
        for (index, part) in score.parts.iter().enumerate() {
            let mut divisions = divisions(index);
            let first = (*bars.start() as usize).min(part.measures.len());
            for (bar, measure) in bars.clone().zip(&part.measures[first..]) {
                let Some(measure) = measure.and_then(|id| document.element(id)) else { continue };
                walk(measure, &mut divisions, |child, at, _| match child.tag() {
                    Tag::DIRECTION => wide.direction(child, index, bar, at, &tempos),
                    Tag::BARLINE => wide.barline(child, index, bar),
                    _ => {}
                });
            }
        }
        wide
    }

    fn direction(
        &mut self,
        direction: Element<'_>,
        part: usize,
        bar: u32,
        at: Length,
        tempos: &BTreeSet<NodeId>,
    ) {
        let has = |tags: &[Tag]| direction.descendants().any(|inner| tags.contains(&inner.tag()));
        let is_tempo = direction.descendants().any(|inner| tempos.contains(&inner.id()));
        let is_road = has(&[Tag::SEGNO, Tag::CODA])
            || direction
                .child(Tag::SOUND)
                .is_some_and(|sound| ROAD.iter().any(|name| sound.attribute(name).is_some()))
            || direction.descendants().filter(|inner| inner.tag() == Tag::WORDS).any(|words| {
                sends_on(&words.text()) || part == 0 && at == Length::ZERO && heads(&words.text())
            });
        let by_name = matches!(direction.attribute("system").as_deref(), Some("only-top" | "also-top"));
        let is_rehearsal = has(&[Tag::REHEARSAL]);
        if !(is_tempo || is_road || by_name || is_rehearsal || has(&[Tag::METRONOME])) {
            return;
        }
        let said = said(direction);
        let here = self.directions.entry(bar).or_default();
        let open = opened(direction);
        if open.is_empty() {
            return;
        }
        match here.iter_mut().find(|known| known.at == at && alike(&known.said, &said)) {
            Some(known) => {
                known.parts.insert(part);
            }
            None => {
                let is_metronome = has(&[Tag::METRONOME]);
                here.push(Wide { part, parts: [part].into(), at, open, said, is_metronome, is_rehearsal });
            }
        }
    }

    fn barline(&mut self, barline: Element<'_>, part: usize, bar: u32) {
        if barline.children().next().is_none() {
            return;
        }
        let side = side(barline);
        let entry = self.barlines.entry((bar, side));
        let (_, parts) = entry.or_insert_with(|| (barline.source().to_owned(), BTreeSet::new()));
        parts.insert(part);
    }

    /// The tempo and rehearsal marks, and what else is for all, of a bar that none of the parts shown says: when in the bar,
    /// and the direction without its end.
    pub(crate) fn unsaid(&self, bar: u32, shown: &[usize]) -> Vec<(Length, &str)> {
        let here = self.directions.get(&bar).map_or(&[][..], Vec::as_slice);
        let is_shown = |wide: &Wide| shown.iter().any(|part| wide.parts.contains(part));
        let has_own = |wide: &Wide| {
            here.iter().filter(|own| is_shown(own)).any(|own| {
                alike(&own.said, &wide.said)
                    || own.is_metronome && wide.is_metronome
                    || own.is_rehearsal && wide.is_rehearsal
            })
        };
        let unsaid = here.iter().filter(|wide| !is_shown(wide) && !has_own(wide));
        unsaid.flat_map(|wide| wide.open.iter().map(|open| (wide.at, open.as_str()))).collect()
    }

    /// Writes into a part what the others say for it; says how many signs came in.
    pub(super) fn enter(&self, copy: &mut PartCopy, part: usize, staves: u8) -> usize {
        let mut entered = 0;
        for (number, bar) in (0_u32..).zip(&mut copy.bars) {
            let own: Vec<(String, String)> = bar
                .children
                .iter()
                .filter(|child| child.tag == Tag::DIRECTION)
                .map(|child| (child.source.clone(), letters(&text_of(&child.source))))
                .collect();
            for wide in self.directions.get(&number).into_iter().flatten().filter(|wide| wide.part != part) {
                let has_own = own.iter().any(|(source, said)| {
                    alike(said, &wide.said)
                        || wide.is_metronome && source.contains("<metronome")
                        || wide.is_rehearsal && source.contains("<rehearsal")
                });
                if has_own {
                    continue;
                }
                for open in &wide.open {
                    let (place, offset) = place(&bar.children, wide.at, bar.divisions);
                    let staff = if staves > 1 { "<staff>1</staff>" } else { "" };
                    let source = closed(open, &format!("{offset}{staff}"));
                    bar.children.insert(
                        place,
                        Child { tag: Tag::DIRECTION, source, engraved: None, node: None, at: wide.at },
                    );
                    entered += 1;
                }
            }
            for (key, (source, parts)) in self.barlines.range((number, "")..(number + 1, "")) {
                if !parts.contains(&part) {
                    let child = Child {
                        tag: Tag::BARLINE,
                        source: source.clone(),
                        engraved: None,
                        node: None,
                        at: Length::ZERO,
                    };
                    if key.1 == "left" {
                        bar.children.insert(0, child)
                    } else {
                        bar.children.push(child)
                    }
                    entered += 1;
                }
            }
        }
        entered
    }
}

/// Whether words send all players somewhere: "Fine", "D.C.".
pub(super) fn sends_on(words: &str) -> bool {
    meanings(words).iter().any(|meaning| matches!(meaning, WordMeaning::Jump(_)))
}

/// Whether words are a heading within a movement, such as "Trio". Lower down in the score such a word may be about one voice
/// ("Thema").
fn heads(words: &str) -> bool {
    heading(words) == Some(Heading::Within)
}

/// A direction made whole: offset and staff stand before its sound.
pub(crate) fn closed(open: &str, inside: &str) -> String {
    match open.find("<sound") {
        Some(at) => format!("{}{inside}{}</direction>", &open[..at], &open[at..]),
        None => format!("{open}{inside}</direction>"),
    }
}

fn side(barline: Element<'_>) -> &'static str {
    match barline.attribute("location").as_deref() {
        Some("left") => "left",
        Some("middle") => "middle",
        _ => "right",
    }
}

/// Before the first note that comes at the moment, behind the last one of the bar, or with an offset before the first.
fn place(children: &[Child], at: Length, divisions: i64) -> (usize, String) {
    let is_note = |child: &&Child| child.tag == Tag::NOTE && !child.source.contains("<chord");
    let found = children.iter().position(|child| is_note(&child) && child.at == at);
    if let Some(found) = found {
        return (found, String::new());
    }
    let last = children.iter().rposition(|child| child.tag == Tag::NOTE);
    let ends = |note: &Child| {
        let lasts = Length::new(note.duration()?, divisions.max(1).saturating_mul(4));
        Some(note.at + lasts)
    };
    if let Some(last) = last.filter(|last| ends(&children[*last]) == Some(at)) {
        return (last + 1, String::new());
    }
    let first = children.iter().position(|child| is_note(&child)).unwrap_or(children.len());
    let offset = at.scaled(4 * divisions, 1);
    let offset = offset.numerator() / offset.denominator();
    (first, if offset > 0 { format!("<offset>{offset}</offset>") } else { String::new() })
}

/// The start of copies of a direction: the shared kinds only, rehearsal marks apart from the rest (the engraver
/// looks for them in the first place only), without places on the score's page.
pub(super) fn opened(direction: Element<'_>) -> Vec<String> {
    let kinds = direction.children_named(Tag::DIRECTION_TYPE);
    let shared = kinds.filter(|kind| kind.children().all(|inner| SHARED.contains(&inner.tag())));
    let (rehearsals, others): (Vec<_>, Vec<_>) =
        shared.partition(|kind| kind.child(Tag::REHEARSAL).is_some());
    let mut all = Vec::new();
    for group in [rehearsals, others] {
        if group.is_empty() {
            continue;
        }
        let mut open = start_tag(direction);
        for kind in &group {
            open.push_str("<direction-type>");
            for inner in kind.children() {
                let _ = write!(open, "{}{}</{}>", start_tag(inner), inner.raw_text(), inner.name());
            }
            open.push_str("</direction-type>");
        }
        if group.iter().all(|kind| kind.child(Tag::REHEARSAL).is_none())
            && let Some(sound) = direction.child(Tag::SOUND)
        {
            let kept = sound.attributes().filter(|one| one.name() == "tempo" || ROAD.contains(&one.name()));
            let kept: String = kept.map(|one| format!(" {}=\"{}\"", one.name(), one.raw_value())).collect();
            if !kept.is_empty() {
                let _ = write!(open, "<sound{kept}/>");
            }
        }
        all.push(open);
    }
    all
}

/// The start tag without places on the page; never empty, so that an end tag fits.
fn start_tag(element: Element<'_>) -> String {
    let mut tag = format!("<{}", element.name());
    for attribute in element.attributes() {
        let name = attribute.name();
        if !name.starts_with("default-") && !name.starts_with("relative-") && name != "id" {
            let quote = if attribute.raw_value().contains('"') { '\'' } else { '"' };
            let _ = write!(tag, " {name}={quote}{}{quote}", attribute.raw_value());
        }
    }
    tag.push('>');
    tag
}

fn said(direction: Element<'_>) -> String {
    let kinds = direction.children_named(Tag::DIRECTION_TYPE);
    letters(&kinds.map(|kind| text_of(kind.source())).collect::<String>())
}

/// Letters and digits in lower case.
fn letters(text: &str) -> String {
    text.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

/// Whether two directions say one thing: "rit." and "ritard." do.
fn alike(one: &str, other: &str) -> bool {
    const ENOUGH: usize = 3;
    let start = |text: &str| text.chars().take(ENOUGH).collect::<String>();
    if one.is_empty() || other.is_empty() {
        return one == other;
    }
    start(one) == start(other)
}
