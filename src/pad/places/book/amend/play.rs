//! Any place of the game amended: what was said there changed within its kind, or something else chosen for it. What
//! would change is seen before it is agreed to.

use benchbook_stats::game::Slot;
use benchbook_stats::log::Event;
use benchbook_stats::propose::edit;
use leptos::prelude::*;

use super::super::drawer::Drawer;
use super::super::{Reading, words};
use super::ball::Ball;
use super::choose::Choose;
use super::draft::{Amending, Draft};
use super::runner::Runner;
use super::usual::Usual;
use crate::live::{Shown, live};
use crate::places::plate::telling;
use crate::words::{language, say};

/// The drawer in which the game is amended, while it is.
#[component]
pub fn AmendPlay() -> impl IntoView {
    let reading = Reading::get();
    let close = Callback::new(move |()| reading.amending.set(None));
    live(move || {
        let amending = reading.amending.get()?;
        let kept = matches!((&amending.slot, &amending.says), (Slot::Of(entry), Some(says))
            if reading.scoring.game.with_untracked(|game| Amending::entry(game, *entry).says.as_ref() == Some(says)));
        let title = match amending.slot {
            Slot::Of(_) if kept => say!("book-amend-play"),
            Slot::Of(_) => say!("book-instead"),
            Slot::Before(_) | Slot::Now => say!("book-missing"),
        };
        let draft = reading.scoring.game.with_untracked(|game| Draft::of(game, amending.clone()));
        Some(view! {
            <Drawer title=title close=close>
                {match draft {
                    Some(draft) => view! { <Form draft=draft/> }.into_any(),
                    None => view! { <Choose line=amending.line place=amending.slot/> }.into_any(),
                }}
            </Drawer>
        })
    })
}

/// What would be said, in the Plate's words: a call, a result, what everybody did.
fn told(draft: Draft) -> String {
    let s = draft.situation();
    draft.event.with(|event| {
        draft.before(|game| {
            let moves = telling::draft(game, &s, event);
            let headline = match event {
                Event::Pitch(_) | Event::Unseen(_) => telling::named(game, event),
                _ => return moves,
            };
            match moves.as_str() {
                "" => headline,
                moves => say!("plate-headline-and-running", headline = headline, running = moves),
            }
        })
    })
}

#[component]
fn Form(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let reading = Reading::get();
    let refusal = RwSignal::new(None::<String>);
    let s = draft.situation();
    let moment = format!("{} · {}", words::half(s.inning, s.half), words::outs(s.outs));
    let changed = Memo::new(move |_| draft.is_news());
    let begun = Memo::new(move |_| draft.is_changed());
    let late = move || draft.event.with(|event| event.action().is_some_and(|a| edit::has_run_and_out(a, s.outs)));
    let everyone = Memo::new(move |_| draft.everyone());
    let look = move |_| {
        let event = draft.event.get_untracked();
        let why = reading.scoring.game.with_untracked(|game| game.why_not(draft.slot, &event));
        refusal.set(why.map(|why| why.said(language())));
        if why.is_none() {
            reading.propose(draft.line, draft.slot.says(event));
        }
    };
    let start_over = move |_| {
        refusal.set(None);
        draft.start_over();
    };
    let choose = move |_| reading.amending.set(Some(Amending::choosing(draft.line, draft.slot)));
    view! {
        <div class="amending">
            <p class="soft small">{moment}</p>
            <p class="as-drafted" aria-live="polite"><b>{live(move || told(draft))}</b></p>
            <p class="tools">
                <button type="button" class="quiet" on:click=choose>{say!("book-instead-ask")}</button>
            </p>
            {draft.batted().then(|| view! { <Ball draft=draft/> })}
            <Usual draft=draft/>
            <Shown when=move || everyone.with(|e| !e.is_empty())><h3>{say!("book-amend-everyone")}</h3></Shown>
            <For each=move || everyone.get() key=|who| *who let:who><Runner draft=draft who=who/></For>
            <Shown when=late>
                <button type="button" on:click=move |_| draft.change(edit::outs_first)>{say!("book-amend-late")}</button>
            </Shown>
            <div role="status">
                {live(move || refusal.get().map(|why| view! { <p class="notice refusal">{why}</p> }))}
            </div>
            <p class="answers">
                <button type="button" class="main" disabled=move || !changed.get() on:click=look>
                    {say!("book-amend-look")}
                </button>
                <button type="button" disabled=move || !begun.get() on:click=start_over>
                    {say!("book-amend-start-over")}
                </button>
            </p>
        </div>
    }
}
