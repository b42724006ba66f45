//! What printed texts say, and what they do not.

use super::{WordMeaning, meanings};

#[test]
fn the_first_text() {
    assert!(meanings("").is_empty());
    let _: Vec<WordMeaning> = meanings("pizz.");
}
