//! What the Mound reads from the game.

use benchbook_stats::field::{Position, Side};
use benchbook_stats::game::Game;
use benchbook_stats::lines::PitchingLine;
use benchbook_stats::team::PlayerId;

/// The line of the pitcher now at the position, or of the last who pitched.
pub fn on_the_mound(game: &Game, side: Side, lines: &[PitchingLine]) -> Option<PitchingLine> {
    let pitcher = game.lineup(side).and_then(|lineup| lineup.at(Position::Pitcher));
    let own = lines.iter().find(|line| line.player == pitcher);
    let blank = || PitchingLine {
        player: pitcher,
        name: pitcher.map(|id| game.label(id)).unwrap_or_default(),
        ..PitchingLine::default()
    };
    match (pitcher, own) {
        (_, Some(line)) => Some(line.clone()),
        (Some(_), None) => Some(blank()),
        (None, None) => lines.last().cloned(),
    }
}

/// Pitches this pitcher has thrown to the batter now at the plate; `None` while the side is at bat.
pub fn this_batter(game: &Game, pitcher: Option<PlayerId>) -> Option<u32> {
    let now = game.situation();
    if now.pitcher.is_none() || now.pitcher != pitcher {
        return None;
    }
    let turn = game.plays().rev().take_while(|play| play.turn.is_none() && !play.ends_half);
    let own = turn.filter(|play| {
        play.before.pitcher == pitcher && play.thrown.is_some_and(benchbook_stats::game::Thrown::is_thrown)
    });
    Some(own.count() as u32)
}

/// Where a count stands to the league's limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ToLimit {
    /// So many left, at least one.
    Left(u32),
    /// Reached exactly.
    Reached,
    /// So many over.
    Over(u32),
}

/// How a count stands to a limit.
pub fn to_limit(pitches: u32, limit: u16) -> ToLimit {
    let limit = u32::from(limit);
    match pitches.cmp(&limit) {
        std::cmp::Ordering::Less => ToLimit::Left(limit - pitches),
        std::cmp::Ordering::Equal => ToLimit::Reached,
        std::cmp::Ordering::Greater => ToLimit::Over(pitches - limit),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchbook_stats::file;

    fn harbor() -> Game {
        let text = include_str!("../../../../tests/games/harbor-league.benchbook.json");
        Game::replay(file::read(text).expect("the game file reads").log)
    }

    #[test]
    fn a_limit_is_left_reached_or_passed() {
        assert_eq!(to_limit(70, 75), ToLimit::Left(5));
        assert_eq!(to_limit(75, 75), ToLimit::Reached);
        assert_eq!(to_limit(78, 75), ToLimit::Over(3));
    }

    #[test]
    fn the_count_on_a_batter_begins_anew_with_each() {
        let whole = harbor();
        let mut game = Game::new();
        let mut most = 0;
        for entry in whole.log() {
            game.record(entry.clone()).expect("it was recorded once");
            let count = this_batter(&game, game.situation().pitcher).unwrap_or(0);
            if game.plays().next_back().is_some_and(|play| play.turn.is_some()) {
                assert_eq!(count, 0, "after entry {}", entry.id.0);
            }
            most = most.max(count);
        }
        assert!((4..=12).contains(&most), "{most} before the last pitch of a turn");
    }

    #[test]
    fn the_last_pitcher_is_on_the_mound() {
        let game = harbor();
        let lines = game.pitching(Side::Home);
        let now = on_the_mound(&game, Side::Home, &lines).expect("somebody pitched");
        assert_eq!(now.name, "Nadia Corvane");
    }
}
