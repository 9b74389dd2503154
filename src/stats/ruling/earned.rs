//! Earned runs (OBR 9.16).

use crate::field::Half;
use crate::game::{Game, RunnerKey};
use crate::log::EntryId;
use crate::team::PlayerId;

/// One run, and who answers for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RunCharge {
    /// The entry of the play on which it scored.
    pub entry: EntryId,
    /// Inning.
    pub inning: u8,
    /// Half.
    pub half: Half,
    /// Who scored.
    pub runner: PlayerId,
    /// His time around the bases.
    pub key: RunnerKey,
    /// The pitcher charged (OBR 9.16(g)).
    pub pitcher: Option<PlayerId>,
    /// Earned against that pitcher.
    pub earned: bool,
    /// Earned against the team.
    pub team_earned: bool,
    /// The half-inning still goes on, and the answer may change.
    pub provisional: bool,
}

/// Every run of the game.
pub fn runs(_game: &Game) -> Vec<RunCharge> {
    Vec::new()
}
