//! Numbers that are sums over plays rather than rulings: innings, pitches, runners left on base.

use super::{Evidence, Pitching};
use crate::account::{Account, Grounds, Reason, Ruled};
use crate::field::{Half, Position, Side};
use crate::game::{Game, HalfInning, Play};
use crate::lines::left_by;
use crate::log::EntryId;
use crate::ruling::Because;
use crate::team::PlayerId;

/// Where the rules have no section: it is the custom of box scores.
const CUSTOM: &str = "custom";

fn evidence(entry: EntryId, ruled: Ruled, amount: u32, because: Because, rule: &'static str) -> Evidence {
    let because = Grounds::Ruling(because);
    Evidence { entry, reason: Reason { ruled, because, rests_on: Vec::new(), rule, entry }, amount }
}

fn outs(play: &Play, player: PlayerId, position: Position, rule: &'static str) -> Option<Evidence> {
    let outs = play.outs();
    let ruled = Ruled::Outs { player, position, outs };
    (outs > 0).then(|| evidence(play.entry, ruled, outs.into(), Because::AtHisPost, rule))
}

/// The outs that are a pitcher's innings (OBR 9.02(c)(1)).
pub(super) fn outs_pitched(game: &Game, who: PlayerId) -> Vec<Evidence> {
    let pitched = game.plays().filter(|play| play.before.pitcher == Some(who));
    pitched.filter_map(|play| outs(play, who, Position::Pitcher, "9.02(c)(1)")).collect()
}

/// The outs made while a player was in the field, each at the post he then had.
pub(super) fn outs_in_field(game: &Game, who: PlayerId) -> Vec<Evidence> {
    let posts = |play: &Play| play.defence.players().find(|(_, player)| *player == who).map(|(position, _)| position);
    game.plays().filter_map(|play| outs(play, who, posts(play)?, CUSTOM)).collect()
}

/// Pitches, or the balls or strikes among them, a turn at the plate together.
pub(super) fn pitches(game: &Game, account: &Account, who: PlayerId, what: Pitching) -> Vec<Evidence> {
    type Turn = (u8, Half, u8, Option<PlayerId>);
    let mut turns: Vec<(Turn, EntryId, u32, u32)> = Vec::new();
    for play in game.plays().filter(|play| play.before.pitcher == Some(who)) {
        let Some(thrown) = play.thrown.filter(|t| t.is_thrown()) else { continue };
        let before = play.before;
        let turn = (before.inning, before.half, before.place, before.batter);
        let (ball, strike) = (u32::from(!thrown.is_strike()), u32::from(thrown.is_strike()));
        match turns.last_mut().filter(|(same, ..)| *same == turn) {
            Some((_, last, balls, strikes)) => {
                (*last, *balls, *strikes) = (play.entry, *balls + ball, *strikes + strike);
            }
            None => turns.push((turn, play.entry, ball, strike)),
        }
    }
    let told = |((.., batter), last, balls, strikes): (Turn, EntryId, u32, u32)| {
        let amount = match what {
            Pitching::Balls => balls,
            Pitching::Strikes => strikes,
            _ => balls + strikes,
        };
        let entry = account.line(last).map_or(last, |line| line.entry);
        let ruled = Ruled::Pitches { pitcher: who, batter, balls, strikes };
        evidence(entry, ruled, amount, Because::Pitched, CUSTOM)
    };
    turns.into_iter().map(told).filter(Evidence::counts).collect()
}

/// Runners whom a batter's outs left on base.
pub(super) fn left_by_batter(game: &Game, account: &Account, who: PlayerId) -> Vec<Evidence> {
    let left = |reason: &Reason| match reason.ruled {
        Ruled::Result { batter, result } if batter == who => {
            let runners = game.play(reason.entry).map_or(0, |play| left_by(play, result));
            let ruled = Ruled::LeftOnBase { batter: Some(who), runners: runners as u8 };
            (runners > 0).then(|| evidence(reason.entry, ruled, runners, Because::LeftStanding, CUSTOM))
        }
        _ => None,
    };
    account.halves.iter().flat_map(|h| &h.lines).flat_map(|line| &line.reasons).filter_map(left).collect()
}

/// Runners a side left on base, half by half.
pub(super) fn left_by_side(game: &Game, account: &Account, side: Side) -> Vec<Evidence> {
    let left = |half: &HalfInning| {
        let runners = half.left_on_base.unwrap_or_else(|| game.situation().runners().count() as u8);
        let told = account.halves.iter().find(|h| (h.inning, h.half) == (half.inning, half.half));
        let last = told.and_then(|h| h.lines.last()).map(|line| line.entry);
        // Runners placed by rule stand there before anything has happened in the half.
        let begun = || game.steps().get(half.first_step).or(game.steps().last()).map(|step| step.entry);
        let entry = last.or_else(begun)?;
        let ruled = Ruled::LeftOnBase { batter: None, runners };
        (runners > 0).then(|| evidence(entry, ruled, runners.into(), Because::LeftStanding, "9.03(c)"))
    };
    game.halves().iter().filter(|h| h.half.batting() == side).filter_map(left).collect()
}
