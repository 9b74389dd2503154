//! The bench: players of the side who are not on the card.

use benchbook_stats::field::{Post, Side};
use benchbook_stats::game::{Game, Phase};
use benchbook_stats::log::Event;
use benchbook_stats::team::{Assignment, Change, Player, PlayerId};
use leptos::prelude::*;

use super::about::About;
use super::player::PlayerFields;
use super::{Desk, edit};
use crate::live::Shown;
use crate::places::label;
use crate::words::say;

/// The bench, and room on it.
#[component]
pub fn Bench(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let players = Memo::new(move |_| desk.scoring.game.with(|game| edit::bench(game, side)));
    let add = move |_| {
        let player = desk.scoring.game.with_untracked(Game::next_player_id);
        desk.tap(Event::Player { side, player: Player::unnamed(player) });
    };
    view! {
        <div class="bench">
            <h2>{say!("card-bench")}</h2>
            <ul class="order">
                <For each=move || players.get() key=|id| *id let:id>
                    <Row side=side id=id/>
                </For>
            </ul>
            <button type="button" on:click=add>{say!("card-add-to-bench")}</button>
        </div>
    }
}

#[component]
fn Row(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
) -> impl IntoView {
    let desk = Desk::get();
    let label = Signal::derive(move || desk.scoring.game.with(|game| label(game, id)));
    let full = Memo::new(move |_| {
        desk.scoring.game.with(|game| edit::card_of(game, side).order.len() >= edit::most_batters(game.code()))
    });
    let enter = move |_| {
        let card =
            desk.scoring.game.with_untracked(|game| edit::with_batter(edit::card_of(game, side), id, game.code()));
        desk.put_card(side, card);
    };
    // Where everyone present bats, somebody who comes late joins the end of the order, also during the game.
    let may_join = Memo::new(move |_| {
        desk.scoring.game.with(|game| {
            let playing = !matches!(game.situation().phase, Phase::Before | Phase::Over(_));
            playing
                && game.code().continuous_order
                && game.lineup(side).is_some_and(|lineup| !lineup.appearances().iter().any(|a| a.player == id))
        })
    });
    let join = move |_| {
        desk.tap(Event::Change { side, change: Change::Join(Assignment { player: id, post: Post::ExtraHitter }) });
    };
    view! {
        <li>
            <span class="place" aria-hidden="true">"·"</span>
            <PlayerFields side=side id=id stand_in=label/>
            <Shown when=move || desk.before.get()>
                <button
                    type="button"
                    disabled=move || full.get()
                    aria-label=move || say!("card-move-into-order", whom = label.get())
                    title=say!("card-into-the-order")
                    on:click=enter
                >
                    "▲"
                </button>
            </Shown>
            <Shown when=move || may_join.get()>
                <button
                    type="button"
                    aria-label=move || say!("card-joins", whom = label.get())
                    title=say!("card-joins-order")
                    on:click=join
                >
                    "▲"
                </button>
            </Shown>
            <About side=side id=id/>
        </li>
    }
}
