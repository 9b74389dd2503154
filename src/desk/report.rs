//! What goes wrong, told on standard error.

use std::io::Write;

use anstyle::{AnsiColor, Style};

use crate::text::plain;

/// Good news: green where there is colour.
pub const GOOD: Style = AnsiColor::Green.on_default().bold();
/// Bad news: red where there is colour. The words alone say it as well.
pub const BAD: Style = AnsiColor::Red.on_default().bold();

/// Tells of trouble in a line of its own. It may quote a file, so nothing in it reaches the terminal as a command.
pub fn trouble(what: &str) {
    let what = plain(what);
    // With standard error gone there is nobody left to tell; the exit status still says it.
    drop(writeln!(anstream::stderr(), "{BAD}benchbook:{BAD:#} {what}"));
}

/// Tells of something that is no trouble.
pub fn note(what: &str) {
    let what = plain(what);
    drop(writeln!(anstream::stderr(), "benchbook: {what}"));
}
