//! Strike three not caught: the batter may run if first base is free or two are out (OBR 5.05(a)(2), 5.09(a)(3)).

use super::running::{Runs, lead_first};
use super::{Outcome, Proposal, Scene};
use crate::field::{Base, Position};
use crate::game::{Game, Play, TurnKind};
use crate::log::{Action, Call, Cause, Event, How, Misplay, MisplayKind, Move, Out, Pitch, Start};

/// Why the batter is safe on strike three.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GotAway {
    /// The pitch was wild.
    WildPitch,
    /// The catcher should have held it.
    PassedBall,
    /// The catcher threw badly to first.
    BadThrow,
    /// First base did not hold the throw.
    Muff,
}

/// If the last thing recorded was a strikeout on which the batter might have run: what else may have come of it, each
/// as the correction of that entry. Else empty.
pub fn strike_three_got_away(game: &Game) -> Vec<Proposal> {
    let Some((play, thrown)) = last_strikeout(game) else { return Vec::new() };
    let (entry, call) = (play.entry, thrown.call);
    let scene = Scene::at(game, play.before);
    let two_out = scene.s.outs + 1 >= 3;
    let caught_by_rule = matches!(call, Call::FoulTip | Call::FoulBunt | Call::AutomaticStrike);
    if !scene.code.dropped_third_strike || caught_by_rule || (scene.occupied(Base::First) && !two_out) {
        return Vec::new();
    }
    let replace = |outcome: Outcome, moves: Vec<Move>, misplays: Vec<Misplay>| {
        let pitch = Pitch { action: Action { moves, misplays }, ..thrown.clone() };
        Proposal { outcome, event: Event::Replace { entry, event: Box::new(Event::Pitch(pitch)) } }
    };
    let everybody = |cause: Cause| {
        let mut moves = Runs::forced(&scene, cause).into_moves();
        moves.push(Move::safe(Start::Batter, Base::First, cause));
        moves
    };
    let mut list = vec![
        replace(Outcome::StrikeThreeSafe(GotAway::WildPitch), everybody(Cause::WildPitch), Vec::new()),
        replace(Outcome::StrikeThreeSafe(GotAway::PassedBall), everybody(Cause::PassedBall), Vec::new()),
    ];
    let catcher = Position::Catcher;
    if !scene.has(catcher) {
        return list;
    }
    let out = |who: Start, how: How, at: Base, by: &[Position]| Move::out(who, Out::new(how, at, by));
    if scene.has(Position::FirstBase) {
        let by = [catcher, Position::FirstBase];
        // The batter is out at first, not on the strike: the first baseman has the putout.
        let moves = vec![out(Start::Batter, How::Strikeout, Base::First, &by)];
        list.push(replace(Outcome::StrikeThreeOut { by: by.to_vec() }, moves, Vec::new()));
        let bad_throw = Misplay::new(catcher, MisplayKind::Throwing);
        list.push(replace(Outcome::StrikeThreeSafe(GotAway::BadThrow), everybody(Cause::Error(0)), vec![bad_throw]));
        let mut muff = Misplay::new(Position::FirstBase, MisplayKind::Muff);
        muff.after = vec![catcher];
        muff.spared = Some(Start::Batter);
        list.push(replace(Outcome::StrikeThreeSafe(GotAway::Muff), everybody(Cause::Error(0)), vec![muff]));
    }
    // With first taken and two out, the runner furthest on who is forced can be put out by touching the next base.
    if two_out && let Some(lead) = lead_first(&scene).find(|b| scene.s.is_forced(Start::from(*b))) {
        let at = lead.next().unwrap_or(Base::Home);
        let by: &[Position] = match at {
            Base::Home => &[Position::Catcher],
            Base::Third => &[Position::Catcher, Position::ThirdBase],
            _ => &[Position::Catcher, Position::SecondBase],
        };
        if by.iter().all(|p| scene.has(*p)) {
            let who = Start::from(lead);
            let mut moves = vec![out(who, How::Force, at, by)];
            moves.push(Move::safe(Start::Batter, Base::First, Cause::Choice));
            list.push(replace(Outcome::StrikeThreeForce { who, at, by: by.to_vec() }, moves, Vec::new()));
        }
    }
    list
}

/// The last step, if it is a strikeout with nobody on the way.
fn last_strikeout(game: &Game) -> Option<(&Play, &Pitch)> {
    let step = game.steps().last()?;
    let play = step.play.as_deref()?;
    let struck_out = matches!(play.turn.map(|t| t.kind), Some(TurnKind::Strikeout { .. }));
    match game.event(step) {
        Event::Pitch(pitch) if struck_out && play.batter_move().is_none_or(|m| m.legs.is_empty()) => {
            Some((play, pitch))
        }
        _ => None,
    }
}
