//! Between pitches: what a runner may have done when nobody hit the ball.

use super::running::{Runs, lead_first};
use super::{Outcome, Proposal, Scene};
use crate::field::{Base, Position};
use crate::game::{Game, Thrown};
use crate::log::{Action, Attempt, Call, Cause, Event, How, Leg, Misplay, MisplayKind, Move, Out, Running, Start};

fn running(outcome: Outcome, moves: Vec<Move>, misplays: Vec<Misplay>, same_play: bool) -> Proposal {
    Proposal { outcome, event: Event::Running(Running { action: Action { moves, misplays }, same_play }) }
}

/// What the runner on `base` may have done with no fielder to be named. `same_play`: on the pitch just recorded.
///
/// Wild pitch, passed ball and balk move everybody up one base. Empty if nobody is there.
pub fn on_runner(game: &Game, base: Base, same_play: bool) -> Vec<Proposal> {
    let scene = Scene::now(game);
    let Some(to) = base.next().filter(|_| scene.occupied(base)) else { return Vec::new() };
    let who = Start::from(base);
    let mut list = Vec::new();
    let free = to == Base::Home || !scene.occupied(to);
    if scene.code.stealing {
        if free {
            list.push(running(
                Outcome::Steal { who, to },
                vec![Move::safe(who, to, Cause::Steal)],
                Vec::new(),
                same_play,
            ));
        }
        if lead_first(&scene).count() > 1 {
            let moves = Runs::all(&scene, 1, Cause::Steal).into_moves();
            list.push(running(Outcome::StealTogether, moves, Vec::new(), same_play));
        }
    }
    let everybody = |outcome: Outcome, cause: Cause, same_play: bool| {
        running(outcome, Runs::all(&scene, 1, cause).into_moves(), Vec::new(), same_play)
    };
    list.push(everybody(Outcome::WildPitch, Cause::WildPitch, same_play));
    list.push(everybody(Outcome::PassedBall, Cause::PassedBall, same_play));
    list.push(everybody(Outcome::Balk, Cause::Balk, false));
    if free && scene.code.stealing {
        let moves = vec![Move::safe(who, to, Cause::Indifference)];
        list.push(running(Outcome::Indifference { who, to }, moves, Vec::new(), same_play));
    }
    list.push(everybody(Outcome::IllegalPitch, Cause::IllegalPitch, false));
    list
}

/// The last entry is a pitch after which the ball was alive: what a runner does next usually happened on it.
pub fn is_on_pitch(game: &Game) -> bool {
    let play = game.steps().last().and_then(|step| step.play.as_deref());
    play.is_some_and(|play| match play.thrown {
        Some(Thrown::Called(call)) => !matches!(
            call,
            Call::Foul | Call::FoulBunt | Call::HitByPitch | Call::CatcherInterference | Call::BatterInterference
        ),
        _ => false,
    })
}

/// Who usually throws and tags when the runner on `base` is thrown at (common practice, no source).
pub fn usual_chase(base: Base, attempt: Attempt) -> Vec<Position> {
    let at = if attempt == Attempt::Pickoff { Some(base) } else { base.next() };
    let tags = match at {
        Some(Base::First) => Position::FirstBase,
        Some(Base::Second) => Position::Shortstop,
        Some(Base::Third) => Position::ThirdBase,
        _ => Position::Catcher,
    };
    match (attempt, tags) {
        (Attempt::Pickoff, _) | (_, Position::Catcher) => vec![Position::Pitcher, tags],
        _ => vec![Position::Catcher, tags],
    }
}

/// What came of throws at the runner on `base`, along `chain`: out, or safe on an error. Empty without a fielder.
pub fn chased(game: &Game, base: Base, attempt: Attempt, chain: &[Position], same_play: bool) -> Vec<Proposal> {
    let scene = Scene::now(game);
    let by: Vec<Position> = chain.iter().copied().filter(|p| scene.has(*p)).collect();
    let Some(receiver) = by.last().copied() else { return Vec::new() };
    let Some(next) = base.next().filter(|_| scene.occupied(base)) else { return Vec::new() };
    let who = Start::from(base);
    let mut list = Vec::new();
    let mut push = |outcome: Outcome, moves: Vec<Move>, misplays: Vec<Misplay>| {
        list.push(running(outcome, moves, misplays, same_play));
    };
    let out_at = |at: Base| {
        let out = Out { how: How::Tag, at, by: by.clone(), attempt: Some(attempt) };
        let outcome = Outcome::OutOnBases { who, at, attempt, by: by.clone() };
        (outcome, vec![Move::out(who, out)])
    };
    // A throw behind him gets him at his base; any longer chase is on the way to the next.
    let at_own = attempt == Attempt::Pickoff && by.len() <= 2;
    let places = if at_own { [base, next] } else { [next, base] };
    for at in places {
        if attempt == Attempt::Pickoff || at == next {
            let (outcome, moves) = out_at(at);
            push(outcome, moves, Vec::new());
        }
    }
    let thrower = if by.len() > 1 { by[by.len() - 2] } else { receiver };
    // A bad throw: the base he was going for and one more, where that is free; those ahead of him go before him.
    let throw = |legs: Vec<Leg>, to: Base| {
        let mut misplay = Misplay::new(thrower, MisplayKind::Throwing);
        misplay.after = by[..by.len().saturating_sub(2)].to_vec();
        let outcome = Outcome::SafeOnError { who, to, by: thrower, throw: true };
        let moves = pushed_ahead(&scene, Move { from: who, legs, out: None });
        (outcome, moves, vec![misplay])
    };
    let beyond = next.next();
    if attempt == Attempt::Steal && scene.code.stealing {
        let free = next == Base::Home || !scene.occupied(next);
        if let Some(to) = beyond.filter(|_| free) {
            let legs = vec![Leg { to: next, cause: Cause::Steal }, Leg { to, cause: Cause::Error(0) }];
            let (outcome, moves, misplays) = throw(legs, to);
            push(outcome, moves, misplays);
        }
    } else {
        let (outcome, moves, misplays) = throw(vec![Leg { to: next, cause: Cause::Error(0) }], next);
        push(outcome, moves, misplays);
        if let Some(to) = beyond {
            let (outcome, moves, misplays) = throw(vec![Leg { to, cause: Cause::Error(0) }], to);
            push(outcome, moves, misplays);
        }
    }
    // The throw was good and not held: without the error he was out, so it is no stolen base (OBR 9.07(f)).
    let mut muff = Misplay::new(receiver, MisplayKind::Muff);
    muff.after = by[..by.len() - 1].to_vec();
    muff.spared = Some(who);
    muff.stealing = attempt == Attempt::Steal;
    let outcome = Outcome::SafeOnError { who, to: next, by: receiver, throw: false };
    let moves = pushed_ahead(&scene, Move::safe(who, next, Cause::Error(0)));
    push(outcome, moves, vec![muff]);
    list
}

/// The runner's way, and those ahead of him moved on where he would run into them.
fn pushed_ahead(scene: &Scene, runner: Move) -> Vec<Move> {
    let mut moves = vec![runner];
    for base in [Base::Second, Base::Third] {
        let behind = moves[0].reached().map_or(0, Base::number);
        let start = Start::from(base);
        if scene.occupied(base) && start > moves[0].from && behind >= base.number() {
            let to = Base::from_number((behind + 1).min(4)).unwrap_or(Base::Home);
            moves.insert(0, Move::safe(start, to, Cause::Error(0)));
        }
    }
    moves
}
