//! Reasons as data, and how they are said.

use core::fmt;

use crate::field::{Base, Position};
use crate::log::MisplayKind;
use crate::words::{Language, say};

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

impl Because {
    /// As a sentence in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::SafeHit(bases) => match Base::from_number(bases) {
                None | Some(Base::First) => say!(language, "because-safe-at-first"),
                Some(base) => say!(language, "because-safe-hit", base = base.said(language)),
            },
            Self::GameEnding(bases) => say!(language, "because-game-ending", bases = bases),
            Self::Error(position) => say!(language, "because-error", position = position.said(language)),
            Self::TookPart(outs) => say!(language, "because-took-part", outs = outs),
            Self::Misplayed { kind, gave_life } => misplayed(language, kind, if gave_life { "yes" } else { "no" }),
            Self::Judged => say!(language, "because-judged"),
            Self::Strikeout => say!(language, "because-strikeout"),
            Self::StrikeoutReached => say!(language, "because-strikeout-reached"),
            Self::Walk => say!(language, "because-walk"),
            Self::IntentionalWalk => say!(language, "because-intentional-walk"),
            Self::HitByPitch => say!(language, "because-hit-by-pitch"),
            Self::CatcherInterference => say!(language, "because-catcher-interference"),
            Self::Obstruction => say!(language, "because-obstruction"),
            Self::OwnInterference => say!(language, "because-own-interference"),
            Self::OutOfTurn => say!(language, "because-out-of-turn"),
            Self::PutOut => say!(language, "because-put-out"),
            Self::RunnerHitByBall => say!(language, "because-runner-hit-by-ball"),
            Self::RunnerForced => say!(language, "because-runner-forced"),
            Self::RunnerPutOut => say!(language, "because-runner-put-out"),
            Self::Choice => say!(language, "because-choice"),
            Self::Sacrifice => say!(language, "because-sacrifice"),
            Self::SacrificeAllSafe => say!(language, "because-sacrifice-all-safe"),
            Self::SacrificeFly => say!(language, "because-sacrifice-fly"),
            Self::SacrificeFlyDropped => say!(language, "because-sacrifice-fly-dropped"),
            Self::BattedIn => say!(language, "because-batted-in"),
            Self::ForcedIn => say!(language, "because-forced-in"),
            Self::DoublePlay => say!(language, "because-double-play"),
            Self::MuffedDoublePlay => say!(language, "because-muffed-double-play"),
            Self::OnError => say!(language, "because-on-error"),
            Self::ErrorButScoresAnyway => say!(language, "because-error-but-scores-anyway"),
            Self::NotBatted => say!(language, "because-not-batted"),
            Self::Stole => say!(language, "because-stole"),
            Self::OtherRunnerOut => say!(language, "because-other-runner-out"),
            Self::Undisputed => say!(language, "because-undisputed"),
            Self::CaughtStealing => say!(language, "because-caught-stealing"),
            Self::Overslid => say!(language, "because-overslid"),
            Self::BrokeFromPickoff => say!(language, "because-broke-from-pickoff"),
            Self::PickedOff => say!(language, "because-picked-off"),
            Self::MuffedThrow => say!(language, "because-muffed-throw"),
            Self::Grounded => say!(language, "because-grounded"),
            Self::PitchedWild => say!(language, "because-pitched-wild"),
            Self::LetPass => say!(language, "because-let-pass"),
            Self::Balked => say!(language, "because-balked"),
            Self::CaughtFly => say!(language, "because-caught-fly"),
            Self::InfieldFly => say!(language, "because-infield-fly"),
            Self::HeldThrow => say!(language, "because-held-throw"),
            Self::TouchedBase => say!(language, "because-touched-base"),
            Self::Tagged => say!(language, "because-tagged"),
            Self::Appealed => say!(language, "because-appealed"),
            Self::CaughtThirdStrike => say!(language, "because-caught-third-strike"),
            Self::CatcherByRule => say!(language, "because-catcher-by-rule"),
            Self::NearestTheBall => say!(language, "because-nearest-the-ball"),
            Self::WasHindered => say!(language, "because-was-hindered"),
            Self::NearestThePassing => say!(language, "because-nearest-the-passing"),
            Self::WasAvoided => say!(language, "because-was-avoided"),
            Self::NearestByRule => say!(language, "because-nearest-by-rule"),
            Self::Threw => say!(language, "because-threw"),
            Self::ThrewToRuleOut => say!(language, "because-threw-to-rule-out"),
            Self::ThrewInVain => say!(language, "because-threw-in-vain"),
            Self::AtHisPost => say!(language, "because-at-his-post"),
            Self::Pitched => say!(language, "because-pitched"),
            Self::LeftStanding => say!(language, "because-left-standing"),
        }
    }
}

impl fmt::Display for Because {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

fn misplayed(language: Language, kind: MisplayKind, life: &str) -> String {
    match kind {
        MisplayKind::DroppedFoul => say!(language, "because-misplayed-dropped-foul"),
        MisplayKind::Interference => say!(language, "because-catcher-interference"),
        MisplayKind::Obstruction => say!(language, "because-misplayed-obstruction", life = life),
        MisplayKind::Fielding => say!(language, "because-misplayed-fielding", life = life),
        MisplayKind::Throwing => say!(language, "because-misplayed-throwing", life = life),
        MisplayKind::Muff => say!(language, "because-misplayed-muff", life = life),
        MisplayKind::DroppedFly => say!(language, "because-misplayed-dropped-fly", life = life),
    }
}
