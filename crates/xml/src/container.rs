//! Packages: a score and what belongs to it in one zip archive (.mxl).
//!
//! `META-INF/container.xml` names the score inside (MusicXML 4.0, "Compressed .mxl files"). Nothing is
//! ever unpacked to a disk, and what is unpacked to memory is counted while it comes out, whatever the
//! archive says about itself.

use std::io::{Cursor, Read as _, Write as _};

use zip::read::ZipArchive;
use zip::result::ZipError;
use zip::write::{SimpleFileOptions, ZipWriter};
use zip::{CompressionMethod, DateTime};

use crate::container_error::ContainerError;
use crate::document::Document;
use crate::error::shown;
use crate::limits::Limits;

/// Where a package names its score.
const CONTAINER: &str = "META-INF/container.xml";

/// Where a package names its own type.
const MIMETYPE: &str = "mimetype";

/// The type of a package.
const PACKAGE_TYPE: &str = "application/vnd.recordare.musicxml";

/// Longest container file: it holds a handful of lines.
const LONGEST_CONTAINER: usize = 1 << 20;

/// A member may be packed as densely as it likes up to this size: little harm fits into it.
const ALWAYS_UNPACKED: usize = 1 << 20;

/// One member of a package.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PackageMember {
    /// Its path inside the package.
    pub name: String,
    /// Bytes it takes in the package, as the package says.
    pub packed: u64,
    /// Bytes it unpacks to, as the package says.
    pub unpacked: u64,
}

/// Something odd about a package that does not keep it from being read.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum PackageRemark {
    /// No container file; the only score inside was taken.
    NoContainer {
        /// Its path.
        score: String,
    },
    /// The container file gives the score a type that is not that of MusicXML.
    OtherMediaType {
        /// The type it gives.
        media_type: String,
    },
}

impl std::fmt::Display for PackageRemark {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::NoContainer { score } => {
                write!(out, "the package has no {CONTAINER}; {score}, the only score inside, was read")
            }
            Self::OtherMediaType { media_type } => write!(
                out,
                "{CONTAINER} calls the score \"{media_type}\", not \"{MEDIA_TYPE}\"; it was read all the same"
            ),
        }
    }
}

/// A score in a zip archive.
pub struct Package {
    shell: PackageShell,
    score: Vec<u8>,
}

/// A package without its unpacked score.
pub(crate) struct PackageShell {
    archive: Vec<u8>,
    members: Vec<PackageMember>,
    score: usize,
    remarks: Vec<PackageRemark>,
}

impl std::fmt::Debug for Package {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        self.shell.fmt(out)
    }
}

impl std::fmt::Debug for PackageShell {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.debug_struct("Package").field("members", &self.members).field("score", &self.score).finish()
    }
}

impl Package {
    /// Opens a package and unpacks its score.
    ///
    /// # Errors
    ///
    /// One [`ContainerError`] for anything that is no package, is damaged, does not say which member is
    /// the score, or passes a limit.
    pub fn open(bytes: Vec<u8>, limits: &Limits) -> Result<Package, ContainerError> {
        if bytes.len() > limits.max_bytes {
            return Err(ContainerError::TooLong { limit: limits.max_bytes });
        }
        let mut archive = open_archive(&bytes)?;
        let members = list_members(&mut archive, limits)?;
        let mut remarks = Vec::new();
        let score = find_score(&mut archive, &members, limits, &mut remarks)?;
        let unpacked = unpack(&mut archive, &members, score, limits)?;
        Ok(Package { shell: PackageShell { archive: bytes, members, score, remarks }, score: unpacked })
    }

    /// The bytes of the score.
    #[must_use]
    pub fn score_bytes(&self) -> &[u8] {
        &self.score
    }

    /// The path of the score inside the package.
    #[must_use]
    pub fn score_name(&self) -> &str {
        self.shell.score_name()
    }

    /// All members in their order.
    #[must_use]
    pub fn members(&self) -> &[PackageMember] {
        &self.shell.members
    }

    /// What is odd about the package.
    #[must_use]
    pub fn remarks(&self) -> &[PackageRemark] {
        &self.shell.remarks
    }

    /// The package with another score in it; every other member keeps its bytes, packed as they are.
    ///
    /// With the score unchanged the outcome is the package as it was given, byte for byte.
    ///
    /// # Errors
    ///
    /// An archive that cannot be copied, which opening it would have shown.
    pub fn write_with_score(&self, score: &[u8]) -> Result<Vec<u8>, ContainerError> {
        if score == self.score {
            return Ok(self.shell.archive.clone());
        }
        self.shell.write_with_score(score)
    }

    /// A new package around a score, which is called `member` in it: first the type of the file, unpacked, so that it is told by
    /// its first bytes; then the container file, then the score (MusicXML 4.0, "Compressed .mxl files", container.xsd). It
    /// bears no time: the same score gives the same bytes.
    ///
    /// # Errors
    ///
    /// A name that is no path inside a package, or a score too large for an archive.
    pub fn around(member: &str, score: &[u8]) -> Result<Vec<u8>, ContainerError> {
        let member = inside(member)?;
        let container = format!(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<container>\n  <rootfiles>\n    \
             <rootfile full-path=\"{}\" media-type=\"{MEDIA_TYPE}\"/>\n  </rootfiles>\n</container>\n",
            crate::escape(&member)
        );
        let packed = SimpleFileOptions::default()
            .last_modified_time(DateTime::default())
            .compression_method(CompressionMethod::Deflated);
        let stored = packed.compression_method(CompressionMethod::Stored);
        let mut writer = ZipWriter::new(Cursor::new(Vec::with_capacity(score.len() / 8)));
        for (name, options, bytes) in [
            (MIMETYPE, stored, PACKAGE_TYPE.as_bytes()),
            (CONTAINER, packed, container.as_bytes()),
            (member.as_str(), packed, score),
        ] {
            writer.start_file(name, options).map_err(damaged)?;
            writer.write_all(bytes).map_err(|error| damaged(error.into()))?;
        }
        Ok(writer.finish().map_err(damaged)?.into_inner())
    }

    pub(crate) fn into_parts(self) -> (PackageShell, Vec<u8>) {
        (self.shell, self.score)
    }
}

impl PackageShell {
    pub(crate) fn archive(&self) -> &[u8] {
        &self.archive
    }

    pub(crate) fn score_name(&self) -> &str {
        self.members.get(self.score).map_or("", |member| &member.name)
    }

    pub(crate) fn remarks(&self) -> &[PackageRemark] {
        &self.remarks
    }

    pub(crate) fn other_members(&self) -> Vec<&str> {
        let members = self.members.iter().enumerate().filter(|(index, _)| *index != self.score);
        let names = members.map(|(_, member)| member.name.as_str());
        // A folder is a name that ends so.
        names.filter(|name| ![CONTAINER, MIMETYPE].contains(name) && !name.ends_with('/')).collect()
    }

    pub(crate) fn write_with_score(&self, score: &[u8]) -> Result<Vec<u8>, ContainerError> {
        let mut archive = open_archive(&self.archive)?;
        let room = self.archive.len() + score.len() / 8;
        let mut writer = ZipWriter::new(Cursor::new(Vec::with_capacity(room)));
        writer.set_raw_comment(archive.comment().into()).map_err(damaged)?;
        for index in 0..archive.len() {
            let member = archive.by_index_raw(index).map_err(damaged)?;
            if index != self.score {
                writer.raw_copy_file(member).map_err(damaged)?;
                continue;
            }
            // Its time stays too: nothing here reads a clock.
            let options = member.options().into_full_options().with_file_comment(member.comment());
            drop(member);
            writer.start_file(self.score_name(), options).map_err(damaged)?;
            writer.write_all(score).map_err(|error| damaged(error.into()))?;
        }
        Ok(writer.finish().map_err(damaged)?.into_inner())
    }
}

type Archive<'b> = ZipArchive<Cursor<&'b [u8]>>;

fn damaged(error: ZipError) -> ContainerError {
    ContainerError::Damaged { detail: error.to_string() }
}

fn open_archive(bytes: &[u8]) -> Result<Archive<'_>, ContainerError> {
    if !bytes.starts_with(b"PK") {
        return Err(ContainerError::NotAPackage);
    }
    ZipArchive::new(Cursor::new(bytes)).map_err(damaged)
}

fn list_members(archive: &mut Archive<'_>, limits: &Limits) -> Result<Vec<PackageMember>, ContainerError> {
    if archive.len() > limits.max_members {
        return Err(ContainerError::TooManyMembers { count: archive.len(), limit: limits.max_members });
    }
    if archive.has_duplicate_names() {
        // Which of the two is meant cannot be known, and a copy would keep only one of them.
        return Err(ContainerError::Damaged { detail: "two members have the same name".to_owned() });
    }
    (0..archive.len())
        .map(|index| {
            let entry = archive.by_index_data(index).map_err(damaged)?;
            let name = String::from_utf8_lossy(entry.name_raw());
            let name = entry.name().map_or(name.clone(), |decoded| decoded).into_owned();
            Ok(PackageMember { name, packed: entry.compressed_size(), unpacked: entry.size() })
        })
        .collect()
}

fn find_score(
    archive: &mut Archive<'_>,
    members: &[PackageMember],
    limits: &Limits,
    remarks: &mut Vec<PackageRemark>,
) -> Result<usize, ContainerError> {
    let Some(container) = position(members, CONTAINER) else {
        let score = only_score(members)?;
        remarks.push(PackageRemark::NoContainer { score: members[score].name.clone() });
        return Ok(score);
    };
    let short =
        Limits { max_unpacked_bytes: LONGEST_CONTAINER.min(limits.max_unpacked_bytes), ..limits.clone() };
    let bytes = unpack(archive, members, container, &short)?;
    let container = Document::parse(bytes, &short).map_err(|error| ContainerError::BadContainer { error })?;
    let path = root_file(&container, remarks)?;
    let name = inside(&path)?;
    match position(members, &name) {
        Some(score) => Ok(score),
        None => {
            let scores = members.iter().filter(|member| looks_like_score(&member.name));
            let scores = scores.take(4).map(|member| shown(&member.name)).collect();
            Err(ContainerError::PointsNowhere { path: shown(&path), scores })
        }
    }
}

fn position(members: &[PackageMember], name: &str) -> Option<usize> {
    members.iter().position(|member| member.name == name)
}

/// The type that the container file should give a score.
const MEDIA_TYPE: &str = "application/vnd.recordare.musicxml+xml";

/// The path of the score: the first root file that is MusicXML or has no type, else the first that
/// looks like a score.
fn root_file(container: &Document, remarks: &mut Vec<PackageRemark>) -> Result<String, ContainerError> {
    let mut second_best = None;
    for element in container.elements() {
        // The container file may put its names into a namespace, with a prefix.
        if element.name().rsplit(':').next() != Some("rootfile") {
            continue;
        }
        let Some(path) = element.attribute("full-path") else { continue };
        match element.attribute("media-type") {
            Some(media_type) if media_type != MEDIA_TYPE => {
                if second_best.is_none() && looks_like_score(&path) {
                    second_best = Some((path.into_owned(), media_type.into_owned()));
                }
            }
            _ => return Ok(path.into_owned()),
        }
    }
    let (path, media_type) = second_best.ok_or(ContainerError::NamesNoScore)?;
    remarks.push(PackageRemark::OtherMediaType { media_type: shown(&media_type) });
    Ok(path)
}

/// The name of the member that a path points to, if the path stays inside the package.
fn inside(path: &str) -> Result<String, ContainerError> {
    let leaves = path.contains('\\')
        || path.starts_with('/')
        || path.split('/').any(|step| step == ".." || step.contains(':'));
    if leaves {
        return Err(ContainerError::LeavesPackage { path: shown(path) });
    }
    let steps: Vec<&str> = path.split('/').filter(|step| *step != ".").collect();
    Ok(steps.join("/"))
}

fn only_score(members: &[PackageMember]) -> Result<usize, ContainerError> {
    let scores: Vec<usize> =
        (0..members.len()).filter(|&index| looks_like_score(&members[index].name)).collect();
    match scores.as_slice() {
        [] => Err(ContainerError::NoScore),
        [score] => Ok(*score),
        several => {
            let names = several.iter().take(4).map(|&index| shown(&members[index].name)).collect();
            Err(ContainerError::SeveralScores { names })
        }
    }
}

fn looks_like_score(name: &str) -> bool {
    let lower = name.to_ascii_lowercase();
    let is_score = lower.ends_with(".musicxml") || lower.ends_with(".xml");
    // The second folder holds what some archivers note about each file, under the same name.
    is_score && !lower.starts_with("meta-inf/") && !lower.starts_with("__macosx/")
}

fn unpack(
    archive: &mut Archive<'_>,
    members: &[PackageMember],
    index: usize,
    limits: &Limits,
) -> Result<Vec<u8>, ContainerError> {
    let name = || members.get(index).map_or_else(String::new, |member| shown(&member.name));
    let entry = archive.by_index_data(index).map_err(damaged)?;
    if entry.encrypted() {
        return Err(ContainerError::Encrypted { member: name() });
    }
    if !matches!(entry.compression(), CompressionMethod::Stored | CompressionMethod::Deflated) {
        let method = entry.compression().to_string();
        return Err(ContainerError::UnknownPacking { member: name(), method });
    }
    // No member takes more room than the archive, whatever it says.
    let packed = entry.compressed_size().min(archive.clone().into_inner().get_ref().len() as u64) as usize;
    let dense = packed.saturating_mul(limits.max_ratio).max(ALWAYS_UNPACKED);
    let promised = entry.size().min((64 << 20).min(limits.max_unpacked_bytes) as u64) as usize;
    let mut file = archive.by_index(index).map_err(damaged)?;
    let mut bytes = Vec::with_capacity(promised.min(dense));
    let mut block = vec![0; 64 << 10];
    loop {
        let count = file
            .read(&mut block)
            .map_err(|error| ContainerError::Damaged { detail: format!("{}: {error}", name()) })?;
        if count == 0 {
            return Ok(bytes);
        }
        if bytes.len() + count > limits.max_unpacked_bytes {
            return Err(ContainerError::TooLarge { member: name(), limit: limits.max_unpacked_bytes });
        }
        if bytes.len() + count > dense {
            return Err(ContainerError::TooDense { member: name(), limit: limits.max_ratio });
        }
        bytes.extend_from_slice(&block[..count]);
    }
}
