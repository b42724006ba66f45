//! White between the words of a tempo mark and the note value after them: the engraver sets them without any.

/// What ends the search for a note value: music, or other words.
const ENDS: [&str; 5] = ["<note", "<forward", "<backup", "<words", "</measure>"];

/// Two spaces at which no line is broken, behind words that a metronome mark follows at the same place.
pub(super) fn spaced(musicxml: &str) -> String {
    let mut out = String::with_capacity(musicxml.len());
    let mut rest = musicxml;
    while let Some(at) = rest.find("</words>") {
        let (before, after) = rest.split_at(at);
        out.push_str(before);
        let mark = after.find("<metronome");
        let end = || ENDS.iter().filter_map(|end| after.find(end)).min();
        if mark.is_some_and(|mark| end().is_none_or(|end| mark < end)) {
            out.push_str("\u{a0}\u{a0}");
        }
        let (words, next) = after.split_at("</words>".len());
        out.push_str(words);
        rest = next;
    }
    out.push_str(rest);
    out
}

#[cfg(test)]
mod tests {
    use super::spaced;

    #[test]
    fn only_words_before_a_note_value_are_spaced() {
        assert_eq!(
            spaced("<words>Largo</words><metronome/>"),
            "<words>Largo\u{a0}\u{a0}</words><metronome/>"
        );
        for kept in [
            "<words>dolce</words><note/><metronome/>",
            "<words>dolce</words>",
            "<metronome/><words>circa</words>",
        ] {
            assert_eq!(spaced(kept), kept);
        }
        assert_eq!(
            spaced("<words>dolce</words><words>Largo</words><metronome/>"),
            "<words>dolce</words><words>Largo\u{a0}\u{a0}</words><metronome/>"
        );
    }
}
