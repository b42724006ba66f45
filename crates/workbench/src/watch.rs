//! Notices when another program writes the score.

use std::path::Path;

use notify::{RecommendedWatcher, RecursiveMode, Watcher};
use tokio::sync::mpsc;

/// Watches a file; a message comes each time something in its folder has changed it. The watching ends with the watcher.
///
/// # Errors
/// Where the system cannot watch files.
pub(crate) fn watch(path: &Path) -> Result<(RecommendedWatcher, mpsc::Receiver<()>), String> {
    let (sender, receiver) = mpsc::channel(8);
    let name = path.file_name().map(ToOwned::to_owned);
    // Programs write a new file and rename it: the folder is watched, not the file that goes.
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let mut watcher = notify::recommended_watcher(move |event: notify::Result<notify::Event>| {
        let Ok(event) = event else { return };
        let about = event.paths.iter().any(|path| path.file_name().map(ToOwned::to_owned) == name);
        if about && !event.kind.is_access() {
            // Full means that a message is waiting already.
            let _ = sender.try_send(());
        }
    })
    .map_err(|problem| problem.to_string())?;
    watcher.watch(folder, RecursiveMode::NonRecursive).map_err(|problem| problem.to_string())?;
    Ok((watcher, receiver))
}
