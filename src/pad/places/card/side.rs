//! One side's card: its name, its order, who fields only, its bench.

use benchbook_stats::field::Side;
use benchbook_stats::log::Event;
use leptos::prelude::*;

use super::bench::Bench;
use super::known::Known;
use super::order::{FieldsOnly, Order};
use super::player::written;
use super::reorder::Reorder;
use super::{Desk, edit, words};
use crate::live::{Shown, live};
use crate::places::team_name;
use crate::words::say;

/// One side.
#[component]
pub fn SideCard(
    /// Which.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let has_card = Memo::new(move |_| desk.scoring.game.with(|game| game.lineup(side).is_some()));
    let reordering = RwSignal::new(false);
    view! {
        <section class="side" aria-label=words::side(side)>
            <TeamName side=side/>
            <Known side=side/>
            <Shown when=move || has_card.get() fallback=move || view! { <NoCard side=side/> }>
                <Shown
                    when=move || reordering.get() && desk.before.get()
                    fallback=move || view! { <Order side=side/> }
                >
                    <Reorder side=side/>
                </Shown>
                <Shown when=move || desk.before.get()>
                    <Tools side=side reordering=reordering/>
                </Shown>
                <FieldsOnly side=side/>
            </Shown>
            <Bench side=side/>
            <AboutSwitch/>
        </section>
    }
}

/// Shows hands and ages, on both cards.
#[component]
fn AboutSwitch() -> impl IntoView {
    let desk = Desk::get();
    view! {
        <button
            type="button"
            aria-pressed=move || desk.about.get().to_string()
            on:click=move |_| desk.about.update(|about| *about = !*about)
        >
            {say!("card-about")}
        </button>
        <Shown when=move || desk.about.get()>
            <p class="soft small">{say!("card-about-hint")}</p>
        </Shown>
    }
}

#[component]
fn TeamName(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let name = Memo::new(move |_| desk.scoring.game.with(|game| team_name(game, side)));
    let put = move |event: web_sys::Event| {
        let text = written(&event_target_value(&event));
        if text != name.get_untracked() {
            desk.tap(Event::Team { side, name: text });
        }
    };
    view! {
        <label class="team-name">
            <span class="says">{words::side(side)}</span>
            <input maxlength="40" autocomplete="off" aria-label=say!("card-team-name-of", side = words::side(side)) prop:value=name on:change=put/>
        </label>
    }
}

#[component]
fn NoCard(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let fill = move |_| {
        let (players, card) = desk.scoring.game.with_untracked(edit::numbered);
        let all = players.into_iter().all(|player| desk.tap(Event::Player { side, player }));
        if all {
            desk.put_card(side, card);
        }
    };
    view! {
        <p class="soft">{say!("card-no-lineup")}</p>
        <Shown when=move || desk.before.get()>
            <button type="button" class="main" on:click=fill>{say!("card-fill-in-numbered")}</button>
            <p class="soft small">{say!("card-fill-in-later")}</p>
        </Shown>
    }
}

#[component]
fn Tools(
    /// Whose.
    side: Side,
    /// The order is being changed.
    reordering: RwSignal<bool>,
) -> impl IntoView {
    let desk = Desk::get();
    let most = Memo::new(move |_| desk.scoring.game.with(|game| edit::most_batters(game.code())));
    let full = Memo::new(move |_| desk.card(side).order.len() >= most.get());
    let add = move |_| {
        let player = desk.scoring.game.with_untracked(benchbook_stats::game::Game::next_player_id);
        if desk.tap(Event::Player { side, player: benchbook_stats::team::Player::unnamed(player) }) {
            let card = desk
                .scoring
                .game
                .with_untracked(|game| edit::with_batter(edit::card_of(game, side), player, game.code()));
            desk.put_card(side, card);
        }
    };
    view! {
        <p class="tools">
            <button
                type="button"
                aria-pressed=move || reordering.get().to_string()
                on:click=move |_| reordering.update(|r| *r = !*r)
            >
                {live(move || if reordering.get() { say!("card-reorder-done") } else { say!("card-reorder") })}
            </button>
            <button type="button" disabled=move || full.get() on:click=add>{say!("card-add-batter")}</button>
        </p>
        <Shown when=move || full.get()>
            <p class="soft small">{live(move || say!("card-most-batters", most = most.get()))}</p>
        </Shown>
    }
}
