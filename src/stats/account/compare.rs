//! What a correction would change: the numbers that differ between two readings of one game, and what no longer fits.

use std::collections::BTreeMap;

use super::why::{Batting, Number, Pitching};
use crate::field::Side;
use crate::game::{Game, Refusal, Situation};
use crate::lines::{BattingLine, BoxScore, FieldingLine, PitchingLine};
use crate::log::EntryId;
use crate::ruling::Credit;
use crate::team::PlayerId;

/// The difference between a game and the same game corrected.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Comparison {
    /// Numbers that change: before, after.
    pub numbers: Vec<(Number, u32, u32)>,
    /// The game as it would stand, if that changes.
    pub situation: Option<Situation>,
    /// Entries that would no longer fit, and did.
    pub no_longer_fit: Vec<(EntryId, Refusal)>,
    /// Entries that would fit again.
    pub fit_again: Vec<EntryId>,
    /// From some play on another batter than before would be up.
    pub shift: Option<Shift>,
}

/// Plays that would become another batter's, because a turn at the plate would end sooner or later.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shift {
    /// The first of them.
    pub entry: EntryId,
    /// How many.
    pub plays: usize,
    /// Who is up in the first.
    pub was: PlayerId,
    /// Who would be.
    pub now: PlayerId,
}

impl Comparison {
    /// Nothing derived would change.
    pub fn is_empty(&self) -> bool {
        self.numbers.is_empty()
            && self.situation.is_none()
            && self.no_longer_fit.is_empty()
            && self.fit_again.is_empty()
            && self.shift.is_none()
    }
}

/// Compares `after`, a correction of `before`, with it.
pub fn compare(before: &Game, after: &Game) -> Comparison {
    let old: Vec<_> = before.conflicts().collect();
    let new: Vec<_> = after.conflicts().collect();
    let (now, then) = (after.situation(), before.situation());
    let mut numbers = Vec::new();
    let (box_before, box_after) = (before.box_score(), after.box_score());
    for side in Side::BOTH {
        totals(before, after, side, &mut numbers);
        batters(&box_before, &box_after, side, &mut numbers);
        pitchers(&box_before, &box_after, side, &mut numbers);
        fielders(&box_before, &box_after, side, &mut numbers);
    }
    Comparison {
        numbers,
        situation: (now != then).then_some(*now),
        no_longer_fit: new.iter().filter(|(id, _)| !old.iter().any(|(o, _)| o == id)).copied().collect(),
        fit_again: old.iter().map(|(id, _)| *id).filter(|id| !new.iter().any(|(n, _)| n == id)).collect(),
        shift: shift(before, after),
    }
}

fn shift(before: &Game, after: &Game) -> Option<Shift> {
    let was: BTreeMap<EntryId, Situation> = before.plays().map(|play| (play.entry, play.before)).collect();
    let mut moved = after.plays().filter_map(|play| {
        let (was, now) = (was.get(&play.entry)?, play.before);
        let other = (was.half, was.place) != (now.half, now.place);
        other.then_some(())?;
        Some((play.entry, was.batter?, now.batter?))
    });
    let (entry, was, now) = moved.next()?;
    Some(Shift { entry, plays: 1 + moved.count(), was, now })
}

type Numbers = Vec<(Number, u32, u32)>;

fn note(numbers: &mut Numbers, number: Number, before: u32, after: u32) {
    if before != after {
        numbers.push((number, before, after));
    }
}

fn totals(before: &Game, after: &Game, side: Side, numbers: &mut Numbers) {
    let (before, after) = (before.line_score(), after.line_score());
    let (b, a) = (before.side(side), after.side(side));
    note(numbers, Number::RunsOf(side), b.runs.into(), a.runs.into());
    note(numbers, Number::HitsOf(side), b.hits, a.hits);
    note(numbers, Number::ErrorsOf(side), b.errors, a.errors);
}

fn batters(before: &BoxScore, after: &BoxScore, side: Side, numbers: &mut Numbers) {
    for b in &before.side(side).batting {
        let Some(id) = b.player else { continue };
        let gone = BattingLine::default();
        let a = after.side(side).batting.iter().find(|l| l.player == Some(id)).unwrap_or(&gone);
        for (what, b, a) in [
            (Batting::AtBats, b.at_bats, a.at_bats),
            (Batting::Runs, b.runs, a.runs),
            (Batting::Hits, b.hits, a.hits),
            (Batting::RunsBattedIn, b.runs_batted_in, a.runs_batted_in),
            (Batting::Walks, b.walks, a.walks),
            (Batting::Strikeouts, b.strikeouts, a.strikeouts),
            (Batting::StolenBases, b.stolen_bases, a.stolen_bases),
        ] {
            note(numbers, Number::Batting(id, what), b, a);
        }
    }
}

fn pitchers(before: &BoxScore, after: &BoxScore, side: Side, numbers: &mut Numbers) {
    for b in &before.side(side).pitching {
        let Some(id) = b.player else { continue };
        let gone = PitchingLine::default();
        let a = after.side(side).pitching.iter().find(|l| l.player == Some(id)).unwrap_or(&gone);
        for (what, b, a) in [
            (Pitching::Hits, b.hits, a.hits),
            (Pitching::Runs, b.runs, a.runs),
            (Pitching::EarnedRuns, b.earned_runs, a.earned_runs),
            (Pitching::Walks, b.walks, a.walks),
            (Pitching::Strikeouts, b.strikeouts, a.strikeouts),
            (Pitching::Pitches, b.pitches, a.pitches),
        ] {
            note(numbers, Number::Pitching(id, what), b, a);
        }
    }
}

fn fielders(before: &BoxScore, after: &BoxScore, side: Side, numbers: &mut Numbers) {
    for b in &before.side(side).fielding {
        let Some(id) = b.player else { continue };
        let gone = FieldingLine::default();
        let a = after.side(side).fielding.iter().find(|l| l.player == Some(id)).unwrap_or(&gone);
        for (what, b, a) in [
            (Credit::Putout, b.putouts, a.putouts),
            (Credit::Assist, b.assists, a.assists),
            (Credit::Error, b.errors, a.errors),
        ] {
            note(numbers, Number::Fielding(id, what), b, a);
        }
    }
}
