//! Names of instruments in four languages, and what else they tell.
//!
//! * Reason: which four strings a part has decides its bow, its reach and its neighbours.
//! * Source: names and abbreviations as scores print them, common practice.
//! * Status: from memory; read against the part names of an open corpus.

use crate::words::{WordToken, tokens};
use crate::{Instrument, Players};

/// Full names or abbreviations: "Alto" and "B." need more care in one than in the other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum NameSpelling {
    /// As on the first page.
    Full,
    /// As on the following pages.
    Short,
}

/// What a name says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct ReadName {
    pub(super) claim: Claim,
    pub(super) players: Players,
}

/// How sure a name is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Claim {
    /// No instrument known.
    Nothing,
    /// This one.
    Sure(Instrument),
    /// This one, if sound or program agree.
    Perhaps(Instrument),
    /// This one beside something that is not bowed.
    Shared(Instrument),
}

/// How many a word means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum WordCount {
    /// Singular, or an abbreviation.
    One,
    /// Plural: a section.
    Many,
}

type NameRow = (Claim, WordCount, &'static str);

const VIOLIN: Claim = Claim::Sure(Instrument::Violin);
const VIOLA: Claim = Claim::Sure(Instrument::Viola);
const CELLO: Claim = Claim::Sure(Instrument::Cello);
const BASS: Claim = Claim::Sure(Instrument::Bass);
const OTHER: Claim = Claim::Sure(Instrument::OtherBowed);
const NOT_BOWED: Claim = Claim::Sure(Instrument::NotBowed);

/// Names of one or several words, parted by `|`; the longest that fits is taken. "Viole" is taken for the Italian
/// violas; the French viol is nearly always named with its kind.
const NAMES: &[NameRow] = &[
    (VIOLIN, WordCount::One, "violin|violino|violon|violine|geige|fiddle"),
    (VIOLIN, WordCount::One, "vn|vln|vl|vno|vlno|vlon|vni i|vn i|v i|v ii|v 1|v 2"),
    (VIOLIN, WordCount::Many, "violins|violini|violons|violinen|geigen|vni|vlni|vlns|vns"),
    (VIOLA, WordCount::One, "viola|bratsche|vla|va|vlla"),
    (VIOLA, WordCount::Many, "violas|viole|bratschen|violen|altos viola|vle|vlas|vas"),
    (Claim::Perhaps(Instrument::Viola), WordCount::One, "alto|br|a"),
    (Claim::Perhaps(Instrument::Viola), WordCount::Many, "altos|altis"),
    (CELLO, WordCount::One, "violoncello|violoncelle|cello|violoncell|vc|vlc|vcl|vcllo|vcello|vlcl"),
    (
        CELLO,
        WordCount::Many,
        "violoncellos|violoncelli|violoncelles|cellos|celli|violoncelle tutti|vcs|vcelli|\
         vlcs|vclli",
    ),
    (
        BASS,
        WordCount::One,
        "contrabass|double bass|doublebass|kontrabass|contrebasse|contrabasso|string bass|\
         upright bass|cb|kb|ctb|d b|db|c b|kbass|cbass|cbs|st bass",
    ),
    (
        BASS,
        WordCount::Many,
        "contrabasses|double basses|doublebasses|kontrabasse|contrebasses|contrabassi|bassi|\
         string basses|contrabbassi|kontrabaesse",
    ),
    (BASS, WordCount::One, "contrabbasso"),
    (Claim::Perhaps(Instrument::Bass), WordCount::One, "bass|basso|basse|b"),
    (Claim::Perhaps(Instrument::Bass), WordCount::Many, "basses"),
    // Bowed, with another tuning, range or bow.
    (
        OTHER,
        WordCount::One,
        "viola da gamba|viola d amore|viola d amour|viole d amour|viola pomposa|viola bastarda|\
         viola da braccio|violoncello piccolo|cello piccolo|violone|violino piccolo|\
         viole de gambe|dessus de viole|basse de viole|par dessus de viole|treble viol|\
         tenor viol|bass viol|alto viol|consort viol|gamba|gambe|viol da gamba|baryton|\
         arpeggione|lirone|rebec|vielle|nyckelharpa|hardanger fiddle|octobass|erhu|zhonghu|\
         gaohu|morin khuur|vdg|v d g|viola di bordone|lyra viol|tromba marina|violotta|\
         basse de violon|haute contre de violon|taille de violon|quinte de violon",
    ),
    (
        OTHER,
        WordCount::Many,
        "viols|gamben|viole da gamba|viole d amore|violoni|gambas|strings|streicher|archi|\
         cordes|string orchestra|string ensemble|string section",
    ),
    // Names that hold one of the above, or begin like it; then everything else that is common.
    (
        NOT_BOWED,
        WordCount::One,
        "bass clarinet|bass clarinets|bass drum|bass drums|bass flute|bass guitar|\
         bass trombone|bass tuba|bass oboe|bass trumpet|bass saxophone|bass sax|bass recorder|\
         bass singer|bass voice|bass solo|basso solo|bass baritone|bass lute|bass horn|\
         bass continuo|basso continuo|basse continue|bc|b c|electric bass|acoustic bass|\
         synth bass|fretless bass|slap bass|bass synth|bass marimba|bass chorus|basso buffo|\
         b cl|b dr|b d|b fl|b tbn|b trb|b tba|b ob|b gtr|b sax|bassposaune|bassklarinette|\
         basson|bassons|bassoon|bassoons|contrabassoon|contrabassoons|contrabass clarinet|\
         contrabass trombone|contrabass tuba|contrabass flute|contrabass saxophone|\
         contrabass sarrusophone|contrabass recorder|contrabbassoon|contrebasson|kontrafagott|\
         contrafagotto|controfagotto|double bassoon|contralto|contralti|alto clarinet|\
         alto flute|alto saxophone|alto sax|alto trombone|alto recorder|alto horn|alto oboe|\
         alto voice|alto solo|alto chorus|altos voices|sopran|bassetthorn|basset horn|\
         basset clarinet|bassett horn|contratenor|violin synth|a cl|a fl|a sax|a trb|a tbn|\
         a solo|b solo|b cont|basso tuba|bb|bb basso|tuba basso|cello banjo",
    ),
    (
        NOT_BOWED,
        WordCount::One,
        "flute|flutes|flauto|flauti|flote|floten|fl|piccolo|picc|oboe|oboes|oboi|oboen|\
         hautbois|ob|english horn|corno inglese|cor anglais|englischhorn|clarinet|clarinets|\
         clarinetto|clarinetti|clarinette|clarinettes|klarinette|klarinetten|cl|klar|fagott|\
         fagotte|fagotto|fagotti|fag|fg|bsn|bn|saxophone|sax|recorder|recorders|\
         blockflote|horn|horns|corno|corni|cor|cors|horner|hn|hr|trumpet|trumpets|tromba|\
         trombe|trompete|trompeten|trompette|tpt|cornet|cornets|trombone|trombones|tromboni|\
         posaune|posaunen|tbn|trb|tuba|timpani|timp|pauken|timbales|percussion|perc|drum|\
         drums|cymbal|cymbals|becken|triangle|triangel|glockenspiel|xylophone|marimba|\
         celesta|harp|harps|harfe|arpa|harpe|piano|klavier|pianoforte|pno|organ|organo|\
         orgel|orgue|org|harpsichord|cembalo|clavecin|continuo|guitar|gitarre|chitarra|\
         lute|laute|theorbo|mandolin|banjo|ukulele|accordion|harmonium|voice|voices|voce|\
         voix|stimme|gesang|soprano|soprani|mezzo soprano|tenor|tenore|tenori|tenors|\
         baritone|bariton|baritono|treble|cantus|canto|chorus|choir|chor|coro|choeur|\
         cowbell|tambourine|narrator|electric piano|keyboard|euphonium|cello synth",
    ),
];

/// Reads a name.
pub(super) fn read(text: &str, spelling: NameSpelling) -> ReadName {
    let words = split_numbers(tokens(text));
    let mut found: Vec<(Claim, WordCount)> = Vec::new();
    let mut at = 0;
    while at < words.len() {
        let hit = longest(&words[at..]);
        let lone = words.iter().filter(|word| word.parse::<u8>().is_err() && !is_roman(word)).count() == 1;
        match hit {
            // A single letter is a name only as the whole of an abbreviation.
            Some((_, _, 1)) if words[at].len() == 1 && !(spelling == NameSpelling::Short && lone) => at += 1,
            Some((claim, count, length)) => {
                found.push((claim, count));
                at += length;
            }
            None => at += 1,
        }
    }
    ReadName { claim: join(&found), players: players(&words, &found) }
}

/// Several names on one staff: all bowed gives the first, a mixture is [`Claim::Shared`].
fn join(found: &[(Claim, WordCount)]) -> Claim {
    let bowed = found.iter().map(|(claim, _)| *claim).find(|claim| *claim != NOT_BOWED);
    let others = found.iter().any(|(claim, _)| *claim == NOT_BOWED);
    match (bowed, others) {
        (None, false) => Claim::Nothing,
        (None, true) => NOT_BOWED,
        // "Violoncello e Basso": the sure name settles what the doubtful one means.
        (Some(Claim::Perhaps(first)), false) => found
            .iter()
            .map(|(claim, _)| *claim)
            .find(|claim| matches!(claim, Claim::Sure(_)))
            .map_or(Claim::Perhaps(first), |_| Claim::Sure(first)),
        (Some(claim), false) => claim,
        (Some(Claim::Sure(instrument) | Claim::Perhaps(instrument) | Claim::Shared(instrument)), true) => {
            Claim::Shared(instrument)
        }
        (Some(Claim::Nothing), true) => NOT_BOWED,
    }
}

fn players(words: &[String], found: &[(Claim, WordCount)]) -> Players {
    const ALONE: &[&str] =
        &["solo", "sola", "soliste", "soloist", "principale", "principal", "concertante", "concertato"];
    const SEVERAL: &[&str] =
        &["tutti", "ripieno", "section", "soli", "1st violins", "div", "divisi", "desk", "pult"];
    if words.iter().any(|word| ALONE.contains(&word.as_str())) {
        Players::Solo
    } else if words.iter().any(|word| SEVERAL.contains(&word.as_str()))
        || found.iter().any(|(claim, count)| *count == WordCount::Many && *claim != NOT_BOWED)
    {
        Players::Section
    } else {
        Players::Unknown
    }
}

fn longest(words: &[String]) -> Option<(Claim, WordCount, usize)> {
    let fits = |name: &str| {
        let mut count = 0;
        let mut place = words.iter();
        name.split(' ')
            .all(|word| {
                count += 1;
                place.next().is_some_and(|here| here == word)
            })
            .then_some(count)
    };
    NAMES
        .iter()
        .flat_map(|(claim, count, names)| names.split('|').map(move |name| (*claim, *count, name)))
        .filter_map(|(claim, count, name)| Some((claim, count, fits(name)?)))
        .max_by_key(|(_, _, length)| *length)
}

/// Whether a name is one of the plurals.
pub(super) fn is_plural(text: &str) -> bool {
    let words = split_numbers(tokens(text));
    (0..words.len()).filter_map(|at| longest(&words[at..])).any(|(_, count, _)| count == WordCount::Many)
}

/// Every name of the table.
pub(super) fn all() -> impl Iterator<Item = (Claim, &'static str)> {
    NAMES.iter().flat_map(|(claim, _, names)| names.split('|').map(move |name| (*claim, name)))
}

/// The folded words, "Vn1" and "Violin2" parted before their number.
pub(super) fn split_numbers(tokens: Vec<WordToken>) -> Vec<String> {
    let mut words = Vec::new();
    for token in tokens {
        let stem = token.text.trim_end_matches(|letter: char| letter.is_ascii_digit());
        if !stem.is_empty() && stem.len() < token.text.len() {
            words.push(stem.to_owned());
            words.push(token.text[stem.len()..].to_owned());
        } else {
            words.push(token.text);
        }
    }
    words
}

fn is_roman(word: &str) -> bool {
    matches!(word, "i" | "ii" | "iii" | "iv")
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    /// A name with capitals, accents or stray spaces could never match a folded one.
    #[test]
    fn every_name_folds_to_itself_and_stands_once() {
        let mut seen = BTreeSet::new();
        for name in NAMES.iter().flat_map(|(_, _, names)| names.split('|')) {
            let words: Vec<_> = tokens(name).into_iter().map(|token| token.text).collect();
            assert_eq!(words.join(" "), name);
            assert!(seen.insert(name), "{name:?} is in the table twice");
        }
        assert!(seen.len() > 250);
    }
}
