//! What can be wrong with a game file, in words for whoever holds it.

use super::{FORMAT, MAX_BYTES, VERSION};

/// Why a file was not read. Lines and columns are counted from 1.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum FileError {
    /// Nothing in it.
    #[error("the file is empty: it may not have been copied to its end; copy it again from where the game was kept")]
    Empty,
    /// More than [`MAX_BYTES`].
    #[error("the file is too large to be a game ({bytes} bytes; the limit is {MAX_BYTES})")]
    TooLarge {
        /// Its size, in bytes.
        bytes: u64,
    },
    /// Bytes that are no text.
    #[error("line {line} holds bytes that are no UTF-8 text: the file was damaged, or is no Benchbook game file")]
    NotText {
        /// Where.
        line: usize,
    },
    /// Text in UTF-16, as some editors save it.
    #[error("the file is saved as UTF-16: an editor may have done that; open it there and save it as UTF-8")]
    Utf16,
    /// Text that isn't JSON, with nothing of a game file before it.
    #[error("this is no Benchbook game file (line {line}, column {column}: {what})")]
    NotJson {
        /// Where.
        line: usize,
        /// Where in the line, in bytes.
        column: usize,
        /// What the JSON reader says.
        what: String,
    },
    /// JSON of something else.
    #[error("this is no Benchbook game file: {}", match found {
        Some(found) => format!("it says it is \"{}\", not \"{FORMAT}\"", found.escape_debug()),
        None => format!("it doesn't say that it is \"{FORMAT}\""),
    })]
    NotBenchbook {
        /// The `format` it names.
        found: Option<String>,
    },
    /// Made by a later program.
    #[error(
        "made by a newer Benchbook (file version {found}, this one reads up to {VERSION}): update, then open it again; \
         the file is unchanged"
    )]
    NewerVersion {
        /// Its version.
        found: u64,
    },
    /// It breaks off.
    #[error("the file breaks off in line {line}: it wasn't saved or copied to its end; {}", whole_before(*whole))]
    Truncated {
        /// The last line.
        line: usize,
        /// Entries before the break that are whole.
        whole: usize,
    },
    /// A game file that is no longer JSON.
    #[error("line {line}, column {column} is damaged ({what}); {}", whole_before(*whole))]
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
    #[error("line {line}: {what}")]
    Head {
        /// Where.
        line: usize,
        /// What.
        what: String,
    },
    /// An entry says something that no entry can.
    #[error("line {line}: entry {number} of the log can't be read: {what}")]
    Entry {
        /// Its place in the log, from 1.
        number: usize,
        /// Where.
        line: usize,
        /// What.
        what: String,
    },
    /// An entry's id isn't greater than the one before.
    #[error(
        "line {line}: entry {number} of the log has the id {id}, but the one before it has {after}: ids must rise, each \
         used once"
    )]
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

fn whole_before(whole: usize) -> String {
    match whole {
        0 => "no entry before that is whole".into(),
        1 => "the 1 entry before that is whole".into(),
        _ => format!("the {whole} entries before that are whole"),
    }
}
