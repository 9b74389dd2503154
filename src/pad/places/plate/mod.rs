//! The Plate: the scoring place; the diamond, the count, the batter, nothing else.
//!
//! One direction: a touch moves the [`gesture`] on, the gesture has proposals, one of them becomes an event, and
//! [`hand::Hand::record`] hands that to the open game.

use benchbook_stats::game::Phase;
use leptos::prelude::*;

mod adjust;
mod ask;
mod board;
mod drawing;
mod field;
mod geometry;
mod gesture;
mod hand;
mod keys;
mod notes;
mod people;
mod pitches;
mod status;
pub(super) mod telling;
mod tray;
mod umpire;
pub(super) mod words;

use adjust::Adjust;
use ask::Ask;
use board::Board;
use field::Field;
use gesture::Gesture;
use hand::Hand;
use notes::Notes;
use people::People;
use pitches::{MorePitches, Pitches};
use status::{EmptyPlace, Interlude, NoPlay, StatusLine};
use tray::{RunnerTray, Tray};
use umpire::Umpire;

use crate::keep::Preferences;
use crate::live::{Shown, live};
use crate::words::say;

/// What lies under the thumb.
#[derive(Clone, Copy, PartialEq)]
enum Panel {
    NoPlay,
    EmptyPlace,
    Pitches,
    MorePitches,
    Tray,
    Runner,
    Adjust,
    People,
    Umpire,
}

/// The Plate.
#[component]
pub fn Plate() -> impl IntoView {
    let hand = Hand::provide();
    keys::listen(hand);
    let panel = Memo::new(move |_| panel(hand));
    let notes = Preferences::get().pitch_notes;
    view! {
        <main
            class="plate"
            data-panel=move || (panel.get() != Panel::Pitches).to_string()
            data-notes=move || notes.get().to_string()
        >
            <h1 class="spoken">{say!("plate-place")}</h1>
            <Board/>
            <Field/>
            <div class="pad">
                <StatusLine/>
                <Ask/>
                {live(move || match panel.get() {
                    Panel::NoPlay => view! { <NoPlay/> }.into_any(),
                    Panel::EmptyPlace => view! { <EmptyPlace/> }.into_any(),
                    Panel::Pitches => view! {
                        <Interlude/>
                        <Shown when=move || notes.get()><Notes/></Shown>
                        <Pitches/>
                    }.into_any(),
                    Panel::MorePitches => view! { <MorePitches/> }.into_any(),
                    Panel::Tray => view! { <Tray/> }.into_any(),
                    Panel::Runner => view! { <RunnerTray/> }.into_any(),
                    Panel::Adjust => view! { <Adjust/> }.into_any(),
                    Panel::People => view! { <People/> }.into_any(),
                    Panel::Umpire => view! { <Umpire/> }.into_any(),
                })}
            </div>
        </main>
    }
}

fn panel(hand: Hand) -> Panel {
    let s = hand.situation.get();
    hand.gesture.with(|g| match g {
        Gesture::Umpire => Panel::Umpire,
        Gesture::People(_) => Panel::People,
        _ if s.phase != Phase::Underway => Panel::NoPlay,
        _ if s.batter.is_none() => Panel::EmptyPlace,
        Gesture::Waiting => Panel::Pitches,
        Gesture::MorePitches => Panel::MorePitches,
        Gesture::Ball(_) | Gesture::Chase { .. } | Gesture::GotAway => Panel::Tray,
        Gesture::Runner { .. } => Panel::Runner,
        Gesture::Adjusting(_) => Panel::Adjust,
    })
}
