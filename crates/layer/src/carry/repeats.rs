//! Repeats of the old score that the new one writes out.

use arcata_score::Score;

use super::align::BarPair;
use super::features::Features;

/// Repeats of the old score that the new one writes out: for each old bar the new bar of its second pass.
pub(super) fn written_out(
    old: &Score,
    features: &Features,
    new: &Features,
    pairs: &[Option<BarPair>],
) -> Vec<Option<usize>> {
    let mut copies = vec![None; pairs.len()];
    for (first, last) in repeated(old) {
        let Some(end) = pairs[last].as_ref().map(|pair| pair.new) else { continue };
        let Some(start) = pairs[first].as_ref().map(|pair| pair.new) else { continue };
        // The alignment may have taken either pass; the other lies right behind it, or right before.
        let length = last - first + 1;
        for from in [Some(end + 1), start.checked_sub(length)].into_iter().flatten() {
            let here = from..from + length;
            let free = pairs.iter().flatten().all(|pair| !here.contains(&pair.new));
            let same = here.end <= new.whole.len()
                && here.clone().zip(first..).all(|(new_bar, bar)| new.whole[new_bar] == features.whole[bar]);
            if free && same {
                (first..=last).zip(here).for_each(|(bar, new_bar)| copies[bar] = Some(new_bar));
                break;
            }
        }
    }
    copies
}

/// The repeated sections of a score, as first and last bar.
fn repeated(score: &Score) -> Vec<(usize, usize)> {
    let mut sections = Vec::new();
    let mut begun = 0;
    for (index, bar) in score.bars.iter().enumerate() {
        if bar.left.repeat == Some(arcata_score::RepeatSign::Begin) {
            begun = index;
        }
        if matches!(bar.right.repeat, Some(arcata_score::RepeatSign::End { .. })) {
            sections.push((begun, index));
            begun = index + 1;
        }
    }
    sections
}
