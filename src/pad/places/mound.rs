//! The Mound: pitches by pitcher, large enough to read from the bench.

use leptos::prelude::*;

use crate::scoring::Scoring;

/// The Mound.
#[component]
pub fn Mound() -> impl IntoView {
    let scoring = Scoring::get();
    let entries = Memo::new(move |_| scoring.game.with(|game| game.log().len()));
    view! { <main class="mound"><p>{entries} " entries"</p></main> }
}
