//! One part on paper: its pages and its file.

use arcata_engrave::{Booklet, BookletRequest, Engraver, House, PrintForm, print_pdf};
use arcata_score::Score;
use arcata_xml::{Document, Element, Tag};

/// A part with its pages.
#[derive(Debug)]
pub struct PartPaper {
    /// The part's name.
    pub name: String,
    /// Its pages, its MusicXML, its page turns.
    pub booklet: Booklet,
    /// The pages as a PDF; as PDF/A-2b where the score's file says when it was written and its fonts have all letters.
    pub pdf: Vec<u8>,
}

/// Makes a part.
///
/// # Errors
/// Where it cannot be engraved, in words.
pub fn part_paper(request: &BookletRequest<'_>, engraver: &Engraver) -> Result<PartPaper, String> {
    let name = request.score.parts.get(request.part).ok_or("there is no such part")?.name.clone();
    let booklet = Booklet::make(request, engraver).map_err(|problem| problem.to_string())?;
    let form = |archived| PrintForm { archived, bleed: request.house.bleed() };
    let archival =
        written_on(request.document).and_then(|date| print_pdf(&booklet.pages, form(Some(date))).ok());
    let pdf = match archival {
        Some(pdf) => pdf,
        None => print_pdf(&booklet.pages, form(None)).map_err(|problem| problem.to_string())?,
    };
    Ok(PartPaper { name, booklet, pdf })
}

/// The day on which a score's file says that it was written: the same score makes the same pages on every day.
fn written_on(document: &Document) -> Option<(u16, u8, u8)> {
    let encoding = document.root().child(Tag::IDENTIFICATION)?.child(Tag::ENCODING)?;
    let date = encoding.children().find(|child| child.tag() == Tag::ENCODING_DATE).map(Element::text)?;
    let mut pieces = date.trim().splitn(3, '-');
    let year = pieces.next()?.parse().ok()?;
    let month = pieces.next()?.parse().ok().filter(|month| (1..=12).contains(month))?;
    let day = pieces.next()?.parse().ok().filter(|day| (1..=31).contains(day))?;
    Some((year, month, day))
}

/// Bytes of names and words that the name of a part's file has at most, without its ending.
const LONGEST_NAME: usize = 100;

/// What the files of a part are called, without their endings, by the house's pattern: unless it says otherwise the part's number in the score and
/// its name.
///
/// ```
/// use arcata_engrave::House;
/// use arcata_prepare::part_file_name;
/// let music = arcata_testkit::musicxml("violin: 1/1 C4").into_bytes();
/// let document = arcata_xml::Document::parse(music, &Default::default()).expect("well-formed");
/// let score = arcata_score::read(&document);
/// assert_eq!(part_file_name(&score, 0, &House::default()), "01-violin");
/// let house = House::parse("[files]\nname = \"Spring_{part}_{number}\"").expect("a profile");
/// assert_eq!(part_file_name(&score, 0, &house), "Spring_violin_01");
/// ```
#[must_use]
pub fn part_file_name(score: &Score, part: usize, house: &House) -> String {
    let name = score.parts.get(part).map_or("", |part| part.name.as_str());
    let pattern = house.file_name_pattern();
    // Names of files end somewhere; the number tells the parts apart.
    let rooms = ["{part}", "{title}", "{composer}"].iter().filter(|field| pattern.contains(**field)).count();
    let most = LONGEST_NAME / rooms.max(1);
    let filled = pattern
        .replace("{part}", &joined(name, most))
        .replace("{title}", &joined(score.title.as_deref().unwrap_or_default(), most))
        .replace("{composer}", &joined(score.composer.as_deref().unwrap_or_default(), most))
        .replace("{number}", &format!("{:02}", part + 1));
    // What a score does not have leaves no gap behind.
    let pieces: Vec<&str> = filled.split('-').filter(|piece| !piece.is_empty()).collect();
    pieces.join("-")
}

/// The words of a text with a dash between them, as many as there is room for, bytes.
fn joined(text: &str, most: usize) -> String {
    let mut joined = String::new();
    for word in text.split(|letter: char| !letter.is_alphanumeric()).filter(|word| !word.is_empty()) {
        if joined.len() + word.len() > most {
            break;
        }
        if !joined.is_empty() {
            joined.push('-');
        }
        joined.push_str(word);
    }
    joined
}
