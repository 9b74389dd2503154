//! Changing a draft of a play by hand: where somebody ended, for what cause, by whom put out. Nothing here judges:
//! `Game::record` does.

use crate::field::{Base, Position};
use crate::game::Situation;
use crate::log::{Action, Attempt, Cause, How, Leg, Misplay, MisplayKind, Move, Out, Start};
use crate::order::put_in_order;

/// `who` stays where they are.
pub fn stays(action: &mut Action, who: Start) {
    action.moves.retain(|m| m.from != who);
    tidy(action);
}

/// Leaves out runners who are not on base.
pub fn leave_out_missing(action: &mut Action, s: &Situation) {
    action.moves.retain(|m| m.from == Start::Batter || s.at(m.from).is_some());
    tidy(action);
}

/// `who` ends safely at `to`. Bases already gained below it keep their cause; what is added has the cause the rest of the
/// play suggests.
pub fn safe(action: &mut Action, who: Start, to: Base, batted: bool) {
    let cause = usual_cause(action, who, to, batted);
    let mut legs = kept_legs(action, who, to);
    match legs.last_mut() {
        Some(last) if last.cause == cause => last.to = to,
        _ => legs.push(Leg { to, cause }),
    }
    put(action, Move { from: who, legs, out: None });
}

/// `who` is out at `at`, by the fielders of `chain`.
pub fn out(action: &mut Action, s: &Situation, who: Start, at: Base, chain: &[Position], batted: bool) {
    let caught = is_caught(action);
    let legs = kept_legs(action, who, at);
    let forced = batted && !caught && legs.is_empty() && s.is_forced(who) && at.number() == who.number() + 1;
    let how = match at {
        _ if batted && who != Start::Batter && caught && who.number() == at.number() => How::Appeal,
        Base::First if who == Start::Batter && legs.is_empty() => How::Force,
        _ if forced => How::Force,
        _ => How::Tag,
    };
    let said = action.moves.iter().find(|m| m.from == who).and_then(|m| m.out.as_ref()).and_then(|out| out.attempt);
    let attempt = said.or((!batted && who != Start::Batter).then_some(Attempt::Advance));
    put(action, Move { from: who, legs, out: Some(Out { how, at, by: chain.to_vec(), attempt }) });
}

/// Changes the cause of the last bases `who` gained.
pub fn because(action: &mut Action, who: Start, cause: Cause) {
    if let Some(leg) = action.moves.iter_mut().find(|m| m.from == who).and_then(|m| m.legs.last_mut()) {
        leg.cause = cause;
    }
    tidy(action);
}

/// The last bases `who` gained were gained on an error by `by`, listed once.
pub fn on_error(action: &mut Action, who: Start, by: Position, kind: MisplayKind, after: &[Position]) {
    let cause = error(action, by, kind, after);
    because(action, who, cause);
}

/// One base `who` gained was gained on an error by `by`, listed once.
pub fn on_error_at(action: &mut Action, who: Start, base: Base, by: Position, kind: MisplayKind, after: &[Position]) {
    let cause = error(action, by, kind, after);
    because_of(action, who, base, cause);
}

/// The error as a cause; it is added if it is not among the errors yet.
fn error(action: &mut Action, by: Position, kind: MisplayKind, after: &[Position]) -> Cause {
    let at = action.misplays.iter().position(|m| m.by == by && m.kind == kind).unwrap_or_else(|| {
        let before = after.iter().position(|p| *p == by).map_or(after, |i| &after[..i]);
        let mut misplay = Misplay::new(by, kind);
        misplay.after = before.to_vec();
        action.misplays.push(misplay);
        action.misplays.len() - 1
    });
    Cause::Error(at as u8)
}

/// The bases a move gained safely, a base each, with their causes.
pub fn gained(m: &Move) -> Vec<(Base, Cause)> {
    let mut at = m.from.number();
    let mut gained = Vec::new();
    for leg in &m.legs {
        let passed = (at + 1..=leg.to.number()).filter_map(Base::from_number);
        gained.extend(passed.map(|base| (base, leg.cause)));
        at = leg.to.number();
    }
    gained
}

/// Changes the cause of one base `who` gained; neighbours gained for one cause are one leg.
pub fn because_of(action: &mut Action, who: Start, base: Base, cause: Cause) {
    if let Some(m) = action.moves.iter_mut().find(|m| m.from == who) {
        let mut legs: Vec<Leg> = Vec::new();
        for (to, was) in gained(m) {
            let cause = if to == base { cause } else { was };
            match legs.last_mut().filter(|last| last.cause == cause) {
                Some(last) => last.to = to,
                None => legs.push(Leg { to, cause }),
            }
        }
        m.legs = legs;
    }
    tidy(action);
}

/// By whom `who` was put out.
pub fn put_out_by(action: &mut Action, who: Start, by: Vec<Position>) {
    if let Some(out) = out_of(action, who) {
        out.by = by;
    }
}

/// What `who` was about when put out.
pub fn attempting(action: &mut Action, who: Start, attempt: Attempt) {
    if let Some(out) = out_of(action, who) {
        out.attempt = Some(attempt);
    }
}

/// How `who` was put out.
pub fn how(action: &mut Action, who: Start, how: How) {
    if let Some(out) = out_of(action, who) {
        out.how = how;
    }
}

fn out_of(action: &mut Action, who: Start) -> Option<&mut Out> {
    action.moves.iter_mut().find(|m| m.from == who).and_then(|m| m.out.as_mut())
}

/// The third out came before the runs: every out is listed first.
pub fn outs_first(action: &mut Action) {
    put_in_order(&mut action.moves, |a, b| a.out.is_some() && b.out.is_none());
}

/// A run stands before a third out and could have come after it; `outs` were made before the play.
pub fn has_run_and_out(action: &Action, outs: u8) -> bool {
    let made = action.moves.iter().filter(|m| m.out.is_some()).count();
    if usize::from(outs) + made < 3 {
        return false;
    }
    let run = action.moves.iter().position(|m| m.out.is_none() && m.reached() == Some(Base::Home));
    let out = action.moves.iter().rposition(|m| m.out.is_some());
    matches!((run, out), (Some(run), Some(out)) if run < out)
}

fn is_caught(action: &Action) -> bool {
    action.moves.iter().any(|m| m.out.as_ref().is_some_and(|out| out.how == How::Fly))
}

/// The legs of `who` that end before `to`; their cause stays.
fn kept_legs(action: &Action, who: Start, to: Base) -> Vec<Leg> {
    let legs = action.moves.iter().find(|m| m.from == who).map(|m| m.legs.as_slice()).unwrap_or_default();
    legs.iter().copied().filter(|leg| leg.to < to).collect()
}

fn usual_cause(action: &Action, who: Start, to: Base, batted: bool) -> Cause {
    let now = action.moves.iter().find(|m| m.from == who);
    if let Some(leg) = now.and_then(|m| m.legs.iter().find(|leg| leg.to >= to)) {
        return leg.cause; // fewer bases than proposed: for the same cause
    }
    if !action.misplays.is_empty() {
        return Cause::Error(0);
    }
    let someone_else_out = action.moves.iter().any(|m| m.from != who && m.out.is_some());
    match (batted, someone_else_out) {
        (true, true) if who == Start::Batter && !is_caught(action) && to == Base::First => Cause::Choice,
        (true, true) if now.is_some_and(|m| !m.legs.is_empty()) => Cause::Throw,
        (true, _) => Cause::Play,
        (false, _) => action
            .moves
            .iter()
            .flat_map(|m| &m.legs)
            .map(|leg| leg.cause)
            .find(|c| !matches!(c, Cause::Error(_)))
            .unwrap_or(if someone_else_out { Cause::Throw } else { Cause::Steal }),
    }
}

/// Puts a move in its place: runs before outs, the lead runner first.
fn put(action: &mut Action, new: Move) {
    match action.moves.iter_mut().find(|m| m.from == new.from) {
        Some(old) => *old = new,
        None => action.moves.push(new),
    }
    let rank = |m: &Move| match (&m.out, m.reached()) {
        (None, Some(Base::Home)) => 0,
        (Some(_), _) => 1,
        _ => 2,
    };
    put_in_order(&mut action.moves, |a, b| rank(a) < rank(b));
    tidy(action);
}

/// Forgets errors that no longer helped anybody, and renumbers the rest.
fn tidy(action: &mut Action) {
    let used = |i: usize, action: &Action| {
        let named = action.moves.iter().flat_map(|m| &m.legs).any(|leg| leg.cause == Cause::Error(i as u8));
        let stands_alone = action.misplays[i].kind == MisplayKind::DroppedFoul || action.misplays[i].spared.is_some();
        named || stands_alone
    };
    let mut i = 0;
    while i < action.misplays.len() {
        if used(i, action) {
            i += 1;
            continue;
        }
        action.misplays.remove(i);
        for leg in action.moves.iter_mut().flat_map(|m| &mut m.legs) {
            if let Cause::Error(n) = &mut leg.cause
                && usize::from(*n) > i
            {
                *n -= 1;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn single() -> Action {
        Action {
            moves: vec![
                Move::safe(Start::Second, Base::Home, Cause::Play),
                Move::safe(Start::First, Base::Second, Cause::Play),
                Move::safe(Start::Batter, Base::First, Cause::Play),
            ],
            misplays: Vec::new(),
        }
    }

    fn of(action: &Action, who: Start) -> &Move {
        action.moves.iter().find(|m| m.from == who).expect("moves")
    }

    #[test]
    fn fewer_bases_keep_the_cause_and_more_take_the_plays() {
        let mut action = single();
        safe(&mut action, Start::Second, Base::Third, true);
        assert_eq!(of(&action, Start::Second).legs, [Leg { to: Base::Third, cause: Cause::Play }]);
        safe(&mut action, Start::First, Base::Third, true);
        assert_eq!(of(&action, Start::First).legs, [Leg { to: Base::Third, cause: Cause::Play }]);
    }

    #[test]
    fn a_batter_who_goes_on_after_an_out_elsewhere_does_so_on_the_throw() {
        let mut action = single();
        out(&mut action, &nobody(), Start::Second, Base::Home, &[Position::LeftField, Position::Catcher], true);
        safe(&mut action, Start::Batter, Base::Second, true);
        let legs = &of(&action, Start::Batter).legs;
        assert_eq!(legs, &[Leg { to: Base::First, cause: Cause::Play }, Leg { to: Base::Second, cause: Cause::Throw }]);
    }

    #[test]
    fn an_error_is_listed_once_and_forgotten_when_it_helped_nobody() {
        let mut action = single();
        safe(&mut action, Start::Batter, Base::Second, true);
        let seven = Position::LeftField;
        on_error(&mut action, Start::Batter, seven, MisplayKind::Fielding, &[seven]);
        on_error(&mut action, Start::First, seven, MisplayKind::Fielding, &[seven]);
        assert_eq!(action.misplays.len(), 1);
        because(&mut action, Start::Batter, Cause::Play);
        because(&mut action, Start::First, Cause::Play);
        assert!(action.misplays.is_empty());
    }

    #[test]
    fn each_base_has_its_cause() {
        let mut action = single();
        safe(&mut action, Start::Batter, Base::Third, true);
        assert_eq!(of(&action, Start::Batter).legs.len(), 1);
        because_of(&mut action, Start::Batter, Base::Second, Cause::Throw);
        on_error_at(&mut action, Start::Batter, Base::Third, Position::Catcher, MisplayKind::Throwing, &[]);
        let causes: Vec<_> = gained(of(&action, Start::Batter)).into_iter().map(|(_, cause)| cause).collect();
        assert_eq!(causes, [Cause::Play, Cause::Throw, Cause::Error(0)]);
        because_of(&mut action, Start::Batter, Base::Third, Cause::Play);
        because_of(&mut action, Start::Batter, Base::Second, Cause::Play);
        assert_eq!(of(&action, Start::Batter).legs, [Leg { to: Base::Third, cause: Cause::Play }]);
        assert!(action.misplays.is_empty());
    }

    #[test]
    fn runs_stand_before_the_last_out_until_it_is_said_that_they_came_late() {
        let mut action = single();
        out(&mut action, &nobody(), Start::Batter, Base::Second, &[Position::CenterField, Position::Shortstop], true);
        assert!(has_run_and_out(&action, 2));
        assert!(!has_run_and_out(&action, 1), "two out: it does not matter");
        assert_eq!(action.moves[0].from, Start::Second);
        outs_first(&mut action);
        assert_eq!(action.moves[0].from, Start::Batter);
        assert!(!has_run_and_out(&action, 2));
    }

    fn nobody() -> Situation {
        *crate::game::Game::new().situation()
    }
}
