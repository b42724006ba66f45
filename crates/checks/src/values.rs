//! Note values as short lists of rhythms write them.

/// The part of a whole note that a value lasts: `4.` is `3/8`.
pub(crate) fn part_of_whole(value: &str) -> String {
    let plain = value.trim_end_matches('.');
    let dots = value.len() - plain.len();
    let below = plain.parse::<u32>().unwrap_or(4) << dots;
    format!("{}/{below}", (2_u32 << dots) - 1)
}

#[cfg(test)]
mod tests {
    use super::part_of_whole;

    #[test]
    fn dots_add_the_half_of_what_stands_before_them() {
        assert_eq!(["1", "4", "4.", "2.."].map(part_of_whole), ["1/1", "1/4", "3/8", "7/8"]);
    }
}
