//! The drawing under the tokens: grass, clay, lines; and of an unfinished gesture where the ball went, who threw to whom
//! and where everybody ends.

use benchbook_stats::field::Base;
use benchbook_stats::log::{Move, Start};
use leptos::prelude::*;
use web_sys::MouseEvent;

use super::field::{Drag, Dragged, shown_event};
use super::geometry;
use super::hand::Hand;
use super::telling;
use crate::live::live;
use crate::words::say;

/// Foul ground: a strip along the lines, and the room behind the plate.
const FOUL_GROUND: &str = "M3.2 119.2L-18 148L84 262Q100 352 180 352Q260 352 276 262L378 148L356.8 119.2L180 296Z";

/// The drawing.
#[component]
pub fn Drawing(
    /// The token under the finger.
    drag: RwSignal<Option<Drag>>,
    /// A touch on the field itself. By keyboard the same is said by touching a fielder and choosing the hit.
    on_grass: impl Fn(MouseEvent) + 'static,
) -> impl IntoView {
    let hand = Hand::get();
    let ball = move || hand.gesture.with(|g| g.spot().map(geometry::drawn));
    let view_box = format!("0 0 {} {}", geometry::WIDTH, geometry::HEIGHT);
    view! {
        <svg class="ground" viewBox=view_box aria-hidden="true" on:click=on_grass>
            <rect class="beyond" width="360" height="352"/>
            <path class="foul" d=FOUL_GROUND/>
            <path class="fair" d=geometry::fair_path()/>
            <path class="dirt" d=geometry::dirt_path()/>
            <path class="infield" d=geometry::infield_path()/>
            <circle class="dirt" cx="180" cy="296" r="19"/>
            <circle class="dirt" cx="180" cy="232" r="11"/>
            <path class="line" d="M180 296L3.2 119.2M180 296L356.8 119.2"/>
            <path class="fence" d=geometry::fence_path()/>
            {Base::STANDING.map(bag)}
            <path class="bag" d="M174 291h12v6l-6 6l-6 -6z"/>
            <text x="26" y="40">{say!("plate-over-the-fence")}</text>
            <text x="334" y="40">{say!("plate-over-the-fence")}</text>
            <Throws/>
            {live(move || ball().map(|(x, y)| view! { <circle class="landed" cx=x cy=y r="6"/> }))}
            <Ways/>
            {live(move || drag.get().filter(|d| d.moved).map(|d| {
                let (x, y) = match d.who {
                    Dragged::Running(who) => geometry::start(who),
                    Dragged::Fielding(position) => geometry::fielder(position),
                };
                view! { <line class="pulling" x1=x y1=y x2=d.at.0 y2=d.at.1/> }
            }))}
        </svg>
    }
}

fn bag(base: Base) -> impl IntoView {
    let (x, y) = geometry::base(base);
    let d = format!("M{} {y}L{x} {}L{} {y}L{x} {}Z", x - 7.0, y - 7.0, x + 7.0, y + 7.0);
    view! { <path class="bag" d=d/> }
}

/// From fielder to fielder.
#[component]
fn Throws() -> impl IntoView {
    let hand = Hand::get();
    let line = move || {
        hand.gesture.with(|g| {
            let mut points: Vec<(f64, f64)> = g.spot().map(geometry::drawn).into_iter().collect();
            points.extend(g.chain().iter().map(|p| geometry::fielder(*p)));
            let points: Vec<String> = points.iter().map(|(x, y)| format!("{x:.1},{y:.1}")).collect();
            points.join(" ")
        })
    };
    view! { <polyline class="throws" points=line/> }
}

/// Where everybody ends, from base to base; an out ends in a cross.
#[component]
fn Ways() -> impl IntoView {
    let hand = Hand::get();
    let ways = move || {
        let event = shown_event(hand)?;
        let action = telling::action(&event)?;
        Some(action.moves.iter().map(way).collect_view())
    };
    view! { <g class="ways">{ways}</g> }
}

fn way(m: &Move) -> impl IntoView + use<> {
    let ends = m.out.as_ref().map_or_else(|| m.reached(), |out| Some(out.at));
    let last = ends.map_or(m.from.number(), Base::number).max(m.from.number());
    let mut path = String::new();
    let bases = (m.from.number()..=last).map(|n| if n == 0 { geometry::start(Start::Batter) } else { corner(n) });
    for (i, (x, y)) in bases.enumerate() {
        let _ = core::fmt::Write::write_fmt(&mut path, format_args!("{}{x:.1} {y:.1}", if i == 0 { "M" } else { "L" }));
    }
    let (x, y) = corner(last);
    let out = m.out.is_some();
    let mark = if out {
        format!("M{} {}l14 14m0 -14l-14 14", x - 7.0, y - 7.0)
    } else {
        format!("M{} {y}a9 9 0 1 0 18 0a9 9 0 1 0 -18 0", x - 9.0)
    };
    let class = if out { "way out" } else { "way safe" };
    view! {
        <path class=class d=path/>
        <path class=format!("{class} end") d=mark/>
    }
}

fn corner(number: u8) -> (f64, f64) {
    geometry::base(Base::from_number(number).unwrap_or(Base::Home))
}
