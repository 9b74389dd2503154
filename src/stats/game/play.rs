//! Plays: checked whole, then carried out.

use std::sync::Arc;

use super::dead::{self, is_dead};
use super::moves::{Batter, Limits, OUTS, Resolved, resolve, with_forced};
use super::{Game, Phase, Play, Refusal, RunnerKey, Thrown, TurnEnd, TurnKind};
use crate::field::{Base, Count, Position};
use crate::log::{Action, Batted, Call, Cause, EntryId, How, InPlay, Move, Out, Pitch, Start};
use crate::team::{Lineup, PlayerId};

use super::apply::Applied;

/// A play before it is checked.
pub(super) struct Draft {
    pub(super) entry: EntryId,
    pub(super) thrown: Option<Thrown>,
    pub(super) batted: Option<Batted>,
    pub(super) action: Action,
    pub(super) turn: Option<TurnKind>,
    /// The count after it, if the turn goes on.
    pub(super) count: Count,
    pub(super) continues: bool,
    pub(super) pitches_missed: bool,
}

impl Game {
    pub(super) fn underway(&self) -> Result<(), Refusal> {
        match self.situation.phase {
            Phase::Underway => Ok(()),
            Phase::Before => Err(Refusal::NotBegun),
            Phase::Delayed | Phase::Suspended => Err(Refusal::Stopped),
            Phase::Over(_) => Err(Refusal::GameOver),
        }
    }

    /// Play is on, the defence is in order and somebody is at the plate.
    pub(super) fn ready(&self) -> Result<PlayerId, Refusal> {
        self.in_order()?;
        self.situation.batter.ok_or(Refusal::NobodyAtPlate)
    }

    pub(super) fn in_order(&self) -> Result<(), Refusal> {
        self.underway()?;
        let fielding = self.situation.fielding();
        match self.lineup(fielding).and_then(Lineup::clash) {
            Some(position) => Err(Refusal::TwoAtPosition(position)),
            None if self.code.players_pitch && self.situation.pitcher.is_none() => Err(Refusal::NoPitcher(fielding)),
            None => Ok(()),
        }
    }

    pub(super) fn walks(&self) -> Result<(), Refusal> {
        if self.code.balls_for_walk.is_some() { Ok(()) } else { Err(Refusal::NoWalks) }
    }

    pub(super) fn draft(&self, entry: EntryId, thrown: Option<Thrown>, action: Action) -> Draft {
        Draft {
            entry,
            thrown,
            batted: None,
            action,
            turn: None,
            count: self.situation.count,
            continues: false,
            pitches_missed: false,
        }
    }

    pub(super) fn pitch(&mut self, id: EntryId, pitch: &Pitch) -> Applied {
        self.ready()?;
        let call = pitch.call;
        let mut draft = self.draft(id, Some(Thrown::Called(call)), pitch.action.clone());
        let count = self.situation.count;
        let last_strike = count.strikes.saturating_add(1) >= self.code.strikes_for_out;
        match call {
            _ if call.is_ball() => {
                if self.code.balls_for_walk.is_some_and(|n| count.balls.saturating_add(1) >= n) {
                    draft.turn = Some(match call {
                        Call::IntentionalBall => TurnKind::IntentionalWalk,
                        _ => TurnKind::Walk,
                    });
                } else if self.code.balls_for_walk.is_some() {
                    draft.count.balls += 1;
                }
            }
            Call::HitByPitch => draft.turn = Some(TurnKind::HitByPitch),
            Call::CatcherInterference => draft.turn = Some(TurnKind::CatcherInterference),
            Call::BatterInterference => draft.turn = Some(TurnKind::BatterInterference),
            Call::Foul if last_strike && !self.code.foul_is_third_strike => {}
            _ if last_strike => {
                let looking = matches!(call, Call::CalledStrike | Call::AutomaticStrike);
                draft.turn = Some(TurnKind::Strikeout { looking });
            }
            _ => draft.count.strikes = count.strikes.saturating_add(1),
        }
        self.play_out(draft)
    }

    pub(super) fn in_play(&mut self, id: EntryId, in_play: &InPlay) -> Applied {
        self.ready()?;
        if !in_play.action.moves.iter().any(|m| m.from == Start::Batter) {
            return Err(Refusal::BatterMustMove);
        }
        let defence = &self.defence[self.situation.fielding().index()];
        if let Some(nobody) = in_play.ball.fielders.iter().find(|p| defence.at(**p).is_none()) {
            self.may_be_missing(*nobody)?;
        }
        let mut draft = self.draft(id, Some(Thrown::InPlay), in_play.action.clone());
        draft.batted = Some(in_play.ball.clone());
        draft.turn = Some(TurnKind::InPlay);
        draft.pitches_missed = in_play.pitches_missed;
        self.play_out(draft)
    }

    /// Where no player pitches, the machine's or coach's position may appear in a chain of fielders.
    pub(super) fn may_be_missing(&self, position: Position) -> Result<(), Refusal> {
        if position == Position::Pitcher && !self.code.players_pitch {
            Ok(())
        } else {
            Err(Refusal::NobodyAt(position))
        }
    }

    /// Checks a play whole, then carries it out.
    pub(super) fn play_out(&mut self, draft: Draft) -> Applied {
        let at_plate = if draft.turn.is_some() { Some(self.ready()?) } else { None };
        self.in_order()?;
        self.check_fielders(&draft.action)?;
        let moves = self.all_moves(draft.turn, draft.action.moves)?;
        if is_dead(draft.thrown, draft.turn) {
            dead::check(&moves)?;
        }
        let pitcher = draft.turn.and_then(|kind| self.turn.charged_pitcher(kind));
        let batter = at_plate.map(|player| Batter { player, key: RunnerKey(self.next_key), pitcher });
        let limits = Limits {
            misplays: draft.action.misplays.len(),
            runs_to_win: self.runs_to_win().filter(|_| !draft.batted.as_ref().is_some_and(|b| b.left_park)),
        };
        let resolved = resolve(&self.situation, batter.as_ref(), moves, &limits)?;

        // From here on nothing is refused.
        let before = self.situation;
        let fielding = before.fielding().index();
        if !self.field_taken {
            // Only now is it sure that a pinch hitter stayed in the game to field.
            self.field_taken = true;
            if let Some(lineup) = &mut self.lineups[fielding] {
                lineup.take_field();
            }
        }
        if !draft.continues {
            // A pitch or a play makes what the improper batter did legal (OBR 6.03(b)).
            self.finished_turn = None;
        }
        let turn = draft.turn.map(|kind| TurnEnd {
            kind,
            batter: self.turn.charged_batter(kind, self.code.strikes_for_out),
            pitcher,
            place: before.place,
            count: before.count,
        });
        let pitches_missed = draft.pitches_missed || (turn.is_some() && self.turn.pitches_missed);
        let Resolved { moves, bases, outs, runs, left } = resolved;
        let mut play = Box::new(Play {
            entry: draft.entry,
            before,
            thrown: draft.thrown,
            batted: draft.batted,
            moves,
            misplays: draft.action.misplays,
            turn,
            defence: Arc::clone(&self.defence[fielding]),
            continues: draft.continues,
            ends_half: false,
            ends_game: false,
            nullified: false,
            pitches_missed,
        });
        self.situation.bases = bases;
        self.situation.outs += outs;
        let score = &mut self.situation.score[before.batting().index()];
        *score = score.saturating_add(u16::from(runs));
        self.situation.count = draft.count;
        if turn.is_some() {
            self.end_turn(before);
        }
        play.ends_half = self.after_play(left);
        play.ends_game = matches!(self.situation.phase, Phase::Over(_));
        Ok(Some(play))
    }

    pub(super) fn check_fielders(&self, action: &Action) -> Result<(), Refusal> {
        let defence = &self.defence[self.situation.fielding().index()];
        let outs = action.moves.iter().filter_map(|m| m.out.as_ref()).flat_map(|out| &out.by);
        let errors = action.misplays.iter().flat_map(|m| m.after.iter().chain([&m.by]));
        for position in outs.chain(errors) {
            if defence.at(*position).is_none() {
                self.may_be_missing(*position)?;
            }
        }
        let steals = action.moves.iter().any(|m| m.legs.iter().any(|leg| leg.cause == Cause::Steal));
        if steals && !self.code.stealing {
            return Err(Refusal::NoStealing);
        }
        Ok(())
    }

    /// The moves recorded, with those the rules add.
    pub(super) fn all_moves(&self, turn: Option<TurnKind>, mut moves: Vec<Move>) -> Result<Vec<Move>, Refusal> {
        let batter_moves = moves.iter().any(|m| m.from == Start::Batter);
        match turn {
            Some(TurnKind::Walk | TurnKind::IntentionalWalk | TurnKind::HitByPitch | TurnKind::CatcherInterference) => {
                Ok(with_forced(&self.situation, moves))
            }
            Some(TurnKind::Strikeout { .. }) if batter_moves => {
                let may_run = self.code.dropped_third_strike
                    && (self.situation.on(Base::First).is_none() || self.situation.outs + 1 >= OUTS);
                let reaches = moves.iter().any(|m| m.from == Start::Batter && !m.legs.is_empty());
                if reaches && !may_run { Err(Refusal::BatterCannotRun) } else { Ok(moves) }
            }
            Some(TurnKind::Strikeout { .. }) => {
                let out = Out::new(How::Strikeout, Base::First, self.catcher_putout());
                moves.insert(0, Move::out(Start::Batter, out));
                Ok(moves)
            }
            Some(TurnKind::BatterInterference) if !batter_moves => {
                let out = Out::new(How::Interference, Base::First, self.catcher_putout());
                moves.push(Move::out(Start::Batter, out));
                Ok(moves)
            }
            None if batter_moves => Err(Refusal::BatterDoesNotRun),
            _ => Ok(moves),
        }
    }

    /// The catcher's automatic putout, where somebody catches (OBR 9.09(b)).
    pub(super) fn catcher_putout(&self) -> &'static [Position] {
        let defence = &self.defence[self.situation.fielding().index()];
        if defence.at(Position::Catcher).is_some() { &[Position::Catcher] } else { &[] }
    }
}
