//! What is better and what is worse about a bowing, in words.

use arcata_bow::{Cost, Term};
use arcata_languages::{Argument, Saying, Wording};

/// The keys of what a bowing is like where a term falls, and where it grows.
const fn better_and_worse(term: Term) -> (&'static str, &'static str) {
    match term {
        Term::Beat => ("better-beat", "worse-beat"),
        Term::Upbeat => ("better-upbeat", "worse-upbeat"),
        Term::Entry => ("better-entry", "worse-entry"),
        Term::Swell => ("better-swell", "worse-swell"),
        Term::Accent => ("better-accent", "worse-accent"),
        Term::Ending => ("better-ending", "worse-ending"),
        Term::Hook => ("better-hook", "worse-hook"),
        Term::Retake => ("better-retake", "worse-retake"),
        Term::Reset => ("better-reset", "worse-reset"),
        Term::RetakeTime => ("better-retake-time", "worse-retake-time"),
        Term::Speed => ("better-speed", "worse-speed"),
        Term::SpeedLimit => ("better-speed-limit", "worse-speed-limit"),
        Term::Place => ("better-place", "worse-place"),
        Term::Mark => ("better-mark", "worse-mark"),
        Term::Repeat => ("better-repeat", "worse-repeat"),
        Term::Unity => ("better-unity", "worse-unity"),
        Term::Likeness => ("better-likeness", "worse-likeness"),
        Term::Notation => ("better-notation", "worse-notation"),
    }
}

/// The key of what a bowing is like where a term grows.
pub(crate) const fn worse(term: Term) -> &'static str {
    better_and_worse(term).1
}

/// What the numbers mean, a sentence: the yardstick is what an up-bow on a downbeat counts, thousandths of a point.
#[must_use]
pub fn yardstick_words(downbeat: i64, wording: &Wording) -> String {
    wording.say(&Saying::new("yardstick").with("points", Argument::Points(downbeat)))
}

/// Shares below this are left out of sentences (thousandths of a point): nobody hears them.
const LEFT_OUT: i64 = 50;

/// The gains and the losses of a change of cost, the largest first, each as `less hooking (0.80)`.
#[must_use]
pub fn gains_and_losses(change: &Cost, wording: &Wording) -> (Vec<String>, Vec<String>) {
    let mut parts: Vec<(Term, i64)> = change.parts().filter(|(_, share)| share.abs() >= LEFT_OUT).collect();
    parts.sort_by_key(|(_, share)| std::cmp::Reverse(share.abs()));
    let told = |(term, share): &(Term, i64)| {
        let (better, worse) = better_and_worse(*term);
        let what = Saying::new(if *share < 0 { better } else { worse });
        wording.say(&Saying::new("share").with("what", what).with("points", Argument::Points(share.abs())))
    };
    let (gains, losses): (Vec<_>, Vec<_>) = parts.into_iter().partition(|(_, share)| *share < 0);
    (gains.iter().map(told).collect(), losses.iter().map(told).collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gains_come_apart_from_losses_and_trifles_are_left_out() {
        let change = Cost::of(Term::Hook, 2700) + Cost::of(Term::Beat, -2300) + Cost::of(Term::Place, 12);
        let (gains, losses) = gains_and_losses(&change, &Wording::default());
        assert_eq!(gains, ["bows with the beat (2.30)"]);
        assert_eq!(losses, ["more hooking (2.70)"]);
    }
}
