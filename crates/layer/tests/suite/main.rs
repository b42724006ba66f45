//! The laws of bowing layers on made-up scores, and their behaviour on small ones.

mod laws;
mod support;
