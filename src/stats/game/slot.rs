//! Where in the game something is said to have happened: instead of an entry, just before one, or now.

use super::{Game, Refusal};
use crate::log::{EntryId, Event};

/// A place in the game.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Slot {
    /// That of an entry, which then says something else.
    Of(EntryId),
    /// Just before an entry.
    Before(EntryId),
    /// After the last entry.
    Now,
}

impl Slot {
    /// The place just after an entry.
    pub fn after(game: &Game, entry: EntryId) -> Self {
        let mut later = game.steps.iter().skip_while(|step| step.entry != entry).skip(1);
        later.next().map_or(Self::Now, |next| Self::Before(next.entry))
    }

    /// What to record so that `event` stands there.
    pub fn says(self, event: Event) -> Event {
        match self {
            Self::Of(entry) => Event::Replace { entry, event: Box::new(event) },
            Self::Before(before) => Event::Insert { before, event: Box::new(event) },
            Self::Now => event,
        }
    }

    /// The entry that will stand there.
    pub fn entry(self, game: &Game) -> EntryId {
        match self {
            Self::Of(entry) => entry,
            Self::Before(_) | Self::Now => game.next_id(),
        }
    }
}

impl Game {
    /// The game as it stood there, to see what could have followed; not to be recorded in.
    pub fn at(&self, slot: Slot) -> Option<Self> {
        match slot {
            Slot::Of(entry) | Slot::Before(entry) => self.before(entry),
            Slot::Now => Some(self.clone()),
        }
    }

    /// Whether an event can follow now; asked of a game as it stood earlier, whether it could have followed then.
    pub fn could_follow(&self, event: &Event) -> bool {
        self.preview(event.clone()).is_ok()
    }

    /// Why `event` itself would not fit there; what it does to later entries is another matter.
    pub fn why_not(&self, slot: Slot, event: &Event) -> Option<Refusal> {
        let entry = slot.entry(self);
        match self.preview(slot.says(event.clone())) {
            Err(refusal) => Some(refusal),
            Ok(after) => after.conflicts().find(|(id, _)| *id == entry).map(|(_, refusal)| refusal),
        }
    }
}
