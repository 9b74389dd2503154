//! The log: what the scorer saw, entry after entry. Append-only; a correction is an entry too.
//!
//! In a file each [`Entry`] is one JSON object: `{"id":7,"at":1790000000000,"event":{"pitch":{"call":"ball"}}}`. An
//! event without details is its name alone, `"event":"intentional_walk"`.

use serde::{Deserialize, Serialize};

use crate::code::Code;
use crate::field::{Base, Count, Position, Side};
use crate::team::{Card, Change, Player, PlayerId};

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
    #[serde(skip_serializing_if = "Option::is_none")]
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

#[allow(clippy::trivially_copy_pass_by_ref)] // serde asks for a reference
const fn is_false(b: &bool) -> bool {
    !*b
}
