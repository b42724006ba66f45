//! Making the English file from the rules' own pages.

/// The sections of a page that are said in every language; the example is made, and the sources stay as they are.
const SECTIONS: [(&str, &str); 4] = [
    ("finds", "## What it finds"),
    ("why", "## Why it matters"),
    ("proposes", "## What it proposes"),
    ("limits", "## What it cannot know"),
];

/// The Fluent file of the rules in English, from each rule's id and its page (Markdown with the headings of the manual).
///
/// ```
/// let page = "# Late\n\n## What it finds\nA late note.\n\n## Why it matters\nIt is late.\n\n## Example\n";
/// let file = arcata_languages::rules_file([("late", page)]);
/// assert!(file.ends_with("late = Late\n    .finds =\n        A late note.\n    .why =\n        It is late.\n"));
/// ```
#[must_use]
pub fn rules_file<'a>(rules: impl IntoIterator<Item = (&'a str, &'a str)>) -> String {
    let mut rules: Vec<_> = rules.into_iter().collect();
    rules.sort_unstable();
    let mut out =
        "# Made by `cargo xtask docs` from the rules' own pages: change those. The other languages are translations of this file.\n"
            .to_owned();
    for (id, page) in rules {
        let title = page.lines().find_map(|line| line.strip_prefix("# ")).unwrap_or(id);
        out.push_str(&format!("\n{id} = {}\n", escaped(title)));
        for (key, heading) in SECTIONS {
            let lines = section(page, heading);
            if lines.is_empty() {
                continue;
            }
            out.push_str(&format!("    .{key} =\n"));
            for line in lines {
                if line.is_empty() {
                    out.push('\n');
                } else {
                    out.push_str(&format!("        {}\n", escaped(line)));
                }
            }
        }
    }
    out
}

/// The lines below a heading, down to the next, without blank lines at the ends.
fn section<'a>(page: &'a str, heading: &str) -> Vec<&'a str> {
    let below = page.lines().skip_while(|line| line.trim_end() != heading).skip(1);
    let mut lines: Vec<&str> = below.take_while(|line| !line.starts_with("## ")).map(str::trim_end).collect();
    while lines.last().is_some_and(|line| line.is_empty()) {
        lines.pop();
    }
    let first = lines.iter().position(|line| !line.is_empty()).unwrap_or(0);
    lines.split_off(first)
}

/// Text in which Fluent sees only text: braces, and what may not begin a line, as string literals.
fn escaped(text: &str) -> String {
    let text: String = text
        .chars()
        .map(|letter| match letter {
            '{' => r#"{"{"}"#.to_owned(),
            '}' => r#"{"}"}"#.to_owned(),
            other => other.to_string(),
        })
        .collect();
    match text.chars().next() {
        Some(first @ ('[' | '*' | '.')) => format!("{{\"{first}\"}}{}", &text[first.len_utf8()..]),
        _ => text,
    }
}
