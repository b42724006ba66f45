//! Which part of the old score is which of the new one.

use arcata_score::Score;

/// Which part of the old score is which of the new one: by id and name, by name, by id, and at last by place
/// where as many are left on both sides.
pub(super) fn matching_parts(old: &Score, new: &Score) -> Vec<(usize, usize)> {
    let mut pairs: Vec<(usize, usize)> = Vec::new();
    type Same = fn(&arcata_score::Part, &arcata_score::Part) -> bool;
    let ways: [Same; 3] = [
        |one, other| one.id == other.id && one.name == other.name,
        |one, other| one.name == other.name && !one.name.is_empty(),
        |one, other| one.id == other.id && one.instrument == other.instrument,
    ];
    for same in ways {
        for (index, part) in old.parts.iter().enumerate() {
            let is_free =
                |other: usize, pairs: &[(usize, usize)]| pairs.iter().all(|(_, taken)| *taken != other);
            if pairs.iter().any(|(taken, _)| *taken == index) {
                continue;
            }
            let found =
                (0..new.parts.len()).find(|other| is_free(*other, &pairs) && same(part, &new.parts[*other]));
            pairs.extend(found.map(|other| (index, other)));
        }
    }
    let left_old: Vec<usize> =
        (0..old.parts.len()).filter(|part| pairs.iter().all(|(one, _)| one != part)).collect();
    let left_new: Vec<usize> =
        (0..new.parts.len()).filter(|part| pairs.iter().all(|(_, one)| one != part)).collect();
    if left_old.len() == left_new.len() {
        pairs.extend(left_old.into_iter().zip(left_new));
    }
    pairs.sort_unstable();
    pairs
}
