//! What the Clubhouse knows, and what can be done in it.

use std::sync::Arc;
use std::time::Duration;

use benchbook_stats::game::Game;
use benchbook_stats::log::Entry;
use leptos::prelude::*;
use leptos::task::spawn_local;

use super::board::Board;
use crate::club::Club;
use crate::keep::{self, Call, GameId, Health, Labelled, NotPlaced};
use crate::words::say;

/// A game in the list.
#[derive(Clone, PartialEq)]
pub struct Row {
    /// Its name.
    pub id: GameId,
    /// It was thrown away and can be put back.
    pub thrown_away: bool,
    /// What its board shows.
    pub board: Board,
    /// Its log, at hand so that a share sheet can be opened within the tap.
    pub log: Arc<[Entry]>,
}

/// What came of the last thing done.
#[derive(Clone, PartialEq)]
pub struct Said {
    /// In words.
    pub words: String,
    /// It was refused.
    pub refusal: bool,
    /// The game that can be put back.
    pub undo: Option<GameId>,
}

/// The state of the Clubhouse: what storage held at the last look.
#[derive(Clone, Copy)]
pub struct House {
    /// The games; `None` before the first look.
    pub games: RwSignal<Option<Vec<Row>>>,
    /// What couldn't be read.
    pub asides: RwSignal<Vec<Labelled>>,
    /// How safe it is here.
    pub health: RwSignal<Option<Health>>,
    /// The last message.
    pub said: RwSignal<Option<Said>>,
}

impl House {
    /// Opens the doors: looks now, and again when another tab has written.
    pub fn open() -> Self {
        let house = Self {
            games: RwSignal::new(None),
            asides: RwSignal::new(Vec::new()),
            health: RwSignal::new(None),
            said: RwSignal::new(None),
        };
        house.look();
        let waiting = StoredValue::new(false);
        let call = StoredValue::new_local(Call::listen(move |_| {
            // A game being scored calls at every tap: one look serves many.
            if waiting.try_get_value() == Some(false) {
                waiting.set_value(true);
                let look = move || {
                    if waiting.try_set_value(false).is_none() {
                        house.look();
                    }
                };
                set_timeout(look, Duration::from_millis(700));
            }
        }));
        on_cleanup(move || {
            call.try_set_value(None);
        });
        house
    }

    /// The Clubhouse, for a view in it.
    pub fn get() -> Self {
        expect_context()
    }

    /// The teams the games on the list know; those thrown away don't count.
    pub fn club(self) -> Club {
        let mut club = Club::default();
        self.games.with(|rows| {
            // Written first comes last on the list, and is added first.
            for row in rows.iter().flatten().rev().filter(|row| !row.thrown_away) {
                club.add(&row.log);
            }
        });
        club
    }

    /// Looks at what is stored.
    pub fn look(self) {
        spawn_local(async move {
            let rows = keep::list().await.into_iter().map(|listed| Row {
                id: listed.id,
                thrown_away: listed.thrown_away,
                board: Board::of(&Game::replay(listed.log.iter().cloned())),
                log: listed.log.into(),
            });
            self.games.try_set(Some(rows.collect()));
            self.asides.try_set(keep::asides().await);
            self.health.try_set(Some(keep::health().await));
        });
    }

    /// Says that something was done.
    pub fn say(self, words: impl Into<String>) {
        self.said.try_set(Some(Said { words: words.into(), refusal: false, undo: None }));
    }

    /// Says that something was not done, and why.
    pub fn refuse(self, words: impl Into<String>) {
        self.said.try_set(Some(Said { words: words.into(), refusal: true, undo: None }));
    }

    /// Throws a game away, to be put back as long as it isn't thrown away for good.
    pub fn throw_away(self, row: &Row) {
        keep::throw_away(&row.id);
        let words = say!("clubhouse-was-thrown-away", title = row.board.title());
        self.said.set(Some(Said { words, refusal: false, undo: Some(row.id.clone()) }));
        self.look();
    }

    /// Puts a game back on the list.
    pub fn put_back(self, id: &GameId) {
        keep::put_back(id);
        self.said.set(None);
        self.look();
    }

    /// Throws a game away for good.
    pub fn remove(self, id: GameId) {
        spawn_local(async move {
            match keep::remove(&id).await {
                Ok(()) => self.say(say!("clubhouse-gone")),
                Err(why) => self.refuse(not_placed(why)),
            }
            self.look();
        });
    }
}

/// Why storage did not do it, in words.
pub fn not_placed(why: NotPlaced) -> String {
    match why {
        NotPlaced::OtherTabWrites => say!("clubhouse-other-tab"),
        NotPlaced::NoRoom => say!("clubhouse-no-room"),
    }
}
