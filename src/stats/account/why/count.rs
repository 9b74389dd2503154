//! Numbers that are so many rulings: hits, runs, errors, stolen bases.

use super::{Batting, Catching, Evidence, Number, Pitching};
use crate::account::{Account, Ruled};
use crate::field::{Position, Side};
use crate::game::{Game, Play};
use crate::ruling::{BatterResult, Credit, Theft};
use crate::team::PlayerId;

/// The rulings that `number` counts, and those of its kind that it does not, first to last.
pub(super) fn rulings(game: &Game, account: &Account, number: Number) -> Vec<Evidence> {
    let mut evidence = Vec::new();
    for line in account.halves.iter().flat_map(|h| &h.lines).filter(|line| !line.reasons.is_empty()) {
        let Some(play) = game.play(line.entry) else { continue };
        for reason in &line.reasons {
            if let Some(amount) = number.counts(play, &reason.ruled) {
                evidence.push(Evidence { entry: line.entry, reason: reason.clone(), amount });
            }
        }
    }
    evidence
}

impl Number {
    /// How much a ruling counts; `None` if it has nothing to do with the number.
    fn counts(self, play: &Play, ruled: &Ruled) -> Option<u32> {
        let of = |side: Side| play.batting() == side;
        match (self, ruled) {
            (Self::Batting(who, number), _) => number.counts(who, ruled),
            (Self::Pitching(who, number), _) => number.counts(who, play, ruled),
            (Self::Catching(who, number), _) => number.counts(who, play, ruled),
            (Self::Fielding(who, wanted), Ruled::Fielding { fielder, credit, .. }) => {
                one(*fielder == Some(who) && *credit == wanted)
            }
            (Self::HitsOf(side), Ruled::Result { result, .. }) => one(of(side) && result.hit_bases().is_some()),
            (Self::RunsOf(side), Ruled::Run { .. }) => one(of(side)),
            (Self::ErrorsOf(side), Ruled::Fielding { credit: Credit::Error, .. }) => one(of(side.other())),
            (Self::EarnedAgainst(side), Ruled::Earned { team_earned, .. }) => {
                of(side.other()).then_some(u32::from(*team_earned))
            }
            _ => None,
        }
    }
}

/// Counts one, or has nothing to do with it.
const fn one(yes: bool) -> Option<u32> {
    if yes { Some(1) } else { None }
}

impl Batting {
    fn counts(self, who: PlayerId, ruled: &Ruled) -> Option<u32> {
        match ruled {
            Ruled::Result { batter, result } if *batter == who => self.of_result(*result),
            Ruled::Run { runner, .. } if self == Self::Runs => one(*runner == who),
            Ruled::Run { batter: Some(batter), batted_in, .. } if self == Self::RunsBattedIn && *batter == who => {
                Some(u32::from(*batted_in))
            }
            Ruled::GroundedIntoDoublePlay { batter } if self == Self::GroundedIntoDoublePlays => one(*batter == who),
            Ruled::Theft { runner, theft } if *runner == who => match self {
                Self::StolenBases => Some(theft.stolen().map_or(0, u32::from)),
                Self::CaughtStealing => match theft {
                    Theft::Caught { .. } => Some(1),
                    Theft::PickedOff => Some(0),
                    Theft::Stolen(_) | Theft::NotStolen => None,
                },
                _ => None,
            },
            _ => None,
        }
    }

    fn of_result(self, result: BatterResult) -> Option<u32> {
        let bases = result.hit_bases();
        match self {
            Self::PlateAppearances => Some(1),
            Self::AtBats => Some(u32::from(result.is_at_bat())),
            Self::Hits if result.is_at_bat() => Some(u32::from(bases.is_some())),
            Self::Doubles => one(bases == Some(2)),
            Self::Triples => one(bases == Some(3)),
            Self::HomeRuns => one(bases == Some(4)),
            Self::Walks => one(is_walk(result)),
            Self::IntentionalWalks => one(result == BatterResult::IntentionalWalk),
            Self::Strikeouts => one(is_strikeout(result)),
            Self::HitByPitch => one(result == BatterResult::HitByPitch),
            Self::SacrificeHits => one(matches!(result, BatterResult::SacrificeHit { .. })),
            Self::SacrificeFlies => one(matches!(result, BatterResult::SacrificeFly { .. })),
            Self::Interference => one(matches!(result, BatterResult::Interference | BatterResult::Obstruction)),
            Self::ReachedOnError => one(matches!(result, BatterResult::ReachedOnError(_))),
            Self::FieldersChoices => one(result == BatterResult::FieldersChoice),
            _ => None,
        }
    }
}

impl Pitching {
    fn counts(self, who: PlayerId, play: &Play, ruled: &Ruled) -> Option<u32> {
        match ruled {
            Ruled::Result { result, .. } if play.turn.and_then(|t| t.pitcher) == Some(who) => self.of_result(*result),
            Ruled::Earned { pitcher, earned, .. } if *pitcher == Some(who) => match self {
                Self::Runs => Some(1),
                Self::EarnedRuns => Some(u32::from(*earned)),
                _ => None,
            },
            Ruled::GotAway { wild: true, player } if self == Self::WildPitches => one(*player == Some(who)),
            Ruled::Balk { pitcher } if self == Self::Balks => one(*pitcher == Some(who)),
            _ => None,
        }
    }

    fn of_result(self, result: BatterResult) -> Option<u32> {
        match self {
            Self::BattersFaced => Some(1),
            Self::Hits => one(result.hit_bases().is_some()),
            Self::HomeRuns => one(result.hit_bases() == Some(4)),
            Self::Walks => one(is_walk(result)),
            Self::IntentionalWalks => one(result == BatterResult::IntentionalWalk),
            Self::Strikeouts => one(is_strikeout(result)),
            Self::HitBatters => one(result == BatterResult::HitByPitch),
            _ => None,
        }
    }
}

impl Catching {
    fn counts(self, who: PlayerId, play: &Play, ruled: &Ruled) -> Option<u32> {
        let caught = play.defence.at(Position::Catcher) == Some(who);
        match (self, ruled) {
            (Self::PassedBalls, Ruled::GotAway { wild: false, player }) => one(*player == Some(who)),
            (Self::StolenBases, Ruled::Theft { theft, .. }) if caught => theft.stolen().map(u32::from),
            (Self::CaughtStealing, Ruled::Theft { theft, .. }) => one(caught && matches!(theft, Theft::Caught { .. })),
            _ => None,
        }
    }
}

const fn is_walk(result: BatterResult) -> bool {
    matches!(result, BatterResult::Walk | BatterResult::IntentionalWalk)
}

const fn is_strikeout(result: BatterResult) -> bool {
    matches!(result, BatterResult::Strikeout { .. })
}
