//! Scores made up from a seed, for laws that must hold for every score.

use crate::random::Random;

/// How large and how busy a made-up score is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ScoreShape {
    /// Parts, at least one: violins, viola, cello, double bass, then more violins.
    pub parts: usize,
    /// Bars, at least one.
    pub bars: usize,
    /// What may stand in them.
    pub detail: Detail,
}

/// What may stand in a made-up score.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Detail {
    /// Notes and rests.
    Notes,
    /// Slurs, ties and dynamics too.
    Slurs,
    /// Everything the notation has for one player: tuplets, chords, grace notes, marks, hairpins, words, repeats,
    /// changes of metre and tempo, pickups, crossing slurs, two voices.
    All,
}

impl Default for ScoreShape {
    fn default() -> Self {
        Self { parts: 1, bars: 8, detail: Detail::All }
    }
}

/// A made-up score as MusicXML; the same seed and shape give the same text on every machine.
///
/// # Panics
/// If the generator has written a fixture that cannot be read: a fault of the generator.
#[must_use]
pub fn random_score(seed: u64, shape: ScoreShape) -> String {
    crate::musicxml(&random_fixture(seed, shape))
}

/// A made-up score in the notation: what to print when a law fails.
///
/// # Examples
/// ```
/// use arcata_testkit::{Detail, Fixture, ScoreShape, random_fixture};
///
/// let text = random_fixture(3, ScoreShape { parts: 2, bars: 4, detail: Detail::Slurs });
/// assert_eq!(Fixture::parse(&text)?.part_names(), ["violin I", "violin II"]);
/// # Ok::<(), arcata_testkit::FixtureError>(())
/// ```
#[must_use]
pub fn random_fixture(seed: u64, shape: ScoreShape) -> String {
    let mut random = Random::new(seed);
    let plan = GeneratedPlan::draw(&mut random, shape);
    let mut out = plan.header.clone();
    for index in 0..shape.parts.max(1) {
        let mut writer = PartDraw { random: &mut random, shape, cells: Vec::new(), seat: Seat::of(index) };
        writer.draw(&plan, index);
        out.push_str(&render(&writer.seat.name, &writer.cells));
    }
    out
}

/// Sixty-fourths of a whole note: everything outside tuplets is a multiple of four of them.
type Units = usize;

/// A metre and its length.
const METRES: [(&str, Units); 7] =
    [("4/4", 64), ("3/4", 48), ("2/4", 32), ("6/8", 48), ("3+2/8", 40), ("9/8", 72), ("cut", 64)];

const VALUES: [(Units, &str); 8] =
    [(64, "1/1"), (48, "3/4"), (32, "1/2"), (24, "3/8"), (16, "1/4"), (12, "3/16"), (8, "1/8"), (4, "1/16")];

/// What all parts share.
struct GeneratedPlan {
    header: String,
    bars: Vec<BarPlan>,
}

struct BarPlan {
    length: Units,
    /// Tokens before the music of the first part: repeat, ending, metre, tempo.
    before: String,
    /// The bar line after it, for every part.
    after: &'static str,
    /// Only in the first part: a second ending goes on to the right.
    closes_ending: bool,
}

impl GeneratedPlan {
    fn draw(random: &mut Random, shape: ScoreShape) -> Self {
        let all = shape.detail == Detail::All;
        let (metre, mut length) = METRES[if all { random.below(METRES.len()) } else { random.below(2) }];
        let tempo = 40 + random.below(130);
        let key = random.below(9);
        let key = if key > 4 { format!("-{}", key - 4) } else { key.to_string() };
        let pickup = all && shape.bars > 1 && random.chance(25);
        let flag = if pickup { " pickup" } else { "" };
        let header = format!("quarter={tempo} time {metre} key {key}{flag}\n");
        let mut bars: Vec<BarPlan> = Vec::new();
        for index in 0..shape.bars.max(1) {
            let mut before = String::new();
            if all && index > 0 && random.chance(8) {
                let (metre, new_length) = *random.pick(&METRES);
                length = new_length;
                before.push_str(&format!("time {metre} "));
            }
            if all && random.chance(10) {
                before.push_str(&tempo_change(random));
            }
            let length = if pickup && index == 0 { 8 } else { length };
            bars.push(BarPlan { length, before, after: "|", closes_ending: false });
        }
        if all {
            draw_repeats(random, &mut bars);
        }
        if let Some(last) = bars.last_mut().filter(|last| last.after == "|") {
            last.after = "|||";
        }
        Self { header, bars }
    }
}

fn tempo_change(random: &mut Random) -> String {
    match random.below(5) {
        0 => "\"rit.\" ".to_owned(),
        1 => "\"a tempo\" ".to_owned(),
        2 => "quarter.=quarter ".to_owned(),
        3 => format!("sound={} ", 50 + random.below(100)),
        _ => format!("\"Allegro\" quarter={} ", 50 + random.below(100)),
    }
}

fn draw_repeats(random: &mut Random, bars: &mut [BarPlan]) {
    let mut index = 1;
    while index + 4 < bars.len() {
        if !random.chance(30) {
            index += 1;
            continue;
        }
        let last = index + 1 + random.below(3);
        bars[index].before.insert_str(0, "|: ");
        bars[last].after = ":|";
        if random.chance(40) {
            bars[last].before.insert_str(0, "ending=1 ");
            bars[last + 1].before.insert_str(0, "ending=2 ");
            bars[last + 1].closes_ending = true;
        }
        index = last + 2;
    }
}

/// Who plays the part, and between which white keys (counted from the lowest C).
struct Seat {
    name: String,
    lowest: usize,
    highest: usize,
}

impl Seat {
    fn of(index: usize) -> Self {
        let (name, lowest, highest) = match index {
            0 => ("violin I".to_owned(), 25, 44),
            1 => ("violin II".to_owned(), 25, 41),
            2 => ("viola".to_owned(), 21, 37),
            3 => ("cello".to_owned(), 14, 33),
            4 => ("double bass".to_owned(), 16, 29),
            more => (format!("violin {}", more - 2), 25, 41),
        };
        Self { name, lowest, highest }
    }
}

/// A piece of a line of music, kept apart until slurs and ties are drawn over it.
enum Cell {
    /// Stands between notes without parting them: bar lines, braces, directions.
    Between(String),
    /// Parts the notes on its two sides: rests, bars in two voices.
    Apart(String, Option<&'static str>),
    Note(NoteCell),
}

#[derive(Default)]
struct NoteCell {
    before: String,
    pitch: String,
    value: &'static str,
    after: String,
    tied_on: bool,
    plucked: bool,
}

impl NoteCell {
    /// The note as written, with its value where it does not carry on.
    fn written(&self, carries: bool) -> String {
        let tie = if self.tied_on { "_" } else { "" };
        let notes: Vec<String> = self.pitch.split('+').map(|note| format!("{note}{tie}")).collect();
        // The number of a slur and a value are two things.
        let apart = if self.before.ends_with(|c: char| c.is_ascii_digit()) { " " } else { "" };
        let value = if carries { String::new() } else { format!("{apart}{} ", self.value) };
        format!("{}{value}{}{}", self.before, notes.join("+"), self.after)
    }
}

struct PartDraw<'a> {
    random: &'a mut Random,
    shape: ScoreShape,
    cells: Vec<Cell>,
    seat: Seat,
}

impl PartDraw<'_> {
    fn has(&self, detail: Detail) -> bool {
        self.shape.detail >= detail
    }

    fn draw(&mut self, plan: &GeneratedPlan, part: usize) {
        let mut key = (self.seat.lowest + self.seat.highest) / 2;
        let mut plucked = false;
        for bar in &plan.bars {
            // Repeats, endings and metres are written once, in the first part, and hold for all.
            let before = if part == 0 { bar.before.as_str() } else { "" };
            self.between(before.trim_end());
            if self.has(Detail::All) && self.random.chance(6) {
                plucked = !plucked;
                self.between(if plucked { "\"pizz.\"" } else { "\"arco\"" });
            }
            self.draw_bar(bar.length, &mut key, plucked);
            if bar.closes_ending && part == 0 {
                self.between("open-ended");
            }
            self.between(if part == 0 { bar.after } else { "|" });
        }
        if self.has(Detail::Slurs) {
            self.draw_ties();
            self.draw_slurs();
            self.draw_dynamics();
        }
    }

    fn between(&mut self, text: &str) {
        if !text.is_empty() {
            self.cells.push(Cell::Between(text.to_owned()));
        }
    }

    fn draw_bar(&mut self, length: Units, key: &mut usize, plucked: bool) {
        if self.random.chance(5) {
            self.cells.push(Cell::Apart("bar-rest".to_owned(), None));
            return;
        }
        if self.has(Detail::All) && self.random.chance(5) {
            let mut voices = Vec::new();
            for _ in 0..2 {
                let start = self.cells.len();
                self.fill(length, key, plucked);
                let cells = self.cells.split_off(start);
                voices.push(spell_out(&cells));
            }
            self.cells.push(Cell::Apart(format!("{{voices {} }}", voices.join(" over ")), None));
            return;
        }
        self.fill(length, key, plucked);
    }

    fn fill(&mut self, length: Units, key: &mut usize, plucked: bool) {
        let mut left = length;
        while left > 0 {
            if self.has(Detail::All) && left >= 16 && self.random.chance(10) {
                self.draw_tuplet(key, plucked);
                left -= 16;
                continue;
            }
            let fitting: Vec<(Units, &'static str)> =
                VALUES.into_iter().filter(|(units, _)| *units <= left).collect();
            let (first, second) = (self.random.below(fitting.len()), self.random.below(fitting.len()));
            // The shorter of two draws: passages rather than long notes.
            let (units, value) = fitting[first.max(second)];
            left -= units;
            if self.random.chance(10) {
                self.cells.push(Cell::Apart(format!("{value} rest"), Some(value)));
            } else {
                self.draw_note(value, key, plucked);
            }
        }
    }

    fn draw_tuplet(&mut self, key: &mut usize, plucked: bool) {
        let (open, count, value) =
            *self.random.pick(&[("{3:2", 3, "1/8"), ("{5:4", 5, "1/16"), ("{6:4", 6, "1/16")]);
        self.between(open);
        for _ in 0..count {
            self.draw_note(value, key, plucked);
        }
        self.between("}");
    }

    fn draw_note(&mut self, value: &'static str, key: &mut usize, plucked: bool) {
        let step = self.random.below(7) + *key;
        *key = step.saturating_sub(3).clamp(self.seat.lowest, self.seat.highest);
        let mut pitch = self.spell(*key);
        let mut note = NoteCell { value, plucked, ..NoteCell::default() };
        if self.has(Detail::All) {
            if self.random.chance(6) {
                let upper = self.spell(*key + 4 + self.seat.lowest % 2);
                pitch = format!("{pitch}+{upper}");
                if self.random.chance(30) {
                    note.after.push_str("!arp");
                }
            }
            if self.random.chance(5) {
                let grace = self.spell(*key + 1);
                let (open, close) = if self.random.chance(50) && !plucked { ("(3", ")3") } else { ("", "") };
                let slash = if self.random.chance(50) { "/" } else { "" };
                note.before = format!("{open}*{slash}{grace} ");
                note.after.push_str(close);
            }
            if self.random.chance(12) {
                let marks = [
                    "!.", "!>", "!-", "!^", "!'", "!down", "!up", "!trill", "!trem3", "!fermata", "!,", "!sf",
                ];
                let mark = *self.random.pick(&marks);
                note.after.push_str(mark);
            }
        }
        note.pitch = pitch;
        self.cells.push(Cell::Note(note));
    }

    /// The name of a white key, sometimes raised or lowered.
    fn spell(&mut self, key: usize) -> String {
        let letter = ["C", "D", "E", "F", "G", "A", "B"][key % 7];
        let accidental = if self.random.chance(15) { *self.random.pick(&["#", "b"]) } else { "" };
        format!("{letter}{accidental}{}", key / 7)
    }

    /// Runs of notes with no rest between them.
    fn runs(&self) -> Vec<Vec<usize>> {
        let mut runs = vec![Vec::new()];
        for (index, cell) in self.cells.iter().enumerate() {
            match cell {
                Cell::Note(_) => {
                    if let Some(run) = runs.last_mut() {
                        run.push(index);
                    }
                }
                Cell::Apart(..) => runs.push(Vec::new()),
                Cell::Between(_) => {}
            }
        }
        runs
    }

    fn note(&mut self, index: usize) -> Option<&mut NoteCell> {
        match self.cells.get_mut(index) {
            Some(Cell::Note(note)) => Some(note),
            _ => None,
        }
    }

    fn draw_ties(&mut self) {
        for run in self.runs() {
            for pair in run.windows(2) {
                if !self.random.chance(6) {
                    continue;
                }
                let Some(first) = self.note(pair[0]) else { continue };
                first.tied_on = true;
                let pitch = first.pitch.clone();
                if let Some(second) = self.note(pair[1]) {
                    second.pitch = pitch;
                    second.after = second.after.replace("!arp", "");
                }
            }
        }
    }

    fn draw_slurs(&mut self) {
        for run in self.runs() {
            self.draw_slurs_in(&run, "", 30);
            if self.has(Detail::All) {
                // A second row, drawn without looking at the first: slurs inside others and across them.
                self.draw_slurs_in(&run, "2", 5);
            }
        }
    }

    fn draw_slurs_in(&mut self, run: &[usize], number: &str, percent: usize) {
        let mut at = 0;
        while at + 1 < run.len() {
            let last = (at + 1 + self.random.below(4)).min(run.len() - 1);
            let plucked = (at..=last).any(|place| self.note(run[place]).is_some_and(|note| note.plucked));
            if plucked || !self.random.chance(percent) {
                at += 1;
                continue;
            }
            if let Some(first) = self.note(run[at]) {
                first.before.insert_str(0, &format!("({number}"));
            }
            if let Some(end) = self.note(run[last]) {
                end.after.push_str(&format!("){number}"));
            }
            at = last + 1;
        }
    }

    /// A dynamic at the start, more on the way, and hairpins that lead from one to another.
    fn draw_dynamics(&mut self) {
        let notes: Vec<usize> = self.runs().concat();
        let levels = ["pp", "p", "mp", "mf", "f", "ff"];
        let mut hairpin_open = false;
        let mut directions: Vec<(usize, String)> = Vec::new();
        for (place, index) in notes.into_iter().enumerate() {
            let level = *self.random.pick(&levels);
            if hairpin_open && self.random.chance(40) {
                hairpin_open = false;
                directions.push((index, format!("== {level}")));
            } else if place == 0 || self.random.chance(4) {
                directions.push((index, level.to_owned()));
            } else if self.has(Detail::All) && !hairpin_open && self.random.chance(6) {
                hairpin_open = true;
                directions.push((index, (*self.random.pick(&["<=", ">=", "<=o"])).to_owned()));
            }
        }
        for (index, text) in directions.into_iter().rev() {
            self.cells.insert(index, Cell::Between(text));
        }
        if hairpin_open {
            self.between("==");
        }
    }
}

/// The cells as text, every value written.
fn spell_out(cells: &[Cell]) -> String {
    let words: Vec<String> = cells
        .iter()
        .map(|cell| match cell {
            Cell::Between(text) | Cell::Apart(text, _) => text.clone(),
            Cell::Note(note) => note.written(false),
        })
        .collect();
    words.join(" ")
}

/// The cells as lines of music: a value is left out where it carries on, and a line holds a few bars.
fn render(name: &str, cells: &[Cell]) -> String {
    let mut out = String::new();
    let mut line = format!("{name}:");
    let mut carried = None;
    for cell in cells {
        line.push(' ');
        match cell {
            Cell::Between(text) => line.push_str(text),
            Cell::Apart(text, value) => {
                line.push_str(text);
                carried = if text == "bar-rest" { carried } else { *value };
            }
            Cell::Note(note) => {
                line.push_str(&note.written(carried == Some(note.value)));
                carried = Some(note.value);
            }
        }
        let bar_line = matches!(cell, Cell::Between(text) if text.starts_with('|') || text.starts_with(':'));
        if bar_line && line.len() > 90 {
            out.push_str(&line);
            out.push('\n');
            line = format!("{name}:");
        }
    }
    if line.len() > name.len() + 1 {
        out.push_str(&line);
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::{Detail, ScoreShape, random_fixture};
    use crate::fixture::Fixture;

    #[test]
    fn every_seed_gives_a_sound_fixture() {
        for seed in 0..400 {
            for detail in [Detail::Notes, Detail::Slurs, Detail::All] {
                let shape =
                    ScoreShape { parts: 1 + (seed as usize) % 6, bars: 1 + (seed as usize) % 17, detail };
                let text = random_fixture(seed, shape);
                let fixture =
                    Fixture::parse(&text).unwrap_or_else(|error| panic!("seed {seed}: {error}\n{text}"));
                assert_eq!(fixture.part_names().len(), shape.parts);
                assert_eq!(fixture.bars().len(), shape.parts * shape.bars);
                assert_eq!(text, random_fixture(seed, shape));
            }
        }
    }
}
