//! The server on the loopback address.

use std::fmt;
use std::net::{Ipv4Addr, SocketAddr};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Duration;

use arcata_desk::{SessionError, Shared};
use arcata_engrave::{Engraver, House};
use arcata_habits::Habits;
use axum::Router;
use tokio::net::TcpListener;

use crate::disk_shelf::{open_session, put_layer_on_desk};
use crate::guard::AccessKey;
use crate::routes::serving;
use crate::watch::watch;

/// What to serve, and where.
#[derive(Clone, Debug)]
pub struct ServeSettings {
    /// The score.
    pub score: PathBuf,
    /// Layers to be put on the desk, files; those that lie there from another time stay as they lie.
    pub layers: Vec<PathBuf>,
    /// A leader's habits, to bow by.
    pub habits: Option<Habits>,
    /// How the house wants its parts.
    pub house: House,
    /// The port; 0 for any that is free.
    pub port: u16,
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

/// A changed file is read when it has been quiet for so long: programs write in several steps.
const QUIET: Duration = Duration::from_millis(150);

/// Opens a score and serves it until it is asked to stop; `ready` gets the address that opens the page, and one that opens it
/// once, for the arguments of a browser, which other users of the machine can read.
///
/// # Errors
/// A score that cannot be read, a port that is taken.
pub fn serve(
    settings: &ServeSettings,
    engraver: Engraver,
    ready: impl FnOnce(&str, &str) + Send,
) -> Result<(), ServeError> {
    let engraver = Arc::new(engraver.keeping_parts());
    let preparing = engraver.clone();
    // While the score is read and the browser opens, the engraver lays out its fonts.
    std::thread::spawn(move || preparing.prepare());
    let mut session = open_session(&settings.score, settings.habits.clone()).map_err(ServeError::Session)?;
    for layer in &settings.layers {
        put_layer_on_desk(&mut session, layer).map_err(ServeError::Session)?;
    }
    let shared = Shared::new(session, engraver).in_house(settings.house.clone());
    let score = settings.score.clone();
    listen(
        settings.port,
        move |key, address| {
            let (routes, shared) = serving(shared, key, address);
            follow(&score, shared);
            routes
        },
        ready,
    )
}

/// Reads the score anew whenever it has changed, for as long as the server runs. Without a watcher the page works; the user
/// reloads it by hand.
fn follow(score: &Path, shared: Shared) {
    let Ok((watcher, mut changes)) = watch(score) else { return };
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

/// Listens on the loopback address until it is told to stop. `routes` is called where tasks can be begun.
pub(crate) fn listen(
    port: u16,
    routes: impl FnOnce(AccessKey, SocketAddr) -> Router + Send,
    ready: impl FnOnce(&str, &str) + Send,
) -> Result<(), ServeError> {
    let key = AccessKey::random().map_err(ServeError::Other)?;
    let runtime = tokio::runtime::Builder::new_multi_thread()
        .worker_threads(2)
        .enable_all()
        .build()
        .map_err(|problem| ServeError::Other(problem.to_string()))?;
    let done = runtime.block_on(run(port, key, routes, ready));
    // Pages that listen for events would hold the program open.
    runtime.shutdown_timeout(Duration::from_millis(200));
    done
}

async fn run(
    port: u16,
    key: AccessKey,
    routes: impl FnOnce(AccessKey, SocketAddr) -> Router + Send,
    ready: impl FnOnce(&str, &str) + Send,
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
    ready(&at(key.text()), &at(&key.ticket().unwrap_or_default()));
    let serving = axum::serve(listener, routes);
    tokio::select! {
        served = async { serving.await } => served.map_err(said),
        () = told_to_stop() => Ok(()),
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
