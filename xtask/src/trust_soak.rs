//! A scripted afternoon at the workbench (`browser/soak.mjs`): it prints its figures, which are read here.

use std::fs;
use std::process::Command;

use crate::command::run;
use crate::places::Folders;
use crate::steps;
use crate::tools;

/// The figures that the script prints, each as `figure NAME VALUE`.
const NAMES: [&str; 9] = [
    "soak-acts",
    "soak-tabs",
    "soak-reloads",
    "soak-changes",
    "soak-kills",
    "soak-lost",
    "soak-memory",
    "soak-parallel",
    "soak-slow",
];

pub(crate) fn soak(places: &Folders) -> Result<Vec<(&'static str, f64)>, String> {
    tools::debian_programs(&[("node", "nodejs")])?;
    let program = steps::program(places)?;
    let mut node = Command::new("node");
    // Node.js looks for packages beside the script.
    let home = tools::packages(places)?.join("soak");
    fs::create_dir_all(&home).map_err(|problem| format!("{}: {problem}", home.display()))?;
    for name in ["soak.mjs", "workbench.mjs", "pages.mjs"] {
        tools::copy(&places.root.join("browser").join(name), &home.join(name))?;
    }
    node.arg("soak.mjs").current_dir(&home);
    node.env("ARCATA_PROGRAM", program).env("ARCATA_CHECKOUT", &places.root);
    let ran = run(&mut node, "  ")?;
    if !ran.well {
        return Err("the afternoon did not come to its end; see above".to_owned());
    }
    let figure = |line: &String| {
        let (name, value) = line.strip_prefix("figure ")?.split_once(' ')?;
        let name = NAMES.into_iter().find(|known| *known == name)?;
        Some((name, value.parse().ok()?))
    };
    Ok(ran.lines.iter().filter_map(figure).collect())
}
