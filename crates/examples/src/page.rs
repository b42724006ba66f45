//! The blocks of music in a page.

/// How a block of music begins in a page.
const OPENS: &str = "```music";

/// The blocks of music in a page, in their order.
///
/// ```
/// let page = "# A\n\n```music\nviolin: C5\n```\n";
/// assert_eq!(arcata_examples::blocks(page), ["violin: C5\n"]);
/// ```
#[must_use]
pub fn blocks(page: &str) -> Vec<String> {
    let mut found = Vec::new();
    with_examples(page, |music| {
        found.push(music.to_owned());
        String::new()
    });
    found
}

/// A page (Markdown) with what `example` makes of each block of music in its place.
///
/// ```
/// let page = "# A\n\n```music\nviolin: C5\n```\n\nAfter.\n";
/// let shown = arcata_examples::with_examples(page, |_| "See there.\n".to_owned());
/// assert_eq!(shown, "# A\n\nSee there.\n\nAfter.\n");
/// ```
pub fn with_examples(page: &str, mut example: impl FnMut(&str) -> String) -> String {
    let mut out = String::with_capacity(page.len());
    let mut lines = page.lines();
    while let Some(line) = lines.next() {
        if line.trim_end() != OPENS {
            out.push_str(line);
            out.push('\n');
            continue;
        }
        let music: String = lines
            .by_ref()
            .take_while(|line| line.trim_end() != "```")
            .flat_map(|line| [line, "\n"])
            .collect();
        out.push_str(&example(&music));
    }
    out
}
