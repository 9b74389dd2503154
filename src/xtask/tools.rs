//! Cargo-installed tools of exact versions, each in a folder of its own: `<tools>/<name>-<version>/bin`.

use crate::{places, run, system};
use anyhow::{Context, Result, bail};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

pub const TRUNK: &str = "0.21.14";

/// Trunk's folder, installed if need be.
pub fn trunk() -> Result<PathBuf> {
    installed("trunk", "trunk", TRUNK, "about 8 minutes on 2 cores")
}

/// The folder of the wasm-bindgen program that fits the crate in Cargo.lock.
pub fn wasm_bindgen() -> Result<PathBuf> {
    let version = places::locked_version("wasm-bindgen")?;
    installed("wasm-bindgen-cli", "wasm-bindgen", &version, "about 2 minutes on 2 cores")
}

/// PATH with these folders first.
pub fn path_with(folders: &[PathBuf]) -> Result<std::ffi::OsString> {
    let old = env::var_os("PATH").unwrap_or_default();
    let all = folders.iter().cloned().chain(env::split_paths(&old));
    env::join_paths(all).context("a folder of tools has a name that PATH can't hold")
}

fn installed(package: &str, program: &str, version: &str, time: &str) -> Result<PathBuf> {
    let root = places::tools()?.join(format!("{package}-{version}"));
    let folder = root.join("bin");
    let file = folder.join(format!("{program}{}", env::consts::EXE_SUFFIX));
    if is_version(&file, version) {
        return Ok(folder);
    }
    if let Some(file) = system::on_path(program).filter(|file| is_version(file, version)) {
        return Ok(file.parent().map(Path::to_owned).unwrap_or_default());
    }
    run::say(&format!("Installing {package} {version}, once ({time})"));
    install(package, version, &root)?;
    if !is_version(&file, version) {
        bail!("{package} {version} was installed but does not run: {}", file.display());
    }
    Ok(folder)
}

fn is_version(file: &Path, version: &str) -> bool {
    run::answer(Command::new(file).arg("--version"))
        .is_some_and(|answer| answer.split_whitespace().any(|word| word == version))
}

fn install(package: &str, version: &str, root: &Path) -> Result<()> {
    // Kept until it succeeds, so that an interrupted installation goes on where it was.
    let target = places::tools()?.join(format!("{package}-{version}-build"));
    let install = |locked: &[&str]| {
        let mut command = Command::new("cargo");
        command.args(["install", package, "--version", version, "--force"]).args(locked);
        command.arg("--root").arg(root).env("CARGO_TARGET_DIR", &target);
        command.current_dir(places::tools()?).env_remove("NO_COLOR");
        run::status(&mut command, &format!("Installing {package}"))
    };
    // The locked set is the tested one, but one of its crates may have been withdrawn.
    if !install(&["--locked"])?.success() {
        run::say(&format!("{package}'s own set of versions can't be had; trying the newest that fit"));
        if !install(&[])?.success() {
            bail!("{package} {version} could not be installed from the Rust registry; the reason is above");
        }
    }
    let _ = fs::remove_dir_all(&target);
    Ok(())
}
