//! The key of a class: which student goes by which pseudonym. It stays with the teacher.

use std::collections::BTreeSet;
use std::fmt;

use serde::Deserialize;
use toml::Spanned;

/// The name that the file gives its format.
const FORMAT: &str = "arcata-class-key";
/// The version that is read and written.
const VERSION: u32 = 1;

/// Trees and places: names that say nothing of anybody.
const TREES: [&str; 24] = [
    "Alder", "Ash", "Aspen", "Bay", "Beech", "Birch", "Box", "Cedar", "Cypress", "Elder", "Elm", "Fir",
    "Hazel", "Holly", "Juniper", "Larch", "Linden", "Maple", "Oak", "Pine", "Poplar", "Rowan", "Spruce",
    "Willow",
];
const PLACES: [&str; 20] = [
    "Bank", "Bridge", "Brook", "Cliff", "Cove", "Dale", "Field", "Ford", "Gate", "Glen", "Hill", "Island",
    "Lane", "Marsh", "Meadow", "Mill", "Moor", "Quay", "Ridge", "Shore",
];

/// A student and the name that pages say instead.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Student {
    /// The name.
    pub name: String,
    /// The pseudonym: the same in every task of the year.
    pub pseudonym: String,
}

/// Which student goes by which pseudonym.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Key {
    /// In the order in which they came.
    pub students: Vec<Student>,
}

/// Why a key cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeyError {
    /// Line, from 1.
    pub line: usize,
    /// What is wrong there and what to do.
    pub why: String,
}

impl fmt::Display for KeyError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "line {}: {}", self.line, self.why)
    }
}

impl std::error::Error for KeyError {}

#[derive(Deserialize)]
struct KeyHead {
    format: Spanned<String>,
    version: Spanned<u32>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct KeyFile {
    #[serde(rename = "format")]
    _format: String,
    #[serde(rename = "version")]
    _version: u32,
    #[serde(default)]
    student: Vec<Spanned<Student>>,
}

impl Key {
    /// Reads the file of a key.
    ///
    /// # Errors
    /// Text that is no key, a name or a pseudonym that stands in it twice; with the line.
    pub fn read(text: &str) -> Result<Self, KeyError> {
        let at = |offset: usize| 1 + text.bytes().take(offset).filter(|byte| *byte == b'\n').count();
        let wrong = |offset: usize, why: String| KeyError { line: at(offset), why };
        let broken = |error: toml::de::Error| {
            wrong(error.span().map_or(0, |span| span.start), error.message().trim().replace('\n', "; "))
        };
        let KeyHead { format, version } = toml::from_str(text).map_err(broken)?;
        if format.get_ref() != FORMAT {
            let why =
                format!("the format is not \"{FORMAT}\": this is no key of a class; name another with --key");
            return Err(wrong(format.span().start, why));
        }
        if *version.get_ref() != VERSION {
            let why = format!("version {} is not known, only version {VERSION}", version.get_ref());
            return Err(wrong(version.span().start, why));
        }
        let file: KeyFile = toml::from_str(text).map_err(broken)?;
        let mut key = Self::default();
        for student in file.student {
            let offset = student.span().start;
            let Student { name, pseudonym } = student.into_inner();
            if name.trim().is_empty() || slug(&pseudonym).is_empty() {
                return Err(wrong(offset, "a name or a pseudonym is empty".to_owned()));
            }
            if key.students.iter().any(|known| known.name == name) {
                return Err(wrong(offset, format!("\"{name}\" stands there twice: take one out")));
            }
            if key.students.iter().any(|known| slug(&known.pseudonym) == slug(&pseudonym)) {
                let why = format!("the pseudonym \"{pseudonym}\" belongs to two students: change one");
                return Err(wrong(offset, why));
            }
            key.students.push(Student { name, pseudonym });
        }
        Ok(key)
    }

    /// The file.
    #[must_use]
    pub fn text(&self) -> String {
        let mut text = format!(
            "# Who is who in the pages of arcata class. Keep this file to yourself: the pages name nobody, and this does.\n\
             # The same pseudonym holds for every task as long as this file is used.\n\
             format = \"{FORMAT}\"\nversion = {VERSION}\n"
        );
        let quoted = |text: &str| toml::Value::String(text.to_owned()).to_string();
        for Student { name, pseudonym } in &self.students {
            text.push_str(&format!(
                "\n[[student]]\nname = {}\npseudonym = {}\n",
                quoted(name),
                quoted(pseudonym)
            ));
        }
        text
    }

    /// The pseudonym of a student.
    #[must_use]
    pub fn pseudonym(&self, name: &str) -> Option<&str> {
        let student = self.students.iter().find(|student| student.name == name)?;
        Some(&student.pseudonym)
    }

    /// Gives every student who has none a pseudonym. `below` draws a number below its argument: pseudonyms that were made of
    /// names could be made again by whoever guesses the name.
    ///
    /// ```
    /// use arcata_class::Key;
    ///
    /// let mut key = Key::default();
    /// key.admit(["Odile Marrowfen", "Tobiah Quillsand"], |_| 0);
    /// assert_eq!(key.pseudonym("Odile Marrowfen"), Some("Alder Bank"));
    /// assert_ne!(key.pseudonym("Tobiah Quillsand"), Some("Alder Bank"));
    /// assert_eq!(Key::read(&key.text()).expect("a key"), key);
    /// ```
    pub fn admit<'a>(
        &mut self,
        names: impl IntoIterator<Item = &'a str>,
        mut below: impl FnMut(usize) -> usize,
    ) {
        let mut taken: BTreeSet<String> =
            self.students.iter().map(|student| slug(&student.pseudonym)).collect();
        for name in names {
            if self.pseudonym(name).is_some() {
                continue;
            }
            let mut free: Vec<String> = Vec::new();
            for round in 1_usize.. {
                let all = TREES.iter().flat_map(|tree| PLACES.iter().map(move |place| (tree, place)));
                let ending = if round == 1 { String::new() } else { format!(" {round}") };
                free.extend(
                    all.map(|(tree, place)| format!("{tree} {place}{ending}"))
                        .filter(|pseudonym| !taken.contains(&slug(pseudonym))),
                );
                if !free.is_empty() {
                    break;
                }
            }
            let pseudonym = free.swap_remove(below(free.len()).min(free.len() - 1));
            taken.insert(slug(&pseudonym));
            self.students.push(Student { name: name.to_owned(), pseudonym });
        }
    }
}

/// A name as it can stand in the name of a file everywhere.
#[must_use]
pub fn slug(name: &str) -> String {
    let mut slug = String::new();
    for letter in name.chars().take(80) {
        if letter.is_alphanumeric() {
            slug.extend(letter.to_lowercase());
        } else if !slug.is_empty() && !slug.ends_with('-') {
            slug.push('-');
        }
    }
    slug.trim_end_matches('-').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_thousand_students_have_a_thousand_names() {
        let names: Vec<String> = (0..1000).map(|number| format!("student {number}")).collect();
        let mut key = Key::default();
        key.admit(names.iter().map(String::as_str), |count| count / 2);
        let pseudonyms: BTreeSet<&str> = names.iter().filter_map(|name| key.pseudonym(name)).collect();
        assert_eq!(pseudonyms.len(), 1000);
    }

    #[test]
    fn a_key_with_two_of_one_name_is_told() {
        let mut key = Key::default();
        key.admit(["a \"quoted\"\nname", "b"], |_| 3);
        let text = key.text();
        assert_eq!(Key::read(&text).expect("a key"), key);
        let twice = format!("{text}\n[[student]]\nname = \"b\"\npseudonym = \"Other\"\n");
        assert!(Key::read(&twice).expect_err("twice").why.contains("twice"));
        let same =
            format!("{text}\n[[student]]\nname = \"c\"\npseudonym = \"{}\"\n", key.students[0].pseudonym);
        assert!(Key::read(&same).expect_err("same").why.contains("two students"));
        assert!(Key::read("format = \"arcata-task\"\nversion = 1\n").is_err());
    }
}
