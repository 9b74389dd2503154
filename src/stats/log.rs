//! The log: what the scorer saw, entry after entry. Append-only; a correction is an entry too.
//!
//! In a file each [`Entry`] is one JSON object: `{"id":7,"at":1790000000000,"event":{"pitch":{"call":"ball"}}}`. An
//! event without details is its name alone, `"event":"intentional_walk"`.

use serde::{Deserialize, Serialize};

use crate::code::Code;
use crate::field::{Base, Count, Side};
use crate::team::{Card, Change, Player, PlayerId};

mod action;
mod batted;
pub mod day;
mod judgment;
mod pitch;
mod speed;

pub use action::{Action, Attempt, Cause, How, Leg, Misplay, MisplayKind, Move, Out, Start};
pub use batted::{Batted, InPlay, Running, Spot, Trajectory, Unseen, UnseenResult};
pub use judgment::{Judgment, Reached};
pub use pitch::{Call, Pitch, PitchKind};
pub use speed::SpeedUnit;

/// The number of an entry: 1 for the first, each later one greater than all before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct EntryId(pub u32);

/// One thing recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Its number.
    pub id: EntryId,
    /// When it was tapped, in milliseconds since 1970-01-01T00:00Z by the device's clock. Never used by any rule.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at: Option<u64>,
    /// What was seen.
    pub event: Event,
}

/// What can be recorded.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Event {
    // Before the first pitch (and, but for the rules and the cards, at any time after it).
    /// Date, place and competition. The last one holds.
    Heading(Heading),
    /// The code of play. Only before the first pitch.
    Rules(Box<Code>),
    /// A side's name. The last one holds.
    Team {
        /// Which side.
        side: Side,
        /// Its name.
        name: String,
    },
    /// A player of a side's roster; with an id already given, new particulars of the same player.
    Player {
        /// Which side.
        side: Side,
        /// Who.
        player: Player,
    },
    /// A side's lineup card. Only before the first pitch.
    Card {
        /// Which side.
        side: Side,
        /// The card.
        card: Card,
    },
    /// The umpire calls "Play": both cards are in, the first batter is up.
    PlayBall,

    // Play.
    /// A pitch that was not put in play.
    Pitch(Pitch),
    /// A ball put in play, or a foul fly caught.
    InPlay(InPlay),
    /// Something happened on the bases without a batted ball: a steal, a pickoff, a wild pitch, a balk ...
    Running(Running),
    /// First base given on the manager's signal, with no pitch thrown.
    IntentionalWalk,
    /// A plate appearance of which only the result is known (catch-up).
    Unseen(Unseen),
    /// The count as the umpire gives it, when pitches were missed. Marks the pitch count as incomplete.
    SetCount(Count),

    // People.
    /// A change of players or posts.
    Change {
        /// Which side.
        side: Side,
        /// What changes.
        change: Change,
    },
    /// This player of the side at bat is at the plate, though it is another's turn.
    BatterUp {
        /// Who.
        player: PlayerId,
    },
    /// The batting place whose turn it is has no player, and the code makes that an out.
    EmptyPlace,
    /// The defence appeals, before the next pitch, that the last batter (or the present one) batted out of turn.
    OutOfTurnAppeal,

    // The game.
    /// A runner is put on a base by rule (a tie-break the code does not place by itself).
    PlaceRunner {
        /// Where.
        base: Base,
        /// Who.
        player: PlayerId,
    },
    /// The half-inning ends before its outs, as the umpire says.
    EndHalf {
        /// Why, in the scorer's words.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        why: String,
    },
    /// A delay, a resumption, or an end of the game.
    Status(Status),
    /// A protest, noted where it was made: the replay keeps the exact situation beside it.
    Protest {
        /// In the scorer's words.
        text: String,
    },
    /// A remark.
    Note {
        /// In the scorer's words.
        text: String,
    },

    // The scorer's judgment, and corrections.
    /// The scorer's judgment where the rules leave one.
    Judgment(Judgment),
    /// That entry is struck out. It stays in the log.
    Retract {
        /// Which.
        entry: EntryId,
    },
    /// A struck-out entry counts again.
    Reinstate {
        /// Which.
        entry: EntryId,
    },
    /// That entry says this instead; its place in the game stays.
    Replace {
        /// Which.
        entry: EntryId,
        /// What it says now.
        event: Box<Event>,
    },
    /// This was forgotten: it happened just before that entry.
    Insert {
        /// Before which.
        before: EntryId,
        /// What happened.
        event: Box<Event>,
    },
}

impl Event {
    /// True for entries that only change what other entries say.
    pub const fn is_correction(&self) -> bool {
        matches!(self, Self::Retract { .. } | Self::Reinstate { .. } | Self::Replace { .. } | Self::Insert { .. })
    }
}

/// Date, place and competition.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(default, deny_unknown_fields)]
pub struct Heading {
    /// The day, on which pitch counts and rest are reckoned.
    #[serde(with = "day", skip_serializing_if = "Option::is_none")]
    #[cfg_attr(feature = "schema", schemars(with = "Option<String>", extend("format" = "date")))]
    pub date: Option<jiff::civil::Date>,
    /// When it began, as written ("10:30").
    #[serde(skip_serializing_if = "String::is_empty")]
    pub start: String,
    /// Where.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub place: String,
    /// League, cup or "friendly".
    #[serde(skip_serializing_if = "String::is_empty")]
    pub competition: String,
    /// Who keeps this book.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub scorer: String,
}

/// The state of the game as the umpire declares it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Status {
    /// Play stops for now.
    Delayed {
        /// Why.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        why: String,
    },
    /// Play goes on.
    Resumed,
    /// To be continued another day.
    Suspended {
        /// Why.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        why: String,
    },
    /// Ended early by the umpire.
    Called {
        /// Why.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        why: String,
    },
    /// Forfeited.
    Forfeited {
        /// To whom.
        winner: Side,
        /// Why.
        #[serde(default, skip_serializing_if = "String::is_empty")]
        why: String,
    },
    /// Over, as played.
    Final,
}

#[allow(clippy::trivially_copy_pass_by_ref)] // serde asks for a reference
const fn is_false(b: &bool) -> bool {
    !*b
}
