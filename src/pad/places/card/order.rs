//! The batting order and those who field only: number, name and post of each.

use benchbook_stats::field::{Post, Side};
use benchbook_stats::log::Event;
use benchbook_stats::team::{Player, PlayerId};
use leptos::prelude::*;

use super::about::About;
use super::player::PlayerFields;
use super::{Desk, edit, words};
use crate::live::{Shown, live};
use crate::places::label;
use crate::words::say;

/// The order: batters now in the game, by place.
#[component]
pub fn Order(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let players = Memo::new(move |_| desk.card(side).order.iter().map(|a| a.player).collect::<Vec<_>>());
    view! {
        <ol class="order">
            <For each=move || players.get() key=|id| *id let:id>
                <Row side=side id=id/>
            </For>
        </ol>
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
    let place = Memo::new(move |_| desk.card(side).order.iter().position(|a| a.player == id).unwrap_or(0));
    let stand_in = Signal::derive(move || say!("frame-batter", place = place.get() + 1));
    view! {
        <li>
            <span class="place" aria-hidden="true">{live(move || place.get() + 1)}</span>
            <PlayerFields side=side id=id stand_in=stand_in/>
            <PostOf side=side id=id/>
            <About side=side id=id/>
        </li>
    }
}

/// The post: to choose before play, to read afterwards.
#[component]
fn PostOf(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
) -> impl IntoView {
    let desk = Desk::get();
    let post = Memo::new(move |_| desk.card(side).everyone().find(|a| a.player == id).map(|a| a.post));
    let posts = Memo::new(move |_| desk.scoring.game.with(|game| edit::posts(&edit::card_of(game, side), game.code())));
    let whom = move || desk.scoring.game.with(|game| label(game, id));
    let choose = move |event: web_sys::Event| {
        let chosen =
            event_target_value(&event).parse::<usize>().ok().and_then(|i| posts.get_untracked().get(i).copied());
        if let Some(chosen) = chosen {
            put_post(desk, side, id, chosen);
        }
    };
    view! {
        <Shown
            when=move || desk.before.get()
            fallback=move || view! { <span class="post">{live(move || post.get().map(words::post))}</span> }
        >
            <select class="post" aria-label=move || say!("card-plays-of", whom = whom()) on:change=choose>
                {live(move || {
                    posts
                        .get()
                        .into_iter()
                        .enumerate()
                        .map(|(i, p)| {
                            let chosen = move || post.get() == Some(p);
                            view! { <option value=i selected=chosen prop:selected=chosen>{words::post(p)}</option> }
                        })
                        .collect_view()
                })}
            </select>
        </Shown>
    }
}

/// A new post; a designated hitter brings along the player for whom he bats.
fn put_post(desk: Desk, side: Side, id: PlayerId, post: Post) {
    let card = desk.scoring.game.with_untracked(|game| edit::card_of(game, side));
    let fields = card.order.iter().any(|a| a.player == id && a.post.position().is_some());
    if post != Post::DesignatedHitter || !fields {
        desk.put_card(side, edit::with_post(card, id, post));
        return;
    }
    let fielder = desk.scoring.game.with_untracked(benchbook_stats::game::Game::next_player_id);
    if desk.tap(Event::Player { side, player: Player::unnamed(fielder) }) {
        desk.put_card(side, edit::with_designated_hitter(card, id, fielder));
    }
}

/// Players for whom a designated hitter bats.
#[component]
pub fn FieldsOnly(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let players = Memo::new(move |_| desk.card(side).fielding_only.iter().map(|a| a.player).collect::<Vec<_>>());
    view! {
        <Shown when=move || players.with(|p| !p.is_empty())>
            <h2>{say!("card-fields-only")}</h2>
            <ul class="order">
                <For each=move || players.get() key=|id| *id let:id>
                    <li>
                        <span class="place" aria-hidden="true">"–"</span>
                        <PlayerFields
                            side=side
                            id=id
                            stand_in=Signal::derive(move || desk.scoring.game.with(|game| label(game, id)))
                        />
                        <PostOf side=side id=id/>
                        <About side=side id=id/>
                    </li>
                    <Shown when=move || desk.before.get()>
                        <li class="below">
                            <button
                                type="button"
                                class="quiet"
                                on:click=move |_| desk.put_card(side, edit::without(desk.card(side), id))
                            >
                                {say!("card-no-designated-hitter")}
                            </button>
                        </li>
                    </Shown>
                </For>
            </ul>
        </Shown>
    }
}
