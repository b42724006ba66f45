//! What the hand does: plucked or bowed, muted, where on the string.

use super::{Sense, TableEntry, When, entry, only};
use crate::Meaning::{
    Arco, ColLegno, ColLegnoBattuto, MuteOff, MuteOn, Ordinario, Pizzicato, SulPonticello, SulTasto,
};
use crate::words::WordLanguage::{English, French, German, Italian};

const PIZZICATO: &[Sense] = &[Sense::Instruction(Pizzicato)];
const ARCO: &[Sense] = &[Sense::Instruction(Arco)];
const MUTE_ON: &[Sense] = &[Sense::Instruction(MuteOn)];
const MUTE_OFF: &[Sense] = &[Sense::Instruction(MuteOff)];
const PONTICELLO: &[Sense] = &[Sense::Instruction(SulPonticello)];
const TASTO: &[Sense] = &[Sense::Instruction(SulTasto)];
const ORDINARIO: &[Sense] = &[Sense::Instruction(Ordinario)];
const LEGNO: &[Sense] = &[Sense::Instruction(ColLegno)];
const LEGNO_BATTUTO: &[Sense] = &[Sense::Instruction(ColLegnoBattuto)];

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(Italian, PIZZICATO, &["pizzicato/pizzicati/pizzic/pizz/piz"]),
    entry(English, PIZZICATO, &["plucked"]),
    entry(French, PIZZICATO, &["pince/pinces/pincez"]),
    entry(German, PIZZICATO, &["gezupft"]),
    entry(Italian, ARCO, &["arco", "coll/col/con/c. arco", "con l arco"]),
    only(When::Alone, Italian, ARCO, &["l arco", "arc."]),
    // The bow of a phrase about a part of the bow, not the order to bow.
    entry(Italian, &[], &["d/dell/del arco", "arco alto"]),
    entry(English, ARCO, &["bowed", "with the? bow"]),
    only(When::Alone, English, ARCO, &["bow"]),
    entry(French, ARCO, &["avec l archet", "arquet"]),
    only(When::Doubtful, French, ARCO, &["archet"]),
    entry(French, &[], &["d/l archet"]),
    entry(German, ARCO, &["gestrichen", "gestr.", "mit dem? bogen"]),
    only(When::Alone, German, ARCO, &["bogen"]),
    entry(
        Italian,
        MUTE_ON,
        &[
            "sordino/sordini/sordina/sordine/sord",
            "con/c/col/coi/mettere/mettete/metti/colla/colle/sempre il/i/la/le/gli? sordino/sordini/sordina/sordine/sord",
        ],
    ),
    entry(
        Italian,
        MUTE_OFF,
        &[
            "senza/sanza/senz/s./sine/via/levare/levate/leva/levano/togliere/togliete/alzare/alzate/tolgono/no il/i/la/le/gli? sordino/sordini/sordina/sordine/sord",
            "senza/s. il/i? sor.",
            "sordino/sordini/sordina/sordine/sord via/off/ab/weg",
        ],
    ),
    entry(
        English,
        MUTE_ON,
        &["muted", "with/con mute/mutes", "mute/mutes on", "put on mute/mutes", "add mute/mutes"],
    ),
    only(When::Alone, English, MUTE_ON, &["mute/mutes"]),
    entry(
        English,
        MUTE_OFF,
        &[
            "unmuted",
            "without/no/remove mute/mutes",
            "mute/mutes off",
            "take off the? mute/mutes",
            "not muted",
        ],
    ),
    entry(
        French,
        MUTE_ON,
        &[
            "sourdine/sourdines/sourd",
            "avec/mettez/mettre/en/prenez/av. la/les/des? sourdine/sourdines/sourd",
        ],
    ),
    entry(
        French,
        MUTE_OFF,
        &["sans/otez/oter/enlevez/enlever/quittez/retirez/retirer la/les/des? sourdine/sourdines/sourd"],
    ),
    entry(
        German,
        MUTE_ON,
        &[
            "mit/m. dampfer/dampfern/daempfer/daempfern/dpf./sordine/sordinen",
            "dampfer/daempfer auf/aufsetzen/nehmen",
            "gedampft/gedaempft",
        ],
    ),
    only(When::Alone, German, MUTE_ON, &["dampfer/daempfer"]),
    entry(
        German,
        MUTE_OFF,
        &[
            "ohne/o. dampfer/daempfer/dpf./sordine/sordinen/sordino/sord",
            "dampfer/daempfer weg/ab/absetzen/abnehmen/fort/wegnehmen",
            "dampfer/daempfer allmahlich/nacheinander ab/weg/absetzen",
            "nicht gedampft",
        ],
    ),
    entry(
        Italian,
        PONTICELLO,
        &[
            "sul/al/sulla/presso/vicino ponticello/pontic/pont/ponti",
            "presso/vicino il/al ponticello/pont",
            "s. pont/ponticello",
            "ponticello",
        ],
    ),
    only(When::Doubtful, Italian, PONTICELLO, &["pont.", "s. p.", "pontic."]),
    entry(English, PONTICELLO, &["near/at/on/by the bridge", "near bridge"]),
    entry(French, PONTICELLO, &["sur/pres/contre/au le/du? chevalet"]),
    entry(German, PONTICELLO, &["am/an/auf dem? steg", "nahe am steg", "beim steg"]),
    entry(Italian, TASTO, &["sul/sulla/s. tasto/tastiera/tast", "flautando/flautato/flaut", "quasi flauto"]),
    only(When::Doubtful, Italian, TASTO, &["tasto", "s. t."]),
    entry(English, TASTO, &["over/on/at/near the fingerboard/fb", "on fingerboard"]),
    entry(French, TASTO, &["sur/sous la touche", "pres de la touche", "flute/flutez en?", "en flutant"]),
    entry(German, TASTO, &["am/auf/uber/an dem? griffbrett", "a. d. griffbrett", "flotend"]),
    entry(
        Italian,
        ORDINARIO,
        &[
            "ordinario/ordinar/ordin/ord./naturale/normale/norm.",
            "nat.",
            "modo/al/alla/via/posizione/posiz/pos/posit/arco ordinario/ordinaria/ord/naturale/nat/normale/norm",
        ],
    ),
    only(When::Alone, Italian, ORDINARIO, &["ord", "nat", "norm", "normal", "loco ordinario"]),
    entry(
        English,
        ORDINARIO,
        &["normal position", "ordinary position", "in the? ordinary way", "play normally"],
    ),
    entry(
        French,
        ORDINARIO,
        &[
            "jeu/position/son/mode/archet ordinaire/ord/naturelle/naturel/nat/normale/normal",
            "pos ordinaire/naturelle/normal",
            "ordinaire",
        ],
    ),
    entry(German, ORDINARIO, &["in? gewohnlicher/gewohnliche lage/weise/position/art", "wie gewohnlich"]),
    only(When::Doubtful, German, ORDINARIO, &["gewohnlich", "gew."]),
    entry(
        Italian,
        LEGNO,
        &[
            "col/colla/con/coi/c. il? legno/legni",
            "c. l.",
            "c. l",
            "col/con/c. legno/legni tratto/tratti",
            "c. l. tratto",
        ],
    ),
    entry(
        Italian,
        LEGNO_BATTUTO,
        &[
            "col/con/coi/c. legno/legni battuto/battuti/batt/saltando",
            "c. l. battuto/batt",
            "legno battuto/batt",
        ],
    ),
    only(When::Doubtful, Italian, LEGNO_BATTUTO, &["battuto", "batt."]),
    entry(English, LEGNO, &["with the? wood", "with the wood of the bow"]),
    entry(English, LEGNO_BATTUTO, &["strike/tap/hit with the? wood", "struck with the wood"]),
    entry(French, LEGNO, &["avec le/du bois de? l? archet?", "du bois de l archet"]),
    entry(French, LEGNO_BATTUTO, &["frappe/frappez avec le bois"]),
    entry(
        German,
        LEGNO,
        &[
            "mit/m. dem? holz",
            "mit der bogenstange",
            "mit dem holz des bogens",
            "col/c. legno gestrichen",
            "c. l. gestrichen",
            "mit dem holz gestrichen",
        ],
    ),
    entry(
        German,
        LEGNO_BATTUTO,
        &[
            "geschlagen",
            "col/c. legno geschlagen",
            "c. l. geschlagen",
            "mit/m. dem? holz des? bogens? geschlagen/schlagen",
            "mit der bogenstange geschlagen",
        ],
    ),
];
