//! Stands in for `benchbook_stats::game` until it is there. To be deleted then.

pub mod game {
    //! The replay, accepting everything.

    use benchbook_stats::log::{Entry, EntryId, Event};

    /// A game.
    #[derive(Clone, Debug, Default)]
    pub struct Game {
        log: Vec<Entry>,
    }

    impl Game {
        /// A game without entries.
        pub fn new() -> Self {
            Self::default()
        }

        /// Records an entry.
        pub fn record(&mut self, entry: Entry) -> Result<(), String> {
            self.log.push(entry);
            Ok(())
        }

        /// Every entry.
        pub fn log(&self) -> &[Entry] {
            &self.log
        }

        /// The number the next entry takes.
        pub fn next_id(&self) -> EntryId {
            EntryId(self.log.last().map_or(1, |e| e.id.0 + 1))
        }

        /// The correction that undoes the last entry.
        pub fn undo(&self) -> Option<Event> {
            None
        }

        /// The correction that redoes it.
        pub fn redo(&self) -> Option<Event> {
            None
        }
    }
}
