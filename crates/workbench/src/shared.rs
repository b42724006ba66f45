//! What all requests share: the session, the engraver, the findings of now, and who listens.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};

use arcata_engrave::Engraver;
use arcata_files::FileError;
use arcata_layer::Layer;
use arcata_review::Finding;
use sha2::{Digest as _, Sha256};
use tokio::sync::broadcast;

use crate::desk::Desk;
use crate::events::Happened;
use crate::export::ExportedFiles;
use crate::failed::Failed;
use crate::kept_beside;
use crate::requests::KeptView;
use crate::session::Session;
use crate::views::{self, DoneView};

/// What the review has found.
#[derive(Clone, Debug)]
pub(crate) struct ReviewFound {
    /// In this version.
    pub(crate) version: u64,
    /// In order of the score.
    pub(crate) findings: Arc<Vec<Finding>>,
    /// How many are set aside.
    pub(crate) aside: usize,
}

/// What all requests share.
#[derive(Clone, Debug)]
pub struct Shared {
    session: Arc<Mutex<Session>>,
    pub(crate) engraver: Arc<Engraver>,
    pub(crate) happened: broadcast::Sender<Happened>,
    /// The findings of the newest version that was asked for.
    found: Arc<Mutex<Option<ReviewFound>>>,
    /// The files that were written beside the score since the program began, and what was written, in short.
    written: Arc<Mutex<BTreeMap<PathBuf, [u8; 32]>>>,
}

impl Shared {
    /// Around a session; the engraver draws its music.
    #[must_use]
    pub fn new(session: Session, engraver: Arc<Engraver>) -> Self {
        Self {
            session: Arc::new(Mutex::new(session)),
            engraver,
            happened: broadcast::channel(64).0,
            found: Arc::default(),
            written: Arc::default(),
        }
    }

    pub(crate) fn session(&self) -> MutexGuard<'_, Session> {
        // A session is changed only after everything that can fail: a panic elsewhere leaves it whole.
        self.session.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// The desk, with its version.
    pub(crate) fn desk(&self) -> (Desk, u64) {
        let session = self.session();
        (session.desk(), session.version())
    }

    /// The findings of now.
    pub(crate) fn findings(&self) -> ReviewFound {
        let (desk, state, version, path) = {
            let session = self.session();
            (session.desk(), session.state().clone(), session.version(), session.path().to_owned())
        };
        let mut found = self.found.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(known) = found.as_ref().filter(|known| known.version == version) {
            return known.clone();
        }
        let (findings, aside) = views::findings(&desk, &state, &kept_beside::read(&path).unwrap_or_default());
        let now = ReviewFound { version, findings: Arc::new(findings), aside };
        *found = Some(now.clone());
        now
    }

    /// A layer on the desk.
    pub(crate) fn layer(&self, number: usize) -> Result<Layer, Failed> {
        let session = self.session();
        let layer = session.state().layers.all().get(number).map(|one| one.layer.clone());
        layer.ok_or_else(|| Failed::missing("there is no such layer on the desk"))
    }

    /// Writes what leaves beside the score. A file that is there and is not what this program as it runs wrote is kept under
    /// another name.
    ///
    /// # Errors
    /// In words, where something cannot be written.
    pub(crate) fn keep(&self, score: &Path, parcel: ExportedFiles) -> Result<KeptView, String> {
        let folder = match &parcel.folder {
            Some(folder) => score.with_file_name(folder),
            None => score.parent().unwrap_or(Path::new("")).to_owned(),
        };
        if parcel.folder.is_some() && !folder.is_dir() {
            std::fs::create_dir(&folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
        }
        let mut told = parcel.told;
        let mut written = self.written.lock().unwrap_or_else(PoisonError::into_inner);
        for file in &parcel.files {
            let path = folder.join(&file.name);
            let failed = |problem: FileError| problem.to_string();
            let now = match path.exists() {
                true => Some(arcata_files::read(&path, usize::MAX).map_err(failed)?),
                false => None,
            };
            if now.as_ref().is_some_and(|now| written.get(&path) != Some(&digest(now))) {
                let kept = arcata_files::back_up(&path).map_err(|problem| problem.to_string())?;
                let kept = kept.file_name().unwrap_or_default().to_string_lossy();
                told.push(format!("{} as it was is kept as {kept}", file.name));
            }
            match now {
                Some(now) => arcata_files::rewrite(&path, &now, &file.bytes).map_err(failed)?,
                None => arcata_files::write_new(&path, &file.bytes).map_err(failed)?,
            }
            written.insert(path, digest(&file.bytes));
        }
        let first = parcel.files.first().map(|file| file.name.clone()).unwrap_or_default();
        Ok(KeptView { file: parcel.folder.unwrap_or(first), files: parcel.files.len(), told })
    }

    /// The findings of a version, where they were asked for and it is still the newest.
    pub(crate) fn found(&self, version: u64) -> Option<Arc<Vec<Finding>>> {
        let found = self.found.lock().unwrap_or_else(PoisonError::into_inner);
        found.as_ref().filter(|found| found.version == version).map(|found| found.findings.clone())
    }

    /// Reads the file anew after another program has written it, and tells the pages.
    pub(crate) async fn reload(&self) {
        let shared = self.clone();
        // A panic in there leaves the session as it was; the file will be looked at when it changes again.
        let _ = tokio::task::spawn_blocking(move || {
            let mut session = shared.session();
            let happened = match session.reload() {
                Ok(None) => return,
                Ok(Some((moved, told))) => Happened::Done {
                    done: DoneView::new(&session, Some(moved), told),
                    by: "the file".to_owned(),
                },
                Err(why) => Happened::Unreadable { why: why.to_string() },
            };
            // Nobody listening is no trouble.
            let _ = shared.happened.send(happened);
        })
        .await;
    }
}

fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}
