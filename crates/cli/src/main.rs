//! What a score makes the players' bows do: `arcata review`, `arcata plan` and `arcata marks`.

mod args;
mod bars;
mod failure;
mod files;
mod marks_command;
mod plan_command;
mod review_command;
mod studio;

use std::process::ExitCode;

use clap::Parser;

use args::{Arguments, Command};

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let done = match &arguments.command {
        Command::Review(review) => review_command::run(review),
        Command::Plan(plan) => plan_command::run(plan),
        Command::Marks(marks) => marks_command::run(marks),
    };
    match done {
        Ok(code) => code,
        Err(failure) => {
            files::complain(&failure.to_string());
            ExitCode::from(2)
        }
    }
}
