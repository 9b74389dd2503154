//! Correcting: which entries count after retractions, replacements and insertions, and the replay of all that follows.

use super::{Game, Refusal, Step};
use crate::log::{Entry, EntryId, Event, Judgment};

impl Game {
    /// The correction that takes back the last entry that counts.
    pub fn undo(&self) -> Option<Event> {
        let struck = struck(&self.log);
        self.log
            .iter()
            .rev()
            .find(|e| !is_mark(&e.event) && !struck.contains(&e.id))
            .map(|e| Event::Retract { entry: e.id })
    }

    /// The correction that brings back what was last undone, unless something was recorded since.
    pub fn redo(&self) -> Option<Event> {
        let mut undone = Vec::new();
        for entry in &self.log {
            match &entry.event {
                Event::Retract { entry } => undone.push(*entry),
                Event::Reinstate { entry } => undone.retain(|id| id != entry),
                _ => undone.clear(),
            }
        }
        undone.pop().map(|entry| Event::Reinstate { entry })
    }

    /// The game as it would be after one more entry; this one is left as it is.
    pub fn preview(&self, event: Event) -> Result<Self, Refusal> {
        let mut game = self.clone();
        game.record(Entry { id: self.next_id(), at: None, event })?;
        Ok(game)
    }

    /// The same game without the scorer's answers to what is asked. What was judged unasked (how a batter reached,
    /// whose pitch got away, whether an advance was disputed) remains: what is usual depends on it.
    pub(crate) fn unanswered(&self) -> Self {
        let mut game = self.clone();
        game.judgments.retain(|(_, judgment)| {
            matches!(judgment, Judgment::BatterReached { .. } | Judgment::GotAway { .. } | Judgment::Undisputed { .. })
        });
        game
    }

    pub(super) fn may_correct(&self, event: &Event) -> Result<(), Refusal> {
        let known = |id: EntryId| self.log.iter().any(|e| e.id == id);
        let in_game = |id: EntryId| self.steps.iter().any(|s| s.entry == id);
        match event {
            Event::Retract { entry } | Event::Reinstate { entry } => {
                if !known(*entry) || self.log.iter().any(|e| e.id == *entry && is_mark(&e.event)) {
                    return Err(Refusal::NoSuchEntry(*entry));
                }
                let is_struck = struck(&self.log).contains(entry);
                if is_struck == matches!(event, Event::Retract { .. }) {
                    return Err(Refusal::AlreadySo(*entry));
                }
            }
            Event::Replace { entry: target, event } | Event::Insert { before: target, event } => {
                if event.is_correction() {
                    return Err(Refusal::CorrectionInCorrection);
                }
                if !in_game(*target) {
                    return Err(Refusal::NoSuchEntry(*target));
                }
            }
            _ => {}
        }
        Ok(())
    }

    /// The game as it stood just before an entry, to see what could have followed; not to be recorded in.
    pub fn before(&self, entry: EntryId) -> Option<Self> {
        self.steps.iter().find(|s| s.entry == entry)?;
        let mut game = self.clone();
        game.rebuild_until(Some(entry));
        Some(game)
    }

    /// Replays the log from its first entry.
    pub(super) fn rebuild(&mut self) {
        self.rebuild_until(None);
    }

    /// Replays the log from its first entry to the one before `end`.
    fn rebuild_until(&mut self, end: Option<EntryId>) {
        let log = core::mem::take(&mut self.log);
        *self = Self::new();
        let mut last = None;
        for (entry, source) in effective(&log).into_iter().take_while(|(entry, _)| Some(entry.0) != end) {
            let event = match &log[source].event {
                Event::Replace { event, .. } | Event::Insert { event, .. } => event,
                event => event,
            };
            let result = match last {
                Some(last) if source == entry.1 && log[source].id <= last => {
                    Err(Refusal::OutOfSequence { id: log[source].id, last })
                }
                _ => self.apply(entry.0, event),
            };
            if source == entry.1 && !matches!(log[source].event, Event::Insert { .. }) {
                last = last.max(Some(log[source].id));
            }
            let (play, conflict) = match result {
                Ok(play) => (play, None),
                Err(refusal) => (None, Some(refusal)),
            };
            self.steps.push(Step { entry: entry.0, source, after: self.situation, play, conflict });
        }
        self.log = log;
    }
}

const fn is_mark(event: &Event) -> bool {
    matches!(event, Event::Retract { .. } | Event::Reinstate { .. })
}

/// The entries struck out.
fn struck(log: &[Entry]) -> Vec<EntryId> {
    let mut struck = Vec::new();
    for entry in log {
        match &entry.event {
            Event::Retract { entry } => struck.push(*entry),
            Event::Reinstate { entry } => struck.retain(|id| id != entry),
            _ => {}
        }
    }
    struck.sort_unstable();
    struck
}

/// The entries that count, in the order of the game: each with the index in the log where it stands, and the index of
/// what it says.
fn effective(log: &[Entry]) -> Vec<((EntryId, usize), usize)> {
    let struck = struck(log);
    let counts = |id: EntryId| struck.binary_search(&id).is_err();
    let mut list: Vec<((EntryId, usize), usize)> = Vec::with_capacity(log.len());
    let mut hidden: Vec<((EntryId, usize), usize)> = Vec::new();
    for (i, entry) in log.iter().enumerate() {
        let find = |list: &[((EntryId, usize), usize)], id: EntryId| list.iter().position(|((e, _), _)| *e == id);
        match &entry.event {
            Event::Replace { entry: target, .. } if counts(entry.id) => {
                if let Some(at) = find(&list, *target) {
                    list[at].1 = i;
                }
            }
            Event::Insert { before, .. } if counts(entry.id) => {
                if let Some(at) = find(&list, *before) {
                    list.insert(at, ((entry.id, i), i));
                } else {
                    hidden.push(((entry.id, i), i));
                }
            }
            // Marks, and corrections that are struck out.
            event if event.is_correction() => {}
            _ => list.push(((entry.id, i), i)),
        }
    }
    // An insertion whose neighbor can't be found is kept at the end rather than dropped: it will show as a conflict
    // or as a late entry, and the scorer sees it.
    list.extend(hidden);
    list.retain(|((id, _), _)| counts(*id));
    list
}
