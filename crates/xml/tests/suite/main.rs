//! What the crate promises, tried from outside.
#![allow(clippy::unwrap_used, clippy::expect_used, reason = "a test fails by panicking")]

mod bad_input;
mod bad_packages;
mod edits;
mod limits;
mod packages;
mod properties;
mod random;
mod reading;
mod round_trip;
mod support;
