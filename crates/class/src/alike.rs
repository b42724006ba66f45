//! Hand-ins whose notes agree more than the task explains. That is a question to the teacher, and no proof of anything.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::{ChordRole, Moment, NoteKind, Part, Score};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Rule of thumb: moves from note to note in one trace.
const MOVES: usize = 7;
/// Rule of thumb: a trace has so many different moves at least; scales and trills are everybody's.
const STEPS: usize = 3;
/// By definition: hundredths of a semitone in an octave.
const OCTAVE: i32 = 1200;
/// Rule of thumb: traces that two hand-ins must share at least.
const LEAST: usize = 12;
/// Rule of thumb: share of the traces of the smaller one that the other one has too, hundredths, from which a pair is shown.
const SHARE: usize = 40;

/// A trace of a few notes: how they move, whatever key or octave they are in, and however long they last; the bar and the part in
/// which they stand, by index.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Trace(pub u64, pub u32, pub usize);

/// Bars of a part.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct Stretch {
    /// Index of the part.
    pub part: usize,
    /// First bar, by index.
    pub first: u32,
    /// Last bar.
    pub last: u32,
}

/// Two hand-ins that agree, by index.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pair {
    /// The hand-ins.
    pub hand_ins: (usize, usize),
    /// Traces that both have and the task does not explain.
    pub shared: usize,
    /// Of a hundred traces of the smaller one.
    pub share: usize,
    /// The longest stretch that agrees, in each.
    pub stretches: (Stretch, Stretch),
}

/// What is followed from note to note.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Followed {
    Voice(u16),
    /// The highest, and the lowest, of all notes that begin together: they are the same whichever voice has them.
    Upper,
    Lower,
}

/// The traces of a part, with the bar in which each begins. Each voice is followed by itself, so are the upper and the lower line
/// of the whole part, and what is repeated counts once: parts and voices that were exchanged, in some bars or in all, voices
/// written as chords, doubled note values and notes that were split leave the same traces.
pub(crate) fn grams(part: &Part) -> Vec<(u64, u32)> {
    let mut lines: BTreeMap<Followed, Vec<(i32, u32)>> = BTreeMap::new();
    let mut add = |line: Followed, cents: i32, bar: u32| {
        let line = lines.entry(line).or_default();
        if line.last().is_none_or(|(last, _)| last.rem_euclid(OCTAVE) != cents.rem_euclid(OCTAVE)) {
            line.push((cents, bar));
        }
    };
    let mut together: BTreeMap<Moment, (i32, i32, u32)> = BTreeMap::new();
    for note in &part.notes {
        let (NoteKind::Ordinary, Some(cents)) = (note.kind, note.pitch.cents()) else { continue };
        if note.chord == ChordRole::Main {
            add(Followed::Voice(note.voice), cents, note.bar);
        }
        let (low, high, _) = together.entry(note.onset).or_insert((cents, cents, note.bar));
        (*low, *high) = ((*low).min(cents), (*high).max(cents));
    }
    for (low, high, bar) in together.into_values() {
        add(Followed::Upper, high, bar);
        add(Followed::Lower, low, bar);
    }
    let telling = |window: &[i32]| window.iter().collect::<BTreeSet<&i32>>().len() >= STEPS;
    let mut all = Vec::new();
    for voice in lines.into_values() {
        let moves: Vec<i32> =
            voice.windows(2).map(|pair| (pair[1].0 - pair[0].0).rem_euclid(OCTAVE)).collect();
        let told = moves.windows(MOVES).zip(&voice).filter(|(window, _)| telling(window));
        all.extend(told.map(|(window, (_, bar))| (hash(window), *bar)));
    }
    all
}

/// FNV-1a, 64 bits: small, the same everywhere, and nobody is to be kept out by it.
fn hash(window: &[i32]) -> u64 {
    window
        .iter()
        .flat_map(|number| number.to_le_bytes())
        .fold(0xcbf2_9ce4_8422_2325, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3))
}

/// The traces of a score that what was given does not explain (as [`Melody::grams`](crate::Melody::grams) has them), in order;
/// each once.
#[must_use]
pub fn traces(score: &Score, given: &BTreeSet<u64>) -> Vec<Trace> {
    let mut seen = BTreeSet::new();
    let all = score.parts.iter().enumerate();
    let all =
        all.flat_map(|(part, music)| grams(music).into_iter().map(move |(gram, bar)| Trace(gram, bar, part)));
    all.filter(|trace| !given.contains(&trace.0) && seen.insert(trace.0)).collect()
}

/// The pairs that agree more than the task explains, the closest first. A trace that a quarter of the class has (three hand-ins
/// at least) comes of the task.
#[must_use]
pub fn pairs(hand_ins: &[&[Trace]]) -> Vec<Pair> {
    let mut owners: BTreeMap<u64, Vec<usize>> = BTreeMap::new();
    for (index, traces) in hand_ins.iter().enumerate() {
        for trace in *traces {
            owners.entry(trace.0).or_default().push(index);
        }
    }
    let common = (hand_ins.len() / 4).max(2);
    let mut shared: BTreeMap<(usize, usize), usize> = BTreeMap::new();
    for owners in owners.values().filter(|owners| owners.len() <= common) {
        for (at, one) in owners.iter().enumerate() {
            for other in &owners[at + 1..] {
                *shared.entry((*one, *other)).or_default() += 1;
            }
        }
    }
    let own = |index: usize| {
        let rare = |trace: &&Trace| owners.get(&trace.0).is_some_and(|owners| owners.len() <= common);
        hand_ins[index].iter().filter(rare).count()
    };
    let mut pairs: Vec<Pair> = shared
        .into_iter()
        .filter(|(_, shared)| *shared >= LEAST)
        .filter_map(|((one, other), shared)| {
            let share = shared * 100 / own(one).min(own(other)).max(1);
            (share >= SHARE).then(|| Pair {
                hand_ins: (one, other),
                shared,
                share,
                stretches: longest(hand_ins[one], hand_ins[other]),
            })
        })
        .collect();
    pairs.sort_by_key(|pair| (std::cmp::Reverse((pair.share, pair.shared)), pair.hand_ins));
    pairs
}

/// The longest stretch of bars in which two hand-ins share traces, in each.
fn longest(one: &[Trace], other: &[Trace]) -> (Stretch, Stretch) {
    let of_other: BTreeMap<u64, (usize, u32)> =
        other.iter().map(|trace| (trace.0, (trace.2, trace.1))).collect();
    // Part and bar here, part and bar there.
    let both: BTreeSet<(usize, u32, usize, u32)> = one
        .iter()
        .filter_map(|trace| of_other.get(&trace.0).map(|(part, bar)| (trace.2, trace.1, *part, *bar)))
        .collect();
    let mut best = (Stretch::default(), Stretch::default());
    let mut length = 0;
    for (part, first, part_there, first_there) in &both {
        let mut more = 0;
        while both.contains(&(*part, first + more + 1, *part_there, first_there + more + 1)) {
            more += 1;
        }
        if more + 1 > length {
            length = more + 1;
            let stretch = |part: usize, first: u32| Stretch { part, first, last: first + more };
            best = (stretch(*part, *first), stretch(*part_there, *first_there));
        }
    }
    best
}

#[cfg(test)]
mod tests {
    use arcata_analysis::Source;
    use arcata_testkit::Random;

    use super::*;

    const NAMES: [&str; 12] = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "Ab", "A", "Bb", "B"];

    /// Bars of four notes drawn by chance, on a note and in an octave; `written` says how a bar is written.
    fn bars(seed: u64, by: i32, written: impl Fn([String; 4]) -> String) -> String {
        let mut random = Random::new(seed);
        let mut note = || {
            let semitone = i32::try_from(random.below(12)).unwrap_or(0) + 60 + by;
            let name = NAMES[usize::try_from(semitone.rem_euclid(12)).unwrap_or(0)];
            format!("{name}{}", semitone.div_euclid(12) - 1)
        };
        let bars: Vec<String> = (0..16).map(|_| written([note(), note(), note(), note()])).collect();
        bars.join(" | ")
    }

    fn equal([one, two, three, four]: [String; 4]) -> String {
        format!("1/4 {one} {two} {three} {four}")
    }

    fn read(text: &str) -> Vec<Trace> {
        let music = arcata_testkit::musicxml(text).into_bytes();
        traces(&Source::open(music).expect("a score").score, &BTreeSet::new())
    }

    /// A tune drawn by chance, on a note and in an octave.
    fn tune(seed: u64, by: i32) -> Vec<Trace> {
        read(&format!("violin: {} |||", bars(seed, by, equal)))
    }

    fn found(all: &[Vec<Trace>]) -> Vec<Pair> {
        let all: Vec<&[Trace]> = all.iter().map(Vec::as_slice).collect();
        pairs(&all)
    }

    #[test]
    fn a_tune_in_another_key_and_octave_is_the_same_tune() {
        let pairs = found(&[tune(1, 0), tune(2, 0), tune(3, 0), tune(1, 17), tune(5, 0)]);
        assert_eq!(pairs.len(), 1, "{pairs:?}");
        assert_eq!((pairs[0].hand_ins, pairs[0].share), ((0, 3), 100));
        assert_eq!(pairs[0].stretches.0, pairs[0].stretches.1);
    }

    #[test]
    fn other_note_values_hide_nothing() {
        let dotted =
            |[one, two, three, four]: [String; 4]| format!("3/8 {one} 1/8 {two} 3/8 {three} 1/8 {four}");
        let doubled = |[one, two, three, four]: [String; 4]| format!("1/2 {one} {two} | {three} {four}");
        let split =
            |[one, two, three, four]: [String; 4]| format!("1/8 {one} {one} 1/4 {two} {three} {four}");
        let as_written = |written: &dyn Fn([String; 4]) -> String| {
            let text = format!("violin: {} |||", bars(1, 0, written));
            vec![tune(1, 0), tune(2, 0), tune(3, 0), read(&text), tune(5, 0)]
        };
        for (name, written) in
            [("dotted", &dotted as &dyn Fn([String; 4]) -> String), ("doubled", &doubled), ("split", &split)]
        {
            let pairs = found(&as_written(written));
            assert_eq!(pairs.len(), 1, "{name}: {pairs:?}");
            assert_eq!((pairs[0].hand_ins, pairs[0].share), ((0, 3), 100), "{name}");
        }
    }

    #[test]
    fn exchanged_parts_and_voices_hide_nothing() {
        let (one, other) = (bars(1, 0, equal), bars(2, 0, equal));
        let first = read(&format!("violin: {one} |||\nviola: {other} |||"));
        let exchanged = read(&format!("violin: {other} |||\nviola: {one} |||"));
        let pairs = found(&[first, tune(7, 0), tune(8, 0), exchanged]);
        assert_eq!(pairs.len(), 1, "{pairs:?}");
        assert_eq!((pairs[0].hand_ins, pairs[0].share), ((0, 3), 100));
        assert_ne!(pairs[0].stretches.0.part, pairs[0].stretches.1.part);
    }

    /// Bars in two voices of one part; the second tune begins an octave lower, and the voices cross.
    fn in_two_voices(seeds: (u64, u64), written: impl Fn(usize, &str, &str) -> String) -> Vec<Trace> {
        let (one, other) = (bars(seeds.0, 0, equal), bars(seeds.1, -7, equal));
        let bars = one.split(" | ").zip(other.split(" | ")).enumerate();
        let bars: Vec<String> = bars.map(|(index, (one, other))| written(index, one, other)).collect();
        read(&format!("violin: {} |||", bars.join(" | ")))
    }

    fn voices(upper: &str, lower: &str) -> String {
        format!("{{voices {upper} over {lower} }}")
    }

    #[test]
    fn voices_exchanged_inside_one_part_hide_nothing() {
        let as_it_was = in_two_voices((1, 2), |_, one, other| voices(one, other));
        let others =
            || vec![as_it_was.clone(), tune(7, 0), in_two_voices((8, 9), |_, one, other| voices(one, other))];
        let throughout = in_two_voices((1, 2), |_, one, other| voices(other, one));
        // In every other bar, in which case no voice has four bars in a row of what it had.
        let now_and_then =
            in_two_voices(
                (1, 2),
                |index, one, other| {
                    if index % 2 == 0 { voices(one, other) } else { voices(other, one) }
                },
            );
        for (name, exchanged, least) in
            [("throughout", throughout, 100), ("now and then", now_and_then, SHARE)]
        {
            let mut all = others();
            all.push(exchanged);
            let pairs = found(&all);
            assert_eq!(pairs.len(), 1, "{name}: {pairs:?}");
            assert_eq!(pairs[0].hand_ins, (0, 3), "{name}");
            assert!(pairs[0].share >= least, "{name}: {}", pairs[0].share);
            assert_eq!(pairs[0].stretches.0, pairs[0].stretches.1, "{name}: the bars lie where they lay");
        }
    }

    #[test]
    fn two_voices_written_as_chords_hide_nothing() {
        let as_voices = in_two_voices((1, 2), |_, one, other| voices(one, other));
        let as_chords = in_two_voices((1, 2), |_, one, other| {
            let notes = one.split(' ').zip(other.split(' ')).skip(1);
            let chords: Vec<String> = notes.map(|(one, other)| format!("{one}+{other}")).collect();
            format!("1/4 {}", chords.join(" "))
        });
        let pairs = found(&[as_voices, tune(7, 0), tune(8, 0), as_chords]);
        assert_eq!(pairs.len(), 1, "{pairs:?}");
        assert_eq!(pairs[0].hand_ins, (0, 3));
    }

    #[test]
    fn what_everybody_has_comes_of_the_task() {
        let same: Vec<Vec<Trace>> = (0..6).map(|_| tune(1, 0)).collect();
        let same: Vec<&[Trace]> = same.iter().map(Vec::as_slice).collect();
        assert!(pairs(&same).is_empty());
    }
}
