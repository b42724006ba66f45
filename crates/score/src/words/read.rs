//! From tokens to meanings.

use super::fold::{LetterCase, WordGap, WordToken, tokens};
use super::phrases::{self, Phrase};
use super::table::{COMPANIONS, Sense, When};
use super::{WordMeaning, metronome};
use crate::tempo_words::{Degree, MIDDLE_OF_THE_SCALE, SHADE, TempoSense, TempoWord};
use crate::{Length, Meaning, TempoKind};

pub(super) fn meanings(text: &str) -> Vec<WordMeaning> {
    let tokens = tokens(text);
    let context = Context::of(text, &tokens);
    let hits = hits(&tokens, &context);
    let mut found: Vec<WordMeaning> = Vec::new();
    let mut say = |meaning: WordMeaning| {
        if !found.contains(&meaning) {
            found.push(meaning);
        }
    };
    let mark = metronome::mark(text);
    let mut named = tempo_word(&hits, &tokens).filter(|_| !names_a_tempo(&hits) && mark.is_none());
    for hit in &hits {
        for sense in hit.phrase.senses {
            let meaning = match sense {
                Sense::TempoWord(_) => named.take().map(|beats| WordMeaning::Tempo(TempoKind::Word(beats))),
                _ => meaning_of(*sense, hit, &tokens, mark.as_ref()),
            };
            if let Some(meaning) = meaning {
                say(meaning);
            }
        }
    }
    if let Some(mark) = mark {
        say(WordMeaning::Tempo(mark));
    }
    found
}

/// What the whole text tells about its words.
struct Context {
    /// Begins with a capital.
    heading: bool,
    /// Tokens that neither the table nor the companions know.
    unknown: usize,
    /// All tokens.
    all: usize,
}

impl Context {
    fn of(text: &str, tokens: &[WordToken]) -> Self {
        let heading = text.chars().find(|letter| letter.is_alphabetic()).is_some_and(char::is_uppercase);
        let mut unknown = 0;
        let mut at = 0;
        while at < tokens.len() {
            if let Some((_, count)) = phrases::fitting(&tokens[at..]).next() {
                at += count;
                continue;
            }
            let token = &tokens[at];
            let known = token.number().is_some() || COMPANIONS.split(' ').any(|word| word == token.text);
            unknown += usize::from(!known);
            at += 1;
        }
        Self { heading, unknown, all: tokens.len() }
    }

    fn allows(&self, phrase: &Phrase, tokens: &[WordToken]) -> bool {
        let at_home = self.unknown * 2 <= self.all;
        match phrase.when {
            When::Anywhere => true,
            When::Heading => self.heading,
            When::Doubtful => at_home,
            When::Letters => at_home && tokens.iter().all(|token| token.case == LetterCase::Small),
            When::Alone => self.all == tokens.len(),
            When::Title => self.heading && self.all == tokens.len(),
        }
    }
}

/// A phrase found in the text.
struct Hit {
    phrase: &'static Phrase,
    /// Its first token.
    from: usize,
    /// The token after its last.
    to: usize,
    denied: Denial,
}

/// Whether a negation stands before a phrase.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Denial {
    /// None.
    None,
    /// "non troppo", "nicht zu": less of it.
    NotTooMuch,
    /// "non", "senza".
    Denied,
}

const NEGATIONS: &[&str] = &[
    "non", "senza", "senz", "sanza", "sans", "ohne", "nicht", "pas", "kein", "keine", "no", "not", "without",
    "never", "mai", "sine", "ne",
];

const TOO_MUCH: &[&str] = &["troppo", "tanto", "trop", "zu", "too", "so", "allzu"];

/// Words that may stand between a negation and what it denies.
const BETWEEN: &[&str] =
    &["piu", "plus", "mehr", "more", "molto", "sehr", "tres", "very", "il", "la", "le", "any", "de", "di"];

fn hits(tokens: &[WordToken], context: &Context) -> Vec<Hit> {
    let mut hits = Vec::new();
    let mut denied = Denial::None;
    let mut at = 0;
    while at < tokens.len() {
        let word = tokens[at].text.as_str();
        let fitting = phrases::fitting(&tokens[at..])
            .find(|(phrase, count)| context.allows(phrase, &tokens[at..at + count]));
        let count = match fitting {
            Some((phrase, count)) => {
                hits.push(Hit { phrase, from: at, to: at + count, denied });
                denied = Denial::None;
                count
            }
            None => {
                denied = match denied {
                    _ if NEGATIONS.contains(&word) => Denial::Denied,
                    Denial::Denied if TOO_MUCH.contains(&word) => Denial::NotTooMuch,
                    kept if BETWEEN.contains(&word) => kept,
                    _ => Denial::None,
                };
                1
            }
        };
        at += count;
        if tokens[at - 1].gap == WordGap::Closed {
            denied = Denial::None;
        }
    }
    hits
}

fn meaning_of(
    sense: Sense,
    hit: &Hit,
    tokens: &[WordToken],
    mark: Option<&TempoKind>,
) -> Option<WordMeaning> {
    if hit.denied != Denial::None {
        return None;
    }
    let meaning = match sense {
        Sense::Instruction(meaning) => WordMeaning::Instruction(meaning),
        Sense::Divisi => WordMeaning::Instruction(Meaning::Divisi(parts(hit, tokens))),
        Sense::Swell(kind) => WordMeaning::Swell(kind),
        Sense::Dynamic(kind) => WordMeaning::Dynamic(kind),
        Sense::LevelStep(kind) => WordMeaning::LevelStep(kind),
        Sense::Jump(jump) => WordMeaning::Jump(jump),
        Sense::Slowing => WordMeaning::Tempo(TempoKind::Slowing),
        Sense::Quickening => WordMeaning::Tempo(TempoKind::Quickening),
        Sense::Change(_) | Sense::Back(_) | Sense::TempoWord(_) if mark.is_some() => return None,
        Sense::Change(change) => WordMeaning::Tempo(TempoKind::Scaled(
            change.fraction(degree(&tokens[hit.from.saturating_sub(2)..hit.to])),
        )),
        Sense::Back(back) => WordMeaning::Tempo(TempoKind::Back(back)),
        Sense::TempoWord(_) => return None,
    };
    Some(meaning)
}

/// Words for the number of parts of a division.
const COUNTS: &[(&str, u8)] = &[
    ("due", 2),
    ("deux", 2),
    ("two", 2),
    ("zwei", 2),
    ("tre", 3),
    ("trois", 3),
    ("three", 3),
    ("drei", 3),
    ("quattro", 4),
    ("quatre", 4),
    ("four", 4),
    ("vier", 4),
    ("cinque", 5),
    ("cinq", 5),
    ("funf", 5),
    ("sei", 6),
    ("six", 6),
    ("sechs", 6),
    ("zweifach", 2),
    ("dreifach", 3),
    ("vierfach", 4),
    ("funffach", 5),
    ("sechsfach", 6),
];

/// How many parts a division makes: said after it ("div. a 3", "divisi in 4 parti") or before
/// ("dreifach geteilt", "in 3 geteilt"); two when nothing is said. Source: common practice.
fn parts(hit: &Hit, tokens: &[WordToken]) -> u8 {
    let count = |token: &WordToken| {
        token
            .number()
            .or_else(|| COUNTS.iter().find(|(word, _)| *word == token.text).map(|(_, count)| *count))
    };
    let after = tokens[hit.to..]
        .iter()
        .find(|token| !matches!(token.text.as_str(), "a" | "in" | "en" | "zu" | "into" | "by" | "per"))
        .and_then(count);
    let before = hit.from.checked_sub(1).and_then(|index| count(&tokens[index]));
    after.or(before).filter(|parts| (2..=24).contains(parts)).unwrap_or(2)
}

const MUCH: &[&str] = &["molto", "assai", "sehr", "tres", "beaucoup", "viel", "much", "very", "bien"];
const LITTLE: &[&str] = &[
    "poco",
    "pochettino",
    "pochissimo",
    "etwas",
    "peu",
    "wenig",
    "little",
    "bit",
    "slightly",
    "ziemlich",
    "assez",
    "rather",
    "quasi",
    "massig",
];

/// How far a change goes, by its own words and the two before it.
fn degree(words: &[WordToken]) -> Degree {
    let any = |list: &[&str]| words.iter().any(|token| list.contains(&token.text.as_str()));
    if any(LITTLE) {
        Degree::Little
    } else if any(MUCH) {
        Degree::Much
    } else {
        Degree::Plain
    }
}

/// Whether a change or a return already tells the tempo: "Tempo I. Allegro", "Più presto, quasi prestissimo".
fn names_a_tempo(hits: &[Hit]) -> bool {
    hits.iter()
        .flat_map(|hit| hit.phrase.senses)
        .any(|sense| matches!(sense, Sense::Change(_) | Sense::Back(_)))
}

/// The tempo that the text's tempo words name together, in beats a minute: one alone, or the mean of the
/// first two ("Allegro moderato", "Andante quasi allegretto"), shaded by "molto", "ma non troppo" and the like.
fn tempo_word(hits: &[Hit], tokens: &[WordToken]) -> Option<Length> {
    // A capital that begins "Cresc. e sostenuto" does not make a heading of what follows.
    let heads = |hit: &Hit| matches!(hit.phrase.senses, [] | [Sense::TempoWord(_)]);
    let headed = hits.first().is_some_and(heads);
    let named: Vec<(&TempoWord, &Hit)> = hits
        .iter()
        .filter_map(|hit| match hit.phrase.senses {
            [Sense::TempoWord(word)] if hit.denied != Denial::Denied => Some((*word, hit)),
            _ => None,
        })
        .filter(|(word, _)| headed || word.sense == TempoSense::Tempo)
        .take(2)
        .collect();
    let (first, hit) = named.first()?;
    let beats = |word: &TempoWord| i64::from(word.beats_per_minute);
    let drawn = named.get(1).filter(|(second, _)| draws(second, first));
    let beats = match drawn {
        Some((second, _)) => Length::new(beats(first) + beats(second), 2),
        None => Length::new(beats(first), 1),
    };
    let shade = match drawn {
        // Two words already say where between them the tempo lies.
        Some(_) if held_back(hit, tokens) => Shade::Less,
        Some(_) => Shade::Plain,
        None => shade(hit, tokens),
    };
    Some(shaded(beats, shade))
}

/// Whether a second tempo word moves the first.
fn draws(second: &TempoWord, first: &TempoWord) -> bool {
    match second.sense {
        TempoSense::Tempo | TempoSense::Heading => true,
        TempoSense::Urging => second.beats_per_minute > first.beats_per_minute,
        TempoSense::Restraining => second.beats_per_minute < first.beats_per_minute,
    }
}

/// More of it, less of it, or as it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Shade {
    More,
    Plain,
    Less,
}

/// The shade of a tempo word that stands alone.
fn shade(hit: &Hit, tokens: &[WordToken]) -> Shade {
    let says = |list: &[&str], token: Option<&WordToken>| {
        token.is_some_and(|token| list.contains(&token.text.as_str()))
    };
    let before = hit.from.checked_sub(1).and_then(|index| tokens.get(index));
    let after = tokens[hit.to..].iter().find(|token| token.text != "di");
    if held_back(hit, tokens) || says(LITTLE, before) {
        Shade::Less
    } else if says(MUCH, before) || says(MUCH, after) {
        Shade::More
    } else {
        Shade::Plain
    }
}

/// "non troppo" before a tempo word, or "ma non troppo" behind it.
fn held_back(hit: &Hit, tokens: &[WordToken]) -> bool {
    let after = tokens[hit.to..].iter().map(|token| token.text.as_str());
    let mut after = after.skip_while(|word| matches!(*word, "ma" | "mais" | "aber"));
    let measured = |word: &str| TOO_MUCH.contains(&word) || MUCH.contains(&word);
    hit.denied == Denial::NotTooMuch
        || (after.next().is_some_and(|word| NEGATIONS.contains(&word)) && after.next().is_some_and(measured))
}

fn shaded(beats: Length, shade: Shade) -> Length {
    let (more, less) = SHADE;
    let quick = beats >= Length::new(i64::from(MIDDLE_OF_THE_SCALE), 1);
    match (shade, quick) {
        (Shade::Plain, _) => beats,
        (Shade::More, true) | (Shade::Less, false) => beats.scaled(more, less),
        (Shade::More, false) | (Shade::Less, true) => beats.scaled(less, more),
    }
}
