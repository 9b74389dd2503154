//! What a plate appearance counts as: hits and their value, errors, choices, sacrifices (OBR 9.02(a), 9.05, 9.06, 9.08,
//! 9.12, 9.14, 9.15).

use super::credit::error_between_outs;
use super::{Because, Judgments, Ruling};
use crate::field::{Base, Position};
use crate::game::{Moved, Play, TurnKind};
use crate::log::{Cause, How, Judgment, MisplayKind, Reached, Start, Trajectory};

/// What a plate appearance counts as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BatterResult {
    /// A hit of so many bases.
    Hit(u8),
    /// Base on balls.
    Walk,
    /// Intentional base on balls.
    IntentionalWalk,
    /// Hit by a pitch.
    HitByPitch,
    /// Struck out.
    Strikeout {
        /// On a called strike.
        looking: bool,
        /// But reached base.
        reached: bool,
    },
    /// Put out otherwise.
    Out,
    /// Reached on a fielder's choice.
    FieldersChoice,
    /// Reached on an error.
    ReachedOnError(Position),
    /// Sacrifice hit.
    SacrificeHit {
        /// And reached base.
        reached: bool,
    },
    /// Sacrifice fly.
    SacrificeFly {
        /// And reached base, on a dropped fly.
        reached: bool,
    },
    /// First base on the catcher's interference.
    Interference,
    /// First base on obstruction.
    Obstruction,
}

impl BatterResult {
    /// Counts as a time at bat (OBR 9.02(a)(1)).
    pub const fn is_at_bat(self) -> bool {
        matches!(
            self,
            Self::Hit(_) | Self::Strikeout { .. } | Self::Out | Self::FieldersChoice | Self::ReachedOnError(_)
        )
    }

    /// Bases of the hit, if it is one.
    pub const fn hit_bases(self) -> Option<u8> {
        match self {
            Self::Hit(bases) => Some(bases),
            _ => None,
        }
    }
}

pub(super) fn rule(play: &Play, judgments: &Judgments) -> Option<Ruling<BatterResult>> {
    let turn = play.turn?;
    let (verdict, because, rule) = match turn.kind {
        TurnKind::Walk => (BatterResult::Walk, Because::Walk, "9.14(a)"),
        TurnKind::IntentionalWalk => (BatterResult::IntentionalWalk, Because::IntentionalWalk, "9.14(b)"),
        TurnKind::HitByPitch => (BatterResult::HitByPitch, Because::HitByPitch, "9.02(a)(10)"),
        TurnKind::Strikeout { looking } => {
            let reached = play.batter_move().is_some_and(|m| !m.legs.is_empty());
            let because = if reached { Because::StrikeoutReached } else { Because::Strikeout };
            (BatterResult::Strikeout { looking, reached }, because, "9.15(a)")
        }
        TurnKind::CatcherInterference => (BatterResult::Interference, Because::CatcherInterference, "9.02(a)(1)(D)"),
        TurnKind::BatterInterference => (BatterResult::Out, Because::OwnInterference, "9.09(b)"),
        TurnKind::OutOfTurn => (BatterResult::Out, Because::OutOfTurn, "9.03(d)"),
        TurnKind::EmptyPlace => return None,
        TurnKind::InPlay => in_play(play, judgments)?,
    };
    Some(Ruling { verdict, because, rule, entry: play.entry })
}

type Verdict = (BatterResult, Because, &'static str);

fn in_play(play: &Play, judgments: &Judgments) -> Option<Verdict> {
    let batter = play.batter_move()?;
    if let Some(reached) = judgments.find(play.entry, |j| match j {
        Judgment::BatterReached { verdict, .. } => Some(*verdict),
        _ => None,
    }) {
        return Some(match reached {
            Reached::Hit(bases) => (BatterResult::Hit(bases.clamp(1, 4)), Because::Judged, "9.05"),
            Reached::Error(position) => (BatterResult::ReachedOnError(position), Because::Judged, "9.12"),
            Reached::Choice => (BatterResult::FieldersChoice, Because::Judged, "9.05(b)"),
        });
    }
    if let Some(sacrifice) = sacrifice_hit(play, batter, judgments).or_else(|| sacrifice_fly(play, batter, judgments)) {
        return Some(sacrifice);
    }
    let Some(first) = batter.legs.first() else {
        return Some((BatterResult::Out, Because::PutOut, "9.02(a)(1)"));
    };
    Some(match first.cause {
        Cause::Error(i) => {
            let by = play.misplays.get(usize::from(i)).map_or(Position::Pitcher, |m| m.by);
            (BatterResult::ReachedOnError(by), Because::Error(by), "9.12(a)(1)")
        }
        Cause::Choice | Cause::Throw | Cause::Interference => {
            (BatterResult::FieldersChoice, Because::Choice, "9.05(b)(3)")
        }
        Cause::Obstruction => (BatterResult::Obstruction, Because::Obstruction, "9.02(a)(1)(D)"),
        _ => match held(batter, first.to) {
            Some((to, rule)) => hit(play, to, rule),
            None => (BatterResult::Out, Because::PutOut, "9.06(d)"),
        },
    })
}

/// The last base the batter reached safely by the batted ball, with the section that gives him no more than that: put out
/// at a base he slid past (9.06(c)), or on appeal at one he missed (9.06(d)). `None` if he missed first.
fn held(batter: &Moved, to: Base) -> Option<(Base, &'static str)> {
    let Some(out) = batter.out.as_ref().filter(|out| out.at <= to) else { return Some((to, "9.05(a)")) };
    let rule = if out.how == How::Appeal { "9.06(d)" } else { "9.06(c)" };
    match Base::from_number(out.at.number() - 1) {
        Some(before) => Some((before, rule)),
        None if out.how == How::Appeal => None,
        // He may run past first; tagged there, he had turned for second.
        None => Some((Base::First, "9.05(a)")),
    }
}

/// Safe on the batted ball: a hit, unless a runner paid for it.
fn hit(play: &Play, to: Base, rule: &'static str) -> Verdict {
    let others = || play.moves.iter().filter(|m| m.from != Start::Batter);
    if others().any(|m| m.out.as_ref().is_some_and(|o| o.how == How::HitByBall)) {
        return (BatterResult::Hit(1), Because::RunnerHitByBall, "9.05(a)(5)");
    }
    if others().any(|m| m.out.as_ref().is_some_and(|o| o.how == How::Force)) {
        return (BatterResult::FieldersChoice, Because::RunnerForced, "9.05(b)(1)");
    }
    let infielder = play.batted.as_ref().and_then(|b| b.fielders.first()).is_some_and(|p| !p.is_outfield());
    if infielder && others().any(put_out_advancing_one_base) {
        return (BatterResult::FieldersChoice, Because::RunnerPutOut, "9.05(b)(3)");
    }
    let bases = to.number();
    if let Some(most) = game_ending_bases(play).filter(|most| *most < bases) {
        return (BatterResult::Hit(most), Because::GameEnding(most), "9.06(f)");
    }
    (BatterResult::Hit(bases), Because::SafeHit(bases), rule)
}

/// Put out going back, or on the way to the very next base.
fn put_out_advancing_one_base(m: &Moved) -> bool {
    m.legs.is_empty() && m.out.as_ref().is_some_and(|o| o.at.number() <= m.from.number() + 1 && o.how != How::Appeal)
}

/// The bases the winning run needed, when this play brought it in and ended the game (OBR 9.06(f), (g)).
fn game_ending_bases(play: &Play) -> Option<u8> {
    let [visitors, home] = play.before.score;
    let runs = u16::from(play.runs());
    let ends = play.ends_game && play.outs() == 0 && play.before.half == crate::field::Half::Bottom;
    if !ends || home > visitors || home + runs <= visitors || play.batted.as_ref().is_some_and(|b| b.left_park) {
        return None;
    }
    let winning = play.moves.iter().filter(|m| m.scored).nth(usize::from(visitors - home))?;
    Some(4 - winning.from.number())
}

/// OBR 9.08(a) to (c).
fn sacrifice_hit(play: &Play, batter: &Moved, judgments: &Judgments) -> Option<Verdict> {
    let bunt = play.batted.as_ref().is_some_and(|b| b.trajectory == Trajectory::Bunt);
    let runners = || play.moves.iter().filter(|m| m.from != Start::Batter);
    if !bunt
        || play.before.outs >= 2
        || runners().any(|m| m.out.is_some())
        || !runners().any(|m| !m.legs.is_empty())
        || batter.out.as_ref().is_some_and(|o| o.how == How::Fly)
    {
        return None;
    }
    let for_hit = judgments.find(play.entry, |j| match j {
        Judgment::BuntedForHit { yes, .. } => Some(*yes),
        _ => None,
    });
    if for_hit == Some(true) {
        return None;
    }
    match batter.legs.first().map(|leg| leg.cause) {
        None => Some((BatterResult::SacrificeHit { reached: false }, Because::Sacrifice, "9.08(a)")),
        Some(Cause::Error(_)) => Some((BatterResult::SacrificeHit { reached: true }, Because::Sacrifice, "9.08(a)")),
        Some(Cause::Choice | Cause::Throw) => {
            Some((BatterResult::SacrificeHit { reached: true }, Because::SacrificeAllSafe, "9.08(b)"))
        }
        Some(_) => None,
    }
}

/// OBR 9.08(d).
fn sacrifice_fly(play: &Play, batter: &Moved, judgments: &Judgments) -> Option<Verdict> {
    let batted = play.batted.as_ref()?;
    let in_the_air = matches!(batted.trajectory, Trajectory::Fly | Trajectory::Line | Trajectory::Pop);
    if !in_the_air || play.before.outs >= 2 {
        return None;
    }
    let scored = || play.moves.iter().filter(|m| m.from != Start::Batter && m.scored);
    let caught = batter.out.as_ref().is_some_and(|o| o.how == How::Fly) && batter.legs.is_empty();
    if caught {
        let after_catch = scored().any(|m| !m.legs.iter().any(|leg| matches!(leg.cause, Cause::Error(_))));
        return after_catch.then_some((
            BatterResult::SacrificeFly { reached: false },
            Because::SacrificeFly,
            "9.08(d)(1)",
        ));
    }
    let Some(Cause::Error(i)) = batter.legs.first().map(|leg| leg.cause) else { return None };
    let dropped = play.misplays.get(usize::from(i)).is_some_and(|m| m.kind == MisplayKind::DroppedFly);
    let usual = scored().any(|m| m.from == Start::Third);
    let would = judgments
        .find(play.entry, |j| match j {
            Judgment::WouldHaveScoredAfterCatch { yes, .. } => Some(*yes),
            _ => None,
        })
        .unwrap_or(usual);
    (dropped && would && scored().next().is_some()).then_some((
        BatterResult::SacrificeFly { reached: true },
        Because::SacrificeFlyDropped,
        "9.08(d)(2)",
    ))
}

/// The error by which the entry says the batter reached, if it was that and no more: a ball not fielded, or a throw that
/// helped nobody else. Whether it is an error at all goes by the scorer's judgment of how he reached (OBR 9.12(a)(1)).
pub(super) fn own_error(play: &Play) -> Option<u8> {
    let first = play.batter_move()?.legs.first()?;
    let Cause::Error(error) = first.cause else { return None };
    let misplay = play.misplays.get(usize::from(error))?;
    let of_the_ball = matches!(misplay.kind, MisplayKind::Fielding | MisplayKind::DroppedFly);
    let uses = play.moves.iter().flat_map(|m| m.legs.iter().map(move |leg| (m.from, leg)));
    let only =
        uses.filter(|(_, leg)| leg.cause == first.cause).all(|(from, leg)| from == Start::Batter && leg == first);
    (of_the_ball || only).then_some(error)
}

/// The error of the entry that is none, since the scorer judged it a hit or a choice.
pub(super) fn void_error(play: &Play, result: Option<BatterResult>) -> Option<u8> {
    let judged = matches!(result, Some(BatterResult::Hit(_) | BatterResult::FieldersChoice));
    own_error(play).filter(|_| judged)
}

/// The batter reached on an error, by the entry or by the scorer's judgment.
pub(super) fn reached_on_error(play: &Play, result: Option<BatterResult>) -> bool {
    let entered = play.batter_move().and_then(|m| m.legs.first()).is_some_and(|l| matches!(l.cause, Cause::Error(_)));
    (entered && void_error(play, result).is_none()) || matches!(result, Some(BatterResult::ReachedOnError(_)))
}

/// Grounded into a force or reverse-force double play (OBR 9.02(a)(17), 9.04(b)(1)).
pub(super) fn grounded_into_double_play(play: &Play, result: Option<BatterResult>) -> Option<Ruling<()>> {
    let ruling = Ruling { verdict: (), because: Because::Grounded, rule: "9.02(a)(17)", entry: play.entry };
    let clean = !error_between_outs(&[play], &[void_error(play, result)]);
    (is_ground_ball_double_play(play) && clean).then_some(ruling)
}

fn is_ground_ball_double_play(play: &Play) -> bool {
    let grounded = play.batted.as_ref().is_some_and(|b| matches!(b.trajectory, Trajectory::Ground | Trajectory::Bunt));
    if !grounded || play.outs() < 2 {
        return false;
    }
    let outs = || play.moves.iter().filter_map(|m| m.out.as_ref().map(|o| (m, o)));
    let forces = outs().filter(|(_, o)| o.how == How::Force).count();
    let batter_at_first = outs().any(|(m, o)| m.from == Start::Batter && o.at == Base::First && m.legs.is_empty());
    let forced_at_start = outs()
        .any(|(m, o)| m.from != Start::Batter && play.before.is_forced(m.from) && o.at.number() == m.from.number() + 1);
    forces >= 2 || (batter_at_first && forced_at_start)
}
