//! What is better and what is worse about a bowing, in words.

use arcata_bow::{Cost, Term, points};

/// What a bowing is like where a term falls, and where it grows.
const fn better_and_worse(term: Term) -> (&'static str, &'static str) {
    match term {
        Term::Beat => ("bows with the beat", "bows against the beat"),
        Term::Upbeat => ("up-bow right before the downbeat", "down-bow right before the downbeat"),
        Term::Entry => ("entry on the bow that suits the beat", "entry on the bow against the beat"),
        Term::Swell => ("crescendo or diminuendo with the bow", "crescendo or diminuendo against the bow"),
        Term::Accent => {
            ("accents or chords on the bow that suits them", "accents or chords on the bow against them")
        }
        Term::Ending => ("phrase ends on a down-bow", "phrase ends on an up-bow"),
        Term::Hook => ("less hooking", "more hooking"),
        Term::Retake => ("less retaking", "more retaking"),
        Term::Reset => ("less lifting in rests", "more lifting in rests"),
        Term::RetakeTime => ("time enough to lift", "not time enough to lift"),
        Term::Speed => {
            ("bow speed nearer to what the dynamic wants", "bow speed farther from what the dynamic wants")
        }
        Term::SpeedLimit => {
            ("bow speed within what the dynamic allows", "bow speed beyond what the dynamic allows")
        }
        Term::Place => {
            ("strokes nearer to their place in the bow", "strokes farther from their place in the bow")
        }
        Term::Mark => ("printed bow marks kept", "printed bow marks not kept"),
        Term::Repeat => ("second time begins on the same bow", "second time begins on the other bow"),
        Term::Unity => {
            ("bowed like the players with the same rhythm", "bowed unlike the players with the same rhythm")
        }
        Term::Likeness => ("bowed like the same figure elsewhere", "bowed unlike the same figure elsewhere"),
        Term::Notation => ("less change to the notation", "more change to the notation"),
    }
}

/// What a bowing is like where a term grows.
pub(crate) const fn worse(term: Term) -> &'static str {
    better_and_worse(term).1
}

/// What the numbers mean, a sentence: the yardstick is what an up-bow on a downbeat counts, thousandths of a point.
#[must_use]
pub fn yardstick_words(downbeat: i64) -> String {
    format!("Penalty: an up-bow on a downbeat counts {}.", points(downbeat))
}

/// Shares below this are left out of sentences (thousandths of a point): nobody hears them.
const LEFT_OUT: i64 = 50;

/// The gains and the losses of a change of cost, the largest first, each as `less hooking (0.80)`.
#[must_use]
pub fn gains_and_losses(change: &Cost) -> (Vec<String>, Vec<String>) {
    let mut parts: Vec<(Term, i64)> = change.parts().filter(|(_, share)| share.abs() >= LEFT_OUT).collect();
    parts.sort_by_key(|(_, share)| std::cmp::Reverse(share.abs()));
    let told = |(term, share): &(Term, i64)| {
        let (better, worse) = better_and_worse(*term);
        format!("{} ({})", if *share < 0 { better } else { worse }, points(share.abs()))
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
        let (gains, losses) = gains_and_losses(&change);
        assert_eq!(gains, ["bows with the beat (2.30)"]);
        assert_eq!(losses, ["more hooking (2.70)"]);
    }
}
