//! The dead ball (OBR 5.06(c)): on a foul that is not caught, a hit batter or interference at the plate nobody runs but
//! whom the batter forces or the umpire gives a base.

use super::{Play, Refusal, Thrown, TurnKind};
use crate::log::{Call, Cause, How, Move, Start};

impl Play {
    /// The ball was dead on it: nothing goes on from there, and no play that follows is the same one.
    pub fn is_dead(&self) -> bool {
        is_dead(self.thrown, self.turn.map(|t| t.kind))
    }
}

/// A caught foul fly is a ball in play and a foul tip is a strike: on both the ball is alive.
pub(super) const fn is_dead(thrown: Option<Thrown>, turn: Option<TurnKind>) -> bool {
    let by_turn = matches!(
        turn,
        Some(
            TurnKind::HitByPitch
                | TurnKind::CatcherInterference
                | TurnKind::BatterInterference
                | TurnKind::OutOfTurn
                | TurnKind::EmptyPlace
        )
    );
    by_turn || matches!(thrown, Some(Thrown::Called(Call::Foul | Call::FoulBunt)))
}

/// What the rules let happen on a dead ball.
pub(super) fn check(moves: &[Move]) -> Result<(), Refusal> {
    let runs = moves.iter().find(|m| !m.legs.iter().all(|leg| is_given(leg.cause)));
    let is_put_out = |m: &&Move| m.from != Start::Batter && m.out.as_ref().is_some_and(|out| by_fielders(out.how));
    match runs.or_else(|| moves.iter().find(is_put_out)) {
        Some(m) => Err(Refusal::DeadBall(m.from)),
        None => Ok(()),
    }
}

const fn is_given(cause: Cause) -> bool {
    matches!(
        cause,
        Cause::Forced | Cause::Award | Cause::Obstruction | Cause::Interference | Cause::Balk | Cause::IllegalPitch
    )
}

const fn by_fielders(how: How) -> bool {
    matches!(how, How::Fly | How::Force | How::Tag | How::HitByBall)
}
