//! The moment a play is made up for, and the pieces all plays are made of.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::game::{Game, Situation};
use benchbook_stats::log::{Action, Cause, Leg, Misplay, MisplayKind, Move, Out, Start};

use super::Dice;

/// Runners, from the one who is nearest to the batter.
pub(super) const RUNNERS: [Start; 3] = [Start::First, Start::Second, Start::Third];
/// Fielders of the infield.
pub(super) const INFIELD: &[Position] = &[
    Position::Pitcher,
    Position::Catcher,
    Position::FirstBase,
    Position::SecondBase,
    Position::ThirdBase,
    Position::Shortstop,
];
/// Fielders of the outfield.
pub(super) const OUTFIELD: &[Position] =
    &[Position::LeftField, Position::CenterField, Position::RightField, Position::ShortField];

/// The moment.
pub(super) struct Scene<'a> {
    pub game: &'a Game,
    pub s: Situation,
    pub dice: &'a mut Dice,
    /// Positions that are filled, or may be named all the same.
    pub posts: Vec<Position>,
}

impl<'a> Scene<'a> {
    pub fn new(game: &'a Game, s: Situation, dice: &'a mut Dice) -> Self {
        let lineup = game.lineup(s.fielding());
        let machine = !game.code().players_pitch;
        let filled = |p: &Position| lineup.is_some_and(|l| l.at(*p).is_some()) || (machine && *p == Position::Pitcher);
        let posts = Position::ALL.into_iter().filter(filled).collect();
        Self { game, s, dice, posts }
    }

    pub const fn outs_left(&self) -> u8 {
        3 - self.s.outs
    }

    pub fn runners(&self) -> Vec<Start> {
        RUNNERS.into_iter().filter(|start| self.s.at(*start).is_some()).collect()
    }

    /// Somebody of the pool who is there, else anybody.
    pub fn fielder(&mut self, pool: &[Position]) -> Position {
        let there: Vec<Position> = pool.iter().copied().filter(|p| self.posts.contains(p)).collect();
        if there.is_empty() { self.dice.pick(&self.posts.clone()) } else { self.dice.pick(&there) }
    }

    /// One to three fielders, the last with the putout.
    pub fn chain(&mut self, from: &[Position], to: &[Position]) -> Vec<Position> {
        let mut chain = vec![self.fielder(from)];
        if self.dice.percent(15) {
            chain.push(self.fielder(INFIELD));
        }
        chain.push(self.fielder(to));
        chain.dedup();
        chain
    }

    /// Many throws to and fro.
    pub fn rundown(&mut self) -> Vec<Position> {
        let (a, b, c) = (self.fielder(INFIELD), self.fielder(INFIELD), self.fielder(INFIELD));
        let mut chain = vec![a, b, a, b];
        chain.truncate(2 + self.dice.below(3));
        if self.dice.percent(50) {
            chain.extend([c, a]);
        }
        chain.dedup();
        chain
    }

    /// Where each runner ends, from the one behind on, if the one behind them all ends at `behind` (0: nowhere) and they
    /// usually go `usual` bases. Nobody passes anybody.
    pub fn spread(&mut self, mut behind: u8, usual: u8) -> Vec<(Start, u8)> {
        let mut ends = Vec::new();
        for start in self.runners() {
            let least = if behind == 0 { start.number() } else { start.number().max((behind + 1).min(4)) };
            let gain = match self.dice.below(10) {
                0..=5 => usual,
                6 => usual + 1,
                7 => usual + 2,
                8 => usual.saturating_sub(1),
                _ => 0,
            };
            let end = least.max(start.number() + gain).min(4);
            ends.push((start, end));
            behind = end;
        }
        ends
    }

    /// Legs from `from` to `end`: some for the main cause, the rest, perhaps, for one of the later ones.
    pub fn legs(&mut self, from: u8, end: u8, main: Cause, later: &[Cause]) -> Vec<Leg> {
        let mut legs = Vec::new();
        let split = if later.is_empty() || end < from + 2 || self.dice.percent(60) {
            end
        } else {
            from + 1 + self.dice.small(end - from - 1)
        };
        legs.extend(leg(split, main));
        if split < end {
            let cause = self.dice.pick(later);
            legs.extend(leg(end, cause));
        }
        legs
    }

    /// A runner put out: at once, or after some safe legs, ahead or back at the base.
    pub fn put_out(&mut self, start: Start, cause: Cause, out: impl FnOnce(&mut Self, Base) -> Out) -> Move {
        let from = start.number();
        let mut at = from + 1;
        let mut legs = Vec::new();
        if from < 3 && self.dice.percent(30) {
            let to = from + 1 + self.dice.small(3 - from);
            legs.extend(leg(to, cause));
            at = if self.dice.percent(30) { to } else { to + 1 };
        }
        let at = Base::from_number(at).unwrap_or(Base::Home);
        Move { from: start, legs, out: Some(out(self, at)) }
    }
}

/// A leg to the base of that number.
pub(super) fn leg(to: u8, cause: Cause) -> Option<Leg> {
    Base::from_number(to).map(|to| Leg { to, cause })
}

/// What happens in a play, as it is made up.
#[derive(Default)]
pub(super) struct Draft {
    pub moves: Vec<Move>,
    pub misplays: Vec<Misplay>,
}

impl Draft {
    /// An error, and the cause that names it.
    pub fn error(&mut self, by: Position, kind: MisplayKind) -> Cause {
        self.misplays.push(Misplay::new(by, kind));
        Cause::Error(self.misplays.len() as u8 - 1)
    }

    pub fn has(&self, start: Start) -> bool {
        self.moves.iter().any(|m| m.from == start)
    }

    pub fn outs(&self) -> u8 {
        self.moves.iter().filter(|m| m.out.is_some()).count() as u8
    }

    /// Runners not yet accounted for go where they usually go.
    pub fn follow(&mut self, scene: &mut Scene, behind: u8, usual: u8, main: Cause, later: &[Cause]) {
        for (start, end) in scene.spread(behind, usual) {
            if !self.has(start) && end > start.number() {
                let legs = scene.legs(start.number(), end, main, later);
                self.moves.push(Move { from: start, legs, out: None });
            }
        }
    }

    /// The play with those who are safe from the lead runner on, and the outs before or after them.
    pub fn action(mut self, scene: &mut Scene) -> Action {
        let outs_first = scene.dice.percent(40);
        self.moves.sort_by_key(|m| (m.out.is_some() != outs_first, core::cmp::Reverse(m.from.number())));
        Action { moves: self.moves, misplays: self.misplays }
    }
}
