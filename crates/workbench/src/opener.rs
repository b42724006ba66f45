//! Opens scores for a server, and remembers that they are open.

use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use arcata_desk::{Failed, Session, SessionError, Shared};
use arcata_engrave::{Engraver, House};
use arcata_habits::Habits;
use axum::Router;

use crate::disk_shelf::open_session;
use crate::entrance::DemoScore;
use crate::guard::AccessKey;
use crate::presence::Presence;
use crate::refusal::{HttpRefusal, work};
use crate::routes::serving;
use crate::running::{self, RunningEntry};
use crate::{last_scores, watch};

/// A changed file is read when it has been quiet for so long: programs write in several steps.
const QUIET: Duration = Duration::from_millis(150);

/// What scores are opened with.
pub(crate) struct Opener {
    pub(crate) engraver: Arc<Engraver>,
    pub(crate) habits: Option<Habits>,
    /// How the house wants its parts.
    pub(crate) house: House,
    /// The user's own folder for what is remembered.
    pub(crate) own_folder: Option<PathBuf>,
    /// Where the entrance begins to look for scores.
    pub(crate) looks_in: PathBuf,
    pub(crate) demos: &'static [DemoScore],
    pub(crate) presence: Presence,
    pub(crate) key: AccessKey,
    pub(crate) address: SocketAddr,
    /// That the score is open, for other runs; it goes with this one.
    pub(crate) running: Mutex<Option<RunningEntry>>,
}

/// What became of a score that was to be opened.
pub(crate) enum OpenedScore {
    /// It is served here.
    Here(Router),
    /// Another run has it; the address opens its page, once.
    Elsewhere(String),
}

impl Opener {
    /// Opens a score chosen at the entrance.
    pub(crate) async fn open(self: &Arc<Self>, score: PathBuf) -> Result<OpenedScore, HttpRefusal> {
        if let Some(own) = &self.own_folder
            && let Some(address) = running::again(own, &score).await
        {
            return Ok(OpenedScore::Elsewhere(address));
        }
        let opener = self.clone();
        let path = score.clone();
        let said = |problem: SessionError| Failed::impossible(problem.to_string());
        let session = work(move || open_session(&path, opener.habits.clone()).map_err(said)).await?;
        Ok(OpenedScore::Here(self.serve(session, &score)))
    }

    /// Serves a score that was read. Called where tasks can be begun.
    pub(crate) fn serve(&self, session: Session, score: &Path) -> Router {
        let shared = Shared::new(session, self.engraver.clone()).in_house(self.house.clone());
        let (routes, shared) = serving(shared, self.key.clone(), self.address, self.presence.clone());
        follow(score, shared);
        if let Some(own) = &self.own_folder {
            last_scores::put(own, score);
            let running = running::register(own, score, self.address, &self.key);
            *self.running.lock().unwrap_or_else(PoisonError::into_inner) = running;
        }
        routes
    }

    /// A demo's file in the user's own folder; one that is there stays as it is, with what was done to it.
    pub(crate) fn demo(&self, name: &str) -> Result<PathBuf, Failed> {
        let demo = self.demos.iter().find(|demo| demo.name == name);
        let demo = demo.ok_or_else(|| Failed::missing("there is no such demo"))?;
        let own = self.own_folder.as_deref();
        let folder =
            own.ok_or_else(|| Failed::impossible("there is no folder of your own to put a demo in"))?;
        let folder = folder.join("demo");
        let said =
            |problem: &dyn std::fmt::Display| Failed::impossible(format!("{}: {problem}", folder.display()));
        std::fs::create_dir_all(&folder).map_err(|problem| said(&problem))?;
        let path = folder.join(format!("{}.musicxml", demo.name));
        if !path.exists() {
            arcata_files::write_new(&path, demo.music.as_bytes()).map_err(|problem| said(&problem))?;
        }
        Ok(path)
    }
}

/// Reads the score anew whenever it has changed, for as long as the server runs. Without a watcher the page works; the user
/// reloads it by hand.
fn follow(score: &Path, shared: Shared) {
    let Ok((watcher, mut changes)) = watch::watch(score) else { return };
    tokio::spawn(async move {
        while changes.recv().await.is_some() {
            tokio::time::sleep(QUIET).await;
            while changes.try_recv().is_ok() {}
            let shared = shared.clone();
            // A panic in there leaves the session as it was; the file will be looked at when it changes again.
            let _ = tokio::task::spawn_blocking(move || shared.reload()).await;
        }
        drop(watcher);
    });
}
