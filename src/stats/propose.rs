//! What usually follows from what the scorer touched: outcomes of a play, the likeliest first, each a complete `Event`.
//!
//! Nothing here decides anything: the scorer picks, and `Game::record` judges. The order and the running are common
//! practice, no source; where a rule limits what can be proposed it is cited. Outcomes are data, for whoever words them.

use crate::code::Code;
use crate::field::{Base, Position};
use crate::game::{Game, Situation};
use crate::log::{Action, Attempt, Batted, Event, InPlay, Misplay, Move, Spot, Start, Trajectory};

mod air;
mod bases;
pub mod edit;
pub mod ends;
mod ground;
mod hit;
mod people;
mod place;
pub mod possible;
mod region;
mod running;
mod strike_three;
#[cfg(test)]
mod tests;

pub use bases::{chased, is_on_pitch, on_runner, usual_chase};
pub use people::{bench, changes};
pub use place::{fence, is_beyond_fence, is_fair, nearest, usual_spot};
pub use region::region;
pub use strike_three::{GotAway, strike_three_got_away};

/// What the scorer saw of a ball in play so far.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Seen {
    /// Where it landed or was first handled, if the scorer touched a point of the field.
    pub spot: Option<Spot>,
    /// The point was touched before any fielder: the ball came down there, and nobody caught it.
    pub landed: bool,
    /// Who handled it, in order. Empty if only a point was touched.
    pub fielders: Vec<Position>,
    /// How it came off the bat, if the scorer said so.
    pub trajectory: Option<Trajectory>,
    /// The scorer said that it was foul.
    pub foul: bool,
}

/// One outcome that can be recorded as it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Proposal {
    /// What it is, to be put into words; what else the runners do is in the event.
    pub outcome: Outcome,
    /// What to record.
    pub event: Event,
}

/// What an outcome is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// The batter is out at first on a ball on the ground.
    GroundOut {
        /// Who handled it, the putout last.
        by: Vec<Position>,
    },
    /// A bunt: the batter is out at first, runners move up.
    BuntOut {
        /// Who handled it.
        by: Vec<Position>,
    },
    /// Caught in the air.
    Caught {
        /// By whom.
        by: Position,
        /// What.
        trajectory: Trajectory,
        /// In foul territory.
        foul: bool,
        /// Called under the infield fly rule.
        infield_fly: bool,
    },
    /// Two out on one ball.
    DoublePlay {
        /// Who handled it.
        by: Vec<Position>,
    },
    /// Three out on one ball.
    TriplePlay {
        /// Who handled it.
        by: Vec<Position>,
    },
    /// A runner is out and the batter is safe on the choice.
    RunnerOut {
        /// Who is out.
        who: Start,
        /// Where.
        at: Base,
        /// Who handled it.
        by: Vec<Position>,
    },
    /// A runner is caught between bases.
    Rundown {
        /// Who is out.
        who: Start,
        /// Who handled it.
        by: Vec<Position>,
    },
    /// The defence tried for a runner and got nobody.
    AllSafe,
    /// A hit.
    Hit {
        /// Bases, 1 to 4.
        bases: u8,
        /// It did not leave the infield.
        infield: bool,
    },
    /// Over the fence.
    HomeRun,
    /// Bounced out of play: two bases for everyone (OBR 5.05(a)(6)).
    GroundRuleDouble,
    /// A hit, and somebody was put out going further.
    HitAndOut {
        /// Bases of the hit.
        bases: u8,
        /// Who is out.
        who: Start,
        /// Where.
        at: Base,
        /// Who handled it.
        by: Vec<Position>,
    },
    /// A hit, and everybody gains a base more on an error.
    HitAndError {
        /// Bases of the hit.
        bases: u8,
        /// Whose error.
        by: Position,
    },
    /// The batter reaches on a ball not fielded.
    FieldingError {
        /// Whose.
        by: Position,
    },
    /// The batter reaches on a bad throw.
    ThrowingError {
        /// Whose.
        by: Position,
        /// Where the batter ends.
        to: Base,
    },
    /// The batter reaches on a throw not held.
    Muff {
        /// Whose.
        by: Position,
    },
    /// A fly dropped.
    DroppedFly {
        /// By whom.
        by: Position,
    },
    /// A foul fly dropped: the turn goes on.
    DroppedFoul {
        /// By whom.
        by: Position,
    },
    /// The batter is out for interference with the fielder of his own ball.
    BatterInterfered,
    /// A runner is touched by the fair ball.
    RunnerHit {
        /// Who.
        who: Start,
    },

    /// Steals.
    Steal {
        /// Who.
        who: Start,
        /// To where.
        to: Base,
    },
    /// All on base steal at once.
    StealTogether,
    /// Out on the bases without a batted ball.
    OutOnBases {
        /// Who.
        who: Start,
        /// Where.
        at: Base,
        /// What he was about.
        attempt: Attempt,
        /// Who handled it.
        by: Vec<Position>,
    },
    /// Safe on an error without a batted ball.
    SafeOnError {
        /// Who.
        who: Start,
        /// To where.
        to: Base,
        /// Whose error.
        by: Position,
        /// It was a bad throw; else a throw or ball not held.
        throw: bool,
    },
    /// Wild pitch.
    WildPitch,
    /// Passed ball.
    PassedBall,
    /// Balk.
    Balk,
    /// Illegal pitch on which the runners move up (softball).
    IllegalPitch,
    /// The defence did not care.
    Indifference {
        /// Who.
        who: Start,
        /// To where.
        to: Base,
    },
    /// Strike three not caught, and the batter reaches.
    StrikeThreeSafe(GotAway),
    /// Strike three not caught, and the batter is put out all the same.
    StrikeThreeOut {
        /// Who handled it.
        by: Vec<Position>,
    },
    /// Strike three not caught; another runner is forced out.
    StrikeThreeForce {
        /// Who is out.
        who: Start,
        /// Where.
        at: Base,
        /// Who handled it.
        by: Vec<Position>,
    },
}

/// The outcomes of a ball in play, the usual one first. Empty while nothing has been touched.
///
/// Every one is accepted by `Game::record` as long as play is on and the fielders named are in the game.
pub fn in_play(game: &Game, seen: &Seen) -> Vec<Proposal> {
    let scene = Scene::now(game);
    let Some(first) = seen.fielders.first().copied().or_else(|| seen.spot.map(|spot| scene.handled_by(spot))) else {
        return Vec::new();
    };
    let touch = Touch::new(&scene, seen, first);
    let mut list = Vec::new();
    if touch.foul {
        air::foul(&scene, &touch, &mut list);
    } else if touch.over_fence {
        hit::over_fence(&scene, &touch, &mut list);
    } else if first.is_outfield() {
        hit::to_outfield(&scene, &touch, &mut list);
    } else {
        ground::to_infield(&scene, &touch, &mut list);
    }
    let mut seen_events: Vec<Event> = Vec::new();
    list.retain(|p| {
        let fresh = !seen_events.contains(&p.event);
        if fresh {
            seen_events.push(p.event.clone());
        }
        fresh
    });
    list
}

/// The moment in which proposals are made.
pub(crate) struct Scene<'a> {
    s: Situation,
    code: &'a Code,
    /// By position number.
    present: [bool; 11],
}

impl<'a> Scene<'a> {
    fn now(game: &'a Game) -> Self {
        Self::at(game, *game.situation())
    }

    fn at(game: &'a Game, s: Situation) -> Self {
        let mut present = [false; 11];
        if let Some(lineup) = game.lineup(s.fielding()) {
            for position in lineup.everyone().filter_map(|a| a.post.position()) {
                present[usize::from(position.number())] = true;
            }
        }
        // A machine or a coach pitches: the ball can still come back to that place.
        if !game.code().players_pitch {
            present[usize::from(Position::Pitcher.number())] = true;
        }
        Self { s, code: game.code(), present }
    }

    fn has(&self, position: Position) -> bool {
        self.present[usize::from(position.number())]
    }

    /// The fielder of the nine or ten who is nearest to a point.
    fn handled_by(&self, spot: Spot) -> Position {
        nearest(spot, |p| self.has(p))
    }

    fn occupied(&self, base: Base) -> bool {
        self.s.on(base).is_some()
    }

    /// Outs that can still be made in this half.
    fn outs_left(&self) -> usize {
        usize::from(3_u8.saturating_sub(self.s.outs))
    }
}

/// A ball in play as touched, with what was left open filled in.
pub(crate) struct Touch {
    chain: Vec<Position>,
    spot: Spot,
    /// It came down there.
    landed: bool,
    said: Option<Trajectory>,
    foul: bool,
    over_fence: bool,
}

impl Touch {
    fn new(scene: &Scene, seen: &Seen, first: Position) -> Self {
        let mut chain = seen.fielders.clone();
        if chain.is_empty() {
            chain.push(first);
        }
        chain.retain(|p| scene.has(*p));
        if chain.is_empty() {
            chain.push(first);
        }
        let spot = seen.spot.unwrap_or_else(|| usual_spot(first));
        let fair = is_fair(spot) || (seen.spot.is_none() && !seen.foul);
        Self {
            chain,
            spot,
            landed: seen.spot.is_some() && (seen.landed || seen.fielders.is_empty()),
            said: seen.trajectory,
            foul: seen.foul || !fair,
            over_fence: seen.spot.is_some() && fair && is_beyond_fence(spot),
        }
    }

    fn first(&self) -> Position {
        self.chain[0]
    }

    /// The scorer left it open, or said this.
    fn may_be(&self, trajectory: Trajectory) -> bool {
        self.said.is_none_or(|said| said == trajectory)
    }

    fn ball(&self, trajectory: Trajectory) -> Batted {
        Batted {
            trajectory: self.said.unwrap_or(trajectory),
            spot: Some(self.spot),
            fielders: self.chain.clone(),
            foul: false,
            left_park: false,
            infield_fly: false,
        }
    }
}

fn ball_in_play(outcome: Outcome, ball: Batted, moves: Vec<Move>, misplays: Vec<Misplay>) -> Proposal {
    let action = Action { moves, misplays };
    let event = Event::InPlay(InPlay { ball, action, kind: None, speed: None, pitches_missed: false });
    Proposal { outcome, event }
}
