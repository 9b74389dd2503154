//! Taking over what is known of a team: its last card, or one of its players.

use std::collections::BTreeMap;

use benchbook_stats::field::{Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::team::{Assignment, Card, Player, PlayerId};

use super::{LastCard, player_key};

/// What to record so that a side's card is `last`: who is new or unnamed here becomes one of its players, then the card.
/// Players here whom it doesn't name go to the bench. To be recorded before the first pitch.
pub fn take_card(game: &Game, side: Side, last: &LastCard) -> Vec<Event> {
    let mut places = Places::of(game, side);
    let all = last.order.iter().chain(&last.fielding_only).map(|(player, _)| player).chain(&last.bench);
    let all: Vec<&Player> = all.collect();
    // Those here by name keep their number in the log, so that nobody is here twice.
    let ids: Vec<Option<PlayerId>> = all.iter().map(|player| places.same(player)).collect();
    let mut events = Vec::new();
    let ids: Vec<PlayerId> = all
        .iter()
        .zip(ids)
        .map(|(player, id)| {
            let id = id.unwrap_or_else(|| places.free());
            let player = Player { id, ..(*player).clone() };
            if game.player(id).is_none_or(|(_, here)| *here != player) {
                events.push(Event::Player { side, player });
            }
            id
        })
        .collect();
    let assign = |part: &[(Player, Post)], from: usize| -> Vec<Assignment> {
        part.iter().zip(&ids[from..]).map(|((_, post), id)| Assignment { player: *id, post: *post }).collect()
    };
    let card = Card { order: assign(&last.order, 0), fielding_only: assign(&last.fielding_only, last.order.len()) };
    events.push(Event::Card { side, card });
    events
}

/// A known player under the number `id` has here: what is written here stays.
pub fn fill(here: &Player, known: &Player) -> Player {
    let or = |here: &String, known: &String| if here.is_empty() { known.clone() } else { here.clone() };
    Player {
        id: here.id,
        name: or(&here.name, &known.name),
        number: or(&here.number, &known.number),
        bats: here.bats.or(known.bats),
        throws: here.throws.or(known.throws),
        age: here.age.or(known.age),
        person: here.person.clone().or_else(|| known.person.clone()),
    }
}

/// The numbers in the log that players can have.
struct Places {
    by_key: BTreeMap<String, PlayerId>,
    unnamed: Vec<PlayerId>,
    next: u32,
}

impl Places {
    fn of(game: &Game, side: Side) -> Self {
        let mut places = Self { by_key: BTreeMap::new(), unnamed: Vec::new(), next: game.next_player_id().0 };
        for player in game.roster(side) {
            match player_key(player) {
                Some(key) => {
                    places.by_key.insert(key, player.id);
                }
                None => places.unnamed.push(player.id),
            }
        }
        places.unnamed.reverse();
        places
    }

    /// The number of the same person, once.
    fn same(&mut self, player: &Player) -> Option<PlayerId> {
        self.by_key.remove(&player_key(player)?)
    }

    /// That of somebody unnamed, else a new one.
    fn free(&mut self) -> PlayerId {
        self.unnamed.pop().unwrap_or_else(|| {
            let id = PlayerId(self.next);
            self.next = self.next.saturating_add(1);
            id
        })
    }
}

#[cfg(test)]
mod tests {
    use benchbook_stats::field::Position;
    use benchbook_stats::log::Entry;

    use super::super::Club;
    use super::super::tests::{herons, log, named};
    use super::*;

    fn record(game: &mut Game, events: Vec<Event>) {
        for event in events {
            let entry = Entry { id: game.next_id(), at: None, event };
            game.record(entry).expect("it follows");
        }
    }

    fn last() -> LastCard {
        let players = vec![named(1, "7", "Ana"), named(2, "12", "Bo"), named(3, "5", "Cy")];
        let mut club = Club::default();
        club.add(&log(herons("2026-05-02", players, 2)));
        club.team("Harbor Herons").and_then(|team| team.last.clone()).expect("a card")
    }

    fn order(game: &Game, side: Side) -> Vec<String> {
        let lineup = game.lineup(side).expect("a card");
        lineup.batting_order().filter_map(|(_, id, post)| Some(format!("{} {post:?}", game.label(id?)))).collect()
    }

    #[test]
    fn a_card_is_taken_over_by_an_empty_side() {
        let mut game = Game::new();
        let events = take_card(&game, Side::Visitors, &last());
        record(&mut game, events);
        assert_eq!(order(&game, Side::Visitors), ["Ana Fields(Pitcher)", "Bo Fields(Catcher)"]);
        assert_eq!(game.roster(Side::Visitors).count(), 3);
        assert!(take_card(&game, Side::Visitors, &last()).len() == 1, "nothing but the card is said again");
    }

    #[test]
    fn who_is_here_already_is_not_here_twice_and_unnamed_batters_get_the_names() {
        let mut game = Game::new();
        let side = Side::Home;
        let here = vec![Player::unnamed(PlayerId(1)), named(2, "", "bo"), Player::unnamed(PlayerId(3))];
        record(&mut game, here.into_iter().map(|player| Event::Player { side, player }).collect());
        let card = Card { order: vec![Assignment::new(PlayerId(1), Position::Pitcher)], fielding_only: Vec::new() };
        record(&mut game, vec![Event::Card { side, card }]);
        let events = take_card(&game, side, &last());
        record(&mut game, events);
        assert_eq!(order(&game, side), ["Ana Fields(Pitcher)", "Bo Fields(Catcher)"]);
        assert_eq!(game.roster(side).count(), 3);
        assert_eq!(game.player(PlayerId(2)).map(|(_, p)| p.number.clone()), Some("12".into()));
    }

    #[test]
    fn what_is_written_here_stays() {
        let filled = fill(&named(4, "9", "Ana"), &Player { age: Some(11), ..named(1, "7", "Ana") });
        assert_eq!(filled, Player { age: Some(11), ..named(4, "9", "Ana") });
    }
}
