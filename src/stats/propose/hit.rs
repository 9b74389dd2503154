//! Hits: how far, and who is thrown out trying for more.

use super::running::{Runs, batter_to, together};
use super::{Outcome, Proposal, Scene, Touch, air, ball_in_play, place};
use crate::field::{Base, Position};
use crate::log::{Cause, Event, How, Leg, Misplay, MisplayKind, Move, Out, Spot, Start, Trajectory};

/// A ball that stayed in the infield, and everybody is safe.
pub(super) fn infield(scene: &Scene, touch: &Touch) -> Proposal {
    let kind = touch.said.unwrap_or(Trajectory::Ground);
    let moves = together(scene, Vec::new(), Runs::on_infield_hit(scene), Some(batter_to(Base::First, Cause::Play)));
    ball_in_play(Outcome::Hit { bases: 1, infield: true }, touch.ball(kind), moves, Vec::new())
}

/// A hit of so many bases to the outfield.
fn clean(scene: &Scene, touch: &Touch, bases: u8, further: bool) -> Proposal {
    let kind = trajectory(touch, bases);
    let batter = batter_to(Base::from_number(bases).unwrap_or(Base::Home), Cause::Play);
    let moves = together(scene, Vec::new(), Runs::on_hit(scene, bases, further), Some(batter));
    ball_in_play(Outcome::Hit { bases, infield: false }, touch.ball(kind), moves, Vec::new())
}

/// A hit usually goes on a line; a ball that came down far out was a fly.
fn trajectory(touch: &Touch, bases: u8) -> Trajectory {
    if bases > 1 || place::depth(touch.spot) > 300.0 { Trajectory::Fly } else { Trajectory::Line }
}

/// How many bases a ball is worth that came down there. Common practice, no source: in front of the outfielders a
/// single, to the fence a double, into the corner or deep into right center a triple now and then.
fn usual_bases(touch: &Touch) -> u8 {
    let far = place::depth(touch.spot) / place::fence(touch.spot);
    let off_center = f64::from(touch.spot.x).atan2(f64::from(touch.spot.y)).abs().to_degrees();
    let in_the_gap = (12.0..30.0).contains(&off_center);
    let down_the_line = off_center > 39.0;
    match far {
        f if f > 0.84 || (f > 0.72 && (in_the_gap || down_the_line)) => 2,
        _ => 1,
    }
}

/// A ball to an outfielder: caught if he was touched, a hit if the grass was.
pub(super) fn to_outfield(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let flies = touch.may_be(Trajectory::Fly) || touch.may_be(Trajectory::Line) || touch.may_be(Trajectory::Pop);
    let by = touch.first();
    let caught = |list: &mut Vec<Proposal>| {
        for kind in [Trajectory::Fly, Trajectory::Line, Trajectory::Pop] {
            if touch.said == Some(kind) || (touch.said.is_none() && kind != Trajectory::Pop) {
                air::caught(scene, touch, by, kind, list);
            }
        }
    };
    if touch.chain.len() > 1 {
        with_throw(scene, touch, list);
    } else if !touch.landed && flies {
        caught(list);
    }
    let bases = usual_bases(touch);
    list.push(clean(scene, touch, bases, false));
    if scene.occupied(Base::First) || (bases == 2 && scene.occupied(Base::Second)) {
        list.push(clean(scene, touch, bases, true));
    }
    let others = if bases == 1 { [2, 3] } else { [1, 3] };
    list.push(clean(scene, touch, others[0], false));
    if others[0] == 2 && scene.occupied(Base::First) {
        list.push(clean(scene, touch, 2, true));
    }
    list.push(clean(scene, touch, others[1], false));
    if touch.landed && flies && touch.chain.len() == 1 {
        caught(list);
    }
    if flies {
        air::dropped(scene, touch, list);
    }
    for bases in [1, 2] {
        list.push(with_error(scene, touch, bases));
    }
    list.push(ground_rule(scene, touch));
    if touch.chain.len() == 1 {
        list.push(over_his_head(scene, touch));
    }
    list.push(clean(scene, touch, 4, false));
}

/// A home run over the fence behind the outfielder touched.
fn over_his_head(scene: &Scene, touch: &Touch) -> Proposal {
    let far = 1.05 * place::fence(touch.spot) / place::depth(touch.spot).max(1.0);
    let scaled = |n: i16| (f64::from(n) * far).round().clamp(-999.0, 999.0) as i16;
    let mut home_run = home_run(scene, touch);
    if let Event::InPlay(play) = &mut home_run.event {
        play.ball.spot = Some(Spot { x: scaled(touch.spot.x), y: scaled(touch.spot.y) });
    }
    home_run
}

fn home_run(scene: &Scene, touch: &Touch) -> Proposal {
    let mut ball = touch.ball(Trajectory::Fly);
    ball.left_park = true;
    ball.fielders.clear();
    let batter = batter_to(Base::Home, Cause::Play);
    let moves = together(scene, Vec::new(), Runs::all(scene, 4, Cause::Play), Some(batter));
    ball_in_play(Outcome::HomeRun, ball, moves, Vec::new())
}

/// Over the fence: a home run, or a bounce over it.
pub(super) fn over_fence(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    list.push(home_run(scene, touch));
    list.push(ground_rule(scene, touch));
    air::caught(scene, touch, touch.first(), Trajectory::Fly, list);
    list.push(clean(scene, touch, 3, false));
}

fn ground_rule(scene: &Scene, touch: &Touch) -> Proposal {
    let runs = Runs::all(scene, 2, Cause::Play);
    let moves = together(scene, Vec::new(), runs, Some(batter_to(Base::Second, Cause::Play)));
    ball_in_play(Outcome::GroundRuleDouble, touch.ball(Trajectory::Line), moves, Vec::new())
}

/// A hit and an error on top: everyone a base more.
fn with_error(scene: &Scene, touch: &Touch, bases: u8) -> Proposal {
    let (by, kind) = match touch.chain.as_slice() {
        [first] => (*first, MisplayKind::Fielding),
        [.., thrower, _] => (*thrower, MisplayKind::Throwing),
        [] => (touch.first(), MisplayKind::Fielding),
    };
    let to = Base::from_number(bases).unwrap_or(Base::Home);
    let mut batter = batter_to(to, Cause::Play);
    if let Some(next) = to.next() {
        batter.legs.push(Leg { to: next, cause: Cause::Error(0) });
    }
    let runs = Runs::on_hit(scene, bases, false).and_error(scene);
    let moves = together(scene, Vec::new(), runs, Some(batter));
    let misplays = vec![Misplay::new(by, kind)];
    ball_in_play(Outcome::HitAndError { bases, by }, touch.ball(trajectory(touch, bases)), moves, misplays)
}

/// The outfielder threw: who may have been out at the end of that throw.
fn with_throw(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let receiver = *touch.chain.last().unwrap_or(&touch.chain[0]);
    let may_fly = touch.may_be(Trajectory::Fly) || touch.may_be(Trajectory::Line) || touch.may_be(Trajectory::Pop);
    let base = match receiver {
        Position::FirstBase => Base::First,
        Position::SecondBase | Position::Shortstop => Base::Second,
        Position::ThirdBase => Base::Third,
        Position::Catcher => Base::Home,
        _ => return,
    };
    let fly = touch.said.unwrap_or(Trajectory::Fly);
    if !touch.landed && may_fly && (touch.said.is_some() || base == Base::Home) {
        air::doubled_off(scene, touch, fly, list);
        air::scores_on_throw(scene, touch, list);
    }
    for bases in [1, 2] {
        if let Some(proposal) = out_going_further(scene, touch, bases, base) {
            list.push(proposal);
        }
    }
    if base == Base::First && touch.may_be(Trajectory::Ground) {
        let out = Move::out(Start::Batter, Out::new(How::Force, Base::First, &touch.chain));
        let runs = Runs::forced(scene, Cause::Play);
        let moves = together(scene, vec![out], runs, None);
        let outcome = Outcome::GroundOut { by: touch.chain.clone() };
        list.push(ball_in_play(outcome, touch.ball(Trajectory::Ground), moves, Vec::new()));
    }
    if !touch.landed && may_fly && touch.said.is_none() && base != Base::Home {
        air::doubled_off(scene, touch, fly, list);
    }
}

/// A hit of so many bases and an out at `base`: of the runner it usually is, the one who would arrive there last.
fn out_going_further(scene: &Scene, touch: &Touch, bases: u8, base: Base) -> Option<Proposal> {
    let runs = Runs::on_hit(scene, bases, false).into_moves();
    let hit = Base::from_number(bases)?;
    // The runner who ends at that base on this hit, or one base short of it and tries.
    let runner = runs
        .iter()
        .find(|m| m.reached() == Some(base))
        .or_else(|| runs.iter().find(|m| m.reached().and_then(Base::next) == Some(base)));
    let by = &touch.chain;
    let (who, out, batter) = match runner {
        Some(m) if base > hit => {
            let kept = m.reached().filter(|b| *b < base);
            let legs = kept.map(|to| Leg { to, cause: Cause::Play }).into_iter().collect();
            let out = Move { from: m.from, legs, out: Some(Out::new(How::Tag, base, by)) };
            (m.from, out, Some(batter_to(hit, Cause::Play)))
        }
        _ if hit.next() == Some(base) => {
            let legs = vec![Leg { to: hit, cause: Cause::Play }];
            let out = Move { from: Start::Batter, legs, out: Some(Out::new(How::Tag, base, by)) };
            (Start::Batter, out, None)
        }
        _ => return None,
    };
    // Those ahead of him came in first: their runs stand before a third out that is no force.
    let mut moves: Vec<Move> = runs.iter().filter(|m| m.from > who).cloned().collect();
    let behind = runs.into_iter().filter(|m| m.from < who);
    moves.push(out);
    moves.extend(behind);
    moves.extend(batter);
    let outcome = Outcome::HitAndOut { bases, who, at: base, by: by.clone() };
    Some(ball_in_play(outcome, touch.ball(trajectory(touch, bases)), moves, Vec::new()))
}
