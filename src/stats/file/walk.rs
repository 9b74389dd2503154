//! A walk over a log's text from entry to entry that goes on after one it can't read.

use crate::log::Entry;

/// Each entry's offset in bytes and what it says, `None` where it can't be read. Takes time in proportion to the text.
pub(super) struct Walk<'a> {
    text: &'a str,
    at: usize,
    /// The last answer of [`entry_start`]: asked anew for each of a million braces it would cost a minute.
    next_entry: usize,
}

impl<'a> Walk<'a> {
    pub(super) fn new(text: &'a str) -> Self {
        let at = log_start(text).or_else(|| entry_start(text.as_bytes(), 0)).unwrap_or(text.len());
        Self { text, at, next_entry: at }
    }

    fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or_default()
    }

    /// The end of what begins at `at` and can't be read: of the object that opens there, or the start of the next
    /// entry if that comes before.
    fn after_unreadable(&mut self) -> usize {
        let bytes = self.text.as_bytes();
        if self.next_entry <= self.at {
            self.next_entry = entry_start(bytes, self.at + 1).unwrap_or(bytes.len());
        }
        let next_entry = self.next_entry;
        if bytes.get(self.at) != Some(&b'{') {
            return next_entry;
        }
        let (mut depth, mut in_string, mut escaped) = (0_usize, false, false);
        for (i, &byte) in bytes.iter().enumerate().take(next_entry).skip(self.at) {
            match byte {
                _ if escaped => escaped = false,
                b'\\' if in_string => escaped = true,
                b'"' => in_string = !in_string,
                b'\n' => in_string = false, // no JSON string goes on over a line's end
                b'{' | b'[' if !in_string => depth += 1,
                b'}' | b']' if !in_string => {
                    depth -= 1;
                    if depth == 0 {
                        return i + 1;
                    }
                }
                _ => {}
            }
        }
        next_entry
    }
}

impl Iterator for Walk<'_> {
    type Item = (usize, Option<Entry>);

    fn next(&mut self) -> Option<Self::Item> {
        let rest = self.rest();
        let rest = rest.trim_start_matches(|c: char| c.is_ascii_whitespace() || c == ',');
        self.at = self.text.len() - rest.len();
        // A closing bracket ends the log only where no object follows: one typed by accident mustn't hide the rest.
        if rest.is_empty() || rest.strip_prefix(']').is_some_and(|after| !after.contains('{')) {
            return None;
        }
        let start = self.at;
        let mut stream = serde_json::Deserializer::from_str(rest).into_iter::<Entry>();
        let entry = if rest.starts_with('{') { stream.next().and_then(Result::ok) } else { None };
        self.at = if entry.is_some() { start + stream.byte_offset() } else { self.after_unreadable() };
        Some((start, entry))
    }
}

/// Just after the bracket that opens the log. Within a JSON string the quotes of `"log"` would be escaped, so the first
/// one found is the key.
fn log_start(text: &str) -> Option<usize> {
    let key = text.find("\"log\"")? + "\"log\"".len();
    let rest = text.get(key..)?.trim_start().strip_prefix(':')?.trim_start().strip_prefix('[')?;
    Some(text.len() - rest.len())
}

/// The first place from `from` on where an entry may begin: an object whose first field is one of an entry's. A player's
/// particulars begin with `id` as well, but these are some field's value and so follow a colon.
fn entry_start(bytes: &[u8], from: usize) -> Option<usize> {
    let opens = |&i: &usize| {
        let after = bytes.get(i + 1..).unwrap_or_default().trim_ascii_start();
        let before = bytes.get(..i).unwrap_or_default().trim_ascii_end();
        let key = [&b"\"id\""[..], b"\"at\"", b"\"event\""].iter().find_map(|key| after.strip_prefix(*key));
        key.is_some_and(|rest| rest.trim_ascii_start().starts_with(b":")) && !before.ends_with(b":")
    };
    (from..bytes.len()).filter(|&i| bytes.get(i) == Some(&b'{')).find(opens)
}
