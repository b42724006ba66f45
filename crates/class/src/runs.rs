//! Numbers of bars as people list them.

/// "3, 5–8, 12": labels of bars in order, neighbours joined; at most `most` pieces.
pub(crate) fn listed(bars: &[u32], label: impl Fn(u32) -> String, most: usize) -> String {
    let mut runs: Vec<(u32, u32)> = Vec::new();
    for bar in bars {
        match runs.last_mut() {
            Some((_, last)) if *bar <= *last + 1 => *last = (*last).max(*bar),
            _ => runs.push((*bar, *bar)),
        }
    }
    let more = runs.len() > most;
    let said: Vec<String> = runs
        .iter()
        .take(most)
        .map(|(first, last)| match last - first {
            0 => label(*first),
            1 => format!("{}, {}", label(*first), label(*last)),
            _ => format!("{}–{}", label(*first), label(*last)),
        })
        .collect();
    if more { format!("{} …", said.join(", ")) } else { said.join(", ") }
}

#[cfg(test)]
mod tests {
    use super::listed;

    #[test]
    fn neighbours_are_joined() {
        let label = |bar: u32| (bar + 1).to_string();
        assert_eq!(listed(&[2, 4, 5, 6, 7, 11], label, 9), "3, 5–8, 12");
        assert_eq!(listed(&[2, 3, 5], label, 1), "3, 4 …");
        assert_eq!(listed(&[], label, 3), "");
    }
}
