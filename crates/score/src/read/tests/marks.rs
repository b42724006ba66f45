//! Marks on single notes.

use super::*;
use crate::{
    Arpeggio, Articulation, BowDirection, DynamicKind, Fermata, Harmonic, Level, Notehead, OpenString,
    Ornament, Plucked, TremoloRole,
};

/// Reads one note of a whole bar with the given notations.
fn with(notations: &str) -> Note {
    let score = violin(&[&note("C5", 16, &format!("<notations>{notations}</notations>"))]);
    assert_sound(&score);
    only_part(&score).notes[0].clone()
}

#[test]
fn articulations() {
    for (name, mark) in [
        ("staccato", Articulation::Staccato),
        ("staccatissimo", Articulation::Staccatissimo),
        ("tenuto", Articulation::Tenuto),
        ("detached-legato", Articulation::DetachedLegato),
        ("accent", Articulation::Accent),
        ("strong-accent", Articulation::StrongAccent),
        ("soft-accent", Articulation::SoftAccent),
        ("stress", Articulation::Stress),
        ("unstress", Articulation::Unstress),
        ("spiccato", Articulation::Spiccato),
        ("breath-mark", Articulation::Breath),
        ("caesura", Articulation::Caesura),
        ("falloff", Articulation::Slide),
    ] {
        let note = with(&format!("<articulations><{name}/></articulations>"));
        assert!(note.articulations.has(mark), "{name}");
        assert_eq!(note.articulations.0.count_ones(), 1, "{name}");
    }
}

#[test]
fn bow_marks_know_their_element_and_a_second_one_is_kept() {
    let xml =
        violin_xml(&[&note("C5", 16, "<notations><technical><up-bow/><down-bow/></technical></notations>")]);
    let document = Document::parse(xml.into_bytes(), &Limits::default()).unwrap();
    let score = read(&document);
    let note = &only_part(&score).notes[0];
    let first = note.bow_mark.unwrap();
    assert_eq!(first.direction, BowDirection::Up);
    assert_eq!(document.element(first.node).unwrap().name(), "up-bow");
    assert_eq!(note.more_bow_marks[0].direction, BowDirection::Down);
}

/// `print-object="no"`: "specifies whether or not to print an object" (MusicXML 4.0): what is not printed nobody plays.
#[test]
fn hidden_notes_take_time_and_nothing_else() {
    let hide = |note: String| note.replacen("<note>", "<note print-object=\"no\">", 1);
    let chord = |note: String| note.replacen("<pitch>", "<chord/><pitch>", 1);
    let marks = "<notations><tied type=\"start\"/><technical><up-bow/></technical><articulations><staccato/>\
                 </articulations><fermata/></notations>";
    let bar = [
        note("C5", 4, ""),
        hide(note("D5", 4, marks)),
        hide(note("E5", 4, "")),
        chord(note("G5", 4, "")),
        note("F5", 4, ""),
        hide(chord(note("A5", 4, ""))),
    ];
    let score = violin(&[&bar.concat()]);
    assert_sound(&score);
    let notes = &only_part(&score).notes;
    let pitches: Vec<bool> = notes.iter().map(|note| note.pitch.is_rest()).collect();
    assert_eq!(pitches, [false, true, true, false, false], "the hidden note of the last chord is gone");
    let blank = &notes[1];
    assert_eq!((blank.bow_mark, blank.fermata, blank.tie), (None, Fermata::None, crate::Tie::default()));
    assert!(blank.articulations.is_empty());
    assert_eq!(notes[3].chord, crate::ChordRole::Main, "of a chord the first note that is printed leads");
    assert_eq!(notes[3].onset, notes[2].onset);
    assert_eq!(notes[4].onset.since_start(), whole(3, 4));
}

/// A slur that ends on a hidden note is printed up to the nearest note that is.
#[test]
fn slurs_on_hidden_notes_stay_slurs() {
    let ends = |end: &str| format!("<notations><slur type=\"{end}\"/></notations>");
    let hidden = note("D5", 8, &ends("stop")).replacen("<note>", "<note print-object=\"no\">", 1);
    let score = violin(&[&[note("C5", 8, &ends("start")), hidden].concat()]);
    assert_sound(&score);
    assert_eq!(only_part(&score).slurs.len(), 1);
}

/// MusicXML 4.0: a notehead and a stem may be "none"; where both are, nothing of the note is printed.
#[test]
fn a_note_without_head_and_stem_is_read_by_nobody() {
    let of = |signs: &str| {
        let score = violin(&[&[note("C5", 8, signs), note("D5", 8, "")].concat()]);
        assert_sound(&score);
        only_part(&score).notes[0].pitch.is_rest()
    };
    assert!(of("<stem>none</stem><notehead>none</notehead>"));
    assert!(!of("<notehead>none</notehead>") && !of("<stem>none</stem>"));
}

#[test]
fn technical_marks() {
    assert_eq!(with("<technical><harmonic/></technical>").technical.harmonic, Harmonic::Natural);
    let artificial = "<technical><harmonic><artificial/></harmonic></technical>";
    assert_eq!(with(artificial).technical.harmonic, Harmonic::Artificial);
    assert_eq!(with("<technical><string>3</string></technical>").technical.string, 3);
    let open = with("<technical><open-string/></technical>").technical.open_string;
    assert_eq!(open, OpenString::Written);
    assert_eq!(with("<technical><snap-pizzicato/></technical>").technical.plucked, Plucked::Snap);
    assert_eq!(with("<technical><stopped/></technical>").technical.plucked, Plucked::LeftHand);
}

#[test]
fn ornaments() {
    for (name, ornament) in [
        ("trill-mark", Ornament::Trill),
        ("turn", Ornament::Turn),
        ("inverted-turn", Ornament::Turn),
        ("mordent", Ornament::Mordent),
        ("inverted-mordent", Ornament::Mordent),
        ("schleifer", Ornament::Other),
    ] {
        assert_eq!(with(&format!("<ornaments><{name}/></ornaments>")).ornament, Some(ornament), "{name}");
    }
}

#[test]
fn tremolos_on_one_note_and_between_two() {
    let single = with("<ornaments><tremolo type=\"single\">3</tremolo></ornaments>").tremolo.unwrap();
    assert_eq!((single.role, single.beams), (TremoloRole::Single, 3));
    let free = with("<ornaments><tremolo type=\"unmeasured\">3</tremolo></ornaments>").tremolo.unwrap();
    assert_eq!((free.role, free.beams), (TremoloRole::Single, 0));
    // Two notes that alternate are each drawn with the value of both together.
    let edge = |end: &str| {
        format!(
            "<type>whole</type><notations><ornaments><tremolo type=\"{end}\">2</tremolo></ornaments></notations>"
        )
    };
    let score = violin(&[&[note("C5", 8, &edge("start")), note("E5", 8, &edge("stop"))].concat()]);
    assert_sound(&score);
    let roles: Vec<_> = only_part(&score).notes.iter().map(|note| note.tremolo.unwrap().role).collect();
    assert_eq!(roles, [TremoloRole::PairStart, TremoloRole::PairStop]);
}

#[test]
fn a_wavy_line_trills_every_note_under_it() {
    let wave = |end: &str| {
        format!("<notations><ornaments><wavy-line type=\"{end}\" number=\"1\"/></ornaments></notations>")
    };
    let bar =
        [note("C5", 4, &wave("start")), note("D5", 4, ""), note("E5", 4, &wave("stop")), note("F5", 4, "")];
    let score = violin(&[&bar.concat()]);
    let trilled: Vec<bool> = only_part(&score).notes.iter().map(|note| note.ornament.is_some()).collect();
    assert_eq!(trilled, [true, true, true, false]);
}

#[test]
fn a_wavy_line_without_end_trills_one_note() {
    let wave = "<notations><ornaments><wavy-line type=\"start\"/></ornaments></notations>";
    let score = violin(&[&[note("C5", 8, wave), note("D5", 8, "")].concat()]);
    let trilled: Vec<bool> = only_part(&score).notes.iter().map(|note| note.ornament.is_some()).collect();
    assert_eq!(trilled, [true, false]);
}

#[test]
fn fermatas_arpeggios_and_noteheads() {
    assert_eq!(with("<fermata/>").fermata, Fermata::Held);
    assert_eq!(with("<arpeggiate/>").arpeggio, Arpeggio::Rolled);
    assert_eq!(with("<non-arpeggiate type=\"bottom\"/>").arpeggio, Arpeggio::NotRolled);
    for (head, shape) in
        [("x", Notehead::Cross), ("diamond", Notehead::Diamond), ("normal", Notehead::Ordinary)]
    {
        let score = violin(&[&note("C5", 16, &format!("<notehead>{head}</notehead>"))]);
        assert_eq!(only_part(&score).notes[0].notehead, shape);
    }
}

#[test]
fn dynamics_may_hang_on_a_note() {
    let bar = [rest(8), note("C5", 8, "<notations><dynamics><sfp/></dynamics></notations>")].concat();
    let score = violin(&[&bar]);
    let dynamic = &only_part(&score).dynamics[0];
    assert_eq!(dynamic.kind, DynamicKind::Shape(Level::F, Level::P));
    assert_eq!(dynamic.place.at.since_start(), whole(1, 2));
    assert_eq!(dynamic.place.voice, Some(0));
}
