//! Date, place and competition.

use benchbook_stats::log::{Event, Heading, day};
use leptos::prelude::*;

use super::player::written;
use super::{Desk, words};
use crate::words::say;

/// The heading, folded away once it is filled in.
#[component]
pub fn HeadingForm() -> impl IntoView {
    let desk = Desk::get();
    let heading = Memo::new(move |_| desk.scoring.game.with(|game| game.heading().clone()));
    let summary = move || {
        let text = heading.with(words::heading);
        if text.is_empty() { say!("card-game-unknown") } else { text }
    };
    let put = move |change: &dyn Fn(&mut Heading, String), event: &web_sys::Event| {
        let mut next = heading.get_untracked();
        change(&mut next, written(&event_target_value(event)));
        if next != heading.get_untracked() {
            desk.tap(Event::Heading(next));
        }
    };
    let text = move |says: String, get: fn(&Heading) -> &String, set: fn(&mut Heading, String)| {
        view! {
            <label>
                <span class="says">{says}</span>
                <input maxlength="60" prop:value=move || heading.with(|h| get(h).clone()) on:change=move |e| put(&set, &e)/>
            </label>
        }
    };
    let date = move || heading.with(|h| h.date.map(|d| d.to_string()).unwrap_or_default());
    view! {
        <details class="heading">
            <summary><span class="what">{say!("card-game")}</span><span class="says-now">{summary}</span></summary>
            <div class="fields">
                <label>
                    <span class="says">{say!("card-date")}</span>
                    <input type="date" prop:value=date on:change=move |e| put(&|h, day| h.date = day::read(&day), &e)/>
                </label>
                {text(say!("card-begins-at"), |h| &h.start, |h, t| h.start = t)}
                {text(say!("card-where"), |h| &h.place, |h, t| h.place = t)}
                {text(say!("card-competition"), |h| &h.competition, |h, t| h.competition = t)}
                {text(say!("card-scorer"), |h| &h.scorer, |h, t| h.scorer = t)}
            </div>
        </details>
    }
}
