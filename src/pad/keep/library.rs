//! The library: all games on this device, and what comes and goes as a whole.

use benchbook_stats::file::{self, GameFile};
use benchbook_stats::log::Entry;
use benchbook_stats::order::put_in_order;

use super::aside::{self, Labelled};
use super::health::{self, Health};
use super::load::{load_to_read, load_to_write};
use super::{Call, GameId, NotLoaded, forget, pen, remember, shelf, the_journal};
use crate::clock;

/// A game in the list.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Its name.
    pub id: GameId,
    /// When it was last written, in milliseconds since 1970; 0 if the index doesn't know.
    pub written: u64,
    /// It lies among what was thrown away.
    pub thrown_away: bool,
    /// Its log.
    pub log: Vec<Entry>,
}

/// Why a game was not placed on this device.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotPlaced {
    /// Another tab is writing it.
    OtherTabWrites,
    /// Neither the journal nor the shelf took it. It is in this page's memory.
    NoRoom,
}

/// Every game that can be read, the one written last first. What can't be read is set aside on the way.
pub async fn list() -> Vec<Listed> {
    let journal = the_journal().await.ok();
    let journal_lengths = match &journal {
        Some(journal) => journal.games().await.unwrap_or_default(),
        None => Vec::new(),
    };
    let mut ids = shelf::games();
    ids.extend(journal_lengths.iter().map(|(id, _)| id.clone()));
    ids.extend(super::MEMORY.with_borrow(|memory| memory.keys().cloned().collect::<Vec<_>>()));
    ids.sort();
    ids.dedup();

    let index = shelf::index();
    let mut listed = Vec::with_capacity(ids.len());
    for id in ids {
        let in_journal = journal_lengths.iter().find(|(other, _)| *other == id).map_or(0, |(_, length)| *length);
        let Some(log) = quick_or_thorough(&id, in_journal).await else { continue };
        let indexed = index.get(id.as_str()).cloned().unwrap_or_default();
        let written = if indexed.written > 0 { indexed.written } else { last_tap(&log) };
        listed.push(Listed { id, written, thrown_away: indexed.thrown_away, log });
    }
    put_in_order(&mut listed, |a, b| (b.written, &a.id) < (a.written, &b.id));
    listed
}

/// The working state if it holds at least as much as the journal and this page; else whatever all copies give.
async fn quick_or_thorough(id: &GameId, in_journal: usize) -> Option<Vec<Entry>> {
    let in_memory = super::MEMORY.with_borrow(|memory| memory.get(id).map_or(0, Vec::len));
    if let Some(file) = shelf::game(id).and_then(|text| file::read(&text).ok())
        && file.log.len() >= in_journal.max(in_memory)
    {
        return Some(file.log);
    }
    match load_to_read(id).await {
        Ok(log) => Some(log),
        Err(NotLoaded::NotHere) => None,
        Err(NotLoaded::Unreadable(_)) => {
            // Only the tab that holds the pen sets aside: two would do it twice.
            if let Some(_pen) = pen::take(id).await {
                load_to_write(id).await.ok().map(|loaded| loaded.log)
            } else {
                None
            }
        }
    }
}

fn last_tap(log: &[Entry]) -> u64 {
    log.iter().rev().find_map(|entry| entry.at).unwrap_or_default()
}

/// Places a game under a name nothing has yet.
pub async fn place_new(id: &GameId, log: &[Entry]) -> Result<(), NotPlaced> {
    let file = GameFile { id: id.to_string(), log: log.to_vec() };
    let texts: Vec<String> = log.iter().filter_map(|entry| serde_json::to_string(entry).ok()).collect();
    let in_journal = match the_journal().await {
        Ok(journal) => journal.replace(id, &texts).await.is_ok(),
        Err(_) => false,
    };
    let on_shelf = shelf::put_game(id, &file::write(&file)).is_ok();
    shelf::change_index(|index| {
        index.insert(id.to_string(), shelf::Indexed { written: clock::now(), thrown_away: false });
    });
    if !in_journal || !on_shelf {
        remember(id, file.log);
    }
    if let Some(call) = Call::open() {
        call.written(id);
    }
    if in_journal || on_shelf { Ok(()) } else { Err(NotPlaced::NoRoom) }
}

/// Places a longer log of a game that is here already.
pub async fn place_over(id: &GameId, log: &[Entry]) -> Result<(), NotPlaced> {
    let Some(_pen) = pen::take(id).await else { return Err(NotPlaced::OtherTabWrites) };
    forget(id);
    place_new(id, log).await
}

/// Throws a game away: it leaves the list and can be put back.
pub fn throw_away(id: &GameId) {
    mark(id, true);
}

/// Puts a game that was thrown away back on the list.
pub fn put_back(id: &GameId) {
    mark(id, false);
}

fn mark(id: &GameId, thrown_away: bool) {
    shelf::change_index(|index| index.entry(id.to_string()).or_default().thrown_away = thrown_away);
}

/// Throws a game away for good.
pub async fn remove(id: &GameId) -> Result<(), NotPlaced> {
    let Some(_pen) = pen::take(id).await else { return Err(NotPlaced::OtherTabWrites) };
    if let Ok(journal) = the_journal().await {
        // The journal first: a game it still has would come back at the next start.
        journal.remove(id).await.map_err(|_| NotPlaced::NoRoom)?;
    }
    forget(id);
    shelf::remove_game(id);
    Ok(())
}

/// What was set aside, latest first.
pub async fn asides() -> Vec<Labelled> {
    aside::all(the_journal().await.ok().as_ref()).await
}

/// Throws away something set aside.
pub async fn drop_aside(label: &str) {
    aside::throw_away(the_journal().await.ok().as_ref(), label).await;
}

/// How safe all this is.
pub async fn health() -> Health {
    health::look(the_journal().await.is_ok()).await
}
