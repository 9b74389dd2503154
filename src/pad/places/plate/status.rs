//! The line under the field: what was recorded, why something was refused; between halves, who comes up.

use benchbook_stats::game::Phase;
use leptos::prelude::*;

use super::hand::Hand;
use super::{telling, words};
use crate::live::live;
use crate::place::{Place, Room};
use crate::words::say;

/// Spoken and shown: the refusal, else the last thing recorded.
#[component]
pub fn StatusLine() -> impl IntoView {
    let hand = Hand::get();
    let refusal = hand.scoring.refusal;
    view! {
        <p class="status" role="status" aria-live="polite" data-refused=move || refusal.with(Option::is_some).to_string()>
            {live(move || match refusal.get() {
                Some(why) => view! { <strong>"✕ "{why}</strong> }.into_any(),
                None => view! {
                    <span>{hand.said.get().words}</span>
                    <span class="spoken">". "{hand.said.get().stands}</span>
                }.into_any(),
            })}
        </p>
    }
}

/// Nothing has happened yet in this half: what the last one left, and who comes up. Gone with the first pitch.
#[component]
pub fn Interlude() -> impl IntoView {
    let hand = Hand::get();
    let fresh = Memo::new(move |_| {
        hand.game(|game| {
            let s = game.situation();
            let half = game.halves().last()?;
            let untouched =
                game.plays().next_back().is_some_and(|p| p.before.inning != s.inning || p.before.half != s.half);
            (s.phase == Phase::Underway && untouched && game.halves().len() > 1 && half.inning == s.inning).then(|| {
                let lineup = game.lineup(s.batting());
                let places = lineup.map_or(1, |l| l.places().max(1)) as u8;
                let next = (0..3_u8).filter_map(|i| lineup.and_then(|l| l.batter((s.place + i) % places)));
                let names = telling::list(next.map(|id| words::short(&game.label(id)).to_owned()));
                (words::interlude(game, s), say!("plate-coming-up", names = names))
            })
        })
    });
    live(move || {
        fresh.get().map(|(when, next)| {
            view! {
                <div class="interlude">
                    <b>{when}</b>
                    <span>{next}</span>
                </div>
            }
        })
    })
}

/// What stands where the pitches are while play is not on.
#[component]
pub fn NoPlay() -> impl IntoView {
    let hand = Hand::get();
    let link = move |room: Room| Place::Game(hand.scoring.id.get_value(), room).hash();
    let phase = move || hand.situation.get().phase;
    live(move || match phase() {
        Phase::Before => view! {
            <section class="no-play">
                <p>{say!("plate-not-begun")}</p>
                <a class="button" href=link(Room::Card)>{say!("plate-to-the-card")}</a>
                <button type="button" class="main" on:click=move |_| {
                    hand.record_plain(benchbook_stats::log::Event::PlayBall);
                }>{say!("plate-play-ball")}</button>
            </section>
        }
        .into_any(),
        Phase::Over(ending) => view! {
            <section class="no-play">
                <p class="final">{live(move || hand.game(|game| words::over(ending, game)))}</p>
                <a class="button main" href=link(Room::Book)>{say!("plate-to-the-book")}</a>
            </section>
        }
        .into_any(),
        stopped => view! {
            <section class="no-play">
                <p>{words::stopped(stopped)}</p>
                <button type="button" class="main" on:click=move |_| {
                    hand.record_plain(benchbook_stats::log::Event::Status(benchbook_stats::log::Status::Resumed));
                }>{say!("plate-resume")}</button>
            </section>
        }
        .into_any(),
    })
}

/// The place in the order whose turn it is has no player.
#[component]
pub fn EmptyPlace() -> impl IntoView {
    let hand = Hand::get();
    view! {
        <section class="no-play">
            <p>{say!("plate-no-player")}</p>
            <button type="button" class="main" on:click=move |_| {
                hand.record_plain(benchbook_stats::log::Event::EmptyPlace);
            }>{say!("plate-empty-place-out")}</button>
        </section>
    }
}
