//! A file of habits in words, in whatever language.

use arcata_bow::Profile;
use arcata_languages::{Argument, Saying};

use crate::{Foreseen, Habits};

/// The message that says what each learned price is for.
const SUBJECTS: [(&str, &str); 29] = [
    ("downbeat", "price-downbeat"),
    ("downbeat_slurred", "price-downbeat-slurred"),
    ("downbeat_bar", "price-downbeat-bar"),
    ("downbeat_bars", "price-downbeat-bars"),
    ("downbeat_even", "price-downbeat-even"),
    ("mid_bar", "price-mid-bar"),
    ("mid_bar_slurred", "price-mid-bar-slurred"),
    ("half_bar", "price-half-bar"),
    ("beat", "price-beat"),
    ("offbeat", "price-offbeat"),
    ("upbeat", "price-upbeat"),
    ("upbeat_slurred", "price-upbeat-slurred"),
    ("upbeat_long", "price-upbeat-long"),
    ("flow_slurred", "price-flow-slurred"),
    ("flow_long", "price-flow-long"),
    ("upbeat_mid_bar", "price-upbeat-mid-bar"),
    ("entry", "price-entry"),
    ("entry_elsewhere", "price-entry-elsewhere"),
    ("before_rest", "price-before-rest"),
    ("ending", "price-ending"),
    ("hook", "price-hook"),
    ("hook_last_two", "price-hook-last-two"),
    ("hook_by_slur", "price-hook-by-slur"),
    ("hook_slurs", "price-hook-slurs"),
    ("retake", "price-retake"),
    ("retake_apart", "price-retake-apart"),
    ("retake_up", "price-retake-up"),
    ("reset", "price-reset"),
    ("swell", "price-swell"),
];

/// The prices that moved by a tenth and by 0.05 points or more, each in a sentence, the farthest first.
///
/// ```
/// use arcata_bow::{Profile, Style};
/// use arcata_habits::{Foreseen, Habits, moved};
/// use arcata_languages::{Language, Wording};
///
/// let foreseen = Foreseen { strokes: 200, before: 150, after: 170, error: 300 };
/// let prices = [("downbeat".to_owned(), 2200)].into();
/// let habits = Habits { style: Style::Concert, strokes: 220, foreseen, prices };
/// let moved = moved(&habits, &Profile::default());
/// let said = |language| Wording::of(language).say(&moved[0]);
/// assert_eq!(
///     said(Language::English),
///     "An up-bow on a downbeat, one note, counts 2.20 instead of 1.10: avoided more."
/// );
/// assert_eq!(
///     said(Language::German),
///     "Ein Aufstrich auf der Eins, eine einzelne Note, zählt 2,20 statt 1,10: wird eher vermieden."
/// );
/// ```
#[must_use]
pub fn moved(habits: &Habits, profile: &Profile) -> Vec<Saying> {
    let mut moved: Vec<(i64, Saying)> = habits
        .prices
        .iter()
        .filter_map(|(name, price)| {
            let (by_style, price) = (profile.weight(name)?, *price);
            let subject = SUBJECTS.iter().find(|(known, _)| known == name)?.1;
            // How far, as a ratio in hundredths, whichever way.
            let (less, more) = (by_style.min(price).max(1), by_style.max(price));
            let far = more.saturating_mul(100) / less;
            let saying = Saying::new("habits-price")
                .with("what", Saying::new(subject))
                .with("price", Argument::Points(price))
                .with("before", Argument::Points(by_style))
                .choosing("way", if price > by_style { "avoided" } else { "minded" });
            let seen = far >= 110 && (price - by_style).abs() >= 50;
            seen.then_some((far, saying))
        })
        .collect();
    // Stable: equal ones stay in the order of their names.
    moved.sort_by_key(|(far, _)| -far);
    moved.into_iter().map(|(_, saying)| saying).collect()
}

/// What they were learned from and how much better they foresee, in sentences.
#[must_use]
pub fn account(habits: &Habits) -> Saying {
    let Foreseen { strokes, before, after, error } = habits.foreseen;
    let gain = habits.foreseen.gain();
    let sure = match gain {
        gain if gain > error.saturating_mul(2) => "sure",
        gain if gain > error => "likely",
        _ => "chance",
    };
    Saying::new("habits-account")
        .with("strokes", habits.strokes)
        .quoting("style", habits.style.name())
        .with("tested", strokes)
        .with("before", before)
        .with("after", after)
        .with("gain", Argument::Tenths(tenths(gain)))
        .with("error", Argument::Tenths(tenths(error)))
        .choosing("sure", sure)
}

impl Foreseen {
    /// What is won, hundredths of a point.
    #[must_use]
    pub fn gain(&self) -> i64 {
        let whole = |count: usize| i64::try_from(count).unwrap_or(i64::MAX);
        (whole(self.after) - whole(self.before)) * 10_000 / whole(self.strokes.max(1))
    }
}

/// Hundredths in tenths, rounded.
const fn tenths(hundredths: i64) -> i64 {
    let half = if hundredths < 0 { -5 } else { 5 };
    (hundredths + half) / 10
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
