//! The Card: the lineup cards, the rules of play, the checks before the first pitch.

use leptos::prelude::*;

use crate::scoring::Scoring;

/// The Card.
#[component]
pub fn Card() -> impl IntoView {
    let scoring = Scoring::get();
    let entries = Memo::new(move |_| scoring.game.with(|game| game.log().len()));
    view! { <main class="card"><p>{entries} " entries"</p></main> }
}
