//! Putouts and assists (OBR 9.09, 9.10), double and triple plays (OBR 9.11), errors (OBR 9.12).

use super::{BatterResult, Because, Judged, Ruling, batter};
use crate::field::Position;
use crate::game::{Play, TurnKind};
use crate::log::{EntryId, How, MisplayKind, Out};

mod between;
mod reason;

pub(super) use between::error_between_outs;

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

/// The credits of one play as they are given out.
struct Credits {
    entry: EntryId,
    given: Vec<(Position, Ruling<Credit>)>,
}

impl Credits {
    fn give(&mut self, to: Position, verdict: Credit, (because, rule): (Because, &'static str)) {
        self.given.push((to, Ruling { verdict, because, rule, entry: self.entry }));
    }

    /// One assist a fielder for one out, however often he handled the ball (OBR 9.10(a)).
    fn assists(&mut self, before: &[Position], grounds: (Because, &'static str)) {
        for (i, position) in before.iter().enumerate() {
            if !before[..i].contains(position) {
                self.give(*position, Credit::Assist, grounds);
            }
        }
    }

    fn has_error(&self, of: Position) -> bool {
        self.given.iter().any(|(position, ruling)| *position == of && ruling.verdict == Credit::Error)
    }
}

pub(super) fn rule(play: &Play, result: Option<&Ruling<BatterResult>>) -> Vec<(Position, Ruling<Credit>)> {
    let mut credits = Credits { entry: play.entry, given: Vec::new() };
    if play.nullified {
        return credits.given;
    }
    for out in play.moves.iter().filter_map(|m| m.out.as_ref()) {
        let by = chain(play, out);
        if let Some((putout, before)) = by.split_last() {
            credits.assists(before, reason::assist(out));
            credits.give(*putout, Credit::Putout, reason::putout(play, out, by));
        }
    }
    let judged = result.filter(|r| r.because == Because::Judged).map(|r| r.verdict);
    let overruled = judged.and_then(|_| batter::own_error(play)).map(usize::from);
    for (i, misplay) in play.misplays.iter().enumerate().filter(|(i, _)| Some(*i) != overruled) {
        credits.assists(&misplay.after, (Because::ThrewInVain, "9.10(a)(1)"));
        credits.give(misplay.by, Credit::Error, reason::error(play, i, misplay));
    }
    if let Some(BatterResult::ReachedOnError(by)) = judged
        && !credits.has_error(by)
    {
        credits.give(by, Credit::Error, (Because::Judged, "9.12(a)(1)"));
    }
    let interference = play.turn.is_some_and(|t| t.kind == TurnKind::CatcherInterference)
        && !play.misplays.iter().any(|m| m.kind == MisplayKind::Interference);
    if interference {
        credits.give(Position::Catcher, Credit::Error, (Because::CatcherInterference, "9.12(c)"));
    }
    credits.given
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

/// Double and triple plays: two or three outs from a pitch to the next dead ball with no error between them.
pub(super) fn multiple_plays(plays: &[&Play], judged: &mut [Judged]) {
    let mut start = 0;
    while start < plays.len() {
        let mut end = start + 1;
        while end < plays.len() && plays[end].continues {
            end += 1;
        }
        let outs: u8 = plays[start..end].iter().map(|p| p.outs()).sum();
        let void = |i: usize| batter::void_error(plays[i], judged[i].result.as_ref().map(|r| r.verdict));
        let void: Vec<Option<u8>> = (start..end).map(void).collect();
        if outs >= 2 && !error_between_outs(&plays[start..end], &void) {
            let credit = if outs == 2 { Credit::DoublePlay } else { Credit::TriplePlay };
            let mut took_part: Vec<Position> = judged[start..end]
                .iter()
                .flat_map(|j| &j.credits)
                .filter(|(_, ruling)| matches!(ruling.verdict, Credit::Putout | Credit::Assist))
                .map(|(position, _)| *position)
                .collect();
            took_part.sort_unstable();
            took_part.dedup();
            let mut credits = Credits { entry: plays[end - 1].entry, given: Vec::new() };
            for position in took_part {
                credits.give(position, credit, (Because::TookPart(outs), "9.11"));
            }
            judged[end - 1].credits.append(&mut credits.given);
        }
        start = end;
    }
}
