//! Bowing layers on every string work of music21's corpus: the laws byte for byte, packed files too, and
//! layers carried to revisions of real works.

mod carried;
mod revise;
mod traces;

use crate::laws;
use crate::outcome::{CheckOutcome, Result};
use crate::setting::CheckSetting;

/// Asks everything.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let files = laws::files(setting)?;
    traces::check(setting, &files, outcome)?;
    carried::check(&files, outcome)
}
