//! The open game and the way of a tap through it.

use benchbook_stats::game::Game;
use benchbook_stats::log::{Entry, EntryId, Event};
use leptos::prelude::*;

use crate::clock;
use crate::keep::{self, GameId, Keeper, Marks, NotLoaded, Trouble};
use crate::words::{language, say};

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
    /// What is wrong with storage at the moment. Play goes on.
    pub trouble: RwSignal<Trouble>,
    keeper: StoredValue<Option<Keeper>, LocalStorage>,
}

impl Scoring {
    /// The open game, for a view inside a place of a game.
    ///
    /// # Panics
    /// Outside the places of a game: a mistake of the programmer, seen at the first mount.
    pub fn get() -> Self {
        expect_context()
    }

    /// The game `id`, not read yet.
    pub fn closed(id: GameId) -> Self {
        Self {
            id: StoredValue::new(id),
            game: RwSignal::new(Game::new()),
            kept: RwSignal::new(None),
            refusal: RwSignal::new(None),
            writes: RwSignal::new(false),
            trouble: RwSignal::new(Trouble::default()),
            keeper: StoredValue::new_local(None),
        }
    }

    /// Reads the game from storage, and takes the pen if no other tab holds it.
    ///
    /// # Errors
    /// The game isn't here, or can't be read.
    pub async fn open(self) -> Result<(), NotLoaded> {
        let Some(id) = self.id.try_get_value() else { return Ok(()) };
        let marks = Marks { kept: self.kept, writes: self.writes, trouble: self.trouble };
        let game = self.game;
        let renewed = move |log| {
            game.try_set(Game::replay(log));
        };
        let (keeper, log) = keep::open(id, marks, renewed).await?;
        renewed(log);
        // The scorer may have left meanwhile: then the keeper is dropped here and puts the pen down.
        self.keeper.try_set_value(Some(keeper));
        Ok(())
    }

    /// Records what the scorer saw. False if the game refuses it: then the game is as it was and `refusal` says why.
    pub fn tap(&self, event: Event) -> bool {
        if !self.writes.get_untracked() {
            self.refuse(Some(say!("frame-only-follows")));
            return false;
        }
        let mut refused = None;
        self.game.maybe_update(|game| {
            let entry = Entry { id: game.next_id(), at: Some(clock::now()), event };
            refused = game.record(entry).err().map(|refusal| refusal.said(language()));
            refused.is_none()
        });
        let accepted = refused.is_none();
        if accepted {
            self.keep_last();
        }
        self.refuse(refused);
        accepted
    }

    /// A refusal no longer stands in the way.
    pub fn forgive(&self) {
        self.refuse(None);
    }

    /// Wakes nobody who shows the same already.
    fn refuse(&self, why: Option<String>) {
        if self.refusal.with_untracked(|now| *now != why) {
            self.refusal.set(why);
        }
    }

    fn keep_last(&self) {
        self.keeper.with_value(|keeper| {
            self.game.with_untracked(|game| {
                if let (Some(keeper), Some((last, before))) = (keeper, game.log().split_last()) {
                    keeper.keep(before.len(), last);
                }
            });
        });
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
