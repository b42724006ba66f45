//! How the bow goes: kinds of stroke, parts of the bow, bowing orders.

use super::{Sense, TableEntry, When, entry, only};
use crate::Meaning::{
    AllDownBows, AllUpBows, AsItComes, AtFrog, AtTip, Detache, FreeBowing, Legato, Martele, MiddleOfBow,
    OffString, OnString, Sautille, Simile, Spiccato, StaccatoWord, TenutoWord, Thrown, TremoloWord, WholeBow,
};
use crate::words::WordLanguage::{English, French, German, Italian};

const SPICCATO: &[Sense] = &[Sense::Instruction(Spiccato)];
const SAUTILLE: &[Sense] = &[Sense::Instruction(Sautille)];
const THROWN: &[Sense] = &[Sense::Instruction(Thrown)];
const MARTELE: &[Sense] = &[Sense::Instruction(Martele)];
const DETACHE: &[Sense] = &[Sense::Instruction(Detache)];
const LEGATO: &[Sense] = &[Sense::Instruction(Legato)];
const STACCATO: &[Sense] = &[Sense::Instruction(StaccatoWord)];
const TENUTO: &[Sense] = &[Sense::Instruction(TenutoWord)];
const ON_STRING: &[Sense] = &[Sense::Instruction(OnString)];
const OFF_STRING: &[Sense] = &[Sense::Instruction(OffString)];
const FROG: &[Sense] = &[Sense::Instruction(AtFrog)];
const TIP: &[Sense] = &[Sense::Instruction(AtTip)];
const MIDDLE: &[Sense] = &[Sense::Instruction(MiddleOfBow)];
const WHOLE: &[Sense] = &[Sense::Instruction(WholeBow)];
const FREE: &[Sense] = &[Sense::Instruction(FreeBowing)];
const ALL_DOWN: &[Sense] = &[Sense::Instruction(AllDownBows)];
const ALL_UP: &[Sense] = &[Sense::Instruction(AllUpBows)];
const COMES: &[Sense] = &[Sense::Instruction(AsItComes)];
const TREMOLO: &[Sense] = &[Sense::Instruction(TremoloWord)];
const SIMILE: &[Sense] = &[Sense::Instruction(Simile)];

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(Italian, SPICCATO, &["spiccato/spicc/spiccatissimo", "saltando/saltato/saltellato/balzato"]),
    only(When::Doubtful, Italian, SPICCATO, &["salt.", "spic."]),
    entry(German, SPICCATO, &["springend", "springbogen", "mit springendem bogen"]),
    entry(French, SAUTILLE, &["sautille/sautilles/sautillez"]),
    entry(Italian, THROWN, &["gettato/gett."]),
    entry(French, THROWN, &["ricochet/ricochets", "jete/jetes/jetez"]),
    entry(German, THROWN, &["geworfen", "mit geworfenem bogen"]),
    entry(Italian, MARTELE, &["martellato/martell/martellatissimo"]),
    entry(French, MARTELE, &["martele/marteles/martelez"]),
    entry(German, MARTELE, &["gehammert/gehaemmert"]),
    entry(French, DETACHE, &["detache/detaches/detachez"]),
    entry(German, DETACHE, &["breit gestrichen"]),
    entry(Italian, LEGATO, &["legato/legatissimo/legatiss/ligato/leg."]),
    entry(French, LEGATO, &["tres/bien lie", "liez"]),
    only(When::Alone, French, LEGATO, &["lie/lies"]),
    entry(German, LEGATO, &["gebunden"]),
    entry(Italian, STACCATO, &["staccato/stacc/staccatissimo/staccatiss/stac"]),
    entry(German, STACCATO, &["gestossen", "abgestossen", "kurz gestrichen"]),
    entry(Italian, TENUTO, &["tenuto/tenuta/tenute/tenuti/ten.", "sostenuto/sosten/sost"]),
    entry(French, TENUTO, &["soutenu/soutenez"]),
    entry(German, TENUTO, &["gehalten/getragen"]),
    entry(Italian, ON_STRING, &["alla corda"]),
    entry(English, ON_STRING, &["on the? string", "on the strings"]),
    entry(French, ON_STRING, &["a la corde"]),
    entry(German, ON_STRING, &["auf/an der saite", "liegender bogen", "mit liegendem bogen"]),
    entry(Italian, OFF_STRING, &["fuori/dalla della? corda"]),
    entry(English, OFF_STRING, &["off the? string"]),
    entry(French, OFF_STRING, &["hors/de la? corde"]),
    entry(German, OFF_STRING, &["abseits/von der saite"]),
    // A string is named, not a way of bowing.
    entry(Italian, &[], &["sul/sulla/sulle g/d/a/e/c/i/ii/iii/iv/re/sol/la/mi/do", "sulla # corda"]),
    entry(English, &[], &["g/d/a/e/c/i/ii/iii/iv/#/open string"]),
    entry(Italian, FROG, &["al/sul/vicino tallone", "tallone"]),
    entry(English, FROG, &["at/near/from the? frog/heel/nut"]),
    only(When::Alone, English, FROG, &["frog", "heel"]),
    entry(French, FROG, &["au/du talon", "pres du talon"]),
    only(When::Alone, French, FROG, &["talon"]),
    entry(German, FROG, &["am/vom frosch", "a. frosch/fr"]),
    only(When::Alone, German, FROG, &["frosch", "fr."]),
    entry(
        Italian,
        TIP,
        &[
            "a/alla/colla/con/col/sulla/coll? punta/punto d/dell/del arco",
            "con la punta d/dell/del arco",
            "alla/colla/sulla/a punta",
            "punte d/dell arco",
        ],
    ),
    only(When::Alone, Italian, TIP, &["punta"]),
    entry(English, TIP, &["at/near the? tip/point of? the? bow?"]),
    only(When::Alone, English, TIP, &["tip"]),
    entry(French, TIP, &["a/de/avec la pointe de? l? archet?"]),
    only(When::Alone, French, TIP, &["pointe"]),
    entry(German, TIP, &["an/mit der spitze des? bogens?", "a. d. sp.", "a. d. spitze", "a. sp."]),
    only(When::Alone, German, TIP, &["spitze", "sp."]),
    entry(
        Italian,
        MIDDLE,
        &["nel/al/in/col mezzo dell/d/del arco", "meta dell/d arco", "a mezz arco", "mezzo arco"],
    ),
    entry(English, MIDDLE, &["in? the? middle of the bow", "mid bow", "in the middle"]),
    entry(French, MIDDLE, &["au/du milieu de? l? archet?", "milieu de l archet"]),
    entry(German, MIDDLE, &["in der mitte des? bogens?", "in der bogenmitte", "i. d. m."]),
    entry(
        Italian,
        WHOLE,
        &["con? tutto l arco", "tutta arco", "con? tutt arco", "tutto arco", "a tutt arco", "arco intero"],
    ),
    entry(English, WHOLE, &["whole/full bow/bows", "use the? whole bow", "long bows"]),
    entry(French, WHOLE, &["de/avec? tout l archet", "a/de? grand archet", "grands archets"]),
    entry(
        German,
        WHOLE,
        &[
            "mit? ganzem/ganzer/ganzen bogen",
            "g. b.",
            "mit dem ganzen bogen",
            "langer/lange bogen",
            "mit langen bogen",
        ],
    ),
    entry(
        Italian,
        FREE,
        &["archi liberi", "arco libero", "arcata libera", "arcate libere", "arco ad libitum/lib"],
    ),
    entry(
        English,
        FREE,
        &[
            "free bow/bows/bowing/bowings",
            "bow freely",
            "bow/bows/bowing ad lib/libitum",
            "stagger/staggered the? bow/bows/bowing/bowings",
            "change bow/bows freely/independently",
            "bow changes ad lib",
        ],
    ),
    entry(
        French,
        FREE,
        &[
            "archet/archets libre/libres",
            "coups? d archet libre/libres",
            "changez d archet a volonte",
            "archet a volonte",
        ],
    ),
    entry(
        German,
        FREE,
        &[
            "freier/freie bogenwechsel/strich/striche/bogenstrich/bogenfuhrung",
            "unmerklicher/beliebiger/unregelmassiger bogenwechsel",
            "bogenwechsel beliebig/unmerklich",
            "bogen/bogenwechsel/strich nach belieben",
            "nicht gleichzeitig die? bogen? wechseln",
        ],
    ),
    entry(
        Italian,
        ALL_DOWN,
        &["sempre/tutti/tutto/tutte l? arco? in giu", "arco sempre in giu", "tutte arcate in giu"],
    ),
    entry(English, ALL_DOWN, &["all/always down bow/bows"]),
    entry(
        French,
        ALL_DOWN,
        &["toujours tire/tires/tirez", "tirez toujours", "tout tire", "toujours en tirant"],
    ),
    entry(German, ALL_DOWN, &["immer/nur/stets/alles mit/im? abstrich/abstriche", "lauter abstriche"]),
    entry(Italian, ALL_UP, &["sempre/tutti/tutto/tutte l? arco? in su", "arco sempre in su"]),
    entry(English, ALL_UP, &["all/always up bow/bows"]),
    entry(French, ALL_UP, &["toujours pousse/pousses/poussez", "poussez toujours", "tout pousse"]),
    entry(German, ALL_UP, &["immer/nur/stets/alles mit/im? aufstrich/aufstriche", "lauter aufstriche"]),
    entry(Italian, COMES, &["come viene/vengono"]),
    entry(English, COMES, &["as it comes", "as they come"]),
    entry(French, COMES, &["comme ca vient", "comme il vient"]),
    entry(German, COMES, &["wie es kommt", "wie s kommt"]),
    entry(Italian, TREMOLO, &["tremolo/tremolando/tremol/trem/tremoli"]),
    entry(French, TREMOLO, &["en tremolant", "tremolez"]),
    entry(Italian, SIMILE, &["simile/simili", "sim.", "sempre simile/simili", "sempre cosi"]),
    only(When::Alone, Italian, SIMILE, &["segue", "seg.", "sim", "segue simile"]),
    entry(English, SIMILE, &["in the same way"]),
    entry(French, SIMILE, &["de meme", "semblable"]),
    entry(German, SIMILE, &["ebenso", "ahnlich/aehnlich fortfahren?", "gleichmassig weiter"]),
];
