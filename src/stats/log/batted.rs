//! Balls in play, and plate appearances of which only the result was seen.

use serde::{Deserialize, Serialize};

use super::{Action, PitchKind, is_false};
use crate::field::Position;

/// How the ball came off the bat.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Trajectory {
    /// On the ground.
    Ground,
    /// A line drive.
    Line,
    /// A fly.
    Fly,
    /// A pop-up.
    Pop,
    /// A bunt.
    Bunt,
}

/// A point on the field, seen from home plate, in hundredths of the base path. First base is at (71, 71), second at
/// (0, 141), third at (-71, 71).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Spot {
    /// To the right of the line from home to second; negative to the left.
    pub x: i16,
    /// Towards second base and center field; negative behind the plate.
    pub y: i16,
}

/// A batted ball.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Batted {
    /// How it came off the bat.
    pub trajectory: Trajectory,
    /// Where it landed or was first handled.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spot: Option<Spot>,
    /// Who handled it, in order, outs or not.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fielders: Vec<Position>,
    /// It was in foul territory when caught.
    #[serde(default, skip_serializing_if = "is_false")]
    pub foul: bool,
    /// It left the park in fair territory.
    #[serde(default, skip_serializing_if = "is_false")]
    pub left_park: bool,
    /// The umpire called an infield fly.
    #[serde(default, skip_serializing_if = "is_false")]
    pub infield_fly: bool,
}

/// A ball in play and all that came of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct InPlay {
    /// The batted ball.
    pub ball: Batted,
    /// What the batter and each runner who moved did. The batter is always among them.
    pub action: Action,
    /// Kind of pitch, when someone noted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<PitchKind>,
    /// Speed in tenths of a mile per hour, when someone measured it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<u16>,
    /// Pitches of this plate appearance were missed: its pitch count is incomplete.
    #[serde(default, skip_serializing_if = "is_false")]
    pub pitches_missed: bool,
}

/// Something on the bases without a batted ball.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Running {
    /// What each runner who moved did.
    pub action: Action,
    /// It is one play with the entry before: the ball had not been dead in between (a strikeout and a runner thrown
    /// out, a steal on ball four).
    #[serde(default, skip_serializing_if = "is_false")]
    pub same_play: bool,
}

/// A plate appearance's result when its pitches were missed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum UnseenResult {
    /// Base on balls.
    Walk,
    /// Intentional base on balls.
    IntentionalWalk,
    /// Hit by a pitch.
    HitByPitch,
    /// Struck out swinging.
    StrikeoutSwinging,
    /// Struck out on a called strike.
    StrikeoutLooking,
    /// First base on the catcher's interference.
    CatcherInterference,
}

impl UnseenResult {
    /// All of them, the more frequent first.
    pub const ALL: [Self; 6] = [
        Self::Walk,
        Self::StrikeoutSwinging,
        Self::StrikeoutLooking,
        Self::HitByPitch,
        Self::IntentionalWalk,
        Self::CatcherInterference,
    ];
}

/// A plate appearance recorded by its result alone.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Unseen {
    /// The result.
    pub result: UnseenResult,
    /// What happened on it besides.
    #[serde(default, skip_serializing_if = "Action::is_empty")]
    pub action: Action,
}
