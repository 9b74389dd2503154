//! The scorer's judgment, where the rules leave one.

use serde::{Deserialize, Serialize};

use super::EntryId;
use crate::field::Position;
use crate::team::PlayerId;

/// How a batter who reached base on a batted ball is scored.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Reached {
    /// A hit of so many bases, 1 to 4.
    Hit(u8),
    /// On this fielder's error.
    Error(Position),
    /// On a fielder's choice.
    Choice,
}

/// The scorer's judgment on one play, or on the game. The last one on the same matter holds.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Judgment {
    /// How the batter reached (OBR 9.05, 9.06, 9.12).
    BatterReached {
        /// The play.
        on: EntryId,
        /// The verdict.
        #[serde(rename = "as")]
        verdict: Reached,
    },
    /// He bunted for a hit, so there is no sacrifice (OBR 9.08(a)).
    BuntedForHit {
        /// The play.
        on: EntryId,
        /// He did.
        yes: bool,
    },
    /// The runner would have scored though an error was made: a run batted in (OBR 9.04(a)(3), 9.04(c)).
    WouldHaveScored {
        /// The play on which he scored.
        on: EntryId,
        /// The runner.
        runner: PlayerId,
        /// He would.
        yes: bool,
    },
    /// The fly was dropped, but a runner would have scored after the catch: a sacrifice fly (OBR 9.08(d)).
    WouldHaveScoredAfterCatch {
        /// The play.
        on: EntryId,
        /// He would.
        yes: bool,
    },
    /// The run would have come in without the passed ball, error or interference: earned (OBR 9.16).
    Earned {
        /// The play on which he scored.
        on: EntryId,
        /// The runner.
        runner: PlayerId,
        /// It is earned.
        yes: bool,
    },
    /// A pitch that got away is the pitcher's (wild pitch) or the catcher's (passed ball) (OBR 9.13).
    GotAway {
        /// The play.
        on: EntryId,
        /// It was a wild pitch.
        wild: bool,
    },
    /// The advance was undisputed (defensive indifference) rather than a stolen base (OBR 9.07(g)).
    Undisputed {
        /// The play.
        on: EntryId,
        /// The runner.
        runner: PlayerId,
        /// It was.
        yes: bool,
    },
    /// The pitcher credited with the win (OBR 9.17(b), (c)).
    WinningPitcher {
        /// Who.
        pitcher: PlayerId,
    },
    /// Three innings finished were effective: a save (OBR 9.19(d)).
    EffectiveFinish {
        /// Who.
        pitcher: PlayerId,
        /// They were.
        yes: bool,
    },
}

impl Judgment {
    /// The play it is about; `None` for those about the game.
    pub const fn on(&self) -> Option<EntryId> {
        match self {
            Self::BatterReached { on, .. }
            | Self::BuntedForHit { on, .. }
            | Self::WouldHaveScored { on, .. }
            | Self::WouldHaveScoredAfterCatch { on, .. }
            | Self::Earned { on, .. }
            | Self::GotAway { on, .. }
            | Self::Undisputed { on, .. } => Some(*on),
            Self::WinningPitcher { .. } | Self::EffectiveFinish { .. } => None,
        }
    }
}
