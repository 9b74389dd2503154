//! The desk: what the scorer does with the file at home. `benchbook check` reads a game's book aloud and proves it.

use std::io::{self, Write};
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

mod boxscore;
mod check;
mod lines;
mod open;
mod report;
mod salvage;
mod schema;
mod season;
mod table;
mod text;
mod why;

/// Checks Benchbook game files and prints their lines.
///
/// A game file (NAME.benchbook.json) is what the app hands out when you take a game home.
/// Nothing here changes a file or needs a network.
#[derive(Parser)]
#[command(version, after_help = EXAMPLES, arg_required_else_help = true)]
struct Desk {
    #[command(subcommand)]
    command: Command,
}

const EXAMPLES: &str = "\
Examples:
  benchbook check saturday.benchbook.json          the box score, and whether it proves
  benchbook check games/*.benchbook.json           a season's worth; exit status 1 if one is amiss
  benchbook lines saturday.benchbook.json          every number of every player
  benchbook lines --json saturday.benchbook.json   the same for another program
  benchbook why saturday.benchbook.json 'earned runs of #21'
  benchbook season games/*.benchbook.json          averages, innings, pitches by day
  benchbook salvage broken.benchbook.json new.benchbook.json

Colour is used on a terminal only; NO_COLOR=1 turns it off.";

#[derive(Subcommand)]
enum Command {
    /// Print line score, box scores, pitchers and the proof of each game.
    ///
    /// Exit status 1 if a file can't be read (its line and the reason are told), holds an entry that doesn't fit the
    /// game, or doesn't prove: at bats, walks and the like must equal runs, left on base and the opponents' putouts
    /// (OBR 9.03(c)).
    Check {
        /// Game files; `-` reads one from standard input.
        #[arg(required = true, value_name = "FILE")]
        files: Vec<PathBuf>,
    },
    /// Print every derived line of a game: line score, batting, pitching, fielding, decisions.
    Lines {
        /// A game file; `-` reads it from standard input.
        #[arg(value_name = "FILE")]
        file: PathBuf,
        /// As JSON, described by `benchbook schema --lines`.
        #[arg(long)]
        json: bool,
    },
    /// Say why a number of the book is what it is: the plays behind it, each with its reason and its rule.
    #[command(after_help = why::NUMBERS)]
    Why {
        /// A game file; `-` reads it from standard input.
        #[arg(value_name = "FILE")]
        file: PathBuf,
        /// The number and whose it is: "earned runs of #21", "rbi of Okonjo", "hits of visitors".
        #[arg(value_name = "QUESTION")]
        question: String,
    },
    /// Add up many games into season lines, team by team: batting, pitching, fielding, pitches by day.
    ///
    /// A game given twice is counted once. Exit status 1 if a file can't be read; the others are added up all the same.
    Season {
        /// Game files.
        #[arg(required = true, value_name = "FILE")]
        files: Vec<PathBuf>,
        /// As JSON.
        #[arg(long)]
        json: bool,
    },
    /// Print the JSON Schema of the game file.
    Schema {
        /// Of what `benchbook lines --json` prints instead.
        #[arg(long)]
        lines: bool,
    },
    /// Save the entries that are whole out of a damaged game file into a new one. The damaged one stays as it is.
    Salvage {
        /// The damaged file; `-` reads it from standard input.
        #[arg(value_name = "FILE")]
        file: PathBuf,
        /// The file to make, which must not exist yet; `-` writes to standard output.
        #[arg(value_name = "NEW")]
        new: PathBuf,
    },
}

fn main() -> ExitCode {
    let mut out = io::BufWriter::new(anstream::stdout().lock());
    let outcome = match Desk::parse().command {
        Command::Check { files } => check::check(&files, &mut out),
        Command::Lines { file, json } => lines::lines(&file, json, &mut out),
        Command::Why { file, question } => why::answer(&file, &question, &mut out),
        Command::Season { files, json } => season::season(&files, json, &mut out),
        Command::Schema { lines } => schema::schema(lines, &mut out),
        Command::Salvage { file, new } => salvage::salvage(&file, &new, &mut out),
    };
    match outcome.and_then(|status| out.flush().map(|()| status)) {
        Ok(status) => status,
        // Whoever reads our output has read enough.
        Err(error) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => {
            report::trouble(&format!("can't write the output: {error}"));
            ExitCode::FAILURE
        }
    }
}
