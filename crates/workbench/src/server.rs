//! The server on the loopback address.

use std::fmt;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::time::Duration;

use arcata_desk::{Session, SessionError};
use arcata_engrave::{Engraver, House};
use arcata_habits::Habits;
use axum::Router;
use tokio::net::TcpListener;

use crate::disk_shelf::{open_session, put_layer_on_desk};
use crate::entrance::{DemoScore, FrontDoor};
use crate::guard::AccessKey;
use crate::opener::Opener;
use crate::presence::Presence;
use crate::running;

/// What to serve, and where.
#[derive(Clone, Debug)]
pub struct ServeSettings {
    /// The score; without one the page offers some.
    pub score: Option<PathBuf>,
    /// Layers to be put on the desk, files; those that lie there from another time stay as they lie.
    pub layers: Vec<PathBuf>,
    /// A leader's habits, to bow by.
    pub habits: Option<Habits>,
    /// How the house wants its parts.
    pub house: House,
    /// The port; 0 for any that is free.
    pub port: u16,
    /// Whether the server stops when the last page has been closed.
    pub until_closed: bool,
    /// The user's own folder, where it is remembered which scores were opened and which are open; without one nothing is.
    pub own_folder: Option<PathBuf>,
    /// Where the page without a score begins to look for some.
    pub looks_in: PathBuf,
    /// What may be tried without a score.
    pub demos: &'static [DemoScore],
}

/// A page that can be opened.
#[derive(Clone, Debug)]
pub struct WorkbenchAddress {
    /// The address that opens it, again and again.
    pub address: String,
    /// One that opens it once, for the arguments of a browser, which other users of the machine can read.
    pub once: String,
    /// Whether another run of the program serves it: this one is done.
    pub by_another: bool,
}

/// Why the workbench does not open.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ServeError {
    /// The score or its journal.
    Session(SessionError),
    /// The port is taken.
    Port {
        /// Which.
        port: u16,
    },
    /// Anything else, in words.
    Other(String),
}

impl fmt::Display for ServeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Session(problem) => problem.fmt(f),
            Self::Port { port } => {
                write!(
                    f,
                    "port {port} is taken by another program; name another with --port, or 0 for any that is free"
                )
            }
            Self::Other(why) => f.write_str(why),
        }
    }
}

impl std::error::Error for ServeError {}

/// Opens a score and serves it until it is asked to stop; `ready` gets the addresses of the page. Where another run has the score
/// open, its page is brought up and this one is done.
///
/// # Errors
/// A score that cannot be read, a port that is taken.
pub fn serve(
    settings: &ServeSettings,
    engraver: Engraver,
    ready: impl FnOnce(&WorkbenchAddress) + Send,
) -> Result<(), ServeError> {
    if let Some(once) = elsewhere(settings)? {
        ready(&WorkbenchAddress { address: once.clone(), once, by_another: true });
        return Ok(());
    }
    let engraver = Arc::new(engraver.keeping_parts());
    let preparing = engraver.clone();
    // While the score is read and the browser opens, the engraver lays out its fonts.
    std::thread::spawn(move || preparing.prepare());
    let session = match &settings.score {
        Some(score) => Some((score.clone(), session_of(settings, score)?)),
        None => None,
    };
    let presence = Presence::default();
    let ends = settings.until_closed.then(|| presence.clone());
    listen(
        settings.port,
        ends,
        move |key, address| {
            let opener = Opener {
                engraver,
                habits: settings.habits.clone(),
                house: settings.house.clone(),
                own_folder: settings.own_folder.clone(),
                looks_in: settings.looks_in.clone(),
                demos: settings.demos,
                presence,
                key,
                address,
                running: Mutex::default(),
            };
            let front = match session {
                Some((score, session)) => {
                    let routes = opener.serve(session, &score);
                    FrontDoor::with_score(opener, routes)
                }
                None => FrontDoor::at_the_entrance(opener),
            };
            front.router()
        },
        ready,
    )
}

fn session_of(settings: &ServeSettings, score: &Path) -> Result<Session, ServeError> {
    let mut session = open_session(score, settings.habits.clone()).map_err(ServeError::Session)?;
    for layer in &settings.layers {
        put_layer_on_desk(&mut session, layer).map_err(ServeError::Session)?;
    }
    Ok(session)
}

/// The address of the score's page where another run has it open.
fn elsewhere(settings: &ServeSettings) -> Result<Option<String>, ServeError> {
    let (Some(score), Some(own)) = (&settings.score, &settings.own_folder) else { return Ok(None) };
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build();
    let runtime = runtime.map_err(|problem| ServeError::Other(problem.to_string()))?;
    Ok(runtime.block_on(running::again(own, score)))
}

/// Listens on the loopback address until it is told to stop. `routes` is called where tasks can be begun.
pub(crate) fn listen(
    port: u16,
    ends: Option<Presence>,
    routes: impl FnOnce(AccessKey, SocketAddr) -> Router + Send,
    ready: impl FnOnce(&WorkbenchAddress) + Send,
) -> Result<(), ServeError> {
    let key = AccessKey::random().map_err(ServeError::Other)?;
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .worker_threads(2)
        .enable_all()
        .build()
        .map_err(|problem| ServeError::Other(problem.to_string()))?;
    let done = runtime.block_on(run(port, key, ends, routes, ready));
    // Pages that listen for events would hold the program open.
    runtime.shutdown_timeout(Duration::from_millis(200));
    done
}

async fn run(
    port: u16,
    key: AccessKey,
    ends: Option<Presence>,
    routes: impl FnOnce(AccessKey, SocketAddr) -> Router + Send,
    ready: impl FnOnce(&WorkbenchAddress) + Send,
) -> Result<(), ServeError> {
    let said = |problem: std::io::Error| ServeError::Other(problem.to_string());
    let wanted = SocketAddr::from((Ipv4Addr::LOCALHOST, port));
    let listener = match TcpListener::bind(wanted).await {
        Ok(listener) => listener,
        Err(problem) if problem.kind() == std::io::ErrorKind::AddrInUse => {
            return Err(ServeError::Port { port });
        }
        Err(problem) => return Err(said(problem)),
    };
    let address = listener.local_addr().map_err(said)?;
    let routes = routes(key.clone(), address);
    let at = |secret: &str| format!("http://127.0.0.1:{}/?key={secret}", address.port());
    let once = at(&key.ticket().unwrap_or_default());
    ready(&WorkbenchAddress { address: at(key.text()), once, by_another: false });
    let serving = axum::serve(listener, routes);
    tokio::select! {
        served = async { serving.await } => served.map_err(said),
        () = told_to_stop() => Ok(()),
        () = closed(ends) => Ok(()),
    }
}

/// Waits until the last page has been closed, where that is the end.
async fn closed(ends: Option<Presence>) {
    match ends {
        Some(presence) => presence.all_gone().await,
        None => std::future::pending().await,
    }
}

/// Waits for the interrupt key or the system's wish to end.
async fn told_to_stop() {
    let interrupted = async {
        // Where signals cannot be heard the program is stopped from outside.
        if tokio::signal::ctrl_c().await.is_err() {
            std::future::pending::<()>().await;
        }
    };
    #[cfg(unix)]
    {
        let ended = async {
            match tokio::signal::unix::signal(tokio::signal::unix::SignalKind::terminate()) {
                Ok(mut signal) => {
                    signal.recv().await;
                }
                Err(_) => std::future::pending().await,
            }
        };
        tokio::select! { () = interrupted => {}, () = ended => {} }
    }
    #[cfg(not(unix))]
    interrupted.await;
}
