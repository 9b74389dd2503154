//! Edits of a lineup card, each a card in and a card out.

use benchbook_stats::code::Code;
use benchbook_stats::field::{Position, Post, Side};
use benchbook_stats::game::Game;
use benchbook_stats::team::{Assignment, Card, Player, PlayerId};

/// The most batters a card takes: an order no team reaches.
pub const MOST_BATTERS: usize = 40;

/// A side's card as the game has it; an empty one if there is none.
pub fn card_of(game: &Game, side: Side) -> Card {
    let Some(lineup) = game.lineup(side) else { return Card::default() };
    let order = lineup.batting_order().filter_map(|(_, player, post)| Some(Assignment { player: player?, post }));
    Card { order: order.collect(), fielding_only: lineup.fielding_only().to_vec() }
}

/// Players of the side who are not on the card.
pub fn bench(game: &Game, side: Side) -> Vec<PlayerId> {
    let card = card_of(game, side);
    game.roster(side).map(|p| p.id).filter(|id| !card.everyone().any(|a| a.player == *id)).collect()
}

/// The card with the batter of one place (from 0) moved to another.
pub fn moved(mut card: Card, from: usize, to: usize) -> Card {
    if from < card.order.len() && to < card.order.len() {
        let batter = card.order.remove(from);
        card.order.insert(to, batter);
    }
    card
}

/// The card with `player` at `post`. Whoever had the post takes the player's old one: on a card two swap.
pub fn with_post(mut card: Card, player: PlayerId, post: Post) -> Card {
    let Some(old) = post_of(&card, player) else { return card };
    for a in card.order.iter_mut().chain(&mut card.fielding_only) {
        if a.player == player {
            a.post = post;
        } else if matches!(post, Post::Fields(_)) && a.post == post {
            a.post = old;
        }
    }
    // A designated hitter is for somebody who only fields: without one, there is none.
    if card.fielding_only.is_empty() {
        for a in &mut card.order {
            if a.post == Post::DesignatedHitter && a.player != player {
                a.post = Post::ExtraHitter;
            }
        }
    }
    card
}

fn post_of(card: &Card, player: PlayerId) -> Option<Post> {
    card.everyone().find(|a| a.player == player).map(|a| a.post)
}

/// The card with `batter` as the designated hitter for `fielder`, who takes the batter's position and does not bat.
pub fn with_designated_hitter(mut card: Card, batter: PlayerId, fielder: PlayerId) -> Card {
    let Some(Post::Fields(position)) = post_of(&card, batter) else { return card };
    for a in &mut card.order {
        if a.player == batter {
            a.post = Post::DesignatedHitter;
        }
    }
    card.fielding_only.push(Assignment::new(fielder, position));
    card
}

/// The card without `player`. The position of one who only fielded goes to the designated hitter.
pub fn without(mut card: Card, player: PlayerId) -> Card {
    let fielded = card.fielding_only.iter().find(|a| a.player == player).map(|a| a.post);
    card.order.retain(|a| a.player != player);
    card.fielding_only.retain(|a| a.player != player);
    let hitter = card.order.iter_mut().find(|a| a.post == Post::DesignatedHitter);
    if let (Some(post), Some(hitter)) = (fielded, hitter) {
        hitter.post = post;
    }
    card
}

/// The card with `player` last in the order, at the first position nobody has, or batting only.
pub fn with_batter(mut card: Card, player: PlayerId, code: &Code) -> Card {
    let post = open_positions(&card, code).first().map_or(Post::ExtraHitter, |p| Post::Fields(*p));
    card.order.push(Assignment { player, post });
    card
}

/// Positions of the code nobody on the card has.
pub fn open_positions(card: &Card, code: &Code) -> Vec<Position> {
    positions(code).filter(|p| card.at(*p).is_none() && (code.players_pitch || *p != Position::Pitcher)).collect()
}

/// The positions of the code.
pub fn positions(code: &Code) -> impl Iterator<Item = Position> {
    Position::ALL.into_iter().take(code.fielders.into())
}

/// Posts a card under this code can give; those already given stay on the list.
pub fn posts(card: &Card, code: &Code) -> Vec<Post> {
    let given = |post| card.everyone().any(|a| a.post == post);
    let mut posts: Vec<Post> = positions(code).map(Post::Fields).collect();
    if code.designated_hitter || given(Post::DesignatedHitter) {
        posts.push(Post::DesignatedHitter);
    }
    if code.continuous_order || code.extra_hitters > 0 || given(Post::ExtraHitter) {
        posts.push(Post::ExtraHitter);
    }
    posts
}

/// Most batters under this code.
pub fn most_batters(code: &Code) -> usize {
    if code.continuous_order { MOST_BATTERS } else { usize::from(code.fielders) + usize::from(code.extra_hitters) }
}

/// A full side of players of whom nothing is known yet, at positions 1, 2, 3 … down the order.
pub fn numbered(game: &Game) -> (Vec<Player>, Card) {
    let first = game.next_player_id().0;
    let order: Vec<Assignment> =
        positions(game.code()).zip(first..).map(|(p, id)| Assignment::new(PlayerId(id), p)).collect();
    let players = order.iter().map(|a| Player::unnamed(a.player)).collect();
    (players, Card { order, fielding_only: Vec::new() })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn nine() -> Card {
        numbered(&Game::new()).1
    }

    fn id(n: u32) -> PlayerId {
        PlayerId(n)
    }

    #[test]
    fn a_batter_moves_and_the_others_close_up() {
        let order = |card: Card| card.order.iter().map(|a| a.player.0).collect::<Vec<_>>();
        assert_eq!(order(moved(nine(), 0, 2)), [2, 3, 1, 4, 5, 6, 7, 8, 9]);
        assert_eq!(order(moved(nine(), 8, 0)), [9, 1, 2, 3, 4, 5, 6, 7, 8]);
        assert_eq!(moved(nine(), 0, 9), nine(), "there is no tenth place");
    }

    #[test]
    fn two_swap_posts() {
        let card = with_post(nine(), id(1), Position::Shortstop.into());
        assert_eq!((card.at(Position::Shortstop), card.at(Position::Pitcher)), (Some(id(1)), Some(id(6))));
    }

    #[test]
    fn a_designated_hitter_comes_and_goes() {
        let card = with_designated_hitter(nine(), id(1), id(10));
        assert_eq!(card.at(Position::Pitcher), Some(id(10)));
        assert_eq!(card.order[0].post, Post::DesignatedHitter);
        assert_eq!(without(card, id(10)), nine());
    }

    #[test]
    fn a_late_batter_takes_the_open_position() {
        let code = Code::default();
        let card = without(nine(), id(6));
        assert_eq!(open_positions(&card, &code), [Position::Shortstop]);
        assert_eq!(with_batter(card, id(12), &code).at(Position::Shortstop), Some(id(12)));
        assert_eq!(with_batter(nine(), id(12), &code).order[9].post, Post::ExtraHitter);
    }

    #[test]
    fn posts_follow_the_code() {
        let mut code = Code { designated_hitter: false, ..Code::default() };
        assert_eq!(posts(&nine(), &code).len(), 9);
        code.continuous_order = true;
        assert_eq!(posts(&nine(), &code).last(), Some(&Post::ExtraHitter));
        assert_eq!(most_batters(&code), MOST_BATTERS);
    }
}
