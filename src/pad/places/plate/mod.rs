//! The Plate: the scoring place; the diamond, the count, the batter, nothing else.

use leptos::prelude::*;

use crate::scoring::Scoring;

/// The Plate.
#[component]
pub fn Plate() -> impl IntoView {
    let scoring = Scoring::get();
    let entries = Memo::new(move |_| scoring.game.with(|game| game.log().len()));
    view! { <main class="plate"><p>{entries} " entries"</p></main> }
}
