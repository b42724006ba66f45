//! A profile written out: as a file that says everything, and as tables for the manual.

use std::fmt::Write as _;

use toml::{Table, Value};

use super::{Profile, Shipped, Style};

/// The order in which sections are written.
const SECTIONS: [(&str, &str); 16] = [
    ("words", "What things are called in messages"),
    ("hair", "Usable hair"),
    ("speed", "Bow speed of a violin by dynamic: slowest, preferred, fastest"),
    ("scale", "Bow speed of each instrument against a violin's"),
    ("homes", "Where in the bow a stroke lives, from frog (0) to tip (1000)"),
    ("times", "Times that players need"),
    ("assumed", "What is assumed where the score is silent"),
    ("rates", "Rates of strokes"),
    ("thresholds", "Thresholds of the review"),
    ("strings", "The left hand: from nut to bridge"),
    ("hand_close", "The left hand: from the first finger to the fourth without stretching"),
    ("hand_stretched", "The left hand: from the first finger to the fourth, stretched"),
    ("hand_thumb", "The left hand: from the thumb on the string to the farthest finger, 0 for none"),
    ("thumb_from", "The left hand: where the thumb comes up, semitones above the open string"),
    ("fingerboard", "The left hand: the highest note, semitones above the highest open string"),
    ("weights", "Weights of the planner"),
];

/// The head of the page of the manual.
const INTRODUCTION: &str = "\
# Player profiles

Made by `cargo xtask docs` from `crates/bow/profiles`.

A profile holds what players may want otherwise: times, lengths, speeds, prices, thresholds. (The numbers that bound a search or say
what makes a passage stand with their reasons among the [constants](constants.md).) `--profile` takes one of those below by its
name, or a file of your own. Such a file says which profile it extends and gives only what is to differ, as bare numbers:

```toml
extends = \"amateur\"
[hair]
violin = 560
[times]
lift = 180
```

`style = \"dance\"` at its top has everything planned in that style, unless a command says `--style`.

The status of a value says how it was come by: *seen*, read in the source; *counted*, from open data;
*derived*, arithmetic on the two; *default*, from memory or by rule of thumb, to be measured where it
matters to you; *yours*, set in your own file.
";

impl Profile {
    /// The whole profile as a file that can be read back, every value with unit, reason and source.
    #[must_use]
    pub fn to_documented_toml(&self) -> String {
        let mut text = String::new();
        let top = |key: &str, value: &str| format!("{key} = {}\n", Value::String(value.to_owned()));
        text.push_str(&top("extends", "professional"));
        text.push_str(&top("name", &self.name));
        text.push_str(&top("about", &self.about));
        text.push_str(&top("style", self.style.name()));
        for (section, about) in SECTIONS {
            let _ = write!(text, "\n# {about}.\n[{section}]\n");
            for (key, setting) in self.settings_of(section) {
                let part = |name: &str| setting.get(name).map(ToString::to_string).unwrap_or_default();
                let _ = writeln!(
                    text,
                    "{key} = {{ value = {}, unit = {}, reason = {}, source = {}, status = {} }}",
                    part("value"),
                    part("unit"),
                    part("reason"),
                    part("source"),
                    part("status")
                );
            }
        }
        text
    }

    /// The page of the manual on the shipped profiles, Markdown: the first in full, of the others and of the
    /// styles what differs from it.
    ///
    /// ```
    /// let page = arcata_bow::Profile::manual();
    /// assert!(page.contains("| `lift` | 150 | ms |"));
    /// ```
    #[must_use]
    pub fn manual() -> String {
        let full = Self::shipped(Shipped::Professional);
        let mut text = format!("{INTRODUCTION}\n## {}\n\n{}.\n", heading(&full.name), full.about);
        for (section, about) in SECTIONS {
            write_table(&mut text, section, about, &full.settings_of(section).collect::<Vec<_>>());
        }
        for other in Shipped::ALL.into_iter().map(Self::shipped).filter(|other| other.name != full.name) {
            let _ = write!(
                text,
                "\n## {}\n\n{}. What is not listed is as for `{}`.\n",
                heading(&other.name),
                other.about,
                full.name
            );
            for (section, about) in SECTIONS {
                let rows: Vec<_> = other.settings_unlike(&full, section).collect();
                write_table(&mut text, section, about, &rows);
            }
        }
        for style in Style::ALL.into_iter().filter(|style| *style != full.style) {
            let styled = Self::shipped(Shipped::Professional).in_style(style);
            let _ = write!(
                text,
                "\n## {} style\n\n{}. What is not listed is as the profile says; a profile's own prices hold in every style.\n",
                heading(style.name()),
                style.about()
            );
            let (section, about) = SECTIONS[SECTIONS.len() - 1];
            let rows: Vec<_> = styled.settings_unlike(&full, section).collect();
            write_table(&mut text, section, about, &rows);
        }
        text
    }

    /// The settings of a section whose values are others than in another profile.
    fn settings_unlike<'a>(
        &'a self,
        other: &'a Self,
        section: &'a str,
    ) -> impl Iterator<Item = (&'a String, &'a Table)> {
        let same = move |key: &str, setting: &Table| {
            let mut known = other.settings_of(section);
            known.any(|(other_key, known)| other_key == key && known.get("value") == setting.get("value"))
        };
        self.settings_of(section).filter(move |(key, setting)| !same(key, setting))
    }

    fn settings_of(&self, section: &str) -> impl Iterator<Item = (&String, &Table)> {
        let section = self.table.get(section).and_then(Value::as_table);
        section.into_iter().flatten().filter_map(|(key, value)| Some((key, value.as_table()?)))
    }
}

/// A section's table; nothing where it has no rows.
fn write_table(text: &mut String, section: &str, about: &str, rows: &[(&String, &Table)]) {
    if rows.is_empty() {
        return;
    }
    let _ = write!(
        text,
        "\n### `[{section}]` {about}\n\n| setting | value | unit | reason | source | status |\n|---|---|---|---|---|---|\n"
    );
    for (key, setting) in rows {
        let _ = writeln!(
            text,
            "| `{key}` | {} | {} | {} | {} | {} |",
            plain(setting.get("value")),
            plain(setting.get("unit")),
            plain(setting.get("reason")),
            plain(setting.get("source")),
            plain(setting.get("status"))
        );
    }
}

/// A profile's name at the head of its chapter.
fn heading(name: &str) -> String {
    let mut letters = name.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// A value as people read it, safe inside a table cell.
fn plain(value: Option<&Value>) -> String {
    let text = match value {
        Some(Value::String(text)) => text.clone(),
        Some(Value::Array(items)) => {
            items.iter().map(|item| plain(Some(item))).collect::<Vec<_>>().join(" / ")
        }
        Some(other) => other.to_string(),
        None => String::new(),
    };
    text.replace('|', "\\|")
}
