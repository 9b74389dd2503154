//! Saves what is whole in a damaged file.

use std::fs::OpenOptions;
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use benchbook_stats::file;

use crate::open::{self, Unopened, name};
use crate::report::{note, trouble};

/// Writes the whole entries of `path` into `new`, which must not exist.
pub fn salvage(path: &Path, new: &Path, out: &mut impl Write) -> io::Result<ExitCode> {
    let refused = |what: &str| {
        trouble(what);
        Ok(ExitCode::FAILURE)
    };
    let bytes = match open::bytes(path) {
        Ok(bytes) => bytes,
        Err(error) => return refused(&format!("{}: {error}", name(path))),
    };
    match file::read_bytes(&bytes) {
        Err(error) if !error.can_salvage() => return refused(&open::explain(path, &Unopened::File(error))),
        _ => {}
    }
    let text = String::from_utf8_lossy(&bytes);
    let (saved, lost) = file::salvage(text.strip_prefix('\u{feff}').unwrap_or(&text));
    if saved.log.is_empty() {
        return refused(&format!("{}: no entry in it is whole, so there is nothing to save", name(path)));
    }
    let written = file::write(&saved);
    if new == Path::new("-") {
        out.write_all(written.as_bytes())?;
    } else {
        // A file made anew, never one written over: the command mustn't cost anyone the only copy of a game.
        let made = OpenOptions::new().write(true).create_new(true).open(new);
        if let Err(error) = made.and_then(|mut made| made.write_all(written.as_bytes())) {
            return refused(&format!("{}: can't make it: {error}", name(new)));
        }
    }
    if matches!(text, std::borrow::Cow::Owned(_)) {
        note("bytes that are no text were replaced by \u{fffd}; look through the names");
    }
    let entries = saved.log.len();
    note(&match lost {
        0 => format!("saved all {entries} entries"),
        1 => format!("saved {entries} entries; 1 place could not be read"),
        _ => format!("saved {entries} entries; {lost} places could not be read"),
    });
    Ok(ExitCode::SUCCESS)
}
