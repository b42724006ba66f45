//! One part on paper: its pages, its file, and what its player should know of them.

use arcata_bow::RealTime;
use arcata_engrave::{
    Advice, Booklet, BookletRemark, BookletRequest, Engraver, Mending, PageEnd, PageEndKind, pdf,
};
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

/// How a page ends, in words; `needed` is what a turn needs.
#[must_use]
pub fn page_end_words(turn: &PageEnd, needed: RealTime) -> String {
    let PageEnd { page, bar, time, kind } = turn;
    let (rest, open, needed) = (time.rest.to_f64(), time.open.to_f64(), needed.to_f64());
    let open = if open < 0.05 { String::new() } else { format!(" and {open:.1} s on an open string") };
    let back = match time.back {
        Some(back) if !matches!(kind, PageEndKind::Facing | PageEndKind::FoldsOut) => {
            format!("; a repeat leads back over it with {:.1} s of rest", back.to_f64())
        }
        _ => String::new(),
    };
    match kind {
        PageEndKind::Facing => {
            format!("page {page} ends before {bar}: no turn, the next page faces it")
        }
        PageEndKind::FoldsOut => {
            format!("page {page} ends before {bar}: no turn, page {page}a folds out, glued to its edge")
        }
        PageEndKind::Turned => {
            format!("page {page} ends before {bar}: {rest:.1} s of rest{open} to turn{back}")
        }
        PageEndKind::Rushed => format!(
            "page {page} ends before {bar}: only {rest:.1} s of rest{open} to turn{back}; {needed:.1} s are wanted"
        ),
    }
}

/// What the quick turns of a part cost and what would mend them, in lines.
#[must_use]
pub fn advice_words(advice: &Advice) -> Vec<String> {
    let turns = |count: usize| match count {
        0 => "no quick turn".to_owned(),
        1 => "one quick turn".to_owned(),
        count => format!("{count} quick turns"),
    };
    let mut lines = vec![match advice.unavoidable {
        0 => "a layout without any is allowed, but dearer".to_owned(),
        least if least < advice.rushed => format!("{} in every layout that the house allows", turns(least)),
        1 => "no layout that the house allows avoids it".to_owned(),
        _ => "no layout that the house allows has fewer".to_owned(),
    }];
    lines.insert(
        0,
        format!(
            "{}: this is the cheapest layout, {} points; without what the turns cost it has {}",
            turns(advice.rushed),
            advice.cost,
            advice.without_turns
        ),
    );
    lines[1].insert_str(0, "  ");
    let mends = advice.mends.iter().map(|mend| {
        let what = match mend.mending {
            Mending::EmptierPages => "emptier pages, ended at rests whatever that costs",
            Mending::OtherSide => "the first page on the other side ([pages] first)",
            Mending::BlankPages => "left pages that may stay blank ([pages] blank = \"left pages\")",
            Mending::SmallerStaff => "a staff of 7.0 mm ([staff] smallest = 70)",
            Mending::FoldOuts => "pages that fold out ([pages] fold_outs = \"for turns\")",
            Mending::AllTogether => {
                "all of these together: either side first, left pages blank, fold-outs, a staff of 7.0 mm"
            }
        };
        let pages = if mend.pages == 1 { "1 page".to_owned() } else { format!("{} pages", mend.pages) };
        format!("  would mend it: {what}: {} on {pages}, {} points", turns(mend.rushed), mend.cost)
    });
    lines.extend(mends);
    if advice.mends.is_empty() {
        lines.push(
            "  would mend it: a stand partner who turns, or the first lines of the next page copied small onto this one"
                .to_owned(),
        );
    }
    lines
}

/// A remark in words, and whether it wants mending before the part is used.
#[must_use]
pub fn remark_words(remark: &BookletRemark) -> (String, bool) {
    match remark {
        BookletRemark::Tacet => ("nothing to play: tacet".to_owned(), false),
        BookletRemark::NotesNotDrawn { count, bar } => (
            format!(
                "{count} notes are not printed, the first in {bar}: the engraver leaves them out; compare with the score"
            ),
            true,
        ),
        BookletRemark::NoCue { bars: (first, last), count } => (
            format!(
                "{first} to {last}: {count} bars of rest without a cue: nobody plays a line before it ends that could be shown"
            ),
            false,
        ),
        BookletRemark::RestsWrittenOut => {
            ("on several staves: rests over several bars are written out bar by bar".to_owned(), false)
        }
        BookletRemark::SmallerStaff { tenths } => (
            format!(
                "a staff of {}.{} mm for the turns: the house allows it ([staff] smallest)",
                tenths / 10,
                tenths % 10
            ),
            false,
        ),
        BookletRemark::TooHigh { bar } => {
            (format!("the line that begins with {bar} is higher than the page"), true)
        }
    }
}
