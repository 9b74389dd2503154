//! Who is in the game: changes, batting out of turn, empty places.

use std::sync::Arc;

use super::apply::Applied;
use super::{Ending, FinishedTurn, Game, Phase, Play, Refusal, Turn, TurnEnd, TurnKind};
use crate::field::{Base, Count, Side};
use crate::log::{Action, EntryId, How, Move, Out, Start};
use crate::team::{Change, PlayerId, Role};

impl Game {
    pub(super) fn change(&mut self, side: Side, change: &Change) -> Result<(), Refusal> {
        if let Phase::Over(_) = self.situation.phase {
            return Err(Refusal::GameOver);
        }
        if self.situation.phase == Phase::Before {
            return Err(Refusal::NotBegun);
        }
        let at_bat = side == self.situation.batting();
        match change {
            Change::Substitute { incoming, .. } => self.on_roster(side, *incoming)?,
            Change::Join(a) => self.on_roster(side, a.player)?,
            Change::Shift { .. } | Change::EndDesignatedHitter { .. } | Change::Leave { .. } => {}
        }
        if let Change::Substitute { outgoing, role, incoming } = change {
            // A courtesy runner is on base without being in the lineup.
            if self.situation.runners().any(|(_, r)| r.player == *incoming) {
                return Err(Refusal::AlreadyInPlay(*incoming));
            }
            match role {
                Role::PinchHitter if !at_bat => return Err(Refusal::NotAtBat),
                Role::PinchHitter if self.situation.batter != Some(*outgoing) => {
                    return Err(Refusal::NotTheBatter(*outgoing));
                }
                Role::PinchRunner | Role::CourtesyRunner
                    if !at_bat || !self.situation.runners().any(|(_, r)| r.player == *outgoing) =>
                {
                    return Err(Refusal::NotOnBase(*outgoing));
                }
                _ => {}
            }
        }
        let lineup = self.lineup(side).ok_or(Refusal::NoCard(side))?.changed(change, &self.code)?;
        self.lineups[side.index()] = Some(lineup);
        self.refresh_defence(side);
        self.field_taken &= at_bat;
        if let Change::Substitute { outgoing, incoming, .. }
        | Change::EndDesignatedHitter { replaces: outgoing, batter: incoming } = change
        {
            // An appeal may yet bring back the bases as they were before a batter out of turn.
            let earlier = self.finished_turn.iter_mut().map(|f| &mut f.before).filter(|s| s.batting() == side);
            let now = core::iter::once(&mut self.situation).filter(|_| at_bat);
            for runner in earlier.chain(now).flat_map(|s| s.bases.iter_mut().flatten()) {
                if runner.player == *outgoing {
                    runner.player = *incoming;
                }
            }
        }
        self.refresh_people();
        Ok(())
    }

    /// Batter and pitcher as the lineups now have them.
    pub(super) fn refresh_people(&mut self) {
        let count = self.situation.count;
        let pitcher = self.pitcher_of(self.situation.fielding());
        if pitcher != self.situation.pitcher {
            self.situation.pitcher = pitcher;
            let untouched = count == self.code.starting_count;
            if let Some(pitcher) = pitcher {
                if untouched {
                    self.turn.pitchers.clear();
                }
                let since = if untouched { Count::default() } else { count };
                self.turn.pitchers.push((pitcher, since));
            }
        }
        let batter = self.lineup(self.situation.batting()).and_then(|l| l.batter(self.situation.place));
        if batter != self.situation.batter {
            self.situation.batter = batter;
            if count == self.code.starting_count {
                self.turn.batters.clear();
            }
            if let Some(batter) = batter {
                self.turn.batters.push((batter, count.strikes));
            } else if !self.code.missing_batter_is_out {
                self.next_batter();
            }
        }
    }

    pub(super) fn batter_up(&mut self, player: PlayerId) -> Result<(), Refusal> {
        let proper = self.ready()?;
        let side = self.situation.batting();
        let place = self.lineup(side).and_then(|l| l.place_of(player)).ok_or(Refusal::NotInGame(player))?;
        if self.situation.runners().any(|(_, r)| r.player == player) {
            return Err(Refusal::BatterOnBase(player));
        }
        let proper = self.turn.proper.unwrap_or((proper, self.situation.place));
        self.turn.proper = (proper.0 != player).then_some(proper);
        self.situation.batter = Some(player);
        self.situation.place = place;
        self.turn.batters = vec![(player, 0)];
        Ok(())
    }

    pub(super) fn empty_place(&mut self, id: EntryId) -> Applied {
        self.in_order()?;
        if self.situation.batter.is_some() {
            return Err(Refusal::PlaceIsFilled);
        }
        let before = self.situation;
        let mut play = Box::new(Play {
            entry: id,
            before,
            thrown: None,
            batted: None,
            moves: Vec::new(),
            misplays: Vec::new(),
            turn: Some(TurnEnd {
                kind: TurnKind::EmptyPlace,
                batter: None,
                pitcher: before.pitcher,
                place: before.place,
                count: before.count,
            }),
            defence: Arc::clone(&self.defence[before.fielding().index()]),
            continues: false,
            ends_half: false,
            ends_game: false,
            nullified: false,
            pitches_missed: false,
        });
        self.situation.outs += 1;
        self.finished_turn = None;
        self.end_turn(before);
        play.ends_half = self.after_play(before.runners().count() as u8);
        play.ends_game = matches!(self.situation.phase, Phase::Over(_));
        Ok(Some(play))
    }

    /// OBR 6.03(b), 9.03(d): before the turn is over the proper batter takes the count; after it and before the next
    /// pitch the proper batter is out and what the improper one did is undone.
    pub(super) fn out_of_turn_appeal(&mut self, id: EntryId) -> Applied {
        if let Some((proper, place)) = self.turn.proper {
            self.underway()?;
            let proper = self.in_place(place).unwrap_or(proper);
            self.situation.batter = Some(proper);
            self.situation.place = place;
            self.turn.batters = vec![(proper, 0)];
            self.turn.proper = None;
            return Ok(None);
        }
        match self.situation.phase {
            // The improper batter's play may have ended the game.
            Phase::Over(Ending::Played | Ending::Mercy) => {}
            _ => self.underway()?,
        }
        let Some(finished) = self.finished_turn.clone() else { return Err(Refusal::NothingToAppeal) };
        let kept = self.clone();
        let applied = self.undo_turn(id, &finished);
        if applied.is_err() {
            *self = kept;
        }
        applied
    }

    /// The player who has this batting place of the side at bat.
    fn in_place(&self, place: u8) -> Option<PlayerId> {
        self.lineup(self.situation.batting()).and_then(|l| l.batter(place))
    }

    /// Takes back the improper batter's play, with what followed while the ball was alive, and puts out the proper one.
    fn undo_turn(&mut self, id: EntryId, finished: &FinishedTurn) -> Applied {
        for play in self.steps.iter_mut().skip(finished.step).filter_map(|s| s.play.as_mut()) {
            play.nullified = true;
        }
        self.halves.retain(|h| h.first_step <= finished.step);
        if let Some(half) = self.halves.last_mut() {
            half.left_on_base = None;
        }
        self.situation = finished.before;
        self.situation.pitcher = self.pitcher_of(self.situation.fielding());
        let (proper, place) = finished.proper;
        let proper = self.in_place(place).unwrap_or(proper);
        self.situation.place = place;
        self.situation.batter = Some(proper);
        self.next_place[self.situation.batting().index()] = place;
        self.turn = Turn::begin(Some(proper), self.situation.pitcher);
        let out = Out::new(How::OutOfTurn, Base::First, self.catcher_putout());
        let mut draft =
            self.draft(id, None, Action { moves: vec![Move::out(Start::Batter, out)], misplays: Vec::new() });
        draft.turn = Some(TurnKind::OutOfTurn);
        self.play_out(draft)
    }
}
