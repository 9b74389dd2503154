//! What a new game's log begins with.

use benchbook_stats::code::Preset;
use benchbook_stats::field::{Position, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::{Entry, Event, Heading};
use benchbook_stats::team::{Assignment, Card, Player, PlayerId};
use jiff::civil::Date;

use crate::club::{LastCard, take_card};

/// What the scorer chose in the Clubhouse.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Choice {
    /// Names, visitors and home; empty where not known yet.
    pub teams: [String; 2],
    /// The rules of play to start from.
    pub preset: Preset,
    /// The day.
    pub date: Option<Date>,
    /// The hour, as written.
    pub start: String,
    /// The cards to begin with, visitors' and home, where earlier games know one.
    pub cards: [Option<LastCard>; 2],
    /// Cards not given filled with numbered batters, so that play can begin before the names are known.
    pub numbered_batters: bool,
}

/// The entries, in order.
pub fn first_entries(choice: &Choice) -> Vec<Event> {
    let heading = Heading { date: choice.date, start: choice.start.clone(), ..Heading::default() };
    let mut game = Game::new();
    let mut entries = Vec::new();
    let mut write = |game: &mut Game, event: Event| {
        // What is refused here is refused when the game is started from it, and told there.
        let _ = game.record(Entry { id: game.next_id(), at: None, event: event.clone() });
        entries.push(event);
    };
    write(&mut game, Event::Heading(heading));
    write(&mut game, Event::Rules(Box::new(choice.preset.code())));
    for (side, name) in Side::BOTH.into_iter().zip(&choice.teams) {
        if !name.is_empty() {
            write(&mut game, Event::Team { side, name: name.clone() });
        }
    }
    for (side, card) in Side::BOTH.into_iter().zip(&choice.cards) {
        let events = match card {
            Some(card) => take_card(&game, side, card),
            None if choice.numbered_batters => numbered(&game, side),
            None => Vec::new(),
        };
        for event in events {
            write(&mut game, event);
        }
    }
    entries
}

/// A card of batters of whom only the place is known.
fn numbered(game: &Game, side: Side) -> Vec<Event> {
    let order: Vec<Assignment> = Position::ALL
        .into_iter()
        .take(game.code().fielders.into())
        .zip(game.next_player_id().0..)
        .map(|(position, id)| Assignment::new(PlayerId(id), position))
        .collect();
    let players = order.iter().map(|a| Event::Player { side, player: Player::unnamed(a.player) });
    players.chain([Event::Card { side, card: Card { order: order.clone(), fielding_only: Vec::new() } }]).collect()
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::presets;

    use super::*;

    fn game(choice: &Choice) -> Game {
        let mut game = Game::new();
        for event in first_entries(choice) {
            let entry = Entry { id: game.next_id(), at: None, event };
            game.record(entry).expect("the first entries follow from nothing");
        }
        game
    }

    fn choice(preset: Preset, numbered_batters: bool) -> Choice {
        Choice {
            teams: [String::new(), "Foxes".into()],
            preset,
            date: None,
            start: String::new(),
            cards: [None, None],
            numbered_batters,
        }
    }

    #[test]
    fn a_known_card_comes_with_its_players_and_the_other_side_is_numbered() {
        let player = Player { name: "Ana".into(), ..Player::unnamed(PlayerId(31)) };
        let card = LastCard { order: vec![(player, Position::Shortstop.into())], ..LastCard::default() };
        let game = game(&Choice { cards: [None, Some(card)], ..choice(Preset::Youth6, true) });
        let ids = game.lineup(Side::Home).expect("a card").batting_order();
        let names: Vec<_> = ids.map(|(_, id, post)| (game.label(id.expect("a batter")), post)).collect();
        assert_eq!(names, [("Ana".into(), Position::Shortstop.into())]);
        assert_eq!(game.lineup(Side::Visitors).expect("a card").places(), 9);
    }

    #[test]
    fn play_can_begin_with_numbered_batters_under_every_preset() {
        for preset in presets() {
            let mut game = game(&choice(preset, true));
            assert_eq!((game.team_name(Side::Visitors), game.team_name(Side::Home)), ("Visitors", "Foxes"));
            let entry = Entry { id: game.next_id(), at: None, event: Event::PlayBall };
            assert_eq!(game.record(entry), Ok(()), "{preset:?}");
            let up = game.situation().batter.expect("a batter");
            assert_eq!(game.label(up), "Batter 1", "{preset:?}");
        }
    }

    #[test]
    fn without_numbered_batters_the_cards_are_empty() {
        let game = game(&choice(Preset::Youth6, false));
        assert!(game.lineup(Side::Visitors).is_none() && game.lineup(Side::Home).is_none());
        assert_eq!(game.code().innings, 6);
    }
}
