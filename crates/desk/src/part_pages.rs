//! The pages of a part as they would be printed, with what its player has at the end of each.

use std::sync::{Arc, Mutex, PoisonError};

use arcata_bow::RealTime;
use arcata_bow::timing::TempoMap;
use arcata_engrave::{
    AskedStart, AskedStarts, BarOnPage, Booklet, BookletRequest, Engraver, House, PageEndKind, ShownChanges,
    SystemWide, advice_said, page_end_said, remark_said,
};
use arcata_languages::Wording;
use arcata_layer::{Addresses, AskedBreaks, Layer};
use serde::Serialize;
use utoipa::ToSchema;

use crate::desk::Desk;
use crate::drawing::PictureView;

/// Parts whose pages are kept as they were made: undo shows them at once (a limit).
const MOST_KEPT: usize = 6;

/// The pages of parts that were made last, by what they were made from.
#[derive(Clone, Debug, Default)]
pub(crate) struct MadeParts(Arc<Mutex<Vec<KeyedBooklet>>>);

/// A booklet and the key of what it was made from.
type KeyedBooklet = (String, Arc<Booklet>);

/// A part by its pages.
#[derive(Debug, Serialize, ToSchema)]
pub(crate) struct PartPagesView {
    /// The version it shows.
    version: u64,
    /// The part, index.
    part: usize,
    /// The pages, in order; of a part that begins on page 2 its front comes first.
    pages: Vec<PartPageView>,
    /// The bars as they stand on them.
    bars: Vec<PageBarView>,
    /// What is to be told of the part, in words.
    told: Vec<String>,
}

/// A page.
#[derive(Debug, Serialize, ToSchema)]
struct PartPageView {
    /// Its printed number; nothing for a front.
    name: Option<String>,
    /// Where it lies in an open booklet: `left`, `right`, or `fold` (it folds out beside the one before).
    side: &'static str,
    /// What is on it.
    picture: PictureView,
    /// What comes at its end; nothing after the last page and after one that is left blank.
    end: Option<PartPageEndView>,
}

/// The end of a page.
#[derive(Debug, Serialize, ToSchema)]
struct PartPageEndView {
    /// `facing` (the player reads on beside it), `folds-out`, `turned`, or `rushed`: turned with less rest than a turn needs.
    kind: &'static str,
    /// The time in which a hand is free, milliseconds.
    free: i64,
    /// What a turn needs.
    needed: i64,
    /// The same in words.
    said: String,
}

/// A bar, or a rest over several, on its page; lengths are millimetres.
#[derive(Debug, Serialize, ToSchema)]
struct PageBarView {
    /// The page, from 0.
    page: usize,
    /// First bar, index.
    #[schema(value_type = u64)]
    first: u32,
    /// Last bar.
    #[schema(value_type = u64)]
    last: u32,
    /// From the left edge of the page.
    left: f64,
    /// See `left`.
    right: f64,
    /// From the upper edge.
    top: f64,
    /// See `top`.
    bottom: f64,
    /// What somebody has asked to begin with it: `line`, `page`, or nothing.
    asked: Option<&'static str>,
}

/// What a part is printed from.
pub(crate) struct PrintedPart<'a> {
    pub(crate) desk: &'a Desk,
    /// What the shown layers say together.
    pub(crate) layer: &'a Layer,
    pub(crate) breaks: &'a AskedBreaks,
    pub(crate) house: &'a House,
    /// Index.
    pub(crate) part: usize,
}

impl MadeParts {
    fn kept(&self, key: &str) -> Option<Arc<Booklet>> {
        let made = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        made.iter().find(|(known, _)| known == key).map(|(_, booklet)| booklet.clone())
    }

    fn keep(&self, key: String, booklet: &Arc<Booklet>) {
        let mut made = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        made.insert(0, (key, booklet.clone()));
        made.truncate(MOST_KEPT);
    }
}

/// The pages of a part.
///
/// # Errors
/// A part that there is not, music that cannot be engraved; in words.
pub(crate) fn part_pages(
    printed: &PrintedPart<'_>,
    (engraver, made, version): (&Engraver, &MadeParts, u64),
    wording: &Wording,
) -> Result<PartPagesView, String> {
    let with_layer = printed.desk.bowed(printed.layer)?;
    let score = arcata_score::read(&with_layer.document);
    if printed.part >= score.parts.len() {
        return Err("there is no such part".to_owned());
    }
    let ground = printed.desk.snapshot().ground();
    let profile = &ground.config.player.profile;
    let addresses = Addresses::new(&score);
    let found = printed.breaks.in_part(&addresses, printed.part);
    let asked = AskedStarts { pages: found.pages, lines: found.lines };
    let request = BookletRequest {
        document: &with_layer.document,
        score: &score,
        wide: &SystemWide::new(&with_layer.document, &score),
        tempo: &TempoMap::new(&score, profile, ground.options.tempo),
        house: printed.house,
        turn: RealTime::from_micros(profile.times.page_turn.value * 1000),
        part: printed.part,
        shown: &ShownChanges::default(),
        asked: &asked,
        wording,
    };
    let key = Booklet::content_key(&request, engraver);
    let booklet = match made.kept(&key) {
        Some(booklet) => booklet,
        None => {
            let booklet = Booklet::make(&request, engraver).map_err(|problem| problem.to_string())?;
            let booklet = Arc::new(booklet);
            made.keep(key, &booklet);
            booklet
        }
    };
    let broken = printed.breaks.told(&addresses, Some(printed.part)).into_iter();
    let broken = broken.chain(printed.breaks.told(&addresses, None)).map(|(said, _)| said);
    let advice = booklet.advice.iter().flat_map(advice_said).map(|(_, said)| said);
    let remarks = booklet.remarks.iter().map(|remark| remark_said(remark).0);
    let mut told: Vec<String> = with_layer.left_out.iter().map(ToString::to_string).collect();
    told.extend(broken.chain(advice).chain(remarks).map(|said| wording.say(&said)));
    Ok(PartPagesView {
        version,
        part: printed.part,
        pages: pages(&booklet, (version, request.turn_needed()), wording),
        bars: bars(&booklet),
        told,
    })
}

fn pages(booklet: &Booklet, (version, needed): (u64, RealTime), wording: &Wording) -> Vec<PartPageView> {
    let picture = |page: &arcata_engrave::Picture| PictureView {
        version,
        svg: page.content.clone(),
        width: page.width,
        height: page.height,
    };
    let front = booklet.cover.iter().map(|front| PartPageView {
        name: None,
        side: "right",
        picture: picture(front),
        end: None,
    });
    let pages = booklet.pages.iter().zip(&booklet.names).map(|(page, name)| {
        let side = match (name.folds_out, name.number.is_multiple_of(2)) {
            (true, _) => "fold",
            (false, true) => "left",
            (false, false) => "right",
        };
        let end = booklet.turns.iter().find(|turn| turn.page == *name).map(|turn| PartPageEndView {
            kind: match turn.kind {
                PageEndKind::Facing => "facing",
                PageEndKind::FoldsOut => "folds-out",
                PageEndKind::Turned => "turned",
                PageEndKind::Rushed => "rushed",
            },
            free: turn.time.free().micros / 1000,
            needed: needed.micros / 1000,
            said: wording.say(&page_end_said(turn, needed)),
        });
        PartPageView { name: Some(name.to_string()), side, picture: picture(page), end }
    });
    front.chain(pages).collect()
}

/// Pages are counted with the front.
fn bars(booklet: &Booklet) -> Vec<PageBarView> {
    let front = usize::from(booklet.cover.is_some());
    let bar = |bar: &BarOnPage| PageBarView {
        page: bar.page + front,
        first: bar.bars.0,
        last: bar.bars.1,
        left: bar.across.0,
        right: bar.across.1,
        top: bar.down.0,
        bottom: bar.down.1,
        asked: match bar.asked {
            AskedStart::Nothing => None,
            AskedStart::Line => Some("line"),
            AskedStart::Page => Some("page"),
        },
    };
    booklet.bars.iter().map(bar).collect()
}
