//! What can be wrong with a game file, in words for whoever holds it.

use core::fmt;

use super::{FORMAT, MAX_BYTES, VERSION};
use crate::words::{Language, say};

/// Why a file was not read. Lines and columns are counted from 1.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileError {
    /// Nothing in it.
    Empty,
    /// More than [`MAX_BYTES`].
    TooLarge {
        /// Its size, in bytes.
        bytes: u64,
    },
    /// Bytes that are no text.
    NotText {
        /// Where.
        line: usize,
    },
    /// Text in UTF-16, as some editors save it.
    Utf16,
    /// Text that isn't JSON, with nothing of a game file before it.
    NotJson {
        /// Where.
        line: usize,
        /// Where in the line, in bytes.
        column: usize,
        /// What the JSON reader says.
        what: String,
    },
    /// JSON of something else.
    NotBenchbook {
        /// The `format` it names.
        found: Option<String>,
    },
    /// Made by a later program.
    NewerVersion {
        /// Its version.
        found: u64,
    },
    /// It breaks off.
    Truncated {
        /// The last line.
        line: usize,
        /// Entries before the break that are whole.
        whole: usize,
    },
    /// A game file that is no longer JSON.
    Damaged {
        /// Where.
        line: usize,
        /// Where in the line, in bytes.
        column: usize,
        /// What the JSON reader says.
        what: String,
        /// Entries before the place that are whole.
        whole: usize,
    },
    /// Outside the log, something is missing or not as it should be.
    Head {
        /// Where.
        line: usize,
        /// What.
        what: String,
    },
    /// An entry says something that no entry can.
    Entry {
        /// Its place in the log, from 1.
        number: usize,
        /// Where.
        line: usize,
        /// What.
        what: String,
    },
    /// An entry's id isn't greater than the one before.
    Order {
        /// Its place in the log, from 1.
        number: usize,
        /// The line on which it begins.
        line: usize,
        /// Its id.
        id: u32,
        /// The id of the one before.
        after: u32,
    },
}

impl FileError {
    /// [`salvage`](super::salvage) may get the whole entries out of it.
    pub const fn can_salvage(&self) -> bool {
        match self {
            Self::Truncated { .. }
            | Self::Damaged { .. }
            | Self::Head { .. }
            | Self::Entry { .. }
            | Self::Order { .. }
            | Self::NotText { .. } => true,
            Self::Empty
            | Self::TooLarge { .. }
            | Self::Utf16
            | Self::NotJson { .. }
            | Self::NotBenchbook { .. }
            | Self::NewerVersion { .. } => false,
        }
    }

    /// The line at fault, where there is one.
    pub const fn line(&self) -> Option<usize> {
        match *self {
            Self::NotText { line }
            | Self::NotJson { line, .. }
            | Self::Truncated { line, .. }
            | Self::Damaged { line, .. }
            | Self::Head { line, .. }
            | Self::Entry { line, .. }
            | Self::Order { line, .. } => Some(line),
            Self::Empty
            | Self::TooLarge { .. }
            | Self::Utf16
            | Self::NotBenchbook { .. }
            | Self::NewerVersion { .. } => None,
        }
    }
}

impl FileError {
    /// In a language; what the JSON reader says is English in all of them.
    pub fn said(&self, language: Language) -> String {
        let whole_before = |whole: usize| say!(language, "file-whole-before", whole = whole);
        match self {
            Self::Empty => say!(language, "file-empty"),
            Self::TooLarge { bytes } => say!(language, "file-too-large", bytes = *bytes, limit = MAX_BYTES),
            Self::NotText { line } => say!(language, "file-not-text", line = *line),
            Self::Utf16 => say!(language, "file-utf-16"),
            Self::NotJson { line, column, what } => {
                say!(language, "file-not-json", line = *line, column = *column, what = what.as_str())
            }
            Self::NotBenchbook { found: Some(found) } => {
                say!(language, "file-other-format", found = found.escape_debug().to_string(), format = FORMAT)
            }
            Self::NotBenchbook { found: None } => say!(language, "file-no-format", format = FORMAT),
            Self::NewerVersion { found } => say!(language, "file-newer", found = *found, version = VERSION),
            Self::Truncated { line, whole } => {
                say!(language, "file-truncated", line = *line, whole = whole_before(*whole))
            }
            Self::Damaged { line, column, what, whole } => {
                let whole = whole_before(*whole);
                say!(language, "file-damaged", line = *line, column = *column, what = what.as_str(), whole = whole)
            }
            Self::Head { line, what } => say!(language, "file-head", line = *line, what = what.as_str()),
            Self::Entry { number, line, what } => {
                say!(language, "file-entry", line = *line, number = *number, what = what.as_str())
            }
            Self::Order { number, line, id, after } => {
                say!(language, "file-order", line = *line, number = *number, id = *id, after = *after)
            }
        }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

impl core::error::Error for FileError {}
