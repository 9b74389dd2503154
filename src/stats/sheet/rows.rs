//! The rows of a scoresheet: batting places, who held each, and their sums.

use crate::field::Side;
use crate::game::Game;
use crate::lines::BattingLine;
use crate::team::{Duties, PlayerId};

/// One batting place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its place, from 0.
    pub place: u8,
    /// Who held it, in order.
    pub players: Vec<Listed>,
}

/// A player on the sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Listed {
    /// Who.
    pub player: PlayerId,
    /// Name, shirt number or batting place.
    pub name: String,
    /// Number on the shirt, empty if unknown.
    pub number: String,
    /// Posts: "PH-SS".
    pub posts: Duties,
    /// At bat.
    pub totals: Totals,
}

/// What the end of a row sums up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Totals {
    /// At bats.
    pub at_bats: u32,
    /// Runs.
    pub runs: u32,
    /// Hits.
    pub hits: u32,
    /// Runs batted in.
    pub runs_batted_in: u32,
}

impl From<&BattingLine> for Totals {
    fn from(line: &BattingLine) -> Self {
        Self { at_bats: line.at_bats, runs: line.runs, hits: line.hits, runs_batted_in: line.runs_batted_in }
    }
}

pub(super) fn of(game: &Game, side: Side) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    for line in game.batting(side) {
        let (Some(place), Some(player)) = (line.place, line.player) else { continue };
        let listed = Listed {
            player,
            name: line.name.clone(),
            number: game.player(player).map(|(_, p)| p.number.clone()).unwrap_or_default(),
            posts: line.posts.clone(),
            totals: Totals::from(&line),
        };
        match rows.iter_mut().find(|r| r.place == place - 1) {
            Some(row) => row.players.push(listed),
            None => rows.push(Row { place: place - 1, players: vec![listed] }),
        }
    }
    rows
}
