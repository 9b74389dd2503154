//! The game file: one game's log as JSON, an entry a line, so that two copies of a game can be compared line by line.
//!
//! ```text
//! {"format":"benchbook.game","version":1,"id":"8f3a","log":[
//! {"id":1,"event":{"team":{"side":"home","name":"Harbor"}}},
//! {"id":2,"event":"play_ball"}
//! ]}
//! ```
//!
//! Any other layout of the same JSON is read too. What [`write`] wrote, [`read`] and [`write`] give back byte for byte.
//!
//! **A new file version** is needed only when an older Benchbook would misread what a newer one writes. Then raise
//! [`VERSION`], keep the old shape of whatever changed as a type private to a module of that version's name, and give
//! the old number an arm of its own in the `match` of [`read`] that reads the old shape and turns it into the new one.
//! The file of every version ever released stays in the tests.

use serde::Deserialize;

use crate::log::Entry;

mod draft;
mod error;
mod walk;

pub use error::FileError;

/// What every game file says it is, in its field `format`.
pub const FORMAT: &str = "benchbook.game";

/// The file version written, and the newest read.
pub const VERSION: u64 = 1;

/// The largest file read, in bytes: a long game is about a hundred kilobytes.
pub const MAX_BYTES: usize = 64 << 20;

/// One game as it is kept and carried.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct GameFile {
    /// The game's own name among all games, given once and never changed: two files with the same `id` are copies of
    /// one game. Empty when a damaged file no longer says it.
    pub id: String,
    /// The log, ids rising.
    pub log: Vec<Entry>,
}

/// Reads the text of a game file.
///
/// # Errors
/// Says what is wrong, and where. Nothing is read in part: see [`salvage`] for what can still be had.
///
/// ```
/// use benchbook_stats::file::{FileError, GameFile, read, write};
/// let text = write(&GameFile { id: "8f3a".into(), log: Vec::new() });
/// assert_eq!(read(&text).map(|file| file.id), Ok("8f3a".into()));
/// assert_eq!(read("Dear diary"), Err(FileError::NotJson { line: 1, column: 1, what: "expected value".into() }));
/// ```
pub fn read(text: &str) -> Result<GameFile, FileError> {
    if text.len() > MAX_BYTES {
        return Err(FileError::TooLarge { bytes: text.len() as u64 });
    }
    if text.trim().is_empty() {
        return Err(FileError::Empty);
    }
    let file = draft::Draft::read(text)?;
    if let Some(number) = out_of_order(&file.log) {
        let line = entry_line(text, number + 1).unwrap_or(1);
        let (after, id) = (file.log[number - 1].id.0, file.log[number].id.0);
        return Err(FileError::Order { number: number + 1, line, id, after });
    }
    Ok(file)
}

/// Reads the bytes of a game file: [`read`] for what comes from a disk, with or without a byte order mark.
///
/// # Errors
/// As [`read`], and for what isn't UTF-8 text.
pub fn read_bytes(bytes: &[u8]) -> Result<GameFile, FileError> {
    if bytes.len() > MAX_BYTES {
        return Err(FileError::TooLarge { bytes: bytes.len() as u64 });
    }
    if bytes.starts_with(b"\xff\xfe") || bytes.starts_with(b"\xfe\xff") {
        return Err(FileError::Utf16);
    }
    let bytes = bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes);
    match core::str::from_utf8(bytes) {
        Ok(text) => read(text),
        Err(error) => {
            let whole = bytes.get(..error.valid_up_to()).and_then(|b| core::str::from_utf8(b).ok()).unwrap_or_default();
            // A file that breaks off may do so within a character; that it breaks off is then the better news.
            match read(whole) {
                Err(broken_off @ FileError::Truncated { .. }) if error.error_len().is_none() => Err(broken_off),
                _ => Err(FileError::NotText { line: line_at(whole, whole.len()) }),
            }
        }
    }
}

/// The text of a game file.
///
/// The log's ids must rise, else [`read`] will refuse it.
pub fn write(file: &GameFile) -> String {
    let id = serde_json::Value::from(file.id.as_str());
    let mut text = format!(r#"{{"format":"{FORMAT}","version":{VERSION},"id":{id},"log":["#);
    text.reserve(file.log.len() * 128);
    for (i, entry) in file.log.iter().enumerate() {
        text.push_str(if i == 0 { "\n" } else { ",\n" });
        // No entry is known that can't be written. Should there be one, the file breaks off here and every reader
        // says so, which is better than a panic in a game and better than a file that hides the loss.
        let Ok(line) = serde_json::to_string(entry) else { return text };
        text.push_str(&line);
    }
    text.push_str("\n]}\n");
    text
}

/// What can be had from a damaged file: every entry that is whole and in order, and how many places were lost (each an
/// entry, or a stretch of text that is none). To be shown to the scorer before it is used, and the damaged file kept.
///
/// Not for a file of another format or a newer version: see [`FileError::can_salvage`].
pub fn salvage(text: &str) -> (GameFile, usize) {
    let mut file = GameFile { id: draft::Head::of(text).id.unwrap_or_default(), log: Vec::new() };
    let mut lost = 0;
    let mut entries = walk::Walk::new(text).filter_map(|(_, entry)| {
        lost += usize::from(entry.is_none());
        entry
    });
    let mut out_of_order = 0;
    let mut this = entries.next();
    while let Some(entry) = this {
        this = entries.next();
        let before = file.log.last().map(|before| before.id);
        // Where one id jumps ahead of those that follow, it is the one that is wrong.
        let ahead =
            this.as_ref().is_some_and(|next| next.id < entry.id && before.is_none_or(|before| before < next.id));
        if ahead || before.is_some_and(|before| entry.id <= before) {
            out_of_order += 1;
        } else {
            file.log.push(entry);
        }
    }
    (file, lost + out_of_order)
}

/// The line, from 1, on which the log's entry at place `number`, from 1, begins.
pub fn entry_line(text: &str, number: usize) -> Option<usize> {
    let (offset, _) = walk::Walk::new(text).nth(number.checked_sub(1)?)?;
    Some(line_at(text, offset))
}

/// The JSON Schema of the game file (2020-12).
#[cfg(feature = "schema")]
pub fn schema() -> schemars::Schema {
    schemars::schema_for!(GameFile)
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for GameFile {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Benchbook game file".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let log = generator.subschema_for::<Vec<Entry>>();
        schemars::json_schema!({
            "description": "One game: the log of what its scorer saw. Everything else is derived from it.",
            "type": "object",
            "properties": {
                "format": { "const": FORMAT },
                "version": { "const": VERSION },
                "id": {
                    "type": "string",
                    "description": "The game's own name among all games: two files with the same id are copies of one game."
                },
                "log": { "allOf": [log], "description": "The entries; each id is greater than the one before." }
            },
            "required": ["format", "version", "id", "log"],
            "additionalProperties": false
        })
    }
}

/// The index of the first entry whose id isn't greater than the one before it.
fn out_of_order(log: &[Entry]) -> Option<usize> {
    log.windows(2).position(|pair| pair[0].id >= pair[1].id).map(|i| i + 1)
}

/// The number of the line, from 1, in which byte `offset` lies.
fn line_at(text: &str, offset: usize) -> usize {
    text.bytes().take(offset).filter(|&b| b == b'\n').count() + 1
}

/// The fields of the file's outermost object.
#[derive(Clone, Copy, Deserialize)]
#[serde(field_identifier, rename_all = "lowercase")]
enum Key {
    Format,
    Version,
    Id,
    Log,
}
