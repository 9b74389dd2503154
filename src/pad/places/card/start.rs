//! What is missing before the first pitch, and the first pitch.

use benchbook_stats::log::Event;
use leptos::prelude::*;

use super::checks::{Missing, missing};
use super::{Desk, checklist, words};
use crate::place::{self, Place, Room};
use crate::places::Refused;

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
            <h2 id="before-title">{words::BEFORE}</h2>
            <div role="status">
                <List all=all stops=true/>
                <List all=all stops=false/>
                <Show when=move || all.with(Vec::is_empty)><p>{words::NOTHING_MISSING}</p></Show>
            </div>
            <Usual/>
            <Refused/>
            <button type="button" class="main play-ball" disabled=move || stopped.get() on:click=begin>
                {words::PLAY_BALL}
            </button>
        </section>
    }
}

/// The usual checks, folded away: reminders only.
#[component]
fn Usual() -> impl IntoView {
    let desk = Desk::get();
    let checks = Memo::new(move |_| desk.scoring.game.with(|game| checklist::checks(game.code())));
    let item = |check: &checklist::Check| view! { <li>{words::check(*check)}</li> };
    view! {
        <details class="usual">
            <summary><span class="what">{words::USUAL_CHECKS}</span></summary>
            <p class="notice small">{words::LEAGUE_FIRST}" "{words::USUAL_HINT}</p>
            <ul>{move || checks.with(|all| all.iter().map(item).collect_view())}</ul>
        </details>
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
            let team = |side| game.team_name(side).to_owned();
            these.iter().map(|m| words::missing(m, &team)).collect::<Vec<_>>()
        })
    });
    let heading = if stops { words::STOPS } else { words::GOOD_TO_KNOW };
    view! {
        <Show when=move || these.with(|t| !t.is_empty())>
            <div class="missing" class:stops=stops>
                <p><b>{heading}</b></p>
                <ul>{move || these.get().into_iter().map(|t| view! { <li>{t}</li> }).collect_view()}</ul>
            </div>
        </Show>
    }
}
