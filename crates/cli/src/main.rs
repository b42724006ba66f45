//! What a score makes the players' bows do: `arcata review` and `arcata plan`.

mod args;
mod bars;
mod failure;
mod files;
mod plan_command;
mod review_command;
mod studio;
mod wishes;

use std::process::ExitCode;

use clap::Parser;

use args::{Arguments, Command};

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match &arguments.command {
        Command::Review(review) => review_command::run(review),
        Command::Plan(plan) => plan_command::run(plan),
    };
    match done {
        Ok(code) => code,
        Err(failure) => {
            files::complain(&failure.to_string());
            ExitCode::from(2)
        }
    }
}
