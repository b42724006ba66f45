//! What the words in force make of the hand and the bow: plucked or bowed, muted, divided, where on the string,
//! how many play.

use arcata_score::{Instruction, Meaning, Moment, Part, Score};

/// How the strings are set in motion.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Contact {
    /// With the hair.
    #[default]
    Arco,
    /// Plucked.
    Pizzicato,
    /// Struck with the stick: no stroke of the bow.
    ColLegnoBattuto,
}

/// Whether a mute is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Mute {
    /// No mute.
    #[default]
    Off,
    /// Muted.
    On,
}

/// Whether a part is divided.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Division {
    /// Everybody plays everything, or nothing is said.
    #[default]
    Together,
    /// div. is in force.
    Divided,
}

/// Where the bow touches the string.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum ContactPlace {
    /// As usual, or nothing is said.
    #[default]
    Usual,
    /// sul ponticello.
    Bridge,
    /// sul tasto, flautando.
    Fingerboard,
}

/// How many of a section play.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Playing {
    /// All, or nothing is said.
    #[default]
    All,
    /// One, or a few.
    Some,
}

/// The state in force from one moment to the next run.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TechniqueRun {
    /// Since when.
    pub from: Moment,
    /// Plucked or bowed.
    pub contact: Contact,
    /// Muted or not.
    pub mute: Mute,
    /// Divided or not.
    pub division: Division,
    /// Bridge, fingerboard or neither.
    pub place: ContactPlace,
    /// All or some.
    pub playing: Playing,
}

impl TechniqueRun {
    /// Nothing is said yet: how every movement begins.
    #[must_use]
    pub fn plain(from: Moment) -> Self {
        Self {
            from,
            contact: Contact::default(),
            mute: Mute::default(),
            division: Division::default(),
            place: ContactPlace::default(),
            playing: Playing::default(),
        }
    }

    /// What an instruction makes of the state.
    #[must_use]
    pub fn after(self, meaning: Meaning) -> Self {
        let mut changed = self;
        apply(&mut changed, meaning);
        changed
    }
}

/// The states of one staff of a part, in order of time; never empty.
#[derive(Clone, Debug)]
pub struct Techniques {
    /// The runs.
    pub runs: Vec<TechniqueRun>,
}

impl Techniques {
    /// The states of a staff. Words written for another staff do not count; words of one voice count
    /// for the whole staff, as they are printed for one player. Every movement begins plain.
    #[must_use]
    pub fn new(score: &Score, part: &Part, staff: u8) -> Self {
        let starts = score.movements.iter().skip(1);
        let starts: Vec<Moment> = starts
            .filter_map(|movement| Some(score.bars.get(*movement.bars.start() as usize)?.start))
            .collect();
        let mut starts = starts.into_iter().peekable();
        let mut runs = vec![TechniqueRun::plain(Moment::START)];
        for instruction in part.instructions.iter().filter(|word| for_staff(part, word, staff)) {
            while let Some(start) = starts.next_if(|start| *start <= instruction.place.at) {
                push(&mut runs, TechniqueRun::plain(start));
            }
            let run = runs.last().copied().unwrap_or(TechniqueRun::plain(Moment::START));
            push(&mut runs, TechniqueRun { from: instruction.place.at, ..run.after(instruction.meaning) });
        }
        starts.for_each(|start| push(&mut runs, TechniqueRun::plain(start)));
        Self { runs }
    }

    /// The state at a moment.
    #[must_use]
    pub fn at(&self, moment: Moment) -> TechniqueRun {
        let after = self.runs.partition_point(|run| run.from <= moment);
        self.runs[after.saturating_sub(1)]
    }
}

/// Adds a run that says something new.
fn push(runs: &mut Vec<TechniqueRun>, run: TechniqueRun) {
    let same = runs.last().is_some_and(|last| TechniqueRun { from: last.from, ..run } == *last);
    if same {
        return;
    }
    if runs.last().is_some_and(|last| last.from == run.from) {
        runs.pop();
    }
    runs.push(run);
}

fn for_staff(part: &Part, word: &Instruction, staff: u8) -> bool {
    part.staves <= 1 || word.place.staff == 0 || word.place.staff == staff
}

fn apply(run: &mut TechniqueRun, meaning: Meaning) {
    match meaning {
        Meaning::Pizzicato => run.contact = Contact::Pizzicato,
        Meaning::ColLegnoBattuto => run.contact = Contact::ColLegnoBattuto,
        Meaning::Arco | Meaning::ColLegno => run.contact = Contact::Arco,
        // "ord." ends col legno and the places of contact, but no pizzicato.
        Meaning::Ordinario => {
            run.place = ContactPlace::Usual;
            if run.contact == Contact::ColLegnoBattuto {
                run.contact = Contact::Arco;
            }
        }
        Meaning::SulPonticello => run.place = ContactPlace::Bridge,
        Meaning::SulTasto => run.place = ContactPlace::Fingerboard,
        Meaning::Solo | Meaning::HalfSection => run.playing = Playing::Some,
        Meaning::MuteOn => run.mute = Mute::On,
        Meaning::MuteOff => run.mute = Mute::Off,
        Meaning::Divisi(_) => run.division = Division::Divided,
        Meaning::Unison | Meaning::NonDivisi => run.division = Division::Together,
        Meaning::Tutti => {
            run.division = Division::Together;
            run.playing = Playing::All;
        }
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use arcata_score::Length;

    use super::*;
    use crate::lines::tests::score;

    fn runs(fixture: &str) -> Vec<TechniqueRun> {
        let score = score(fixture);
        Techniques::new(&score, &score.parts[0], 1).runs
    }

    #[test]
    fn words_hold_until_they_are_cancelled() {
        let runs =
            runs("violin: 1/2 D4 \"con sord.\" E4 | \"pizz.\" F4 \"arco\" G4 | \"senza sord.\" 1/1 A4");
        let told: Vec<_> = runs.iter().map(|run| (run.from.since_start(), run.contact, run.mute)).collect();
        assert_eq!(
            told,
            [
                (Length::ZERO, Contact::Arco, Mute::Off),
                (Length::new(1, 2), Contact::Arco, Mute::On),
                (Length::WHOLE, Contact::Pizzicato, Mute::On),
                (Length::new(3, 2), Contact::Arco, Mute::On),
                (Length::new(2, 1), Contact::Arco, Mute::Off),
            ]
        );
    }

    #[test]
    fn ord_ends_the_stick_but_not_the_fingers() {
        let last = |fixture: &str| runs(fixture).last().map(|run| run.contact);
        assert_eq!(last("violin: \"col legno battuto\" 1/2 D4 \"ord.\" E4"), Some(Contact::Arco));
        assert_eq!(last("violin: \"pizz.\" 1/2 D4 \"ord.\" E4"), Some(Contact::Pizzicato));
    }

    #[test]
    fn a_division_ends_with_unis() {
        let runs = runs("violin: 1/2 D4 \"div.\" E4 | \"unis.\" 1/1 F4");
        let divisions: Vec<Division> = runs.iter().map(|run| run.division).collect();
        assert_eq!(divisions, [Division::Together, Division::Divided, Division::Together]);
    }

    #[test]
    fn places_on_the_string_and_players_in_four_languages() {
        for (words, place, playing) in [
            ("sul ponticello", ContactPlace::Bridge, Playing::All),
            ("sul pont.", ContactPlace::Bridge, Playing::All),
            ("am Steg", ContactPlace::Bridge, Playing::All),
            ("sur le chevalet", ContactPlace::Bridge, Playing::All),
            ("sul tasto", ContactPlace::Fingerboard, Playing::All),
            ("am Griffbrett", ContactPlace::Fingerboard, Playing::All),
            ("sur la touche", ContactPlace::Fingerboard, Playing::All),
            ("solo", ContactPlace::Usual, Playing::Some),
        ] {
            let runs = runs(&format!("violin: 1/2 D4 \"{words}\" E4 | 1/1 F4"));
            let last = runs.last().expect("a run");
            assert_eq!((last.place, last.playing), (place, playing), "{words}");
        }
        let runs = runs("violin: \"sul tasto\" 1/2 D4 \"ord.\" E4 | \"solo\" F4 \"tutti\" G4");
        assert_eq!(
            runs.last().map(|run| (run.place, run.playing)),
            Some((ContactPlace::Usual, Playing::All))
        );
    }

    #[test]
    fn a_new_movement_begins_plain() {
        let xml =
            arcata_testkit::musicxml("violin: \"pizz.\" 1/1 D4 | \"con sord.\" E4 | F4 ||| G4 | A4 |||");
        // The fourth bar becomes bar 1 of another movement.
        let xml =
            xml.replacen(r#"number="4""#, r#"number="1""#, 1).replacen(r#"number="5""#, r#"number="2""#, 1);
        let file = arcata_xml::open_score(xml.into_bytes(), &arcata_xml::Limits::default()).expect("a score");
        let score = arcata_score::read(file.document());
        let told = Techniques::new(&score, &score.parts[0], 1);
        assert_eq!(told.at(score.bars[2].start).contact, Contact::Pizzicato);
        assert_eq!(told.at(score.bars[3].start), TechniqueRun::plain(score.bars[3].start));
    }
}
