//! What the planner has reached before: it may not fall below that unnoticed.

use super::agreement::TuneAgreement;
use super::tunes::Half;
use crate::outcome::{CheckOutcome, Result};
use crate::setting::{CheckSetting, read_text};

/// The recorded floors, relative to the checkout.
const FLOORS: &str = "outside/ryan.floors";

/// Compares the planner with the floors of one half; hundredths of a percent.
pub(super) fn hold(
    setting: &CheckSetting,
    half: Half,
    reached: &TuneAgreement,
    outcome: &mut CheckOutcome,
) -> Result<()> {
    let text = read_text(&setting.root.join(FLOORS))?;
    let found = [("all", reached.all), ("downbeats", reached.downbeats), ("before", reached.before)];
    for (name, share) in found {
        let floor = floor(&text, half, name).ok_or(format!("{FLOORS}: no line for {half} {name}"))?;
        let sentence = format!(
            "the planner agrees with at least {}.{:02} % of the marks ({half} half, {name}); it is {share}",
            floor / 100,
            floor % 100
        );
        outcome.check(share.basis_points() >= floor, &sentence);
    }
    Ok(())
}

/// Finds `HALF NAME PERCENT` in the file; `#` begins a comment.
fn floor(text: &str, half: Half, name: &str) -> Option<u32> {
    let half = half.to_string();
    let lines = text.lines().map(|line| line.split('#').next().unwrap_or_default());
    let mut words = lines.map(|line| line.split_whitespace().collect::<Vec<&str>>());
    let found = words.find(|words| words.len() == 3 && words[0] == half && words[1] == name)?;
    let (whole, hundredths) = found[2].split_once('.')?;
    Some(whole.parse::<u32>().ok()? * 100 + format!("{hundredths:0<2}").parse::<u32>().ok()?)
}
