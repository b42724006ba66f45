//! What a score makes the players' bows do: `arcata review`, `arcata plan`, `arcata marks`, `arcata layer`,
//! `arcata parts`, `arcata class`, `arcata aside`, `arcata habits`, `arcata rules` and `arcata open`.

mod args;
mod aside_command;
mod aside_file;
mod bars;
mod bowed_score;
mod breaks_file;
mod class_before;
mod class_command;
mod class_given;
mod class_hand;
mod class_hand_ins;
mod class_key;
mod class_one;
mod class_pages;
mod class_workers;
mod engraving;
mod failure;
mod files;
mod habits_command;
mod habits_file;
mod help_pages_command;
mod house_file;
mod layer_carry;
mod layer_command;
mod layer_enter;
mod layer_file;
mod layer_list;
mod layer_sheet;
mod layer_spread;
mod layer_words;
mod library;
mod marks_command;
mod open_command;
mod own_folder;
mod parts_bowings;
mod parts_command;
mod parts_handover;
mod parts_record;
mod parts_words;
mod plan_command;
mod plan_picture;
mod review_command;
mod review_pages;
mod rules_command;
mod score_file;
mod studio;
mod wishes;

use std::process::ExitCode;

use clap::Parser;

use args::{Arguments, Command};

fn main() -> ExitCode {
    if let Some(done) = engraving::work() {
        return done;
    }
    let works_for = class_workers::works_for();
    let parsed = match &works_for {
        Some(of_run) => Arguments::try_parse_from(of_run),
        None => Arguments::try_parse(),
    };
    let arguments = match parsed {
        Ok(arguments) => arguments,
        Err(problem) => return files::misused(&problem),
    };
    files::speak(arguments.language.unwrap_or_default());
    if let Some(terms) = arguments.terms {
        studio::speak(terms);
    }
    let done = match &arguments.command {
        Command::Review(review) => review_command::run(review),
        Command::Plan(plan) => plan_command::run(plan),
        Command::Layer(layer) => layer_command::run(layer),
        Command::Marks(marks) => marks_command::run(marks),
        Command::Parts(parts) => parts_command::run(parts),
        Command::Class(class) if works_for.is_some() => class_command::work(class),
        Command::Class(class) => class_command::run(class),
        Command::Aside(aside) => aside_command::run(aside),
        Command::Habits(habits) => habits_command::run(habits),
        Command::Rules(rules) => rules_command::run(rules),
        Command::HelpPages(pages) => help_pages_command::run(pages),
        Command::Open(open) => open_command::run(open),
    };
    match done {
        Ok(code) => code,
        Err(failure) => {
            files::complain(&failure.to_string());
            ExitCode::from(2)
        }
    }
}
