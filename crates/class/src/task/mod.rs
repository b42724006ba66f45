//! The task: what it is called, what it trains, what is given with it, how its sheets are to be.

mod names;
mod read;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

use arcata_bow::profile::Shipped;
use arcata_bow::{Profile, Style};
use arcata_languages::Language;
use arcata_report::sheet::Paper;
use arcata_review::{ReviewSettings, Severity};

pub use names::nearest;

/// A task, read from its file.
#[derive(Clone, Debug, PartialEq)]
pub struct Task {
    /// What it is called.
    pub title: String,
    /// When it is due, as the teacher writes it; only shown.
    pub due: Option<String>,
    /// The languages that sheets are made in, the first one first; never empty.
    pub languages: Vec<Language>,
    /// Level of the players.
    pub player: TaskPlayer,
    /// The style, where it is not the profile's own.
    pub style: Option<Style>,
    /// Quarter notes a minute at the opening, instead of what the scores say.
    pub tempo: Option<u32>,
    /// The rules that it trains, by id.
    pub trains: BTreeSet<String>,
    /// What has to stand on the page.
    pub expects: Vec<Expected>,
    /// The bowed parts, from 1, in which that is looked for; empty for all.
    pub parts: Vec<usize>,
    /// Rules that do not count, by id.
    pub off: BTreeSet<String>,
    /// When not empty, only these rules count.
    pub only: BTreeSet<String>,
    /// The lightest severity that still counts.
    pub lightest: Severity,
    /// Thresholds of the player that the teacher has changed, by the names of a profile's `[thresholds]`.
    pub thresholds: BTreeMap<String, i64>,
    /// What was given with the task.
    pub given: TaskGiven,
    /// How sheets are to be.
    pub sheet: SheetSettings,
    /// What the teacher looks for, in the teacher's words.
    pub criteria: Vec<Criterion>,
    /// The teacher's own sentences on rules and on what is expected, by id.
    pub words: BTreeMap<String, String>,
    /// Where the names of the students come from.
    pub names: StudentNaming,
}

/// Who plays.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TaskPlayer {
    /// A profile that comes with the program.
    Shipped(Shipped),
    /// A profile file, named as in the task, beside it; its text where it has been read ([`Task::described_by`]).
    File {
        /// The file.
        name: String,
        /// Its text.
        text: Option<String>,
    },
}

impl TaskPlayer {
    /// Key of the words for these players on a sheet. A file is not named there.
    #[must_use]
    pub fn key(&self) -> String {
        match self {
            Self::Shipped(shipped) => format!("sheet-player-{}", shipped.name()),
            Self::File { .. } => "sheet-player-own".to_owned(),
        }
    }
}

/// What has to stand on the page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Expected {
    /// Slurs in every bowed part.
    Slurs,
    /// A dynamic in every bowed part.
    Dynamics,
    /// Hairpins, or words for them.
    Hairpins,
    /// Signs on notes: dots, lines, accents.
    Articulations,
    /// Printed down- and up-bows.
    BowMarks,
    /// A tempo.
    Tempo,
}

impl Expected {
    /// All of them.
    pub const ALL: [Self; 6] =
        [Self::Slurs, Self::Dynamics, Self::Hairpins, Self::Articulations, Self::BowMarks, Self::Tempo];

    /// The name in task files.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Slurs => "slurs",
            Self::Dynamics => "dynamics",
            Self::Hairpins => "hairpins",
            Self::Articulations => "articulations",
            Self::BowMarks => "bow-marks",
            Self::Tempo => "tempo",
        }
    }

    /// Its id where it stands among the rules: `lacks-slurs`.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Self::Slurs => "lacks-slurs",
            Self::Dynamics => "lacks-dynamics",
            Self::Hairpins => "lacks-hairpins",
            Self::Articulations => "lacks-articulations",
            Self::BowMarks => "lacks-bow-marks",
            Self::Tempo => "lacks-tempo",
        }
    }

    /// The one with this id.
    #[must_use]
    pub fn of_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|expected| expected.id() == id)
    }
}

/// What was given with the task. Files are named as in the task, beside it.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct TaskGiven {
    /// A melody that must stay: a score file.
    pub melody: Option<String>,
    /// The part of each hand-in that holds the melody, from 1 among the bowed parts; none searches for it.
    pub part: Option<usize>,
    /// Scores to compare slurs and bow marks with: ways among others.
    pub models: Vec<Model>,
}

/// A way to solve the task.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Model {
    /// What it is called on pages.
    pub name: String,
    /// The score.
    pub score: String,
    /// A layer on that score, if it is one.
    pub layer: Option<String>,
}

/// How sheets are to be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetSettings {
    /// Passages that are shown at most.
    pub passages: usize,
    /// What becomes of repairs.
    pub repairs: Repairs,
    /// The paper.
    pub paper: Paper,
    /// A sentence of the teacher on every sheet.
    pub say: Option<String>,
}

/// What a sheet says of repairs.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Repairs {
    /// One is told and pictured.
    #[default]
    Shown,
    /// Its kind is told, and not where.
    Hinted,
    /// None is told.
    Withheld,
}

impl Repairs {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Shown, Self::Hinted, Self::Withheld];

    /// The name in task files.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Shown => "shown",
            Self::Hinted => "hinted",
            Self::Withheld => "withheld",
        }
    }
}

/// Something that the teacher looks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Criterion {
    /// In the teacher's words.
    pub words: String,
    /// The rules and expectations behind it, by id; empty for what only a person can see.
    pub rules: BTreeSet<String>,
}

/// Where the names of the students come from.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct StudentNaming {
    /// From what.
    pub of: NameOf,
    /// The name ends before this text.
    pub before: Option<String>,
}

/// From what names are taken.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum NameOf {
    /// The name of the file.
    #[default]
    File,
    /// The name of the folder that the file is in.
    Folder,
    /// The composer that the score names; the name of the file where it names none.
    Score,
}

impl NameOf {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::File, Self::Folder, Self::Score];

    /// The name in task files.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::File => "file",
            Self::Folder => "folder",
            Self::Score => "score",
        }
    }
}

/// Why a task cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TaskError {
    /// Line, from 1.
    pub line: usize,
    /// Column, from 1.
    pub column: usize,
    /// What is wrong there and what to do.
    pub why: String,
}

impl fmt::Display for TaskError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}, column {}: {}", self.line, self.column, self.why)
    }
}

impl std::error::Error for TaskError {}

impl Task {
    /// Reads the text of a task file.
    ///
    /// ```
    /// use arcata_class::Task;
    ///
    /// let task = Task::read("format = \"arcata-task\"\nversion = 1\ntitle = \"Slurs\"\n").expect("a task");
    /// assert_eq!(task.sheet.passages, 3);
    /// let wrong = Task::read("format = \"arcata-task\"\nversion = 1\ntitle = \"Slurs\"\n[rules]\noff = [\"bow-drif\"]\n");
    /// assert!(wrong.unwrap_err().to_string().starts_with("line 5, column 8: no rule is called \"bow-drif\""));
    /// ```
    ///
    /// # Errors
    /// Text that is no TOML, keys that there are not, names of rules, languages, styles, thresholds that there are not, with
    /// line and column.
    pub fn read(text: &str) -> Result<Self, TaskError> {
        read::read(text)
    }

    /// The profile file that the task names, where it names one.
    #[must_use]
    pub fn profile_file(&self) -> Option<&str> {
        match &self.player {
            TaskPlayer::Shipped(_) => None,
            TaskPlayer::File { name, .. } => Some(name),
        }
    }

    /// The same task with the text of its profile file.
    ///
    /// ```
    /// use arcata_class::Task;
    ///
    /// let text = "format = \"arcata-task\"\nversion = 1\ntitle = \"Slurs\"\nplayer = \"ours.toml\"\n";
    /// let task = Task::read(text).expect("a task");
    /// assert_eq!(task.profile_file(), Some("ours.toml"));
    /// let task = task.described_by("extends = \"student\"\n[hair]\nviolin = 560\n").expect("a profile");
    /// assert_eq!(task.profile().expect("it was read").hair.violin.value, 560);
    /// ```
    ///
    /// # Errors
    /// Text that is no profile, in words, with the line in it.
    pub fn described_by(mut self, text: &str) -> Result<Self, String> {
        if let TaskPlayer::File { name, text: kept } = &mut self.player {
            Profile::parse(text).map_err(|error| format!("player = \"{name}\": {error}"))?;
            *kept = Some(text.to_owned());
        }
        self.profile()?;
        Ok(self)
    }

    /// The player that the task is bowed by.
    ///
    /// # Errors
    /// In words; never for a task that was read, with its profile file where it names one.
    pub fn profile(&self) -> Result<Profile, String> {
        profile(&self.player, self.style, &self.thresholds)
    }

    /// What is asked of every hand-in.
    #[must_use]
    pub fn review(&self) -> ReviewSettings {
        ReviewSettings {
            off: self.off.clone(),
            only: self.only.clone(),
            lightest: Some(self.lightest),
            ..ReviewSettings::default()
        }
    }
}

fn profile(
    player: &TaskPlayer,
    style: Option<Style>,
    thresholds: &BTreeMap<String, i64>,
) -> Result<Profile, String> {
    let own = match player {
        TaskPlayer::Shipped(shipped) => format!("extends = \"{}\"\n", shipped.name()),
        TaskPlayer::File { text: Some(text), .. } => text.clone(),
        TaskPlayer::File { name, text: None } => return Err(format!("the profile file {name} was not read")),
    };
    let mut table: toml::Table = own.parse().map_err(|error: toml::de::Error| error.message().to_owned())?;
    let changed = table.entry("thresholds").or_insert_with(|| toml::Value::Table(toml::Table::new()));
    if let Some(changed) = changed.as_table_mut() {
        changed.extend(thresholds.iter().map(|(name, value)| (name.clone(), toml::Value::Integer(*value))));
    }
    let profile = Profile::parse(&table.to_string()).map_err(|error| error.message)?;
    Ok(match style {
        Some(style) => profile.in_style(style),
        None => profile,
    })
}
