//! Finds a Chromium for the browser tests, or installs one.

use crate::{node, places, run, system};
use anyhow::{Result, bail};
use std::env;
use std::path::PathBuf;
use std::process::Command;
use std::time::Duration;

const NAMES: [&str; 8] = [
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "microsoft-edge",
    "microsoft-edge-stable",
    "msedge",
];

/// Where installers put browsers without touching PATH.
const FIXED: [&str; 6] = [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
    "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
    "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/// A download that has not finished by then will not.
const DOWNLOAD: Duration = Duration::from_mins(10);

/// The Chromium to test with. `BENCHBOOK_CHROMIUM` overrides the search.
pub fn chromium() -> Result<PathBuf> {
    if let Some(file) = env::var_os("BENCHBOOK_CHROMIUM") {
        return Ok(PathBuf::from(file));
    }
    if let Some(file) = found() {
        return Ok(file);
    }
    if system::has_apt() {
        system::install(&["chromium".into(), "fonts-liberation".into()])?;
    } else {
        run::say("Fetching the test runner's own Chromium");
        let mut command = playwright(&["install", "chromium"]);
        run::limited(&mut command, DOWNLOAD)?;
    }
    match found() {
        Some(file) => Ok(file),
        None => bail!("no Chromium was found: install Chromium or Chrome, or set BENCHBOOK_CHROMIUM to its program"),
    }
}

fn found() -> Option<PathBuf> {
    first_of(&NAMES, &FIXED).or_else(of_the_runner)
}

/// The first of these programs on PATH, or else of these files.
pub fn first_of(names: &[&str], files: &[&str]) -> Option<PathBuf> {
    let on_path = names.iter().find_map(|name| system::on_path(name));
    on_path.or_else(|| files.iter().map(PathBuf::from).find(|file| file.is_file()))
}

/// The Chromium that the test runner downloaded earlier.
fn of_the_runner() -> Option<PathBuf> {
    let script = "process.stdout.write(require('playwright-core').chromium.executablePath())";
    let file = run::answer(Command::new("node").args(["-e", script]).current_dir(places::e2e()))?;
    Some(PathBuf::from(file)).filter(|file| file.is_file())
}

/// The test runner with these arguments.
pub fn playwright(arguments: &[&str]) -> Command {
    let mut command = Command::new("node");
    command.arg(node::program("@playwright/test/cli.js")).args(arguments).current_dir(places::e2e());
    command
}
