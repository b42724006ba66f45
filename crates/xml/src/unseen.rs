//! Characters that nobody sees and that act: on a terminal, or on the order in which the text around them is shown.
//!
//! XML lets some of them through (U+007F to U+009F, everything for text that runs both ways), names of files and JSON all
//! of them. What is shown to people passes [`seen`] first.

use std::borrow::Cow;

/// Whether a character acts unseen: control characters but the line feed, the ends of lines and paragraphs, and those
/// that embed, override or isolate a direction of text (Unicode Standard Annex 9, section 2). Marks of direction
/// (U+200E, U+200F) stay: titles in Hebrew and Arabic need them, and they turn nothing round.
#[must_use]
pub fn acts_unseen(letter: char) -> bool {
    match letter {
        '\n' => false,
        '\u{2028}' | '\u{2029}' | '\u{202A}'..='\u{202E}' | '\u{2066}'..='\u{2069}' => true,
        other => other.is_control(),
    }
}

/// The text with a blank for every tab and return, and `[U+001B]` for what else acts unseen.
///
/// ```
/// assert_eq!(arcata_xml::seen("Study\tin \u{1b}[31mred"), "Study in [U+001B][31mred");
/// ```
#[must_use]
pub fn seen(text: &str) -> Cow<'_, str> {
    if !text.contains(acts_unseen) {
        return Cow::Borrowed(text);
    }
    let mut out = String::with_capacity(text.len() + 8);
    for letter in text.chars() {
        match letter {
            '\t' | '\r' => out.push(' '),
            other if acts_unseen(other) => out.push_str(&format!("[U+{:04X}]", u32::from(other))),
            other => out.push(other),
        }
    }
    Cow::Owned(out)
}

/// JSON with what acts unseen in its strings written as JSON's own escapes: the same value, and nothing in it acts.
#[must_use]
pub fn seen_json(text: String) -> String {
    let acts = |letter: char| acts_unseen(letter) && !matches!(letter, '\r' | '\t');
    if !text.contains(acts) {
        return text;
    }
    let mut out = String::with_capacity(text.len() + 8);
    for letter in text.chars() {
        // All of them lie below U+10000, so that one escape is enough.
        if acts(letter) { out.push_str(&format!("\\u{:04x}", u32::from(letter))) } else { out.push(letter) }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_acts_is_written_out_and_the_rest_stays() {
        let plain = "Étude № 1, שיר\u{200f} (¡olé!)\nsecond line";
        assert!(matches!(seen(plain), Cow::Borrowed(_)));
        let acting = "\u{0}\u{7}\u{1b}[2J\u{7f}\u{9b}31m\u{202e}txt\u{2066}\u{2029}\r\t.";
        assert_eq!(
            seen(acting),
            "[U+0000][U+0007][U+001B][2J[U+007F][U+009B]31m[U+202E]txt[U+2066][U+2029]  ."
        );
        assert!(!seen(acting).contains(acts_unseen));
        let all = (0..0x11_0000).filter_map(char::from_u32).filter(|letter| acts_unseen(*letter)).count();
        assert_eq!(
            all,
            31 + 33 + 2 + 5 + 4,
            "C0 without the line feed, DEL and C1, separators, embeddings, isolates"
        );
    }

    #[test]
    fn json_keeps_its_value() {
        assert_eq!(seen_json("{\n\t\"a\": \"\u{9b}\u{202e}\"}".into()), "{\n\t\"a\": \"\\u009b\\u202e\"}");
    }
}
