//! A ball caught in the air, or dropped.

use super::running::{Runs, batter_to, lead_first, together};
use super::{Outcome, Proposal, Scene, Touch, ball_in_play, place};
use crate::field::{Base, Position};
use crate::log::{Action, Call, Cause, Event, How, Leg, Misplay, MisplayKind, Move, Out, Pitch, Start, Trajectory};

/// A fly at least this far from home usually brings a runner in from third. Common practice, no source.
const DEEP_ENOUGH: f64 = 215.0;
/// And at least this far lets the one on second take third.
const VERY_DEEP: f64 = 330.0;

fn batter_caught(by: Position) -> Move {
    Move::out(Start::Batter, Out::new(How::Fly, Base::First, &[by]))
}

/// Caught; a runner on third tags and comes in on a deep fly. On a pop the runners hold.
pub(super) fn caught(scene: &Scene, touch: &Touch, by: Position, kind: Trajectory, list: &mut Vec<Proposal>) {
    let depth = place::depth(touch.spot);
    let deep = kind == Trajectory::Fly && by.is_outfield();
    let infield_fly = is_infield_fly(scene, by, kind);
    let outcome = Outcome::Caught { by, trajectory: kind, foul: touch.foul, infield_fly };
    let mut push = |runs: Runs| {
        let mut ball = touch.ball(kind);
        ball.trajectory = kind;
        ball.foul = touch.foul;
        ball.infield_fly = infield_fly;
        if infield_fly && touch.landed {
            ball.fielders.clear(); // called, and fallen all the same: nobody had it
        }
        let moves = together(scene, vec![batter_caught(by)], runs, None);
        list.push(ball_in_play(outcome.clone(), ball, moves, Vec::new()));
    };
    let scores = || Runs::only(scene, Base::Third, Base::Home, Cause::Play);
    if deep && scene.outs_left() > 1 {
        if depth >= DEEP_ENOUGH && scene.occupied(Base::Third) {
            push(scores());
        }
        push(Runs::none());
        let third_is_free = !scene.occupied(Base::Third);
        if scene.occupied(Base::Second) && (third_is_free || depth >= VERY_DEEP) {
            let mut runs = scores().into_moves();
            runs.extend(Runs::only(scene, Base::Second, Base::Third, Cause::Play).into_moves());
            push(Runs::all(scene, 1, Cause::Play).without(&[Start::First]));
        }
        if scene.occupied(Base::Third) && depth < DEEP_ENOUGH {
            push(scores());
        }
    } else {
        push(Runs::none());
    }
}

/// OBR "infield fly", definition and 5.09(a)(5): a fair pop an infielder can catch, first and second or all three bases
/// occupied, fewer than two out. The umpire calls it; a line drive or a bunt never is one.
pub(super) fn is_infield_fly(scene: &Scene, by: Position, kind: Trajectory) -> bool {
    matches!(kind, Trajectory::Pop | Trajectory::Fly)
        && !by.is_outfield()
        && scene.occupied(Base::First)
        && scene.occupied(Base::Second)
        && scene.outs_left() > 1
}

/// Caught, and a runner who had left is out at his base (an appeal: OBR 5.09(b)(5)), or one who tags up at the next.
pub(super) fn doubled_off(scene: &Scene, touch: &Touch, kind: Trajectory, list: &mut Vec<Proposal>) {
    if scene.outs_left() < 2 {
        return;
    }
    let (by, receiver) = (touch.first(), *touch.chain.last().unwrap_or(&touch.chain[0]));
    let base = match receiver {
        Position::FirstBase => Base::First,
        Position::SecondBase | Position::Shortstop => Base::Second,
        Position::ThirdBase => Base::Third,
        Position::Catcher => Base::Home,
        _ => return,
    };
    let mut push = |who: Base, how: How| {
        let out = Move::out(who.into(), Out::new(how, base, &touch.chain));
        let moves = together(scene, vec![batter_caught(by), out], Runs::none(), None);
        let mut ball = touch.ball(kind);
        ball.trajectory = kind;
        list.push(ball_in_play(Outcome::DoublePlay { by: touch.chain.clone() }, ball, moves, Vec::new()));
    };
    if base != Base::Home && scene.occupied(base) {
        push(base, How::Appeal);
    }
    let tagging = base.number().checked_sub(1).and_then(Base::from_number).filter(|b| scene.occupied(*b));
    if by.is_outfield()
        && let Some(before) = tagging
    {
        push(before, How::Tag);
    }
}

/// A fair fly dropped: the batter is on first, and everyone moves up.
pub(super) fn dropped(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let by = touch.first();
    let kind = touch.said.unwrap_or(if by.is_outfield() { Trajectory::Fly } else { Trajectory::Pop });
    let misplay = || vec![Misplay::new(by, MisplayKind::DroppedFly)];
    let one = Runs::none().and_error(scene);
    let moves = together(scene, Vec::new(), one, Some(batter_to(Base::First, Cause::Error(0))));
    list.push(ball_in_play(Outcome::DroppedFly { by }, touch.ball(kind), moves, misplay()));
    if by.is_outfield() {
        let two = Runs::all(scene, 2, Cause::Error(0));
        let moves = together(scene, Vec::new(), two, Some(batter_to(Base::Second, Cause::Error(0))));
        list.push(ball_in_play(Outcome::DroppedFly { by }, touch.ball(kind), moves, misplay()));
    }
}

/// A foul fly caught or dropped. Runners may tag up as on any catch; usually they hold.
pub(super) fn foul(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let by = touch.first();
    let kind = touch.said.unwrap_or(if by.is_outfield() { Trajectory::Fly } else { Trajectory::Pop });
    let mut push = |runs: Runs| {
        let mut ball = touch.ball(kind);
        ball.foul = true;
        let outcome = Outcome::Caught { by, trajectory: kind, foul: true, infield_fly: false };
        let moves = together(scene, vec![batter_caught(by)], runs, None);
        list.push(ball_in_play(outcome, ball, moves, Vec::new()));
    };
    push(Runs::none());
    if touch.foul && by.is_outfield() && scene.outs_left() > 1 && scene.occupied(Base::Third) {
        push(Runs::only(scene, Base::Third, Base::Home, Cause::Play));
    }
    if touch.foul || touch.said.is_none() {
        // The turn goes on: it is a foul, with the error noted on it (OBR 9.12(a)(2)).
        let mut misplay = Misplay::new(by, MisplayKind::DroppedFoul);
        misplay.spared = Some(Start::Batter);
        let action = Action { moves: Vec::new(), misplays: vec![misplay] };
        let event = Event::Pitch(Pitch { action, ..Pitch::new(Call::Foul) });
        list.push(Proposal { outcome: Outcome::DroppedFoul { by }, event });
    }
}

/// A caught fly and a throw that lets the others move up.
pub(super) fn scores_on_throw(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    if scene.outs_left() < 2 || !scene.occupied(Base::Third) || !touch.may_be(Trajectory::Fly) {
        return;
    }
    let by = touch.first();
    let mut runs = vec![Move::safe(Start::Third, Base::Home, Cause::Play)];
    list.push(caught_with(scene, touch, by, runs.clone()));
    for base in lead_first(scene).filter(|b| *b != Base::Third) {
        let to = base.next().unwrap_or(Base::Home);
        runs.push(Move { from: base.into(), legs: vec![Leg { to, cause: Cause::Throw }], out: None });
    }
    list.push(caught_with(scene, touch, by, runs));
}

fn caught_with(scene: &Scene, touch: &Touch, by: Position, mut runs: Vec<Move>) -> Proposal {
    let mut moves = vec![batter_caught(by)];
    moves.truncate(scene.outs_left());
    moves.append(&mut runs);
    let outcome = Outcome::Caught { by, trajectory: Trajectory::Fly, foul: touch.foul, infield_fly: false };
    ball_in_play(outcome, touch.ball(Trajectory::Fly), moves, Vec::new())
}
