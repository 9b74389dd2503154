//! Before the first pitch: rosters, cards, "Play".

use std::sync::Arc;

use super::{Defence, Ending, Game, Phase, Refusal};
use crate::field::{Half, Position, Side};
use crate::log::Status;
use crate::team::{Card, Lineup, Player, PlayerId};

impl Game {
    pub(super) fn before_game(&self) -> Result<(), Refusal> {
        if self.situation.phase == Phase::Before { Ok(()) } else { Err(Refusal::GameHasBegun) }
    }

    pub(super) fn add_player(&mut self, side: Side, player: &Player) -> Result<(), Refusal> {
        if self.roster.get(&player.id).is_some_and(|(s, _)| *s != side) {
            return Err(Refusal::OtherSidesPlayer(player.id));
        }
        self.roster.insert(player.id, (side, player.clone()));
        Ok(())
    }

    pub(super) fn on_roster(&self, side: Side, player: PlayerId) -> Result<(), Refusal> {
        match self.roster.get(&player) {
            Some((s, _)) if *s == side => Ok(()),
            Some(_) => Err(Refusal::OtherSidesPlayer(player)),
            None => Err(Refusal::UnknownPlayer(player)),
        }
    }

    pub(super) fn set_card(&mut self, side: Side, card: &Card) -> Result<(), Refusal> {
        self.before_game()?;
        for a in card.everyone() {
            self.on_roster(side, a.player)?;
        }
        self.lineups[side.index()] = Some(Lineup::from_card(card)?);
        Ok(())
    }

    pub(super) fn play_ball(&mut self) -> Result<(), Refusal> {
        self.before_game()?;
        for side in Side::BOTH {
            let lineup = self.lineup(side).ok_or(Refusal::NoCard(side))?;
            if self.code.players_pitch && lineup.at(Position::Pitcher).is_none() {
                return Err(Refusal::NoPitcher(side));
            }
        }
        for side in Side::BOTH {
            self.refresh_defence(side);
        }
        self.situation.phase = Phase::Underway;
        self.begin_half(1, Half::Top);
        Ok(())
    }

    pub(super) fn refresh_defence(&mut self, side: Side) {
        if let Some(lineup) = &self.lineups[side.index()] {
            self.defence[side.index()] = Arc::new(Defence::of(lineup));
        }
    }

    pub(super) fn set_status(&mut self, status: &Status) -> Result<(), Refusal> {
        let phase = self.situation.phase;
        let stopped = matches!(phase, Phase::Delayed | Phase::Suspended);
        let phase = match status {
            Status::Resumed if stopped => Phase::Underway,
            Status::Resumed => return Err(Refusal::NotStopped),
            Status::Final if matches!(phase, Phase::Over(_)) => phase,
            Status::Forfeited { winner, .. } if !matches!(phase, Phase::Over(_)) => {
                Phase::Over(Ending::Forfeited(*winner))
            }
            _ if phase == Phase::Before => return Err(Refusal::NotBegun),
            _ if matches!(phase, Phase::Over(_)) => return Err(Refusal::GameOver),
            Status::Delayed { .. } => Phase::Delayed,
            Status::Suspended { .. } => Phase::Suspended,
            Status::Called { .. } => Phase::Over(Ending::Called),
            Status::Final => Phase::Over(Ending::Declared),
            Status::Forfeited { winner, .. } => Phase::Over(Ending::Forfeited(*winner)),
        };
        if matches!(phase, Phase::Over(_)) && self.halves.last().is_some_and(|h| h.left_on_base.is_none()) {
            self.close_half(self.situation.runners().count() as u8);
        }
        self.situation.phase = phase;
        Ok(())
    }
}
