//! The Clubhouse: the games on this device, files in and out, and how safe they are here.

mod aside;
mod board;
mod bring;
mod entrant;
mod first_entries;
mod games;
mod health;
mod house;
mod season;
mod start;

use benchbook_stats::words::Language;
use leptos::prelude::*;

use crate::install::Offers;
use crate::keep::Preferences;
use crate::live::{Shown, live};
use crate::words::{self, say};

use aside::SetAside;
use bring::{Bring, bring_dropped};
use games::{Games, ThrownAway};
use health::Safety;
use house::House;
use season::Seasons;
use start::Start;

/// The Clubhouse.
#[component]
pub fn Clubhouse() -> impl IntoView {
    let house = House::open();
    provide_context(house);
    let dragged_over = RwSignal::new(false);
    view! {
        <main
            class="clubhouse"
            data-drop=move || dragged_over.get().to_string()
            on:dragover=move |event| {
                event.prevent_default();
                dragged_over.set(true);
            }
            on:dragleave=move |_| dragged_over.set(false)
            on:drop=move |event| {
                event.prevent_default();
                dragged_over.set(false);
                bring_dropped(house, &event);
            }
        >
            <Masthead/>
            <Said house=house/>
            <Update/>
            <div class="rooms" data-games=move || house.games.with(|rows| rows.as_ref().map(Vec::len))>
                <div class="room-games">
                    <Games/>
                    <Seasons/>
                    <ThrownAway/>
                    <SetAside/>
                </div>
                <div class="room-desk">
                    <Start/>
                    <Bring/>
                    <Safety/>
                </div>
            </div>
        </main>
    }
}

/// The name over the door, and the light switch.
#[component]
fn Masthead() -> impl IntoView {
    let preferences = Preferences::get();
    view! {
        <header class="masthead">
            <div>
                <h1>"Benchbook"</h1>
                <p class="soft">{say!("clubhouse-motto")}</p>
            </div>
            <div class="switches">
                <Switch on=preferences.night says=say!("clubhouse-night")/>
                <Switch on=preferences.left_handed says=say!("clubhouse-left-handed")/>
                <Tongue/>
            </div>
        </header>
    }
}

/// A setting that is on or off.
#[component]
fn Switch(
    /// The setting.
    on: RwSignal<bool>,
    /// Its name.
    says: String,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="switch"
            aria-pressed=move || on.get().to_string()
            on:click=move |_| on.update(|on| *on = !*on)
        >
            {says}
        </button>
    }
}

/// The language of the app, each by its own name.
#[component]
fn Tongue() -> impl IntoView {
    let preferences = Preferences::get();
    let options = Language::ALL.map(|language| {
        let here = language == words::language();
        view! { <option value=language.tag() lang=language.tag() selected=here>{language.name()}</option> }
    });
    view! {
        <select
            class="switch"
            aria-label=say!("clubhouse-language")
            on:change:target=move |event| preferences.language.set(Language::of(&event.target().value()))
        >
            {options}
        </select>
    }
}

/// What came of the last thing done here, until it is dismissed.
#[component]
fn Said(
    /// The Clubhouse.
    house: House,
) -> impl IntoView {
    view! {
        <div class="said" role="status">
            {live(move || {
                house.said.get().map(|said| {
                    let undo = said.undo.map(|id| {
                        view! { <button type="button" on:click=move |_| house.put_back(&id)>{say!("clubhouse-put-it-back")}</button> }
                    });
                    view! {
                        <div class="notice" class:refusal=said.refusal>
                            <p>{said.words}</p>
                            <div class="buttons">
                                {undo}
                                <button type="button" class="quiet" on:click=move |_| house.said.set(None)>
                                    {say!("clubhouse-dismiss")}
                                </button>
                            </div>
                        </div>
                    }
                })
            })}
        </div>
    }
}

/// Offers the new version. Only here, so that it never comes between two pitches.
#[component]
fn Update() -> impl IntoView {
    let offers = Offers::get();
    view! {
        <Shown when=move || offers.update.get()>
            <div class="notice update">
                <p>{say!("clubhouse-new-version")}</p>
                <button type="button" class="main" on:click=move |_| offers.update()>{say!("clubhouse-start-new-version")}</button>
            </div>
        </Shown>
    }
}
