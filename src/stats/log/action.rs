//! What batter and runners did in one play: safe legs with their causes, outs, errors.

use serde::{Deserialize, Serialize};

use super::is_false;
use crate::field::{Base, Position};

/// What the batter and the runners did in one play, and the errors made in it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(default, deny_unknown_fields)]
pub struct Action {
    /// One for each who moved or was put out, in the order in which it mattered: a run listed before the third out
    /// crossed the plate before it. Runners not listed stay where they are.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub moves: Vec<Move>,
    /// The errors, each once, however many runners it helped.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub misplays: Vec<Misplay>,
}

impl Action {
    /// Nothing happened.
    pub const fn is_empty(&self) -> bool {
        self.moves.is_empty() && self.misplays.is_empty()
    }
}

/// Where someone stood when the play began.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Start {
    /// At the plate.
    Batter,
    /// On first.
    First,
    /// On second.
    Second,
    /// On third.
    Third,
}

impl Start {
    /// Bases from the plate: 0 for the batter, 3 for a runner on third.
    pub const fn number(self) -> u8 {
        self as u8
    }

    /// The base, `None` for the batter.
    pub const fn base(self) -> Option<Base> {
        Base::from_number(self as u8)
    }
}

impl From<Base> for Start {
    /// A runner on `base`; home stands for the batter.
    fn from(base: Base) -> Self {
        match base {
            Base::First => Self::First,
            Base::Second => Self::Second,
            Base::Third => Self::Third,
            Base::Home => Self::Batter,
        }
    }
}

/// One runner's way: the legs that ended safely, then the out if there was one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Move {
    /// Whose.
    pub from: Start,
    /// Safe legs, each to a base further on. Several bases for one cause are one leg.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub legs: Vec<Leg>,
    /// The out, if it ended in one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub out: Option<Out>,
}

impl Move {
    /// Safe at `to`, in one leg.
    pub fn safe(from: Start, to: Base, cause: Cause) -> Self {
        Self { from, legs: vec![Leg { to, cause }], out: None }
    }

    /// Put out.
    pub const fn out(from: Start, out: Out) -> Self {
        Self { from, legs: Vec::new(), out: Some(out) }
    }

    /// The base reached last, if any leg was safe.
    pub fn reached(&self) -> Option<Base> {
        self.legs.last().map(|leg| leg.to)
    }
}

/// Bases gained safely for one cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Leg {
    /// The base gained.
    pub to: Base,
    /// By what.
    pub cause: Cause,
}

/// Why a base was gained.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Cause {
    /// On the batted ball itself: the hit, or the ball on which an out was made.
    Play,
    /// On a throw made to put out somebody else.
    Throw,
    /// A fielder chose to try for somebody else, and this one could have been put out.
    Choice,
    /// On an error: its place in the action's `misplays`, counted from 0.
    Error(u8),
    /// Awarded for a fielder's obstruction.
    Obstruction,
    /// Awarded for interference (other than the catcher's with the batter).
    Interference,
    /// Awarded by the umpire otherwise: the ball out of play, a ground rule.
    Award,
    /// Forced along by a walk or a hit batter. The replay fills it in.
    Forced,
    /// Stole it.
    Steal,
    /// On a wild pitch.
    WildPitch,
    /// On a passed ball.
    PassedBall,
    /// On a balk.
    Balk,
    /// On an illegal pitch (softball).
    IllegalPitch,
    /// The defence did not care.
    Indifference,
}

/// How somebody was put out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum How {
    /// The fly was caught, or called under the infield fly rule.
    Fly,
    /// Forced at a base, or the batter beaten to first.
    Force,
    /// Tagged.
    Tag,
    /// Struck out.
    Strikeout,
    /// On appeal: missed a base, or left too early on a catch.
    Appeal,
    /// Interfered with a fielder or the ball.
    Interference,
    /// Touched by a fair batted ball.
    HitByBall,
    /// Passed a runner ahead.
    Passing,
    /// Ran out of the base path, or gave up running.
    LeftPath,
    /// Batted out of turn.
    OutOfTurn,
    /// By another rule.
    OtherRule,
}

/// What a runner put out without a batted ball was about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Attempt {
    /// Stealing.
    Steal,
    /// Caught off base by a throw: if he broke for the next base it is a caught stealing by rule (OBR 9.07(h)).
    Pickoff,
    /// Trying to advance on a wild pitch, passed ball, error or throw.
    Advance,
}

/// An out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Out {
    /// How.
    pub how: How,
    /// The base at which, or towards which, it was made: the batter caught on a fly is out at first.
    pub at: Base,
    /// Who handled the ball, in order; the last has the putout. Empty where the rules name the fielder.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub by: Vec<Position>,
    /// What the runner was about, when there was no batted ball.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub attempt: Option<Attempt>,
}

impl Out {
    /// An out on a batted ball or a strikeout.
    pub fn new(how: How, at: Base, by: &[Position]) -> Self {
        Self { how, at, by: by.to_vec(), attempt: None }
    }
}

/// The kind of an error.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum MisplayKind {
    /// Failed to field a batted ball.
    Fielding,
    /// Threw badly.
    Throwing,
    /// Dropped or missed a good throw.
    Muff,
    /// Dropped a fly.
    DroppedFly,
    /// Dropped a foul fly, and the batter's turn went on.
    DroppedFoul,
    /// Obstructed a runner.
    Obstruction,
    /// Hindered the batter.
    Interference,
}

/// An error.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Misplay {
    /// Charged to.
    pub by: Position,
    /// Kind.
    pub kind: MisplayKind,
    /// Who handled the ball before: they have assists if the error alone prevented the out.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub after: Vec<Position>,
    /// Who would have been out but for it. With an advance by the same error named in `moves` this need not be given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spared: Option<Start>,
    /// The runner spared was stealing: a caught stealing is charged, and no stolen base (OBR 9.07(f)).
    #[serde(default, skip_serializing_if = "is_false")]
    pub stealing: bool,
}

impl Misplay {
    /// An error of `kind` by `by`.
    pub const fn new(by: Position, kind: MisplayKind) -> Self {
        Self { by, kind, after: Vec::new(), spared: None, stealing: false }
    }
}
