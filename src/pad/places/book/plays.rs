//! The game in plain words: newest first while it goes on, from the first pitch on when it is over.

use benchbook_stats::account::HalfAccount;
use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::line::LineOf;
use super::{Reading, words};
use crate::live::{Shown, live};
use crate::words::say;

/// The play-by-play.
#[component]
pub fn Plays() -> impl IntoView {
    let reading = Reading::get();
    let game = reading.scoring.game;
    let oldest_first = RwSignal::new(reading.over.get_untracked());
    let halves = Memo::new(move |_| {
        let count = reading.account.with(|account| account.halves.len());
        let mut halves: Vec<usize> = (0..count).collect();
        if !oldest_first.get() {
            halves.reverse();
        }
        halves
    });
    let before = Memo::new(move |_| {
        reading.account.with(|account| account.before.iter().map(|line| line.entry).collect::<Vec<_>>())
    });
    let can_undo = Memo::new(move |_| game.with(|game| game.undo().is_some()));
    let can_redo = Memo::new(move |_| game.with(|game| game.redo().is_some()));
    let order = move || if oldest_first.get() { say!("book-newest-first") } else { say!("book-oldest-first") };
    view! {
        <section class="plays">
            <p class="tools">
                <button type="button" disabled=move || !can_undo.get() on:click=move |_| { reading.scoring.undo(); }>
                    {say!("book-undo")}
                </button>
                <Shown when=move || can_redo.get()>
                    <button type="button" on:click=move |_| { reading.scoring.redo(); }>{say!("book-redo")}</button>
                </Shown>
                <button type="button" class="quiet" on:click=move |_| oldest_first.update(|o| *o = !*o)>{order}</button>
            </p>
            <Shown when=move || oldest_first.get() && before.with(|b| !b.is_empty())>
                <Before entries=before/>
            </Shown>
            <Shown
                when=move || halves.with(|h| !h.is_empty())
                fallback=|| view! { <p class="soft">{say!("book-nothing-yet")}</p> }
            >
                <For each=move || halves.get() key=|index| *index let:index>
                    <Half index=index oldest_first=oldest_first/>
                </For>
            </Shown>
            <Shown when=move || !oldest_first.get() && before.with(|b| !b.is_empty())>
                <Before entries=before/>
            </Shown>
            <Struck/>
        </section>
    }
}

/// What was noted before the first pitch.
#[component]
fn Before(
    /// The notes' entries.
    entries: Memo<Vec<EntryId>>,
) -> impl IntoView {
    view! {
        <section class="half">
            <h3>{say!("book-before-the-first-pitch")}</h3>
            <Lines entries=entries/>
        </section>
    }
}

#[component]
fn Lines(
    /// Of which entries.
    entries: Memo<Vec<EntryId>>,
) -> impl IntoView {
    view! {
        <ol>
            <For each=move || entries.get() key=|entry| *entry let:entry>
                <LineOf entry=entry/>
            </For>
        </ol>
    }
}

#[component]
fn Half(
    /// Its place in the account.
    index: usize,
    /// The order of its lines.
    oldest_first: RwSignal<bool>,
) -> impl IntoView {
    let reading = Reading::get();
    let half = Memo::new(move |_| reading.account.with(|account| account.halves.get(index).cloned()));
    let entries = Memo::new(move |_| {
        let mut entries: Vec<EntryId> =
            half.with(|half| half.iter().flat_map(|h| &h.lines).map(|line| line.entry).collect());
        if !oldest_first.get() {
            entries.reverse();
        }
        entries
    });
    let title = move || half.with(|h| h.as_ref().map(|h| words::half(h.inning, h.half)));
    let team = move || half.with(|h| h.as_ref().map(|h| reading.team(h.half.batting())));
    let sums = move || half.with(|h| h.as_ref().map(sums_of));
    view! {
        <section class="half">
            <h3>{title}<span class="at-bat">{team}</span><span class="sums">{sums}</span></h3>
            <Lines entries=entries/>
        </section>
    }
}

fn sums_of(half: &HalfAccount) -> String {
    words::sums(half.runs, half.hits, half.errors, half.left_on_base)
}

/// Entries struck out, each of which can be put back. What they said is worked out only when asked for: each needs the
/// game replayed with it.
#[component]
fn Struck() -> impl IntoView {
    let reading = Reading::get();
    let struck = Memo::new(move |_| reading.scoring.game.with(super::line::struck_out));
    let open = RwSignal::new(false);
    view! {
        <Shown when=move || struck.with(|s| !s.is_empty())>
            <section class="struck-list">
                <button
                    type="button"
                    class="quiet"
                    aria-expanded=move || open.get().to_string()
                    on:click=move |_| open.update(|o| *o = !*o)
                >
                    {say!("book-struck-out")}" ("{live(move || struck.with(Vec::len))}")"
                </button>
                <Shown when=move || open.get()>
                    <ul>
                        <For each=move || struck.get() key=|entry| *entry let:entry>
                            <StruckOut entry=entry/>
                        </For>
                    </ul>
                </Shown>
            </section>
        </Shown>
    }
}

#[component]
fn StruckOut(
    /// Which.
    entry: EntryId,
) -> impl IntoView {
    let reading = Reading::get();
    let what = reading.scoring.game.with_untracked(|game| super::line::told_if_it_counted(game, entry));
    let put_back = move |_| {
        reading.scoring.tap(Event::Reinstate { entry });
    };
    view! {
        <li>
            <span class="struck">{what}</span>
            <button type="button" on:click=put_back>{say!("book-put-back")}</button>
        </li>
    }
}
