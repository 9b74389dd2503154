//! Changes of players that the rules allow at a moment.

use crate::field::{Post, Side};
use crate::game::{Game, Situation};
use crate::log::Event;
use crate::order::put_in_order;
use crate::team::{Assignment, Change, PlayerId, Role};

/// Roster players who are not in the game, each with whether they have been; those who have not come first.
pub fn bench(game: &Game, side: Side) -> Vec<(PlayerId, bool)> {
    let Some(lineup) = game.lineup(side) else { return Vec::new() };
    let was_in = |id: PlayerId| lineup.appearances().iter().any(|a| a.player == id && a.left);
    let out = game.roster(side).map(|player| player.id).filter(|id| !lineup.contains(*id));
    let mut list: Vec<_> = out.map(|id| (id, was_in(id))).collect();
    put_in_order(&mut list, |a, b| !a.1 && b.1);
    list
}

/// What can become of a player of `side` now: who can come in, with whom they can change places, that they leave. Where
/// they are no longer in the game, nothing.
pub fn changes(game: &Game, side: Side, player: PlayerId) -> Vec<Change> {
    let Some(lineup) = game.lineup(side) else { return Vec::new() };
    let Some(post) = lineup.post_of(player) else { return Vec::new() };
    let roles = roles(game, side, player, post);
    let substitutes = bench(game, side).into_iter().flat_map(|(incoming, _)| {
        roles.iter().map(move |role| Change::Substitute { outgoing: player, incoming, role: *role })
    });
    let others = lineup.everyone().filter(|other| other.player != player && other.post != post);
    let swaps = others.map(|other| {
        let to = vec![Assignment { player, post: other.post }, Assignment { player: other.player, post }];
        Change::Shift { to }
    });
    let hitter = lineup.everyone().find(|a| a.post == Post::DesignatedHitter);
    let fields_only = lineup.fielding_only().iter().any(|a| a.player == player);
    let bats =
        hitter.filter(|_| fields_only).map(|a| Change::EndDesignatedHitter { batter: player, replaces: a.player });
    let leaves = Change::Leave { player };
    let all = substitutes.chain(swaps).chain(bats).chain([leaves]);
    all.filter(|change| game.could_follow(&Event::Change { side, change: change.clone() })).collect()
}

/// In which parts somebody can come in for them.
fn roles(game: &Game, side: Side, player: PlayerId, post: Post) -> Vec<Role> {
    let s: &Situation = game.situation();
    if side == s.batting() && s.batter == Some(player) {
        vec![Role::PinchHitter]
    } else if side == s.batting() && s.runners().any(|(_, r)| r.player == player) {
        vec![Role::PinchRunner, Role::CourtesyRunner]
    } else {
        vec![Role::Fielder(post)]
    }
}
