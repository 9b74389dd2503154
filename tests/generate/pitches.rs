//! Pitches, with what the runners and, on strike three, the batter do on them.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{
    Action, Call, Cause, Event, How, Misplay, MisplayKind, Move, Out, Pitch, Start, Unseen, UnseenResult,
};

use super::bases::running;
use super::batted::pitch_kind;
use super::scene::{Draft, INFIELD, Scene};

pub(super) fn pitch(scene: &mut Scene) -> Event {
    let call = scene.dice.weighted(&[
        (330, Call::Ball),
        (170, Call::CalledStrike),
        (130, Call::SwingingStrike),
        (170, Call::Foul),
        (10, Call::FoulTip),
        (8, Call::FoulBunt),
        (6, Call::MissedBunt),
        (6, Call::Pitchout),
        (6, Call::IntentionalBall),
        (3, Call::AutomaticBall),
        (3, Call::AutomaticStrike),
        (4, Call::IllegalPitch),
        (12, Call::HitByPitch),
        (3, Call::CatcherInterference),
        (3, Call::BatterInterference),
    ]);
    let action = action(scene, call);
    Event::Pitch(Pitch {
        call,
        kind: scene.dice.percent(10).then(|| pitch_kind(scene)),
        speed: scene.dice.percent(10).then(|| 400 + scene.dice.below(600) as u16),
        action,
    })
}

fn action(scene: &mut Scene, call: Call) -> Action {
    let (code, count) = (scene.game.code(), scene.s.count);
    let walk = call.is_ball() && code.balls_for_walk.is_some_and(|n| count.balls + 1 >= n);
    let last_strike = count.strikes + 1 >= code.strikes_for_out;
    let odd = scene.dice.percent(12) && !scene.runners().is_empty();
    match call {
        Call::CatcherInterference if scene.dice.percent(50) => {
            let by = scene.fielder(&[Position::Catcher]);
            Action { moves: Vec::new(), misplays: vec![Misplay::new(by, MisplayKind::Interference)] }
        }
        Call::CatcherInterference
        | Call::HitByPitch
        | Call::BatterInterference
        | Call::AutomaticBall
        | Call::AutomaticStrike => Action::default(),
        _ if walk && scene.dice.percent(10) => on_walk(scene),
        _ if walk => Action::default(),
        Call::Foul if !last_strike || !code.foul_is_third_strike => dropped_foul(scene),
        Call::FoulBunt if !last_strike => dropped_foul(scene),
        Call::Foul | Call::FoulBunt => Action::default(),
        _ if last_strike && !call.is_ball() => strike_three(scene, call),
        _ if odd => running(scene, true),
        _ => Action::default(),
    }
}

fn dropped_foul(scene: &mut Scene) -> Action {
    let mut draft = Draft::default();
    if scene.dice.percent(4) {
        let by = scene.fielder(INFIELD);
        draft.error(by, MisplayKind::DroppedFoul);
    }
    draft.action(scene)
}

/// Ball four gets away, or somebody who need not go steals on it.
fn on_walk(scene: &mut Scene) -> Action {
    let mut draft = Draft::default();
    let mut causes = vec![Cause::WildPitch, Cause::PassedBall];
    if scene.game.code().stealing {
        causes.push(Cause::Steal);
    }
    let cause = scene.dice.pick(&causes);
    let end = 1 + u8::from(cause != Cause::Steal && scene.dice.percent(30));
    if end > 1 {
        draft.moves.extend(Base::from_number(end).map(|to| Move::safe(Start::Batter, to, cause)));
    }
    for (start, end) in scene.spread(end, 1) {
        let given = if scene.s.is_forced(start) { start.number() + 1 } else { start.number() };
        if end > given {
            draft.moves.extend(Base::from_number(end).map(|to| Move::safe(start, to, cause)));
        }
    }
    draft.action(scene)
}

fn strike_three(scene: &mut Scene, call: Call) -> Action {
    let two_out = scene.outs_left() == 1;
    let caught_by_rule = matches!(call, Call::FoulTip);
    let first_free = scene.s.on(Base::First).is_none();
    let may_run = scene.game.code().dropped_third_strike && !caught_by_rule && (first_free || two_out);
    let mut draft = Draft::default();
    if may_run && scene.dice.percent(30) {
        got_away(scene, &mut draft);
    } else if !two_out && scene.dice.percent(15) && !scene.runners().is_empty() {
        // Strike three, and something on the bases; the batter's out is filled in by rule.
        scene.s.outs += 1;
        let action = running(scene, true);
        scene.s.outs -= 1;
        return action;
    } else if scene.dice.percent(5) {
        let by = scene.fielder(&[Position::Catcher]);
        draft.moves.push(Move::out(Start::Batter, Out::new(How::Strikeout, Base::First, &[by])));
    }
    draft.action(scene)
}

fn got_away(scene: &mut Scene, draft: &mut Draft) {
    let catcher = scene.fielder(&[Position::Catcher]);
    let first = scene.fielder(&[Position::FirstBase]);
    match scene.dice.below(6) {
        0 | 1 => {
            let cause = scene.dice.pick(&[Cause::WildPitch, Cause::PassedBall]);
            let end = 1 + u8::from(scene.dice.percent(15));
            draft.moves.extend(Base::from_number(end).map(|to| Move::safe(Start::Batter, to, cause)));
            draft.follow(scene, end, 1, cause, &[]);
        }
        2 => {
            let kind = scene.dice.pick(&[MisplayKind::Throwing, MisplayKind::Muff]);
            let cause = draft.error(if matches!(kind, MisplayKind::Muff) { first } else { catcher }, kind);
            if matches!(kind, MisplayKind::Muff) {
                draft.misplays[0].after = vec![catcher];
                draft.misplays[0].spared = Some(Start::Batter);
            }
            let end = 1 + u8::from(scene.dice.percent(20));
            draft.moves.extend(Base::from_number(end).map(|to| Move::safe(Start::Batter, to, cause)));
            draft.follow(scene, end, 1, cause, &[]);
        }
        3 if !scene.runners().is_empty() => {
            // With first taken and two out everybody runs, and a runner may be forced out instead of the batter.
            let runners = scene.runners();
            let who = scene.dice.pick(&runners);
            let how = if scene.s.is_forced(who) { How::Force } else { How::Tag };
            let at = Base::from_number(who.number() + 1).unwrap_or(Base::Home);
            let by = scene.chain(&[Position::Catcher], INFIELD);
            draft.moves.push(Move::out(who, Out::new(how, at, &by)));
            draft.moves.push(Move::safe(Start::Batter, Base::First, Cause::Choice));
            draft.follow(scene, 1, 0, Cause::Choice, &[]);
        }
        _ => {
            let how = scene.dice.pick(&[How::Strikeout, How::Force, How::Tag]);
            let mut by = vec![catcher, first];
            by.dedup();
            draft.moves.push(Move::out(Start::Batter, Out::new(how, Base::First, &by)));
            if scene.outs_left() > 1 {
                draft.follow(scene, 0, 1, Cause::Throw, &[]);
            }
        }
    }
}

pub(super) fn unseen(scene: &mut Scene) -> Event {
    let mut results = vec![
        UnseenResult::HitByPitch,
        UnseenResult::StrikeoutSwinging,
        UnseenResult::StrikeoutLooking,
        UnseenResult::CatcherInterference,
    ];
    if scene.game.code().balls_for_walk.is_some() {
        results.extend([UnseenResult::Walk, UnseenResult::IntentionalWalk, UnseenResult::Walk]);
    }
    let result = scene.dice.pick(&results);
    let action = match result {
        UnseenResult::StrikeoutSwinging if scene.dice.percent(30) => strike_three(scene, Call::SwingingStrike),
        _ => Action::default(),
    };
    Event::Unseen(Unseen { result, action })
}
