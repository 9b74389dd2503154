//! The sign that points to the other places of a game, and says whether the last play is kept.

use leptos::prelude::*;

use crate::place::{Place, Room};
use crate::scoring::Scoring;

/// Links to the Clubhouse and the four places of the game; small, at the edge.
#[component]
pub fn Sign(
    /// Where the scorer is.
    room: Memo<Room>,
) -> impl IntoView {
    let scoring = Scoring::get();
    let link = move |to: Room| {
        let href = Place::Game(scoring.id.get_value(), to).hash();
        let here = move || (room.get() == to).then_some("page");
        view! { <a href=href aria-current=here>{to.name()}</a> }
    };
    view! {
        <nav class="sign" aria-label="Places">
            <a href=Place::Clubhouse.hash()>"Clubhouse"</a>
            {Room::ALL.map(link)}
            <Kept/>
        </nav>
    }
}

/// A small tick: the last play is on the disk; or that it is on its way there.
#[component]
fn Kept() -> impl IntoView {
    let scoring = Scoring::get();
    let kept = Memo::new(move |_| {
        let last = scoring.game.with(|game| game.log().last().map(|entry| entry.id));
        scoring.kept.get() >= last
    });
    view! {
        <span class="kept" data-kept=move || kept.get().to_string() role="status">
            {move || if kept.get() { "✓ kept" } else { "keeping…" }}
        </span>
    }
}
