//! Where everyone ends: a play's moves checked against the bases, the outs and each other.

use super::{Moved, OnBase, Refusal, RunnerKey, Situation};
use crate::field::Base;
use crate::log::{Cause, How, Leg, Move, Start};
use crate::order::put_in_order;
use crate::team::PlayerId;

/// Outs in a half-inning.
pub(super) const OUTS: u8 = 3;

/// The batter of a play in which he may move.
pub(super) struct Batter {
    pub player: PlayerId,
    pub key: RunnerKey,
    pub pitcher: Option<PlayerId>,
}

/// A play's moves, found to be possible.
pub(super) struct Resolved {
    pub moves: Vec<Moved>,
    pub bases: [Option<OnBase>; 3],
    pub outs: u8,
    pub runs: u8,
    /// Runners neither out nor in, the batter among them if he reached.
    pub left: u8,
}

/// What limits the runs of a play.
pub(super) struct Limits {
    /// Errors listed.
    pub misplays: usize,
    /// Runs after which the game is over at once; `None` if it can't end so, or on a ball that left the park.
    pub runs_to_win: Option<u16>,
}

/// Adds the advances that a walk, a hit batter or interference forces to the moves recorded with them.
pub(super) fn with_forced(situation: &Situation, mut moves: Vec<Move>) -> Vec<Move> {
    let starts = [Start::Batter, Start::First, Start::Second, Start::Third];
    let mut forced: Vec<Move> = Vec::new();
    for start in starts {
        if start != Start::Batter && situation.at(start).is_none() {
            break;
        }
        let Some(to) = Base::from_number(start.number() + 1) else { break };
        let leg = Leg { to, cause: Cause::Forced };
        if let Some(m) = moves.iter_mut().find(|m| m.from == start) {
            match m.legs.first_mut() {
                // He was entitled to that base: no steal, whatever he did on the pitch (OBR 9.07(a)).
                Some(first) if first.to == to => first.cause = Cause::Forced,
                _ => m.legs.insert(0, leg),
            }
        } else {
            forced.push(Move { from: start, legs: vec![leg], out: None });
        }
    }
    forced.reverse();
    forced.append(&mut moves);
    let far = |m: &Move| if m.out.is_some() { 0 } else { m.from.number() };
    put_in_order(&mut forced, |a, b| far(a) > far(b));
    forced
}

pub(super) fn resolve(
    situation: &Situation,
    batter: Option<&Batter>,
    moves: Vec<Move>,
    limits: &Limits,
) -> Result<Resolved, Refusal> {
    for (i, m) in moves.iter().enumerate() {
        check_move(situation, batter, m, limits)?;
        if moves[..i].iter().any(|other| other.from == m.from) {
            return Err(Refusal::MovedTwice(m.from));
        }
    }
    let outs = moves.iter().filter(|m| m.out.is_some()).count() as u8;
    if situation.outs + outs > OUTS {
        return Err(Refusal::TooManyOuts(situation.outs + outs));
    }
    let third_out = (situation.outs + outs == OUTS).then(|| moves.iter().rposition(|m| m.out.is_some())).flatten();
    if third_out.is_none() {
        check_order(situation, &moves)?;
    }
    let counts_until = third_out.map_or(moves.len(), |at| if ends_without_runs(&moves[at]) { 0 } else { at });

    let mut resolved = Resolved { moves: Vec::with_capacity(moves.len()), bases: [None; 3], outs, runs: 0, left: 0 };
    let mut stays = situation.bases;
    for (i, m) in moves.into_iter().enumerate() {
        let runner = match m.from.base() {
            Some(base) => stays[base as usize].take(),
            None => batter.map(|b| OnBase { player: b.player, key: b.key, pitcher: b.pitcher, placed: false }),
        };
        let Some(runner) = runner else { return Err(Refusal::BatterDoesNotRun) };
        let home = m.out.is_none() && m.reached() == Some(Base::Home);
        let wins = limits.runs_to_win.is_none_or(|needed| u16::from(resolved.runs) < needed);
        let scored = home && i < counts_until && wins;
        if scored {
            resolved.runs += 1;
        } else if m.out.is_none() {
            resolved.left += 1;
            if let Some(base) = m.reached().filter(|b| *b != Base::Home) {
                resolved.bases[base as usize] = Some(runner);
            }
        }
        resolved.moves.push(Moved {
            runner: runner.player,
            key: runner.key,
            from: m.from,
            legs: m.legs,
            out: m.out,
            scored,
        });
    }
    for (base, runner) in stays.into_iter().enumerate() {
        if runner.is_some() {
            resolved.left += 1;
            resolved.bases[base] = runner;
        }
    }
    Ok(resolved)
}

/// No run counts on a third out made by a force, or of the batter before he reaches first (OBR 5.08(a)).
fn ends_without_runs(third_out: &Move) -> bool {
    let forced = third_out.out.as_ref().is_some_and(|out| out.how == How::Force);
    forced || (third_out.from == Start::Batter && third_out.legs.is_empty())
}

fn check_move(situation: &Situation, batter: Option<&Batter>, m: &Move, limits: &Limits) -> Result<(), Refusal> {
    match m.from.base() {
        Some(base) if situation.on(base).is_none() => return Err(Refusal::EmptyBase(base)),
        None if batter.is_none() => return Err(Refusal::BatterDoesNotRun),
        _ => {}
    }
    if m.legs.is_empty() && m.out.is_none() {
        return Err(Refusal::EmptyMove(m.from));
    }
    let mut at = m.from.number();
    for leg in &m.legs {
        if leg.to.number() <= at {
            return Err(Refusal::Backwards(m.from));
        }
        at = leg.to.number();
        if let Cause::Error(i) = leg.cause
            && usize::from(i) >= limits.misplays
        {
            return Err(Refusal::NoSuchMisplay(i));
        }
    }
    Ok(())
}

/// From the lead runner back to the batter: nobody ends level with or ahead of the one in front.
fn check_order(situation: &Situation, moves: &[Move]) -> Result<(), Refusal> {
    let mut ahead = u8::MAX;
    for start in [Start::Third, Start::Second, Start::First, Start::Batter] {
        let ends = match moves.iter().find(|m| m.from == start) {
            Some(m) if m.out.is_some() => continue,
            Some(m) => m.reached().map_or(start.number(), Base::number),
            None if start == Start::Batter || situation.at(start).is_none() => continue,
            None => start.number(),
        };
        match Base::from_number(ends) {
            Some(base) if base != Base::Home && ends == ahead => return Err(Refusal::TwoOnBase(base)),
            _ if ends > ahead => return Err(Refusal::Passing(start)),
            _ => ahead = ends,
        }
    }
    Ok(())
}
