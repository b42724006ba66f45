//! A file of habits in words.

use arcata_bow::Profile;
use arcata_languages::{Language, capital, points};

use crate::{Foreseen, Habits};

/// What each learned price is for, as the subject of "counts".
const SUBJECTS: [(&str, &str); 29] = [
    ("downbeat", "an up-bow on a downbeat, one note"),
    ("downbeat_slurred", "an up-bow on a downbeat, a slur"),
    ("downbeat_bar", "an up-bow on a downbeat, a stroke of about a bar"),
    ("downbeat_bars", "an up-bow on a downbeat, a stroke of several bars"),
    ("downbeat_even", "an up-bow on a downbeat where bars count in twos, besides"),
    ("mid_bar", "an up-bow in the middle of an even bar, one note"),
    ("mid_bar_slurred", "an up-bow in the middle of an even bar, a slur"),
    ("half_bar", "a slur begun in the middle of an even bar on a down-bow"),
    ("beat", "a down-bow on a weak beat"),
    ("offbeat", "a down-bow between beats"),
    ("upbeat", "a down-bow on the last short note before a downbeat"),
    ("upbeat_slurred", "a down-bow on the last short slur before a downbeat"),
    ("upbeat_long", "a down-bow on the last long stroke before a downbeat"),
    ("flow_slurred", "an up-bow on a short slur that flows into a downbeat"),
    ("flow_long", "an up-bow on a long stroke that flows into a downbeat"),
    ("upbeat_mid_bar", "a down-bow right before the middle of a bar"),
    ("entry", "an entry on the bow against the downbeat"),
    ("entry_elsewhere", "an up-bow on an entry away from the downbeat"),
    ("before_rest", "a down-bow on the last stroke before a short rest"),
    ("ending", "an up-bow on a phrase's last note"),
    ("hook", "a hook"),
    ("hook_last_two", "hooking the last two of a bar's equal notes"),
    ("hook_by_slur", "a hook next to a slur, besides"),
    ("hook_slurs", "a hook between two slurs, besides"),
    ("retake", "a retake in a line that sounds on"),
    ("retake_apart", "a retake where the strokes are apart"),
    ("retake_up", "a retake on the up-bow, besides"),
    ("reset", "going on in one direction over a rest"),
    ("swell", "a swell against the bow"),
];

/// The prices that moved by a tenth and by 0.05 points or more, each in a sentence, the farthest first.
///
/// ```
/// use arcata_bow::{Profile, Style};
/// use arcata_habits::{Foreseen, Habits, moved};
///
/// let foreseen = Foreseen { strokes: 200, before: 150, after: 170, error: 300 };
/// let prices = [("downbeat".to_owned(), 2200)].into();
/// let habits = Habits { style: Style::Concert, strokes: 220, foreseen, prices };
/// assert_eq!(
///     moved(&habits, &Profile::default()),
///     ["An up-bow on a downbeat, one note, counts 2.20 instead of 1.10: avoided more."]
/// );
/// ```
#[must_use]
pub fn moved(habits: &Habits, profile: &Profile) -> Vec<String> {
    let said = |price| points(price, Language::English);
    let mut moved: Vec<(i64, String)> = habits
        .prices
        .iter()
        .filter_map(|(name, price)| {
            let (by_style, price) = (profile.weight(name)?, *price);
            let subject = SUBJECTS.iter().find(|(known, _)| known == name)?.1;
            // How far, as a ratio in hundredths, whichever way.
            let (less, more) = (by_style.min(price).max(1), by_style.max(price));
            let far = more.saturating_mul(100) / less;
            let way = if price > by_style { "avoided more" } else { "minded less" };
            let mut sentence =
                format!("{subject}, counts {} instead of {}: {way}.", said(price), said(by_style));
            if !subject.contains(',') {
                sentence = sentence.replacen(", counts", " counts", 1);
            }
            let seen = far >= 110 && (price - by_style).abs() >= 50;
            seen.then(|| (far, capital(&sentence)))
        })
        .collect();
    // Stable: equal ones stay in the order of their names.
    moved.sort_by_key(|(far, _)| -far);
    moved.into_iter().map(|(_, sentence)| sentence).collect()
}

/// What they were learned from and how much better they foresee, in sentences.
#[must_use]
pub fn account(habits: &Habits) -> String {
    let Foreseen { strokes, before, after, error } = habits.foreseen;
    format!(
        "Learned from {} marked strokes, in the style {}. Of {strokes} strokes in bars that were left out these \
         prices foresee {after}, the style alone {before}: {}.",
        habits.strokes,
        habits.style.name(),
        won(habits.foreseen.gain(), error)
    )
}

/// What is won, and how sure that is.
pub(crate) fn won(gain: i64, error: i64) -> String {
    let sure = match gain {
        gain if gain > error.saturating_mul(2) => "hardly chance",
        gain if gain > error => "more than its error, but not sure",
        _ => "it may well be chance",
    };
    format!("{} points more, standard error {}, {sure}", points_of(gain), points_of(error))
}

impl Foreseen {
    /// What is won, hundredths of a point.
    #[must_use]
    pub fn gain(&self) -> i64 {
        let whole = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
        (whole(self.after) - whole(self.before)) * 10_000 / whole(self.strokes.max(1))
    }
}

/// Hundredths as points with one decimal.
fn points_of(hundredths: i64) -> String {
    let tenths = (hundredths.abs() + 5) / 10;
    format!("{}{}.{}", if hundredths < 0 { "−" } else { "" }, tenths / 10, tenths % 10)
}

#[cfg(test)]
mod tests {
    use super::SUBJECTS;
    use crate::LEARNED;

    #[test]
    fn every_learned_price_has_its_words() {
        assert_eq!(SUBJECTS.map(|(name, _)| name), LEARNED);
    }
}
