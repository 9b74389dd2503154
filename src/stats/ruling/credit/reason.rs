//! Why a fielder has a putout (OBR 9.09), an assist (OBR 9.10) or an error (OBR 9.12).

use crate::field::Position;
use crate::game::Play;
use crate::log::{Cause, How, Misplay, MisplayKind, Out, Start};
use crate::ruling::Because;

/// The reason and its section.
type Grounds = (Because, &'static str);

/// Why the last of `by` has the putout.
pub(super) fn putout(play: &Play, out: &Out, by: &[Position]) -> Grounds {
    let batted = play.batted.as_ref();
    let by_rule = out.by.is_empty() && batted.is_none_or(|b| b.fielders.is_empty());
    match out.how {
        How::Strikeout if by == [Position::Catcher] => (Because::CaughtThirdStrike, "9.09(b)"),
        How::OutOfTurn => (Because::CatcherByRule, "9.09(b)"),
        _ if by_rule => (Because::CatcherByRule, "9.09(b)"),
        How::Fly if batted.is_some_and(|b| b.infield_fly) => (Because::InfieldFly, "9.09(c)(1)"),
        How::Fly => (Because::CaughtFly, "9.09(a)(1)"),
        How::Force | How::Strikeout if by.len() == 1 => (Because::TouchedBase, "9.09(a)"),
        How::Force | How::Strikeout => (Because::HeldThrow, "9.09(a)(2)"),
        How::Tag => (Because::Tagged, "9.09(a)(3)"),
        How::Appeal => (Because::Appealed, "9.09(a)"),
        How::HitByBall => (Because::NearestTheBall, "9.09(c)(2)"),
        How::LeftPath => (Because::WasAvoided, "9.09(c)(3)"),
        How::Passing => (Because::NearestThePassing, "9.09(c)(4)"),
        How::Interference if by == [Position::Catcher] && batted.is_none() => (Because::CatcherByRule, "9.09(b)"),
        How::Interference => (Because::WasHindered, "9.09(c)(6)"),
        How::OtherRule => (Because::NearestByRule, "9.09(c)"),
    }
}

/// Why those who handled the ball before have assists.
pub(super) const fn assist(out: &Out) -> Grounds {
    match out.how {
        How::Interference | How::LeftPath => (Because::ThrewToRuleOut, "9.10(a)(2)"),
        _ => (Because::Threw, "9.10(a)(1)"),
    }
}

/// Why a misplay, the `index`th of the play, is an error.
pub(super) fn error(play: &Play, index: usize, misplay: &Misplay) -> Grounds {
    let kind = misplay.kind;
    let gave_life = gave_life(play, index, misplay);
    let rule = match kind {
        MisplayKind::DroppedFoul => "9.12(a)(2)",
        MisplayKind::Throwing if gave_life => "9.12(a)(5)",
        MisplayKind::Throwing => "9.12(a)(6)",
        MisplayKind::Muff if !gave_life => "9.12(a)(8)",
        MisplayKind::Obstruction | MisplayKind::Interference => "9.12(c)",
        MisplayKind::Fielding | MisplayKind::DroppedFly | MisplayKind::Muff => "9.12(a)(1)",
    };
    (Because::Misplayed { kind, gave_life }, rule)
}

/// Somebody who would have been out is not.
pub(super) fn gave_life(play: &Play, index: usize, misplay: &Misplay) -> bool {
    misplay.kind == MisplayKind::DroppedFoul
        || misplay.spared.is_some()
        || !misplay.after.is_empty()
        || batter_lives_by(play, index)
}

/// The batter reached first by it.
fn batter_lives_by(play: &Play, index: usize) -> bool {
    let batter = play.moves.iter().find(|m| m.from == Start::Batter);
    let first = batter.and_then(|m| m.legs.first());
    first.is_some_and(|leg| matches!(leg.cause, Cause::Error(i) if usize::from(i) == index))
}
