//! Changes of players and posts that the code of play allows.

use benchbook_stats::code::Reentry;
use benchbook_stats::field::{Position, Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::team::{Appearance, Assignment, Change, Lineup, PlayerId, Role};

use super::Dice;

/// A legal change, one that leaves the defence to be mended by the next entries included; `None` if chance finds none.
pub(super) fn change(game: &Game, dice: &mut Dice) -> Option<Vec<Event>> {
    let s = game.situation();
    let side = if dice.percent(50) { s.batting() } else { s.fielding() };
    let lineup = game.lineup(side)?;
    let at_bat = side == s.batting();
    let runner = |p: PlayerId| s.runners().any(|(_, r)| r.player == p);
    let substitute =
        |outgoing, incoming, role| Event::Change { side, change: Change::Substitute { outgoing, incoming, role } };
    let one = |event| Some(vec![event]);
    match dice.below(if at_bat { 6 } else { 9 }) {
        // Nobody bats for a player while somebody else stands in his place.
        0 if at_bat => {
            let batter = s.batter.filter(|b| lineup.batter(s.place) == Some(*b))?;
            one(substitute(batter, incoming(game, side, batter, dice)?, Role::PinchHitter))
        }
        1 if at_bat => {
            let on: Vec<PlayerId> = s.runners().map(|(_, r)| r.player).filter(|p| lineup.contains(*p)).collect();
            let who = pick(&on, dice)?;
            one(substitute(who, incoming(game, side, who, dice)?, Role::PinchRunner))
        }
        2 if at_bat && game.code().courtesy_runner => {
            let battery = [Position::Pitcher, Position::Catcher];
            let who = battery.into_iter().filter_map(|p| lineup.at(p)).find(|p| runner(*p))?;
            one(substitute(who, fresh(game, side, dice)?, Role::CourtesyRunner))
        }
        3 if at_bat || dice.percent(30) => leave(game, side, lineup, dice),
        4 if game.code().continuous_order => {
            let post = if dice.percent(70) { Post::ExtraHitter } else { empty_post(game, lineup) };
            one(Event::Change { side, change: Change::Join(Assignment::new(fresh(game, side, dice)?, post)) })
        }
        5 | 0..=2 if !at_bat => {
            let fielders = fielders(lineup);
            let (who, position) = pick(&fielders, dice)?;
            let role = Role::Fielder(position.into());
            one(substitute(who, incoming(game, side, who, dice)?, role))
        }
        6 => pitching_change(game, side, lineup, dice),
        7 => shift(side, lineup, dice),
        8 => {
            let batter = lineup.fielding_only().first()?.player;
            let hitter = lineup.everyone().find(|a| a.post == Post::DesignatedHitter)?.player;
            one(Event::Change { side, change: Change::EndDesignatedHitter { batter, replaces: hitter } })
        }
        _ => None,
    }
}

/// What puts a defence with two players at one position, or without a pitcher, in order.
pub(super) fn mend(game: &Game, dice: &mut Dice) -> Option<Event> {
    let side = game.situation().fielding();
    let lineup = game.lineup(side)?;
    let free = Position::ALL[..usize::from(game.code().fielders)].iter().copied().find(|p| lineup.at(*p).is_none());
    let to = if let Some(clash) = lineup.clash() {
        let who = lineup.everyone().filter(|a| a.post == Post::Fields(clash)).last()?.player;
        vec![Assignment::new(who, free.map_or(Post::ExtraHitter, Post::Fields))]
    } else {
        let (who, _) = pick(&fielders(lineup), dice)?;
        vec![Assignment::new(who, Position::Pitcher)]
    };
    Some(Event::Change { side, change: Change::Shift { to } })
}

fn pick<T: Copy>(list: &[T], dice: &mut Dice) -> Option<T> {
    if list.is_empty() { None } else { Some(dice.pick(list)) }
}

fn fielders(lineup: &Lineup) -> Vec<(PlayerId, Position)> {
    lineup.everyone().filter_map(|a| a.post.position().map(|p| (a.player, p))).collect()
}

fn empty_post(game: &Game, lineup: &Lineup) -> Post {
    let all = &Position::ALL[..usize::from(game.code().fielders)];
    all.iter().copied().find(|p| lineup.at(*p).is_none()).map_or(Post::ExtraHitter, Post::Fields)
}

/// A player who has not been in the game.
fn fresh(game: &Game, side: Side, dice: &mut Dice) -> Option<PlayerId> {
    let lineup = game.lineup(side)?;
    let used: Vec<PlayerId> = lineup.appearances().iter().map(|a| a.player).collect();
    let bench: Vec<PlayerId> = game.roster(side).map(|p| p.id).filter(|id| !used.contains(id)).collect();
    pick(&bench, dice)
}

/// Somebody who may come in for `outgoing`: from the bench, or back again into his own place.
fn incoming(game: &Game, side: Side, outgoing: PlayerId, dice: &mut Dice) -> Option<PlayerId> {
    let lineup = game.lineup(side)?;
    let place = lineup.place_of(outgoing);
    let on_base = |p: PlayerId| game.situation().runners().any(|(_, r)| r.player == p);
    let may_return = |a: &&Appearance| {
        let allowed = match game.code().reentry {
            Reentry::Never => false,
            Reentry::StartersOnce => a.starter && !a.reentered,
            Reentry::Free => true,
        };
        // The place of a courtesy runner is that of the player run for.
        allowed && a.left && !lineup.contains(a.player) && !on_base(a.player) && (place.is_none() || a.place == place)
    };
    let back: Vec<PlayerId> = lineup.appearances().into_iter().filter(may_return).map(|a| a.player).collect();
    if dice.percent(60) && !back.is_empty() { pick(&back, dice) } else { fresh(game, side, dice) }
}

fn leave(game: &Game, side: Side, lineup: &Lineup, dice: &mut Dice) -> Option<Vec<Event>> {
    let s = game.situation();
    let there = lineup.everyone().count();
    if there < 9 {
        return None;
    }
    let pitches = |post| game.code().players_pitch && post == Post::Fields(Position::Pitcher);
    let may: Vec<PlayerId> = lineup
        .everyone()
        .filter(|a| !pitches(a.post) && !s.runners().any(|(_, r)| r.player == a.player))
        .map(|a| a.player)
        .collect();
    Some(vec![Event::Change { side, change: Change::Leave { player: pick(&may, dice)? } }])
}

fn pitching_change(game: &Game, side: Side, lineup: &Lineup, dice: &mut Dice) -> Option<Vec<Event>> {
    let pitcher = lineup.at(Position::Pitcher)?;
    let substitute = |outgoing, incoming, position: Position| Event::Change {
        side,
        change: Change::Substitute { outgoing, incoming, role: Role::Fielder(position.into()) },
    };
    let (other, position) = pick(&fielders(lineup), dice)?;
    if dice.percent(70) || other == pitcher || lineup.place_of(pitcher).is_none() {
        return Some(vec![substitute(pitcher, incoming(game, side, pitcher, dice)?, Position::Pitcher)]);
    }
    // A double switch: two come in, each at the other's position, in two entries.
    let (a, b) = (fresh(game, side, dice)?, fresh(game, side, dice)?);
    (a != b).then(|| vec![substitute(other, a, Position::Pitcher), substitute(pitcher, b, position)])
}

fn shift(side: Side, lineup: &Lineup, dice: &mut Dice) -> Option<Vec<Event>> {
    let fielders = fielders(lineup);
    let ((a, at_a), (b, at_b)) = (pick(&fielders, dice)?, pick(&fielders, dice)?);
    if a == b {
        return None;
    }
    let shift = |to| Event::Change { side, change: Change::Shift { to } };
    if dice.percent(80) {
        return Some(vec![shift(vec![Assignment::new(a, at_b), Assignment::new(b, at_a)])]);
    }
    // One after the other: in between, two stand at one position.
    Some(vec![shift(vec![Assignment::new(a, at_b)]), shift(vec![Assignment::new(b, at_a)])])
}
