//! The text of one note and of the directions right before it.

use std::ops::Range;

use arcata_score::BowDirection;
use arcata_xml::{Document, Edit, Editor, Element, Limits, NodeId, Position, Tag};

use super::piece::{MarkShell, MarkupPiece, words_of};
use crate::model::Exact;

/// Children of a `<note>` that come after its `<notations>` (MusicXML 4.0, type `note`).
const AFTER_NOTATIONS: [Tag; 3] = [Tag::LYRIC, Tag::PLAY, Tag::LISTEN];

/// Elements that go when the last thing in them goes.
const SHELLS: [Tag; 3] = [Tag::NOTATIONS, Tag::TECHNICAL, Tag::ARTICULATIONS];

/// What may stand in a remembered text: anything else did not come from a lifted mark.
const KNOWN: [Tag; 9] = [
    Tag::NOTATIONS,
    Tag::TECHNICAL,
    Tag::ARTICULATIONS,
    Tag::DOWN_BOW,
    Tag::UP_BOW,
    Tag::BREATH_MARK,
    Tag::SLUR,
    Tag::DIRECTION,
    Tag::WORDS,
];

/// What else a lifted direction may hold.
const IN_DIRECTION: [Tag; 7] =
    [Tag::DIRECTION_TYPE, Tag::OFFSET, Tag::FOOTNOTE, Tag::LEVEL, Tag::VOICE, Tag::STAFF, Tag::SOUND];

/// The place before a note, in [`Exact::into`].
const BEFORE: &str = "before";

pub(super) struct MarkupUnit {
    /// Where it stands in the document.
    range: Range<usize>,
    original: String,
    text: String,
}

/// The directions right before a note that hold nothing but words, in their order.
pub(crate) fn words_before(note: Element<'_>) -> Vec<String> {
    run_before(note).into_iter().filter_map(words_of).collect()
}

/// The directions between a note and whatever else comes before it.
fn run_before(note: Element<'_>) -> Vec<Element<'_>> {
    let mut run = Vec::new();
    for sibling in note.parent().into_iter().flat_map(|parent| parent.children()) {
        if sibling.id() == note.id() {
            break;
        }
        if sibling.tag() == Tag::DIRECTION { run.push(sibling) } else { run.clear() }
    }
    run
}

impl MarkupUnit {
    pub(super) fn of(document: &Document, note: NodeId) -> Self {
        let Some(note) = document.element(note) else {
            return Self { range: 0..0, original: String::new(), text: String::new() };
        };
        let run = run_before(note);
        let first = run.first().copied().unwrap_or(note);
        let before = note.parent().map(|parent| {
            let before = parent.children().take_while(|child| child.id() != first.id()).last();
            before.map_or(parent.content_range().start, |before| before.range().end)
        });
        let range = before.unwrap_or(note.range().start)..note.range().end;
        let text = document.slice(range.clone()).to_owned();
        Self { range, original: text.clone(), text }
    }

    pub(super) fn into_edit(self) -> Option<Edit> {
        if self.text == self.original {
            return None;
        }
        let (old, new) = (self.original.as_str(), self.text.as_str());
        let mut start = old.bytes().zip(new.bytes()).take_while(|(one, other)| one == other).count();
        while !old.is_char_boundary(start) || !new.is_char_boundary(start) {
            start -= 1;
        }
        let (old_rest, new_rest) = (&old[start..], &new[start..]);
        let mut tail = old_rest
            .bytes()
            .rev()
            .zip(new_rest.bytes().rev())
            .take_while(|(one, other)| one == other)
            .count();
        while !old_rest.is_char_boundary(old_rest.len() - tail)
            || !new_rest.is_char_boundary(new_rest.len() - tail)
        {
            tail -= 1;
        }
        let range = self.range.start + start..self.range.start + old.len() - tail;
        Some(Edit::replacement(range, &new_rest[..new_rest.len() - tail]))
    }

    pub(super) fn has(&self, piece: &MarkupPiece) -> bool {
        parse(&self.text).is_some_and(|mini| !candidates(&mini, piece).is_empty())
    }

    /// The bow marks of the note in their order.
    pub(super) fn bows(&self) -> Vec<BowDirection> {
        let Some(mini) = parse(&self.text) else { return Vec::new() };
        let Some(note) = mini.note() else { return Vec::new() };
        let notations = note.children_named(Tag::NOTATIONS).flat_map(Element::children);
        let technical = notations.filter(|child| child.tag() == Tag::TECHNICAL).flat_map(Element::children);
        technical
            .filter_map(|mark| match mark.tag() {
                Tag::DOWN_BOW => Some(BowDirection::Down),
                Tag::UP_BOW => Some(BowDirection::Up),
                _ => None,
            })
            .collect()
    }

    pub(super) fn take(&mut self, piece: &MarkupPiece, exact: Option<&Exact>) -> Option<Exact> {
        let mini = parse(&self.text)?;
        let candidates = candidates(&mini, piece);
        let plain = piece.plain();
        let as_it_stood =
            candidates.iter().find(|found| exact.is_some_and(|exact| exact.text.contains(found.source())));
        let plainly = candidates.iter().rev().find(|found| found.source().contains(&plain));
        let chosen = as_it_stood.or(plainly).or(candidates.last()).copied()?;
        let (range, exact) = cut(&mini, chosen)?;
        self.text.replace_range(range, "");
        Some(exact)
    }

    pub(super) fn put(&mut self, piece: &MarkupPiece, exact: Option<&Exact>) -> bool {
        let exactly = exact.and_then(|exact| put_exactly(&self.text, piece, exact));
        // What cannot stand as it stood keeps at least its own attributes.
        let written = || exact.and_then(|exact| own_markup(exact, piece)).unwrap_or_else(|| piece.plain());
        match exactly.or_else(|| put_plainly(&self.text, piece, &written())) {
            Some(text) => {
                self.text = text;
                true
            }
            None => false,
        }
    }

    pub(super) fn is_plain(&self, piece: &MarkupPiece, exact: &Exact) -> bool {
        let exactly = put_exactly(&self.text, piece, exact);
        exactly.is_some() && exactly == put_plainly(&self.text, piece, &piece.plain())
    }
}

/// A unit as a document of its own. Offsets are those of the text plus [`OPENING`]'s length.
struct Mini(Document);

const OPENING: &str = "<m>";

fn parse(text: &str) -> Option<Mini> {
    let wrapped = format!("{OPENING}{text}</m>");
    Document::parse(wrapped.into_bytes(), &Limits::default()).ok().map(Mini)
}

impl Mini {
    fn note(&self) -> Option<Element<'_>> {
        self.0.root().children().last()
    }
}

/// The elements that say what a piece says, in document order; of words the whole direction.
fn candidates<'m>(mini: &'m Mini, piece: &MarkupPiece) -> Vec<Element<'m>> {
    let Some(note) = mini.note() else { return Vec::new() };
    if piece.shell() == MarkShell::Before {
        let before = mini.0.root().children().filter(|child| child.id() != note.id());
        return before.filter(|direction| piece.is(*direction)).collect();
    }
    let notations = note.children_named(Tag::NOTATIONS).flat_map(Element::children);
    match piece.shell() {
        MarkShell::Inside(shell) => {
            let inside = notations.filter(|child| child.tag() == shell).flat_map(Element::children);
            inside.filter(|element| piece.is(*element)).collect()
        }
        _ => notations.filter(|element| piece.is(*element)).collect(),
    }
}

/// What to take out with an element, as a range of the unit's text, and how it stood.
fn cut(mini: &Mini, element: Element<'_>) -> Option<(Range<usize>, Exact)> {
    let mut going = element;
    while let Some(parent) = going.parent().filter(|parent| SHELLS.contains(&parent.tag())) {
        // Text that strayed into it is not ours to take.
        if parent.children().count() > 1 || !parent.text().is_empty() {
            break;
        }
        going = parent;
    }
    let going = mini.0.element(going.id())?;
    let mut editor = Editor::new(&mini.0);
    editor.remove(going).ok()?;
    let edits = editor.finish().ok()?;
    let [edit] = edits.edits() else { return None };
    let container = going.parent().filter(|_| edit.insert.is_empty())?;
    let position = container.children().position(|child| child.id() == going.id())?;
    let before = position.checked_sub(1).and_then(|before| container.children().nth(before));
    let base = before.map_or(container.content_range().start, |before| before.range().end);
    let is_root = container.parent().is_none();
    let after = if is_root { container.children().count() - position - 2 } else { position };
    let exact = Exact {
        into: if is_root { BEFORE.to_owned() } else { path(mini, container)? },
        after: u32::try_from(after).ok()?,
        skip: u32::try_from(edit.range.start.checked_sub(base)?).ok()?,
        text: mini.0.slice(edit.range.clone()).to_owned(),
    };
    Some((edit.range.start - OPENING.len()..edit.range.end - OPENING.len(), exact))
}

/// The way from the note to an element inside it.
fn path(mini: &Mini, mut element: Element<'_>) -> Option<String> {
    let note = mini.note()?;
    let mut steps = Vec::new();
    while element.id() != note.id() {
        let parent = element.parent()?;
        let alike = parent.children_named(element.tag());
        let number = alike.take_while(|other| other.id() != element.id()).count() + 1;
        steps.push(format!("{} {number}", element.name()));
        element = parent;
    }
    steps.reverse();
    Some(steps.join("/"))
}

fn follow<'m>(mini: &'m Mini, path: &str) -> Option<Element<'m>> {
    let mut element = mini.note()?;
    for step in path.split('/').filter(|step| !step.is_empty()) {
        let (name, number) = step.split_once(' ')?;
        let number = number.parse::<usize>().ok()?.checked_sub(1)?;
        element = element.children().filter(|child| child.name() == name).nth(number)?;
    }
    Some(element)
}

/// The text with a remembered piece back in its place; nothing where that place is no more, or where what
/// is remembered is not what a lifted mark leaves.
fn put_exactly(text: &str, piece: &MarkupPiece, exact: &Exact) -> Option<String> {
    remembered(exact, piece)?;
    let mini = parse(text)?;
    let before_note = exact.into == BEFORE;
    let container = if before_note { mini.0.root() } else { follow(&mini, &exact.into)? };
    if container.is_empty_tag() {
        return None;
    }
    let count = container.children().count();
    let after = usize::try_from(exact.after).ok()?;
    let position = if before_note { (count - 1).checked_sub(after)? } else { after };
    if position > count {
        return None;
    }
    let before = position.checked_sub(1).and_then(|before| container.children().nth(before));
    let base = before.map_or(container.content_range().start, |before| before.range().end);
    let next = container.children().nth(position);
    let limit = next.map_or(container.content_range().end, |next| next.range().start);
    let at = base + usize::try_from(exact.skip).ok()?;
    let whole = mini.0.text();
    if at > limit || !whole.is_char_boundary(at) {
        return None;
    }
    let at = at - OPENING.len();
    let put = format!("{}{}{}", &text[..at], exact.text, &text[at..]);
    // A place inside a comment would swallow it.
    let check = parse(&put)?;
    let found = check.0.elements().len() == mini.0.elements().len() + remembered(exact, piece)?;
    found.then_some(put)
}

/// How many elements a remembered text holds, if it is one that a lifted mark of this kind leaves.
fn remembered(exact: &Exact, piece: &MarkupPiece) -> Option<usize> {
    let mini = parse(&exact.text)?;
    let root = mini.0.root();
    let only = root.children().next().filter(|_| root.children().count() == 1)?;
    let is_direction = only.tag() == Tag::DIRECTION;
    let known = root.descendants().all(|element| {
        KNOWN.contains(&element.tag()) || (is_direction && IN_DIRECTION.contains(&element.tag()))
    });
    let in_order =
        is_direction == (exact.into == BEFORE) && is_direction == (piece.shell() == MarkShell::Before);
    let inside = if is_direction { piece.is(only) } else { root.descendants().any(|one| piece.is(one)) };
    let is_blank = |element: Element<'_>| !element.text().contains(|sign: char| !sign.is_whitespace());
    // Bow marks, breath marks and slurs are signs: only directions hold words.
    let wordless = is_blank(root) && (is_direction || root.descendants().all(is_blank));
    (known && in_order && inside && wordless).then(|| root.descendants().len())
}

/// The element itself out of a remembered text.
fn own_markup(exact: &Exact, piece: &MarkupPiece) -> Option<String> {
    remembered(exact, piece)?;
    let mini = parse(&exact.text)?;
    let is_it = |element: &Element<'_>| match piece {
        MarkupPiece::Words(_) => element.tag() == Tag::WORDS,
        _ => piece.is(*element),
    };
    mini.0.root().descendants().find(is_it).map(|element| element.source().to_owned())
}

/// The text with an element where it is usual.
///
/// An empty shell that the file brought along is left as it is: once filled, nothing would tell it from one
/// that came with the mark, and taking the mark off would take it, too.
fn put_plainly(text: &str, piece: &MarkupPiece, markup: &str) -> Option<String> {
    let mini = parse(text)?;
    let note = mini.note().filter(|note| note.tag() == Tag::NOTE)?;
    if piece.shell() == MarkShell::Before {
        return put_before(text, note, markup);
    }
    let filled = |element: &Element<'_>| element.children().next().is_some();
    let mut shells = note.children_named(Tag::NOTATIONS).filter(filled);
    let mut editor = Editor::new(&mini.0);
    let notations = match piece.shell() {
        MarkShell::Inside(shell) => {
            let inner =
                |notations: Element<'_>| notations.children_named(shell).find(filled).map(|one| one.id());
            if let Some(inner) = shells.clone().find_map(inner).and_then(|id| mini.0.element(id)) {
                editor.insert_child(inner, markup, Position::Last).ok()?;
                return finished(&mini, editor);
            }
            let name = shell.known_name()?;
            format!("<{name}>{markup}</{name}>")
        }
        _ => markup.to_owned(),
    };
    if let Some(shell) = shells.next() {
        editor.insert_child(shell, &notations, Position::Last).ok()?;
        return finished(&mini, editor);
    }
    let after = note.children().find(|child| AFTER_NOTATIONS.contains(&child.tag()));
    let position = after.map_or(Position::Last, |child| Position::Before(child.id()));
    editor.insert_child(note, &format!("<notations>{notations}</notations>"), position).ok()?;
    finished(&mini, editor)
}

fn finished(mini: &Mini, editor: Editor<'_>) -> Option<String> {
    let bytes = mini.0.apply(&editor.finish().ok()?).ok()?;
    let text = String::from_utf8(bytes).ok()?;
    text.strip_prefix(OPENING)?.strip_suffix("</m>").map(str::to_owned)
}

/// Words in a direction of their own on a line of its own, directly before the note.
fn put_before(text: &str, note: Element<'_>, words: &str) -> Option<String> {
    let at = note.range().start - OPENING.len();
    let blanks = blanks_before(text, at);
    let lead = last_line(blanks);
    let step = note.children().next().map_or("", |child| {
        let lead_inside = last_line(blanks_before(note.document().text(), child.range().start));
        lead_inside.strip_prefix(lead).unwrap_or("  ")
    });
    let breaks = lead.contains(['\n', '\r']);
    let (one, two) =
        if breaks { (format!("{lead}{step}"), format!("{lead}{step}{step}")) } else { Default::default() };
    let end = if breaks { lead } else { "" };
    let same = |tag: Tag| note.child(tag).map(|child| format!("{one}{}", child.source())).unwrap_or_default();
    let direction = format!(
        "{lead}<direction placement=\"above\">{one}<direction-type>{two}{words}{one}</direction-type>{}{}{end}</direction>",
        same(Tag::VOICE),
        same(Tag::STAFF),
    );
    let at = at - blanks.len();
    Some(format!("{}{direction}{}", &text[..at], &text[at..]))
}

fn blanks_before(text: &str, at: usize) -> &str {
    let kept = text[..at].trim_end_matches([' ', '\t', '\r', '\n']).len();
    &text[kept..at]
}

/// The last line break and what follows it; all of them where no line is broken.
fn last_line(blanks: &str) -> &str {
    let Some(last) = blanks.rfind(['\n', '\r']) else { return blanks };
    if blanks[..=last].ends_with("\r\n") { &blanks[last - 1..] } else { &blanks[last..] }
}
