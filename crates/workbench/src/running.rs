//! Which scores are open in a workbench that runs: a second start with the same score brings up the first.
//!
//! A run keeps two files in the user's own folder for as long as it lives: what to ask for, readable by its owner alone, and one
//! that it holds locked. A lock goes with the process that held it, whatever ended it: what a killed run left behind is known by a
//! lock that can be had, and never asked, so no other program that took its port meanwhile learns anything.

use std::fs::{File, OpenOptions};
use std::net::SocketAddr;
use std::path::{Path, PathBuf};
use std::time::Duration;

use axum::http::{Request, StatusCode, header};
use http_body_util::{BodyExt as _, Empty};
use hyper::client::conn::http1::handshake;
use hyper_util::rt::TokioIo;
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};
use tokio::net::TcpStream;
use tokio::time::timeout;

use crate::guard::AccessKey;

/// A limit: a run on the same machine that does not answer within this time is not asked again.
const ANSWERS: Duration = Duration::from_secs(2);
/// A limit: what a run tells of itself is shorter.
const LARGEST: usize = 1 << 16;
/// A limit: an answer that is longer is none.
const LONGEST_TICKET: usize = 64;

/// What a run tells of itself.
#[derive(Debug, Serialize, Deserialize)]
struct RunNote {
    version: u32,
    address: SocketAddr,
    key: String,
}

/// The version of that note (by definition).
const VERSION: u32 = 1;

/// The entry of this run; it goes with it.
#[derive(Debug)]
pub(crate) struct RunningEntry {
    note: PathBuf,
    lock: PathBuf,
    _held: File,
}

impl Drop for RunningEntry {
    fn drop(&mut self) {
        // A leftover is known by its lock; that it cannot be removed does not matter.
        let _ = std::fs::remove_file(&self.note);
        let _ = std::fs::remove_file(&self.lock);
    }
}

/// The two files of a score: the note and the lock.
fn files(folder: &Path, score: &Path) -> Option<(PathBuf, PathBuf)> {
    let whole = score.canonicalize().ok()?;
    let digest = Sha256::digest(whole.as_os_str().as_encoded_bytes());
    let name: String = digest.iter().take(12).map(|byte| format!("{byte:02x}")).collect();
    let folder = folder.join("running");
    Some((folder.join(format!("{name}.json")), folder.join(format!("{name}.lock"))))
}

fn lock_file(path: &Path) -> Option<File> {
    OpenOptions::new().create(true).truncate(false).write(true).open(path).ok()
}

/// Says that this run has a score open. Nothing where the folder cannot be written: the workbench works as well without.
pub(crate) fn register(
    folder: &Path,
    score: &Path,
    address: SocketAddr,
    key: &AccessKey,
) -> Option<RunningEntry> {
    let (note, lock) = files(folder, score)?;
    std::fs::create_dir_all(note.parent()?).ok()?;
    let held = lock_file(&lock)?;
    held.try_lock().ok()?;
    let told = RunNote { version: VERSION, address, key: key.text().to_owned() };
    let text = serde_json::to_string(&told).ok()?;
    // A private file is new: what a killed run left is taken away first.
    let _ = std::fs::remove_file(&note);
    arcata_files::write_private(&note, text.as_bytes()).ok()?;
    Some(RunningEntry { note, lock, _held: held })
}

/// Asks the run that has a score open for an address that opens its page, once. Nothing where none has.
pub(crate) async fn again(folder: &Path, score: &Path) -> Option<String> {
    let (note, lock) = files(folder, score)?;
    if !note.is_file() || lock_file(&lock)?.try_lock().is_ok() {
        return None;
    }
    let text = arcata_files::read(&note, LARGEST).ok()?;
    let told: RunNote = serde_json::from_slice(&text).ok()?;
    if told.version != VERSION || !told.address.ip().is_loopback() {
        return None;
    }
    let ticket = timeout(ANSWERS, ask(&told)).await.ok()??;
    Some(format!("http://127.0.0.1:{}/?key={ticket}", told.address.port()))
}

/// A ticket from the run.
async fn ask(told: &RunNote) -> Option<String> {
    let stream = TcpStream::connect(told.address).await.ok()?;
    let (mut sender, connection) = handshake(TokioIo::new(stream)).await.ok()?;
    tokio::spawn(connection);
    let port = told.address.port();
    let host = format!("127.0.0.1:{port}");
    let request = Request::post(AGAIN)
        .header(header::HOST, &host)
        .header(header::ORIGIN, format!("http://{host}"))
        .header(header::COOKIE, format!("arcata-{port}={}", told.key))
        .body(Empty::<axum::body::Bytes>::new())
        .ok()?;
    let response = sender.send_request(request).await.ok()?;
    if response.status() != StatusCode::OK {
        return None;
    }
    let body = http_body_util::Limited::new(response.into_body(), LONGEST_TICKET).collect().await.ok()?;
    let ticket = String::from_utf8(body.to_bytes().to_vec()).ok()?;
    ticket.bytes().all(|byte| byte.is_ascii_hexdigit()).then_some(ticket)
}

/// Where a run is asked for a ticket.
pub(crate) const AGAIN: &str = "/again";

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test]
    async fn what_a_killed_run_left_is_not_asked() {
        let folder = tempfile::tempdir().unwrap();
        let score = folder.path().join("a.musicxml");
        arcata_files::write_whole(&score, b"<score-partwise/>").unwrap();
        // A stranger has the port.
        let stranger = tokio::net::TcpListener::bind("127.0.0.1:0").await.unwrap();
        let address = stranger.local_addr().unwrap();
        let key = AccessKey::of("right");
        let run = register(folder.path(), &score, address, &key).unwrap();
        let (note, _) = files(folder.path(), &score).unwrap();
        let left = arcata_files::read(&note, LARGEST).unwrap();
        drop(run);
        assert!(!note.exists(), "a run that ends takes its note away");
        arcata_files::write_whole(&note, &left).unwrap();
        assert_eq!(again(folder.path(), &score).await, None);
        let nobody = timeout(Duration::from_millis(50), stranger.accept()).await;
        assert!(nobody.is_err(), "the stranger was asked");
        // And it does not stand in the way of the next run.
        assert!(register(folder.path(), &score, address, &key).is_some());
    }
}
