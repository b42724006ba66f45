//! What somebody has said that slurs are: bows or phrase marks.

use arcata_score::beats::beat_in_bar;
use arcata_score::{Length, Score, SlurTold};

use super::{Aside, AsideEntry, bars};

/// Says what the slurs are that begin in some bars.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SlurEntry {
    /// What they are.
    pub told: SlurTold,
    /// Name or abbreviation of the part.
    pub part: Option<String>,
    /// First and last bar by printed number.
    pub bars: Option<(String, String)>,
    /// The beat at which they begin, from 1.
    pub beat: Option<Length>,
    /// The movement, from 1, where bar numbers begin anew in a file.
    pub movement: Option<usize>,
    /// Why, in the user's words.
    pub reason: String,
}

/// An entry for which the score has no slur.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct UnusedSlurEntry {
    /// Its index among the entries on slurs.
    pub entry: usize,
}

impl Aside {
    /// Notes in the score what its slurs are said to be; hands back the entries that no slur answers to. Where two entries hold
    /// one slur the later counts.
    ///
    /// ```
    /// # fn main() -> Result<(), Box<dyn std::error::Error>> {
    /// use arcata_review::Aside;
    ///
    /// let aside = Aside::read(
    ///     "format = \"arcata-aside\"\nversion = 1\n\n\
    ///      [[slur]]\nis = \"phrase\"\npart = \"Violin\"\nbars = \"1-8\"\nreason = \"The composer said so.\"\n",
    /// )?;
    /// let mut score = arcata_score::Score::default();
    /// assert_eq!(aside.tell_slurs(&mut score).len(), 1, "there is no slur in an empty score");
    /// # Ok(())
    /// # }
    /// ```
    pub fn tell_slurs(&self, score: &mut Score) -> Vec<UnusedSlurEntry> {
        let mut unused = Vec::new();
        for (index, entry) in self.slurs.iter().enumerate() {
            let places =
                AsideEntry { bars: entry.bars.clone(), movement: entry.movement, ..AsideEntry::default() };
            let within = bars(&places, score);
            let mut chosen = Vec::new();
            for (part_index, part) in score.parts.iter().enumerate() {
                let named = |name: &str| {
                    [&part.name, &part.abbreviation]
                        .iter()
                        .any(|own| own.to_lowercase() == name.trim().to_lowercase())
                };
                if !entry.part.as_deref().is_none_or(named) {
                    continue;
                }
                for (slur_index, slur) in part.slurs.iter().enumerate() {
                    let start = part.note(slur.start);
                    let here =
                        within.as_ref().is_none_or(|bars| bars.iter().any(|bars| bars.contains(&start.bar)));
                    let beat = || {
                        let offset = score.offset_in_bar(start.onset, start.bar);
                        part.meter_at(start.bar).map(|meter| beat_in_bar(meter, offset))
                    };
                    if here && entry.beat.is_none_or(|asked| beat() == Some(asked)) {
                        chosen.push((part_index, slur_index));
                    }
                }
            }
            if chosen.is_empty() {
                unused.push(UnusedSlurEntry { entry: index });
            }
            for (part, slur) in chosen {
                score.parts[part].slurs[slur].told = entry.told;
            }
        }
        unused
    }
}
