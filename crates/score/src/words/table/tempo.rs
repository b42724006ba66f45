//! Tempo: words, ramps, changes and returns.

use super::{Sense, TableEntry, When, entry, only};
use crate::TempoBack::{First, Previous};
use crate::tempo_words::{TEMPO_WORDS, TempoChange, TempoSense};
use crate::words::WordLanguage::{English, French, German, Italian};

const SLOWING: &[Sense] = &[Sense::Slowing];
const QUICKENING: &[Sense] = &[Sense::Quickening];
const FASTER: &[Sense] = &[Sense::Change(TempoChange::Faster)];
const SLOWER: &[Sense] = &[Sense::Change(TempoChange::Slower)];
const SAME: &[Sense] = &[Sense::Change(TempoChange::Same)];
const DOUBLE: &[Sense] = &[Sense::Change(TempoChange::Double)];
const HALF: &[Sense] = &[Sense::Change(TempoChange::Half)];
const BACK: &[Sense] = &[Sense::Back(Previous)];
const FIRST: &[Sense] = &[Sense::Back(First)];

/// One sense for every word of the tempo table.
static SENSES: [[Sense; 1]; TEMPO_WORDS.len()] = {
    let mut senses = [[Sense::TempoWord(&TEMPO_WORDS[0])]; TEMPO_WORDS.len()];
    let mut index = 0;
    while index < TEMPO_WORDS.len() {
        senses[index] = [Sense::TempoWord(&TEMPO_WORDS[index])];
        index += 1;
    }
    senses
};

/// The tempo words of [`TEMPO_WORDS`] as entries of the table.
pub(super) fn words() -> impl Iterator<Item = TableEntry> {
    TEMPO_WORDS.iter().zip(&SENSES).map(|(word, sense)| TableEntry {
        language: word.language,
        senses: sense,
        when: if word.sense == TempoSense::Tempo { When::Anywhere } else { When::Heading },
        phrases: word.phrases,
    })
}

pub(super) const ENTRIES: &[TableEntry] = &[
    entry(
        Italian,
        SLOWING,
        &[
            "ritardando/ritard/ritardan/rit/ritar/ritardato",
            "ritenuto/riten/ritenente/ritenendo/ritenu",
            "rallentando/rallent/rallen/rall/rallentato",
            "allargando/allarg/allargan/slargando/slarg/slargandosi/largando",
            "lentando/slentando/tardando/stentando/stent/strascinando/trattenuto/tratt/trattenendo",
            "poco a poco piu? lento/largo/sostenuto",
            "sempre piu lento/largo",
            "rilasciando/rallentare/ritardare",
        ],
    ),
    entry(
        Italian,
        QUICKENING,
        &[
            "accelerando/accel/acceler/accelerato",
            "stringendo/string./stringen/string",
            "affrettando/affrett/affret/affrettare",
            "incalzando/incalz/animando/animandosi/ravvivando/precipitando/precip/pressando/serrando",
            "poco a poco piu? animato/mosso/allegro/presto/vivace/agitato/vivo/stretto",
            "sempre piu animato/mosso/allegro/presto/vivace/vivo/stretto/agitato",
        ],
    ),
    only(When::Doubtful, Italian, QUICKENING, &["stretto"]),
    entry(
        English,
        SLOWING,
        &[
            "slowing down?",
            "slow down",
            "gradually slower",
            "getting slower",
            "holding back",
            "hold back",
            "broadening",
        ],
    ),
    entry(
        English,
        QUICKENING,
        &["speeding up", "gradually faster", "getting faster", "pushing forward/ahead", "hurrying"],
    ),
    entry(
        French,
        SLOWING,
        &[
            "cedez/ceder/ced./cedant",
            "ralentir/ralentissez/ralentissant/ralenti/ral.",
            "en ralentissant/retenant/elargissant/cedant",
            "retenu/retenez/retenir/reten.",
            "elargir/elargissez/elargi/elargissant",
            "de plus en plus lent/large/lentement",
            "peu a peu plus lent",
        ],
    ),
    entry(
        French,
        QUICKENING,
        &[
            "pressez/presser/pressant/serrez/serrer/serrant",
            "en pressant/serrant/animant/accelerant",
            "animez/accelerez/accelerer/accelerant",
            "de plus en plus vite/anime/vif",
            "peu a peu plus? anime/vite/vif",
        ],
    ),
    entry(
        German,
        SLOWING,
        &[
            "zuruckhaltend/zuruckhalten/zuruckgehalten/zuruckhaltung",
            "verlangsamen/verlangsamend/nachlassen/nachlassend/zogernd/zurucktretend/ritardierend",
            "verbreitern/verbreiternd",
            "langsamer/breiter/ruhiger werdend/werden",
            "immer/allmahlich/allmaehlich etwas? langsamer/breiter/ruhiger werdend/werden?",
            "nach und nach langsamer/breiter/ruhiger",
        ],
    ),
    entry(
        German,
        QUICKENING,
        &[
            "beschleunigt/beschleunigen/beschleunigend/eilen/eilend/treibend/drangend/draengend/vorwarts/belebend/antreibend",
            "schneller/lebhafter/bewegter/rascher werdend/werden",
            "immer/allmahlich/allmaehlich etwas? schneller/lebhafter/bewegter/rascher/belebter/geschwinder werdend/werden?",
            "nach und nach schneller/lebhafter/bewegter/rascher/belebter/geschwinder",
        ],
    ),
    entry(
        Italian,
        FASTER,
        &[
            "piu mosso/allegro/presto/vivace/animato/vivo/moto/agitato/andante/veloce/stretto",
            "meno lento/adagio/largo/sostenuto",
        ],
    ),
    only(When::Alone, Italian, FASTER, &["un? poco animato"]),
    entry(
        Italian,
        SLOWER,
        &[
            "meno mosso/allegro/presto/vivace/animato/vivo/moto/agitato",
            "piu lento/adagio/largo/sostenuto/tranquillo/moderato/ritenuto/calmo/grave",
        ],
    ),
    only(When::Alone, Italian, SLOWER, &["meno", "un? poco meno", "molto meno"]),
    only(When::Heading, Italian, FASTER, &["mosso"]),
    entry(English, FASTER, &["faster/quicker/livelier", "more lively/movement/motion"]),
    entry(English, SLOWER, &["slower", "less movement/motion"]),
    entry(French, FASTER, &["plus vite/anime/vif/rapide/mouvemente", "moins lent"]),
    entry(French, SLOWER, &["plus lent/lentement/calme/large", "moins vite/anime/vif/rapide"]),
    entry(German, FASTER, &["schneller/lebhafter/bewegter/rascher/geschwinder/belebter"]),
    entry(German, SLOWER, &["langsamer/ruhiger/breiter/gemassigter"]),
    entry(
        Italian,
        SAME,
        &["l? istesso tempo/movimento", "lo stesso tempo/movimento", "medesimo tempo", "stesso tempo"],
    ),
    entry(English, SAME, &["same tempo/speed", "the same tempo/speed"]),
    entry(French, SAME, &["le? meme mouvement/tempo/mouvt"]),
    entry(German, SAME, &["im? gleichen/gleiches/dasselbe/demselben/selben tempo/zeitmass", "derselbe takt"]),
    entry(Italian, DOUBLE, &["doppio movimento", "doppio piu mosso"]),
    entry(English, DOUBLE, &["twice as fast", "double tempo"]),
    entry(French, DOUBLE, &["deux fois plus vite", "le double plus vite"]),
    entry(German, DOUBLE, &["doppelt so schnell", "noch einmal so schnell", "doppeltes tempo"]),
    entry(English, HALF, &["half as fast", "half tempo"]),
    entry(French, HALF, &["deux fois plus lent", "le double plus lent"]),
    entry(German, HALF, &["halb so schnell", "doppelt so langsam"]),
    entry(Italian, HALF, &["doppio piu lento"]),
    entry(Italian, BACK, &["a/in/al tempo", "a tempo giusto/ordinario"]),
    only(When::Alone, German, BACK, &["wie vorher"]),
    only(When::Alone, Italian, BACK, &["tempo"]),
    entry(English, BACK, &["in time", "back in tempo"]),
    entry(French, BACK, &["au mouvement/mouvt/mvt/mouv/temps", "reprenez le mouvement/mouvt"]),
    only(When::Alone, French, BACK, &["mouvement/mouvt/mvt"]),
    entry(German, BACK, &["im tempo/zeitmass/zeitmasz", "voriges zeitmass/tempo", "im vorigen tempo"]),
    entry(
        Italian,
        FIRST,
        &["a? tempo i/primo/prima/1/imo/1mo/1o/1a", "al? primo tempo", "come prima", "tempo del principio"],
    ),
    entry(English, FIRST, &["original/first/opening tempo", "tempo one"]),
    entry(
        French,
        FIRST,
        &[
            "au? 1er/1/premier/i/1o mouvement/mouvt/mvt/mouv/tempo/temps",
            "mouvement du debut",
            "au mouvement initial",
        ],
    ),
    entry(
        German,
        FIRST,
        &[
            "erstes/anfangs zeitmass/tempo",
            "1 zeitmass",
            "im ersten tempo/zeitmass",
            "hauptzeitmass/hauptzeitmasse/haupttempo/anfangstempo/hauptzeitmasz",
            "wie zu/im? anfang/anfangs",
        ],
    ),
];
