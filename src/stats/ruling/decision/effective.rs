//! Which relief pitcher was the most effective (OBR 9.17(b), 9.17(c)): the scorer's judgment, with a usual answer.

use core::cmp::Reverse;

use super::record::Record;
use crate::field::{Outs, Side};
use crate::ruling::earned::RunCharge;
use crate::team::PlayerId;

/// A pitcher who may be credited with the win, with the line the scorer is to weigh.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Candidate {
    /// Who.
    pub pitcher: PlayerId,
    /// Outs made while he pitched.
    pub outs: Outs,
    /// Runs charged to him, and others' that scored while he pitched.
    pub runs: u32,
    /// The earned ones among them.
    pub earned_runs: u32,
    /// Batters he let reach base, errors apart.
    pub baserunners: u32,
}

impl Candidate {
    pub(super) fn new(pitcher: PlayerId, side: Side, record: &Record, charges: &[RunCharge]) -> Self {
        let stints = record.stints(side);
        let mut candidate =
            Self { pitcher, outs: record.outs_of(side, pitcher), runs: 0, earned_runs: 0, baserunners: 0 };
        candidate.baserunners = stints.iter().filter(|s| s.pitcher == pitcher).map(|s| s.baserunners).sum();
        for (charge, on) in charges.iter().zip(&record.scored_on).filter(|(c, _)| c.half.fielding() == side) {
            let pitching = on.and_then(|i| stints.get(i)).is_some_and(|s| s.pitcher == pitcher);
            if charge.pitcher == Some(pitcher) || pitching {
                candidate.runs += 1;
                candidate.earned_runs += u32::from(charge.earned);
            }
        }
        candidate
    }

    /// Less than an inning, and two earned runs or more scored, whoever they are charged to (OBR 9.17(c) Comment: the
    /// scorer generally should call that brief and ineffective, but need not).
    pub const fn is_brief_and_ineffective(&self) -> bool {
        self.outs.0 < 3 && self.earned_runs >= 2
    }

    /// The smaller, the more effective; of equals the earlier has the presumption (OBR 9.17(b) Comment).
    ///
    /// The Comment names runs, earned runs, base runners and the context, and asks for an inning or a crucial out. This
    /// order of weighing is common practice, no source: an inning finished; earned runs to the out; runs to the out;
    /// outs; base runners.
    fn rank(&self) -> (bool, u64, u64, Reverse<u32>, u32) {
        let to_the_out = |runs: u32| u64::from(runs) * 1_000_000 / u64::from(self.outs.0.max(1));
        (self.outs.0 < 3, to_the_out(self.earned_runs), to_the_out(self.runs), Reverse(self.outs.0), self.baserunners)
    }
}

/// The usual answer: the most effective, the earlier of equals.
pub(super) fn most_effective(candidates: &[Candidate]) -> Option<&Candidate> {
    candidates.iter().min_by_key(|c| c.rank())
}
