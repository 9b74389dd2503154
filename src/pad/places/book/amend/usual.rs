//! What the rules and custom usually make of what is being amended, each to be taken whole.

use benchbook_stats::propose::{Proposal, possible};
use leptos::prelude::*;

use super::draft::Draft;
use crate::live::{Shown, live};
use crate::places::plate::telling;
use crate::words::say;

/// The outcomes, folded away.
#[component]
pub fn Usual(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let s = draft.situation();
    let proposals = Memo::new(move |_| draft.event.with(|event| draft.before(|game| possible::usual(game, event))));
    let button = move |proposal: Proposal| {
        let text = draft.before(|game| telling::proposal(game, &s, &proposal));
        view! { <button type="button" on:click=move |_| draft.take(&proposal.event)>{text}</button> }
    };
    view! {
        <Shown when=move || proposals.with(|p| !p.is_empty())>
            <details class="usual-ends">
                <summary>{say!("book-amend-usual")}</summary>
                <div class="chips">{live(move || proposals.get().into_iter().map(button).collect_view())}</div>
            </details>
        </Shown>
    }
}
