//! The laws of bowing layers on made-up scores, and their behaviour on small ones.
#![allow(clippy::expect_used, reason = "a fixture that is wrong must stop its test")]

mod bows;
mod carried;
mod checked;
mod hook_slurs;
mod laws;
mod lifted_slurs;
mod marks;
mod slur_words;
mod small;
mod support;
mod together;
mod upgrades;
