//! The Book: line score, box score and its proof, the scoresheet, and why.

use leptos::prelude::*;

use crate::scoring::Scoring;

/// The Book.
#[component]
pub fn Book() -> impl IntoView {
    let scoring = Scoring::get();
    let entries = Memo::new(move |_| scoring.game.with(|game| game.log().len()));
    view! { <main class="book"><p>{entries} " entries"</p></main> }
}
