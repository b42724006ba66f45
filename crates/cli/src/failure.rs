//! Why a command could not do what it was asked, in one place and in people's words.

use std::fmt;
use std::path::PathBuf;

use arcata_files::FileError;
use arcata_score::places::Misread;

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
            Self::Read { path, why } | Self::Folder { path, why } => write!(f, "{}: {why}", path.display()),
            Self::File(error) => error.fmt(f),
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
            Self::Misread { option, text, misread } => write!(f, "{option} \"{text}\": {misread}"),
            Self::Movement { asked, there } => {
                write!(
                    f,
                    "--movement {asked}: there is no such movement. The file has: {}.",
                    there.join(", ")
                )
            }
            Self::House { name, why } => write!(f, "House profile {name}: {why}"),
            Self::PartNotMade { part, why } => write!(f, "The part {part} could not be made: {why}."),
            Self::Exists { paths } => {
                let paths: Vec<String> = paths.iter().map(|path| path.display().to_string()).collect();
                write!(
                    f,
                    "{} there already. Nothing was written; name another folder with --out, or say --replace.",
                    match paths.as_slice() {
                        [one] => format!("{one} is"),
                        [one, rest @ ..] => format!("{one} and {} more are", rest.len()),
                        [] => "Files are".to_owned(),
                    }
                )
            }
            Self::Aside { path, why } => {
                write!(f, "{}, {} Mend it, or review with --tell-all.", path.display(), ended(why))
            }
            Self::Task { path, why } => write!(f, "{}, {}", path.display(), ended(why)),
            Self::Key { path, why } => write!(f, "The key {}, {}", path.display(), ended(why)),
            Self::NoHandIns { path } => write!(
                f,
                "Nothing was handed in: {} holds no file. Name the folder or the .zip archive with the scores.",
                path.display()
            ),
            Self::AsideEntry { text, why } => write!(f, "Nothing was set aside: {text}: {}", ended(why)),
            Self::BarsOfSeveral { bars, movements, such_as } => {
                let many = if bars.contains('-') { "bars" } else { "bar" };
                let (last, others) =
                    movements.split_last().map_or(("", [].as_slice()), |(last, others)| (last, others));
                let which = format!("{} and {last}", others.join(", "));
                write!(
                    f,
                    "Nothing was set aside: {which} have {many} {bars}. Say which, such as --movement {such_as}."
                )
            }
            Self::NothingAside { score, what } => {
                write!(f, "Nothing was noted: no {what} there in {}.", score.display())
            }
            Self::Habits { path, why } => write!(f, "{}: {why}.", path.display()),
            Self::NoHabits { why } => write!(f, "Nothing was learned, and nothing written: {why}."),
            Self::GoThrough { why } => write!(f, "The page does not open: {}", ended(why)),
            Self::Workbench { why } => write!(f, "The workbench does not open: {why}."),
            Self::Picture { why } => write!(f, "No picture: {why}."),
            Self::Anchor { text, why } => write!(
                f,
                "--anchor \"{text}\": {} Write the part if there are several, bar/beat, and down, up, \
                 hook or retake, such as \"60/1 down\" or \"Viola 12/2½ up\".",
                ended(why)
            ),
            Self::Ending { text, why } => {
                write!(
                    f,
                    "--end \"{text}\": {} Write a printed bar number and down or up, such as \"8 down\".",
                    ended(why)
                )
            }
            Self::Part { asked, known } => {
                write!(f, "No part is called \"{asked}\". The score's bowed parts: {}.", known.join(", "))
            }
            Self::Rule { asked, known } => {
                write!(f, "No rule is called \"{asked}\". The rules: {}.", known.join(", "))
            }
            Self::OneScore { count } => {
                write!(f, "One score can be written, but {count} were named. Name one score at a time.")
            }
            Self::SameFile { path } => write!(
                f,
                "{} is read by this command. Name another file: it is not written over.",
                path.display()
            ),
            Self::ScoreName { path } => write!(
                f,
                "{}: the name does not say what kind of score file it shall be. End it in .musicxml or .xml for a \
                 plain score, in .mxl for a package. Nothing was written.",
                path.display()
            ),
            Self::Layer { path, why } => write!(f, "{}: {why}.", path.display()),
            Self::Sheet { why } => write!(f, "No change sheet was written: {why}"),
            Self::Stands { text, why } => write!(
                f,
                "--stands {text}: {why}. Write sections with their numbers, such as \"Vn1=7, Vn2=6, Va=5\"."
            ),
            Self::Marks { why } => write!(f, "The marks could not be changed: {why}"),
            Self::TwoInOne { path } => write!(
                f,
                "The report and the score would both go to {}. Name two files with --out and --write.",
                path.display()
            ),
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
