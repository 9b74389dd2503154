//! Why a pitcher has a decision: as data, and how it is said.

use core::fmt;

use crate::field::Outs;
use crate::log::EntryId;
use crate::team::PlayerId;
use crate::words::{Language, say};

/// Why a pitcher is credited or charged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Why {
    /// The side went ahead for good while this was its pitcher (OBR 9.17(a)).
    AheadForGood {
        /// The play on which it did.
        on: EntryId,
    },
    /// The starter had not pitched long enough, and this is the only relief pitcher (OBR 9.17(b)).
    OnlyReliever {
        /// Innings the starter needed.
        needed: u8,
    },
    /// The starter had not pitched long enough, and this relief pitcher was the most effective (OBR 9.17(b)).
    MostEffective {
        /// Innings the starter needed.
        needed: u8,
    },
    /// The pitcher of record was brief and ineffective, and this one kept the lead after him (OBR 9.17(c)).
    AfterIneffective {
        /// The pitcher of record.
        instead_of: PlayerId,
    },
    /// The scorer judged it so.
    Judged,
    /// Responsible for the run that put the other side ahead for good (OBR 9.17(d)).
    GaveUpTheLead {
        /// The play on which it scored.
        on: EntryId,
    },
    /// Finished the game, having come in with a lead of three or fewer, for an inning or more (OBR 9.19(d)(1)).
    SmallLead {
        /// The lead.
        lead: u8,
    },
    /// Finished the game, having come in with the tying run on base, at bat or on deck (OBR 9.19(d)(2)).
    TyingRunNear {
        /// The lead.
        lead: u8,
        /// Runners on base.
        on_base: u8,
    },
    /// Finished the game with three innings or more (OBR 9.19(d)(3)).
    ThreeInnings {
        /// Innings pitched, in outs.
        outs: Outs,
    },
    /// The only pitcher of the side.
    WholeGame,
    /// Came in before anybody was out or a run was in, and pitched the rest without a run (OBR 9.18).
    FromTheFirstOut,
    /// Came in with a lead to keep, and left with it (custom, not in the rules).
    KeptTheLead {
        /// The lead at his entry.
        lead: u8,
    },
    /// Came in with a lead to keep, and lost it (custom, not in the rules).
    LostTheLead {
        /// The lead at his entry.
        lead: u8,
    },
}

impl Why {
    /// Section of the Official Baseball Rules; "custom" where they have none.
    pub const fn rule(self) -> &'static str {
        match self {
            Self::AheadForGood { .. } => "9.17(a)",
            Self::OnlyReliever { .. } | Self::MostEffective { .. } | Self::Judged => "9.17(b)",
            Self::AfterIneffective { .. } => "9.17(c)",
            Self::GaveUpTheLead { .. } => "9.17(d)",
            Self::SmallLead { .. } => "9.19(d)(1)",
            Self::TyingRunNear { .. } => "9.19(d)(2)",
            Self::ThreeInnings { .. } => "9.19(d)(3)",
            Self::WholeGame | Self::FromTheFirstOut => "9.18",
            Self::KeptTheLead { .. } | Self::LostTheLead { .. } => "custom",
        }
    }

    /// The play it rests on, if on one.
    pub const fn entry(self) -> Option<EntryId> {
        match self {
            Self::AheadForGood { on } | Self::GaveUpTheLead { on } => Some(on),
            _ => None,
        }
    }
}

impl Why {
    /// As a sentence in a language.
    pub fn said(self, language: Language) -> String {
        match self {
            Self::AheadForGood { .. } => say!(language, "decision-ahead-for-good"),
            Self::OnlyReliever { needed } => say!(language, "decision-only-reliever", needed = needed),
            Self::MostEffective { needed } => say!(language, "decision-most-effective", needed = needed),
            Self::AfterIneffective { .. } => say!(language, "decision-after-ineffective"),
            Self::Judged => say!(language, "decision-judged"),
            Self::GaveUpTheLead { .. } => say!(language, "decision-gave-up-the-lead"),
            Self::SmallLead { lead } => say!(language, "decision-small-lead", lead = lead),
            Self::TyingRunNear { lead, .. } => say!(language, "decision-tying-run-near", lead = lead),
            Self::ThreeInnings { outs } => say!(language, "decision-three-innings", innings = outs.to_string()),
            Self::WholeGame => say!(language, "decision-whole-game"),
            Self::FromTheFirstOut => say!(language, "decision-from-the-first-out"),
            Self::KeptTheLead { lead } => say!(language, "decision-kept-the-lead", lead = lead),
            Self::LostTheLead { lead } => say!(language, "decision-lost-the-lead", lead = lead),
        }
    }
}

impl fmt::Display for Why {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.said(Language::English))
    }
}
