//! Who plays: divided, together, one, a few, all.

use super::{Sense, TableEntry, When, entry, only};
use crate::Meaning::{HalfSection, NonDivisi, Solo, Tutti, Unison};
use crate::words::WordLanguage::{English, French, German, Italian};

const DIVISI: &[Sense] = &[Sense::Divisi];
const UNISON: &[Sense] = &[Sense::Instruction(Unison)];
const NON_DIVISI: &[Sense] = &[Sense::Instruction(NonDivisi)];
const SOLO: &[Sense] = &[Sense::Instruction(Solo)];
const TUTTI: &[Sense] = &[Sense::Instruction(Tutti)];
const HALF: &[Sense] = &[Sense::Instruction(HalfSection)];

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(Italian, DIVISI, &["divisi/divise/diviso/divis", "div."]),
    only(When::Doubtful, Italian, DIVISI, &["div"]),
    entry(English, DIVISI, &["divided"]),
    entry(French, DIVISI, &["divisee/divisees/divises/divisez"]),
    entry(German, DIVISI, &["geteilt/getheilt/get."]),
    entry(Italian, NON_DIVISI, &["non/no divisi/divise/divis/div"]),
    entry(English, NON_DIVISI, &["not divided", "not div"]),
    entry(French, NON_DIVISI, &["pas divise/divisee/divisees/divises", "non divisee/divisees/divises"]),
    entry(German, NON_DIVISI, &["nicht geteilt/getheilt/get.", "ungeteilt"]),
    entry(Italian, UNISON, &["unisono/unisoni/unis", "all unisono"]),
    only(When::Alone, Italian, UNISON, &["uniti/unite"]),
    entry(English, UNISON, &["unison", "in unison"]),
    only(When::Doubtful, English, UNISON, &["together"]),
    entry(French, UNISON, &["unisson", "a l unisson"]),
    only(When::Alone, French, UNISON, &["ensemble"]),
    entry(German, UNISON, &["zusammen", "zus.", "einstimmig", "im einklang"]),
    only(When::Doubtful, Italian, SOLO, &["solo/sola/soli/sole"]),
    only(When::Alone, English, SOLO, &["# solo/soli"]),
    entry(English, SOLO, &["one player", "# players", "solo player"]),
    entry(French, SOLO, &["un/une seul/seule", "seul/seule"]),
    only(When::Doubtful, German, SOLO, &["allein", "solistisch", "eine/einer allein"]),
    only(When::Doubtful, Italian, TUTTI, &["tutti/tutte", "gli? altri", "le altre"]),
    entry(Italian, TUTTI, &["gli altri", "le altre"]),
    entry(English, TUTTI, &["the others"]),
    only(When::Alone, English, TUTTI, &["all", "others"]),
    entry(French, TUTTI, &["les autres"]),
    only(When::Doubtful, French, TUTTI, &["tous/toutes"]),
    entry(German, TUTTI, &["die ubrigen/uebrigen/anderen/andern"]),
    only(When::Alone, German, TUTTI, &["alle", "ubrige", "alle ubrigen"]),
    entry(
        Italian,
        HALF,
        &[
            "la meta",
            "una meta",
            "#/primo/primi/un/solo/due/tre/mezzo leggio/leggii/leggi soli/solo/sola?",
            "# meta",
        ],
    ),
    only(When::Alone, Italian, HALF, &["meta"]),
    entry(
        English,
        HALF,
        &[
            "half the section/players",
            "half section",
            "#/first/one/two/three/front desk/desks/stand/stands solo/soli/only/alone?",
            "inside/outside player/players",
            "half of the section/players",
        ],
    ),
    only(When::Alone, English, HALF, &["half", "one half", "# half"]),
    entry(
        French,
        HALF,
        &["la moitie", "#/un/premier/premiers/deux/trois pupitre/pupitres seul/seuls/solo/soli?"],
    ),
    only(When::Alone, French, HALF, &["moitie"]),
    entry(
        German,
        HALF,
        &[
            "die halfte/haelfte",
            "zur halfte",
            "#/ein/erstes/zwei/drei/die/vorderes/halbes pult/pulte/pulten allein/solo/soli?",
            "halbe besetzung",
        ],
    ),
    only(When::Alone, German, HALF, &["halfte/haelfte"]),
];
