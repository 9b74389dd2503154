//! A drawer over the page: from below on a phone, from the side where there is room.

use core::cell::Cell;

use leptos::html;
use leptos::prelude::*;

use crate::words::say;

thread_local! {
    static NEXT: Cell<u32> = const { Cell::new(0) };
}

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
    // A drawer can lie over another: each has its own title.
    let id = format!("drawer-{}", NEXT.with(|next| next.replace(next.get() + 1)));
    Effect::new(move |_| {
        if let Some(dialog) = dialog.get() {
            // Where the browser refuses, the dialog is shown without being modal.
            if dialog.show_modal().is_err() {
                dialog.set_open(true);
            }
        }
    });
    let labelled = id.clone();
    view! {
        <dialog class="drawer" node_ref=dialog aria-labelledby=labelled on:close=move |_| close.run(())>
            <header>
                <h2 id=id>{title}</h2>
                <button type="button" class="quiet" on:click=move |_| close.run(())>
                    {say!("book-close")}
                </button>
            </header>
            {children()}
        </dialog>
    }
}
