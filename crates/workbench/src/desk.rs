//! A score on the desk: read, its lines found, its bows planned, and planned anew where something is asked for.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, OnceLock};

use arcata_bow::plan::{Anchor, MarkReading, Settled, Sureness, settled, sureness};
use arcata_bow::profile::Shipped;
use arcata_bow::timing::TempoChoice;
use arcata_bow::together::{Agreement, agreements, plan_together};
use arcata_bow::{Line, LineOptions, Plan, PlanSettings, Profile, Reading, Style};
use arcata_habits::Habits;
use arcata_layer::{Addresses, HookSign, Layer, Mark, ToldBows};
use arcata_prepare::{BowedLine, WithLayer, asks, stroke_of, told, with_read_marks};
use arcata_review::Aside;
use arcata_score::places::bar_said;
use arcata_score::{Length, NoteId, Score};
use arcata_xml::{Document, EditList, Limits, ScoreFile};
use rayon::prelude::*;

use crate::act::{ByteEdit, NotePlace, SlurIs};
use crate::marked::{is_doubled, slur_entries, without};
use crate::state::State;

/// A stroke is elsewhere in the bow where an end of it is so far from where it was, thousandths of the hair.
const ELSEWHERE: u16 = 100;

/// A line in a score that is changed.
#[derive(Debug)]
pub(crate) struct ChangedLine {
    pub(crate) document: Document,
    pub(crate) score: Score,
    pub(crate) line: Line,
    pub(crate) plan: Plan,
}

/// What became of the strokes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct StrokesMoved {
    /// Strokes that go the other way, are joined otherwise, or are new.
    pub(crate) turned: usize,
    /// The bars they are in, indices.
    pub(crate) bars: Vec<u32>,
    /// Strokes that go the same way elsewhere in the bow.
    pub(crate) elsewhere: usize,
}

/// What does not change while only bows are asked for.
#[derive(Debug)]
pub(crate) struct Base {
    /// The score's own file, with what was changed in it.
    pub(crate) file: ScoreFile,
    /// The same with marks of the layers on it, where there are any.
    marked: Option<WithLayer>,
    /// The score as it is looked at, layers and all.
    pub(crate) score: Score,
    pub(crate) profile: Profile,
    pub(crate) options: LineOptions,
    pub(crate) lines: Vec<Line>,
    /// How each line is planned where nothing is asked for; leanings towards the other lines are in it.
    settings: Vec<PlanSettings>,
    plans: Vec<Arc<Plan>>,
    /// What had better go the same way.
    pub(crate) agreements: Vec<Agreement>,
    pub(crate) assumptions: Vec<String>,
    /// Slurs that were named and are not there.
    pub(crate) slurs_without: Vec<String>,
}

/// The desk as it is at one moment. Cheap to copy.
#[derive(Clone, Debug)]
pub(crate) struct Desk {
    pub(crate) base: Arc<Base>,
    /// What is asked of each line.
    pub(crate) anchors: Vec<Arc<Vec<Anchor>>>,
    pub(crate) plans: Vec<Arc<Plan>>,
    /// How sure each plan is of its strokes, once somebody has asked.
    sure: Vec<Arc<OnceLock<Vec<Option<Sureness>>>>>,
    /// Strokes of each line whose wish to go on as the stroke before contradicts another one.
    contradicted: Vec<Arc<Vec<usize>>>,
    /// How the hooks that are asked for are written, by line and stroke.
    pub(crate) hook_signs: Arc<BTreeMap<(usize, usize), HookSign>>,
}

impl Base {
    /// Reads a score and plans its lines.
    ///
    /// # Errors
    /// A file that is no score, edits that do not fit it, a profile that there is not; in words.
    pub(crate) fn new(bytes: &[u8], state: &State) -> Result<Self, String> {
        let file = changed(bytes, state)?;
        let mut score = arcata_score::read(file.document());
        let not_a_score =
            score.problems.iter().find(|problem| problem.kind == arcata_score::ProblemKind::NotAScore);
        if let Some(problem) = not_a_score {
            return Err(problem.message.clone());
        }
        let marked = with_read_marks((file.document(), &score), &state.layers.together())?;
        let mut slurs_without = Vec::new();
        if let Some(marked) = &marked {
            score = arcata_score::read(&marked.document);
            slurs_without.extend(marked.left_out.iter().map(ToString::to_string));
        }
        slurs_without.extend(tell(&mut score, state));
        let mut profile = profile(&state.profile)?.in_style(state.style);
        let mut assumptions = Vec::new();
        if let Some(habits) = &state.given.habits {
            if habits.style == state.style {
                profile = habits.put_into(profile)?;
            }
            assumptions.push(habits_words(habits, state.style));
        }
        let tempo = state.tempo.map_or(TempoChoice::Written, |quarters| {
            TempoChoice::Opening(Length::new(i64::from(quarters), 1))
        });
        let options = LineOptions { tempo, louder: state.louder, ..LineOptions::default() };
        let reading = Reading::new(&score, &profile, &options);
        let bowed: Vec<usize> =
            (0..score.parts.len()).filter(|part| score.parts[*part].instrument.is_bowed()).collect();
        let lines: Vec<Line> = bowed.par_iter().flat_map(|part| reading.lines(*part)).collect();
        let alone =
            |line: &Line| PlanSettings { marks: MarkReading::Law, ..profile.plan_settings(line.instrument) };
        let alone: Vec<PlanSettings> = lines.iter().map(alone).collect();
        let weights = alone.first().map(|settings| settings.weights.clone()).unwrap_or_default();
        let agreements = agreements(&score, &lines, &weights);
        let together = plan_together(&lines, &alone, &agreements);
        assumptions.extend(arcata_prepare::assumptions(&lines, &options, reading.tempo.assumed()));
        drop(reading);
        Ok(Self {
            file,
            marked,
            score,
            profile,
            options,
            lines,
            agreements,
            settings: together.settings,
            plans: together.plans.into_iter().map(Arc::new).collect(),
            assumptions,
            slurs_without,
        })
    }

    /// The document that is looked at.
    pub(crate) fn document(&self) -> &Document {
        self.marked.as_ref().map_or(self.file.document(), |marked| &marked.document)
    }

    /// Edits of the document that is looked at as edits of the score's own.
    ///
    /// # Errors
    /// Where a layer has changed the place, in words.
    pub(crate) fn own_edits(&self, edits: &[ByteEdit]) -> Result<Vec<ByteEdit>, String> {
        self.marked.as_ref().map_or_else(|| Ok(edits.to_vec()), |marked| without(marked, edits))
    }

    /// Whether the score's own file has a slur twice where layers stand on it.
    pub(crate) fn doubles_slurs(&self) -> bool {
        self.marked.is_some() && is_doubled(&arcata_score::read(self.file.document()))
    }

    /// What the layer that is written in has to say of slurs so that they are as the edits leave them.
    ///
    /// # Errors
    /// Edits that do not fit, or change more than slurs; in words.
    pub(crate) fn slurs_for_layer(&self, state: &State, edits: &[ByteEdit]) -> Result<Layer, String> {
        let bytes = self.document().apply(&edit_list(edits)?).map_err(|problem| problem.to_string())?;
        let wanted = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
        let mut from = arcata_score::read(self.file.document());
        if let Some(marked) = with_read_marks((self.file.document(), &from), &state.layers.below())? {
            from = arcata_score::read(&marked.document);
        }
        let entries = slur_entries(&from, &arcata_score::read(&wanted))?;
        let written = &state.layers.written().layer;
        Ok(Layer { parts: written.parts.clone(), score: written.score.clone(), entries, ..Layer::default() })
    }

    /// The line and stroke that begins with a note.
    pub(crate) fn stroke_of(&self, part: usize, note: NoteId) -> Option<(usize, usize)> {
        stroke_of((&self.score, &self.lines), part, note)
    }

    /// The settings of a line with what is asked of it.
    pub(crate) fn settings(&self, line: usize, anchors: &[Anchor]) -> PlanSettings {
        PlanSettings { anchors: anchors.to_vec(), ..self.settings[line].clone() }
    }
}

fn hook_signs(base: &Base, layer: &Layer) -> BTreeMap<(usize, usize), HookSign> {
    let addresses = Addresses::new(&base.score);
    let hooks = layer.entries.iter().filter_map(|entry| {
        let Mark::Hook { sign, .. } = entry.mark else { return None };
        let found = addresses.find(&entry.place).ok()?;
        Some((base.stroke_of(found.part, found.note)?, sign))
    });
    hooks.collect()
}

impl Desk {
    /// The desk with a layer on it; lines of which nothing else is asked than before keep their plans.
    pub(crate) fn new(base: Arc<Base>, layer: &Layer, before: Option<&Desk>) -> Self {
        let before = before.filter(|before| Arc::ptr_eq(&before.base, &base));
        let asked = asks((&base.score, &base.lines), layer);
        let (mut anchors, mut plans, mut contradicted, mut sure) =
            (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for (line, asked) in asked.into_iter().enumerate() {
            if let Some(before) = before.filter(|before| *before.anchors[line] == asked) {
                anchors.push(before.anchors[line].clone());
                plans.push(before.plans[line].clone());
                contradicted.push(before.contradicted[line].clone());
                sure.push(before.sure[line].clone());
                continue;
            }
            let found = if asked.is_empty() {
                Settled::default()
            } else {
                settled(&base.lines[line], &base.settings(line, &asked))
            };
            plans.push(if asked.is_empty() { base.plans[line].clone() } else { Arc::new(found.plan) });
            contradicted.push(Arc::new(found.contradicted));
            anchors.push(Arc::new(asked));
            sure.push(Arc::default());
        }
        let hook_signs = Arc::new(hook_signs(&base, layer));
        Self { base, anchors, plans, sure, contradicted, hook_signs }
    }

    /// How sure the plan of a line is of each of its strokes; reckoned once.
    pub(crate) fn sureness(&self, line: usize) -> &[Option<Sureness>] {
        self.sure[line].get_or_init(|| {
            let settings = self.base.settings(line, &self.anchors[line]);
            sureness(&self.base.lines[line], &settings, &self.plans[line])
        })
    }

    /// What the hooks and retakes of the layer that the desk has on it come to.
    pub(crate) fn told(&self, layer: &Layer) -> ToldBows {
        let base = &self.base;
        told((&base.score, &base.lines), layer, |line| BowedLine {
            plan: &self.plans[line],
            contradicted: &self.contradicted[line],
            reach: base.settings[line].reach,
        })
    }

    /// The bars of each line whose strokes are planned or written otherwise than before: (line, first, last).
    pub(crate) fn differences(&self, before: &Desk) -> Vec<(usize, u32, u32)> {
        if !Arc::ptr_eq(&self.base, &before.base) {
            return Vec::new();
        }
        let mut found = Vec::new();
        for (index, (now, was)) in self.plans.iter().zip(&before.plans).enumerate() {
            let same_signs = self.hook_signs == before.hook_signs;
            if Arc::ptr_eq(now, was) && self.anchors[index] == before.anchors[index] && same_signs {
                continue;
            }
            let strokes = &self.base.lines[index].strokes;
            let asked =
                |desk: &Desk, stroke: usize| desk.anchors[index].iter().any(|anchor| anchor.stroke == stroke);
            let other = (0..strokes.len()).filter(|stroke| {
                now.strokes[*stroke] != was.strokes[*stroke]
                    || asked(self, *stroke) != asked(before, *stroke)
                    || self.hook_signs.get(&(index, *stroke)) != before.hook_signs.get(&(index, *stroke))
            });
            let bars: Vec<u32> = other.map(|stroke| strokes[stroke].bar).collect();
            if let (Some(first), Some(last)) = (bars.iter().min(), bars.iter().max()) {
                found.push((index, *first, *last));
            }
        }
        found
    }

    /// Which strokes go the other way or are joined otherwise than before, and how many are elsewhere in the bow.
    pub(crate) fn strokes_moved(&self, before: &Desk) -> StrokesMoved {
        let mut moved = StrokesMoved::default();
        let mut turned = BTreeSet::new();
        for (index, (line, plan)) in self.base.lines.iter().zip(&self.plans).enumerate() {
            let same_base = Arc::ptr_eq(&self.base, &before.base);
            if same_base && Arc::ptr_eq(plan, &before.plans[index]) {
                continue;
            }
            // Notes are where they were: strokes are told by the note they begin with.
            let Some(at) = before.base.lines.iter().position(|other| other.is_of(line)) else { continue };
            let was = &before.base.lines[at].strokes;
            // Several begin at one moment where there are grace notes: the first goes with the first.
            let mut nth = 0;
            let mut last = None;
            for (stroke, planned) in line.strokes.iter().zip(&plan.strokes) {
                nth = if last == Some(stroke.onset) { nth + 1 } else { 0 };
                last = Some(stroke.onset);
                let then = was.partition_point(|other| other.onset < stroke.onset) + nth;
                let there = was.get(then).is_some_and(|other| other.onset == stroke.onset);
                let Some(old) = before.plans[at].strokes.get(then).filter(|_| there) else {
                    turned.insert(stroke.bar);
                    moved.turned += 1;
                    continue;
                };
                if (old.direction, old.link) != (planned.direction, planned.link) {
                    turned.insert(stroke.bar);
                    moved.turned += 1;
                } else if old.start.abs_diff(planned.start).max(old.end.abs_diff(planned.end)) >= ELSEWHERE {
                    moved.elsewhere += 1;
                }
            }
        }
        moved.bars = turned.into_iter().collect();
        moved
    }

    /// A line as it would be with one change more in the score, planned for itself.
    ///
    /// # Errors
    /// Edits that do not fit the score, or a line that there is not; in words.
    pub(crate) fn changed_line(
        &self,
        state: &State,
        edits: &[ByteEdit],
        line: usize,
    ) -> Result<ChangedLine, String> {
        let bytes = self.base.document().apply(&edit_list(edits)?).map_err(|problem| problem.to_string())?;
        let document = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
        self.line_in(document, (state, &state.layers.together()), line)
    }

    /// A line as one layer alone has it, planned for itself.
    ///
    /// # Errors
    /// Where there is no such line, or the layer does not fit; in words.
    pub(crate) fn alone(&self, state: &State, layer: &Layer, line: usize) -> Result<ChangedLine, String> {
        let own = self.base.file.document();
        let document = match with_read_marks((own, &arcata_score::read(own)), layer)? {
            Some(marked) => marked.document,
            None => Document::parse(own.bytes().to_vec(), &Limits::default())
                .map_err(|problem| problem.to_string())?,
        };
        self.line_in(document, (state, layer), line)
    }

    fn line_in(
        &self,
        document: Document,
        (state, layer): (&State, &Layer),
        line: usize,
    ) -> Result<ChangedLine, String> {
        let base = &self.base;
        let of = base.lines.get(line).ok_or("there is no such line")?;
        let mut score = arcata_score::read(&document);
        tell(&mut score, state);
        let mut lines = Reading::new(&score, &base.profile, &base.options).lines(of.part);
        lines.retain(|other| other.is_of(of));
        let anchors = asks((&score, &lines), layer);
        let changed = lines.pop().ok_or("no bow moves in this line then")?;
        // The leanings towards the other lines are those of the strokes as they were.
        let settings = PlanSettings { leanings: Vec::new(), ..base.settings(line, &anchors[0]) };
        let Settled { plan, .. } = settled(&changed, &settings);
        Ok(ChangedLine { document, score, line: changed, plan })
    }

    /// The plans, for what wants them in a row.
    pub(crate) fn all_plans(&self) -> Vec<Plan> {
        self.plans.iter().map(|plan| plan.as_ref().clone()).collect()
    }
}

/// Edits of an act as edits of a document.
fn edit_list(edits: &[ByteEdit]) -> Result<EditList, String> {
    let edit = |edit: &ByteEdit| arcata_xml::Edit {
        range: edit.from..edit.to.max(edit.from),
        insert: edit.insert.clone(),
    };
    EditList::new(edits.iter().map(edit).collect()).map_err(|problem| problem.to_string())
}

/// The file with the changes of a state in it, one after another.
fn changed(bytes: &[u8], state: &State) -> Result<ScoreFile, String> {
    let open = |bytes: Vec<u8>| {
        arcata_xml::open_score(bytes, &Limits::default()).map_err(|problem| problem.to_string())
    };
    let mut file = open(bytes.to_vec())?;
    for edits in &state.edits {
        // A package stays one.
        file = open(file.write_edited(&edit_list(edits)?).map_err(|problem| problem.to_string())?)?;
    }
    Ok(file)
}

/// Notes what slurs are said to be, beside the score and in the session; what no slur answers to, in words.
fn tell(score: &mut Score, state: &State) -> Vec<String> {
    let before = Aside { entries: Vec::new(), slurs: state.given.told.clone() };
    let unused = before.tell_slurs(score);
    let said =
        |number: usize| format!("entry {} on slurs beside the score: no slur answers to it", number + 1);
    let mut without: Vec<String> = unused.iter().map(|unused| said(unused.entry)).collect();
    without.extend(tell_slurs(score, &state.slurs));
    without
}

/// Notes what slurs are said to be; the places where none begins, in words.
fn tell_slurs(score: &mut Score, told: &[(NotePlace, SlurIs)]) -> Vec<String> {
    let mut without = Vec::new();
    let mut found = Vec::new();
    {
        let addresses = Addresses::new(score);
        for (place, is) in told {
            match place.find(&addresses) {
                Ok(at) => found.push((at, *is, place)),
                Err(why) => without.push(why),
            }
        }
    }
    for (at, is, place) in found {
        let told = match is {
            SlurIs::Phrase => arcata_score::SlurTold::Phrase,
            SlurIs::Bow => arcata_score::SlurTold::Bow,
            SlurIs::Nothing => arcata_score::SlurTold::Nothing,
        };
        let mut any = false;
        let part = &mut score.parts[at.part];
        let moment = part.notes[at.note.0 as usize].onset;
        for index in 0..part.slurs.len() {
            let start = &part.notes[part.slurs[index].start.0 as usize];
            if start.onset == moment && part.voices.get(usize::from(start.voice)) == Some(&place.voice) {
                part.slurs[index].told = told;
                any = true;
            }
        }
        if !any {
            without.push(format!(
                "{}, {}: no slur begins there",
                place.part,
                bar_said("bar", None, &place.bar)
            ));
        }
    }
    without
}

/// That a leader's habits hold, or rest.
fn habits_words(habits: &Habits, style: Style) -> String {
    if habits.style == style {
        format!("a leader's habits, learned from {} marked strokes", habits.strokes)
    } else {
        format!("the leader's habits rest: they were learned in the style {}", habits.style.name())
    }
}

fn profile(name: &str) -> Result<Profile, String> {
    Shipped::ALL
        .into_iter()
        .find(|shipped| shipped.name() == name)
        .map(Profile::shipped)
        .ok_or_else(|| format!("there is no player called \"{name}\": professional, amateur or student"))
}
