//! Whether anybody is looking: a workbench that was opened from a desktop ends when its last page is closed.

use std::sync::Arc;
use std::time::Duration;

use tokio::sync::watch;
use tokio::time::timeout;

/// A rule of thumb: a browser that is not there yet has this long to come.
const TO_COME: Duration = Duration::from_secs(120);
/// A rule of thumb: a page that is loaded anew is away for less than this.
const AWAY: Duration = Duration::from_secs(20);

/// How many pages are open.
#[derive(Clone, Debug)]
pub(crate) struct Presence {
    pages: Arc<watch::Sender<usize>>,
}

impl Default for Presence {
    fn default() -> Self {
        Self { pages: Arc::new(watch::Sender::new(0)) }
    }
}

impl Presence {
    /// A page comes; it is there for as long as what is given back is kept.
    pub(crate) fn enter(&self) -> Present {
        self.pages.send_modify(|pages| *pages += 1);
        Present(self.clone())
    }

    /// Waits until all pages have gone for good, or none has come.
    pub(crate) async fn all_gone(&self) {
        let mut pages = self.pages.subscribe();
        if timeout(TO_COME, pages.wait_for(|pages| *pages > 0)).await.is_err() {
            return;
        }
        loop {
            // The sender lives as long as this does: the waiting cannot fail.
            let _ = pages.wait_for(|pages| *pages == 0).await;
            if timeout(AWAY, pages.wait_for(|pages| *pages > 0)).await.is_err() {
                return;
            }
        }
    }
}

/// A page that is open.
#[derive(Debug)]
pub(crate) struct Present(Presence);

impl Drop for Present {
    fn drop(&mut self) {
        self.0.pages.send_modify(|pages| *pages = pages.saturating_sub(1));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[tokio::test(start_paused = true)]
    async fn a_page_loaded_anew_keeps_it_open_and_the_last_one_closed_ends_it() {
        let presence = Presence::default();
        let waiting = tokio::spawn({
            let presence = presence.clone();
            async move { presence.all_gone().await }
        });
        tokio::time::sleep(TO_COME / 2).await;
        let first = presence.enter();
        tokio::time::sleep(TO_COME * 10).await;
        drop(first);
        tokio::time::sleep(AWAY / 2).await;
        let again = presence.enter();
        let other = presence.enter();
        tokio::time::sleep(AWAY * 3).await;
        drop(again);
        tokio::time::sleep(AWAY * 3).await;
        assert!(!waiting.is_finished(), "one page is open still");
        drop(other);
        tokio::time::sleep(AWAY * 2).await;
        assert!(waiting.is_finished());
    }

    #[tokio::test(start_paused = true)]
    async fn nobody_coming_ends_it() {
        let presence = Presence::default();
        timeout(TO_COME * 2, presence.all_gone()).await.expect("it ends");
    }
}
