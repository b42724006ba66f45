//! The fonts of pictures: Bravura for music inside text (the note of a metronome mark), Liberation Serif for
//! words. Both come with the engraving library, packed for browsers (WOFF 2); both are under the SIL Open
//! Font License.

#[cfg(feature = "native")]
use std::sync::Arc;
use std::sync::OnceLock;

#[cfg(feature = "native")]
use base64::Engine as _;
#[cfg(feature = "native")]
use base64::engine::general_purpose::STANDARD;
#[cfg(feature = "native")]
use resvg::usvg::fontdb::Database;

/// The family of words.
pub(crate) const WORDS: &str = "Liberation Serif, Times New Roman, Times, serif";

#[cfg(feature = "native")]
/// Where a packed font begins in a style sheet of the library.
const PACKED: &str = "base64,";

#[cfg(feature = "native")]
/// All fonts, unpacked once: a rasteriser that is not given them leaves music inside text out.
pub(crate) fn database() -> Arc<Database> {
    static FONTS: OnceLock<Arc<Database>> = OnceLock::new();
    let unpacked = || {
        let mut database = Database::new();
        for sheet in ["Bravura.css", "Liberation.css"] {
            for packed in style_sheet(sheet).split(PACKED).skip(1) {
                let packed = packed.split(')').next().unwrap_or_default().trim();
                let font = STANDARD.decode(packed).ok().and_then(|woff| wuff::decompress_woff2(&woff).ok());
                if let Some(font) = font {
                    database.load_font_data(font);
                }
            }
        }
        database.set_serif_family("Liberation Serif");
        Arc::new(database)
    };
    Arc::clone(FONTS.get_or_init(unpacked))
}

/// The music font for a browser, as a style sheet: what a page needs once where a picture's content has text in
/// the family `Bravura`. (A picture's own file has it inside.)
#[cfg(feature = "native")]
#[must_use]
pub fn music_style_sheet() -> &'static str {
    style_sheet("Bravura.css")
}

/// The style sheet that was given, in a program that has no library of its own.
#[cfg(not(feature = "native"))]
static GIVEN: OnceLock<String> = OnceLock::new();

/// The music font for a browser, as a style sheet, as it was given; empty before.
#[cfg(not(feature = "native"))]
#[must_use]
pub fn music_style_sheet() -> &'static str {
    GIVEN.get().map_or("", String::as_str)
}

/// Gives the style sheet of the music font, which comes with the engraving library, once.
#[cfg(not(feature = "native"))]
pub fn give_music_style_sheet(sheet: String) {
    // Whoever comes second brings the same.
    let _ = GIVEN.set(sheet);
}

#[cfg(feature = "native")]
fn style_sheet(name: &str) -> &'static str {
    verovio_data::DATA.get_file(name).and_then(|file| file.contents_utf8()).unwrap_or_default()
}

#[cfg(all(test, feature = "native"))]
mod tests {
    use super::database;

    #[test]
    fn all_five_faces_are_there_under_the_names_that_pictures_use() {
        let database = database();
        let mut faces: Vec<(String, String)> = database
            .faces()
            .map(|face| (face.families[0].0.clone(), format!("{:?} {}", face.style, face.weight.0)))
            .collect();
        faces.sort();
        let words = |style: &str| ("Liberation Serif".to_owned(), style.to_owned());
        assert_eq!(
            faces,
            [
                ("Bravura".to_owned(), "Normal 400".to_owned()),
                words("Italic 400"),
                words("Italic 700"),
                words("Normal 400"),
                words("Normal 700"),
            ]
        );
    }
}
