//! Why a run is earned or not, and why a pitcher answers for it: as data, and how it is said.

use core::fmt;

use crate::field::{Base, Position};
use crate::log::EntryId;
use crate::words::{Language, say};

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

impl Help {
    /// Inside a sentence, in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::Error => say!(language, "help-error"),
            Self::PassedBall => say!(language, "help-passed-ball"),
            Self::Interference => say!(language, "help-interference"),
            Self::Obstruction => say!(language, "help-obstruction"),
            Self::FoulFly => say!(language, "help-foul-fly"),
            Self::Throw => say!(language, "help-throw"),
            Self::Judged => say!(language, "help-judged"),
        }
    }
}

impl Reason {
    /// As a sentence in a language.
    pub fn said(&self, language: Language) -> String {
        match self {
            Self::Unaided => say!(language, "earned-unaided"),
            Self::WouldHaveScored { by, .. } => say!(language, "earned-would-have-scored", help = by.said(language)),
            Self::Judged { earned: true } => say!(language, "earned-judged"),
            Self::Judged { earned: false } => say!(language, "unearned-judged"),
            Self::ReachedOnError { by: Some(by), .. } => {
                say!(language, "unearned-reached-on-error", position = by.said(language))
            }
            Self::ReachedOnError { by: None, .. } => say!(language, "unearned-reached-on-some-error"),
            Self::ReachedOnPassedBall { .. } => say!(language, "unearned-reached-on-passed-ball"),
            Self::ReachedOnInterference { .. } => say!(language, "unearned-reached-on-interference"),
            Self::ReachedOnObstruction { .. } => say!(language, "unearned-reached-on-obstruction"),
            Self::FoulFlyMuffed { .. } => say!(language, "unearned-foul-fly"),
            Self::Spared { .. } => say!(language, "unearned-spared"),
            Self::Placed => say!(language, "unearned-placed"),
            Self::TookPlace { .. } => say!(language, "unearned-took-place"),
            Self::InningOver { missed, .. } => say!(language, "unearned-inning-over", missed = missed.len()),
            Self::Helped { by, stands, .. } => {
                say!(language, "unearned-helped", help = by.said(language), base = stands.said(language))
            }
        }
    }
}

impl Answers {
    /// As a sentence in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::Faced => say!(language, "answers-faced"),
            Self::LeftInMidCount => say!(language, "answers-left-in-mid-count"),
            Self::PassedOn { .. } => say!(language, "answers-passed-on"),
            Self::Placed => say!(language, "answers-placed"),
        }
    }
}

impl fmt::Display for Reason {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}

impl fmt::Display for Answers {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}
