//! A profile written out: as a file that says everything, and as tables for the manual.

use std::fmt::Write as _;

use toml::{Table, Value};

use super::Profile;

/// The order in which sections are written.
const SECTIONS: [(&str, &str); 10] = [
    ("words", "What things are called in messages"),
    ("hair", "Usable hair"),
    ("speed", "Bow speed of a violin by dynamic: slowest, preferred, fastest"),
    ("scale", "Bow speed of each instrument against a violin's"),
    ("homes", "Where in the bow a stroke lives, from frog (0) to tip (1000)"),
    ("times", "Times that players need"),
    ("assumed", "What is assumed where the score is silent"),
    ("rates", "Rates of strokes"),
    ("thresholds", "Thresholds of the review"),
    ("weights", "Weights of the planner"),
];

impl Profile {
    /// The whole profile as a file that can be read back, every value with unit, reason and source.
    #[must_use]
    pub fn to_documented_toml(&self) -> String {
        let mut text = String::new();
        let top = |key: &str, value: &str| format!("{key} = {}\n", Value::String(value.to_owned()));
        text.push_str(&top("extends", "professional"));
        text.push_str(&top("name", &self.name));
        text.push_str(&top("about", &self.about));
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

    /// The profile as Markdown tables, one a section, for the manual.
    #[must_use]
    pub fn to_markdown(&self) -> String {
        let mut text = format!("# The profile `{}`\n\n{}.\n", self.name, self.about);
        for (section, about) in SECTIONS {
            let _ = write!(text, "\n## `[{section}]` {about}\n\n");
            text.push_str(
                "| setting | value | unit | reason | source | status |\n|---|---|---|---|---|---|\n",
            );
            for (key, setting) in self.settings_of(section) {
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
        text
    }

    fn settings_of(&self, section: &str) -> impl Iterator<Item = (&String, &Table)> {
        let section = self.table.get(section).and_then(Value::as_table);
        section.into_iter().flatten().filter_map(|(key, value)| Some((key, value.as_table()?)))
    }
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
