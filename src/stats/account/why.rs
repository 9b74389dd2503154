//! A number of the box score opened: the plays behind it, each with its ruling.

use super::{Account, Reason, reasons};
use crate::field::Side;
use crate::game::{Game, Thrown};
use crate::log::EntryId;
use crate::ruling::Credit;
use crate::team::PlayerId;

mod column;
mod count;
mod sum;

pub use column::{Batting, Catching, Pitching};

/// A number that can be asked "why?".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Number {
    /// A batter's number.
    Batting(PlayerId, Batting),
    /// A pitcher's number.
    Pitching(PlayerId, Pitching),
    /// A fielder's number.
    Fielding(PlayerId, Credit),
    /// A catcher's number.
    Catching(PlayerId, Catching),
    /// Outs made while this player was in the field, wherever he stood.
    InField(PlayerId),
    /// A side's hits.
    HitsOf(Side),
    /// A side's runs.
    RunsOf(Side),
    /// A side's errors.
    ErrorsOf(Side),
    /// A side's runners left on base; those on base now among them.
    LeftOnBaseOf(Side),
    /// Runs earned against the side in the field, for the team.
    EarnedAgainst(Side),
    /// A pitcher's decision: the win, the loss, the save and the like.
    Decision(PlayerId),
}

/// One play behind a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// The line of the account it stands on. What isn't told yet, a turn at the plate that goes on, has none: then it is
    /// the entry itself.
    pub entry: EntryId,
    /// The ruling.
    pub reason: Reason,
    /// How much of the number it is. A run that doesn't count (unearned, not batted in) is listed with 0 and the reason
    /// why not.
    pub amount: u32,
}

impl Evidence {
    /// It counts towards the number.
    pub const fn counts(&self) -> bool {
        self.amount > 0
    }
}

/// The plays behind `number`, first to last. Their amounts add up to it; a decision has one for each credit.
pub fn why(game: &Game, account: &Account, number: Number) -> Vec<Evidence> {
    match number {
        Number::Decision(pitcher) => {
            let reasons = reasons::of_pitcher(game, pitcher).into_iter();
            reasons.map(|reason| Evidence { entry: reason.entry, reason, amount: 1 }).collect()
        }
        Number::Pitching(who, Pitching::Outs) => sum::outs_pitched(game, who),
        Number::Pitching(who, what @ (Pitching::Pitches | Pitching::Balls | Pitching::Strikes)) => {
            sum::pitches(game, account, who, what)
        }
        Number::InField(who) => sum::outs_in_field(game, who),
        Number::LeftOnBaseOf(side) => sum::left_by_side(game, account, side),
        Number::Batting(who, Batting::LeftOnBase) => sum::left_by_batter(game, account, who),
        _ => count::rulings(game, account, number),
    }
}

impl Number {
    /// A whole side's number rather than a player's.
    pub const fn is_of_a_side(self) -> bool {
        matches!(
            self,
            Self::HitsOf(_) | Self::RunsOf(_) | Self::ErrorsOf(_) | Self::LeftOnBaseOf(_) | Self::EarnedAgainst(_)
        )
    }

    /// Reckoned in outs, and printed as innings.
    pub const fn is_innings(self) -> bool {
        matches!(self, Self::Pitching(_, Pitching::Outs) | Self::InField(_))
    }
}

/// Of a turn's pitches: balls, strikes (balls in play among them).
pub fn tally(pitches: &[(EntryId, Thrown)]) -> (u32, u32) {
    let thrown = pitches.iter().filter(|(_, t)| t.is_thrown());
    thrown.fold(
        (0, 0),
        |(balls, strikes), (_, t)| {
            if t.is_strike() { (balls, strikes + 1) } else { (balls + 1, strikes) }
        },
    )
}
