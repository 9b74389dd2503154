//! Minimums for individual championships (OBR 9.22).

use super::PlayerSeason;
use crate::field::{Outs, Position};

/// What is asked, and what there is, in the same unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Minimum {
    /// Needed.
    pub needed: u32,
    /// Reached.
    pub reached: u32,
}

impl Minimum {
    /// Qualifies.
    pub const fn met(self) -> bool {
        self.reached >= self.needed
    }
}

/// Batting, slugging and on-base championships: 3.1 plate appearances for each scheduled game of the club, rounded to
/// the nearest whole (OBR 9.22(a): 162 games ask 502). Asked in the major leagues; 2.7 in the minors.
pub const fn for_batting(player: &PlayerSeason, scheduled_games: u32) -> Minimum {
    Minimum { needed: (scheduled_games * 31 + 5) / 10, reached: player.batting.plate_appearances }
}

/// Earned run average: one regulation inning pitched, in outs, for each scheduled game (OBR 9.22(b)).
pub const fn for_pitching(player: &PlayerSeason, scheduled_games: u32) -> Minimum {
    Minimum { needed: scheduled_games * 3, reached: player.pitching.line.outs.0 }
}

/// Fielding average at a position (OBR 9.22(c)). Catchers ask half, other fielders two thirds of the scheduled games;
/// pitchers one inning a game, in outs. `games_at` is the number of games played at the position.
pub fn for_fielding(player: &PlayerSeason, position: Position, games_at: u32, scheduled_games: u32) -> Minimum {
    match position {
        Position::Pitcher => {
            Minimum { needed: scheduled_games * 3, reached: player.played.get(&position).copied().unwrap_or(Outs(0)).0 }
        }
        Position::Catcher => Minimum { needed: scheduled_games.div_ceil(2), reached: games_at },
        _ => Minimum { needed: (scheduled_games * 2).div_ceil(3), reached: games_at },
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// OBR 9.22(a): "if a Major League schedules 162 games for each club, 502 plate appearances qualify" (502.2), and
    /// 9.22(b): 162 innings.
    #[test]
    fn a_schedule_of_162_games() {
        let mut player = PlayerSeason::default();
        assert_eq!(for_batting(&player, 162).needed, 502);
        assert_eq!(for_pitching(&player, 162).needed, 162 * 3);
        assert_eq!(for_fielding(&player, Position::Catcher, 81, 162), Minimum { needed: 81, reached: 81 });
        assert_eq!(for_fielding(&player, Position::Shortstop, 107, 162).needed, 108);
        player.batting.plate_appearances = 502;
        assert!(for_batting(&player, 162).met());
        player.batting.plate_appearances = 501;
        assert!(!for_batting(&player, 162).met());
    }
}
