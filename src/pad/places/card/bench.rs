//! The bench: players of the side who are not on the card.

use benchbook_stats::field::Side;
use benchbook_stats::game::Game;
use benchbook_stats::log::Event;
use benchbook_stats::team::{Player, PlayerId};
use leptos::prelude::*;

use super::player::PlayerFields;
use super::{Desk, edit, words};

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
            <h2>{words::BENCH}</h2>
            <ul class="order">
                <For each=move || players.get() key=|id| *id let:id>
                    <Row side=side id=id/>
                </For>
            </ul>
            <button type="button" on:click=add>{words::ADD_TO_BENCH}</button>
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
    let label = Signal::derive(move || desk.scoring.game.with(|game| game.label(id)));
    let full = Memo::new(move |_| {
        desk.scoring.game.with(|game| edit::card_of(game, side).order.len() >= edit::most_batters(game.code()))
    });
    let enter = move |_| {
        let card =
            desk.scoring.game.with_untracked(|game| edit::with_batter(edit::card_of(game, side), id, game.code()));
        desk.put_card(side, card);
    };
    view! {
        <li>
            <span class="place" aria-hidden="true">"·"</span>
            <PlayerFields side=side id=id stand_in=label/>
            <Show when=move || desk.before.get()>
                <button
                    type="button"
                    disabled=move || full.get()
                    aria-label=move || words::move_to(&label.get(), words::INTO_THE_ORDER)
                    title=words::INTO_THE_ORDER
                    on:click=enter
                >
                    "▲"
                </button>
            </Show>
        </li>
    }
}
