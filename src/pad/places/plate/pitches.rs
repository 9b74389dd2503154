//! The pitches: one tap each, under the thumb.

use benchbook_stats::log::{Call, Event};
use benchbook_stats::propose;
use leptos::prelude::*;

use super::gesture::Gesture;
use super::hand::Hand;
use super::notes::NotesSwitch;
use super::words;
use crate::live::Shown;
use crate::words::say;

/// Ball, called, swinging, foul; the rest is behind "More".
#[component]
pub fn Pitches() -> impl IntoView {
    let hand = Hand::get();
    let got_away = Memo::new(move |_| hand.game(|game| !propose::strike_three_got_away(game).is_empty()));
    view! {
        <section class="pitches" aria-label=say!("plate-pitches")>
            {Call::COMMON.map(|call| view! { <PitchButton call=call/> })}
            <button type="button" class="pitch more" on:click=move |_| hand.go(Gesture::MorePitches)>
                <b>{say!("plate-more")}</b>
                <span>"…"</span>
            </button>
            <Shown
                when=move || got_away.get()
                fallback=|| view! { <p class="hint">{say!("plate-in-play-hint")}</p> }
            >
                <button type="button" class="got-away main" on:click=move |_| hand.go(Gesture::GotAway)>
                    {say!("plate-got-away")}
                </button>
            </Shown>
        </section>
    }
}

/// The rarer pitches.
#[component]
pub fn MorePitches() -> impl IntoView {
    let hand = Hand::get();
    view! {
        <section class="more-pitches" aria-label=say!("plate-pitches")>
            <button type="button" class="back" on:click=move |_| hand.cancel()>{say!("plate-back")}</button>
            {Call::RARE.map(|call| view! { <PitchButton call=call/> })}
            <button type="button" class="pitch" on:click=move |_| {
                hand.record_plain(Event::IntentionalWalk);
            }>
                <b>{say!("plate-intentional-walk")}</b>
                <span>{say!("plate-small-no-pitch")}</span>
            </button>
            <NotesSwitch/>
        </section>
    }
}

#[component]
fn PitchButton(
    /// Which.
    call: Call,
) -> impl IntoView {
    let hand = Hand::get();
    let (large, small) = words::call(call);
    view! {
        <button
            type="button"
            class="pitch"
            data-call=format!("{call:?}")
            aria-keyshortcuts=words::key_of(call)
            on:click=move |event| {
                if !hand.is_echo(&event) {
                    hand.pitch(call);
                }
            }
        >
            <b>{large}</b>
            {small.map(|small| view! { <span>{small}</span> })}
        </button>
    }
}
