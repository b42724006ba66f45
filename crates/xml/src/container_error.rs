//! What is wrong with a package, for people.

use std::fmt;

use crate::error::XmlError;

/// Why a package cannot be read. One clear error, never several.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum ContainerError {
    /// Not a zip archive.
    NotAPackage,
    /// Longer than [`max_bytes`](crate::Limits::max_bytes).
    TooLong {
        /// The limit, in bytes.
        limit: usize,
    },
    /// A zip archive that is cut short or broken.
    Damaged {
        /// What reading it ran into.
        detail: String,
    },
    /// More members than [`max_members`](crate::Limits::max_members).
    TooManyMembers {
        /// How many there are.
        count: usize,
        /// The limit.
        limit: usize,
    },
    /// A member unpacks to more than [`max_unpacked_bytes`](crate::Limits::max_unpacked_bytes).
    TooLarge {
        /// The path of the member.
        member: String,
        /// The limit, in bytes.
        limit: usize,
    },
    /// A member is packed more densely than [`max_ratio`](crate::Limits::max_ratio).
    TooDense {
        /// The path of the member.
        member: String,
        /// The limit.
        limit: usize,
    },
    /// A member is locked with a password.
    Encrypted {
        /// The path of the member.
        member: String,
    },
    /// A member is packed in a way that MusicXML does not use.
    UnknownPacking {
        /// The path of the member.
        member: String,
        /// The way.
        method: String,
    },
    /// No container file and no score.
    NoScore,
    /// No container file and several scores.
    SeveralScores {
        /// Their paths, the first few.
        names: Vec<String>,
    },
    /// The container file is not well-formed.
    BadContainer {
        /// Why.
        error: XmlError,
    },
    /// The container file names no score.
    NamesNoScore,
    /// The container file names a member that is not there.
    PointsNowhere {
        /// The path it names.
        path: String,
        /// Members that look like scores, the first few.
        scores: Vec<String>,
    },
    /// The container file names a file outside the package.
    LeavesPackage {
        /// The path it names.
        path: String,
    },
}

impl fmt::Display for ContainerError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        const EXPORT: &str = "export the score again, or unpack it and open the .musicxml file inside";
        const CONTAINER: &str = "META-INF/container.xml";
        match self {
            Self::NotAPackage => {
                write!(out, "this is not a package (.mxl); choose a .mxl, .musicxml or .xml file")
            }
            Self::TooLong { limit } => write!(
                out,
                "the package is longer than {limit} bytes; if it is a real score, raise the limit"
            ),
            Self::Damaged { detail } => {
                write!(out, "the package is damaged ({detail}); copy or export it again")
            }
            Self::TooManyMembers { count, limit } => write!(
                out,
                "the package has {count} members, more than the limit of {limit}; \
                 if it is a real score, raise the limit"
            ),
            Self::TooLarge { member, limit } => write!(
                out,
                "{member} in the package unpacks to more than the limit of {limit} bytes; \
                 if it is a real score, raise the limit"
            ),
            Self::TooDense { member, limit } => write!(
                out,
                "{member} in the package unpacks to more than {limit} times its packed size, which is \
                 the limit; if it is a real score, raise the limit"
            ),
            Self::Encrypted { member } => {
                write!(out, "{member} in the package is locked with a password; save it without one")
            }
            Self::UnknownPacking { member, method } => {
                write!(
                    out,
                    "{member} in the package is packed by the method {method}, which is not read; {EXPORT}"
                )
            }
            Self::NoScore => write!(out, "the package holds no score; {EXPORT}"),
            Self::SeveralScores { names } => write!(
                out,
                "the package has no {CONTAINER} and holds several scores ({}); unpack it and open one of them",
                names.join(", ")
            ),
            Self::BadContainer { error } => write!(out, "{CONTAINER} in the package cannot be read: {error}"),
            Self::NamesNoScore => write!(out, "{CONTAINER} in the package names no score; {EXPORT}"),
            Self::PointsNowhere { path, scores } if scores.is_empty() => {
                write!(out, "{CONTAINER} names \"{path}\", which is not in the package; {EXPORT}")
            }
            Self::PointsNowhere { path, scores } => write!(
                out,
                "{CONTAINER} names \"{path}\", which is not in the package (it holds {}); {EXPORT}",
                scores.join(", ")
            ),
            Self::LeavesPackage { path } => {
                write!(out, "{CONTAINER} names \"{path}\", which lies outside the package; {EXPORT}")
            }
        }
    }
}

impl std::error::Error for ContainerError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::BadContainer { error } => Some(error),
            _ => None,
        }
    }
}
