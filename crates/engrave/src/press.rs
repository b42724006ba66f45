//! Where the engraving library works: in this process, or wherever else somebody has put it.
//!
//! The library's C++ holds thousands of assertions, and legal music can break one: then the whole process ends. Programs that
//! must go on therefore let it work in a process of its own; [`Press`] is the door between the two.

use std::sync::{Mutex, MutexGuard, PoisonError};

#[cfg(feature = "native")]
use verovio::{LogLevel, Toolkit};

#[cfg(feature = "native")]
use crate::stage::StageUser;

/// Music to be engraved, and how.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct EngravingOrder {
    /// The library's options, JSON.
    pub options: String,
    /// The music, MusicXML.
    pub musicxml: String,
    /// After how many seconds to give it up, where that can be done.
    pub seconds: u64,
}

/// Why an order was not filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PressError {
    /// The library could not lay out its fonts.
    NoFonts,
    /// The library did not take the music, or ended over it.
    Refused,
    /// The library was given up after this many seconds.
    TooLong {
        /// Seconds.
        seconds: u64,
    },
    /// The process that the library works in does not start.
    NotStarted,
}

/// Fills orders, several at once.
pub trait Press: std::fmt::Debug + Send + Sync {
    /// Does what the first order would have to wait for.
    fn prepare(&self);

    /// The music as the library's own SVG.
    ///
    /// # Errors
    /// Why there is none.
    fn fill(&self, order: &EngravingOrder) -> Result<String, PressError>;
}

/// The library in this process. Where it breaks off the process ends.
#[cfg(feature = "native")]
#[derive(Debug)]
pub struct InProcess {
    idle: Mutex<Vec<Toolkit>>,
    stage: StageUser,
}

#[cfg(feature = "native")]
impl Default for InProcess {
    fn default() -> Self {
        verovio::set_log_level(LogLevel::Off);
        Self { idle: Mutex::default(), stage: StageUser::new() }
    }
}

#[cfg(feature = "native")]
impl Press for InProcess {
    fn prepare(&self) {
        self.stage.prepare(&self.idle);
    }

    fn fill(&self, order: &EngravingOrder) -> Result<String, PressError> {
        let idle = kept(&self.idle).pop();
        let mut toolkit = idle.or_else(|| self.stage.toolkit(&self.idle)).ok_or(PressError::NoFonts)?;
        toolkit.set_options(&order.options).map_err(|_| PressError::Refused)?;
        // Ids that the library makes up are counted from the same number each time.
        toolkit.reset_xml_id_seed(1);
        toolkit.load_data(&order.musicxml).map_err(|_| PressError::Refused)?;
        let drawn = toolkit.render_to_svg(1).map_err(|_| PressError::Refused);
        kept(&self.idle).push(toolkit);
        drawn
    }
}

/// A lock whose holder failed guards nothing half done here: the lists are whole at every moment.
pub(crate) fn kept<T>(lock: &Mutex<T>) -> MutexGuard<'_, T> {
    lock.lock().unwrap_or_else(PoisonError::into_inner)
}
