//! Who plays: players, the lineup card, and the kinds of change to it during the game.

use serde::{Deserialize, Serialize};

use crate::field::{Position, Post};

mod lineup;

pub use lineup::{Appearance, Duties, Duty, Lineup};

/// A player within one game. Numbers are given out by whoever writes the log and never reused in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct PlayerId(pub u32);

/// The hand a player bats or throws with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Hand {
    /// Right.
    Right,
    /// Left.
    Left,
    /// Either, as it suits.
    Both,
}

/// A player as the roster knows them. All but the id may be filled in later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Player {
    /// The player's number within this game's log.
    pub id: PlayerId,
    /// Name as printed; may be empty until someone asks.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub name: String,
    /// Number on the shirt, as worn ("00" is not "0").
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub number: String,
    /// Batting hand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bats: Option<Hand>,
    /// Throwing hand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub throws: Option<Hand>,
    /// Age in years on the league's cut-off day, for pitch limits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub age: Option<u8>,
    /// The same person in other games: a key of the club's roster, for season lines.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub person: Option<String>,
}

impl Player {
    /// A player of whom only the id is known yet.
    pub const fn unnamed(id: PlayerId) -> Self {
        Self { id, name: String::new(), number: String::new(), bats: None, throws: None, age: None, person: None }
    }

    /// What to print: the name, else the shirt number, else `None`.
    pub fn label(&self) -> Option<String> {
        if !self.name.is_empty() {
            Some(self.name.clone())
        } else if self.number.is_empty() {
            None
        } else {
            Some(format!("#{}", self.number))
        }
    }
}

/// A player with what they do in the field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Assignment {
    /// Who.
    pub player: PlayerId,
    /// Where.
    pub post: Post,
}

impl Assignment {
    /// `player` at `post`.
    pub fn new(player: PlayerId, post: impl Into<Post>) -> Self {
        Self { player, post: post.into() }
    }
}

/// The lineup card of one side, as handed to the umpire.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Card {
    /// The batting order, first batter first.
    pub order: Vec<Assignment>,
    /// Players who field and do not bat: the pitcher for whom a designated hitter bats.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fielding_only: Vec<Assignment>,
}

impl Card {
    /// Everyone on the card, batters first.
    pub fn everyone(&self) -> impl Iterator<Item = Assignment> + '_ {
        self.order.iter().chain(&self.fielding_only).copied()
    }

    /// The player at `position`, if the card names one.
    pub fn at(&self, position: Position) -> Option<PlayerId> {
        self.everyone().find(|a| a.post == Post::Fields(position)).map(|a| a.player)
    }
}

/// Why a new player comes in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Bats for the player whose turn it is, with the count as it stands.
    PinchHitter,
    /// Runs for a player on base.
    PinchRunner,
    /// Runs for the pitcher or catcher by the code's courtesy, without taking them out of the game.
    CourtesyRunner,
    /// Takes the field, in the batting place of the player who leaves.
    Fielder(Post),
}

/// A change of who is in the game, or of who plays where.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Change {
    /// `incoming` takes the place of `outgoing`. A player who has left comes back by the same event (re-entry).
    Substitute {
        /// Who leaves, or is run for.
        outgoing: PlayerId,
        /// Who comes in.
        incoming: PlayerId,
        /// To do what.
        role: Role,
    },
    /// Players already in the game change posts among themselves; all at once, so that they can swap.
    Shift {
        /// The new posts; players not named keep theirs.
        to: Vec<Assignment>,
    },
    /// The designated hitter is given up: `batter`, who fielded only, now bats in the place of `replaces`, who leaves.
    /// Where the designated hitter goes into the field, name the player for whom he fields in `replaces` and give the
    /// hitter's new post by a `Shift` in the next entry.
    EndDesignatedHitter {
        /// The player who fielded only (by rule the pitcher).
        batter: PlayerId,
        /// The player in the batting order whose place he takes.
        replaces: PlayerId,
    },
    /// A player leaves and nobody takes the place: the order closes up (continuous order), or the place is an out where
    /// the code says so.
    Leave {
        /// Who.
        player: PlayerId,
    },
    /// A player arrives late and joins the end of a continuous order.
    Join(Assignment),
}
