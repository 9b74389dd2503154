//! Why a run is earned or not, and why a pitcher answers for it: as data, and the one place where it is English.

use core::fmt;

use crate::field::{Base, Position};
use crate::log::EntryId;

/// What helped a runner along that the pitcher does not answer for (OBR 9.16(d)).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Help {
    /// An error.
    Error,
    /// A passed ball.
    PassedBall,
    /// A fielder's interference.
    Interference,
    /// Obstruction.
    Obstruction,
    /// The batter should have been out on a foul fly before.
    FoulFly,
    /// A throw after a runner who should not have been on base.
    Throw,
    /// The scorer judged that he would not have scored on that play.
    Judged,
}

/// Why a run is earned or unearned.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// Nothing helped him (OBR 9.16(a)).
    Unaided,
    /// He was helped, but would have scored all the same, at the latest on this play (OBR 9.16(d)).
    WouldHaveScored {
        /// The play that helped him.
        helped: EntryId,
        /// By what.
        by: Help,
        /// The play on which he would have scored.
        on: EntryId,
    },
    /// The scorer judged it so.
    Judged {
        /// Earned.
        earned: bool,
    },
    /// He reached on an error (OBR 9.16(b)(3)).
    ReachedOnError {
        /// The play.
        on: EntryId,
        /// Whose, if it was a fielder's.
        by: Option<Position>,
    },
    /// He reached on strike three because of a passed ball (OBR 9.16(a): a fielding chance).
    ReachedOnPassedBall {
        /// The play.
        on: EntryId,
    },
    /// He reached on the catcher's interference (OBR 9.16(b)(2)). No out is assumed.
    ReachedOnInterference {
        /// The play.
        on: EntryId,
    },
    /// He reached on obstruction (OBR 9.16(b)(2)).
    ReachedOnObstruction {
        /// The play.
        on: EntryId,
    },
    /// He should have been out on a foul fly (OBR 9.16(b)(1)).
    FoulFlyMuffed {
        /// The play.
        on: EntryId,
    },
    /// An error kept him on base (OBR 9.16(c)).
    Spared {
        /// The play.
        on: EntryId,
    },
    /// He was put on base by rule, as if on an error charged to nobody (OBR 7.01(b)).
    Placed,
    /// He reached on a fielder's choice that put out a runner who should not have been on base.
    TookPlace {
        /// The play.
        on: EntryId,
    },
    /// Three outs should have been made by then (OBR 9.16).
    InningOver {
        /// The play on which the third should have been made.
        third: EntryId,
        /// The plays on which a chance was missed.
        missed: Vec<EntryId>,
    },
    /// He was helped, and without it would have stood on this base (OBR 9.16(d)).
    Helped {
        /// The play that helped him.
        on: EntryId,
        /// By what.
        by: Help,
        /// Where he would have stood at the end.
        stands: Base,
        /// The inning as it should have been is over, so that nothing can bring him in any more.
        over: bool,
    },
}

impl Reason {
    /// It makes the run an earned one.
    pub const fn is_earned(&self) -> bool {
        matches!(self, Self::Unaided | Self::WouldHaveScored { .. } | Self::Judged { earned: true })
    }

    /// What comes in the same half-inning may still change it.
    pub const fn may_change(&self) -> bool {
        matches!(self, Self::Helped { over: false, .. })
    }

    /// Section of the Official Baseball Rules.
    pub const fn rule(&self) -> &'static str {
        match self {
            Self::Unaided | Self::ReachedOnPassedBall { .. } => "9.16(a)",
            Self::WouldHaveScored { .. } | Self::Helped { .. } | Self::Judged { .. } => "9.16(d)",
            Self::ReachedOnError { .. } => "9.16(b)(3)",
            Self::ReachedOnInterference { .. } | Self::ReachedOnObstruction { .. } => "9.16(b)(2)",
            Self::FoulFlyMuffed { .. } => "9.16(b)(1)",
            Self::Spared { .. } => "9.16(c)",
            Self::Placed => "7.01(b)",
            Self::TookPlace { .. } | Self::InningOver { .. } => "9.16",
        }
    }

    /// The plays it rests on, besides the one on which the run scored.
    pub fn entries(&self) -> Vec<EntryId> {
        match self {
            Self::Unaided | Self::Judged { .. } | Self::Placed => Vec::new(),
            Self::WouldHaveScored { helped, on, .. } => vec![*helped, *on],
            Self::ReachedOnError { on, .. }
            | Self::ReachedOnPassedBall { on }
            | Self::ReachedOnInterference { on }
            | Self::ReachedOnObstruction { on }
            | Self::FoulFlyMuffed { on }
            | Self::Spared { on }
            | Self::TookPlace { on }
            | Self::Helped { on, .. } => vec![*on],
            Self::InningOver { third, missed } => {
                let mut entries = missed.clone();
                if !entries.contains(third) {
                    entries.push(*third);
                }
                entries
            }
        }
    }
}

/// Why a pitcher answers for a runner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Answers {
    /// He pitched to him (OBR 9.16(g)).
    Faced,
    /// The batter walked, and this pitcher had left with the count in his favor (OBR 9.16(h)).
    LeftInMidCount,
    /// The runner stands for one whom this pitcher had left on base (OBR 9.16(g)).
    PassedOn {
        /// The fielder's choice.
        on: EntryId,
    },
    /// He was pitching when the runner was put on base by rule (OBR 7.01(b)).
    Placed,
}

impl Answers {
    /// Section of the Official Baseball Rules.
    pub const fn rule(self) -> &'static str {
        match self {
            Self::Faced | Self::PassedOn { .. } => "9.16(g)",
            Self::LeftInMidCount => "9.16(h)",
            Self::Placed => "7.01(b)",
        }
    }
}

impl fmt::Display for Help {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Error => "an error",
            Self::PassedBall => "a passed ball",
            Self::Interference => "interference by a fielder",
            Self::Obstruction => "obstruction",
            Self::FoulFly => "the ball of a batter who should have been out on a foul fly",
            Self::Throw => "a throw after a runner who should not have been on base",
            Self::Judged => "a misplay, by the scorer's judgment",
        })
    }
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unaided => f.write_str("No error and no passed ball helped the runner round the bases."),
            Self::WouldHaveScored { by, .. } => {
                write!(f, "The runner was helped by {by}, but would have come in without it on what followed.")
            }
            Self::Judged { earned: true } => f.write_str("The scorer judged that the run would have scored anyway."),
            Self::Judged { earned: false } => f.write_str("The scorer judged that the run would not have scored."),
            Self::ReachedOnError { by: Some(by), .. } => write!(f, "The runner reached base on an error by the {by}."),
            Self::ReachedOnError { by: None, .. } => f.write_str("The runner reached base on an error."),
            Self::ReachedOnPassedBall { .. } => f.write_str("The runner had struck out and reached first on a passed ball."),
            Self::ReachedOnInterference { .. } => f.write_str("The runner reached first on the catcher's interference."),
            Self::ReachedOnObstruction { .. } => f.write_str("The runner reached first on obstruction."),
            Self::FoulFlyMuffed { .. } => f.write_str("The runner should have been out at bat, on a foul fly that was dropped."),
            Self::Spared { .. } => f.write_str("The runner should have been put out on the bases, and was spared by an error."),
            Self::Placed => f.write_str("The runner was put on base by rule, which counts like reaching on an error."),
            Self::TookPlace { .. } => f.write_str(
                "The runner reached on a fielder's choice that put out somebody who should not have been there; otherwise \
                 the out would have been made at first.",
            ),
            Self::InningOver { missed, .. } => match missed.len() {
                1 => f.write_str("Without one missed chance the inning would have been over."),
                n => write!(f, "Without {n} missed chances the inning would have been over."),
            },
            Self::Helped { by, stands, .. } => {
                write!(f, "The runner was helped by {by}, and without it would have come no further than {stands}.")
            }
        }
    }
}

impl fmt::Display for Answers {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Faced => "This pitcher faced the batter who reached base.",
            Self::LeftInMidCount => "This pitcher left with the count in the batter's favor, and the batter walked.",
            Self::PassedOn { .. } => {
                "This pitcher left a runner on base who was put out on a fielder's choice, and answers for another instead."
            }
            Self::Placed => "This pitcher was pitching when the runner was put on base by rule.",
        })
    }
}
