//! Why a command could not do what it was asked, in one place and in people's words.

use std::fmt;
use std::path::{Path, PathBuf};

use arcata_files::FileError;
use arcata_languages::{Argument, Saying, retold};
use arcata_score::places::Misread;

use crate::layer_words::{say, word};

/// Why a command could not run.
#[derive(Debug)]
pub(crate) enum Failure {
    NoScores {
        named: Vec<PathBuf>,
    },
    Read {
        path: PathBuf,
        why: String,
    },
    /// A file that was not read or written.
    File(FileError),
    Profile {
        name: String,
        why: String,
    },
    Bars {
        text: String,
        why: String,
    },
    Movement {
        asked: String,
        there: Vec<String>,
    },
    Part {
        asked: String,
        known: Vec<String>,
    },
    Rule {
        asked: String,
        known: Vec<&'static str>,
    },
    OneScore {
        count: usize,
    },
    SameFile {
        path: PathBuf,
    },
    /// A file for a score whose name does not say of which kind it is.
    ScoreName {
        path: PathBuf,
    },
    Marks {
        why: String,
    },
    Picture {
        why: String,
    },
    Breaks {
        path: PathBuf,
        why: String,
    },
    House {
        name: String,
        why: String,
    },
    PartNotMade {
        part: String,
        why: String,
    },
    Exists {
        paths: Vec<PathBuf>,
    },
    Sheet {
        why: String,
    },
    Stands {
        text: String,
        why: String,
    },
    Folder {
        path: PathBuf,
        why: String,
    },
    Layer {
        path: PathBuf,
        why: String,
    },
    TwoInOne {
        path: PathBuf,
    },
    /// No place at all.
    Misread {
        option: &'static str,
        text: String,
        misread: Misread,
    },
    Anchor {
        text: String,
        why: String,
    },
    Ending {
        text: String,
        why: String,
    },
    Aside {
        path: PathBuf,
        why: String,
    },
    AsideEntry {
        text: String,
        why: String,
    },
    /// A task that cannot be read, or what is given with it.
    Task {
        path: PathBuf,
        why: String,
    },
    /// The key of a class.
    Key {
        path: PathBuf,
        why: String,
    },
    /// Nothing was handed in.
    NoHandIns {
        path: PathBuf,
    },
    /// Bars by number that several movements have.
    BarsOfSeveral {
        bars: String,
        movements: Vec<String>,
        such_as: String,
    },
    /// A file of habits that cannot be read, or does not go with what is asked.
    Habits {
        path: PathBuf,
        why: String,
    },
    /// Habits that were not learned.
    NoHabits {
        why: String,
    },
    /// The workbench does not open.
    /// The page on which a class is gone through.
    GoThrough {
        why: String,
    },
    Workbench {
        why: String,
    },
    NothingAside {
        score: PathBuf,
        what: &'static str,
    },
}

impl Failure {
    /// What went wrong and what to do.
    fn saying(&self) -> Saying {
        let named = |path: &Path| path.display().to_string();
        let of = |key: &'static str, path: &Path, why: &str| {
            Saying::new(key).quoting("of", named(path)).quoting("why", why)
        };
        let because = |key: &'static str, why: &str| Saying::new(key).quoting("why", why);
        match self {
            Self::NoScores { named } => {
                let named: Vec<String> = named.iter().map(|path| path.display().to_string()).collect();
                Saying::new("failure-no-scores").quoting("where", named.join(", "))
            }
            Self::Read { path, why } | Self::Folder { path, why } => of("failure-of", path, why),
            Self::File(error) => retold(&error.to_string()),
            Self::Profile { name, why } => because("failure-profile", why).quoting("name", name),
            Self::House { name, why } => because("failure-house", why).quoting("name", name),
            Self::PartNotMade { part, why } => because("failure-part-not-made", why).quoting("part", part),
            Self::Exists { paths } => exists(paths),
            Self::Aside { path, why } => of("failure-aside-file", path, &ended(why)),
            Self::Task { path, why } | Self::Breaks { path, why } => of("failure-in", path, &ended(why)),
            Self::Key { path, why } => of("failure-key", path, &ended(why)),
            Self::NoHandIns { path } => Saying::new("failure-no-hand-ins").quoting("path", named(path)),
            Self::Habits { path, why } | Self::Layer { path, why } => of("failure-of-ended", path, why),
            Self::NoHabits { why } => because("failure-no-habits", why),
            Self::GoThrough { why } => because("failure-go-through", &ended(why)),
            Self::Workbench { why } => because("failure-workbench", why),
            Self::Picture { why } => because("failure-picture", why),
            Self::OneScore { count } => Saying::new("failure-one-score").with("count", *count),
            Self::SameFile { path } => Saying::new("failure-same-file").quoting("path", named(path)),
            Self::ScoreName { path } => Saying::new("failure-score-name").quoting("path", named(path)),
            Self::Sheet { why } => because("failure-sheet", why),
            Self::Marks { why } => because("failure-marks", why),
            Self::TwoInOne { path } => Saying::new("failure-two-in-one").quoting("path", named(path)),
            typed => typed.of_typed(),
        }
    }

    /// What is wrong with something that was typed.
    fn of_typed(&self) -> Saying {
        let typed = |key: &'static str, text: &str, why: &str| {
            Saying::new(key).quoting("text", text).quoting("why", why)
        };
        let asked = |key: &'static str, asked: &str, known: &[String]| {
            Saying::new(key).quoting("asked", asked).quoting("known", known.join(", "))
        };
        match self {
            Self::Bars { text, why } => typed("failure-bars", text, why),
            Self::Misread { option, text, misread } => Saying::new("failure-typed")
                .quoting("option", *option)
                .quoting("text", text)
                .with("why", retold(&misread.to_string())),
            Self::Movement { asked, there } => {
                Saying::new("failure-movement").quoting("asked", asked).quoting("there", there.join(", "))
            }
            Self::AsideEntry { text, why } => typed("failure-aside", text, &ended(why)),
            Self::BarsOfSeveral { bars, movements, such_as } => {
                let movements = movements.iter().map(|movement| Argument::Text(movement.clone())).collect();
                Saying::new("failure-aside-bars-of-several")
                    .with("movements", Argument::List(movements))
                    .choosing("many", if bars.contains('-') { "yes" } else { "no" })
                    .quoting("bars", bars)
                    .quoting("such", such_as)
            }
            Self::NothingAside { score, what } => Saying::new("failure-nothing-aside")
                .choosing("what", what)
                .quoting("score", score.display().to_string()),
            Self::Anchor { text, why } => typed("failure-anchor", text, &ended(why)),
            Self::Ending { text, why } => typed("failure-ending", text, &ended(why)),
            Self::Part { asked: name, known } => asked("failure-part", name, known),
            Self::Rule { asked: name, known } => {
                let known: Vec<String> = known.iter().map(|rule| (*rule).to_owned()).collect();
                asked("failure-rule", name, &known)
            }
            Self::Stands { text, why } => typed("failure-stands", text, why),
            // Said above.
            other => Saying::as_it_is(format!("{other:?}")),
        }
    }
}

/// Files that are there already.
fn exists(paths: &[PathBuf]) -> Saying {
    let first = paths.first().map(|path| path.display().to_string()).unwrap_or_default();
    match paths.len() {
        0 | 1 => Saying::new("failure-exists").quoting("path", first),
        several => Saying::new("failure-exist").quoting("path", first).with("more", several - 1),
    }
}

impl fmt::Display for Failure {
    /// In the language of the run.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&say(&self.saying()))?;
        match self {
            Self::Profile { .. } => write!(f, "\n{}", word("failure-profiles")),
            _ => Ok(()),
        }
    }
}

/// A sentence with its end, where it has none yet.
fn ended(sentence: &str) -> String {
    format!("{sentence}{}", if sentence.ends_with(['.', '?']) { "" } else { "." })
}

impl From<FileError> for Failure {
    fn from(error: FileError) -> Self {
        Self::File(error)
    }
}
