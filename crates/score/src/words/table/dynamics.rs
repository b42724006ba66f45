//! How loud: levels in words and letters, growing and fading.

use super::{Sense, TableEntry, When, entry, only};
use crate::DynamicKind::{Accented, Level as Lasting, Shape};
use crate::Level::{F, Ff, Fff, Mf, Mp, P, Pp, Ppp};
use crate::Meaning::{LevelWord, Subito};
use crate::SwellKind::{Fading, Growing};
use crate::words::WordLanguage::{English, French, German, Italian};

const GROWING: &[Sense] = &[Sense::Swell(Growing)];
const FADING: &[Sense] = &[Sense::Swell(Fading)];
/// Words that fade and hold back at once.
const DYING: &[Sense] = &[Sense::Swell(Fading), Sense::Slowing];
const SUBITO: &[Sense] = &[Sense::Instruction(Subito)];
const LOUDER: &[Sense] = &[Sense::LevelStep(Growing)];
const SOFTER: &[Sense] = &[Sense::LevelStep(Fading)];

/// A level said in a word.
macro_rules! word {
    ($level:expr) => {
        &[Sense::Instruction(LevelWord($level))]
    };
}

/// Dynamic letters; they count only in small letters.
macro_rules! letters {
    ($kind:expr, $phrases:expr) => {
        only(When::Letters, Italian, &[Sense::Dynamic($kind)], $phrases)
    };
}

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(
        Italian,
        GROWING,
        &[
            "crescendo/cresc/cres/crescc/cresciendo",
            "cre scen do",
            "cresc end do",
            "crescen do",
            "accrescendo",
            "rinforzando sempre/molto",
        ],
    ),
    entry(English, GROWING, &["getting louder", "increasing", "gradually louder"]),
    entry(
        French,
        GROWING,
        &["augmentez/augmenter/augmentant/augm.", "en augmentant", "de plus en plus fort", "en croissant"],
    ),
    entry(
        German,
        GROWING,
        &[
            "anwachsend/anwachsen/anschwellend/anschwellen/zunehmend/steigernd/steigern",
            "immer starker/staerker/lauter",
            "starker/staerker/lauter werden/werdend",
        ],
    ),
    entry(
        Italian,
        FADING,
        &[
            "decrescendo/decresc/decres/decr",
            "diminuendo/dimin/diminu/dim/dimi",
            "de cre scen do",
            "di mi nu en do",
            "diminuen do",
            "dimin uendo",
            "perdendosi/perdendo/perd./perendosi",
            "mancando/manc.",
            "smorzando/smorz/smorzato/smor.",
            "smor zan do",
            "estinguendo/estinto/deficiendo/scemando/svanendo",
            "mo ren do",
            "per den do si",
            "dileguando",
        ],
    ),
    entry(English, FADING, &["fading", "fade out/away?", "dying away", "getting softer", "gradually softer"]),
    entry(
        French,
        FADING,
        &[
            "diminuez/diminuer/diminuant",
            "en diminuant",
            "en s? eteignant/effacant/eloignant",
            "en se perdant",
            "en mourant",
            "de plus en plus faible/doux",
        ],
    ),
    entry(
        German,
        FADING,
        &[
            "abnehmend/abnehmen/abschwellend/verklingend/verklingen/verhallend/ersterbend/verloschend",
            "immer leiser/schwacher",
            "leiser/schwacher werden/werdend",
        ],
    ),
    entry(Italian, DYING, &["morendo/mor.", "calando/cal."]),
    // Syllables that a long word is printed in, one text each.
    only(When::Alone, Italian, FADING, &["smor"]),
    entry(Italian, &[], &["attacca/attaca/volti subito"]),
    entry(Italian, SUBITO, &["subito/sub/subitamente"]),
    entry(English, SUBITO, &["suddenly"]),
    entry(French, SUBITO, &["subitement", "tout a coup", "soudain"]),
    entry(German, SUBITO, &["plotzlich/ploetzlich"]),
    only(When::Doubtful, Italian, word!(F), &["forte"]),
    entry(Italian, word!(Ff), &["fortissimo/fortiss"]),
    entry(Italian, word!(Mf), &["mezzo/mezza forte", "mezzoforte", "poco forte"]),
    only(When::Doubtful, Italian, word!(P), &["piano"]),
    entry(Italian, word!(Pp), &["pianissimo/pianiss"]),
    entry(Italian, word!(Mp), &["mezzo/mezza piano", "mezzopiano"]),
    entry(Italian, word!(Ppp), &["pianississimo", "piano/pp possibile"]),
    entry(Italian, word!(Fff), &["fortississimo", "forte/ff possibile", "tutta la? forza"]),
    only(When::Doubtful, English, word!(F), &["loud"]),
    only(When::Doubtful, English, word!(P), &["soft"]),
    only(When::Doubtful, French, word!(F), &["fort"]),
    entry(French, word!(Ff), &["tres fort"]),
    entry(French, word!(P), &["faible"]),
    only(When::Doubtful, German, word!(F), &["laut", "stark", "kraftig"]),
    entry(German, word!(Ff), &["sehr laut/stark"]),
    entry(German, word!(P), &["leise"]),
    entry(German, word!(Pp), &["sehr leise"]),
    entry(Italian, LOUDER, &["piu/pi/pui f/forte/ff", "meno p/piano/pp"]),
    entry(Italian, SOFTER, &["piu/pi/pui p/piano/pp", "meno f/forte/ff"]),
    entry(English, LOUDER, &["louder"]),
    entry(English, SOFTER, &["softer/quieter"]),
    entry(French, LOUDER, &["plus fort", "moins doux"]),
    entry(French, SOFTER, &["plus doux/faible", "moins fort"]),
    only(When::Doubtful, German, LOUDER, &["lauter", "starker"]),
    only(When::Doubtful, German, SOFTER, &["leiser", "schwacher"]),
    letters!(Lasting(Ppp), &["ppp/pppp/ppppp"]),
    letters!(Lasting(Pp), &["pp"]),
    letters!(Lasting(P), &["p"]),
    letters!(Lasting(Mp), &["mp", "m p"]),
    letters!(Lasting(Mf), &["mf", "m f", "poco f", "un poco f"]),
    letters!(Lasting(F), &["f"]),
    letters!(Lasting(Ff), &["ff"]),
    letters!(Lasting(Fff), &["fff/ffff/fffff"]),
    letters!(Accented(F), &["sf/sfz/fz/rf/rfz"]),
    letters!(Accented(Ff), &["sff/sffz/ffz"]),
    entry(
        Italian,
        &[Sense::Dynamic(Accented(F))],
        &["sforzando/sforz/sforzato/forzando/forzato/rinforzando/rinforz/rinf"],
    ),
    letters!(Shape(F, P), &["fp/sfp/fzp"]),
    letters!(Shape(F, Pp), &["fpp/sfpp"]),
    letters!(Shape(Ff, P), &["ffp/sffp"]),
    letters!(Shape(Mf, P), &["mfp"]),
    entry(Italian, &[Sense::Dynamic(Shape(F, P))], &["forte piano", "fortepiano"]),
    // A level in another sense: the keyboard, the pedal, a voice.
    entry(Italian, &[], &["piano forte/solo/part", "mezzo soprano"]),
];
