//! Nothing to build: this file is here so that the build dependency on `cc` counts (see `Cargo.toml`).

fn main() {}
