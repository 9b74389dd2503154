//! The promise: a play that shows as kept is on the disk. The only room that touches storage.
//!
//! The [`shelf`] holds the working state (gloo-storage), the [`journal`] every entry with strict durability. At start
//! the two are reconciled and the longer log that can be read goes on ([`reconcile`]). One tab holds the [`pen`].

mod aside;
mod call;
mod health;
mod id;
mod journal;
mod keeper;
mod library;
mod load;
mod pen;
mod preferences;
mod reconcile;
mod shelf;
mod working;

pub use aside::Labelled;
pub use call::Call;
pub use health::{Health, ask_to_persist};
pub use id::GameId;
pub use keeper::{Keeper, Marks, Trouble, open};
pub use library::{NotPlaced, asides, drop_aside, health, list, place_new, place_over, put_back, remove, throw_away};
pub use load::{NotLoaded, load_to_read};
pub use preferences::Preferences;
pub use shelf::{put_ticks, ticks};

use std::cell::RefCell;
use std::collections::BTreeMap;

use benchbook_stats::log::Entry;

use journal::{Journal, JournalError};

thread_local! {
    /// The connection, once it is open.
    static JOURNAL: RefCell<Option<Journal>> = const { RefCell::new(None) };
    /// The games opened in this page: what no storage would take is still here when the scorer comes back from the
    /// Clubhouse.
    static MEMORY: RefCell<BTreeMap<GameId, Vec<Entry>>> = const { RefCell::new(BTreeMap::new()) };
}

/// The journal, opened at the first call.
async fn the_journal() -> Result<Journal, JournalError> {
    if let Some(journal) = JOURNAL.with_borrow(Clone::clone) {
        return Ok(journal);
    }
    let journal = Journal::open().await?;
    JOURNAL.with_borrow_mut(|open| *open = Some(journal.clone()));
    Ok(journal)
}

/// The next call opens the journal again: the browser closed this connection.
fn reopen_the_journal() {
    JOURNAL.with_borrow_mut(|open| *open = None);
}

/// What this page remembers of `game`.
fn remembered(game: &GameId) -> Option<Vec<Entry>> {
    MEMORY.with_borrow(|memory| memory.get(game).cloned())
}

/// Remembers `log` as the whole of `game`.
fn remember(game: &GameId, log: Vec<Entry>) {
    MEMORY.with_borrow_mut(|memory| memory.insert(game.clone(), log));
}

/// Remembers one more entry of `game`.
fn remember_entry(game: &GameId, entry: &Entry) {
    MEMORY.with_borrow_mut(|memory| memory.entry(game.clone()).or_default().push(entry.clone()));
}

/// Forgets `game`.
fn forget(game: &GameId) {
    MEMORY.with_borrow_mut(|memory| memory.remove(game));
}
