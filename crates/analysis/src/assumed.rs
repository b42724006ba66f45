//! What a plan and a review take for given that is not in the score, in words.

use arcata_bow::timing::TempoChoice;
use arcata_bow::{Line, LineOptions, Written};
use arcata_languages::Saying;
use arcata_score::Length;

/// What is taken for given of tempo and dynamics; `assumed` is the tempo where the score gives none, quarter notes a minute.
///
/// ```
/// use arcata_bow::{LineOptions, Profile, Reading};
/// use arcata_analysis::assumptions;
/// # let text = arcata_testkit::musicxml("violin: p 1/4 C5 D5 E5 F5");
/// # let document = arcata_xml::Document::parse(text.into_bytes(), &arcata_xml::Limits::default())?;
/// # let (score, profile) = (arcata_score::read(&document), Profile::default());
/// let options = LineOptions { louder: 2, ..LineOptions::default() };
/// let reading = Reading::new(&score, &profile, &options);
/// let told = assumptions(&reading.lines(0), &options, reading.tempo.assumed());
/// assert_eq!(arcata_languages::Wording::default().say(&told[1]), "2 steps louder than written");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn assumptions(lines: &[Line], options: &LineOptions, assumed: Length) -> Vec<Saying> {
    let tempo = match options.tempo {
        TempoChoice::Opening(quarters) => {
            Some(Saying::new("assume-opening-tempo").quoting("quarters", quarters.to_string()))
        }
        _ => lines
            .iter()
            .any(|line| line.tempo_written == Written::Assumed)
            .then(|| Saying::new("assume-quarters").quoting("quarters", assumed.to_string())),
    };
    let count = options.louder.unsigned_abs();
    let louder = (count > 0).then(|| {
        let way = if options.louder > 0 { "louder" } else { "softer" };
        Saying::new("assume-louder").with("count", i64::from(count)).choosing("way", way)
    });
    tempo.into_iter().chain(louder).collect()
}
