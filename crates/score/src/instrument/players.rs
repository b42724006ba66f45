//! Chamber music or orchestra, by the company that parts keep.

use super::Recognised;
use crate::{Instrument, Players};

/// From this many string parts of one instrument on, a score without other hints is taken for an
/// orchestra's: chamber works have two violins, violas or cellos, the octet four violins.
///
/// Source: common practice. Status: from memory.
const MANY_VIOLIN_PARTS: usize = 5;

/// From this many parts that are not bowed on, the strings beside them are sections: a clarinet, a piano
/// or a horn makes a quintet, pairs of winds an orchestra (octet and nonet: up to five).
///
/// Source: common practice. Status: from memory.
const MANY_OTHER_PARTS: usize = 6;

/// How many play each part, in the order given.
///
/// What a name says ("Violini", "Solo") stands. For the rest:
///
/// * any part named as a section makes the unnamed string parts sections too (parts named solo stay solo);
/// * six parts or more that are not bowed, or five of violins: an orchestra, so sections;
/// * two violins, viola, cello and a double bass, with nothing else: string orchestra, so sections (a
///   quintet with double bass is rarer; names can say "Solo");
/// * everything else with a bowed part (solo works, duos, trios, quartets, quintets, sextets, octets,
///   also with a piano or a few winds): one to a part.
///
/// Parts that are not bowed are left [`Players::Unknown`].
#[must_use]
pub fn players_of_score(parts: &[Recognised]) -> Vec<Players> {
    let count = |instrument: Instrument| parts.iter().filter(|part| part.instrument == instrument).count();
    let named_section = parts.iter().any(|part| part.players == Players::Section);
    let others = count(Instrument::NotBowed);
    let string_orchestra = count(Instrument::Violin) >= 2
        && count(Instrument::Viola) >= 1
        && count(Instrument::Cello) >= 1
        && count(Instrument::Bass) >= 1
        && others == 0;
    let orchestra = named_section
        || string_orchestra
        || others >= MANY_OTHER_PARTS
        || count(Instrument::Violin) >= MANY_VIOLIN_PARTS;
    let unnamed = if orchestra { Players::Section } else { Players::Solo };
    parts
        .iter()
        .map(|part| match part.players {
            _ if !part.instrument.is_bowed() => Players::Unknown,
            Players::Unknown => unnamed,
            named => named,
        })
        .collect()
}
