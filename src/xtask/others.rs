//! Firefox and `WebKit` for `--browsers all`: found, or installed from Debian's packages.

use crate::{browser, run, system};
use anyhow::{Context, Result, bail};
use std::env;
use std::fs;
use std::path::PathBuf;
use std::process::Command;

const FIREFOX: [&str; 2] = ["firefox-esr", "firefox"];
const FIREFOX_FIXED: [&str; 2] =
    ["/Applications/Firefox.app/Contents/MacOS/firefox", "C:\\Program Files\\Mozilla Firefox\\firefox.exe"];
/// `WebKit` is driven on a screen that isn't there.
const WEBKIT: [&str; 2] = ["WebKitWebDriver", "Xvfb"];
/// Where Debian puts the library's own small browser: a folder a processor, then one a version.
const LIBRARIES: &str = "/usr/lib";
const VERSIONS: [&str; 3] = ["webkit2gtk-4.1", "webkitgtk-6.0", "webkit2gtk-4.0"];

/// The programs that drive the other two browsers.
pub struct Others {
    firefox: PathBuf,
    webkit_driver: PathBuf,
    webkit_browser: PathBuf,
    screen: PathBuf,
}

impl Others {
    /// Finds them; where Debian's packages can be had, installs what is missing.
    pub fn ready() -> Result<Self> {
        let missing = Self::missing();
        if !missing.is_empty() {
            if !system::has_apt() {
                bail!(
                    "--browsers all needs {}: WebKit can be driven on Debian and its kin only, Firefox anywhere",
                    missing.join(", ")
                );
            }
            run::say("Firefox and WebKit are some 150 MB, fetched once");
            system::install(&missing.iter().map(|package| (*package).to_owned()).collect::<Vec<_>>())?;
        }
        let there = |program: &str| system::on_path(program).with_context(|| format!("{program} is not on PATH"));
        Ok(Self {
            firefox: firefox().context("no Firefox was found: set BENCHBOOK_FIREFOX to its program")?,
            webkit_driver: there(WEBKIT[0])?,
            webkit_browser: small_browser().context("WebKit's MiniBrowser was not found")?,
            screen: there(WEBKIT[1])?,
        })
    }

    /// Debian's packages of what isn't here.
    fn missing() -> Vec<&'static str> {
        let absent = |program: &str| system::on_path(program).is_none();
        let mut packages = Vec::new();
        if firefox().is_none() {
            packages.push("firefox-esr");
        }
        if absent(WEBKIT[0]) || small_browser().is_none() {
            packages.push("webkit2gtk-driver");
        }
        if absent(WEBKIT[1]) {
            packages.push("xvfb");
        }
        packages
    }

    /// Tells the browser tests of them.
    pub fn tell(&self, tests: &mut Command) {
        tests.env("BENCHBOOK_FIREFOX", &self.firefox);
        tests.env("BENCHBOOK_WEBKIT_DRIVER", &self.webkit_driver);
        tests.env("BENCHBOOK_WEBKIT_BROWSER", &self.webkit_browser);
        tests.env("BENCHBOOK_SCREEN", &self.screen);
    }
}

fn firefox() -> Option<PathBuf> {
    if let Some(file) = env::var_os("BENCHBOOK_FIREFOX") {
        return Some(PathBuf::from(file));
    }
    browser::first_of(&FIREFOX, &FIREFOX_FIXED)
}

fn small_browser() -> Option<PathBuf> {
    let folders = fs::read_dir(LIBRARIES).ok()?.flatten();
    let places = folders.flat_map(|folder| VERSIONS.map(|version| folder.path().join(version).join("MiniBrowser")));
    places.into_iter().find(|file| file.is_file())
}
