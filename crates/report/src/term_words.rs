//! What a bowing gains and loses, in words.

use arcata_bow::{Cost, Term};

/// What there is more or less of where a term grows or falls.
pub(crate) const fn words(term: Term) -> &'static str {
    match term {
        Term::Beat => "strong beats on the weak bow",
        Term::Upbeat => "down-bows right before a downbeat",
        Term::Entry => "entries on the bow against the beat",
        Term::Swell => "swells against the bow",
        Term::Accent => "accents on an up-bow",
        Term::Ending => "phrase ends on an up-bow",
        Term::Hook => "hooks",
        Term::Retake => "retakes",
        Term::Reset => "lifts in rests",
        Term::RetakeTime => "lifts without the time they take",
        Term::Speed => "bows faster or slower than the dynamic wants",
        Term::SpeedLimit => "bows beyond what the dynamic allows",
        Term::Place => "strokes away from their place in the bow",
        Term::Mark => "printed marks not kept",
        Term::Repeat => "second passes that begin on the other bow",
        Term::Unity => "strokes against the section with the same rhythm",
        Term::Likeness => "figures bowed otherwise than elsewhere",
        Term::Notation => "changes to the notation",
    }
}

/// Shares below this are left out of sentences (thousandths of a point): nobody hears them.
const LEFT_OUT: i64 = 50;

/// The gains and the losses of a change of cost, the largest first, each as `0.80 fewer hooks`.
#[must_use]
pub fn gains_and_losses(change: &Cost) -> (Vec<String>, Vec<String>) {
    let mut parts: Vec<(Term, i64)> = change.parts().filter(|(_, share)| share.abs() >= LEFT_OUT).collect();
    parts.sort_by_key(|(_, share)| std::cmp::Reverse(share.abs()));
    let told = |(term, share): &(Term, i64)| {
        let more = if *share < 0 { "less" } else { "more" };
        format!("{} {more} for {}", points(share.abs()), words(*term))
    };
    let (gains, losses): (Vec<_>, Vec<_>) = parts.into_iter().partition(|(_, share)| *share < 0);
    (gains.iter().map(told).collect(), losses.iter().map(told).collect())
}

/// Thousandths of a point, in points.
pub(crate) fn points(thousandths: i64) -> String {
    let sign = if thousandths < 0 { "-" } else { "" };
    format!("{sign}{}.{:02}", thousandths.abs() / 1000, thousandths.abs() % 1000 / 10)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gains_come_apart_from_losses_and_trifles_are_left_out() {
        let change = Cost::of(Term::Hook, 2700) + Cost::of(Term::Beat, -2300) + Cost::of(Term::Place, 12);
        let (gains, losses) = gains_and_losses(&change);
        assert_eq!(gains, ["2.30 less for strong beats on the weak bow"]);
        assert_eq!(losses, ["2.70 more for hooks"]);
    }
}
