//! A drawer over the page: from below on a phone, from the side where there is room.

use leptos::html;
use leptos::prelude::*;

use crate::words::say;

/// A dialog with a title. Closing it in any way calls `close`.
#[component]
pub fn Drawer(
    /// Its title.
    title: String,
    /// What closing does.
    close: Callback<()>,
    /// What it shows.
    children: Children,
) -> impl IntoView {
    let dialog: NodeRef<html::Dialog> = NodeRef::new();
    Effect::new(move |_| {
        if let Some(dialog) = dialog.get() {
            // Where the browser refuses, the dialog is shown without being modal.
            if dialog.show_modal().is_err() {
                dialog.set_open(true);
            }
        }
    });
    view! {
        <dialog class="drawer" node_ref=dialog aria-labelledby="drawer-title" on:close=move |_| close.run(())>
            <header>
                <h2 id="drawer-title">{title}</h2>
                <button type="button" class="quiet" on:click=move |_| close.run(())>
                    {say!("book-close")}
                </button>
            </header>
            {children()}
        </dialog>
    }
}
