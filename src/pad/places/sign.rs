//! The sign that points to the other places of a game, and says whether the last play is kept.

use leptos::prelude::*;

use crate::carry::Parcel;
use crate::keep;
use crate::live::{Shown, live};
use crate::place::{Place, Room};
use crate::scoring::Scoring;
use crate::words::say;

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
        <nav class="sign" aria-label=say!("frame-places")>
            <a class="house" href=Place::Clubhouse.hash() aria-label=say!("frame-clubhouse")>
                <svg viewBox="0 0 20 20" aria-hidden="true">
                    <path d="M2 10 L10 3 L18 10 M4.5 8.5 V17 H15.5 V8.5 M8.5 17 V12 H11.5 V17"/>
                </svg>
                <span>{say!("frame-clubhouse")}</span>
            </a>
            {Room::ALL.map(link)}
            <Kept/>
        </nav>
        <Trouble/>
    }
}

/// A small tick: the last play is on the disk; or that it is on its way there.
#[component]
fn Kept() -> impl IntoView {
    let scoring = Scoring::get();
    let last = Memo::new(move |_| scoring.game.with(|game| game.log().last().map_or(0, |entry| entry.id.0)));
    let kept = Memo::new(move |_| scoring.kept.get().map_or(0, |entry| entry.0));
    let words = move || match (scoring.writes.get(), kept.get() >= last.get()) {
        (false, _) => say!("frame-following"),
        (true, true) => say!("frame-kept"),
        (true, false) => say!("frame-keeping"),
    };
    view! {
        <span class="kept" data-recorded=move || last.get() data-kept=move || kept.get()>{words}</span>
    }
}

/// What stands in the way of keeping, until it is out of the way.
#[component]
fn Trouble() -> impl IntoView {
    let scoring = Scoring::get();
    let take_home = move |_| {
        let parcel = scoring.game.with_untracked(|game| Parcel::of_game(&scoring.id.get_value(), game));
        if !parcel.download() {
            scoring.refusal.set(Some(say!("frame-browser-took-no-file")));
        }
    };
    let follows = Memo::new(move |_| !scoring.writes.get() && !scoring.trouble.get().overtaken);
    view! {
        <div role="status">
            <Shown when=move || follows.get()>
                <p class="notice late">{say!("frame-other-tab-keeps")}</p>
            </Shown>
            <Shown when=move || scoring.trouble.with(keep::Trouble::is_some)>
                <div class="notice">
                    <p>{live(move || scoring.trouble.get().to_string())}</p>
                    <button type="button" class="quiet" on:click=take_home>{say!("frame-take-home-now")}</button>
                </div>
            </Shown>
        </div>
    }
}
