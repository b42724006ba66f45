//! How much reading a document costs beside bare tokenising of the same bytes.
//!
//! `cargo run --release -p arcata-xml --example reading_speed < score.musicxml`
#![allow(
    clippy::disallowed_macros,
    clippy::disallowed_methods,
    reason = "a measuring program reads, times and prints"
)]

use std::error::Error;
use std::io::Read as _;
use std::time::{Duration, Instant};

use arcata_xml::{Document, Limits};
use quick_xml::events::Event;
use quick_xml::reader::Reader;

const RUNS: usize = 9;

fn main() -> Result<(), Box<dyn Error>> {
    let mut bytes = Vec::new();
    std::io::stdin().read_to_end(&mut bytes)?;
    let (mut bare, mut document) = (Duration::MAX, Duration::MAX);
    let mut elements = 0;
    for _ in 0..RUNS {
        let start = Instant::now();
        let mut reader = Reader::from_reader(bytes.as_slice());
        while !matches!(reader.read_event()?, Event::Eof) {}
        bare = bare.min(start.elapsed());

        let copy = bytes.clone();
        let start = Instant::now();
        let read = Document::parse(copy, &Limits::default())?;
        document = document.min(start.elapsed());
        elements = read.elements().len();
    }
    println!("{} bytes, {elements} elements, best of {RUNS} runs", bytes.len());
    println!("tokens alone: {:6.1} ms", bare.as_secs_f64() * 1e3);
    println!("document:     {:6.1} ms", document.as_secs_f64() * 1e3);
    println!("ratio:        {:6.2}", document.as_secs_f64() / bare.as_secs_f64());
    Ok(())
}
