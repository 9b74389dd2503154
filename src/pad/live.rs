//! Parts of a view that come, go or change, all of one type.
//!
//! Leptos makes its code for a changing part anew for each type of what it shows, and all of [`Show`] for each condition.
//! In a box they share it, which makes the app a good part smaller.

use leptos::prelude::*;
use leptos::reactive::computed::ArcMemo;

/// A part of a view that follows what it reads.
pub type Live = Box<dyn FnMut() -> AnyView + Send>;

/// A part of a view that follows what `view` reads.
pub fn live<V: IntoView + 'static>(view: impl Fn() -> V + Send + 'static) -> Live {
    Box::new(move || view().into_any())
}

/// Its children while `when` holds, as Leptos's [`Show`].
#[component]
pub fn Shown(
    /// Whether they show.
    #[prop(into)]
    when: ArcSignal<bool>,
    /// What shows then.
    children: ChildrenFn,
    /// What shows otherwise.
    #[prop(optional, into)]
    fallback: ViewFn,
) -> impl IntoView {
    let when = ArcMemo::new(move |_| when.get());
    live(move || if when.get() { children() } else { fallback.run() })
}
