//! What pages are told without asking: that something was done, in this tab or another, or that the file has changed.

use serde::Serialize;
use utoipa::ToSchema;

use crate::views::DoneView;

/// Something happened.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[serde(tag = "event", rename_all = "kebab-case")]
pub enum Happened {
    /// Something was done or undone.
    Done {
        /// What it came to.
        done: DoneView,
        /// The page that did it, by the name it gave itself.
        by: String,
    },
    /// The file on the disk is another now, and cannot be read.
    Unreadable {
        /// In words.
        why: String,
    },
}
