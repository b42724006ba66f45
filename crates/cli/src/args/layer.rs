//! The command line of `arcata layer`.

use std::path::PathBuf;

use clap::{Args, Subcommand, ValueEnum};

use super::shared::Format;

/// Bowings kept apart from the score: put them on, take them off, bring them together.
#[derive(Debug, Args)]
pub(crate) struct LayerArguments {
    #[command(subcommand)]
    pub(crate) command: LayerCommand,
}

#[derive(Debug, Subcommand)]
pub(crate) enum LayerCommand {
    /// Take the bow marks off a score into a layer, and write the clean score
    Lift(LiftArguments),
    /// Put layers onto a score, one over the other in the order given
    Apply(ApplyArguments),
    /// Take layers off a score again, the last one first
    Wipe(ApplyArguments),
    /// Show what differs between two layers, or two states of one
    Compare(CompareArguments),
    /// Make one layer of two owners' layers
    Merge(MergeArguments),
    /// Propose the bowings of one part for all parts that match it
    Spread(SpreadArguments),
    /// Carry a layer over to a revised score
    Carry(CarryArguments),
    /// Look for entries that cannot be applied, contradict each other or make no sense
    Check(CheckArguments),
    /// Put typed-in bowings (shorthand) into a layer
    #[command(
        after_help = "The text comes from --notes or from standard input, one line an entry or several:\n\n  Vn1 37/3 down\n  41-42 hook 2\n  45 as it comes\n  anchor 60/1 down\n\nThe whole grammar: docs/manual/shorthand.md. Exit codes: 0 entered, 1 the text has troubles and\nnothing was written, 2 could not run."
    )]
    Enter(EnterArguments),
    /// Print what a copyist changes in the parts: a page a section, and one for the librarian
    Sheet(SheetArguments),
    /// List the works and bowing layers of a folder
    #[command(after_help = "Exit codes: 0 listed, 1 listed, but a file could not be read, 2 could not run.")]
    List(ListArguments),
}

#[derive(Debug, Args)]
pub(crate) struct LiftArguments {
    /// The score with marks
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// Write the layer here
    #[arg(long, value_name = "FILE")]
    pub(crate) layer: PathBuf,
    /// Write the clean score here
    #[arg(long, value_name = "SCORE")]
    pub(crate) out: PathBuf,
    /// What to lift; down- and up-bows unless said
    #[arg(long = "kind", value_enum, value_name = "KIND")]
    pub(crate) kinds: Vec<KindArgument>,
    /// Only from this part: its name, the beginning of it, or its number in the score
    #[arg(long, value_name = "PART")]
    pub(crate) part: Vec<String>,
    /// What the layer is called
    #[arg(long, default_value = "")]
    pub(crate) title: String,
    /// Whose bowings they are
    #[arg(long, default_value = "")]
    pub(crate) owner: String,
    /// For which orchestra or ensemble
    #[arg(long, default_value = "")]
    pub(crate) ensemble: String,
    /// When, best as 2026-03-01
    #[arg(long, default_value = "")]
    pub(crate) date: String,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum KindArgument {
    /// Down- and up-bows
    Bows,
    /// Words about the bow
    Words,
    /// Breath marks
    Lifts,
    /// Slurs
    Slurs,
}

#[derive(Debug, Args)]
pub(crate) struct ApplyArguments {
    /// The score
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The layer; several in the order in which they lie over each other
    #[arg(long, value_name = "FILE", required = true)]
    pub(crate) layer: Vec<PathBuf>,
    /// Write the score here
    #[arg(long, value_name = "SCORE")]
    pub(crate) out: PathBuf,
    /// Also onto a score that the layer was not made for: what finds its note is written
    #[arg(long)]
    pub(crate) any_score: bool,
}

#[derive(Debug, Args)]
pub(crate) struct CompareArguments {
    /// The layer before
    #[arg(value_name = "BEFORE")]
    pub(crate) before: PathBuf,
    /// The layer after
    #[arg(value_name = "AFTER")]
    pub(crate) after: PathBuf,
    /// The score of the layers: places are then said by bar and beat. Without it a layer knows no metre, and says how far
    /// into the bar a note stands: "bar 12 after 3/8"
    #[arg(long, value_name = "SCORE")]
    pub(crate) score: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub(crate) struct MergeArguments {
    /// One layer
    #[arg(value_name = "FIRST")]
    pub(crate) first: PathBuf,
    /// The other; without it the conflicts of the first are settled
    #[arg(value_name = "SECOND")]
    pub(crate) second: Option<PathBuf>,
    /// What both started from
    #[arg(long, value_name = "FILE")]
    pub(crate) base: Option<PathBuf>,
    /// Whose bowing holds where the two differ: an owner, or a part and an owner, as "Violin I=leader"; the
    /// first that fits counts
    #[arg(long, value_name = "[PART=]OWNER")]
    pub(crate) prefer: Vec<String>,
    /// The score of the layers: conflicts are then told by bar and beat
    #[arg(long, value_name = "SCORE")]
    pub(crate) score: Option<PathBuf>,
    /// Write the merged layer here
    #[arg(long, value_name = "FILE")]
    pub(crate) out: PathBuf,
}

#[derive(Debug, Args)]
pub(crate) struct SpreadArguments {
    /// The score
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The layer
    #[arg(long, value_name = "FILE")]
    pub(crate) layer: PathBuf,
    /// The part whose bowings are spread
    #[arg(long, value_name = "PART")]
    pub(crate) from: String,
    /// The parts that get them; all bowed ones unless said
    #[arg(long, value_name = "PART")]
    pub(crate) to: Vec<String>,
    /// Only from these bars: 12, 5-8, "II, bar 12"
    #[arg(long, value_name = "BARS")]
    pub(crate) bars: Option<String>,
    /// Also to passages elsewhere that repeat the music
    #[arg(long)]
    pub(crate) passages: bool,
    /// Give cellos and basses the mirror image: down for up
    #[arg(long)]
    pub(crate) mirror_low: bool,
    /// Add what is proposed and write the layer here; without it the proposals are only listed
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
}

#[derive(Debug, Args)]
pub(crate) struct CarryArguments {
    /// The revised score
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The score that the layer belongs to
    #[arg(long, value_name = "SCORE")]
    pub(crate) from: PathBuf,
    /// The layer
    #[arg(long, value_name = "FILE")]
    pub(crate) layer: PathBuf,
    /// Write the carried layer here
    #[arg(long, value_name = "FILE")]
    pub(crate) out: PathBuf,
}

#[derive(Debug, Args)]
pub(crate) struct CheckArguments {
    /// The score
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The layer
    #[arg(long, value_name = "FILE")]
    pub(crate) layer: PathBuf,
}

#[derive(Debug, Args)]
pub(crate) struct EnterArguments {
    /// The score that the bowings are for
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The shorthand; standard input when not given
    #[arg(long, value_name = "FILE")]
    pub(crate) notes: Option<PathBuf>,
    /// The layer that the bowings are added to; a new one when there is no such file
    #[arg(long, value_name = "LAYER")]
    pub(crate) layer: Option<PathBuf>,
    /// Write the layer here; over --layer when not given, to standard output when that is not given either
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    /// Print the layer as shorthand instead of writing it
    #[arg(long, conflicts_with = "out")]
    pub(crate) print: bool,
    /// Say what is wrong with the text, and write nothing
    #[arg(long, conflicts_with_all = ["out", "print"])]
    pub(crate) check: bool,
    /// Title of the layer
    #[arg(long, value_name = "TEXT")]
    pub(crate) title: Option<String>,
    /// Who decided the bowings
    #[arg(long, value_name = "NAME")]
    pub(crate) owner: Option<String>,
    /// For which orchestra or ensemble
    #[arg(long, value_name = "NAME")]
    pub(crate) ensemble: Option<String>,
    /// When, such as 2026-03-01
    #[arg(long, value_name = "DATE")]
    pub(crate) date: Option<String>,
}

#[derive(Debug, Args)]
pub(crate) struct ListArguments {
    /// The folder of works and layers; folders inside it are looked through, links are not followed
    #[arg(value_name = "FOLDER")]
    pub(crate) folder: PathBuf,
    /// Only works whose title holds this
    #[arg(long, value_name = "TEXT")]
    pub(crate) work: Option<String>,
    /// Only layers whose owner's name holds this
    #[arg(long, value_name = "TEXT")]
    pub(crate) owner: Option<String>,
    /// Only layers for an orchestra or ensemble whose name holds this
    #[arg(long, value_name = "TEXT")]
    pub(crate) ensemble: Option<String>,
    /// Text for people, json or csv for programs
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub(crate) format: Format,
    /// Read every file again, whatever the index remembers
    #[arg(long)]
    pub(crate) rebuild: bool,
}

#[derive(Debug, Args)]
pub(crate) struct SheetArguments {
    /// The clean score: without the layers on it
    #[arg(value_name = "SCORE")]
    pub(crate) score: PathBuf,
    /// The layer that shall stand in the parts
    #[arg(long, value_name = "LAYER")]
    pub(crate) layer: PathBuf,
    /// The layer, or the older state of it, that stands in them now; nothing: parts as printed
    #[arg(long, value_name = "LAYER")]
    pub(crate) before: Option<PathBuf>,
    /// Write here instead of the terminal; .html and .pdf choose the form
    #[arg(long, value_name = "FILE")]
    pub(crate) out: Option<PathBuf>,
    /// The form, where the ending of --out does not say it
    #[arg(long, value_enum)]
    pub(crate) format: Option<SheetFormat>,
    /// Paper of the PDF
    #[arg(long, value_enum, default_value_t = PaperSize::A4)]
    pub(crate) paper: PaperSize,
    /// Stands by section, such as "Vn1=7, Vn2=6, Va=5", or "symphony" for 7, 6, 5, 4, 3; one each when
    /// not given
    #[arg(long, value_name = "STANDS")]
    pub(crate) stands: Option<String>,
    /// Seconds to write or take off one mark in one part, for the copying estimate
    #[arg(long, value_name = "SECONDS", value_parser = clap::value_parser!(u32).range(1..=3600))]
    pub(crate) seconds_a_mark: Option<u32>,
    /// Leave out down- and up-bows that come anyway when players bow as it comes
    #[arg(long)]
    pub(crate) least: bool,
    /// Leave the engraved bars out of HTML and PDF
    #[arg(long)]
    pub(crate) words_only: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum SheetFormat {
    Text,
    Html,
    Pdf,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum PaperSize {
    A4,
    Letter,
}
