//! The open game and the way of a tap through it.

use benchbook_stats::log::{Entry, EntryId, Event};
use leptos::prelude::*;

use crate::interim::game::Game;
use crate::keep::GameId;

/// The open game, provided by context to the places of a game. Nothing else holds game state: a view reads derived
/// values in memos with `game.with(|g| ...)`.
#[derive(Clone, Copy)]
pub struct Scoring {
    /// The game's name.
    pub id: StoredValue<GameId>,
    /// The game.
    pub game: RwSignal<Game>,
    /// The last entry the strict journal confirmed.
    pub kept: RwSignal<Option<EntryId>>,
    /// The last refusal, in words; cleared by the next accepted tap.
    pub refusal: RwSignal<Option<String>>,
    /// This tab holds the pen: it writes, any other tab on the same game follows.
    pub writes: RwSignal<bool>,
}

impl Scoring {
    /// The open game, for a view inside a place of a game.
    ///
    /// # Panics
    /// Outside the places of a game: a mistake of the programmer, seen at the first mount.
    pub fn get() -> Self {
        expect_context()
    }

    /// A game just opened.
    pub fn new(id: GameId, game: Game) -> Self {
        Self {
            id: StoredValue::new(id),
            game: RwSignal::new(game),
            kept: RwSignal::new(None),
            refusal: RwSignal::new(None),
            writes: RwSignal::new(true),
        }
    }

    /// Records what the scorer saw. False if the game refuses it: then the game is as it was and `refusal` says why.
    pub fn tap(&self, event: Event) -> bool {
        let mut refused = None;
        self.game.maybe_update(|game| {
            let entry = Entry { id: game.next_id(), at: Some(js_sys::Date::now() as u64), event };
            refused = game.record(entry).err().map(|refusal| refusal.to_string());
            refused.is_none()
        });
        let accepted = refused.is_none();
        self.refusal.set(refused);
        accepted
    }

    /// Takes the last entry back, as a correction that stays in the log. False if there is nothing to take back.
    pub fn undo(&self) -> bool {
        self.game.with_untracked(Game::undo).is_some_and(|event| self.tap(event))
    }

    /// Puts back what the last undo took. False if there is nothing to put back.
    pub fn redo(&self) -> bool {
        self.game.with_untracked(Game::redo).is_some_and(|event| self.tap(event))
    }
}
