//! Tempo marks.

use super::*;
use crate::TempoKind;

fn told(music: &str) -> Vec<(TempoKind, String)> {
    let score = violin(&[&[music, &note("C5", 16, "")].concat()]);
    assert_sound(&score);
    score.tempos.into_iter().map(|tempo| (tempo.kind, tempo.text)).collect()
}

fn quarters(speed: i64) -> TempoKind {
    TempoKind::Marked(Length::new(speed, 1))
}

#[test]
fn metronome_marks_count_in_quarter_notes() {
    let mark =
        "<metronome><beat-unit>half</beat-unit><beat-unit-dot/><per-minute>c. 60</per-minute></metronome>";
    assert_eq!(told(&direction(mark)), [(quarters(180), "half. = c. 60".to_owned())]);
}

#[test]
fn a_word_takes_the_number_beside_it() {
    let words = "<direction-type><words>Allegro</words></direction-type>";
    let silent = format!("<direction>{words}<sound tempo=\"126\"/></direction>");
    assert_eq!(told(&silent), [(quarters(126), "Allegro".to_owned())]);
    let printed = format!(
        "<direction>{words}<direction-type><metronome><beat-unit>quarter</beat-unit><per-minute>120</per-minute>\
         </metronome></direction-type><sound tempo=\"126\"/></direction>"
    );
    assert_eq!(told(&printed), [(quarters(120), "Allegro quarter = 120".to_owned())]);
}

#[test]
fn a_sound_alone_is_a_tempo() {
    assert_eq!(told("<sound tempo=\"88.5\"/>"), [(TempoKind::Marked(Length::new(177, 2)), String::new())]);
}

#[test]
fn a_gradual_change_is_not_hidden_by_its_playback() {
    let slowing =
        "<direction><direction-type><words>rit.</words></direction-type><sound tempo=\"80\"/></direction>";
    assert_eq!(told(slowing), [(TempoKind::Slowing, "rit.".to_owned())]);
}

#[test]
fn modulations_in_both_ways_of_writing() {
    let modulation = TempoKind::Modulation(whole(1, 4), whole(3, 8));
    let short =
        "<metronome><beat-unit>quarter</beat-unit><beat-unit>quarter</beat-unit><beat-unit-dot/></metronome>";
    assert_eq!(told(&direction(short))[0].0, modulation);
    let long = "<metronome><metronome-note><metronome-type>quarter</metronome-type></metronome-note>\
                <metronome-relation>equals</metronome-relation><metronome-note><metronome-type>quarter\
                </metronome-type><metronome-dot/></metronome-note></metronome>";
    assert_eq!(told(&direction(long))[0].0, modulation);
}

/// MusicXML 4.0: beat-unit-tied is "a beat-unit within a metronome mark that is tied to the preceding beat-unit".
#[test]
fn tied_beat_units_are_one_beat() {
    let tied = "<beat-unit-tied><beat-unit>eighth</beat-unit></beat-unit-tied>";
    let mark = format!("<metronome><beat-unit>half</beat-unit>{tied}<per-minute>48</per-minute></metronome>");
    assert_eq!(told(&direction(&mark)), [(quarters(120), "half + eighth = 48".to_owned())]);
    let dotted = "<beat-unit-tied><beat-unit>quarter</beat-unit><beat-unit-dot/></beat-unit-tied>";
    let mark = format!(
        "<metronome><beat-unit>quarter</beat-unit><beat-unit-dot/>{dotted}{tied}<per-minute>60</per-minute></metronome>"
    );
    assert_eq!(
        told(&direction(&mark)),
        [(TempoKind::Marked(Length::new(210, 1)), "quarter. + quarter. + eighth = 60".to_owned())]
    );
    let modulation =
        format!("<metronome><beat-unit>quarter</beat-unit>{tied}<beat-unit>quarter</beat-unit></metronome>");
    assert_eq!(told(&direction(&modulation))[0].0, TempoKind::Modulation(whole(3, 8), whole(1, 4)));
}

#[test]
fn what_every_part_says_is_told_once() {
    let score = fixture("quarter=96\nviolin: 1/1 C4 |||\nviola: 1/1 C3 |||");
    assert_eq!(score.tempos.len(), 1);
}
