//! An engraved slice: its picture, and where everything is in it.

use std::collections::BTreeMap;

use arcata_xml::NodeId;
use roxmltree::{Document as Tree, Node};

use crate::engraver::EngraveError;
use crate::{Slice, note_name};

/// A rectangle in a drawing, in the drawing's units (see [`Drawing::staff_height`]), y downwards.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Area {
    /// Left edge.
    pub left: f64,
    /// Upper edge.
    pub top: f64,
    /// Right edge.
    pub right: f64,
    /// Lower edge.
    pub bottom: f64,
}

impl Area {
    /// The smallest rectangle around both.
    #[must_use]
    pub fn with(self, other: Self) -> Self {
        Self {
            left: self.left.min(other.left),
            top: self.top.min(other.top),
            right: self.right.max(other.right),
            bottom: self.bottom.max(other.bottom),
        }
    }

    /// Whether the other lies in it.
    #[must_use]
    pub fn holds(self, other: Self) -> bool {
        self.left <= other.left
            && self.top <= other.top
            && self.right >= other.right
            && self.bottom >= other.bottom
    }
}

/// What could not be drawn as it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotDrawn {
    /// A note of the slice has no place in the drawing: it is hidden, or the library left it out.
    NoteNotDrawn(NodeId),
}

/// One slice as engraved: one system.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// What goes between `<svg>` and `</svg>`, in a coordinate system of the drawing's units.
    pub content: String,
    /// Width in units.
    pub width: f64,
    /// Height in units.
    pub height: f64,
    /// Noteheads and rests by their element in the user's file.
    pub notes: BTreeMap<NodeId, Area>,
    /// The lines of each staff, from the top of the system: from the first line to the last, over all bars.
    pub staves: Vec<Area>,
    /// Everything around each staff, from its highest slur to its lowest hairpin: what is nearer to it
    /// than to the other staves.
    pub around: Vec<Area>,
    /// Where each bar ends, units from the left.
    pub barlines: Vec<f64>,
    /// All that is drawn of the system.
    pub system: Area,
    /// What was not drawn.
    pub remarks: Vec<NotDrawn>,
}

impl Drawing {
    /// Units from the first line of a staff to the fifth.
    #[must_use]
    pub fn staff_height(&self) -> f64 {
        720.0
    }

    /// Takes the library's SVG apart. Its boxes are groups of class `bounding-box` with one rectangle, in the
    /// coordinates of the group inside the page margin (margins are set to 0, so both are the same).
    pub(crate) fn read(svg: &str, slice: &Slice) -> Result<Self, EngraveError> {
        let unreadable = |why: &str| EngraveError::Unreadable { why: why.to_owned() };
        let tree = Tree::parse(svg).map_err(|error| unreadable(&error.to_string()))?;
        let scaled = tree.descendants().find(|node| is_class(*node, "definition-scale"));
        let scaled = scaled.ok_or_else(|| unreadable("it has no drawing"))?;
        let size: Vec<f64> = scaled
            .attribute("viewBox")
            .unwrap_or_default()
            .split_whitespace()
            .filter_map(|number| number.parse().ok())
            .collect();
        let [_, _, width, height] = size[..] else { return Err(unreadable("it has no size")) };
        let boxes = boxes(scaled);
        let (staves, barlines) = staves(scaled)?;
        let mut notes = BTreeMap::new();
        let mut remarks = Vec::new();
        for node in slice.notes() {
            match boxes.get(note_name(*node).as_str()) {
                Some(area) => {
                    notes.insert(*node, *area);
                }
                None => remarks.push(NotDrawn::NoteNotDrawn(*node)),
            }
        }
        let around = around(&staves, &boxes);
        let system = boxes.values().copied().chain(staves.iter().copied()).reduce(Area::with);
        Ok(Self {
            content: crate::cleaning::content(&tree),
            width,
            height,
            notes,
            around,
            staves,
            barlines,
            system: system.unwrap_or_default(),
            remarks,
        })
    }
}

pub(crate) fn is_class(node: Node<'_, '_>, class: &str) -> bool {
    node.attribute("class").is_some_and(|classes| classes.split(' ').any(|one| one == class))
}

/// All boxes by the id of what they are around.
pub(crate) fn boxes<'t>(scaled: Node<'t, 't>) -> BTreeMap<&'t str, Area> {
    let boxed = scaled.descendants().filter(|node| is_class(*node, "bounding-box"));
    boxed
        .filter_map(|group| Some((group.attribute("id")?.strip_prefix("bbox-")?, rectangle(group)?)))
        .collect()
}

/// The rectangle of a box.
pub(crate) fn rectangle(group: Node<'_, '_>) -> Option<Area> {
    let rectangle = group.children().find(|child| child.has_tag_name("rect"))?;
    let number = |name| rectangle.attribute(name).and_then(|text: &str| text.parse::<f64>().ok());
    let (left, top) = (number("x")?, number("y")?);
    let (right, bottom) = (left + number("width")?, top + number("height")?);
    // Nothing has an empty box: the library gives one to accidentals that are not printed.
    (right > left || bottom > top).then_some(Area { left, top, right, bottom })
}

/// What belongs to each staff, by the distance of its middle. Names and brackets stand left of the staves.
fn around(staves: &[Area], boxes: &BTreeMap<&str, Area>) -> Vec<Area> {
    let mut around = staves.to_vec();
    let left = staves.iter().map(|staff| staff.left).fold(f64::MAX, f64::min);
    let over = |area: &Area| {
        staves.iter().filter(|staff| area.top <= staff.top && area.bottom >= staff.bottom).count()
    };
    // Bar lines and brackets over several staves belong to none of them.
    for area in boxes.values().filter(|area| area.right > left && over(area) < 2) {
        let middle = f64::midpoint(area.top, area.bottom);
        let far = |staff: &Area| (middle - f64::midpoint(staff.top, staff.bottom)).abs();
        let nearest =
            (0..staves.len()).min_by(|one, other| far(&staves[*one]).total_cmp(&far(&staves[*other])));
        if let Some(index) = nearest {
            around[index] = around[index].with(*area);
        }
    }
    around
}

/// The staves, joined over all bars, and the ends of the bars.
fn staves(scaled: Node<'_, '_>) -> Result<(Vec<Area>, Vec<f64>), EngraveError> {
    let mut staves: Vec<Area> = Vec::new();
    let mut barlines = Vec::new();
    for measure in
        scaled.descendants().filter(|node| is_class(*node, "measure") && !is_class(*node, "bounding-box"))
    {
        let mut end = 0.0_f64;
        let here = measure.children().filter(|node| is_class(*node, "staff"));
        for (index, staff) in here.enumerate() {
            let Some(area) = lines(staff) else { continue };
            end = end.max(area.right);
            match staves.get_mut(index) {
                Some(known) => *known = known.with(area),
                None => staves.push(area),
            }
        }
        barlines.push(end);
    }
    if staves.is_empty() {
        return Err(EngraveError::Unreadable { why: "it has no staff".to_owned() });
    }
    Ok((staves, barlines))
}

/// The staff lines of one bar: paths of the form `M x y L x y` right inside the staff.
pub(crate) fn lines(staff: Node<'_, '_>) -> Option<Area> {
    let paths = staff.children().filter(|node| node.has_tag_name("path"));
    paths
        .filter_map(|path| {
            let numbers: Vec<f64> = path
                .attribute("d")?
                .split(|letter: char| letter == 'M' || letter == 'L' || letter.is_whitespace())
                .filter_map(|number| number.parse().ok())
                .collect();
            let [left, top, right, bottom] = numbers[..] else { return None };
            Some(Area { left, top, right, bottom })
        })
        .reduce(Area::with)
}
