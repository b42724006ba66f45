//! `arcata layer`.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arcata_languages::Saying;
use arcata_layer::{Addresses, Applied, Layer, LayerError, LeftOut, LiftChoice, LiftKind, MergeRule, Trust};
use arcata_xml::{Document, Limits};

use crate::args::{
    ApplyArguments, CheckArguments, CompareArguments, KindArgument, LayerArguments, LayerCommand,
    LiftArguments, MergeArguments,
};
use crate::failure::Failure;
use crate::layer_file::{LayerFile, exit, layer_failed, list, not_over, open_layer, open_score, save};
use crate::layer_words::{say, word};
use crate::score_file::ScoreTarget;
use crate::{
    bars, files, layer_carry, layer_enter, layer_list, layer_sheet, layer_spread, layer_words, studio,
};

pub(crate) fn run(arguments: &LayerArguments) -> Result<ExitCode, Failure> {
    match &arguments.command {
        LayerCommand::Lift(lift) => run_lift(lift),
        LayerCommand::Apply(apply) => run_apply(apply),
        LayerCommand::Wipe(wipe) => run_wipe(wipe),
        LayerCommand::Compare(compare) => run_compare(compare),
        LayerCommand::Merge(merge) => run_merge(merge),
        LayerCommand::Spread(spread) => layer_spread::run(spread),
        LayerCommand::Carry(carry) => layer_carry::run(carry),
        LayerCommand::Check(check) => run_check(check),
        LayerCommand::Enter(enter) => layer_enter::run(enter),
        LayerCommand::Sheet(sheet) => layer_sheet::run(sheet),
        LayerCommand::List(list) => layer_list::run(list),
    }
}

fn parse(bytes: Vec<u8>) -> Result<Document, Failure> {
    Document::parse(bytes, &Limits::default())
        .map_err(|error| Failure::Marks { why: files::told(&error.to_string()) })
}

fn run_lift(arguments: &LiftArguments) -> Result<ExitCode, Failure> {
    not_over(&arguments.out, &[&arguments.score])?;
    let target = ScoreTarget::of(&arguments.out)?;
    not_over(&arguments.layer, &[&arguments.score, &arguments.out])?;
    let (file, score) = open_score(&arguments.score)?;
    let mut choice = LiftChoice::default();
    if !arguments.kinds.is_empty() {
        choice.kinds = arguments.kinds.iter().map(kind).collect();
    }
    if !arguments.part.is_empty() {
        choice.parts = Some(bars::parts(&score, &arguments.part)?);
    }
    let failed = |error: &LayerError| layer_failed(&arguments.score, error);
    let mut lifted = arcata_layer::lift(file.document(), &score, &choice).map_err(|error| failed(&error))?;
    lifted.layer.title.clone_from(&arguments.title);
    lifted.layer.owner.clone_from(&arguments.owner);
    lifted.layer.ensemble.clone_from(&arguments.ensemble);
    lifted.layer.date.clone_from(&arguments.date);
    let clean = file.document().apply(&lifted.edits).map_err(|error| failed(&error.into()))?;
    // The layer first: the marks are then in two files, never in none.
    arcata_files::write_whole(&arguments.layer, arcata_layer::write(&lifted.layer).as_bytes())?;
    target.write(&file, &clean)?;
    let done = Saying::new("layer-lifted")
        .with("count", lifted.layer.entries.len())
        .quoting("layer", arguments.layer.display().to_string())
        .quoting("score", arguments.out.display().to_string());
    files::complain(&say(&done));
    list(&word("layer-staying"), lifted.staying.iter().map(layer_words::staying));
    Ok(exit(lifted.staying.is_empty()))
}

fn kind(kind: &KindArgument) -> LiftKind {
    match kind {
        KindArgument::Bows => LiftKind::Bows,
        KindArgument::Words => LiftKind::Words,
        KindArgument::Lifts => LiftKind::Lifts,
        KindArgument::Slurs => LiftKind::Slurs,
    }
}

/// The paths that a command reads.
fn inputs(arguments: &ApplyArguments) -> Vec<&Path> {
    let layers = arguments.layer.iter().map(PathBuf::as_path);
    layers.chain(std::iter::once(arguments.score.as_path())).collect()
}

fn trust(arguments: &ApplyArguments) -> Trust {
    if arguments.any_score { Trust::AnyScore } else { Trust::OwnScore }
}

fn run_apply(arguments: &ApplyArguments) -> Result<ExitCode, Failure> {
    not_over(&arguments.out, &inputs(arguments))?;
    let target = ScoreTarget::of(&arguments.out)?;
    let (file, score) = open_score(&arguments.score)?;
    let layers: Vec<LayerFile> =
        arguments.layer.iter().map(|path| open_layer(path)).collect::<Result<_, _>>()?;
    let mut document = parse(file.document().bytes().to_vec())?;
    let mut score = score;
    let mut below: Vec<Layer> = Vec::new();
    let (mut left_out, mut overruled) = (Vec::new(), Vec::new());
    let mut said = Vec::new();
    for opened in &layers {
        let told = studio::told(&arguments.score, (&document, &score), &opened.layer)?;
        let applied =
            arcata_layer::apply_told(&document, &score, &opened.layer, (&below, &told), trust(arguments));
        let Applied { edits, layer, written, standing, left_out: left, overruled: below_this } =
            applied.map_err(|error| layer_failed(&opened.path, &error))?;
        let bytes = document.apply(&edits).map_err(|error| layer_failed(&opened.path, &error.into()))?;
        document = parse(bytes)?;
        score = arcata_score::read(&document);
        let done = Saying::new("layer-applied")
            .quoting("layer", opened.path.display().to_string())
            .with("written", written)
            .with("standing", standing);
        said.push(say(&done));
        left_out.extend(left);
        for entry in below_this {
            if !overruled.iter().any(|known: &LeftOut| known.entry.says_the_same(&entry.entry)) {
                overruled.push(entry);
            }
        }
        below.push(layer);
    }
    // The layers first: with a marked score alone nobody could tell the layers' marks from the composer's.
    for (opened, layer) in layers.iter().zip(&below) {
        let bytes = arcata_layer::write(layer);
        if *layer != opened.layer && !arguments.any_score {
            arcata_files::rewrite(&opened.path, &opened.bytes, bytes.as_bytes())?;
        }
    }
    target.write(&file, document.bytes())?;
    said.iter().for_each(|line| files::complain(line));
    let addresses = Addresses::new(&score);
    let passed_over = |left: &LeftOut| layer_words::left_out(left, &addresses);
    list(&word("layer-overruled"), overruled.iter().map(passed_over));
    list(&word("layer-not-applied"), left_out.iter().map(passed_over));
    Ok(exit(left_out.is_empty()))
}

fn run_wipe(arguments: &ApplyArguments) -> Result<ExitCode, Failure> {
    not_over(&arguments.out, &inputs(arguments))?;
    let target = ScoreTarget::of(&arguments.out)?;
    let (file, mut score) = open_score(&arguments.score)?;
    let layers: Vec<LayerFile> =
        arguments.layer.iter().map(|path| open_layer(path)).collect::<Result<_, _>>()?;
    let mut document = parse(file.document().bytes().to_vec())?;
    let mut left_out: Vec<LeftOut> = Vec::new();
    let mut taken_off = 0;
    for opened in layers.iter().rev() {
        let wiped = arcata_layer::wipe(&document, &score, &opened.layer, trust(arguments))
            .map_err(|error| layer_failed(&opened.path, &error))?;
        let bytes =
            document.apply(&wiped.edits).map_err(|error| layer_failed(&opened.path, &error.into()))?;
        document = parse(bytes)?;
        score = arcata_score::read(&document);
        taken_off += wiped.taken_off;
        left_out.extend(wiped.left_out);
    }
    target.write(&file, document.bytes())?;
    let done = Saying::new("layer-wiped").with("count", taken_off);
    files::complain(&say(&done.quoting("score", arguments.out.display().to_string())));
    let addresses = Addresses::new(&score);
    let passed_over = |left: &LeftOut| layer_words::left_out(left, &addresses);
    list(&word("layer-not-found"), left_out.iter().map(passed_over));
    Ok(exit(left_out.is_empty()))
}

fn run_compare(arguments: &CompareArguments) -> Result<ExitCode, Failure> {
    let (before, after) = (open_layer(&arguments.before)?, open_layer(&arguments.after)?);
    let differences = arcata_layer::compare(&before.layer, &after.layer);
    let score = arguments.score.as_deref().map(open_score).transpose()?;
    let addresses = score.as_ref().map(|(_, score)| Addresses::new(score));
    for difference in &differences {
        files::show(&format!(
            "{}: {} → {}\n",
            layer_words::place(&difference.place, addresses.as_ref()),
            layer_words::marks(&difference.before, addresses.as_ref()),
            layer_words::marks(&difference.after, addresses.as_ref())
        ));
    }
    files::complain(&say(&Saying::new("layer-differences").with("count", differences.len())));
    Ok(exit(differences.is_empty()))
}

fn run_merge(arguments: &MergeArguments) -> Result<ExitCode, Failure> {
    let rules: Vec<MergeRule> = arguments.prefer.iter().map(|text| rule(text)).collect();
    let first = open_layer(&arguments.first)?;
    let base = arguments.base.as_deref().map(open_layer).transpose()?;
    let (layer, overruled) = match &arguments.second {
        Some(second) => {
            let second = open_layer(second)?;
            let base = base.as_ref().map(|base| &base.layer);
            let merged = arcata_layer::merge(base, &first.layer, &second.layer, &rules);
            (merged.layer, merged.overruled)
        }
        None => {
            let mut layer = first.layer.clone();
            let overruled = arcata_layer::settle(&mut layer, &rules);
            (layer, overruled)
        }
    };
    save(&layer, &first, &arguments.out)?;
    let done = Saying::new("layer-merged")
        .with("count", layer.entries.len())
        .with("conflicts", layer.conflicts.len())
        .with("settled", overruled.len());
    files::complain(&say(&done));
    let score = arguments.score.as_deref().map(open_score).transpose()?;
    let addresses = score.as_ref().map(|(_, score)| Addresses::new(score));
    let said = |one: &arcata_layer::Conflict| layer_words::conflict(one, addresses.as_ref());
    list(&word("layer-settled"), overruled.iter().map(said));
    list(&word("layer-to-settle"), layer.conflicts.iter().map(said));
    Ok(exit(layer.conflicts.is_empty()))
}

/// `leader`, or `Violin I=leader`.
fn rule(text: &str) -> MergeRule {
    match text.rsplit_once('=') {
        Some((part, winner)) => {
            MergeRule { part: Some(part.trim().to_owned()), winner: winner.trim().to_owned() }
        }
        None => MergeRule { part: None, winner: text.trim().to_owned() },
    }
}

fn run_check(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    let (file, score) = open_score(&arguments.score)?;
    let opened = open_layer(&arguments.layer)?;
    let remarks = arcata_layer::check(&opened.layer, file.document(), &score);
    let addresses = Addresses::new(&score);
    for remark in &remarks {
        files::show(&format!("{}\n", layer_words::remark(remark, &addresses)));
    }
    let done = Saying::new("layer-checked").with("count", opened.layer.entries.len());
    files::complain(&say(&done.with("remarks", remarks.len())));
    Ok(exit(remarks.is_empty()))
}
