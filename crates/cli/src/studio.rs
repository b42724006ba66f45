//! A score on the desk: read, its lines found, its bows planned.

use std::ops::RangeInclusive;
use std::path::Path;
use std::sync::{Arc, OnceLock};

use arcata_analysis::{Config, Ground, Planner, Planning, Player, Snapshot, Source};
use arcata_bow::plan::{Anchor, MarkReading, Sureness, open_strokes};
use arcata_bow::{Line, Plan, PlanSettings, Profile};
use arcata_languages::TradeWords;
use arcata_layer::{Layer, ToldBows};
use arcata_review::{Aside, UnusedSlurEntry, trade_words};
use arcata_score::Score;
use arcata_xml::{Document, Limits, ScoreFile};

use crate::args::Terms;
use crate::args::{PlayerArguments, SharedArguments, StyleArguments};
use crate::aside_file;
use crate::bars;
use crate::failure::Failure;
use crate::files;
use crate::habits_file;

/// A score with the plans of its lines, and what of it was asked for.
pub(crate) struct StudioScore {
    snapshot: Snapshot,
    /// The bars asked for, by index.
    pub(crate) bars: RangeInclusive<u32>,
    /// Indices of the lines of the parts asked for, in the movements of these bars.
    pub(crate) shown: Vec<usize>,
    /// Entries on slurs that no slur of the score answers to.
    pub(crate) slurs_without: Vec<UnusedSlurEntry>,
}

impl StudioScore {
    /// All of a score.
    pub(crate) fn whole(snapshot: Snapshot) -> Self {
        let last = u32::try_from(snapshot.score().bars.len()).unwrap_or(u32::MAX).saturating_sub(1);
        let shown = (0..snapshot.lines().len()).collect();
        Self { snapshot, bars: 0..=last, shown, slurs_without: Vec::new() }
    }

    pub(crate) fn file(&self) -> &ScoreFile {
        self.snapshot.ground().source.file()
    }

    pub(crate) fn score(&self) -> &Score {
        self.snapshot.score()
    }

    /// The lines of all bowed parts.
    pub(crate) fn lines(&self) -> &[Line] {
        self.snapshot.lines()
    }

    pub(crate) fn plans(&self) -> &[Arc<Plan>] {
        self.snapshot.plans()
    }

    /// What a line was planned with; leanings towards the other lines are in it.
    pub(crate) fn settings(&self, index: usize) -> &PlanSettings {
        self.snapshot.settings(index)
    }

    /// The whole analysis.
    pub(crate) const fn snapshot(&self) -> &Snapshot {
        &self.snapshot
    }

    /// What is taken for given, in words.
    pub(crate) fn assumptions(&self) -> Vec<String> {
        let wording = files::wording();
        self.snapshot.ground().bowed.assumptions.iter().map(|said| wording.say(said)).collect()
    }

    /// The lines asked for, with their plans.
    pub(crate) fn shown(&self) -> impl Iterator<Item = (&Line, &Plan)> {
        self.shown.iter().map(|index| (&self.lines()[*index], self.snapshot.plan(*index).as_ref()))
    }

    /// How sure the plan of a line is of each stroke.
    pub(crate) fn sureness(&self, index: usize) -> &[Option<Sureness>] {
        self.snapshot.sureness(index)
    }

    /// The strokes of a line for which two ways are nearly equal.
    pub(crate) fn open_strokes(&self, index: usize) -> Vec<usize> {
        open_strokes(self.sureness(index))
    }

    /// Plans lines anew of which something is asked; the others stay as they are.
    pub(crate) fn fix(&mut self, anchors: Vec<Vec<Anchor>>) {
        self.snapshot = self.snapshot.asking(anchors);
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
    files::call_things(trade_words(&profile));
    Ok(profile)
}

/// Whose English is spoken in this run, where it was asked for.
static TERMS: OnceLock<Terms> = OnceLock::new();

/// Says whose English is spoken from now on.
pub(crate) fn speak(terms: Terms) {
    let _ = TERMS.set(terms);
    let [bar, stand, frog, tip, _] = terms.words().map(str::to_owned);
    files::call_things(TradeWords { bar, stand, frog, tip });
}

fn read_profile(name: &str) -> Result<Profile, Failure> {
    let failed = |why: String| Failure::Profile { name: name.to_owned(), why };
    if let Ok(shipped) = Player::named(name) {
        return Ok(shipped);
    }
    let text = files::read_text(Path::new(name)).map_err(failed)?;
    Profile::parse(&text).map_err(|error| failed(files::told(&error.to_string())))
}

/// The player that a command asks for, in the style that it asks for, with a leader's habits.
pub(crate) fn player(arguments: &PlayerArguments) -> Result<Player, Failure> {
    let StyleArguments { profile: name, style } = &arguments.style;
    let habits = arguments
        .habits
        .as_ref()
        .map(|path| habits_file::read(path).map(|habits| (path, habits)))
        .transpose()?;
    let failed = |why: String| match &habits {
        Some((path, _)) => Failure::Habits { path: (*path).clone(), why },
        None => Failure::Profile { name: name.clone(), why },
    };
    Player::new(profile(name)?, *style, habits.as_ref().map(|(_, habits)| habits))
        .map_err(|why| failed(files::told(&why)))
}

/// The player in the style that is asked for.
pub(crate) fn styled(arguments: &StyleArguments) -> Result<Profile, Failure> {
    Ok(player(&PlayerArguments { style: arguments.clone(), habits: None })?.profile)
}

/// Reads a score.
pub(crate) fn open_score(path: &Path) -> Result<Source, Failure> {
    let failed = |why: String| Failure::Read { path: path.to_owned(), why };
    let bytes = files::read(path, Limits::default().max_bytes).map_err(failed)?;
    Source::open(bytes).map_err(|why| failed(files::told(&why)))
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
    let config = Config::of(profile(Player::USUAL)?);
    let planner = Planner { config: &config, tell: &tell };
    planner.told((document, score), layer).map_err(|why| Failure::Marks { why: files::told(&why) })
}

/// Reads a score, with what the file beside it says of its slurs, and plans its lines.
pub(crate) fn open(
    path: &Path,
    shared: &SharedArguments,
    player: &Player,
    marks: MarkReading,
) -> Result<StudioScore, Failure> {
    let aside = aside_file::of(path, None)?.map(|(_, aside)| aside);
    open_told(path, shared, player, marks, aside.as_ref())
}

/// Reads a score, with what somebody has said that its slurs are, and plans its lines.
pub(crate) fn open_told(
    path: &Path,
    shared: &SharedArguments,
    player: &Player,
    marks: MarkReading,
    aside: Option<&Aside>,
) -> Result<StudioScore, Failure> {
    let mut source = open_score(path)?;
    let slurs_without = aside.map(|aside| aside.tell_slurs(&mut source.score)).unwrap_or_default();
    let score = &source.score;
    let chosen = bars::parts(score, &shared.part)?;
    let asked = bars::bars(score, shared.bars.as_deref(), shared.movement.as_deref())?;
    let config = Config {
        player: player.clone(),
        tempo: shared.tempo,
        // An opening tempo is that of the movement in which the bars asked for begin.
        opening_movement: score.movement_of(*asked.start()),
        louder: shared.louder,
        marks,
        planning: if shared.apart { Planning::Apart } else { Planning::Together },
    };
    let movements = score.movement_of(*asked.start())..=score.movement_of(*asked.end());
    let snapshot = Snapshot::new(Arc::new(Ground::new(source, config)));
    let is_shown = |line: &Line| chosen.contains(&line.part) && movements.contains(&line.movement);
    let lines = snapshot.lines();
    let shown = (0..lines.len()).filter(|index| is_shown(&lines[*index])).collect();
    Ok(StudioScore { snapshot, bars: asked, shown, slurs_without })
}
