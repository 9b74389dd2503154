//! A choice of one of several, and a chain of fielders: what the form of a play is made of.

use benchbook_stats::field::Position;
use leptos::prelude::*;

use crate::places::plate::words as plate;
use crate::words::{language, say};

/// One of several, by its value.
#[component]
pub fn Pick(
    /// Of what.
    label: String,
    /// Value and words of each.
    options: Vec<(String, String)>,
    /// The value chosen.
    #[prop(into)]
    value: Signal<String>,
    /// Chooses.
    pick: Callback<String>,
) -> impl IntoView {
    let option = move |(own, text): (String, String)| {
        let mine = own.clone();
        view! { <option value=own prop:selected=move || value.get() == mine>{text}</option> }
    };
    view! {
        <label class="pick">
            <span>{label}</span>
            <select on:change=move |event| pick.run(event_target_value(&event))>
                {options.into_iter().map(option).collect_view()}
            </select>
        </label>
    }
}

/// Fielders in the order in which they handled the ball, folded away until it is to be changed.
#[component]
pub fn Chain(
    /// Of what.
    label: String,
    /// The fielders there are.
    fielders: Vec<Position>,
    /// The chain.
    #[prop(into)]
    chain: Signal<Vec<Position>>,
    /// Sets it.
    set: Callback<Vec<Position>>,
) -> impl IntoView {
    let told = {
        let label = label.clone();
        move || {
            let by = plate::chain(&chain.get());
            let by = if by.is_empty() { say!("book-amend-nobody") } else { by };
            say!("book-amend-chain", what = label.as_str(), by = by)
        }
    };
    let add = move |position: Position| {
        let mut by = chain.get_untracked();
        if by.last() != Some(&position) {
            by.push(position);
            set.run(by);
        }
    };
    let chip = move |position: Position| {
        view! {
            <button type="button" on:click=move |_| add(position)>
                <b>{position.number()}</b>
                " "
                {name(position)}
            </button>
        }
    };
    view! {
        <details class="chain">
            <summary>{told}</summary>
            <p class="soft small">{say!("book-amend-chain-hint")}</p>
            <div class="chips" role="group" aria-label=label>
                {fielders.into_iter().map(chip).collect_view()}
                <button type="button" on:click=move |_| set.run(Vec::new())>{say!("book-amend-clear")}</button>
            </div>
        </details>
    }
}

/// A position inside a sentence.
pub fn name(position: Position) -> String {
    position.said(language())
}
