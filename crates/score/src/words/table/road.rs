//! Signs of the road.

use super::{Sense, TableEntry, When, entry, only};
use crate::Jump::{Coda, DaCapo, DalSegno, Fine, Segno, ToCoda};
use crate::words::WordLanguage::{English, French, German, Italian};

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(
        Italian,
        &[Sense::Jump(DaCapo)],
        &[
            "da capo",
            "da capo al/alla fine/coda/segno",
            "da capo e poi la? coda",
            "da capo e la? coda",
            "d. c",
            "d. c al/alla fine/coda/segno/fin",
            "dc al/alla fine/coda/segno",
            "m. d. c",
        ],
    ),
    only(When::Alone, Italian, &[Sense::Jump(DaCapo)], &["dc"]),
    entry(
        Italian,
        &[Sense::Jump(DalSegno)],
        &[
            "dal/del segno",
            "dal/del segno al/alla fine/coda",
            "d. s",
            "d. s al/alla fine/coda",
            "ds al/alla fine/coda",
        ],
    ),
    only(When::Alone, Italian, &[Sense::Jump(DalSegno)], &["ds"]),
    only(When::Alone, Italian, &[Sense::Jump(Fine)], &["fine", "il fine", "fin."]),
    only(When::Title, French, &[Sense::Jump(Fine)], &["fin"]),
    only(When::Title, German, &[Sense::Jump(Fine)], &["ende", "schluss"]),
    only(When::Alone, Italian, &[Sense::Jump(Segno)], &["segno"]),
    only(When::Alone, Italian, &[Sense::Jump(Coda)], &["coda"]),
    entry(Italian, &[Sense::Jump(ToCoda)], &["alla coda", "al coda"]),
    entry(English, &[Sense::Jump(ToCoda)], &["to coda", "to the coda"]),
    entry(German, &[Sense::Jump(ToCoda)], &["zur coda"]),
    entry(French, &[Sense::Jump(ToCoda)], &["a la coda"]),
    entry(English, &[Sense::Jump(DaCapo)], &["from the beginning"]),
    entry(German, &[Sense::Jump(DaCapo)], &["von anfang bis?", "von vorn"]),
    entry(French, &[Sense::Jump(DaCapo)], &["reprise du debut", "au debut"]),
];
