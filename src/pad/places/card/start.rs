//! What is missing before the first pitch, and the first pitch.

use benchbook_stats::log::Event;
use leptos::prelude::*;

use super::checks::{Missing, missing};
use super::usual::Usual;
use super::{Desk, words};
use crate::live::{Shown, live};
use crate::place::{self, Place, Room};
use crate::places::{Refused, team_name};
use crate::words::say;

/// The checks and the button.
#[component]
pub fn Start() -> impl IntoView {
    let desk = Desk::get();
    let all = Memo::new(move |_| desk.scoring.game.with(missing));
    let stopped = Memo::new(move |_| all.with(|all| all.iter().any(Missing::stops_play)));
    let begin = move |_| {
        if desk.tap(Event::PlayBall) {
            place::go(&Place::Game(desk.scoring.id.get_value(), Room::Plate));
        }
    };
    view! {
        <section class="start" aria-labelledby="before-title">
            <h2 id="before-title">{say!("card-before")}</h2>
            <div role="status">
                <List all=all stops=true/>
                <List all=all stops=false/>
                <Shown when=move || all.with(Vec::is_empty)><p>{say!("card-nothing-missing")}</p></Shown>
            </div>
            <Usual/>
            <Refused/>
            <button type="button" class="main play-ball" disabled=move || stopped.get() on:click=begin>
                {say!("card-play-ball")}
            </button>
        </section>
    }
}

#[component]
fn List(
    /// All that is missing.
    all: Memo<Vec<Missing>>,
    /// What stops play, or what is good to know.
    stops: bool,
) -> impl IntoView {
    let desk = Desk::get();
    let these = Memo::new(move |_| {
        let these = all.with(|all| all.iter().filter(|m| m.stops_play() == stops).cloned().collect::<Vec<_>>());
        desk.scoring.game.with(|game| {
            let team = |side| team_name(game, side);
            these.iter().map(|m| words::missing(m, &team)).collect::<Vec<_>>()
        })
    });
    let heading = if stops { say!("card-needed") } else { say!("card-good-to-know") };
    view! {
        <Shown when=move || these.with(|t| !t.is_empty())>
            <div class="missing" class:stops=stops>
                <p><b>{heading.clone()}</b></p>
                <ul>{live(move || these.get().into_iter().map(|t| view! { <li>{t}</li> }).collect_view())}</ul>
            </div>
        </Shown>
    }
}
