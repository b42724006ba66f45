//! What the words in force make of the hand and the bow: plucked or bowed, muted, divided.

use arcata_score::{Instruction, Meaning, Moment, Part};

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
}

/// The states of one staff of a part, in order of time; never empty.
#[derive(Clone, Debug)]
pub struct Techniques {
    /// The runs.
    pub runs: Vec<TechniqueRun>,
}

impl Techniques {
    /// The states of a staff. Words written for another staff do not count; words of one voice count
    /// for the whole staff, as they are printed for one player.
    #[must_use]
    pub fn new(part: &Part, staff: u8) -> Self {
        let mut run = TechniqueRun {
            from: Moment::START,
            contact: Contact::default(),
            mute: Mute::default(),
            division: Division::default(),
        };
        let mut runs = vec![run];
        for instruction in part.instructions.iter().filter(|word| for_staff(part, word, staff)) {
            let mut changed = run;
            apply(&mut changed, instruction.meaning);
            if changed == run {
                continue;
            }
            run = TechniqueRun { from: instruction.place.at, ..changed };
            if runs.last().is_some_and(|last| last.from == run.from) {
                runs.pop();
            }
            runs.push(run);
        }
        Self { runs }
    }

    /// The state at a moment.
    #[must_use]
    pub fn at(&self, moment: Moment) -> TechniqueRun {
        let after = self.runs.partition_point(|run| run.from <= moment);
        self.runs[after.saturating_sub(1)]
    }
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
        Meaning::Ordinario if run.contact == Contact::ColLegnoBattuto => run.contact = Contact::Arco,
        Meaning::MuteOn => run.mute = Mute::On,
        Meaning::MuteOff => run.mute = Mute::Off,
        Meaning::Divisi(_) => run.division = Division::Divided,
        Meaning::Unison | Meaning::NonDivisi | Meaning::Tutti => run.division = Division::Together,
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use arcata_score::Length;

    use super::*;
    use crate::lines::tests::score;

    fn runs(fixture: &str) -> Vec<TechniqueRun> {
        Techniques::new(&score(fixture).parts[0], 1).runs
    }

    #[test]
    fn words_hold_until_they_are_cancelled() {
        let runs = runs("violin: d'2 \"con sord.\" e' | \"pizz.\" f' \"arco\" g' | \"senza sord.\" a'1");
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
        assert_eq!(last("violin: \"col legno battuto\" d'2 \"ord.\" e'"), Some(Contact::Arco));
        assert_eq!(last("violin: \"pizz.\" d'2 \"ord.\" e'"), Some(Contact::Pizzicato));
    }

    #[test]
    fn a_division_ends_with_unis() {
        let runs = runs("violin: d'2 \"div.\" e' | \"unis.\" f'1");
        let divisions: Vec<Division> = runs.iter().map(|run| run.division).collect();
        assert_eq!(divisions, [Division::Together, Division::Divided, Division::Together]);
    }
}
