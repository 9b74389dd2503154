//! Runs batted in (OBR 9.04).

use super::{BatterResult, Because, Judgments, Ruling, batter};
use crate::field::Base;
use crate::game::{Moved, Play, TurnKind};
use crate::log::{Cause, How, Judgment, MisplayKind, Start};
use crate::team::PlayerId;

/// For each run of the play, whether the batter has it batted in.
pub(super) fn rule(
    play: &Play,
    result: Option<BatterResult>,
    double_play: bool,
    judgments: &Judgments,
) -> Vec<(PlayerId, Ruling<bool>)> {
    play.moves
        .iter()
        .filter(|m| m.scored)
        .map(|m| {
            let (verdict, because, rule) = one(play, m, result, double_play, judgments);
            (m.runner, Ruling { verdict, because, rule, entry: play.entry })
        })
        .collect()
}

fn one(
    play: &Play,
    m: &Moved,
    result: Option<BatterResult>,
    double_play: bool,
    judgments: &Judgments,
) -> (bool, Because, &'static str) {
    let Some(turn) = play.turn else { return (false, Because::NotBatted, "9.04(a)") };
    match turn.kind {
        TurnKind::Walk | TurnKind::IntentionalWalk | TurnKind::HitByPitch | TurnKind::CatcherInterference => {
            let forced = m.legs.last().is_some_and(|leg| leg.to == Base::Home && leg.cause == Cause::Forced);
            return if forced {
                (true, Because::ForcedIn, "9.04(a)(2)")
            } else {
                (false, Because::NotBatted, "9.04(a)")
            };
        }
        TurnKind::InPlay => {}
        _ => return (false, Because::NotBatted, "9.04(a)"),
    }
    let would = judgments.find(play.entry, |j| match j {
        Judgment::WouldHaveScored { runner, yes, .. } if *runner == m.runner => Some(*yes),
        _ => None,
    });
    if double_play {
        return (false, Because::DoublePlay, "9.04(b)(1)");
    }
    if muffed_double_play(play) {
        return (false, Because::MuffedDoublePlay, "9.04(b)(2)");
    }
    if let Some(yes) = would {
        return (yes, Because::Judged, "9.04(a)(3)");
    }
    if matches!(result, Some(BatterResult::SacrificeFly { .. })) && m.from == Start::Third {
        return (true, Because::SacrificeFly, "9.04(a)(1)");
    }
    let void = batter::void_error(play, result);
    let on_error = m.legs.iter().any(|leg| match leg.cause {
        Cause::Error(i) => Some(i) != void,
        Cause::PassedBall | Cause::WildPitch => true,
        _ => false,
    });
    if !on_error && !matches!(result, Some(BatterResult::ReachedOnError(_))) {
        return (true, Because::BattedIn, "9.04(a)(1)");
    }
    if ordinarily_scores(play, m, result) {
        return (true, Because::ErrorButScoresAnyway, "9.04(a)(3)");
    }
    (false, Because::OnError, "9.04(a)(3)")
}

/// The usual answer where the batter reached on an error (OBR 9.04(a)(3)): with fewer than two outs the runner from
/// third would have scored on the play without it.
pub(super) fn ordinarily_scores(play: &Play, m: &Moved, result: Option<BatterResult>) -> bool {
    m.scored && m.from == Start::Third && play.before.outs < 2 && batter::reached_on_error(play, result)
}

/// One out of a force double play was made, and the throw that would have made the other was muffed at first.
fn muffed_double_play(play: &Play) -> bool {
    let forced =
        play.moves.iter().any(|m| m.from != Start::Batter && m.out.as_ref().is_some_and(|o| o.how == How::Force));
    let muff_at_first = |i: u8| play.misplays.get(usize::from(i)).is_some_and(|m| m.kind == MisplayKind::Muff);
    forced
        && play.batter_move().and_then(|m| m.legs.first()).is_some_and(|leg| match leg.cause {
            Cause::Error(i) => leg.to == Base::First && muff_at_first(i),
            _ => false,
        })
}
