//! The folder in which the engraving library wants its fonts.
//!
//! The library lays out 12 MB in a folder of the machine's temporary ones when its first toolkit is made, and
//! leaves it there. Here the folder goes when the last engraver goes, and comes back for the next one.

use std::path::PathBuf;
use std::sync::{Mutex, MutexGuard, PoisonError};

use verovio::Toolkit;

/// What the first toolkit of the program reads before anybody else has one: an accidental that holds for a second note. For it the
/// library fills its table of glyph names, the one thing that toolkits share and write to; two threads at it at once crash the
/// program. From then on the table is only read.
const FIRST_READ: &str = concat!(
    r#"<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list>"#,
    r#"<part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>"#,
    r#"<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration>"#,
    r#"<type>quarter</type><accidental>sharp</accidental></note>"#,
    r#"<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration>"#,
    r#"<type>quarter</type></note></measure></part></score-partwise>"#,
);

struct Stage {
    users: usize,
    /// Where the library has laid out its fonts; it keeps to this place for the life of the program.
    folder: Option<PathBuf>,
}

static STAGE: Mutex<Stage> = Mutex::new(Stage { users: 0, folder: None });

/// Someone who needs the folder.
#[derive(Debug)]
pub(crate) struct StageUser(());

impl StageUser {
    pub(crate) fn new() -> Self {
        stage().users += 1;
        Self(())
    }

    /// A toolkit with fonts: one that became idle while others made theirs, else a new one. `None` where the machine has no
    /// room for fonts.
    #[expect(clippy::unused_self, reason = "whoever has a toolkit is a user of the folder")]
    pub(crate) fn toolkit(&self, idle: &Mutex<Vec<Toolkit>>) -> Option<Toolkit> {
        let mut stage = stage();
        let waiting = idle.lock().unwrap_or_else(PoisonError::into_inner).pop();
        if waiting.is_some() {
            return waiting;
        }
        Self::new_toolkit(&mut stage)
    }

    /// Makes a toolkit that whoever waits for one finds idle.
    #[expect(clippy::unused_self, reason = "whoever has a toolkit is a user of the folder")]
    pub(crate) fn prepare(&self, idle: &Mutex<Vec<Toolkit>>) {
        let mut stage = stage();
        let made = Self::new_toolkit(&mut stage);
        idle.lock().unwrap_or_else(PoisonError::into_inner).extend(made);
    }

    fn new_toolkit(stage: &mut Stage) -> Option<Toolkit> {
        if let Some(folder) = stage.folder.as_ref().filter(|folder| !folder.exists()) {
            std::fs::create_dir_all(folder).ok()?;
            verovio_data::extract(folder).ok()?;
        }
        // The library panics where it cannot write its fonts.
        let mut toolkit = std::panic::catch_unwind(Toolkit::new).ok()?;
        if stage.folder.is_none() {
            toolkit.load_data(FIRST_READ).ok()?;
        }
        stage.folder.get_or_insert_with(|| PathBuf::from(toolkit.resource_path()));
        Some(toolkit)
    }
}

impl Drop for StageUser {
    fn drop(&mut self) {
        let mut stage = stage();
        stage.users = stage.users.saturating_sub(1);
        if let Some(folder) = stage.folder.as_ref().filter(|_| stage.users == 0) {
            // What cannot be removed does no harm.
            let _ = std::fs::remove_dir_all(folder);
        }
    }
}

fn stage() -> MutexGuard<'static, Stage> {
    STAGE.lock().unwrap_or_else(PoisonError::into_inner)
}
