//! The words of shorthand, in English, Italian, French and German.
//!
//! Source: the terms of the trade that the manual lists, and how pencil marks are usually typed (common
//! practice).

use arcata_score::BowDirection;
use arcata_score::words::folded_words;

use crate::model::{BowPlace, HookSign};

/// What a word or several mean after a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum MarkWord {
    Direction(BowDirection),
    /// Both bows on one note, this one first.
    Double(BowDirection),
    Hook,
    /// How a hook is written.
    Sign(HookSign),
    Retake,
    AsItComes,
    Lift,
    InBow(BowPlace),
    Slur,
    NoSlur,
    SlurNow,
}

const DOWN: MarkWord = MarkWord::Direction(BowDirection::Down);
const UP: MarkWord = MarkWord::Direction(BowDirection::Up);

/// Phrases, folded to lower case without accents, parted by `|`.
const MARKS: [(MarkWord, &str); 18] = [
    (DOWN, "down|down bow|downbow|dn|d|n|giu|in giu|arcata in giu|tire|tirez|abstrich|ab|herunter"),
    (UP, "up|up bow|upbow|u|v|su|in su|arcata in su|pousse|poussez|aufstrich|auf|hinauf"),
    (
        MarkWord::Double(BowDirection::Down),
        "down and up|down then up|d and u|giu e su|in giu e in su|tire et pousse|tirez et poussez|ab und auf",
    ),
    (
        MarkWord::Double(BowDirection::Up),
        "up and down|up then down|u and d|su e giu|in su e in giu|pousse et tire|poussez et tirez|auf und ab",
    ),
    (
        MarkWord::Hook,
        "hook|hooked|agganciata|agganciato|agganciare|arcata agganciata|accroche|accrochez|angebunden|\
         angebundener strich",
    ),
    (
        MarkWord::Sign(HookSign::Dots),
        "dots|with dots|punti|puntini|con punti|con puntini|points|avec points|punkte|mit punkten|punkten",
    ),
    (
        MarkWord::Sign(HookSign::Dashes),
        "dashes|with dashes|trattini|con trattini|lineette|con lineette|tirets|avec tirets|striche|mit strichen|\
         strichen",
    ),
    (
        MarkWord::Retake,
        "retake|ripresa|ripresa d arco|riprendere|reprise|reprise d archet|reprendre|neu ansetzen|ansetzen",
    ),
    (
        MarkWord::AsItComes,
        "as it comes|as comes|come viene|comme ca vient|comme il vient|wie es kommt|no bow|no bow mark",
    ),
    (MarkWord::Lift, "lift|alzare|levez|lever|abheben"),
    (
        MarkWord::InBow(BowPlace::Frog),
        "frog|at the frog|heel|at the heel|tallone|al tallone|talon|au talon|frosch|am frosch",
    ),
    (MarkWord::InBow(BowPlace::LowerHalf), "lower half|meta inferiore|moitie inferieure|untere halfte"),
    (
        MarkWord::InBow(BowPlace::Middle),
        "middle|middle of the bow|in the middle|a meta arco|meta arco|milieu|au milieu|mitte|in der mitte",
    ),
    (MarkWord::InBow(BowPlace::UpperHalf), "upper half|meta superiore|moitie superieure|obere halfte"),
    (
        MarkWord::InBow(BowPlace::Tip),
        "tip|at the tip|point|at the point|punta|alla punta|punta d arco|pointe|a la pointe|spitze|\
         an der spitze",
    ),
    (
        MarkWord::InBow(BowPlace::Whole),
        "whole bow|full bow|tutto l arco|tutto arco|tout l archet|ganzer bogen|ganzen bogen",
    ),
    (MarkWord::Slur, "slur|slurred|legatura|liaison|bindebogen"),
    (MarkWord::NoSlur, "no slur|without slur|unslur|senza legatura|sans liaison|ohne bindebogen|ohne bogen"),
];

const SLUR_NOW: &str = "slur now|legatura ora|liaison maintenant|bindebogen jetzt";

/// The mark that the longest run of words from the start means, and how many words that is.
pub(super) fn mark(words: &[&str]) -> Option<(MarkWord, usize)> {
    let folded: Vec<Vec<String>> = words.iter().take(4).map(|word| folded_words(word)).collect();
    (1..=folded.len()).rev().find_map(|count| {
        let said = folded[..count].concat().join(" ");
        let is = |names: &str| names.split('|').any(|name| name == said);
        let slur_now = is(SLUR_NOW).then_some(MarkWord::SlurNow);
        let meant = slur_now.or_else(|| MARKS.iter().find(|(_, names)| is(names)).map(|(mark, _)| *mark));
        Some((meant?, count))
    })
}

/// Whether a word by itself can only be a mark: it is no section and no bar.
pub(super) fn is_only_a_mark(words: &[&str]) -> bool {
    mark(words).is_some_and(|(_, count)| count > 1 || words[0].chars().count() > 2)
}

/// The word nearest to a misspelt one, if any is near.
pub(super) fn nearest_mark(word: &str) -> Option<String> {
    let names = MARKS.iter().flat_map(|(_, names)| names.split('|')).filter(|name| name.len() > 2);
    nearest(word, names)
}

/// The name nearest to what was typed: at most a third of its letters apart, the first of equals.
pub(super) fn nearest<'n>(typed: &str, names: impl Iterator<Item = &'n str>) -> Option<String> {
    /// The longest word that is looked up, letters (a limit).
    const LONGEST: usize = 64;
    let typed: Vec<char> = folded_words(typed).join(" ").chars().take(LONGEST).collect();
    let most = (typed.len() / 3).max(1);
    names
        .filter_map(|name| {
            let folded: Vec<char> = folded_words(name).join(" ").chars().take(LONGEST).collect();
            let apart = distance(&typed, &folded);
            // A name that is nothing but changes is no suggestion.
            (apart > 0 && apart <= most && apart < folded.len().min(typed.len())).then_some((apart, name))
        })
        .min_by_key(|(apart, _)| *apart)
        .map(|(_, name)| name.to_owned())
}

/// Letters to put in, leave out or change, or neighbours to swap, until one text is the other.
fn distance(one: &[char], other: &[char]) -> usize {
    let mut rows: Vec<Vec<usize>> = vec![(0..=other.len()).collect()];
    for (line, letter) in one.iter().enumerate() {
        let mut row = vec![line + 1];
        for (column, against) in other.iter().enumerate() {
            let same = rows[line][column] + usize::from(letter != against);
            let mut least = same.min(rows[line][column + 1] + 1).min(row[column] + 1);
            if line > 0 && column > 0 && *letter == other[column - 1] && one[line - 1] == *against {
                least = least.min(rows[line - 1][column - 1] + 1);
            }
            row.push(least);
        }
        rows.push(row);
    }
    rows[one.len()][other.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_phrase_folds_to_itself_and_means_one_thing() {
        let all = MARKS.iter().flat_map(|(_, names)| names.split('|')).chain(SLUR_NOW.split('|'));
        let mut seen = std::collections::BTreeSet::new();
        for name in all {
            assert_eq!(folded_words(name).join(" "), name);
            assert!(seen.insert(name), "{name:?} means two things");
        }
        assert!(seen.len() > 80);
    }

    #[test]
    fn marks_are_read_in_four_languages() {
        assert_eq!(mark(&["Down-Bow"]), Some((DOWN, 1)));
        assert_eq!(mark(&["in", "giù"]), Some((DOWN, 2)));
        assert_eq!(mark(&["Poussé"]), Some((UP, 1)));
        assert_eq!(mark(&["wie", "es", "kommt", "up"]), Some((MarkWord::AsItComes, 3)));
        assert_eq!(mark(&["ripresa", "d'arco"]), Some((MarkWord::Retake, 2)));
        assert_eq!(mark(&["slur", "now"]), Some((MarkWord::SlurNow, 2)));
        assert_eq!(mark(&["sideways"]), None);
    }

    #[test]
    fn misspelt_words_find_their_neighbours() {
        assert_eq!(nearest_mark("dwon"), Some("down".into()));
        assert_eq!(nearest_mark("retke"), Some("retake".into()));
        assert_eq!(nearest_mark("pizzicato"), None);
    }
}
