//! Pages to draw on: text, rules and outlines, in points from the top left.

use std::collections::BTreeMap;
use std::num::NonZeroU16;

use krilla::Data;
use krilla::Document;
use krilla::SerializeSettings;
use krilla::color::rgb;
use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{PathBuilder, Point, Rect, Size, Transform};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke};
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, Identifier, SpanTag, Tag, TagGroup, TagKind, TagTree,
};
use krilla::text::{Font, TextDirection};
use krilla_svg::{SurfaceExt as _, SvgSettings};
use resvg::usvg::{Options, Tree};
use rustybuzz::ttf_parser;

use super::{Paper, PdfError};

/// Points in a millimetre.
pub const POINTS_A_MILLIMETRE: f32 = 72.0 / 25.4;

/// Margins: room for holes and hands at the sides. Source: 15 mm sides, 10 mm top and bottom are an
/// orchestra's rule for parts.
const SIDE: f32 = 15.0 * POINTS_A_MILLIMETRE;
const EDGE: f32 = 12.0 * POINTS_A_MILLIMETRE;

/// Rule of thumb: so far above its base line a heading is shown that somebody jumps to, points.
const ABOVE: f32 = 14.0;

static REGULAR: &[u8] = include_bytes!("../../fonts/NotoSans-Regular.ttf");
static BOLD: &[u8] = include_bytes!("../../fonts/NotoSans-Bold.ttf");

/// Upright or heavy letters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Face {
    /// Upright.
    Regular,
    /// Heavy.
    Bold,
}

/// What a piece of a page is, for those who have it read out.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ReadAs {
    /// A heading of a level, from 1.
    Heading(u16),
    /// A paragraph.
    Paragraph,
    /// A picture, and what it shows.
    Picture(String),
    /// What is said in the stead of what stands there: numbers in a table say nothing without the heads of their columns, and
    /// a box with a cross in it is no text.
    Said(String),
}

/// One thing to draw.
enum BoardItem {
    Text {
        face: Face,
        size: f32,
        x: f32,
        y: f32,
        text: String,
    },
    /// Text that runs upwards.
    Rising {
        face: Face,
        size: f32,
        x: f32,
        y: f32,
        text: String,
    },
    Rule {
        x: f32,
        to: f32,
        y: f32,
        weight: f32,
    },
    Box {
        x: f32,
        y: f32,
        width: f32,
        height: f32,
    },
    Outline {
        corners: &'static [(f32, f32)],
        x: f32,
        y: f32,
        scale: f32,
    },
    Picture {
        tree: Box<Tree>,
        x: f32,
        y: f32,
        size: Size,
    },
}

#[derive(Default)]
struct BoardPage {
    footer: String,
    number: usize,
    /// Each with the piece that it belongs to, by index; none where it is only for the eye.
    drawings: Vec<(Option<usize>, BoardItem)>,
    /// What stands below the page, which is no part of what it says.
    foot: Vec<BoardItem>,
}

/// All pages, drawn when they are finished. Lengths are points from the top left.
#[expect(missing_debug_implementations, reason = "faces of fonts have none")]
pub struct Board {
    width: f32,
    height: f32,
    title: String,
    language: String,
    /// The pieces of all pages in the order in which they are read.
    pieces: Vec<ReadAs>,
    /// What is drawn now belongs to this piece.
    piece: Option<usize>,
    regular: ttf_parser::Face<'static>,
    bold: ttf_parser::Face<'static>,
    pages: Vec<BoardPage>,
}

impl Board {
    /// No page yet. `language` is that of the text, its two letters.
    ///
    /// # Errors
    /// Fonts that cannot be read.
    pub fn new(paper: Paper, title: &str, language: &str) -> Result<Self, PdfError> {
        let (width, height) = match paper {
            Paper::A4 => (210.0 * POINTS_A_MILLIMETRE, 297.0 * POINTS_A_MILLIMETRE),
            Paper::Letter => (612.0, 792.0),
        };
        let face = |bytes| ttf_parser::Face::parse(bytes, 0).map_err(|error| PdfError(error.to_string()));
        Ok(Self {
            width,
            height,
            title: title.to_owned(),
            language: language.to_owned(),
            pieces: Vec::new(),
            piece: None,
            regular: face(REGULAR)?,
            bold: face(BOLD)?,
            pages: Vec::new(),
        })
    }

    /// Where the text begins.
    #[must_use]
    pub fn left(&self) -> f32 {
        SIDE
    }

    /// Where it ends.
    #[must_use]
    pub fn right(&self) -> f32 {
        self.width - SIDE
    }

    /// From there to there.
    #[must_use]
    pub fn width(&self) -> f32 {
        self.width - 2.0 * SIDE
    }

    /// Below the upper margin.
    #[must_use]
    pub fn top(&self) -> f32 {
        EDGE
    }

    /// Above the foot line.
    #[must_use]
    pub fn bottom(&self) -> f32 {
        self.height - EDGE - 16.0
    }

    /// A new page, its numbers beginning anew.
    pub fn start_section(&mut self, name: &str, work: &str) {
        self.pages.push(BoardPage { footer: format!("{name} · {work}"), number: 1, ..BoardPage::default() });
    }

    /// A further page of the section.
    pub fn start_page(&mut self) {
        let (footer, number) =
            self.pages.last().map_or((String::new(), 1), |page| (page.footer.clone(), page.number + 1));
        self.pages.push(BoardPage { footer, number, ..BoardPage::default() });
    }

    fn draw(&mut self, drawing: BoardItem) {
        if let Some(page) = self.pages.last_mut() {
            page.drawings.push((self.piece, drawing));
        }
    }

    /// Begins a piece of the page: what is drawn from now on is read out as this.
    pub fn begin(&mut self, role: ReadAs) {
        self.pieces.push(role);
        self.piece = Some(self.pieces.len() - 1);
    }

    /// Ends it: what is drawn from now on is only for the eye.
    pub fn end(&mut self) {
        self.piece = None;
    }

    /// A line of text on its base line.
    pub fn text(&mut self, face: Face, size: f32, x: f32, y: f32, text: &str) {
        let text = printable(text);
        if !text.is_empty() {
            self.draw(BoardItem::Text { face, size, x, y, text });
        }
    }

    /// A line of text that runs upwards from its beginning, for narrow columns; its base line is to the right.
    pub fn text_rising(&mut self, face: Face, size: f32, x: f32, y: f32, text: &str) {
        let text = printable(text);
        if !text.is_empty() {
            self.draw(BoardItem::Rising { face, size, x, y, text });
        }
    }

    /// A line of text that ends somewhere.
    pub fn text_right(&mut self, face: Face, size: f32, right: f32, y: f32, text: &str) {
        let x = right - self.measure(face, size, text);
        self.text(face, size, x, y, text);
    }

    /// A line of text in a box.
    pub fn boxed(&mut self, face: Face, size: f32, x: f32, y: f32, text: &str) {
        let width = self.measure(face, size, text) + 6.0;
        self.draw(BoardItem::Box { x, y: y - size, width, height: size + 3.0 });
        self.text(face, size, x + 3.0, y - 0.5, text);
    }

    /// A rule across.
    pub fn rule(&mut self, x: f32, to: f32, y: f32, weight: f32) {
        self.draw(BoardItem::Rule { x, to, y, weight });
    }

    /// A filled outline.
    pub fn outline(&mut self, corners: &'static [(f32, f32)], x: f32, y: f32, scale: f32) {
        self.draw(BoardItem::Outline { corners, x, y, scale });
    }

    /// A picture in its own size; one that cannot be read is left out, its words stand there all the same.
    /// It needs no font; its size is in millimetres.
    pub fn picture(&mut self, svg: &str, (width, height): (f32, f32), x: f32, y: f32) {
        let tree = Tree::from_str(svg, &Options::default()).ok();
        let points = |millimetres: f32| millimetres * POINTS_A_MILLIMETRE;
        let size = Size::from_wh(points(width), points(height));
        if let Some((tree, size)) = tree.zip(size) {
            self.draw(BoardItem::Picture { tree: Box::new(tree), x, y, size });
        }
    }

    /// How wide a text is. Kerning is left out: it only makes text narrower.
    #[must_use]
    pub fn measure(&self, face: Face, size: f32, text: &str) -> f32 {
        let face = match face {
            Face::Regular => &self.regular,
            Face::Bold => &self.bold,
        };
        let advance = |letter: char| {
            let glyph = face.glyph_index(letter).unwrap_or(ttf_parser::GlyphId(0));
            f32::from(face.glyph_hor_advance(glyph).unwrap_or(0))
        };
        text.chars().map(advance).sum::<f32>() * size / f32::from(face.units_per_em())
    }

    /// Text cut to a width, with an ellipsis where something is lost.
    #[must_use]
    pub fn clipped(&self, face: Face, size: f32, text: &str, room: f32) -> String {
        let text = printable(text);
        if self.measure(face, size, &text) <= room {
            return text;
        }
        let mut kept: Vec<char> = text.chars().take(400).collect();
        while kept.pop().is_some() {
            let shown: String = kept.iter().chain(['…'].iter()).collect();
            if self.measure(face, size, &shown) <= room {
                return shown;
            }
        }
        String::new()
    }

    /// Text broken into lines; a word that is too long by itself is broken inside.
    #[must_use]
    pub fn wrapped(&self, face: Face, size: f32, text: &str, room: f32) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut line = String::new();
        for word in printable(text).split_whitespace() {
            let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if self.measure(face, size, &longer) <= room {
                line = longer;
                continue;
            }
            if !line.is_empty() {
                lines.push(std::mem::take(&mut line));
            }
            for letter in word.chars() {
                line.push(letter);
                if self.measure(face, size, &line) > room && line.chars().count() > 1 {
                    line.pop();
                    lines.push(std::mem::take(&mut line));
                    line.push(letter);
                }
            }
        }
        if !line.is_empty() || lines.is_empty() {
            lines.push(line);
        }
        lines
    }

    /// Draws all pages. What has pieces is made by the rules for those who have it read out (PDF/UA-1, ISO 14289-1) as far as a
    /// program can see to them; text for which the fonts have no signs keeps it from being so, and it is made without.
    ///
    /// # Errors
    /// Only where the library that writes PDF refuses.
    pub fn finish(mut self) -> Result<Vec<u8>, PdfError> {
        self.foot_lines();
        if self.pieces.is_empty() {
            return self.written(SerializeSettings::default());
        }
        let strict = ConfigurationBuilder::new().with_accessibility_validator(Accessibility::UA1).finish();
        let strict =
            strict.map(|configuration| SerializeSettings { configuration, ..SerializeSettings::default() });
        let made =
            strict.map_err(|error| PdfError(format!("{error:?}"))).and_then(|strict| self.written(strict));
        made.or_else(|_| self.written(SerializeSettings::default()))
    }

    fn written(&self, settings: SerializeSettings) -> Result<Vec<u8>, PdfError> {
        let font = |bytes: &'static [u8]| {
            Font::new(Data::from(bytes.to_vec()), 0).ok_or_else(|| PdfError("a font cannot be read".into()))
        };
        let (regular, bold) = (font(REGULAR)?, font(BOLD)?);
        let mut document = Document::new_with(settings);
        document.set_metadata(Metadata::new().title(self.title.clone()).language(self.language.clone()));
        let mut parts: Vec<Vec<Identifier>> = vec![Vec::new(); self.pieces.len()];
        for sheet in &self.pages {
            let size = PageSettings::from_wh(self.width, self.height);
            let size = size.ok_or_else(|| PdfError("the paper has no size".into()))?;
            let mut page = document.start_page_with(size);
            let mut surface = page.surface();
            for (piece, drawing) in &sheet.drawings {
                if self.pieces.is_empty() {
                    put(&mut surface, drawing, &regular, &bold);
                    continue;
                }
                let tag = match (piece, drawing) {
                    (None, _) => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Other)),
                    (Some(_), BoardItem::Text { .. } | BoardItem::Rising { .. }) => {
                        ContentTag::Span(SpanTag::empty())
                    }
                    (Some(_), _) => ContentTag::Other,
                };
                let part = surface.start_tagged(tag);
                put(&mut surface, drawing, &regular, &bold);
                surface.end_tagged();
                if let Some(parts) = piece.and_then(|piece| parts.get_mut(piece)) {
                    parts.push(part);
                }
            }
            for drawing in &sheet.foot {
                if self.pieces.is_empty() {
                    put(&mut surface, drawing, &regular, &bold);
                    continue;
                }
                surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(ArtifactType::Footer)));
                put(&mut surface, drawing, &regular, &bold);
                surface.end_tagged();
            }
            surface.finish();
            page.finish();
        }
        if !self.pieces.is_empty() {
            let headings = self.headings();
            let mut outline = Outline::new();
            for (text, page, y) in headings.values() {
                let there = XyzDestination::new(*page, Point::from_xy(0.0, (y - ABOVE).max(0.0)));
                outline.push_child(OutlineNode::new(text.clone(), there));
            }
            document.set_outline(outline);
            document.set_tag_tree(tree(&self.language, &self.pieces, parts, &headings));
        }
        document.finish().map_err(|error| PdfError(format!("{error:?}")))
    }

    /// What headings say, by piece, with the index of the page and the height at which each stands.
    fn headings(&self) -> BTreeMap<usize, (String, usize, f32)> {
        let mut headings: BTreeMap<usize, (String, usize, f32)> = BTreeMap::new();
        for (page, sheet) in self.pages.iter().enumerate() {
            for (piece, drawing) in &sheet.drawings {
                let (Some(piece), BoardItem::Text { y, text, .. }) = (piece, drawing) else { continue };
                if !matches!(self.pieces.get(*piece), Some(ReadAs::Heading(_))) {
                    continue;
                }
                let heading = headings.entry(*piece).or_insert_with(|| (String::new(), page, *y));
                if !heading.0.is_empty() {
                    heading.0.push_str(", ");
                }
                heading.0.push_str(text);
            }
        }
        headings
    }

    /// Section, work and page below every page: loose sheets find their way back.
    fn foot_lines(&mut self) {
        const SIZE: f32 = 8.0;
        let last: Vec<usize> = (0..self.pages.len())
            .map(|index| {
                let more = self.pages[index..].iter().skip(1).take_while(|page| page.number > 1).count();
                self.pages[index].number + more
            })
            .collect();
        let y = self.height - EDGE;
        for (index, last) in last.into_iter().enumerate() {
            let number = format!("{} / {last}", self.pages[index].number);
            let room = self.width() - 60.0;
            let footer = self.clipped(Face::Regular, SIZE, &self.pages[index].footer, room);
            let x = self.right() - self.measure(Face::Regular, SIZE, &number);
            let texts = [(SIDE, footer), (x, number)];
            let drawn =
                texts.map(|(x, text)| BoardItem::Text { face: Face::Regular, size: SIZE, x, y, text });
            self.pages[index].foot.extend(drawn);
        }
    }
}

/// The pieces of a document, for those who have it read out.
fn tree(
    language: &str,
    pieces: &[ReadAs],
    parts: Vec<Vec<Identifier>>,
    headings: &BTreeMap<usize, (String, usize, f32)>,
) -> TagTree {
    let mut tree = TagTree::new().with_lang(Some(language.to_owned()));
    for (index, (role, parts)) in pieces.iter().zip(parts).enumerate() {
        let tag: TagKind = match role {
            ReadAs::Heading(level) => {
                let text = headings.get(&index).map(|(text, ..)| text.clone());
                Tag::Hn(NonZeroU16::new(*level).unwrap_or(NonZeroU16::MIN), text).into()
            }
            ReadAs::Paragraph => Tag::P.into(),
            ReadAs::Picture(text) => Tag::Figure(Some(text.clone())).into(),
            ReadAs::Said(text) => Tag::P.with_alt_text(Some(text.clone())).into(),
        };
        let mut group = TagGroup::new(tag);
        parts.into_iter().for_each(|part| group.push(part));
        tree.push(group);
    }
    tree
}

/// Text without control characters: a font has no signs for them.
fn printable(text: &str) -> String {
    text.chars().map(|letter| if letter.is_control() { ' ' } else { letter }).collect()
}

fn put(surface: &mut krilla::surface::Surface<'_>, drawing: &BoardItem, regular: &Font, bold: &Font) {
    let black =
        || Fill { paint: rgb::Color::black().into(), opacity: NormalizedF32::ONE, rule: FillRule::NonZero };
    let font = |face: &Face| match face {
        Face::Regular => regular.clone(),
        Face::Bold => bold.clone(),
    };
    match drawing {
        BoardItem::Text { face, size, x, y, text } => {
            surface.set_stroke(None);
            surface.set_fill(Some(black()));
            let at = Point::from_xy(*x, *y);
            surface.draw_text(at, font(face), *size, text, false, TextDirection::Auto);
        }
        BoardItem::Rising { face, size, x, y, text } => {
            surface.set_stroke(None);
            surface.set_fill(Some(black()));
            // A quarter of a turn to the left.
            surface.push_transform(&Transform::from_row(0.0, -1.0, 1.0, 0.0, *x, *y));
            surface.draw_text(Point::from_xy(0.0, 0.0), font(face), *size, text, false, TextDirection::Auto);
            surface.pop();
        }
        BoardItem::Rule { x, to, y, weight } => {
            let mut path = PathBuilder::new();
            path.move_to(*x, *y);
            path.line_to(*to, *y);
            stroked(surface, path, *weight);
        }
        BoardItem::Box { x, y, width, height } => {
            if let Some(shape) = Rect::from_xywh(*x, *y, *width, *height) {
                let mut path = PathBuilder::new();
                path.push_rect(shape);
                stroked(surface, path, 0.8);
            }
        }
        BoardItem::Picture { tree, x, y, size } => {
            surface.push_transform(&Transform::from_translate(*x, *y));
            // Nothing is drawn only where the size is nothing, and then nothing is to be seen.
            let _ = surface.draw_svg(tree, *size, SvgSettings::default());
            surface.pop();
        }
        BoardItem::Outline { corners, x, y, scale } => {
            let mut path = PathBuilder::new();
            for (index, (right, down)) in corners.iter().enumerate() {
                let (across, along) = (x + right * scale, y + down * scale);
                if index == 0 {
                    path.move_to(across, along);
                } else {
                    path.line_to(across, along);
                }
            }
            path.close();
            surface.set_stroke(None);
            surface.set_fill(Some(black()));
            if let Some(path) = path.finish() {
                surface.draw_path(&path);
            }
        }
    }
}

fn stroked(surface: &mut krilla::surface::Surface<'_>, path: PathBuilder, weight: f32) {
    surface.set_fill(None);
    surface.set_stroke(Some(Stroke {
        paint: rgb::Color::black().into(),
        width: weight,
        ..Stroke::default()
    }));
    if let Some(path) = path.finish() {
        surface.draw_path(&path);
    }
}
