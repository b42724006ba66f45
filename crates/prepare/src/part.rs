//! One part on paper: its pages and its file.

use arcata_engrave::{Booklet, BookletRequest, Engraver, pdf};
use arcata_score::Score;

/// A part with its pages.
#[derive(Debug)]
pub struct PartPaper {
    /// The part's name.
    pub name: String,
    /// Its pages, its MusicXML, its page turns.
    pub booklet: Booklet,
    /// The pages as a PDF.
    pub pdf: Vec<u8>,
}

/// Makes a part.
///
/// # Errors
/// Where it cannot be engraved, in words.
pub fn part_paper(request: &BookletRequest<'_>, engraver: &Engraver) -> Result<PartPaper, String> {
    let name = request.score.parts.get(request.part).ok_or("there is no such part")?.name.clone();
    let booklet = Booklet::make(request, engraver).map_err(|problem| problem.to_string())?;
    let pdf = pdf(&booklet.pages).map_err(|problem| problem.to_string())?;
    Ok(PartPaper { name, booklet, pdf })
}

/// Bytes that the name of a part's file has at most, without its ending.
const LONGEST_NAME: usize = 100;

/// What the files of a part are called, without their endings: its number in the score and its name.
///
/// ```
/// let music = arcata_testkit::musicxml("violin: 1/1 C4").into_bytes();
/// let document = arcata_xml::Document::parse(music, &Default::default()).expect("well-formed");
/// assert_eq!(arcata_prepare::part_file_name(&arcata_score::read(&document), 0), "01-violin");
/// ```
#[must_use]
pub fn part_file_name(score: &Score, part: usize) -> String {
    let name = score.parts.get(part).map_or("", |part| part.name.as_str());
    let words = name.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty());
    let mut file = format!("{:02}", part + 1);
    for word in words {
        // Names of files end somewhere; the number in front tells the parts apart.
        if file.len() + word.len() > LONGEST_NAME {
            break;
        }
        file.push('-');
        file.push_str(word);
    }
    file
}
