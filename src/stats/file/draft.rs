//! One pass over a file's text that keeps what it has read, so that an error can say what was whole before it.

use core::fmt;

use serde::de::{DeserializeSeed, Deserializer, Error as _, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde_json::error::Category;

use super::{FORMAT, FileError, GameFile, Key, VERSION};
use crate::log::Entry;

/// A file as far as it has been read.
#[derive(Default)]
pub(super) struct Draft {
    format: Option<String>,
    version: Option<u64>,
    id: Option<String>,
    log: Option<Vec<Entry>>,
    /// Entries of a log that hasn't been read to its end.
    pending: Option<Vec<Entry>>,
}

impl Draft {
    /// The file, but for the order of its entries.
    pub(super) fn read(text: &str) -> Result<GameFile, FileError> {
        let mut draft = Self::default();
        let mut json = serde_json::Deserializer::from_str(text);
        match draft.deserialize(&mut json).and_then(|()| json.end()) {
            Ok(()) => draft.finish(),
            Err(error) => Err(draft.explain(&error, text)),
        }
    }

    fn finish(self) -> Result<GameFile, FileError> {
        let missing = |field| FileError::Head { line: 1, what: format!("the field \"{field}\" is missing") };
        if self.format.as_deref() != Some(FORMAT) {
            return Err(FileError::NotBenchbook { found: self.format });
        }
        match self.version.ok_or_else(|| missing("version"))? {
            VERSION => {
                Ok(GameFile { id: self.id.ok_or_else(|| missing("id"))?, log: self.log.ok_or_else(|| missing("log"))? })
            }
            found @ (VERSION..) => Err(FileError::NewerVersion { found }),
            found => Err(FileError::Head { line: 1, what: format!("there has never been a file version {found}") }),
        }
    }

    fn explain(self, error: &serde_json::Error, text: &str) -> FileError {
        let head = Head::of(text);
        let what = reason(error);
        let (line, column) = match (error.line(), error.column()) {
            // Column 0 is the newline itself, at which a string that wasn't closed is noticed: it ends the line before.
            (line @ 2.., 0) => (line - 1, text.lines().nth(line - 2).map_or(0, str::len) + 1),
            place => place,
        };
        let whole = self.pending.as_ref().or(self.log.as_ref()).map_or(0, Vec::len);
        match (head.format, head.version) {
            (Some(format), _) if format != FORMAT => return FileError::NotBenchbook { found: Some(format) },
            (Some(_), Some(found)) if found > VERSION => return FileError::NewerVersion { found },
            (None, _) if error.classify() == Category::Syntax => return FileError::NotJson { line, column, what },
            (None, _) if error.classify() == Category::Data => return FileError::NotBenchbook { found: None },
            _ => {}
        }
        match error.classify() {
            Category::Eof => FileError::Truncated { line, whole },
            Category::Data if self.pending.is_some() => FileError::Entry { number: whole + 1, line, what },
            Category::Data => FileError::Head { line, what },
            Category::Syntax | Category::Io => FileError::Damaged { line, column, what, whole },
        }
    }
}

impl<'de> DeserializeSeed<'de> for &mut Draft {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_map(self)
    }
}

impl<'de> Visitor<'de> for &mut Draft {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a game")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        while let Some(key) = map.next_key()? {
            match key {
                Key::Format if self.format.is_none() => self.format = Some(map.next_value()?),
                Key::Version if self.version.is_none() => self.version = Some(map.next_value()?),
                Key::Id if self.id.is_none() => self.id = Some(map.next_value()?),
                Key::Log if self.log.is_none() => {
                    if self.version.is_some_and(|version| version > VERSION) {
                        return Err(A::Error::custom("newer"));
                    }
                    map.next_value_seed(Log(&mut self.pending))?;
                    self.log = self.pending.take();
                }
                Key::Format | Key::Version | Key::Id | Key::Log => {
                    return Err(A::Error::custom("a field of the file is given twice"));
                }
            }
        }
        Ok(())
    }
}

/// The list of entries.
struct Log<'a>(&'a mut Option<Vec<Entry>>);

impl<'de> DeserializeSeed<'de> for Log<'_> {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_seq(self)
    }
}

impl<'de> Visitor<'de> for Log<'_> {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a list of entries")
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<(), A::Error> {
        let entries = self.0.insert(Vec::new());
        while let Some(entry) = seq.next_element()? {
            entries.push(entry);
        }
        Ok(())
    }
}

/// What a text says about itself, as far as it can be read and wherever in it that stands.
#[derive(Default)]
pub(super) struct Head {
    pub(super) format: Option<String>,
    pub(super) version: Option<u64>,
    pub(super) id: Option<String>,
}

impl Head {
    pub(super) fn of(text: &str) -> Self {
        let mut head = Self::default();
        // What was read before an error stays in `head`; the error itself is told by the strict pass.
        drop((&mut head).deserialize(&mut serde_json::Deserializer::from_str(text)));
        head
    }
}

impl<'de> DeserializeSeed<'de> for &mut Head {
    type Value = ();

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<(), D::Error> {
        deserializer.deserialize_map(self)
    }
}

impl<'de> Visitor<'de> for &mut Head {
    type Value = ();

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<(), A::Error> {
        while let Some(key) = map.next_key::<String>()? {
            match key.as_str() {
                "format" => self.format = map.next_value::<serde_json::Value>()?.as_str().map(Into::into),
                "version" => self.version = map.next_value::<serde_json::Value>()?.as_u64(),
                "id" => self.id = map.next_value::<serde_json::Value>()?.as_str().map(Into::into),
                _ => drop(map.next_value::<IgnoredAny>()?),
            }
        }
        Ok(())
    }
}

/// The reader's words without the place, which is told apart.
fn reason(error: &serde_json::Error) -> String {
    let said = error.to_string();
    let place = format!(" at line {} column {}", error.line(), error.column());
    said.strip_suffix(&place).map_or_else(|| said.clone(), Into::into)
}
