//! `cargo xtask ...`: builds, serves and tests the app, and installs what that needs.

mod browser;
mod bundle;
mod check;
mod figures;
mod measure;
mod node;
mod open_data;
mod others;
mod places;
mod precache;
mod run;
mod serve;
mod system;
mod tools;
mod totals;
mod wasm_target;

use anyhow::Result;
use clap::{Args, Parser, Subcommand};
use std::path::PathBuf;
use std::process::ExitCode;

#[derive(Parser)]
#[command(name = "cargo xtask", bin_name = "cargo xtask", about, arg_required_else_help = true)]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Build the app and serve it on this machine, in a browser where there is one
    Serve(ServeArgs),
    /// Build dist/, ready for any path of any static host
    Build(BuildArgs),
    /// Check and test everything, ending with the totals
    Test(check::TestArgs),
    /// Install what building and testing need, and nothing else
    Setup,
    /// Measure sizes and speed and write the table in DEVELOPERS.md
    Figures {
        /// With the figures as they were measured last, instead of measuring (several minutes)
        #[arg(long)]
        as_measured: bool,
    },
    /// Called by Trunk once the bundle exists
    #[command(hide = true)]
    PostBuild,
    /// Write the service worker's list for the app in a folder
    #[command(hide = true)]
    Precache { folder: PathBuf },
    /// Serve a folder as it is
    #[command(hide = true)]
    ServeFolder(serve::FolderArgs),
}

#[derive(Args)]
struct ServeArgs {
    /// Port to listen on; without it, the first free one from 8080
    #[arg(long, env = "PORT")]
    port: Option<u16>,
    /// Leave the browser alone
    #[arg(long)]
    no_open: bool,
}

#[derive(Args)]
struct BuildArgs {
    /// Address the app will be reached under; the default fits every path
    #[arg(long, default_value = bundle::ANY_PATH)]
    public_url: String,
}

fn main() -> ExitCode {
    run::start_clock();
    match carry_out(Cli::parse().command) {
        Ok(code) => code,
        Err(failure) => {
            eprintln!("Failed: {failure:#}");
            ExitCode::FAILURE
        }
    }
}

fn carry_out(command: Command) -> Result<ExitCode> {
    places::keep_own_copy()?;
    match command {
        Command::Serve(args) => {
            bundle::build(bundle::ANY_PATH)?;
            serve::app(args.port, !args.no_open)?;
        }
        Command::Build(args) => {
            bundle::build(&args.public_url)?;
            run::say(&format!("The app is in {}", places::dist().display()));
        }
        Command::Test(args) => return Ok(check::all(&args)),
        Command::Setup => setup()?,
        Command::Figures { as_measured } => figures::write(as_measured)?,
        Command::PostBuild => bundle::post_build()?,
        Command::Precache { folder } => precache::write(&folder)?,
        Command::ServeFolder(args) => serve::folder(&args)?,
    }
    Ok(ExitCode::SUCCESS)
}

fn setup() -> Result<()> {
    open_data::ready()?;
    bundle::Kit::ready()?;
    node::packages()?;
    let chromium = browser::chromium()?;
    run::say(&format!("All is in place; Chromium is {}", chromium.display()));
    Ok(())
}
