//! Striking out an entry: what would change is shown before the scorer agrees.

use benchbook_stats::account::compare::{Comparison, compare};
use benchbook_stats::account::english;
use benchbook_stats::log::{EntryId, Event};
use leptos::prelude::*;

use super::drawer::Drawer;
use super::{Reading, words};

/// The drawer that asks, while an entry is to be struck out.
#[component]
pub fn Correction() -> impl IntoView {
    let reading = Reading::get();
    let close = Callback::new(move |()| reading.striking.set(None));
    move || {
        reading.striking.get().map(|entry| {
            view! {
                <Drawer title=words::PREVIEW.to_owned() close=close>
                    <Preview entry=entry close=close/>
                </Drawer>
            }
        })
    }
}

#[component]
fn Preview(
    /// The entry to strike out.
    entry: EntryId,
    /// Leaves the drawer.
    close: Callback<()>,
) -> impl IntoView {
    let reading = Reading::get();
    let preview = reading.scoring.game.with_untracked(|game| {
        let after = game.preview(Event::Retract { entry })?;
        Ok::<_, benchbook_stats::game::Refusal>(compare(game, &after))
    });
    let agree = move |_| {
        if reading.scoring.tap(Event::Retract { entry }) {
            close.run(());
        }
    };
    match preview {
        Err(refusal) => view! { <p class="notice refusal">{refusal.to_string()}</p> }.into_any(),
        Ok(comparison) => view! {
            <p class="struck">{reading.sentence(entry)}</p>
            <Differences comparison=comparison/>
            <p class="soft small">{words::STAYS_IN_LOG}</p>
            <p class="answers">
                <button type="button" class="main" on:click=agree>{words::AGREE}</button>
                <button type="button" on:click=move |_| close.run(())>{words::LEAVE}</button>
            </p>
        }
        .into_any(),
    }
}

#[component]
fn Differences(
    /// What differs.
    comparison: Comparison,
) -> impl IntoView {
    let reading = Reading::get();
    let nothing = comparison.is_empty();
    let number = move |(number, before, after)| {
        let what = english::number(number, &|id| reading.name(id), &|side| reading.team(side));
        view! { <tr><th scope="row">{what}</th><td>{words::from_to(before, after)}</td></tr> }
    };
    let no_longer = move |(entry, refusal): (EntryId, benchbook_stats::game::Refusal)| {
        view! { <li>{reading.sentence(entry)}" "<b>{words::NO_LONGER_FITS}</b>" "{refusal.to_string()}</li> }
    };
    view! {
        {nothing.then_some(words::NO_CHANGE)}
        {comparison.situation.map(|s| view! { <p>{words::stands(&s)}</p> })}
        <table class="changes"><tbody>{comparison.numbers.into_iter().map(number).collect_view()}</tbody></table>
        <ul class="changes">{comparison.no_longer_fit.into_iter().map(no_longer).collect_view()}</ul>
    }
}
