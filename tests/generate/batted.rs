//! Balls in play: hits, errors, choices, outs of every kind, and what the runners make of them.

use benchbook_stats::field::{Base, Position};
use benchbook_stats::log::{
    Batted, Cause, Event, How, InPlay, MisplayKind, Move, Out, PitchKind, Spot, Start, Trajectory,
};

use super::scene::{Draft, INFIELD, OUTFIELD, Scene, leg};

#[derive(Clone, Copy)]
enum Kind {
    Hit,
    HomeRun,
    Stretching,
    GroundOut,
    Bunt,
    Caught,
    DoubledOff,
    FoulFly,
    InfieldFly,
    Error,
    DroppedFly,
    Force,
    AllSafe,
    DoublePlay,
    TriplePlay,
    Rundown,
    OddOut,
    RunnerHit,
    RunnerInterferes,
    Obstructed,
}

const FIRST: &[Position] = &[Position::FirstBase];

pub(super) fn in_play(scene: &mut Scene) -> Event {
    let (runners, left) = (scene.runners().len(), scene.outs_left());
    let forced = scene.s.is_forced(Start::First) && scene.s.at(Start::First).is_some();
    let mut kinds = vec![
        (190, Kind::Hit),
        (25, Kind::HomeRun),
        (230, Kind::GroundOut),
        (190, Kind::Caught),
        (30, Kind::FoulFly),
        (60, Kind::Error),
        (25, Kind::DroppedFly),
        (30, Kind::Bunt),
        (12, Kind::OddOut),
        (8, Kind::Obstructed),
        (12, Kind::Stretching),
    ];
    if runners > 0 {
        kinds.extend([(40, Kind::AllSafe), (40, Kind::Rundown), (12, Kind::RunnerHit), (12, Kind::RunnerInterferes)]);
        if left >= 2 {
            kinds.extend([(40, Kind::DoublePlay), (25, Kind::DoubledOff)]);
        }
        if left == 3 && runners >= 2 {
            kinds.extend([(15, Kind::TriplePlay), (25, Kind::InfieldFly)]);
        }
    }
    if forced {
        kinds.push((60, Kind::Force));
    }
    let kind = scene.dice.weighted(&kinds);
    let mut draft = Draft::default();
    let mut ball = Batted {
        trajectory: Trajectory::Ground,
        spot: None,
        fielders: Vec::new(),
        foul: false,
        left_park: false,
        infield_fly: false,
    };
    play(scene, kind, &mut ball, &mut draft);
    if ball.fielders.is_empty() && !ball.left_park && scene.dice.percent(70) {
        ball.fielders = named(&draft);
    }
    if scene.dice.percent(50) {
        let hundredths = |n: u8| i16::from(n) * 2;
        let (x, y) = (hundredths(scene.dice.small(250)) - 250, hundredths(scene.dice.small(210)) - 20);
        ball.spot = Some(Spot { x, y });
    }
    Event::InPlay(InPlay {
        ball,
        action: draft.action(scene),
        kind: scene.dice.percent(10).then(|| pitch_kind(scene)),
        speed: scene.dice.percent(10).then(|| 400 + scene.dice.below(600) as u16),
        pitches_missed: scene.dice.percent(5),
    })
}

pub(super) fn pitch_kind(scene: &mut Scene) -> PitchKind {
    scene.dice.pick(&[
        PitchKind::Fastball,
        PitchKind::Curveball,
        PitchKind::Slider,
        PitchKind::ChangeUp,
        PitchKind::Knuckleball,
        PitchKind::Drop,
        PitchKind::Rise,
        PitchKind::Other,
    ])
}

/// Who handled the ball according to the outs and errors.
fn named(draft: &Draft) -> Vec<Position> {
    let mut by: Vec<Position> = draft.moves.iter().filter_map(|m| m.out.as_ref()).flat_map(|o| o.by.clone()).collect();
    by.extend(draft.misplays.iter().flat_map(|m| m.after.iter().copied().chain([m.by])));
    by
}

fn play(scene: &mut Scene, kind: Kind, ball: &mut Batted, draft: &mut Draft) {
    match kind {
        Kind::Hit => hit(scene, ball, draft, false),
        Kind::HomeRun => {
            ball.trajectory = Trajectory::Fly;
            ball.left_park = scene.dice.percent(85);
            draft.moves.push(Move::safe(Start::Batter, Base::Home, Cause::Play));
            draft.follow(scene, 4, 4, Cause::Play, &[]);
        }
        Kind::Stretching => hit(scene, ball, draft, true),
        Kind::GroundOut => {
            let by = if scene.dice.percent(20) { scene.chain(FIRST, FIRST) } else { scene.chain(INFIELD, FIRST) };
            let how = if scene.dice.percent(90) { How::Force } else { How::Tag };
            batter_out(draft, Out::new(how, Base::First, &by));
            let usual = scene.dice.small(2);
            follow_with_error(scene, draft, 0, usual, Cause::Play);
        }
        Kind::Bunt => bunt(scene, ball, draft),
        Kind::Caught | Kind::FoulFly => {
            caught(scene, ball, draft, matches!(kind, Kind::FoulFly));
            if scene.dice.percent(40) {
                let usual = scene.dice.small(2);
                follow_with_error(scene, draft, 0, usual, Cause::Play);
            }
        }
        Kind::DoubledOff => doubled_off(scene, ball, draft),
        Kind::InfieldFly => {
            ball.trajectory = scene.dice.pick(&[Trajectory::Pop, Trajectory::Fly]);
            ball.infield_fly = true;
            let by = scene.fielder(INFIELD);
            ball.fielders = vec![by];
            let by: &[Position] = if scene.dice.percent(50) { &[] } else { &[by] };
            batter_out(draft, Out::new(How::Fly, Base::First, by));
        }
        Kind::Error => error(scene, draft),
        Kind::DroppedFly => {
            ball.trajectory = scene.dice.pick(&[Trajectory::Fly, Trajectory::Line, Trajectory::Pop]);
            let by = scene.fielder(OUTFIELD);
            ball.fielders = vec![by];
            let cause = draft.error(by, MisplayKind::DroppedFly);
            if scene.dice.percent(20) {
                draft.misplays[0].spared = Some(Start::Batter);
            }
            let end = 1 + scene.dice.small(2);
            draft.moves.push(Move { from: Start::Batter, legs: leg(end, cause).into_iter().collect(), out: None });
            let main = scene.dice.pick(&[cause, Cause::Play]);
            draft.follow(scene, end, 1, main, &[cause]);
        }
        Kind::Force => {
            let who = forced_runner(scene);
            let end = 1 + u8::from(scene.dice.percent(8));
            let at = Base::from_number(who.number() + 1).unwrap_or(Base::Home);
            let by = scene.chain(INFIELD, INFIELD);
            let how = if scene.dice.percent(95) { How::Force } else { How::Tag };
            draft.moves.push(Move::out(who, Out::new(how, at, &by)));
            let cause = scene.dice.pick(&[Cause::Choice, Cause::Choice, Cause::Play]);
            let legs = scene.legs(0, end, cause, &[Cause::Throw]);
            draft.moves.push(Move { from: Start::Batter, legs, out: None });
            follow_with_error(scene, draft, end, 1, Cause::Play);
        }
        Kind::AllSafe => {
            let end = 1 + u8::from(scene.dice.percent(10));
            let legs = scene.legs(0, end, Cause::Choice, &[Cause::Throw]);
            draft.moves.push(Move { from: Start::Batter, legs, out: None });
            ball.fielders = scene.chain(INFIELD, INFIELD);
            follow_with_error(scene, draft, end, 1, Cause::Choice);
        }
        Kind::DoublePlay => double_play(scene, draft),
        Kind::TriplePlay => {
            let by = scene.chain(INFIELD, FIRST);
            batter_out(draft, Out::new(How::Force, Base::First, &by));
            for start in scene.runners().into_iter().take(2) {
                runner_out(scene, draft, start);
            }
            draft.follow(scene, 0, 1, Cause::Play, &[]);
        }
        Kind::Rundown => rundown(scene, draft),
        Kind::OddOut => {
            let how = scene.dice.pick(&[
                How::Interference,
                How::HitByBall,
                How::LeftPath,
                How::OtherRule,
                How::Appeal,
                How::Tag,
                How::Passing,
            ]);
            let by: Vec<Position> = if scene.dice.percent(40) { Vec::new() } else { scene.chain(INFIELD, INFIELD) };
            ball.fielders = vec![scene.fielder(INFIELD)];
            let mut m = Move::out(Start::Batter, Out::new(how, Base::First, &by));
            if matches!(how, How::Appeal | How::Passing | How::Tag) && scene.dice.percent(50) {
                m.legs.extend(leg(1, Cause::Play));
            }
            draft.moves.push(m);
        }
        Kind::RunnerHit | Kind::RunnerInterferes => {
            let who = forced_or_any(scene);
            let at = Base::from_number(who.number() + 1).unwrap_or(Base::Home);
            let hit = matches!(kind, Kind::RunnerHit);
            let how = if hit { How::HitByBall } else { How::Interference };
            let by: Vec<Position> = if scene.dice.percent(60) { Vec::new() } else { vec![scene.fielder(INFIELD)] };
            ball.fielders = vec![scene.fielder(INFIELD)];
            draft.moves.push(Move::out(who, Out::new(how, at, &by)));
            let cause = if hit { Cause::Play } else { scene.dice.pick(&[Cause::Interference, Cause::Play]) };
            draft.moves.push(Move::safe(Start::Batter, Base::First, cause));
            draft.follow(scene, 1, 0, if hit { Cause::Play } else { Cause::Interference }, &[]);
        }
        Kind::Obstructed => {
            let by = scene.fielder(INFIELD);
            if scene.dice.percent(80) {
                draft.error(by, MisplayKind::Obstruction);
            }
            let end = 1 + u8::from(scene.dice.percent(20));
            let legs = scene.legs(0, end, Cause::Obstruction, &[Cause::Award]);
            draft.moves.push(Move { from: Start::Batter, legs, out: None });
            draft.follow(scene, end, 0, Cause::Obstruction, &[Cause::Award]);
        }
    }
}

fn batter_out(draft: &mut Draft, out: Out) {
    draft.moves.push(Move::out(Start::Batter, out));
}

/// Runners go on; one time in ten an error helps them further.
fn follow_with_error(scene: &mut Scene, draft: &mut Draft, behind: u8, usual: u8, main: Cause) {
    if scene.dice.percent(10) {
        let by = scene.fielder(Position::ALL.as_slice());
        let kind = scene.dice.pick(&[MisplayKind::Throwing, MisplayKind::Muff, MisplayKind::Fielding]);
        let cause = draft.error(by, kind);
        draft.follow(scene, behind, usual + 1, main, &[cause, Cause::Throw, cause]);
        if draft.misplays.len() > 1 && scene.dice.percent(30) {
            draft.misplays[0].after = scene.chain(INFIELD, INFIELD);
        }
    } else {
        draft.follow(scene, behind, usual, main, &[Cause::Throw, Cause::Award, Cause::Obstruction]);
    }
}

fn hit(scene: &mut Scene, ball: &mut Batted, draft: &mut Draft, stretching: bool) {
    let bases = scene.dice.weighted(&[(70, 1), (22, 2), (8, 3)]);
    ball.trajectory = scene.dice.pick(&[Trajectory::Line, Trajectory::Ground, Trajectory::Fly, Trajectory::Bunt]);
    ball.fielders = scene.chain(OUTFIELD, INFIELD);
    if stretching {
        let mut m = Move { from: Start::Batter, legs: leg(bases, Cause::Play).into_iter().collect(), out: None };
        let at = if scene.dice.percent(20) { bases } else { bases + 1 };
        let by = scene.chain(OUTFIELD, INFIELD);
        let how = scene.dice.pick(&[How::Tag, How::Tag, How::Tag, How::Passing, How::Appeal, How::LeftPath]);
        m.out = Base::from_number(at).map(|at| Out::new(how, at, &by));
        draft.moves.push(m);
        draft.follow(scene, bases.min(3), bases, Cause::Play, &[Cause::Throw]);
        return;
    }
    let more = u8::from(scene.dice.percent(15));
    let end = bases + more;
    let mut legs: Vec<_> =
        leg(bases, scene.dice.weighted(&[(95, Cause::Play), (5, Cause::Award)])).into_iter().collect();
    if more > 0 {
        let cause = if scene.dice.percent(50) {
            let by = scene.fielder(OUTFIELD);
            let kind = scene.dice.pick(&[MisplayKind::Fielding, MisplayKind::Throwing]);
            draft.error(by, kind)
        } else {
            Cause::Throw
        };
        legs.extend(leg(end, cause));
        draft.moves.push(Move { from: Start::Batter, legs, out: None });
        draft.follow(scene, end, bases, Cause::Play, &[cause]);
        return;
    }
    draft.moves.push(Move { from: Start::Batter, legs, out: None });
    if scene.dice.percent(10) && !scene.runners().is_empty() {
        let runners = scene.runners();
        let who = scene.dice.pick(&runners);
        let m = scene.put_out(who, Cause::Play, |s, at| {
            let by = s.chain(OUTFIELD, INFIELD);
            Out::new(How::Tag, at, &by)
        });
        draft.moves.push(m);
    }
    follow_with_error(scene, draft, end, bases, Cause::Play);
}

fn bunt(scene: &mut Scene, ball: &mut Batted, draft: &mut Draft) {
    ball.trajectory = Trajectory::Bunt;
    let near = [Position::Pitcher, Position::Catcher, Position::FirstBase, Position::ThirdBase];
    match scene.dice.below(5) {
        0 | 1 => {
            let by = scene.chain(&near, FIRST);
            batter_out(draft, Out::new(How::Force, Base::First, &by));
            follow_with_error(scene, draft, 0, 1, Cause::Play);
        }
        2 => {
            draft.moves.push(Move::safe(Start::Batter, Base::First, Cause::Choice));
            follow_with_error(scene, draft, 1, 1, Cause::Choice);
        }
        3 => {
            let by = scene.fielder(&near);
            let kind = scene.dice.pick(&[MisplayKind::Fielding, MisplayKind::Throwing]);
            let cause = draft.error(by, kind);
            let end = 1 + u8::from(scene.dice.percent(30));
            draft.moves.push(Move { from: Start::Batter, legs: leg(end, cause).into_iter().collect(), out: None });
            draft.follow(scene, end, 1, Cause::Play, &[cause]);
        }
        _ => {
            let by = scene.fielder(&near);
            batter_out(draft, Out::new(How::Fly, Base::First, &[by]));
        }
    }
}

fn caught(scene: &mut Scene, ball: &mut Batted, draft: &mut Draft, foul: bool) {
    ball.trajectory = scene.dice.pick(&[Trajectory::Fly, Trajectory::Line, Trajectory::Pop, Trajectory::Fly]);
    ball.foul = foul;
    let mut by = vec![scene.fielder(Position::ALL.as_slice())];
    if scene.dice.percent(4) {
        by.push(scene.fielder(OUTFIELD));
        by.dedup();
    }
    ball.fielders.clone_from(&by);
    batter_out(draft, Out::new(How::Fly, Base::First, if scene.dice.percent(10) { &[] } else { &by }));
}

fn doubled_off(scene: &mut Scene, ball: &mut Batted, draft: &mut Draft) {
    caught(scene, ball, draft, false);
    let runners = scene.runners();
    let who = scene.dice.pick(&runners);
    let at = if scene.dice.percent(70) { who.base() } else { Base::from_number(who.number() + 1) };
    let by = scene.chain(OUTFIELD, INFIELD);
    let how = scene.dice.pick(&[How::Appeal, How::Appeal, How::Tag]);
    draft.moves.push(Move::out(who, Out::new(how, at.unwrap_or(Base::First), &by)));
    draft.follow(scene, 0, 0, Cause::Play, &[]);
}

fn error(scene: &mut Scene, draft: &mut Draft) {
    let by = scene.fielder(INFIELD);
    let kind = scene.dice.pick(&[MisplayKind::Fielding, MisplayKind::Throwing, MisplayKind::Muff]);
    let cause = draft.error(by, kind);
    if matches!(kind, MisplayKind::Muff) {
        draft.misplays[0].after = vec![scene.fielder(INFIELD)];
    }
    if scene.dice.percent(30) {
        draft.misplays[0].spared = Some(Start::Batter);
    }
    let end = 1 + scene.dice.small(2);
    let mut later = vec![cause, Cause::Throw];
    if scene.dice.percent(10) {
        let by = scene.fielder(OUTFIELD);
        later.push(draft.error(by, MisplayKind::Throwing));
    }
    let legs = scene.legs(0, end, cause, &later);
    draft.moves.push(Move { from: Start::Batter, legs, out: None });
    if scene.dice.percent(10) && !scene.runners().is_empty() && scene.outs_left() > 0 {
        let runners = scene.runners();
        let who = scene.dice.pick(&runners);
        runner_out(scene, draft, who);
    }
    draft.follow(scene, end, 1, scene.s.outs.checked_sub(2).map_or(Cause::Play, |_| cause), &later);
}

/// A runner who is forced if the batter runs; there is one.
fn forced_runner(scene: &mut Scene) -> Start {
    let forced: Vec<Start> = scene.runners().into_iter().filter(|r| scene.s.is_forced(*r)).collect();
    scene.dice.pick(&forced)
}

/// A runner whose out lets the batter have first.
fn forced_or_any(scene: &mut Scene) -> Start {
    let runners = scene.runners();
    scene.dice.pick(&runners)
}

/// A runner put out on the next base, or on a longer way.
fn runner_out(scene: &mut Scene, draft: &mut Draft, who: Start) {
    let forced = scene.s.is_forced(who) && scene.dice.percent(70);
    let m = if forced {
        let at = Base::from_number(who.number() + 1).unwrap_or(Base::Home);
        let by = scene.chain(INFIELD, INFIELD);
        Move::out(who, Out::new(How::Force, at, &by))
    } else {
        scene.put_out(who, Cause::Play, |s, at| {
            let by = if s.dice.percent(20) { s.rundown() } else { s.chain(INFIELD, INFIELD) };
            Out::new(How::Tag, at, &by)
        })
    };
    draft.moves.push(m);
}

fn double_play(scene: &mut Scene, draft: &mut Draft) {
    let runners = scene.runners();
    let who = scene.dice.pick(&runners);
    if scene.dice.percent(80) || runners.len() < 2 {
        let by = scene.chain(INFIELD, FIRST);
        let how = if scene.dice.percent(90) { How::Force } else { How::Tag };
        batter_out(draft, Out::new(how, Base::First, &by));
        runner_out(scene, draft, who);
        if scene.dice.percent(10) {
            draft.error(Position::FirstBase, MisplayKind::Muff);
            draft.misplays[0].by = scene.fielder(INFIELD);
        }
        draft.follow(scene, 0, 1, Cause::Play, &[]);
    } else {
        for start in runners.into_iter().take(2) {
            runner_out(scene, draft, start);
        }
        draft.moves.push(Move::safe(Start::Batter, Base::First, Cause::Choice));
        draft.follow(scene, 1, 1, Cause::Play, &[]);
    }
}

fn rundown(scene: &mut Scene, draft: &mut Draft) {
    let runners = scene.runners();
    let who = scene.dice.pick(&runners);
    let end = 1 + scene.dice.small(2);
    let m = scene.put_out(who, Cause::Play, |s, at| {
        let by = s.rundown();
        let how = s.dice.pick(&[How::Tag, How::Tag, How::LeftPath, How::Interference, How::OtherRule, How::Passing]);
        Out::new(how, at, &by)
    });
    draft.moves.push(m);
    let cause = scene.dice.pick(&[Cause::Choice, Cause::Play, Cause::Throw]);
    let legs = scene.legs(0, end, cause, &[Cause::Throw]);
    draft.moves.push(Move { from: Start::Batter, legs, out: None });
    debug_assert!(draft.outs() == 1);
    follow_with_error(scene, draft, end, 1, Cause::Play);
}
