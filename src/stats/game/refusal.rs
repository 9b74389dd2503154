//! Why an entry is refused: a value, with a sentence a parent at the fence can act on. The game stays as it was.

use core::fmt;

use crate::field::{Base, Position, Side};
use crate::log::{EntryId, Start};
use crate::team::PlayerId;
use crate::words::{Language, say};

/// Why an entry can't follow from the game as it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// Ids must grow.
    OutOfSequence {
        /// The entry offered.
        id: EntryId,
        /// The last one recorded.
        last: EntryId,
    },
    /// A correction points nowhere.
    NoSuchEntry(EntryId),
    /// A correction inside a correction.
    CorrectionInCorrection,
    /// Struck out already, or not struck out.
    AlreadySo(EntryId),

    /// Before the first pitch only.
    GameHasBegun,
    /// Not begun.
    NotBegun,
    /// Over.
    GameOver,
    /// Suspended or delayed.
    Stopped,
    /// Not stopped.
    NotStopped,
    /// No card.
    NoCard(Side),
    /// Empty card.
    CardEmpty,
    /// More batters than any code has.
    OrderTooLong,
    /// No pitcher.
    NoPitcher(Side),
    /// Twice on a card.
    PlayerTwiceOnCard(PlayerId),
    /// Two at a position.
    TwoAtPosition(Position),
    /// Unknown player.
    UnknownPlayer(PlayerId),
    /// On both rosters.
    OtherSidesPlayer(PlayerId),
    /// Not in the game.
    NotInGame(PlayerId),
    /// In the game already.
    AlreadyInGame(PlayerId),
    /// No re-entry.
    NoReentry(PlayerId),
    /// Re-entry in another place.
    ReentryInOwnPlace(PlayerId),
    /// No courtesy runners.
    NoCourtesyRunner,
    /// Courtesy runner for others.
    CourtesyOnlyForBattery(PlayerId),
    /// Order closed.
    OrderIsClosed,
    /// Not fielding only.
    NotFieldingOnly(PlayerId),
    /// Not the batter.
    NotTheBatter(PlayerId),
    /// Not on base.
    NotOnBase(PlayerId),
    /// Not the side at bat.
    NotAtBat,
    /// A batter on base.
    BatterOnBase(PlayerId),
    /// Nobody at the plate.
    NobodyAtPlate,
    /// A place with a player.
    PlaceIsFilled,

    /// Nobody there.
    EmptyBase(Base),
    /// Somebody there.
    BaseTaken(Base),
    /// Placed there before.
    PlacedAlready(Base),
    /// At the plate or on base.
    AlreadyInPlay(PlayerId),
    /// Home is no base to stand on.
    NotABase,
    /// Moved twice.
    MovedTwice(Start),
    /// Nothing happened.
    NothingHappened,
    /// No way.
    EmptyMove(Start),
    /// Backwards.
    Backwards(Start),
    /// The batter does not move on this.
    BatterDoesNotRun,
    /// The batter must be placed.
    BatterMustMove,
    /// Strike three caught, or first base taken.
    BatterCannotRun,
    /// Two on a base.
    TwoOnBase(Base),
    /// A runner ahead passed.
    Passing(Start),
    /// Ran on a dead ball.
    DeadBall(Start),
    /// Four outs.
    TooManyOuts(u8),
    /// Stealing not allowed.
    NoStealing,
    /// A misplay index out of range.
    NoSuchMisplay(u8),
    /// A position nobody plays.
    NobodyAt(Position),
    /// A count that can't be.
    ImpossibleCount(u8, u8),
    /// Nothing to continue.
    NoPlayBefore,
    /// Nothing to appeal.
    NothingToAppeal,
    /// A judgment on something else.
    NotAPlay(EntryId),
    /// Walks don't exist.
    NoWalks,
}

impl Refusal {
    /// As a sentence in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::OutOfSequence { id, last } => say!(language, "refused-out-of-sequence", id = id.0, last = last.0),
            Self::NoSuchEntry(entry) => say!(language, "refused-no-such-entry", entry = entry.0),
            Self::CorrectionInCorrection => say!(language, "refused-correction-in-correction"),
            Self::AlreadySo(entry) => say!(language, "refused-already-so", entry = entry.0),
            Self::GameHasBegun => say!(language, "refused-game-has-begun"),
            Self::NotBegun => say!(language, "refused-not-begun"),
            Self::GameOver => say!(language, "refused-game-over"),
            Self::Stopped => say!(language, "refused-stopped"),
            Self::NotStopped => say!(language, "refused-not-stopped"),
            Self::NoCard(side) => say!(language, "refused-no-card", side = side.said(language)),
            Self::CardEmpty => say!(language, "refused-card-empty"),
            Self::OrderTooLong => say!(language, "refused-order-too-long"),
            Self::NoPitcher(side) => say!(language, "refused-no-pitcher", side = side.said(language)),
            Self::PlayerTwiceOnCard(_) => say!(language, "refused-player-twice-on-card"),
            Self::TwoAtPosition(position) => {
                say!(language, "refused-two-at-position", position = position.said(language))
            }
            Self::UnknownPlayer(_) => say!(language, "refused-unknown-player"),
            Self::OtherSidesPlayer(_) => say!(language, "refused-other-sides-player"),
            Self::NotInGame(_) => say!(language, "refused-not-in-game"),
            Self::AlreadyInGame(_) => say!(language, "refused-already-in-game"),
            Self::NoReentry(_) => say!(language, "refused-no-reentry"),
            Self::ReentryInOwnPlace(_) => say!(language, "refused-reentry-in-own-place"),
            Self::NoCourtesyRunner => say!(language, "refused-no-courtesy-runner"),
            Self::CourtesyOnlyForBattery(_) => say!(language, "refused-courtesy-only-for-battery"),
            Self::OrderIsClosed => say!(language, "refused-order-is-closed"),
            Self::NotFieldingOnly(_) => say!(language, "refused-not-fielding-only"),
            Self::NotTheBatter(_) => say!(language, "refused-not-the-batter"),
            Self::NotOnBase(_) => say!(language, "refused-not-on-base"),
            Self::NotAtBat => say!(language, "refused-not-at-bat"),
            Self::BatterOnBase(_) => say!(language, "refused-batter-on-base"),
            Self::NobodyAtPlate => say!(language, "refused-nobody-at-plate"),
            Self::PlaceIsFilled => say!(language, "refused-place-is-filled"),
            Self::EmptyBase(base) => say!(language, "refused-empty-base", base = base.said(language)),
            Self::BaseTaken(base) => say!(language, "refused-base-taken", base = base.said(language)),
            Self::PlacedAlready(base) => say!(language, "refused-placed-already", base = base.said(language)),
            Self::AlreadyInPlay(_) => say!(language, "refused-already-in-play"),
            Self::NotABase => say!(language, "refused-not-a-base"),
            Self::MovedTwice(_) => say!(language, "refused-moved-twice"),
            Self::NothingHappened => say!(language, "refused-nothing-happened"),
            Self::EmptyMove(_) => say!(language, "refused-empty-move"),
            Self::Backwards(_) => say!(language, "refused-backwards"),
            Self::BatterDoesNotRun => say!(language, "refused-batter-does-not-run"),
            Self::BatterMustMove => say!(language, "refused-batter-must-move"),
            Self::BatterCannotRun => say!(language, "refused-batter-cannot-run"),
            Self::TwoOnBase(base) => say!(language, "refused-two-on-base", base = base.said(language)),
            Self::Passing(_) => say!(language, "refused-passing"),
            Self::DeadBall(_) => say!(language, "refused-dead-ball"),
            Self::TooManyOuts(outs) => say!(language, "refused-too-many-outs", outs = outs),
            Self::NoStealing => say!(language, "refused-no-stealing"),
            Self::NoSuchMisplay(_) => say!(language, "refused-no-such-misplay"),
            Self::NobodyAt(position) => say!(language, "refused-nobody-at", position = position.said(language)),
            Self::ImpossibleCount(balls, strikes) => {
                say!(language, "refused-impossible-count", balls = balls, strikes = strikes)
            }
            Self::NoPlayBefore => say!(language, "refused-no-play-before"),
            Self::NothingToAppeal => say!(language, "refused-nothing-to-appeal"),
            Self::NotAPlay(entry) => say!(language, "refused-not-a-play", entry = entry.0),
            Self::NoWalks => say!(language, "refused-no-walks"),
        }
    }
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

impl core::error::Error for Refusal {}
