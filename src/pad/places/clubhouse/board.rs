//! What the board in the list shows of a game: who plays, the score, and how far they are.

use benchbook_stats::field::{Half, Side};
use benchbook_stats::game::{Ending, Game, Phase};
use jiff::civil::Date;

use crate::place::Room;
use crate::places::team_name;
use crate::words::say;

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
            teams: Side::BOTH.map(|side| team_name(game, side)),
            score: (situation.phase != Phase::Before).then_some(situation.score),
            state: state(game),
            heading: parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · "),
            room: room(game),
            conflicts: game.conflicts().count(),
        }
    }

    /// "Herons at Foxes".
    pub fn title(&self) -> String {
        say!("clubhouse-title", visitors = self.teams[0].as_str(), home = self.teams[1].as_str())
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
    let half = match situation.half {
        Half::Top => "top",
        Half::Bottom => "bottom",
    };
    let (inning, outs) = (situation.inning, situation.outs);
    match situation.phase {
        Phase::Before => say!("clubhouse-before"),
        Phase::Underway => say!("clubhouse-underway", half = half, inning = inning, outs = outs),
        Phase::Delayed => say!("clubhouse-delayed", half = half, inning = inning, outs = outs),
        Phase::Suspended => say!("clubhouse-suspended", half = half, inning = inning, outs = outs),
        Phase::Over(ending) => over(game, ending),
    }
}

fn over(game: &Game, ending: Ending) -> String {
    let innings = game.situation().inning;
    match ending {
        Ending::Played if innings == game.code().innings => say!("clubhouse-final"),
        Ending::Played | Ending::Declared => say!("clubhouse-final-in", innings = innings),
        Ending::Mercy => say!("clubhouse-final-by-lead", innings = innings),
        Ending::Called => say!("clubhouse-called", innings = innings),
        Ending::Forfeited(side) => say!("clubhouse-forfeited", team = team_name(game, side)),
    }
}

/// "9 May 2026".
fn day(date: Date) -> String {
    say!("clubhouse-day", day = date.day(), month = date.month(), year = date.year())
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
            cards: [None, None],
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
