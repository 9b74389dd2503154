//! A number of the box score opened: the plays behind it, each with its ruling.

use super::{Account, Reason, Ruled, reasons};
use crate::field::Side;
use crate::game::{Game, Thrown};
use crate::log::EntryId;
use crate::ruling::{BatterResult, Credit, Theft};
use crate::team::PlayerId;

/// A number that can be asked "why?".
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Number {
    /// A batter's number.
    Batting(PlayerId, Batting),
    /// A pitcher's number.
    Pitching(PlayerId, Pitching),
    /// A fielder's number.
    Fielding(PlayerId, Credit),
    /// A side's hits.
    HitsOf(Side),
    /// A side's runs.
    RunsOf(Side),
    /// A side's errors.
    ErrorsOf(Side),
    /// Runs earned against the side in the field, for the team.
    EarnedAgainst(Side),
    /// A pitcher's decision: the win, the loss, the save and the like.
    Decision(PlayerId),
}

/// A batter's number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Batting {
    /// Times at bat.
    AtBats,
    /// Runs scored.
    Runs,
    /// Hits.
    Hits,
    /// Runs batted in.
    RunsBattedIn,
    /// Bases on balls.
    Walks,
    /// Strikeouts.
    Strikeouts,
    /// Stolen bases.
    StolenBases,
}

/// A pitcher's number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pitching {
    /// Hits allowed.
    Hits,
    /// Runs charged.
    Runs,
    /// Earned runs.
    EarnedRuns,
    /// Bases on balls.
    Walks,
    /// Strikeouts.
    Strikeouts,
    /// Pitches thrown. Each is a line of its own, so none is listed.
    Pitches,
}

/// One play behind a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Evidence {
    /// The line of the account it stands on.
    pub entry: EntryId,
    /// The ruling.
    pub reason: Reason,
    /// It counts towards the number. A run that does not (unearned, not batted in) is listed with the reason why not.
    pub counts: bool,
}

/// The plays behind `number`, first to last.
pub fn why(game: &Game, account: &Account, number: Number) -> Vec<Evidence> {
    if let Number::Decision(pitcher) = number {
        let reasons = reasons::of_pitcher(game, pitcher).into_iter();
        return reasons.map(|reason| Evidence { entry: reason.entry, reason, counts: true }).collect();
    }
    let mut evidence = Vec::new();
    for half in &account.halves {
        let batting = half.half.batting();
        for line in &half.lines {
            let charged = game.play(line.entry).and_then(|p| p.turn).and_then(|t| t.pitcher);
            for reason in &line.reasons {
                if let Some(counts) = number.counts(batting, charged, &reason.ruled) {
                    evidence.push(Evidence { entry: line.entry, reason: reason.clone(), counts });
                }
            }
        }
    }
    evidence
}

impl Number {
    /// A whole side's number rather than a player's.
    pub const fn is_of_a_side(self) -> bool {
        matches!(self, Self::HitsOf(_) | Self::RunsOf(_) | Self::ErrorsOf(_) | Self::EarnedAgainst(_))
    }

    /// Whether a ruling counts; `None` if it has nothing to do with the number.
    fn counts(self, batting: Side, charged: Option<PlayerId>, ruled: &Ruled) -> Option<bool> {
        match (self, ruled) {
            (Self::Batting(who, number), _) => number.counts(who, ruled),
            (Self::Pitching(who, number), _) => number.counts(who, charged, ruled),
            (Self::Fielding(who, wanted), Ruled::Fielding { fielder, credit, .. }) => {
                (*fielder == Some(who) && *credit == wanted).then_some(true)
            }
            (Self::HitsOf(side), Ruled::Result { result, .. }) => {
                (side == batting && result.hit_bases().is_some()).then_some(true)
            }
            (Self::RunsOf(side), Ruled::Run { .. }) => (side == batting).then_some(true),
            (Self::ErrorsOf(side), Ruled::Fielding { credit: Credit::Error, .. }) => {
                (side == batting.other()).then_some(true)
            }
            (Self::EarnedAgainst(side), Ruled::Earned { team_earned, .. }) => {
                (side == batting.other()).then_some(*team_earned)
            }
            _ => None,
        }
    }
}

impl Batting {
    fn counts(self, who: PlayerId, ruled: &Ruled) -> Option<bool> {
        let own = match ruled {
            Ruled::Result { batter, result } if *batter == who => Some(*result),
            _ => None,
        };
        match self {
            Self::AtBats => own.map(BatterResult::is_at_bat),
            Self::Hits => own.filter(|r| r.is_at_bat()).map(|r| r.hit_bases().is_some()),
            Self::Walks => own.filter(|r| is_walk(*r)).map(|_| true),
            Self::Strikeouts => own.filter(|r| is_strikeout(*r)).map(|_| true),
            Self::Runs => match ruled {
                Ruled::Run { runner, .. } if *runner == who => Some(true),
                _ => None,
            },
            Self::RunsBattedIn => match ruled {
                Ruled::Run { batter: Some(batter), batted_in, .. } if *batter == who => Some(*batted_in),
                _ => None,
            },
            Self::StolenBases => match ruled {
                Ruled::Theft { runner, theft } if *runner == who => Some(matches!(theft, Theft::Stolen(_))),
                _ => None,
            },
        }
    }
}

impl Pitching {
    fn counts(self, who: PlayerId, charged: Option<PlayerId>, ruled: &Ruled) -> Option<bool> {
        let faced = match ruled {
            Ruled::Result { result, .. } if charged == Some(who) => Some(*result),
            _ => None,
        };
        let run = match ruled {
            Ruled::Earned { pitcher, earned, .. } if *pitcher == Some(who) => Some(*earned),
            _ => None,
        };
        match self {
            Self::Hits => faced.filter(|r| r.hit_bases().is_some()).map(|_| true),
            Self::Walks => faced.filter(|r| is_walk(*r)).map(|_| true),
            Self::Strikeouts => faced.filter(|r| is_strikeout(*r)).map(|_| true),
            Self::Runs => run.map(|_| true),
            Self::EarnedRuns => run,
            Self::Pitches => None,
        }
    }
}

const fn is_walk(result: BatterResult) -> bool {
    matches!(result, BatterResult::Walk | BatterResult::IntentionalWalk)
}

const fn is_strikeout(result: BatterResult) -> bool {
    matches!(result, BatterResult::Strikeout { .. })
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
