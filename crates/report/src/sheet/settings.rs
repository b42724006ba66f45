//! What the copying estimate rests on, each with reason, unit, source and status.

use arcata_bow::Setting;
use arcata_bow::profile::Status;

/// The constants of the copying estimate.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CopyingSettings {
    /// Time to write or to take off one mark in one part.
    pub seconds_a_mark: Setting<i64>,
}

impl Default for CopyingSettings {
    fn default() -> Self {
        Self {
            seconds_a_mark: Setting {
                value: 5,
                unit: "s".into(),
                reason: "finding the bar on the page, writing one sign in pencil, or rubbing one out".into(),
                source: "from memory; time your own copying and set it".into(),
                status: Status::Default,
            },
        }
    }
}

impl CopyingSettings {
    /// With a user's own time for one mark.
    #[must_use]
    pub fn with_seconds_a_mark(mut self, seconds: u32) -> Self {
        self.seconds_a_mark.value = i64::from(seconds);
        self.seconds_a_mark.source = "set by the user".into();
        self.seconds_a_mark.status = Status::Yours;
        self
    }
}

/// Stands of a string section in a symphony orchestra of 14, 12, 10, 8 and 6 players, in score order.
///
/// Reason: two players share a copy. Source: common practice. Status: from memory; say your own.
pub const SYMPHONY_STANDS: [u32; 5] = [7, 6, 5, 4, 3];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_constant_is_without_a_reason() {
        let setting = CopyingSettings::default().seconds_a_mark;
        assert!(setting.value > 0);
        for text in [setting.unit, setting.reason, setting.source] {
            assert!(!text.trim().is_empty());
        }
        assert_eq!(CopyingSettings::default().with_seconds_a_mark(9).seconds_a_mark.status, Status::Yours);
    }
}
