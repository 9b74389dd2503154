//! Changing the order: by buttons, or by dragging a batter to another place.

use benchbook_stats::field::Side;
use benchbook_stats::team::PlayerId;
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use super::{Desk, edit};
use crate::live::live;
use crate::places::label;
use crate::words::say;

/// A drag that goes on: who, from which place, over which place.
#[derive(Clone, Copy, PartialEq)]
struct Drag {
    id: PlayerId,
    from: usize,
    over: usize,
}

/// The order, to be changed.
#[component]
pub fn Reorder(
    /// Whose.
    side: Side,
) -> impl IntoView {
    let desk = Desk::get();
    let players = Memo::new(move |_| desk.card(side).order.iter().map(|a| a.player).collect::<Vec<_>>());
    let drag = RwSignal::new(None::<Drag>);
    view! {
        <ol class="order moving" class:dragging=move || drag.get().is_some()>
            <For each=move || players.get() key=|id| *id let:id>
                <Row side=side id=id players=players drag=drag/>
            </For>
        </ol>
    }
}

#[component]
fn Row(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
    /// The order.
    players: Memo<Vec<PlayerId>>,
    /// The drag, while there is one.
    drag: RwSignal<Option<Drag>>,
) -> impl IntoView {
    let desk = Desk::get();
    let place = Memo::new(move |_| players.with(|p| p.iter().position(|other| *other == id).unwrap_or(0)));
    let count = Memo::new(move |_| players.with(Vec::len));
    let label = Memo::new(move |_| desk.scoring.game.with(|game| label(game, id)));
    let to = move |event: &web_sys::MouseEvent, place_to: usize| {
        desk.put_card(side, edit::moved(desk.card(side), place.get_untracked(), place_to));
        keep_focus(event);
    };
    let lifted = move || drag.get().is_some_and(|d| d.id == id);
    let under = move || drag.get().is_some_and(|d| d.over == place.get() && d.id != id);
    view! {
        <li data-place=move || place.get() class:lifted=lifted class:under=under>
            <Handle side=side id=id place=place drag=drag/>
            <span class="place">{live(move || place.get() + 1)}</span>
            <span class="label">{label}</span>
            <button
                type="button"
                disabled=move || place.get() == 0
                aria-label=move || say!("card-move-up", whom = label.get())
                on:click=move |event| to(&event, place.get_untracked().saturating_sub(1))
            >
                "▲"
            </button>
            <button
                type="button"
                disabled=move || { place.get() + 1 >= count.get() }
                aria-label=move || say!("card-move-down", whom = label.get())
                on:click=move |event| to(&event, place.get_untracked() + 1)
            >
                "▼"
            </button>
            <button
                type="button"
                disabled=move || count.get() == 1
                aria-label=move || say!("card-move-to-bench", whom = label.get())
                on:click=move |_| desk.put_card(side, edit::without(desk.card(side), id))
            >
                "✕"
            </button>
        </li>
    }
}

/// A row that moves loses the focus: back to the button, so that the keyboard can move it on.
fn keep_focus(event: &web_sys::MouseEvent) {
    let button = event.current_target().and_then(|target| target.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(button) = button {
        request_animation_frame(move || {
            // At the end of the order the button is off, and the focus goes where the browser puts it.
            let _ = button.focus();
        });
    }
}

/// What a finger takes hold of.
#[component]
fn Handle(
    /// Whose side.
    side: Side,
    /// Who.
    id: PlayerId,
    /// Where now.
    place: Memo<usize>,
    /// The drag.
    drag: RwSignal<Option<Drag>>,
) -> impl IntoView {
    let desk = Desk::get();
    let down = move |event: web_sys::PointerEvent| {
        event.prevent_default();
        if let Some(handle) = event.current_target().and_then(|t| t.dyn_into::<web_sys::Element>().ok()) {
            // Without capture the drag ends where the finger leaves the handle; nothing worse.
            let _ = handle.set_pointer_capture(event.pointer_id());
        }
        let from = place.get_untracked();
        drag.set(Some(Drag { id, from, over: from }));
    };
    let moves = move |event: web_sys::PointerEvent| {
        if let (Some(d), Some(over)) = (drag.get_untracked(), place_under(&event))
            && d.over != over
        {
            drag.set(Some(Drag { over, ..d }));
        }
    };
    let up = move |_| {
        if let Some(d) = drag.get_untracked() {
            drag.set(None);
            desk.put_card(side, edit::moved(desk.card(side), d.from, d.over));
        }
    };
    view! {
        <span
            class="handle"
            aria-hidden="true"
            title=say!("card-drag")
            on:pointerdown=down
            on:pointermove=moves
            on:pointerup=up
            on:pointercancel=move |_| drag.set(None)
        >
            "⠿"
        </span>
    }
}

/// The place in the same order that lies under the pointer.
fn place_under(event: &web_sys::PointerEvent) -> Option<usize> {
    // A screen of more than 32767 CSS px has no place under the pointer.
    let px = |at: i32| i16::try_from(at).ok().map(f32::from);
    let at = document().element_from_point(px(event.client_x())?, px(event.client_y())?)?;
    let row = at.closest("[data-place]").ok()??;
    let own = event.current_target()?.dyn_into::<web_sys::Element>().ok()?.closest(".order").ok()??;
    own.contains(Some(&row)).then(|| row.get_attribute("data-place")?.parse().ok())?
}
