//! The page of the constants that stand beside the code and not in a profile: each with what it is and how it was come by. One
//! without is refused.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use crate::outcome::Result;
use crate::setting::{CheckSetting, read_text};

/// The crates whose constants shape what is read, planned, reviewed or carried.
const CRATES: [&str; 6] = ["score", "bow", "hand", "review", "layer", "habits"];

/// How a constant was come by; one of these stands in its comment.
const STATUSES: [&str; 9] = [
    "rule of thumb",
    "common practice",
    "from memory",
    "ounted",
    "measured",
    "Source:",
    "a limit",
    "by definition",
    "MusicXML",
];

/// Kinds of numbers.
const NUMBERS: [&str; 10] = ["i32", "i64", "u8", "u16", "u32", "u64", "usize", "f64", "Length", "Level"];

const HEAD: &str = "# Constants beside the code

Made by `cargo xtask docs` from the comments of the code; a constant without its reason is refused.

What players may want otherwise stands in the [profiles](profiles.md), each with unit, reason, source and status. Here is the
rest: what makes a rule speak of a passage and not of a single bar, what bounds a search, what no file may ask for. Each says how it
was come by: *rule of thumb* and *from memory* wait to be measured, *common practice* is the trade's, *counted* and *measured* come
from data, *a limit* guards against files that hold no music, and *by definition* is arithmetic or a name.
";

/// A constant as it stands in the code.
struct Constant {
    name: String,
    value: String,
    told: String,
}

/// The page.
///
/// # Errors
/// A constant without a reason, by file and line; a folder that cannot be read.
pub(crate) fn page(setting: &CheckSetting) -> Result<String> {
    let mut page = HEAD.to_owned();
    for name in CRATES {
        let mut files = BTreeMap::new();
        let source = setting.root.join("crates").join(name).join("src");
        for path in sources(&source)? {
            let constants = constants(&path)?;
            if !constants.is_empty() {
                let shown = path.strip_prefix(&source).unwrap_or(&path).display().to_string();
                files.insert(shown, constants);
            }
        }
        page.push_str(&format!("\n## {name}\n\n| constant | value | what it is |\n|---|---|---|\n"));
        for (file, constants) in files {
            for Constant { name, value, told } in constants {
                page.push_str(&format!("| `{file}` {name} | `{value}` | {told} |\n"));
            }
        }
    }
    Ok(page)
}

/// The Rust files under a folder, without those of tests, in order.
fn sources(folder: &Path) -> Result<Vec<PathBuf>> {
    let read = |problem: std::io::Error| format!("{}: {problem}", folder.display());
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).map_err(read)? {
        let path = entry.map_err(read)?.path();
        let stem = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        if stem == "tests" {
            continue;
        }
        if path.is_dir() {
            all.extend(sources(&path)?);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            all.push(path);
        }
    }
    all.sort();
    Ok(all)
}

fn constants(path: &Path) -> Result<Vec<Constant>> {
    let text = read_text(path)?;
    let lines: Vec<&str> = text.lines().take_while(|line| !line.starts_with("#[cfg(test)]")).collect();
    let mut found = Vec::new();
    for (index, line) in lines.iter().enumerate() {
        let Some((name, kind, value)) = declared(line) else { continue };
        // A long value stands on the next line.
        let value =
            if value.is_empty() { lines.get(index + 1).map_or("", |line| line.trim()) } else { value };
        let number = NUMBERS
            .iter()
            .any(|number| kind.split(|c: char| !c.is_alphanumeric()).any(|word| word == *number));
        let counts = value.contains(|c: char| c.is_ascii_digit()) || value.contains("::");
        if !number || !counts {
            continue;
        }
        let above = lines[..index].iter().rev().map(|line| line.trim());
        let comment = above.take_while(|line| line.starts_with("///") || line.starts_with("#["));
        let mut told: Vec<&str> =
            comment.filter_map(|line| line.strip_prefix("///")).map(str::trim).collect();
        told.reverse();
        let told = told.join(" ").trim().replace('|', "\\|").replace("[`", "`").replace("`]", "`");
        if !STATUSES.iter().any(|status| told.contains(status)) {
            return Err(format!(
                "{}:{}: {name} says not how it was come by: one of {} belongs into its comment",
                path.display(),
                index + 1,
                STATUSES.join(", ").replace("ounted", "counted")
            ));
        }
        let value = value.trim_end_matches(';').replace('|', "\\|");
        found.push(Constant { name: name.to_owned(), value, told });
    }
    Ok(found)
}

/// Name, type and value of a constant that is declared on a line.
fn declared(line: &str) -> Option<(&str, &str, &str)> {
    let line = line.trim_start();
    let line = match line.strip_prefix("pub") {
        Some(rest) => rest.trim_start_matches(|c: char| c != ' ').trim_start(),
        None => line,
    };
    let (name, rest) = line.strip_prefix("const ")?.split_once(": ")?;
    let (kind, value) = rest.split_once(" =")?;
    let shouted = name.chars().all(|c| c.is_ascii_uppercase() || c.is_ascii_digit() || c == '_');
    shouted.then_some((name, kind, value.trim()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn constants_are_told_from_functions_and_types() {
        assert_eq!(declared("    pub(crate) const LOUD: i32 = 600;"), Some(("LOUD", "i32", "600;")));
        assert_eq!(declared("pub const LONG: usize ="), Some(("LONG", "usize", "")));
        assert_eq!(declared("const fn price(weights: &Weights) -> i64 {"), None);
    }
}
