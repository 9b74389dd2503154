//! Node.js and the packages pinned in `e2e/package.json`.

use crate::{places, run, system};
use anyhow::{Result, bail};
use std::fs;
use std::path::PathBuf;
use std::process::Command;

/// Installs the pinned packages unless they are there already.
pub fn packages() -> Result<()> {
    let lock = fs::read(places::e2e().join("package-lock.json")).unwrap_or_default();
    let stamp = places::e2e().join("node_modules/.benchbook-lock");
    if !lock.is_empty() && fs::read(&stamp).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    node_itself()?;
    run::say("Installing the packages of the browser tests");
    let mut command = npm();
    command.args(["ci", "--no-audit", "--no-fund", "--loglevel=error"]);
    // The tests use a browser of the system; none is fetched here.
    command.env("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1").current_dir(places::e2e());
    run::run(&mut command, "Installing the packages of the browser tests")?;
    fs::write(stamp, lock)?;
    Ok(())
}

fn node_itself() -> Result<()> {
    if run::answer(Command::new("node").arg("--version")).is_some() && run::answer(npm().arg("--version")).is_some() {
        return Ok(());
    }
    if system::has_apt() {
        return system::install(&["nodejs".into(), "npm".into()]);
    }
    bail!("Node.js and npm are missing: install Node.js 18 or newer")
}

fn npm() -> Command {
    // On Windows npm is a script, which only its shell can start.
    if cfg!(windows) {
        let mut command = Command::new("cmd");
        command.args(["/C", "npm"]);
        return command;
    }
    Command::new("npm")
}

/// The entry file of a program of an installed package, to be run by `node`.
pub fn program(file: &str) -> PathBuf {
    places::e2e().join("node_modules").join(file)
}
