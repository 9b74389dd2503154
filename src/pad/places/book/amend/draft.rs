//! What would be said in a place of the game, while it is being changed by hand.

use benchbook_stats::field::Position;
use benchbook_stats::game::{Game, Situation, Slot};
use benchbook_stats::log::{Action, EntryId, Event, Move, Start};
use benchbook_stats::propose::{edit, possible};
use leptos::prelude::*;

/// What is being amended, and where it stands in the game.
#[derive(Clone, Debug, PartialEq)]
pub struct Amending {
    /// The line of the play-by-play it was begun at.
    pub line: EntryId,
    /// Where.
    pub slot: Slot,
    /// What would be said there; nothing while that is still to be chosen.
    pub says: Option<Event>,
}

impl Amending {
    /// An entry amended within its kind.
    pub fn entry(game: &Game, entry: EntryId) -> Self {
        Self { line: entry, slot: Slot::Of(entry), says: event_of(game, entry) }
    }

    /// Something is to be chosen for a place.
    pub const fn choosing(line: EntryId, slot: Slot) -> Self {
        Self { line, slot, says: None }
    }
}

/// A play as it is being amended.
#[derive(Clone, Copy)]
pub struct Draft {
    /// The line it is about.
    pub line: EntryId,
    /// Where it stands.
    pub slot: Slot,
    /// The game just before it.
    before: StoredValue<Game>,
    /// What stands there now, if anything does.
    was: StoredValue<Option<Event>>,
    /// What an amendment begins with.
    begun: StoredValue<Event>,
    /// What it would say.
    pub event: RwSignal<Event>,
}

impl Draft {
    /// Begins one; runners who are not there are left out.
    pub fn of(game: &Game, Amending { line, slot, says }: Amending) -> Option<Self> {
        let before = game.at(slot)?;
        let mut begun = says?;
        if let Some(action) = begun.action_mut() {
            edit::leave_out_missing(action, before.situation());
        }
        Some(Self {
            line,
            slot,
            before: StoredValue::new(before),
            was: StoredValue::new(said_at(game, slot)),
            begun: StoredValue::new(begun.clone()),
            event: RwSignal::new(begun),
        })
    }

    /// Reads the game as it was just before the play.
    pub fn before<T>(self, read: impl FnOnce(&Game) -> T) -> T {
        self.before.with_value(read)
    }

    /// The moment of the play.
    pub fn situation(self) -> Situation {
        self.before(|game| *game.situation())
    }

    /// It says something else than what stands there.
    pub fn is_news(self) -> bool {
        self.event.with(|event| self.was.with_value(|was| was.as_ref() != Some(event)))
    }

    /// It says something else than what it began with.
    pub fn is_changed(self) -> bool {
        self.event.with(|event| self.begun.with_value(|begun| begun != event))
    }

    /// Begins again.
    pub fn start_over(self) {
        self.event.set(self.begun.get_value());
    }

    /// The fielders there are.
    pub fn fielders(self) -> Vec<Position> {
        self.before(|game| {
            let lineup = game.lineup(game.situation().fielding());
            let there: Vec<Position> =
                lineup.iter().flat_map(|l| l.everyone()).filter_map(|a| a.post.position()).collect();
            Position::ALL.into_iter().filter(|p| there.contains(p)).collect()
        })
    }

    /// Who handled the batted ball.
    pub fn chain(self) -> Vec<Position> {
        self.event.with(|event| match event {
            Event::InPlay(play) => play.ball.fielders.clone(),
            _ => Vec::new(),
        })
    }

    /// There is a batted ball.
    pub fn batted(self) -> bool {
        self.begun.with_value(Event::is_batted)
    }

    /// The part of `who`; `None` if they stay.
    pub fn move_of(self, who: Start) -> Option<Move> {
        self.event.with(|event| event.action()?.moves.iter().find(|m| m.from == who).cloned())
    }

    /// Changes what batter and runners do.
    pub fn change(self, change: impl FnOnce(&mut Action)) {
        self.event.update(|event| {
            if let Some(action) = event.action_mut() {
                change(action);
            }
        });
    }

    /// Takes an outcome whole, with what was noted of the pitch.
    pub fn take(self, proposed: &Event) {
        self.event.update(|event| {
            let mut taken = self.before(|game| possible::with_notes(game, event, proposed.clone()));
            if let (Some(action), Some(proposed)) = (taken.action_mut(), proposed.action()) {
                action.clone_from(proposed);
            }
            *event = taken;
        });
    }

    /// Those whose end can be changed, the lead runner first.
    pub fn everyone(self) -> Vec<Start> {
        let s = self.situation();
        let bats = self.batted() || self.move_of(Start::Batter).is_some();
        let there = |who: &Start| if *who == Start::Batter { bats } else { s.at(*who).is_some() };
        [Start::Third, Start::Second, Start::First, Start::Batter].into_iter().filter(there).collect()
    }
}

/// What stands in a place at the moment.
pub fn said_at(game: &Game, slot: Slot) -> Option<Event> {
    match slot {
        Slot::Of(entry) => event_of(game, entry),
        Slot::Before(_) | Slot::Now => None,
    }
}

fn event_of(game: &Game, entry: EntryId) -> Option<Event> {
    game.steps().iter().find(|step| step.entry == entry).map(|step| game.event(step).clone())
}

/// The entry is a play of which more than the call of a pitch can be amended.
pub fn can_be_amended(game: &Game, entry: EntryId) -> bool {
    let event = event_of(game, entry);
    event.is_some_and(|event| game.before(entry).is_some_and(|before| possible::is_open(&before, &event)))
}
