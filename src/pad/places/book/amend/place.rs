//! Where a batted ball went: a point of the field, to be touched or moved by the arrow keys, and said in words.

use benchbook_stats::log::{Event, Spot};
use benchbook_stats::propose::{is_beyond_fence, is_fair, region, usual_spot};
use leptos::html;
use leptos::prelude::*;

use super::super::charts::field;
use super::draft::Draft;
use crate::live::live;
use crate::words::{language, say};

/// Hundredths of a base path that an arrow key moves the point, and with Shift.
const STEP: i16 = 10;
const LEAP: i16 = 50;

/// The field with the point.
#[component]
pub fn Where(
    /// The play.
    draft: Draft,
) -> impl IntoView {
    let field: NodeRef<html::Div> = NodeRef::new();
    let drawing = move || field::drawn() + &spot(draft).map(field::pin).unwrap_or_default();
    let told = move || spot(draft).map(|spot| region(spot, language())).unwrap_or_default();
    let title = move || match told().as_str() {
        "" => say!("book-amend-where"),
        told => say!("book-amend-where-is", place = told),
    };
    let touch = move |event: web_sys::MouseEvent| {
        let Some(field) = field.get_untracked() else { return };
        let frame = field.get_bounding_client_rect();
        let across = (f64::from(event.client_x()) - frame.left()) / frame.width();
        let down = (f64::from(event.client_y()) - frame.top()) / frame.height();
        put(draft, field::spot_under(across, down));
    };
    let key = move |event: web_sys::KeyboardEvent| {
        let step = if event.shift_key() { LEAP } else { STEP };
        let (right, up) = match event.key().as_str() {
            "ArrowRight" => (step, 0),
            "ArrowLeft" => (-step, 0),
            "ArrowUp" => (0, step),
            "ArrowDown" => (0, -step),
            _ => return,
        };
        event.prevent_default();
        let from = spot(draft).unwrap_or_else(|| begin(draft));
        put(draft, field::within(Spot { x: from.x.saturating_add(right), y: from.y.saturating_add(up) }));
    };
    view! {
        <details class="where">
            <summary>{live(title)}</summary>
            <p class="soft small">{say!("book-amend-where-hint")}</p>
            // Neither a slider nor a button: it moves in two directions, and the arrow keys are its own.
            <div
                class="point"
                role="application"
                tabindex="0"
                aria-label=say!("book-amend-where")
                node_ref=field
                on:click=touch
                on:keydown=key
            >
                <svg class="field" viewBox=field::view_box() aria-hidden="true" inner_html=drawing></svg>
            </div>
            <p class="told-place" role="status">{live(told)}</p>
        </details>
    }
}

fn spot(draft: Draft) -> Option<Spot> {
    draft.event.with(|event| match event {
        Event::InPlay(play) => play.ball.spot,
        _ => None,
    })
}

/// Where the point begins if nobody touched one: at the post of whoever had the ball.
fn begin(draft: Draft) -> Spot {
    draft.chain().first().map_or(Spot { x: 0, y: 200 }, |first| usual_spot(*first))
}

fn put(draft: Draft, spot: Spot) {
    draft.event.update(|event| {
        if let Event::InPlay(play) = event {
            play.ball.spot = Some(spot);
            play.ball.foul &= !is_fair(spot);
            play.ball.left_park &= is_fair(spot) && is_beyond_fence(spot);
        }
    });
}
