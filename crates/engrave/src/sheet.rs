//! A finished picture and its three forms: SVG, PNG, PDF.

#[cfg(feature = "native")]
use krilla::configure::{Archival, ConfigurationBuilder};
#[cfg(feature = "native")]
use krilla::metadata::{DateTime, Metadata};
#[cfg(feature = "native")]
use krilla::page::PageSettings;
#[cfg(feature = "native")]
use krilla::tagging::{ContentTag, Tag, TagGroup, TagTree};
#[cfg(feature = "native")]
use krilla::{Document, SerializeSettings};
#[cfg(feature = "native")]
use krilla_svg::{SurfaceExt, SvgSettings};
#[cfg(feature = "native")]
use resvg::tiny_skia::{Color, Pixmap, Transform};
#[cfg(feature = "native")]
use resvg::usvg::{Indent, Options, Tree, WriteOptions};

use crate::fonts;

#[cfg(feature = "native")]
/// Points in a millimetre.
const POINTS: f64 = 72.0 / 25.4;

#[cfg(feature = "native")]
/// Rasters with more pixels than this are refused: they would fill the memory.
const MOST_PIXELS: f64 = 200e6;

/// A picture with a size on paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// Title, for those who hear the picture and for the PDF's title.
    pub title: String,
    /// What goes between `<svg>` and `</svg>`, in millimetres.
    pub content: String,
    /// Width, mm.
    pub width: f64,
    /// Height, mm.
    pub height: f64,
}

/// Why a picture cannot be made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PictureError(pub(crate) String);

impl std::fmt::Display for PictureError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "the picture cannot be made: {}", self.0)
    }
}

impl std::error::Error for PictureError {}

impl Picture {
    /// The picture as a file of its own. The music font is inside where text needs it; words take the
    /// reader's serif font where Liberation Serif is missing.
    #[must_use]
    pub fn svg(&self) -> String {
        let style = if self.content.contains(r#"font-family="Bravura""#) {
            format!("<style>{}</style>", fonts::music_style_sheet())
        } else {
            String::new()
        };
        let (width, height) = (rounded(self.width), rounded(self.height));
        let title = arcata_xml::seen(&self.title);
        format!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" role="img" color="black"><title>{}</title>{style}{}</svg>"#,
            arcata_xml::escape(&title),
            self.content
        )
    }
}

#[cfg(feature = "native")]
impl Picture {
    /// The picture on white, `dots` to the inch, as PNG.
    ///
    /// # Errors
    /// A picture without size, or larger than 200 million pixels.
    pub fn png(&self, dots: u16) -> Result<Vec<u8>, PictureError> {
        let tree = self.tree()?;
        let scale = f64::from(dots.max(1)) / 25.4;
        let (width, height) = ((self.width * scale).ceil(), (self.height * scale).ceil());
        if width * height > MOST_PIXELS {
            let why = format!(
                "{width} by {height} dots are too many; ask for fewer bars or parts, or for fewer dots an inch"
            );
            return Err(PictureError(why));
        }
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "checked above")]
        let pixmap = Pixmap::new(width as u32, height as u32);
        let mut pixmap = pixmap.ok_or_else(|| PictureError("it has no size".to_owned()))?;
        pixmap.fill(Color::WHITE);
        #[expect(clippy::cast_possible_truncation, reason = "pixels")]
        let scale = (width / f64::from(tree.size().width())) as f32;
        resvg::render(&tree, Transform::from_scale(scale, scale), &mut pixmap.as_mut());
        pixmap.encode_png().map_err(|error| PictureError(error.to_string()))
    }

    /// The picture as one page of PDF of its own size; text stays text and can be searched.
    ///
    /// # Errors
    /// Where the library that writes PDF refuses.
    pub fn pdf(&self) -> Result<Vec<u8>, PictureError> {
        pdf(std::slice::from_ref(self))
    }

    /// The picture as SVG in which letters are outlines, so that it needs no font: for pages of other makers.
    ///
    /// # Errors
    /// A picture without size.
    pub fn outlines(&self) -> Result<String, PictureError> {
        let options = WriteOptions { indent: Indent::None, ..WriteOptions::default() };
        Ok(self.tree()?.to_string(&options))
    }

    fn tree(&self) -> Result<Tree, PictureError> {
        let options = Options { fontdb: fonts::database(), ..Options::default() };
        Tree::from_str(&self.svg(), &options).map_err(|error| PictureError(error.to_string()))
    }
}

#[cfg(feature = "native")]
/// How pages are to be printed and kept.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PrintForm {
    /// PDF/A-2b (ISO 19005-2), which archives ask for; such a file must bear a date: year, month, day.
    pub archived: Option<(u16, u8, u8)>,
    /// What is printed beyond the edge and cut off, mm, with marks for the knife; none: a page is as large as its sheet.
    pub bleed: f64,
}

#[cfg(feature = "native")]
/// How long the marks for the knife are, mm (common practice).
const CUT_MARK: f64 = 5.0;

#[cfg(feature = "native")]
/// Pictures as the pages of one PDF.
///
/// # Errors
/// No picture at all, or where the library that writes PDF refuses.
pub fn pdf(pictures: &[Picture]) -> Result<Vec<u8>, PictureError> {
    print_pdf(pictures, PrintForm::default())
}

#[cfg(feature = "native")]
/// The same for an archive, for a printer who cuts, or both. Every page says what is left of it when it is cut (ISO 32000,
/// `TrimBox`) and how far its bleed reaches (`BleedBox`).
///
/// # Errors
/// The same; of a file for an archive also where something in it may not be in such a file: a letter that no font has.
pub fn print_pdf(pictures: &[Picture], form: PrintForm) -> Result<Vec<u8>, PictureError> {
    let first = pictures.first().ok_or_else(|| PictureError("there is nothing to draw".to_owned()))?;
    let mut settings = SerializeSettings::default();
    let mut metadata = Metadata::new().title(first.title.clone()).creator("Arcata".to_owned());
    if let Some((year, month, day)) = form.archived {
        let strict = ConfigurationBuilder::new().with_archival_validator(Archival::A2_B).finish();
        settings.configuration = strict.map_err(|error| PictureError(format!("{error:?}")))?;
        metadata = metadata.creation_date(DateTime::new(year).month(month).day(day));
    }
    let bleed = form.bleed.max(0.0);
    let mut document = Document::new_with(settings);
    document.set_metadata(metadata);
    // Who has the page read aloud hears what it is (ISO 32000-1, 14.8: tagged PDF).
    let mut tags = TagTree::new();
    for (number, picture) in (1..).zip(pictures) {
        let sheet = picture.on_sheet(bleed);
        let tree = sheet.tree()?;
        let no_size = || PictureError("it has no size".to_owned());
        let (width, height) = (points(sheet.width), points(sheet.height));
        // A box that far from the edges of the sheet.
        let inside = |edge: f64| {
            let (near, right, below) =
                (points(edge), points(sheet.width - edge), points(sheet.height - edge));
            krilla::geom::Rect::from_ltrb(near, near, right, below)
        };
        let edge = (sheet.width - picture.width) / 2.0;
        let settings = PageSettings::from_wh(width, height).ok_or_else(no_size)?;
        let settings = settings.with_trim_box(inside(edge)).with_bleed_box(inside(edge - bleed));
        let mut page = document.start_page_with(settings);
        let mut surface = page.surface();
        let size = krilla::geom::Size::from_wh(width, height).ok_or_else(no_size)?;
        let drawing = surface.start_tagged(ContentTag::Other);
        let drawn = surface.draw_svg(&tree, size, SvgSettings::default());
        surface.end_tagged();
        drawn.ok_or_else(|| PictureError("the PDF does not take the drawing".to_owned()))?;
        surface.finish();
        let said = format!("{} ({number}/{})", picture.title, pictures.len());
        let mut figure = TagGroup::new(Tag::Figure(Some(said)));
        figure.push(drawing);
        tags.push(figure);
        page.finish();
    }
    document.set_tag_tree(tags);
    document.finish().map_err(|error| PictureError(format!("{error:?}")))
}

#[cfg(feature = "native")]
#[expect(clippy::cast_possible_truncation, reason = "points of a page")]
fn points(millimetres: f64) -> f32 {
    (millimetres * POINTS) as f32
}

#[cfg(feature = "native")]
impl Picture {
    /// The page on a larger sheet with room for its bleed and marks for the knife; where nothing is cut, the page itself.
    fn on_sheet(&self, bleed: f64) -> std::borrow::Cow<'_, Self> {
        if bleed <= 0.0 {
            return std::borrow::Cow::Borrowed(self);
        }
        let edge = bleed + CUT_MARK;
        let (width, height) = (self.width + 2.0 * edge, self.height + 2.0 * edge);
        let mut marks = String::new();
        let mut mark = |x1: f64, y1: f64, x2: f64, y2: f64| {
            marks.push_str(&format!(
                r#"<line x1="{}" y1="{}" x2="{}" y2="{}" stroke="black" stroke-width="0.1"/>"#,
                rounded(x1),
                rounded(y1),
                rounded(x2),
                rounded(y2)
            ));
        };
        for x in [edge, edge + self.width] {
            mark(x, 0.0, x, CUT_MARK);
            mark(x, height - CUT_MARK, x, height);
        }
        for y in [edge, edge + self.height] {
            mark(0.0, y, CUT_MARK, y);
            mark(width - CUT_MARK, y, width, y);
        }
        let edge = rounded(edge);
        std::borrow::Cow::Owned(Self {
            title: self.title.clone(),
            content: format!(r#"<g transform="translate({edge} {edge})">{}</g>{marks}"#, self.content),
            width,
            height,
        })
    }
}

/// Numbers of pictures: a hundredth of a millimetre is finer than any printer.
pub(crate) fn rounded(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
