//! Explanations in English, Italian, French and German.
//!
//! The texts are Fluent files ([Project Fluent syntax 1.0](https://projectfluent.org)) in `texts/`: `words` holds headings and
//! single words, `rules` the heading and two paragraphs of every rule, `class` the sheets and pages of a class. `rules.en.ftl` is made from the rules' own pages by
//! `cargo xtask docs`; the others are translations. What a language lacks is said in English.
//!
//! ```
//! use arcata_languages::{Language, Texts};
//!
//! let texts = Texts::new(Language::German);
//! assert_eq!(texts.word("family-marks"), "Strichzeichen");
//! assert_eq!(texts.word("severity-b"), "kostet Probenzeit");
//! let rule = texts.rule("missing-arco").expect("every rule has an explanation");
//! assert!(rule.finds.contains("pizz."));
//! ```

mod language;
mod make;
mod texts;
mod vocabulary;

pub use language::Language;
pub use make::rules_file;
pub use texts::{Explanation, Texts};
pub use vocabulary::says;
