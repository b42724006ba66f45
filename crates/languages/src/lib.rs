//! Sentences and explanations in English, Italian, French and German.
//!
//! The texts are Fluent files ([Project Fluent syntax 1.0](https://projectfluent.org)) in `texts/`: `words` holds headings and
//! single words, `rules` the heading and two paragraphs of every rule, `class` the sheets and pages of a class, `findings` the
//! sentences of the review, `proposals` what it offers, `pages` what stands on pages and in reports, `commands` what commands tell when they are done, `reasons` why
//! layers pass something over, `failures` why a command could not do what it was asked, `told` what crates below say in English. `rules.en.ftl` is made from
//! the rules' own pages by `cargo xtask docs`; the other languages are translations. What a language lacks is said in English.
//!
//! Who has something to say makes a [`Saying`]: the key of a message and what is put into it. [`Wording::say`] finds the words.
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
mod print;
mod retell;
mod saying;
mod texts;
mod vocabulary;
mod wording;

pub use language::Language;
pub use make::rules_file;
pub use print::{capital, points};
pub use retell::retold;
pub use saying::{Argument, SaidPlace, Saying};
pub use texts::{Explanation, Texts};
pub use vocabulary::says;
pub use wording::{TradeWords, Wording};
