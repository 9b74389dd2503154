//! The service worker's list: every file of the app, each with its hash, and a version that is a hash of the list.

use anyhow::{Context, Result, bail};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};
use std::fmt::Write;
use std::fs;
use std::path::Path;

pub const WORKER: &str = "sw.js";
/// The template is part of the source, so that a built worker can be filled in anew.
const TEMPLATE: &str = include_str!("../../public/sw.js");
const VERSION: &str = "@VERSION@";
const FILES: &str = "/*@FILES@*/";

/// One file to keep on the device.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Kept {
    /// Relative to the app's address; the page itself is `./`.
    pub address: String,
    pub integrity: String,
}

impl Kept {
    fn new(path: &str, content: &[u8]) -> Self {
        // Some hosts answer `index.html` with a redirect, which a worker may not show as a page.
        let address = if path == "index.html" { "./" } else { path };
        let integrity = format!("sha256-{}", STANDARD.encode(Sha256::digest(content)));
        Self { address: address.to_owned(), integrity }
    }
}

/// Writes `sw.js` into the folder of a built app.
pub fn write(folder: &Path) -> Result<()> {
    let list = list(folder)?;
    if !list.iter().any(|kept| kept.address == "./") {
        bail!("{} holds no index.html", folder.display());
    }
    let worker = render(TEMPLATE, &list)?;
    fs::write(folder.join(WORKER), worker).context("can't write the service worker")
}

/// Every file of the app but the worker itself, in a fixed order.
pub fn list(folder: &Path) -> Result<Vec<Kept>> {
    let mut list = Vec::new();
    for path in paths(folder)? {
        list.push(Kept::new(&path, &fs::read(folder.join(&path))?));
    }
    Ok(list)
}

/// The paths of the app's files below a folder, with `/` between, sorted.
pub fn paths(folder: &Path) -> Result<Vec<String>> {
    let mut paths = Vec::new();
    collect(folder, "", &mut paths)?;
    paths.sort();
    Ok(paths)
}

fn collect(folder: &Path, prefix: &str, paths: &mut Vec<String>) -> Result<()> {
    let entries = fs::read_dir(folder).with_context(|| format!("can't read {}", folder.display()))?;
    for entry in entries {
        let entry = entry?;
        let name = entry.file_name().into_string().ok().context("a file of the app has a name that is not Unicode")?;
        if name.starts_with('.') {
            continue;
        }
        let path = format!("{prefix}{name}");
        if entry.file_type()?.is_dir() {
            collect(&entry.path(), &format!("{path}/"), paths)?;
        } else if path != WORKER {
            paths.push(path);
        }
    }
    Ok(())
}

/// A hash of the list: it changes whenever any file does.
pub fn version(list: &[Kept]) -> String {
    let mut hash = Sha256::new();
    for kept in list {
        hash.update(format!("{} {}\n", kept.address, kept.integrity));
    }
    hex(&hash.finalize()[..8])
}

/// Lower-case hexadecimal digits.
pub fn hex(bytes: &[u8]) -> String {
    bytes.iter().fold(String::new(), |mut text, byte| {
        // Writing to a String can't fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

fn render(template: &str, list: &[Kept]) -> Result<String> {
    if template.matches(VERSION).count() != 1 || template.matches(FILES).count() != 1 {
        bail!("public/sw.js must mention {VERSION} and {FILES} once each");
    }
    let mut files = String::new();
    for kept in list {
        let pair = serde_json::to_string(&[&kept.address, &kept.integrity])?;
        let _ = write!(files, "\n  {pair},");
    }
    files.push('\n');
    Ok(template.replace(VERSION, &version(list)).replace(FILES, &files))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn app() -> tempfile::TempDir {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join("icons")).unwrap();
        fs::create_dir(folder.path().join(".stage")).unwrap();
        for (path, content) in [
            ("index.html", "page"),
            ("pad-1.js", "script"),
            ("sw.js", "old worker"),
            ("icons/a \"b\".svg", "icon"),
            (".stage/left-over", "x"),
            (".DS_Store", "x"),
        ] {
            fs::write(folder.path().join(path), content).unwrap();
        }
        folder
    }

    #[test]
    fn the_list_holds_every_file_but_the_worker_and_hidden_ones() {
        let folder = app();
        let addresses: Vec<_> = list(folder.path()).unwrap().into_iter().map(|kept| kept.address).collect();
        assert_eq!(addresses, ["icons/a \"b\".svg", "./", "pad-1.js"]);
    }

    #[test]
    fn integrity_is_the_hash_browsers_compute() {
        // echo -n page | openssl dgst -sha256 -binary | base64
        let kept = Kept::new("x", b"page");
        assert_eq!(kept.integrity, "sha256-NmAxWprz3yVdjxmrB35Hl4IrQUiKDioEvGr3EhPCMnQ=");
    }

    #[test]
    fn the_version_follows_content_and_name_only() {
        let folder = app();
        let before = version(&list(folder.path()).unwrap());
        fs::write(folder.path().join("sw.js"), "another worker").unwrap();
        assert_eq!(version(&list(folder.path()).unwrap()), before);
        fs::write(folder.path().join("pad-1.js"), "other").unwrap();
        assert_ne!(version(&list(folder.path()).unwrap()), before);
        assert_eq!(before.len(), 16);
    }

    #[test]
    fn the_worker_is_filled_in_from_the_template() {
        let folder = app();
        write(folder.path()).unwrap();
        let worker = fs::read_to_string(folder.path().join("sw.js")).unwrap();
        let list = list(folder.path()).unwrap();
        assert!(worker.contains(&format!("const VERSION = '{}';", version(&list))));
        assert!(worker.contains("[\"./\",\"sha256-"));
        assert!(worker.contains("icons/a \\\"b\\\".svg"));
        assert!(!worker.contains(FILES) && !worker.contains(VERSION));
    }

    #[test]
    fn a_folder_without_a_page_is_refused() {
        let folder = tempfile::tempdir().unwrap();
        let refusal = write(folder.path()).unwrap_err();
        assert!(refusal.to_string().contains("index.html"));
    }

    #[test]
    fn a_template_without_its_marks_is_refused() {
        assert!(render("const VERSION = 1;", &[]).is_err());
    }
}
