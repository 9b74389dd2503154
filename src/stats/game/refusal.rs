//! Why an entry is refused: a value, with a sentence a parent at the fence can act on. The game stays as it was.

use crate::field::{Base, Position, Side};
use crate::log::{EntryId, Start};
use crate::team::PlayerId;

/// Why an entry can't follow from the game as it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Refusal {
    /// Ids must grow.
    #[error("Entry {id} comes after entry {last}: numbers in the log only grow.", id = .id.0, last = .last.0)]
    OutOfSequence {
        /// The entry offered.
        id: EntryId,
        /// The last one recorded.
        last: EntryId,
    },
    /// A correction points nowhere.
    #[error("There is no entry {} to correct.", .0.0)]
    NoSuchEntry(EntryId),
    /// A correction inside a correction.
    #[error("A correction can't be put inside another correction.")]
    CorrectionInCorrection,
    /// Struck out already, or not struck out.
    #[error("Entry {} is already so.", .0.0)]
    AlreadySo(EntryId),

    /// Before the first pitch only.
    #[error("The game has begun: cards and rules of play are fixed. Record a substitution instead.")]
    GameHasBegun,
    /// Not begun.
    #[error("The game has not begun: fill in both cards, then play ball.")]
    NotBegun,
    /// Over.
    #[error("The game is over. Undo its last entry to go on.")]
    GameOver,
    /// Suspended or delayed.
    #[error("Play is stopped. Record that it resumes first.")]
    Stopped,
    /// Not stopped.
    #[error("Play is not stopped.")]
    NotStopped,
    /// No card.
    #[error("The {0} have no lineup card yet.")]
    NoCard(Side),
    /// Empty card.
    #[error("The batting order is empty.")]
    CardEmpty,
    /// More batters than any code has.
    #[error("A batting order has at most 99 places.")]
    OrderTooLong,
    /// No pitcher.
    #[error("The {0} have no pitcher.")]
    NoPitcher(Side),
    /// Twice on a card.
    #[error("A player is on the card twice.")]
    PlayerTwiceOnCard(PlayerId),
    /// Two at a position.
    #[error("Two players are at {0}. Move one of them.")]
    TwoAtPosition(Position),
    /// Unknown player.
    #[error("This player is not on that side's roster.")]
    UnknownPlayer(PlayerId),
    /// On both rosters.
    #[error("This player's number in the log belongs to the other side.")]
    OtherSidesPlayer(PlayerId),
    /// Not in the game.
    #[error("This player is not in the game.")]
    NotInGame(PlayerId),
    /// In the game already.
    #[error("This player is in the game already.")]
    AlreadyInGame(PlayerId),
    /// No re-entry.
    #[error("This player has left the game, and the rules of play don't let them back.")]
    NoReentry(PlayerId),
    /// Re-entry in another place.
    #[error("A player who comes back takes their own place in the order.")]
    ReentryInOwnPlace(PlayerId),
    /// No courtesy runners.
    #[error("The rules of play have no courtesy runner.")]
    NoCourtesyRunner,
    /// Courtesy runner for others.
    #[error("A courtesy runner runs for the pitcher or the catcher only.")]
    CourtesyOnlyForBattery(PlayerId),
    /// Order closed.
    #[error("The batting order is closed: a late arrival comes in as a substitute.")]
    OrderIsClosed,
    /// Not fielding only.
    #[error("This player is in the batting order already.")]
    NotFieldingOnly(PlayerId),
    /// Not the batter.
    #[error("A pinch hitter bats for the player whose turn it is.")]
    NotTheBatter(PlayerId),
    /// Not on base.
    #[error("A pinch runner runs for a player on base.")]
    NotOnBase(PlayerId),
    /// Not the side at bat.
    #[error("Only the side at bat can do that.")]
    NotAtBat,
    /// A batter on base.
    #[error("This player is on base and can't bat now.")]
    BatterOnBase(PlayerId),
    /// Nobody at the plate.
    #[error("The batting place whose turn it is has no player: record it as an out, or put a player in.")]
    NobodyAtPlate,
    /// A place with a player.
    #[error("The batting place whose turn it is has a player.")]
    PlaceIsFilled,

    /// Nobody there.
    #[error("Nobody is on {0}.")]
    EmptyBase(Base),
    /// Somebody there.
    #[error("Somebody is on {0} already.")]
    BaseTaken(Base),
    /// Placed there before.
    #[error("A runner has been placed on {0} in this half-inning already.")]
    PlacedAlready(Base),
    /// At the plate or on base.
    #[error("This player is at the plate or on base already.")]
    AlreadyInPlay(PlayerId),
    /// Home is no base to stand on.
    #[error("Nobody can be placed at home.")]
    NotABase,
    /// Moved twice.
    #[error("A runner is moved twice in one play.")]
    MovedTwice(Start),
    /// Nothing happened.
    #[error("Nothing moved and nobody erred: there is nothing to record.")]
    NothingHappened,
    /// No way.
    #[error("A runner must end somewhere: give a base or an out.")]
    EmptyMove(Start),
    /// Backwards.
    #[error("A runner can't go back or stay on the way round.")]
    Backwards(Start),
    /// The batter does not move on this.
    #[error("The batter doesn't run on this.")]
    BatterDoesNotRun,
    /// The batter must be placed.
    #[error("Say where the batter ended: a base or out.")]
    BatterMustMove,
    /// Strike three caught, or first base taken.
    #[error(
        "The batter is out on strike three: first base was taken with fewer than two outs, or the rules of play have no dropped third strike."
    )]
    BatterCannotRun,
    /// Two on a base.
    #[error("Two runners can't stand on {0}.")]
    TwoOnBase(Base),
    /// A runner ahead passed.
    #[error("A runner can't pass the one ahead (if so, the one behind is out).")]
    Passing(Start),
    /// Four outs.
    #[error("That would be {0} outs in the half-inning.")]
    TooManyOuts(u8),
    /// Stealing not allowed.
    #[error("The rules of play have no stealing.")]
    NoStealing,
    /// A misplay index out of range.
    #[error("A leg names an error that the play does not list.")]
    NoSuchMisplay(u8),
    /// A position nobody plays.
    #[error("Nobody plays {0} now.")]
    NobodyAt(Position),
    /// A count that can't be.
    #[error("The count {0}-{1} can't be: the turn would be over.")]
    ImpossibleCount(u8, u8),
    /// Nothing to continue.
    #[error("There is no play just before to go on from.")]
    NoPlayBefore,
    /// Nothing to appeal.
    #[error("Nobody has batted out of turn.")]
    NothingToAppeal,
    /// A judgment on something else.
    #[error("Entry {} is no play to judge.", .0.0)]
    NotAPlay(EntryId),
    /// Walks don't exist.
    #[error("Nobody walks under these rules of play.")]
    NoWalks,
}
