//! A worked example's line of rhythm as a fixture.

use serde_json::Value;

use crate::outcome::Result;
use crate::values::part_of_whole;

/// Pitches that notes take in turn: no two neighbours alike, so that no slur looks like a tie.
const PITCHES: [&str; 6] = ["C5", "D5", "E5", "F5", "G5", "A4"];
const CHORD: &str = "G3+D4+B4+G5";

/// Writes the example in the notation of `arcata-testkit`.
pub(super) fn fixture(example: &Value) -> Result<String> {
    let text = |name: &str| example[name].as_str().ok_or(format!("an example without \"{name}\""));
    let (metre, music) = (text("metre")?, text("music")?);
    let tempo = example["quarter_bpm"].as_u64().ok_or("an example without \"quarter_bpm\"")?;
    let mut writer = Writer::default();
    for sign in music.split(' ') {
        writer.sign(sign)?;
    }
    let pickup = if begins_short(music, metre) { " pickup" } else { "" };
    // Viols and fiddles are played as violins here; what turns round for the viol are the letters.
    let part = if text("instrument")? == "cello" { "cello" } else { "violin" };
    Ok(format!("time {metre} quarter={tempo} unchecked{pickup}\n{part}: {}\n", writer.finish()))
}

/// What is written so far.
#[derive(Default)]
struct Writer {
    words: Vec<String>,
    notes: usize,
    /// A slur begins on the next note.
    opens_slur: bool,
    /// Within a run of triplet notes.
    in_triplet: bool,
    /// Under a crescendo.
    in_crescendo: bool,
}

impl Writer {
    fn sign(&mut self, sign: &str) -> Result<()> {
        match sign {
            "|" => {
                self.end_triplet();
                self.words.push("|".to_owned());
            }
            "(" => self.opens_slur = true,
            ")" => self.words.last_mut().ok_or("a slur ends before any note")?.push(')'),
            "<" => {
                self.end_triplet();
                self.words.push("<=".to_owned());
                self.in_crescendo = true;
            }
            "p" | "f" | "ff" => {
                self.end_triplet();
                self.end_crescendo();
                self.words.push(sign.to_owned());
            }
            sound => self.sound(sound)?,
        }
        Ok(())
    }

    /// `[">"] ["r" | "c" | "t"] value {"."} ["'"]`
    fn sound(&mut self, sound: &str) -> Result<()> {
        let (accent, rest) = sound.strip_prefix('>').map_or(("", sound), |rest| ("!>", rest));
        let (staccato, rest) = rest.strip_suffix('\'').map_or(("", rest), |rest| ("!.", rest));
        let value = rest.trim_start_matches(['r', 'c', 't']);
        if value.is_empty() || !value.trim_end_matches('.').bytes().all(|byte| byte.is_ascii_digit()) {
            return Err(format!("an unknown sign \"{sound}\""));
        }
        let triplet = rest.starts_with('t');
        if triplet && !self.in_triplet {
            self.words.push("{3:2".to_owned());
            self.in_triplet = true;
        } else if !triplet {
            self.end_triplet();
        }
        let slur = if std::mem::take(&mut self.opens_slur) { "(" } else { "" };
        let pitch = match rest.as_bytes() {
            [b'r', ..] => "rest",
            [b'c', ..] => CHORD,
            _ => PITCHES[self.notes % PITCHES.len()],
        };
        self.notes += 1;
        self.words.push(format!("{slur}{} {pitch}{accent}{staccato}", part_of_whole(value)));
        Ok(())
    }

    fn end_triplet(&mut self) {
        if std::mem::take(&mut self.in_triplet) {
            self.words.push("}".to_owned());
        }
    }

    fn end_crescendo(&mut self) {
        if std::mem::take(&mut self.in_crescendo) {
            self.words.push("==".to_owned());
        }
    }

    fn finish(mut self) -> String {
        self.end_triplet();
        if self.in_crescendo {
            let last = self.words.pop();
            self.end_crescendo();
            self.words.extend(last);
        }
        self.words.join(" ")
    }
}

/// Whether the first of several bars is shorter than the metre: an upbeat.
fn begins_short(music: &str, metre: &str) -> bool {
    let Some((first, _)) = music.split_once(" |") else { return false };
    let Some((beats, unit)) = metre.split_once('/') else { return false };
    let (Ok(beats), Ok(unit)) = (beats.parse::<u32>(), unit.parse::<u32>()) else { return false };
    // In 384ths of a whole note every value of the notation is a whole number.
    let total: u32 = first.split(' ').map(length).sum();
    total < 384 * beats / unit.max(1)
}

/// Length of a sign in 384ths of a whole note; nothing for what does not sound.
fn length(sign: &str) -> u32 {
    let sound = sign.trim_start_matches('>').trim_end_matches('\'');
    let value = sound.trim_start_matches(['r', 'c', 't']);
    let dots = value.len() - value.trim_end_matches('.').len();
    let Ok(number) = value.trim_end_matches('.').parse::<u32>() else { return 0 };
    let plain = 384 / number.max(1);
    let dotted = (0..dots).fold(plain, |sum, dot| sum + (plain >> (dot + 1)));
    if sound.starts_with('t') { dotted * 2 / 3 } else { dotted }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(metre: &str, music: &str) -> String {
        let example = serde_json::json!({
            "metre": metre, "music": music, "instrument": "violin", "quarter_bpm": 100,
        });
        fixture(&example).expect("the example is well spelt")
    }

    #[test]
    fn rhythm_slurs_and_marks_are_written() {
        assert_eq!(
            written("4/4", "8 | ( 8. 16' ) >4 t8 t8 t8 r4"),
            "time 4/4 quarter=100 unchecked pickup\n\
             violin: 1/8 C5 | (3/16 D5 1/16 E5!.) 1/4 F5!> {3:2 1/8 G5 1/8 A4 1/8 C5 } 1/4 rest\n"
        );
    }

    #[test]
    fn a_crescendo_ends_at_the_next_dynamic() {
        let text = written("2/4", "p 4 < 4 | f 2");
        assert!(text.ends_with("violin: p 1/4 C5 <= 1/4 D5 | == f 1/2 E5\n"), "{text}");
        assert!(arcata_testkit::Fixture::parse(&text).is_ok());
    }
}
