//! What the board in the list shows of a game: who plays, the score, and how far they are.

use benchbook_stats::field::Side;
use benchbook_stats::game::{Ending, Game, Phase};
use jiff::civil::Date;

use crate::place::Room;

/// A game's board.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Board {
    /// Names: visitors, home.
    pub teams: [String; 2],
    /// Runs: visitors, home. `None` before the first pitch.
    pub score: Option<[u16; 2]>,
    /// How far they are, in words.
    pub state: String,
    /// Day, place and competition, as far as noted.
    pub heading: String,
    /// Where its scorer goes on: the Card until both are in, the Book once it is over.
    pub room: Room,
    /// Entries that no longer fit.
    pub conflicts: usize,
}

impl Board {
    /// The board of `game`.
    pub fn of(game: &Game) -> Self {
        let situation = game.situation();
        let heading = game.heading();
        let day = heading.date.map(day).unwrap_or_default();
        let parts = [day.as_str(), heading.start.as_str(), heading.place.as_str(), heading.competition.as_str()];
        Self {
            teams: Side::BOTH.map(|side| game.team_name(side).to_owned()),
            score: (situation.phase != Phase::Before).then_some(situation.score),
            state: state(game),
            heading: parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · "),
            room: room(game),
            conflicts: game.conflicts().count(),
        }
    }

    /// "Herons at Foxes".
    pub fn title(&self) -> String {
        format!("{} at {}", self.teams[0], self.teams[1])
    }
}

fn room(game: &Game) -> Room {
    match game.situation().phase {
        Phase::Over(_) => Room::Book,
        Phase::Before if Side::BOTH.iter().any(|&side| game.lineup(side).is_none()) => Room::Card,
        Phase::Before | Phase::Underway | Phase::Delayed | Phase::Suspended => Room::Plate,
    }
}

/// How far a game is: "Bottom 7, 1 out".
fn state(game: &Game) -> String {
    let situation = game.situation();
    let half = format!("{} {}", situation.half, situation.inning);
    let outs = match situation.outs {
        0 => "no outs".to_owned(),
        1 => "1 out".to_owned(),
        outs => format!("{outs} outs"),
    };
    let words = match situation.phase {
        Phase::Before => "Before the first pitch".to_owned(),
        Phase::Underway => format!("{half}, {outs}"),
        Phase::Delayed => format!("Delayed in the {half}, {outs}"),
        Phase::Suspended => format!("Suspended in the {half}, {outs}"),
        Phase::Over(ending) => over(game, ending),
    };
    let mut letters = words.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

fn over(game: &Game, ending: Ending) -> String {
    let innings = game.situation().inning;
    match ending {
        Ending::Played if innings == game.code().innings => "Final".to_owned(),
        Ending::Played | Ending::Declared => format!("Final in {innings}"),
        Ending::Mercy => format!("Final in {innings}, by the lead"),
        Ending::Called => format!("Called in {innings}"),
        Ending::Forfeited(side) => format!("Forfeited to {}", game.team_name(side)),
    }
}

fn day(date: Date) -> String {
    const MONTHS: [&str; 12] = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let month = usize::try_from(date.month() - 1).ok().and_then(|month| MONTHS.get(month)).unwrap_or(&"");
    format!("{} {month} {}", date.day(), date.year())
}

#[cfg(test)]
mod tests {
    use benchbook_stats::code::Preset;
    use benchbook_stats::log::{Call, Entry, Event, Pitch, Status};

    use super::super::first_entries::{Choice, first_entries};
    use super::*;

    fn begun() -> Game {
        let choice = Choice {
            teams: ["Herons".into(), "Foxes".into()],
            preset: Preset::Baseball9,
            date: Date::new(2026, 5, 9).ok(),
            start: String::new(),
            numbered_batters: true,
        };
        let mut game = Game::new();
        for event in first_entries(&choice) {
            record(&mut game, event);
        }
        game
    }

    fn record(game: &mut Game, event: Event) {
        let entry = Entry { id: game.next_id(), at: None, event };
        game.record(entry).expect("it follows");
    }

    #[test]
    fn the_board_says_who_plays_and_how_far_they_are() {
        let mut game = begun();
        let board = Board::of(&game);
        assert_eq!(board.title(), "Herons at Foxes");
        assert_eq!((board.score, board.state.as_str()), (None, "Before the first pitch"));
        assert_eq!((board.room, Board::of(&Game::new()).room), (Room::Plate, Room::Card));
        assert_eq!(board.heading, "9 May 2026");
        record(&mut game, Event::PlayBall);
        for _ in 0..3 {
            record(&mut game, Event::Pitch(Pitch::new(Call::CalledStrike)));
        }
        let board = Board::of(&game);
        assert_eq!((board.score, board.state.as_str()), (Some([0, 0]), "Top 1, 1 out"));
        record(&mut game, Event::Status(Status::Delayed { why: "rain".into() }));
        assert_eq!(Board::of(&game).state, "Delayed in the top 1, 1 out");
        record(&mut game, Event::Status(Status::Called { why: "rain".into() }));
        let board = Board::of(&game);
        assert_eq!((board.state.as_str(), board.room), ("Called in 1", Room::Book));
    }
}
