//! A Rust compiler that can build for `wasm32-unknown-unknown`.
//!
//! Usually rustup adds the target to the toolchain in use. Where rustup's servers can't be reached but Debian's can,
//! Debian's compiler does it, with a standard library built once from Debian's copy of its source.

use crate::{places, run, system};
use anyhow::{Context, Result, bail};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::{Duration, SystemTime};

pub const TRIPLE: &str = "wasm32-unknown-unknown";
const DEBIAN: &str = "benchbook-debian";
const LINKER: &str = "wasm-ld-22";

/// rustup's download takes seconds or does not happen.
const RUSTUP_LIMIT: Duration = Duration::from_mins(1);
/// For so long a download that failed is not tried again.
const RUSTUP_REST: Duration = Duration::from_hours(24);

/// Which compiler builds the app.
pub enum Compiler {
    /// The toolchain in use.
    Current,
    /// Debian's, linked into rustup.
    Debian,
}

impl Compiler {
    /// Finds or installs one.
    pub fn ready() -> Result<Self> {
        let forced = env::var_os("BENCHBOOK_WASM_ROUTE").is_some_and(|route| route == "debian");
        if !forced {
            if current_has_target() {
                return Ok(Self::Current);
            }
            if add_with_rustup()? {
                return Ok(Self::Current);
            }
        }
        debian()?;
        Ok(Self::Debian)
    }

    /// Makes a command, and every cargo it starts, use this compiler for wasm.
    pub fn apply<'a>(&self, command: &'a mut Command) -> &'a mut Command {
        match self {
            Self::Current => command,
            Self::Debian => command
                .env("RUSTUP_TOOLCHAIN", DEBIAN)
                .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", LINKER)
                // Points at the other toolchain's libraries.
                .env_remove("LD_LIBRARY_PATH"),
        }
    }

    /// Whether `cargo clippy` can check for wasm.
    pub fn has_clippy(&self) -> bool {
        matches!(self, Self::Current)
    }
}

fn current_has_target() -> bool {
    run::answer(Command::new("rustc").args(["--print", "sysroot"]))
        .is_some_and(|sysroot| has_core(&library(Path::new(&sysroot))))
}

fn library(sysroot: &Path) -> PathBuf {
    sysroot.join("lib/rustlib").join(TRIPLE).join("lib")
}

fn has_core(library: &Path) -> bool {
    let Ok(files) = fs::read_dir(library) else { return false };
    files.flatten().any(|file| file.file_name().to_string_lossy().starts_with("libcore-"))
}

fn add_with_rustup() -> Result<bool> {
    if system::on_path("rustup").is_none() {
        return Ok(false);
    }
    let failed = places::tools()?.join("rustup-unreachable");
    if system::has_apt() && is_recent(&failed) {
        return Ok(false);
    }
    run::say(&format!("Adding the {TRIPLE} target with rustup"));
    let mut command = Command::new("rustup");
    let ended = run::limited(command.args(["target", "add", TRIPLE]), RUSTUP_LIMIT)?;
    if ended.is_some_and(|status| status.success()) && current_has_target() {
        let _ = fs::remove_file(&failed);
        return Ok(true);
    }
    fs::write(&failed, b"rustup could not fetch the wasm target\n")?;
    Ok(false)
}

fn is_recent(file: &Path) -> bool {
    let modified = fs::metadata(file).and_then(|data| data.modified());
    modified.is_ok_and(|time| SystemTime::now().duration_since(time).is_ok_and(|age| age < RUSTUP_REST))
}

fn debian() -> Result<()> {
    let stamp = library(Path::new("/usr")).join("benchbook-built-with");
    let version = || run::answer(Command::new("/usr/bin/rustc").arg("--version")).unwrap_or_default();
    let built = !version().is_empty() && fs::read_to_string(&stamp).is_ok_and(|with| with == version());
    if !built || system::on_path(LINKER).is_none() {
        if !system::has_apt() {
            bail!(
                "the {TRIPLE} target is missing and rustup could not fetch it: go online and run `rustup target add {TRIPLE}`"
            );
        }
        run::say(&format!("rustup can't fetch {TRIPLE} here: using Debian's compiler instead"));
        install_packages()?;
        build_std(&library(Path::new("/usr")))?;
        fs::write(&stamp, version()).context("can't note which compiler built the standard library")?;
    }
    link()
}

fn install_packages() -> Result<()> {
    system::refresh()?;
    let version = system::candidate("rustc-web").context("Debian offers no rustc-web package here")?;
    // The three only work together in one exact version.
    let mut packages: Vec<String> =
        ["rustc-web", "cargo-web", "rust-web-src"].iter().map(|name| format!("{name}={version}")).collect();
    packages.push("lld-22".into());
    system::install(&packages)
}

fn build_std(library: &Path) -> Result<()> {
    run::say("Building the standard library for wasm, once (one to three minutes)");
    let folder = places::tools()?.join("wasm-std");
    fs::create_dir_all(&folder)?;
    fs::write(
        folder.join("Cargo.toml"),
        "[package]\nname = \"nothing\"\nedition = \"2024\"\n[lib]\npath = \"lib.rs\"\n[workspace]\n",
    )?;
    fs::write(folder.join("lib.rs"), "")?;
    let mut command = Command::new("/usr/bin/cargo");
    command.args(["build", "--release", "--target", TRIPLE, "-Zbuild-std=std,panic_abort"]);
    command.current_dir(&folder).env("RUSTC", "/usr/bin/rustc").env("RUSTC_BOOTSTRAP", "1");
    // Without bitcode a build with link-time optimisation finds nothing to optimise.
    command.env("RUSTFLAGS", "-Cembed-bitcode=yes").env("CARGO_TARGET_DIR", folder.join("target"));
    command.env_remove("LD_LIBRARY_PATH").env_remove("RUSTUP_TOOLCHAIN");
    run::run(&mut command, "Building the standard library for wasm")?;

    if !Path::new("/usr/lib/rustlib").is_dir() || !system::writable(Path::new("/usr/lib/rustlib")) {
        bail!("the standard library for wasm can only be put in place by root: run this command once as root");
    }
    // Left over from an earlier version, these would be found twice.
    let _ = fs::remove_dir_all(library);
    fs::create_dir_all(library)?;
    for file in fs::read_dir(folder.join("target").join(TRIPLE).join("release/deps"))? {
        let file = file?;
        let name = file.file_name();
        let name_text = name.to_string_lossy();
        if name_text.ends_with(".rlib") && !name_text.starts_with("libnothing") {
            fs::copy(file.path(), library.join(&name))?;
        }
    }
    let _ = fs::remove_dir_all(&folder);
    Ok(())
}

fn link() -> Result<()> {
    let known = run::answer(Command::new("rustup").args(["toolchain", "list"])).unwrap_or_default();
    if known.lines().any(|line| line.split_whitespace().next() == Some(DEBIAN)) {
        return Ok(());
    }
    run::run(Command::new("rustup").args(["toolchain", "link", DEBIAN, "/usr"]), "Telling rustup of Debian's compiler")
}
