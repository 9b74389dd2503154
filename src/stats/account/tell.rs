//! One entry as sentences.

use super::{Ball, Told, Was};
use crate::field::Position;
use crate::game::{Moved, Play, TurnKind};
use crate::log::{Batted, Cause, Event, Leg, Misplay, Spot, Start};
use crate::ruling::{BatterResult, Because, Judged};
use crate::team::{Change, PlayerId};

/// What kind of entry it was, for one that counts for nothing any more.
pub(super) const fn kind(event: &Event) -> Was {
    match event {
        Event::Pitch(_)
        | Event::InPlay(_)
        | Event::Running(_)
        | Event::IntentionalWalk
        | Event::Unseen(_)
        | Event::EmptyPlace
        | Event::OutOfTurnAppeal => Was::Play,
        Event::Change { .. } | Event::BatterUp { .. } | Event::PlaceRunner { .. } => Was::Change,
        Event::Judgment(_) => Was::Judgment,
        _ => Was::Other,
    }
}

/// An entry that is no play; `None` for what the Card tells.
pub(super) fn event(event: &Event) -> Option<Told> {
    if super::is_paperwork(event) {
        return None;
    }
    Some(match event {
        Event::Change { side, change: Change::Substitute { outgoing, incoming, role } } => {
            Told::Substituted { side: *side, outgoing: *outgoing, incoming: *incoming, role: *role }
        }
        Event::Change { side, change } => Told::Changed { side: *side, change: change.clone() },
        Event::BatterUp { player } => Told::BatterUp { player: *player },
        Event::OutOfTurnAppeal => Told::Appealed,
        Event::SetCount(count) => Told::CountSet(*count),
        Event::PlaceRunner { base, player } => Told::Placed { player: *player, base: *base },
        Event::EndHalf { why } => Told::HalfEnded { why: why.clone() },
        Event::Status(status) => Told::State(status.clone()),
        Event::Protest { text } => Told::Protest { text: text.clone() },
        Event::Note { text } => Told::Note { text: text.clone() },
        Event::Judgment(judgment) => Told::Judged(judgment.clone()),
        _ => return None,
    })
}

/// A play; empty for a pitch on which nothing else happened.
pub(super) fn play(play: &Play, judged: &Judged) -> Vec<Told> {
    let mut told = Vec::new();
    let mut told_errors = Vec::new();
    if let Some(turn) = play.turn {
        match (turn.kind, turn.batter, judged.result.as_ref().map(|r| r.verdict)) {
            (TurnKind::EmptyPlace, ..) => told.push(Told::EmptyPlace { place: turn.place + 1 }),
            (TurnKind::OutOfTurn, Some(batter), _) => told.push(Told::OutOfTurn { batter }),
            (_, Some(batter), Some(result)) => at_bat(play, judged, batter, result, &mut told, &mut told_errors),
            _ => {}
        }
    }
    for m in play.moves.iter().filter(|m| m.from != Start::Batter) {
        legs(play, m, &m.legs, &mut told, &mut told_errors);
        out_on_bases(m, &mut told);
    }
    for (_, misplay) in play.misplays.iter().enumerate().filter(|(i, _)| !told_errors.contains(i)) {
        told.push(Told::Erred { fielder: play.defence.at(misplay.by), position: misplay.by, kind: misplay.kind });
    }
    let batter_double_play = told.iter().any(|t| matches!(t, Told::Batted { double_play: true, .. }));
    let multiple = judged.credits.iter().find_map(|(_, ruling)| match ruling.because {
        Because::TookPart(outs) => Some(outs),
        _ => None,
    });
    if let Some(outs) = multiple.filter(|_| !batter_double_play) {
        told.push(Told::MultiplePlay { outs });
    }
    if play.nullified {
        told.push(Told::Undone);
    }
    told
}

fn at_bat(
    play: &Play,
    judged: &Judged,
    batter: PlayerId,
    result: BatterResult,
    told: &mut Vec<Told>,
    told_errors: &mut Vec<usize>,
) {
    let own = play.batter_move();
    let first = own.and_then(|m| m.legs.first());
    let first_error = first.and_then(|leg| error_of(play, *leg));
    match &play.batted {
        None => told.push(Told::AtPlate { batter, result }),
        Some(batted) => {
            if let Some((i, _)) = first_error {
                told_errors.push(i);
            }
            let out = own.filter(|m| m.legs.is_empty()).and_then(|m| m.out.as_ref());
            told.push(Told::Batted {
                batter,
                result,
                ball: ball(batted),
                how: out.map(|o| o.how),
                by: if judged.grounded_into_double_play.is_some() {
                    whole_chain(play)
                } else {
                    out.map(|o| o.by.clone()).unwrap_or_default()
                },
                double_play: judged.grounded_into_double_play.is_some(),
                misplay: first_error.map(|(_, m)| m.kind),
            });
        }
    }
    let Some(own) = own else { return };
    // The first leg is told with the result; where that counts for fewer bases than were run, so is what lies beyond.
    let told_leg = usize::from(play.batted.is_some() || first.is_some_and(|leg| leg.cause == Cause::Forced));
    legs(play, own, own.legs.get(told_leg..).unwrap_or_default(), told, told_errors);
    if !own.legs.is_empty() {
        out_on_bases(own, told);
    }
}

/// The chain of a double play as one: 6-4 and 4-3 are 6-4-3.
pub(crate) fn whole_chain(play: &Play) -> Vec<Position> {
    let outs: Vec<&[Position]> = play.moves.iter().filter_map(|m| m.out.as_ref()).map(|o| &o.by[..]).collect();
    let joined = |first: &[Position], then: &[Position]| -> Vec<Position> {
        let overlap = (0..=then.len().min(first.len())).rev().find(|n| first.ends_with(&then[..*n])).unwrap_or(0);
        [first, &then[overlap..]].concat()
    };
    match outs[..] {
        // Which out came first shows in the chains: the shorter way to say both.
        [a, b] => {
            let (ab, ba) = (joined(a, b), joined(b, a));
            if ba.len() < ab.len() { ba } else { ab }
        }
        _ => outs.into_iter().fold(Vec::new(), |chain, by| joined(&chain, by)),
    }
}

fn legs(play: &Play, m: &Moved, legs: &[Leg], told: &mut Vec<Told>, told_errors: &mut Vec<usize>) {
    for leg in legs {
        let error = error_of(play, *leg);
        if let Some((i, _)) = error {
            told_errors.push(i);
        }
        let error = error.map(|(_, misplay)| (misplay.by, misplay.kind));
        told.push(Told::Gains { runner: m.runner, to: leg.to, cause: leg.cause, error });
    }
}

fn error_of(play: &Play, leg: Leg) -> Option<(usize, &Misplay)> {
    match leg.cause {
        Cause::Error(i) => play.misplays.get(usize::from(i)).map(|m| (usize::from(i), m)),
        _ => None,
    }
}

fn out_on_bases(m: &Moved, told: &mut Vec<Told>) {
    if let Some(out) = &m.out {
        told.push(Told::OutOnBases {
            runner: m.runner,
            at: out.at,
            how: out.how,
            by: out.by.clone(),
            attempt: out.attempt,
        });
    }
}

fn ball(batted: &Batted) -> Ball {
    Ball {
        trajectory: batted.trajectory,
        toward: batted.fielders.first().copied().or_else(|| batted.spot.map(nearest)),
        foul: batted.foul,
        left_park: batted.left_park,
        infield_fly: batted.infield_fly,
    }
}

/// The position nearest to a spot, where nobody handled the ball. Depths are common practice, no source.
pub(crate) fn nearest(spot: Spot) -> Position {
    const AT: [(Position, i32, i32); 9] = [
        (Position::Pitcher, 0, 67),
        (Position::Catcher, 0, -5),
        (Position::FirstBase, 72, 85),
        (Position::SecondBase, 40, 130),
        (Position::ThirdBase, -72, 85),
        (Position::Shortstop, -40, 130),
        (Position::LeftField, -160, 245),
        (Position::CenterField, 0, 320),
        (Position::RightField, 160, 245),
    ];
    let far = |x: i32, y: i32| (x - i32::from(spot.x)).pow(2) + (y - i32::from(spot.y)).pow(2);
    AT.into_iter().min_by_key(|(_, x, y)| far(*x, *y)).map_or(Position::Pitcher, |(position, ..)| position)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_ball_nobody_touched_went_to_somebody() {
        assert_eq!(nearest(Spot { x: -190, y: 260 }), Position::LeftField);
        assert_eq!(nearest(Spot { x: 10, y: 60 }), Position::Pitcher);
        assert_eq!(nearest(Spot { x: 0, y: 420 }), Position::CenterField);
    }
}
