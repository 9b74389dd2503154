//! Why the last entry was refused, in words a parent can act on.

use leptos::prelude::*;

use crate::live::live;
use crate::scoring::Scoring;

/// The message, until the next entry is accepted.
#[component]
pub fn Refused() -> impl IntoView {
    let refusal = Scoring::get().refusal;
    view! {
        <div role="status">
            {live(move || refusal.get().map(|words| view! { <p class="notice refusal">{words}</p> }))}
        </div>
    }
}
