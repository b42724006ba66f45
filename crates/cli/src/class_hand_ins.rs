//! What was handed in: the files of a folder or of an archive, and whose they are.
#![expect(clippy::disallowed_methods, reason = "the command line is where folders and archives are opened")]

use std::collections::BTreeMap;
use std::fs::File;
use std::io::Read as _;
use std::path::{Component, Path, PathBuf};

use arcata_class::{NameOf, StudentNaming};
use arcata_xml::Limits;
use zip::ZipArchive;

use crate::failure::Failure;
use crate::files;

/// Archives with more members are refused: nobody hands in so much.
const MOST_MEMBERS: usize = 10_000;
/// A hand-in is at most so large, packed or not: more than the largest orchestral movement measured (26.5 MB), and little enough
/// for several at once.
const LARGEST: usize = 32 << 20;
/// What lies in a class's folder and is no hand-in.
const NO_HAND_INS: [&str; 6] = ["toml", "txt", "md", "html", "csv", "json"];

/// One file that was handed in.
#[derive(Debug)]
pub(crate) struct HandedIn {
    /// Whose it is.
    pub(crate) name: String,
    /// What it is called, for the teacher.
    pub(crate) file: String,
    from: From,
}

#[derive(Debug)]
enum From {
    File(PathBuf),
    Member { archive: PathBuf, index: usize },
}

/// What parts the fields of a hand-in that is told to another process; no path has it.
const PARTED: char = '\0';

impl HandedIn {
    /// All of it in one text; none where its path is no text.
    pub(crate) fn told(&self) -> Option<String> {
        let (path, index) = match &self.from {
            From::File(path) => (path, String::new()),
            From::Member { archive, index } => (archive, index.to_string()),
        };
        let fields = [self.name.as_str(), &self.file, path.to_str()?, &index];
        let whole = fields.iter().all(|field| !field.contains(PARTED));
        whole.then(|| fields.join("\0"))
    }

    /// The hand-in that a text tells of.
    pub(crate) fn from_told(told: &str) -> Option<Self> {
        let fields: Vec<&str> = told.split(PARTED).collect();
        let [name, file, path, index] = fields.as_slice() else { return None };
        let path = PathBuf::from(path);
        let from = if index.is_empty() {
            From::File(path)
        } else {
            From::Member { archive: path, index: index.parse().ok()? }
        };
        Some(Self { name: (*name).to_owned(), file: (*file).to_owned(), from })
    }

    /// Its bytes; in words why there are none.
    pub(crate) fn bytes(&self) -> Result<Vec<u8>, String> {
        let most = LARGEST;
        match &self.from {
            From::File(path) => files::read(path, most),
            From::Member { archive, index } => {
                let mut archive = open(archive)?;
                let member = archive.by_index(*index).map_err(|error| error.to_string())?;
                let mut bytes = Vec::new();
                let limit = u64::try_from(most).unwrap_or(u64::MAX);
                member
                    .take(limit.saturating_add(1))
                    .read_to_end(&mut bytes)
                    .map_err(|error| error.to_string())?;
                if bytes.len() > most {
                    return Err(format!("it is larger than the limit of {most} bytes"));
                }
                Ok(bytes)
            }
        }
    }
}

/// What hand-ins are read within.
pub(crate) fn limits() -> Limits {
    Limits { max_bytes: LARGEST, max_unpacked_bytes: LARGEST, ..Limits::default() }
}

/// All that was handed in, in order of file names. Two files of one name are two hand-ins: the second is told by a number.
/// `composer` says whom a score names, where the task asks for that.
/// What lies in the folder of the pages was made and not handed in.
pub(crate) fn handed_in(
    (folder, pages): (&Path, &Path),
    naming: &StudentNaming,
    composer: impl Fn(Vec<u8>) -> Option<String>,
) -> Result<Vec<HandedIn>, Failure> {
    let mut all: Vec<(PathBuf, From)> = if folder.is_dir() {
        let mut paths = Vec::new();
        search(folder, &mut paths)?;
        let pages = pages.canonicalize().ok();
        let made = |path: &PathBuf| {
            pages.as_ref().zip(path.canonicalize().ok()).is_some_and(|(pages, path)| path.starts_with(pages))
        };
        paths.retain(|path| !made(path));
        let within = |path: &PathBuf| path.strip_prefix(folder).unwrap_or(path).to_owned();
        paths.into_iter().map(|path| (within(&path), From::File(path))).collect()
    } else {
        members(folder)?
    };
    all.retain(|(path, _)| is_hand_in(path));
    all.sort_by(|(one, _), (other, _)| one.cmp(other));
    if all.is_empty() {
        return Err(Failure::NoHandIns { path: folder.to_owned() });
    }
    let mut taken: BTreeMap<String, usize> = BTreeMap::new();
    let named = |(path, from): (PathBuf, From)| {
        let mut hand_in = HandedIn { name: String::new(), file: path.display().to_string(), from };
        let name = match naming.of {
            NameOf::File => None,
            NameOf::Folder => {
                path.parent().and_then(Path::file_name).map(|name| name.to_string_lossy().into_owned())
            }
            NameOf::Score => hand_in.bytes().ok().and_then(&composer),
        };
        let stem = || path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let name = cut(&name.filter(|name| !name.trim().is_empty()).unwrap_or_else(stem), naming);
        let count = taken.entry(name.clone()).or_default();
        *count += 1;
        hand_in.name = if *count == 1 { name } else { format!("{name} ({count})") };
        hand_in
    };
    Ok(all.into_iter().map(named).collect())
}

/// A name without what the task says comes after it.
fn cut(name: &str, naming: &StudentNaming) -> String {
    let before =
        naming.before.as_deref().and_then(|before| name.split_once(before)).map(|(name, _)| name.trim());
    before.filter(|before| !before.is_empty()).unwrap_or(name.trim()).to_owned()
}

fn is_hand_in(path: &Path) -> bool {
    let ending = path.extension().and_then(|ending| ending.to_str()).unwrap_or_default().to_ascii_lowercase();
    let is_hidden = |part: Component<'_>| match part {
        Component::Normal(name) => name.to_string_lossy().starts_with(['.', '_']),
        _ => false,
    };
    let hidden = path.components().any(is_hidden);
    !hidden && !NO_HAND_INS.contains(&ending.as_str())
}

/// The files of a folder and of those in it.
fn search(folder: &Path, found: &mut Vec<PathBuf>) -> Result<(), Failure> {
    let failed = |error: std::io::Error| Failure::Read {
        path: folder.to_owned(),
        why: files::told(&error.to_string()),
    };
    for entry in std::fs::read_dir(folder).map_err(failed)? {
        let path = entry.map_err(failed)?.path();
        // A link to a folder could lead in a circle.
        if path.is_dir() && !path.is_symlink() {
            search(&path, found)?;
        } else if path.is_file() {
            found.push(path);
        }
    }
    Ok(())
}

fn open(archive: &Path) -> Result<ZipArchive<File>, String> {
    let file = File::open(archive).map_err(|error| error.to_string())?;
    ZipArchive::new(file).map_err(|error| format!("this is neither a folder nor a .zip archive ({error})"))
}

/// The files of an archive. They are never unpacked: their names only say whose they are.
fn members(path: &Path) -> Result<Vec<(PathBuf, From)>, Failure> {
    let failed = |why: String| Failure::Read { path: path.to_owned(), why: files::told(&why) };
    let archive = open(path).map_err(failed)?;
    if archive.len() > MOST_MEMBERS {
        return Err(failed(format!("more than {MOST_MEMBERS} files are in this archive")));
    }
    let member = |index: usize| {
        let name = archive.name_for_index(index)?.ok()?;
        let is_file = !name.ends_with('/') && !name.starts_with("__MACOSX");
        is_file.then(|| (PathBuf::from(name.as_ref()), From::Member { archive: path.to_owned(), index }))
    };
    Ok((0..archive.len()).filter_map(member).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_end_where_the_task_says() {
        let naming = StudentNaming { of: NameOf::File, before: Some(" - ".to_owned()) };
        assert_eq!(cut("Odile Marrowfen - task 2", &naming), "Odile Marrowfen");
        assert_eq!(cut(" - task 2", &naming), "- task 2");
    }

    #[test]
    fn what_is_told_to_another_process_is_the_same_hand_in() {
        let of = |from: From| HandedIn { name: "Ut".to_owned(), file: "a/Ut - 1.mxl".to_owned(), from };
        for hand_in in [
            of(From::File(PathBuf::from("/x y/Ut - 1.mxl"))),
            of(From::Member { archive: PathBuf::from("all.zip"), index: 7 }),
        ] {
            let told = hand_in.told().expect("plain paths");
            assert_eq!(format!("{:?}", HandedIn::from_told(&told)), format!("{:?}", Some(hand_in)));
        }
        assert!(HandedIn::from_told("a\0b").is_none());
        assert!(HandedIn { name: "a\0b".to_owned(), ..of(From::File(PathBuf::new())) }.told().is_none());
    }

    #[test]
    fn settings_and_what_is_hidden_are_no_hand_ins() {
        assert!(is_hand_in(Path::new("a/b.musicxml")) && is_hand_in(Path::new("b.pdf")));
        assert!(!is_hand_in(Path::new("task.toml")) && !is_hand_in(Path::new(".a/b.xml")));
    }
}
