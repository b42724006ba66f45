//! Names that scores print, and what they must not be taken for.

use super::{PartHead, Recognised, RecognisedBy, players_of_score, recognise};
use crate::Instrument::{self, Bass, Cello, NotBowed, OtherBowed, Viola, Violin};
use crate::Players::{self, Section, Solo, Unknown};

fn named(name: &str) -> Recognised {
    recognise(&PartHead { name, ..PartHead::default() })
}

fn abbreviated(abbreviation: &str) -> Instrument {
    recognise(&PartHead { abbreviation, ..PartHead::default() }).instrument
}

#[test]
fn names_in_four_languages() {
    let cases: &[(&str, Instrument, Players)] = &[
        ("Violin", Violin, Unknown),
        ("Violin I", Violin, Unknown),
        ("Violin I.", Violin, Unknown),
        ("1st Violin", Violin, Unknown),
        ("1st Violins", Violin, Section),
        ("Violins I", Violin, Section),
        ("Violini I", Violin, Section),
        ("Violino principale", Violin, Solo),
        ("Solo Violin", Violin, Solo),
        ("Violino Solo", Violin, Solo),
        ("Violon", Violin, Unknown),
        ("1ers Violons", Violin, Section),
        ("Violine 2", Violin, Unknown),
        ("Violinen", Violin, Section),
        ("Geige", Violin, Unknown),
        ("Violin1", Violin, Unknown),
        ("VIOLIN II", Violin, Unknown),
        ("Viola", Viola, Unknown),
        ("Violas", Viola, Section),
        ("Viole", Viola, Section),
        ("Bratsche", Viola, Unknown),
        ("Bratschen", Viola, Section),
        ("Tutti Viola", Viola, Section),
        ("Violoncello", Cello, Unknown),
        ("Violoncelli", Cello, Section),
        ("Violoncelle", Cello, Unknown),
        ("Cello", Cello, Unknown),
        ("Celli", Cello, Section),
        ("Violoncello e Basso", Cello, Unknown),
        ("Contrabass", Bass, Unknown),
        ("Contrabbasso", Bass, Unknown),
        ("Double Bass", Bass, Unknown),
        ("Double Basses", Bass, Section),
        ("Kontrabass", Bass, Unknown),
        ("Kontrabässe", Bass, Section),
        ("Contrebasse", Bass, Unknown),
        ("Bassi", Bass, Section),
        ("String Bass", Bass, Unknown),
        ("Viola da gamba", OtherBowed, Unknown),
        ("Viola d'amore", OtherBowed, Unknown),
        ("Viole d’amour", OtherBowed, Unknown),
        ("Violoncello piccolo", OtherBowed, Unknown),
        ("Violone", OtherBowed, Unknown),
        ("Bass Viol", OtherBowed, Unknown),
        ("Basse de viole", OtherBowed, Unknown),
        ("Strings", OtherBowed, Section),
    ];
    for (name, instrument, players) in cases {
        let read = named(name);
        assert_eq!((read.instrument, read.players), (*instrument, *players), "{name}");
        assert_eq!(read.by, RecognisedBy::Name, "{name}");
    }
}

#[test]
fn names_that_only_look_like_strings() {
    for name in [
        "Bass Clarinet",
        "Bassoon",
        "Bassoon 1",
        "Contrabassoon",
        "Contralto",
        "Contratenor",
        "Bass Drum",
        "Bass Guitar",
        "Bass Trombone",
        "Basso continuo",
        "Basson",
        "Kontrafagott",
        "Alto Saxophone",
        "Alto",
        "Alto Flute",
        "Bass",
        "Bass solo",
        "Bb (basso) Horn 3",
        "Bb Clarinet 1",
        "Basset Horn",
        "Altos",
        "Piano",
        "Soprano Oboe 1 Violin1",
        "P1",
        "",
        "Violinist's friend",
        "Celesta",
        "Klarinette",
        "Viola\u{301}x",
    ] {
        assert_eq!(named(name).instrument, NotBowed, "{name}");
        assert_eq!(named(name).players, Unknown, "{name}");
    }
}

#[test]
fn abbreviations() {
    let cases = [
        ("Vn", Violin),
        ("Vln. I", Violin),
        ("Vl.", Violin),
        ("V.I", Violin),
        ("V. II", Violin),
        ("Vn1", Violin),
        ("Vni I", Violin),
        ("Vla.", Viola),
        ("Va", Viola),
        ("Vle.", Viola),
        ("Vc.", Cello),
        ("Vlc.", Cello),
        ("Vcl", Cello),
        ("Cb.", Bass),
        ("Kb.", Bass),
        ("D.B.", Bass),
        ("Db", Bass),
        ("Vc. e Cb.", Cello),
        ("B. Cl.", NotBowed),
        ("Bsn", NotBowed),
        ("A.", NotBowed),
        ("B.", NotBowed),
        ("B", NotBowed),
        ("V.", NotBowed),
        ("C Bsn", NotBowed),
        ("Hn.", NotBowed),
        ("Br.", NotBowed),
    ];
    for (abbreviation, instrument) in cases {
        assert_eq!(abbreviated(abbreviation), instrument, "{abbreviation}");
    }
}

#[test]
fn sound_and_program_settle_what_a_name_leaves_open() {
    let head = |name, sound, program| {
        recognise(&PartHead { name, instrument_sound: sound, midi_program: program, ..PartHead::default() })
    };
    let cases = [
        (head("Bass", "strings.contrabass", None), Bass),
        (head("Bass", "voice.bass", Some(44)), NotBowed),
        (head("Bass", "pluck.bass.electric", None), NotBowed),
        (head("Bass", "", Some(44)), Bass),
        (head("Bass", "", Some(1)), NotBowed),
        (head("Bass", "", Some(33)), NotBowed),
        (head("Basso", "voice.bass", Some(53)), NotBowed),
        (head("Alto", "strings.viola", None), Viola),
        (head("Alto", "voice.alto", Some(53)), NotBowed),
        (head("Alto", "", Some(42)), Viola),
        (head("Violone e Organo", "strings.cello", Some(1)), OtherBowed),
        (head("Violone e Organo", "", Some(1)), NotBowed),
        (head("", "strings.viola", Some(1)), Viola),
        (head("P1", "strings.group", None), OtherBowed),
        (head("P1", "pluck.harp", Some(41)), NotBowed),
        (head("P1", "strings.viol.bass", None), OtherBowed),
        (head("P1", "", Some(43)), Cello),
        (head("P1", "", Some(49)), OtherBowed),
        (head("P1", "", Some(0)), NotBowed),
        // The name is what players read: playback often shares one sound among the strings.
        (head("Cello", "", Some(41)), Cello),
        (head("Violin II", "", Some(43)), Violin),
        (head("Bass Drum", "", Some(49)), NotBowed),
        (head("Triangle", "", Some(49)), NotBowed),
    ];
    for (index, (read, instrument)) in cases.iter().enumerate() {
        assert_eq!(read.instrument, *instrument, "case {index}");
    }
    assert_eq!(head("P1", "strings.group", None).players, Section);
    assert_eq!(head("P1", "", Some(43)).by, RecognisedBy::MidiProgram);
    assert_eq!(head("P1", "", None).by, RecognisedBy::Nothing);
}

#[test]
fn a_playback_sound_does_not_make_a_section() {
    let read = recognise(&PartHead {
        name: "Violin I",
        abbreviation: "Vln. I",
        instrument_name: "String Ensemble 1",
        instrument_sound: "strings.group",
        midi_program: Some(49),
    });
    assert_eq!((read.instrument, read.players), (Violin, Unknown));
}

fn company(names: &[&str]) -> Vec<Players> {
    players_of_score(&names.iter().map(|name| named(name)).collect::<Vec<_>>())
}

#[test]
fn chamber_music_is_one_to_a_part() {
    assert_eq!(company(&["Violin I", "Violin II", "Viola", "Violoncello"]), [Solo; 4]);
    assert_eq!(company(&["Violin", "Piano"]), [Solo, Unknown]);
    assert_eq!(company(&["Cello"]), [Solo]);
    assert_eq!(company(&["Clarinet in A", "Violin I", "Violin II", "Viola", "Cello"])[1..], [Solo; 4]);
    assert!(company(&[]).is_empty());
}

#[test]
fn orchestras_have_sections() {
    assert_eq!(company(&["Violin I", "Violin II", "Viola", "Violoncello", "Contrabass"]), [Section; 5]);
    let orchestra = [
        "Flute 1",
        "Oboe 1",
        "Clarinet 1",
        "Bassoon 1",
        "Horn 1",
        "Trumpet 1",
        "Violin 1",
        "Violin 2",
        "Viola",
        "Cello",
    ];
    assert_eq!(company(&orchestra)[6..], [Section; 4]);
    assert_eq!(company(&orchestra)[0], Unknown);
    assert_eq!(
        company(&["Solo Violin", "Violini I", "Violin II", "Viola"]),
        [Solo, Section, Section, Section]
    );
}
