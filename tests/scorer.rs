//! A scorer who writes plays in a line each: nine against nine, no names, every event through the game's own gate.
//!
//! Visitors are players 1 to 9 in batting order, the home side 101 to 109. The first of each pitches, the second catches
//! and so on by position number; 10 to 19 and 110 to 119 are on the bench.
//!
//! ```
//! use benchbook_tests::scorer::{Scorer, to};
//! use benchbook_stats::field::Base::{First, Home, Third};
//!
//! let mut book = Scorer::nine();
//! book.walk().single(&[to(First, Third)]).ground_out(&[to(Third, Home)]);
//! assert_eq!(book.game().situation().score, [1, 0]);
//! ```

use benchbook_stats::code::{Code, Preset};
use benchbook_stats::field::{Base, Position, Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::{
    Action, Batted, Call, Cause, Entry, EntryId, Event, How, InPlay, Judgment, Leg, Misplay, MisplayKind, Move, Out,
    Pitch, Running, Start, Status, Trajectory, Unseen, UnseenResult,
};
use benchbook_stats::team::{Assignment, Card, Change, Player, PlayerId, Role};

/// The home side's starting pitcher: "Peter" of the rule book's examples.
pub const PETER: PlayerId = PlayerId(101);
/// The home side's first reliever.
pub const ROGER: PlayerId = PlayerId(111);
/// The home side's second reliever.
pub const SIERRA: PlayerId = PlayerId(112);
/// The visitors' starting pitcher.
pub const VISITING_STARTER: PlayerId = PlayerId(1);

/// A runner moves on the batted ball.
pub fn to(from: Base, to: Base) -> Move {
    by(from, to, Cause::Play)
}

/// A runner moves for another cause.
pub fn by(from: Base, to: Base, cause: Cause) -> Move {
    Move::safe(from.into(), to, cause)
}

/// A runner goes on, in the same play, for another cause.
pub fn then(mut first: Move, to: Base, cause: Cause) -> Move {
    first.legs.push(Leg { to, cause });
    first
}

/// A runner is forced out by the shortstop's throw (the catcher's putout at home).
pub fn forced(from: Base, at: Base) -> Move {
    Move::out(from.into(), Out::new(How::Force, at, &[Position::Shortstop, covering(at)]))
}

/// A runner is tagged out.
pub fn tagged(from: Base, at: Base) -> Move {
    Move::out(from.into(), Out::new(How::Tag, at, &[Position::Shortstop, covering(at)]))
}

const fn covering(base: Base) -> Position {
    match base {
        Base::First => Position::FirstBase,
        Base::Second => Position::SecondBase,
        Base::Third => Position::ThirdBase,
        Base::Home => Position::Catcher,
    }
}

/// A game being scored.
#[derive(Clone, Debug)]
pub struct Scorer {
    game: Game,
}

impl Scorer {
    /// Nine innings of baseball, at the first pitch.
    pub fn nine() -> Self {
        Self::by_code(Preset::Baseball9.code())
    }

    /// A game by this code, at the first pitch.
    ///
    /// # Panics
    /// If the code has no use for nine batters at positions 1 to 9.
    pub fn by_code(code: Code) -> Self {
        let mut book = Self { game: Game::new() };
        book.record(Event::Rules(Box::new(code)));
        for side in Side::BOTH {
            let first = if side == Side::Visitors { 1 } else { 101 };
            for id in first..first + 19 {
                book.record(Event::Player { side, player: Player::unnamed(PlayerId(id)) });
            }
            let order = (0..9).map(|i| Assignment::new(PlayerId(first + i), Position::ALL[i as usize])).collect();
            book.record(Event::Card { side, card: Card { order, fielding_only: Vec::new() } });
        }
        book.record(Event::PlayBall);
        book
    }

    /// The game so far.
    pub fn game(&self) -> &Game {
        &self.game
    }

    /// The entry recorded last.
    pub fn last(&self) -> EntryId {
        EntryId(self.game.next_id().0 - 1)
    }

    /// Records any event.
    ///
    /// # Panics
    /// If the game refuses it.
    pub fn record(&mut self, event: Event) -> &mut Self {
        let id = self.game.next_id();
        let said = format!("{event:?}");
        if let Err(refusal) = self.game.record(Entry { id, at: None, event }) {
            panic!("entry {}: {refusal}\n{said}\n{:?}", id.0, self.game.situation());
        }
        self
    }

    // ---- Without a batted ball ----

    fn unseen(&mut self, result: UnseenResult, moves: &[Move]) -> &mut Self {
        self.record(Event::Unseen(Unseen { result, action: Action { moves: moves.to_vec(), misplays: Vec::new() } }))
    }

    /// A base on balls.
    pub fn walk(&mut self) -> &mut Self {
        self.unseen(UnseenResult::Walk, &[])
    }

    /// Hit by a pitch.
    pub fn hit_batter(&mut self) -> &mut Self {
        self.unseen(UnseenResult::HitByPitch, &[])
    }

    /// Struck out.
    pub fn strikeout(&mut self) -> &mut Self {
        self.unseen(UnseenResult::StrikeoutSwinging, &[])
    }

    /// Strike three not caught: the batter reaches first for this cause.
    pub fn strikeout_reaches(&mut self, cause: Cause, misplays: &[Misplay], runners: &[Move]) -> &mut Self {
        let mut moves = runners.to_vec();
        moves.push(Move::safe(Start::Batter, Base::First, cause));
        let action = Action { moves, misplays: misplays.to_vec() };
        self.record(Event::Unseen(Unseen { result: UnseenResult::StrikeoutSwinging, action }))
    }

    /// First base on the catcher's interference.
    pub fn catcher_interference(&mut self) -> &mut Self {
        self.unseen(UnseenResult::CatcherInterference, &[])
    }

    /// One pitch.
    pub fn pitch(&mut self, call: Call) -> &mut Self {
        self.record(Event::Pitch(Pitch::new(call)))
    }

    /// So many balls, then so many called strikes.
    pub fn count(&mut self, balls: u8, strikes: u8) -> &mut Self {
        for _ in 0..balls {
            self.pitch(Call::Ball);
        }
        for _ in 0..strikes {
            self.pitch(Call::CalledStrike);
        }
        self
    }

    /// A foul fly is dropped, and the batter's turn goes on.
    pub fn foul_fly_muffed(&mut self, by: Position) -> &mut Self {
        let mut pitch = Pitch::new(Call::Foul);
        pitch.action.misplays.push(Misplay::new(by, MisplayKind::DroppedFoul));
        self.record(Event::Pitch(pitch))
    }

    /// Runners move for this cause: a steal, a wild pitch, a balk ...
    pub fn running(&mut self, moves: &[Move]) -> &mut Self {
        self.erring(moves, &[])
    }

    /// Runners move, with errors.
    pub fn erring(&mut self, moves: &[Move], misplays: &[Misplay]) -> &mut Self {
        let action = Action { moves: moves.to_vec(), misplays: misplays.to_vec() };
        self.record(Event::Running(Running { action, same_play: false }))
    }

    /// The same play goes on.
    pub fn same_play(&mut self, moves: &[Move]) -> &mut Self {
        let action = Action { moves: moves.to_vec(), misplays: Vec::new() };
        self.record(Event::Running(Running { action, same_play: true }))
    }

    // ---- Batted balls ----

    /// Any ball in play: the runners' moves, then the batter's.
    pub fn in_play(&mut self, ball: Batted, runners: &[Move], batter: Move, misplays: &[Misplay]) -> &mut Self {
        let mut moves = runners.to_vec();
        moves.push(batter);
        let action = Action { moves, misplays: misplays.to_vec() };
        self.record(Event::InPlay(InPlay { ball, action, kind: None, speed: None, pitches_missed: false }))
    }

    fn hit(&mut self, base: Base, runners: &[Move]) -> &mut Self {
        let batter = Move::safe(Start::Batter, base, Cause::Play);
        self.in_play(ball(Trajectory::Line, Position::CenterField), runners, batter, &[])
    }

    /// A single.
    pub fn single(&mut self, runners: &[Move]) -> &mut Self {
        self.hit(Base::First, runners)
    }

    /// A double.
    pub fn double(&mut self, runners: &[Move]) -> &mut Self {
        self.hit(Base::Second, runners)
    }

    /// A triple.
    pub fn triple(&mut self, runners: &[Move]) -> &mut Self {
        self.hit(Base::Third, runners)
    }

    /// A home run: everyone scores.
    pub fn home_run(&mut self) -> &mut Self {
        let runners: Vec<Move> = self.game.situation().runners().rev().map(|(base, _)| to(base, Base::Home)).collect();
        let mut over_the_fence = ball(Trajectory::Fly, Position::CenterField);
        over_the_fence.left_park = true;
        self.in_play(over_the_fence, &runners, Move::safe(Start::Batter, Base::Home, Cause::Play), &[])
    }

    /// The batter is thrown out at first.
    pub fn ground_out(&mut self, runners: &[Move]) -> &mut Self {
        let out = Out::new(How::Force, Base::First, &[Position::Shortstop, Position::FirstBase]);
        self.in_play(ball(Trajectory::Ground, Position::Shortstop), runners, Move::out(Start::Batter, out), &[])
    }

    /// The fly is caught; the batter's out comes before what the runners do.
    pub fn fly_out(&mut self, runners: &[Move]) -> &mut Self {
        let out = Out::new(How::Fly, Base::First, &[Position::CenterField]);
        let mut moves = vec![Move::out(Start::Batter, out)];
        moves.extend_from_slice(runners);
        let action = Action { moves, misplays: Vec::new() };
        let ball = ball(Trajectory::Fly, Position::CenterField);
        self.record(Event::InPlay(InPlay { ball, action, kind: None, speed: None, pitches_missed: false }))
    }

    /// Safe at first on a fielder's choice.
    pub fn choice(&mut self, runners: &[Move]) -> &mut Self {
        let batter = Move::safe(Start::Batter, Base::First, Cause::Choice);
        self.in_play(ball(Trajectory::Ground, Position::Shortstop), runners, batter, &[])
    }

    /// Safe at first on a fielding error, [`Cause::Error`] number 0.
    pub fn error(&mut self, by: Position, runners: &[Move]) -> &mut Self {
        self.reaches_on(Misplay::new(by, MisplayKind::Fielding), runners)
    }

    /// Safe at first on this misplay, [`Cause::Error`] number 0.
    pub fn reaches_on(&mut self, misplay: Misplay, runners: &[Move]) -> &mut Self {
        let batter = Move::safe(Start::Batter, Base::First, Cause::Error(0));
        let trajectory = if misplay.kind == MisplayKind::DroppedFly { Trajectory::Fly } else { Trajectory::Ground };
        self.in_play(ball(trajectory, misplay.by), runners, batter, &[misplay])
    }

    // ---- People and the game ----

    /// A new pitcher for the side in the field.
    ///
    /// # Panics
    /// If nobody pitches.
    pub fn relieve(&mut self, incoming: PlayerId) -> &mut Self {
        let (side, outgoing) = (self.game.situation().fielding(), self.game.situation().pitcher);
        let outgoing = outgoing.expect("somebody pitches");
        let role = Role::Fielder(Post::Fields(Position::Pitcher));
        self.record(Event::Change { side, change: Change::Substitute { outgoing, incoming, role } })
    }

    /// A judgment.
    pub fn judge(&mut self, judgment: Judgment) -> &mut Self {
        self.record(Event::Judgment(judgment))
    }

    /// The umpire ends or stops the game.
    pub fn status(&mut self, status: Status) -> &mut Self {
        self.record(Event::Status(status))
    }

    /// Strikeouts until the half-inning is over.
    pub fn side_retired(&mut self) -> &mut Self {
        let now = |s: &Self| (s.game.situation().inning, s.game.situation().half, s.game.situation().phase);
        let before = now(self);
        while now(self) == before {
            self.strikeout();
        }
        self
    }

    /// So many half-innings of strikeouts.
    pub fn halves(&mut self, n: u32) -> &mut Self {
        for _ in 0..n {
            self.side_retired();
        }
        self
    }
}

/// A batted ball that this fielder handled.
pub fn ball(trajectory: Trajectory, fielder: Position) -> Batted {
    Batted { trajectory, spot: None, fielders: vec![fielder], foul: false, left_park: false, infield_fly: false }
}
