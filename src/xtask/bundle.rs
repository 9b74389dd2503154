//! Builds the app with Trunk, and finishes the bundle from Trunk's hook.

use crate::wasm_target::Compiler;
use crate::{node, places, precache, run, tools};
use anyhow::{Context, Result, bail};
use sha2::{Digest, Sha256};
use std::env;
use std::fs::{self, File};
use std::path::{Path, PathBuf};
use std::process::Command;

/// Relative addresses: the app runs under any path.
pub const ANY_PATH: &str = "./";

/// What today's browsers can do, and no more, may be used by wasm-opt.
const FEATURES: [&str; 6] = [
    "--enable-bulk-memory",
    "--enable-multivalue",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-reference-types",
    "--enable-sign-ext",
];

/// Everything that builds the app.
pub struct Kit {
    pub compiler: Compiler,
    folders: Vec<PathBuf>,
}

impl Kit {
    /// Finds or installs all of it.
    pub fn ready() -> Result<Self> {
        let compiler = Compiler::ready()?;
        Ok(Self { compiler, folders: vec![tools::trunk()?, tools::wasm_bindgen()?, places::own_folder()] })
    }
}

/// Builds `dist/`.
pub fn build(public_url: &str) -> Result<()> {
    let kit = Kit::ready()?;
    if let Err(reason) = node::packages() {
        run::say(&format!("Going on without wasm-opt, so the app will be larger: {reason:#}"));
    }
    let _alone = alone()?;
    run::say("Building the app");
    let mut command = Command::new("trunk");
    command.args(["--log", "warn", "build", "--release", "--cargo-profile", "pad", "--public-url", public_url]);
    command.current_dir(places::root()).env("PATH", tools::path_with(&kit.folders)?);
    // Trunk reads this as a yes-or-no option and refuses the usual value.
    command.env_remove("NO_COLOR");
    // The compiler's message is above; Trunk's own call stack would hide it.
    command.env("RUST_BACKTRACE", "0");
    run::run(kit.compiler.apply(&mut command), "Building the app")
}

/// Two builds at once would share Trunk's staging folder: the second waits.
fn alone() -> Result<File> {
    fs::create_dir_all(places::root().join("target"))?;
    let lock = File::create(places::root().join("target/xtask.lock"))?;
    lock.lock().context("can't wait for another build to end")?;
    Ok(lock)
}

/// Trunk's hook: shrinks the wasm, then writes the service worker's list.
pub fn post_build() -> Result<()> {
    let staging =
        env::var_os("TRUNK_STAGING_DIR").context("post-build is for Trunk to call: run `cargo xtask build`")?;
    let staging = Path::new(&staging);
    if env::var("TRUNK_PROFILE").is_ok_and(|profile| profile == "release") {
        for file in fs::read_dir(staging)?.flatten() {
            if file.path().extension().is_some_and(|extension| extension == "wasm") {
                shrink(&file.path())?;
            }
        }
    }
    precache::write(staging)
}

fn shrink(wasm: &Path) -> Result<()> {
    let program = node::program("binaryen/bin/wasm-opt");
    if !program.is_file() {
        run::say("wasm-opt is not installed: the app works, but is larger than it could be");
        return Ok(());
    }
    let before = fs::read(wasm)?;
    let kept = shrunk_earlier(&before)?;
    if !kept.is_file() {
        run::say("Shrinking the wasm");
        let unfinished = kept.with_extension("part");
        let mut command = Command::new("node");
        command.arg(program).arg("-Oz").args(FEATURES).arg(wasm).arg("-o").arg(&unfinished);
        run::run(&mut command, "Shrinking the wasm with wasm-opt")?;
        fs::rename(unfinished, &kept)?;
    }
    let after = fs::copy(&kept, wasm)?;
    run::say(&format!("wasm: {} KB before wasm-opt, {} KB after", before.len() / 1000, after / 1000));
    if after == 0 {
        bail!("wasm-opt left an empty file");
    }
    Ok(())
}

/// Where the result for exactly this input is kept: wasm-opt takes longer than the rest of an unchanged build.
fn shrunk_earlier(wasm: &[u8]) -> Result<PathBuf> {
    let folder = places::root().join("target/wasm-opt");
    fs::create_dir_all(&folder)?;
    let pinned = fs::read(places::e2e().join("package.json"))?;
    let name = Sha256::new().chain_update(wasm).chain_update(pinned).chain_update(FEATURES.concat()).finalize();
    Ok(folder.join(format!("{}.wasm", precache::hex(&name[..16]))))
}
