//! The working state's text: a game file that grows by one line a tap, so that no tap waits for the whole log.

use benchbook_stats::file::{self, GameFile};

const END: &str = "\n]}\n";

/// A game file's text, with its number of entries.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WorkingText {
    text: String,
    entries: usize,
}

impl WorkingText {
    /// The text of `file`.
    pub fn of(file: &GameFile) -> Self {
        Self { text: file::write(file), entries: file.log.len() }
    }

    /// Adds an entry, given as JSON.
    pub fn push(&mut self, entry: &str) {
        self.text.truncate(self.text.len().saturating_sub(END.len()));
        self.text.push_str(if self.entries == 0 { "\n" } else { ",\n" });
        self.text.push_str(entry);
        self.text.push_str(END);
        self.entries += 1;
    }

    /// The file's text.
    pub fn as_str(&self) -> &str {
        &self.text
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::log::{Entry, EntryId, Event};

    use super::*;

    #[test]
    fn growing_by_an_entry_is_writing_the_whole_file() {
        let mut file = GameFile { id: "g".into(), log: Vec::new() };
        let mut grown = WorkingText::of(&file);
        for (id, text) in (1..).zip(["first", "</script>", "naïve ⚾", "\"quoted\"\n"]) {
            let entry = Entry { id: EntryId(id), at: Some(7), event: Event::Note { text: text.into() } };
            grown.push(&serde_json::to_string(&entry).expect("an entry"));
            file.log.push(entry);
            assert_eq!(grown, WorkingText::of(&file));
        }
        assert_eq!(file::read(grown.as_str()), Ok(file));
    }
}
