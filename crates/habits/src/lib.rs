//! Prices learned from bowings.
//!
//! The planner's cost is linear in its weights. So the weights under which a bowing is likeliest, held near those of a style,
//! can be found by following the gradient of its likelihood (maximum entropy over the planner's own lattice,
//! [`arcata_bow::plan::Inverse`]): [`LearningProblem`]. A leader's [`Habits`] are such weights, learned from marked scores by
//! [`learn()`], with an honest account of what they foresee, kept in a small file and put into a
//! [`Profile`](arcata_bow::Profile) by [`Habits::put_into`]. Learning is a feature, `learn`: who only reads such a file needs no search.

#[cfg(feature = "learn")]
mod arithmetic;
mod file;
#[cfg(feature = "learn")]
mod learn;
#[cfg(feature = "learn")]
mod problem;
mod trial;
mod words;

pub use file::{Foreseen, Habits, HabitsError, LEARNED};
#[cfg(feature = "learn")]
pub use learn::{LEAST_SPARSE, LEAST_STROKES, LearningOutcome, Marked, Refusal, SPREAD, learn, with_weights};
#[cfg(feature = "learn")]
pub use problem::{LearningProblem, Sample};
pub use trial::Trial;
pub use words::{account, moved};
