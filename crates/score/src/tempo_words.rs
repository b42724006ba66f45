//! What tempo words are worth in beats a minute when no metronome mark stands beside them.
//!
//! * Reason: seconds, and with them bow speed and bow length, need a number; a score that says only
//!   "Allegro" must not be left without one. Whoever prints a result names the assumption.
//! * Unit: beats a minute; the beat follows the time signature, see [`quarters_in`].
//! * Source: common practice. The order of the words is the usual one; the numbers lie inside the
//!   ranges that metronomes print beside them.
//! * Status: the numbers are from memory. Held against 126 tempo words that stand beside a number in
//!   open-licensed scores (quartets, two orchestral movements, the music21 corpus), read through [`quarters_in`]: the
//!   printed tempo is 1.00 times the table's in the middle, half lie between 0.85 and 1.13, 103 within a third.
//!   Some of those numbers are themselves a playback default. Composers differ by a third and more on one word.

use crate::words::WordLanguage::{self, English, French, German, Italian};
use crate::{Length, Meter, MeterSymbol};

/// A tempo word and its speed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TempoWord {
    /// Whose word it is.
    pub language: WordLanguage,
    /// As it folds: lower case, no accents; alternatives parted by `/`, what may be missing ends in `?`.
    pub phrases: &'static [&'static str],
    /// Beats a minute.
    pub beats_per_minute: u16,
    /// Whether it is also an everyday or a character word.
    pub sense: TempoSense,
}

/// How a tempo word may be taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TempoSense {
    /// A tempo wherever it stands in a direction.
    Tempo,
    /// A tempo only at the head of a section (the text begins with a capital): "Breit", "Vivo".
    Heading,
    /// A word of character, as [`TempoSense::Heading`]; beside another tempo word it can only make it
    /// quicker: "Allegro con brio".
    Urging,
    /// A word of character, as [`TempoSense::Heading`]; beside another tempo word it can only make it
    /// slower: "Allegro maestoso".
    Restraining,
}

/// The table, by language and speed. Reason, source and status: see the module.
pub const TEMPO_WORDS: &[TempoWord] = &[
    tempo(Italian, 40, &["larghissimo", "adagissimo", "adagio assai", "lentissimo"]),
    heading(Italian, 44, &["grave"]),
    tempo(Italian, 48, &["largo", "largamente assai"]),
    tempo(Italian, 52, &["lento", "lentamente"]),
    tempo(Italian, 56, &["adagio"]),
    heading(Italian, 60, &["largamente"]),
    tempo(Italian, 63, &["larghetto"]),
    restraining(Italian, 66, &["sostenuto", "mesto", "lamentoso", "funebre"]),
    tempo(Italian, 66, &["adagietto", "andante sostenuto"]),
    tempo(Italian, 76, &["andante"]),
    restraining(Italian, 76, &["tranquillo", "cantabile", "pesante"]),
    restraining(Italian, 84, &["maestoso", "comodo/commodo"]),
    urging(Italian, 84, &["con moto"]),
    tempo(Italian, 84, &["andantino"]),
    tempo(Italian, 96, &["moderato"]),
    restraining(Italian, 100, &["tempo giusto", "grazioso"]),
    tempo(Italian, 108, &["allegretto"]),
    tempo(Italian, 112, &["tempo di marcia", "alla? marcia", "tempo di menuetto/minuetto/minuet/menuet"]),
    urging(Italian, 126, &["animato", "scherzando", "risoluto", "con spirito", "con anima", "con brio"]),
    tempo(Italian, 132, &["allegro/alleg/allo."]),
    urging(Italian, 138, &["agitato", "con fuoco", "appassionato", "spiritoso"]),
    heading(Italian, 152, &["vivo"]),
    tempo(Italian, 152, &["vivace"]),
    tempo(Italian, 160, &["tempo di valse", "vivacissimo", "allegrissimo"]),
    tempo(Italian, 176, &["presto", "veloce"]),
    tempo(Italian, 200, &["prestissimo"]),
    tempo(English, 48, &["very slow/slowly"]),
    heading(English, 60, &["slow/slowly", "broadly", "solemnly", "mournfully"]),
    restraining(English, 76, &["gently", "calmly", "flowing", "walking pace/tempo"]),
    restraining(English, 84, &["majestically", "stately"]),
    heading(English, 96, &["moderate/moderately", "moderate tempo"]),
    heading(English, 108, &["moderately fast", "march tempo"]),
    heading(English, 126, &["lively", "briskly/brisk", "with spirit", "cheerfully", "spirited"]),
    heading(English, 138, &["fast"]),
    heading(English, 152, &["quick/quickly"]),
    heading(English, 168, &["very fast/quick", "as fast as possible"]),
    tempo(French, 46, &["tres lent"]),
    heading(French, 50, &["grave et lent"]),
    tempo(French, 56, &["lent/lente/lentement"]),
    heading(French, 66, &["largement", "tres large", "calme"]),
    heading(French, 76, &["allant", "tranquille/tranquillement", "sans lenteur"]),
    tempo(French, 92, &["modere/moderement", "sans presser"]),
    heading(French, 100, &["gracieux", "assez anime", "mouvement de menuet"]),
    heading(French, 112, &["mouvement de marche"]),
    urging(French, 126, &["anime", "gai/gaiement/gaiment", "agite", "decide"]),
    heading(French, 138, &["rapide/rapidement", "vite", "leger et rapide"]),
    tempo(French, 144, &["vif/vive/vivement", "vif et agite"]),
    tempo(French, 160, &["tres vif/vite/anime"]),
    tempo(German, 46, &["sehr langsam"]),
    heading(German, 54, &["langsam", "getragen", "schleppend", "schwer"]),
    restraining(German, 60, &["breit", "feierlich", "gemessen"]),
    restraining(German, 69, &["ruhig", "innig"]),
    heading(German, 76, &["gehend", "ruhig bewegt", "ruhig fliessend"]),
    heading(German, 88, &["gemachlich", "behaglich", "gemutlich", "fliessend"]),
    tempo(German, 92, &["massig/maessig/maszig", "gemassigt"]),
    heading(German, 100, &["massig bewegt", "nicht schnell"]),
    heading(German, 112, &["bewegt", "im? marschtempo", "massig schnell", "mit bewegung", "menuett tempo"]),
    urging(German, 126, &["munter", "frisch", "lustig", "heiter", "leidenschaftlich", "kraftig bewegt"]),
    heading(German, 132, &["lebhaft", "belebt", "feurig"]),
    heading(German, 144, &["schnell", "rasch", "geschwind", "eilig", "sehr lebhaft/bewegt"]),
    heading(German, 168, &["sehr schnell/rasch", "so schnell/rasch als/wie moglich"]),
];

const fn tempo(language: WordLanguage, beats_per_minute: u16, phrases: &'static [&'static str]) -> TempoWord {
    TempoWord { language, phrases, beats_per_minute, sense: TempoSense::Tempo }
}

const fn urging(
    language: WordLanguage,
    beats_per_minute: u16,
    phrases: &'static [&'static str],
) -> TempoWord {
    TempoWord { language, phrases, beats_per_minute, sense: TempoSense::Urging }
}

const fn restraining(
    language: WordLanguage,
    beats_per_minute: u16,
    phrases: &'static [&'static str],
) -> TempoWord {
    TempoWord { language, phrases, beats_per_minute, sense: TempoSense::Restraining }
}

const fn heading(
    language: WordLanguage,
    beats_per_minute: u16,
    phrases: &'static [&'static str],
) -> TempoWord {
    TempoWord { language, phrases, beats_per_minute, sense: TempoSense::Heading }
}

/// Beats a minute from which "molto" makes a tempo quicker; below it makes it slower.
///
/// Source: "molto moderato" is neither; the line runs just below Moderato. Status: from memory.
pub const MIDDLE_OF_THE_SCALE: u16 = 92;

/// What "molto", "assai", "sehr", "très" multiply a quick tempo by; a slow one is divided by it.
/// "ma non troppo", "poco", "etwas" do the opposite. Source: the step between two neighbouring words of the
/// table is about a tenth. Status: from memory.
pub const SHADE: (i64, i64) = (10, 9);

/// How much faster or slower "più mosso", "meno mosso" and their like ask for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TempoChange {
    /// più mosso, più allegro, plus vite, schneller.
    Faster,
    /// meno mosso, più lento, moins vite, langsamer.
    Slower,
    /// doppio movimento, doppelt so schnell.
    Double,
    /// Half as fast.
    Half,
    /// L'istesso tempo: the beat keeps its speed. The reader must see to a change of beat unit.
    Same,
}

/// How far a change goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Degree {
    /// un poco più mosso
    Little,
    /// più mosso
    Plain,
    /// molto più mosso
    Much,
}

impl TempoChange {
    /// The fraction of the tempo in force that a change asks for.
    ///
    /// Reason: the words name no number. Source: a step and a half of the metronome's scale for the
    /// plain word; common practice. Status: from memory.
    ///
    /// ```
    /// use arcata_score::Length;
    /// use arcata_score::tempo_words::{TempoChange, Degree};
    /// assert_eq!(TempoChange::Slower.fraction(Degree::Plain), Length::new(4, 5));
    /// ```
    #[must_use]
    pub fn fraction(self, degree: Degree) -> Length {
        match (self, degree) {
            (Self::Faster, Degree::Little) => Length::new(10, 9),
            (Self::Faster, Degree::Plain) => Length::new(5, 4),
            (Self::Faster, Degree::Much) => Length::new(3, 2),
            (Self::Slower, Degree::Little) => Length::new(9, 10),
            (Self::Slower, Degree::Plain) => Length::new(4, 5),
            (Self::Slower, Degree::Much) => Length::new(2, 3),
            (Self::Double, _) => Length::new(2, 1),
            (Self::Half, _) => Length::new(1, 2),
            (Self::Same, _) => Length::WHOLE,
        }
    }
}

/// A word's beats a minute as quarter notes a minute under a time signature.
///
/// | time signature | quarters a minute |
/// |---|---|
/// | 2/4, 3/4, 4/4, C | the table's number |
/// | cut time, 2/2: two half-note beats | 5/4 of it |
/// | 3/2, 4/2 | 3/2 of it |
/// | 6/4, 9/4: dotted halves | 15/8 of it |
/// | 6/8, 9/8, 12/8: dotted quarters | 9/8 of it |
/// | 3/8 and other eighths | 3/4 of it |
/// | sixteenths | 1/2 of it |
///
/// Reason: "Allegro" in cut time is not twice as fast as in common time, but faster.
/// Source: common practice, the fractions set by the tempo words that stand beside numbers in
/// open-licensed scores (string quartets, two orchestral movements, an open corpus).
/// Status: judged by eye on about forty such places; they scatter by a third.
///
/// ```
/// use arcata_score::{Length, Meter};
/// use arcata_score::tempo_words::quarters_in;
/// let allegro = Length::new(132, 1);
/// assert_eq!(quarters_in(allegro, &Meter::simple(4, 4)), allegro);
/// assert_eq!(quarters_in(allegro, &Meter::simple(2, 2)), Length::new(165, 1));
/// ```
#[must_use]
pub fn quarters_in(beats_per_minute: Length, meter: &Meter) -> Length {
    let unit = meter.groups.first().map_or(4, |group| group.unit);
    let count: u32 = meter.groups.iter().map(|group| u32::from(group.count)).sum();
    let compound = count > 3 && count.is_multiple_of(3);
    let (numerator, denominator) = match (unit, count) {
        _ if meter.symbol == MeterSymbol::Cut => (5, 4),
        (0..=2, 2) => (5, 4),
        (0..=2, _) => (3, 2),
        (3..=4, _) if compound => (15, 8),
        (3..=4, _) => (1, 1),
        (5..=8, _) if compound => (9, 8),
        (5..=8, _) => (3, 4),
        _ => (1, 2),
    };
    beats_per_minute.scaled(numerator, denominator)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn speed(word: &str) -> u16 {
        let of =
            |tempo: &&TempoWord| tempo.phrases.iter().any(|phrase| phrase.split('/').any(|one| one == word));
        TEMPO_WORDS.iter().find(of).unwrap().beats_per_minute
    }

    /// The order of the words is common knowledge (any music primer), the numbers are not.
    #[test]
    fn words_stand_in_their_usual_order() {
        let orders: [&[&str]; 3] = [
            &[
                "larghissimo",
                "grave",
                "largo",
                "lento",
                "adagio",
                "larghetto",
                "andante",
                "andantino",
                "moderato",
                "allegretto",
                "allegro",
                "vivace",
                "presto",
                "prestissimo",
            ],
            &["lent", "modere", "anime", "vif"],
            &["langsam", "massig", "bewegt", "lebhaft", "schnell"],
        ];
        for order in orders {
            assert!(order.windows(2).all(|pair| speed(pair[0]) < speed(pair[1])), "{order:?}");
        }
    }

    #[test]
    fn beats_follow_the_time_signature() {
        let allegro = Length::new(132, 1);
        let andante = Length::new(76, 1);
        let mut cut = Meter::simple(4, 4);
        cut.symbol = MeterSymbol::Cut;
        let cases = [
            (allegro, Meter::simple(3, 4), Length::new(132, 1)),
            (allegro, cut, Length::new(165, 1)),
            (allegro, Meter::simple(3, 2), Length::new(198, 1)),
            (allegro, Meter::simple(6, 8), Length::new(297, 2)),
            (andante, Meter::simple(6, 8), Length::new(171, 2)),
            (allegro, Meter::simple(6, 4), Length::new(495, 2)),
            (andante, Meter::simple(3, 8), Length::new(57, 1)),
            (andante, Meter::simple(6, 16), Length::new(38, 1)),
        ];
        for (beats, meter, quarters) in cases {
            assert_eq!(quarters_in(beats, &meter), quarters, "{meter:?}");
        }
        let empty = Meter { groups: Vec::new(), symbol: MeterSymbol::SenzaMisura };
        assert_eq!(quarters_in(allegro, &empty), allegro);
    }

    #[test]
    fn more_of_a_change_goes_further() {
        for degrees in [[Degree::Little, Degree::Plain], [Degree::Plain, Degree::Much]] {
            assert!(TempoChange::Faster.fraction(degrees[0]) < TempoChange::Faster.fraction(degrees[1]));
            assert!(TempoChange::Slower.fraction(degrees[0]) > TempoChange::Slower.fraction(degrees[1]));
        }
    }
}
