//! Tempo words, changes and returns. The readings are common practice; the numbers are those of the tempo table.

use super::tempo;
use crate::TempoKind::{Back, Marked, Quickening, Scaled, Slowing, Word};
use crate::words::meanings;
use crate::{Length, TempoBack};

#[test]
fn tempo_words_and_their_shades() {
    let cases = [
        ("Allegro", 132, 1),
        ("Allegretto", 108, 1),
        ("Largo", 48, 1),
        ("Prestissimo", 200, 1),
        ("Langsam", 54, 1),
        ("Mäßig", 92, 1),
        ("Lebhaft", 132, 1),
        ("Schnell", 144, 1),
        ("Lent", 56, 1),
        ("Modéré", 92, 1),
        ("Vif", 144, 1),
        ("Très lent", 46, 1),
        ("Maestoso", 84, 1),
        // Shades: a tenth further or nearer (from memory).
        ("Allegro molto", 440, 3),
        ("Molto adagio", 252, 5),
        ("Allegro ma non troppo", 594, 5),
        ("Allegro non tanto", 594, 5),
        ("Adagio ma non troppo", 560, 9),
        ("molto vivace", 1520, 9),
        ("Nicht zu schnell", 648, 5),
        ("Pas trop lent", 560, 9),
        // Two words meet half-way.
        ("Allegro moderato", 114, 1),
        ("Andante quasi Allegretto", 92, 1),
        ("Allegro vivace", 142, 1),
        // Character urges or restrains, never the other way.
        ("Allegro con brio", 132, 1),
        ("Allegro maestoso", 108, 1),
        ("Andante con moto", 80, 1),
        ("Adagio cantabile", 56, 1),
        ("Allegro molto e con brio", 440, 3),
        ("Allegro non troppo, ma con brio", 594, 5),
        ("Largo sostenuto", 48, 1),
        ("Sostenuto", 66, 1),
        ("Adagio non lento", 56, 1),
    ];
    for (text, numerator, denominator) in cases {
        assert_eq!(meanings(text), [tempo(Word(Length::new(numerator, denominator)))], "{text:?}");
    }
}

#[test]
fn tempo_changes_and_returns() {
    for text in [
        "rit.",
        "ritard.",
        "rall.",
        "riten.",
        "poco rit.",
        "allargando",
        "cédez",
        "zurückhaltend",
        "langsamer werdend",
        "en ralentissant",
    ] {
        assert_eq!(meanings(text), [tempo(Slowing)], "{text:?}");
    }
    for text in [
        "accel.",
        "string.",
        "stringendo",
        "stretto",
        "poco a poco animato",
        "beschleunigen",
        "immer schneller",
        "pressez",
        "immer geschwinder",
    ] {
        assert_eq!(meanings(text), [tempo(Quickening)], "{text:?}");
    }
    for text in
        ["a tempo", "A Tempo", "in tempo", "im Tempo", "au Mouvement", "a tempo [Adagio]", "wie vorher"]
    {
        assert_eq!(meanings(text), [tempo(Back(TempoBack::Previous))], "{text:?}");
    }
    for text in [
        "Tempo I",
        "Tempo I.",
        "Tempo 1",
        "Tempo primo",
        "Tempo 1mo",
        "1er Mouvt",
        "au 1er Mouvement",
        "Erstes Zeitmaß",
        "Tempo I. Allegro.",
    ] {
        assert_eq!(meanings(text), [tempo(Back(TempoBack::First))], "{text:?}");
    }
    let scaled = [
        ("meno mosso", 4, 5),
        ("Più mosso", 5, 4),
        ("un poco più mosso", 10, 9),
        ("Molto meno mosso", 2, 3),
        ("poco più lento", 9, 10),
        ("etwas langsamer", 9, 10),
        ("plus lent", 4, 5),
        ("un peu plus vite", 10, 9),
        ("Più presto quasi prestissimo", 5, 4),
        ("poco animato", 10, 9),
        ("doppio movimento", 2, 1),
        ("L'istesso tempo", 1, 1),
    ];
    for (text, numerator, denominator) in scaled {
        assert_eq!(meanings(text), [tempo(Scaled(Length::new(numerator, denominator)))], "{text:?}");
    }
    assert_eq!(meanings("rit. - - a tempo"), [tempo(Slowing), tempo(Back(TempoBack::Previous))]);
    assert_eq!(meanings("Allegro (♩ = 120)"), [tempo(Marked(Length::new(120, 1)))]);
    assert_eq!(meanings("Tempo I (♩. = 60)"), [tempo(Marked(Length::new(90, 1)))]);
}
