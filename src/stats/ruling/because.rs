//! Reasons as data, and the one place where they are English.

use core::fmt;

use crate::field::Position;
use crate::log::MisplayKind;

/// Why a ruling is what it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Because {
    /// The scorer's own judgment.
    Judged,
    /// Struck out.
    Strikeout,
    /// Struck out, and reached because the ball got away.
    StrikeoutReached,
    /// Enough balls.
    Walk,
    /// Walked on purpose.
    IntentionalWalk,
    /// Hit by a pitch.
    HitByPitch,
    /// The catcher hindered him.
    CatcherInterference,
    /// A fielder obstructed him before first.
    Obstruction,
    /// Out for his own interference.
    OwnInterference,
    /// Somebody batted in his place, and it was appealed.
    OutOfTurn,
    /// Put out on the batted ball.
    PutOut,
    /// Reached safely on the batted ball.
    SafeHit(u8),
    /// The winning run needed fewer bases than he ran.
    GameEnding(u8),
    /// A runner was hit by the batted ball: a hit all the same.
    RunnerHitByBall,
    /// A runner was forced out.
    RunnerForced,
    /// The infield put out a runner ahead of him.
    RunnerPutOut,
    /// The fielder tried for somebody else.
    Choice,
    /// He reached on an error.
    Error(Position),
    /// Bunted, and a runner moved up.
    Sacrifice,
    /// Bunted, a runner moved up, and nobody was put out.
    SacrificeAllSafe,
    /// A runner scored after the catch.
    SacrificeFly,
    /// The fly was dropped, but the runner would have scored after a catch.
    SacrificeFlyDropped,
    /// The run came in on the batted ball.
    BattedIn,
    /// It was forced in.
    ForcedIn,
    /// It came in on a ground ball that made a double play.
    DoublePlay,
    /// A muffed throw at first would have completed the double play.
    MuffedDoublePlay,
    /// It came in on an error.
    OnError,
    /// An error was made, but with fewer than two outs he would have scored from third anyway.
    ErrorButScoresAnyway,
    /// The ball was not batted.
    NotBatted,
    /// He stole.
    Stole,
    /// Another runner was put out in the same attempt.
    OtherRunnerOut,
    /// Nobody tried to stop him.
    Undisputed,
    /// Put out stealing.
    CaughtStealing,
    /// Put out oversliding the base he stole.
    Overslid,
    /// Picked off, and broke for the next base.
    BrokeFromPickoff,
    /// Picked off going back.
    PickedOff,
    /// The throw had him, but it was muffed.
    MuffedThrow,
    /// Grounded into a force or reverse-force double play.
    Grounded,
    /// The catcher could not have stopped the pitch with ordinary effort.
    PitchedWild,
    /// The catcher could have stopped the pitch with ordinary effort.
    LetPass,
    /// The umpire called a balk.
    Balked,
    /// Caught the ball in the air.
    CaughtFly,
    /// The infield fly rule.
    InfieldFly,
    /// Held a throw in time at the base.
    HeldThrow,
    /// Had the ball and touched the base alone.
    TouchedBase,
    /// Tagged the runner.
    Tagged,
    /// Had the ball for the appeal.
    Appealed,
    /// The third strike: the catcher's by rule.
    CaughtThirdStrike,
    /// Out by rule, with the catcher credited.
    CatcherByRule,
    /// A runner was hit by the batted ball: the nearest fielder's.
    NearestTheBall,
    /// The runner hindered this fielder.
    WasHindered,
    /// A runner passed another: the nearest fielder's.
    NearestThePassing,
    /// The runner left the base path to avoid this fielder.
    WasAvoided,
    /// Out by another rule: the nearest fielder's.
    NearestByRule,
    /// Threw or turned the ball on its way to an out.
    Threw,
    /// Threw to a play that ended in interference or out of the base path.
    ThrewToRuleOut,
    /// His throw would have made the out but for an error.
    ThrewInVain,
    /// A misplay that ordinary effort would have avoided.
    Misplayed {
        /// What kind.
        kind: MisplayKind,
        /// Somebody who would have been out was not; otherwise it gave bases away.
        gave_life: bool,
    },
    /// Handled the ball in a double or triple play of so many outs.
    TookPart(u8),
    /// Outs made with this player at that position.
    AtHisPost,
    /// Balls thrown to the batter.
    Pitched,
    /// Runners still on base.
    LeftStanding,
}

impl fmt::Display for Because {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = match self {
            Self::Judged => "The scorer judged it so.",
            Self::Strikeout => "Three strikes.",
            Self::StrikeoutReached => {
                "Three strikes; safe at first because the ball was not held. It is a strikeout all the same."
            }
            Self::Walk => "Four balls.",
            Self::IntentionalWalk => "Walked on purpose.",
            Self::HitByPitch => "Hit by a pitch.",
            Self::CatcherInterference => "The catcher hindered the batter: first base, and no time at bat.",
            Self::Obstruction => "A fielder obstructed the batter before first base: no time at bat.",
            Self::OwnInterference => "The batter hindered a fielder and is out.",
            Self::OutOfTurn => {
                "Somebody else batted, and the defence appealed: the proper batter is out, and the catcher has the putout."
            }
            Self::PutOut => "Put out on the batted ball.",
            Self::SafeHit(1) => "Safe at first on the batted ball.",
            Self::SafeHit(bases) => return write!(f, "Safe at {} on the batted ball alone.", base_word(*bases)),
            Self::GameEnding(bases) => {
                return write!(
                    f,
                    "The game ended when the winning run scored: the hit counts for {bases} {}, as many as that runner needed.",
                    if *bases == 1 { "base" } else { "bases" }
                );
            }
            Self::RunnerHitByBall => "A runner was hit by the batted ball and is out; the batter has a hit.",
            Self::RunnerForced => "A runner was forced out on the batted ball: no hit.",
            Self::RunnerPutOut => "The infield put out a runner ahead on the batted ball: a fielder's choice, no hit.",
            Self::Choice => "The fielder chose to try for another runner.",
            Self::Error(position) => return write!(f, "Reached on an error by the {position}."),
            Self::Sacrifice => {
                "A bunt with fewer than two outs: the batter was put out (or would have been), and a runner moved up."
            }
            Self::SacrificeAllSafe => {
                "A bunt with fewer than two outs, and a runner moved up; they tried for a runner and put out nobody."
            }
            Self::SacrificeFly => "A runner scored after the catch with fewer than two outs.",
            Self::SacrificeFlyDropped => {
                "The fly was dropped, but the runner would have scored after a catch, with fewer than two outs."
            }
            Self::BattedIn => "The run scored on the batted ball.",
            Self::ForcedIn => "The bases were full and the batter was given first: the run was forced in.",
            Self::DoublePlay => "It came in on a ground-ball double play: no run batted in.",
            Self::MuffedDoublePlay => "A muffed throw at first would have completed a double play: no run batted in.",
            Self::OnError => "The run scored on an error.",
            Self::ErrorButScoresAnyway => {
                "There were fewer than two outs, and the runner from third would ordinarily have scored without the error."
            }
            Self::NotBatted => "The run scored without a batted ball.",
            Self::Stole => {
                "The base was gained unaided by a hit, an out, an error, a force, a wild pitch or a passed ball."
            }
            Self::OtherRunnerOut => "Another runner was put out in the same attempt: no stolen base for anyone.",
            Self::Undisputed => "The defence did not try to stop it: no stolen base.",
            Self::CaughtStealing => "Put out trying to steal.",
            Self::Overslid => "Put out oversliding the base: caught stealing, no stolen base.",
            Self::BrokeFromPickoff => "Picked off, and broke for the next base: caught stealing.",
            Self::PickedOff => "Picked off going back to the base: not caught stealing.",
            Self::MuffedThrow => {
                "The throw was in time, but it was muffed: caught stealing, an error, and no stolen base."
            }
            Self::Grounded => {
                "Two outs on a ground ball: both runners forced, or the batter at first and a runner he had forced to run."
            }
            Self::PitchedWild => {
                "Ordinary effort by the catcher could not have stopped the pitch, and somebody gained a base on it."
            }
            Self::LetPass => {
                "Ordinary effort by the catcher would have stopped the pitch, and somebody gained a base on it."
            }
            Self::Balked => "The umpire called a balk, and the runners were given a base.",
            Self::CaughtFly => "Caught the ball in the air.",
            Self::InfieldFly => {
                "The umpire called an infield fly: the batter is out, caught or not, and the putout goes to the fielder under it."
            }
            Self::HeldThrow => "Held the throw in time, at the base or on the runner.",
            Self::TouchedBase => "Had the ball and reached the base, or the runner, alone.",
            Self::Tagged => "Tagged the runner off the base.",
            Self::Appealed => "Had the ball when the defence appealed.",
            Self::CaughtThirdStrike => "Three strikes: the rules give the putout to the catcher.",
            Self::CatcherByRule => "Out by rule, not by a play: the rules give the putout to the catcher.",
            Self::NearestTheBall => {
                "The runner was hit by the batted ball: the rules give the putout to the fielder nearest the ball."
            }
            Self::WasHindered => "The runner hindered this fielder: the rules give him the putout.",
            Self::NearestThePassing => {
                "One runner passed another: the rules give the putout to the fielder nearest to where it happened."
            }
            Self::WasAvoided => {
                "The runner left the base path, or gave up: the rules give the putout to the fielder he ran from."
            }
            Self::NearestByRule => "Out by rule, not by a play: the putout goes to the fielder nearest to it.",
            Self::Threw => "Threw the ball, or turned its way, before the putout.",
            Self::ThrewToRuleOut => {
                "Threw the ball in a play on which the runner was then out for interference or for leaving the base path."
            }
            Self::ThrewInVain => "His throw would have made the out, but for the error that followed.",
            Self::Misplayed { kind, gave_life } => return misplayed(f, *kind, *gave_life),
            Self::TookPart(3) => "Had a putout or an assist in it: three outs on one play, and no error between them.",
            Self::TookPart(_) => "Had a putout or an assist in it: two outs on one play, and no error between them.",
            Self::AtHisPost => "Made while he was there. Three outs are an inning.",
            Self::Pitched => "Every ball thrown to this batter. A ball hit into play is a strike.",
            Self::LeftStanding => "Neither in nor out when it ended.",
        };
        f.write_str(text)
    }
}

fn misplayed(f: &mut fmt::Formatter<'_>, kind: MisplayKind, gave_life: bool) -> fmt::Result {
    let what = match kind {
        MisplayKind::DroppedFoul => {
            return f
                .write_str("A foul fly that ordinary effort would have caught fell, and the batter's turn went on.");
        }
        MisplayKind::Interference => return write!(f, "{}", Because::CatcherInterference),
        MisplayKind::Obstruction => "A runner was obstructed",
        MisplayKind::Fielding => "Ordinary effort would have fielded the ball",
        MisplayKind::Throwing => "The throw was wild",
        MisplayKind::Muff => "A good throw was not held",
        MisplayKind::DroppedFly => "Ordinary effort would have caught the fly",
    };
    let cost = if gave_life { "somebody was safe who would have been out" } else { "somebody gained a base by it" };
    write!(f, "{what}, and {cost}.")
}

const fn base_word(number: u8) -> &'static str {
    match number {
        2 => "second",
        3 => "third",
        4 => "home",
        _ => "first",
    }
}
