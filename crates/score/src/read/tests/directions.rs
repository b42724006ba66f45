//! Dynamics, hairpins and words.

use super::*;
use crate::{DynamicKind, Level, Meaning, Niente, SwellKind, SwellWriting};

#[test]
fn dynamics_stand_where_they_take_effect() {
    let bar = [
        direction("<dynamics><p/></dynamics>"),
        note("C5", 8, ""),
        direction("<dynamics><ff/></dynamics>"),
        note("D5", 8, ""),
    ];
    let score = violin(&[&bar.concat()]);
    let told: Vec<_> =
        only_part(&score).dynamics.iter().map(|d| (d.place.at.since_start(), d.kind)).collect();
    let level = DynamicKind::Level;
    assert_eq!(told, [(Length::ZERO, level(Level::P)), (whole(1, 2), level(Level::Ff))]);
}

#[test]
fn an_offset_moves_what_is_printed() {
    let late = "<direction><direction-type><dynamics><f/></dynamics></direction-type><offset>4</offset>\
                <staff>2</staff></direction>";
    let early = late.replace(">4<", ">-4<");
    let score = violin(&[&note("C5", 16, ""), &[late, &note("D5", 16, "")].concat(), &early]);
    let places: Vec<_> = only_part(&score).dynamics.iter().map(|dynamic| dynamic.place).collect();
    assert_eq!((places[0].at.since_start(), places[0].bar, places[0].staff), (whole(5, 4), 1, 2));
    // Before the beginning of its bar: it belongs to the bar before.
    assert_eq!((places[1].at.since_start(), places[1].bar), (whole(7, 4), 1));
}

#[test]
fn words_beside_dynamic_letters_are_read_with_them() {
    let dynamics = |inside: &str| direction(&format!("<dynamics>{inside}</dynamics>"));
    let bar = [
        dynamics("<p/><other-dynamics> dolce</other-dynamics>"),
        note("C5", 4, ""),
        dynamics("<other-dynamics>più</other-dynamics><f/>"),
        note("C5", 4, ""),
        dynamics("<other-dynamics>[</other-dynamics><ff/><other-dynamics>]</other-dynamics>"),
        note("C5", 4, ""),
        dynamics("<f/><p/>"),
        dynamics("<other-dynamics>ffsf</other-dynamics>"),
        note("C5", 4, ""),
    ];
    let score = violin(&[&bar.concat()]);
    let told: Vec<_> = only_part(&score).dynamics.iter().map(|dynamic| dynamic.kind).collect();
    let level = DynamicKind::Level;
    assert_eq!(
        told,
        [
            level(Level::P),
            level(Level::Mp),
            level(Level::Ff),
            DynamicKind::Shape(Level::F, Level::P),
            level(Level::Ff),
            DynamicKind::Accented(Level::F),
        ]
    );
}

#[test]
fn hairpins_have_two_ends_and_may_begin_from_nothing() {
    let bar = [
        direction("<wedge type=\"crescendo\" number=\"1\" niente=\"yes\"/>"),
        note("C5", 8, ""),
        direction("<wedge type=\"stop\" number=\"1\"/>"),
        direction("<wedge type=\"diminuendo\" number=\"1\"/>"),
        note("C5", 8, ""),
        direction("<wedge type=\"stop\" number=\"1\" niente=\"yes\"/>"),
    ];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    let swells = &only_part(&score).swells;
    assert_eq!((swells[0].kind, swells[0].niente), (SwellKind::Growing, Niente::Circle));
    assert_eq!(swells[0].end.unwrap().since_start(), whole(1, 2));
    assert_eq!((swells[1].kind, swells[1].niente), (SwellKind::Fading, Niente::Circle));
    assert_eq!(swells[1].end.unwrap().since_start(), Length::WHOLE);
}

#[test]
fn a_hairpin_whose_end_stands_first_in_the_file_is_joined() {
    // Exporters write the end after the first voice and the beginning inside the second one.
    let bar = [
        voiced("C5", 16, 1, ""),
        direction("<wedge type=\"stop\" number=\"1\"/>"),
        back(16),
        voiced("C4", 4, 2, ""),
        direction("<wedge type=\"crescendo\" number=\"1\"/>"),
        voiced("D4", 12, 2, ""),
    ];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    let swell = &only_part(&score).swells[0];
    assert_eq!(
        (swell.place.at.since_start(), swell.end.unwrap().since_start()),
        (whole(1, 4), Length::WHOLE)
    );
}

#[test]
fn hairpins_with_one_end_are_reported() {
    let bar = [
        direction("<wedge type=\"stop\" number=\"2\"/>"),
        note("C5", 16, ""),
        direction("<wedge type=\"crescendo\" number=\"1\"/>"),
    ];
    let score = violin(&[&bar.concat()]);
    assert_eq!(kinds(&score), [ProblemKind::Swell, ProblemKind::Swell]);
    assert_eq!(only_part(&score).swells[0].end, None);
}

#[test]
fn dashes_draw_out_a_word() {
    let bar = [
        "<direction><direction-type><words>cresc.</words></direction-type><direction-type>\
         <dashes type=\"start\" number=\"1\"/></direction-type></direction>"
            .to_owned(),
        note("C5", 12, ""),
        direction("<dashes type=\"stop\" number=\"1\"/>"),
        direction("<words>dim.</words>"),
        note("C5", 4, ""),
    ];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    let swells = &only_part(&score).swells;
    assert_eq!((swells[0].kind, swells[0].written), (SwellKind::Growing, SwellWriting::Word));
    assert_eq!(swells[0].end.unwrap().since_start(), whole(3, 4));
    assert_eq!((swells[1].kind, swells[1].end), (SwellKind::Fading, None));
}

#[test]
fn words_and_sounds_instruct_once() {
    let bar = [
        "<direction><direction-type><words>pizz.</words></direction-type><sound pizzicato=\"yes\"/></direction>"
            .to_owned(),
        note("C5", 8, ""),
        "<sound pizzicato=\"no\"/>".to_owned(),
        direction("<words>con</words><words>sord.</words>"),
        direction("<string-mute type=\"on\"/>"),
        note("C5", 8, ""),
    ];
    let score = violin(&[&bar.concat()]);
    let told: Vec<_> = only_part(&score)
        .instructions
        .iter()
        .map(|instruction| (instruction.meaning, instruction.text.as_str()))
        .collect();
    assert_eq!(told, [(Meaning::Pizzicato, "pizz."), (Meaning::Arco, ""), (Meaning::MuteOn, "con sord.")]);
}
