//! The usual running. Common practice, no source: what runners of ordinary speed do when nobody does anything unusual.

use super::Scene;
use crate::field::{Base, Position};
use crate::log::{Cause, Leg, Move, Start};
use crate::order::put_in_order;

/// Where each runner goes; lead runner first, so that a run stands before whatever happens behind it.
pub(super) struct Runs(Vec<Move>);

impl Runs {
    pub fn none() -> Self {
        Self(Vec::new())
    }

    /// Everybody so many bases, for one cause.
    pub fn all(scene: &Scene, bases: u8, cause: Cause) -> Self {
        Self(lead_first(scene).map(|base| safe(base, base.number() + bases, cause)).collect())
    }

    /// Those who must go one base, because the batter takes first (OBR 5.06(b)(3)(A) in its sense).
    pub fn forced(scene: &Scene, cause: Cause) -> Self {
        let forced = lead_first(scene).filter(|base| scene.s.is_forced(Start::from(*base)));
        Self(forced.map(|base| safe(base, base.number() + 1, cause)).collect())
    }

    /// Everybody so many bases: the first of those forced on the ball itself, the rest for `cause`.
    pub fn forced_and_further(scene: &Scene, bases: u8, cause: Cause) -> Self {
        let mut runs = Self::all(scene, bases, cause);
        for m in &mut runs.0 {
            if let Some(next) = m.from.base().and_then(Base::next).filter(|_| scene.s.is_forced(m.from)) {
                m.legs.insert(0, Leg { to: next, cause: Cause::Play });
                m.legs.dedup_by_key(|leg| leg.to); // nobody goes further than home
            }
        }
        runs
    }

    /// On a ball on the ground with the batter out: the runner on third who needn't go does what he usually doesn't.
    pub fn third_otherwise(&self, scene: &Scene) -> Option<Self> {
        if !scene.occupied(Base::Third) || scene.s.is_forced(Start::Third) || scene.outs_left() < 2 {
            return None;
        }
        let mut moves: Vec<Move> = self.0.iter().filter(|m| m.from != Start::Third).cloned().collect();
        if moves.len() == self.0.len() {
            moves.insert(0, safe(Base::Third, 4, Cause::Play));
        } else {
            moves.retain(|m| m.reached() != Some(Base::Third));
        }
        Some(Self(moves))
    }

    /// On a ball on the ground handled by `first`: the forced go. A runner on third who needn't go comes in on a ball
    /// to the middle infielders, who play back; one on second who needn't goes to third on a ball to the right side.
    pub fn on_ground_ball(scene: &Scene, first: Position, cause: Cause) -> Self {
        let mut runs = Self::none();
        let mut open = true; // the base ahead is free or being given up
        for base in lead_first(scene) {
            let goes = match base {
                _ if scene.s.is_forced(Start::from(base)) => true,
                Base::Third => matches!(first, Position::SecondBase | Position::Shortstop),
                Base::Second => matches!(first, Position::FirstBase | Position::SecondBase) && open,
                _ => false,
            };
            if goes {
                runs.0.push(safe(base, base.number() + 1, cause));
            }
            open = goes || base != Base::Third;
        }
        runs
    }

    /// On a hit of so many bases. On a single the runner on second comes in and the one on first stops at second; on a
    /// double the runner on first stops at third. `further` sends each of those one base more.
    pub fn on_hit(scene: &Scene, bases: u8, further: bool) -> Self {
        let cause = Cause::Play;
        let extra = u8::from(further);
        let to = |base: Base| match (bases, base) {
            (1, Base::Second) => 4,
            (1 | 2, Base::First) => base.number() + bases + extra,
            _ => base.number() + bases,
        };
        Self(lead_first(scene).map(|base| safe(base, to(base), cause)).collect())
    }

    /// On a hit that stays in the infield: only who must.
    pub fn on_infield_hit(scene: &Scene) -> Self {
        Self::forced(scene, Cause::Play)
    }

    /// The same, and everyone one base more on the error listed first.
    pub fn and_error(mut self, scene: &Scene) -> Self {
        for base in lead_first(scene) {
            match self.0.iter_mut().find(|m| m.from == Start::from(base)) {
                Some(m) => {
                    if let Some(to) = m.reached().and_then(Base::next) {
                        m.legs.push(Leg { to, cause: Cause::Error(0) });
                    }
                }
                None => self.0.push(safe(base, base.number() + 1, Cause::Error(0))),
            }
        }
        put_in_order(&mut self.0, |a, b| a.from > b.from);
        self
    }

    /// Without those who are put out instead.
    pub fn without(mut self, out: &[Start]) -> Self {
        self.0.retain(|m| !out.contains(&m.from));
        self
    }

    /// Only this one.
    pub fn only(scene: &Scene, base: Base, to: Base, cause: Cause) -> Self {
        if scene.occupied(base) { Self(vec![Move::safe(base.into(), to, cause)]) } else { Self::none() }
    }

    pub fn into_moves(self) -> Vec<Move> {
        self.0
    }
}

/// Occupied bases, third before second before first.
pub(super) fn lead_first(scene: &Scene) -> impl Iterator<Item = Base> {
    let bases = scene.s.bases;
    [Base::Third, Base::Second, Base::First].into_iter().filter(move |b| bases[*b as usize].is_some())
}

fn safe(base: Base, to: u8, cause: Cause) -> Move {
    Move::safe(base.into(), Base::from_number(to.min(4)).unwrap_or(Base::Home), cause)
}

/// Puts outs and advances together. With the third out nobody runs on, so only the batter is still named.
pub(super) fn together(scene: &Scene, outs: Vec<Move>, runs: Runs, batter: Option<Move>) -> Vec<Move> {
    let third_out = outs.len() >= scene.outs_left();
    let mut moves = if third_out { Vec::new() } else { runs.into_moves() };
    let named = |moves: &[Move], from: Start| moves.iter().any(|m| m.from == from);
    for out in outs.into_iter().take(scene.outs_left()) {
        if !named(&moves, out.from) {
            moves.push(out);
        }
    }
    if let Some(batter) = batter
        && !named(&moves, Start::Batter)
    {
        moves.push(batter);
    }
    moves
}

pub(super) fn batter_to(base: Base, cause: Cause) -> Move {
    Move::safe(Start::Batter, base, cause)
}
