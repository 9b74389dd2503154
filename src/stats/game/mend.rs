//! Mends for an entry that no longer fits after a correction: small changes of it that do, each to be agreed to.

use super::{Game, Step};
use crate::field::Base;
use crate::log::{Action, Cause, EntryId, Event, Move, Start};

/// What a mend does to the entry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum MendKind {
    /// Leaves out runners who are not there now.
    WithoutMissingRunners,
    /// Moves runners who are in the way up one base each.
    RunnersMakeRoom,
    /// Leaves out the outs beyond the third.
    WithoutLateOuts,
    /// Strikes the entry out.
    StrikeOut,
}

/// A proposed mend.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mend {
    /// What it does.
    pub kind: MendKind,
    /// The correction to record.
    pub event: Event,
    /// Entries that would still not fit after it.
    pub conflicts_left: usize,
}

impl Game {
    /// Mends for an entry listed by [`Game::conflicts`], the gentlest first; striking it out is always among them.
    pub fn mends(&self, entry: EntryId) -> Vec<Mend> {
        let Some(at) = self.steps().iter().position(|s| s.entry == entry && s.conflict.is_some()) else {
            return Vec::new();
        };
        let step = &self.steps()[at];
        let mut mends: Vec<Mend> = self
            .changes(step)
            .into_iter()
            .filter_map(|(kind, event)| {
                let event = Event::Replace { entry, event: Box::new(event) };
                let mended = self.preview(event.clone()).ok()?;
                let fits = mended.conflicts().all(|(id, _)| id != entry);
                fits.then(|| Mend { kind, event, conflicts_left: mended.conflicts().count() })
            })
            .collect();
        let strike_out = Event::Retract { entry };
        if let Ok(mended) = self.preview(strike_out.clone()) {
            let conflicts_left = mended.conflicts().count();
            mends.push(Mend { kind: MendKind::StrikeOut, event: strike_out, conflicts_left });
        }
        mends.dedup_by(|b, a| a.event == b.event);
        mends
    }

    /// Ways in which the event of a step could be changed, whether they fit or not.
    fn changes(&self, step: &Step) -> Vec<(MendKind, Event)> {
        let event = self.event(step);
        let Some(action) = event.action() else { return Vec::new() };
        let mut changes = Vec::new();
        let mut try_action = |kind, action: Action| {
            let mut event = event.clone();
            if let Some(slot) = event.action_mut() {
                *slot = action;
                changes.push((kind, event));
            }
        };
        let there = |m: &Move| m.from == Start::Batter || step.after.at(m.from).is_some();
        let mut present = action.clone();
        present.moves.retain(there);
        if present.moves.len() < action.moves.len() {
            try_action(MendKind::WithoutMissingRunners, present.clone());
        }
        try_action(MendKind::RunnersMakeRoom, make_room(&present, step));
        let mut outs = step.after.outs;
        let mut early = present;
        early.moves.retain(|m| {
            outs += u8::from(m.out.is_some());
            m.out.is_none() || outs <= super::moves::OUTS
        });
        try_action(MendKind::WithoutLateOuts, early);
        changes
    }
}

/// From the batter up: whoever stands where somebody ends goes one base further.
fn make_room(action: &Action, step: &Step) -> Action {
    let mut room = action.clone();
    let mut taken = 0;
    for start in [Start::Batter, Start::First, Start::Second, Start::Third] {
        let moved = room.moves.iter().find(|m| m.from == start);
        let ends = match moved {
            Some(m) if m.out.is_some() => continue,
            Some(m) => m.reached().map_or(start.number(), Base::number),
            None if start == Start::Batter || step.after.at(start).is_none() => continue,
            None => start.number(),
        };
        if ends > taken {
            taken = ends;
            continue;
        }
        taken = (taken + 1).min(4);
        if let Some(to) = Base::from_number(taken) {
            room.moves.retain(|m| m.from != start);
            room.moves.insert(0, Move::safe(start, to, Cause::Play));
        }
    }
    room
}

impl Event {
    /// What batter and runners did in it, if it is a play.
    pub const fn action(&self) -> Option<&Action> {
        match self {
            Self::Pitch(pitch) => Some(&pitch.action),
            Self::InPlay(in_play) => Some(&in_play.action),
            Self::Running(running) => Some(&running.action),
            Self::Unseen(unseen) => Some(&unseen.action),
            _ => None,
        }
    }

    /// The same, to be changed in place; in a correction, that of the event it brings.
    pub fn action_mut(&mut self) -> Option<&mut Action> {
        match self {
            Self::Pitch(pitch) => Some(&mut pitch.action),
            Self::InPlay(in_play) => Some(&mut in_play.action),
            Self::Running(running) => Some(&mut running.action),
            Self::Unseen(unseen) => Some(&mut unseen.action),
            Self::Replace { event, .. } | Self::Insert { event, .. } => event.action_mut(),
            _ => None,
        }
    }

    /// There is a batted ball in it.
    pub const fn is_batted(&self) -> bool {
        matches!(self, Self::InPlay(_))
    }
}
