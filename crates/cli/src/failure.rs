//! Why a command could not do what it was asked, in one place and in people's words.

use std::fmt;
use std::path::PathBuf;

/// Why a command could not run.
#[derive(Debug)]
pub(crate) enum Failure {
    NoScores { named: Vec<PathBuf> },
    Read { path: PathBuf, why: String },
    Write { path: PathBuf, why: String },
    Profile { name: String, why: String },
    Bars { text: String, why: String },
    Part { asked: String, known: Vec<String> },
    Rule { asked: String, known: Vec<&'static str> },
    OneScore { count: usize },
    SameFile { path: PathBuf },
    Marks { why: String },
    Anchor { text: String, why: String },
    Ending { text: String, why: String },
}

impl fmt::Display for Failure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoScores { named } => {
                let named: Vec<String> = named.iter().map(|path| path.display().to_string()).collect();
                write!(
                    f,
                    "No score found in {}. Name a .musicxml, .xml or .mxl file, or a folder that holds some.",
                    named.join(", ")
                )
            }
            Self::Read { path, why } => write!(f, "{}: {why}", path.display()),
            Self::Write { path, why } => {
                write!(
                    f,
                    "{} could not be written: {why}. What was there before is still there.",
                    path.display()
                )
            }
            Self::Profile { name, why } => {
                write!(
                    f,
                    "Profile {name}: {why}\nShipped profiles: professional, amateur, student; or name a profile file."
                )
            }
            Self::Bars { text, why } => {
                write!(
                    f,
                    "--bars {text}: {why}. Write one printed bar number or two with a hyphen, such as 12 or 5-8."
                )
            }
            Self::Anchor { text, why } => write!(
                f,
                "--anchor \"{text}\": {why}. Write the part if there are several, bar/beat, and down, up, \
                 hook or retake, such as \"60/1 down\" or \"Viola 12/2.5 up\"."
            ),
            Self::Ending { text, why } => {
                write!(
                    f,
                    "--end \"{text}\": {why}. Write a printed bar number and down or up, such as \"8 down\"."
                )
            }
            Self::Part { asked, known } => {
                write!(f, "No part is called \"{asked}\". The score's bowed parts: {}.", known.join(", "))
            }
            Self::Rule { asked, known } => {
                write!(f, "No rule is called \"{asked}\". The rules: {}.", known.join(", "))
            }
            Self::OneScore { count } => {
                write!(f, "--marks writes one score, but {count} were named. Name one score at a time.")
            }
            Self::SameFile { path } => write!(
                f,
                "{} is the score itself. Name another file with --out: your score is not written over.",
                path.display()
            ),
            Self::Marks { why } => write!(f, "The marks could not be added: {why}"),
        }
    }
}
