//! On the bases without a batted ball: steals, pickoffs, rundowns, balks, wild pitches, and what goes wrong with them.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{Action, Attempt, Cause, How, MisplayKind, Move, Out, Start};

use super::scene::{Draft, INFIELD, OUTFIELD, Scene, leg};

#[derive(Clone, Copy)]
enum Kind {
    Steal,
    StealAndError,
    Caught,
    Overslid,
    MuffedThrow,
    PickedOff,
    BrokeFromPickoff,
    BadPickoff,
    GotAway,
    OutOnGotAway,
    Balk,
    IllegalPitch,
    Indifference,
    Obstruction,
    Award,
    OddOut,
    Spared,
}

/// Something on the bases; there are runners. On a pitch, only what can happen with one.
pub(super) fn running(scene: &mut Scene, on_pitch: bool) -> Action {
    let stealing = scene.game.code().stealing;
    let mut kinds = vec![(5, Kind::OddOut), (3, Kind::Obstruction), (2, Kind::Spared)];
    if stealing {
        kinds.extend([(35, Kind::Steal), (6, Kind::StealAndError), (4, Kind::Overslid), (4, Kind::MuffedThrow)]);
    }
    // Where nobody may steal a runner can still be caught off base.
    kinds.extend([(15, Kind::Caught), (12, Kind::PickedOff), (6, Kind::BrokeFromPickoff), (5, Kind::Indifference)]);
    if on_pitch {
        kinds.extend([(30, Kind::GotAway), (5, Kind::OutOnGotAway)]);
    } else {
        kinds.extend([(8, Kind::Balk), (3, Kind::IllegalPitch), (8, Kind::BadPickoff), (4, Kind::Award)]);
    }
    let kind = scene.dice.weighted(&kinds);
    let runners = scene.runners();
    let who = scene.dice.pick(&runners);
    let mut draft = Draft::default();
    match kind {
        Kind::Steal => advance(scene, &mut draft, who, Cause::Steal, &[]),
        Kind::Indifference => advance(scene, &mut draft, who, Cause::Indifference, &[]),
        Kind::StealAndError => {
            let by = scene.fielder(&[Position::Catcher, Position::SecondBase]);
            let kind = scene.dice.pick(&[MisplayKind::Throwing, MisplayKind::Muff, MisplayKind::Fielding]);
            let cause = draft.error(by, kind);
            advance(scene, &mut draft, who, Cause::Steal, &[cause]);
        }
        Kind::Caught => {
            let m = scene.put_out(who, if stealing { Cause::Steal } else { Cause::Indifference }, |s, at| {
                let by = if s.dice.percent(30) { s.rundown() } else { s.chain(&[Position::Catcher], INFIELD) };
                let attempt = if s.game.code().stealing { Attempt::Steal } else { Attempt::Advance };
                Out { attempt: Some(attempt), ..Out::new(How::Tag, at, &by) }
            });
            draft.moves.push(m);
            if stealing && scene.dice.percent(30) {
                draft.follow(scene, 0, 1, Cause::Steal, &[]);
            }
        }
        Kind::Overslid => {
            let at = who.number() + 1;
            let by = scene.chain(&[Position::Catcher], INFIELD);
            let attempt = scene.dice.pick(&[Some(Attempt::Steal), None]);
            let out = Base::from_number(at).map(|at| Out { attempt, ..Out::new(How::Tag, at, &by) });
            let mut m = Move { from: who, legs: Vec::new(), out };
            if at < 4 {
                m.legs.extend(leg(at, Cause::Steal));
            }
            draft.moves.push(m);
        }
        Kind::MuffedThrow => {
            let by = scene.fielder(&[Position::SecondBase, Position::Shortstop, Position::ThirdBase]);
            let cause = draft.error(by, MisplayKind::Muff);
            let misplay = &mut draft.misplays[0];
            misplay.stealing = true;
            misplay.after = vec![scene.fielder(&[Position::Catcher])];
            if scene.dice.percent(60) {
                misplay.spared = Some(who);
            }
            advance(scene, &mut draft, who, cause, &[]);
        }
        Kind::PickedOff | Kind::BrokeFromPickoff => {
            let broke = matches!(kind, Kind::BrokeFromPickoff);
            let number = if broke { who.number() + 1 } else { who.number() };
            let by = if scene.dice.percent(30) { scene.rundown() } else { scene.chain(INFIELD, INFIELD) };
            let at = Base::from_number(number).unwrap_or(Base::Home);
            draft.moves.push(Move::out(who, Out { attempt: Some(Attempt::Pickoff), ..Out::new(How::Tag, at, &by) }));
        }
        Kind::BadPickoff | Kind::Award => {
            let by = scene.fielder(&[Position::Pitcher, Position::Catcher]);
            let cause = draft.error(by, MisplayKind::Throwing);
            let award = matches!(kind, Kind::Award);
            draft.follow(scene, 0, 1, if award { Cause::Award } else { cause }, &[cause]);
        }
        Kind::GotAway => {
            let cause = scene.dice.pick(&[Cause::WildPitch, Cause::WildPitch, Cause::PassedBall]);
            let mut later = Vec::new();
            if scene.dice.percent(15) {
                let by = scene.fielder(&[Position::Catcher]);
                later.push(draft.error(by, MisplayKind::Throwing));
            }
            advance(scene, &mut draft, who, cause, &later);
        }
        Kind::OutOnGotAway => {
            let m = scene.put_out(who, Cause::WildPitch, |s, at| {
                let by = s.chain(&[Position::Catcher], INFIELD);
                Out { attempt: Some(Attempt::Advance), ..Out::new(How::Tag, at, &by) }
            });
            draft.moves.push(m);
            draft.follow(scene, 0, 1, Cause::WildPitch, &[]);
        }
        Kind::Balk | Kind::IllegalPitch => {
            let cause = if matches!(kind, Kind::Balk) { Cause::Balk } else { Cause::IllegalPitch };
            for start in runners.iter().rev() {
                draft.moves.extend(Base::from_number(start.number() + 1).map(|to| Move::safe(*start, to, cause)));
            }
        }
        Kind::Obstruction => {
            if scene.dice.percent(50) {
                let by = scene.fielder(INFIELD);
                draft.error(by, MisplayKind::Obstruction);
            }
            advance(scene, &mut draft, who, Cause::Obstruction, &[]);
        }
        Kind::OddOut => {
            let how = scene.dice.pick(&[
                How::Interference,
                How::Passing,
                How::LeftPath,
                How::OtherRule,
                How::Appeal,
                How::Force,
            ]);
            let attempt = scene.dice.pick(&[None, Some(Attempt::Advance)]);
            let m = scene.put_out(who, Cause::Indifference, |s, at| {
                let by = if s.dice.percent(30) { Vec::new() } else { s.chain(INFIELD, INFIELD) };
                Out { attempt, ..Out::new(how, at, &by) }
            });
            draft.moves.push(m);
        }
        Kind::Spared => {
            let by = scene.fielder(INFIELD);
            draft.error(by, MisplayKind::Muff);
            draft.misplays[0].spared = Some(who);
            draft.misplays[0].after = scene.rundown();
            draft.misplays[0].stealing = stealing && scene.dice.percent(50);
        }
    }
    if draft.moves.is_empty() && draft.misplays.is_empty() {
        advance(scene, &mut draft, who, Cause::Indifference, &[]);
    }
    draft.action(scene)
}

/// `who` gains a base or more; those ahead give way, the others may go or stay.
fn advance(scene: &mut Scene, draft: &mut Draft, who: Start, cause: Cause, later: &[Cause]) {
    let others = scene.dice.percent(40);
    let mut behind = 0;
    for start in scene.runners() {
        let goes = start == who || (behind != 0 && behind >= start.number()) || (others && scene.dice.percent(50));
        let mut end = start.number() + u8::from(goes);
        if goes && (!later.is_empty() || scene.dice.percent(10)) {
            end += scene.dice.small(2);
        }
        end = end.max(if behind == 0 { 0 } else { behind + 1 }).min(4);
        if end > start.number() {
            let legs = scene.legs(start.number(), end, cause, later);
            draft.moves.push(Move { from: start, legs, out: None });
        }
        behind = end;
    }
}

/// A runner thrown out while the ball is still alive from the play before.
pub(super) fn afterwards(scene: &mut Scene) -> Action {
    let runners = scene.runners();
    let who = scene.dice.pick(&runners);
    let mut draft = Draft::default();
    if scene.dice.percent(70) {
        let m = scene.put_out(who, Cause::Throw, |s, at| {
            let by = s.chain(OUTFIELD, INFIELD);
            Out { attempt: Some(Attempt::Advance), ..Out::new(How::Tag, at, &by) }
        });
        draft.moves.push(m);
    } else {
        advance(scene, &mut draft, who, Cause::Throw, &[]);
    }
    draft.action(scene)
}
