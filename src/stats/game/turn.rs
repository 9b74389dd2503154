//! A batter's turn at the plate, and whose record it goes down in when batter or pitcher change in its middle
//! (OBR 9.15(b), 9.16(h)).

use super::Situation;
use crate::field::Count;
use crate::team::PlayerId;

/// How a plate appearance ended, before any judgment.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TurnKind {
    /// Base on balls.
    Walk,
    /// Intentional base on balls.
    IntentionalWalk,
    /// Hit by a pitch.
    HitByPitch,
    /// Struck out; he may still have reached base.
    Strikeout {
        /// On a called strike.
        looking: bool,
    },
    /// First base for the catcher's interference.
    CatcherInterference,
    /// Out for his own interference.
    BatterInterference,
    /// Put the ball in play, or flied out foul.
    InPlay,
    /// Out because somebody batted out of turn in his place, and it was appealed.
    OutOfTurn,
    /// An empty place in the order: an out by the code, and nobody's plate appearance.
    EmptyPlace,
}

/// A plate appearance that has ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TurnEnd {
    /// How.
    pub kind: TurnKind,
    /// In whose record it goes.
    pub batter: Option<PlayerId>,
    /// Against whose record it goes.
    pub pitcher: Option<PlayerId>,
    /// Batting place, from 0.
    pub place: u8,
    /// The count before the last pitch.
    pub count: Count,
}

/// The turn now at the plate.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct Turn {
    /// Each batter of this turn with the strikes he came in with.
    pub batters: Vec<(PlayerId, u8)>,
    /// Each pitcher of this turn with the count he came in with.
    pub pitchers: Vec<(PlayerId, Count)>,
    /// The player whose turn it is by the order, when another is at the plate.
    pub proper: Option<(PlayerId, u8)>,
    /// Pitches were missed.
    pub pitches_missed: bool,
}

impl Turn {
    pub fn begin(batter: Option<PlayerId>, pitcher: Option<PlayerId>) -> Self {
        Self {
            batters: batter.map(|b| (b, 0)).into_iter().collect(),
            pitchers: pitcher.map(|p| (p, Count::default())).into_iter().collect(),
            proper: None,
            pitches_missed: false,
        }
    }

    /// The batter charged: a strikeout goes to a batter who left with two strikes (OBR 9.15(b)).
    pub fn charged_batter(&self, kind: TurnKind, strikes_for_out: u8) -> Option<PlayerId> {
        let mut at = self.batters.len().checked_sub(1)?;
        if matches!(kind, TurnKind::Strikeout { .. }) {
            while at > 0 && self.batters[at].1.saturating_add(1) >= strikes_for_out {
                at -= 1;
            }
        }
        Some(self.batters[at].0)
    }

    /// The pitcher charged: a walk goes to a pitcher who left with the count in the batter's favor (OBR 9.16(h)).
    pub fn charged_pitcher(&self, kind: TurnKind) -> Option<PlayerId> {
        let mut at = self.pitchers.len().checked_sub(1)?;
        if matches!(kind, TurnKind::Walk | TurnKind::IntentionalWalk) {
            while at > 0 && favors_batter(self.pitchers[at].1) {
                at -= 1;
            }
        }
        Some(self.pitchers[at].0)
    }
}

/// 2-0, 2-1, 3-0, 3-1 and 3-2 (OBR 9.16(h)).
pub const fn favors_batter(count: Count) -> bool {
    matches!((count.balls, count.strikes), (2, 0 | 1) | (3, 0..=2))
}

/// The last turn that ended, until the next pitch: what an appeal against batting out of turn needs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct FinishedTurn {
    /// Index of the step that ended it.
    pub step: usize,
    /// Who should have batted, and the place.
    pub proper: (PlayerId, u8),
    /// The game before the play that ended it.
    pub before: Situation,
}

#[cfg(test)]
mod tests {
    use super::*;

    /// OBR 9.16(h): every count a reliever can come in on.
    #[test]
    fn counts_that_charge_a_walk_to_the_earlier_pitcher() {
        let earlier = [(2, 0), (2, 1), (3, 0), (3, 1), (3, 2)];
        for balls in 0..4 {
            for strikes in 0..3 {
                assert_eq!(
                    favors_batter(Count::new(balls, strikes)),
                    earlier.contains(&(balls, strikes)),
                    "{balls}-{strikes}"
                );
            }
        }
    }
}
