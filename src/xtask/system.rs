//! Debian's package manager, where it is there and may be used.

use crate::run;
use anyhow::{Result, bail};
use std::env;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::sync::OnceLock;

/// The program's full path, if it is on PATH.
pub fn on_path(program: &str) -> Option<PathBuf> {
    let path = env::var_os("PATH")?;
    env::split_paths(&path)
        .map(|folder| folder.join(format!("{program}{}", env::consts::EXE_SUFFIX)))
        .find(|file| file.is_file())
}

/// Whether this process runs as root.
pub fn is_root() -> bool {
    run::answer(Command::new("id").arg("-u")).as_deref() == Some("0")
}

/// Whether packages can be installed here without asking a person.
pub fn has_apt() -> bool {
    apt_get().is_some()
}

fn apt_get() -> Option<Command> {
    on_path("apt-get")?;
    if is_root() {
        return Some(Command::new("apt-get"));
    }
    run::answer(Command::new("sudo").args(["-n", "true"]))?;
    let mut command = Command::new("sudo");
    command.args(["-n", "apt-get"]);
    Some(command)
}

/// Installs Debian packages, `NAME` or `NAME=VERSION`, refreshing the package list first.
pub fn install(packages: &[String]) -> Result<()> {
    refresh()?;
    run::say(&format!("Installing {} with apt-get", packages.join(" ")));
    let doing = format!("Installing {}", packages.join(" "));
    run::run(quiet(apt()?).args(["install", "--yes", "--no-install-recommends"]).args(packages), &doing)
}

/// `apt-get update`, once in a run.
pub fn refresh() -> Result<()> {
    static DONE: OnceLock<()> = OnceLock::new();
    if DONE.get().is_none() {
        run::say("Refreshing the list of Debian packages");
        run::run(quiet(apt()?).arg("update"), "Refreshing the package list")?;
        DONE.get_or_init(|| ());
    }
    Ok(())
}

fn apt() -> Result<Command> {
    match apt_get() {
        Some(command) => Ok(command),
        None => bail!("there is no apt-get here that works without a password"),
    }
}

fn quiet(mut command: Command) -> Command {
    command.env("DEBIAN_FRONTEND", "noninteractive");
    // Another installation under way is waited for.
    command.args(["-qq", "-o", "DPkg::Lock::Timeout=600", "-o", "Dpkg::Use-Pty=0"]);
    command.stdout(Stdio::null());
    command
}

/// The version apt would install.
pub fn candidate(package: &str) -> Option<String> {
    let policy = run::answer(Command::new("apt-cache").args(["policy", package]))?;
    let line = policy.lines().find_map(|line| line.trim().strip_prefix("Candidate: "))?;
    (line != "(none)").then(|| line.to_owned())
}

/// Whether a folder can be written by this process; tried, not guessed.
pub fn writable(folder: &Path) -> bool {
    let probe = folder.join(".benchbook-probe");
    let written = std::fs::write(&probe, b"").is_ok();
    written && std::fs::remove_file(&probe).is_ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn finds_programs_on_the_path() {
        assert!(on_path("cargo").is_some());
        assert_eq!(on_path("no-such-program-here"), None);
    }
}
