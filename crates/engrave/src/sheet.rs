//! A finished picture and its three forms: SVG, PNG, PDF.

#[cfg(feature = "native")]
use krilla::configure::{Archival, ConfigurationBuilder};
#[cfg(feature = "native")]
use krilla::metadata::{DateTime, Metadata};
#[cfg(feature = "native")]
use krilla::page::PageSettings;
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
/// Pictures as the pages of one PDF.
///
/// # Errors
/// No picture at all, or where the library that writes PDF refuses.
pub fn pdf(pictures: &[Picture]) -> Result<Vec<u8>, PictureError> {
    written(pictures, SerializeSettings::default(), None)
}

#[cfg(feature = "native")]
/// The same as PDF/A-2b (ISO 19005-2), which archives ask for; it must bear a date: year, month, day.
///
/// # Errors
/// The same, and where something in it may not be in such a file: a letter that no font has.
pub fn archival_pdf(
    pictures: &[Picture],
    (year, month, day): (u16, u8, u8),
) -> Result<Vec<u8>, PictureError> {
    let strict = ConfigurationBuilder::new().with_archival_validator(Archival::A2_B).finish();
    let configuration = strict.map_err(|error| PictureError(format!("{error:?}")))?;
    let settings = SerializeSettings { configuration, ..SerializeSettings::default() };
    written(pictures, settings, Some(DateTime::new(year).month(month).day(day)))
}

#[cfg(feature = "native")]
fn written(
    pictures: &[Picture],
    settings: SerializeSettings,
    date: Option<DateTime>,
) -> Result<Vec<u8>, PictureError> {
    let first = pictures.first().ok_or_else(|| PictureError("there is nothing to draw".to_owned()))?;
    let mut document = Document::new_with(settings);
    let metadata = Metadata::new().title(first.title.clone()).creator("Arcata".to_owned());
    document.set_metadata(match date {
        Some(date) => metadata.creation_date(date),
        None => metadata,
    });
    for picture in pictures {
        let tree = picture.tree()?;
        #[expect(clippy::cast_possible_truncation, reason = "points of a page")]
        let (width, height) = ((picture.width * POINTS) as f32, (picture.height * POINTS) as f32);
        let no_size = || PictureError("it has no size".to_owned());
        let mut page = document.start_page_with(PageSettings::from_wh(width, height).ok_or_else(no_size)?);
        let mut surface = page.surface();
        let size = krilla::geom::Size::from_wh(width, height).ok_or_else(no_size)?;
        let drawn = surface.draw_svg(&tree, size, SvgSettings::default());
        drawn.ok_or_else(|| PictureError("the PDF does not take the drawing".to_owned()))?;
        surface.finish();
        page.finish();
    }
    document.finish().map_err(|error| PictureError(format!("{error:?}")))
}

/// Numbers of pictures: a hundredth of a millimetre is finer than any printer.
pub(crate) fn rounded(value: f64) -> String {
    let text = format!("{value:.2}");
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    if text == "-0" { "0".to_owned() } else { text.to_owned() }
}
