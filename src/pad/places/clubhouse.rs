//! The Clubhouse: the games on this device, files in and out, and how safe they are here.

use leptos::prelude::*;

/// The Clubhouse.
#[component]
pub fn Clubhouse() -> impl IntoView {
    view! {
        <main class="clubhouse">
            <h1>"Benchbook"</h1>
        </main>
    }
}
