//! What is missing before play: what stops the first pitch, and what is good to know.

use benchbook_stats::code::Code;
use benchbook_stats::field::{Position, Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::order::put_in_order;
use benchbook_stats::team::Card;

use super::edit::{card_of, most_batters, open_positions};

/// Something that is missing or odd.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Missing {
    /// No lineup card at all: play can't begin.
    Card(Side),
    /// No pitcher: play can't begin.
    Pitcher(Side),
    /// Nobody at these positions.
    Fielders(Side, Vec<Position>),
    /// More batters than the code takes: how many, how many it takes.
    TooManyBatters(Side, usize, usize),
    /// Two players with one shirt number.
    SameNumber(Side, String),
    /// Players without a name or number.
    Unknown(Side, usize),
    /// A designated hitter the rules of play don't know.
    NoDesignatedHitter(Side),
    /// A fielder who does not bat, and no designated hitter.
    NobodyBatsFor(Side),
    /// No date: pitch counts and rest go by the day.
    Date,
}

impl Missing {
    /// Play can't begin without it.
    pub const fn stops_play(&self) -> bool {
        matches!(self, Self::Card(_) | Self::Pitcher(_))
    }
}

/// All that is missing, what stops play first.
pub fn missing(game: &Game) -> Vec<Missing> {
    let mut missing = Vec::new();
    for side in Side::BOTH {
        of_side(game, side, &mut missing);
    }
    if game.heading().date.is_none() {
        missing.push(Missing::Date);
    }
    put_in_order(&mut missing, |a, b| a.stops_play() && !b.stops_play());
    missing
}

fn of_side(game: &Game, side: Side, missing: &mut Vec<Missing>) {
    let card = card_of(game, side);
    if card.order.is_empty() {
        missing.push(Missing::Card(side));
        return;
    }
    let code = game.code();
    if code.players_pitch && card.at(Position::Pitcher).is_none() {
        missing.push(Missing::Pitcher(side));
    }
    let open: Vec<_> = open_positions(&card, code).into_iter().filter(|p| *p != Position::Pitcher).collect();
    if !open.is_empty() {
        missing.push(Missing::Fielders(side, open));
    }
    of_order(&card, code, side, missing);
    of_people(game, &card, side, missing);
}

fn of_order(card: &Card, code: &Code, side: Side, missing: &mut Vec<Missing>) {
    if card.order.len() > most_batters(code) {
        missing.push(Missing::TooManyBatters(side, card.order.len(), most_batters(code)));
    }
    let hitter = card.order.iter().any(|a| a.post == Post::DesignatedHitter);
    if hitter && !code.designated_hitter {
        missing.push(Missing::NoDesignatedHitter(side));
    }
    if !hitter && !card.fielding_only.is_empty() {
        missing.push(Missing::NobodyBatsFor(side));
    }
}

fn of_people(game: &Game, card: &Card, side: Side, missing: &mut Vec<Missing>) {
    let mut numbers: Vec<&str> = game.roster(side).map(|p| p.number.as_str()).filter(|n| !n.is_empty()).collect();
    numbers.sort_unstable();
    let mut twice: Vec<&str> = numbers.windows(2).filter(|w| w[0] == w[1]).map(|w| w[0]).collect();
    twice.dedup();
    missing.extend(twice.into_iter().map(|n| Missing::SameNumber(side, n.to_owned())));
    let unknown = card.everyone().filter(|a| game.player(a.player).is_none_or(|(_, p)| p.label().is_none())).count();
    if unknown > 0 {
        missing.push(Missing::Unknown(side, unknown));
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::log::{Entry, Event};
    use benchbook_stats::team::{Player, PlayerId};

    use super::super::edit::{numbered, without};
    use super::*;

    fn record(game: &mut Game, event: Event) {
        let entry = Entry { id: game.next_id(), at: None, event };
        game.record(entry).expect("it follows");
    }

    fn with_cards() -> Game {
        let mut game = Game::new();
        for side in Side::BOTH {
            let (players, card) = numbered(&game);
            for player in players {
                record(&mut game, Event::Player { side, player });
            }
            record(&mut game, Event::Card { side, card });
        }
        game
    }

    #[test]
    fn nothing_known_stops_play_on_both_sides() {
        let missing = missing(&Game::new());
        assert_eq!(missing, [Missing::Card(Side::Visitors), Missing::Card(Side::Home), Missing::Date]);
    }

    #[test]
    fn numbered_batters_are_enough_to_play() {
        let missing = missing(&with_cards());
        assert!(!missing.iter().any(Missing::stops_play));
        assert!(missing.contains(&Missing::Unknown(Side::Home, 9)));
    }

    #[test]
    fn a_side_without_a_pitcher_is_told_first() {
        let mut game = with_cards();
        let card = without(card_of(&game, Side::Visitors), PlayerId(1));
        record(&mut game, Event::Card { side: Side::Visitors, card });
        assert_eq!(missing(&game).first(), Some(&Missing::Pitcher(Side::Visitors)));
    }

    #[test]
    fn one_shirt_number_twice_is_told() {
        let mut game = with_cards();
        for id in [1, 2] {
            let player = Player { number: "7".into(), ..Player::unnamed(PlayerId(id)) };
            record(&mut game, Event::Player { side: Side::Visitors, player });
        }
        assert!(missing(&game).contains(&Missing::SameNumber(Side::Visitors, "7".into())));
    }
}
