//! Putouts and assists (OBR 9.09, 9.10), double and triple plays (OBR 9.11), errors (OBR 9.12).

use super::{BatterResult, Because, Judged, Ruling};
use crate::field::Position;
use crate::game::{Play, TurnKind};
use crate::log::{Cause, How, MisplayKind, Out, Start};

/// What a fielder is credited with or charged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Credit {
    /// Putout.
    Putout,
    /// Assist.
    Assist,
    /// Error.
    Error,
    /// Took part in a double play.
    DoublePlay,
    /// Took part in a triple play.
    TriplePlay,
}

pub(super) fn rule(play: &Play, result: Option<&Ruling<BatterResult>>) -> Vec<(Position, Credit)> {
    let mut credits = Vec::new();
    if play.nullified {
        return credits;
    }
    for out in play.moves.iter().filter_map(|m| m.out.as_ref()) {
        let by = chain(play, out);
        if let Some((putout, before)) = by.split_last() {
            assists(before, &mut credits);
            credits.push((*putout, Credit::Putout));
        }
    }
    let judged = result.filter(|r| r.because == Because::Judged).map(|r| r.verdict);
    let overruled = judged.and_then(|_| batters_error(play));
    for (_, misplay) in play.misplays.iter().enumerate().filter(|(i, _)| Some(*i) != overruled) {
        assists(&misplay.after, &mut credits);
        credits.push((misplay.by, Credit::Error));
    }
    if let Some(BatterResult::ReachedOnError(by)) = judged
        && !credits.contains(&(by, Credit::Error))
    {
        credits.push((by, Credit::Error));
    }
    let interference = play.turn.is_some_and(|t| t.kind == TurnKind::CatcherInterference)
        && !play.misplays.iter().any(|m| m.kind == MisplayKind::Interference);
    if interference {
        credits.push((Position::Catcher, Credit::Error));
    }
    credits
}

/// The error by which the entry says the batter reached, if it did nothing else: who is charged, and whether anybody is,
/// goes by the scorer's judgment of how he reached (OBR 9.12(a)(1)).
fn batters_error(play: &Play) -> Option<usize> {
    let first = play.batter_move()?.legs.first()?;
    let Cause::Error(by_error) = first.cause else { return None };
    let uses = play.moves.iter().flat_map(|m| m.legs.iter().map(move |leg| (m.from, leg)));
    let only =
        uses.filter(|(_, leg)| leg.cause == first.cause).all(|(from, leg)| from == Start::Batter && leg == first);
    only.then_some(usize::from(by_error))
}

/// One assist a fielder for one out, however often he handled the ball (OBR 9.10(a)).
fn assists(before: &[Position], credits: &mut Vec<(Position, Credit)>) {
    for (i, position) in before.iter().enumerate() {
        if !before[..i].contains(position) {
            credits.push((*position, Credit::Assist));
        }
    }
}

/// Who made the out; where the scorer named nobody, the fielder the rule names (OBR 9.09(b), (c)).
fn chain<'a>(play: &'a Play, out: &'a Out) -> &'a [Position] {
    const CATCHER: &[Position] = &[Position::Catcher];
    if !out.by.is_empty() {
        return &out.by;
    }
    let batted = play.batted.as_ref().map_or(&[][..], |b| &b.fielders[..]);
    match out.how {
        How::Strikeout | How::OutOfTurn => CATCHER,
        // A bunt fouled with two strikes, or interference with the catcher.
        _ if batted.is_empty() => CATCHER,
        How::Fly | How::HitByBall | How::Interference => &batted[..1],
        _ => &batted[batted.len() - 1..],
    }
}

/// Double and triple plays: two or three outs from a pitch to the next dead ball with no error between.
pub(super) fn multiple_plays(plays: &[&Play], judged: &mut [Judged]) {
    let mut start = 0;
    while start < plays.len() {
        let mut end = start + 1;
        while end < plays.len() && plays[end].continues {
            end += 1;
        }
        let outs: u8 = plays[start..end].iter().map(|p| p.outs()).sum();
        let clean = plays[start..end].iter().all(|p| p.misplays.is_empty());
        if outs >= 2 && clean {
            let credit = if outs == 2 { Credit::DoublePlay } else { Credit::TriplePlay };
            let mut took_part: Vec<Position> = judged[start..end]
                .iter()
                .flat_map(|j| &j.credits)
                .filter(|(_, c)| matches!(c, Credit::Putout | Credit::Assist))
                .map(|(position, _)| *position)
                .collect();
            took_part.sort_unstable();
            took_part.dedup();
            judged[end - 1].credits.extend(took_part.into_iter().map(|p| (p, credit)));
        }
        start = end;
    }
}
