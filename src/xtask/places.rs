//! Where things are: the work tree, the built app and the one folder of tools.

use anyhow::{Context, Result};
use std::env;
use std::fs;
use std::path::{Path, PathBuf};

/// The root of the work tree.
pub fn root() -> &'static Path {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here)
}

/// The built app.
pub fn dist() -> PathBuf {
    root().join("dist")
}

/// The browser tests.
pub fn e2e() -> PathBuf {
    root().join("e2e")
}

/// What the browser tests leave behind: reports, traces, pictures.
pub fn e2e_out() -> PathBuf {
    e2e().join(".out")
}

/// The one folder that holds every tool installed by this program.
pub fn tools() -> Result<PathBuf> {
    let folder = match env::var_os("BENCHBOOK_TOOLS") {
        Some(folder) => PathBuf::from(folder),
        None => cache_folder()
            .context("this system names no cache folder: set BENCHBOOK_TOOLS to a folder for the tools")?
            .join("benchbook")
            .join("tools"),
    };
    fs::create_dir_all(&folder).with_context(|| format!("can't create the tools folder {}", folder.display()))?;
    Ok(folder)
}

fn cache_folder() -> Option<PathBuf> {
    if cfg!(windows) {
        return env::var_os("LOCALAPPDATA").map(PathBuf::from);
    }
    if let Some(folder) = env::var_os("XDG_CACHE_HOME").filter(|folder| !folder.is_empty()) {
        return Some(PathBuf::from(folder));
    }
    let home = PathBuf::from(env::var_os("HOME")?);
    Some(if cfg!(target_os = "macos") { home.join("Library/Caches") } else { home.join(".cache") })
}

/// The folder with a copy of this program, under a name that Trunk's hook finds on PATH.
pub fn own_folder() -> PathBuf {
    root().join("target").join("benchbook-hook")
}

/// The copy of this program that other programs may call, fresh from [`keep_own_copy`].
pub fn own_copy() -> PathBuf {
    own_folder().join(format!("benchbook-hook{}", env::consts::EXE_SUFFIX))
}

/// Copies this program aside. To be done at the start: cargo may replace the original while it runs, and a nested
/// cargo would wait for every other build in the work tree.
pub fn keep_own_copy() -> Result<()> {
    let program = env::current_exe().context("this program can't find its own file")?;
    if program == own_copy() {
        return Ok(());
    }
    fs::create_dir_all(own_folder())?;
    let unfinished = own_folder().join(format!("part-{}", std::process::id()));
    fs::copy(&program, &unfinished).context("can't copy this program aside")?;
    if fs::rename(&unfinished, own_copy()).is_err() {
        // Where a running program can't be replaced, the copy in use stays.
        let _ = fs::remove_file(&unfinished);
    }
    Ok(())
}

/// The version Cargo.lock holds of a crate.
pub fn locked_version(krate: &str) -> Result<String> {
    let path = root().join("Cargo.lock");
    let lock = fs::read_to_string(&path).with_context(|| format!("can't read {}", path.display()))?;
    version_in(&lock, krate).with_context(|| format!("Cargo.lock does not mention {krate}"))
}

fn version_in(lock: &str, krate: &str) -> Option<String> {
    let name = format!("name = \"{krate}\"");
    let mut lines = lock.lines().skip_while(|line| line.trim() != name);
    let version = lines.nth(1)?.trim();
    Some(version.strip_prefix("version = \"")?.strip_suffix('"')?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    const LOCK: &str = "[[package]]\nname = \"wasm-bindgen-shared\"\nversion = \"9.9.9\"\n\n\
                        [[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\nsource = \"r\"\n";

    #[test]
    fn finds_the_exact_crate_in_the_lock() {
        assert_eq!(version_in(LOCK, "wasm-bindgen").as_deref(), Some("0.2.130"));
        assert_eq!(version_in(LOCK, "wasm"), None);
    }

    #[test]
    fn root_holds_the_workspace() {
        assert!(root().join("Cargo.toml").is_file());
        assert!(root().join("src/xtask/main.rs").is_file());
    }
}
