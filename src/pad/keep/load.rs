//! Reading one game from all places that hold it.

use benchbook_stats::log::Entry;

use super::journal::Journal;
use super::reconcile::{Source, Stored, reconcile};
use super::{GameId, aside, remembered, reopen_the_journal, shelf, the_journal};
use crate::words::say;

/// A game as read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Loaded {
    /// The log to go on with.
    pub log: Vec<Entry>,
    /// How the journal stands to it.
    pub journal: JournalState,
    /// The working state says less, or something else.
    pub shelf_is_stale: bool,
    /// Something would have to be set aside, and there is no room for it: nothing stored of this game may be written.
    pub blocked: bool,
}

/// How the journal stands to the log that goes on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum JournalState {
    /// It holds this many entries, from the first on: the rest can be appended.
    Holds(usize),
    /// It says something else: it has to be written anew.
    Differs,
}

/// Why a game was not read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotLoaded {
    /// No storage of this device has it.
    NotHere,
    /// What is stored of it can't be read; it is set aside, or stays as it is. In words, why.
    Unreadable(String),
}

/// Reads a game and changes nothing: for the list, and to compare with a file.
pub async fn load_to_read(game: &GameId) -> Result<Vec<Entry>, NotLoaded> {
    choose(copies(game, the_journal().await.ok().as_ref()).await)
}

/// Reads a game as another tab has written it, and changes nothing.
pub async fn load_to_follow(game: &GameId) -> Result<Vec<Entry>, NotLoaded> {
    let mut copies = copies(game, the_journal().await.ok().as_ref()).await;
    copies.retain(|copy| copy.source != Source::Memory);
    choose(copies)
}

fn choose(copies: Vec<Stored>) -> Result<Vec<Entry>, NotLoaded> {
    let verdict = reconcile(&copies);
    match verdict.winner {
        Some(place) => Ok(copies.into_iter().nth(place).map(|copy| copy.log).unwrap_or_default()),
        None => Err(not_loaded(&copies)),
    }
}

/// Reads a game for the tab that holds the pen: what the winning copy doesn't hold is set aside first.
pub async fn load_to_write(game: &GameId) -> Result<Loaded, NotLoaded> {
    let journal = the_journal().await.ok();
    let copies = copies(game, journal.as_ref()).await;
    let verdict = reconcile(&copies);
    let mut blocked = false;
    for &place in &verdict.aside {
        let copy = &copies[place];
        let why = match &copy.damage {
            Some(damage) => say!("keep-copy-unread", copy = copy.source.to_string(), why = damage.as_str()),
            None => say!("keep-copy-parts-ways", copy = copy.source.to_string(), entries = copy.log.len()),
        };
        blocked |= aside::set_aside(journal.as_ref(), game, why, copy.text(game.as_str())).await.is_err();
    }
    let Some(winner) = verdict.winner else {
        if !blocked && !copies.is_empty() {
            clear(game, journal.as_ref()).await;
        }
        return Err(not_loaded(&copies));
    };
    let log = copies[winner].log.clone();
    let state = match copies.iter().position(|copy| copy.source == Source::Journal) {
        Some(place) if verdict.aside.contains(&place) => JournalState::Differs,
        Some(place) => JournalState::Holds(copies[place].log.len()),
        None => JournalState::Holds(0),
    };
    let shelf_is_stale = copies
        .iter()
        .position(|copy| copy.source == Source::Working)
        .is_none_or(|place| verdict.stale.contains(&place));
    Ok(Loaded { log, journal: state, shelf_is_stale, blocked })
}

/// The copies of `game` there are, the journal's first: among equals it goes on.
async fn copies(game: &GameId, journal: Option<&Journal>) -> Vec<Stored> {
    let mut copies = Vec::with_capacity(3);
    if let Some(journal) = journal {
        let mut records = journal.read(game, 0).await;
        if records.is_err() {
            // The browser may have closed the connection while the page slept.
            reopen_the_journal();
            if let Ok(journal) = the_journal().await {
                records = journal.read(game, 0).await;
            }
        }
        let records = records.unwrap_or_default();
        if !records.is_empty() {
            copies.push(Stored::journal(&records));
        }
    }
    copies.extend(shelf::game(game).map(|text| Stored::working(&text).0));
    copies.extend(remembered(game).map(|log| Stored::sound(Source::Memory, log)));
    copies
}

/// Makes room after everything of `game` was set aside.
async fn clear(game: &GameId, journal: Option<&Journal>) {
    shelf::remove_game(game);
    if let Some(journal) = journal {
        // What stays is set aside once more at the next look: a copy too many, none too few.
        let _ = journal.remove(game).await;
    }
}

fn not_loaded(copies: &[Stored]) -> NotLoaded {
    let damages: Vec<&str> = copies.iter().filter_map(|copy| copy.damage.as_deref()).collect();
    if copies.is_empty() { NotLoaded::NotHere } else { NotLoaded::Unreadable(damages.join("; ")) }
}
