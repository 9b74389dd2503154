//! What a new game's log begins with.

use benchbook_stats::code::Preset;
use benchbook_stats::field::{Position, Side};
use benchbook_stats::log::{Event, Heading};
use benchbook_stats::team::{Assignment, Card, Player, PlayerId};
use jiff::civil::Date;

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
    /// Both cards filled with numbered batters, so that play can begin before the names are known.
    pub numbered_batters: bool,
}

/// The entries, in order.
pub fn first_entries(choice: &Choice) -> Vec<Event> {
    let heading = Heading { date: choice.date, start: choice.start.clone(), ..Heading::default() };
    let code = choice.preset.code();
    let batters = code.fielders;
    let mut entries = vec![Event::Heading(heading), Event::Rules(Box::new(code))];
    for (side, name) in Side::BOTH.into_iter().zip(&choice.teams) {
        if !name.is_empty() {
            entries.push(Event::Team { side, name: name.clone() });
        }
    }
    if choice.numbered_batters {
        for side in Side::BOTH {
            let first = 1 + u32::from(batters) * side.index() as u32;
            let order: Vec<Assignment> = Position::ALL
                .into_iter()
                .take(batters.into())
                .zip(first..)
                .map(|(position, id)| Assignment::new(PlayerId(id), position))
                .collect();
            entries.extend(order.iter().map(|a| Event::Player { side, player: Player::unnamed(a.player) }));
            entries.push(Event::Card { side, card: Card { order, fielding_only: Vec::new() } });
        }
    }
    entries
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::presets;
    use benchbook_stats::game::Game;
    use benchbook_stats::log::Entry;

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
        Choice { teams: [String::new(), "Foxes".into()], preset, date: None, start: String::new(), numbered_batters }
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
