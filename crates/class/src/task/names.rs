//! What somebody may have meant.

/// The known name that is nearest to one that is not known, if one is near enough to be meant.
///
/// ```
/// use arcata_class::nearest;
///
/// assert_eq!(nearest("bow-drif", ["bow-drift", "no-tempo"]), Some("bow-drift"));
/// assert_eq!(nearest("spaceship", ["bow-drift", "no-tempo"]), None);
/// ```
#[must_use]
pub fn nearest<'a>(asked: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let asked: Vec<char> = asked.chars().take(LONGEST).collect();
    let room = (asked.len() / 3).max(2);
    let far = known.into_iter().map(|name| (distance(&asked, name), name));
    far.filter(|(distance, _)| *distance <= room).min().map(|(_, name)| name)
}

/// Longer names are compared by their beginnings.
const LONGEST: usize = 64;

/// Letters put in, left out or written otherwise, at least (Levenshtein).
fn distance(one: &[char], other: &str) -> usize {
    let other: Vec<char> = other.chars().take(LONGEST).collect();
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (above, letter) in one.iter().enumerate() {
        let mut corner = row[0];
        row[0] = above + 1;
        for (left, other) in other.iter().enumerate() {
            let same = corner + usize::from(letter != other);
            corner = row[left + 1];
            row[left + 1] = same.min(corner + 1).min(row[left] + 1);
        }
    }
    row.last().copied().unwrap_or_default()
}
