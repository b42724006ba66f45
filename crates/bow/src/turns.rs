//! The time a player has to turn a page.

use arcata_score::{Instrument, Moment, NoteKind, Part, Score};

use crate::RealTime;
use crate::lines::road::sections;
use crate::timing::TempoMap;

/// What a player does around a barline at which a page may be turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct TurnTime {
    /// Rest, from the end of the last note before it to the beginning of the next one.
    pub rest: RealTime,
    /// Of that, behind the barline: what a player sees only once the page is turned.
    pub rest_after: RealTime,
    /// How long open strings sound right before and right after the rest: the left hand is free, and the bow goes on.
    pub open: RealTime,
    /// Where a repeat, a da capo or a dal segno leads back over the barline: the rest there is for turning back.
    pub back: Option<RealTime>,
}

impl TurnTime {
    /// Time in which a hand is free to turn. An open string counts half, for whoever bows it looks at the page
    /// (common practice, without a figure in print).
    #[must_use]
    pub fn free(self) -> RealTime {
        RealTime::from_micros(self.rest.micros + self.open.micros / 2)
    }

    /// Whether a turn that needs so long is too quick, there or on the way back.
    #[must_use]
    pub fn is_rushed(self, needed: RealTime) -> bool {
        self.free() < needed || self.back.is_some_and(|back| back < needed)
    }
}

/// A note as it takes a player's hands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct PlayedNote {
    onset: Moment,
    end: Moment,
    is_open: bool,
}

/// The time there is to turn at the beginning of each bar; the last entry stands for the end of the piece. Before the bars
/// of `stops`, where players stop between movements ([`Score::stops`]), there are `pause` more.
///
/// ```
/// use arcata_bow::timing::{TempoChoice, TempoMap};
/// use arcata_bow::turns::turn_times;
/// use arcata_bow::{Profile, RealTime};
///
/// let music = arcata_testkit::musicxml("quarter=60\nviolin: 1/4 C5 D5 E5 F5 | 1/2 rest C5 |||");
/// let document = arcata_xml::Document::parse(music.into_bytes(), &Default::default()).expect("well-formed");
/// let score = arcata_score::read(&document);
/// let tempo = TempoMap::new(&score, &Profile::default(), TempoChoice::Written);
/// let times = turn_times(&score, &score.parts[0], &tempo, (&[], RealTime::default()));
/// assert_eq!(times[1].rest, RealTime::from_micros(2_000_000));
/// ```
#[must_use]
pub fn turn_times(
    score: &Score,
    part: &Part,
    tempo: &TempoMap,
    (stops, pause): (&[u32], RealTime),
) -> Vec<TurnTime> {
    let played = played(part);
    let around = Around { played: &played, tempo, end: score.end() };
    let barlines: Vec<Moment> = score.bars.iter().map(|bar| bar.start).chain([score.end()]).collect();
    let mut next = 0;
    let mut sounded_until = Moment::START;
    let mut times: Vec<TurnTime> = Vec::with_capacity(barlines.len());
    for barline in &barlines {
        while let Some(note) = played.get(next).filter(|note| note.onset < *barline) {
            sounded_until = sounded_until.max(note.end);
            next += 1;
        }
        times.push(around.time(*barline, sounded_until, next));
    }
    turn_back(score, &mut times);
    for stop in stops {
        if let Some(time) = times.get_mut(*stop as usize) {
            time.rest = RealTime::from_micros(time.rest.micros + pause.micros);
        }
    }
    times
}

/// All that a player plays, by onset.
fn played(part: &Part) -> Vec<PlayedNote> {
    let open = open_strings(part.instrument);
    let sounding = part.notes.iter().filter(|note| !note.pitch.is_rest() && note.kind != NoteKind::Cue);
    let mut played: Vec<PlayedNote> = sounding
        .map(|note| {
            let is_open = note.pitch.cents().is_some_and(|cents| open.contains(&cents));
            PlayedNote { onset: note.onset, end: note.onset + note.length, is_open }
        })
        .collect();
    played.sort();
    // Two notes at once want the left hand, or may.
    let alone = |index: usize| {
        let onset = played[index].onset;
        let same = |other: Option<&PlayedNote>| other.is_some_and(|other| other.onset == onset);
        !same(index.checked_sub(1).and_then(|before| played.get(before))) && !same(played.get(index + 1))
    };
    let alone: Vec<bool> = (0..played.len()).map(alone).collect();
    for (note, alone) in played.iter_mut().zip(alone) {
        note.is_open &= alone;
    }
    played
}

/// The open strings as written, cents (MIDI note 60 = 6000); of the double bass an octave above what sounds.
fn open_strings(instrument: Instrument) -> &'static [i32] {
    match instrument {
        Instrument::Violin => &[5500, 6200, 6900, 7600],
        Instrument::Viola => &[4800, 5500, 6200, 6900],
        Instrument::Cello => &[3600, 4300, 5000, 5700],
        Instrument::Bass => &[4000, 4500, 5000, 5500],
        Instrument::OtherBowed | Instrument::NotBowed => &[],
    }
}

struct Around<'a> {
    played: &'a [PlayedNote],
    tempo: &'a TempoMap,
    end: Moment,
}

impl Around<'_> {
    /// The time at a barline: when the last note before it ends, and which note is the first behind it.
    fn time(&self, barline: Moment, sounded_until: Moment, next: usize) -> TurnTime {
        let from = sounded_until.max(Moment::START);
        let until = self.played.get(next).map_or(self.end, |note| note.onset).max(barline);
        let holds = from > barline;
        let rest = if holds { RealTime::default() } else { self.tempo.between(from, until) };
        let rest_after = if holds { RealTime::default() } else { self.tempo.between(barline, until) };
        let (mut first, mut last) = (from.min(barline), until);
        for note in self.played[..next].iter().rev() {
            if !note.is_open || note.end != first {
                break;
            }
            first = note.onset;
        }
        for note in &self.played[next..] {
            if !note.is_open || note.onset != last {
                break;
            }
            last = note.end;
        }
        let open = if holds { RealTime::default() } else { self.tempo.between(first, last) };
        TurnTime { rest, rest_after, open: RealTime::from_micros(open.micros - rest.micros), back: None }
    }
}

/// At every barline inside a section that is played again, what there is to turn back at its end.
fn turn_back(score: &Score, times: &mut [TurnTime]) {
    let barline = |at: Moment| score.bars.partition_point(|bar| bar.start < at);
    for section in sections(score) {
        let begin = barline(section.begin);
        for end in section.turns.into_iter().map(barline) {
            let before = times[end].rest.micros - times[end].rest_after.micros;
            let back = RealTime::from_micros(before + times[begin].rest_after.micros);
            for time in times.get_mut(begin + 1..end).into_iter().flatten() {
                time.back = Some(time.back.map_or(back, |known| known.min(back)));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use arcata_score::Movement;

    use super::*;
    use crate::Profile;
    use crate::timing::TempoChoice;

    fn times(music: &str) -> Vec<TurnTime> {
        let music = arcata_testkit::musicxml(&format!("quarter=60\n{music}"));
        let document = arcata_xml::Document::parse(music.into_bytes(), &Default::default()).unwrap();
        let score = arcata_score::read(&document);
        let tempo = TempoMap::new(&score, &Profile::default(), TempoChoice::Written);
        turn_times(&score, &score.parts[0], &tempo, (&[], RealTime::default()))
    }

    const SECOND: i64 = 1_000_000;

    #[test]
    fn rest_before_and_behind_the_barline_counts() {
        let found = times("violin: 1/2 C5 rest | 1/4 rest C5 D5 E5 |||")[1];
        assert_eq!((found.rest.micros, found.rest_after.micros), (3 * SECOND, SECOND));
        assert_eq!(times("violin: 1/1 C5 | 1/1 D5 |||")[1], TurnTime::default());
    }

    #[test]
    fn an_open_string_leaves_the_left_hand_free_and_a_stopped_note_does_not() {
        let free = |music| times(music)[1].free().micros;
        assert_eq!(free("violin: 1/2 C5 D5 | 1/1 A4 | 1/1 B4 |||"), 2 * SECOND);
        assert_eq!(free("violin: 1/2 C5 D4 | 1/2 A4 B4 |||"), 2 * SECOND);
        assert_eq!(free("violin: 1/1 C5 | 1/1 B4 |||"), 0);
        assert_eq!(free("violin: 1/1 C5 | 1/1 A4+E5 |||"), 0);
        assert_eq!(free("viola: 1/1 D4 | 1/1 E5 |||"), 2 * SECOND);
    }

    #[test]
    fn a_repeat_leads_back_over_the_turn() {
        let found = times("violin: 1/1 C5 | 1/1 D5 | 1/2 E5 rest :| 1/1 C5 |||");
        assert_eq!(found[1].back.map(|back| back.micros), Some(2 * SECOND));
        assert!(found[1].is_rushed(RealTime::from_micros(SECOND)));
        assert_eq!(found[3].back, None);
    }

    #[test]
    fn a_da_capo_and_a_dal_segno_lead_back_over_the_turn() {
        let found =
            times(r#"violin: 1/1 C5 | 1/1 D5 "Fine" | 1/1 E5 | 1/4 F5 rest rest rest "D.C. al Fine" |||"#);
        let back: Vec<Option<i64>> = found.iter().map(|time| time.back.map(|back| back.micros)).collect();
        assert_eq!(back, [None, Some(3 * SECOND), Some(3 * SECOND), Some(3 * SECOND), None]);
        let found = times(r#"violin: 1/1 C5 | "segno" 1/1 D5 | 1/1 E5 | 1/1 F5 "D.S." | 1/1 G5 |||"#);
        let back: Vec<Option<i64>> = found.iter().map(|time| time.back.map(|back| back.micros)).collect();
        assert_eq!(back, [None, None, Some(0), Some(0), None, None]);
    }

    #[test]
    fn a_da_capo_leads_back_to_the_beginning_of_its_movement() {
        let music = r#"violin: 1/1 C5 | 1/1 D5 | 1/1 E5 | 1/1 F5 | 1/1 G5 "D.C." |||"#;
        let music = arcata_testkit::musicxml(&format!("quarter=60\n{music}"));
        let document = arcata_xml::Document::parse(music.into_bytes(), &Default::default()).unwrap();
        let mut score = arcata_score::read(&document);
        let first = score.movements[0].clone();
        score.movements = [(0..=1), (2..=4)].map(|bars| Movement { bars, ..first.clone() }).to_vec();
        let tempo = TempoMap::new(&score, &Profile::default(), TempoChoice::Written);
        let found = turn_times(&score, &score.parts[0], &tempo, (&[], RealTime::default()));
        let back: Vec<bool> = found.iter().map(|time| time.back.is_some()).collect();
        assert_eq!(back, [false, false, false, true, true, false]);
    }
}
