//! What a play says to the reconstruction: how the batter reached, who was spared, and which advances the pitcher does
//! not answer for (OBR 9.16(a) to (d)).

use super::Help;
use crate::field::{Base, Position};
use crate::game::{Moved, Play, RunnerKey, TurnKind};
use crate::log::{Cause, Judgment, Leg, MisplayKind, Start};
use crate::ruling::{BatterResult, GotAway, Judgments, batter, run, theft};

/// How the batter of a play fared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Fared {
    /// No plate appearance ended.
    StillUp,
    /// Put out without reaching base.
    Out,
    /// Reached base, and nobody's misplay was the reason.
    Safe,
    /// Reached on an error: a fielding chance.
    Error(Option<Position>),
    /// Reached on strike three by a passed ball: a fielding chance.
    PassedBall,
    /// Reached on obstruction: a fielding chance (OBR 9.16(a)).
    Obstruction,
    /// Reached on the catcher's interference: no chance (OBR 9.16(a) Comment).
    Interference,
}

/// A play as the reconstruction reads it.
pub(super) struct Reading<'a> {
    pub play: &'a Play,
    /// As what his turn counts.
    result: Option<BatterResult>,
    pub batter: Fared,
    /// Bases of the hit; 0 if it was none.
    pub hit: u8,
    /// The batter who reached on a fielder's choice, on this play or on the one it goes on from.
    pub newcomer: Option<RunnerKey>,
    /// A pitch that got away was a passed ball.
    passed: bool,
    /// A dropped fly on which the runner from third would have scored after a catch.
    would_score_after_catch: Option<bool>,
    judgments: &'a Judgments<'a>,
}

impl<'a> Reading<'a> {
    pub fn new(play: &'a Play, judgments: &'a Judgments<'a>, chooser: Option<RunnerKey>) -> Self {
        let result = batter::rule(play, judgments).map(|ruling| ruling.verdict);
        let passed = theft::got_away(play, judgments).is_some_and(|r| r.verdict == GotAway::PassedBall);
        let mut reading = Self {
            play,
            result,
            batter: Fared::StillUp,
            hit: result.and_then(BatterResult::hit_bases).unwrap_or(0),
            newcomer: chooser,
            passed,
            would_score_after_catch: judgments
                .find(play.entry, |j| match j {
                    Judgment::WouldHaveScoredAfterCatch { yes, .. } => Some(*yes),
                    _ => None,
                })
                .or_else(|| matches!(result, Some(BatterResult::SacrificeFly { reached: true })).then_some(true)),
            judgments,
        };
        if let Some(m) = play.batter_move() {
            reading.batter = reading.fared(m, result);
            if m.out.is_none() && reading.is_choice(m, result) {
                reading.newcomer = Some(m.key);
            }
        }
        reading
    }

    fn fared(&self, m: &Moved, result: Option<BatterResult>) -> Fared {
        let Some(first) = m.legs.first() else { return Fared::Out };
        if self.play.turn.is_some_and(|t| t.kind == TurnKind::CatcherInterference) {
            return Fared::Interference;
        }
        match (result, first.cause) {
            (Some(BatterResult::Hit(_) | BatterResult::FieldersChoice), _) => Fared::Safe,
            (Some(BatterResult::Obstruction), _) | (_, Cause::Obstruction) => Fared::Obstruction,
            (_, Cause::Error(i)) if self.kind_of(i) == Some(MisplayKind::Obstruction) => Fared::Obstruction,
            (Some(BatterResult::ReachedOnError(by)), _) => Fared::Error(Some(by)),
            (_, Cause::Error(i)) => Fared::Error(self.play.misplays.get(usize::from(i)).map(|m| m.by)),
            (Some(BatterResult::Strikeout { .. }), Cause::PassedBall | Cause::WildPitch) if self.passed => {
                Fared::PassedBall
            }
            _ => Fared::Safe,
        }
    }

    /// Whether a runner's out on this play would put the batter in his place.
    fn is_choice(&self, m: &Moved, result: Option<BatterResult>) -> bool {
        let chosen = m.legs.first().is_some_and(|leg| matches!(leg.cause, Cause::Choice | Cause::Throw));
        match result {
            Some(BatterResult::FieldersChoice | BatterResult::SacrificeHit { reached: true }) => true,
            Some(BatterResult::ReachedOnError(_)) => self
                .play
                .moves
                .iter()
                .any(|m| m.from != Start::Batter && m.out.as_ref().is_some_and(|o| o.how == crate::log::How::Force)),
            Some(BatterResult::Strikeout { reached: true, .. }) => chosen,
            _ => false,
        }
    }

    /// A foul fly was dropped and the batter's turn goes on (OBR 9.16(b)(1)).
    pub fn foul_fly_muffed(&self) -> bool {
        self.play.turn.is_none() && self.play.misplays.iter().any(|m| m.kind == MisplayKind::DroppedFoul)
    }

    /// An error alone kept the one who started from there from being put out (OBR 9.16(c)).
    ///
    /// The entry says so; or it is a good throw dropped where it would have put out a runner on a batted ball, or one
    /// who was stealing.
    pub fn is_spared(&self, start: Start) -> bool {
        self.play.misplays.iter().enumerate().any(|(i, misplay)| {
            if matches!(misplay.kind, MisplayKind::DroppedFoul | MisplayKind::Interference) {
                return false;
            }
            if let Some(spared) = misplay.spared {
                return spared == start;
            }
            let dropped = misplay.stealing || (misplay.kind == MisplayKind::Muff && self.play.batted.is_some());
            let by_it = |leg: &Leg| leg.cause == Cause::Error(i as u8);
            // A throw that would have put out the batter spared nobody else.
            let batters = self.play.batter_move().and_then(|m| m.legs.first()).is_some_and(by_it);
            start != Start::Batter
                && dropped
                && !batters
                && self.play.moves.iter().any(|m| m.from == start && m.legs.first().is_some_and(by_it))
        })
    }

    /// What helped a runner to the base of this leg, if the pitcher does not answer for it.
    pub fn help(&self, leg: Leg) -> Option<Help> {
        match leg.cause {
            Cause::Error(i) if batter::void_error(self.play, self.result) == Some(i) => None,
            Cause::Error(i) => match self.kind_of(i) {
                Some(MisplayKind::Obstruction) => Some(Help::Obstruction),
                Some(MisplayKind::Interference) => Some(Help::Interference),
                _ => Some(Help::Error),
            },
            Cause::WildPitch | Cause::PassedBall => self.passed.then_some(Help::PassedBall),
            Cause::Obstruction => Some(Help::Obstruction),
            Cause::Interference => Some(Help::Interference),
            Cause::Forced => {
                self.play.turn.is_some_and(|t| t.kind == TurnKind::CatcherInterference).then_some(Help::Interference)
            }
            // They ran on a ball that, as the scorer judged it, should have put the batter out.
            Cause::Play if self.judged_error() => Some(Help::Error),
            Cause::Play
            | Cause::Throw
            | Cause::Choice
            | Cause::Award
            | Cause::Steal
            | Cause::Balk
            | Cause::IllegalPitch
            | Cause::Indifference => None,
        }
    }

    /// The entry has him safe otherwise, and the scorer judged it an error.
    fn judged_error(&self) -> bool {
        let first = self.play.batter_move().and_then(|m| m.legs.first());
        matches!(self.result, Some(BatterResult::ReachedOnError(_)))
            && first.is_some_and(|leg| !matches!(leg.cause, Cause::Error(_)))
    }

    fn kind_of(&self, misplay: u8) -> Option<MisplayKind> {
        self.play.misplays.get(usize::from(misplay)).map(|m| m.kind)
    }

    /// Whether a run of this play would have scored without the misplay: by the scorer's word, the sacrifice fly's or
    /// the usual answer.
    pub fn would_have_scored(&self, m: &Moved) -> Option<bool> {
        if !m.scored || (self.play.misplays.is_empty() && !self.judged_error()) {
            return None;
        }
        let judged = self.judgments.find(self.play.entry, |j| match j {
            Judgment::WouldHaveScored { runner, yes, .. } if *runner == m.runner => Some(*yes),
            _ => None,
        });
        judged
            .or_else(|| self.would_score_after_catch.filter(|_| m.from == Start::Third))
            .or_else(|| run::ordinarily_scores(self.play, m, self.result).then_some(true))
    }

    /// Bases granted by this leg to a runner who without help would stand further back: what the play gives by its own
    /// nature, and nothing where there is doubt (OBR 9.16(f)).
    pub fn granted(&self, m: &Moved, leg: Leg, gained: u8) -> u8 {
        match leg.cause {
            Cause::Play | Cause::Error(_) if m.reached() == Some(Base::Home) => self.hit,
            Cause::Play | Cause::Error(_) => self.hit.min(gained),
            Cause::Steal | Cause::WildPitch | Cause::PassedBall | Cause::Balk | Cause::IllegalPitch => 1,
            _ => 0,
        }
    }

    /// Bases granted to a runner who is no longer on base, but would be without help.
    pub fn granted_to_absent(&self) -> u8 {
        let balk = self.play.moves.iter().any(|m| m.legs.iter().any(|leg| leg.cause == Cause::Balk));
        self.hit.max(u8::from(balk))
    }
}
