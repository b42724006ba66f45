//! `arcata open`: the workbench in the browser.

use std::path::PathBuf;
use std::process::ExitCode;

use arcata_workbench::{DemoScore, ServeSettings, serve};

use crate::args::OpenArguments;
use crate::failure::Failure;
use crate::{engraving, files, habits_file, house_file, own_folder};

/// What may be tried without a score, as the page calls them.
const DEMOS: &[DemoScore] = &[
    DemoScore { name: "lantern-study", music: include_str!("../../../demo/lantern-study.musicxml") },
    DemoScore {
        name: "ferry-bell-quartet",
        music: include_str!("../../../demo/ferry-bell-quartet.musicxml"),
    },
    DemoScore { name: "slipway-strings", music: include_str!("../../../demo/slipway-strings.musicxml") },
];

/// Serves the score, or what there is to choose from, until the interrupt key is pressed.
pub(crate) fn run(arguments: &OpenArguments) -> Result<ExitCode, Failure> {
    let settings = ServeSettings {
        score: arguments.score.clone(),
        layers: arguments.layer.clone(),
        habits: arguments.habits.as_deref().map(habits_file::read).transpose()?,
        house: house_file::of(arguments.house.as_deref())?,
        port: arguments.port,
        until_closed: arguments.until_closed,
        own_folder: own_folder::state(),
        looks_in: looks_in(),
        demos: DEMOS,
    };
    let told = serve(&settings, engraving::engraver(), |begun| {
        files::show(&format!("{}\n", begun.address));
        if !arguments.no_browser && open::that_detached(&begun.once).is_err() {
            files::complain(&files::wording().word("failure-no-browser"));
        }
        let said = if begun.by_another { "open-by-another" } else { "open-is-kept" };
        files::say(&format!("{}\n", files::wording().word(said)));
    });
    told.map(|()| ExitCode::SUCCESS)
        .map_err(|problem| Failure::Workbench { why: files::told(&problem.to_string()) })
}

/// Where scores are looked for at first: here, where some are here; otherwise at home.
fn looks_in() -> PathBuf {
    let here = std::env::current_dir().unwrap_or_default();
    let has_some = std::fs::read_dir(&here).is_ok_and(|mut entries| {
        entries.any(|entry| entry.is_ok_and(|entry| files::is_score(&entry.path())))
    });
    if has_some { here } else { own_folder::home().unwrap_or(here) }
}
