//! What all parts share in a bar: its label, its barlines, rehearsal marks, signs of the road.

use arcata_xml::{Element, NodeId, Tag};

use super::movements::{BarLayout, BarOpening};
use super::numbers::passes;
use crate::words::heading;
use crate::{BarKind, Barline, BarlineStyle, Ending, EndingEdge, Jump, RepeatSign};

/// A bar as one part shows it to all.
#[derive(Debug, Default)]
pub(super) struct SharedBar {
    pub(super) label: String,
    pub(super) kind: BarKind,
    pub(super) node: Option<NodeId>,
    pub(super) left: Barline,
    pub(super) right: Barline,
    pub(super) rehearsal: Option<String>,
    pub(super) jumps: Vec<Jump>,
    pub(super) opening: BarOpening,
}

impl SharedBar {
    pub(super) fn read_header(&mut self, measure: Element<'_>) {
        self.node = Some(measure.id());
        for attribute in measure.attributes() {
            match attribute.name() {
                "number" => self.label = attribute.value().into_owned(),
                "implicit" if attribute.raw_value() == "yes" => self.kind = BarKind::NotCounted,
                _ => {}
            }
        }
    }

    pub(super) fn read_barline(&mut self, element: Element<'_>) {
        // What stands inside a bar is no end of it; its signs of the road still count.
        let mut inside = Barline::default();
        let line = match element.attribute("location").as_deref() {
            Some("left") => &mut self.left,
            Some("middle") => &mut inside,
            _ => &mut self.right,
        };
        let mut jumps = Vec::new();
        for child in element.children() {
            match child.tag() {
                Tag::BAR_STYLE => line.style = style(&child.text()),
                Tag::REPEAT => line.repeat = repeat(child),
                Tag::ENDING => line.ending = ending(child),
                Tag::SEGNO => jumps.push(Jump::Segno),
                Tag::CODA => jumps.push(Jump::Coda),
                _ => {}
            }
        }
        // The thick line of a repeat sign is not the end of the movement.
        if line.repeat.is_some() && line.style == BarlineStyle::Final {
            line.style = BarlineStyle::Single;
        }
        jumps.into_iter().for_each(|jump| self.jump(jump));
    }

    pub(super) fn rehearsal(&mut self, element: Element<'_>) {
        let text = element.text();
        if self.rehearsal.is_none() && !text.is_empty() {
            self.rehearsal = Some(text.into_owned());
        }
    }

    /// A text at the beginning of the bar, kept when it is a heading.
    pub(super) fn heading(&mut self, text: &str) {
        if heading(text).is_some() {
            self.opening.headings.push(text.to_owned());
        }
    }

    pub(super) fn read_print(&mut self, element: Element<'_>) {
        if element.attribute("new-page").as_deref() == Some("yes") {
            self.opening.layout = BarLayout::NewPage;
        }
    }

    /// Takes up a sign of the road once.
    pub(super) fn jump(&mut self, jump: Jump) {
        let known_better = jump == Jump::Coda && self.jumps.contains(&Jump::ToCoda);
        if !known_better && !self.jumps.contains(&jump) {
            self.jumps.push(jump);
        }
    }

    /// The coda sign of this bar is the one to leave at.
    pub(super) fn leave_for_coda(&mut self) {
        self.jumps.retain(|jump| *jump != Jump::Coda);
        self.jump(Jump::ToCoda);
    }

    /// Adds what another part shows in the same bar and this one does not.
    pub(super) fn merge(&mut self, other: Self) {
        if self.node.is_none() {
            self.label = other.label;
            self.kind = other.kind;
            self.node = other.node;
        }
        merge_line(&mut self.left, other.left);
        merge_line(&mut self.right, other.right);
        self.rehearsal = self.rehearsal.take().or(other.rehearsal);
        self.opening.headings.extend(other.opening.headings);
        self.opening.layout = self.opening.layout.max(other.opening.layout);
        for jump in other.jumps {
            match jump {
                Jump::ToCoda => self.leave_for_coda(),
                other => self.jump(other),
            }
        }
    }
}

fn merge_line(line: &mut Barline, other: Barline) {
    if line.style == BarlineStyle::Single {
        line.style = other.style;
    }
    line.repeat = line.repeat.or(other.repeat);
    line.ending = line.ending.take().or(other.ending);
}

fn style(text: &str) -> BarlineStyle {
    match text {
        "light-light" => BarlineStyle::Double,
        "light-heavy" | "heavy-light" | "heavy-heavy" | "heavy" => BarlineStyle::Final,
        _ => BarlineStyle::Single,
    }
}

fn repeat(element: Element<'_>) -> Option<RepeatSign> {
    match element.attribute("direction").as_deref() {
        Some("forward") => Some(RepeatSign::Begin),
        Some("backward") => {
            let times = element.attribute("times").and_then(|times| times.trim().parse().ok());
            Some(RepeatSign::End { times: times.filter(|times| *times > 1).unwrap_or(2) })
        }
        _ => None,
    }
}

fn ending(element: Element<'_>) -> Option<Ending> {
    let edge = match element.attribute("type").as_deref() {
        Some("start") => EndingEdge::Start,
        Some("stop") => EndingEdge::Stop,
        Some("discontinue") => EndingEdge::Discontinue,
        _ => return None,
    };
    let mut numbers = element.attribute("number").map(|number| passes(&number)).unwrap_or_default();
    if numbers.is_empty() {
        numbers = passes(&element.text());
    }
    Some(Ending { numbers, edge })
}
