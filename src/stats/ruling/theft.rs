//! Stolen bases, caught stealing, pickoffs (OBR 9.07); wild pitches and passed balls (OBR 9.13); balks.

use super::{Because, Judgments, Ruling};
use crate::field::Base;
use crate::game::{Moved, Play};
use crate::log::{Attempt, Cause, Judgment, Start};
use crate::team::PlayerId;

/// A runner's attempt at a base that was not given him.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Theft {
    /// Stole so many bases.
    Stolen(u8),
    /// Caught stealing.
    Caught {
        /// At this base.
        at: Base,
        /// And put out; an error may have spared him.
        out: bool,
    },
    /// Picked off and put out going back: no caught stealing.
    PickedOff,
    /// Gained bases, and none of them counts as stolen.
    NotStolen,
}

/// A pitch on which somebody gained a base because it was not held (OBR 9.13).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GotAway {
    /// Charged to the pitcher.
    WildPitch,
    /// Charged to the catcher.
    PassedBall,
}

impl Theft {
    /// Bases stolen.
    pub const fn stolen(self) -> Option<u8> {
        match self {
            Self::Stolen(bases) => Some(bases),
            _ => None,
        }
    }
}

pub(super) fn rule(play: &Play, judgments: &Judgments) -> Vec<(PlayerId, Ruling<Theft>)> {
    let mut thefts = Vec::new();
    if play.nullified {
        return thefts;
    }
    let ruling = |verdict, because, rule| Ruling { verdict, because, rule, entry: play.entry };
    let somebody_out = play.moves.iter().any(|m| caught(m).is_some());
    for m in &play.moves {
        if let Some((theft, because, rule)) = caught(m) {
            thefts.push((m.runner, ruling(theft, because, rule)));
        }
        let overslid = overslid(m);
        let stolen = m
            .legs
            .iter()
            .filter(|leg| leg.cause == Cause::Steal && Some(leg.to) != overslid)
            .map(|leg| leg.to)
            .collect::<Vec<_>>();
        if stolen.is_empty() {
            if m.legs.iter().any(|leg| leg.cause == Cause::Indifference) {
                thefts.push((m.runner, ruling(Theft::NotStolen, Because::Undisputed, "9.07(g)")));
            }
            continue;
        }
        let undisputed = judgments.find(play.entry, |j| match j {
            Judgment::Undisputed { runner, yes, .. } if *runner == m.runner => Some(*yes),
            _ => None,
        });
        thefts.push((
            m.runner,
            if undisputed == Some(true) {
                ruling(Theft::NotStolen, Because::Undisputed, "9.07(g)")
            } else if somebody_out && caught(m).is_none() {
                ruling(Theft::NotStolen, Because::OtherRunnerOut, "9.07(d)")
            } else {
                ruling(Theft::Stolen(stolen.len() as u8), Because::Stole, "9.07(a)")
            },
        ));
    }
    for misplay in play.misplays.iter().filter(|m| m.stealing) {
        let index = play.misplays.iter().position(|m| m == misplay).unwrap_or(0) as u8;
        let spared = play.moves.iter().find(|m| {
            misplay
                .spared
                .map_or_else(|| m.legs.iter().any(|leg| leg.cause == Cause::Error(index)), |start| m.from == start)
        });
        let runner =
            spared.map(|m| m.runner).or_else(|| misplay.spared.and_then(|s| play.before.at(s)).map(|r| r.player));
        let from = spared.map(|m| m.from).or(misplay.spared).map_or(0, Start::number);
        if let (Some(runner), Some(at)) = (runner, Base::from_number(from + 1)) {
            thefts.push((runner, ruling(Theft::Caught { at, out: false }, Because::MuffedThrow, "9.07(f)")));
        }
    }
    thefts
}

fn overslid(m: &Moved) -> Option<Base> {
    let last = m.legs.last().filter(|leg| leg.cause == Cause::Steal)?;
    m.out.as_ref().filter(|out| out.at == last.to).map(|_| last.to)
}

fn caught(m: &Moved) -> Option<(Theft, Because, &'static str)> {
    let out = m.out.as_ref()?;
    if overslid(m).is_some() {
        return Some((Theft::Caught { at: out.at, out: true }, Because::Overslid, "9.07(c)"));
    }
    match out.attempt? {
        Attempt::Steal => Some((Theft::Caught { at: out.at, out: true }, Because::CaughtStealing, "9.07(h)(1)")),
        Attempt::Pickoff if out.at.number() > m.from.number() => {
            Some((Theft::Caught { at: out.at, out: true }, Because::BrokeFromPickoff, "9.07(h)(2)"))
        }
        Attempt::Pickoff => Some((Theft::PickedOff, Because::PickedOff, "9.07(h)")),
        Attempt::Advance => None,
    }
}

/// Whether a pitch got away, and by whom: never both (OBR 9.13).
pub(super) fn got_away(play: &Play, judgments: &Judgments) -> Option<Ruling<GotAway>> {
    if play.nullified {
        return None;
    }
    let gained = |cause| play.moves.iter().any(|m| m.legs.iter().any(|leg| leg.cause == cause));
    let (wild, passed) = (gained(Cause::WildPitch), gained(Cause::PassedBall));
    if !wild && !passed {
        return None;
    }
    let judged = judgments.find(play.entry, |j| match j {
        Judgment::GotAway { wild, .. } => Some(*wild),
        _ => None,
    });
    let (verdict, usual, rule) = if judged.unwrap_or(wild) {
        (GotAway::WildPitch, Because::PitchedWild, "9.13(a)")
    } else {
        (GotAway::PassedBall, Because::LetPass, "9.13(b)")
    };
    let because = if judged.is_some() { Because::Judged } else { usual };
    Some(Ruling { verdict, because, rule, entry: play.entry })
}

pub(super) fn balk(play: &Play) -> Option<Ruling<()>> {
    let called = play.moves.iter().any(|m| m.legs.iter().any(|leg| leg.cause == Cause::Balk));
    called.then_some(Ruling { verdict: (), because: Because::Balked, rule: "6.02(a)", entry: play.entry })
}
