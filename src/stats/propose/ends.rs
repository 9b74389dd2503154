//! The choices of one who changes a play by hand: where somebody ended, for what cause, how put out; and what choosing
//! an end does to the play.

use super::edit;
use crate::field::{Base, Position};
use crate::game::Situation;
use crate::log::{Action, Attempt, Cause, How, MisplayKind, Move, Start};

const BASES: [Base; 4] = [Base::First, Base::Second, Base::Third, Base::Home];

/// The errors that can let somebody gain a base.
pub const MISPLAYS: [MisplayKind; 5] = [
    MisplayKind::Fielding,
    MisplayKind::Throwing,
    MisplayKind::Muff,
    MisplayKind::DroppedFly,
    MisplayKind::Obstruction,
];

/// What a runner put out without a batted ball can have been about.
pub const ATTEMPTS: [Attempt; 3] = [Attempt::Steal, Attempt::Pickoff, Attempt::Advance];

/// An end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// Where they were.
    Stays,
    /// Safe there.
    Safe(Base),
    /// Put out there.
    Out(Base),
}

impl End {
    /// The end of a move; nobody who moved is not in the play.
    pub fn of(m: Option<&Move>) -> Self {
        match m.map(|m| (m.out.as_ref(), m.reached())) {
            Some((Some(out), _)) => Self::Out(out.at),
            Some((None, Some(base))) => Self::Safe(base),
            _ => Self::Stays,
        }
    }

    /// Those there are for somebody.
    pub fn all(who: Start, batted: bool) -> Vec<Self> {
        let stays = (who != Start::Batter || !batted).then_some(Self::Stays);
        let safe = BASES.into_iter().filter(|b| b.number() > who.number()).map(Self::Safe);
        let out = BASES.into_iter().filter(|b| b.number() >= who.number().max(1)).map(Self::Out);
        stays.into_iter().chain(safe).chain(out).collect()
    }

    /// The value of its choice.
    pub fn value(self) -> String {
        match self {
            Self::Stays => "stays".to_owned(),
            Self::Safe(base) => format!("safe-{}", base.number()),
            Self::Out(base) => format!("out-{}", base.number()),
        }
    }

    /// The end a value names.
    pub fn parse(value: &str) -> Option<Self> {
        let (kind, number) = value.split_once('-').unwrap_or((value, ""));
        let base = || number.parse().ok().and_then(Base::from_number);
        match kind {
            "stays" => Some(Self::Stays),
            "safe" => base().map(Self::Safe),
            "out" => base().map(Self::Out),
            _ => None,
        }
    }
}

/// Ends the way of `who` there.
pub fn set(action: &mut Action, s: &Situation, who: Start, end: End, chain: &[Position], batted: bool) {
    match end {
        End::Stays => edit::stays(action, who),
        End::Safe(to) => edit::safe(action, who, to, batted),
        End::Out(at) => {
            // Whoever is out beyond the next base had reached the one before.
            let reached = action.moves.iter().find(|m| m.from == who).and_then(Move::reached).map_or(0, Base::number);
            if at.number() > who.number() + 1
                && reached.max(who.number()) + 1 < at.number()
                && let Some(before) = Base::from_number(at.number() - 1)
            {
                edit::safe(action, who, before, batted);
            }
            edit::out(action, s, who, at, chain, batted);
        }
    }
}

/// The ways to be put out, the more frequent first; the one that stands is always among them.
pub fn ways(batted: bool, now: Option<How>) -> Vec<How> {
    let all = [
        How::Force,
        How::Tag,
        How::Fly,
        How::Strikeout,
        How::Appeal,
        How::Interference,
        How::HitByBall,
        How::Passing,
        How::LeftPath,
        How::OtherRule,
    ];
    let can_be = |how: &How| match how {
        How::Strikeout => !batted,
        How::Fly | How::HitByBall => batted,
        _ => true,
    };
    all.into_iter().filter(|how| can_be(how) || now == Some(*how)).collect()
}

/// The causes to choose from, errors apart; the one that stands is always among them.
pub fn causes(batted: bool, now: Option<Cause>) -> Vec<Cause> {
    let usual: &[Cause] = if batted {
        &[Cause::Play, Cause::Throw, Cause::Choice, Cause::Obstruction, Cause::Interference, Cause::Award]
    } else {
        &[
            Cause::Steal,
            Cause::WildPitch,
            Cause::PassedBall,
            Cause::Throw,
            Cause::Indifference,
            Cause::Balk,
            Cause::IllegalPitch,
            Cause::Obstruction,
            Cause::Award,
        ]
    };
    let mut causes = usual.to_vec();
    if let Some(now) = now.filter(|now| !matches!(now, Cause::Error(_)) && !causes.contains(now)) {
        causes.push(now);
    }
    causes
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::game::Game;
    use crate::log::Leg;

    #[test]
    fn every_end_is_named_by_its_value() {
        for who in [Start::Batter, Start::First, Start::Second, Start::Third] {
            for end in End::all(who, false) {
                assert_eq!(End::parse(&end.value()), Some(end));
            }
        }
        assert!(!End::all(Start::Batter, true).contains(&End::Stays), "who puts the ball in play does something");
    }

    #[test]
    fn a_batter_out_at_second_had_reached_first() {
        let mut action = Action::default();
        let s = *Game::new().situation();
        set(&mut action, &s, Start::Batter, End::Out(Base::Second), &[Position::LeftField], true);
        let own = &action.moves[0];
        assert_eq!(own.legs, [Leg { to: Base::First, cause: Cause::Play }]);
        assert_eq!(End::of(Some(own)), End::Out(Base::Second));
        set(&mut action, &s, Start::Batter, End::Out(Base::First), &[Position::LeftField], true);
        assert!(action.moves[0].legs.is_empty());
    }
}
