//! What printed texts say, and what they do not. The readings are common practice.

use super::{WordMeaning, meanings};
use crate::DynamicKind::{Accented, Level as Lasting, Shape};
use crate::Level::{F, Ff, Mf, P, Pp};
use crate::Meaning::{
    AllDownBows, Arco, AsItComes, AtFrog, AtTip, ColLegno, ColLegnoBattuto, Detache, Divisi, FreeBowing,
    HalfSection, Legato, LevelWord, Martele, MiddleOfBow, MuteOff, MuteOn, NonDivisi, OffString, OnString,
    Ordinario, Pizzicato, Sautille, Simile, Solo, Spiccato, StaccatoWord, Subito, SulPonticello, SulTasto,
    TenutoWord, Thrown, TremoloWord, Tutti, Unison, WholeBow,
};
use crate::SwellKind::{Fading, Growing};
use crate::TempoKind::Slowing;
use crate::{Jump, Meaning, SwellKind, TempoKind};

mod tempo;

fn tempo(kind: TempoKind) -> WordMeaning {
    WordMeaning::Tempo(kind)
}

fn instructions(text: &str) -> Vec<Meaning> {
    meanings(text)
        .into_iter()
        .map(|meaning| match meaning {
            WordMeaning::Instruction(meaning) => meaning,
            other => panic!("{text:?} says {other:?} too"),
        })
        .collect()
}

#[test]
fn playing_instructions_in_four_languages() {
    let cases: &[(&[&str], &[Meaning])] = &[
        (
            &["pizz.", "Pizz.", "PIZZ", "pizzicato", "(pizz.)", "[pizz]", "gezupft", "pincé", "p\u{69}zz.\n"],
            &[Pizzicato],
        ),
        (
            &[
                "arco",
                "Arco.",
                "coll'arco",
                "col arco",
                "con l’arco",
                "archet",
                "avec l'archet",
                "gestrichen",
                "bowed",
            ],
            &[Arco],
        ),
        (
            &[
                "con sord.",
                "con sordino",
                "con sordini",
                "Con sord",
                "mit Dämpfer",
                "mit Dämpfern",
                "mit Daempfer",
                "avec sourdine",
                "avec la sourdine",
                "mettez la Sourd.",
                "Sourd.",
                "muted",
                "with mute",
                "mutes on",
                "con mute",
                "sord.",
            ],
            &[MuteOn],
        ),
    ];
    check(cases);
}

#[test]
fn mutes_bridge_and_wood_in_four_languages() {
    let cases: &[(&[&str], &[Meaning])] = &[
        (
            &[
                "senza sord.",
                "senza sordino",
                "via sord.",
                "via sordini",
                "ohne Dämpfer",
                "Dämpfer weg",
                "Dämpfer ab",
                "ôtez les sourdines",
                "ôtez la Sourd.",
                "enlevez la sourdine",
                "sans sourdine",
                "mute off",
                "unmuted",
                "without mutes",
                "s. sord.",
                "levare i sordini",
                "O\u{302}tez les sourdines",
            ],
            &[MuteOff],
        ),
        (
            &[
                "sul pont.",
                "sul ponticello",
                "Sul Pont",
                "am Steg",
                "sur le chevalet",
                "au chevalet",
                "near the bridge",
            ],
            &[SulPonticello],
        ),
        (
            &[
                "sul tasto",
                "sulla tastiera",
                "flautando",
                "auf dem Griffbrett",
                "am Griffbrett",
                "sur la touche",
                "over the fingerboard",
            ],
            &[SulTasto],
        ),
        (
            &[
                "ord.",
                "modo ord.",
                "nat.",
                "pos. nat.",
                "naturale",
                "jeu ord.",
                "position naturelle",
                "gewöhnlich",
                "in gewöhnlicher Lage",
                "normale",
                "al ordinario",
                "Nat.",
            ],
            &[Ordinario],
        ),
        (
            &[
                "col legno",
                "c.l.",
                "c. l.",
                "mit dem Holz",
                "avec le bois",
                "col legno (tratto)",
                "col legno gestrichen",
            ],
            &[ColLegno],
        ),
        (
            &[
                "col legno (batt.)",
                "col legno battuto",
                "c. l. batt.",
                "geschlagen",
                "mit dem Holz geschlagen",
                "col legno geschlagen",
            ],
            &[ColLegnoBattuto],
        ),
    ];
    check(cases);
}

#[test]
fn players_in_four_languages() {
    let cases: &[(&[&str], &[Meaning])] = &[
        (&["div.", "divisi", "div", "geteilt", "getheilt", "divisés", "divided", "Div."], &[Divisi(2)]),
        (
            &[
                "div. a 3",
                "divisi in 3",
                "div. in tre",
                "dreifach geteilt",
                "3fach geteilt",
                "divisés à 3",
                "div. à trois",
                "div. a 3 parti",
                "in 3 geteilt",
            ],
            &[Divisi(3)],
        ),
        (&["div. a 4", "vierfach geteilt", "divisi in quattro"], &[Divisi(4)]),
        (&["unis.", "unisono", "unisson", "à l'unisson", "zusammen", "unison"], &[Unison]),
        (&["non div.", "non divisi", "nicht geteilt", "pas divisés", "Non div"], &[NonDivisi]),
        (&["solo", "Solo", "soli", "allein", "1 solo", "Solo violin"], &[Solo]),
        (&["tutti", "Tutti", "gli altri", "die Übrigen", "les autres", "the others", "alle"], &[Tutti]),
        (
            &[
                "1 Pult",
                "1. Pult allein",
                "2 Pulte",
                "die Hälfte",
                "la metà",
                "metà",
                "la moitié",
                "half the section",
                "1 desk",
                "2 stands",
                "1 leggio",
                "1er pupitre",
                "½",
            ],
            &[HalfSection],
        ),
    ];
    check(cases);
}

#[test]
fn strokes_in_four_languages() {
    let cases: &[(&[&str], &[Meaning])] = &[
        (&["spicc.", "spiccato", "saltando", "springend"], &[Spiccato]),
        (&["sautillé"], &[Sautille]),
        (&["jeté", "ricochet", "gettato", "geworfen"], &[Thrown]),
        (&["martelé", "martellato"], &[Martele]),
        (&["détaché", "détachez"], &[Detache]),
        (&["legato", "sempre legatissimo", "très lié", "gebunden"], &[Legato]),
        (&["stacc.", "sempre staccato", "staccato assai"], &[StaccatoWord]),
        (&["ten.", "tenuto", "sost.", "soutenu", "sostenuto"], &[TenutoWord]),
        (&["on the string", "alla corda", "à la corde", "auf der Saite", "on the string."], &[OnString]),
        (&["off the string", "hors la corde"], &[OffString]),
        (&["am Frosch", "au talon", "du talon", "al tallone", "at the frog", "at the heel"], &[AtFrog]),
        (
            &[
                "punta d'arco",
                "a punta d’arco",
                "an der Spitze",
                "a. d. Sp.",
                "à la pointe",
                "at the tip",
                "col punto d'arco",
                "colla punta dell'arco",
            ],
            &[AtTip],
        ),
        (
            &[
                "nel mezzo dell'arco",
                "in der Mitte des Bogens",
                "au milieu de l'archet",
                "in the middle of the bow",
            ],
            &[MiddleOfBow],
        ),
        (&["mit ganzem Bogen", "tutto l'arco", "whole bow", "de tout l'archet", "ganzer Bogen"], &[WholeBow]),
        (
            &[
                "free bowing",
                "bow freely",
                "stagger bows",
                "freier Bogenwechsel",
                "archets libres",
                "archi liberi",
            ],
            &[FreeBowing],
        ),
        (&["all down-bows", "sempre in giù", "immer Abstrich", "toujours tiré"], &[AllDownBows]),
        (&["as it comes", "come viene", "wie es kommt", "comme ça vient"], &[AsItComes]),
        (&["trem.", "tremolo"], &[TremoloWord]),
        (&["simile", "sim.", "segue"], &[Simile]),
    ];
    check(cases);
}

fn check(cases: &[(&[&str], &[Meaning])]) {
    for (texts, expected) in cases {
        for text in *texts {
            assert_eq!(instructions(text), *expected, "{text:?}");
        }
    }
}

#[test]
fn several_instructions_in_one_text() {
    assert_eq!(instructions("arco, div. unis."), [Arco, Divisi(2), Unison]);
    assert_eq!(instructions("pizz. con sord."), [Pizzicato, MuteOn]);
    assert_eq!(instructions("arco senza sord., sul pont."), [Arco, MuteOff, SulPonticello]);
    assert_eq!(instructions("tremolo sul ponticello"), [TremoloWord, SulPonticello]);
    assert_eq!(instructions("unis. pizz."), [Unison, Pizzicato]);
    assert_eq!(instructions("arco, punta d'arco"), [Arco, AtTip]);
    assert_eq!(instructions("sempre stacc. e piano"), [StaccatoWord, LevelWord(P)]);
    assert_eq!(instructions("pizz.\narco"), [Pizzicato, Arco]);
}

#[test]
fn nothing_is_read_into_other_words() {
    for text in [
        "",
        " ",
        "...",
        "dolce",
        "espressivo",
        "espress.",
        "parco",
        "sparco",
        "Marco",
        "non legato",
        "non cresc.",
        "senza cresc.",
        "senza rit.",
        "sans ralentir",
        "senza vibrato",
        "non trem.",
        "sempre non legato",
        "poco",
        "sempre",
        "ma",
        "molto",
        "poco a poco",
        "sul G",
        "sul D",
        "sul IV",
        "sul una corda",
        "IV corda",
        "G string",
        "4 string",
        "Corde IV",
        "ten",
        "f minor is not the key of this piece at all",
        "Trio",
        "Menuetto",
        "mezza voce",
        "sotto voce",
        "colla voce",
        "ad lib.",
        "cantabile",
        "breit",
        "tranquillo",
        "animato",
        "con fuoco",
        "lunga",
        "G.P.",
        "attacca subito",
        "div- i- no",
        "ar- co- ba- le- no",
        "det- lie",
        "vi- vo",
        "che m'ha solo lasciato nel dolore",
        "mio cor che presso forte batte ognor",
        "C",
        "A",
        "B.",
        "P",
        "F",
        "Heilig ist unser Gott",
        "Vl. II",
        "(Cello)",
        "1. Pos.",
        "12",
        "VII",
        "rolled",
        "direction",
        "pont",
        "fortepianos",
        "restez",
    ] {
        assert_eq!(meanings(text), [], "{text:?}");
    }
}

#[test]
fn swells() {
    for text in [
        "cresc.",
        "Cresc.",
        "cresc",
        "crescendo",
        "poco a poco cresc.",
        "cresc. molto",
        "cre - scen - do",
        "immer stärker",
        "en augmentant",
        "anwachsend",
    ] {
        assert_eq!(meanings(text), [WordMeaning::Swell(Growing)], "{text:?}");
    }
    for text in [
        "dim.",
        "decresc.",
        "diminuendo",
        "di-mi-nu-en-do",
        "perdendosi",
        "mancando",
        "smorz.",
        "en diminuant",
        "abnehmend",
        "fading",
    ] {
        assert_eq!(meanings(text), [WordMeaning::Swell(Fading)], "{text:?}");
    }
    for text in ["morendo", "calando"] {
        assert_eq!(meanings(text), [WordMeaning::Swell(Fading), tempo(Slowing)], "{text:?}");
    }
    assert_eq!(meanings("molto cresc.e rit. "), [WordMeaning::Swell(Growing), tempo(Slowing)]);
}

#[test]
fn levels_in_words_and_letters() {
    let lasting = |level| WordMeaning::Dynamic(Lasting(level));
    let word = |level| WordMeaning::Instruction(LevelWord(level));
    let subito = WordMeaning::Instruction(Subito);
    let step = |kind: SwellKind| WordMeaning::LevelStep(kind);
    let cases: &[(&str, &[WordMeaning])] = &[
        ("f", &[lasting(F)]),
        ("sempre pp", &[lasting(Pp)]),
        ("p cresc.", &[lasting(P), WordMeaning::Swell(Growing)]),
        ("p sub.", &[lasting(P), subito.clone()]),
        ("subito p", &[subito.clone(), lasting(P)]),
        ("subito piano", &[subito.clone(), word(P)]),
        ("sempre f e staccato", &[lasting(F), WordMeaning::Instruction(StaccatoWord)]),
        ("mf", &[lasting(Mf)]),
        ("forte", &[word(F)]),
        ("mezzo forte", &[word(Mf)]),
        ("fortissimo", &[word(Ff)]),
        ("pianissimo", &[word(Pp)]),
        ("sehr leise", &[word(Pp)]),
        ("più f", &[step(Growing)]),
        ("sempre piu p", &[step(Fading)]),
        ("meno forte", &[step(Fading)]),
        ("sf", &[WordMeaning::Dynamic(Accented(F))]),
        ("fp", &[WordMeaning::Dynamic(Shape(F, P))]),
    ];
    for (text, expected) in cases {
        assert_eq!(meanings(text), *expected, "{text:?}");
    }
}

#[test]
fn signs_of_the_road() {
    let cases = [
        ("D.C.", Jump::DaCapo),
        ("D. C. al Fine", Jump::DaCapo),
        ("D.C.\nal Fine", Jump::DaCapo),
        ("Menuetto da Capo", Jump::DaCapo),
        ("Menuetto D.C.", Jump::DaCapo),
        ("M.D.C.", Jump::DaCapo),
        ("D.S.", Jump::DalSegno),
        ("D.S. al Coda", Jump::DalSegno),
        ("dal segno al fine", Jump::DalSegno),
        ("Fine", Jump::Fine),
        ("FINE.", Jump::Fine),
        ("To Coda", Jump::ToCoda),
        ("al Coda", Jump::ToCoda),
        ("Coda", Jump::Coda),
        ("segno", Jump::Segno),
    ];
    for (text, jump) in cases {
        assert_eq!(meanings(text), [WordMeaning::Jump(jump)], "{text:?}");
    }
}

mod hostile {
    use proptest::prelude::*;

    use super::meanings;

    proptest! {
        #[test]
        fn any_text_is_read_alike_twice(text in "\\PC{0,60}") {
            prop_assert_eq!(meanings(&text), meanings(&text));
        }

        #[test]
        fn known_words_in_any_order_do_not_upset_the_reader(
            words in prop::collection::vec(
                prop::sample::select(vec!["div.", "a", "3", "non", "senza", "sord.", "Allegro", "poco", "D.", "C.", "p", "=", "♩", ","]),
                0..12,
            )
        ) {
            let text = words.join(" ");
            prop_assert!(meanings(&text).len() <= words.len() * 2);
        }
    }
}
