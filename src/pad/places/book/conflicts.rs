//! Entries that no longer fit after a correction: listed until each is settled.

use benchbook_stats::game::{Game, Mend, Slot};
use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::amend::{Choosing, can_be_amended};
use super::{Reading, words};
use crate::live::{Shown, live};
use crate::words::say;

/// The list, while there is one.
#[component]
pub fn Conflicts() -> impl IntoView {
    let reading = Reading::get();
    let conflicts = Memo::new(move |_| reading.scoring.game.with(to_settle));
    view! {
        <Shown when=move || conflicts.with(|c| !c.is_empty())>
            <section class="notice conflicts" role="status">
                <h2>{say!("book-conflicts")}</h2>
                <p>{say!("book-conflicts-hint")}</p>
                <ul>
                    {live(move || {
                        conflicts
                            .get()
                            .into_iter()
                            .map(|(id, why, mends)| view! { <Conflict entry=id why=why mends=mends/> })
                            .collect_view()
                    })}
                </ul>
            </section>
        </Shown>
    }
}

/// What does not fit, why, and what would mend it. The first one alone gets mends: those after it may fit again then.
fn to_settle(game: &Game) -> Vec<(EntryId, String, Vec<Mend>)> {
    let mends = |at: usize, id| if at == 0 { game.mends(id) } else { Vec::new() };
    game.conflicts().enumerate().map(|(at, (id, why))| (id, why.to_string(), mends(at, id))).collect()
}

#[component]
fn Conflict(
    /// Which entry.
    entry: EntryId,
    /// Why it does not fit.
    why: String,
    /// What would mend it; if none is worked out, it can be struck out.
    mends: Vec<Mend>,
) -> impl IntoView {
    let reading = Reading::get();
    let unmended = mends.is_empty();
    let amendable = reading.scoring.game.with_untracked(|game| can_be_amended(game, entry));
    let strike_out = move |_| reading.propose(entry, Event::Retract { entry });
    let mend = move |Mend { kind, event, conflicts_left }: Mend| {
        view! {
            <button type="button" on:click=move |_| reading.propose(entry, event.clone())>
                {words::mend(kind, conflicts_left)}
            </button>
        }
    };
    view! {
        <li>
            <p>{reading.sentence(entry)}" "{why}</p>
            <p class="tools">
                {mends.into_iter().map(mend).collect_view()}
                {amendable.then(|| {
                    view! { <button type="button" on:click=move |_| reading.amend(entry)>{say!("book-amend-this")}</button> }
                })}
                <Choosing line=entry at=Slot::Of(entry) text=say!("book-instead-ask")/>
                {unmended.then(|| view! { <button type="button" on:click=strike_out>{say!("book-strike-out")}</button> })}
            </p>
        </li>
    }
}
