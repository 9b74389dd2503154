//! A ball handled by an infielder: ground balls and bunts first, then what an infielder catches.

use super::running::{Runs, batter_to, lead_first, together};
use super::{Outcome, Proposal, Scene, Touch, air, ball_in_play, hit};
use crate::field::{Base, Position};
use crate::log::{Cause, How, Misplay, MisplayKind, Move, Out, Start, Trajectory};

/// Someone put out along a chain of fielders.
#[derive(Clone, Debug, PartialEq, Eq)]
struct PutOut {
    who: Start,
    at: Base,
    how: How,
    by: Vec<Position>,
}

impl PutOut {
    fn into_move(self) -> Move {
        Move::out(self.who, Out::new(self.how, self.at, &self.by))
    }
}

pub(super) fn to_infield(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let rolls = touch.may_be(Trajectory::Ground) || touch.may_be(Trajectory::Bunt);
    let bunted = touch.said == Some(Trajectory::Bunt);
    let alone = touch.chain.len() == 1;
    let home_alone = alone && touch.first() == Position::Catcher;
    if touch.said.is_none() && home_alone {
        // A ball only the catcher touches is a pop foul more often than not.
        air::foul(scene, touch, list);
    }
    if touch.landed && alone && rolls && !bunted {
        // It came down between the infielders: it got through or died there.
        list.push(hit::infield(scene, touch));
    }
    if rolls {
        let kind = if bunted { Trajectory::Bunt } else { Trajectory::Ground };
        outs(scene, touch, kind, list);
        if touch.landed && alone && touch.said.is_none() && air::is_infield_fly(scene, touch.first(), Trajectory::Pop) {
            air::caught(scene, touch, touch.first(), Trajectory::Pop, list);
        }
        if !bunted && !touch.landed {
            caught(scene, touch, list);
        }
        if !(touch.landed && alone) {
            list.push(hit::infield(scene, touch));
        }
        errors(scene, touch, kind, list);
        if lead_first(scene).next().is_some() {
            // Whoever was forced came through on the ball itself; the choice is what lets the batter stand on first.
            let runs = Runs::forced(scene, Cause::Play);
            let moves = together(scene, Vec::new(), runs, Some(batter_to(Base::First, Cause::Choice)));
            list.push(ball_in_play(Outcome::AllSafe, touch.ball(kind), moves, Vec::new()));
        }
    } else {
        caught(scene, touch, list);
        air::dropped(scene, touch, list);
        list.push(hit::infield(scene, touch));
    }
    if alone && touch.said.is_none() && !touch.landed && touch.first() != Position::Pitcher && !home_alone {
        air::foul(scene, touch, list);
    }
    oddities(scene, touch, list);
}

/// The outs a chain makes, as throws usually mean them.
fn outs(scene: &Scene, touch: &Touch, kind: Trajectory, list: &mut Vec<Proposal>) {
    let running = |runs: Runs, outs: &[PutOut]| {
        let out: Vec<Start> = outs.iter().map(|o| o.who).collect();
        runs.without(&out)
    };
    let usual = |outs: Vec<PutOut>, list: &mut Vec<Proposal>| {
        if outs.is_empty() {
            return;
        }
        let runs = if kind == Trajectory::Bunt {
            bunt_runs(scene)
        } else {
            Runs::on_ground_ball(scene, touch.first(), Cause::Play)
        };
        let runs = running(runs, &outs);
        let batter_out = outs.iter().any(|o| o.who == Start::Batter);
        let only_batter = batter_out && outs.len() == 1;
        let batter = (!batter_out).then(|| batter_to(Base::First, Cause::Choice));
        let outcome = outcome_of(&outs, kind, scene);
        let outs: Vec<Move> = outs.into_iter().map(PutOut::into_move).collect();
        let other = (only_batter && kind == Trajectory::Ground).then(|| runs.third_otherwise(scene)).flatten();
        for runs in core::iter::once(runs).chain(other) {
            let moves = together(scene, outs.clone(), runs, batter.clone());
            list.push(ball_in_play(outcome.clone(), touch.ball(kind), moves, Vec::new()));
        }
    };
    let chain = &touch.chain;
    if is_rundown(chain) {
        rundowns(scene, touch, kind, list);
    }
    if chain.len() == 1 {
        for guess in implied(scene, chain[0], kind) {
            let outs = along(scene, &guess, kind, false);
            let at = list.len();
            usual(outs, list);
            // What was handled is what the scorer touched and what the proposal adds to it.
            for proposal in &mut list[at..] {
                if let crate::log::Event::InPlay(play) = &mut proposal.event {
                    play.ball.fielders.clone_from(&guess);
                }
            }
        }
    } else {
        let made = along(scene, chain, kind, false);
        usual(made.clone(), list);
        if made.len() > 1 {
            // The relay was late.
            usual(made[..made.len() - 1].to_vec(), list);
        }
        let stepped = along(scene, chain, kind, true);
        if chain.len() == 2 && stepped.len() > 1 {
            usual(stepped, list);
        }
    }
    if chain.len() > 1 {
        // Whoever else might have been out, only the batter was.
        usual(vec![batter_out(chain)], list);
    }
    usual(unassisted(scene, chain, kind), list);
    if chain.len() > 1 && may_be_sacrifice(scene, touch) {
        let by = chain.clone();
        let moves = together(scene, vec![batter_out(&by).into_move()], bunt_runs(scene), None);
        list.push(ball_in_play(Outcome::BuntOut { by }, touch.ball(Trajectory::Bunt), moves, Vec::new()));
    }
}

/// Nobody said how it came off the bat, and it may have been a bunt to move the runners: fewer than two out, somebody
/// on, and one of those handled it first who come in for bunts.
fn may_be_sacrifice(scene: &Scene, touch: &Touch) -> bool {
    use Position::{Catcher, FirstBase, Pitcher, ThirdBase};
    touch.said.is_none()
        && scene.outs_left() > 1
        && lead_first(scene).next().is_some()
        && matches!(touch.first(), Pitcher | Catcher | FirstBase | ThirdBase)
}

fn batter_out(chain: &[Position]) -> PutOut {
    PutOut { who: Start::Batter, at: Base::First, how: How::Force, by: chain.to_vec() }
}

fn outcome_of(outs: &[PutOut], kind: Trajectory, scene: &Scene) -> Outcome {
    let mut by: Vec<Position> = Vec::new();
    for position in outs.iter().flat_map(|o| &o.by) {
        if by.last() != Some(position) {
            by.push(*position);
        }
    }
    match outs {
        [only] if only.who == Start::Batter && kind == Trajectory::Bunt && lead_first(scene).next().is_some() => {
            Outcome::BuntOut { by }
        }
        [only] if only.who == Start::Batter => Outcome::GroundOut { by },
        [only] => Outcome::RunnerOut { who: only.who, at: only.at, by },
        [_, _] => Outcome::DoublePlay { by },
        _ => Outcome::TriplePlay { by },
    }
}

/// A bunt moves everybody up whom nobody blocks, but for the runner on third, who stays unless forced.
fn bunt_runs(scene: &Scene) -> Runs {
    let third_stays = scene.occupied(Base::Third) && !scene.s.is_forced(Start::Third);
    let mut stay = Vec::new();
    if third_stays {
        stay.push(Start::Third);
        if !scene.s.is_forced(Start::Second) {
            stay.push(Start::Second);
        }
    }
    Runs::all(scene, 1, Cause::Play).without(&stay)
}

/// Where one infielder alone was touched: the throws that usually follow, most likely first.
fn implied(scene: &Scene, first: Position, kind: Trajectory) -> Vec<Vec<Position>> {
    use Position::{Catcher, FirstBase, Pitcher, SecondBase, Shortstop, ThirdBase};
    let mut chains: Vec<Vec<Position>> = Vec::new();
    let force_at_second = scene.occupied(Base::First);
    let double = force_at_second && scene.outs_left() >= 2 && kind != Trajectory::Bunt;
    let at_second = if matches!(first, SecondBase | FirstBase | Pitcher) { Shortstop } else { SecondBase };
    let to_first = if first == FirstBase { vec![FirstBase] } else { vec![first, FirstBase] };
    if double && matches!(first, SecondBase | Shortstop | ThirdBase | Pitcher) {
        chains.push(vec![first, at_second, FirstBase]);
    }
    chains.push(to_first);
    if force_at_second && !(first == Catcher && kind != Trajectory::Bunt) {
        chains.push(vec![first, at_second]);
    }
    if first == FirstBase {
        chains.push(vec![FirstBase, Pitcher]);
    }
    if scene.occupied(Base::Third) && first != Catcher && scene.outs_left() >= 2 {
        chains.push(vec![first, Catcher]);
    }
    for chain in &mut chains {
        chain.retain(|p| scene.has(*p));
    }
    chains.retain(|c| !c.is_empty());
    if chains.is_empty() {
        chains.push(vec![first]);
    }
    chains
}

/// The base a fielder takes a throw at, when `from` handled the ball first.
fn covers(who: Position, from: Position, kind: Trajectory, scene: &Scene) -> Option<Base> {
    let charged = kind == Trajectory::Bunt || from == Position::FirstBase;
    match who {
        // The first baseman came in for the ball, so the second baseman goes to first.
        Position::SecondBase if charged => Some(Base::First),
        Position::FirstBase => Some(Base::First),
        Position::Pitcher if from == Position::FirstBase || from == Position::SecondBase => Some(Base::First),
        Position::SecondBase if !scene.occupied(Base::First) && !scene.occupied(Base::Second) => Some(Base::First),
        Position::SecondBase | Position::Shortstop => Some(Base::Second),
        Position::ThirdBase => Some(Base::Third),
        Position::Catcher => Some(Base::Home),
        _ => None,
    }
}

/// Who is out where as the ball goes along the chain. With `stepping`, the first fielder also touches his own base.
fn along(scene: &Scene, chain: &[Position], kind: Trajectory, stepping: bool) -> Vec<PutOut> {
    let mut outs: Vec<PutOut> = Vec::new();
    let mut since = 0;
    let is_out = |outs: &[PutOut], who: Start| outs.iter().any(|o| o.who == who);
    for (i, fielder) in chain.iter().enumerate() {
        if outs.len() >= scene.outs_left() {
            break;
        }
        let base = match i {
            0 if chain.len() == 1 || stepping => match fielder {
                Position::FirstBase => Some(Base::First),
                Position::SecondBase | Position::Shortstop if stepping => Some(Base::Second),
                Position::ThirdBase if stepping => Some(Base::Third),
                Position::Catcher if stepping => Some(Base::Home),
                // Nobody is there to throw to.
                _ if chain.len() == 1 => Some(Base::First),
                _ => None,
            },
            0 => None,
            _ => covers(*fielder, chain[0], kind, scene),
        };
        let Some(base) = base else { continue };
        let start = runner_to(base);
        if is_out(&outs, start) || (start != Start::Batter && scene.s.at(start).is_none()) {
            continue;
        }
        // A force is off once somebody behind is out (OBR 5.09(b)(6)): then it takes a tag.
        let behind_out = outs.iter().any(|o| o.who < start);
        let forced = scene.s.is_forced(start) && !behind_out;
        let how = if start == Start::Batter || forced { How::Force } else { How::Tag };
        outs.push(PutOut { who: start, at: base, how, by: chain[since..=i].to_vec() });
        since = i;
    }
    outs
}

/// Who would be put out at a base: the runner one base before it.
const fn runner_to(base: Base) -> Start {
    match base {
        Base::First => Start::Batter,
        Base::Second => Start::First,
        Base::Third => Start::Second,
        Base::Home => Start::Third,
    }
}

/// The first fielder makes a forced out at the base beside him, and the batter is safe.
fn unassisted(scene: &Scene, chain: &[Position], kind: Trajectory) -> Vec<PutOut> {
    if chain.len() > 1 {
        return Vec::new();
    }
    along(scene, chain, kind, true).into_iter().filter(|o| o.who != Start::Batter).collect()
}

/// The ball went back and forth: between two fielders, or among more.
fn is_rundown(chain: &[Position]) -> bool {
    let back_and_forth = chain.iter().enumerate().any(|(i, p)| chain[..i].contains(p));
    back_and_forth && !returns_to_first(chain)
}

/// 3-6-3 and 3-4-3 are a throw to second and one back to first.
fn returns_to_first(chain: &[Position]) -> bool {
    matches!(chain, [Position::FirstBase, Position::SecondBase | Position::Shortstop, Position::FirstBase])
}

/// A runner caught between bases: the one furthest on first. The batter takes second while it goes on, or stays at first.
fn rundowns(scene: &Scene, touch: &Touch, kind: Trajectory, list: &mut Vec<Proposal>) {
    for base in lead_first(scene) {
        let who = Start::from(base);
        let at = base.next().unwrap_or(Base::Home);
        let out = Move::out(who, Out::new(How::Tag, at, &touch.chain));
        for batter in [Base::Second, Base::First] {
            let runs = if batter == Base::Second {
                Runs::forced_and_further(scene, 2, Cause::Throw).without(&[who])
            } else {
                Runs::forced(scene, Cause::Choice).without(&[who])
            };
            // Nobody passes the place where the runner was caught.
            let runs: Vec<Move> =
                runs.into_moves().into_iter().filter(|m| m.reached().is_some_and(|b| b <= at)).collect();
            let crowd = runs.iter().any(|m| m.reached() == Some(batter));
            if crowd || (batter == Base::Second && at < Base::Third) {
                continue;
            }
            let third_out = scene.outs_left() == 1;
            let mut moves = if third_out { Vec::new() } else { runs };
            if !third_out && stuck(scene, &moves, who, batter) {
                continue;
            }
            moves.push(out.clone());
            let cause = if batter == Base::Second { Cause::Throw } else { Cause::Choice };
            let mut way = batter_to(Base::First, Cause::Choice);
            if batter == Base::Second {
                way.legs.push(crate::log::Leg { to: Base::Second, cause });
            }
            moves.push(way);
            let outcome = Outcome::Rundown { who, by: touch.chain.clone() };
            list.push(ball_in_play(outcome, touch.ball(kind), moves, Vec::new()));
        }
    }
}

/// True if the batter or a runner would come to a base on which somebody still stands, or pass him.
fn stuck(scene: &Scene, moves: &[Move], out: Start, batter: Base) -> bool {
    let mut ahead = 5;
    for base in lead_first(scene).filter(|b| Start::from(*b) != out) {
        let ends = moves.iter().find(|m| m.from == Start::from(base)).and_then(Move::reached).unwrap_or(base).number();
        if ends >= ahead && ends != 4 {
            return true;
        }
        ahead = ends;
    }
    batter.number() >= ahead
}

/// An infielder caught it in the air.
fn caught(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    let first = touch.first();
    if touch.chain.len() > 1 {
        for kind in [Trajectory::Line, Trajectory::Pop, Trajectory::Fly] {
            if touch.said == Some(kind) || (touch.said.is_none() && kind == Trajectory::Line) {
                air::doubled_off(scene, touch, kind, list);
            }
        }
        return;
    }
    for kind in [Trajectory::Line, Trajectory::Pop, Trajectory::Fly] {
        if touch.said == Some(kind) || (touch.said.is_none() && kind != Trajectory::Fly) {
            air::caught(scene, touch, first, kind, list);
        }
    }
}

/// Errors on a ball on the ground, each charged as the chain suggests.
fn errors(scene: &Scene, touch: &Touch, kind: Trajectory, list: &mut Vec<Proposal>) {
    let (first, receiver) = (touch.first(), *touch.chain.last().unwrap_or(&touch.chain[0]));
    let error = |outcome: Outcome, misplay: Misplay, runs: Runs, batter: Move| {
        ball_in_play(outcome, touch.ball(kind), together(scene, Vec::new(), runs, Some(batter)), vec![misplay])
    };
    let reached = || batter_to(Base::First, Cause::Error(0));
    let one_base = || Runs::none().and_error(scene);
    if touch.chain.len() == 1 {
        let misplay = Misplay::new(first, MisplayKind::Fielding);
        list.push(error(Outcome::FieldingError { by: first }, misplay, one_base(), reached()));
    }
    let thrower = if touch.chain.len() == 1 { first } else { touch.chain[touch.chain.len() - 2] };
    let handled_before = &touch.chain[..touch.chain.len().saturating_sub(2)];
    let mut bad_throw = Misplay::new(thrower, MisplayKind::Throwing);
    bad_throw.after = handled_before.to_vec();
    // The runners got what the ground ball gave them; what the throw gave comes on top.
    let running = || Runs::on_ground_ball(scene, first, Cause::Play);
    let to_first = Outcome::ThrowingError { by: thrower, to: Base::First };
    list.push(error(to_first, bad_throw.clone(), running(), reached()));
    let to_second = Outcome::ThrowingError { by: thrower, to: Base::Second };
    let two = running().and_error(scene);
    list.push(error(to_second, bad_throw, two, batter_to(Base::Second, Cause::Error(0))));
    if touch.chain.len() > 1 {
        let mut muff = Misplay::new(receiver, MisplayKind::Muff);
        muff.after = touch.chain[..touch.chain.len() - 1].to_vec();
        if covers(receiver, first, kind, scene) == Some(Base::First) {
            muff.spared = Some(Start::Batter);
        }
        list.push(error(Outcome::Muff { by: receiver }, muff, running(), reached()));
        let misplay = Misplay::new(first, MisplayKind::Fielding);
        list.push(error(Outcome::FieldingError { by: first }, misplay, one_base(), reached()));
    }
}

/// What happens once in a while.
fn oddities(scene: &Scene, touch: &Touch, list: &mut Vec<Proposal>) {
    if touch.said.is_some_and(|said| !matches!(said, Trajectory::Ground | Trajectory::Bunt)) || touch.landed {
        return;
    }
    let first = touch.first();
    if touch.chain.len() == 1 {
        for base in lead_first(scene) {
            let who = Start::from(base);
            let out = Move::out(who, Out::new(How::HitByBall, base.next().unwrap_or(Base::Home), &[first]));
            let runs = Runs::forced(scene, Cause::Play).without(&[who]);
            // Those ahead of him go only where forced from behind, and he is out: none does.
            let runs: Vec<Move> = runs.into_moves().into_iter().filter(|m| m.from < who).collect();
            let ahead_stays = lead_first(scene).any(|b| Start::from(b) > who);
            let mut moves = if scene.outs_left() == 1 { Vec::new() } else { runs };
            if ahead_stays
                && scene.outs_left() > 1
                && moves.iter().any(|m| m.reached().is_some_and(|b| scene.occupied(b) && Start::from(b) > who))
            {
                continue;
            }
            moves.push(out);
            moves.push(batter_to(Base::First, Cause::Play));
            list.push(ball_in_play(Outcome::RunnerHit { who }, touch.ball(Trajectory::Ground), moves, Vec::new()));
        }
    }
    let catcher = if scene.has(Position::Catcher) { Position::Catcher } else { first };
    let out = Move::out(Start::Batter, Out::new(How::Interference, Base::First, &[catcher]));
    list.push(ball_in_play(Outcome::BatterInterfered, touch.ball(Trajectory::Ground), vec![out], Vec::new()));
}
