//! A score on the desk: read, its lines found, its bows planned.

use std::ops::RangeInclusive;
use std::path::Path;
use std::sync::OnceLock;

use arcata_bow::plan::{Anchor, MarkReading, Sureness, open_strokes, sureness};
use arcata_bow::profile::Shipped;
use arcata_bow::timing::TempoChoice;
use arcata_bow::together::{Agreement, Together, agreements, plan_together};
use arcata_bow::{Line, LineOptions, Plan, PlanSettings, Profile, Reading, plan};
use arcata_layer::{Layer, ToldBows};
use arcata_prepare::Planner;
use arcata_report::BarWord;
use arcata_review::{Aside, UnusedSlurEntry};
use arcata_score::{Length, Score};
use arcata_xml::{Document, Limits, ScoreFile};
use rayon::prelude::*;

use crate::args::{PlayerArguments, Shared, StyleArguments, Terms};
use crate::aside_file;
use crate::bars;
use crate::failure::Failure;
use crate::files;
use crate::habits_command;

/// A score with the plans of its lines.
pub(crate) struct Desk {
    pub(crate) file: ScoreFile,
    pub(crate) score: Score,
    /// The lines of all bowed parts.
    pub(crate) lines: Vec<Line>,
    pub(crate) plans: Vec<Plan>,
    /// What each plan was made with; leanings towards the other lines are in it.
    pub(crate) settings: Vec<PlanSettings>,
    /// How the lines were planned as one; none where each was planned for itself.
    pub(crate) agreed: Option<Agreed>,
    /// The bars asked for, by index.
    pub(crate) bars: RangeInclusive<u32>,
    /// Indices of the lines of the parts asked for, in the movements of these bars.
    pub(crate) shown: Vec<usize>,
    pub(crate) assumptions: Vec<String>,
    /// Entries on slurs that no slur of the score answers to.
    pub(crate) slurs_without: Vec<UnusedSlurEntry>,
}

/// Lines that were planned as one.
pub(crate) struct Agreed {
    pub(crate) together: Together,
    pub(crate) agreements: Vec<Agreement>,
}

impl Desk {
    /// The lines asked for, with their plans.
    pub(crate) fn shown(&self) -> impl Iterator<Item = (&Line, &Plan)> {
        self.shown.iter().map(|index| (&self.lines[*index], &self.plans[*index]))
    }

    /// How sure the plan of a line is of each stroke.
    pub(crate) fn sureness(&self, index: usize) -> Vec<Option<Sureness>> {
        sureness(&self.lines[index], &self.settings[index], &self.plans[index])
    }

    /// The strokes of a line for which two ways are nearly equal.
    pub(crate) fn open_strokes(&self, index: usize) -> Vec<usize> {
        open_strokes(&self.sureness(index))
    }

    /// Plans all lines anew with fixed strokes, so that those who bow alike follow.
    pub(crate) fn fix(&mut self, anchors: &[Vec<Anchor>]) {
        let with = |(settings, anchors): (&PlanSettings, &Vec<Anchor>)| PlanSettings {
            anchors: anchors.clone(),
            leanings: Vec::new(),
            ..settings.clone()
        };
        let settings: Vec<PlanSettings> = self.settings.iter().zip(anchors).map(with).collect();
        let agreements = self.agreed.take().map(|agreed| agreed.agreements);
        let planned = planned(&self.lines, settings, agreements);
        (self.plans, self.settings, self.agreed) = (planned.plans, planned.settings, planned.agreed);
    }
}

struct Planned {
    plans: Vec<Plan>,
    settings: Vec<PlanSettings>,
    agreed: Option<Agreed>,
}

fn planned(lines: &[Line], settings: Vec<PlanSettings>, agreements: Option<Vec<Agreement>>) -> Planned {
    let Some(agreements) = agreements else {
        let plans = lines.par_iter().zip(&settings).map(|(line, settings)| plan(line, settings)).collect();
        return Planned { plans, settings, agreed: None };
    };
    let together = plan_together(lines, &settings, &agreements);
    Planned {
        plans: together.plans.clone(),
        settings: together.settings.clone(),
        agreed: Some(Agreed { together, agreements }),
    }
}

/// The profile that was named: shipped, or a file.
pub(crate) fn profile(name: &str) -> Result<Profile, Failure> {
    let mut profile = read_profile(name)?;
    if let Some(terms) = TERMS.get() {
        let words = &mut profile.words;
        let settings = [&mut words.bar, &mut words.stand, &mut words.frog, &mut words.tip, &mut words.leader];
        for (setting, word) in settings.into_iter().zip(terms.words()) {
            setting.value = word.to_owned();
        }
    }
    files::call_bars(BarWord::named(&profile.words.bar.value));
    Ok(profile)
}

/// Whose English is spoken in this run, where it was asked for.
static TERMS: OnceLock<Terms> = OnceLock::new();

/// Says whose English is spoken from now on.
pub(crate) fn speak(terms: Terms) {
    let _ = TERMS.set(terms);
    files::call_bars(BarWord::named(terms.words()[0]));
}

fn read_profile(name: &str) -> Result<Profile, Failure> {
    let failed = |why: String| Failure::Profile { name: name.to_owned(), why };
    if let Some(shipped) = Shipped::ALL.into_iter().find(|shipped| shipped.name() == name) {
        return Ok(Profile::shipped(shipped));
    }
    let text = files::read_text(Path::new(name)).map_err(failed)?;
    Profile::parse(&text).map_err(|error| failed(error.to_string()))
}

/// The player that a command asks for, in the style that it asks for, with a leader's habits.
pub(crate) fn player(arguments: &PlayerArguments) -> Result<Profile, Failure> {
    let Some(path) = &arguments.habits else { return styled(&arguments.style) };
    let habits = habits_command::read(path)?;
    let style = arguments.style.style.or(Some(habits.style));
    let profile = styled(&StyleArguments { style, ..arguments.style.clone() })?;
    habits.put_into(profile).map_err(|why| Failure::Habits { path: path.clone(), why })
}

/// The player in the style that is asked for.
pub(crate) fn styled(arguments: &StyleArguments) -> Result<Profile, Failure> {
    let profile = profile(&arguments.profile)?;
    Ok(match arguments.style {
        None => profile,
        Some(style) => profile.in_style(style),
    })
}

/// Settings of the planner for one line.
pub(crate) fn settings(line: &Line, profile: &Profile, marks: MarkReading) -> PlanSettings {
    PlanSettings { marks, ..profile.plan_settings(line.instrument) }
}

/// A score that was read.
pub(crate) struct Opened {
    pub(crate) file: ScoreFile,
    pub(crate) score: Score,
}

/// Reads a score.
pub(crate) fn open_score(path: &Path) -> Result<Opened, Failure> {
    let failed = |why: String| Failure::Read { path: path.to_owned(), why };
    let bytes = files::read(path, Limits::default().max_bytes).map_err(failed)?;
    open_bytes(bytes).map_err(failed)
}

/// Reads the bytes of a score.
pub(crate) fn open_bytes(bytes: Vec<u8>) -> Result<Opened, String> {
    let file = arcata_xml::open_score(bytes, &Limits::default()).map_err(|error| error.to_string())?;
    let score = arcata_score::read(file.document());
    let not_a_score =
        score.problems.iter().find(|problem| problem.kind == arcata_score::ProblemKind::NotAScore);
    match not_a_score {
        Some(problem) => Err(problem.message.clone()),
        None => Ok(Opened { file, score }),
    }
}

/// What the hooks and retakes of a layer come to where it is put on a score: the professional's plan, every line with what the
/// file beside the score says of its slurs.
pub(crate) fn told(
    path: &Path,
    (document, score): (&Document, &Score),
    layer: &Layer,
) -> Result<ToldBows, Failure> {
    let aside = aside_file::of(path, None)?.map(|(_, aside)| aside);
    let tell = |score: &mut Score| {
        if let Some(aside) = &aside {
            aside.tell_slurs(score);
        }
    };
    let (profile, options) = (Profile::shipped(Shipped::Professional), LineOptions::default());
    let planner = Planner { profile: &profile, options: &options, tell: &tell };
    planner.told((document, score), layer).map_err(|why| Failure::Marks { why })
}

/// Reads a score, with what the file beside it says of its slurs, and plans its lines.
pub(crate) fn open(
    path: &Path,
    shared: &Shared,
    profile: &Profile,
    marks: MarkReading,
) -> Result<Desk, Failure> {
    let aside = aside_file::of(path, None)?.map(|(_, aside)| aside);
    open_told(path, shared, profile, marks, aside.as_ref())
}

/// Reads a score, with what somebody has said that its slurs are, and plans its lines.
pub(crate) fn open_told(
    path: &Path,
    shared: &Shared,
    profile: &Profile,
    marks: MarkReading,
    aside: Option<&Aside>,
) -> Result<Desk, Failure> {
    let Opened { file, mut score } = open_score(path)?;
    let slurs_without = aside.map(|aside| aside.tell_slurs(&mut score)).unwrap_or_default();
    let chosen = bars::parts(&score, &shared.part)?;
    let asked = bars::bars(&score, shared.bars.as_deref(), shared.movement.as_deref())?;
    let options = line_options(shared, &score, &asked);
    let reading = Reading::new(&score, profile, &options);
    let bowed = bars::parts(&score, &[])?;
    let lines: Vec<Line> = bowed.par_iter().flat_map(|part| reading.lines(*part)).collect();
    let settings: Vec<PlanSettings> = lines.iter().map(|line| settings(line, profile, marks)).collect();
    let agreements = (!shared.apart).then(|| {
        let weights = settings.first().map(|settings| settings.weights.clone()).unwrap_or_default();
        agreements(&score, &lines, &weights)
    });
    let Planned { plans, settings, agreed } = planned(&lines, settings, agreements);
    let habits = shared.player.habits.as_ref();
    let habits = habits.map(|habits| format!("a leader's habits, from {}", habits.display()));
    let assumed = arcata_prepare::assumptions(&lines, &options, reading.tempo.assumed());
    let assumptions = habits.into_iter().chain(assumed).collect();
    let movements = score.movement_of(*asked.start())..=score.movement_of(*asked.end());
    let is_shown = |line: &Line| chosen.contains(&line.part) && movements.contains(&line.movement);
    let shown = (0..lines.len()).filter(|index| is_shown(&lines[*index])).collect();
    Ok(Desk { file, score, lines, plans, settings, agreed, bars: asked, shown, assumptions, slurs_without })
}

/// How lines are read; an opening tempo is that of the movement in which the bars asked for begin.
pub(crate) fn line_options(shared: &Shared, score: &Score, bars: &RangeInclusive<u32>) -> LineOptions {
    let tempo = shared
        .tempo
        .map_or(TempoChoice::Written, |quarters| TempoChoice::Opening(Length::new(i64::from(quarters), 1)));
    let opening_movement = score.movement_of(*bars.start());
    LineOptions { tempo, opening_movement, louder: shared.louder, ..LineOptions::default() }
}
