//! What the bows that a layer asks for come to in a plan.
//!
//! A layer knows notes; what the stroke before a hook is, and which way both go, only a plan of the strokes tells. The command
//! line and the workbench ask here, so that the screen, the bowed score, the parts and the change sheet say one thing.

use std::collections::BTreeMap;

use arcata_bow::plan::{Anchor, BowReach, Settled, giving_way, settled, strokes_before};
use arcata_bow::{Line, Link, Plan, PlanSettings, Stroke};
use arcata_languages::Saying;
use arcata_layer::{Addresses, Layer, Mark, ToldBow, ToldBows};
use arcata_score::{BowDirection, NoteId, Part, Score};
use arcata_xml::Document;
use rayon::prelude::*;

use crate::bowed::Bowed;
use crate::config::Config;
use crate::overlay::with_read_marks;

/// What a mark of a layer asks of the stroke that begins with its note.
const fn asked(mark: &Mark) -> Option<(Option<BowDirection>, Option<Link>)> {
    match mark {
        Mark::Down => Some((Some(BowDirection::Down), None)),
        Mark::Up => Some((Some(BowDirection::Up), None)),
        Mark::Hook { bow, .. } => Some((*bow, Some(Link::Hooked))),
        Mark::Retake { bow } => Some((*bow, Some(Link::Retake))),
        _ => None,
    }
}

/// The line and stroke that begins with a note.
#[must_use]
pub fn stroke_of((score, lines): (&Score, &[Line]), part: usize, note: NoteId) -> Option<(usize, usize)> {
    let of_part = lines.iter().enumerate().filter(|(_, line)| line.part == part);
    let moment = score.parts.get(part)?.notes.get(note.0 as usize)?.onset;
    of_part.into_iter().find_map(|(index, line)| {
        let from = line.strokes.partition_point(|stroke| stroke.onset < moment);
        let here = line.strokes[from..].iter().take_while(|stroke| stroke.onset == moment);
        let found = here.enumerate().find(|(_, stroke)| stroke.notes.contains(&note))?;
        Some((index, from + found.0))
    })
}

/// What the bow marks of a layer ask of each line, in the order of its strokes. What stands on notes where no stroke begins asks
/// nothing.
#[must_use]
pub fn asks((score, lines): (&Score, &[Line]), layer: &Layer) -> Vec<Vec<Anchor>> {
    let addresses = Addresses::new(score);
    let mut anchors = vec![Vec::new(); lines.len()];
    for entry in &layer.entries {
        let Some((direction, link)) = asked(&entry.mark) else { continue };
        let Ok(found) = addresses.find(&entry.place) else { continue };
        if let Some((line, stroke)) = stroke_of((score, lines), found.part, found.note) {
            anchors[line].push(Anchor { stroke, direction, link });
        }
    }
    for line in &mut anchors {
        line.sort_by_key(|anchor| anchor.stroke);
        line.dedup_by_key(|anchor| anchor.stroke);
    }
    anchors
}

/// A line that was planned with what is asked of it.
#[derive(Clone, Copy, Debug)]
pub struct BowedLine<'p> {
    /// The plan.
    pub plan: &'p Plan,
    /// Strokes whose wish contradicts another one, as [`Settled`] says.
    pub contradicted: &'p [usize],
    /// What the planner went by.
    pub reach: BowReach,
}

/// The hooks and retakes of a layer as they are planned; `bowed` gives each line with its plan.
#[must_use]
pub fn told<'p>(
    (score, lines): (&Score, &[Line]),
    layer: &Layer,
    bowed: impl Fn(usize) -> BowedLine<'p>,
) -> ToldBows {
    let addresses = Addresses::new(score);
    let mut told = ToldBows::default();
    let mut ways_in: BTreeMap<usize, Vec<Option<usize>>> = BTreeMap::new();
    for entry in layer.entries.iter().filter(|entry| entry.mark.follows()) {
        let Ok(at) = addresses.find(&entry.place) else { continue };
        let found = stroke_of((score, lines), at.part, at.note);
        let Some((line, stroke)) = found else {
            told.refuse(at, NO_STROKE);
            continue;
        };
        let BowedLine { plan, contradicted, reach } = bowed(line);
        if contradicted.contains(&stroke) {
            told.refuse(at, CONTRADICTS);
            continue;
        }
        let Some(direction) = plan.strokes.get(stroke).map(|planned| planned.direction) else { continue };
        let before = ways_in.entry(line).or_insert_with(|| strokes_before(&lines[line], reach));
        let before = before.get(stroke).copied().flatten();
        let before =
            before.and_then(|before| first_note(&score.parts[at.part], &lines[line].strokes[before]));
        told.tell(at, ToldBow { direction, before });
    }
    told
}

/// Why a hook or a retake cannot be.
const NO_STROKE: Saying = Saying::new("why-no-stroke");
const CONTRADICTS: Saying = Saying::new("why-two-directions");

/// The note of a stroke that bears its mark: the one that has one already, else the first.
#[must_use]
pub fn first_note(part: &Part, stroke: &Stroke) -> Option<NoteId> {
    let at_beginning = |id: &&NoteId| part.note(**id).onset == stroke.onset;
    let marked = stroke.notes.iter().filter(at_beginning).find(|id| part.note(**id).bow_mark.is_some());
    marked.or(stroke.notes.first()).copied()
}

/// How the strokes of a score are planned where a layer asks for bows.
#[derive(Clone, Copy)]
pub struct Planner<'p> {
    /// Who plays, and how.
    pub config: &'p Config,
    /// Tells a score what somebody has said of its slurs.
    pub tell: &'p (dyn Fn(&mut Score) + Sync),
}

impl std::fmt::Debug for Planner<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Planner").field("config", self.config).finish_non_exhaustive()
    }
}

impl Planner<'_> {
    /// What the hooks and retakes of a layer come to on a score that it is not on. Nothing is planned where it has none.
    ///
    /// ```
    /// # use arcata_layer::{Addresses, Entry, NamedNote, HookSign, Layer, Mark};
    /// # let music = arcata_testkit::musicxml("violin: 1/4 C5!up D5 E5 F5").into_bytes();
    /// # let document = arcata_xml::Document::parse(music, &Default::default())?;
    /// let score = arcata_score::read(&document);
    /// let note = arcata_score::NoteId(1);
    /// let place = Addresses::new(&score).place(0, note).expect("a note");
    /// let entries = vec![Entry::new(place, Mark::Hook { bow: None, sign: HookSign::Marks })];
    /// let layer = Layer { entries, ..Layer::default() };
    /// let planner = arcata_analysis::Planner { config: &arcata_analysis::Config::default(), tell: &|_| {} };
    /// let told = planner.told((&document, &score), &layer)?;
    /// let bow = told.of(NamedNote { part: 0, note }).expect("told").map_err(ToString::to_string)?;
    /// assert_eq!(bow.direction, arcata_score::BowDirection::Up);
    /// assert_eq!(bow.before, Some(arcata_score::NoteId(0)));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    ///
    /// # Errors
    /// Where the layer's slurs cannot be put on the score, in words.
    pub fn told(&self, (document, score): (&Document, &Score), layer: &Layer) -> Result<ToldBows, String> {
        if !layer.entries.iter().any(|entry| entry.mark.follows()) {
            return Ok(ToldBows::default());
        }
        let read = with_read_marks((document, score), layer)?;
        let mut score = arcata_score::read(read.as_ref().map_or(document, |read| &read.document));
        (self.tell)(&mut score);
        let Bowed { lines, settings, plans, .. } = Bowed::new(&score, self.config);
        let asks = asks((&score, &lines), layer);
        let planned: Vec<Settled> = lines
            .par_iter()
            .zip(settings.par_iter().zip(&plans).zip(&asks))
            .map(|(line, ((settings, free), asks))| {
                // A line of which nothing is asked says nothing about hooks.
                if asks.is_empty() {
                    return Settled::default();
                }
                let asked = PlanSettings { anchors: asks.clone(), ..settings.clone() };
                settled(line, &giving_way(line, free, &asked))
            })
            .collect();
        Ok(told((&score, &lines), layer, |line| BowedLine {
            plan: &planned[line].plan,
            contradicted: &planned[line].contradicted,
            reach: settings[line].reach,
        }))
    }
}
