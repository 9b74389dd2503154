//! The five places.

pub mod book;
pub mod card;
pub mod clubhouse;
pub mod mound;
pub mod plate;
pub mod presets;
mod refused;
mod sign;

pub use refused::Refused;
pub use sign::Sign;

use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::team::PlayerId;

use crate::words::say;

/// A side's name; "Visitors" or "Home" in the scorer's language until it has one.
pub fn team_name(game: &Game, side: Side) -> String {
    match (side, game.team_name(side)) {
        (Side::Visitors, "Visitors") => say!("frame-visitors"),
        (Side::Home, "Home") => say!("frame-home"),
        (_, name) => name.to_owned(),
    }
}

/// What to print for a player: name or shirt number, else the place in the scorer's language ("Batter 4").
pub fn label(game: &Game, id: PlayerId) -> String {
    if let Some(label) = game.player(id).and_then(|(_, player)| player.label()) {
        return label;
    }
    let mut lineups = Side::BOTH.into_iter().filter_map(|side| game.lineup(side));
    let place = lineups.find_map(|lineup| lineup.appearances().into_iter().find(|a| a.player == id).map(|a| a.place));
    match place {
        Some(Some(place)) => say!("frame-batter", place = place + 1),
        Some(None) => say!("frame-pitcher"),
        None => say!("frame-player", number = id.0),
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::field::Position;
    use benchbook_stats::log::{Entry, Event};
    use benchbook_stats::team::{Assignment, Card, Player};

    use super::*;

    #[test]
    fn in_english_somebody_unnamed_is_called_as_the_game_does() {
        let (side, mut game) = (Side::Home, Game::new());
        let player = |id| Event::Player { side, player: Player::unnamed(PlayerId(id)) };
        let order = vec![Assignment::new(PlayerId(1), Position::Catcher)];
        let card = Card { order, fielding_only: vec![Assignment::new(PlayerId(2), Position::Pitcher)] };
        for event in [player(1), player(2), player(3), Event::Card { side, card }] {
            game.record(Entry { id: game.next_id(), at: None, event }).expect("it follows");
        }
        for id in [1, 2, 3].map(PlayerId) {
            assert_eq!(label(&game, id), game.label(id));
        }
        assert_eq!(Side::BOTH.map(|side| team_name(&game, side)), ["Visitors", "Home"]);
    }
}
