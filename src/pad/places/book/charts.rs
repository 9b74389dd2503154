//! The charts: where each batter's balls went, and the pitchers' pitches by inning; to look at and to print.

use benchbook_stats::field::Side;
use leptos::prelude::*;

use crate::words::say;

pub mod field;
mod spray;
mod strip;

use spray::Sprays;
use strip::Strips;

/// The page.
#[component]
pub fn Charts() -> impl IntoView {
    let print = move |_| {
        // A browser without printing leaves the charts on the screen.
        let _ = window().print();
    };
    view! {
        <div class="charts">
            <Sprays/>
            {Side::BOTH.map(|side| view! { <Strips side=side/> })}
            <p class="tools"><button type="button" on:click=print>{say!("book-print-charts")}</button></p>
        </div>
    }
}
