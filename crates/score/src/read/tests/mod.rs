//! Reading, feature by feature, on small scores written out here.

mod bad_input;
mod bars;
mod directions;
mod laws;
mod marks;
mod movements;
mod slurs_and_ties;
mod tempo;
mod time;

use arcata_xml::{Document, Limits};

use crate::{Length, Note, Part, ProblemKind, Score, read};

/// Reads a document.
fn score_of(xml: &str) -> Score {
    read(&Document::parse(xml.as_bytes().to_vec(), &Limits::default()).expect("well-formed"))
}

/// Reads a fixture in the testkit's notation.
fn fixture(text: &str) -> Score {
    score_of(&arcata_testkit::musicxml(text))
}

/// A score of one violin part around its `<measure>`s, each given by its content. Four divisions make a
/// quarter note, the first bar is in 4/4 unless it says otherwise.
fn violin(bars: &[&str]) -> Score {
    score_of(&violin_xml(bars))
}

fn violin_xml(bars: &[&str]) -> String {
    let mut music = String::new();
    for (index, bar) in bars.iter().enumerate() {
        let start = if index == 0 { "<attributes><divisions>4</divisions></attributes>" } else { "" };
        music.push_str(&format!("<measure number=\"{}\">{start}{bar}</measure>", index + 1));
    }
    format!(
        "<score-partwise version=\"4.0\"><part-list><score-part id=\"P1\"><part-name>Violin</part-name>\
         </score-part></part-list><part id=\"P1\">{music}</part></score-partwise>"
    )
}

/// A note: pitch as letter and octave, duration in divisions, and whatever else stands in it, in any order.
fn note(pitch: &str, duration: u32, more: &str) -> String {
    let (step, octave) = pitch.split_at(1);
    format!(
        "<note><pitch><step>{step}</step><octave>{octave}</octave></pitch><duration>{duration}</duration>\
         {more}</note>"
    )
}

/// A note in a voice.
fn voiced(pitch: &str, duration: u32, voice: u32, more: &str) -> String {
    note(pitch, duration, &format!("<voice>{voice}</voice>{more}"))
}

fn rest(duration: u32) -> String {
    format!("<note><rest/><duration>{duration}</duration></note>")
}

fn direction(kind: &str) -> String {
    format!("<direction><direction-type>{kind}</direction-type></direction>")
}

fn back(duration: u32) -> String {
    format!("<backup><duration>{duration}</duration></backup>")
}

fn slur(end: &str, number: u32) -> String {
    format!("<notations><slur type=\"{end}\" number=\"{number}\"/></notations>")
}

fn only_part(score: &Score) -> &Part {
    assert_eq!(score.parts.len(), 1);
    &score.parts[0]
}

/// Onsets and lengths, in whole notes.
fn times(notes: &[Note]) -> Vec<(Length, Length)> {
    notes.iter().map(|note| (note.onset.since_start(), note.length)).collect()
}

fn whole(numerator: i64, denominator: i64) -> Length {
    Length::new(numerator, denominator)
}

fn kinds(score: &Score) -> Vec<ProblemKind> {
    score.problems.iter().map(|problem| problem.kind).collect()
}

fn assert_sound(score: &Score) {
    assert!(score.problems.is_empty(), "{:?}", score.problems);
}
