//! What the page is told, as JSON.

use std::collections::BTreeMap;

use arcata_bow::Link;
use arcata_bow::plan::Sureness;
use arcata_languages::{Argument, Wording};
use arcata_layer::{Addresses, BreakOpening, BreakPlace};
use arcata_report::{DownbeatsView, FindingView, gains_and_losses};
use arcata_review::{Aside, Finding, ReviewSettings, reviewed, slur_offers};
use arcata_score::beats::beat_in_bar;
use arcata_score::places::{beat_said, label_said};
use arcata_score::{BowDirection, Length, Movement, Note, Score};
use arcata_xml::Element;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;

use crate::act::{ByteEdit, NotePlace};
use crate::desk::Desk;
use crate::drawing::{LanesView, MOST_SMALL};
use crate::kept_beside;
use crate::layers::DeskLayer;
use crate::request_language::RequestLanguage;
use crate::session::{Moved, Session};
use crate::state::SessionState;

/// The score as a whole.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct ScoreView {
    /// Name of the file.
    pub(crate) file: String,
    /// Title of the work, else the name of the file.
    pub(crate) title: String,
    /// Counts what has been done; every answer belongs to one.
    pub(crate) version: u64,
    /// The printed number of each bar.
    pub(crate) bars: Vec<String>,
    /// The same as it stands behind the word for a bar: odd ones are in quotation marks.
    pub(crate) bars_said: Vec<String>,
    /// The movements, where the file has several.
    pub(crate) movements: Vec<MovementView>,
    /// The string sections.
    pub(crate) sections: Vec<SectionView>,
    /// The bowing lines, in the order in which pictures show their lanes.
    pub(crate) lines: Vec<LineView>,
    /// What had to be assumed.
    pub(crate) assumptions: Vec<String>,
    /// What of the journal or of the words about slurs fits the score no more.
    pub(crate) lost: Vec<String>,
    /// The player that is reckoned with.
    pub(crate) player: String,
    /// The style that is bowed in: `concert`, `dance`, `early`.
    pub(crate) style: &'static str,
    /// What an up-bow on a downbeat counts there, in points: by it penalties are read.
    pub(crate) yardstick: String,
    /// Quarter notes a minute that were asked for; none goes by the score.
    pub(crate) tempo: Option<u32>,
    /// Quarter notes a minute at the opening.
    pub(crate) opening: u32,
    /// How many acts can be undone.
    pub(crate) undo: usize,
    /// How many can be done again.
    pub(crate) redo: usize,
    /// Steps by which everything is played louder than written.
    #[schema(value_type = i64)]
    pub(crate) louder: i8,
    /// Bowings that count: those of the layers that are shown.
    pub(crate) bowings: usize,
    /// The layers on the desk, the lowest first.
    pub(crate) layers: Vec<LayerView>,
    /// Where pages and lines of parts are asked to begin.
    pub(crate) breaks: Vec<BreakView>,
    /// Whether the score itself is changed, and could be written.
    pub(crate) changed: bool,
    /// What the ends of the bow are called.
    pub(crate) frog: String,
    /// The other end.
    pub(crate) tip: String,
}

/// A movement of the file.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct MovementView {
    /// Its number as people say it: `II`.
    pub(crate) number: String,
    /// Its heading as printed, else its number.
    pub(crate) name: String,
    /// Index of its first bar.
    pub(crate) first: u32,
    /// Index of its last bar.
    pub(crate) last: u32,
}

impl MovementView {
    fn all(score: &Score) -> Vec<Self> {
        let several = score.movements.iter().filter(|_| score.movements.len() > 1);
        let view = |movement: &Movement| Self {
            number: movement.numeral(),
            name: movement.name().to_owned(),
            first: *movement.bars.start(),
            last: *movement.bars.end(),
        };
        several.map(view).collect()
    }
}

/// A string section.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct SectionView {
    /// Index of the part in the score.
    pub(crate) part: usize,
    /// Its name.
    pub(crate) name: String,
}

/// A bowing line.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct LineView {
    /// Index of its part.
    pub(crate) part: usize,
    /// Index of its movement.
    pub(crate) movement: usize,
    /// Its name.
    pub(crate) name: String,
    /// How many strokes it has.
    pub(crate) strokes: usize,
}

/// A stroke as planned.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct StrokeView {
    /// Index in its line.
    pub(crate) stroke: usize,
    /// Index of the bar it begins in.
    pub(crate) bar: u32,
    /// The beat, as it is said.
    pub(crate) beat: String,
    /// `down` or `up`.
    pub(crate) bow: &'static str,
    /// `change`, `hook`, `retake` or `reset` (out of a silence).
    pub(crate) link: &'static str,
    /// Where it begins, thousandths of the hair from the frog.
    pub(crate) start: u16,
    /// Where it ends.
    pub(crate) end: u16,
    /// How long it lasts, milliseconds.
    pub(crate) milliseconds: i64,
    /// Whether somebody has asked for it here.
    pub(crate) asked: bool,
    /// How a hook that is asked for is written: `marks`, `dots` or `dashes`; none where no hook is asked for.
    pub(crate) sign: Option<&'static str>,
    /// The bow that is printed, if one is.
    pub(crate) printed: Option<&'static str>,
    /// Whether a slur begins with it.
    pub(crate) slurred: bool,
    /// How many players in a hundred would take this bow; none where it is asked for or printed, and for tremolo.
    pub(crate) sure: Option<u8>,
}

/// A layer on the desk.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct LayerView {
    /// What it is called there.
    pub(crate) name: String,
    /// What its file says of it: title, owner, ensemble, date; empty where it says nothing.
    pub(crate) about: String,
    /// Bowings in it.
    pub(crate) bowings: usize,
    /// Whether the bows go by it.
    pub(crate) shown: bool,
    /// Whether it is written in.
    pub(crate) written: bool,
}

impl LayerView {
    fn all(state: &SessionState) -> Vec<Self> {
        let layers = &state.layers;
        let view = |(index, one): (usize, &DeskLayer)| {
            let DeskLayer { name, layer, shown } = one;
            let about = [&layer.title, &layer.owner, &layer.ensemble, &layer.date];
            Self {
                name: name.clone(),
                about: about
                    .into_iter()
                    .filter(|text| !text.is_empty() && *text != name)
                    .cloned()
                    .collect::<Vec<_>>()
                    .join(", "),
                bowings: layer.entries.len(),
                shown: *shown,
                written: index == layers.writing(),
            }
        };
        layers.all().iter().enumerate().map(view).collect()
    }
}

/// What an act has done.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct DoneView {
    /// The version that there is now.
    pub(crate) version: u64,
    /// Bows that are others now.
    pub(crate) moved: Vec<MovedView>,
    /// Everything is to be drawn anew.
    pub(crate) everything: bool,
    /// How many acts can be undone.
    pub(crate) undo: usize,
    /// How many can be done again.
    pub(crate) redo: usize,
    /// Bowings that count: those of the layers that are shown.
    pub(crate) bowings: usize,
    /// The layers on the desk.
    pub(crate) layers: Vec<LayerView>,
    /// Where pages and lines of parts are asked to begin.
    pub(crate) breaks: Vec<BreakView>,
    /// Strokes that go the other way now, are joined otherwise, or are new.
    pub(crate) turned: usize,
    /// The bars they are in, indices.
    pub(crate) turned_bars: Vec<u32>,
    /// Strokes that go the same way elsewhere in the bow.
    pub(crate) elsewhere: usize,
    /// What came with it, for people.
    pub(crate) told: Vec<String>,
    /// Lanes that were asked for with the act, drawn anew.
    pub(crate) drawn: Vec<LanesView>,
}

/// Where a page or a line of a part is asked to begin.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct BreakView {
    /// The part, index.
    pub(crate) part: usize,
    /// The bar, index.
    #[schema(value_type = u64)]
    pub(crate) bar: u32,
    /// `line` or `page`.
    pub(crate) begins: &'static str,
}

impl BreakView {
    /// Those that have a place in the score as it is now.
    fn all(session: &Session) -> Vec<Self> {
        let breaks = &session.state().breaks;
        if breaks.is_empty() {
            return Vec::new();
        }
        let desk = session.desk();
        let addresses = Addresses::new(desk.base.score());
        let found = breaks.places(&addresses).into_iter().filter_map(|(asked, place)| match place {
            BreakPlace::Here(bar) | BreakPlace::Moved(bar) => {
                Some(((addresses.part(&asked.part)?, bar), asked.begins))
            }
            _ => None,
        });
        // Of two that have come to one bar the page counts.
        let mut of_bars = BTreeMap::new();
        for (there, begins) in found {
            of_bars
                .entry(there)
                .and_modify(|now: &mut BreakOpening| *now = (*now).max(begins))
                .or_insert(begins);
        }
        let view = |((part, bar), begins)| Self {
            part,
            bar,
            begins: if begins == BreakOpening::Page { "page" } else { "line" },
        };
        of_bars.into_iter().map(view).collect()
    }
}

/// Bars of a line whose bows are others now.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct MovedView {
    /// The line.
    pub(crate) line: usize,
    /// First bar, index.
    pub(crate) first: u32,
    /// Last bar.
    pub(crate) last: u32,
}

/// A finding, with what the page needs to act on it.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct FoundView {
    /// The finding as `arcata review --format json` prints it.
    #[schema(value_type = Object)]
    pub(crate) finding: FindingView,
    /// The rule's heading.
    pub(crate) title: String,
    /// Index of the bar.
    pub(crate) bar: u32,
    /// The beat, as it is said.
    pub(crate) beat: String,
    /// Index of the part, if it is about one.
    pub(crate) part: Option<usize>,
    /// For each proposal, whose choice it is, in the language of the sentences.
    pub(crate) grades: Vec<String>,
    /// For each proposal, whether it can be written into the score.
    pub(crate) writable: Vec<bool>,
}

/// The findings of a version.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct FindingsView {
    /// The version.
    pub(crate) version: u64,
    /// In order of the score.
    pub(crate) findings: Vec<FoundView>,
    /// How many are set aside.
    pub(crate) aside: usize,
}

impl ScoreView {
    pub(crate) fn new(session: &Session, spoken: RequestLanguage) -> Self {
        let (desk, state) = (session.desk(), session.state());
        let wording = spoken.wording(&desk);
        let base = &desk.base;
        let score = base.score();
        let file = session.name().to_owned();
        let sections = score.parts.iter().enumerate().filter(|(_, part)| part.instrument.is_bowed());
        let reading = base.ground.reading();
        let opening = reading.tempo.quarters_a_minute(arcata_score::Moment::START);
        let (undo, redo) = session.reach();
        Self {
            title: score.title.clone().unwrap_or_else(|| file.clone()),
            file,
            version: session.version(),
            bars: score.bars.iter().map(|bar| bar.label.clone()).collect(),
            bars_said: score.bars.iter().map(|bar| label_said("bar", &bar.label)).collect(),
            movements: MovementView::all(score),
            sections: sections
                .map(|(part, section)| SectionView { part, name: section.name.clone() })
                .collect(),
            lines: base
                .lines()
                .iter()
                .map(|line| LineView {
                    part: line.part,
                    movement: line.movement,
                    name: line.name.clone(),
                    strokes: line.strokes.len(),
                })
                .collect(),
            assumptions: base.assumptions(&wording),
            lost: session.lost().iter().chain(&base.slurs_without).cloned().collect(),
            player: state.profile.clone(),
            style: state.style.name(),
            yardstick: wording
                .argument(&Argument::Points(base.profile().weight("downbeat").unwrap_or_default())),
            tempo: state.tempo,
            opening: rounded(opening),
            undo,
            redo,
            louder: state.louder,
            bowings: state.layers.together().entries.len(),
            layers: LayerView::all(state),
            breaks: BreakView::all(session),
            changed: !state.edits.is_empty(),
            frog: base.profile().words.frog.value.clone(),
            tip: base.profile().words.tip.value.clone(),
        }
    }
}

fn rounded(length: Length) -> u32 {
    let twice = (length + length + Length::new(1, 1)).to_string();
    let (above, below) = twice.split_once('/').unwrap_or((&twice, "1"));
    let (above, below) = (above.parse::<u64>().unwrap_or(0), below.parse::<u64>().unwrap_or(1));
    u32::try_from(above / (2 * below.max(1))).unwrap_or(u32::MAX)
}

pub(crate) const fn bow_name(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "down",
        BowDirection::Up => "up",
    }
}

pub(crate) const fn link_name(link: Link) -> &'static str {
    match link {
        Link::Change => "change",
        Link::Hooked => "hook",
        Link::Retake => "retake",
        Link::Reset => "reset",
    }
}

/// The strokes of a line; none where there is no such line.
pub(crate) fn strokes(desk: &Desk, line: usize) -> Option<Vec<StrokeView>> {
    let of = desk.base.lines().get(line)?;
    let part = desk.base.score().parts.get(of.part)?;
    let (plan, anchors) = (&desk.plans()[line], desk.snapshot.anchors(line));
    let sure = desk.snapshot.sureness(line);
    let views = of.strokes.iter().zip(&plan.strokes).enumerate().map(|(index, (stroke, planned))| {
        let beat = part.meter_at(stroke.bar).map(|meter| beat_in_bar(meter, stroke.offset));
        StrokeView {
            stroke: index,
            bar: stroke.bar,
            beat: beat.map_or_else(String::new, beat_said),
            bow: bow_name(planned.direction),
            link: link_name(planned.link),
            start: planned.start,
            end: planned.end,
            milliseconds: stroke.duration.micros / 1000,
            asked: anchors.binary_search_by_key(&index, |anchor| anchor.stroke).is_ok(),
            sign: desk.hook_signs.get(&(line, index)).map(|sign| sign.word().unwrap_or("marks")),
            printed: stroke.printed.map(bow_name),
            sure: sure[index].filter(|sure| *sure != Sureness::CERTAIN).map(|sure| sure.0),
            slurred: part.slurs.iter().any(|slur| Some(&slur.start) == stroke.notes.first()),
        }
    });
    Some(views.collect())
}

impl DoneView {
    pub(crate) fn new(session: &Session, moved: Option<Moved>, told: Vec<String>) -> Self {
        let (undo, redo) = session.reach();
        let bars = moved.as_ref().map(|moved| moved.bars.clone()).unwrap_or_default();
        let strokes = moved.as_ref().map(|moved| moved.strokes.clone()).unwrap_or_default();
        Self {
            version: session.version(),
            moved: bars.into_iter().map(|(line, first, last)| MovedView { line, first, last }).collect(),
            everything: moved.is_some_and(|moved| moved.everything),
            undo,
            redo,
            bowings: session.state().layers.together().entries.len(),
            layers: LayerView::all(session.state()),
            breaks: BreakView::all(session),
            turned: strokes.turned,
            turned_bars: strokes.bars,
            elsewhere: strokes.elsewhere,
            told,
            drawn: Vec::new(),
        }
    }
}

/// What the review finds, with what was set aside in the session and beside the score left out.
pub(crate) fn findings(desk: &Desk, state: &SessionState, beside: &Aside) -> (Vec<Finding>, usize) {
    let mut aside = beside.clone();
    aside.entries.extend(kept_beside::entries(state));
    desk.snapshot.with_piece(&[], |piece| {
        let reviewed = reviewed(piece, &ReviewSettings { aside, ..ReviewSettings::default() });
        (reviewed.findings, reviewed.set_aside.len())
    })
}

impl FindingsView {
    pub(crate) fn new(version: u64, (findings, aside): (&[Finding], usize), wording: &Wording) -> Self {
        let view = |finding: &Finding| FoundView {
            finding: FindingView::of(finding, wording),
            title: wording
                .texts()
                .rule(finding.rule)
                .map_or_else(|| finding.rule.to_owned(), |text| text.title),
            grades: finding.proposals.iter().map(|proposal| wording.word(proposal.grade.key())).collect(),
            bar: finding.place.bar,
            beat: finding.place.beat_text(),
            part: finding.place.part,
            writable: finding.proposals.iter().map(|proposal| !proposal.edits.is_empty()).collect(),
        };
        Self { version, findings: findings.iter().map(view).collect(), aside }
    }
}

/// A change of the slurs that the page offers.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub(crate) struct OfferView {
    /// What is done, a sentence.
    pub(crate) sentence: String,
    /// `split`, `join` or `shift`.
    pub(crate) kind: &'static str,
    /// What it costs the arm more than the slurs as they stand, thousandths of a point; less than nothing is gained.
    pub(crate) more: i64,
    /// How much that is, whichever way, as it is said, in points.
    pub(crate) penalty: String,
    /// What is gained, in words.
    pub(crate) gains: Vec<String>,
    /// What is lost.
    pub(crate) losses: Vec<String>,
    /// What has to be written for it: an act.
    pub(crate) edits: Vec<ByteEdit>,
    /// The bars that show it, indices: those that change, with one before and one after where there is room.
    pub(crate) first: u32,
    /// The last of them.
    pub(crate) last: u32,
}

/// Changes of the slurs around a stroke.
pub(crate) fn offers(desk: &Desk, (line, stroke): (usize, usize), wording: &Wording) -> Vec<OfferView> {
    desk.snapshot.with_piece(&[], |piece| {
        let offers = slur_offers(piece, line, stroke);
        let chosen =
            piece.lines.get(line).and_then(|line| line.strokes.get(stroke)).map_or(0, |stroke| stroke.bar);
        let view = |proposal: &arcata_review::Proposal| {
            let weighed = proposal.cost_change.as_ref().map(|change| gains_and_losses(change, wording));
            let (gains, losses) = weighed.unwrap_or_default();
            let (first, last) = shown_bars(desk, line, chosen, &proposal.edits);
            let more = proposal.cost_change.as_ref().map_or(0, arcata_bow::Cost::total);
            OfferView {
                first,
                last,
                sentence: wording.say(&proposal.sentence),
                kind: proposal.kind.name(),
                more,
                penalty: wording.argument(&Argument::Points(more.abs())),
                gains,
                losses,
                edits: byte_edits(&proposal.edits),
            }
        };
        offers.iter().map(view).collect()
    })
}

/// The bars that edits of a line's notes change, with one before and one after; where they are many, those about `chosen`.
fn shown_bars(desk: &Desk, line: usize, chosen: u32, edits: &[arcata_xml::Edit]) -> (u32, u32) {
    let base = &desk.base;
    let document = base.document();
    let notes = base.score().parts.get(base.lines()[line].part).map_or(&[][..], |part| &part.notes);
    let changes = |note: &&Note| {
        let range = document.element(note.node).map(Element::range);
        range.is_some_and(|range| {
            edits.iter().any(|edit| range.start <= edit.range.start && edit.range.end <= range.end)
        })
    };
    let bars: Vec<u32> = notes.iter().filter(changes).map(|note| note.bar).collect();
    let (first, last) = (bars.iter().min().unwrap_or(&chosen), bars.iter().max().unwrap_or(&chosen));
    let most = u32::try_from(base.score().bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let (first, last) = (first.saturating_sub(1), last.saturating_add(1).min(most));
    if last - first < MOST_SMALL {
        return (first, last);
    }
    (chosen.saturating_sub(1), chosen.saturating_add(1).min(most))
}

/// Edits as an act holds them, in order.
pub(crate) fn byte_edits(edits: &[arcata_xml::Edit]) -> Vec<ByteEdit> {
    let edit = |edit: &arcata_xml::Edit| ByteEdit {
        from: edit.range.start,
        to: edit.range.end,
        insert: edit.insert.clone(),
    };
    let mut edits: Vec<ByteEdit> = edits.iter().map(edit).collect();
    edits.sort_by_key(|edit| (edit.from, edit.to));
    edits
}

/// Who begins a stroke on the downbeat of which bar.
pub(crate) fn downbeat_table(desk: &Desk) -> Value {
    let base = &desk.base;
    let last = u32::try_from(base.score().bars.len().saturating_sub(1)).unwrap_or(u32::MAX);
    let view = DownbeatsView::new(base.score(), base.lines(), desk.plans(), &(0..=last));
    serde_json::to_value(view).unwrap_or_default()
}

/// Where the slurs begin that somebody could say something about: by line and stroke.
pub(crate) fn slur_place(desk: &Desk, line: usize, stroke: usize) -> Option<NotePlace> {
    let base = &desk.base;
    let of = base.lines().get(line)?;
    let part = base.score().parts.get(of.part)?;
    let notes = &of.strokes.get(stroke)?.notes;
    let slur = part.slurs.iter().find(|slur| notes.contains(&slur.start))?;
    let addresses = Addresses::new(base.score());
    NotePlace::of(&addresses, arcata_layer::NamedNote { part: of.part, note: slur.start })
}
