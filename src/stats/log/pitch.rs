//! Pitches: what the umpire called, and what the runners did on it.

use serde::{Deserialize, Serialize};

use super::Action;

/// What the umpire called, or what became of the pitch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Call {
    /// Ball.
    Ball,
    /// Strike, not swung at.
    CalledStrike,
    /// Strike, swung at and missed.
    SwingingStrike,
    /// Foul.
    Foul,
    /// Foul tip, caught: a strike, also with two strikes.
    FoulTip,
    /// Bunted foul: a strike, also with two strikes.
    FoulBunt,
    /// A bunt missed: a swinging strike.
    MissedBunt,
    /// Ball, thrown wide on purpose to catch a runner.
    Pitchout,
    /// Ball, thrown wide to walk the batter: if it is the last ball, the walk is intentional.
    IntentionalBall,
    /// A ball awarded with no pitch thrown.
    AutomaticBall,
    /// A strike awarded with no pitch thrown.
    AutomaticStrike,
    /// An illegal pitch (softball): a ball.
    IllegalPitch,
    /// The batter is hit and takes first.
    HitByPitch,
    /// The catcher (or another fielder) hinders the batter, who takes first.
    CatcherInterference,
    /// The batter hinders the catcher and is out.
    BatterInterference,
}

impl Call {
    /// The four of nearly every pitch.
    pub const COMMON: [Self; 4] = [Self::Ball, Self::CalledStrike, Self::SwingingStrike, Self::Foul];

    /// The others, the more frequent first.
    pub const RARE: [Self; 11] = [
        Self::HitByPitch,
        Self::FoulTip,
        Self::FoulBunt,
        Self::MissedBunt,
        Self::Pitchout,
        Self::IntentionalBall,
        Self::CatcherInterference,
        Self::BatterInterference,
        Self::IllegalPitch,
        Self::AutomaticBall,
        Self::AutomaticStrike,
    ];

    /// A pitch was thrown.
    pub const fn is_thrown(self) -> bool {
        !matches!(self, Self::AutomaticBall | Self::AutomaticStrike)
    }

    /// Counts as a ball on the batter.
    pub const fn is_ball(self) -> bool {
        matches!(self, Self::Ball | Self::Pitchout | Self::IntentionalBall | Self::AutomaticBall | Self::IllegalPitch)
    }

    /// Goes down as a strike in a pitcher's tally: called, swung at, fouled off.
    pub const fn is_strike(self) -> bool {
        matches!(
            self,
            Self::CalledStrike
                | Self::SwingingStrike
                | Self::Foul
                | Self::FoulTip
                | Self::FoulBunt
                | Self::MissedBunt
                | Self::AutomaticStrike
                | Self::CatcherInterference
                | Self::BatterInterference
        )
    }
}

/// The kind of pitch thrown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum PitchKind {
    /// Fastball.
    Fastball,
    /// Curveball.
    Curveball,
    /// Slider.
    Slider,
    /// Change-up.
    ChangeUp,
    /// Knuckleball.
    Knuckleball,
    /// Drop ball (softball).
    Drop,
    /// Rise ball (softball).
    Rise,
    /// Anything else.
    Other,
}

/// A pitch that was not put in play, with what the runners did on it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Pitch {
    /// What became of it.
    pub call: Call,
    /// Kind, when someone noted it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<PitchKind>,
    /// Speed in tenths of a mile per hour, when someone measured it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub speed: Option<u16>,
    /// What happened on it besides: a steal, a wild pitch, a batter who runs on strike three, a dropped foul fly.
    /// Runners forced along by a walk, a hit batter or interference go by rule and are not named.
    #[serde(default, skip_serializing_if = "Action::is_empty")]
    pub action: Action,
}

impl Pitch {
    /// A pitch on which nothing else happened.
    pub fn new(call: Call) -> Self {
        Self { call, kind: None, speed: None, action: Action::default() }
    }
}
