//! A score on the desk: read, its lines found, its bows planned, and planned anew where something is asked for.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

use arcata_analysis::{
    Config, Ground, Player, Snapshot, Source, WithLayer, asks, stroke_of, with_layer, with_read_marks,
};
use arcata_bow::plan::{BowReach, Settled, settled};
use arcata_bow::together::Agreement;
use arcata_bow::{Line, Plan, PlanSettings, Profile, Reading};
use arcata_languages::{Saying, Wording};
use arcata_layer::{Addresses, HookSign, Layer, Mark};
use arcata_review::Aside;
use arcata_score::places::bar_said;
use arcata_score::{NoteId, Score};
use arcata_xml::{Document, EditList, Limits, ScoreFile};

use crate::act::{ByteEdit, NotePlace, SlurIs};
use crate::state::SessionState;
use crate::with_marks::{is_doubled, slur_entries, without};

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
    /// The score, as it is looked at with layers and all, and how it is bowed where nothing is asked for.
    pub(crate) ground: Arc<Ground>,
    /// Slurs that were named and are not there.
    pub(crate) slurs_without: Vec<String>,
}

/// The desk as it is at one moment. Cheap to copy.
#[derive(Clone, Debug)]
pub struct Desk {
    pub(crate) base: Arc<Base>,
    /// How the score is bowed with what is asked of it.
    pub(crate) snapshot: Snapshot,
    /// How the hooks that are asked for are written, by line and stroke.
    pub(crate) hook_signs: Arc<BTreeMap<(usize, usize), HookSign>>,
}

impl Base {
    /// Reads a score and plans its lines.
    ///
    /// # Errors
    /// A file that is no score, edits that do not fit it, a profile that there is not; in words.
    pub(crate) fn new(bytes: &[u8], state: &SessionState) -> Result<Self, String> {
        Self::of(Source::of(changed(bytes, state)?)?, state, None)
    }

    /// The same after a change: movements that it does not touch keep their plans.
    ///
    /// # Errors
    /// As [`new`](Self::new).
    pub(crate) fn after(bytes: &[u8], state: &SessionState, before: &Self) -> Result<Self, String> {
        Self::of(Source::of(changed(bytes, state)?)?, state, Some(before))
    }

    /// The same of a score that was read with what was changed in it.
    ///
    /// # Errors
    /// Layers that do not fit the score, a profile that there is not; in words.
    pub(crate) fn of(source: Source, state: &SessionState, before: Option<&Self>) -> Result<Self, String> {
        let mut source = source.with_layer(&state.layers.together())?;
        let left_out = source.overlaid().map_or(&[][..], |overlaid| &overlaid.left_out);
        let mut slurs_without: Vec<String> = left_out.iter().map(ToString::to_string).collect();
        slurs_without.extend(tell(&mut source.score, state));
        let before = before.map(|before| &*before.ground);
        let ground = Arc::new(Ground::after(source, config(state)?, before));
        Ok(Self { ground, slurs_without })
    }

    /// The score's own file, with what was changed in it.
    pub(crate) fn file(&self) -> &ScoreFile {
        self.ground.source.file()
    }

    /// The document that is looked at.
    pub(crate) fn document(&self) -> &Document {
        self.ground.source.document()
    }

    /// The score as it is looked at, layers and all.
    pub(crate) fn score(&self) -> &Score {
        &self.ground.source.score
    }

    pub(crate) fn lines(&self) -> &[Line] {
        &self.ground.bowed.lines
    }

    pub(crate) fn profile(&self) -> &Profile {
        &self.ground.config.player.profile
    }

    /// What is taken for given, in words.
    pub(crate) fn assumptions(&self, wording: &Wording) -> Vec<String> {
        self.ground.bowed.assumptions.iter().map(|said| wording.say(said)).collect()
    }

    /// What had better go the same way.
    pub(crate) fn agreements(&self) -> &[Agreement] {
        self.ground.bowed.agreed.as_ref().map_or(&[], |agreed| &agreed.agreements)
    }

    /// Edits of the document that is looked at as edits of the score's own.
    ///
    /// # Errors
    /// Where a layer has changed the place, in words.
    pub(crate) fn own_edits(&self, edits: &[ByteEdit]) -> Result<Vec<ByteEdit>, String> {
        self.ground.source.overlaid().map_or_else(|| Ok(edits.to_vec()), |marked| without(marked, edits))
    }

    /// Whether the score's own file has a slur twice where layers stand on it.
    pub(crate) fn doubles_slurs(&self) -> bool {
        self.ground.source.overlaid().is_some() && is_doubled(&arcata_score::read(self.file().document()))
    }

    /// What the layer that is written in has to say of slurs so that they are as the edits leave them.
    ///
    /// # Errors
    /// Edits that do not fit, or change more than slurs; in words.
    pub(crate) fn slurs_for_layer(&self, state: &SessionState, edits: &[ByteEdit]) -> Result<Layer, String> {
        let bytes = self.document().apply(&edit_list(edits)?).map_err(|problem| problem.to_string())?;
        let wanted = Document::parse(bytes, &Limits::default()).map_err(|problem| problem.to_string())?;
        let mut from = arcata_score::read(self.file().document());
        if let Some(marked) = with_read_marks((self.file().document(), &from), &state.layers.below())? {
            from = arcata_score::read(&marked.document);
        }
        let entries = slur_entries(&from, &arcata_score::read(&wanted))?;
        let written = &state.layers.written().layer;
        Ok(Layer { parts: written.parts.clone(), score: written.score.clone(), entries, ..Layer::default() })
    }

    /// What the bow of a line can do.
    pub(crate) fn reach(&self, line: usize) -> BowReach {
        self.ground.reach(line)
    }

    /// The line and stroke that begins with a note.
    pub(crate) fn stroke_of(&self, part: usize, note: NoteId) -> Option<(usize, usize)> {
        stroke_of((self.score(), self.lines()), part, note)
    }
}

fn hook_signs(base: &Base, layer: &Layer) -> BTreeMap<(usize, usize), HookSign> {
    let addresses = Addresses::new(base.score());
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
        let asked = asks((base.score(), base.lines()), layer);
        let free = || Snapshot::new(base.ground.clone());
        let before = before.map_or_else(free, |before| before.snapshot.clone());
        let snapshot = before.asking_of(base.ground.clone(), asked);
        let hook_signs = Arc::new(hook_signs(&base, layer));
        Self { base, snapshot, hook_signs }
    }

    /// How the score is bowed with what is asked of it.
    #[must_use]
    pub const fn snapshot(&self) -> &Snapshot {
        &self.snapshot
    }

    /// What is taken for given, in words.
    #[must_use]
    pub fn assumptions(&self, wording: &Wording) -> Vec<String> {
        self.base.assumptions(wording)
    }

    /// The score's own document with a layer on it.
    ///
    /// # Errors
    /// A layer that does not fit it, in words.
    pub fn bowed(&self, layer: &Layer) -> Result<WithLayer, String> {
        let document = self.base.file().document();
        with_layer((document, &arcata_score::read(document)), layer, &self.snapshot.told(layer))
    }

    /// A plan for each line.
    pub(crate) fn plans(&self) -> &[Arc<Plan>] {
        self.snapshot.plans()
    }

    /// The bars of each line whose strokes are planned or written otherwise than before: (line, first, last).
    pub(crate) fn differences(&self, before: &Desk) -> Vec<(usize, u32, u32)> {
        if !Arc::ptr_eq(&self.base, &before.base) {
            return Vec::new();
        }
        let mut found = Vec::new();
        for (index, (now, was)) in self.plans().iter().zip(before.plans()).enumerate() {
            let same_signs = self.hook_signs == before.hook_signs;
            let anchors = |desk: &Desk| desk.snapshot.anchors(index).to_vec();
            if Arc::ptr_eq(now, was) && anchors(self) == anchors(before) && same_signs {
                continue;
            }
            let strokes = &self.base.lines()[index].strokes;
            let asked = |desk: &Desk, stroke: usize| {
                desk.snapshot.anchors(index).iter().any(|anchor| anchor.stroke == stroke)
            };
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
        for (index, (line, plan)) in self.base.lines().iter().zip(self.plans()).enumerate() {
            let same_base = Arc::ptr_eq(&self.base, &before.base);
            if same_base && Arc::ptr_eq(plan, &before.plans()[index]) {
                continue;
            }
            // Notes are where they were: strokes are told by the note they begin with.
            let Some(at) = before.base.lines().iter().position(|other| other.is_of(line)) else { continue };
            let was = &before.base.lines()[at].strokes;
            // Several begin at one moment where there are grace notes: the first goes with the first.
            let mut nth = 0;
            let mut last = None;
            for (stroke, planned) in line.strokes.iter().zip(&plan.strokes) {
                nth = if last == Some(stroke.onset) { nth + 1 } else { 0 };
                last = Some(stroke.onset);
                let then = was.partition_point(|other| other.onset < stroke.onset) + nth;
                let there = was.get(then).is_some_and(|other| other.onset == stroke.onset);
                let Some(old) = before.plans()[at].strokes.get(then).filter(|_| there) else {
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
        state: &SessionState,
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
    pub(crate) fn alone(
        &self,
        state: &SessionState,
        layer: &Layer,
        line: usize,
    ) -> Result<ChangedLine, String> {
        let own = self.base.file().document();
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
        (state, layer): (&SessionState, &Layer),
        line: usize,
    ) -> Result<ChangedLine, String> {
        let base = &self.base;
        let of = base.lines().get(line).ok_or("there is no such line")?;
        let mut score = arcata_score::read(&document);
        tell(&mut score, state);
        let mut lines = Reading::new(&score, base.profile(), &base.ground.options).lines(of.part);
        lines.retain(|other| other.is_of(of));
        let anchors = asks((&score, &lines), layer);
        let changed = lines.pop().ok_or("no bow moves in this line then")?;
        // The leanings towards the other lines are those of the strokes as they were.
        let anchors = anchors[0].clone();
        let settings =
            PlanSettings { leanings: Vec::new(), anchors, ..base.ground.bowed.settings[line].clone() };
        let Settled { plan, .. } = settled(&changed, &settings);
        Ok(ChangedLine { document, score, line: changed, plan })
    }
}

/// Edits of an act as edits of a document.
pub(crate) fn edit_list(edits: &[ByteEdit]) -> Result<EditList, String> {
    let edit = |edit: &ByteEdit| arcata_xml::Edit {
        range: edit.from..edit.to.max(edit.from),
        insert: edit.insert.clone(),
    };
    EditList::new(edits.iter().map(edit).collect()).map_err(|problem| problem.to_string())
}

/// The file with the changes of a state in it, one after another.
fn changed(bytes: &[u8], state: &SessionState) -> Result<ScoreFile, String> {
    let open = |bytes: Vec<u8>| {
        arcata_xml::open_score(bytes, &Limits::default()).map_err(|problem| problem.to_string())
    };
    let file = open(bytes.to_vec())?;
    let mut text = Cow::Borrowed(file.document().text());
    for edits in &state.edits {
        text = Cow::Owned(edit_list(edits)?.apply_to(&text).map_err(|problem| problem.to_string())?);
    }
    match text {
        Cow::Borrowed(_) => Ok(file),
        // A package stays one.
        Cow::Owned(text) => {
            open(file.write(&file.document().encoded(&text)).map_err(|problem| problem.to_string())?)
        }
    }
}

/// Notes what slurs are said to be, beside the score and in the session; what no slur answers to, in words.
fn tell(score: &mut Score, state: &SessionState) -> Vec<String> {
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

/// Who plays, and how the score is read.
fn config(state: &SessionState) -> Result<Config, String> {
    let habits = state.given.habits.as_deref();
    let fitting = habits.filter(|habits| habits.style == state.style);
    let mut player = Player::new(Player::named(&state.profile)?, Some(state.style), fitting)?;
    let rest = habits
        .filter(|habits| habits.style != state.style)
        .map(|habits| Saying::new("assume-habits-rest").quoting("style", habits.style.name()));
    player.told.extend(rest);
    Ok(Config { player, tempo: state.tempo, louder: state.louder, ..Config::default() })
}
