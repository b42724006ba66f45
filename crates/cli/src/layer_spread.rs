//! `arcata layer spread`.

use std::process::ExitCode;

use arcata_analysis::Config;
use arcata_bow::together::groups;
use arcata_languages::Saying;
use arcata_layer::{Addresses, GoingTogether, LowStrings, SpreadChoice, SpreadReach};
use arcata_score::Score;

use crate::args::SpreadArguments;
use crate::failure::Failure;
use crate::layer_file::{exit, list, not_over, open_layer, open_score, save};
use crate::layer_words::{say, word};
use crate::{bars, files, layer_words};

pub(crate) fn run(arguments: &SpreadArguments) -> Result<ExitCode, Failure> {
    let (_, score) = open_score(&arguments.score)?;
    let opened = open_layer(&arguments.layer)?;
    let from = *bars::parts(&score, std::slice::from_ref(&arguments.from))?.first().ok_or(Failure::Part {
        asked: arguments.from.clone(),
        known: score.parts.iter().map(|part| part.name.clone()).collect(),
    })?;
    let choice = SpreadChoice {
        from,
        bars: arguments.bars.as_deref().map(|text| bars::bars(&score, Some(text), None)).transpose()?,
        to: if arguments.to.is_empty() { None } else { Some(bars::parts(&score, &arguments.to)?) },
        reach: if arguments.passages { SpreadReach::EveryPassage } else { SpreadReach::SameBars },
        low_strings: if arguments.mirror_low { LowStrings::Mirrored } else { LowStrings::Same },
        together: going_together(&score)?,
    };
    let spread = arcata_layer::spread(&opened.layer, &score, &choice);
    let addresses = Addresses::new(&score);
    let proposed = spread.proposed.iter().map(|proposed| layer_words::proposed(proposed, &addresses));
    list(&word("layer-proposed"), proposed);
    let not_spread = spread.not_spread.iter().map(|left| layer_words::not_spread(left, &addresses));
    list(&word("layer-not-spread"), not_spread);
    if let Some(out) = &arguments.out {
        not_over(out, &[&arguments.score])?;
        let mut layer = opened.layer.clone();
        spread.put_into(&mut layer, &score);
        save(&layer, &opened, out)?;
        let done = Saying::new("layer-added").with("count", spread.proposed.len());
        files::complain(&say(&done.quoting("layer", out.display().to_string())));
    }
    Ok(exit(spread.not_spread.is_empty()))
}

/// The parts that the planner bows alike, with the bars in which it does.
fn going_together(score: &Score) -> Result<Vec<GoingTogether>, Failure> {
    bars::parts(score, &[])?;
    let lines = arcata_analysis::lines(score, &Config::usual());
    let groups = groups(score, &lines).into_iter().map(|group| {
        let mut parts: Vec<usize> = group.lines.iter().map(|line| lines[*line].part).collect();
        parts.sort_unstable();
        parts.dedup();
        GoingTogether { parts, bars: group.bars }
    });
    Ok(groups.collect())
}
