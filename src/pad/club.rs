//! The teams earlier games on this device know: their players, and the card each handed in last. Read from the games'
//! logs whenever it is asked for, never stored.

use std::collections::BTreeMap;

use benchbook_stats::field::{Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::{Entry, EntryId, Event};
use benchbook_stats::order::put_in_order;
use benchbook_stats::team::{Card, Player, PlayerId};
use jiff::civil::Date;

use crate::keep::{self, GameId};

mod take;

pub use take::{fill, take_card};

/// A team.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Team {
    /// Its name, as last written.
    pub name: String,
    /// Everyone known by name or number, as last written; by shirt number, then by name.
    pub players: Vec<Player>,
    /// The last card handed in on which somebody is known.
    pub last: Option<LastCard>,
}

/// A card handed in, with those it names.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct LastCard {
    /// The day, if it was noted.
    pub date: Option<Date>,
    /// The batting order, first batter first.
    pub order: Vec<(Player, Post)>,
    /// Those who fielded and did not bat.
    pub fielding_only: Vec<(Player, Post)>,
    /// Those on the roster who were not on the card.
    pub bench: Vec<Player>,
}

/// Teams by [`key`] of their name.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Club {
    teams: BTreeMap<String, Team>,
}

/// What a name is known by: upper or lower case and outer blanks don't make another team or player.
pub fn key(name: &str) -> String {
    name.trim().to_lowercase()
}

/// What a player is known by from game to game: the club's own key, else the name, else the shirt number. `None` for
/// somebody of whom nothing is known.
pub fn player_key(player: &Player) -> Option<String> {
    player.person.clone().or_else(|| player.label()).map(|label| key(&label))
}

impl Club {
    /// Adds a game: the later one holds, so add them in the order in which they were written.
    pub fn add(&mut self, log: &[Entry]) {
        let game = Game::replay(about_people(log));
        for side in Side::BOTH {
            let unnamed = Game::new().team_name(side) == game.team_name(side);
            if unnamed || game.roster(side).all(|player| player_key(player).is_none()) {
                continue;
            }
            let name = game.team_name(side).to_owned();
            let team = self.teams.entry(key(&name)).or_default();
            team.name = name;
            for player in game.roster(side) {
                team.know(player);
            }
            if let Some(last) = last_card(&game, side) {
                team.last = Some(last);
            }
        }
    }

    /// All games on this device but `open` and those thrown away.
    pub async fn of_this_device(open: &GameId) -> Self {
        let mut club = Self::default();
        // Written first comes last on the list, and is added first.
        for game in keep::list().await.into_iter().rev().filter(|game| !game.thrown_away && game.id != *open) {
            club.add(&game.log);
        }
        club
    }

    /// All teams, by name.
    pub fn teams(&self) -> impl Iterator<Item = &Team> {
        self.teams.values()
    }

    /// The team of this name.
    pub fn team(&self, name: &str) -> Option<&Team> {
        self.teams.get(&key(name))
    }
}

impl Team {
    fn know(&mut self, player: &Player) {
        let Some(known_by) = player_key(player) else { return };
        self.players.retain(|other| player_key(other).as_ref() != Some(&known_by));
        self.players.push(player.clone());
        let number = |player: &Player| (player.number.parse().unwrap_or(u32::MAX), player.number.clone());
        put_in_order(&mut self.players, |a, b| (number(a), &a.name) < (number(b), &b.name));
    }
}

/// The side's last card that names somebody, as it was before play.
fn last_card(game: &Game, side: Side) -> Option<LastCard> {
    let card: &Card =
        game.steps().iter().rev().filter(|step| step.conflict.is_none()).find_map(|step| match game.event(step) {
            Event::Card { side: whose, card } if *whose == side => Some(card),
            _ => None,
        })?;
    let player = |id: PlayerId| game.player(id).map_or_else(|| Player::unnamed(id), |(_, player)| player.clone());
    let named = |part: &[benchbook_stats::team::Assignment]| -> Vec<(Player, Post)> {
        part.iter().map(|a| (player(a.player), a.post)).collect()
    };
    let on_card = |id: PlayerId| card.everyone().any(|a| a.player == id);
    let last = LastCard {
        date: game.heading().date,
        order: named(&card.order),
        fielding_only: named(&card.fielding_only),
        bench: game.roster(side).filter(|p| !on_card(p.id) && player_key(p).is_some()).cloned().collect(),
    };
    let known = last.order.iter().any(|(player, _)| player_key(player).is_some());
    known.then_some(last)
}

/// The entries that say who plays and what is called what, and the corrections of these: a short log, quickly replayed.
fn about_people(log: &[Entry]) -> Vec<Entry> {
    let mut kept: Vec<Entry> = Vec::new();
    let has = |kept: &[Entry], id: EntryId| kept.iter().any(|entry| entry.id == id);
    for entry in log {
        let event = match &entry.event {
            event if says_who(event) => event.clone(),
            Event::Insert { event, .. } if says_who(event) => event.as_ref().clone(),
            Event::Retract { entry: of } | Event::Reinstate { entry: of } | Event::Replace { entry: of, .. }
                if has(&kept, *of) =>
            {
                entry.event.clone()
            }
            _ => continue,
        };
        kept.push(Entry { id: entry.id, at: None, event });
    }
    kept
}

const fn says_who(event: &Event) -> bool {
    matches!(event, Event::Team { .. } | Event::Player { .. } | Event::Card { .. } | Event::Heading(_))
}

#[cfg(test)]
mod tests {
    use benchbook_stats::field::Position;
    use benchbook_stats::team::Assignment;

    use super::*;

    pub(super) fn named(id: u32, number: &str, name: &str) -> Player {
        Player { number: number.into(), name: name.into(), ..Player::unnamed(PlayerId(id)) }
    }

    pub(super) fn log(events: Vec<Event>) -> Vec<Entry> {
        (1..).zip(events).map(|(id, event)| Entry { id: EntryId(id), at: None, event }).collect()
    }

    pub(super) fn herons(day: &str, players: Vec<Player>, batters: usize) -> Vec<Event> {
        let side = Side::Home;
        let mut events = vec![
            Event::Heading(benchbook_stats::log::Heading {
                date: benchbook_stats::log::day::read(day),
                ..Default::default()
            }),
            Event::Team { side, name: "Harbor Herons".into() },
        ];
        let order = players.iter().zip(Position::ALL).take(batters).map(|(p, at)| Assignment::new(p.id, at)).collect();
        events.extend(players.into_iter().map(|player| Event::Player { side, player }));
        events.push(Event::Card { side, card: Card { order, fielding_only: Vec::new() } });
        events
    }

    #[test]
    fn a_team_is_known_with_its_players_and_its_last_card() {
        let mut club = Club::default();
        club.add(&log(herons("2026-05-02", vec![named(1, "7", "Ana"), named(2, "12", "Bo")], 2)));
        club.add(&log(herons("2026-05-09", vec![named(1, "12", "Bo"), named(2, "8", "Ana"), named(3, "5", "Cy")], 2)));
        let team = club.team(" harbor herons").expect("known");
        let names: Vec<_> = team.players.iter().map(|p| (p.number.as_str(), p.name.as_str())).collect();
        assert_eq!(names, [("5", "Cy"), ("8", "Ana"), ("12", "Bo")], "as last written, once each, by number");
        let last = team.last.as_ref().expect("a card");
        assert_eq!(last.date, Date::new(2026, 5, 9).ok());
        assert_eq!(last.order.iter().map(|(p, _)| p.name.as_str()).collect::<Vec<_>>(), ["Bo", "Ana"]);
        assert_eq!(last.bench.iter().map(|p| p.name.as_str()).collect::<Vec<_>>(), ["Cy"]);
    }

    #[test]
    fn numbered_batters_make_no_team_known() {
        let mut club = Club::default();
        club.add(&log(herons("2026-05-02", (1..=9).map(|id| Player::unnamed(PlayerId(id))).collect(), 9)));
        assert_eq!(club, Club::default());
    }

    #[test]
    fn a_team_without_a_name_is_no_team() {
        let mut club = Club::default();
        club.add(&log(vec![Event::Player { side: Side::Home, player: named(1, "7", "Ana") }]));
        assert_eq!(club.teams().count(), 0);
    }

    #[test]
    fn what_was_taken_back_is_not_known() {
        let mut events = herons("2026-05-02", vec![named(1, "7", "Ana"), named(2, "12", "Bo")], 1);
        // The third entry is Ana, the fourth Bo.
        events.push(Event::PlayBall);
        events.push(Event::Player { side: Side::Home, player: named(2, "12", "Bob") });
        events.push(Event::Retract { entry: EntryId(7) });
        let mut club = Club::default();
        club.add(&log(events));
        let team = club.team("Harbor Herons").expect("known");
        assert_eq!(team.players.iter().map(|p| p.name.as_str()).collect::<Vec<_>>(), ["Ana", "Bo"]);
    }

    #[test]
    fn a_whole_game_gives_both_of_its_teams() {
        let text = include_str!("../../tests/games/harbor-league.benchbook.json");
        let file = benchbook_stats::file::read(text).expect("the game on paper");
        let mut club = Club::default();
        club.add(&file.log);
        assert_eq!(club.teams().count(), 2);
        let game = Game::replay(file.log);
        for side in Side::BOTH {
            let team = club.team(game.team_name(side)).expect("known");
            assert_eq!(team.players.len(), game.roster(side).count());
            assert!(team.last.as_ref().is_some_and(|last| last.order.len() >= 9));
        }
    }
}
