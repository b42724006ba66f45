//! The index: what was read from files, in an SQLite file of the user's cache folder.

use std::path::{Path, PathBuf};
use std::time::Duration;

use arcata_report::LibraryView;
use arcata_report::library_view::{LayerRow, LibraryTrouble, WorkRow};
use arcata_score::words::folded_words;
use rusqlite::{Connection, OptionalExtension as _, Row, params};
use rustc_hash::FxHashMap;

use crate::own_folder;

use super::look::Looked;
use super::scan::SeenFile;
use super::{LibraryQuery, Memory};

/// Counted up whenever the tables or what is read from files changes: an older index is made anew.
const VERSION: i64 = 3;

/// A file that was changed so shortly before it was read may change again within the same tick of the
/// file system's clock; it is read again next time.
///
/// Reason: file systems keep times as coarsely as 2 s (FAT). Source: common knowledge of file systems.
const TICK: i64 = 2_000_000_000;

const TABLES: &str = "\
CREATE TABLE IF NOT EXISTS files (
    file TEXT PRIMARY KEY NOT NULL, kind TEXT NOT NULL, size INTEGER NOT NULL, changed INTEGER NOT NULL,
    looked INTEGER NOT NULL, hash TEXT NOT NULL, title TEXT NOT NULL, composer TEXT NOT NULL, work TEXT NOT NULL,
    owner TEXT NOT NULL, ensemble TEXT NOT NULL, date TEXT NOT NULL, entries INTEGER NOT NULL,
    conflicts INTEGER NOT NULL, music TEXT NOT NULL, problem TEXT NOT NULL, work_plain TEXT NOT NULL,
    owner_plain TEXT NOT NULL, ensemble_plain TEXT NOT NULL
) WITHOUT ROWID;
CREATE INDEX IF NOT EXISTS works ON files (music, file) WHERE kind = 'work';
";

/// The index of one folder.
pub(super) struct Index {
    connection: Connection,
}

/// What the index remembers of the files, in order of their names.
#[derive(Default)]
pub(super) struct KnownFiles {
    /// The names, one behind the other.
    names: String,
    files: Vec<Remembered>,
}

struct Remembered {
    /// Where its name ends.
    name_end: usize,
    size: i64,
    changed: i64,
    looked: i64,
}

impl KnownFiles {
    fn iter(&self) -> impl Iterator<Item = (&str, &Remembered)> {
        let mut start = 0;
        self.files.iter().map(move |file| {
            let name = &self.names[start..file.name_end];
            start = file.name_end;
            (name, file)
        })
    }

    /// Goes along the files that are there, in order of their names: those that must be read again, and the
    /// names of those that are gone.
    pub(super) fn against<'s>(&self, there: &'s [SeenFile]) -> (Vec<&'s SeenFile>, Vec<String>) {
        let (mut stale, mut gone) = (Vec::new(), Vec::new());
        let mut known = self.iter().peekable();
        for seen in there {
            while let Some((name, _)) = known.next_if(|(name, _)| *name < seen.file.as_str()) {
                gone.push(name.to_owned());
            }
            let same = known.next_if(|(name, _)| *name == seen.file);
            if !same.is_some_and(|(_, known)| known.holds_for(seen)) {
                stale.push(seen);
            }
        }
        gone.extend(known.map(|(name, _)| name.to_owned()));
        (stale, gone)
    }
}

impl Remembered {
    /// Whether what was read still holds.
    fn holds_for(&self, seen: &SeenFile) -> bool {
        (self.size, self.changed) == (seen.size, seen.changed)
            && self.looked.saturating_sub(self.changed) > TICK
    }
}

/// An error of the index in plain words.
pub(super) fn said(error: &rusqlite::Error) -> String {
    format!("the index of the folder cannot be used ({error}); run again with --rebuild")
}

impl Index {
    /// The index of a folder, empty when there is none, when it cannot be used, or when it is to be made
    /// anew. Where no cache folder can be written, it lives in memory only.
    pub(super) fn open(root: &Path, memory: Memory) -> rusqlite::Result<Self> {
        let Some(path) = place(root) else { return Self::prepared(Connection::open_in_memory()?) };
        let at = |path: &Path| Self::prepared(Connection::open(path)?);
        if memory == Memory::Forgotten {
            forget(&path);
        }
        at(&path)
            .or_else(|_| {
                // Broken, or of another version: it holds nothing that the files do not.
                forget(&path);
                at(&path)
            })
            .or_else(|_| Self::prepared(Connection::open_in_memory()?))
    }

    fn prepared(connection: Connection) -> rusqlite::Result<Self> {
        const PATIENCE: Duration = Duration::from_secs(5);
        connection.busy_timeout(PATIENCE)?;
        connection.execute_batch("PRAGMA mmap_size = 67108864;")?;
        let version: i64 = connection.query_row("PRAGMA user_version", [], |row| row.get(0))?;
        if version != VERSION {
            // What is lost when the machine fails is read from the files again.
            connection.execute_batch(&format!(
                "PRAGMA journal_mode = WAL; PRAGMA synchronous = OFF; DROP TABLE IF EXISTS files; {TABLES} \
                 PRAGMA user_version = {VERSION};"
            ))?;
        }
        Ok(Self { connection })
    }

    /// The fingerprint of what was read from a file.
    pub(super) fn hash(&self, file: &str) -> rusqlite::Result<Option<String>> {
        let mut asked = self.connection.prepare_cached("SELECT hash FROM files WHERE file = ?")?;
        asked.query_row([file], |row| row.get(0)).optional()
    }

    /// Remembers what was read, and forgets what is gone: all of it or nothing.
    pub(super) fn update(
        &mut self,
        read: &[(&SeenFile, Looked)],
        gone: &[String],
        now: i64,
    ) -> rusqlite::Result<()> {
        let changes = self.connection.transaction()?;
        {
            let mut forget = changes.prepare("DELETE FROM files WHERE file = ?")?;
            for file in gone {
                forget.execute([file])?;
            }
            let mut touch =
                changes.prepare("UPDATE files SET size = ?2, changed = ?3, looked = ?4 WHERE file = ?1")?;
            let mut put = changes.prepare(
                "INSERT OR REPLACE INTO files VALUES \
                 (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18, ?19)",
            )?;
            for (seen, looked) in read {
                if *looked == Looked::Same {
                    touch.execute(params![seen.file, seen.size, seen.changed, now])?;
                } else {
                    let facts = FileFacts::of(looked);
                    put.execute(params![
                        seen.file,
                        facts.kind,
                        seen.size,
                        seen.changed,
                        now,
                        facts.hash,
                        facts.title,
                        facts.composer,
                        facts.work,
                        facts.owner,
                        facts.ensemble,
                        facts.date,
                        facts.entries,
                        facts.conflicts,
                        facts.music,
                        facts.problem,
                        plain(facts.work),
                        plain(facts.owner),
                        plain(facts.ensemble),
                    ])?;
                }
            }
        }
        changes.commit()
    }

    /// The first score with a music, by the music's fingerprint.
    fn scores_by_music(&self) -> rusqlite::Result<FxHashMap<String, String>> {
        let mut asked = self.connection.prepare(
            "SELECT music, min(file) FROM files WHERE kind = 'work' AND music <> '' GROUP BY music",
        )?;
        let rows = asked.query_map([], |row| Ok((row.get(0)?, row.get(1)?)))?;
        rows.collect()
    }

    /// Puts what was asked for into a view, and tells what is remembered of every file: one walk along the
    /// table for both.
    pub(super) fn fill(&self, asked: &LibraryQuery, view: &mut LibraryView) -> rusqlite::Result<KnownFiles> {
        let wanted = |text: &Option<String>| text.as_deref().map(plain).unwrap_or_default();
        let (work, owner, ensemble) = (wanted(&asked.work), wanted(&asked.owner), wanted(&asked.ensemble));
        // Who asks for an owner or an ensemble asks for layers.
        let with_works = owner.is_empty() && ensemble.is_empty();
        // What is not asked for is not looked at: the empty text is in every text.
        let mut fits = String::from("1");
        for (column, place, text) in
            [("work_plain", 1, &work), ("owner_plain", 2, &owner), ("ensemble_plain", 3, &ensemble)]
        {
            if !text.is_empty() {
                fits.push_str(&format!(" AND instr({column}, ?{place}) > 0"));
            }
        }
        let scores = self.scores_by_music()?;
        let mut every = self.connection.prepare(&format!(
            "SELECT file, size, changed, looked, kind, {fits}, work, title, owner, ensemble, date, entries, \
             conflicts, music, composer, problem, ?1, ?2, ?3 FROM files ORDER BY file"
        ))?;
        let mut rows = every.query([&work, &owner, &ensemble])?;
        let mut known = KnownFiles::default();
        while let Some(row) = rows.next()? {
            known.names.push_str(row.get_ref(0)?.as_str()?);
            let name_end = known.names.len();
            let (size, changed, looked) = (row.get(1)?, row.get(2)?, row.get(3)?);
            known.files.push(Remembered { name_end, size, changed, looked });
            let fits: bool = row.get(5)?;
            match row.get_ref(4)?.as_str()? {
                "layer" if fits => view.layers.push(layer_row(row, &scores)?),
                "work" if fits && with_works => {
                    view.works.push(WorkRow {
                        file: row.get(0)?,
                        title: row.get(7)?,
                        composer: row.get(14)?,
                    });
                }
                "broken" => view.troubles.push(LibraryTrouble { file: row.get(0)?, why: row.get(15)? }),
                _ => {}
            }
        }
        view.layers.sort_unstable_by(|one, other| order(one).cmp(&order(other)));
        view.works.sort_unstable_by(|one, other| (&one.title, &one.file).cmp(&(&other.title, &other.file)));
        Ok(known)
    }
}

fn layer_row(row: &Row<'_>, scores: &FxHashMap<String, String>) -> rusqlite::Result<LayerRow> {
    let count =
        |at: usize| -> rusqlite::Result<u64> { Ok(u64::try_from(row.get::<_, i64>(at)?).unwrap_or(0)) };
    let score = if scores.is_empty() { None } else { scores.get(row.get_ref(13)?.as_str()?).cloned() };
    Ok(LayerRow {
        file: row.get(0)?,
        work: row.get(6)?,
        title: row.get(7)?,
        owner: row.get(8)?,
        ensemble: row.get(9)?,
        date: row.get(10)?,
        entries: count(11)?,
        conflicts: count(12)?,
        score,
    })
}

/// The order in which layers are listed.
fn order(row: &LayerRow) -> [&str; 4] {
    [&row.work, &row.owner, &row.date, &row.file]
}

/// What is remembered of a file's content.
#[derive(Default)]
struct FileFacts<'l> {
    kind: &'static str,
    hash: &'l str,
    title: &'l str,
    composer: &'l str,
    work: &'l str,
    owner: &'l str,
    ensemble: &'l str,
    date: &'l str,
    entries: i64,
    conflicts: i64,
    music: &'l str,
    problem: &'l str,
}

impl<'l> FileFacts<'l> {
    fn of(looked: &'l Looked) -> Self {
        match looked {
            Looked::Work { title, composer, music, hash } => {
                Self { kind: "work", hash, title, composer, work: title, music, ..Self::default() }
            }
            Looked::Layer(layer) => Self {
                kind: "layer",
                hash: &layer.hash,
                title: &layer.title,
                work: &layer.work,
                owner: &layer.owner,
                ensemble: &layer.ensemble,
                date: &layer.date,
                entries: layer.entries,
                conflicts: layer.conflicts,
                music: &layer.music,
                ..Self::default()
            },
            Looked::Broken { why, hash } => Self { kind: "broken", hash, problem: why, ..Self::default() },
            Looked::Other { hash } => Self { kind: "other", hash, ..Self::default() },
            Looked::Same => Self::default(),
        }
    }
}

/// Text by which people search: without capitals and accents.
fn plain(text: &str) -> String {
    folded_words(text).join(" ")
}

/// The index file and what SQLite keeps beside it.
fn forget(path: &Path) {
    for ending in ["", "-wal", "-shm"] {
        let mut name = path.as_os_str().to_owned();
        name.push(ending);
        // One that is not there need not be removed; one that stays is found out when it is opened.
        let _ = std::fs::remove_file(PathBuf::from(name));
    }
}

/// Where the index of a folder lies: in the user's cache folder, named after the folder.
fn place(root: &Path) -> Option<PathBuf> {
    let cache = own_folder::cache()?;
    std::fs::create_dir_all(&cache).ok()?;
    let hash = super::look::digest(root.as_os_str().as_encoded_bytes());
    Some(cache.join(format!("library-{}.sqlite", &hash[..16])))
}
