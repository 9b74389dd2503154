//! Entries that no longer fit after a correction: listed until each is settled.

use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::{Reading, words};

/// The list, while there is one.
#[component]
pub fn Conflicts() -> impl IntoView {
    let reading = Reading::get();
    let conflicts = Memo::new(move |_| {
        reading.scoring.game.with(|game| game.conflicts().map(|(id, why)| (id, why.to_string())).collect::<Vec<_>>())
    });
    view! {
        <Show when=move || conflicts.with(|c| !c.is_empty())>
            <section class="notice conflicts" role="status">
                <h2>{words::CONFLICTS}</h2>
                <p>{words::CONFLICTS_HINT}</p>
                <ul>
                    {move || {
                        conflicts.get().into_iter().map(|(id, why)| view! { <Conflict entry=id why=why/> }).collect_view()
                    }}
                </ul>
            </section>
        </Show>
    }
}

#[component]
fn Conflict(
    /// Which entry.
    entry: EntryId,
    /// Why it does not fit.
    why: String,
) -> impl IntoView {
    let reading = Reading::get();
    view! {
        <li>
            <p>{reading.sentence(entry)}" "{why}</p>
            <button type="button" on:click=move |_| reading.propose(entry, Event::Retract { entry })>{words::STRIKE_OUT}</button>
        </li>
    }
}
