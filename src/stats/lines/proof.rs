//! The proof of the box score (OBR 9.03(c)): every batter is accounted for once.

use serde::Serialize;

use super::BattingLine;
use crate::field::Side;
use crate::game::Game;
use crate::ruling::{Book, Credit};

/// Both sides of the balance, in batters.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Proof {
    /// At bats.
    pub at_bats: u32,
    /// Bases on balls.
    pub walks: u32,
    /// Hit batters.
    pub hit_by_pitch: u32,
    /// Sacrifice hits and flies.
    pub sacrifices: u32,
    /// First base awarded for interference or obstruction.
    pub interference: u32,
    /// Runners placed on base by rule.
    pub placed_runners: u32,
    /// Runs.
    pub runs: u32,
    /// Left on base; runners now on base included.
    pub left_on_base: u32,
    /// The opponents' putouts.
    pub opponents_putouts: u32,
}

impl Proof {
    /// Batters who came up, and runners placed.
    pub const fn came_up(&self) -> u32 {
        self.at_bats + self.walks + self.hit_by_pitch + self.sacrifices + self.interference + self.placed_runners
    }

    /// What became of them.
    pub const fn accounted_for(&self) -> u32 {
        self.runs + self.left_on_base + self.opponents_putouts
    }

    /// The two agree.
    pub const fn balances(&self) -> bool {
        self.came_up() == self.accounted_for()
    }
}

pub(super) fn prove(game: &Game, book: &Book, side: Side, total: &BattingLine) -> Proof {
    let putouts = book
        .plays(game)
        .filter(|(p, _)| p.batting() == side && !p.nullified)
        .flat_map(|(_, judged)| judged.credited(Credit::Putout))
        .count() as u32;
    let placed = game
        .halves()
        .iter()
        .filter(|h| h.half.batting() == side)
        .map(|h| h.placed.iter().flatten().count() as u32)
        .sum();
    Proof {
        at_bats: total.at_bats,
        walks: total.walks,
        hit_by_pitch: total.hit_by_pitch,
        sacrifices: total.sacrifice_hits + total.sacrifice_flies,
        interference: total.interference,
        placed_runners: placed,
        runs: u32::from(game.situation().score[side.index()]),
        left_on_base: game.left_on_base(side),
        opponents_putouts: putouts,
    }
}
